//! A machine in motion takes no memory: what a wash needs is kept once a contact set was met, and each
//! time the copper is 8 K warmer.

use std::sync::Arc;

use tubwright::machine::Machine;
use tubwright::machine::Setup;
use tubwright::scenario::machines;

/// Seconds of a wash in which something was met for the first time: on P 98 of 3098.
const NEW_S: u32 = 150;

#[test]
fn a_second_of_motion_takes_no_memory_but_for_what_is_met_for_the_first_time() {
    for id in ["P", "T", "N"] {
        let model = Arc::clone(&machines().expect("shipped files are sound")[id].model);
        let mut machine = Machine::new(&model, Setup::default()).expect("sound");
        machine.settle_in(3.0, 298.15);
        machine.stand_ready();
        machine.start_program();
        let (mut seconds, mut busy) = (0_u32, 0_u32);
        while !machine.is_done() {
            let asked = allocation_counter::measure(|| machine.advance(10)).count_total;
            seconds += 1;
            busy += u32::from(asked > 0);
        }
        assert!(seconds > 1500, "{id}: a whole wash");
        assert!(busy < NEW_S, "{id}: {busy} of {seconds} s took memory");
    }
}

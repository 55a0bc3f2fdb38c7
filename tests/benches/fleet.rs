//! Many machines side by side, as belief runs them: does the cost grow by their number alone?

use tubwright::machine::Machine;
use tubwright::machine::Setup;

use crate::cases;
use crate::measure::Case;

/// A minute of washing, alone.
pub const ONE: &str = "machine P: one, a minute of washing";
/// And with 99 beside it.
pub const MANY: &str = "machine P: 100 side by side, a minute of washing";

/// How many machines a case of this name runs, if it is one of these.
#[cfg(not(target_arch = "wasm32"))]
pub fn size(name: &str) -> Option<u32> {
    match name {
        ONE => Some(1),
        MANY => Some(100),
        _ => None,
    }
}

/// Machines that differ in their load and wash; a second each in turn, for a minute.
pub fn machines(name: &'static str, count: u32) -> Case {
    let model = cases::model();
    let mut washing: Vec<Machine> = (0..count)
        .map(|n| {
            let setup = Setup {
                params: vec![("load.dry_kg".to_owned(), 2.0 + 0.02 * f64::from(n))],
                ..Setup::default()
            };
            let mut machine = Machine::new(&model, setup).expect("a machine");
            machine.stand_ready();
            machine.start_program();
            machine.advance(6_000);
            machine
        })
        .collect();
    let began = washing.clone();
    Case::new(name, None, move || {
        washing.clone_from(&began);
        for _second in 0..60 {
            washing.iter_mut().for_each(|machine| machine.advance(10));
        }
        washing.iter().map(|m| m.plant().level_m()).sum()
    })
}

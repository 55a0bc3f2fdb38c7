//! What must come out with the same bits natively and in a browser: every shipped job worked to its
//! end, every machine through a whole wash, sound and with each fault of the catalogue.
//!
//! The results stand in `tests/fixtures/same_bits.txt`, one line each: a name and the hash over the
//! bits of every number. A change of the physics changes them; then, once the change is meant,
//! `TUBWRIGHT_WRITE=1 cargo test --test same_bits` writes them anew.

use std::sync::Arc;

use tubwright::bench::job::Entry;
use tubwright::bench::job::Job;
use tubwright::machine::ActiveFault;
use tubwright::machine::Machine;
use tubwright::machine::MachineModel;
use tubwright::machine::Setup;
use tubwright::machine::StateHasher;
use tubwright::scenario;

/// The results as written down.
pub const WRITTEN: &str = include_str!("../fixtures/same_bits.txt");

/// A job's name and the log of a technician who worked it.
pub type Log = (&'static str, &'static str);

macro_rules! logs {
    ($($id:literal)*) => { [$(($id, include_str!(concat!("../jobs/", $id, ".json")))),*] };
}

/// The log of every shipped job.
pub const LOGS: [Log; 70] = logs!(
    "bangs_like_a_drum" "bath_before_rinse" "bites_bare_feet" "changes_its_mind"
    "clicks_and_stirs_nothing" "creeps_and_tears_sheets" "dark_panel" "dead_after_a_buzz"
    "dead_after_the_storm" "dial_stands_still" "drinks_and_slaps_over" "drips_and_slips"
    "empties_and_stops_there" "everything_in_one_go" "fills_and_never_gets_full"
    "forgets_what_it_was_doing" "fuller_and_splashing" "fuller_than_ever" "gives_up_at_once"
    "goes_quiet_in_the_middle" "grandmothers_machine" "half_as_strong_since_the_fitter"
    "has_to_be_coaxed_on" "hot_and_stops" "hot_since_the_cheap_part" "hums_and_stands"
    "hums_and_water_stays" "hums_quietly_no_wash" "keys_do_nothing" "no_heart_after_a_while"
    "no_spin_since_cousin" "no_water" "not_the_wash_that_smells" "nothing_at_all" "one_way_only_and_hot"
    "overflows_since_the_repair" "prickles_in_the_scullery" "pulls_and_nothing_opens"
    "rests_after_ten_minutes" "rust_and_rumble" "says_later" "shakes_the_pictures"
    "silent_and_dry" "slaps_and_rubs" "slow_since_the_drought" "slow_to_empty"
    "smells_and_counts_for_nothing" "squeals_after_the_new_belt" "squeals_and_comes_out_wet"
    "starts_when_it_likes" "stops_and_beeps_before_spin" "stops_full_of_water"
    "stops_if_you_look_at_it" "stops_when_it_gets_going" "takes_an_hour_to_fill"
    "takes_its_time_stopping" "third_valve_still_slow" "trips_and_old" "turns_one_way"
    "waits_for_its_water" "walked_to_the_door" "walks_and_fills_again" "washes_will_not_spin"
    "water_comes_back_up" "water_from_somewhere_else" "water_runs_at_once" "weak_in_the_new_place" "whines_and_stands"
    "whirls_and_does_not_wring" "white_mountain"
);

/// Computes one line.
pub type Task = Box<dyn Fn() -> String + Send + Sync>;

/// What is computed anew, one task a line, in the order they are written down.
pub fn tasks() -> Vec<Task> {
    let mut tasks: Vec<Task> = Vec::new();
    for log in &LOGS {
        tasks.push(Box::new(|| job(log)));
    }
    for (id, pack) in scenario::machines().expect("shipped machines are sound") {
        let faults = pack.model.faults.iter().map(|fault| Some(fault.id.clone()));
        for fault in std::iter::once(None).chain(faults) {
            let model = Arc::clone(&pack.model);
            tasks.push(Box::new(move || wash(id, &model, fault.as_deref())));
        }
    }
    tasks
}

/// The lines that differ from what is written down, as sentences.
pub fn differences(computed: &[String]) -> Vec<String> {
    let written: Vec<&str> = WRITTEN.lines().collect();
    let mut found: Vec<String> = computed
        .iter()
        .zip(&written)
        .filter(|(is, was)| is != *was)
        .map(|(is, was)| format!("{is} is written down as {was}"))
        .collect();
    if computed.len() != written.len() {
        found.push(format!(
            "{} results, {} written down",
            computed.len(),
            written.len()
        ));
    }
    found
}

/// A job worked by its log: the machine's state, and every line of the notebook as displayed.
fn job((id, log): &Log) -> String {
    let scenario = scenario::job(id)
        .expect("shipped jobs are sound")
        .expect("it ships");
    let log: Vec<Entry> = serde_json::from_str(log).expect("a log is JSON");
    let (job, _) = Job::replay(scenario, 1, &log).expect("a shipped job starts");
    let mut hash = StateHasher::default();
    hash.text(&job.machine().state_hash().to_string());
    hash.text(&serde_json::to_string(job.notebook()).expect("notes are JSON"));
    hash.number(job.cost());
    format!("job {id} {}", short(hash))
}

/// A whole wash: the figures it came to and the state it ended in.
fn wash(id: &str, model: &Arc<MachineModel>, fault: Option<&str>) -> String {
    let faults: Vec<ActiveFault> = fault.map(ActiveFault::constant).into_iter().collect();
    let mut machine =
        Machine::new(model, Setup::of_faults(&faults, 7)).expect("a catalogued fault");
    machine.settle_in(4.0, 298.15);
    machine.stand_ready();
    let mut hash = StateHasher::default();
    match machine.trial_with(|_| {}) {
        Ok(figures) => hash.text(&format!("{figures:?}")),
        Err(error) => hash.text(&error.to_string()),
    }
    hash.text(&machine.state_hash().to_string());
    format!("wash {id} {} {}", fault.unwrap_or("sound"), short(hash))
}

/// Enough of the hash to tell two results apart.
fn short(hash: StateHasher) -> String {
    hash.finish().to_string()[..16].to_owned()
}

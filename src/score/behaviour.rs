//! How a machine behaves over a whole program, in sentences: what an instructor reads beside a job
//! that is being written, and what its customer would say. Everything comes from running the
//! machine and a sound one on the same site with the same load; no fault is looked up.

use serde::Serialize;

use crate::bench::scenario::Scenario;
use crate::machine::CycleFigures;
use crate::machine::Machine;
use crate::machine::MachineError;
use crate::machine::Setup;
use crate::score::functional::FunctionLine;
use crate::score::functional::compare;

/// Speed below which nothing is said to turn, r/min.
const STANDS_RPM: f64 = 5.0;
/// Cabinet current from which bare feet feel it, mA. Published: IEC 60479-1, threshold of perception.
const FELT_MA: f64 = 0.5;

/// Path from the cabinet to earth from which on it counts as missing, Ω: the cabinet then floats, by
/// the mains filter or by stray capacitance, at some ten volts, which skin that slides over it feels
/// however little current it gives. Published: Mallinckrodt, Hughes and Sleator 1953, from memory.
const NO_EARTH_OHM: f64 = 1000.0;

/// One sentence about the machine.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct BehaviourLine {
    /// Plain words with the figure, such as "spins at 720 r/min".
    pub words: String,
    /// As a sound machine does.
    pub as_sound: bool,
}

/// What a machine does over a program.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
pub struct Behaviour {
    /// In the order of a program.
    pub lines: Vec<BehaviourLine>,
    /// What its customer would notice, in their words; empty when nothing stands out.
    pub complaint: String,
}

impl Behaviour {
    /// Nothing in the run differs from a sound machine.
    pub fn is_sound(&self) -> bool {
        self.lines.iter().all(|line| line.as_sound)
    }
}

/// Runs the scenario's machine, and a sound one beside it.
///
/// # Errors
/// When the machine cannot be set up or solved.
pub fn behaviour(scenario: &Scenario, seed: u64) -> Result<Behaviour, MachineError> {
    let site = &scenario.site;
    let run = |setup: Setup| -> Result<CycleFigures, MachineError> {
        let setup = Setup {
            params: site.params.clone(),
            ..setup
        };
        let mut machine = Machine::new(&scenario.machine, setup)?;
        machine.cool_down();
        machine.leave_water(site.water_kg);
        machine.stand_ready();
        machine.trial()
    };
    let should = run(Setup::default())?;
    let is = run(Setup::of_faults(&scenario.faults, seed))?;
    Ok(told(&is, &should))
}

fn told(is: &CycleFigures, should: &CycleFigures) -> Behaviour {
    let lines = compare(is, should);
    let mut told: Vec<BehaviourLine> = lines.iter().map(sentence).collect();
    told.push(end(is, should));
    Behaviour {
        lines: told,
        complaint: complaint(is, &lines),
    }
}

fn sentence(line: &FunctionLine) -> BehaviourLine {
    let figure = |value: f64| match line.unit {
        "times" => format!("{value:.0} {}", line.unit),
        _ if value.abs() < 10.0 => format!("{value:.1} {}", line.unit),
        _ => format!("{value:.0} {}", line.unit),
    };
    let mut words = format!("{}: {}", line.what, figure(line.value));
    if !line.ok {
        words = format!("{words}, a sound one {}", figure(line.sound));
    }
    BehaviourLine {
        words,
        as_sound: line.ok,
    }
}

fn end(is: &CycleFigures, should: &CycleFigures) -> BehaviourLine {
    let minutes = |s: f64| format!("{:.0} min", s / 60.0);
    let words = match &is.alarm {
        Some(alarm) => format!("ends after {} with “{alarm}”", minutes(is.length_s)),
        None if is.length_s >= 2.0 * 3600.0 => {
            "does not come to an end within two hours".to_owned()
        }
        None => format!(
            "ends after {}, a sound one {}",
            minutes(is.length_s),
            minutes(should.length_s)
        ),
    };
    let longer = is.length_s > 1.25 * should.length_s || is.length_s < 0.75 * should.length_s;
    BehaviourLine {
        words,
        as_sound: is.alarm.is_none() && !longer,
    }
}

/// What can be seen, heard or felt by someone who only wants clean clothes. What stops the
/// program ends the list: the customer never sees what would have come after.
fn complaint(is: &CycleFigures, lines: &[FunctionLine]) -> String {
    let mut said: Vec<&str> = Vec::new();
    let line = |what: &str| lines.iter().find(|l| l.what == what);
    let wrong = |what: &str| line(what).filter(|l| !l.ok);
    let below = |what: &str| wrong(what).is_some_and(|l| l.value < l.sound);
    let above = |what: &str| wrong(what).is_some_and(|l| l.value > l.sound);
    let stands = |what: &str| wrong(what).is_some_and(|l| l.value < STANDS_RPM);

    let dead = is.fill_s == 0.0 && is.loudness_db == 0.0 && is.alarm.is_none();
    let stopped = if dead {
        said.push("It does nothing at all, as if it were not plugged in.");
        true
    } else if is.fill_s == 0.0 && is.water_kg < 1.0 {
        said.push("I press start and no water comes.");
        true
    } else if is.fill_s == 0.0 || is.water_kg > 150.0 {
        said.push("The water runs and runs and it never begins to wash.");
        true
    } else if stands("pulsator one way") && stands("pulsator the other way") {
        said.push("It takes water, and then it does not wash.");
        is.spin_rad_per_s == 0.0
    } else {
        false
    };
    if !stopped {
        if above("time to fill") {
            said.push("It takes ages to fill.");
        }
        if above("water level") {
            said.push("There is far too much water in it.");
        } else if below("water level") {
            said.push("It washes with too little water.");
        }
        let turns = !stands("pulsator one way") || !stands("pulsator the other way");
        if turns && (below("pulsator one way") || below("pulsator the other way")) {
            said.push("It washes feebly, not as it used to.");
        }
        if above("basket creep in the wash") {
            said.push("The basket goes round with the washing and things get torn.");
        }
        let empties = line("spin speed").is_some_and(|l| l.value > 0.0);
        if above("time to drain") {
            said.push(if empties {
                "It takes long to empty."
            } else {
                "The water stays in it."
            });
        } else if stands("spin speed") {
            said.push("It washes and empties, but it does not spin.");
        } else if below("spin speed") {
            said.push("It spins more slowly than it did.");
        }
        if above("spins broken off to spread the load") {
            said.push("When it should spin it stops, takes water again and tries over and over.");
        } else if above("swing of the tub") {
            said.push("It bangs and walks when it spins.");
        }
        if above("moisture left") && !stands("spin speed") && empties {
            said.push("The washing comes out dripping.");
        }
    }
    if above("water on the floor") {
        said.push("There is water on the floor.");
    }
    if is.trips > 0 {
        said.push("It gets hot, stops, and goes on after a while.");
    }
    if above("stop after the lid is opened") {
        said.push("It goes on turning long after I open the lid.");
    }
    let bites = wrong("leakage").is_some_and(|l| l.value > FELT_MA);
    let prickles = wrong("cabinet to earth").is_some_and(|l| l.value > NO_EARTH_OHM);
    if bites || prickles || (above("cabinet to earth") && is.leakage_a * 1e3 > FELT_MA) {
        said.push("It tingles when I touch it with bare feet.");
    }
    if said.is_empty() && above("loudest fault sound over normal") {
        said.push("It washes, but it makes a noise it did not make before.");
    }
    let mut text = said.join(" ");
    if let Some(alarm) = &is.alarm {
        text = format!("{text} In the end it beeps and shows “{alarm}”.");
    }
    text.trim().to_owned()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scenario::job;

    fn of(id: &str) -> Behaviour {
        let scenario = job(id).expect("sound").expect("ships");
        behaviour(&scenario, 1).expect("runs")
    }

    #[test]
    fn a_shut_tap_is_told_as_no_water() {
        let told = of("no_water");
        assert!(told.complaint.contains("no water comes"), "{told:?}");
        assert!(!told.is_sound());
    }

    #[test]
    fn a_lever_out_of_its_link_is_told_as_no_spin() {
        let told = of("no_spin_since_cousin");
        assert!(told.complaint.contains("does not spin"), "{told:?}");
    }

    #[test]
    fn a_sound_machine_gives_nothing_to_complain_of() {
        let mut scenario = (*job("no_water").expect("sound").expect("ships")).clone();
        scenario.faults.clear();
        let told = behaviour(&scenario, 1).expect("runs");
        assert!(told.is_sound() && told.complaint.is_empty(), "{told:?}");
    }
}

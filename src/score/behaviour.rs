//! How a machine behaves over a whole program, in sentences: what an instructor reads beside a job
//! that is being written, and what its customer would say. Everything comes from running the
//! machine and a sound one on the same site with the same load; no fault is looked up.

use serde::Serialize;

use crate::bench::kept;
use crate::bench::scenario::Scenario;
use crate::language::in_english;
use crate::language::said;
use crate::machine::CycleFigures;
use crate::machine::Machine;
use crate::machine::MachineError;
use crate::machine::Setup;
use crate::say;
use crate::score::functional::FunctionLine;
use crate::score::functional::TIMES;
use crate::score::functional::compare;
use crate::score::functional::figure;
use crate::text;

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
    /// What its customer would notice, in their words; empty when nothing stands out. English, as a
    /// job's file has it and as the expert hears it.
    pub complaint: String,
    /// The same in the reader's language.
    pub complaint_said: String,
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
    let sentences = noticed(is, &lines);
    let in_words = || complaint(&sentences, is.alarm.as_deref());
    Behaviour {
        lines: told,
        complaint: in_english(in_words),
        complaint_said: in_words(),
    }
}

fn sentence(line: &FunctionLine) -> BehaviourLine {
    let shown = |value: f64| match line.unit {
        unit if unit != TIMES && value.abs() < 10.0 => figure(format!("{value:.1}"), unit),
        unit => figure(format!("{value:.0}"), unit),
    };
    let (what, value) = (said(line.what), shown(line.value));
    BehaviourLine {
        words: if line.ok {
            say!("{label}: {value}", label = what, value)
        } else {
            let sound = shown(line.sound);
            say!("{what}: {value}, a sound one {sound}", what, value, sound)
        },
        as_sound: line.ok,
    }
}

fn end(is: &CycleFigures, should: &CycleFigures) -> BehaviourLine {
    let [minutes, sound] = [is, should].map(|run| format!("{:.0}", run.length_s / 60.0));
    let words = match &is.alarm {
        Some(alarm) => say!(
            "ends after {minutes} min with “{alarm}”",
            minutes,
            alarm = kept::panel(alarm)
        ),
        None if is.length_s >= 2.0 * 3600.0 => {
            say!("does not come to an end within two hours").to_owned()
        }
        None => say!(
            "ends after {minutes} min, a sound one {sound} min",
            minutes,
            sound
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
fn noticed(is: &CycleFigures, lines: &[FunctionLine]) -> Vec<&'static str> {
    let mut said: Vec<&'static str> = Vec::new();
    let line = |what: &str| lines.iter().find(|l| l.what == what);
    let wrong = |what: &str| line(what).filter(|l| !l.ok);
    let below = |what: &str| wrong(what).is_some_and(|l| l.value < l.sound);
    let above = |what: &str| wrong(what).is_some_and(|l| l.value > l.sound);
    let stands = |what: &str| wrong(what).is_some_and(|l| l.value < STANDS_RPM);

    let dead = is.fill_s == 0.0 && is.loudness_db == 0.0 && is.alarm.is_none();
    let stopped = if dead {
        said.push(text!(
            "It does nothing at all, as if it were not plugged in."
        ));
        true
    } else if is.fill_s == 0.0 && is.water_kg < 1.0 {
        said.push(text!("I press start and no water comes."));
        true
    } else if is.fill_s == 0.0 || is.water_kg > 150.0 {
        said.push(text!(
            "The water runs and runs and it never begins to wash."
        ));
        true
    } else if stands("pulsator one way") && stands("pulsator the other way") {
        said.push(text!("It takes water, and then it does not wash."));
        is.spin_rad_per_s == 0.0
    } else {
        false
    };
    if !stopped {
        if above("time to fill") {
            said.push(text!("It takes ages to fill."));
        }
        if above("water level") {
            said.push(text!("There is far too much water in it."));
        } else if below("water level") {
            said.push(text!("It washes with too little water."));
        }
        let turns = !stands("pulsator one way") || !stands("pulsator the other way");
        if turns && (below("pulsator one way") || below("pulsator the other way")) {
            said.push(text!("It washes feebly, not as it used to."));
        }
        if above("basket creep in the wash") {
            said.push(text!(
                "The basket goes round with the washing and things get torn."
            ));
        }
        let empties = line("spin speed").is_some_and(|l| l.value > 0.0);
        if above("time to drain") {
            said.push(if empties {
                text!("It takes long to empty.")
            } else {
                text!("The water stays in it.")
            });
        } else if stands("spin speed") {
            said.push(text!("It washes and empties, but it does not spin."));
        } else if below("spin speed") {
            said.push(text!("It spins more slowly than it did."));
        }
        if above("spins broken off to spread the load") {
            said.push(text!(
                "When it should spin it stops, takes water again and tries over and over."
            ));
        } else if above("swing of the tub") {
            said.push(text!("It bangs and walks when it spins."));
        }
        if above("moisture left") && !stands("spin speed") && empties {
            said.push(text!("The washing comes out dripping."));
        }
    }
    if above("water on the floor") {
        said.push(text!("There is water on the floor."));
    }
    if is.trips > 0 {
        said.push(text!("It gets hot, stops, and goes on after a while."));
    }
    if above("stop after the lid is opened") {
        said.push(text!("It goes on turning long after I open the lid."));
    }
    let bites = wrong("leakage").is_some_and(|l| l.value > FELT_MA);
    let prickles = wrong("cabinet to earth").is_some_and(|l| l.value > NO_EARTH_OHM);
    if bites || prickles || (above("cabinet to earth") && is.leakage_a * 1e3 > FELT_MA) {
        said.push(text!("It tingles when I touch it with bare feet."));
    }
    if said.is_empty() && above("loudest fault sound over normal") {
        said.push(text!(
            "It washes, but it makes a noise it did not make before."
        ));
    }
    said
}

/// The sentences one after the other, in the present language.
fn complaint(sentences: &[&'static str], alarm: Option<&str>) -> String {
    let sentences = sentences.iter().copied();
    let sentences = sentences.map(|sentence| said(sentence).to_owned());
    let end = alarm.map(|alarm| {
        say!(
            "In the end it beeps and shows “{alarm}”.",
            alarm = kept::panel(alarm)
        )
    });
    sentences.chain(end).collect::<Vec<_>>().join(" ")
}

#[cfg(test)]
mod told;

#[cfg(test)]
mod tests {
    use super::*;
    use crate::language;
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
    fn what_the_expert_hears_does_not_depend_on_the_reader() {
        let english = of("no_water");
        assert_eq!(english.complaint, english.complaint_said);
        language::speak(Some(language::Catalogue::pseudo()));
        let marked = of("no_water");
        language::speak(None);
        assert_eq!(marked.complaint, english.complaint);
        assert!(marked.complaint_said.starts_with('⟦'), "{marked:?}");
        assert!(marked.lines.iter().all(|line| line.words.contains('⟦')));
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

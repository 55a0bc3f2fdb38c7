//! Hints: in the opening jobs one at a time, gone once it is done; in all practice those asked for.
//!
//! The first follow the order of a job and what the log holds; nothing here knows what is wrong.

use crate::app::asking::worked;
use crate::app::view::HelpView;
use crate::app::worker::Worked;
use crate::bench::action::Action;
use crate::bench::action::PanelKey;
use crate::bench::action::Sense;
use crate::bench::hint as rungs;
use crate::bench::hint::Rung;
use crate::bench::job::Entry;
use crate::bench::job::Job;
use crate::records::measurement::tracing::MASTERED;
use crate::say;

/// Jobs up to this level give hints.
const HINTED_LEVEL: u8 = 1;

/// What to do next and where the hand goes for it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Guide {
    /// The next thing to do.
    pub words: &'static str,
    /// Where.
    pub at: Place,
}

/// A place of the bench.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Place {
    /// The job card's questions.
    Card,
    /// The drawing.
    Picture,
    /// The instrument.
    Instrument,
    /// The clock's keys.
    Clock,
    /// The way to the end of the job.
    Finish,
}

impl Place {
    /// Its name in the style sheets.
    pub fn word(self) -> &'static str {
        match self {
            Self::Card => "card",
            Self::Picture => "picture",
            Self::Instrument => "instrument",
            Self::Clock => "clock",
            Self::Finish => "finish",
        }
    }
}

/// What to do next, in a job that teaches how a job goes.
pub fn guide(job: &Job) -> Option<Guide> {
    let scenario = job.scenario();
    let wanted = scenario
        .rules
        .hints
        .unwrap_or(scenario.level <= HINTED_LEVEL);
    if !wanted || job.is_over() {
        return None;
    }
    let did = |is: fn(&Action) -> bool| job.log().iter().any(|entry| is(&entry.action));
    let is_put_right = did(|action| {
        matches!(
            action,
            Action::Work { .. } | Action::Tap { open: true } | Action::PushTogether { .. }
        )
    });
    let has_looked = did(|action| {
        matches!(
            action,
            Action::Sense {
                sense: Sense::Look,
                ..
            }
        )
    });
    let has_timer = scenario.workshop.part("timer").is_some();
    // A timer's program runs from the pulled knob, a board's from the start key.
    let runs = if has_timer {
        PanelKey::Power
    } else {
        PanelKey::Start
    };
    let runs = Action::Key { key: runs };
    let has_run = job.log().iter().any(|entry| entry.action == runs);
    let (words, at) = if !did(|a| matches!(a, Action::Ask { .. })) {
        (
            say!("Ask first: the questions are on the job card."),
            Place::Card,
        )
    } else if !has_run {
        let words = if has_timer {
            say!(
                "Let it do what the customer described: touch the dial, turn it to the start, pull the knob out, and listen."
            )
        } else {
            say!(
                "Let it do what the customer described: switch it on at its panel, wait until it is ready, touch start, and listen."
            )
        };
        (words, Place::Picture)
    } else if !has_looked {
        (
            say!(
                "Look before you open anything: touch something in the picture, then choose “look”. What you see goes into the notebook."
            ),
            Place::Picture,
        )
    } else if !is_put_right {
        to_the_cause(job)
    } else if !job.bench().off.is_empty() {
        (
            say!(
                "Put back what you took off, the last first, and check each joint as it goes on. What lies beside the machine is still off."
            ),
            Place::Picture,
        )
    } else if !job.machine().milestones().all() {
        (
            say!(
                "Prove it: plug in, tap open, and let it wash, drain and spin. “Wait until” and the faster clock let time pass."
            ),
            Place::Clock,
        )
    } else {
        (
            say!(
                "Once it does what it should, choose Finish: say what was wrong, tick the lines that show it, tell the customer."
            ),
            Place::Finish,
        )
    };
    Some(Guide { words, at })
}

/// From looking to the repair: outside where that settles it, else made safe, opened and measured in
/// the order of safe work (EN 50110-1).
fn to_the_cause(job: &Job) -> (&'static str, Place) {
    let (bench, isolation) = (job.bench(), &job.bench().isolation);
    let is_open = !bench.off.is_empty();
    let is_unproved = isolation.proved_dead.is_empty() && !is_open;
    if !isolation.is_isolated() && isolation.tester_proved.is_none() {
        (
            say!(
                "Put right what you have found: take it in hand and choose what to do. If looking does not settle it, read the socket first, line to neutral: it proves the supply and your tester."
            ),
            Place::Picture,
        )
    } else if !isolation.is_isolated() {
        (
            say!("Make it safe before you open it: switch off, then touch the plug and pull it."),
            Place::Picture,
        )
    } else if is_unproved && isolation.shown_dead.is_empty() {
        (
            say!(
                "Pulled is not yet dead: keep the plug in sight, shut the tap, then read the plug's pins against each other until they stand near 0 V."
            ),
            Place::Instrument,
        )
    } else if is_unproved {
        (
            say!(
                "A tester that died reads 0 V too: read the live socket once more. Then it is proved dead."
            ),
            Place::Instrument,
        )
    } else if !is_open {
        (
            say!(
                "Now open the way: touch a cover in the picture. What holds it, and how long it takes, stands with the verbs."
            ),
            Place::Picture,
        )
    } else {
        (
            say!(
                "Look again at what is open now, and measure where looking does not settle it; Papers give the values a sound one has. Then put right what you have found."
            ),
            Place::Picture,
        )
    }
}

/// Hints that can be asked for.
pub fn help(job: &Job) -> HelpView {
    let log = job.log();
    let is_hint = |entry: &&Entry| entry.action == Action::Hint;
    let used = log.iter().rev().take_while(is_hint).count();
    HelpView {
        allowed: !job.is_over() && job.scenario().rules.hints != Some(false),
        next: rungs::next(log),
        used,
        skills: job.scenario().skills.clone(),
        worked: Worked {
            log: log[..log.len() - used].to_vec(),
            ..worked(job)
        },
    }
}

/// Rungs of the ladder that are there for someone who knows the job's skills so well, 0 to 1: who knows
/// them needs a question at most. Design choice.
pub fn rungs_for(known: f64) -> usize {
    match known {
        k if k >= MASTERED => 1,
        k if k >= 0.8 => 2,
        k if k >= 0.6 => 3,
        _ => Rung::ALL.len(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::app::library;

    fn after(id: &str, acts: &[Action]) -> Option<&'static str> {
        let mut job = Job::new(library::find(id).expect("ships"), 7).expect("sound");
        for act in acts {
            job.act(act.clone());
        }
        guide(&job).map(|guide| guide.words)
    }

    /// The words and places the guide gives along a log, each once.
    fn along(id: &str, log: &str) -> Vec<Guide> {
        let mut job = Job::new(library::find(id).expect("ships"), 1).expect("sound");
        let mut told: Vec<Guide> = guide(&job).into_iter().collect();
        for entry in serde_json::from_str::<Vec<Entry>>(log).expect("a log") {
            job.advance(entry.tick.saturating_sub(job.tick()));
            job.act(entry.action);
            told.extend(guide(&job).filter(|guide| told.last() != Some(guide)));
        }
        told
    }

    #[test]
    fn a_hint_is_gone_once_it_is_done() {
        let ask = Action::Ask {
            question: "when".to_owned(),
            again: false,
        };
        let first = after("no_water", &[]);
        assert!(first.is_some_and(|h| h.starts_with("Ask first")));
        assert_ne!(after("no_water", &[ask]), first);
    }

    #[test]
    fn a_hint_names_what_the_machine_has_and_stays_until_it_runs() {
        let ask = Action::Ask {
            question: "when".to_owned(),
            again: false,
        };
        let key = |key| Action::Key { key };
        let run = after("nothing_at_all", std::slice::from_ref(&ask));
        assert!(run.is_some_and(|h| h.contains("dial")), "{run:?}");
        let turned = [ask.clone(), key(PanelKey::Start)];
        assert_eq!(after("nothing_at_all", &turned), run);
        let run = after("no_water", std::slice::from_ref(&ask));
        assert!(run.is_some_and(|h| !h.contains("dial")), "{run:?}");
        let on = [ask.clone(), key(PanelKey::Power)];
        assert_eq!(after("no_water", &on), run);
        let started = [ask, key(PanelKey::Power), key(PanelKey::Start)];
        assert_ne!(after("no_water", &started), run);
    }

    #[test]
    fn hints_fade_as_the_skills_become_known() {
        let rungs = [0.3, 0.7, 0.9, 0.97].map(rungs_for);
        assert_eq!(rungs, [4, 3, 2, 1]);
    }

    #[test]
    fn a_hint_is_asked_about_the_job_without_the_hints_before_it() {
        let mut job = Job::new(library::find("no_water").expect("ships"), 7).expect("sound");
        job.act(Action::Lid { open: true });
        job.act(Action::Hint);
        let help = help(&job);
        assert_eq!((help.used, help.worked.log.len()), (1, 1));
        assert_eq!(help.next, Some(Rung::Where));
    }

    #[test]
    fn the_second_opening_job_leads_through_making_safe_to_the_end() {
        let log = include_str!("../../../tests/jobs/gives_up_at_once.json");
        let told = along("gives_up_at_once", log);
        let begins = |words: &str| told.iter().any(|guide| guide.words.starts_with(words));
        for words in [
            "Ask first",
            "Make it safe",
            "Pulled is not yet dead",
            "A tester that died",
            "Now open",
            "Put back",
            "Prove it",
            "Once it does",
        ] {
            assert!(begins(words), "'{words}' not in {told:#?}");
        }
    }

    #[test]
    fn only_the_opening_jobs_give_hints() {
        assert_eq!(after("hums_and_stands", &[]), None);
        assert_eq!(after("no_water", &[Action::Close]), None);
    }
}

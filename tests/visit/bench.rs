//! A job to act on, with its visit section as a test wants it.

use std::sync::Arc;

use serde_json::Value;
use serde_json::json;
use tubwright::bench::action::Action;
use tubwright::bench::action::MeterMode;
use tubwright::bench::action::Sense;
use tubwright::bench::around::Answer;
use tubwright::bench::event::Refusal;
use tubwright::bench::job::Job;
use tubwright::bench::visit::OfferKind;
use tubwright::bench::visit::OfferOption;
use tubwright::bench::working::Outcome;
use tubwright::scenario;

const FILE: &str = include_str!("../../scenarios/jobs/no_spin_since_cousin.json");

/// The shipped job with other fields at its top level.
pub fn text_with(fields: &Value) -> String {
    let mut file: Value = serde_json::from_str(FILE).expect("a job file is JSON");
    for (name, value) in fields.as_object().expect("fields by name") {
        file[name] = value.clone();
    }
    file.to_string()
}

/// That job, begun.
pub fn job_with(fields: &Value) -> Job {
    let scenario = scenario::job_from_text("j.json", "j", &text_with(fields))
        .unwrap_or_else(|error| panic!("{error}"));
    Job::new(Arc::new(scenario), 1).expect("starts")
}

/// That job with this visit section.
pub fn visit(section: Value) -> Job {
    job_with(&json!({ "visit": section }))
}

/// What is wrong with a visit section, as text.
pub fn problems(section: Value) -> String {
    scenario::job_from_text("j.json", "j", &text_with(&json!({ "visit": section })))
        .expect_err("something is wrong")
        .to_string()
}

/// Does an act that must be possible.
pub fn act(job: &mut Job, action: Action) -> Outcome {
    let outcome = job.act(action.clone());
    assert_eq!(outcome.refusal, None, "{action:?}");
    outcome
}

/// Why an act is refused, as words.
pub fn refused(job: &Job, action: &Action) -> String {
    match job.refusal(action) {
        Some(Refusal::NotNow { why }) => why,
        Some(other) => format!("{other:?}"),
        None => String::from("possible"),
    }
}

/// What the meter shows there now.
pub fn reading(job: &mut Job, mode: MeterMode, red: &str, black: &str) -> String {
    let action = Action::Meter {
        mode,
        red: Some(red.to_owned()),
        black: Some(black.to_owned()),
    };
    act(job, action);
    job.reading().expect("both leads are placed").display
}

/// Takes off all that stands before these steps, with help.
pub fn open(job: &mut Job, steps: &[&str]) {
    let workshop = job.scenario().workshop.clone();
    let steps: Vec<String> = steps.iter().map(|s| (*s).to_owned()).collect();
    let way: Vec<String> = workshop
        .closure(&steps)
        .iter()
        .map(|s| s.id.clone())
        .filter(|id| !job.bench().off.contains(id))
        .collect();
    for step in way {
        let lays_down = workshop.step(&step).is_some_and(|s| s.lays_down);
        if lays_down && job.bench().hose_attached {
            act(job, Action::SupplyHose { attached: false });
        }
        act(job, Action::TakeOff { step, helped: true });
    }
}

/// Names of the safety rules broken so far.
pub fn broken(job: &Job) -> Vec<&'static str> {
    job.safety().iter().map(|f| f.rule).collect()
}

/// Text of the last line of the notebook.
pub fn last_line(job: &Job) -> String {
    let note = job.notebook().last().expect("a line");
    tubwright::bench::words::note(note, &job.scenario().workshop)
}

/// Switches off, pulls the plug, keeps it in sight, shuts the tap.
pub fn unplug(job: &mut Job) {
    act(job, Action::Plug { inserted: false });
    act(job, Action::Secure);
    act(job, Action::Tap { open: false });
    act(job, Action::BleedHose);
}

/// The act or answer by its fields.
pub fn phone(question: &str) -> Action {
    Action::Phone {
        question: question.to_owned(),
    }
}

/// The act or answer by its fields.
pub fn load(parts: &[&str]) -> Action {
    Action::LoadVan {
        parts: parts.iter().map(|p| (*p).to_owned()).collect(),
    }
}

/// The act or answer by its fields.
pub fn ask(question: &str, again: bool) -> Action {
    Action::Ask {
        question: question.to_owned(),
        again,
    }
}

/// The act or answer by its fields.
pub fn sense(sense: Sense, place: &str) -> Action {
    Action::Sense {
        sense,
        place: place.to_owned(),
    }
}

/// The act or answer by its fields.
pub fn work(work: &str) -> Action {
    Action::Work {
        work: work.to_owned(),
        check: true,
    }
}

/// The act or answer by its fields.
pub fn leave(parts: &[&str], label: bool) -> Action {
    Action::LeaveUntil {
        parts: parts.iter().map(|p| (*p).to_owned()).collect(),
        label,
    }
}

/// The act or answer by its fields.
pub fn offer(options: &[(OfferKind, f64)]) -> Action {
    let options = options.iter().map(|(what, price)| OfferOption {
        what: *what,
        price: *price,
    });
    Action::Offer {
        causes: vec!["clutch_lever_out_of_link".to_owned()],
        options: options.collect(),
    }
}

/// The act or answer by its fields.
pub fn answer(job: &Job) -> Answer {
    job.bench().around.answer().expect("a price was named")
}

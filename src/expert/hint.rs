//! What hints say: a question back, where to look, which step, what it would mean. They come from what
//! the notebook makes likely and from the best next step by that, and so are as wrong as the notes are.

use std::borrow::Cow;
use std::collections::BTreeMap;
use std::collections::BTreeSet;

use crate::bench::action::Action;
use crate::bench::hint::Rung;
use crate::bench::notebook::Note;
use crate::bench::scenario::Scenario;
use crate::bench::words;
use crate::expert::belief::Belief;
use crate::expert::drill::drills;
use crate::expert::moment::Moment;
use crate::expert::moment::name_of;
use crate::expert::next_words::next_words;
use crate::expert::plan::Next;
use crate::expert::plan::Remedy;
use crate::expert::seen::Seen;
use crate::expert::trial::Ground;
use crate::expert::trial::Stand;
use crate::expert::trial::Trial;
use crate::language::worded;
use crate::machine::MachineError;
use crate::say;

/// A cause less likely than this is not spoken of.
const LIKELY: f64 = 0.02;
/// Causes whose outcomes are told.
const TOLD: usize = 4;

/// What each rung of the ladder says at this moment, from the first to the last; `told` hears how
/// many of how many steps are gone through.
///
/// # Errors
/// When the scenario's machine cannot be set up.
pub fn hints(
    seen: &Seen,
    told: &mut dyn FnMut(usize, usize),
) -> Result<[String; Rung::ALL.len()], MachineError> {
    let scenario = &seen.scenario;
    let mut belief = Belief::new(scenario)?;
    let mut done = BTreeSet::new();
    for (at, step) in seen.steps.iter().enumerate() {
        told(at, seen.steps.len());
        belief.take(step);
        if matches!(step.entry.action, Action::Work { .. }) {
            done.clear();
        }
        done.extend(step.notes.iter().filter_map(name_of));
    }
    let drills = drills(belief.sound());
    let moment = Moment::of(&belief, scenario, &drills, &done);
    let next = moment.as_ref().and_then(Moment::best);
    let next = next.unwrap_or(Next::Do(Remedy::Help));
    let name = match &next {
        Next::Try(name) => Some(name),
        Next::Do(_) => None,
    };
    let trial = moment.as_ref().zip(name);
    let trial = trial.and_then(|(moment, name)| moment.trial(name));
    Ok([
        question(&next, &belief),
        place(&next, trial, scenario),
        say!("Next: {act}.", act = next_words(&next, scenario)),
        match trial {
            Some(trial) => outcomes(trial, &belief, scenario),
            None => reason(&next, &belief, scenario),
        },
    ])
}

fn question(next: &Next, belief: &Belief) -> String {
    let n = belief.probabilities().into_iter().filter(|p| *p >= LIKELY);
    let left = match n.count() {
        0 | 1 => say!("Your notes fit one cause far better than all others.").to_owned(),
        n => say!("Your notes still fit {n} causes.", n),
    };
    let ask = match next {
        Next::Try(name) if name.starts_with("run") => {
            say!("What have you seen it do yourself, and what do you know from the customer only?")
        }
        Next::Try(name) if name.starts_with("look") => {
            say!("What could eyes alone tell now, before anything is measured?")
        }
        Next::Try(name) if name.starts_with("turn") => {
            say!("What should move freely, or hold, and have your hands tried it?")
        }
        Next::Try(_) => say!("Which of them would a meter tell apart, and where?"),
        Next::Do(Remedy::Work(_)) => {
            say!("Is there anything left that you must know before you repair?")
        }
        Next::Do(Remedy::HandOver) => say!("What in your notes says that anything is still wrong?"),
        Next::Do(Remedy::LookFurther | Remedy::Help) => {
            say!("Which of your lines do not go together, and which would you take again?")
        }
    };
    format!("{left} {ask}")
}

fn place(next: &Next, trial: Option<&Trial>, scenario: &Scenario) -> String {
    let workshop = &scenario.workshop;
    let needs: Vec<String> = match (next, trial.map(|t| &t.stand)) {
        (_, Some(Stand::Open(steps))) => steps.iter().cloned().collect(),
        (_, Some(Stand::Ready)) => {
            return say!("As the customer uses it: covers on, plug in, from outside.").to_owned();
        }
        (Next::Do(Remedy::Work(id)), _) => {
            let needs = workshop.work(id).map(|w| workshop.closure(&w.needs));
            let needs = needs.unwrap_or_default();
            needs.into_iter().map(|step| step.id.clone()).collect()
        }
        _ => Vec::new(),
    };
    let names: Vec<Cow<'_, str>> = needs
        .iter()
        .filter_map(|id| workshop.step(id))
        .map(|step| worded(&step.name))
        .collect();
    match (next, names.as_slice()) {
        (Next::Do(Remedy::HandOver | Remedy::LookFurther | Remedy::Help), _) => {
            say!("In your notebook, line by line.").to_owned()
        }
        (_, []) => say!("From outside: nothing has to come off.").to_owned(),
        (_, names) => say!(
            "Unplugged and proved dead, with these off: {covers}.",
            covers = names.join(", ")
        ),
    }
}

/// What the likely machines would show of a trial.
fn outcomes(trial: &Trial, belief: &Belief, scenario: &Scenario) -> String {
    let mut machines: Vec<(usize, Vec<Note>)> = Vec::new();
    for (p, variant, twin) in belief.ranked() {
        let is_known = machines.iter().any(|(cause, _)| *cause == variant.cause);
        if p >= LIKELY && !is_known && machines.len() < TOLD {
            let lines = Ground::of(twin.job()).shown(trial);
            machines.push((
                variant.cause,
                lines.into_iter().map(|(note, _)| note).collect(),
            ));
        }
    }
    let line = |notes: &[Note], at: usize| -> String {
        let note = notes.get(at);
        note.map_or_else(
            || say!("nothing").to_owned(),
            |n| words::note(n, &scenario.workshop),
        )
    };
    let most = machines.iter().map(|(_, notes)| notes.len()).max();
    let differ = (0..most.unwrap_or(0)).find(|&at| {
        let mut all = machines.iter().map(|(_, notes)| line(notes, at));
        let first = all.next();
        all.any(|other| Some(&other) != first.as_ref())
    });
    let Some(at) = differ else {
        let same = say!("It would look the same for the likeliest causes, and rules out others.");
        return same.to_owned();
    };
    let mut meanings: BTreeMap<String, Vec<String>> = BTreeMap::new();
    for (cause, notes) in &machines {
        let causes = meanings.entry(line(notes, at)).or_default();
        causes.push(cause_words(&belief.causes()[*cause].0, scenario));
    }
    let each = meanings.into_iter();
    let told = each.filter_map(|(shown, causes)| {
        let or = |one: String, next: String| say!("{one}; or {next}", one, next);
        let causes = causes.into_iter().reduce(or)?;
        Some(say!("“{shown}” would fit: {causes}.", shown, causes))
    });
    told.collect::<Vec<_>>().join(" ")
}

/// Why something should be done now.
fn reason(next: &Next, belief: &Belief, scenario: &Scenario) -> String {
    let p = belief.probabilities();
    let likeliest = (0..p.len()).max_by(|a, b| p[*a].total_cmp(&p[*b]));
    let likeliest = likeliest.unwrap_or(0);
    let what = cause_words(&belief.causes()[likeliest].0, scenario);
    let sure = format!("{:.0}", 100.0 * p[likeliest]);
    match next {
        Next::Do(Remedy::Work(_)) => say!(
            "By your notes this is {sure} % likely: {what}. Looking further would cost more than it could save.",
            sure,
            what,
        ),
        Next::Do(Remedy::HandOver) => {
            say!("By your notes it is right as it stands: prove it with a whole run and the tests.")
                .to_owned()
        }
        _ => say!("No usual cause explains all your notes. One of them may be wrong.").to_owned(),
    }
}

fn cause_words(ids: &[String], scenario: &Scenario) -> String {
    let faults = ids.iter().filter_map(|id| scenario.machine.fault(id));
    let words = faults.map(|fault| worded(&fault.what).into_owned());
    let all = words.reduce(|one, next| say!("{one}, and {next}", one, next));
    all.unwrap_or_else(|| say!("nothing is wrong").to_owned())
}

#[cfg(test)]
mod rungs;

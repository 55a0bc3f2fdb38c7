//! The debrief as data: every step of the log with what it cost, what it showed, and what a sound
//! machine would have shown.

use serde::Serialize;

use crate::bench::event::Event;
use crate::bench::job::Job;
use crate::bench::notebook::Tick;
use crate::bench::words;
use crate::bench::working::Outcome;
use crate::language::worded;
use crate::machine::MachineError;
use crate::say;
use crate::score::hindsight;
use crate::score::twin::Twin;

/// One step of the timeline.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct StepView {
    /// Number, from 1: the place in the log.
    pub number: usize,
    /// When it began.
    pub tick: Tick,
    /// What was done, plain words.
    pub words: String,
    /// Cost so far when it was done, money unit.
    pub cost: f64,
    /// Notebook lines it wrote.
    pub notes: Vec<NoteView>,
    /// What happened to people and things.
    pub events: Vec<Event>,
}

/// A notebook line beside what a sound machine would have given.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct NoteView {
    /// Number of the line.
    pub number: u32,
    /// What it says.
    pub is: String,
    /// What a sound machine would have given, when that is different.
    pub sound: Option<String>,
}

/// The explained replay.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Debrief {
    /// What was wrong, plain words, with the part's name.
    pub causes: Vec<String>,
    /// The timeline.
    pub steps: Vec<StepView>,
    /// Sentences: how the readings showed it.
    pub shown_by: Vec<String>,
    /// Sentences: what was already known, what a look would have cost, what came right by accident.
    pub hindsight: Vec<String>,
}

/// Explains a job, step by step.
///
/// # Errors
/// When the scenario's machine cannot be set up.
pub fn debrief(job: &Job) -> Result<Debrief, MachineError> {
    let twin = Twin::of(job)?;
    let mut steps = Vec::new();
    let mut shown_by = Vec::new();
    let mut again = Job::new(job.scenario().clone(), job.seed())?;
    for (index, entry) in job.log().iter().enumerate() {
        again.advance_to(entry.tick);
        let outcome = again.act(entry.action.clone());
        steps.push(step(&again, &twin, index, entry.tick, &outcome));
    }
    for note in job.notebook().iter().filter(|n| twin.differs(n)) {
        let sound = twin
            .line(note.number)
            .map(|n| words::note(n, &job.scenario().workshop));
        shown_by.push(say!(
            "Line {n}: {is}; a sound machine: {sound}",
            n = note.number,
            is = words::note(note, &job.scenario().workshop),
            sound = sound.unwrap_or_default(),
        ));
    }
    Ok(Debrief {
        causes: causes(job),
        hindsight: hindsight::sentences(job, &twin),
        steps,
        shown_by,
    })
}

fn step(again: &Job, twin: &Twin, index: usize, tick: Tick, outcome: &Outcome) -> StepView {
    let workshop = &again.scenario().workshop;
    let notes = outcome
        .notes
        .iter()
        .filter_map(|n| again.notebook().get(*n as usize - 1))
        .map(|note| NoteView {
            number: note.number,
            is: words::note(note, workshop),
            sound: twin
                .differs(note)
                .then(|| twin.line(note.number).map(|n| words::note(n, workshop)))
                .flatten(),
        })
        .collect();
    StepView {
        number: index + 1,
        tick,
        words: words::act(&again.log()[index].action, workshop),
        cost: again.cost(),
        notes,
        events: outcome.events.clone(),
    }
}

fn causes(job: &Job) -> Vec<String> {
    let scenario = job.scenario();
    scenario
        .faults
        .iter()
        .filter_map(|f| scenario.machine.fault(&f.id))
        .map(|fault| match scenario.workshop.part(&fault.part) {
            Some(part) => say!(
                "{label}: {value}",
                label = worded(&part.name),
                value = worded(&fault.what),
            ),
            None => worded(&fault.what).into_owned(),
        })
        .collect()
}
#[cfg(test)]
mod tests {
    use std::sync::Arc;

    use super::*;
    use crate::bench::job::Entry;
    use crate::machine::ActiveFault;
    use crate::scenario::job;

    #[test]
    fn every_step_is_told_with_the_lines_it_wrote_and_every_cause_with_its_part() {
        let mut scenario = (*job("no_water").expect("sound").expect("ships")).clone();
        let log = include_str!("../../tests/jobs/no_water.json");
        let log: Vec<Entry> = serde_json::from_str(log).expect("a log");
        let done = Job::replay(Arc::new(scenario.clone()), 1, &log).expect("starts");
        let told = debrief(&done.0).expect("runs");
        let numbers: Vec<usize> = told.steps.iter().map(|step| step.number).collect();
        assert_eq!(numbers, (1..=log.len()).collect::<Vec<_>>());
        let lines = told.steps.iter().flat_map(|step| &step.notes);
        let lines: Vec<(u32, String)> = lines.map(|n| (n.number, n.is.clone())).collect();
        let workshop = &done.0.scenario().workshop;
        let notebook = done.0.notebook().iter();
        let notebook: Vec<(u32, String)> = notebook
            .map(|note| (note.number, words::note(note, workshop)))
            .collect();
        assert_eq!(lines, notebook);
        assert_eq!(told.causes.len(), 1);
        scenario.faults = vec![ActiveFault::constant("capacitor_open")];
        let begun = Job::new(Arc::new(scenario), 1).expect("starts");
        let causes = causes(&begun);
        assert!(causes[0].starts_with("run capacitor: "), "{causes:?}");
    }
}

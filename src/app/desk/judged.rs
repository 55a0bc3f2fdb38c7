//! The job on the desk, judged in a thread: first whether it is fair, then how the expert works it,
//! then how simulated apprentices fare. Begins by itself once the writer pauses, and again after
//! every change; what was said before stands until it is said anew.

use std::cell::RefCell;
use std::rc::Rc;

use gloo::timers::callback::Timeout;
use yew::prelude::*;

use crate::app::shared::Shared;
use crate::app::worker::Answer;
use crate::app::worker::Question;
use crate::app::worker::Thread;
use crate::app::worker::Worked;
use crate::bench::job::Entry;
use crate::expert::crowd::Kind;
use crate::scenario::job_file::JobFile;
use crate::scenario::share;
use crate::score::FairnessLine;
use crate::score::Fared;

/// How long a writer must pause before the job is judged, ms.
const PAUSE_MS: u32 = 1200;
/// Apprentices of each kind. Design choice: a first impression in some seconds.
const RUNS: u32 = 5;
/// Seed of what is worked here; the first apprentice of a kind has it.
pub const SEED: u64 = 1;
/// Name of the job in the thread: none that ships.
const NAME: &str = "draft";

/// What is being worked out.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Stage {
    /// The writer has not paused yet.
    #[default]
    Resting,
    /// Causes are compared.
    Comparing,
    /// The expert works the job.
    Expert,
    /// Apprentices work it.
    Crowd,
    /// All is said.
    Done,
}

/// What is known so far.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Judged {
    /// What is being worked out.
    pub stage: Stage,
    /// So many of so many are done in this stage.
    pub progress: (usize, usize),
    /// Sentences about the job.
    pub lines: Option<Vec<FairnessLine>>,
    /// What the expert did.
    pub expert: Option<Shared<Vec<Entry>>>,
    /// How each kind of apprentice fared.
    pub fared: Option<Vec<Fared>>,
    /// Why there is no more.
    pub failed: Option<String>,
}

/// What happens to it.
pub enum Happens {
    /// The job was changed.
    Changed,
    /// The thread answers.
    Answered(Answer),
}

impl Reducible for Judged {
    type Action = Happens;

    fn reduce(self: Rc<Self>, what: Happens) -> Rc<Self> {
        let mut next = (*self).clone();
        let to = |next: &mut Self, stage| (next.stage, next.progress) = (stage, (0, 0));
        match what {
            Happens::Changed => {
                next.failed = None;
                to(&mut next, Stage::Resting);
            }
            Happens::Answered(Answer::Ready) => to(&mut next, Stage::Comparing),
            Happens::Answered(Answer::Progress { done, of }) => next.progress = (done, of),
            Happens::Answered(Answer::Fair { lines }) => {
                next.lines = Some(lines);
                to(&mut next, Stage::Expert);
            }
            Happens::Answered(Answer::Expert { log }) => {
                next.expert = Some(Shared::new(log));
                to(&mut next, Stage::Crowd);
            }
            Happens::Answered(Answer::Crowd { fared }) => {
                next.fared = Some(fared);
                to(&mut next, Stage::Done);
            }
            Happens::Answered(Answer::Failed { why }) => {
                next.failed = Some(why);
                to(&mut next, Stage::Done);
            }
            Happens::Answered(_) => {}
        }
        next.into()
    }
}

/// The thread and what it is asked about; it lives on between two jobs, since it keeps what it has
/// read on the machine.
#[derive(Default)]
struct Line {
    thread: Option<Thread>,
    is_busy: bool,
    about: Worked,
}

/// A job of the desk as the thread is told of it.
pub fn worked(job: &JobFile) -> Worked {
    Worked {
        job: NAME.to_owned(),
        letters: Some(share::to_letters(job)),
        seed: SEED,
        log: Vec::new(),
    }
}

/// Judges a sound job, anew after every change; of one that is not, nothing is said.
#[hook]
pub fn use_judged(job: Option<&JobFile>) -> Judged {
    let judged = use_reducer(Judged::default);
    let line = use_mut_ref(Line::default);
    let dispatch = judged.dispatcher();
    use_effect_with(job.cloned(), move |job| {
        dispatch.dispatch(Happens::Changed);
        {
            let mut line = line.borrow_mut();
            if line.is_busy {
                // It works on what is no longer asked.
                line.thread = None;
                line.is_busy = false;
            }
        }
        let pause = job.as_ref().map(|job| {
            let about = worked(job);
            Timeout::new(PAUSE_MS, move || {
                line.borrow_mut().about = about;
                dispatch.dispatch(Happens::Answered(Answer::Ready));
                ask(&line, Question::Fair, &dispatch);
            })
        });
        move || drop(pause)
    });
    (*judged).clone()
}

fn ask(
    line: &Rc<RefCell<Line>>,
    question: fn(Worked) -> Question,
    dispatch: &UseReducerDispatcher<Judged>,
) {
    let mut held = line.borrow_mut();
    let question = question(held.about.clone());
    held.is_busy = true;
    if let Some(thread) = &held.thread {
        return thread.again(&question);
    }
    let hears = {
        let (line, dispatch) = (Rc::downgrade(line), dispatch.clone());
        Callback::from(move |answer: Answer| {
            let Some(line) = line.upgrade() else { return };
            let next: Option<fn(Worked) -> Question> = match &answer {
                Answer::Fair { .. } => Some(Question::Expert),
                Answer::Expert { .. } => Some(|worked| Question::Crowd {
                    worked,
                    kinds: Kind::ALL.to_vec(),
                    runs: RUNS,
                }),
                _ => None,
            };
            let is_over = matches!(answer, Answer::Crowd { .. } | Answer::Failed { .. });
            dispatch.dispatch(Happens::Answered(answer));
            if is_over {
                line.borrow_mut().is_busy = false;
            }
            if let Some(next) = next {
                ask(&line, next, &dispatch);
            }
        })
    };
    held.thread = Thread::ask(&question, hears);
    if held.thread.is_none() {
        held.is_busy = false;
        let why = "This browser has no threads, so the job cannot be judged here.".to_owned();
        dispatch.dispatch(Happens::Answered(Answer::Failed { why }));
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn after(answers: impl IntoIterator<Item = Answer>) -> Rc<Judged> {
        let judged = Rc::new(Judged::default());
        answers.into_iter().fold(judged, |judged, answer| {
            judged.reduce(Happens::Answered(answer))
        })
    }

    #[test]
    fn what_was_said_stands_until_it_is_said_anew() {
        let lines = vec![FairnessLine {
            words: "Fair.".to_owned(),
            fair: true,
        }];
        let said = Answer::Fair {
            lines: lines.clone(),
        };
        let first = after([Answer::Ready, said]);
        assert_eq!(first.stage, Stage::Expert);
        let changed = first.reduce(Happens::Changed);
        assert_eq!(changed.stage, Stage::Resting);
        assert_eq!(changed.lines, Some(lines));
    }

    #[test]
    fn a_thread_that_fails_ends_the_waiting_and_says_why() {
        let why = "No.".to_owned();
        let judged = after([Answer::Ready, Answer::Failed { why: why.clone() }]);
        assert_eq!(
            (judged.stage, judged.failed.clone()),
            (Stage::Done, Some(why))
        );
    }
}

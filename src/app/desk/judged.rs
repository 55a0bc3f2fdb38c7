//! The job on the desk, judged in threads: whether it is fair, how the expert works it, how simulated
//! apprentices fare, all three at once. Begins by itself once the writer pauses, and again after every
//! change; what was said before stands until it is said anew.

use std::cell::RefCell;
use std::collections::BTreeMap;
use std::rc::Rc;

use gloo::timers::callback::Timeout;
use wasm_bindgen_futures::spawn_local;
use yew::prelude::*;

use crate::app::rows::Rows;
use crate::app::rows::use_rows;
use crate::app::shared::Shared;
use crate::app::worker::Answer;
use crate::app::worker::Question;
use crate::app::worker::Thread;
use crate::app::worker::Worked;
use crate::bench::job::Entry;
use crate::expert::crowd::Kind;
use crate::say;
use crate::scenario::job_file::JobFile;
use crate::scenario::share;
use crate::score::FairnessLine;
use crate::score::Fared;
use crate::score::Row;

/// How long a writer must pause before the job is judged, ms.
const PAUSE_MS: u32 = 1200;
/// Apprentices of each kind. Design choice: a first impression in some seconds.
const RUNS: u32 = 5;
/// Seed of what is worked here; the first apprentice of a kind has it.
pub const SEED: u64 = 1;
/// Name of the job in the thread: none that ships.
const NAME: &str = "draft";

/// What is being worked out.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Stage {
    /// The writer has not paused yet.
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

/// Each has a thread of its own, since none needs what another one finds.
const QUESTIONS: [Stage; 3] = [Stage::Comparing, Stage::Expert, Stage::Crowd];

/// What is known so far.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Judged {
    /// The writer has paused; it is being judged, or was.
    is_begun: bool,
    /// What is not answered yet, and how far it is.
    waiting: BTreeMap<Stage, (usize, usize)>,
    /// Sentences about the job.
    pub lines: Option<Vec<FairnessLine>>,
    /// What the expert did.
    pub expert: Option<Shared<Vec<Entry>>>,
    /// How each kind of apprentice fared.
    pub fared: Option<Vec<Fared>>,
    /// Why there is no more.
    pub failed: Option<String>,
}

impl Judged {
    /// The first thing that is still being worked out.
    pub fn stage(&self) -> Stage {
        match self.waiting.keys().next() {
            _ if !self.is_begun => Stage::Resting,
            Some(stage) => *stage,
            None => Stage::Done,
        }
    }

    /// So many of so many of it are done.
    pub fn progress(&self) -> (usize, usize) {
        let first = self.waiting.values().next();
        first.copied().unwrap_or_default()
    }
}

/// What happens to it.
pub enum Happens {
    /// The job was changed.
    Changed,
    /// The writer has paused.
    Begun,
    /// A thread answers.
    Answered(Stage, Answer),
}

impl Reducible for Judged {
    type Action = Happens;

    fn reduce(self: Rc<Self>, what: Happens) -> Rc<Self> {
        let mut next = (*self).clone();
        match what {
            Happens::Changed => {
                next.failed = None;
                next.is_begun = false;
                next.waiting.clear();
            }
            Happens::Begun => {
                next.is_begun = true;
                next.waiting = QUESTIONS.map(|stage| (stage, (0, 0))).into();
            }
            Happens::Answered(stage, answer) => next.hear(stage, answer),
        }
        next.into()
    }
}

impl Judged {
    fn hear(&mut self, stage: Stage, answer: Answer) {
        match answer {
            Answer::Progress { done, of } => {
                if let Some(progress) = self.waiting.get_mut(&stage) {
                    *progress = (done, of);
                }
                return;
            }
            Answer::Fair { lines } => self.lines = Some(lines),
            Answer::Expert { log } => self.expert = Some(Shared::new(log)),
            Answer::Crowd { fared } => self.fared = Some(fared),
            Answer::Failed { why } => self.failed = Some(why),
            _ => return,
        }
        self.waiting.remove(&stage);
    }
}

/// A thread; it lives on between two jobs, since it keeps what it has read on the machine.
#[derive(Default)]
struct Line {
    thread: Option<Thread>,
    is_busy: bool,
}

/// The threads, and what they are asked about.
#[derive(Default)]
struct Lines {
    lines: BTreeMap<Stage, Line>,
    about: Worked,
    /// The machine whose rows the comparison waits for.
    waits_for: Option<String>,
    /// The machine whose rows the thread that compares has.
    has_rows_of: Option<String>,
}

impl Lines {
    /// What works on something that is no longer asked is ended.
    fn stop(&mut self) {
        self.waits_for = None;
        self.lines.retain(|_, line| !line.is_busy);
        if !self.lines.contains_key(&Stage::Comparing) {
            self.has_rows_of = None;
        }
    }

    /// A thread has said something; after its last word it rests, and one that failed is replaced.
    fn answered(&mut self, stage: Stage, answer: &Answer) {
        match answer {
            Answer::Progress { .. } => {}
            Answer::Failed { .. } => {
                let ended = self.lines.remove(&stage);
                if stage == Stage::Comparing {
                    self.has_rows_of = None;
                }
                // Not here and now: it is being heard.
                spawn_local(async move { drop(ended) });
            }
            _ => {
                if let Some(line) = self.lines.get_mut(&stage) {
                    line.is_busy = false;
                }
            }
        }
    }

    /// What is asked at a stage.
    fn question(&self, stage: Stage, rows: Vec<Row>) -> Question {
        let worked = self.about.clone();
        match stage {
            Stage::Crowd => Question::Crowd {
                worked,
                kinds: Kind::ALL.to_vec(),
                runs: RUNS,
            },
            Stage::Expert => Question::Expert(worked),
            _ => Question::Fair { worked, rows },
        }
    }
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

/// Judges a sound job, anew after every change; of one that is not, nothing is said. What every fault
/// of its machine reads like is worked out from the start, while the writer still writes.
#[hook]
pub fn use_judged(job: Option<&JobFile>, machine: &str) -> Judged {
    let judged = use_reducer(Judged::default);
    let lines = use_mut_ref(Lines::default);
    let rows = use_rows(machine);
    let latest = use_mut_ref(Rows::default);
    *latest.borrow_mut() = rows.clone();
    {
        let (lines, dispatch, latest) = (lines.clone(), judged.dispatcher(), latest.clone());
        use_effect_with(job.cloned(), move |job| {
            dispatch.dispatch(Happens::Changed);
            lines.borrow_mut().stop();
            let pause = job.as_ref().map(|job| {
                let (about, machine) = (worked(job), job.machine.clone());
                Timeout::new(PAUSE_MS, move || {
                    {
                        let mut held = lines.borrow_mut();
                        held.about = about;
                        held.waits_for = Some(machine);
                    }
                    dispatch.dispatch(Happens::Begun);
                    for stage in [Stage::Expert, Stage::Crowd] {
                        ask(&lines, stage, Vec::new(), &dispatch);
                    }
                    let rows = latest.borrow().clone();
                    compare(&lines, &rows, &dispatch);
                })
            });
            move || drop(pause)
        });
    }
    {
        let dispatch = judged.dispatcher();
        use_effect_with(rows, move |rows| compare(&lines, rows, &dispatch));
    }
    (*judged).clone()
}

/// Asks for the comparison as soon as the rows of its machine are there; tells how far they are.
fn compare(lines: &Rc<RefCell<Lines>>, rows: &Rows, dispatch: &UseReducerDispatcher<Judged>) {
    let machine = {
        let held = lines.borrow();
        let waits_for = held.waits_for.as_ref();
        match waits_for.filter(|machine| **machine == rows.machine) {
            Some(machine) => machine.clone(),
            None => return,
        }
    };
    if !rows.is_whole() && rows.failed.is_none() {
        let (done, of) = (rows.rows.len(), rows.of);
        let progress = Answer::Progress { done, of };
        return dispatch.dispatch(Happens::Answered(Stage::Comparing, progress));
    }
    let has_them = {
        let mut held = lines.borrow_mut();
        held.waits_for = None;
        let machine = rows.is_whole().then_some(machine);
        let has_them = held.has_rows_of == machine;
        held.has_rows_of = machine;
        has_them
    };
    let given = if has_them || !rows.is_whole() {
        Vec::new()
    } else {
        rows.rows.iter().map(|row| (**row).clone()).collect()
    };
    ask(lines, Stage::Comparing, given, dispatch);
}

fn ask(
    lines: &Rc<RefCell<Lines>>,
    stage: Stage,
    rows: Vec<Row>,
    dispatch: &UseReducerDispatcher<Judged>,
) {
    let mut held = lines.borrow_mut();
    let question = held.question(stage, rows);
    let line = held.lines.entry(stage).or_default();
    line.is_busy = true;
    if let Some(thread) = &line.thread {
        return thread.again(&question);
    }
    let hears = {
        let (lines, dispatch) = (Rc::downgrade(lines), dispatch.clone());
        Callback::from(move |answer: Answer| {
            let Some(lines) = lines.upgrade() else { return };
            lines.borrow_mut().answered(stage, &answer);
            dispatch.dispatch(Happens::Answered(stage, answer));
        })
    };
    line.thread = Thread::ask(&question, hears);
    line.is_busy = line.thread.is_some();
    if !line.is_busy {
        drop(held);
        let why = say!("This browser has no threads, so the job cannot be judged here.").to_owned();
        dispatch.dispatch(Happens::Answered(stage, Answer::Failed { why }));
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn after(answers: impl IntoIterator<Item = (Stage, Answer)>) -> Rc<Judged> {
        let judged = Rc::new(Judged::default()).reduce(Happens::Begun);
        answers.into_iter().fold(judged, |judged, (stage, answer)| {
            judged.reduce(Happens::Answered(stage, answer))
        })
    }

    fn said() -> Answer {
        Answer::Fair {
            lines: vec![FairnessLine {
                words: "Fair.".to_owned(),
                fair: true,
                open: false,
            }],
        }
    }

    #[test]
    fn what_was_said_stands_until_it_is_said_anew() {
        let first = after([(Stage::Comparing, said())]);
        assert_eq!(first.stage(), Stage::Expert);
        let lines = first.lines.clone();
        let changed = first.reduce(Happens::Changed);
        assert_eq!(changed.stage(), Stage::Resting);
        assert!(changed.lines.is_some() && changed.lines == lines);
    }

    #[test]
    fn answers_come_in_any_order_and_the_first_that_is_missing_is_told() {
        let progress = |done| Answer::Progress { done, of: 9 };
        let crowd = Answer::Crowd { fared: Vec::new() };
        let judged = after([
            (Stage::Crowd, crowd),
            (Stage::Expert, progress(1)),
            (Stage::Comparing, progress(4)),
        ]);
        assert_eq!(
            (judged.stage(), judged.progress()),
            (Stage::Comparing, (4, 9))
        );
        let judged = judged.reduce(Happens::Answered(Stage::Comparing, said()));
        assert_eq!((judged.stage(), judged.progress()), (Stage::Expert, (1, 9)));
        let log = Answer::Expert { log: Vec::new() };
        let judged = judged.reduce(Happens::Answered(Stage::Expert, log));
        assert_eq!(judged.stage(), Stage::Done);
    }

    #[test]
    fn a_thread_that_fails_ends_its_waiting_and_says_why() {
        let why = "No.".to_owned();
        let failed = |stage| (stage, Answer::Failed { why: why.clone() });
        let judged = after(QUESTIONS.map(failed));
        assert_eq!(
            (judged.stage(), judged.failed.clone()),
            (Stage::Done, Some(why.clone()))
        );
    }
}

//! The debrief's questions to the thread: which causes were likely after each step and what each
//! decision was worth; and, where it is asked for, how the expert works the same job.

use std::cell::Cell;
use std::rc::Rc;

use yew::prelude::*;

use crate::app::asking::Asking;
use crate::app::asking::worked_of;
use crate::app::shared::Shared;
use crate::app::worker::Answer;
use crate::app::worker::Likely;
use crate::app::worker::Question;
use crate::bench::job::Entry;
use crate::bench::job::Job;
use crate::expert::Reckoning;

/// How far the answer is.
#[derive(Clone, Debug, PartialEq)]
pub enum Asked<T> {
    /// So many of so many steps are gone through.
    Waiting(usize, usize),
    /// It is here.
    Told(T),
    /// It will not come, plain words.
    None(String),
}

/// Asks once for a job; the thread ends with the last answer, or with the screen. What each decision
/// was worth comes some seconds after the likely causes.
#[hook]
pub fn use_likely(
    job: &Shared<Job>,
    letters: Option<&AttrValue>,
) -> (Asked<Shared<Likely>>, Asked<Shared<Reckoning>>) {
    let asked = use_state_eq(|| Asked::Waiting(0, 0));
    let reckoned = use_state_eq(|| Asked::Waiting(0, 0));
    {
        let (asked, reckoned) = (asked.setter(), reckoned.setter());
        use_effect_with((job.clone(), letters.cloned()), move |(job, letters)| {
            let is_told = Rc::new(Cell::new(false));
            let asking = Asking::ask(
                worked_of(job, letters.as_deref()),
                Question::Likely,
                move |answer| match answer {
                    Answer::Progress { done, of } => asked.set(Asked::Waiting(done, of)),
                    Answer::Likely(likely) => {
                        is_told.set(true);
                        asked.set(Asked::Told(Shared::new(likely)));
                    }
                    Answer::Reckoned(told) => reckoned.set(Asked::Told(Shared::new(told))),
                    Answer::Failed { why } => {
                        // The chart stays when only what comes after it fails.
                        if !is_told.get() {
                            asked.set(Asked::None(why.clone()));
                        }
                        reckoned.set(Asked::None(why));
                    }
                    _ => {}
                },
            );
            move || drop(asking)
        });
    }
    ((*asked).clone(), (*reckoned).clone())
}

/// Asks how the expert works a job, once `wanted`.
#[hook]
pub fn use_expert(
    job: &Shared<Job>,
    letters: Option<&AttrValue>,
    wanted: bool,
) -> Asked<Shared<Vec<Entry>>> {
    let asked = use_state_eq(|| Asked::Waiting(0, 0));
    {
        let asked = asked.setter();
        use_effect_with(
            (job.clone(), letters.cloned(), wanted),
            move |(job, letters, wanted)| {
                let asking = wanted.then(|| {
                    Asking::ask(
                        worked_of(job, letters.as_deref()),
                        Question::Expert,
                        move |answer| match answer {
                            Answer::Expert { log } => asked.set(Asked::Told(Shared::new(log))),
                            Answer::Failed { why } => asked.set(Asked::None(why)),
                            _ => {}
                        },
                    )
                });
                move || drop(asking)
            },
        );
    }
    (*asked).clone()
}

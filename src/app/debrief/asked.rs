//! The debrief's question to the thread: which causes were likely after each step.

use std::cell::Cell;

use yew::prelude::*;

use crate::app::shared::Shared;
use crate::app::worker::Answer;
use crate::app::worker::Likely;
use crate::app::worker::Question;
use crate::app::worker::Thread;
use crate::bench::job::Job;
use crate::expert::Reckoning;

/// How far the answer is.
#[derive(Clone, Debug, PartialEq)]
pub enum Asked {
    /// So many of so many steps are gone through.
    Waiting(usize, usize),
    /// It is here.
    Told(Shared<Likely>),
    /// It will not come, plain words.
    None(String),
}

/// Asks once for a job; the thread ends with the last answer, or with the screen. What each decision
/// was worth comes some seconds after the likely causes.
#[hook]
pub fn use_likely(job: &Shared<Job>) -> (Asked, Option<Shared<Reckoning>>) {
    let asked = use_state_eq(|| Asked::Waiting(0, 0));
    let reckoned = use_state_eq(|| None);
    let thread = use_mut_ref(|| None::<Thread>);
    {
        let (asked, reckoned) = (asked.clone(), reckoned.clone());
        use_effect_with(job.clone(), move |job| {
            let question = Question::Likely {
                job: job.scenario().id.clone(),
                seed: job.seed(),
                log: job.log().to_vec(),
            };
            let (setter, reckoned) = (asked.setter(), reckoned.setter());
            let is_told = Cell::new(false);
            let answered = Callback::from(move |answer| match answer {
                Answer::Ready | Answer::Crowd { .. } => {}
                Answer::Progress { done, of } => setter.set(Asked::Waiting(done, of)),
                Answer::Likely(likely) => {
                    is_told.set(true);
                    setter.set(Asked::Told(Shared::new(likely)));
                }
                Answer::Reckoned(told) => reckoned.set(Some(Shared::new(told))),
                // The chart stays when only what comes after it fails.
                Answer::Failed { .. } if is_told.get() => {}
                Answer::Failed { why } => setter.set(Asked::None(why)),
            });
            *thread.borrow_mut() = Thread::ask(&question, answered);
            if thread.borrow().is_none() {
                asked.set(Asked::None("This browser has no threads.".to_owned()));
            }
            move || drop(thread.borrow_mut().take())
        });
    }
    ((*asked).clone(), (*reckoned).clone())
}

//! The debrief's question to the thread: which causes were likely after each step.

use yew::prelude::*;

use crate::app::shared::Shared;
use crate::app::worker::Answer;
use crate::app::worker::Likely;
use crate::app::worker::Question;
use crate::app::worker::Thread;
use crate::bench::job::Job;

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

/// Asks once for a job; the thread ends with the answer, or with the screen.
#[hook]
pub fn use_likely(job: &Shared<Job>) -> Asked {
    let asked = use_state_eq(|| Asked::Waiting(0, 0));
    let thread = use_mut_ref(|| None::<Thread>);
    {
        let asked = asked.clone();
        use_effect_with(job.clone(), move |job| {
            let question = Question::Likely {
                job: job.scenario().id.clone(),
                seed: job.seed(),
                log: job.log().to_vec(),
            };
            let setter = asked.setter();
            let answered = Callback::from(move |answer| match answer {
                Answer::Ready | Answer::Crowd { .. } => {}
                Answer::Progress { done, of } => setter.set(Asked::Waiting(done, of)),
                Answer::Likely(likely) => setter.set(Asked::Told(Shared::new(likely))),
                Answer::Failed { why } => setter.set(Asked::None(why)),
            });
            *thread.borrow_mut() = Thread::ask(&question, answered);
            if thread.borrow().is_none() {
                asked.set(Asked::None("This browser has no threads.".to_owned()));
            }
            move || drop(thread.borrow_mut().take())
        });
    }
    (*asked).clone()
}

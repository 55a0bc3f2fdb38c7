//! A question about a job on its way to the thread. A job of one's own is not known there: its letters
//! are found first and go with the question.

use std::cell::RefCell;
use std::rc::Rc;

use wasm_bindgen_futures::spawn_local;
use yew::Callback;

use crate::app::library;
use crate::app::own;
use crate::app::worker::Answer;
use crate::app::worker::Question;
use crate::app::worker::Thread;
use crate::app::worker::Worked;
use crate::bench::job::Job;
use crate::say;

/// None before the thread has started; `Err` once the answer is wanted no more.
type Held = Rc<RefCell<Result<Option<Thread>, ()>>>;

/// Wanted until it is dropped; the thread ends then.
pub struct Asking(Held);

impl Asking {
    /// Asks; `answered` hears every answer, and `Failed` when there is no thread.
    pub fn ask(
        worked: Worked,
        question: fn(Worked) -> Question,
        answered: impl Fn(Answer) + 'static,
    ) -> Self {
        let held: Held = Rc::new(RefCell::new(Ok(None)));
        let asking = Self(Rc::clone(&held));
        spawn_local(async move {
            let mut worked = worked;
            if worked.letters.is_none() && library::find(&worked.job).is_none() {
                worked.letters = own::letters(&worked.job).await;
            }
            let answered = Callback::from(answered);
            if held.borrow().is_err() {
                return;
            }
            let thread = Thread::ask(&question(worked), answered.clone());
            if thread.is_none() {
                let why = say!("This browser has no threads.").to_owned();
                answered.emit(Answer::Failed { why });
            }
            *held.borrow_mut() = Ok(thread);
        });
        asking
    }
}

impl Drop for Asking {
    fn drop(&mut self) {
        *self.0.borrow_mut() = Err(());
    }
}

/// A job as the thread is told of it; with letters where it is known nowhere else.
pub fn worked_of(job: &Job, letters: Option<&str>) -> Worked {
    Worked {
        letters: letters.map(str::to_owned),
        ..worked(job)
    }
}

/// A job as the thread is told of it.
pub fn worked(job: &Job) -> Worked {
    Worked {
        job: job.scenario().id.clone(),
        letters: None,
        seed: job.seed(),
        log: job.log().to_vec(),
    }
}

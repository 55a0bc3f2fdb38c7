//! What the candidate's decisions were worth: worked out by a thread, one job after the other, from
//! when a job is handed over. Handing in waits for what is still missing.

use std::cell::RefCell;
use std::task::Poll;

use gloo::timers::callback::Timeout;
use js_sys::Function;
use js_sys::Promise;
use wasm_bindgen::JsValue;
use wasm_bindgen_futures::JsFuture;

use crate::app::asking::Asking;
use crate::app::worker::Answer;
use crate::app::worker::Question;
use crate::app::worker::Worked;
use crate::expert::Reckoning;

/// A job that takes longer counts by the bill: nobody waits for ever. Two seconds are usual.
const LONGEST_MS: u32 = 120_000;

/// What came of one job.
enum Came {
    Waiting,
    Told(Reckoning),
    /// No thread, or none that ends.
    Never,
}

/// What is asked now; it ends when this is dropped.
struct Asked {
    _asking: Asking,
    _longest: Timeout,
}

thread_local! {
    static JOBS: RefCell<Vec<(Worked, Came)>> = const { RefCell::new(Vec::new()) };
    static NOW: RefCell<Option<Asked>> = const { RefCell::new(None) };
    static WAITING: RefCell<Vec<Function>> = const { RefCell::new(Vec::new()) };
}

/// Has a job worked out when its turn comes; once is enough.
pub fn want(worked: &Worked) {
    JOBS.with_borrow_mut(|jobs| {
        if jobs.iter().all(|(known, _)| known != worked) {
            jobs.push((worked.clone(), Came::Waiting));
        }
    });
    next();
}

/// What the decisions of a job were worth, as soon as it is known; none when it will not be.
pub async fn of(worked: &Worked) -> Option<Reckoning> {
    want(worked);
    loop {
        if let Poll::Ready(came) = JOBS.with_borrow(|jobs| settled(jobs, worked)) {
            return came;
        }
        changed().await;
    }
}

/// What the decisions of a job were worth, where that is known already.
pub fn known(worked: &Worked) -> Option<Reckoning> {
    match JOBS.with_borrow(|jobs| settled(jobs, worked)) {
        Poll::Ready(came) => came,
        Poll::Pending => None,
    }
}

/// What came of a job. One that was forgotten meanwhile is never known.
fn settled(jobs: &[(Worked, Came)], worked: &Worked) -> Poll<Option<Reckoning>> {
    match jobs.iter().find(|(known, _)| known == worked) {
        Some((_, Came::Waiting)) => Poll::Pending,
        Some((_, Came::Told(reckoning))) => Poll::Ready(Some(reckoning.clone())),
        Some((_, Came::Never)) | None => Poll::Ready(None),
    }
}

/// Forgets everything: another candidate.
pub fn forget() {
    NOW.take();
    JOBS.take();
    wake();
}

async fn changed() {
    let promise = Promise::new(&mut |resolve, _| WAITING.with_borrow_mut(|all| all.push(resolve)));
    // It is only ever resolved.
    let _ = JsFuture::from(promise).await;
}

fn wake() {
    for resolve in WAITING.take() {
        // A promise's own function takes whatever it gets.
        let _ = resolve.call0(&JsValue::NULL);
    }
}

fn next() {
    if NOW.with_borrow(Option::is_some) {
        return;
    }
    let waits =
        |(worked, came): &(Worked, Came)| matches!(came, Came::Waiting).then(|| worked.clone());
    let Some(worked) = JOBS.with_borrow(|jobs| jobs.iter().find_map(waits)) else {
        return;
    };
    let (told, late) = (worked.clone(), worked.clone());
    let asked = Asked {
        _asking: Asking::ask(worked, Question::Reckoned, move |answer| match answer {
            Answer::Reckoned(reckoning) => settle(&told, Came::Told(reckoning)),
            Answer::Failed { .. } => settle(&told, Came::Never),
            _ => {}
        }),
        _longest: Timeout::new(LONGEST_MS, move || settle(&late, Came::Never)),
    };
    NOW.set(Some(asked));
}

fn settle(worked: &Worked, came: Came) {
    NOW.take();
    JOBS.with_borrow_mut(|jobs| {
        if let Some((_, is)) = jobs.iter_mut().find(|(known, _)| known == worked) {
            *is = came;
        }
    });
    wake();
    next();
}

#[cfg(test)]
mod tests {
    use super::*;

    fn job(seed: u64) -> Worked {
        Worked {
            seed,
            ..Worked::default()
        }
    }

    #[test]
    fn a_job_that_was_forgotten_is_waited_for_no_more() {
        let jobs = [
            (job(1), Came::Waiting),
            (job(2), Came::Told(Reckoning::default())),
            (job(3), Came::Never),
        ];
        let known = Some(Reckoning::default());
        assert_eq!(settled(&jobs, &job(1)), Poll::Pending);
        assert_eq!(settled(&jobs, &job(2)), Poll::Ready(known));
        assert_eq!(settled(&jobs, &job(3)), Poll::Ready(None));
        assert_eq!(settled(&[], &job(1)), Poll::Ready(None), "another sits");
    }
}

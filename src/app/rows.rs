//! What every fault of a machine reads like: the same for every job on it, so worked out once a visit,
//! in as many threads as the computer has to spare, and kept.

use std::cell::RefCell;
use std::collections::BTreeMap;
use std::collections::VecDeque;
use std::rc::Rc;

use wasm_bindgen_futures::spawn_local;
use yew::prelude::*;

use crate::app::shared::Shared;
use crate::app::worker::Answer;
use crate::app::worker::Question;
use crate::app::worker::Thread;
use crate::say;
use crate::scenario;
use crate::score::Row;

/// Threads at most; each holds a program of its own. Design choice.
const MOST_THREADS: f64 = 4.0;
/// Faults a thread is asked about at once: some tenths of a second. Design choice.
const AT_ONCE: usize = 4;

thread_local! {
    /// Rows by machine and fault.
    static KNOWN: RefCell<BTreeMap<String, BTreeMap<String, Shared<Row>>>> = RefCell::default();
}

/// What is known so far.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Rows {
    /// Short name of the machine.
    pub machine: String,
    /// Rows, in the order of the catalogue.
    pub rows: Vec<Shared<Row>>,
    /// Faults of the machine.
    pub of: usize,
    /// Why there are no more.
    pub failed: Option<String>,
}

impl Rows {
    /// Of a machine, as far as is known.
    fn known(machine: &str) -> Self {
        let faults = faults(machine);
        let rows = KNOWN.with_borrow(|known| {
            let known = known.get(machine);
            let row = |fault: &String| known?.get(fault).cloned();
            faults.iter().filter_map(row).collect()
        });
        Self {
            machine: machine.to_owned(),
            rows,
            of: faults.len(),
            failed: None,
        }
    }

    /// Nothing is missing.
    pub fn is_whole(&self) -> bool {
        self.of > 0 && self.rows.len() == self.of
    }
}

/// Names of the faults of a machine that ships, as the catalogue orders them.
fn faults(machine: &str) -> Vec<String> {
    let pack = scenario::machines()
        .ok()
        .and_then(|packs| packs.get(machine));
    let faults = pack.map_or(&[][..], |pack| &pack.model.faults);
    faults.iter().map(|fault| fault.id.clone()).collect()
}

/// What every fault of a machine reads like; what is missing is worked out as long as somebody looks.
#[hook]
pub fn use_rows(machine: &str) -> Rows {
    let rows = use_state_eq(|| Rows::known(machine));
    {
        let rows = rows.setter();
        use_effect_with(machine.to_owned(), move |machine| {
            rows.set(Rows::known(machine));
            let told = {
                let machine = machine.clone();
                Callback::from(move |failed: Option<String>| {
                    let known = Rows::known(&machine);
                    rows.set(Rows { failed, ..known });
                })
            };
            let readers = Readers::start(machine, told);
            move || drop(readers)
        });
    }
    (*rows).clone()
}

/// Threads that read, and what is left for them.
struct Readers {
    machine: String,
    left: VecDeque<Vec<String>>,
    threads: Vec<Thread>,
    n_busy: usize,
    failed: Option<String>,
    told: Callback<Option<String>>,
}

impl Readers {
    /// Sets threads to work on what is missing; they end when this is dropped.
    fn start(machine: &str, told: Callback<Option<String>>) -> Rc<RefCell<Self>> {
        let known = Rows::known(machine);
        let is_missing = |fault: &String| known.rows.iter().all(|row| row.fault != *fault);
        let missing: Vec<String> = faults(machine).into_iter().filter(is_missing).collect();
        let readers = Rc::new(RefCell::new(Self {
            machine: machine.to_owned(),
            left: in_parts(&missing),
            threads: Vec::new(),
            n_busy: 0,
            failed: None,
            told: told.clone(),
        }));
        let cores = gloo::utils::window().navigator().hardware_concurrency();
        let wanted = (cores - 1.0).clamp(1.0, MOST_THREADS) as usize;
        for at in 0..wanted {
            let Some(question) = readers.borrow_mut().next() else {
                break;
            };
            let hears = {
                let readers = Rc::downgrade(&readers);
                Callback::from(move |answer: Answer| {
                    if let Some(readers) = readers.upgrade() {
                        Self::hears(&readers, at, answer);
                    }
                })
            };
            match Thread::ask(&question, hears) {
                Some(thread) => readers.borrow_mut().threads.push(thread),
                None => {
                    let why =
                        say!("This browser has no threads, so nothing can be computed in it.");
                    told.emit(Some(why.to_owned()));
                    break;
                }
            }
        }
        readers
    }

    /// The next question; a thread is busy with it from now on.
    fn next(&mut self) -> Option<Question> {
        let faults = self.left.pop_front()?;
        self.n_busy += 1;
        Some(Question::Rows {
            machine: self.machine.clone(),
            faults,
        })
    }

    fn hears(readers: &Rc<RefCell<Self>>, at: usize, answer: Answer) {
        let mut failed = None;
        match answer {
            Answer::Rows { rows } => keep(&readers.borrow().machine, rows),
            Answer::Failed { why } => failed = Some(why),
            _ => return,
        }
        let (told, failed) = {
            let mut held = readers.borrow_mut();
            held.n_busy = held.n_busy.saturating_sub(1);
            let goes_on = failed.is_none();
            held.failed = failed.or(held.failed.take());
            if goes_on
                && let Some(question) = held.next()
                && let Some(thread) = held.threads.get(at)
            {
                thread.again(&question);
            }
            if held.n_busy == 0 {
                // Not here and now: one of them is being heard.
                let ended = std::mem::take(&mut held.threads);
                spawn_local(async move { drop(ended) });
            }
            (held.told.clone(), held.failed.clone())
        };
        told.emit(failed);
    }
}

fn keep(machine: &str, rows: Vec<Row>) {
    KNOWN.with_borrow_mut(|known| {
        let known = known.entry(machine.to_owned()).or_default();
        known.extend(
            rows.into_iter()
                .map(|row| (row.fault.clone(), Shared::new(row))),
        );
    });
}

/// A list in parts of a few, in its order.
fn in_parts(list: &[String]) -> VecDeque<Vec<String>> {
    list.chunks(AT_ONCE).map(<[String]>::to_vec).collect()
}

#[cfg(all(test, not(target_arch = "wasm32")))]
mod tests {
    use super::*;

    fn row(fault: &str) -> Row {
        Row {
            fault: fault.to_owned(),
            what: String::new(),
            cells: Vec::new(),
        }
    }

    #[test]
    fn what_is_read_is_kept_in_the_order_of_the_catalogue_and_whole_once_nothing_is_missing() {
        let faults = faults("P");
        assert!(!Rows::known("P").is_whole() && Rows::known("P").rows.is_empty());
        keep("P", vec![row(&faults[2]), row(&faults[0])]);
        let order = |rows: &Rows| -> Vec<String> {
            let rows = rows.rows.iter();
            rows.map(|row| row.fault.clone()).collect()
        };
        assert_eq!(order(&Rows::known("P")), [&*faults[0], &*faults[2]]);
        assert!(Rows::known("N").rows.is_empty(), "each machine has its own");
        keep("P", faults.iter().map(|fault| row(fault)).collect());
        assert!(Rows::known("P").is_whole());
        assert_eq!(order(&Rows::known("P")), faults);
        assert!(!Rows::known("no such machine").is_whole());
    }

    #[test]
    fn parts_hold_each_fault_once() {
        let list: Vec<String> = (0..10).map(|n| n.to_string()).collect();
        let parts = in_parts(&list);
        assert_eq!(parts.iter().map(Vec::len).collect::<Vec<_>>(), [4, 4, 2]);
        assert_eq!(parts.into_iter().flatten().collect::<Vec<_>>(), list);
    }
}

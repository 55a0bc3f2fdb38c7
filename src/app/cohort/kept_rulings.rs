//! The rulings in force, kept in this browser with every change. Those of an earlier look are offered
//! and not put in force by themselves: they may be of another class.

use std::ops::Deref;

use wasm_bindgen_futures::spawn_local;
use yew::prelude::*;

use crate::app::shared::Shared;
use crate::app::store::Store;
use crate::records::rulings::Ruling;
use crate::records::rulings::merged;
use crate::scenario::read::read_back;

/// The key under which they are kept.
const KEY: &str = "rulings";

/// Rulings in force, and those of an earlier look that nobody has decided on yet.
#[derive(Clone, Debug, PartialEq)]
pub struct Rulings {
    now: Shared<Vec<Ruling>>,
    earlier: Vec<Ruling>,
}

impl Default for Rulings {
    fn default() -> Self {
        Self {
            now: Shared::new(Vec::new()),
            earlier: Vec::new(),
        }
    }
}

impl Deref for Rulings {
    type Target = Shared<Vec<Ruling>>;

    fn deref(&self) -> &Self::Target {
        &self.now
    }
}

/// What happens to rulings.
#[derive(Clone, Debug, PartialEq)]
pub enum Change {
    /// Those that were kept are read.
    Earlier(Vec<Ruling>),
    /// Those of an earlier look are put in force, or forgotten.
    Decided(bool),
    /// One is made.
    Made(Ruling),
    /// One is taken back.
    TakenBack(usize),
    /// A file of them is opened: they hold beside those made here.
    Opened(Vec<Ruling>),
}

impl Rulings {
    /// What was kept by an earlier look; nothing where nothing can be kept.
    pub async fn kept() -> Change {
        let text = Store::open().await.get(KEY).await.ok().flatten();
        Change::Earlier(text.and_then(|text| read_back(&text)).unwrap_or_default())
    }

    /// Changes them and keeps the change.
    pub fn change(&mut self, change: Change) {
        if let Change::Earlier(earlier) = change {
            self.earlier = earlier;
            return;
        }
        self.apply(change);
        let text = serde_json::to_string(&self.to_keep()).unwrap_or_default();
        spawn_local(async move {
            // Where nothing can be kept the page says so, and the file is there to be saved.
            let _ = Store::open().await.put(KEY, &text).await;
        });
    }

    fn apply(&mut self, change: Change) {
        let mut all = (*self.now).clone();
        match change {
            Change::Earlier(_) => {}
            Change::Decided(holds) => {
                let mut earlier = std::mem::take(&mut self.earlier);
                if holds {
                    earlier.append(&mut all);
                    all = earlier;
                }
            }
            Change::Made(ruling) => all.push(ruling),
            Change::TakenBack(at) if at < all.len() => {
                all.remove(at);
            }
            Change::TakenBack(_) => {}
            Change::Opened(opened) => all = merged(&all, &opened),
        }
        self.now = Shared::new(all);
    }

    /// Nothing undecided is lost by what is decided now.
    fn to_keep(&self) -> Vec<Ruling> {
        self.earlier
            .iter()
            .chain(self.now.iter())
            .cloned()
            .collect()
    }

    /// The offer to put those of an earlier look in force.
    pub fn offer(&self, on_choice: &Callback<Change>) -> Html {
        let Some(last) = self.earlier.last() else {
            return Html::default();
        };
        let choice = |holds| on_choice.reform(move |_: MouseEvent| Change::Decided(holds));
        let n = match self.earlier.len() {
            1 => "One ruling".to_owned(),
            n => format!("{n} rulings"),
        };
        html! {
            <section class="notice no-print" aria-label="Rulings made earlier">
                <p>{ format!("{n} made earlier in this browser, the last on {} by ", last.day) }<bdi>{ &last.by }</bdi>{ ". They are not in force for what is dropped here now." }</p>
                <p class="row"><button type="button" class="button" onclick={choice(true)}>{ "Put them in force" }</button>
                    <button type="button" class="button" onclick={choice(false)}>{ "Forget them" }</button></p>
            </section>
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::records::rulings::About;

    fn void(job: &str) -> Ruling {
        let about = About::Job(job.to_owned());
        Ruling::new(about, "void", "N. Judge", "2031-03-04", "wrong file").expect("stands")
    }

    #[test]
    fn rulings_of_an_earlier_look_hold_once_they_are_wanted_and_are_kept_until_then() {
        let mut rulings = Rulings {
            earlier: vec![void("a")],
            ..Rulings::default()
        };
        rulings.apply(Change::Made(void("b")));
        assert_eq!(**rulings, vec![void("b")]);
        assert_eq!(rulings.to_keep(), [void("a"), void("b")]);
        rulings.apply(Change::Decided(true));
        assert_eq!(**rulings, vec![void("a"), void("b")]);
        rulings.apply(Change::TakenBack(0));
        rulings.apply(Change::TakenBack(7));
        assert_eq!(rulings.to_keep(), [void("b")]);
    }

    #[test]
    fn rulings_that_are_forgotten_are_kept_no_more() {
        let mut rulings = Rulings {
            earlier: vec![void("a")],
            ..Rulings::default()
        };
        rulings.apply(Change::Decided(false));
        assert!(rulings.to_keep().is_empty());
        rulings.apply(Change::Opened(vec![void("c")]));
        assert_eq!(rulings.to_keep(), [void("c")]);
        rulings.apply(Change::Made(void("d")));
        rulings.apply(Change::Opened(vec![void("c"), void("e")]));
        assert_eq!(**rulings, vec![void("c"), void("d"), void("e")]);
    }
}

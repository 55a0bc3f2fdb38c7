//! The rulings in force, kept in this browser with every change. Those of an earlier look or of another
//! tab are offered and not put in force by themselves: they may be of another class.

use std::collections::BTreeMap;
use std::ops::Deref;

use yew::prelude::*;

use crate::app::cohort::ruling_store;
use crate::app::cohort::ruling_store::Keeping;
use crate::app::cohort::ruling_store::Write;
use crate::app::phrase::HOLES;
use crate::app::phrase::bdi;
use crate::app::phrase::phrase;
use crate::app::shared::Shared;
use crate::app::store::StorageError;
use crate::records::rulings::About;
use crate::records::rulings::Ruling;
use crate::records::rulings::merged;
use crate::say;

/// Rulings in force, and those of an earlier look or another tab that nobody has decided on yet.
#[derive(Clone, Debug, PartialEq)]
pub struct Rulings {
    now: Shared<Vec<Ruling>>,
    earlier: Vec<Ruling>,
    /// What the browser keeps, by key, as far as it is known.
    kept: BTreeMap<String, Ruling>,
    /// Taken back or forgotten here: not offered again when another tab still has them.
    forgotten: Vec<Ruling>,
    /// The browser has not kept the last change.
    refused: bool,
    /// Whether they outlive this visit.
    pub keeping: Keeping,
}

impl Default for Rulings {
    fn default() -> Self {
        Self {
            now: Shared::new(Vec::new()),
            earlier: Vec::new(),
            kept: BTreeMap::new(),
            forgotten: Vec::new(),
            refused: false,
            keeping: Keeping::Asking,
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
    /// What the browser keeps is read: at first, and after another tab has changed it.
    Read(Result<Vec<(String, Ruling)>, StorageError>),
    /// It was tried whether anything can be kept.
    Tried(Result<(), StorageError>),
    /// The last change is written, or not, and keys that are not there for that.
    Written(Result<(), StorageError>, Vec<String>),
    /// Those that are offered are put in force, or forgotten.
    Decided(bool),
    /// One is made.
    Made(Ruling),
    /// One is taken back.
    TakenBack(usize),
    /// A file of them is opened: they hold beside those made here.
    Opened(Vec<Ruling>),
    /// A person's results were erased, here or in another tab, and all rulings about them go with them.
    Erased(String),
}

impl Change {
    /// Something is ruled otherwise, so that numbers change.
    pub fn rules(&self) -> bool {
        !matches!(self, Self::Read(_) | Self::Tried(_) | Self::Written(..))
    }
}

impl Rulings {
    /// Reads what the browser keeps.
    pub async fn read() -> Change {
        Change::Read(ruling_store::read().await)
    }

    /// Takes a change at a moment, ms since 1970; gives what is to be written.
    pub fn change(&mut self, change: Change, now_ms: f64) -> Vec<Write> {
        let mut all = (*self.now).clone();
        let mut gone = Vec::new();
        match change {
            Change::Tried(done) => {
                self.keeping = done.map_or_else(Keeping::Not, |()| Keeping::Kept);
                return Vec::new();
            }
            Change::Written(done, unwritten) => {
                self.refused = done.is_err();
                self.keeping = done.map_or_else(Keeping::Not, |()| Keeping::Kept);
                // The next change writes them again.
                self.kept.retain(|key, _| !unwritten.contains(key));
                return Vec::new();
            }
            Change::Read(Err(error)) => {
                self.keeping = Keeping::Not(error);
                return Vec::new();
            }
            Change::Read(Ok(list)) => self.found(list),
            Change::Decided(holds) => {
                let mut earlier = std::mem::take(&mut self.earlier);
                if holds {
                    earlier.append(&mut all);
                    all = earlier;
                } else {
                    gone = earlier;
                }
            }
            Change::Made(ruling) => all.push(ruling),
            Change::TakenBack(at) if at < all.len() => gone.push(all.remove(at)),
            Change::TakenBack(_) => {}
            Change::Opened(opened) => all = merged(&all, &opened),
            Change::Erased(candidate) => {
                let about = About::Candidate(candidate);
                let of_them = |ruling: &&Ruling| ruling.about == about;
                gone = self.kept.values().filter(of_them).cloned().collect();
                gone.extend(all.iter().filter(of_them).cloned());
                all.retain(|ruling| ruling.about != about);
            }
        }
        self.forgotten.retain(|one| !all.contains(one));
        self.now = Shared::new(all);
        self.writes(gone, now_ms)
    }

    /// What the browser keeps is this list now: what is new in it is offered.
    fn found(&mut self, list: Vec<(String, Ruling)>) {
        self.kept = list.into_iter().collect();
        let kept: Vec<&Ruling> = self.kept.values().collect();
        self.earlier.retain(|one| kept.contains(&one));
        for one in kept {
            let known = [&*self.now, &self.earlier, &self.forgotten];
            if !known.iter().any(|list| list.contains(one)) {
                self.earlier.push(one.clone());
            }
        }
    }

    /// What is to be written so that all in force is kept and what is gone is not. Another tab forgets
    /// nothing that is in force here.
    fn writes(&mut self, gone: Vec<Ruling>, now_ms: f64) -> Vec<Write> {
        self.earlier.retain(|one| !gone.contains(one));
        let is_gone = |one: &Ruling| gone.contains(one) && !self.now.contains(one);
        let mut writes: Vec<Write> = self
            .kept
            .iter()
            .filter(|(_, one)| is_gone(one))
            .map(|(key, _)| Write::Remove(key.clone()))
            .collect();
        self.kept
            .retain(|_, one| !gone.contains(one) || self.now.contains(one));
        for one in self.now.iter() {
            if !self.kept.values().any(|kept| kept == one)
                && let Ok(text) = serde_json::to_string(one)
            {
                let key = ruling_store::key(one, now_ms);
                writes.push(Write::Put(key.clone(), text));
                self.kept.insert(key, one.clone());
            }
        }
        self.forgotten.extend(gone);
        writes
    }

    /// The offer to put those of an earlier look or of another tab in force.
    pub fn offer(&self, on_choice: &Callback<Change>) -> Html {
        let Some(last) = self.earlier.last() else {
            return Html::default();
        };
        let choice = |holds| on_choice.reform(move |_: MouseEvent| Change::Decided(holds));
        let [who, _, _] = HOLES;
        let day = &last.day;
        let told = match self.earlier.len() {
            1 => say!(
                "One ruling made earlier in this browser, or in another tab of it, the last on {day} by {who}. They are not in force for what is dropped here now.",
                day,
                who
            ),
            n => say!(
                "{n} rulings made earlier in this browser, or in another tab of it, the last on {day} by {who}. They are not in force for what is dropped here now.",
                n,
                day,
                who
            ),
        };
        html! {
            <section class="notice no-print" aria-label={say!("Rulings made earlier")}>
                <p>{ phrase(&told, &[bdi(&last.by)]) }</p>
                <p class="row"><button type="button" class="button" onclick={choice(true)}>{ say!("Put them in force") }</button>
                    <button type="button" class="button" onclick={choice(false)}>{ say!("Forget them") }</button></p>
            </section>
        }
    }

    /// What is said where rulings are in force that are not kept, with the way to save them.
    pub fn trouble(&self, on_save: &Callback<MouseEvent>) -> Html {
        let is_told = self.refused || (self.keeping.is_not() && !self.now.is_empty());
        if !is_told {
            return Html::default();
        }
        html! {
            <section class="notice no-print" role="alert" aria-label={say!("Rulings not kept")}>
                <p>{ self.keeping.words() }if self.refused { { " " }{ say!("The last change was not kept.") } }</p>
                <p><button type="button" class="button" onclick={on_save}>{ say!("Save the rulings as a file") }</button></p>
            </section>
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn void(job: &str) -> Ruling {
        let about = About::Job(job.to_owned());
        Ruling::new(about, "void", "N. Judge", "2031-03-04", "wrong file").expect("stands")
    }

    fn passed(candidate: &str) -> Ruling {
        let about = About::Candidate(candidate.to_owned());
        Ruling::new(about, "passed", "N. Judge", "2031-03-04", "heard").expect("stands")
    }

    /// The one store of a browser, with the time of its clock.
    #[derive(Default)]
    struct Browser {
        kept: BTreeMap<String, String>,
        now_ms: f64,
    }

    impl Browser {
        fn act(&mut self, tab: &mut Rulings, change: Change) {
            self.now_ms += 1.0;
            for write in tab.change(change, self.now_ms) {
                match write {
                    Write::Put(key, text) => drop(self.kept.insert(key, text)),
                    Write::Remove(key) => drop(self.kept.remove(&key)),
                }
            }
        }

        fn all(&self) -> Vec<Ruling> {
            let read = |text: &String| serde_json::from_str(text).expect("a ruling");
            self.kept.values().map(read).collect()
        }

        fn read(&mut self, tab: &mut Rulings) {
            let keys = self.kept.keys().cloned();
            let list = keys.zip(self.all()).collect();
            self.act(tab, Change::Read(Ok(list)));
        }
    }

    #[test]
    fn rulings_of_an_earlier_look_hold_once_they_are_wanted_and_are_kept_until_then() {
        let (mut browser, mut first) = (Browser::default(), Rulings::default());
        browser.act(&mut first, Change::Made(void("a")));
        let mut rulings = Rulings::default();
        browser.read(&mut rulings);
        browser.act(&mut rulings, Change::Made(void("b")));
        assert_eq!(**rulings, vec![void("b")]);
        assert_eq!(browser.all(), [void("a"), void("b")]);
        browser.act(&mut rulings, Change::Decided(true));
        assert_eq!(**rulings, vec![void("a"), void("b")]);
        browser.act(&mut rulings, Change::TakenBack(0));
        browser.act(&mut rulings, Change::TakenBack(7));
        assert_eq!(browser.all(), [void("b")]);
    }

    #[test]
    fn rulings_that_are_forgotten_are_kept_no_more() {
        let (mut browser, mut first) = (Browser::default(), Rulings::default());
        browser.act(&mut first, Change::Made(void("a")));
        let mut rulings = Rulings::default();
        browser.read(&mut rulings);
        browser.act(&mut rulings, Change::Decided(false));
        assert!(browser.all().is_empty());
        browser.act(&mut rulings, Change::Opened(vec![void("c")]));
        browser.act(&mut rulings, Change::Made(void("d")));
        browser.act(&mut rulings, Change::Opened(vec![void("c"), void("e")]));
        assert_eq!(**rulings, vec![void("c"), void("d"), void("e")]);
        assert_eq!(browser.all().len(), 3);
    }

    #[test]
    fn two_tabs_that_rule_both_keep_both_rulings() {
        let mut browser = Browser::default();
        let (mut one, mut two) = (Rulings::default(), Rulings::default());
        browser.read(&mut one);
        browser.read(&mut two);
        browser.act(&mut one, Change::Made(passed("c-1")));
        browser.act(&mut two, Change::Made(passed("c-2")));
        assert_eq!(browser.all(), [passed("c-1"), passed("c-2")]);
        // Each tab is told and offers what the other has ruled; nothing is put in force unasked.
        browser.read(&mut one);
        browser.read(&mut two);
        assert_eq!((one.earlier.len(), two.earlier.len()), (1, 1));
        assert_eq!(**one, vec![passed("c-1")]);
        // What one tab forgets stays where it is in force, and is not offered again to who forgot it.
        browser.act(&mut two, Change::Decided(false));
        browser.read(&mut one);
        browser.read(&mut two);
        assert_eq!(browser.all().len(), 2);
        assert!(two.earlier.is_empty() && one.contains(&passed("c-1")));
    }

    #[test]
    fn with_a_persons_results_all_rulings_about_them_go_in_every_tab() {
        let mut browser = Browser::default();
        let (mut one, mut two) = (Rulings::default(), Rulings::default());
        browser.act(&mut one, Change::Made(passed("c-1")));
        browser.act(&mut one, Change::Made(void("a")));
        browser.read(&mut two);
        browser.act(&mut two, Change::Decided(true));
        browser.act(&mut two, Change::Erased("c-1".to_owned()));
        browser.act(&mut one, Change::Erased("c-1".to_owned()));
        browser.read(&mut one);
        browser.read(&mut two);
        assert_eq!(browser.all(), [void("a")]);
        assert_eq!((one.len(), two.len()), (1, 1));
    }

    #[test]
    fn what_the_browser_did_not_write_is_written_with_the_next_change() {
        let mut rulings = Rulings::default();
        let first = rulings.change(Change::Made(void("a")), 1.0);
        let Some(Write::Put(key, _)) = first.first().cloned() else {
            panic!("it is to be written: {first:?}");
        };
        rulings.change(Change::Written(Err(StorageError::Full), vec![key]), 2.0);
        assert!(rulings.refused && rulings.keeping.is_not());
        assert_eq!(rulings.change(Change::Made(void("b")), 3.0).len(), 2);
        rulings.change(Change::Written(Ok(()), Vec::new()), 4.0);
        assert!(!rulings.refused && !rulings.keeping.is_not());
        assert_eq!(rulings.change(Change::Made(void("c")), 5.0).len(), 1);
    }

    #[test]
    fn where_nothing_is_kept_nothing_is_said_to_be_kept() {
        let mut rulings = Rulings::default();
        assert_eq!(rulings.keeping.words(), "");
        for error in [StorageError::Full, StorageError::Refused] {
            rulings.change(Change::Tried(Err(error)), 1.0);
            let words = rulings.keeping.words();
            assert!(
                !words.contains("are kept") && words.contains("Save them as a file"),
                "{words}"
            );
        }
        rulings.change(Change::Tried(Ok(())), 1.0);
        assert!(rulings.keeping.words().contains("kept in this browser"));
    }
}

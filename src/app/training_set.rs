//! A training set on the screen: its jobs in order, the next one opening when the last is mastered.

use yew::prelude::*;

use crate::app::job_tile::JobTile;
use crate::app::route::Route;
use crate::language::worded;
use crate::say;
use crate::scenario::set_file::SetFile;

/// A set and how far it has got, as it is shown.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct SetModel {
    /// The name it is kept by, where it came from outside.
    pub kept: Option<String>,
    /// Title.
    pub title: String,
    /// What it is for.
    pub about: String,
    /// Marks from which a job counts as mastered.
    pub mastered_at: String,
    /// Names and titles of its jobs, in order.
    pub jobs: Vec<(String, String)>,
    /// How many are open, from the first.
    pub n_open: usize,
    /// All are mastered.
    pub is_done: bool,
}

/// The set with the marks the cards carry. Jobs that are not among the cards are left out.
pub fn model(set: &SetFile, tiles: &[JobTile]) -> SetModel {
    let tile = |id: &str| tiles.iter().find(|t| t.id == id);
    let marks = |id: &str| tile(id).and_then(|t| t.marks);
    let titled = |id: &String| tile(id).map(|t| (id.clone(), t.title.clone()));
    SetModel {
        kept: None,
        title: worded(&set.title).into_owned(),
        about: worded(&set.about).into_owned(),
        mastered_at: format!("{:.0}", set.mastered_at_marks),
        jobs: set.jobs.iter().filter_map(titled).collect(),
        n_open: set.n_open(marks),
        is_done: set
            .jobs
            .iter()
            .all(|id| marks(id).is_some_and(|m| m >= set.mastered_at_marks)),
    }
}

/// What the component needs.
#[derive(Properties, PartialEq)]
pub struct TrainingSetProps {
    /// The set.
    pub set: SetModel,
    /// Forgets one that came from outside.
    #[prop_or_default]
    pub on_forget: Callback<String>,
}

/// The set, folded to one line until it is opened.
#[component]
pub fn TrainingSet(props: &TrainingSetProps) -> Html {
    let set = &props.set;
    let n_mastered = if set.is_done {
        set.jobs.len()
    } else {
        set.n_open.saturating_sub(1)
    };
    let line = |(index, (id, title)): (usize, &(String, String))| {
        let text = if index < set.n_open {
            html! { <a href={Route::Bench(id.clone()).href()}>{ title }</a> }
        } else {
            html! { <span class="jobs__later">{ title }</span> }
        };
        let word = match index {
            i if i < n_mastered => say!("mastered"),
            i if i < set.n_open => say!("next"),
            _ => say!("later"),
        };
        html! { <li key={id.clone()}>{ text }{ " " }<span class="jobs__set-state">{ word }</span></li> }
    };
    html! {
        <details class="jobs__set card">
            <summary class="card__title">
                { say!("{title}: {done} of {n} mastered", title = set.title, done = n_mastered, n = set.jobs.len()) }
            </summary>
            <p class="card__body">
                { say!("{about} The next job opens when the one before has {marks} marks of 100.", about = set.about, marks = set.mastered_at) }
            </p>
            <ol class="jobs__order">{ for set.jobs.iter().enumerate().map(line) }</ol>
            if let Some(id) = set.kept.clone() {
                <p class="card__body"><button type="button" class="button button--small" onclick={props.on_forget.reform(move |_: MouseEvent| id.clone())}
                    aria-label={say!("Forget this set: {title}", title = set.title)}>{ say!("Forget this set") }</button></p>
            }
        </details>
    }
}

#[cfg(all(test, not(target_arch = "wasm32")))]
mod tests {
    use super::*;
    use crate::app::as_text::as_text;

    fn set(marks: Option<f64>) -> SetModel {
        let tile = |id: &str, marks| JobTile {
            id: id.into(),
            title: format!("Job {id}"),
            marks,
            ..JobTile::default()
        };
        let file = SetFile {
            format: String::new(),
            title: "First steps".into(),
            about: "Two jobs.".into(),
            mastered_at_marks: 80.0,
            jobs: vec!["one".into(), "two".into()],
            files: Default::default(),
            sealed: Default::default(),
        };
        model(&file, &[tile("one", marks), tile("two", None)])
    }

    #[test]
    fn only_what_is_open_can_be_entered() {
        let text = as_text::<TrainingSet>(|| TrainingSetProps {
            set: set(None),
            on_forget: Callback::noop(),
        });
        assert!(text.contains("First steps: 0 of 2 mastered"), "{text}");
        assert!(
            text.contains("#/bench/one") && !text.contains("#/bench/two"),
            "{text}"
        );
    }

    #[test]
    fn mastering_one_opens_the_next() {
        let text = as_text::<TrainingSet>(|| TrainingSetProps {
            set: set(Some(85.0)),
            on_forget: Callback::noop(),
        });
        assert!(text.contains("First steps: 1 of 2 mastered"), "{text}");
        assert!(text.contains("#/bench/two"), "{text}");
    }
}

//! The list of jobs: where a first-time visitor starts, where work was left, what is next.

use wasm_bindgen_futures::spawn_local;
use yew::prelude::*;

use crate::app::forgotten::use_forgotten;
use crate::app::hooks::focus_first;
use crate::app::hooks::focus_on;
use crate::app::job_filter::FIND;
use crate::app::job_filter::FilterBar;
use crate::app::job_filter::JobFilter;
use crate::app::job_tile::JobTile;
use crate::app::job_tile::Progress;
use crate::app::job_tile::tiles;
use crate::app::kept_sets;
use crate::app::kept_sets::KeptSet;
use crate::app::library;
use crate::app::opened::OpenedJobs;
use crate::app::route::Route;
use crate::app::store::SavedJob;
use crate::app::store::Store;
use crate::app::training_set;
use crate::app::training_set::SetModel;
use crate::app::training_set::TrainingSet;
use crate::language::worded;
use crate::say;

/// What the list shows.
#[derive(Properties, PartialEq)]
pub struct JobListProps {
    /// The jobs by level.
    pub tiles: Vec<JobTile>,
    /// Training sets.
    #[prop_or_default]
    pub sets: Vec<SetModel>,
    /// Forgets a set that came from outside.
    #[prop_or_default]
    pub on_forget: Callback<String>,
    /// Sets that were forgotten, with the way back.
    #[prop_or_default]
    pub forgotten: Html,
    /// Something was opened or forgotten.
    #[prop_or_default]
    pub on_change: Callback<()>,
}

/// The screen: reads what is kept, then shows the list.
#[component]
pub fn JobsScreen() -> Html {
    let kept = use_state(|| None::<(Vec<SavedJob>, Vec<KeptSet>)>);
    let refresh = {
        let kept = kept.setter();
        use_callback((), move |(), ()| {
            let kept = kept.clone();
            spawn_local(async move {
                // A list that cannot be read is an empty one; opening a job says why.
                let texts = Store::open().await.all("job/").await.unwrap_or_default();
                let jobs = texts
                    .iter()
                    .filter_map(|(_, text)| SavedJob::read(text).ok())
                    .collect();
                kept.set(Some((jobs, kept_sets::all().await)));
            });
        })
    };
    {
        let refresh = refresh.clone();
        use_effect_with((), move |()| refresh.emit(()));
    }
    let forgotten = use_forgotten("forgotten-sets", &refresh);
    let Some((saved, given)) = &*kept else {
        return html! { <main class="page jobs" id="main" tabindex="-1"><h1>{ say!("Jobs") }</h1></main> };
    };
    let on_forget = {
        let (forgotten, given) = (forgotten.clone(), given.clone());
        Callback::from(move |id: String| {
            let set = given.iter().find(|set| set.id == id);
            let title = set.map_or_else(String::new, |set| worded(&set.set.title).into_owned());
            forgotten.forget(title, vec![kept_sets::key(&id)]);
        })
    };
    let tiles = tiles(&library::all(), saved);
    let shipped = library::sets().iter();
    let mut sets: Vec<SetModel> = given
        .iter()
        .map(|set| given_set(set, &tiles, saved))
        .collect();
    sets.extend(shipped.map(|set| training_set::model(set, &tiles)));
    html! { <JobList {tiles} {sets} {on_forget} forgotten={forgotten.rows()} on_change={refresh} /> }
}

/// A set from an instructor, some of whose jobs do not ship.
fn given_set(given: &KeptSet, shipped: &[JobTile], saved: &[SavedJob]) -> SetModel {
    let own = tiles(&given.own, saved);
    let all: Vec<JobTile> = own.iter().chain(shipped).cloned().collect();
    SetModel {
        kept: Some(given.id.clone()),
        ..training_set::model(&given.set, &all)
    }
}

/// The list itself.
#[component]
pub fn JobList(props: &JobListProps) -> Html {
    let filter = use_state(JobFilter::default);
    let on_change = {
        let filter = filter.clone();
        Callback::from(move |to| filter.set(to))
    };
    // A bar drawn anew shows no choice of before.
    let bars = use_state(|| 0_usize);
    let show_all = {
        let (filter, bars) = (filter.clone(), bars.clone());
        Callback::from(move |_: MouseEvent| {
            filter.set(JobFilter::default());
            bars.set(*bars + 1);
        })
    };
    use_effect_with(*bars, |bars| {
        // The button that had the focus is gone with what it was for.
        if *bars > 0 {
            focus_on(FIND);
        }
    });
    // What was given stands below a long list: whoever came for it is led there.
    let to_opened = Callback::from(|_: MouseEvent| focus_first(".opened input"));
    let shown: Vec<&JobTile> = props.tiles.iter().filter(|t| filter.keeps(t)).collect();
    html! {
        <main class="page jobs" id="main" tabindex="-1">
            <header class="page__head">
                <h1>{ say!("Jobs") }</h1>
                <p class="page__lead">{ say!("Customers who have called. Each machine behaves as a real one would: what you measure is computed.") }</p>
                <p class="row"><button type="button" class="button button--small" onclick={to_opened}>{ say!("From your instructor") }</button><a class="button button--small" href={Route::Assessment(None).href()}>{ say!("Sit an assessment") }</a></p>
            </header>
            <div class="page__body stack">
                { invitation(&props.tiles) }
                { props.forgotten.clone() }
                { for props.sets.iter().map(|set| html! { <TrainingSet key={set.kept.clone().unwrap_or_else(|| set.title.clone())} set={set.clone()} on_forget={props.on_forget.clone()} /> }) }
                <FilterBar key={*bars} tiles={props.tiles.clone()} filter={(*filter).clone()} n_shown={shown.len()} {on_change} />
                if shown.is_empty() {
                    <p class="jobs__none row">{ say!("No job fits all of that.") }
                        <button type="button" class="button" onclick={show_all}>{ say!("Show all jobs") }</button></p>
                } else {
                    <ul class="jobs__list">{ for shown.into_iter().map(tile) }</ul>
                }
                <OpenedJobs on_change={props.on_change.clone()} />
                <p class="jobs__caution">
                    { say!("This is training. Local codes and licensed practice come first; never open a real machine on the strength of a simulation alone.") }
                </p>
            </div>
        </main>
    }
}

/// One click: to where work was left, or to the opening job.
fn invitation(tiles: &[JobTile]) -> Html {
    let begun = tiles.iter().filter_map(|t| match &t.progress {
        Progress::Begun { saved_ms, .. } => Some((*saved_ms, t)),
        _ => None,
    });
    let latest = begun.max_by(|a, b| a.0.total_cmp(&b.0)).map(|(_, t)| t);
    let is_first_visit = tiles.iter().all(|t| t.progress == Progress::New);
    let (tile, heading, words, key) = match (latest, tiles.first()) {
        (Some(tile), _) => (
            tile,
            say!("Where you left off"),
            tile.title.clone(),
            say!("Go on"),
        ),
        (None, Some(tile)) if is_first_visit => (
            tile,
            say!("First time here?"),
            say!("Start with a short job. A hint under the picture says what comes next, and goes once it is done.")
                .to_owned(),
            say!("Start the first job"),
        ),
        _ => return Html::default(),
    };
    html! {
        <section class="jobs__first card" aria-label={heading}>
            <h2 class="card__title">{ heading }</h2>
            <p class="card__body">{ words }</p>
            <a class="button button--main" href={Route::Bench(tile.id.clone()).href()}>{ key }</a>
        </section>
    }
}

fn tile_facts(tile: &JobTile) -> String {
    let facts = [&tile.who, &tile.machine, &tile.takes];
    facts
        .into_iter()
        .filter(|text| !text.is_empty())
        .cloned()
        .collect::<Vec<_>>()
        .join(" · ")
}

fn tile(tile: &JobTile) -> Html {
    let route = match &tile.progress {
        Progress::Done { .. } => Route::Debrief(tile.id.clone()),
        _ => Route::Bench(tile.id.clone()),
    };
    let state = match &tile.progress {
        Progress::New => Html::default(),
        Progress::Begun { on_site, .. } => {
            html! { <p class="job-tile__due">{ say!("begun, {on_site} on site", on_site) }</p> }
        }
        Progress::Done { words, marks } => {
            html! { <p class="job-tile__due">{ format!("{words}, {marks}") }</p> }
        }
    };
    html! {
        <li class="job-tile" key={tile.id.clone()}>
            <h2 class="job-tile__title"><a href={route.href()}>{ &tile.title }</a></h2>
            <p class="job-tile__quote">{ say!("“{quote}”", quote = tile.quote) }</p>
            <p class="job-tile__facts">{ tile_facts(tile) }</p>
            <p class="job-tile__level">{ say!("level {level} · {skills}", level = tile.level, skills = tile.skills.join(", ")) }</p>
            { state }
        </li>
    }
}

#[cfg(all(test, not(target_arch = "wasm32")))]
mod tests {
    use super::*;
    use crate::app::as_text::as_text;

    fn list(progress: Progress) -> JobListProps {
        let tile = |id: &str, progress| JobTile {
            id: id.into(),
            title: format!("Job {id}"),
            quote: "It does nothing".into(),
            level: 1,
            progress,
            ..JobTile::default()
        };
        JobListProps {
            tiles: vec![tile("one", Progress::New), tile("two", progress)],
            sets: Vec::new(),
            on_forget: Callback::noop(),
            forgotten: Html::default(),
            on_change: Callback::noop(),
        }
    }

    #[test]
    fn a_first_visitor_is_one_click_from_the_opening_job() {
        let text = as_text::<JobList>(|| list(Progress::New));
        assert!(
            text.contains("First time here?") && text.contains("href=\"#/bench/one\""),
            "{text}"
        );
    }

    #[test]
    fn a_list_that_is_empty_says_so_and_offers_all_jobs() {
        let text = as_text::<JobList>(|| JobListProps {
            tiles: Vec::new(),
            ..list(Progress::New)
        });
        assert!(
            text.contains("No job fits all of that.") && text.contains("Show all jobs"),
            "{text}"
        );
        assert!(!as_text::<JobList>(|| list(Progress::New)).contains("Show all jobs"));
    }

    #[test]
    fn work_that_was_left_is_one_click_away() {
        let text = as_text::<JobList>(|| {
            list(Progress::Begun {
                on_site: "12 min".into(),
                saved_ms: 1.0,
            })
        });
        assert!(
            text.contains("Where you left off") && text.contains("begun, 12 min on site"),
            "{text}"
        );
    }

    #[test]
    fn a_finished_job_leads_to_its_debrief() {
        let text = as_text::<JobList>(|| {
            list(Progress::Done {
                words: "repaired, safe".into(),
                marks: "78 of 100".into(),
            })
        });
        assert!(
            text.contains("#/debrief/two") && text.contains("repaired, safe, 78 of 100"),
            "{text}"
        );
    }
}

//! A worked job to step through: a skilled technician's log, replayed, with the machine and the
//! meter as they were after each step.

use std::sync::Arc;

use yew::prelude::*;

use crate::app::bench::picture::still;
use crate::app::bench::picture::tag;
use crate::app::library;
use crate::app::route::Route;
use crate::app::shared::Shared;
use crate::app::view::debrief::DebriefView;
use crate::app::view::debrief::StepRow;
use crate::app::view::debrief::debrief;
use crate::app::view::debrief::in_words;
use crate::app::view::past;
use crate::bench::job::Entry;
use crate::bench::job::Job;
use crate::language::worded;
use crate::say;
use crate::scenario::read::read_back;

/// The seed these logs were made with; none of the jobs draws by chance.
const SEED: u64 = 1;

/// Names a worked job's log: the same file that the tests replay.
macro_rules! worked {
    ($id:literal) => {
        (
            $id,
            include_str!(concat!("../../../tests/jobs/", $id, ".json")),
        )
    };
}

const WORKED: [(&str, &str); 7] = [
    worked!("no_water"),
    worked!("hums_and_stands"),
    worked!("washes_will_not_spin"),
    worked!("no_spin_since_cousin"),
    worked!("bites_bare_feet"),
    worked!("dial_stands_still"),
    worked!("hums_and_water_stays"),
];

/// Which job.
#[derive(Properties, PartialEq)]
pub struct WorkedProps {
    /// Its id.
    pub id: String,
}

/// The title of a worked job; none when there is no such one.
pub fn title_of(id: &str) -> Option<String> {
    let _ = WORKED.iter().find(|(known, _)| *known == id)?;
    library::find(id).map(|scenario| worded(&scenario.title).into_owned())
}

/// The job with all its steps explained.
fn work(id: &str) -> Option<(Job, DebriefView)> {
    let (_, text) = WORKED.iter().find(|(known, _)| *known == id)?;
    let log: Vec<Entry> = read_back(text)?;
    let (job, _) = Job::replay(Arc::clone(&library::find(id)?), SEED, &log).ok()?;
    let view = debrief(&job).ok()?;
    Some((job, view))
}

/// One step at a time.
#[component]
pub fn Worked(props: &WorkedProps) -> Html {
    let at = use_state(|| 0_usize);
    let worked = use_memo(props.id.clone(), |id| work(id).map(Shared::new));
    let Some(worked) = (*worked).clone() else {
        return html! { <p>{ say!("This job cannot be replayed.") }</p> };
    };
    let (job, view) = &*worked;
    let last = view.steps.len().saturating_sub(1);
    let moment = use_memo(*at, |at| past::at_step(job, *at));
    let go = |to: usize| {
        let at = at.clone();
        Callback::from(move |_: MouseEvent| at.set(to))
    };
    html! {
        <>
            <blockquote class="job-card__quote">{ worded(&job.scenario().customer.complaint).into_owned() }</blockquote>
            <p class="row">
                <button type="button" class="button" disabled={*at == 0} onclick={go(at.saturating_sub(1))}>{ say!("Back" as "to the step before") }</button>
                <button type="button" class="button button--main" disabled={*at == last} onclick={go((*at + 1).min(last))}>{ say!("Next step") }</button>
                <span>{ say!("step {step} of {n}", step = *at + 1, n = last + 1) }</span>
            </p>
            <div class="card stack" role="status">{ view.steps.get(*at).map(step) }
                if let Some(past) = &*moment { <p class="field__hint">{ say!("Meter: {shown}", shown = past.meter) }</p> }
            </div>
            if let Some(past) = &*moment { <div class="live-machine" role="img" aria-label={say!("The machine after this step")}>{ Html::from(tag(&still(&past.svg))) }</div> }
            if *at == last {
                <p>{ say!("It was: {causes}. {outcome}.", causes = view.causes.join(", "), outcome = in_words(&view.report)) }</p>
            }
            <p><a class="button" href={Route::Bench(props.id.clone()).href()}>{ say!("Work it yourself") }</a></p>
        </>
    }
}

fn step(row: &StepRow) -> Html {
    html! {
        <>
            <p><strong>{ format!("{} {}", row.time, row.words) }</strong>{ ", " }{ say!("cost so far {cost}", cost = row.cost) }</p>
            { for row.notes.iter().map(|(is, sound)| html! {
                <p>{ is }
                    if let Some(sound) = sound { <span class="debrief__sound">{ " " }{ say!("(a sound machine: {sound})", sound) }</span> }
                </p>
            }) }
        </>
    }
}

#[cfg(all(test, not(target_arch = "wasm32")))]
mod tests {
    use super::*;

    #[test]
    fn every_worked_job_is_a_job_well_done() {
        for (id, _) in WORKED {
            let (job, view) = work(id).expect("replays");
            assert!(
                job.is_over() && view.report.fixed && view.report.safe,
                "{id}: {:?}",
                view.report
            );
            assert!(title_of(id).is_some());
        }
    }
}

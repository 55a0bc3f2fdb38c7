//! How simulated apprentices fare with the job on the desk, and one of them watched at it.

use yew::prelude::*;

use crate::app::desk::judged::worked;
use crate::app::format;
use crate::app::replay::Replayed;
use crate::app::worker::Answer;
use crate::app::worker::Question;
use crate::app::worker::Thread;
use crate::bench::job::Entry;
use crate::bench::scenario::Scenario;
use crate::expert::crowd::Kind;
use crate::language::worded;
use crate::say;
use crate::scenario;
use crate::scenario::job_file::JobFile;
use crate::score::Fared;

/// A job and how it went.
#[derive(Properties, PartialEq)]
pub struct ApprenticesProps {
    /// The job.
    pub job: JobFile,
    /// How each kind fared.
    pub fared: Vec<Fared>,
    /// Shows how one worked it.
    pub on_replay: Callback<Replayed>,
}

/// Who is watched: whose thread it is, and what came of it.
#[derive(Clone, PartialEq)]
enum Watched {
    Nobody,
    Working(Kind),
    Failed(String),
}

/// The table; each row lets one of its kind work the job.
#[component]
pub fn Apprentices(props: &ApprenticesProps) -> Html {
    let watched = use_state(|| Watched::Nobody);
    let thread = use_mut_ref(|| None::<Thread>);
    let watch = |kind: Kind| {
        let (watched, thread) = (watched.clone(), thread.clone());
        let (job, on_replay) = (props.job.clone(), props.on_replay.clone());
        Callback::from(move |_: MouseEvent| {
            watched.set(Watched::Working(kind));
            let question = Question::Apprentice {
                worked: worked(&job),
                kind,
            };
            let hears = {
                let (watched, job, on_replay) = (watched.clone(), job.clone(), on_replay.clone());
                Callback::from(move |answer: Answer| {
                    let told = match answer {
                        Answer::Expert { log } => replayed(&job, kind, &log).ok_or_else(|| {
                            say!("The machine of this job cannot be set up.").to_owned()
                        }),
                        Answer::Failed { why } => Err(why),
                        _ => return,
                    };
                    match told {
                        Ok(replayed) => {
                            watched.set(Watched::Nobody);
                            on_replay.emit(replayed);
                        }
                        Err(why) => watched.set(Watched::Failed(why)),
                    }
                })
            };
            let asked = Thread::ask(&question, hears);
            if asked.is_none() {
                watched.set(Watched::Failed(
                    say!("This browser has no threads.").to_owned(),
                ));
            }
            *thread.borrow_mut() = asked;
        })
    };
    let is_working = matches!(*watched, Watched::Working(_));
    let row = |one: &Fared| {
        let times = |share: f64| format!("{:.0}", share * one.runs as f64);
        html! {
            <tr>
                <th scope="row">{ words(one.kind) }</th>
                <td class="numbers">{ times(one.success_ratio) }</td>
                <td class="numbers">{ format::money(one.cost) }</td>
                <td class="numbers">{ format!("{:.0}", one.minutes) }</td>
                <td>{ broken(one) }</td>
                <td><button type="button" class="button button--small" disabled={is_working} onclick={watch(one.kind)}
                    aria-label={say!("Watch one: {who}", who = words(one.kind))}>{ say!("Watch one") }</button></td>
            </tr>
        }
    };
    let of_each = props.fared.first().map_or(0, |one| one.runs);
    let told = match &*watched {
        Watched::Nobody => String::new(),
        Watched::Working(kind) => say!("Working it: {who} …", who = words(*kind)),
        Watched::Failed(why) => why.clone(),
    };
    html! {
        <div class="table__wrap" tabindex="0" role="region" aria-label={say!("How apprentices fare")}>
            <table class="table">
                <caption>{ say!("How simulated apprentices fare, {n} of each kind: a first impression of how hard it is", n = of_each) }</caption>
                <thead><tr>
                    <th scope="col">{ say!("who") }</th><th scope="col">{ say!("right") }</th><th scope="col">{ say!("cost") }</th>
                    <th scope="col">{ say!("min") }</th><th scope="col">{ say!("safety") }</th><th scope="col"><span class="visually-hidden">{ say!("watch" as "verb") }</span></th>
                </tr></thead>
                <tbody>{ for props.fared.iter().map(row) }</tbody>
            </table>
            <p class="field__hint">{ say!("Safety: in how many of the {n} a critical, a major, a minor rule was broken. “Watch one” shows the first of the {n}.", n = of_each) }</p>
            <p role="status">{ told }</p>
        </div>
    }
}

/// In how many runs a rule was broken, by how serious it is.
fn broken(one: &Fared) -> String {
    let runs = |share: f64| libm::round(share * one.runs as f64) as usize;
    let (critical, major) = (runs(one.unsafe_ratio), runs(one.risky_ratio));
    let minor = runs(one.careless_ratio);
    let told: Vec<String> = [
        (critical, say!("critical in {n}", n = critical)),
        (major, say!("major in {n}", n = major)),
        (minor, say!("minor in {n}", n = minor)),
    ]
    .into_iter()
    .filter(|(runs, _)| *runs > 0)
    .map(|(_, words)| words)
    .collect();
    if told.is_empty() {
        say!("none broken").to_owned()
    } else {
        told.join(", ")
    }
}

/// As the desk calls them.
pub fn words(kind: Kind) -> &'static str {
    match kind {
        Kind::Novice => say!("unsure beginner"),
        Kind::Careless => say!("in a hurry"),
        Kind::PartSwapper => say!("changes parts first"),
        Kind::MeterShy => say!("avoids the meter"),
        Kind::Methodical => say!("step by step"),
    }
}

fn replayed(job: &JobFile, kind: Kind, log: &[Entry]) -> Option<Replayed> {
    let about = worked(job);
    let scenario = scenario::job_of(&about.job, job).ok()?;
    let titled = Scenario {
        title: format!(
            "{} · {}",
            format::sentence(words(kind)),
            worded(&scenario.title)
        ),
        ..scenario
    };
    Replayed::of(titled, job, about.seed, log)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::score::Run;
    use crate::score::fared;

    #[test]
    fn rules_that_were_broken_are_told_whatever_their_weight() {
        let run = |is_unsafe, is_risky| Run::made_up(is_unsafe, is_risky, false);
        let told = |runs: &[Run]| broken(&fared(Kind::Novice, runs));
        let all = [run(false, true), run(true, true), run(false, false)];
        assert_eq!(told(&all), "critical in 1, major in 2");
        assert_eq!(told(&all[2..]), "none broken");
    }
}

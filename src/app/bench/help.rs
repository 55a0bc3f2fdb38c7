//! Asking for a hint: what the next one gives and costs, and what those asked for have said.
//!
//! The words come from the thread and are kept nowhere: the log says which rungs were asked for, and
//! the same log gives the same words again.

use wasm_bindgen_futures::spawn_local;
use yew::prelude::*;

use crate::app::asking::Asking;
use crate::app::bench::contexts::use_bench;
use crate::app::bench::contexts::use_door;
use crate::app::me::history;
use crate::app::view::Order;
use crate::app::view::hints::rungs_for;
use crate::app::worker::Answer;
use crate::app::worker::Question;
use crate::app::worker::Worked;
use crate::assess::assessment_file::RefreshFile;
use crate::bench::action::Action;
use crate::bench::hint::Rung;
use crate::records::practice;
use crate::say;

const MS_PER_DAY: f64 = 86_400_000.0;

/// What the thread said, and of which job as far as it went.
#[derive(Clone, PartialEq)]
enum Said {
    Nothing,
    Waiting,
    Told(Vec<String>),
    Failed(String),
}

/// The hints.
#[component]
pub fn Help() -> Html {
    let (bench, door) = (use_bench(), use_door());
    let help = bench.help.clone();
    let said = use_state_eq(|| Said::Nothing);
    let rungs = use_rungs(&help.skills);
    {
        let said = said.setter();
        let asked = (help.worked.clone(), help.used > 0);
        use_effect_with(asked, move |(worked, is_wanted): &(Worked, bool)| {
            said.set(if *is_wanted {
                Said::Waiting
            } else {
                Said::Nothing
            });
            let asking = is_wanted.then(|| {
                Asking::ask(worked.clone(), Question::Hint, move |answer| match answer {
                    Answer::Hint { told } => said.set(Said::Told(told)),
                    Answer::Failed { why } => said.set(Said::Failed(why)),
                    _ => {}
                })
            });
            move || drop(asking)
        });
    }
    if !help.allowed {
        return Html::default();
    }
    let ask = door.reform(|_: MouseEvent| Order::Do(vec![Action::Hint]));
    let next = help.next.filter(|_| help.used < rungs);
    html! {
        <section class="help" aria-label={say!("Hints")}>
            <div role="status">
                { match &*said {
                    Said::Nothing => Html::default(),
                    Said::Waiting => html! { <p>{ say!("Thinking about what your notes say; this takes some seconds.") }</p> },
                    Said::Told(words) => html! { <ol class="help__said">{ for words.iter().take(help.used).map(|w| html! { <li>{ w }</li> }) }</ol> },
                    Said::Failed(why) => html! { <p>{ say!("No hint can be given. {why}", why) }</p> },
                } }
            </div>
            { match next {
                Some(rung) => html! {
                    <button type="button" class="button button--small" onclick={ask}>{ offer(rung, help.used) }</button>
                },
                None if rungs < Rung::ALL.len() => html! { <p class="field__hint">{ say!("You have shown that you can do this: there are no more hints here.") }</p> },
                None => html! { <p class="field__hint">{ say!("These were all the hints for this step.") }</p> },
            } }
        </section>
    }
}

/// Such as `Hint: where to look (costs 10 % of the target)`.
fn offer(rung: Rung, used: usize) -> String {
    let gives = rung.words();
    let percent = format!("{:.0}", 100.0 * rung.cost_ratio());
    if used == 0 {
        say!(
            "Hint: {gives} (costs {percent} % of the target)",
            gives,
            percent
        )
    } else {
        say!(
            "One more: {gives} (costs {percent} % of the target)",
            gives,
            percent
        )
    }
}

/// How many rungs there are for this person; all until it is known what they know.
#[hook]
fn use_rungs(skills: &[String]) -> usize {
    let rungs = use_state_eq(|| Rung::ALL.len());
    {
        let rungs = rungs.setter();
        use_effect_with(skills.to_vec(), move |skills| {
            let skills = skills.clone();
            spawn_local(async move {
                // Who has kept nothing is taken for a beginner.
                let done = history::all().await.unwrap_or_default();
                let today = js_sys::Date::now() / MS_PER_DAY;
                let standings = practice::standings(&done, today, &RefreshFile::default());
                let known = skills.iter().map(|skill| {
                    let of = standings.iter().find(|s| s.skill == *skill);
                    of.map_or(0.0, |s| s.known)
                });
                rungs.set(rungs_for(known.fold(1.0, f64::min)));
            });
        });
    }
    *rungs
}

//! What the expert did with the same job, beside what was done: worked out on demand, since it takes
//! some seconds.

use yew::prelude::*;

use crate::app::debrief::asked::Asked;
use crate::app::debrief::asked::use_expert;
use crate::app::shared::Shared;
use crate::app::view::beside;
use crate::app::view::beside::Way;
use crate::bench::job::Job;
use crate::say;

/// Which job.
#[derive(Properties, PartialEq)]
pub struct ExpertProps {
    /// The job.
    pub job: Shared<Job>,
    /// The job in letters, where it is known nowhere else.
    #[prop_or_default]
    pub letters: Option<AttrValue>,
}

/// The two ways.
#[component]
pub fn Expert(props: &ExpertProps) -> Html {
    let wanted = use_state_eq(|| false);
    let asked = use_expert(&props.job, props.letters.as_ref(), *wanted);
    let told = match &asked {
        Asked::Told(log) => Some(log.clone()),
        _ => None,
    };
    let ways = use_memo((props.job.clone(), told), |(job, log)| {
        let log = log.as_ref()?;
        beside::way(job, job.log()).zip(beside::way(job, log))
    });
    let want = {
        let wanted = wanted.clone();
        Callback::from(move |_: MouseEvent| wanted.set(true))
    };
    html! {
        <section class={classes!("beside", ways.is_none().then_some("no-print"))} aria-labelledby="beside">
            <h2 id="beside">{ say!("Beside the expert") }</h2>
            if let Some((own, expert)) = &*ways {
                <p>{ say!("The expert is a program that knew no more at the door than you and decided by what each step showed. It can be slower than a skilled person; the target is what one needs.") }</p>
                <div class="beside__ways">{ way(say!("You"), own) }{ way(say!("The expert"), expert) }</div>
            } else if let Asked::None(why) = &asked {
                <p>{ say!("What the expert would have done cannot be told. {why}", why) }</p>
            } else if *wanted {
                <p role="status">{ say!("The expert is working the job; this takes some seconds.") }</p>
            } else {
                <p class="no-print"><button type="button" class="button" onclick={want}>{ say!("Let the expert work it") }</button></p>
            }
        </section>
    }
}

fn way(who: &'static str, way: &Way) -> Html {
    html! {
        <div class="table__wrap" tabindex="0" role="region" aria-label={who}>
            <table class="table">
                <caption>{ say!("{label}: {value}", label = who, value = way.sum) }</caption>
                <thead><tr><th scope="col">{ say!("min") }</th><th scope="col">{ say!("act") }</th><th scope="col">{ say!("cost") }</th></tr></thead>
                <tbody>{ for way.acts.iter().map(|[minute, act, cost]| html! {
                    <tr><td class="numbers">{ minute }</td><td>{ act }</td><td class="numbers">{ cost }</td></tr>
                }) }</tbody>
            </table>
        </div>
    }
}

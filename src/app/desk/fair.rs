//! The fairness panel: what can be seen of the faults, what looks like them, what to mend. Computed
//! a cause at a time while the page stays usable.

use std::cell::RefCell;
use std::rc::Rc;
use std::sync::Arc;

use gloo::timers::callback::Timeout;
use yew::prelude::*;

use crate::bench::scenario::Scenario;
use crate::scenario;
use crate::scenario::job_file::JobFile;
use crate::score::Fairness;
use crate::score::FairnessLine;

/// A sound job.
#[derive(Properties, PartialEq)]
pub struct FairProps {
    /// The job.
    pub job: JobFile,
}

/// A job being judged.
#[derive(Clone)]
struct Judged {
    scenario: Arc<Scenario>,
    fairness: Rc<RefCell<Fairness>>,
}

/// The panel; begins when asked, since it runs a program for every cause there is.
#[component]
pub fn Fair(props: &FairProps) -> Html {
    let judged = use_state(|| None::<Result<Judged, String>>);
    let compared = use_state(|| 0_usize);
    {
        // Another job is another judgement.
        let (judged, compared) = (judged.clone(), compared.clone());
        use_effect_with(props.job.clone(), move |_| {
            judged.set(None);
            compared.set(0);
        });
    }
    {
        let (judged, compared) = (judged.clone(), compared.clone());
        use_effect_with((*compared, judged.is_some()), move |_| {
            let turn = judged
                .as_ref()
                .and_then(|judged| judged.as_ref().ok())
                .cloned()
                .map(|judged| {
                    Timeout::new(0, move || {
                        // A cause that cannot be solved ends the comparison; what is known stays.
                        if judged.fairness.borrow_mut().compare_next().unwrap_or(false) {
                            compared.set(*compared + 1);
                        }
                    })
                });
            move || drop(turn)
        });
    }
    let begin = {
        let (judged, job) = (judged.clone(), props.job.clone());
        Callback::from(move |_: MouseEvent| judged.set(Some(begun(&job))))
    };
    match &*judged {
        None => html! {
            <>
                <p>{ "What shows the faults with what is allowed, what looks like them and which reading separates the two." }</p>
                <p><button type="button" class="button" onclick={begin}>{ "Judge this job" }</button></p>
            </>
        },
        Some(Err(why)) => html! { <p role="status">{ why }</p> },
        Some(Ok(judged)) => {
            let fairness = judged.fairness.borrow();
            let (done, all) = fairness.progress();
            html! {
                <>
                    <p role="status">{ if done < all { format!("Compared with {done} of {all} causes …") } else { format!("Compared with all {all} causes of this machine.") } }</p>
                    <ul class="fairness desk__list">{ for fairness.lines(&judged.scenario).iter().map(line) }</ul>
                </>
            }
        }
    }
}

fn begun(job: &JobFile) -> Result<Judged, String> {
    let scenario = scenario::job_of("draft", job).map_err(|error| error.to_string())?;
    let fairness = Fairness::new(&scenario).map_err(|error| error.to_string())?;
    Ok(Judged {
        scenario: Arc::new(scenario),
        fairness: Rc::new(RefCell::new(fairness)),
    })
}

fn line(line: &FairnessLine) -> Html {
    let kind = if line.fair { "fair" } else { "unfair" };
    html! { <li class={format!("fairness__line fairness__line--{kind}")}>{ &line.words }</li> }
}

//! The debrief's screen: verdict, what was wrong and how it showed, the line in time with the
//! machine and the meter as they were, the marks.

use std::rc::Rc;

use wasm_bindgen_futures::spawn_local;
use yew::prelude::*;

use crate::app::bench::contexts::use_bench;
use crate::app::bench::contexts::use_door;
use crate::app::bench::picture::Picture;
use crate::app::debrief::asked::Asked;
use crate::app::debrief::asked::use_likely;
use crate::app::debrief::expert::Expert;
use crate::app::debrief::likely::Likely;
use crate::app::debrief::likely::percent;
use crate::app::debrief::marks::Marks;
use crate::app::debrief::moments::Moments;
use crate::app::debrief::settle::settle;
use crate::app::debrief::step::StepDetail;
use crate::app::debrief::track::Track;
use crate::app::desk::BackToDraft;
use crate::app::hooks::focus_on;
use crate::app::route::Route;
use crate::app::shared::Shared;
use crate::app::view::BenchView;
use crate::app::view::Order;
use crate::app::view::debrief::DebriefView;
use crate::app::view::debrief::StepRow;
use crate::app::view::debrief::asked_for;
use crate::app::view::debrief::debrief;
use crate::app::view::debrief::marks;
use crate::app::view::debrief::money;
use crate::app::view::debrief::verdict;
use crate::app::view::decided;
use crate::app::view::decided::DecidedRows;
use crate::app::view::likely;
use crate::app::view::likely::LikelyRow;
use crate::app::view::past;
use crate::app::worker::Likely as Answered;
use crate::bench::job::Job;
use crate::expert::Reckoning;
use crate::say;
use crate::score::Basis;
use crate::score::Report;

/// Which job.
#[derive(Properties, PartialEq)]
pub struct DebriefProps {
    /// The job.
    pub job: Shared<Job>,
    /// The job in letters, where it is known nowhere else.
    #[prop_or_default]
    pub letters: Option<AttrValue>,
    /// Somebody else's job, looked at afterwards: nothing is done again, and nothing is kept.
    #[prop_or_default]
    pub reviews: bool,
    /// The job was counted by the bill: its marks stay as they were counted.
    #[prop_or_default]
    pub by_bill: bool,
}

/// The debrief, or the way back when the job is not over yet.
#[component]
pub fn DebriefScreen(props: &DebriefProps) -> Html {
    let bench = use_bench();
    let told = use_memo((props.job.clone(), props.reviews), |(job, reviews)| {
        (*reviews || job.is_over()).then(|| debrief(job))
    });
    match &*told {
        None => html! {
            <main class="page page--narrow" id="main" tabindex="-1">
                <h1>{ say!("This job is not over yet") }</h1>
                <p>{ say!("The debrief is opened when the machine is handed over, or made safe and left.") }</p>
                <p><a class="button button--main" href={Route::Bench(bench.id.clone()).href()}>{ say!("Back to the bench") }</a></p>
            </main>
        },
        Some(Err(error)) => html! {
            <main class="page page--narrow" id="main" tabindex="-1">
                <h1>{ say!("This job cannot be explained") }</h1><p>{ error.to_string() }</p>
            </main>
        },
        Some(Ok(view)) => {
            html! { <Told job={props.job.clone()} view={Shared::new(view.clone())} letters={props.letters.clone()} reviews={props.reviews} by_bill={props.by_bill} /> }
        }
    }
}

/// The debrief of a finished job.
#[derive(Properties, PartialEq)]
struct ToldProps {
    job: Shared<Job>,
    view: Shared<DebriefView>,
    letters: Option<AttrValue>,
    reviews: bool,
    by_bill: bool,
}

#[component]
fn Told(props: &ToldProps) -> Html {
    let (bench, door) = (use_bench(), use_door());
    use_effect_with((), |()| {
        // It may take the place of what was scrolled far down, on the same page.
        gloo::utils::window().scroll_to_with_x_and_y(0.0, 0.0);
        focus_on("debrief");
    });
    let shown = use_state_eq(|| 0_usize);
    let past = use_memo((props.job.clone(), *shown), |(job, step)| {
        past::at_step(job, *step)
    });
    let (asked, reckoned) = use_likely(&props.job, props.letters.as_ref());
    let reckoning = match &reckoned {
        Asked::Told(reckoning) => Some(reckoning.clone()),
        _ => None,
    };
    let judged = use_memo((props.job.clone(), reckoning), |(job, reckoning)| {
        let reckoning = reckoning.as_ref()?;
        let report = props.view.report.judged(job, reckoning);
        Some((report, decided::rows(job, reckoning)))
    });
    use_settled(&props.job, &judged, bench.tried.is_none() && !props.reviews);
    let view = &props.view;
    let by_decisions = judged.as_ref().as_ref().filter(|_| !props.by_bill);
    let report = by_decisions.map_or(&view.report, |(report, _)| report);
    let decided = judged.as_ref().as_ref().map(|(_, rows)| rows);
    let settled = props.by_bill || !matches!(reckoned, Asked::Waiting(..));
    let go = {
        let shown = shown.clone();
        Callback::from(move |index: usize| shown.set(index))
    };
    let rows = match &asked {
        Asked::Told(told) => Some(likely::rows(&props.job, told)),
        _ => None,
    };
    html! {
        <main class="page debrief" id="main" tabindex="-1">
            { head(&bench, &props.job, report, settled, (!props.reviews).then_some(&door)) }
            { truth(view) }
            { pointed(rows.as_ref(), &asked, *shown) }
            <Track steps={view.steps.clone()} shown={*shown} on_show={go.clone()} />
            <div class="debrief__body">
                { steps(&view.steps, *shown, &go) }
                if let Some(step) = view.steps.get(*shown) {
                    <div class="stack">
                        <StepDetail step={step.clone()} count={view.steps.len()} worth={worth(&asked, *shown)}
                            decided={decided.map_or_else(Vec::new, |d| d.of_step(step.number))} />
                        if !props.reviews { { try_from(*shown, &bench.id, &door) } }
                    </div>
                }
                if let Some(past) = &*past {
                    <section class="debrief__state" aria-label={say!("The machine as it was")}>
                        <p class="debrief__meter numbers">{ &past.meter }</p>
                        { for rows.as_ref().map(|rows| likely_now(&likely::now(rows, *shown))) }
                        <Picture svg={past.svg.clone()} label={say!("The machine as it was")} on_touch={Callback::noop()} />
                    </section>
                }
            </div>
            <Moments job={props.job.clone()} on_show={go.clone()} />
            <Marks marks={marks(report)} basis={basis(report, &reckoned, props.by_bill)} asked_for={if settled { asked_for(report) } else { String::new() }} />
            if let Some(decided) = &decided { { practise(&decided.practise, &go) } }
            <Expert job={props.job.clone()} letters={props.letters.clone()} />
        </main>
    }
}

/// What is kept of the job is marked by its decisions once they are judged; a try does not count.
#[hook]
fn use_settled(job: &Shared<Job>, judged: &Rc<Option<(Report, DecidedRows)>>, counts: bool) {
    let judged = Shared::from(Rc::clone(judged));
    use_effect_with((job.clone(), judged), move |(job, judged)| {
        if let Some((report, _)) = judged.as_ref().filter(|_| counts) {
            let (job, report) = (job.clone(), report.clone());
            spawn_local(async move {
                // Where nothing can be kept, nothing is marked anew.
                let _ = settle(&job, &report).await;
            });
        }
    });
}

/// What economy and evidence go by, for now or for good.
fn basis(report: &Report, reckoned: &Asked<Shared<Reckoning>>, by_bill: bool) -> String {
    match (report.basis, reckoned) {
        _ if by_bill => say!("Economy and evidence go by the bill and the notebook, as this job was counted: the browser it was worked in could not tell what each decision was worth.").to_owned(),
        (Basis::Decisions, _) => say!("Economy and evidence go by what could be known when each step was decided; chance does not count.").to_owned(),
        (Basis::Bill, Asked::None(why)) => say!("Economy and evidence go by the bill and the notebook: what each decision was worth cannot be told. {why}", why),
        (Basis::Bill, _) => say!("Economy and evidence still go by the bill and the notebook: what each decision was worth is being worked out.").to_owned(),
    }
}

/// The likely causes at the moment shown.
fn likely_now(now: &[(String, f64)]) -> Html {
    html! {
        <div class="debrief__likely">
            <h3>{ say!("Likely then") }</h3>
            <ul>{ for now.iter().map(|(name, share)| html! {
                <li><span>{ name }</span>{ " " }<b class="numbers">{ percent(*share) }</b></li>
            }) }</ul>
        </div>
    }
}

/// The same job from before this step on, as practice.
fn try_from(step: usize, id: &str, door: &Callback<Order>) -> Html {
    let onclick = door.reform(move |_: MouseEvent| Order::TryFrom(step));
    html! {
        <p class="no-print"><a class="button button--small" href={Route::Bench(id.to_owned()).href()} {onclick}>{ say!("Try again from before this step") }</a>
            <span class="field__hint">{ " " }{ say!("As practice that does not count; this debrief stays.") }</span></p>
    }
}

/// The chart of likely causes, or how far it is.
fn pointed(rows: Option<&Vec<LikelyRow>>, asked: &Asked<Shared<Answered>>, shown: usize) -> Html {
    match asked {
        Asked::Told(_) => {
            html! { <Likely rows={rows.cloned().unwrap_or_default()} {shown} /> }
        }
        Asked::Waiting(done, of) => html! {
            <p class="likely__wait">
                <label>{ say!("Working out what your notes pointed at") }{ " " }<progress max={of.max(&1).to_string()} value={done.to_string()} /></label>
            </p>
        },
        Asked::None(why) => {
            html! { <p>{ say!("What your notes pointed at cannot be told. {why}", why) }</p> }
        }
    }
}

fn worth(asked: &Asked<Shared<Answered>>, shown: usize) -> Option<String> {
    match asked {
        Asked::Told(told) => likely::worth(told, shown),
        _ => None,
    }
}

/// Where most could have been saved; each leads to its step.
fn practise(things: &[(usize, String)], go: &Callback<usize>) -> Html {
    let thing = |(number, words): &(usize, String)| {
        let place = number.saturating_sub(1);
        let onclick = go.reform(move |_: MouseEvent| place);
        html! {
            <li>
                <button type="button" class="button button--small" {onclick}>{ say!("Step {step}", step = number) }</button>
                { " " }{ words }
            </li>
        }
    };
    html! {
        <section class="debrief__practise" aria-labelledby="practise">
            <h2 id="practise">{ say!("To practise next") }</h2>
            if things.is_empty() {
                <p>{ say!("No decision cost more than it had to.") }</p>
            } else {
                <ol>{ for things.iter().map(thing) }</ol>
            }
        </section>
    }
}

fn head(
    bench: &BenchView,
    job: &Job,
    report: &Report,
    settled: bool,
    door: Option<&Callback<Order>>,
) -> Html {
    // A browser that does not print says so itself.
    let print = Callback::from(|_: MouseEvent| drop(gloo::utils::window().print()));
    let again = door.map(|door| door.reform(|_: MouseEvent| Order::StartAgain));
    let back = door.map(|door| door.reform(|_: MouseEvent| Order::BackToWhole));
    let money = money(report, &job.scenario().rules);
    html! {
        <header class="debrief__head">
            <h1 id="debrief" tabindex="-1">{ say!("Debrief: {title}", title = bench.card.title) }</h1>
            if let Some(steps) = bench.tried {
                <p class="bench__hint" role="note">
                    { say!("Tried again from after step {steps}: practice that does not count.", steps) }{ " " }
                    <button type="button" class="button button--small no-print" onclick={back}>{ say!("Back to the job as you finished it") }</button>
                </p>
            }
            <p class="debrief__verdict" role="status">{ verdict(report, settled) }</p>
            <dl class="money-line">
                { for money.iter().map(|(name, value)| html! { <div><dt>{ name }</dt><dd class="numbers">{ value }</dd></div> }) }
            </dl>
            <div class="row no-print">
                <button type="button" class="button" onclick={print}>{ say!("Print") }</button>
                if let Some(again) = again {
                    <BackToDraft job={bench.id.clone()} />
                    <a class="button" href={Route::Bench(bench.id.clone()).href()} onclick={again}>{ say!("Do it again") }</a>
                    <a class="button button--main" href={Route::Jobs.href()}>{ say!("Next job") }</a>
                }
            </div>
        </header>
    }
}

/// What was wrong and how it showed.
fn truth(view: &DebriefView) -> Html {
    let list = |lines: &[String], none: &'static str| {
        if lines.is_empty() {
            html! { <p>{ none }</p> }
        } else {
            html! { <ul>{ for lines.iter().map(|line| html! { <li>{ line }</li> }) }</ul> }
        }
    };
    html! {
        <section class="debrief__truth">
            <div>
                <h2>{ say!("What was wrong") }</h2>
                { list(&view.causes, say!("Nothing in the machine.")) }
                <h3>{ say!("You said") }</h3>
                { list(&view.stated, say!("No fault in the machine.")) }
            </div>
            <div>
                <h2>{ say!("How it showed") }</h2>
                { list(&view.shown_by, say!("None of your notes differ from those of a sound machine.")) }
            </div>
            if !view.hindsight.is_empty() {
                <div>
                    <h2>{ say!("Looking back") }</h2>
                    { list(&view.hindsight, "") }
                </div>
            }
            if !view.left.is_empty() {
                <div>
                    <h2>{ say!("How the machine was left") }</h2>
                    { list(&view.left, "") }
                </div>
            }
        </section>
    }
}

fn steps(steps: &[StepRow], shown: usize, go: &Callback<usize>) -> Html {
    html! {
        <ol class="debrief__steps" aria-label={say!("Steps")}>
            { for steps.iter().enumerate().map(|(index, step)| {
                let class = classes!(
                    "step",
                    step.is_unsafe().then_some("step--safety"),
                    step.is_telling().then_some("step--good")
                );
                let onclick = go.reform(move |_: MouseEvent| index);
                html! {
                    <li {class} key={index} aria-current={(index == shown).then_some("step")}>
                        <button type="button" {onclick}>
                            <span class="numbers">{ &step.time }</span>{ " " }{ &step.words }
                            if step.is_unsafe() { <b class="step__mark">{ " " }{ say!("safety") }</b> }
                        </button>
                    </li>
                }
            }) }
        </ol>
    }
}

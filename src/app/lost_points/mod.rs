//! Where points were lost: for each job the steps that cost points, what each cost, and why; on the
//! candidate's own sheet and on the person's page of a cohort.

mod explained;
mod words;

use gloo::timers::callback::Timeout;
use yew::prelude::*;

use crate::app::asking::Asking;
use crate::app::format;
use crate::app::lost_points::explained::Came;
use crate::app::lost_points::explained::explained;
use crate::app::worker::Answer;
use crate::app::worker::Question;
use crate::app::worker::Worked;
use crate::expert::Reckoning;
use crate::language::decimals;
use crate::language::worded;
use crate::records::reasons::Moment;
use crate::records::reasons::PartReasons;
use crate::records::reasons::Reason;
use crate::records::reasons::Reasons;
use crate::say;
use crate::score::formula::CRITICAL_CAP;

pub use explained::Marked;

/// Fewer points than this are none.
const NO_POINTS: f64 = 0.05;

/// What is explained.
#[derive(Properties, PartialEq)]
pub struct LostPointsProps {
    /// The jobs, in order.
    pub jobs: Vec<Marked>,
    /// What the decisions of a job were worth, where this page knows it already.
    #[prop_or_else(nothing_known)]
    pub known: Callback<Worked, Option<Reckoning>>,
}

fn nothing_known() -> Callback<Worked, Option<Reckoning>> {
    Callback::from(|_: Worked| None)
}

/// What happens.
pub enum Msg {
    /// The next job's turn.
    Next,
    /// What its decisions were worth; none where that is not needed, or cannot be known.
    Reckoned(Option<Reckoning>),
}

/// Works the jobs out one after the other, each in a moment of its own so that the page stays alive.
pub struct LostPoints {
    came: Vec<Came>,
    /// What is waited for; it ends when this is dropped.
    asking: Option<Asking>,
    pause: Option<Timeout>,
}

impl Component for LostPoints {
    type Message = Msg;
    type Properties = LostPointsProps;

    fn create(_: &Context<Self>) -> Self {
        Self {
            came: Vec::new(),
            asking: None,
            pause: None,
        }
    }

    fn changed(&mut self, ctx: &Context<Self>, old: &LostPointsProps) -> bool {
        if ctx.props().jobs != old.jobs {
            self.came.clear();
            self.asking = None;
            self.go_on(ctx, || Msg::Next);
        }
        true
    }

    fn update(&mut self, ctx: &Context<Self>, msg: Msg) -> bool {
        let Some(job) = ctx.props().jobs.get(self.came.len()) else {
            return false;
        };
        match msg {
            Msg::Next => {
                self.ask(ctx, job);
                false
            }
            Msg::Reckoned(reckoning) => {
                self.asking = None;
                self.came.push(explained(job, reckoning.as_ref()));
                self.go_on(ctx, || Msg::Next);
                true
            }
        }
    }

    fn view(&self, ctx: &Context<Self>) -> Html {
        let jobs = &ctx.props().jobs;
        if jobs.is_empty() {
            return Html::default();
        }
        let (done, of) = (self.came.len(), jobs.len());
        let told = if done < of {
            say!(
                "Working out where points were lost: job {n} of {of} …",
                n = done + 1,
                of
            )
        } else {
            String::new()
        };
        html! {
            <section class="stack" aria-labelledby="lost">
                <h2 id="lost">{ say!("Where points were lost") }</h2>
                <p role="status">{ told }</p>
                { for jobs.iter().zip(&self.came).map(|(job, came)| of_job(job, came)) }
            </section>
        }
    }

    fn rendered(&mut self, ctx: &Context<Self>, first: bool) {
        if first {
            self.go_on(ctx, || Msg::Next);
        }
    }
}

impl LostPoints {
    /// Goes on once the page has been drawn.
    fn go_on(&mut self, ctx: &Context<Self>, msg: impl FnOnce() -> Msg + 'static) {
        let link = ctx.link().clone();
        self.pause = Some(Timeout::new(0, move || link.send_message(msg())));
    }

    /// Finds out what a job's decisions were worth, where it counts by them.
    fn ask(&mut self, ctx: &Context<Self>, job: &Marked) {
        let known = ctx.props().known.emit(job.worked.clone());
        if !job.judged || known.is_some() {
            return self.go_on(ctx, move || Msg::Reckoned(known));
        }
        let link = ctx.link().clone();
        let hears = move |answer| match answer {
            Answer::Reckoned(reckoning) => link.send_message(Msg::Reckoned(Some(reckoning))),
            Answer::Failed { .. } => link.send_message(Msg::Reckoned(None)),
            _ => {}
        };
        self.asking = Some(Asking::ask(job.worked.clone(), Question::Reckoned, hears));
    }
}

fn of_job(job: &Marked, came: &Came) -> Html {
    html! {
        <div class="stack" key={job.name.clone()}>
            <h3>{ say!("{job}: {marks} of 100", job = job.name, marks = format!("{:.0}", job.result.total)) }</h3>
            { match came {
                Came::Whole(reasons) => all(&job.name, reasons),
                Came::Partly(reasons) => html! {
                    <>
                        { all(&job.name, reasons) }
                        <p>{ say!("Diagnosis, economy and evidence count by what each decision was worth, which this browser could not work out again: their reasons are missing here.") }</p>
                    </>
                },
                Came::Not => html! { <p>{ say!("Run again here, its marks do not come out as they stand: no reason can be given.") }</p> },
            } }
        </div>
    }
}

fn all(name: &str, reasons: &Reasons) -> Html {
    if reasons.parts.is_empty() {
        return html! { <p>{ say!("Nothing was lost.") }</p> };
    }
    html! {
        <>
            <div class="table__wrap" tabindex="0" role="region" aria-label={say!("{job}: where points were lost, a table", job = name)}>
                <table class="table">
                    <thead><tr><th scope="col">{ say!("Part" as "of the marks") }</th><th scope="col" class="numbers">{ say!("Points" as "of the marks") }</th><th scope="col" class="numbers">{ say!("When") }</th><th scope="col">{ say!("What was done") }</th><th scope="col">{ say!("Why") }</th></tr></thead>
                    <tbody>{ for reasons.parts.iter().flat_map(of_part) }</tbody>
                </table>
            </div>
            if reasons.capped >= NO_POINTS {
                <p>{ capped(reasons.capped) }</p>
            }
        </>
    }
}

fn capped(points: f64) -> String {
    say!(
        "A rule whose breach can kill was broken: the whole job has at most {most} of 100, {points} less than its parts come to.",
        most = format!("{CRITICAL_CAP:.0}"),
        points = decimals(format!("{points:.1}")),
    )
}

/// A line for each reason, and one for what is too little to be told.
fn of_part(part: &PartReasons) -> Vec<Html> {
    let name = format::sentence(&worded(&part.name));
    let line = |points: f64, at: Option<&Moment>, why: String| {
        let (when, act) = at.map_or_else(
            || ("–".to_owned(), "–".to_owned()),
            |at| (format::clock(at.tick), format::sentence(&at.act)),
        );
        html! {
            <tr><th scope="row">{ name.clone() }</th><td class="numbers">{ gone(points) }</td><td class="numbers">{ when }</td><td>{ act }</td><td>{ format::sentence(&why) }</td></tr>
        }
    };
    let told = part.reasons.iter();
    let mut lines: Vec<Html> = told
        .map(|Reason { at, points, why }| line(*points, at.as_ref(), words::why(why)))
        .collect();
    if part.rest >= NO_POINTS {
        lines.push(line(
            part.rest,
            None,
            say!("small amounts together").to_owned(),
        ));
    }
    lines
}

/// Points that went, such as `−4.5`.
fn gone(points: f64) -> String {
    if points < NO_POINTS {
        "0".to_owned()
    } else {
        format!("−{}", decimals(format!("{points:.1}")))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::app::as_text::as_text;
    use crate::score::Why;

    #[component]
    fn Shown() -> Html {
        let at = Moment {
            step: 4,
            tick: 6000,
            act: "hand over".to_owned(),
        };
        let reason = Reason {
            at: Some(at),
            points: 4.5,
            why: Why::LeftOut("insulation measured".to_owned()),
        };
        let part = PartReasons {
            name: "procedure".to_owned(),
            of: 15.0,
            points: 10.4,
            reasons: vec![reason],
            rest: 0.1,
        };
        all(
            "Job 2",
            &Reasons {
                parts: vec![part],
                capped: 0.0,
            },
        )
    }

    #[test]
    fn a_reason_stands_with_its_points_its_time_and_its_act() {
        let text = as_text::<Shown>(|| ());
        for part in [
            "aria-label=\"Job 2: where points were lost, a table\"",
            "−4.5",
            "10:25",
            "Hand over",
            "Left out: insulation measured",
            "−0.1",
        ] {
            assert!(text.contains(part), "{part} in {text}");
        }
    }
}

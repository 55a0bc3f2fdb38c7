//! Fault found: the cause from a plain list, the evidence, what the customer is told, and handing
//! over.

use web_sys::HtmlSelectElement;
use yew::prelude::*;

use crate::app::bench::Notebook;
use crate::app::bench::Notice;
use crate::app::bench::cause_groups;
use crate::app::bench::contexts::use_bench;
use crate::app::bench::contexts::use_door;
use crate::app::bench::contexts::use_live;
use crate::app::hooks::go_to;
use crate::app::route::Route;
use crate::app::sitting;
use crate::app::view::BenchView;
use crate::app::view::Order;
use crate::bench::action::Action;
use crate::bench::visit::Advice;
use crate::language::said;
use crate::say;
use crate::text;

/// What a customer can be told, in the order of a talk at the door.
const ADVICE: [(Advice, &str); 8] = [
    (
        Advice::WhatWasDone,
        text!("what was wrong and what was done, shown on the machine"),
    ),
    (Advice::Load, text!("how much to load and how to spread it")),
    (Advice::Detergent, text!("how much detergent")),
    (Advice::Filters, text!("clean the filters now and then")),
    (
        Advice::HouseWiring,
        text!("have the house wiring seen to by an electrician"),
    ),
    (Advice::NewMachine, text!("a new machine is the better buy")),
    (
        Advice::Level,
        text!("keep it level, and do not move it alone"),
    ),
    (
        Advice::OldPart,
        text!("the old part, shown beside the new one"),
    ),
];

/// What is filled in so far.
#[derive(Clone, Debug, Default, PartialEq)]
struct Form {
    causes: Vec<String>,
    none: bool,
    evidence: Vec<u32>,
    advice: Vec<Advice>,
    signed: bool,
    asked: bool,
    /// Leaving was asked for once; it is done when it is asked for again.
    leaving: bool,
}

impl Form {
    fn is_stated(&self) -> bool {
        self.none || !self.causes.is_empty()
    }

    /// Nobody signs what they were not told.
    fn is_signed(&self) -> bool {
        self.signed && self.advice.contains(&Advice::WhatWasDone)
    }

    /// What was wrong, as far as it is filled in.
    fn finding(&self) -> Action {
        Action::Finding {
            causes: if self.none {
                Vec::new()
            } else {
                self.causes.clone()
            },
            evidence: self.evidence.clone(),
        }
    }

    /// Handing over: the acts, in the order they are done at the door.
    fn acts(&self) -> Vec<Action> {
        let mut acts = vec![self.finding()];
        acts.extend(self.advised());
        if self.is_signed() {
            acts.push(Action::Sign);
        }
        acts.push(Action::Close);
        acts
    }

    /// Leaving it safe: what is known by then is said as well.
    fn acts_of_leaving(&self) -> Vec<Action> {
        let stated = self.is_stated().then(|| self.finding());
        let mut acts: Vec<Action> = stated.into_iter().chain(self.advised()).collect();
        acts.push(Action::MakeSafeAndLeave);
        acts
    }

    fn advised(&self) -> impl Iterator<Item = Action> {
        let advice = self.advice.iter();
        advice.map(|advice| Action::Advise { advice: *advice })
    }
}

/// Adds what is not there, takes away what is.
fn flip<T: PartialEq>(list: &mut Vec<T>, item: T) {
    match list.iter().position(|other| *other == item) {
        Some(at) => {
            list.remove(at);
        }
        None => list.push(item),
    }
}

/// The screen.
#[component]
pub fn FindingScreen() -> Html {
    let (bench, live, door) = (use_bench(), use_live(), use_door());
    let form = use_state_eq(|| Form {
        signed: bench.visit.marked,
        ..Form::default()
    });
    let is_exam = bench.exam.is_some();
    use_effect_with((bench.over, bench.id.clone()), move |(over, id)| {
        if *over {
            let next = if is_exam {
                Route::Sitting
            } else {
                Route::Debrief(id.clone())
            };
            go_to(&next);
        }
    });
    let hand_over = {
        let (form, door) = (form.clone(), door.clone());
        Callback::from(move |_: MouseEvent| {
            if form.is_stated() {
                door.emit(Order::Do(form.acts()));
            } else {
                form.set(Form {
                    asked: true,
                    ..(*form).clone()
                });
            }
        })
    };
    // Time that runs out takes nothing away that is filled in.
    use_effect_with((*form).clone(), {
        let door = door.clone();
        move |form: &Form| {
            let stated = form.is_stated().then(|| vec![form.finding()]);
            let said = stated.map(|acts| door.reform(move |()| Order::Do(acts.clone())));
            sitting::at_the_end(said);
            || sitting::at_the_end(None)
        }
    });
    let ask_to_leave = |leaving: bool| {
        let form = form.clone();
        Callback::from(move |_: MouseEvent| {
            form.set(Form {
                leaving,
                ..(*form).clone()
            });
        })
    };
    let leave = {
        let form = form.clone();
        door.reform(move |_: MouseEvent| Order::Do(form.acts_of_leaving()))
    };
    html! {
        <main class="page page--narrow finish" id="main" tabindex="-1">
            <header class="page__head">
                <h1>{ say!("Fault found") }</h1>
                <p class="page__lead">{ say!("{title} · on site {on_site} · cost so far {cost}", title = bench.card.title, on_site = live.on_site, cost = live.cost) }
                    if let Some(left) = sitting::time_left(&bench.id) { { " · " }<b class="numbers">{ left }</b> }
                </p>
            </header>
            <div class="page__body stack">
                if !is_exam { { still_open(&bench) } }
                { cause(&bench, &form) }
                { evidence(&bench, &form) }
                { advice(&form) }
                { signature(&bench, &form) }
                if let Some(notice) = &bench.notice { <Notice notice={notice.clone()} on_order={door.clone()} /> }
                <div class="row finish__bill">
                    <button type="button" class="button button--main" onclick={hand_over}>{ say!("State it and hand over") }</button>
                    <a class="button" href={Route::Bench(bench.id.clone()).href()}>{ say!("Back to the bench") }</a>
                    if form.leaving {
                        <button type="button" class="button" onclick={ask_to_leave(false)}>{ say!("Not yet" as "of handing in") }</button>
                        <button type="button" class="button button--quiet" onclick={leave}>{ say!("Yes, make it safe and leave: the job ends") }</button>
                    } else {
                        <button type="button" class="button button--quiet" onclick={ask_to_leave(true)}>{ say!("Make safe and leave") }</button>
                    }
                </div>
            </div>
        </main>
    }
}

/// A last look round: what is still off, apart or shut.
fn still_open(bench: &BenchView) -> Html {
    if bench.still_open.is_empty() {
        return html! { <p class="finish__round">{ say!("A look round: everything is back in its place.") }</p> };
    }
    html! {
        <section class="notice" aria-label={say!("A look round")}>
            <h2 class="notice__title">{ say!("A look round before you leave") }</h2>
            <ul>{ for bench.still_open.iter().map(|line| html! { <li>{ line }</li> }) }</ul>
        </section>
    }
}

fn cause(bench: &BenchView, form: &UseStateHandle<Form>) -> Html {
    let change = |change: fn(&mut Form, String)| {
        let form = form.clone();
        Callback::from(move |id: String| {
            let mut next = (*form).clone();
            change(&mut next, id);
            form.set(next);
        })
    };
    let add = change(|form, id| {
        form.none = false;
        if !id.is_empty() && !form.causes.contains(&id) {
            form.causes.push(id);
        }
    });
    let onchange = Callback::from(move |event: Event| {
        let select: HtmlSelectElement = event.target_unchecked_into();
        add.emit(select.value());
        select.set_selected_index(0);
    });
    let remove = change(|form, id| form.causes.retain(|c| *c != id));
    let none = change(|form, _| {
        form.none = !form.none;
        form.causes.clear();
    });
    let line = |id: &String| {
        let what = bench
            .causes
            .iter()
            .find(|c| c.id == *id)
            .map_or_else(|| id.clone(), |c| format!("{}: {}", c.part, c.what));
        let (id, label) = (id.clone(), say!("Take off the list: {what}", what));
        let onclick = remove.reform(move |_: MouseEvent| id.clone());
        html! { <li><b>{ what }</b><button type="button" class="button button--quiet button--small" aria-label={label} {onclick}>{ say!("take off" as "of a list") }</button></li> }
    };
    html! {
        <section class="finish__cause" aria-labelledby="cause">
            <h2 id="cause">{ say!("What was wrong") }</h2>
            <ul>{ for form.causes.iter().map(line) }</ul>
            <label class="field">
                <span class="field__label">{ if form.causes.is_empty() { say!("Cause") } else { say!("And another cause") } }</span>
                <select {onchange} aria-invalid={(form.asked && !form.is_stated()).to_string()}>
                    <option value="" selected=true>{ say!("choose a cause …") }</option>
                    { cause_groups(&bench.causes) }
                </select>
            </label>
            <label class="choice">
                <input type="checkbox" checked={form.none} onchange={none.reform(|_: Event| String::new())} />
                <span>{ say!("There is no fault in the machine") }</span>
            </label>
            if form.asked && !form.is_stated() {
                <p class="field__error" role="alert">{ say!("Choose what was wrong, or say that there is no fault.") }</p>
            }
        </section>
    }
}

fn evidence(bench: &BenchView, form: &UseStateHandle<Form>) -> Html {
    let on_tick = {
        let form = form.clone();
        Callback::from(move |number: u32| {
            let mut next = (*form).clone();
            flip(&mut next.evidence, number);
            form.set(next);
        })
    };
    html! {
        <section class="finish__evidence" aria-labelledby="evidence">
            <h2 id="evidence">{ say!("What shows it") }</h2>
            <p>{ say!("Tick the lines of your notebook that prove the cause.") }</p>
            <Notebook notes={bench.notes.clone()} ticked={form.evidence.clone()} {on_tick} />
        </section>
    }
}

fn signature(bench: &BenchView, form: &UseStateHandle<Form>) -> Html {
    let told = form.advice.contains(&Advice::WhatWasDone);
    let onchange = {
        let form = form.clone();
        Callback::from(move |_: Event| {
            form.set(Form {
                signed: !form.signed,
                ..(*form).clone()
            });
        })
    };
    html! {
        <fieldset class="finish__advice">
            <legend>{ say!("The report") }</legend>
            <label class="choice">
                <input type="checkbox" checked={form.is_signed()} disabled={!told} {onchange} />
                <span>{ say!("the customer reads the report and signs it") }</span>
            </label>
            if !told { <p class="field__hint">{ say!("The customer signs only once told what was wrong and what was done.") }</p> }
            <p><a class="button button--small" href={Route::Report(bench.id.clone()).href()}>{ say!("See the report") }</a></p>
        </fieldset>
    }
}

fn advice(form: &UseStateHandle<Form>) -> Html {
    let line = |(advice, words): &(Advice, &'static str)| {
        let (form, advice) = (form.clone(), *advice);
        let checked = form.advice.contains(&advice);
        let onchange = Callback::from(move |_: Event| {
            let mut next = (*form).clone();
            flip(&mut next.advice, advice);
            form.set(next);
        });
        html! { <label class="choice"><input type="checkbox" {checked} {onchange} /><span>{ said(words) }</span></label> }
    };
    html! {
        <fieldset class="finish__advice">
            <legend><h2>{ say!("What the customer is told") }</h2></legend>
            { for ADVICE.iter().map(line) }
        </fieldset>
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_cause_is_stated_first_and_the_machine_handed_over_last() {
        let form = Form {
            causes: vec!["tap_shut".into()],
            evidence: vec![2],
            advice: vec![Advice::WhatWasDone],
            ..Form::default()
        };
        let acts = form.acts();
        assert!(
            matches!(&acts[0], Action::Finding { causes, evidence } if causes.len() == 1 && evidence == &[2])
        );
        assert_eq!(acts.last(), Some(&Action::Close));
        assert_eq!(acts.len(), 3);
    }

    #[test]
    fn who_leaves_it_safe_says_what_is_known_and_nothing_else() {
        let leave = Action::MakeSafeAndLeave;
        assert_eq!(
            Form::default().acts_of_leaving(),
            std::slice::from_ref(&leave)
        );
        let form = Form {
            causes: vec!["tap_shut".into()],
            advice: vec![Advice::HouseWiring],
            ..Form::default()
        };
        let acts = form.acts_of_leaving();
        assert!(matches!(&acts[0], Action::Finding { causes, .. } if causes == &["tap_shut"]));
        assert_eq!((acts.len(), acts.last()), (3, Some(&leave)));
    }

    #[test]
    fn no_fault_is_an_answer_of_its_own() {
        assert!(!Form::default().is_stated());
        let form = Form {
            none: true,
            causes: vec!["x".into()],
            ..Form::default()
        };
        assert!(form.is_stated());
        assert!(matches!(&form.acts()[0], Action::Finding { causes, .. } if causes.is_empty()));
    }
}

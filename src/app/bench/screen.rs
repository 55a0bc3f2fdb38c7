//! The bench as a whole: card and notebook at one hand, the instrument at the other, the machine
//! between, what is safe and what is in hand below.

use yew::prelude::*;

use crate::app::bench::contexts::use_bench;
use crate::app::bench::contexts::use_door;
use crate::app::bench::drawer::Drawer;
use crate::app::bench::drawer::Handle;
use crate::app::bench::help::Help;
use crate::app::bench::job_card::JobCard;
use crate::app::bench::keys::KeyUse;
use crate::app::bench::keys::use_of;
use crate::app::bench::moving::Announcer;
use crate::app::bench::moving::Caption;
use crate::app::bench::moving::MeterBar;
use crate::app::bench::moving::MovingEstimate;
use crate::app::bench::moving::MovingInstrument;
use crate::app::bench::moving::MovingJobBar;
use crate::app::bench::moving::MovingTimeBar;
use crate::app::bench::moving::Said;
use crate::app::bench::notebook::Notebook;
use crate::app::bench::notice::Notice;
use crate::app::bench::papers::Papers;
use crate::app::bench::picture::Picture as Drawing;
use crate::app::bench::safe_strip::SafeStrip;
use crate::app::bench::selection_bar::SelectionBar;
use crate::app::bench::selection_bar::verb;
use crate::app::bench::suspects::Suspects;
use crate::app::bench::tabs::Tabs;
use crate::app::bench::tests_list::TestsList;
use crate::app::bench::visit::Visit;
use crate::app::hooks::focus_first;
use crate::app::hooks::focus_on;
use crate::app::hooks::use_keys;
use crate::app::route::Route;
use crate::app::settings::Settings;
use crate::app::settings::use_settings;
use crate::app::view::BenchView;
use crate::app::view::Lead;
use crate::app::view::Order;
use crate::app::view::Picture;
use crate::app::view::Thing;
use crate::bench::action::Action;
use crate::say;

/// Which drawer is pulled out on a small screen, and which side of the card is up.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
struct Sides {
    card_open: bool,
    tool_open: bool,
    up: usize,
}

/// Sides of the card after the job card itself.
const NOTEBOOK: usize = 1;
const TESTS: usize = 2;
const VISIT: usize = 3;
const PAPERS: usize = 4;

/// The bench.
#[component]
pub fn BenchScreen() -> Html {
    let (bench, door) = (use_bench(), use_door());
    let settings = use_settings();
    let sides = use_state_eq(|| Sides {
        up: if at_the_workshop(&bench) { VISIT } else { 0 },
        ..Sides::default()
    });
    let on_key = {
        let (door, sides) = (door.clone(), sides.clone());
        use_callback(*sides, move |key: String, _| {
            let what = use_of(&key);
            if let Some(what) = what {
                press(what, &door, &sides);
            }
            what.is_some()
        })
    };
    use_keys(settings.single_keys, on_key);
    let toggle = |change: fn(Sides) -> Sides| {
        let sides = sides.clone();
        Callback::from(move |()| sides.set(change(*sides)))
    };
    let toggle_card = toggle(|s| Sides {
        card_open: !s.card_open,
        tool_open: false,
        ..s
    });
    let toggle_tool = toggle(|s| Sides {
        tool_open: !s.tool_open,
        card_open: false,
        ..s
    });
    let on_call = {
        let sides = sides.clone();
        Callback::from(move |_: MouseEvent| {
            sides.set(Sides {
                card_open: true,
                tool_open: false,
                up: VISIT,
            });
            focus_on("side-3");
        })
    };
    html! {
        <div class="bench" data-guide={bench.guide.filter(|_| settings.hints).map(|guide| guide.at.word())}>
            <MovingJobBar />
            <Drawer id="card" word={say!("Job card and notebook")} class="bench__card" open={sides.card_open}
                    on_toggle={toggle_card.clone()}>
                { card_side(&bench, &door, &sides) }
            </Drawer>
            { stage(&bench, &door, &settings, &on_call) }
            <Drawer id="tool" word={say!("Instrument")} class="bench__tool" open={sides.tool_open}
                    on_toggle={toggle_tool.clone()}>
                <MovingInstrument />
            </Drawer>
            <MeterBar on_show={toggle_tool.clone()} />
            <div class="bench__handles">
                <Handle drawer="card" word={say!("Job card and notebook")} open={sides.card_open} on_toggle={toggle_card} />
                <Handle drawer="tool" word={say!("Instrument")} open={sides.tool_open} on_toggle={toggle_tool} />
            </div>
            <SafeStrip items={bench.safe.clone()} />
            <SelectionBar selection={bench.selection.clone()} on_order={door} />
            <Announcer />
        </div>
    }
}

/// A visit that is marked begins before the drive.
fn at_the_workshop(bench: &BenchView) -> bool {
    bench.visit.marked && bench.visit.before
}

fn card_side(bench: &BenchView, door: &Callback<Order>, sides: &UseStateHandle<Sides>) -> Html {
    let show = {
        let sides = sides.clone();
        Callback::from(move |tab: usize| {
            to_the_top();
            sides.set(Sides { up: tab, ..*sides });
        })
    };
    let passed = bench.tests.iter().filter(|t| t.passed == Some(true));
    let words = vec![
        say!("Card").into(),
        say!("Notebook {n}", n = bench.notes.len()).into(),
        say!("Tests {n}", n = passed.count()).into(),
        say!("Visit" as "noun").into(),
        say!("Papers").into(),
    ];
    let up = sides.up;
    html! {
        <>
            <Tabs id="side" label={say!("Card")} {words} shown={up} panel="side-panel" on_show={show} />
            <div id="side-panel" class="tabs__panel" role="tabpanel" tabindex="0" aria-labelledby={format!("side-{up}")}>
                if up == NOTEBOOK {
                    <Notebook notes={bench.notes.clone()} on_order={(!bench.over).then(|| door.clone())} />
                } else if up == TESTS {
                    <TestsList tests={bench.tests.clone()} meter={bench.meter.clone()} over={bench.over} on_order={door.clone()} />
                } else if up == PAPERS {
                    <Papers id={bench.id.clone()} papers={bench.papers.clone()} />
                } else if up == VISIT {
                    <Visit id={bench.id.clone()} visit={bench.visit.clone()} on_order={door.clone()} />
                    if bench.visit.marked && !bench.over { <MovingEstimate /> }
                } else {
                    <JobCard card={bench.card.clone()} over={bench.over} on_order={door.clone()} />
                    <Suspects suspects={bench.suspects.clone()} causes={bench.causes.clone()} on_order={door.clone()} />
                    if !bench.visit.marked && !bench.over { <MovingEstimate /> }
                    if bench.exam.is_none() && !bench.over && !bench.notes.is_empty() { { start_again(door) } }
                }
            </div>
        </>
    }
}

/// Each side of the card begins at its top; they share what scrolls.
fn to_the_top() {
    let side = gloo::utils::document().query_selector("#card > .drawer__body");
    if let Ok(Some(side)) = side {
        side.set_scroll_top(0);
    }
}

/// Nothing can be undone on a call, but practice can begin anew.
fn start_again(door: &Callback<Order>) -> Html {
    let again = door.reform(|_: MouseEvent| Order::StartAgain);
    html! {
        <details class="job-card__ask">
            <summary>{ say!("Begin this job anew") }</summary>
            <p>{ say!("What was done so far is laid aside: you come to the door once more.") }</p>
            <button type="button" class="button button--small" onclick={again}>{ say!("Begin anew") }</button>
        </details>
    }
}

fn stage(
    bench: &BenchView,
    door: &Callback<Order>,
    settings: &Settings,
    on_call: &Callback<MouseEvent>,
) -> Html {
    let (names, hints) = (settings.all_names, settings.hints);
    let may_see = |p: &Picture| *p != Picture::Wiring || bench.exam.is_none_or(|exam| exam.wiring);
    let pictures: Vec<Picture> = Picture::ALL.into_iter().filter(may_see).collect();
    let shown = pictures
        .iter()
        .position(|p| *p == bench.picture)
        .unwrap_or(0);
    let words = pictures
        .iter()
        .map(|p| AttrValue::from(p.word()))
        .collect::<Vec<_>>();
    let on_show = door.reform(move |index: usize| Order::Show(pictures[index]));
    let (lead, jaws) = (bench.meter.lead, bench.meter.mode.is_clamp());
    let on_touch = door.reform(move |thing: Thing| match thing {
        Thing::Point(node) => Order::Put(lead, Some(node)),
        Thing::Element(conductor) => Order::Put(Lead::Red, Some(conductor)),
        thing => Order::Select(Some(thing)),
    });
    html! {
        <main class="bench__stage" id="main" tabindex="-1">
            <Tabs id="view" label={say!("Pictures")} {words} {shown} panel="picture" {on_show} />
            <div id="picture" class="tabs__panel" role="tabpanel" aria-labelledby={format!("view-{shown}")}>
                <Drawing svg={bench.svg.clone()} label={say!("The machine, {picture}", picture = bench.picture.word())} {names} {jaws} probing={bench.meter.probing} {on_touch} />
                <Said />
            </div>
            if at_the_workshop(bench) {
                <p class="bench__hint" role="note">{ say!("You are still at the workshop.") }{ " " }
                    <button type="button" class="button button--small" onclick={on_call}>{ say!("Telephone and van") }</button></p>
            }
            if bench.picture == Picture::Opened && !bench.ways_in.is_empty() {
                <p class="bench__hint" role="note">{ say!("Nothing is open yet.") }{ " " }
                    { for bench.ways_in.iter().map(|v| verb(door, v, "button button--small")) }</p>
            }
            if let Some(guide) = bench.guide.filter(|_| hints) { <p class="bench__hint" role="note">{ guide.words }</p> }
            <Help />
            if let Some(steps) = bench.tried { { tried(steps, &bench.id, door) } }
            <Caption />
            if !bench.over { <MovingTimeBar /> }
            if let Some(words) = &bench.storage { <p class="bench__storage" role="status">{ words }</p> }
            if bench.elsewhere { { elsewhere(door) } }
            if let Some(notice) = &bench.notice { <Notice notice={notice.clone()} on_order={door.clone()} /> }
        </main>
    }
}

/// The job goes on from the middle of a finished one.
fn tried(steps: usize, id: &str, door: &Callback<Order>) -> Html {
    let back = door.reform(|_: MouseEvent| Order::BackToWhole);
    html! {
        <p class="bench__hint" role="note">
            { say!("Tried again from after step {step}: practice that does not count.", step = steps) }{ " " }
            <a class="button button--small" href={Route::Debrief(id.to_owned()).href()} onclick={back}>{ say!("Back to the job as you finished it") }</a>
        </p>
    }
}

fn elsewhere(door: &Callback<Order>) -> Html {
    let take = door.reform(|_: MouseEvent| Order::TakeOver);
    html! {
        <section class="notice" role="alert">
            <h2 class="notice__title">{ say!("This job is open in another tab") }</h2>
            <p class="notice__text">{ say!("You can look here; nothing you do in this tab is saved.") }</p>
            <button type="button" class="button button--main" onclick={take}>{ say!("Work in this tab") }</button>
        </section>
    }
}

fn press(what: KeyUse, door: &Callback<Order>, sides: &UseStateHandle<Sides>) {
    match what {
        KeyUse::Show(picture) => door.emit(Order::Show(picture)),
        KeyUse::Go("picture") => focus_first(".drawing [tabindex='0']"),
        KeyUse::Go("verbs") => focus_first(".selection-bar__verbs button"),
        KeyUse::Go("mode") => {
            sides.set(Sides {
                tool_open: true,
                card_open: false,
                ..**sides
            });
            focus_first(".instrument__mode[tabindex='0']");
        }
        KeyUse::Go(id) => {
            sides.set(Sides {
                tool_open: true,
                card_open: false,
                ..**sides
            });
            focus_on(id);
        }
        KeyUse::JobCard | KeyUse::Notebook => {
            let up = usize::from(what == KeyUse::Notebook);
            sides.set(Sides {
                card_open: true,
                tool_open: false,
                up,
            });
            focus_on(if up == NOTEBOOK { "side-1" } else { "side-0" });
        }
        KeyUse::Note => door.emit(Order::Do(vec![Action::Note])),
        KeyUse::Run(speed) => door.emit(Order::Run(speed)),
        KeyUse::Wait(until) => door.emit(Order::Wait(until)),
        KeyUse::LetGo => door.emit(Order::CardRead),
    }
}

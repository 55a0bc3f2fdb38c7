//! The parts of a machine as its file has them: what each does, how it fails, how it is tested, how
//! it is reached, what to check when it goes back.

use yew::prelude::*;

use crate::app::format;
use crate::app::markdown;
use crate::app::route::Route;
use crate::app::view::sheet;
use crate::bench::workshop::DataSheetLine;
use crate::bench::workshop::Part;
use crate::bench::workshop::Step;
use crate::bench::workshop::Work;
use crate::bench::workshop::Workshop;
use crate::language::worded;
use crate::say;
use crate::scenario;

/// How parts are tested, in words: a section a part, another where a machine differs.
const TESTING: &str = include_str!(concat!(env!("OUT_DIR"), "/testing.txt"));

/// Which machine.
#[derive(Properties, PartialEq)]
pub struct PartsProps {
    /// Its short name.
    pub machine: String,
}

/// All parts, one section each.
#[component]
pub fn Parts(props: &PartsProps) -> Html {
    let Some(pack) = scenario::machines()
        .ok()
        .and_then(|packs| packs.get(&props.machine))
    else {
        return Html::default();
    };
    let workshop = &pack.workshop;
    html! {
        <>
            <p>{ say!("From the machine's own file: what the bench lets you do is what stands here. Ranges under “Test” are its data sheet's.") }{ " " }
                <a href={Route::Readings(Some(props.machine.clone())).href()}>{ say!("What each reading tells apart") }</a>{ ", " }
                <a href={Route::faults_of(&props.machine).href()}>{ say!("faults of this machine") }</a>{ ", " }
                <a href={Route::Handbook(Some("measure".to_owned())).href()}>{ say!("measuring") }</a></p>
            { for workshop.parts.iter().map(|part| html! {
                <section key={part.id.clone()}>
                    <h2>{ format::sentence(&worded(&part.name)) }{ " " }<small>{ &part.designation }</small></h2>
                    <dl class="facts">
                        { fact(say!("Does"), &part.does) }
                        { fact(say!("Fails"), &part.fails) }
                        { test_facts(part, &props.machine, workshop) }
                        { for workshop.works.iter().filter(|work| work.part == part.id).map(|work| work_facts(work, workshop)) }
                    </dl>
                </section>
            }) }
        </>
    }
}

fn fact(name: &str, text: &str) -> Html {
    if text.is_empty() {
        return Html::default();
    }
    html! { <><dt>{ name.to_owned() }</dt><dd>{ format::sentence(&worded(text)) }</dd></> }
}

/// What is written about testing it, on all machines and on this one.
fn advice(part: &Part, machine: &str) -> Vec<&'static str> {
    let words = part.id.replace('_', " ");
    [words.clone(), format!("{words} {machine}")]
        .iter()
        .filter_map(|title| markdown::section(TESTING, title))
        .collect()
}

fn test_facts(part: &Part, machine: &str, workshop: &Workshop) -> Html {
    let (said, lines) = (advice(part, machine), sheet_lines(part, workshop));
    if said.is_empty() && lines.is_empty() {
        return Html::default();
    }
    html! {
        <>
            <dt>{ say!("Test") }</dt>
            <dd>
                { for said.into_iter().map(markdown::rendered) }
                if !lines.is_empty() { <ul>{ for lines.into_iter().map(|line| html! { <li>{ line }</li> }) }</ul> }
            </dd>
        </>
    }
}

/// Lines of the data sheet that speak of the part: by its name, its terminals or its place.
fn sheet_lines(part: &Part, workshop: &Workshop) -> Vec<String> {
    let id = part.id.replace('_', " ");
    let whole = part.name.to_lowercase();
    let name = whole.split(" with ").next().unwrap_or(&whole);
    let is_at = |node: &str| {
        workshop
            .test_point(node)
            .is_some_and(|point| point.place.starts_with(&part.id))
    };
    let is_of = |line: &&DataSheetLine| {
        let what = line.what.to_lowercase();
        // How much water comes, and how long it takes, is no one part's value.
        let at_place = line.red == part.id && !matches!(line.mode.as_str(), "flow" | "time");
        let named = what.starts_with(&id) || what.contains(name);
        named || at_place || (is_at(&line.red) && is_at(&line.black))
    };
    workshop
        .data_sheet
        .iter()
        .filter(is_of)
        .filter_map(|line| sheet::told(workshop, line))
        .map(|line| format!("{}: {}", line.what, line.text))
        .collect()
}

fn work_facts(work: &Work, workshop: &Workshop) -> Html {
    let needs = workshop.closure(&work.needs);
    let way: Vec<String> = needs.iter().map(|step| step_words(step)).collect();
    let reach = if way.is_empty() {
        say!("from outside").to_owned()
    } else {
        way.join(", ")
    };
    let mut said = vec![say!(
        "Reach it: {reach}. About {n} min for the work itself.",
        reach,
        n = format!("{:.0}", work.work_s / 60.0)
    )];
    if !work.fasteners.is_empty() {
        said.push(say!("Held by: {what}.", what = worded(&work.fasteners)));
    }
    if !work.tools.is_empty() {
        let tools: Vec<_> = work.tools.iter().map(|tool| worded(tool)).collect();
        said.push(say!("Tools: {tools}.", tools = tools.join(", ")));
    }
    if !work.caution.is_empty() {
        said.push(say!("Mind: {what}.", what = worded(&work.caution)));
    }
    let check = worded(&work.check);
    html! {
        <>
            <dt>{ format::sentence(&worded(&work.name)) }</dt>
            <dd>{ said.join(" ") }
                if !check.is_empty() { <><br />{ say!("On refit: {check}.", check = check.trim_end_matches(['.', '।'])) }</> }</dd>
        </>
    }
}

/// A step of the way in, and what holds it.
fn step_words(step: &Step) -> String {
    let (verb, what) = (worded(&step.verb), worded(&step.name));
    if step.fasteners.is_empty() {
        say!("{verb} {what}", verb, what)
    } else {
        let held_by = worded(&step.fasteners);
        say!("{verb} {what} ({held_by})", verb, what, held_by)
    }
}

#[cfg(all(test, not(target_arch = "wasm32")))]
mod tests {
    use super::*;

    #[test]
    fn every_part_of_every_machine_says_how_it_is_tested() {
        for (machine, pack) in scenario::machines().expect("ship") {
            for part in &pack.workshop.parts {
                assert!(!advice(part, machine).is_empty(), "{machine}: {}", part.id);
            }
        }
    }

    #[test]
    fn the_data_sheet_says_where_the_leads_go_and_in_which_unit() {
        let pack = &scenario::machines().expect("ship")["P"];
        let of = |id: &str| {
            let part = pack.workshop.part(id).expect("has one");
            sheet_lines(part, &pack.workshop).join("; ")
        };
        let motor = of("motor");
        assert!(
            motor.contains("motor terminal A") && motor.contains("20.0 to 22.0 Ω"),
            "{motor}"
        );
        assert!(of("pulsator").contains("r/min"), "{}", of("pulsator"));
        assert!(of("inlet_filter").is_empty());
    }
}

//! The parts of a machine as its file has them: what each does, how it fails, how it is tested, how
//! it is reached, what to check when it goes back.

use yew::prelude::*;

use crate::app::format;
use crate::app::markdown;
use crate::app::route::Route;
use crate::app::view::sheet;
use crate::bench::workshop::DataSheetLine;
use crate::bench::workshop::Part;
use crate::bench::workshop::Work;
use crate::bench::workshop::Workshop;
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
            <p>{ say!("From the machine's own file: what the bench lets you do is what stands here. Ranges under “Test” are its data sheet's. ") }
                <a href={Route::Readings(Some(props.machine.clone())).href()}>{ say!("What each reading tells apart") }</a>{ ", " }
                <a href={Route::faults_of(&props.machine).href()}>{ say!("faults of this machine") }</a>{ ", " }
                <a href={Route::Handbook(Some("measure".to_owned())).href()}>{ say!("measuring") }</a></p>
            { for workshop.parts.iter().map(|part| html! {
                <section key={part.id.clone()}>
                    <h2>{ format::sentence(&part.name) }{ " " }<small>{ &part.designation }</small></h2>
                    <dl class="facts">
                        { fact("Does", &part.does) }
                        { fact("Fails", &part.fails) }
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
    html! { <><dt>{ name.to_owned() }</dt><dd>{ format::sentence(text) }</dd></> }
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
    let way: Vec<String> = workshop
        .closure(&work.needs)
        .iter()
        .map(|step| match step.fasteners.as_str() {
            "" => format!("{} {}", step.verb, step.name),
            held_by => format!("{} {} ({held_by})", step.verb, step.name),
        })
        .collect();
    let minutes = work.work_s / 60.0;
    let reach = if way.is_empty() {
        "from outside".to_owned()
    } else {
        way.join(", ")
    };
    let mut said = format!("Reach it: {reach}. About {minutes:.0} min for the work itself.");
    for (word, text) in [
        ("Held by", work.fasteners.clone()),
        ("Tools", work.tools.join(", ")),
        ("Mind", work.caution.clone()),
    ] {
        if !text.is_empty() {
            said.push_str(&format!(" {word}: {text}."));
        }
    }
    html! {
        <>
            <dt>{ format::sentence(&work.name) }</dt>
            <dd>{ said }
                if !work.check.is_empty() { <><br />{ format!("On refit: {}.", work.check.trim_end_matches('.')) }</> }</dd>
        </>
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

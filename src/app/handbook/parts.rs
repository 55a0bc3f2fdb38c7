//! The parts of a machine as its file has them: what each does, how it fails, how it is tested, how
//! it is reached, what to check when it goes back.

use yew::prelude::*;

use crate::app::format;
use crate::app::route::Route;
use crate::bench::workshop::DataSheetLine;
use crate::bench::workshop::Part;
use crate::bench::workshop::Work;
use crate::bench::workshop::Workshop;
use crate::scenario;

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
            <p>{ "From the machine's own file: what the bench lets you do is what stands here." }
                { " " }<a href={Route::Readings(Some(props.machine.clone())).href()}>{ "What each reading tells apart" }</a></p>
            { for workshop.parts.iter().map(|part| html! {
                <section key={part.id.clone()}>
                    <h2>{ format::sentence(&part.name) }{ " " }<small>{ &part.designation }</small></h2>
                    <dl class="facts">
                        { fact("Does", &part.does) }
                        { fact("Fails", &part.fails) }
                        { fact("Test", &tests(part, workshop).join("; ")) }
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

/// Lines of the data sheet whose test points or clamped wire belong to the part.
fn tests(part: &Part, workshop: &Workshop) -> Vec<String> {
    let word = part.name.to_lowercase();
    let is_of = |line: &&DataSheetLine| {
        part.elements.contains(&line.red) || line.what.to_lowercase().contains(&word)
    };
    let told = |line: &DataSheetLine| {
        let unit = match line.mode.as_str() {
            "ohms" | "earth_bond" | "continuity" | "insulation" => "Ω",
            "ac_volts" | "low_ac_volts" | "dc_volts" => "V",
            "clamp" | "leakage" => "A",
            "capacitance" => "F",
            "frequency" => "Hz",
            _ => "",
        };
        let bound = |value: f64| match unit {
            "F" => format!("{:.1} µF", value * 1e6),
            "Ω" if value >= 1e6 => format!("{:.0} MΩ", value / 1e6),
            _ => format!("{value} {unit}"),
        };
        format!(
            "{}: {} to {} ({})",
            line.what,
            bound(line.low),
            bound(line.high),
            line.state.replace('_', " ")
        )
    };
    workshop.data_sheet.iter().filter(is_of).map(told).collect()
}

fn work_facts(work: &Work, workshop: &Workshop) -> Html {
    let way: Vec<String> = workshop
        .closure(&work.needs)
        .iter()
        .map(|step| format!("{} {}", step.verb, step.name))
        .collect();
    let minutes = work.work_s / 60.0;
    let reach = if way.is_empty() {
        "from outside".to_owned()
    } else {
        way.join(", ")
    };
    html! {
        <>
            <dt>{ format::sentence(&work.name) }</dt>
            <dd>{ format!("Reach it: {reach}. About {minutes:.0} min for the work itself. {}", work.caution) }
                if !work.check.is_empty() { <><br />{ format!("On refit: {}.", work.check.trim_end_matches('.')) }</> }</dd>
        </>
    }
}

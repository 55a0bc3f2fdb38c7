//! One fault: what changes, what a customer would say, which readings differ most; computed here.

use yew::prelude::*;

use crate::app::faults::list::part_name;
use crate::app::faults::shipped;
use crate::app::faults::wash::WashTable;
use crate::app::route::Route;
use crate::app::view::sheet::state_words;
use crate::bench::signature;
use crate::bench::signature::Difference;
use crate::bench::signature::values;
use crate::bench::words;
use crate::machine::FaultDef;
use crate::scenario::MachinePack;

/// Readings shown; what follows differs less.
const SHOWN: usize = 15;

/// Which fault of which machine.
#[derive(Properties, PartialEq)]
pub struct FaultPageProps {
    /// Short name of the machine.
    pub machine: String,
    /// Name of the fault.
    pub fault: String,
}

/// The page.
#[component]
pub fn FaultPage(props: &FaultPageProps) -> Html {
    let found = shipped(&props.machine)
        .and_then(|pack| pack.model.fault(&props.fault).map(|fault| (pack, fault)));
    let Some((pack, fault)) = found else {
        return Html::default();
    };
    let parts = Route::Handbook(Some(format!("parts_{}", props.machine.to_lowercase())));
    html! {
        <>
            <p>
                <a href={Route::faults_of(&props.machine).href()}>
                    { format!("Faults of {}", pack.model.name) }
                </a>
            </p>
            <h1>{ &fault.what }</h1>
            <p>
                { format!("{}, {}. ", part_name(pack, fault), fault.reference) }
                <a href={parts.href()}>{ "How parts are tested and reached" }</a>
            </p>
            <h2>{ "What a customer would say" }</h2>
            <p>{ format!("“{}”", fault.complaint) }</p>
            <h2>{ "What changes" }</h2>
            <ul>
                { for values::changed_values(&pack.model, fault).into_iter().map(|line| html! {
                    <li>{ line }</li>
                }) }
            </ul>
            <h2>{ "Readings that differ most" }</h2>
            { readings(pack, fault) }
            <h2>{ "A wash with it" }</h2>
            <WashTable machine={props.machine.clone()} fault={props.fault.clone()} />
        </>
    }
}

fn readings(pack: &MachinePack, fault: &FaultDef) -> Html {
    let found = signature::differences(&pack.model, &pack.workshop, fault);
    let Ok(found) = found else {
        return html! { <p>{ "The wiring cannot be solved with this fault." }</p> };
    };
    if found.is_empty() {
        return html! { <p>{ "No electrical reading tells it from a sound machine." }</p> };
    }
    html! {
        <table>
            <thead>
                <tr>
                    <th scope="col">{ "Reading" }</th>
                    <th scope="col">{ "While" }</th>
                    <th scope="col">{ "Sound" }</th>
                    <th scope="col">{ "With the fault" }</th>
                </tr>
            </thead>
            <tbody>{ for found.iter().take(SHOWN).map(|line| row(pack, line)) }</tbody>
        </table>
    }
}

fn row(pack: &MachinePack, line: &Difference) -> Html {
    let apart: Vec<&str> = line
        .apart
        .iter()
        .filter_map(|id| pack.workshop.connector(id))
        .map(|connector| connector.name.as_str())
        .collect();
    let mut state = state_words(&line.state);
    if !apart.is_empty() {
        state = format!("{state}, {} apart", apart.join(" and "));
    }
    html! {
        <tr>
            <td>{ format!("{} ({})", line.what, words::mode_name(line.mode)) }</td>
            <td>{ state }</td>
            <td>{ &line.sound }</td>
            <td>{ &line.faulty }</td>
        </tr>
    }
}

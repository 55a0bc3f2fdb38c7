//! One fault: what changes, what a customer would say, which readings differ most; computed here.

use yew::prelude::*;

use crate::app::faults::list::part_name;
use crate::app::faults::shipped;
use crate::app::faults::wash::WashTable;
use crate::app::format;
use crate::app::route::Route;
use crate::app::view::sheet::state_words;
use crate::bench::signature;
use crate::bench::signature::grouped::Group;
use crate::bench::signature::grouped::grouped;
use crate::bench::signature::values;
use crate::bench::words;
use crate::language::decimals;
use crate::language::worded;
use crate::machine::FaultDef;
use crate::say;
use crate::scenario::MachinePack;

/// Rows of readings shown; what follows differs less.
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
                    { say!("Faults of {machine}", machine = worded(&pack.model.name)) }
                </a>
            </p>
            <h1>{ format::sentence(&worded(&fault.what)) }</h1>
            <p>
                { say!("{part}.", part = format::sentence(&part_name(pack, fault))) }{ " " }
                <a href={parts.href()}>{ say!("How parts are tested and reached") }</a>
                { " " }<small class="faults__code">{ say!("In tables: {reference}", reference = fault.reference) }</small>
            </p>
            <h2>{ say!("What a customer would say") }</h2>
            <p>{ say!("“{quote}”", quote = worded(&fault.complaint)) }</p>
            <h2>{ say!("What changes") }</h2>
            <ul>
                { for values::changed_values(&pack.model, fault).into_iter().map(|line| html! {
                    <li>{ line }</li>
                }) }
            </ul>
            <h2>{ say!("Readings that differ most") }</h2>
            { readings(pack, fault) }
            <h2>{ say!("A wash with it") }</h2>
            <WashTable machine={props.machine.clone()} fault={props.fault.clone()} />
        </>
    }
}

fn readings(pack: &MachinePack, fault: &FaultDef) -> Html {
    let found = signature::differences(&pack.model, &pack.workshop, fault);
    let Ok(found) = found else {
        return html! { <p>{ say!("The wiring cannot be solved with this fault.") }</p> };
    };
    let groups = grouped(&found);
    if groups.is_empty() {
        return html! { <p>{ say!("No electrical reading tells it from a sound machine.") }</p> };
    }
    let more = groups.len().saturating_sub(SHOWN);
    html! {
        <>
            <table>
                <thead>
                    <tr>
                        <th scope="col">{ say!("Reading") }</th>
                        <th scope="col">{ say!("While") }</th>
                        <th scope="col">{ say!("Sound") }</th>
                        <th scope="col">{ say!("With the fault") }</th>
                    </tr>
                </thead>
                <tbody>{ for groups.iter().take(SHOWN).map(|group| row(pack, group)) }</tbody>
            </table>
            if more > 0 { <p>{ say!("{n} more differ less.", n = more) }</p> }
        </>
    }
}

fn row(pack: &MachinePack, group: &Group) -> Html {
    let state = |(state, apart): &(String, Vec<String>)| {
        let apart = apart
            .iter()
            .filter_map(|id| pack.workshop.connector(id))
            .map(|connector| worded(&connector.name).into_owned())
            .reduce(|first, last| say!("{first} and {last}", first, last));
        let state = state_words(state);
        match apart {
            None => state,
            Some(what) => say!("{state}, {what} apart", state, what),
        }
    };
    let states: Vec<String> = group.states.iter().map(state).collect();
    let whats: Vec<_> = group.whats.iter().map(|what| worded(what)).collect();
    let what = format::sentence(&whats.join("; "));
    html! {
        <tr>
            <td>{ format!("{what} ({})", words::mode_name(group.mode)) }</td>
            <td>{ states.join("; ") }</td>
            <td>{ decimals(worded(&group.sound).into_owned()) }</td>
            <td>{ decimals(worded(&group.faulty).into_owned()) }</td>
        </tr>
    }
}

//! A whole wash with a fault beside a sound one, run once the rest of the page stands.

use gloo::timers::callback::Timeout;
use yew::prelude::*;

use crate::app::faults::shipped;
use crate::app::format;
use crate::bench::signature::wash;
use crate::bench::signature::wash::Change;
use crate::language::decimals;
use crate::language::said;
use crate::say;

/// Time the browser gets to draw the page before two washes are run, ms.
const AFTER_MS: u32 = 30;

/// Which fault of which machine.
#[derive(Properties, PartialEq)]
pub struct WashTableProps {
    /// Short name of the machine.
    pub machine: String,
    /// Name of the fault.
    pub fault: String,
}

/// The figures that differ.
#[component]
pub fn WashTable(props: &WashTableProps) -> Html {
    let found = use_state(|| None::<Vec<Change>>);
    {
        let found = found.clone();
        let key = (props.machine.clone(), props.fault.clone());
        use_effect_with(key, move |(machine, fault)| {
            let (machine, fault) = (machine.clone(), fault.clone());
            let later = Timeout::new(AFTER_MS, move || {
                found.set(Some(changes(&machine, &fault)));
            });
            move || drop(later)
        });
    }
    let Some(changes) = &*found else {
        return html! { <p role="status">{ say!("Two washes are being run, one with the fault and one without.") }</p> };
    };
    if changes.is_empty() {
        return html! { <p role="status">{ say!("A whole wash goes as in a sound machine.") }</p> };
    }
    html! {
        <table>
            <thead>
                <tr>
                    <th scope="col">{ say!("In a normal wash of 4 kg") }</th>
                    <th scope="col">{ say!("Sound") }</th>
                    <th scope="col">{ say!("With the fault") }</th>
                </tr>
            </thead>
            <tbody>
                { for changes.iter().map(|change| html! {
                    <tr><td>{ format::sentence(said(change.what)) }</td><td>{ decimals(change.sound.clone()) }</td><td>{ decimals(change.faulty.clone()) }</td></tr>
                }) }
            </tbody>
        </table>
    }
}

fn changes(machine: &str, fault: &str) -> Vec<Change> {
    let Some(pack) = shipped(machine) else {
        return Vec::new();
    };
    let Some(fault) = pack.model.fault(fault) else {
        return Vec::new();
    };
    wash::sound_wash(&pack.model)
        .and_then(|sound| wash::changed_wash(&pack.model, fault, &sound))
        .unwrap_or_default()
}

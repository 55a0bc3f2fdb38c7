//! The handbook's faults: a list by part that narrows while typing, and a page for each fault.

mod list;
mod page;
mod wash;

use yew::prelude::*;

use crate::app::handbook::Contents;
use crate::app::handbook::FAULTS;
use crate::app::route::Route;
use crate::language::worded;
use crate::say;
use crate::scenario;
use crate::scenario::MachinePack;

pub use list::FaultList;
pub use page::FaultPage;

/// Which machine and which fault.
#[derive(Properties, PartialEq)]
pub struct FaultsProps {
    /// Short name of the machine; the first that ships without.
    pub machine: Option<String>,
    /// Name or number of the fault; the list without.
    pub fault: Option<String>,
}

/// The screen.
#[component]
pub fn FaultsScreen(props: &FaultsProps) -> Html {
    html! {
        <main class="page handbook" id="main" tabindex="-1">
            <Contents here={FAULTS} />
            <article class="handbook__text prose">
                { content(props.machine.as_deref(), props.fault.as_deref()) }
            </article>
        </main>
    }
}

fn content(machine: Option<&str>, fault: Option<&str>) -> Html {
    let Ok(machines) = scenario::machines() else {
        return html! { <p>{ say!("The machines that ship cannot be read.") }</p> };
    };
    let asked = machine.map(str::to_uppercase);
    let pack = match &asked {
        Some(id) => machines.get(id),
        None => machines.get("P"),
    };
    let Some(pack) = pack else {
        return html! {
            <>
                <h1>{ say!("No such machine") }</h1>
                <p><a href={Route::faults().href()}>{ say!("To the list of faults") }</a></p>
            </>
        };
    };
    let Some(fault) = fault else {
        return html! { <FaultList machine={pack.model.id.clone()} /> };
    };
    match pack.model.fault(fault) {
        Some(known) => html! {
            <FaultPage
                key={format!("{} {}", pack.model.id, known.id)}
                machine={pack.model.id.clone()}
                fault={known.id.clone()}
            />
        },
        None => html! {
            <>
                <h1>{ say!("This machine cannot have that fault") }</h1>
                <p>
                    <a href={Route::faults_of(&pack.model.id).href()}>
                        { say!("To the faults of {machine}", machine = worded(&pack.model.name)) }
                    </a>
                </p>
            </>
        },
    }
}

/// A machine that ships.
fn shipped(id: &str) -> Option<&'static MachinePack> {
    scenario::machines().ok()?.get(id)
}

#[cfg(all(test, not(target_arch = "wasm32")))]
mod tests {
    use std::collections::BTreeSet;

    use super::*;
    use crate::app::as_text::as_text;

    fn at(machine: &str, fault: Option<&str>) -> FaultsProps {
        FaultsProps {
            machine: Some(machine.to_owned()),
            fault: fault.map(str::to_owned),
        }
    }

    #[test]
    fn the_list_names_every_fault_of_the_machine_under_its_part() {
        let text = as_text::<FaultsScreen>(|| at("P", None));
        let pack = shipped("P").expect("ships");
        for fault in &pack.model.faults {
            assert!(
                text.contains(&format!("faults/P/{}\"", fault.id)),
                "{}",
                fault.id
            );
        }
        assert!(text.contains("<h2>Run capacitor</h2>"), "{text}");
    }

    #[test]
    fn a_page_tells_words_values_and_readings() {
        let text = as_text::<FaultsScreen>(|| at("P", Some("E51")));
        assert!(
            text.contains("<h1>The run capacitor has lost most of its value</h1>"),
            "{text}"
        );
        assert!(text.contains("<small class=\"faults__code\">In tables: E51</small>"));
        assert!(text.contains("It starts when it is empty"), "{text}");
        assert!(text.contains("10.0 µF") && text.contains("4.0"), "{text}");
        let rows: Vec<Vec<&str>> = text
            .split("<tr><td>")
            .skip(1)
            .map(|row| row.split("</td><td>").collect())
            .collect();
        let mut shown = BTreeSet::new();
        for row in &rows {
            let [reading, while_in, sound, faulty] = row.as_slice() else {
                panic!("{row:?}");
            };
            assert_ne!(sound, &faulty.split('<').next().unwrap_or_default());
            let mode = reading.rsplit('(').next();
            let is_new = shown.insert((mode, while_in, sound, faulty));
            assert!(is_new, "{row:?} stands twice");
        }
        assert!(!rows.is_empty());
    }

    #[test]
    fn what_is_not_there_is_said() {
        assert!(as_text::<FaultsScreen>(|| at("Z", None)).contains("No such machine"));
        assert!(
            as_text::<FaultsScreen>(|| at("P", Some("no_such_fault")))
                .contains("cannot have that fault")
        );
    }
}

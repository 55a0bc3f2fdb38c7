//! All faults of a machine, grouped by part, narrowed while typing.

use std::collections::BTreeMap;

use web_sys::HtmlInputElement;
use yew::prelude::*;

use crate::app::faults::shipped;
use crate::app::format;
use crate::app::route::Route;
use crate::language::worded;
use crate::machine::FaultClass;
use crate::machine::FaultDef;
use crate::say;
use crate::scenario;
use crate::scenario::MachinePack;

/// Whose faults.
#[derive(Properties, PartialEq)]
pub struct FaultListProps {
    /// Short name of the machine.
    pub machine: String,
}

/// The list.
#[component]
pub fn FaultList(props: &FaultListProps) -> Html {
    let words = use_state(String::new);
    let oninput = {
        let words = words.clone();
        Callback::from(move |event: InputEvent| {
            words.set(event.target_unchecked_into::<HtmlInputElement>().value());
        })
    };
    let Some(pack) = shipped(&props.machine) else {
        return Html::default();
    };
    let groups = grouped(pack, &words);
    let count: usize = groups.values().map(Vec::len).sum();
    html! {
        <>
            <h1>{ say!("Faults") }</h1>
            <p>{ say!("What each fault changes, what a customer would say, and which readings differ most from a sound machine. The figures are computed when a page is opened.") }</p>
            <nav aria-label={say!("Machine")}>{ machines(&props.machine) }</nav>
            <p>
                <label for="fault-words">{ say!("Narrow the list") }{ " " }</label>
                <input id="fault-words" type="search" autocomplete="off" value={(*words).clone()} {oninput} />
            </p>
            <p role="status">{ say!("{shown} of {n} faults", shown = count, n = pack.model.faults.len()) }</p>
            { for groups.iter().map(|(part, faults)| group(&props.machine, part, faults)) }
        </>
    }
}

fn machines(chosen: &str) -> Html {
    let Ok(all) = scenario::machines() else {
        return Html::default();
    };
    html! {
        <ul>
            { for all.values().map(|pack| html! {
                <li>
                    <a href={Route::faults_of(&pack.model.id).href()}
                       aria-current={(pack.model.id == chosen).then_some("page")}>
                        { format!("{}: {}", pack.model.id, worded(&pack.model.name)) }
                    </a>
                </li>
            }) }
        </ul>
    }
}

fn group(machine: &str, part: &str, faults: &[&FaultDef]) -> Html {
    html! {
        <section>
            <h2>{ format::sentence(part) }</h2>
            <ul>
                { for faults.iter().map(|fault| html! {
                    <li><a href={Route::fault(machine, &fault.id).href()}>{ format::sentence(&worded(&fault.what)) }</a></li>
                }) }
            </ul>
        </section>
    }
}

/// Faults whose words, part or number hold every word typed, by the name of their part.
fn grouped<'a>(pack: &'a MachinePack, typed: &str) -> BTreeMap<String, Vec<&'a FaultDef>> {
    let typed = typed.to_lowercase();
    let mut groups: BTreeMap<String, Vec<&FaultDef>> = BTreeMap::new();
    for fault in &pack.model.faults {
        let part = part_name(pack, fault);
        let (what, complaint) = (worded(&fault.what), worded(&fault.complaint));
        let whole = format!("{what} {part} {} {complaint}", fault.reference);
        let whole = whole.to_lowercase();
        if typed.split_whitespace().all(|word| whole.contains(word)) {
            groups.entry(part).or_default().push(fault);
        }
    }
    groups
}

/// The part a fault belongs to, or what it is where it is nobody's part.
pub fn part_name(pack: &MachinePack, fault: &FaultDef) -> String {
    let part = pack
        .workshop
        .part(&fault.part)
        .map(|part| worded(&part.name).into_owned());
    part.unwrap_or_else(|| {
        match fault.class {
            FaultClass::Site => say!("outside the machine"),
            FaultClass::Refit => say!("left wrong last time"),
            FaultClass::Harness | FaultClass::Part => say!("wires and terminals"),
        }
        .to_owned()
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn typing_narrows_by_words_part_and_number() {
        let pack = shipped("P").expect("ships");
        let found = |typed: &str| -> Vec<&str> {
            let groups = grouped(pack, typed);
            groups.values().flatten().map(|f| f.id.as_str()).collect()
        };
        assert_eq!(found("").len(), pack.model.faults.len());
        assert!(found("CAPACITOR most").contains(&"capacitor_low"));
        assert_eq!(found("e51"), ["capacitor_low"]);
        assert!(found("no such words").is_empty());
    }
}

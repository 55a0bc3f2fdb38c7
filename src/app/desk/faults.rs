//! What is wrong with the machine: faults from the catalogue with their severity and onset.

use std::collections::BTreeMap;

use serde_json::Value;
use serde_json::json;
use web_sys::HtmlSelectElement;
use yew::prelude::*;

use crate::app::desk::field::FieldRow;
use crate::app::desk::field::id_of;
use crate::app::desk::field::text_of;
use crate::app::desk::fields::JOB;
use crate::app::desk::state::Edit;
use crate::app::desk::told::Told;
use crate::app::format;
use crate::language::said;
use crate::language::worded;
use crate::machine::FaultClass;
use crate::machine::FaultDef;
use crate::say;
use crate::scenario;
use crate::scenario::MachinePack;
use crate::scenario::edit;
use crate::scenario::job_file::JobFile;
use crate::text;

/// The job and what is wrong in its list of faults.
#[derive(Properties, PartialEq)]
pub struct FaultListProps {
    /// The job.
    pub job: JobFile,
    /// What is wrong inside the list.
    pub told: Vec<Told>,
    /// Where changes go.
    pub edit: Callback<Edit>,
}

/// When a fault is there: name in the file, words, what it starts with, and the names of its numbers.
type OnsetKind = (
    &'static str,
    &'static str,
    fn() -> Value,
    &'static [&'static str],
);

const ONSETS: [OnsetKind; 5] = [
    ("constant", text!("always"), || json!("constant"), &[]),
    (
        "from",
        text!("from a time on"),
        || json!({"from": {"start_min": 10.0}}),
        &["start_min"],
    ),
    (
        "intermittent",
        text!("on and off by chance"),
        || json!({"intermittent": {"period_s": 60.0, "chance": 0.3}}),
        &["period_s", "chance"],
    ),
    (
        "hot",
        text!("while the motor is hot"),
        || json!({"hot": {"above_degc": 80.0}}),
        &["above_degc"],
    ),
    (
        "vibration",
        text!("while the basket turns fast"),
        || json!({"vibration": {"above_rpm": 300.0}}),
        &["above_rpm"],
    ),
];

/// The list, and one more at its end.
#[component]
pub fn FaultList(props: &FaultListProps) -> Html {
    let known = defs(&props.job.machine);
    let whole = edit::as_value(&props.job);
    let count = props.job.faults.len();
    let add = {
        let edit = props.edit.clone();
        Callback::from(move |event: Event| {
            let select = event.target_unchecked_into::<HtmlSelectElement>();
            let fault = json!({ "id": select.value(), "severity": 1.0 });
            select.set_value("");
            edit.emit(Edit::Set(format!("faults[{count}]"), fault));
            edit.emit(Edit::Settle);
        })
    };
    let row = |(index, fault): (usize, &crate::scenario::job_file::JobFaultFile)| {
        let value = edit::get(&whole, &format!("faults[{index}]"))
            .cloned()
            .unwrap_or_default();
        let name = known
            .iter()
            .find(|def| def.id == fault.id)
            .map_or(fault.id.as_str().into(), |def| worded(&def.what));
        fault_row(props, index, &name, &value)
    };
    html! {
        <div class="stack">
            <ol class="desk__faults">{ for props.job.faults.iter().enumerate().map(row) }</ol>
            <label class="field"><span class="field__label">{ say!("Add a fault") }</span>
                <select id="field-faults" onchange={add}>
                    <option value="" selected=true>{ say!("choose what is wrong") }</option>
                    { options(&props.job.machine) }
                </select>
            </label>
        </div>
    }
}

/// The faults a machine can have to choose from, by their parts; what is of no part comes last, by what
/// kind of cause it is.
pub(super) fn options(machine: &str) -> Html {
    let mut groups: BTreeMap<(bool, String), Vec<&FaultDef>> = BTreeMap::new();
    if let Some(own) = pack(machine) {
        for def in &own.model.faults {
            groups.entry(group_of(own, def)).or_default().push(def);
        }
    }
    let group = |((_, title), mut list): ((bool, String), Vec<&FaultDef>)| {
        list.sort_by_cached_key(|def| without_article(&worded(&def.what)).to_owned());
        html! {
            <optgroup label={title}>
                { for list.into_iter().map(|def| html! { <option value={def.id.clone()}>{ worded(&def.what).into_owned() }</option> }) }
            </optgroup>
        }
    };
    groups.into_iter().map(group).collect()
}

fn pack(machine: &str) -> Option<&'static MachinePack> {
    scenario::machines().ok()?.get(machine)
}

/// The faults a machine can have.
fn defs(machine: &str) -> &'static [FaultDef] {
    pack(machine).map_or(&[], |pack| &pack.model.faults)
}

/// Whether it is of no part, and its part or what kind of cause it is.
fn group_of(pack: &MachinePack, def: &FaultDef) -> (bool, String) {
    let part = pack.workshop.part(&def.part);
    if let Some(part) = part.filter(|_| def.class != FaultClass::Site) {
        return (false, format::sentence(&worded(&part.name)));
    }
    let kind = match def.class {
        FaultClass::Part => say!("a part has failed"),
        FaultClass::Harness => say!("wires, pins, terminals"),
        FaultClass::Site => say!("outside the machine"),
        FaultClass::Refit => say!("left wrong last time"),
    };
    (true, format::sentence(kind))
}

/// Words as they are looked up in a list.
fn without_article(words: &str) -> &str {
    let articles = [
        "the ", "an ", "a ", "el ", "la ", "los ", "las ", "un ", "una ",
    ];
    let rest = |article: &&str| words.strip_prefix(*article);
    articles.iter().find_map(rest).unwrap_or(words)
}

fn fault_row(props: &FaultListProps, index: usize, name: &str, fault: &Value) -> Html {
    let at = format!("faults[{index}]");
    let set = {
        let (edit, at) = (props.edit.clone(), at.clone());
        Callback::from(move |(inside, value): (String, Value)| {
            edit.emit(Edit::Set(format!("{at}{inside}"), value));
            edit.emit(Edit::Settle);
        })
    };
    let onset = &fault["onset"];
    let kind = onset
        .as_str()
        .map(str::to_owned)
        .or_else(|| onset.as_object()?.keys().next().cloned());
    let onchange = set.reform(|event: Event| {
        let word = event.target_unchecked_into::<HtmlSelectElement>().value();
        let start = ONSETS
            .iter()
            .find(|(id, ..)| *id == word)
            .map_or(Value::Null, |(_, _, start, _)| start());
        (".onset".to_owned(), start)
    });
    let numbers = ONSETS
        .iter()
        .find(|(id, ..)| Some(*id) == kind.as_deref())
        .map_or(&[][..], |kind| kind.3);
    let told = |path: &str| -> Vec<String> {
        let here = props.told.iter().filter(|told| told.path == path);
        here.map(|told| told.words.clone()).collect()
    };
    let number = |path: String, value: &Value| {
        let field = JOB.field_at(&path);
        let problems = told(&path);
        html! {
            if let Some(field) = field {
                <FieldRow key={path.clone()} path={path.clone()} label={field.label()} kind={field.kind} hint={field.hint()}
                          value={value.clone()} {problems} edit={props.edit.clone()} />
            }
        }
    };
    let onset_at = format!("{at}.onset");
    html! {
        <li class="desk__fault stack" key={format!("{index}-{}", text_of(&fault["id"]))} id={id_of(&at)} tabindex="-1">
            <p class="row"><strong>{ name }</strong>
                <button type="button" class="button button--small" aria-label={say!("Take out: {name}", name)}
                        onclick={set.reform(|_: MouseEvent| (String::new(), Value::Null))}>{ say!("Take out") }</button></p>
            { for told(&format!("{at}.id")).into_iter().map(|words| html! { <span class="field__error">{ words }</span> }) }
            { number(format!("{at}.severity"), &fault["severity"]) }
            <label class="field"><span class="field__label">{ JOB.label(&onset_at) }</span>
                <select id={id_of(&onset_at)} {onchange}>
                    <option value="" selected={kind.is_none()}>{ say!("as it usually comes on") }</option>
                    { for ONSETS.iter().map(|&(id, words, ..)| html! {
                        <option value={id} selected={kind.as_deref() == Some(id)}>{ said(words) }</option>
                    }) }
                </select>
            </label>
            { for numbers.iter().map(|field| {
                let inside = kind.clone().unwrap_or_default();
                number(format!("{onset_at}.{inside}.{field}"), &onset[&inside][*field])
            }) }
        </li>
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn faults_stand_under_their_parts_and_are_sorted_without_the_article() {
        assert_eq!(without_article("the belt is off"), "belt is off");
        assert_eq!(without_article("antenna"), "antenna");
        let own = pack("P").expect("ships");
        let group = |id: &str| group_of(own, own.model.fault(id).expect("of this machine"));
        assert_eq!(group("capacitor_low"), (false, "Run capacitor".to_owned()));
        assert_eq!(
            group("tap_closed"),
            (true, "Outside the machine".to_owned())
        );
    }
}

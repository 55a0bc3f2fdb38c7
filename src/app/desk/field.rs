//! One field of the form: its label, its control, and what is wrong with it, told beside it.

use serde_json::Value;
use serde_json::json;
use web_sys::HtmlInputElement;
use web_sys::HtmlSelectElement;
use web_sys::HtmlTextAreaElement;
use yew::prelude::*;

use crate::app::desk::form_table::Kind;
use crate::app::desk::skills;
use crate::app::desk::state::Edit;
use crate::app::desk::state::Unread;
use crate::language::said;
use crate::language::worded;
use crate::say;
use crate::scenario;

/// A field and what stands in it.
#[derive(Properties, PartialEq)]
pub struct FieldRowProps {
    /// Its path in the file.
    pub path: AttrValue,
    /// What it is called.
    pub label: AttrValue,
    /// What helps to fill it in.
    #[prop_or_default]
    pub hint: AttrValue,
    /// How it is filled in.
    pub kind: Kind,
    /// What stands there.
    pub value: Value,
    /// What is wrong with it.
    #[prop_or_default]
    pub problems: Vec<String>,
    /// Where changes go.
    pub edit: Callback<Edit>,
}

/// What was typed, and the value that stood there then. A text on its way to a number, such as "3.",
/// and one that means nothing stay as they are typed.
#[derive(Clone, PartialEq)]
struct Typed {
    text: String,
    over: Value,
}

impl Typed {
    fn over(text: String, value: &Value) -> Self {
        let over = value.clone();
        Self { text, over }
    }

    /// It is what the value came from, or nothing has come in its place.
    fn stands(&self, kind: Kind, value: &Value) -> bool {
        match value_of(kind, &self.text) {
            Some(meant) => meant == *value,
            None => self.over == *value,
        }
    }
}

/// What is wanted where something was typed that means nothing, and what stands there until then.
pub fn unread_words(kind: Kind, value: &Value) -> String {
    let wanted = kind.wanted();
    match shown_as(kind, value).as_str() {
        "" => say!("{wanted}; until then nothing stands here", wanted),
        kept => say!("{wanted}; until then {kept} stays", wanted, kept),
    }
}

/// The id of a field's control.
pub fn id_of(path: &str) -> String {
    let plain = |c: char| if c.is_ascii_alphanumeric() { c } else { '-' };
    format!("field-{}", path.chars().map(plain).collect::<String>())
}

/// Lines that a text takes about, where the browser does not let its box grow by itself.
pub fn rows_of(text: &str) -> String {
    let lines = text.split('\n').map(|line| line.chars().count() / 40 + 1);
    lines.sum::<usize>().min(12).to_string()
}

/// The row.
#[component]
pub fn FieldRow(props: &FieldRowProps) -> Html {
    let unread = use_context::<Unread>();
    let was_left = use_state_eq(|| false);
    let typed = use_state(|| {
        let text = unread?.0.get(&*props.path)?.clone();
        Some(Typed::over(text, &props.value))
    });
    let id = id_of(&props.path);
    let shown = typed
        .as_ref()
        .filter(|typed| typed.stands(props.kind, &props.value));
    let unreadable = shown.is_some_and(|typed| value_of(props.kind, &typed.text).is_none());
    let text = shown.map_or_else(
        || shown_as(props.kind, &props.value),
        |typed| typed.text.clone(),
    );
    let mut problems = props.problems.clone();
    if unreadable {
        let words = unread_words(props.kind, &props.value);
        problems.retain(|told| *told != words);
        problems.insert(0, words);
    }
    // Nobody is told off for what they have not come to yet; the checks beside the form list it.
    if text.is_empty() && !*was_left {
        problems.clear();
    }
    let set = {
        let (edit, path) = (props.edit.clone(), props.path.to_string());
        Callback::from(move |value: Value| edit.emit(Edit::Set(path.clone(), value)))
    };
    let oninput = {
        let (kind, typed, set) = (props.kind, typed.clone(), set.clone());
        let (edit, path, value) = (
            props.edit.clone(),
            props.path.to_string(),
            props.value.clone(),
        );
        Callback::from(move |event: InputEvent| {
            let text = if kind == Kind::Text {
                event.target_unchecked_into::<HtmlTextAreaElement>().value()
            } else {
                event.target_unchecked_into::<HtmlInputElement>().value()
            };
            match value_of(kind, &text) {
                Some(value) => set.emit(value),
                None => edit.emit(Edit::Unreadable(path.clone(), text.clone())),
            }
            typed.set(Some(Typed::over(text, &value)));
        })
    };
    let onblur = {
        let (typed, edit) = (typed.clone(), props.edit.clone());
        Callback::from(move |_: FocusEvent| {
            was_left.set(true);
            // What means nothing stays until it is mended; a number is shown as it is kept.
            if !unreadable {
                typed.set(None);
            }
            edit.emit(Edit::Settle);
        })
    };
    let invalid = (!problems.is_empty()).then_some("true");
    let described = describes(&id, !props.hint.is_empty(), !problems.is_empty());
    let control = match props.kind {
        Kind::Text => {
            let rows = rows_of(&text);
            html! {
                <textarea id={id.clone()} {rows} value={text} {oninput} {onblur} aria-invalid={invalid} aria-describedby={described.clone()} />
            }
        }
        Kind::Yes => return yes_row(props, &id, set),
        Kind::Choice(_) | Kind::Machine | Kind::Level | Kind::MaybeYes(_) => {
            let onchange = select_change(props.kind, set);
            html! {
                <select id={id.clone()} {onchange} {onblur} aria-invalid={invalid} aria-describedby={described.clone()}>
                    { for choices(props.kind, &props.value).into_iter().map(|(value, words)| html! {
                        <option selected={value == text} value={value.clone()}>{ words }</option>
                    }) }
                </select>
            }
        }
        _ => {
            let mode = mode_of(props.kind);
            let known = (props.kind == Kind::Words).then(|| skills::offered(&text));
            let list = known.is_some().then_some(skills::KNOWN);
            html! {
                <>
                    <input id={id.clone()} type="text" inputmode={mode} value={text} {list} {oninput} {onblur} autocomplete="off"
                           aria-invalid={invalid} aria-describedby={described.clone()} />
                    { for known }
                </>
            }
        }
    };
    html! {
        <div class="field">
            <label class="field__label" for={id.clone()}>{ &props.label }{ unit(props.kind) }</label>
            { control }
            { notes(&id, &props.hint, &problems) }
        </div>
    }
}

fn describes(id: &str, hint: bool, problems: bool) -> Option<String> {
    let parts = [
        (hint, format!("{id}-hint")),
        (problems, format!("{id}-error")),
    ];
    let names: Vec<String> = parts
        .into_iter()
        .filter(|(is, _)| *is)
        .map(|(_, name)| name)
        .collect();
    (!names.is_empty()).then(|| names.join(" "))
}

/// Hint and problems below a control.
pub fn notes(id: &str, hint: &str, problems: &[String]) -> Html {
    html! {
        <>
            if !hint.is_empty() { <span class="field__hint" id={format!("{id}-hint")}>{ hint }</span> }
            if !problems.is_empty() {
                <span id={format!("{id}-error")}>
                    { for problems.iter().map(|words| html! { <span class="field__error field__error--line">{ words }</span> }) }
                </span>
            }
        </>
    }
}

fn yes_row(props: &FieldRowProps, id: &str, set: Callback<Value>) -> Html {
    let onchange = set
        .reform(|event: Event| json!(event.target_unchecked_into::<HtmlInputElement>().checked()));
    html! {
        <div class="field">
            <label class="choice"><input id={id.to_owned()} type="checkbox" checked={props.value == json!(true)} {onchange} />
                <span>{ &props.label }</span></label>
            { notes(id, &props.hint, &props.problems) }
        </div>
    }
}

fn unit(kind: Kind) -> Html {
    match kind.unit() {
        "" => Html::default(),
        unit => html! { <span class="field__unit">{ format!(", {unit}") }</span> },
    }
}

/// Which keys a telephone offers.
fn mode_of(kind: Kind) -> Option<&'static str> {
    match kind {
        Kind::Number(_) | Kind::MaybeNumber(_) | Kind::Percent => Some("decimal"),
        Kind::Whole(_) | Kind::MaybeWhole(_) => Some("numeric"),
        _ => None,
    }
}

fn select_change(kind: Kind, set: Callback<Value>) -> Callback<Event> {
    set.reform(move |event: Event| {
        let text = event.target_unchecked_into::<HtmlSelectElement>().value();
        match kind {
            Kind::Level => json!(text.parse::<u8>().unwrap_or(1)),
            Kind::MaybeYes(_) => match text.as_str() {
                "true" => json!(true),
                "false" => json!(false),
                _ => Value::Null,
            },
            _ => Value::String(text),
        }
    })
}

/// Values and their words; one that stands in the file without being on the list is kept.
fn choices(kind: Kind, value: &Value) -> Vec<(String, String)> {
    let pair = |value: &str, words: &str| (value.to_owned(), words.to_owned());
    let mut list = match kind {
        Kind::Choice(list) => list
            .iter()
            .map(|(value, words)| pair(value, said(words)))
            .collect(),
        Kind::Machine => machines(),
        Kind::Level => [
            ("1", say!("1, an opening job")),
            ("2", say!("2, one clear cause")),
            ("3", say!("3, needs measuring")),
            ("4", say!("4, misleading")),
            ("5", say!("5, several causes or none")),
        ]
        .map(|(value, words)| pair(value, words))
        .to_vec(),
        Kind::MaybeYes(usual) => vec![
            pair("", said(usual)),
            pair("true", say!("yes")),
            pair("false", say!("no")),
        ],
        _ => Vec::new(),
    };
    let present = text_of(value);
    if list.iter().all(|(known, _)| *known != present) {
        list.push(pair(&present, &present));
    }
    list
}

fn machines() -> Vec<(String, String)> {
    let packs = scenario::machines().into_iter().flatten();
    packs
        .map(|(id, pack)| (id.clone(), worded(&pack.model.name).into_owned()))
        .collect()
}

/// A value as it stands in its control.
pub fn text_of(value: &Value) -> String {
    match value {
        Value::Null => String::new(),
        Value::String(text) => text.clone(),
        Value::Array(list) => list.iter().map(text_of).collect::<Vec<_>>().join(", "),
        Value::Number(number) => number
            .as_f64()
            .map_or_else(|| number.to_string(), |n| n.to_string()),
        other => other.to_string(),
    }
}

/// A value as it stands in a control of a kind.
fn shown_as(kind: Kind, value: &Value) -> String {
    match (kind, value.as_f64()) {
        // A share such as 0.07 times a hundred is no round number.
        (Kind::Percent, Some(share)) => (libm::round(share * 1e8) / 1e6).to_string(),
        _ => text_of(value),
    }
}

/// A number as it is typed; a comma is a decimal point in half of the world.
fn number_in(text: &str) -> Option<f64> {
    let number: f64 = text.trim().replace(',', ".").parse().ok()?;
    number.is_finite().then_some(number)
}

/// What a text means in a field of a kind; nothing when it means nothing.
fn value_of(kind: Kind, text: &str) -> Option<Value> {
    let trimmed = text.trim();
    match kind {
        Kind::MaybeNumber(_) | Kind::MaybeWhole(_) if trimmed.is_empty() => Some(Value::Null),
        Kind::Number(_) | Kind::MaybeNumber(_) => number_in(text).map(|number| json!(number)),
        Kind::Percent => number_in(text).map(|number| json!(number / 100.0)),
        Kind::Whole(_) | Kind::MaybeWhole(_) => {
            let number = number_in(text)?;
            let is_whole =
                libm::trunc(number).total_cmp(&number).is_eq() && (0.0..=1e6).contains(&number);
            is_whole.then(|| json!(number as u32))
        }
        Kind::Words => {
            let words = text
                .split(',')
                .map(str::trim)
                .filter(|word| !word.is_empty());
            Some(json!(words.collect::<Vec<_>>()))
        }
        _ => Some(json!(text)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_means_nothing_stays_as_typed_until_another_value_comes() {
        let kind = Kind::Number("kg");
        let typed = Typed::over("abc".to_owned(), &json!(3.0));
        assert!(typed.stands(kind, &json!(3.0)) && !typed.stands(kind, &json!(4.0)));
        let half = Typed::over("3.".to_owned(), &json!(2.0));
        assert!(half.stands(kind, &json!(3.0)) && !half.stands(kind, &json!(2.0)));
        let words = unread_words(kind, &json!(0.3));
        assert!(words.ends_with("until then 0.3 stays"), "{words}");
    }

    #[test]
    fn what_is_typed_means_what_it_says() {
        let number = |text| value_of(Kind::Number("kg"), text);
        assert_eq!(number("3,5"), Some(json!(3.5)));
        assert_eq!(number("3."), Some(json!(3.0)));
        for wrong in ["", "three", "inf", "NaN", "1e999"] {
            assert_eq!(number(wrong), None, "{wrong}");
        }
        assert_eq!(value_of(Kind::MaybeNumber("mA"), " "), Some(Value::Null));
        let whole = |text| value_of(Kind::Whole("months"), text);
        assert_eq!(whole("24"), Some(json!(24)));
        for wrong in ["2.5", "-1", "1e9", "", "two"] {
            assert_eq!(whole(wrong), None, "{wrong}");
        }
        assert_eq!(value_of(Kind::Percent, "7,5"), Some(json!(0.075)));
        assert_eq!(shown_as(Kind::Percent, &json!(0.07)), "7");
        assert_eq!(
            value_of(Kind::Words, "ask first, , look "),
            Some(json!(["ask first", "look"]))
        );
        assert_eq!(text_of(&json!(3.0)), "3");
        for wrong in ["abc", "-", "1.000,5", "5 kg"] {
            assert_eq!(number(wrong), None, "{wrong}");
        }
    }
}

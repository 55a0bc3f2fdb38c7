//! Time, aids and what passes.

use serde_json::json;
use web_sys::HtmlTextAreaElement;
use yew::prelude::*;

use crate::app::assessments::given::usual_variants;
use crate::app::assessments::table::ASSESSMENT;
use crate::app::assessments::table::row;
use crate::app::desk::field::id_of;
use crate::app::desk::field::rows_of;
use crate::app::desk::state::Edit;
use crate::app::desk::told::Told;
use crate::assess::assessment_file::AssessmentFile;
use crate::assess::assessment_file::CutFile;
use crate::assess::assessment_file::VariantsFile;
use crate::assess::decide;
use crate::language::decimals;
use crate::say;

/// A spread that is shown as none, marks.
const LEAST_SPREAD: f64 = 0.05;

/// The rules.
#[derive(Properties, PartialEq)]
pub struct RulesProps {
    /// As they are.
    pub file: AssessmentFile,
    /// What is wrong.
    pub told: Vec<Told>,
    /// As they are to be.
    pub on_change: Callback<AssessmentFile>,
}

/// The fields.
#[component]
pub fn Rules(props: &RulesProps) -> Html {
    let file = &props.file;
    let number = |path: &'static str, value: f64, set: fn(&mut AssessmentFile, f64)| {
        let (file, on_change) = (file.clone(), props.on_change.clone());
        let edit = Callback::from(move |edit: Edit| {
            if let Edit::Set(_, value) = edit
                && let Some(to) = value.as_f64()
            {
                let mut next = file.clone();
                set(&mut next, to);
                on_change.emit(next);
            }
        });
        row(path, json!(value), &props.told, edit)
    };
    let tick = |label: &'static str, checked: bool, set: fn(&mut AssessmentFile)| {
        let (file, on_change) = (file.clone(), props.on_change.clone());
        let onchange = Callback::from(move |_: Event| {
            let mut next = file.clone();
            set(&mut next);
            on_change.emit(next);
        });
        html! { <label class="choice"><input type="checkbox" {checked} {onchange} /><span>{ label }</span></label> }
    };
    let months = {
        let (file, on_change) = (file.clone(), props.on_change.clone());
        let edit = Callback::from(move |edit: Edit| {
            if let Edit::Set(_, value) = edit {
                let months = value.as_u64().and_then(|n| u32::try_from(n).ok());
                on_change.emit(AssessmentFile {
                    erase_after_months: months,
                    ..file.clone()
                });
            }
        });
        let now = json!(props.file.erase_after_months);
        row("erase_after_months", now, &props.told, edit)
    };
    let varies = file.variants != VariantsFile::default();
    html! {
        <>
            <section class="stack" aria-labelledby="time">
                <h2 id="time">{ say!("Time and aids") }</h2>
                { number("time_limit_min", file.time_limit_min, |f, to| f.time_limit_min = to) }
                <fieldset><legend>{ say!("Allowed") }</legend>
                    { tick(say!("the data sheet beside a reading"), file.aids.data_sheet, |f| f.aids.data_sheet = !f.aids.data_sheet) }
                    { tick(say!("the wiring diagram"), file.aids.wiring, |f| f.aids.wiring = !f.aids.wiring) }
                    { tick(say!("the handbook"), file.aids.handbook, |f| f.aids.handbook = !f.aids.handbook) }
                    { tick(say!("stopping the clock between jobs"), file.aids.pause, |f| f.aids.pause = !f.aids.pause) }
                </fieldset>
                { tick(say!("Each candidate gets other values, loads and customers"), varies, |f| {
                    f.variants = if f.variants == VariantsFile::default() { usual_variants() } else { VariantsFile::default() };
                }) }
            </section>
            <section class="stack" aria-labelledby="passes">
                <h2 id="passes">{ say!("What passes") }</h2>
                <Cut cut={file.pass.cut.clone()} told={props.told.clone()} on_change={props.on_change.reform({
                    let file = file.clone();
                    move |cut| { let mut next = file.clone(); next.pass.cut = cut; next }
                })} />
                { number("pass.border", file.pass.border, |f, to| f.pass.border = to) }
                { number("pass.fixed_share", file.pass.fixed_share, |f, to| f.pass.fixed_share = to) }
                { number("pass.parts.safety", file.pass.parts.get("safety").copied().unwrap_or(0.0), |f, to| {
                    f.pass.parts.insert("safety".to_owned(), to);
                }) }
                { tick(say!("A critical safety rule broken in any job means: not yet"), file.pass.no_critical, |f| f.pass.no_critical = !f.pass.no_critical) }
            </section>
            <section class="stack" aria-labelledby="after"><h2 id="after">{ say!("After") }</h2>{ months }</section>
        </>
    }
}

#[derive(Properties, PartialEq)]
struct CutProps {
    cut: CutFile,
    told: Vec<Told>,
    on_change: Callback<CutFile>,
}

/// The cut: a number, or what judges hold.
#[component]
fn Cut(props: &CutProps) -> Html {
    let typed = use_state(|| match &props.cut {
        CutFile::Fixed(_) => String::new(),
        CutFile::Judges(judges) => judges_as_text(judges),
    });
    let by_judges = matches!(props.cut, CutFile::Judges(_));
    let fixed = {
        let on_change = props.on_change.clone();
        Callback::from(move |edit: Edit| {
            if let Edit::Set(_, value) = edit
                && let Some(marks) = value.as_f64()
            {
                on_change.emit(CutFile::Fixed(marks));
            }
        })
    };
    let judges = {
        let (typed, on_change) = (typed.clone(), props.on_change.clone());
        Callback::from(move |event: InputEvent| {
            let text = event.target_unchecked_into::<HtmlTextAreaElement>().value();
            on_change.emit(CutFile::Judges(judges_from_text(&text)));
            typed.set(text);
        })
    };
    // What was typed outlives a look at the other way.
    let fixed_marks = use_mut_ref(|| 65.0);
    if let CutFile::Fixed(marks) = props.cut {
        *fixed_marks.borrow_mut() = marks;
    }
    let to_fixed = props
        .on_change
        .reform(move |_: Event| CutFile::Fixed(*fixed_marks.borrow()));
    let to_judges = {
        let typed = typed.clone();
        props
            .on_change
            .reform(move |_: Event| CutFile::Judges(judges_from_text(&typed)))
    };
    html! {
        <fieldset class="stack"><legend>{ say!("Cut") }</legend>
            <label class="choice"><input type="radio" name="cut" checked={!by_judges} onchange={to_fixed} /><span>{ say!("a fixed number of marks") }</span></label>
            if let CutFile::Fixed(marks) = &props.cut {
                { row("pass.cut.fixed", json!(marks), &props.told, fixed) }
            }
            <label class="choice"><input type="radio" name="cut" checked={by_judges} onchange={to_judges} /><span>{ say!("from judges, after Angoff") }</span></label>
            if by_judges {
                <label class="field"><span class="field__label">{ ASSESSMENT.label("pass.cut.judges") }</span>
                    <textarea id={id_of("pass.cut.judges")} value={(*typed).clone()} rows={rows_of(&typed)} oninput={judges} placeholder="60, 65, 70, 55" />
                    <span class="field__hint">{ say!("For each job, with commas between: the marks that a just competent technician would get. Five judges or more, two rounds with a talk between.") }</span></label>
                <p role="status">{ cut_words(&props.cut) }</p>
            }
        </fieldset>
    }
}

/// Where the cut is, and how sure the judges are of it together.
fn cut_words(rule: &CutFile) -> String {
    let n_judges = match rule {
        CutFile::Fixed(_) => 0,
        CutFile::Judges(judges) => judges.len(),
    };
    let (cut, se) = decide::cut(rule);
    let spread = 2.0 * se;
    let tenths = |marks: f64| decimals(format!("{marks:.1}"));
    let marks = tenths(cut);
    match n_judges {
        0 => say!("No judge has given marks yet.").to_owned(),
        1 => say!(
            "Cut {marks} marks, of one judge: how sure it is can be told from two judges on.",
            marks
        ),
        _ if spread < LEAST_SPREAD => say!(
            "Cut {marks} marks; the judges agree, and so few alike tell of no spread.",
            marks
        ),
        _ => say!(
            "Cut {marks} marks; among the judges it is sure to about ±{spread}.",
            marks,
            spread = tenths(spread)
        ),
    }
}

/// One judge a line, commas between; what is no number comes out as one that is refused.
fn judges_from_text(text: &str) -> Vec<Vec<f64>> {
    text.lines()
        .filter(|line| !line.trim().is_empty())
        .map(|line| {
            line.split([',', ';', '\t'])
                .map(|word| word.trim().parse().unwrap_or(-1.0))
                .collect()
        })
        .collect()
}

fn judges_as_text(judges: &[Vec<f64>]) -> String {
    let line = |judge: &Vec<f64>| {
        judge
            .iter()
            .map(f64::to_string)
            .collect::<Vec<_>>()
            .join(", ")
    };
    judges.iter().map(line).collect::<Vec<_>>().join("\n")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn one_judge_and_judges_who_agree_are_not_called_exact() {
        let words = |judges: &[&[f64]]| {
            let judges = judges.iter().map(|judge| judge.to_vec()).collect();
            cut_words(&CutFile::Judges(judges))
        };
        assert_eq!(words(&[]), "No judge has given marks yet.");
        let one = words(&[&[60.0, 66.0]]);
        let agreed = words(&[&[60.0, 66.0], &[63.0, 63.0]]);
        for said in [&one, &agreed] {
            let is_exact = said.contains('±');
            assert!(said.starts_with("Cut 63.0 marks") && !is_exact, "{said}");
        }
        assert!(one.contains("from two judges on"));
        assert!(words(&[&[60.0], &[70.0]]).contains("±10.0"));
    }

    #[test]
    fn judges_are_read_as_they_are_written_and_what_is_no_number_is_refused() {
        let judges = vec![vec![60.0, 65.5], vec![70.0, 55.0]];
        assert_eq!(judges_from_text(&judges_as_text(&judges)), judges);
        assert_eq!(judges_from_text("60, many\n\n"), [[60.0, -1.0]]);
    }
}

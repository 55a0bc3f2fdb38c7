//! Ruling on a job or a decision: what holds, who says so, when, why. And the list of all of it.

use std::collections::BTreeSet;

use web_sys::HtmlInputElement;
use web_sys::HtmlSelectElement;
use yew::prelude::*;

use crate::app::cohort::half_typed;
use crate::app::cohort::half_typed::HalfTyped;
use crate::app::cohort::ruling_store::Keeping;
use crate::app::cohort::words;
use crate::app::format;
use crate::app::hooks::focus_first;
use crate::app::me::sure::Sure;
use crate::app::phrase::HOLES;
use crate::app::phrase::bdi;
use crate::app::phrase::phrase;
use crate::assess::assessment_file::AssessmentFile;
use crate::language::said;
use crate::language::worded;
use crate::records::rulings::About;
use crate::records::rulings::Missing;
use crate::records::rulings::Ruling;
use crate::say;

/// Where rulings go, for the form wherever it stands.
#[derive(Clone, PartialEq)]
pub struct RulingPlace {
    /// Whether they outlive the visit.
    pub keeping: Keeping,
    /// Saves all in force as a file.
    pub on_save: Callback<()>,
}

/// What is ruled on.
#[derive(Clone, Properties, PartialEq)]
pub struct RuleProps {
    /// About what.
    pub about: About,
    /// What may hold, as it is kept.
    pub words: Vec<&'static str>,
    /// Assessments it may be of, name and title; where there is none, whoever takes the ruling says it.
    #[prop_or_default]
    pub of: Vec<(String, String)>,
    /// A ruling was made.
    pub on_rule: Callback<Ruling>,
    /// Not after all.
    pub on_cancel: Callback<()>,
}

impl RuleProps {
    /// The form before anything is typed: where there is a choice, nobody's answer is put in.
    fn blank(&self) -> HalfTyped {
        let only = match self.words[..] {
            [word] => word,
            _ => "",
        };
        HalfTyped {
            holds: only.to_owned(),
            ..HalfTyped::blank(self.about.clone())
        }
    }

    /// The ruling that a form makes, on a day.
    fn ruled(&self, form: &HalfTyped, day: &str) -> Result<Ruling, Vec<Missing>> {
        let ruling = Ruling::new(form.about.clone(), &form.holds, &form.by, day, &form.why);
        match &self.of[..] {
            [] => ruling,
            [(only, _)] => ruling.map(|ruling| ruling.within(only)),
            some => {
                let chosen = form.assessment.as_ref();
                match chosen.filter(|chosen| some.iter().any(|(id, _)| id == *chosen)) {
                    Some(chosen) => ruling.map(|ruling| ruling.within(chosen)),
                    None => {
                        let mut missing = vec![Missing::Assessment];
                        missing.extend(ruling.err().into_iter().flatten());
                        Err(missing)
                    }
                }
            }
        }
    }
}

/// The form.
#[component]
pub fn Rule(props: &RuleProps) -> Html {
    let place = use_context::<RulingPlace>();
    let form = use_state_eq(|| half_typed::of(&props.about).unwrap_or_else(|| props.blank()));
    let missing = use_state_eq(Vec::<Missing>::new);
    use_effect_with((*missing).clone(), |missing| {
        // What is missing is brought into sight, to be filled in at once.
        if !missing.is_empty() {
            focus_first("form [aria-invalid=true]");
        }
    });
    let set = |change: fn(&mut HalfTyped, String)| {
        let form = form.clone();
        Callback::from(move |to: String| {
            let mut next = (*form).clone();
            change(&mut next, to);
            half_typed::keep(next.clone());
            form.set(next);
        })
    };
    let typed = |change: fn(&mut HalfTyped, String)| {
        set(change)
            .reform(|event: InputEvent| event.target_unchecked_into::<HtmlInputElement>().value())
    };
    let chosen = |change: fn(&mut HalfTyped, String)| {
        set(change)
            .reform(|event: Event| event.target_unchecked_into::<HtmlSelectElement>().value())
    };
    let rule = {
        let (props, form, missing) = (props.clone(), form.clone(), missing.clone());
        move || {
            let day = format::date(js_sys::Date::now() / 86_400_000.0);
            match props.ruled(&form, &day) {
                Ok(ruling) => {
                    half_typed::forget(&props.about);
                    props.on_rule.emit(ruling);
                    true
                }
                Err(all) => {
                    missing.set(all);
                    false
                }
            }
        }
    };
    let onsubmit = {
        let rule = rule.clone();
        Callback::from(move |event: SubmitEvent| {
            event.prevent_default();
            rule();
        })
    };
    let cancel = {
        let about = props.about.clone();
        props
            .on_cancel
            .reform(move |_: MouseEvent| half_typed::forget(&about))
    };
    let heading = match &props.about {
        About::Job(job) => say!("Void job {job} for everybody", job),
        About::Candidate(person) => say!("Override the decision about {person}", person),
    };
    let lacks = |one: Missing| missing.contains(&one).to_string();
    html! {
        <form class="card stack no-print" {onsubmit} aria-label={heading.clone()} novalidate=true>
            <h3>{ heading }</h3>
            if props.of.len() > 1 {
                <label class="field"><span class="field__label">{ say!("Of which assessment") }</span>
                    <select onchange={chosen(|form, to| form.assessment = to.strip_prefix('=').map(str::to_owned))} aria-required="true" aria-invalid={lacks(Missing::Assessment)} aria-describedby="rule-missing"><option value="" selected={form.assessment.is_none()}>{ say!("Choose") }</option>{ for props.of.iter().map(|(id, title)| html! { <option value={format!("={id}")} selected={form.assessment.as_ref() == Some(id)}>{ title }</option> }) }</select></label>
            } else if let Some((_, title)) = props.of.first() {
                <p>{ phrase(&say!("Of {assessment} alone.", assessment = HOLES[0]), &[bdi(title)]) }</p>
            }
            if props.words.len() > 1 {
                <label class="field"><span class="field__label">{ say!("What holds") }</span>
                    <select onchange={chosen(|form, to| form.holds = to)} aria-required="true" aria-invalid={lacks(Missing::Holds)} aria-describedby="rule-missing"><option value="" selected={form.holds.is_empty()}>{ say!("Choose") }</option>{ for props.words.iter().map(|word| html! { <option value={*word} selected={*word == form.holds.as_str()}>{ said(word) }</option> }) }</select></label>
            }
            <label class="field"><span class="field__label">{ say!("Who rules") }</span><input type="text" value={form.by.clone()} oninput={typed(|form, to| form.by = to)} aria-required="true" aria-invalid={lacks(Missing::By)} aria-describedby="rule-missing" /></label>
            <label class="field"><span class="field__label">{ say!("Why") }</span><input type="text" value={form.why.clone()} oninput={typed(|form, to| form.why = to)} aria-required="true" aria-invalid={lacks(Missing::Why)} aria-describedby="rule-missing" /></label>
            <div id="rule-missing" role="alert">{ for missing.iter().map(|one| html! { <p class="field__error">{ one.words() }</p> }) }</div>
            { where_to(place.as_ref(), rule) }
            <p class="row"><button type="submit" class="button button--main">{ say!("It holds from now on") }</button>
                <button type="button" class="button" onclick={cancel}>{ say!("Not after all") }</button></p>
        </form>
    }
}

/// Where the ruling goes; where nothing is kept, a file at once.
fn where_to(place: Option<&RulingPlace>, rule: impl Fn() -> bool + 'static) -> Html {
    let Some(place) = place else {
        return Html::default();
    };
    let on_save = place.on_save.clone();
    let save = Callback::from(move |_: MouseEvent| {
        if rule() {
            on_save.emit(());
        }
    });
    html! {
        <>
            <p class={if place.keeping.is_not() { "field__error" } else { "field__hint" }}>{ place.keeping.words() }</p>
            if place.keeping.is_not() {
                <p><button type="button" class="button" onclick={save}>{ say!("It holds; save as a file") }</button></p>
            }
        </>
    }
}

/// Forms that were left half typed, each with a way to throw it away.
pub fn left(all: &[HalfTyped], on_forget: &Callback<About>) -> Html {
    let line = |one: &HalfTyped| {
        let about = about_words(&one.about);
        let forget = one.about.clone();
        let onclick = on_forget.reform(move |_: MouseEvent| forget.clone());
        html! {
            <li key={about.clone()}><bdi>{ about.clone() }</bdi>{ " " }<button type="button" class="button button--small" aria-label={say!("Throw away what is typed about {what}", what = about)} {onclick}>{ say!("throw away") }</button></li>
        }
    };
    if all.is_empty() {
        return Html::default();
    }
    html! {
        <section class="notice no-print" aria-label={say!("Rulings typed by half")}>
            <p>{ say!("Typed by half and not in force. Open the form again to go on: on the person’s page, or beside the job.") }</p>
            <ul>{ for all.iter().map(line) }</ul>
        </section>
    }
}

fn about_words(about: &About) -> String {
    match about {
        About::Job(job) => say!("Job {job}", job),
        About::Candidate(candidate) => candidate.clone(),
    }
}

/// All rulings, each with a way to take it back; `here` are the assessments of the results taken in.
pub fn list(
    rulings: &[Ruling],
    files: &[AssessmentFile],
    here: &BTreeSet<String>,
    take_back: &Callback<usize>,
) -> Html {
    if rulings.is_empty() {
        return html! { <p>{ say!("Nothing was ruled. A job is voided from the table of jobs, a decision overridden on the person’s page; each stands with name, day and reason, and the records stay as they are.") }</p> };
    }
    let line = |(at, ruling): (usize, &Ruling)| {
        let about = about_words(&ruling.about);
        let on_yes = take_back.reform(move |()| at);
        html! {
            <tr key={at}><th scope="row"><bdi>{ about.clone() }</bdi></th><td><bdi>{ of_what(ruling, files, here) }</bdi></td><td>{ worded(&ruling.holds).into_owned() }</td><td><bdi>{ &ruling.by }</bdi></td><td class="numbers">{ &ruling.day }</td><td><bdi>{ &ruling.why }</bdi></td>
                <td><div class="row no-print"><Sure small=true label={say!("Take back the ruling about {what}", what = about)} ask={say!("take back" as "verb, of a ruling")} yes={say!("Yes, take it back")} {on_yes} /></div></td></tr>
        }
    };
    html! {
        <div class="table__wrap" tabindex="0" role="region" aria-label={say!("Rulings, a table")}>
            <table class="table"><thead><tr><th scope="col">{ say!("About") }</th><th scope="col">{ say!("Assessment") }</th><th scope="col">{ say!("Holds" as "what holds from now on") }</th><th scope="col">{ say!("By" as "who ruled") }</th><th scope="col">{ say!("Day") }</th><th scope="col">{ say!("Why") }</th><th scope="col"><span class="visually-hidden">{ say!("Take back" as "verb, of a ruling") }</span></th></tr></thead>
            <tbody>{ for rulings.iter().enumerate().map(line) }</tbody></table>
        </div>
    }
}

/// What is said of a ruling that was taken back: whole, so that it can be made again.
pub fn taken_back(ruling: &Ruling) -> String {
    say!(
        "Taken back: {what}, {holds}, by {who}, {day}: {why}",
        what = about_words(&ruling.about),
        holds = worded(&ruling.holds),
        who = ruling.by,
        day = ruling.day,
        why = ruling.why
    )
}

/// Which assessment a ruling is of, and whether it is applied here.
fn of_what(ruling: &Ruling, files: &[AssessmentFile], here: &BTreeSet<String>) -> String {
    match &ruling.assessment {
        None => say!("any: it names none").to_owned(),
        Some(own) => {
            let title = words::title_of_assessment(own, files);
            if here.contains(own) {
                title
            } else {
                say!(
                    "{assessment}: not applied, no result here is of it",
                    assessment = title
                )
            }
        }
    }
}

#[cfg(all(test, not(target_arch = "wasm32")))]
mod tests {
    use super::*;
    use crate::app::as_text::as_text;
    use crate::app::store::StorageError;

    fn props(of: &[&str]) -> RuleProps {
        RuleProps {
            about: About::Job("j1".to_owned()),
            words: vec!["void"],
            of: of
                .iter()
                .map(|id| ((*id).to_owned(), format!("Title of {id}")))
                .collect(),
            on_rule: Callback::noop(),
            on_cancel: Callback::noop(),
        }
    }

    fn typed(props: &RuleProps) -> HalfTyped {
        HalfTyped {
            by: "N. Judge".to_owned(),
            why: "wrong tap".to_owned(),
            ..props.blank()
        }
    }

    #[test]
    fn a_ruling_is_of_the_one_assessment_there_is_or_of_the_one_chosen() {
        let day = "2031-03-04";
        let only = props(&["autumn"]);
        let ruling = only.ruled(&typed(&only), day).expect("complete");
        assert_eq!(ruling.assessment.as_deref(), Some("autumn"));
        let two = props(&["autumn", ""]);
        assert_eq!(
            two.ruled(&two.blank(), day).map_err(|all| all[0]),
            Err(Missing::Assessment)
        );
        let chosen = HalfTyped {
            assessment: Some(String::new()),
            ..typed(&two)
        };
        let ruling = two.ruled(&chosen, day).expect("complete");
        assert_eq!(ruling.assessment.as_deref(), Some(""), "practice");
        let none = props(&[]);
        let ruling = none.ruled(&typed(&none), day).expect("complete");
        assert_eq!(ruling.assessment, None);
    }

    #[component]
    fn Refused() -> Html {
        let place = RulingPlace {
            keeping: Keeping::Not(StorageError::Refused),
            on_save: Callback::noop(),
        };
        let RuleProps {
            about,
            words,
            of,
            on_rule,
            on_cancel,
        } = props(&["autumn"]);
        html! { <ContextProvider<RulingPlace> context={place}><Rule {about} {words} {of} {on_rule} {on_cancel} /></ContextProvider<RulingPlace>> }
    }

    #[test]
    fn the_form_offers_a_file_where_nothing_can_be_kept_and_claims_nothing() {
        let text = as_text::<Refused>(|| ());
        assert!(!text.contains("are kept in this browser"), "{text}");
        assert!(text.contains("It holds; save as a file"), "{text}");
        assert!(text.contains("Title of autumn"), "{text}");
    }

    #[test]
    fn a_ruling_of_another_assessment_is_shown_as_such() {
        let about = || About::Candidate("c-1".to_owned());
        let one =
            Ruling::new(about(), "passed", "N. Judge", "2031-03-04", "heard").expect("stands");
        let here = BTreeSet::from(["autumn".to_owned()]);
        let said = |ruling: &Ruling| of_what(ruling, &[], &here);
        assert_eq!(said(&one.clone().within("autumn")), "autumn");
        assert_eq!(
            said(&one.clone().within("spring")),
            "spring: not applied, no result here is of it"
        );
        assert_eq!(said(&one), "any: it names none");
        assert!(said(&one.within("")).starts_with("practice: "));
    }
}

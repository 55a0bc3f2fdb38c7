//! The tab for erasing: whose results are past their time, one person's results, and saving what is left.

use web_sys::HtmlSelectElement;
use yew::prelude::*;

use crate::app::cohort::erasing::Past;
use crate::app::cohort::erasing::Whose;
use crate::app::format;
use crate::app::me::sure::Sure;
use crate::say;

/// What the tab shows.
#[derive(Properties, PartialEq)]
pub struct EraseProps {
    /// Results past their time.
    pub past: Vec<Past>,
    /// Titles of their assessments, in the same order.
    pub titles: Vec<String>,
    /// Today, as a day since 1970.
    pub today: i64,
    /// Everybody of whom there is a record.
    pub people: Vec<String>,
    /// Results are still being checked.
    pub works: bool,
    /// Files that stand in place of those taken in, to be saved.
    pub n_left: usize,
    /// Erases.
    pub on_erase: Callback<Whose>,
    /// Saves what is left.
    pub on_save: Callback<MouseEvent>,
}

/// The tab.
#[component]
pub fn Erase(props: &EraseProps) -> Html {
    let chosen = use_state_eq(String::new);
    let onchange = {
        let chosen = chosen.clone();
        Callback::from(move |event: Event| {
            chosen.set(event.target_unchecked_into::<HtmlSelectElement>().value());
        })
    };
    let key = |whose: Whose, words: String, sure: String| {
        let (on_yes, id) = (
            props.on_erase.reform(move |()| whose.clone()),
            words.clone(),
        );
        html! { <p key={id} class="row"><Sure ask={words} yes={sure} disabled={props.works} {on_yes} /></p> }
    };
    let n: usize = props.past.iter().map(|one| one.n).sum();
    let (erase, sure) = erase_words(n);
    let who = props.people.iter().find(|name| **name == *chosen).cloned();
    html! {
        <>
            <p>{ say!("Erasing strikes out all that a record holds but its place in the row, so that the records around it can still be checked. Rulings kept in this browser about a person of whom nothing is left go with it. It cannot be taken back.") }</p>
            <p>{ say!("A page cannot delete your files: save what is left, then delete the files it came from, their copies and files of rulings that name the person.") }</p>
            if props.works { <p class="field__hint">{ say!("Erasing waits until everything is checked.") }</p> }
            if props.n_left > 0 {
                <section class="notice" aria-label={say!("What is left")}>
                    <p>{ changed(props.n_left) }</p>
                    <p><button type="button" class="button button--main" onclick={props.on_save.clone()}>{ say!("Save what is left") }</button></p>
                </section>
            }
            <section class="stack" aria-labelledby="past"><h2 id="past">{ say!("Past their time") }</h2>
                if props.past.is_empty() {
                    <p>{ say!("No result here is past the time that its assessment sets, or none sets one.") }</p>
                } else {
                    { table(props) }
                    { key(Whose::Past(props.today), erase, sure) }
                }
            </section>
            <section class="stack" aria-labelledby="one-person"><h2 id="one-person">{ say!("One person") }</h2>
                <label class="field"><span class="field__label">{ say!("Whose results") }</span>
                    <select {onchange}><option value="" selected={who.is_none()}>{ say!("Choose") }</option>
                        { for props.people.iter().map(|name| html! { <option key={name.clone()} value={name.clone()} selected={who.as_ref() == Some(name)}>{ name }</option> }) }
                    </select></label>
                if let Some(name) = who {
                    { key(Whose::Person(name.clone()), say!("Erase everything of {person}", person = name), say!("Yes, erase everything of {person}", person = name)) }
                }
            </section>
        </>
    }
}

fn table(props: &EraseProps) -> Html {
    let line = |(one, title): (&Past, &String)| {
        html! {
            <tr key={format!("{} {}", one.candidate, one.assessment)}><th scope="row"><bdi>{ &one.candidate }</bdi></th><td><bdi>{ title }</bdi></td><td class="numbers">{ format::date(one.day as f64) }</td><td class="numbers">{ one.n }</td></tr>
        }
    };
    html! {
        <div class="table__wrap" tabindex="0" role="region" aria-label={say!("Past their time, a table")}>
            <table class="table"><thead><tr><th scope="col">{ say!("Person") }</th><th scope="col">{ say!("Assessment") }</th><th scope="col">{ say!("To be erased since") }</th><th scope="col" class="numbers">{ say!("Records") }</th></tr></thead>
            <tbody>{ for props.past.iter().zip(&props.titles).map(line) }</tbody></table>
        </div>
    }
}

/// Words of the button that erases records, and what it says once it is pressed.
fn erase_words(n: usize) -> (String, String) {
    match n {
        1 => (
            say!("Erase this one record").to_owned(),
            say!("Yes, erase this one record").to_owned(),
        ),
        n => (
            say!("Erase these {n} records", n),
            say!("Yes, erase these {n} records", n),
        ),
    }
}

fn changed(n_files: usize) -> String {
    match n_files {
        1 => say!("Changed here by erasing: one file. The files on your disk are as they were.")
            .to_owned(),
        n => say!(
            "Changed here by erasing: {n} files. The files on your disk are as they were.",
            n
        ),
    }
}

#[cfg(all(test, not(target_arch = "wasm32")))]
mod tests {
    use super::*;
    use crate::app::as_text::as_text;

    fn props(past: Vec<Past>) -> EraseProps {
        EraseProps {
            titles: past.iter().map(|_| "Autumn".to_owned()).collect(),
            past,
            today: 22_400,
            people: vec!["c-1".to_owned()],
            works: false,
            n_left: 0,
            on_erase: Callback::noop(),
            on_save: Callback::noop(),
        }
    }

    #[test]
    fn what_is_past_its_time_is_told_with_its_day_and_nothing_else_is_offered_for_it() {
        let text = as_text::<Erase>(|| {
            props(vec![Past {
                candidate: "c-1".to_owned(),
                assessment: "autumn".to_owned(),
                day: 22_342,
                n: 2,
            }])
        });
        assert!(
            text.contains("2031-03-04") && text.contains("Erase these 2 records"),
            "{text}"
        );
        let none = as_text::<Erase>(|| props(Vec::new()));
        assert!(
            none.contains("No result here is past") && !none.contains("Erase these"),
            "{none}"
        );
    }
}

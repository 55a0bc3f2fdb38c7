//! A course package for a training system, made in the page: which kind, how far it is, and the file.

use wasm_bindgen_futures::spawn_local;
use web_sys::HtmlInputElement;
use yew::prelude::*;

use crate::app::assessments::given::Given;
use crate::app::assessments::packing;
use crate::app::hand_over;
use crate::language::decimals;
use crate::records::course::Kind;
use crate::records::course::LANGUAGE;
use crate::records::course::Package;
use crate::say;

/// A sound assessment.
#[derive(Properties, PartialEq)]
pub struct CourseProps {
    /// It.
    pub given: Given,
    /// The folder that the page lies in, as an address.
    pub folder: AttrValue,
    /// It is given out.
    #[prop_or_default]
    pub on_given: Callback<()>,
}

/// How the making stands.
#[derive(Clone, PartialEq)]
enum Making {
    /// Nothing is made; what came of the last one.
    Rests(String),
    /// So many files of so many are packed; none is known while the list is fetched.
    Runs(usize, usize),
    /// Why there is none.
    Failed(String),
}

/// Kind, address, progress and the file.
#[component]
pub fn CoursePackage(props: &CourseProps) -> Html {
    let kind = use_state_eq(|| Kind::Scorm12);
    let base = use_state_eq(|| props.folder.to_string());
    let making = use_state_eq(|| Making::Rests(String::new()));
    // Which making it is; one that was cancelled, or left, finds another number.
    let turn = use_mut_ref(|| 0_u32);
    {
        let turn = turn.clone();
        use_effect_with((), move |()| move || *turn.borrow_mut() += 1);
    }
    let make = {
        let (kind, base, making, turn, given) = (
            *kind,
            (*base).clone(),
            making.clone(),
            turn.clone(),
            props.given.clone(),
        );
        let on_given = props.on_given.clone();
        Callback::from(move |event: SubmitEvent| {
            event.prevent_default();
            // Now, not when it is done: the form may have changed by then.
            on_given.emit(());
            *turn.borrow_mut() += 1;
            let (mine, turn) = (*turn.borrow(), turn.clone());
            let (making, base, given) = (making.clone(), base.clone(), given.clone());
            making.set(Making::Runs(0, 0));
            spawn_local(async move {
                let is_mine = || *turn.borrow() == mine;
                let tell = |done, of| {
                    if is_mine() {
                        making.set(Making::Runs(done, of));
                    }
                    is_mine()
                };
                let came = make(kind, &given, &base, tell).await;
                if is_mine() {
                    making.set(came.map_or_else(Making::Failed, Making::Rests));
                }
            });
        })
    };
    let cancel = {
        let making = making.clone();
        Callback::from(move |_: MouseEvent| {
            *turn.borrow_mut() += 1;
            making.set(Making::Rests(
                say!("Cancelled: nothing is saved.").to_owned(),
            ));
        })
    };
    let type_base = {
        let base = base.clone();
        Callback::from(move |event: InputEvent| {
            base.set(event.target_unchecked_into::<HtmlInputElement>().value());
        })
    };
    let runs = matches!(*making, Making::Runs(..));
    html! {
        <form class="stack no-print" onsubmit={make} aria-labelledby="course" novalidate=true>
            <h3 id="course">{ say!("Course package for a training system") }</h3>
            <p class="field__hint">{ say!("The workshop and this assessment in one zip file, made here of the very build that you are looking at. A training system takes it as a course, and its learners sit it there.") }</p>
            <fieldset disabled={runs}><legend>{ say!("Which kind the system takes") }</legend>
                { for Kind::ALL.map(|one| {
                    let onchange = { let kind = kind.clone(); Callback::from(move |_: Event| kind.set(one)) };
                    html! { <label class="choice" key={one.name()}><input type="radio" name="course-kind" checked={*kind == one} {onchange} /><span>{ one.words() }</span></label> }
                }) }
            </fieldset>
            if *kind == Kind::Cmi5 {
                <label class="field"><span class="field__label">{ say!("Address that the course’s names begin with") }</span>
                    <input type="url" value={(*base).clone()} oninput={type_base} disabled={runs} autocomplete="off" />
                    <span class="field__hint">{ say!("It need not answer. Take one that is yours and let it stay: by it the system tells courses apart.") }</span></label>
            }
            <p class="row">
                // Keys: else the one button would turn into the other under the finger, and send the form.
                if let Making::Runs(done, of) = *making {
                    <progress key="packing" max={of.max(1).to_string()} value={done.to_string()} aria-label={say!("Packing")} />
                    <button key="cancel" type="button" class="button" onclick={cancel}>{ say!("Cancel") }</button>
                } else {
                    <button key="make" type="submit" class="button">{ say!("Make the package") }</button>
                }
            </p>
            <p role="status">{ said(&making) }</p>
            if let Making::Failed(why) = &*making { <p class="field__error" role="alert">{ why }</p> }
        </form>
    }
}

fn said(making: &Making) -> &str {
    match making {
        Making::Rests(words) => words,
        Making::Runs(..) => say!("Packing the files of this build …"),
        Making::Failed(_) => "",
    }
}

/// Makes it and hands it over; gives what is then said. `tell` is told files done and files in all, and
/// says whether to go on.
async fn make(
    kind: Kind,
    given: &Given,
    base: &str,
    tell: impl Fn(usize, usize) -> bool,
) -> Result<String, String> {
    let build = packing::build().await?;
    let text = given.text();
    let package = Package::new(kind, (&given.file, &text), build, base, LANGUAGE)
        .map_err(|error| say!("No package: {error}.", error))?;
    let of = package.build().len();
    let Some(bytes) = packing::packed(&package, |done| tell(done, of)).await? else {
        return Ok(String::new());
    };
    let name = format!("{}_{}.zip", given.file.id, kind.name());
    hand_over::save_bytes(&name, "application/zip", &bytes)
        .map_err(|_| say!("The browser did not let the page save a file.").to_owned())?;
    let size_mb = bytes.len() as f64 / 1e6;
    Ok(say!(
        "{file} is saved: {n} files, {size} MB. Hand it to the keeper of the training system.",
        file = name,
        n = of + 2,
        size = decimals(format!("{size_mb:.1}"))
    ))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::app::as_text::as_text;
    use crate::records::seal::Hash;

    #[test]
    fn three_kinds_are_offered_and_one_is_chosen() {
        let text = as_text::<CoursePackage>(|| CourseProps {
            given: Given::new(Hash([5; 32])),
            folder: "https://school.example/".into(),
            on_given: Callback::noop(),
        });
        for kind in Kind::ALL {
            assert!(text.contains(kind.words()), "{text}");
        }
        assert_eq!(text.matches("type=\"radio\"").count(), 3);
        assert_eq!(text.matches(" checked").count(), 1, "{text}");
        assert!(text.contains("Make the package") && !text.contains("Cancel"));
    }
}

//! Where results are sent, in the settings: address and credentials, what waits, and sending now.

use wasm_bindgen_futures::spawn_local;
use web_sys::HtmlInputElement;
use web_sys::HtmlSelectElement;
use yew::prelude::*;

use crate::app::outbox::place::KEY;
use crate::app::outbox::place::Place;
use crate::app::outbox::place::Version;
use crate::app::outbox::queue;
use crate::app::store::Store;
use crate::say;

/// The section.
#[component]
pub fn StoreSection() -> Html {
    let place = use_state_eq(Place::default);
    let told = use_state_eq(String::new);
    let look = {
        let told = told.clone();
        Callback::from(move |done: &'static str| {
            let told = told.clone();
            spawn_local(async move {
                let (waiting, parked, why) = queue::standing().await;
                let mut words = vec![done.to_owned()];
                if waiting > 0 && why.is_empty() {
                    words.push(say!("{n} results wait.", n = waiting));
                } else if waiting > 0 {
                    words.push(say!("{n} results wait: {why}.", n = waiting, why));
                }
                if parked > 0 {
                    words.push(say!(
                        "{n} statements were refused; they are kept here, are tried once more by “Send now”, and the files of results hold the same.",
                        n = parked
                    ));
                }
                told.set(words.join(" "));
            });
        })
    };
    {
        let (place, look) = (place.clone(), look.clone());
        use_effect_with((), move |()| {
            spawn_local(async move {
                if let Some(kept) = Place::kept().await {
                    place.set(kept);
                }
                look.emit("");
            });
        });
    }
    let field = |label: &'static str,
                 kind: &'static str,
                 hint: &'static str,
                 value: &str,
                 set: fn(&mut Place, String)| {
        let place = place.clone();
        let oninput = Callback::from(move |event: InputEvent| {
            let mut next = (*place).clone();
            set(
                &mut next,
                event.target_unchecked_into::<HtmlInputElement>().value(),
            );
            place.set(next);
        });
        html! {
            <label class="field"><span class="field__label">{ label }</span>
                <input type={kind} value={value.to_owned()} {oninput} autocomplete="off" /><span class="field__hint">{ hint }</span></label>
        }
    };
    let keep = {
        let (place, told, look) = (place.clone(), told.clone(), look.clone());
        Callback::from(move |_: MouseEvent| {
            let (place, told, look) = (place.clone(), told.clone(), look.clone());
            if !place.is_address() {
                told.set(
                    say!("An address begins with https:// or http:// and has no spaces.")
                        .to_owned(),
                );
                return;
            }
            spawn_local(async move {
                match place.keep().await {
                    Ok(()) => {
                        queue::send().await;
                        look.emit(say!(
                            "Kept. Results are sent there when they are handed in."
                        ));
                    }
                    Err(error) => told.set(error.to_string()),
                }
            });
        })
    };
    let now = {
        let look = look.clone();
        Callback::from(move |_: MouseEvent| {
            let look = look.clone();
            spawn_local(async move {
                queue::send_all_again().await;
                look.emit(say!("Tried."));
            });
        })
    };
    let forget = {
        let (place, look) = (place.clone(), look.clone());
        Callback::from(move |_: MouseEvent| {
            let (place, look) = (place.clone(), look.clone());
            spawn_local(async move {
                // What cannot be forgotten shows again with the next visit.
                let _ = Store::open().await.remove(KEY).await;
                place.set(Place::default());
                look.emit(say!("Forgotten: nothing is sent any more."));
            });
        })
    };
    html! {
        <section class="stack" aria-labelledby="store">
            <h2 id="store">{ say!("A store for results") }</h2>
            <p class="settings__note">{ say!("Where a department keeps learning records (xAPI), results of assessments can go there by themselves. They wait here until the store has taken them. Without an address nothing leaves this browser.") }</p>
            { field(say!("Address"), "url", say!("As its keeper gives it, such as https://store.example/xAPI. It must allow this page to speak to it."), &place.address, |p, to| to.trim().clone_into(&mut p.address)) }
            { field(say!("User"), "text", "", &place.user, |p, to| p.user = to) }
            { field(say!("Password"), "password", say!("Kept in this browser as it is: use one that may only write."), &place.password, |p, to| p.password = to) }
            { version(&place) }
            <p class="row"><button type="button" class="button" onclick={keep}>{ say!("Keep") }</button>
                <button type="button" class="button" onclick={now}>{ say!("Send now") }</button>
                <button type="button" class="button" onclick={forget}>{ say!("Forget the store") }</button></p>
            <p role="status">{ (*told).clone() }</p>
        </section>
    }
}

/// The version of the interface, for stores that do not say theirs.
fn version(place: &UseStateHandle<Place>) -> Html {
    let now = place.version;
    let place = place.clone();
    let onchange = Callback::from(move |event: Event| {
        let at = event
            .target_unchecked_into::<HtmlSelectElement>()
            .selected_index();
        let chosen = usize::try_from(at).ok().and_then(|at| Version::ALL.get(at));
        place.set(Place {
            version: chosen.copied().unwrap_or_default(),
            ..(*place).clone()
        });
    });
    html! {
        <label class="field"><span class="field__label">{ say!("Version of the interface") }</span>
            <select class="input" {onchange}>{ for Version::ALL.map(|one| html! { <option selected={one == now}>{ one.words() }</option> }) }</select>
            <span class="field__hint">{ say!("Choose one only where the store does not say which it speaks and refuses everything.") }</span></label>
    }
}

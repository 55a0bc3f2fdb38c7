//! What is forgotten on a screen: held in memory until the screen is left, so that it can be taken back.

use std::cell::RefCell;
use std::rc::Rc;

use wasm_bindgen_futures::spawn_local;
use yew::prelude::*;

use crate::app::hooks::focus_first;
use crate::app::store::Store;
use crate::say;

/// One thing: its title, and its texts under their keys.
#[derive(Clone)]
struct Gone {
    title: String,
    texts: Vec<(String, String)>,
}

/// What was forgotten on a screen.
#[derive(Clone)]
pub struct Forgotten {
    id: &'static str,
    gone: Rc<RefCell<Vec<Gone>>>,
    refresh: Callback<()>,
}

/// A list's forgotten things, under an id of its own; `refresh` reads the list anew and draws it.
#[hook]
pub fn use_forgotten(id: &'static str, refresh: &Callback<()>) -> Forgotten {
    let gone = use_mut_ref(Vec::<Gone>::new);
    let n = gone.borrow().len();
    use_effect_with(n, move |n| {
        // The button that had the focus is gone with its row.
        if *n > 0 {
            focus_first(&format!("#{id} button"));
        }
    });
    let refresh = refresh.clone();
    Forgotten { id, gone, refresh }
}

impl Forgotten {
    /// Forgets what is kept under these keys. What cannot be forgotten stays on the list, which says it.
    pub fn forget(&self, title: String, keys: Vec<String>) {
        let this = self.clone();
        spawn_local(async move {
            let store = Store::open().await;
            let mut texts = Vec::new();
            for key in keys {
                if let Ok(Some(text)) = store.get(&key).await
                    && store.remove(&key).await.is_ok()
                {
                    texts.push((key, text));
                }
            }
            if !texts.is_empty() {
                this.gone.borrow_mut().push(Gone { title, texts });
            }
            this.refresh.emit(());
        });
    }

    fn take_back(&self, at: usize) {
        let Some(one) = self.gone.borrow().get(at).cloned() else {
            return;
        };
        let this = self.clone();
        spawn_local(async move {
            let store = Store::open().await;
            for (key, text) in &one.texts {
                // Where there is no room, it stays here to be tried again.
                if store.put(key, text).await.is_err() {
                    return;
                }
            }
            let is_other = |gone: &Gone| gone.texts != one.texts;
            this.gone.borrow_mut().retain(is_other);
            this.refresh.emit(());
        });
    }

    /// A row for each, the latest first, with the way back.
    pub fn rows(&self) -> Html {
        let gone = self.gone.borrow();
        let row = |(at, one): (usize, &Gone)| {
            let this = self.clone();
            let onclick = Callback::from(move |_: MouseEvent| this.take_back(at));
            html! {
                <p class="opened__job"><span class="opened__title">{ say!("“{title}” is forgotten.", title = one.title) }</span>
                    <button type="button" class="button button--small" {onclick}>{ say!("Take it back") }</button></p>
            }
        };
        html! { <div class="opened__list" id={self.id} role="status">{ for gone.iter().enumerate().rev().map(row) }</div> }
    }
}

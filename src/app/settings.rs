//! What a person can set, kept in this browser; the keys; what is stored and how to erase it.

use serde::Deserialize;
use serde::Serialize;
use wasm_bindgen_futures::spawn_local;
use web_sys::HtmlInputElement;
use yew::prelude::*;

use crate::app::bench::keys::KEYS;
use crate::app::outbox::StoreSection;
use crate::app::sitting;
use crate::app::store::Store;
use crate::say;

const KEY: &str = "settings";

/// Which colours the page has.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Theme {
    /// As the device is set.
    #[default]
    Device,
    /// Dark on light.
    Light,
    /// Light on dark.
    Dark,
}

impl Theme {
    const ALL: [Self; 3] = [Self::Device, Self::Light, Self::Dark];

    /// On its button, and in the style sheets.
    fn words(self) -> (&'static str, Option<&'static str>) {
        match self {
            Self::Device => ("as the device is set", None),
            Self::Light => ("light", Some("light")),
            Self::Dark => ("dark", Some("dark")),
        }
    }
}

/// What a person can set.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Settings {
    /// Single keys work on the bench.
    pub single_keys: bool,
    /// All names are shown on the pictures.
    pub all_names: bool,
    /// The opening jobs say what comes next.
    pub hints: bool,
    /// The machine can be heard.
    pub sound: bool,
    /// How loud, 0 to 1.
    pub volume: f64,
    /// Which colours.
    pub theme: Theme,
    /// Strong contrast, whatever the device asks for.
    pub strong_contrast: bool,
}

impl Default for Settings {
    fn default() -> Self {
        Self {
            single_keys: true,
            all_names: false,
            hints: true,
            sound: true,
            volume: 0.5,
            theme: Theme::Device,
            strong_contrast: false,
        }
    }
}

/// Settings with a way to change them, for the whole page.
#[derive(Clone, PartialEq)]
pub struct SettingsHandle {
    /// As they are.
    pub now: Settings,
    /// Changes them.
    pub change: Callback<Settings>,
}

/// The present settings.
#[hook]
pub fn use_settings() -> Settings {
    use_context::<SettingsHandle>()
        .map(|handle| handle.now)
        .unwrap_or_default()
}

/// Reads the settings once and keeps every change.
#[hook]
pub fn use_kept_settings() -> SettingsHandle {
    let now = use_state(Settings::default);
    {
        let now = now.clone();
        use_effect_with((), move |()| {
            spawn_local(async move {
                let kept = Store::open().await.get(KEY).await.ok().flatten();
                // Settings that cannot be read are the usual ones.
                now.set(
                    kept.and_then(|text| serde_json::from_str(&text).ok())
                        .unwrap_or_default(),
                );
            });
        });
    }
    use_effect_with((now.theme, now.strong_contrast), |(theme, is_strong)| {
        mark_root("data-theme", theme.words().1);
        mark_root("data-contrast", is_strong.then_some("strong"));
    });
    let change = {
        let now = now.clone();
        Callback::from(move |next: Settings| {
            now.set(next.clone());
            spawn_local(async move {
                if let Ok(text) = serde_json::to_string(&next) {
                    // What cannot be kept holds for this visit; the page says so below.
                    let _ = Store::open().await.put(KEY, &text).await;
                }
            });
        })
    };
    SettingsHandle {
        now: (*now).clone(),
        change,
    }
}

/// The style sheets go by marks on the page's root.
fn mark_root(name: &str, value: Option<&str>) {
    let Some(root) = gloo::utils::document().document_element() else {
        return;
    };
    // Only a malformed name is refused, and these are written above.
    let _ = match value {
        Some(value) => root.set_attribute(name, value),
        None => root.remove_attribute(name),
    };
}

/// The settings screen.
#[component]
pub fn SettingsScreen() -> Html {
    let handle = use_context::<SettingsHandle>();
    let Some(handle) = handle else {
        return Html::default();
    };
    let now = handle.now.clone();
    let set = |change: fn(&mut Settings, bool)| {
        let handle = handle.clone();
        Callback::from(move |on: bool| {
            let mut next = handle.now.clone();
            change(&mut next, on);
            handle.change.emit(next);
        })
    };
    html! {
        <main class="page page--narrow settings" id="main" tabindex="-1">
            <header class="page__head"><h1>{ say!("Settings") }</h1></header>
            <div class="page__body stack">
                <fieldset class="settings__group">
                    <legend>{ say!("Bench") }</legend>
                    { choice("Give hints in the opening jobs", now.hints, set(|s, on| s.hints = on)) }
                    { choice("Show all names on the pictures", now.all_names, set(|s, on| s.all_names = on)) }
                    { choice("Single keys work on the bench", now.single_keys, set(|s, on| s.single_keys = on)) }
                </fieldset>
                <fieldset class="settings__group">
                    <legend>{ say!("Colours") }</legend>
                    { for Theme::ALL.into_iter().map(|theme| colours(&handle, theme)) }
                    { choice("Strong contrast", now.strong_contrast, set(|s, on| s.strong_contrast = on)) }
                </fieldset>
                <fieldset class="settings__group">
                    <legend>{ say!("Sound") }</legend>
                    { choice("Hear the machine", now.sound, set(|s, on| s.sound = on)) }
                    { volume(&handle) }
                    <p class="settings__note">{ say!("What sounds is also written under the picture.") }</p>
                </fieldset>
                { keys() }
                <StoreSection />
                <StoredData />
            </div>
        </main>
    }
}

fn choice(words: &'static str, on: bool, change: Callback<bool>) -> Html {
    let onchange =
        change.reform(|event: Event| event.target_unchecked_into::<HtmlInputElement>().checked());
    html! { <label class="choice"><input type="checkbox" checked={on} {onchange} /><span>{ words }</span></label> }
}

fn colours(handle: &SettingsHandle, theme: Theme) -> Html {
    let onchange = {
        let handle = handle.clone();
        Callback::from(move |_: Event| {
            handle.change.emit(Settings {
                theme,
                ..handle.now.clone()
            })
        })
    };
    let is_chosen = handle.now.theme == theme;
    html! {
        <label class="choice"><input type="radio" name="theme" checked={is_chosen} {onchange} /><span>{ theme.words().0 }</span></label>
    }
}

fn volume(handle: &SettingsHandle) -> Html {
    let percent = (handle.now.volume * 100.0).round();
    let oninput = {
        let handle = handle.clone();
        Callback::from(move |event: InputEvent| {
            let field = event.target_unchecked_into::<HtmlInputElement>();
            let mut next = handle.now.clone();
            next.volume = (field.value_as_number() / 100.0).clamp(0.0, 1.0);
            handle.change.emit(next);
        })
    };
    html! {
        <label class="choice">
            <span>{ say!("Volume") }</span>
            <input type="range" min="0" max="100" step="5" value={percent.to_string()} disabled={!handle.now.sound} {oninput}
                aria-valuetext={format!("{percent} percent")} />
        </label>
    }
}

fn keys() -> Html {
    html! {
        <section aria-labelledby="keys">
            <h2 id="keys">{ say!("Keys on the bench") }</h2>
            <p>{ say!("Everything works with Tab, arrow keys and Enter. These single keys are quicker; they do nothing while you type.") }</p>
            <div class="table__wrap">
                <table class="table">
                    <thead><tr><th scope="col">{ say!("Key") }</th><th scope="col">{ say!("What it does") }</th></tr></thead>
                    <tbody>{ for KEYS.iter().map(|(key, _, words)| html! {
                        <tr><td><kbd>{ *key }</kbd></td><td>{ *words }</td></tr>
                    }) }</tbody>
                </table>
            </div>
        </section>
    }
}

/// Where things are kept, and a way to erase them.
#[component]
fn StoredData() -> Html {
    let words = use_state(|| AttrValue::from(""));
    let sure = use_state(|| false);
    {
        let words = words.clone();
        use_effect_with((), move |()| {
            spawn_local(async move { words.set(Store::open().await.words().into()) });
        });
    }
    let erase = {
        let (words, sure) = (words.clone(), sure.clone());
        Callback::from(move |_: MouseEvent| {
            if !*sure {
                sure.set(true);
                return;
            }
            let (words, sure) = (words.clone(), sure.clone());
            spawn_local(async move {
                let said = erase_jobs().await;
                words.set(said.into());
                sure.set(false);
            });
        })
    };
    html! {
        <section aria-labelledby="data">
            <h2 id="data">{ say!("Your data") }</h2>
            <p role="status">{ (*words).clone() }</p>
            <button type="button" class="button button--danger" onclick={erase}>
                { if *sure { say!("Yes, erase all my jobs") } else { say!("Erase my jobs") } }
            </button>
        </section>
    }
}

async fn erase_jobs() -> &'static str {
    let store = Store::open().await;
    let Ok(jobs) = store.all("job/").await else {
        return "The browser did not let the page erase anything.";
    };
    let at_work = sitting::running::is_running();
    let is_free = |key: &str| {
        !at_work
            || key
                .strip_prefix("job/")
                .is_none_or(|id| !sitting::is_sitting(id))
    };
    for (key, _) in jobs.into_iter().filter(|(key, _)| is_free(key)) {
        if store.remove(&key).await.is_err() {
            return "The browser did not let the page erase everything.";
        }
    }
    "All jobs are erased."
}

//! What a person can set, kept in this browser; the keys; what is stored and how to erase it.

use serde::Deserialize;
use serde::Serialize;
use wasm_bindgen_futures::spawn_local;
use web_sys::HtmlInputElement;
use yew::prelude::*;

use crate::app::bench::keys::KEYS;
use crate::app::languages;
use crate::app::outbox::StoreSection;
use crate::app::sitting;
use crate::app::store::Store;
use crate::language::said;
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
            Self::Device => (say!("as the device is set"), None),
            Self::Light => (say!("light" as "of colours"), Some("light")),
            Self::Dark => (say!("dark" as "of colours"), Some("dark")),
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
    /// Tag of the language, as BCP 47 has it; none as the device is set.
    pub language: Option<String>,
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
            language: None,
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

/// What was set before; settings that cannot be read are the usual ones.
pub async fn kept() -> Settings {
    let kept = Store::open().await.get(KEY).await.ok().flatten();
    kept.and_then(|text| serde_json::from_str(&text).ok())
        .unwrap_or_default()
}

/// Starts from what was set before and keeps every change.
#[hook]
pub fn use_kept_settings(kept: &Settings) -> SettingsHandle {
    let now = use_state(|| kept.clone());
    use_effect_with((now.theme, now.strong_contrast), |(theme, is_strong)| {
        mark_root("data-theme", theme.words().1);
        mark_root("data-contrast", is_strong.then_some("strong"));
    });
    let change = {
        let now = now.clone();
        Callback::from(move |next: Settings| {
            let speaks_anew = next.language != now.language;
            now.set(next.clone());
            spawn_local(async move {
                if let Ok(text) = serde_json::to_string(&next) {
                    // What cannot be kept holds for this visit; the page says so below.
                    let _ = Store::open().await.put(KEY, &text).await;
                }
                if speaks_anew {
                    // Every text on every screen is another one; jobs are kept with every act.
                    let _ = gloo::utils::window().location().reload();
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
                { languages(&handle) }
                <fieldset class="settings__group">
                    <legend>{ say!("Bench") }</legend>
                    { choice(say!("Give hints in the opening jobs"), now.hints, set(|s, on| s.hints = on)) }
                    { choice(say!("Show all names on the pictures"), now.all_names, set(|s, on| s.all_names = on)) }
                    { choice(say!("Single keys work on the bench"), now.single_keys, set(|s, on| s.single_keys = on)) }
                </fieldset>
                <fieldset class="settings__group">
                    <legend>{ say!("Colours") }</legend>
                    { for Theme::ALL.into_iter().map(|theme| colours(&handle, theme)) }
                    { choice(say!("Strong contrast"), now.strong_contrast, set(|s, on| s.strong_contrast = on)) }
                </fieldset>
                <fieldset class="settings__group">
                    <legend>{ say!("Sound" as "what is heard") }</legend>
                    { choice(say!("Hear the machine"), now.sound, set(|s, on| s.sound = on)) }
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

/// The languages, each under its own name; nothing where the page comes in English only.
fn languages(handle: &SettingsHandle) -> Html {
    let offered = languages::offered();
    if offered.is_empty() {
        return Html::default();
    }
    let chosen = handle.now.language.clone();
    let one = |code: Option<String>, name: String| {
        let is_chosen = code == chosen;
        let lang = code.clone();
        let handle = handle.clone();
        let onchange = Callback::from(move |_: Event| {
            handle.change.emit(Settings {
                language: code.clone(),
                ..handle.now.clone()
            })
        });
        html! {
            <label class="choice" {lang}><input type="radio" name="language" checked={is_chosen} {onchange} /><span>{ name }</span></label>
        }
    };
    html! {
        <fieldset class="settings__group">
            <legend>{ say!("Language") }</legend>
            { one(None, say!("as the device is set").to_owned()) }
            { one(Some("en".to_owned()), "English".to_owned()) }
            { for offered.into_iter().map(|language| one(Some(language.code), language.name)) }
        </fieldset>
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
                aria-valuetext={say!("{percent} percent", percent)} />
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
                        <tr><td><kbd>{ *key }</kbd></td><td>{ said(words) }</td></tr>
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
        return say!("The browser did not let the page erase anything.");
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
            return say!("The browser did not let the page erase everything.");
        }
    }
    say!("All jobs are erased.")
}

//! A SCORM run-time around the page: found in the windows above it, spoken to, and left in order.

use std::cell::Cell;

use js_sys::Array;
use js_sys::Function;
use js_sys::Reflect;
use wasm_bindgen::JsCast;
use wasm_bindgen::JsValue;
use web_sys::Window;

use crate::app::training_system::fields::Field;
use crate::app::training_system::fields::Model;

/// Windows above the page that are searched.
const HIGHEST: usize = 500;

/// A run-time that was found and has been initialised.
pub struct RunTime {
    api: JsValue,
    /// Its data model.
    pub model: Model,
    /// The learner works for a mark; otherwise nothing of it is reported.
    pub counts: bool,
    is_open: Cell<bool>,
}

impl RunTime {
    /// Looks for one and initialises it.
    pub fn find() -> Option<Self> {
        let window = gloo::utils::window();
        let places = [("API_1484_11", Model::Scorm2004), ("API", Model::Scorm12)];
        let above = |name: &str| {
            search(window.clone(), name).or_else(|| {
                let opener = window.top().ok()??.opener().ok()?;
                search(opener.dyn_into().ok()?, name)
            })
        };
        let (api, model) = places
            .into_iter()
            .find_map(|(name, model)| Some((above(name)?, model)))?;
        let mut found = Self {
            api,
            model,
            counts: true,
            is_open: Cell::new(false),
        };
        if found.call("Initialize", &[""]).as_deref() != Some("true") {
            return None;
        }
        found.is_open.set(true);
        found.counts = matches!(found.get(model.mode()).as_str(), "" | "normal");
        Some(found)
    }

    fn call(&self, name: &'static str, words: &[&str]) -> Option<String> {
        let name = JsValue::from_str(self.model.call(name));
        let function: Function = Reflect::get(&self.api, &name).ok()?.dyn_into().ok()?;
        let words: Array = words.iter().map(|word| JsValue::from_str(word)).collect();
        let said = function.apply(&self.api, &words).ok()?;
        // Some run-times answer true, others "true".
        said.as_string()
            .or_else(|| said.as_bool().map(|yes| yes.to_string()))
    }

    /// A value; empty where there is none.
    pub fn get(&self, name: &str) -> String {
        self.call("GetValue", &[name]).unwrap_or_default()
    }

    /// Sets values and has them kept.
    pub fn tell(&self, fields: &[Field]) {
        if !self.is_open.get() {
            return;
        }
        for (name, value) in fields {
            // A run-time that refuses a value keeps the others.
            let _ = self.call("SetValue", &[name, value]);
        }
        let _ = self.call("Commit", &[""]);
    }

    /// Leaves it in order, once.
    pub fn leave(&self, fields: &[Field]) {
        self.tell(fields);
        if self.is_open.replace(false) {
            let _ = self.call("Terminate", &[""]);
        }
    }
}

/// Searches a window and those above it. A window of another site cannot be looked into: no search
/// goes on beyond it.
fn search(mut window: Window, name: &str) -> Option<JsValue> {
    for _ in 0..HIGHEST {
        let api = Reflect::get(&window, &JsValue::from_str(name)).ok()?;
        if api.is_object() {
            return Some(api);
        }
        let above = window.parent().ok()??;
        if js_sys::Object::is(&above, &window) {
            return None;
        }
        window = above;
    }
    None
}

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
use crate::app::training_system::trouble::Refused;
use crate::assess::decide::Decided;
use crate::records::record::Record;

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
    /// Looks for one and initialises it; none where there is none.
    ///
    /// # Errors
    /// When there is one that does not let the page begin.
    pub fn find() -> Result<Option<Self>, Refused> {
        let places = [("API_1484_11", Model::Scorm2004), ("API", Model::Scorm12)];
        let there = places
            .into_iter()
            .find_map(|(name, model)| Some((above(name)?, model)));
        let Some((api, model)) = there else {
            return Ok(None);
        };
        let mut found = Self {
            api,
            model,
            counts: true,
            is_open: Cell::new(false),
        };
        match found.call("Initialize", &[""]).as_deref() {
            Some("true") => {}
            Some(_) => return Err(Refused::NotBegun),
            // Something else has the same name.
            None => return Ok(None),
        }
        found.is_open.set(true);
        found.counts = matches!(found.get(model.mode()).as_str(), "" | "normal");
        Ok(Some(found))
    }

    /// It has not been left yet.
    pub fn is_open(&self) -> bool {
        self.is_open.get()
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

    /// Tells what came of an assessment, where the learner works for a mark.
    pub fn ended(&self, decided: &Decided, records: &[Record]) {
        if self.counts {
            let pass_marks = self.model.pass_marks(&self.get(self.model.pass_mark()));
            self.tell(&self.model.ended(decided, records, pass_marks));
        }
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

/// Searches the windows above the page, and those of the one that has opened it.
fn above(name: &str) -> Option<JsValue> {
    let window = gloo::utils::window();
    search(window.clone(), name).or_else(|| {
        let opener = window.top().ok()??.opener().ok()?;
        // A window of another page is of another page's type `Window`: it cannot be asked what it is.
        opener
            .is_object()
            .then(|| search(opener.unchecked_into(), name))?
    })
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

//! What moves in the picture of the machine, written frame by frame: only what differs from the last one.

use std::collections::BTreeMap;

use crate::app::session::Session;
use crate::app::view::build;
use crate::drawing;
use crate::drawing::Features;

/// Remembers what is written in the picture that is drawn.
#[derive(Default)]
pub struct Painter {
    written: BTreeMap<(&'static str, &'static str), String>,
}

impl Painter {
    /// The picture is drawn anew: nothing in it is known to be written.
    pub fn forget(&mut self) {
        self.written.clear();
    }

    /// Writes the attributes that differ from the last frame.
    pub fn paint(&mut self, session: &Session) {
        let Some(view) = build::view_of(session.picture) else {
            return;
        };
        let job = session.live();
        let features = Features::of(&job.scenario().workshop);
        let document = gloo::utils::document();
        for change in drawing::animate(view, features, &build::pose(job)) {
            let slot = (change.id, change.attribute);
            if self.written.get(&slot) == Some(&change.value) {
                continue;
            }
            let Some(element) = document.get_element_by_id(change.id) else {
                continue;
            };
            // A name from the drawing is a valid attribute name.
            let _ = element.set_attribute(change.attribute, &change.value);
            self.written.insert(slot, change.value);
        }
    }
}

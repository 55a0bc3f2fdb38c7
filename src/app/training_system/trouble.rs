//! What stands between the page and the training system, in a sentence or two for the learner.

use std::cell::Cell;

use crate::app::sitting::running;
use crate::text;

/// A training system has started the page, which works without it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Refused {
    /// The system does not let it begin.
    NotBegun,
    /// The learner does not wait for the system.
    GoneOn,
}

impl Refused {
    /// In English words.
    pub fn words(self) -> &'static str {
        match self {
            Self::NotBegun => NOT_BEGUN,
            Self::GoneOn => GONE_ON,
        }
    }
}

const NOT_BEGUN: &str = text!(
    "The training system has started this page but does not let it begin, so it is told nothing of what you do here. Start it anew from the course."
);
const GONE_ON: &str = text!(
    "You go on without the training system, which has not answered: it is told nothing of what you do here. Load this page again to ask it once more, or start it anew from the course."
);
/// The visit is over.
pub const ENDED: &str = text!(
    "This page was left or loaded anew, and with that your visit in the training system has ended. Your work is kept. Start the page again from the course: what you hand in is told then."
);
/// Work is not kept there.
pub const NO_ROOM: &str = text!(
    "The training system has no room for all of your work: it is kept in this browser alone. Go on here, on no other computer, and save the file at the end."
);
/// A result waits.
pub const NOT_TOLD: &str = text!(
    "The training system has not taken your result yet. It is told again when the network is back, and by “Back to the course” where that is shown. Save the file."
);

thread_local! {
    static TROUBLE: Cell<Option<&'static str>> = const { Cell::new(None) };
}

/// Known before anything is shown.
pub fn begin_with(trouble: &'static str) {
    TROUBLE.set(Some(trouble));
}

/// What the learner should know about the training system, in a sentence or two of English.
pub fn trouble() -> Option<&'static str> {
    TROUBLE.get()
}

/// Says it, or that nothing is in the way any more.
pub fn say(trouble: Option<&'static str>) {
    if TROUBLE.replace(trouble) != trouble {
        // Whatever shows the sitting shows it too.
        running::change(|_| {});
    }
}

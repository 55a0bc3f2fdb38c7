//! What a customer can be asked: at the machine, and on the phone before the drive.

use crate::text;

/// A question a technician can ask, in the trade's order.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Question {
    /// Stable name.
    pub id: &'static str,
    /// As asked.
    pub text: &'static str,
}

/// The questions of a first talk. Common practice.
pub const QUESTIONS: [Question; 10] = [
    Question {
        id: "when",
        text: text!("When in the wash does it happen?"),
    },
    Question {
        id: "since",
        text: text!("Since when? Did it come slowly or at once?"),
    },
    Question {
        id: "always",
        text: text!("Does it happen every time?"),
    },
    Question {
        id: "shown",
        text: text!("What does the display show? Does it beep?"),
    },
    Question {
        id: "noise",
        text: text!("Does it make a noise it did not make before?"),
    },
    Question {
        id: "smell",
        text: text!("Any smell, smoke or wet floor?"),
    },
    Question {
        id: "worked_on",
        text: text!("Has anyone worked on it or moved it?"),
    },
    Question {
        id: "load",
        text: text!("What was in it, how much, and how much powder?"),
    },
    Question {
        id: "water",
        text: text!("Is the tap open, and is the water strong elsewhere?"),
    },
    Question {
        id: "power",
        text: text!("Has a breaker tripped? Is it on an extension lead?"),
    },
];

/// Questions that settle what goes in the van, asked before driving. Common practice.
pub const PHONE_QUESTIONS: [Question; 5] = [
    Question {
        id: "phone_machine",
        text: text!("Which machine is it, and how old?"),
    },
    Question {
        id: "phone_stage",
        text: text!("What does it still do, and where does it stop?"),
    },
    Question {
        id: "phone_since",
        text: text!("Since when? Did it come slowly or at once?"),
    },
    Question {
        id: "phone_shown",
        text: text!("What does the display show? Does it beep?"),
    },
    Question {
        id: "phone_place",
        text: text!("Where does it stand, and can somebody help to lay it down?"),
    },
];

//! Everything a person at the bench can ask for. Acts on the job are `Action`s; the rest only
//! changes what is looked at, and is in no log.

use crate::bench::action::Action;
use crate::bench::action::MeterMode;
use crate::bench::recorder::Channel;
use crate::say;

/// A picture of the machine.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub enum Picture {
    /// As the customer sees it.
    #[default]
    Outside,
    /// From behind and below, covers off as far as they are off.
    Opened,
    /// Cut through the middle.
    Section,
    /// The wiring diagram.
    Wiring,
    /// The way of the water.
    Water,
}

impl Picture {
    /// All pictures in the order of the tabs.
    pub const ALL: [Self; 5] = [
        Self::Outside,
        Self::Opened,
        Self::Section,
        Self::Wiring,
        Self::Water,
    ];

    /// The word on the tab.
    pub fn word(self) -> &'static str {
        match self {
            Self::Outside => say!("outside" as "a picture of the machine"),
            Self::Opened => say!("opened" as "a picture of the machine"),
            Self::Section => say!("section" as "a picture of the machine"),
            Self::Wiring => say!("wiring" as "a picture of the machine"),
            Self::Water => say!("water" as "a picture of the machine: the way of the water"),
        }
    }
}

/// Something on the machine that can be taken in hand.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Thing {
    /// A part or place of this name.
    Place(String),
    /// A cover or other step of the way in.
    Step(String),
    /// A connector.
    Connector(String),
    /// A test point, by its node.
    Point(String),
    /// A key or knob of the panel.
    Key(String),
    /// A conductor or other element on the wiring diagram.
    Element(String),
}

impl Thing {
    /// The name in the machine's file.
    pub fn id(&self) -> &str {
        match self {
            Self::Place(id)
            | Self::Step(id)
            | Self::Connector(id)
            | Self::Point(id)
            | Self::Key(id)
            | Self::Element(id) => id,
        }
    }
}

/// A lead of the meter.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Lead {
    /// The red one, or a clamp's jaws.
    #[default]
    Red,
    /// The black one.
    Black,
}

impl Lead {
    /// The word in names of the page's elements.
    pub fn word(self) -> &'static str {
        match self {
            Self::Red => "red",
            Self::Black => "black",
        }
    }
}

/// How fast the bench's clock runs.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Speed {
    /// Stands still.
    Paused,
    /// As the clock on the wall.
    #[default]
    One,
    /// Ten times.
    Ten,
    /// Sixty times: a minute a second.
    Sixty,
}

impl Speed {
    /// All speeds in the order of the keys.
    pub const ALL: [Self; 4] = [Self::Paused, Self::One, Self::Ten, Self::Sixty];

    /// Bench seconds in a second.
    pub fn factor(self) -> f64 {
        match self {
            Self::Paused => 0.0,
            Self::One => 1.0,
            Self::Ten => 10.0,
            Self::Sixty => 60.0,
        }
    }

    /// The word on the key.
    pub fn word(self) -> &'static str {
        match self {
            Self::Paused => say!("pause" as "of the clock: stand still"),
            Self::One => "1×",
            Self::Ten => "10×",
            Self::Sixty => "60×",
        }
    }
}

/// What to wait for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Until {
    /// Until something can be seen or heard to change.
    Change,
    /// Until the machine does something else.
    StateEnds,
    /// A minute.
    Minute,
}

impl Until {
    /// All of them, in the order of the list.
    pub const ALL: [Self; 3] = [Self::Change, Self::StateEnds, Self::Minute];

    /// The words on the key.
    pub fn words(self) -> &'static str {
        match self {
            Self::Change => say!("something changes"),
            Self::StateEnds => say!("it does something else"),
            Self::Minute => say!("a minute has passed"),
        }
    }
}

/// Changes to the list of suspects.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum SuspectOrder {
    /// Put a cause on the list.
    Add(String),
    /// Strike it out or bring it back.
    Strike(String),
    /// How sure, 1 to 3.
    Sure(String, u8),
    /// One place up.
    Up(String),
}

/// What a person asks for at the bench.
#[derive(Clone, Debug, PartialEq)]
pub enum Order {
    /// Show a picture.
    Show(Picture),
    /// Take something in hand, or nothing.
    Select(Option<Thing>),
    /// Do these acts in order; stop when one cannot be done.
    Do(Vec<Action>),
    /// Turn the meter to a mode.
    Mode(MeterMode),
    /// Turn the meter to a mode and put its leads where they are to go.
    Measure(MeterMode, String, Option<String>),
    /// Put a pen of the recorder on a quantity.
    Follow(Channel),
    /// Put a pen on what the meter reads.
    FollowMeter,
    /// Lift a pen.
    LiftPen(usize),
    /// Begin the strip anew.
    FreshStrip,
    /// Put a lead on a point, or let it hang.
    Put(Lead, Option<String>),
    /// Take a lead in hand: the next point touched gets it.
    TakeLead(Lead),
    /// Let the clock run at a speed.
    Run(Speed),
    /// Let time pass until something is so.
    Wait(Until),
    /// Put the calm card away.
    CardRead,
    /// Change the suspects.
    Suspect(SuspectOrder),
    /// Work in this tab.
    TakeOver,
    /// Start this job again from the bell.
    StartAgain,
    /// Try a finished job again from before a step, counted from 0; it does not count.
    TryFrom(usize),
    /// Leave such a try and go back to the job as it was finished.
    BackToWhole,
}

/// One thing that can be done with what is in hand.
#[derive(Clone, Debug, PartialEq)]
pub struct VerbView {
    /// Plain verb, such as `pull apart`.
    pub word: String,
    /// What it takes, such as `3 min`.
    pub takes: String,
    /// A caution or what will be checked; empty when there is nothing to say.
    pub hint: String,
    /// Something comes first.
    pub blocked: bool,
    /// What happens.
    pub order: Order,
}

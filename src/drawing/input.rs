//! What a drawing is made from: the type of machine, what is off, what is selected.

use std::collections::BTreeSet;

use crate::bench::workshop::Workshop;
use crate::language::in_english;
use crate::language::worded;
use crate::machine::Pose;

/// Which picture of the machine.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum View {
    /// As the customer sees it.
    Outside,
    /// Turned round, with covers off as far as the technician took them off.
    Opened,
    /// Cut through the middle.
    Section,
    /// The way of the water alone.
    Water,
}

impl View {
    /// All views in the order of the tabs.
    pub const ALL: [View; 4] = [View::Outside, View::Opened, View::Section, View::Water];

    /// Stable name for files and addresses.
    pub fn slug(self) -> &'static str {
        match self {
            View::Outside => "outside",
            View::Opened => "opened",
            View::Section => "section",
            View::Water => "water",
        }
    }
}

/// How the tub is emptied.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Drain {
    /// A drain motor pulls valve and clutch lever by a wire.
    Gravity,
    /// A pump lifts the water; a clutch motor pulls the lever.
    Pump,
}

/// What commands the machine.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Command {
    /// Electronic board with display and keys.
    Board,
    /// Cam timer and pressure switch.
    Timer,
}

/// What differs between types of machine as far as a picture shows it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Features {
    /// How the tub is emptied.
    pub drain: Drain,
    /// What commands it.
    pub command: Command,
    /// The inlet valve has a second coil for hot water.
    pub hot_inlet: bool,
    /// Mains filter and fuse are parts of their own, not on the board.
    pub filter_and_fuse: bool,
    /// There is an on/off switch.
    pub switch: bool,
}

impl Features {
    /// Reads the features from the parts a machine has.
    pub fn of(workshop: &Workshop) -> Self {
        let has = |id: &str| workshop.part(id).is_some();
        Self {
            drain: if has("drain_pump") {
                Drain::Pump
            } else {
                Drain::Gravity
            },
            command: if has("timer") {
                Command::Timer
            } else {
                Command::Board
            },
            hot_inlet: workshop.test_point("HV1").is_some(),
            filter_and_fuse: workshop.place("mains_filter").is_some(),
            switch: has("on_off_switch"),
        }
    }
}

/// Everything a picture of the machine depends on.
pub struct DrawingInput<'a> {
    /// Parts, places, connectors and test points with their names.
    pub workshop: &'a Workshop,
    /// What the picture shows of the type of machine.
    pub features: Features,
    /// Ids of the steps that are done: what is off, open or moved.
    pub removed: &'a BTreeSet<String>,
    /// Ids of the connectors that are apart.
    pub apart: &'a BTreeSet<String>,
    /// Id of the part, place, step or connector in hand.
    pub selected: Option<&'a str>,
    /// Test points with the red and the black probe.
    pub probes: Probes<'a>,
    /// What moved.
    pub pose: &'a Pose,
    /// Names of things the workshop does not list, such as the socket.
    pub names: &'a dyn Fn(&str) -> String,
}

/// Where the probes are.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Probes<'a> {
    /// Node under the red probe.
    pub red: Option<&'a str>,
    /// Node under the black probe.
    pub black: Option<&'a str>,
}

impl DrawingInput<'_> {
    /// True when any of the named steps is done. Several names stand for spellings of one step.
    pub fn is_off(&self, steps: &[&str]) -> bool {
        steps.iter().any(|step| self.removed.contains(*step))
    }

    /// The name a person reads for an id.
    pub fn name(&self, id: &str) -> String {
        let known = self.workshop;
        known
            .part(id)
            .map(|part| &part.name)
            .or_else(|| known.place(id).map(|place| &place.name))
            .or_else(|| known.connector(id).map(|connector| &connector.name))
            .or_else(|| known.step(id).map(|step| &step.name))
            .map(|name| worded(name).into_owned())
            .unwrap_or_else(|| (self.names)(id))
    }

    /// The name pictures are laid out for.
    pub fn english_name(&self, id: &str) -> String {
        in_english(|| self.name(id))
    }
}

/// The plain name of an id: its words. Good enough where no better list of names is at hand.
pub fn plain_name(id: &str) -> String {
    id.replace('_', " ")
}

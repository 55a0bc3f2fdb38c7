//! What a technician can know and do about one type of machine: its parts, what is in the way of
//! what, where a probe reaches, and what a good one reads.
//!
//! Plain data, read from the machine's file. The order of things in each list is the order a
//! person meets them, from outside to inside.

use std::collections::BTreeSet;

use crate::bench::visit::Advice;
use crate::machine::Target;

/// Everything the bench knows about a type of machine beyond its physics.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Workshop {
    /// What is screwed, clipped or hung in the way; removing one may need others first.
    pub steps: Vec<Step>,
    /// What can be ordered and fitted.
    pub parts: Vec<Part>,
    /// What can be done to put something right.
    pub works: Vec<Work>,
    /// What can be pulled apart by hand.
    pub connectors: Vec<Connector>,
    /// Where a probe or clamp can reach.
    pub test_points: Vec<TestPoint>,
    /// Where eyes, ears, hands and nose can go.
    pub places: Vec<Place>,
    /// What the data sheet says of a good machine.
    pub data_sheet: Vec<DataSheetLine>,
    /// Steps of the service test: plain words for each, in the control's order.
    pub service_steps: Vec<String>,
    /// Programs the customer can choose.
    pub programs: Vec<String>,
    /// What a clamp can go round: name in files and logs, and in plain words.
    pub conductors: Vec<(String, String)>,
}

/// One thing to take off (or open, lift, lay down) and later put back.
#[derive(Clone, Debug, PartialEq)]
pub struct Step {
    /// Stable name in files and logs, such as `back_cover`.
    pub id: String,
    /// Plain name on screens, such as "back cover".
    pub name: String,
    /// What is done to it, such as "take off" or "stand up".
    pub verb: String,
    /// What puts it back, such as "refit" or "lower".
    pub refit_verb: String,
    /// Steps that come first.
    pub needs: Vec<String>,
    /// Tools used, plain words.
    pub tools: Vec<String>,
    /// What holds it, such as "8 screws".
    pub fasteners: String,
    /// Loose pieces that come off with it, and must go back.
    pub n_fasteners: u32,
    /// Working time to take off and to put back, s.
    pub off_s: f64,
    /// Working time to put back, s.
    pub on_s: f64,
    /// What can hurt or break.
    pub caution: String,
    /// What must be verified when it goes back.
    pub refit_check: String,
    /// What is physically different while it is off.
    pub while_off: Vec<Effect>,
    /// What goes wrong when it goes back without the check, and how often (0..1).
    pub mistakes: Vec<Mistake>,
    /// The technician can touch bare mains parts once this is off.
    pub opens_live_parts: bool,
    /// The machine itself is moved or tilted by this step.
    pub moves_machine: bool,
    /// The machine lies down by this step: no water should be in the tub.
    pub lays_down: bool,
    /// Water runs out where it comes apart: bucket, tray and cloth first.
    pub lets_water_out: bool,
    /// It cannot be got at under water.
    pub needs_dry_tub: bool,
    /// Heavy or awkward: help or a strap is needed.
    pub needs_help: bool,
    /// It stands over the hands once it is open: it must be propped or tied.
    pub needs_support: bool,
    /// What it damages in the wrong order.
    pub harms: Vec<Harm>,
}

/// Which way something moves.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Way {
    /// Taken off, pulled apart.
    Off,
    /// Put back, pushed together.
    On,
}

/// Damage that an act does in the wrong order: a fault put on the machine.
#[derive(Clone, Debug, PartialEq)]
pub struct Harm {
    /// Taking off or putting back; none: either.
    pub way: Option<Way>,
    /// Steps that must be in place for the act to be harmless.
    pub on: Vec<String>,
    /// The machine must be without voltage for the act to be harmless.
    pub dead: bool,
    /// The tub must be empty for the act to be harmless: else water gets where it should not.
    pub dry: bool,
    /// What is damaged, plain words.
    pub what: String,
    /// The physical difference.
    pub effects: Vec<Effect>,
}

/// What a refit without its check can leave wrong.
#[derive(Clone, Debug, PartialEq)]
pub struct Mistake {
    /// Plain words, such as "the clutch lever is out of its link".
    pub what: String,
    /// Chance when the check is left out, 0..1.
    pub chance_ratio: f64,
    /// The physical difference.
    pub effects: Vec<Effect>,
}

/// A sealant and what comes of water before its time.
#[derive(Clone, Debug, PartialEq)]
pub struct Sealant {
    /// Time until it holds, s.
    pub sets_s: f64,
    /// The physical difference when water came first.
    pub effects: Vec<Effect>,
}

/// One physical difference a step, a mistake or a repair makes.
#[derive(Clone, Debug, PartialEq)]
pub enum Effect {
    /// The named element of the wiring is an open circuit.
    ElementOpen(String),
    /// The named element of the wiring has this value, in its own unit.
    ElementValue(String, f64),
    /// The named plant parameter has this value.
    Param(String, f64),
}

impl Effect {
    /// What it touches.
    pub fn target(&self) -> Target {
        match self {
            Effect::ElementOpen(name) | Effect::ElementValue(name, _) => {
                Target::Element(name.clone())
            }
            Effect::Param(name, _) => Target::Param(name.clone()),
        }
    }
}

/// Something that can be ordered and replaced.
#[derive(Clone, Debug, PartialEq)]
pub struct Part {
    /// Stable name in files and logs, such as `run_capacitor`.
    pub id: String,
    /// Plain name on screens.
    pub name: String,
    /// Letter code by IEC 81346 with a number, such as `C1`.
    pub designation: String,
    /// Price in the job's money unit (one minute of labour unless the price list says otherwise).
    pub price: f64,
    /// What it does, one plain sentence.
    pub does: String,
    /// How it fails, one plain sentence.
    pub fails: String,
    /// Elements of the wiring that come new with it.
    pub elements: Vec<String>,
    /// Plant and control parameters that come new with it.
    pub params: Vec<String>,
    /// Once fitted it cannot go back to the shelf.
    pub sold_once_fitted: bool,
    /// The voltage the original is made for, V; none where nobody asks.
    pub rated_v: Option<f64>,
    /// The current the original is made for, A; none where nobody asks.
    pub rated_a: Option<f64>,
    /// Elements that burn out when more than this flows through them, A.
    pub burns_above_a: Vec<(String, f64)>,
    /// Parts of another make that fit in its place.
    pub variants: Vec<Variant>,
}

/// A part of another make: it fits, and is what it is.
#[derive(Clone, Debug, PartialEq)]
pub struct Variant {
    /// Stable name within its part, such as `8uf`.
    pub id: String,
    /// Plain name, such as "run capacitor 8 µF".
    pub name: String,
    /// Price in the money unit.
    pub price: f64,
    /// Elements of the wiring with their value once it is fitted, in the element's own unit.
    pub values: Vec<(String, f64)>,
    /// Plant parameters with their value once it is fitted.
    pub params: Vec<(String, f64)>,
    /// The voltage it is made for, V.
    pub rated_v: Option<f64>,
    /// The current it is made for, A.
    pub rated_a: Option<f64>,
}

/// Kind of work on a part.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum WorkKind {
    /// Fit a new part.
    Replace,
    /// Remove dirt, lint, a coin.
    Clean,
    /// Set tension, play, height, level.
    Adjust,
    /// Push home, hook in, seat.
    Reseat,
    /// Seal a joint.
    Reseal,
    /// Show or tell the customer.
    Instruct,
}

/// Something that can be done to put things right.
#[derive(Clone, Debug, PartialEq)]
pub struct Work {
    /// Stable name, such as `replace_run_capacitor`.
    pub id: String,
    /// Plain words, such as "replace the run capacitor".
    pub name: String,
    /// Kind of work.
    pub kind: WorkKind,
    /// The part it is done to; empty for what is outside the machine.
    pub part: String,
    /// Steps that come first.
    pub needs: Vec<String>,
    /// Tools used, plain words.
    pub tools: Vec<String>,
    /// What holds the part, such as "2 screws, plug".
    pub fasteners: String,
    /// Loose pieces that come off with it, and must go back.
    pub n_fasteners: u32,
    /// Working time, s, old part out and new part in.
    pub work_s: f64,
    /// Price of material in the money unit, on top of the part's price when it is replaced.
    pub material_price: f64,
    /// What can hurt or break.
    pub caution: String,
    /// What must be verified afterwards.
    pub check: String,
    /// Elements of the wiring this work makes good again (for a replacement: the part's own).
    pub elements: Vec<String>,
    /// Parameters this work makes good again.
    pub params: Vec<String>,
    /// What is left wrong when the check is left out.
    pub mistakes: Vec<Mistake>,
    /// What seals the joint needs time before water.
    pub sealant: Option<Sealant>,
    /// What a customer is told so that it does not come back.
    pub teach: Option<Advice>,
}

/// A connector or terminal that can be pulled apart by hand.
#[derive(Clone, Debug, PartialEq)]
pub struct Connector {
    /// Stable name, such as `motor_terminals`.
    pub id: String,
    /// Plain name.
    pub name: String,
    /// Elements that are open circuits while it is apart.
    pub elements: Vec<String>,
    /// Steps that come first.
    pub needs: Vec<String>,
    /// Where it is.
    pub place: String,
    /// What pulling or pushing it damages in the wrong order.
    pub harms: Vec<Harm>,
}

/// Where a probe can touch.
#[derive(Clone, Debug, PartialEq)]
pub struct TestPoint {
    /// Name of the node in the wiring, such as `MA`.
    pub node: String,
    /// Plain name, such as "motor terminal A".
    pub name: String,
    /// Steps that come first; empty for what is reached from outside.
    pub needs: Vec<String>,
    /// Place on the machine.
    pub place: String,
}

/// Somewhere to look, listen, feel or smell.
#[derive(Clone, Debug, PartialEq)]
pub struct Place {
    /// Stable name, such as `belt`.
    pub id: String,
    /// Plain name.
    pub name: String,
    /// Steps that come first.
    pub needs: Vec<String>,
    /// The part that is there, if any.
    pub part: String,
}

/// One line of the data sheet: what a good machine reads.
#[derive(Clone, Debug, PartialEq)]
pub struct DataSheetLine {
    /// Meter mode as in the log, such as `ohms`.
    pub mode: String,
    /// Red and black test points (the order does not matter except for DC).
    pub red: String,
    /// Black test point; empty for a clamp.
    pub black: String,
    /// What the machine must be doing: a state name such as `unplugged` or `filling`.
    pub state: String,
    /// Connectors that must be apart for the value to hold.
    pub apart: Vec<String>,
    /// Lowest and highest good value, in the mode's SI unit.
    pub low: f64,
    /// Highest good value.
    pub high: f64,
    /// What the line is about, plain words.
    pub what: String,
}

impl Step {
    /// A second pair of hands, a strap, a stand or a tray belongs to taking it off.
    pub fn wants_aid(&self) -> bool {
        self.lays_down || self.needs_help || self.needs_support || self.lets_water_out
    }
}

impl Part {
    /// A new part brings this with it.
    pub fn comes_with(&self, target: &Target) -> bool {
        names(target, &self.elements, &self.params)
    }
}

impl Work {
    /// The work itself makes this good.
    pub fn restores(&self, target: &Target) -> bool {
        names(target, &self.elements, &self.params)
    }
}

fn names(target: &Target, elements: &[String], params: &[String]) -> bool {
    match target {
        Target::Element(name) => elements.contains(name),
        Target::Param(name) => params.contains(name),
    }
}

impl Workshop {
    /// The step with this name.
    pub fn step(&self, id: &str) -> Option<&Step> {
        self.steps.iter().find(|s| s.id == id)
    }
    /// The part with this name.
    pub fn part(&self, id: &str) -> Option<&Part> {
        self.parts.iter().find(|p| p.id == id)
    }
    /// The work with this name; `work:variant` fits a part of another make.
    pub fn work(&self, name: &str) -> Option<&Work> {
        let id = name.split(':').next();
        self.works.iter().find(|w| Some(w.id.as_str()) == id)
    }
    /// The connector with this name.
    pub fn connector(&self, id: &str) -> Option<&Connector> {
        self.connectors.iter().find(|c| c.id == id)
    }
    /// The test point at this node of the wiring.
    pub fn test_point(&self, node: &str) -> Option<&TestPoint> {
        self.test_points.iter().find(|t| t.node == node)
    }
    /// The place with this name.
    pub fn place(&self, id: &str) -> Option<&Place> {
        self.places.iter().find(|p| p.id == id)
    }
    /// All steps that come before `needs` are reached, each once, in working order.
    pub fn closure(&self, needs: &[String]) -> Vec<&Step> {
        let mut order = Vec::new();
        let mut seen = BTreeSet::new();
        for id in needs {
            self.visit(id, &mut seen, &mut order);
        }
        order
    }

    fn visit<'a>(&'a self, id: &str, seen: &mut BTreeSet<String>, order: &mut Vec<&'a Step>) {
        if !seen.insert(id.to_owned()) {
            return;
        }
        if let Some(step) = self.step(id) {
            for need in &step.needs {
                self.visit(need, seen, order);
            }
            order.push(step);
        }
    }
}

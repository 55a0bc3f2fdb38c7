//! Plain models of the instruments' faces, of those that need no circuit, of the tests after a repair and
//! the recorder.

use crate::app::view::orders::Order;
use crate::app::view::orders::VerbView;
use crate::bench::gauge::Gauge;
use crate::bench::recorder::Channel;

/// The instrument's face.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct FaceView {
    /// Digits, `OL` or dashes.
    pub value: String,
    /// Unit, such as `Ω`.
    pub unit: String,
    /// Kind of measurement shown small, such as `AC`.
    pub flag: &'static str,
    /// The display has not settled yet.
    pub settling: bool,
    /// Over range.
    pub overload: bool,
    /// The instrument's own warning.
    pub warning: Option<String>,
}

/// An instrument that needs no circuit.
#[derive(Clone, Debug, PartialEq)]
pub struct GaugeView {
    /// Which.
    pub gauge: Gauge,
    /// Its name.
    pub name: &'static str,
    /// What to mind.
    pub caution: &'static str,
    /// Where it goes on this machine.
    pub places: Vec<GaugePlaceView>,
}

/// A place such an instrument goes to.
#[derive(Clone, Debug, PartialEq)]
pub struct GaugePlaceView {
    /// Place and what is read there.
    pub name: String,
    /// What is in the way, plain words.
    pub blocked: Option<String>,
    /// What the data sheet says of a good machine.
    pub sheet: Option<String>,
    /// What a recorder's pen would follow there.
    pub channel: Option<Channel>,
    /// Puts it there.
    pub order: Order,
}

/// What such an instrument showed last.
#[derive(Clone, Debug, PartialEq)]
pub struct GaugeFaceView {
    /// Which.
    pub gauge: Gauge,
    /// Digits or words.
    pub value: String,
    /// Unit.
    pub unit: String,
    /// Share of its scale.
    pub share: Option<f64>,
    /// Name of the place.
    pub place: String,
    /// What the data sheet says of a good machine.
    pub sheet: Option<String>,
}

/// One of the tests after a repair.
#[derive(Clone, Debug, PartialEq)]
pub struct TestView {
    /// What is tested.
    pub what: &'static str,
    /// How.
    pub how: &'static str,
    /// The limit.
    pub limit: &'static str,
    /// Where the limit comes from.
    pub source: &'static str,
    /// What was read or seen since the last change.
    pub value: Option<String>,
    /// Within the limit; none before it was done.
    pub passed: Option<bool>,
    /// Puts the leads there.
    pub measure: Option<VerbView>,
}

/// One pen of the recorder.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct PenView {
    /// What it follows.
    pub name: String,
    /// Its line in the lane, as an SVG path.
    pub path: String,
    /// Lowest value on the strip.
    pub low: String,
    /// Highest value on the strip.
    pub high: String,
    /// Value now.
    pub now: String,
}

/// The recorder's strip.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct RecorderView {
    /// Its pens.
    pub pens: Vec<PenView>,
    /// A few lines of it, the first and the last among them: time and the values of the pens.
    pub rows: Vec<Vec<String>>,
    /// Times of day along it: at its start, after each quarter, at its end.
    pub moments: Vec<String>,
    /// Its length, s.
    pub seconds: u64,
}

/// What is different on the bench in an assessment.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct ExamView {
    /// The wiring diagram may be used.
    pub wiring: bool,
}

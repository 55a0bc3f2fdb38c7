//! The instrument as it is set, and its face.

use crate::app::shared::Shared;
use crate::app::view::FaceView;
use crate::app::view::Lead;
use crate::app::view::MeterView;
use crate::app::view::PointView;
use crate::app::view::sheet;
use crate::app::view::shown;
use crate::app::view::way;
use crate::bench::action::Action;
use crate::bench::action::MeterMode;
use crate::bench::event::Refusal;
use crate::bench::job::Job;
use crate::bench::job::WHOLE_CORD;
use crate::bench::kept;
use crate::bench::notebook::Reading;
use crate::language::worded;
use crate::network::ElementKind;
use crate::network::NodeId;
use crate::say;

/// How the technician holds the instrument; the job knows it once both leads are placed.
#[derive(Clone, Debug, PartialEq)]
pub struct Hold {
    /// Mode.
    pub mode: MeterMode,
    /// Point under the red lead, or the conductor in the jaws.
    pub red: Option<String>,
    /// Point under the black lead.
    pub black: Option<String>,
    /// The lead in hand.
    pub lead: Lead,
}

impl Default for Hold {
    fn default() -> Self {
        Self {
            mode: MeterMode::AcVolts,
            red: None,
            black: None,
            lead: Lead::Red,
        }
    }
}

impl Hold {
    /// Both leads are somewhere, or the jaws are.
    pub fn is_complete(&self) -> bool {
        self.red.is_some() && (self.mode.is_clamp() || self.black.is_some())
    }

    /// A lead put somewhere or taken off; the other lead is in hand next.
    pub fn put(&mut self, lead: Lead, at: Option<String>) {
        let placed = at.is_some();
        match lead {
            Lead::Red => self.red = at,
            Lead::Black => self.black = at,
        }
        self.lead = match (lead, placed) {
            (Lead::Red, true) if !self.mode.is_clamp() => Lead::Black,
            (Lead::Black, true) => Lead::Red,
            (lead, _) => lead,
        };
    }

    /// Turned to another mode. The leads stay where they are while they stay in their sockets of
    /// the meter; what has leads or jaws of its own, or another socket, begins with them free.
    pub fn turn(&mut self, mode: MeterMode) {
        if mode != self.mode && !(shares_sockets(mode) && shares_sockets(self.mode)) {
            (self.red, self.black, self.lead) = (None, None, Lead::Red);
        }
        self.mode = mode;
    }
}

/// The multimeter's modes that read at the same two of its sockets; a current has its own.
fn shares_sockets(mode: MeterMode) -> bool {
    matches!(
        mode,
        MeterMode::AcVolts
            | MeterMode::LowAcVolts
            | MeterMode::DcVolts
            | MeterMode::Ohms
            | MeterMode::Continuity
            | MeterMode::Capacitance
            | MeterMode::Frequency
            | MeterMode::Diode
    )
}

/// The instrument as it is set.
pub fn meter(job: &Job, hold: &Hold, points: Shared<Vec<PointView>>) -> MeterView {
    let state = job.machine().state_words();
    let sheet = hold
        .is_complete()
        .then(|| {
            let (red, black) = (hold.red.as_deref(), hold.black.as_deref());
            sheet::range(&job.scenario().workshop, hold.mode, red, black, &state)
        })
        .flatten();
    MeterView {
        mode: hold.mode,
        red: hold.red.clone(),
        black: hold.black.clone(),
        lead: hold.lead,
        probing: false,
        points,
        sheet,
    }
}

/// Points the leads can go to, with what is in the way of each; conductors for a clamp.
pub fn points(job: &Job, clamp: bool) -> Vec<PointView> {
    if clamp {
        return conductors(job);
    }
    job.scenario()
        .workshop
        .test_points
        .iter()
        .map(|point| PointView {
            id: point.node.clone(),
            name: worded(&point.name).into_owned(),
            blocked: way::in_the_way(&way::missing(job, &point.needs)),
        })
        .collect()
}

/// Conductors that jaws go round: the cord as it is, then what carries current between two places,
/// one of which can be reached.
fn conductors(job: &Job) -> Vec<PointView> {
    let workshop = &job.scenario().workshop;
    let wiring = &job.scenario().machine.wiring;
    let is_point = |node: NodeId| {
        let node = wiring.nodes.get(node.index());
        node.is_some_and(|node| workshop.test_point(&node.name).is_some())
    };
    let cord = PointView {
        id: WHOLE_CORD.to_owned(),
        name: say!("the whole cord").to_owned(),
        blocked: None,
    };
    let inside = wiring
        .elements
        .iter()
        .filter(|e| !e.is_lower_bound && !matches!(e.kind, ElementKind::Capacitor { .. }))
        .filter(|e| e.nodes.into_iter().any(is_point))
        .map(|element| PointView {
            id: element.name.clone(),
            name: worded(&element.what).into_owned(),
            blocked: blocked(job, &element.name),
        });
    std::iter::once(cord).chain(inside).collect()
}

/// Why the jaws cannot go round it now, plain words.
fn blocked(job: &Job, element: &str) -> Option<String> {
    let refusal = job.refusal(&Action::Meter {
        mode: MeterMode::Clamp,
        red: Some(element.to_owned()),
        black: None,
    })?;
    match refusal {
        Refusal::InTheWay { steps } => {
            way::in_the_way(&way::steps(&job.scenario().workshop, &steps))
        }
        Refusal::NotNow { why } => Some(worded(&why).into_owned()),
        _ => None,
    }
}

/// The face: what the instrument shows, or dashes while it is connected to nothing.
pub fn face(reading: Option<&Reading>, mode: MeterMode, settling: bool) -> FaceView {
    let (value, unit) = match reading {
        Some(reading) => {
            let display = shown::reading(&reading.display);
            let (value, unit) = display.split_once(' ').unwrap_or((&display, ""));
            (value.to_owned(), unit.to_owned())
        }
        None => ("– – –".to_owned(), String::new()),
    };
    FaceView {
        overload: value == "OL",
        value,
        unit,
        flag: flag(mode),
        settling: settling && reading.is_some(),
        warning: reading.and_then(|r| r.warning.as_deref().map(kept::warning)),
    }
}

fn flag(mode: MeterMode) -> &'static str {
    match mode {
        MeterMode::AcVolts | MeterMode::Amps | MeterMode::Clamp | MeterMode::Leakage => "AC",
        MeterMode::TouchCurrent => "2 kΩ",
        MeterMode::LowAcVolts => "AC LoZ",
        MeterMode::DcVolts => "DC",
        MeterMode::Continuity => say!("tone"),
        MeterMode::Insulation => "500 V",
        MeterMode::EarthBond => "0.2 A",
        MeterMode::Diode => say!("diode"),
        MeterMode::Ohms | MeterMode::Capacitance | MeterMode::Frequency => "",
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_other_lead_is_in_hand_after_one_is_placed() {
        let mut hold = Hold::default();
        hold.put(Lead::Red, Some("L".into()));
        assert_eq!(hold.lead, Lead::Black);
        assert!(!hold.is_complete());
        hold.put(Lead::Black, Some("N".into()));
        assert_eq!(hold.lead, Lead::Red);
        assert!(hold.is_complete());
        hold.put(Lead::Black, None);
        assert_eq!(hold.lead, Lead::Black);
    }

    #[test]
    fn a_clamp_needs_one_conductor_and_forgets_the_leads() {
        let mut hold = Hold::default();
        hold.put(Lead::Red, Some("L".into()));
        hold.turn(MeterMode::Clamp);
        assert_eq!(hold.red, None);
        hold.put(Lead::Red, Some("wire".into()));
        assert_eq!(hold.lead, Lead::Red);
        assert!(hold.is_complete());
    }

    #[test]
    fn the_leads_stay_when_the_dial_is_turned_and_come_off_for_another_instrument() {
        let mut hold = Hold::default();
        hold.put(Lead::Red, Some("L".into()));
        hold.put(Lead::Black, Some("N".into()));
        for mode in [MeterMode::Ohms, MeterMode::Capacitance, MeterMode::AcVolts] {
            hold.turn(mode);
            assert!(hold.is_complete(), "{mode:?}");
        }
        for mode in [MeterMode::Amps, MeterMode::Insulation] {
            let mut other = hold.clone();
            other.turn(mode);
            assert_eq!((other.red, other.black), (None, None), "{mode:?}");
        }
    }

    #[test]
    fn the_face_shows_dashes_until_something_is_connected() {
        assert_eq!(face(None, MeterMode::Ohms, true).value, "– – –");
        let reading = Reading {
            mode: MeterMode::Ohms,
            red: None,
            black: None,
            value: Some(21.0),
            display: "21.0 Ω".into(),
            warning: None,
        };
        let face = face(Some(&reading), MeterMode::Ohms, false);
        assert_eq!((face.value.as_str(), face.unit.as_str()), ("21.0", "Ω"));
    }
}

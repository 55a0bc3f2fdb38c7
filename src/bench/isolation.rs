//! The state of being made safe: what was done, and, separately, what was proved.
//!
//! Order by EN 50110-1 (from memory): disconnect, secure, prove dead; for a plug-connected
//! appliance the plug is kept in sight and charges are led off. Dead is proved only by a tester
//! that showed a known live source before and shows it again after.

use crate::bench::notebook::Tick;

/// What a technician has done and what they have shown.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Isolation {
    /// On/off switch in the off position.
    pub switched_off: bool,
    /// Plug out of the socket.
    pub unplugged: bool,
    /// The socket's circuit switched off at the house's board.
    pub house_off: bool,
    /// Plug kept in sight or locked; the board's switch locked and labelled.
    pub secured: bool,
    /// Tap shut.
    pub tap_shut: bool,
    /// No pressure left in the supply hose.
    pub hose_bled: bool,
    /// Plug pins led off, and when.
    pub pins_discharged: Option<Tick>,
    /// Run capacitor led off, and when.
    pub capacitor_discharged: Option<Tick>,
    /// When the run capacitor's voltage was last measured.
    pub capacitor_measured: Option<Tick>,
    /// Whether the fed socket was read live line to neutral, line to earth, neutral to earth.
    pub socket_live: [Option<bool>; 3],
    /// The socket's earth was measured and is missing.
    pub earth_seen_missing: bool,
    /// When the tester last showed a known live source.
    pub tester_proved: Option<Tick>,
    /// Points shown dead since the plug came out, by a tester proved before; not yet proved again.
    pub shown_dead: Vec<(String, String)>,
    /// Points shown dead by a tester that was not proved before.
    pub shown_unproved: Vec<(String, String)>,
    /// Points where a contactless tester stayed dark.
    pub pen_dark: Vec<String>,
    /// Ohms were measured across the plug pins.
    pub ohms_at_pins: bool,
    /// Points proved dead: tester proved before and after.
    pub proved_dead: Vec<(String, String)>,
}

impl Isolation {
    /// The mains comes back: nothing that was shown or proved holds any longer.
    pub fn energise(&mut self) {
        self.unplugged = false;
        self.house_off = false;
        self.secured = false;
        self.pins_discharged = None;
        self.capacitor_discharged = None;
        self.capacitor_measured = None;
        self.forget_shown();
    }

    /// What was shown or proved dead holds no longer.
    pub fn forget_shown(&mut self) {
        self.shown_dead.clear();
        self.shown_unproved.clear();
        self.pen_dark.clear();
        self.ohms_at_pins = false;
        self.proved_dead.clear();
    }

    /// The tester shows a live source: it is proved now, and what it showed dead before is proved.
    pub fn tester_shows_live(&mut self, tick: Tick) {
        self.tester_proved = Some(tick);
        self.proved_dead.append(&mut self.shown_dead);
    }

    /// The tester shows nothing between two points while the plug is out.
    pub fn tester_shows_dead(&mut self, red: &str, black: &str) {
        let pair = (red.to_owned(), black.to_owned());
        if !self.is_isolated() {
            return;
        }
        if self.tester_proved.is_none() {
            self.shown_unproved.push(pair);
        } else if !self.shown_dead.contains(&pair) && !self.proved_dead.contains(&pair) {
            self.shown_unproved.retain(|shown| *shown != pair);
            self.shown_dead.push(pair);
        }
    }

    /// Cut off from the supply, by the plug or at the board.
    pub fn is_isolated(&self) -> bool {
        self.unplugged || self.house_off
    }

    /// Some points of the machine were proved dead.
    pub fn is_proved_dead(&self) -> bool {
        !self.proved_dead.is_empty()
    }
}

//! What hands have done to the machine: plug, switch, lid, tap, hose, keys.

use crate::control::io::Keys;
use crate::machine::StateHasher;

/// Positions that hands set. All switches start as on a machine at rest in a home.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Hands {
    /// Mains plug in its socket.
    pub plugged: bool,
    /// The socket's circuit switched off at the house's board.
    pub house_off: bool,
    /// Mechanical on/off switch pressed in.
    pub switched_on: bool,
    /// Lid open.
    pub lid_open: bool,
    /// A wire bridge across the lid switch.
    pub lid_bridged: bool,
    /// Tap open.
    pub tap_open: bool,
    /// Supply hose on the machine.
    pub hose_attached: bool,
    /// Keys held during the next tick.
    pub keys: Keys,
    /// Position of the level knob of a machine with a pressure switch.
    pub level_position: u32,
    /// Turns of the timer's knob waiting to be done, in steps.
    pub knob_steps: u32,
}

impl Hands {
    /// A machine in a home: plugged in, off, lid shut, tap open.
    pub const AT_HOME: Hands = Hands {
        plugged: true,
        house_off: false,
        switched_on: false,
        lid_open: false,
        lid_bridged: false,
        tap_open: true,
        hose_attached: true,
        keys: Keys::NONE,
        level_position: 0,
        knob_steps: 0,
    };

    pub(super) fn hash_into(&self, hasher: &mut StateHasher) {
        let flags = [
            self.house_off,
            self.lid_bridged,
            self.plugged,
            self.switched_on,
            self.lid_open,
            self.tap_open,
            self.hose_attached,
        ];
        let bits = flags
            .iter()
            .fold(0_u64, |bits, flag| bits << 1 | u64::from(*flag));
        hasher.word(bits);
        hasher.word(u64::from(self.keys.bits()));
        hasher.word(u64::from(self.level_position));
        hasher.word(u64::from(self.knob_steps));
    }
}

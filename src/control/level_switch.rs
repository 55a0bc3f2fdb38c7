//! Pressure switch of a machine without electronics: one changeover with hysteresis.
//!
//! ```text
//! full contact closes at p >= set, opens again at p <= reset
//! ```
//! It keeps its side between the two pressures. Pressures are gauge, in the air hose.

/// One section of a pressure switch.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LevelSwitch {
    /// Changes over to full at or above this, Pa.
    pub set_pa: f64,
    /// Changes back to empty at or below this, Pa.
    pub reset_pa: f64,
}

impl LevelSwitch {
    /// Low level. Source: design choice.
    pub const LOW: LevelSwitch = LevelSwitch {
        set_pa: 1350.0,
        reset_pa: 400.0,
    };
    /// Medium level. Source: design choice.
    pub const MEDIUM: LevelSwitch = LevelSwitch {
        set_pa: 1990.0,
        reset_pa: 400.0,
    };
    /// High level. Source: design choice.
    pub const HIGH: LevelSwitch = LevelSwitch {
        set_pa: 2625.0,
        reset_pa: 400.0,
    };

    /// Whether the full contact is closed at this pressure, given that it was (or was not).
    pub fn is_full(&self, was_full: bool, pressure_pa: f64) -> bool {
        if was_full {
            pressure_pa > self.reset_pa
        } else {
            pressure_pa >= self.set_pa
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn between_set_and_reset_the_switch_keeps_its_side() {
        let switch = LevelSwitch::HIGH;
        assert!(!switch.is_full(false, 2600.0));
        assert!(switch.is_full(false, 2625.0));
        assert!(switch.is_full(true, 2600.0));
        assert!(switch.is_full(true, 401.0));
        assert!(!switch.is_full(true, 400.0));
    }
}

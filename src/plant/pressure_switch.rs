//! Mechanical level switch of the timer machine: three set pressures, one reset.
//!
//! ```text
//! contact i closes at p >= set_i and opens again at p <= reset
//! ```
//! Source: set points design choice; tolerance ±100 Pa from memory. Limits: snaps at once.

use crate::plant::param_table::component_params;
use crate::text;

component_params! {
    /// The switch. The dial that chooses a level is electrical.
    LevelSwitchParams {
        /// Low level. Design choice.
        low_pa = 1350.0, 0.0 => 20_000.0, text!("the low level's set pressure");
        /// Medium level. Design choice.
        medium_pa = 1990.0, 0.0 => 20_000.0, text!("the medium level's set pressure");
        /// High level. Design choice.
        high_pa = 2625.0, 0.0 => 20_000.0, text!("the high level's set pressure");
        /// Empty again. Design choice.
        reset_pa = 400.0, -1000.0 => 20_000.0, text!("the level switch's reset pressure");
        /// 1 when the contact stays in the full position whatever the water does.
        stuck_full_ratio = 0.0, 0.0 => 1.0, text!("the level switch stuck on full (0 or 1)");
        /// 1 when the contact never leaves the empty position.
        stuck_empty_ratio = 0.0, 0.0 => 1.0, text!("the level switch stuck on empty (0 or 1)");
    }
}

/// Positions of the three contacts: low, medium, high; true is full.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct LevelSwitchState {
    /// Low, medium, high.
    pub is_full: [bool; 3],
}

/// Moves the contacts to where the pressure puts them.
pub(crate) fn step(p: &LevelSwitchParams, s: &mut LevelSwitchState, gauge_pa: f64) {
    let sets_pa = [p.low_pa, p.medium_pa, p.high_pa];
    for (is_full, set_pa) in s.is_full.iter_mut().zip(sets_pa) {
        if gauge_pa >= set_pa {
            *is_full = true;
        } else if gauge_pa <= p.reset_pa {
            *is_full = false;
        }
        if p.stuck_full_ratio > 0.5 {
            *is_full = true;
        } else if p.stuck_empty_ratio > 0.5 {
            *is_full = false;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_contact_holds_between_set_and_reset() {
        let p = LevelSwitchParams::typical();
        let mut s = LevelSwitchState {
            is_full: [false; 3],
        };
        step(&p, &mut s, 1400.0);
        assert_eq!(s.is_full, [true, false, false]);
        step(&p, &mut s, 700.0);
        assert_eq!(s.is_full, [true, false, false], "still above the reset");
        step(&p, &mut s, 399.0);
        assert_eq!(s.is_full, [false; 3]);
    }

    #[test]
    fn a_stuck_contact_ignores_the_water() {
        let mut p = LevelSwitchParams::typical();
        p.stuck_full_ratio = 1.0;
        let mut s = LevelSwitchState {
            is_full: [false; 3],
        };
        step(&p, &mut s, 0.0);
        assert_eq!(s.is_full, [true; 3]);
    }
}

//! Faults as changes of parameters, with a severity between nothing and the whole fault.
//!
//! ```text
//! linear     v = v0 + s (v1 − v0)
//! geometric  v = v0 (v1/v0)^s      where both are positive and a factor of 10 or more apart
//! ```
//! `v0` is the machine's own value, `v1` the fault's: a set value, or the own value scaled.
//! Geometric, because a lag of 0.15 s and one of 1e9 s have no useful middle on a line.
//! Severity 0 changes nothing, 1 gives the fault's value exactly.

use crate::plant::params::{ParamError, PlantParams};

/// What a fault makes of a parameter at full severity.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum ChangeTo {
    /// This value, in the parameter's SI unit.
    Set(f64),
    /// The machine's own value times this.
    Scale(f64),
}

/// One changed parameter of a fault.
#[derive(Debug, Clone, PartialEq)]
pub struct PlantChange {
    /// Dotted name, such as `belt.tension_n`.
    pub param: String,
    /// Value at severity 1.
    pub to: ChangeTo,
}

/// Ratio from which severity works on a logarithmic scale.
const GEOMETRIC_RATIO: f64 = 10.0;

/// Value of a parameter between sound (0) and the whole fault (1).
pub fn interpolated(sound: f64, faulty: f64, severity_ratio: f64) -> f64 {
    if severity_ratio <= 0.0 {
        return sound;
    }
    if severity_ratio >= 1.0 {
        return faulty;
    }
    let is_wide = sound > 0.0
        && faulty > 0.0
        && (faulty >= GEOMETRIC_RATIO * sound || sound >= GEOMETRIC_RATIO * faulty);
    if is_wide {
        sound * libm::pow(faulty / sound, severity_ratio)
    } else {
        sound + severity_ratio * (faulty - sound)
    }
}

/// Applies a fault's changes at a severity; on an error nothing is changed.
pub fn apply(
    params: &mut PlantParams,
    changes: &[PlantChange],
    severity_ratio: f64,
) -> Result<(), ParamError> {
    let mut changed = params.clone();
    for change in changes {
        let sound = params.get(&change.param)?;
        let faulty = match change.to {
            ChangeTo::Set(value) => value,
            ChangeTo::Scale(factor) => sound * factor,
        };
        changed.set(&change.param, interpolated(sound, faulty, severity_ratio))?;
    }
    *params = changed;
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn change(param: &str, to: ChangeTo) -> PlantChange {
        PlantChange {
            param: param.to_owned(),
            to,
        }
    }

    #[test]
    fn no_severity_is_sound_and_full_severity_is_the_fault() {
        let mut p = PlantParams::typical();
        let changes = [
            change("belt.tension_n", ChangeTo::Set(12.0)),
            change("trap.lag_s", ChangeTo::Scale(200.0)),
        ];
        apply(&mut p, &changes, 0.0).expect("known names");
        assert_eq!(p, PlantParams::typical());
        apply(&mut p, &changes, 1.0).expect("known names");
        assert!((p.belt.tension_n - 12.0).abs() < 1e-12 && (p.trap.lag_s - 30.0).abs() < 1e-12);
    }

    #[test]
    fn decades_are_crossed_on_a_logarithmic_scale() {
        assert!((interpolated(0.1, 1000.0, 0.5) - 10.0).abs() < 1e-9);
        assert!((interpolated(0.0, 1.0, 0.25) - 0.25).abs() < 1e-15);
        assert!((interpolated(65.0, 25.0, 0.5) - 45.0).abs() < 1e-12);
    }

    #[test]
    fn one_bad_change_leaves_the_machine_alone() {
        let mut p = PlantParams::typical();
        let changes = [
            change("belt.tension_n", ChangeTo::Set(12.0)),
            change("belt.tensions", ChangeTo::Set(1.0)),
        ];
        assert!(apply(&mut p, &changes, 1.0).is_err());
        assert_eq!(p, PlantParams::typical());
    }
}

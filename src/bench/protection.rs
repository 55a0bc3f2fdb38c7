//! Protective devices of a house and a machine: what opens, and after what time.
//!
//! ```text
//! residual current, general:   300 ms at 1 I_dn, 150 ms at 2 I_dn, 40 ms at 5 I_dn
//! residual current, 6 mA:      t = (20 mA / I)^1.43 s
//! fuse, time lag:              points of the sheet, then I² t = constant
//! breaker B:                   at once from 5 I_n; below by its bimetal
//! ```
//! Published: IEC 61008-1, UL 943, IEC 60127-2, IEC 60898-1, all from memory; the longest
//! times they allow, except the fuse (middle of its band). Events shorter than a tick are
//! closed forms, so the time is exact whatever the tick.

use crate::text;

/// Kind of residual current device.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ResidualKind {
    /// General type of 230 V practice.
    General,
    /// 6 mA class of 120 V practice.
    SixMilliampere,
}

/// A residual current device.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ResidualCurrentDevice {
    /// Its kind.
    pub kind: ResidualKind,
    /// Rated residual current I_dn, A.
    pub rated_a: f64,
    /// Current at which this very device trips, as a part of rated: between 0.5 and 1.
    pub trip_ratio: f64,
}

impl ResidualCurrentDevice {
    /// 30 mA, tripping at three quarters. Published limits 15 to 30 mA.
    pub const GENERAL_30_MA: ResidualCurrentDevice = ResidualCurrentDevice {
        kind: ResidualKind::General,
        rated_a: 0.030,
        trip_ratio: 0.75,
    };
    /// 6 mA class, tripping at 5 mA. Published limits 4 to 6 mA.
    pub const SIX_MA: ResidualCurrentDevice = ResidualCurrentDevice {
        kind: ResidualKind::SixMilliampere,
        rated_a: 0.006,
        trip_ratio: 5.0 / 6.0,
    };

    /// Time in s until it opens at a residual current; `None` = it stays closed.
    pub fn opens_after_s(&self, residual_a: f64) -> Option<f64> {
        if !residual_a.is_finite() || residual_a < self.rated_a * self.trip_ratio {
            return None;
        }
        Some(match self.kind {
            ResidualKind::General => {
                let points = [(1.0, 0.300), (2.0, 0.150), (5.0, 0.040)];
                between(&points, residual_a / self.rated_a)
            }
            // The formula falls without end; a contact needs about a mains cycle.
            ResidualKind::SixMilliampere => libm::pow(0.020 / residual_a, 1.43).max(0.025),
        })
    }
}

/// A circuit breaker of characteristic B.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Breaker {
    /// Rated current, A.
    pub rated_a: f64,
}

impl Breaker {
    /// Time in s until it opens; `None` = it stays closed.
    pub fn opens_after_s(&self, current_a: f64) -> Option<f64> {
        let ratio = current_a / self.rated_a;
        if !ratio.is_finite() || ratio < 1.13 {
            None
        } else if ratio >= 5.0 {
            Some(0.010)
        } else {
            // Bimetal: an hour at 1.45, a minute at 2.55, ten seconds near the magnet's reach.
            let points = [(1.13, 10_000.0), (1.45, 3600.0), (2.55, 60.0), (5.0, 10.0)];
            Some(between(&points, ratio))
        }
    }
}

/// A time-lag cartridge fuse of a machine.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fuse {
    /// Rated current, A.
    pub rated_a: f64,
}

impl Fuse {
    /// Time in s until it opens; `None` = it carries the current.
    pub fn opens_after_s(&self, current_a: f64) -> Option<f64> {
        let ratio = current_a / self.rated_a;
        if !ratio.is_finite() || ratio < 1.5 {
            return None;
        }
        let points = [
            (1.5, 3600.0),
            (2.1, 120.0),
            (2.75, 2.4),
            (4.0, 0.67),
            (10.0, 0.077),
        ];
        // Beyond the sheet no heat escapes: I² t stays what it was at the last point.
        let beyond = (10.0 / ratio.max(10.0)) * (10.0 / ratio.max(10.0));
        Some(between(&points, ratio) * beyond)
    }
}

/// Straight line in double-logarithmic scales, constant beyond the ends.
fn between(points: &[(f64, f64)], at: f64) -> f64 {
    let upper = points.iter().position(|point| at < point.0);
    match upper {
        Some(0) => points[0].1,
        Some(upper) => {
            let (from, to) = (points[upper - 1], points[upper]);
            let part = libm::log(at / from.0) / libm::log(to.0 / from.0);
            from.1 * libm::exp(part * libm::log(to.1 / from.1))
        }
        None => points[points.len() - 1].1,
    }
}

/// Which device opened.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Device {
    /// Residual current device of the house.
    Residual,
    /// Circuit breaker of the house.
    Breaker,
    /// Fuse of the machine.
    Fuse,
}

impl Device {
    /// Its plain name.
    pub const fn words(self) -> &'static str {
        match self {
            Device::Residual => text!("residual current device"),
            Device::Breaker => text!("circuit breaker"),
            Device::Fuse => text!("machine fuse"),
        }
    }
}

/// What opened, and when.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Opening {
    /// The device.
    pub device: Device,
    /// After the current began, s.
    pub at_s: f64,
}

/// Devices between the source and a fault; what is missing is `None`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Protection {
    /// Residual current device of the house.
    pub residual: Option<ResidualCurrentDevice>,
    /// Breaker of the house.
    pub breaker: Option<Breaker>,
    /// Fuse of the machine, when the current passes it.
    pub fuse: Option<Fuse>,
}

impl Protection {
    /// Nothing protects.
    pub const NONE: Protection = Protection {
        residual: None,
        breaker: None,
        fuse: None,
    };

    /// The first device to open at these currents in A (rms, magnitude).
    pub fn first_opening(&self, line_a: f64, residual_a: f64) -> Option<Opening> {
        let residual = self
            .residual
            .and_then(|device| device.opens_after_s(residual_a))
            .map(|at_s| (Device::Residual, at_s));
        let breaker = self
            .breaker
            .and_then(|device| device.opens_after_s(line_a))
            .map(|at_s| (Device::Breaker, at_s));
        let fuse = self
            .fuse
            .and_then(|device| device.opens_after_s(line_a))
            .map(|at_s| (Device::Fuse, at_s));
        [residual, fuse, breaker]
            .into_iter()
            .flatten()
            .map(|(device, at_s)| Opening { device, at_s })
            .reduce(|first, other| {
                if other.at_s < first.at_s {
                    other
                } else {
                    first
                }
            })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const GENERAL: ResidualCurrentDevice = ResidualCurrentDevice::GENERAL_30_MA;
    const SIX: ResidualCurrentDevice = ResidualCurrentDevice::SIX_MA;

    #[test]
    fn break_times_pass_through_the_standard_points() {
        for (current_a, time_s) in [(0.030, 0.3), (0.060, 0.15), (0.150, 0.04), (10.0, 0.04)] {
            let opens_s = GENERAL.opens_after_s(current_a).unwrap_or(f64::NAN);
            assert!((opens_s - time_s).abs() < 1e-12, "{current_a}");
        }
        assert_eq!(GENERAL.opens_after_s(0.014), None);
    }

    #[test]
    fn devices_decide_the_fault_list_as_computed() {
        // Residual currents and verdicts: safety sheet, section 4 (currents by ngspice);
        // 27.9 mA "may trip" and is left out.
        let rows = [
            (0.245e-3, false, false),
            (11.5e-3, false, true),
            (2.31e-3, false, false),
            (0.211e-3, false, false),
            (76.1e-3, true, true),
            (39.8e-3, true, true),
            (0.565e-3, false, false),
            (1.58e-3, false, false),
            (106.0, true, true),
            (0.11e-3, false, false),
        ];
        for (residual_a, general, six) in rows {
            assert_eq!(
                GENERAL.opens_after_s(residual_a).is_some(),
                general,
                "{residual_a}"
            );
            assert_eq!(SIX.opens_after_s(residual_a).is_some(), six, "{residual_a}");
        }
    }

    #[test]
    fn the_six_milliampere_class_follows_its_formula() {
        // (20 / 6)^1.43 = 5.59 s; (20 / 20)^1.43 = 1 s. Published: UL 943, from memory.
        let at_6 = SIX.opens_after_s(0.006).unwrap_or(f64::NAN);
        let at_20 = SIX.opens_after_s(0.020).unwrap_or(f64::NAN);
        assert!((at_6 - 5.594).abs() < 0.01, "{at_6}");
        assert!((at_20 - 1.0).abs() < 1e-12);
    }

    #[test]
    fn a_stalled_motor_does_not_open_the_machine_fuse() {
        // 2.85 A through 10 A.
        assert_eq!(Fuse { rated_a: 10.0 }.opens_after_s(2.85), None);
    }

    #[test]
    fn more_current_never_opens_later() {
        let fuse = Fuse { rated_a: 10.0 };
        let breaker = Breaker { rated_a: 16.0 };
        let mut before = [f64::INFINITY; 4];
        for step in 1..4000 {
            let current_a = f64::from(step) * 0.05;
            let now = [
                fuse.opens_after_s(current_a),
                breaker.opens_after_s(current_a),
                GENERAL.opens_after_s(current_a),
                SIX.opens_after_s(current_a),
            ];
            for (earlier, later) in before.iter_mut().zip(now) {
                let later = later.unwrap_or(f64::INFINITY);
                assert!(later <= *earlier + 1e-12);
                *earlier = later;
            }
        }
    }

    #[test]
    fn the_fastest_device_opens() {
        let house = Protection {
            residual: Some(GENERAL),
            breaker: Some(Breaker { rated_a: 16.0 }),
            fuse: Some(Fuse { rated_a: 10.0 }),
        };
        // 141 A winding lead to cabinet: magnet at 10 ms beats 40 ms and the fuse.
        let hard = house.first_opening(141.0, 141.0);
        assert_eq!(hard.map(|opening| opening.device), Some(Device::Breaker));
        let soft = house.first_opening(1.2, 0.076);
        assert_eq!(soft.map(|opening| opening.device), Some(Device::Residual));
        assert_eq!(house.first_opening(1.2, 0.0), None);
        assert_eq!(Protection::NONE.first_opening(500.0, 500.0), None);
    }
}

//! What a current through a person does, and what ends it.
//!
//! ```text
//! zone = borders b and c1 at (time, current), the current weighted by the path for the heart
//! time = first of: hand lets go, somebody helps, a device opens
//! ```
//! Published: IEC 60479-1 (zones, heart-current factors), from memory; the borders are
//! straight lines between remembered points in double-logarithmic scales. A teaching aid,
//! never a medical statement.

use crate::bench::body::Body;
use crate::bench::body::Path;
use crate::bench::protection::Opening;
use crate::bench::protection::Protection;
use crate::text;

/// Effect of an alternating current, 15 to 100 Hz.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Zone {
    /// Perhaps felt.
    Ac1,
    /// Felt, muscles may start, usually no harm.
    Ac2,
    /// Cramp, cannot let go, breathing hard; usually no lasting harm.
    Ac3,
    /// Fibrillation possible, burns.
    Ac4,
}

impl Zone {
    /// The zone's name in the standard.
    pub const fn name(self) -> &'static str {
        match self {
            Zone::Ac1 => "AC-1",
            Zone::Ac2 => "AC-2",
            Zone::Ac3 => "AC-3",
            Zone::Ac4 => "AC-4",
        }
    }

    /// What happens, in plain words.
    pub const fn words(self) -> &'static str {
        match self {
            Zone::Ac1 => text!("hardly felt"),
            Zone::Ac2 => text!("a start; muscles twitch, usually no harm"),
            Zone::Ac3 => text!("cramp: the hand cannot let go, breathing is hard"),
            Zone::Ac4 => text!("the heart may stop pumping; burns"),
        }
    }
}

/// Points (s, A) of the border between startle and cramp.
const LINE_B: [(f64, f64); 4] = [(0.01, 0.2), (0.02, 0.2), (2.0, 0.005), (10.0, 0.005)];
/// Points (s, A) of the border to possible fibrillation.
const LINE_C1: [(f64, f64); 5] = [
    (0.01, 0.5),
    (0.1, 0.4),
    (0.5, 0.1),
    (1.0, 0.05),
    (3.0, 0.04),
];

/// Current in A at a time on a border: straight in double-logarithmic scales.
fn border_a(points: &[(f64, f64)], time_s: f64) -> f64 {
    let (first, last) = (points[0], points[points.len() - 1]);
    let upper = points.iter().position(|point| time_s < point.0);
    match upper {
        Some(0) => first.1,
        Some(upper) => {
            let (from, to) = (points[upper - 1], points[upper]);
            let part = libm::log(time_s / from.0) / libm::log(to.0 / from.0);
            from.1 * libm::exp(part * libm::log(to.1 / from.1))
        }
        None => last.1,
    }
}

/// Zone of a current in A flowing for a time in s on a path.
pub fn zone(current_a: f64, time_s: f64, path: Path) -> Zone {
    // The cramp border concerns the hand, the fibrillation border the heart.
    if current_a * path.heart_ratio() > border_a(&LINE_C1, time_s) {
        Zone::Ac4
    } else if current_a > border_a(&LINE_B, time_s) {
        Zone::Ac3
    } else if current_a > 0.0005 {
        Zone::Ac2
    } else {
        Zone::Ac1
    }
}

/// Above this a hand cannot let go, A. Published: IEC 60479-1, from memory.
pub const LET_GO_A: f64 = 0.010;
/// A hand that can let go does so in this time, s. Design choice.
pub const WITHDRAWAL_S: f64 = 0.3;
/// A hand that cannot is freed by somebody or by falling after this time, s. Design choice.
pub const HELD_S: f64 = 10.0;

/// What a touch did.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Shock {
    /// Voltage across the body, V.
    pub touch_v: f64,
    /// Current through the body, A.
    pub current_a: f64,
    /// How long it flowed, s.
    pub time_s: f64,
    /// Its effect.
    pub zone: Zone,
    /// The device that ended it, if one did.
    pub opening: Option<Opening>,
}

/// A hand closes a circuit: how much, for how long, and what ends it.
///
/// `line_a` is the current the fault already drives through the line conductor; `to_earth`
/// tells whether the body's current returns through earth, where a residual current device
/// sees it (between line and neutral it does not).
pub fn shock(
    body: &Body,
    source: Source,
    protection: &Protection,
    line_a: f64,
    to_earth: bool,
) -> Shock {
    let touch_v = body.touch_voltage_v(source.open_v, source.resistance_ohm, source.reactance_ohm);
    let current_a = body.current_a(touch_v);
    let residual_a = if to_earth { current_a } else { 0.0 };
    let by_hand_s = if current_a > LET_GO_A {
        HELD_S
    } else {
        WITHDRAWAL_S
    };
    let opening = protection
        .first_opening(line_a + current_a, residual_a)
        .filter(|opening| opening.at_s < by_hand_s);
    let time_s = opening.map_or(by_hand_s, |opening| opening.at_s);
    Shock {
        touch_v,
        current_a,
        time_s,
        zone: zone(current_a, time_s, body.path),
        opening,
    }
}

/// What a hand touches, as seen from the hand.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Source {
    /// Voltage before the touch, V rms.
    pub open_v: f64,
    /// Resistance behind it, ohm.
    pub resistance_ohm: f64,
    /// Reactance behind it, ohm.
    pub reactance_ohm: f64,
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::bench::body::Percentile;
    use crate::bench::body::Skin;
    use crate::bench::protection::Device;
    use crate::bench::protection::ResidualCurrentDevice;

    const BARE: Body = Body {
        percentile: Percentile::P50,
        skin: Skin::Dry,
        path: Path::HandToHand,
        series_ohm: 0.0,
    };

    #[test]
    fn the_conventional_body_is_in_the_zones_of_the_sheet() {
        // 230 V / 2000 ohm = 115 mA: AC-4 if longer than about 0.5 s. Source: safety sheet.
        let path = Path::LeftHandToFoot;
        assert_eq!(zone(0.115, 0.6, path), Zone::Ac4);
        assert_eq!(zone(0.115, 0.3, path), Zone::Ac3);
        // 120 V / 2000 ohm = 60 mA: AC-4 border at about 0.9 s.
        assert_eq!(zone(0.060, 1.0, path), Zone::Ac4);
        assert_eq!(zone(0.060, 0.8, path), Zone::Ac3);
        // A 30 mA device: 40 ms at 150 mA, 150 ms at 60 mA stay below AC-4.
        assert!(zone(0.150, 0.040, path) <= Zone::Ac3);
        assert!(zone(0.060, 0.150, path) <= Zone::Ac3);
        // 0.18 mA through a missing earth is perhaps felt.
        assert_eq!(zone(0.000_18, 10.0, path), Zone::Ac1);
    }

    #[test]
    fn longer_and_stronger_is_never_milder() {
        for path in [
            Path::HandToHand,
            Path::LeftHandToFoot,
            Path::RightHandToFoot,
        ] {
            for step in 1..200 {
                let current_a = f64::from(step) * 0.003;
                let mut before = Zone::Ac1;
                for time_step in 1..100 {
                    let now = zone(current_a, f64::from(time_step) * 0.05, path);
                    assert!(now >= before && now <= zone(current_a + 0.003, 10.0, path));
                    before = now;
                }
            }
        }
    }

    #[test]
    fn a_residual_current_device_keeps_a_hard_fault_from_the_heart() {
        let live = Source {
            open_v: 229.0,
            resistance_ohm: 1.0,
            reactance_ohm: 0.0,
        };
        let bare_foot = Body {
            path: Path::LeftHandToFoot,
            ..BARE
        };
        let unprotected = shock(&bare_foot, live, &Protection::NONE, 0.0, true);
        assert_eq!(unprotected.zone, Zone::Ac4);
        assert!((unprotected.time_s - HELD_S).abs() < 1e-12);
        let with_device = Protection {
            residual: Some(ResidualCurrentDevice::GENERAL_30_MA),
            ..Protection::NONE
        };
        let protected = shock(&bare_foot, live, &with_device, 0.0, true);
        assert!(protected.zone <= Zone::Ac3, "{protected:?}");
        let device = protected.opening.map(|opening| opening.device);
        assert_eq!(device, Some(Device::Residual));
        // Between line and neutral the device is blind.
        let across = shock(&bare_foot, live, &with_device, 0.0, false);
        assert_eq!((across.zone, across.opening), (Zone::Ac4, None));
    }
}

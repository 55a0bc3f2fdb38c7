//! A person as part of a circuit: impedance and current.
//!
//! ```text
//! I = U_open / |Z_source + Z_body(U_touch)|      solved for U_touch, Z_body falls with U
//! ```
//! Published: IEC 60479-1, values for large contact areas at 50/60 Hz, from memory; the
//! current edition wins. Limits: sinusoidal current; a teaching aid, never a medical
//! statement. Effects and times are in `shock.rs`, devices in `protection.rs`.

/// Share of people whose impedance does not exceed the value.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Percentile {
    /// 5 % of people: the unlucky case.
    P5,
    /// 50 %: the usual person.
    P50,
    /// 95 %.
    P95,
}

/// Skin at the contact.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Skin {
    /// Dry.
    Dry,
    /// Wet with tap water.
    Wet,
}

/// Way of the current through the body.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Path {
    /// From hand to hand.
    HandToHand,
    /// From the left hand to one foot or both.
    LeftHandToFoot,
    /// From the right hand to one foot or both.
    RightHandToFoot,
}

impl Path {
    /// Impedance against hand to hand. From memory: 10 to 30 % lower; the middle is used.
    pub fn impedance_ratio(self) -> f64 {
        match self {
            Path::HandToHand => 1.0,
            Path::LeftHandToFoot | Path::RightHandToFoot => 0.8,
        }
    }

    /// Heart-current factor against left hand to feet. Published: IEC 60479-1, from memory.
    pub fn heart_ratio(self) -> f64 {
        match self {
            Path::HandToHand => 0.4,
            Path::LeftHandToFoot => 1.0,
            Path::RightHandToFoot => 0.8,
        }
    }
}

/// A person as part of a circuit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Body {
    /// Whose impedance.
    pub percentile: Percentile,
    /// Skin at the contact.
    pub skin: Skin,
    /// Way of the current.
    pub path: Path,
    /// Shoes, floor and gloves in series, ohm.
    pub series_ohm: f64,
}

/// Touch voltage V; hand-to-hand impedance ohm not exceeded by 5, 50, 95 % of people.
const IMPEDANCE: [(f64, [f64; 3]); 13] = [
    (25.0, [1750.0, 3250.0, 6100.0]),
    (50.0, [1375.0, 2500.0, 4600.0]),
    (75.0, [1125.0, 2000.0, 3600.0]),
    (100.0, [990.0, 1725.0, 3125.0]),
    (125.0, [900.0, 1550.0, 2675.0]),
    (150.0, [850.0, 1400.0, 2350.0]),
    (175.0, [825.0, 1325.0, 2175.0]),
    (200.0, [800.0, 1275.0, 2050.0]),
    (225.0, [775.0, 1225.0, 1900.0]),
    (400.0, [700.0, 950.0, 1275.0]),
    (500.0, [625.0, 850.0, 1150.0]),
    (700.0, [575.0, 775.0, 1050.0]),
    (1000.0, [575.0, 775.0, 1050.0]),
];

/// Wet skin behaves at low voltage like dry skin at this one, V. From memory, less sure.
const WET_AS_V: f64 = 175.0;

impl Body {
    /// An ordinary dry person in shoes on a dry floor, touching with the right hand.
    /// Shoes and floor: design choice.
    pub const ORDINARY: Body = Body {
        percentile: Percentile::P50,
        skin: Skin::Dry,
        path: Path::RightHandToFoot,
        series_ohm: 1000.0,
    };

    /// Impedance at a touch voltage (magnitude, V), shoes and floor included, ohm.
    pub fn impedance_ohm(&self, touch_v: f64) -> f64 {
        let column = match self.percentile {
            Percentile::P5 => 0,
            Percentile::P50 => 1,
            Percentile::P95 => 2,
        };
        let at_v = match self.skin {
            Skin::Dry => touch_v,
            Skin::Wet => touch_v.max(WET_AS_V),
        };
        let own_ohm = interpolate(at_v, |row| IMPEDANCE[row].1[column]);
        own_ohm * self.path.impedance_ratio() + self.series_ohm
    }

    /// Current in A through the body at a fixed touch voltage (magnitude, V). Zero volts,
    /// a negative or a missing number give no current.
    pub fn current_a(&self, touch_v: f64) -> f64 {
        if touch_v > 0.0 {
            touch_v / self.impedance_ohm(touch_v)
        } else {
            0.0
        }
    }

    /// Touch voltage V when the body closes a source of open-circuit voltage `open_v`
    /// behind an impedance (resistance and reactance, ohm).
    pub fn touch_voltage_v(&self, open_v: f64, source_ohm: f64, source_reactance_ohm: f64) -> f64 {
        let valid = open_v > 0.0 && source_ohm.is_finite() && source_reactance_ohm.is_finite();
        if !valid {
            return 0.0;
        }
        let divided_v = |touch_v: f64| {
            let body_ohm = self.impedance_ohm(touch_v);
            open_v * body_ohm / libm::hypot(source_ohm + body_ohm, source_reactance_ohm)
        };
        // More volts, less body, fewer volts: the difference falls, so halving finds it.
        let (mut low_v, mut high_v) = (0.0, open_v);
        for _ in 0..60 {
            let middle_v = 0.5 * (low_v + high_v);
            if divided_v(middle_v) > middle_v {
                low_v = middle_v;
            } else {
                high_v = middle_v;
            }
        }
        0.5 * (low_v + high_v)
    }
}

/// Straight line between the rows of the table, constant beyond its ends.
fn interpolate(at_v: f64, value: impl Fn(usize) -> f64) -> f64 {
    let above = IMPEDANCE.iter().position(|row| at_v < row.0);
    match above {
        Some(0) => value(0),
        Some(upper) => {
            let (from_v, to_v) = (IMPEDANCE[upper - 1].0, IMPEDANCE[upper].0);
            let part = (at_v - from_v) / (to_v - from_v);
            value(upper - 1) + part * (value(upper) - value(upper - 1))
        }
        None => value(IMPEDANCE.len() - 1),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const BARE: Body = Body {
        percentile: Percentile::P50,
        skin: Skin::Dry,
        path: Path::HandToHand,
        series_ohm: 0.0,
    };

    #[test]
    fn the_impedance_passes_through_the_table() {
        for (percentile, column) in [
            (Percentile::P5, 0),
            (Percentile::P50, 1),
            (Percentile::P95, 2),
        ] {
            let body = Body { percentile, ..BARE };
            for (touch_v, row) in IMPEDANCE {
                assert!((body.impedance_ohm(touch_v) - row[column]).abs() < 1e-9);
            }
        }
        // Half way between 225 V (1225) and 400 V (950).
        assert!((BARE.impedance_ohm(312.5) - 1087.5).abs() < 1e-9);
    }

    #[test]
    fn half_of_people_at_225_volts_carry_184_milliamperes() {
        // Source: safety sheet, section 5.
        assert!((BARE.current_a(225.0) - 0.184).abs() < 0.0005);
    }

    #[test]
    fn a_weak_source_sags_under_the_hand() {
        // Machine with the earth conductor missing: about 4 nF of filter capacitance, 77 V
        // on a 10 Mohm meter, 0.18 mA into 2 kohm. Source: safety sheet, section 3.
        let reactance_ohm = -115.0 / 0.000_18;
        let body = Body {
            series_ohm: 0.0,
            ..Body::ORDINARY
        };
        let touch_v = body.touch_voltage_v(115.0, 0.0, reactance_ohm);
        let current_a = body.current_a(touch_v);
        assert!((current_a - 0.000_18).abs() < 1e-6, "{current_a}");
        assert!(touch_v < 1.0);
    }

    #[test]
    fn the_touch_voltage_closes_the_circuit() {
        let touch_v = BARE.touch_voltage_v(230.0, 500.0, 300.0);
        let body_ohm = BARE.impedance_ohm(touch_v);
        let expected_v = 230.0 * body_ohm / libm::hypot(500.0 + body_ohm, 300.0);
        assert!((touch_v - expected_v).abs() < 1e-9);
        assert!(BARE.touch_voltage_v(f64::NAN, 0.0, 0.0).abs() < 1e-12);
    }

    #[test]
    fn wet_skin_carries_more_at_low_voltage() {
        let wet = Body {
            skin: Skin::Wet,
            ..BARE
        };
        assert!(wet.current_a(50.0) > 1.8 * BARE.current_a(50.0));
        assert!((wet.current_a(230.0) - BARE.current_a(230.0)).abs() < 1e-12);
    }
}

//! The scales of the instruments that need no circuit: what is known of each, one a constant, with
//! unit, resolution, scatter, time and places. Figures: from memory of ordinary workshop tools.

use crate::text;
use crate::units::CELSIUS_ZERO_K;

/// What an instrument measures, by its name in files.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Quantity {
    /// Flow of water, m³/s.
    Flow,
    /// Time, s.
    Time,
    /// Pressure over air, Pa.
    Pressure,
    /// Speed of turning, rad/s.
    Speed,
    /// Slope, rad.
    Slope,
    /// Length, m.
    Length,
    /// Force, N.
    Force,
    /// Temperature, K.
    Temperature,
}

impl Quantity {
    /// All of them.
    pub const ALL: [Self; 8] = [
        Self::Flow,
        Self::Time,
        Self::Pressure,
        Self::Speed,
        Self::Slope,
        Self::Length,
        Self::Force,
        Self::Temperature,
    ];

    /// Name in files, such as the data sheet's.
    pub fn id(self) -> &'static str {
        match self {
            Self::Flow => "flow",
            Self::Time => "time",
            Self::Pressure => "pressure",
            Self::Speed => "speed",
            Self::Slope => "slope",
            Self::Length => "length",
            Self::Force => "force",
            Self::Temperature => "temperature",
        }
    }

    /// SI unit.
    pub fn unit(self) -> &'static str {
        match self {
            Self::Flow => "m3/s",
            Self::Time => "s",
            Self::Pressure => "Pa",
            Self::Speed => "rad/s",
            Self::Slope => "rad",
            Self::Length => "m",
            Self::Force => "N",
            Self::Temperature => "K",
        }
    }
}

/// What is known of an instrument.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct About {
    /// Name in logs.
    pub id: &'static str,
    /// Name on screens.
    pub name: &'static str,
    /// What it measures.
    pub quantity: Quantity,
    /// Unit on its scale.
    pub unit: &'static str,
    /// One unit of its scale in SI.
    pub unit_si: f64,
    /// SI value at the scale's zero.
    pub zero_si: f64,
    /// Smallest step of the scale, in its unit.
    pub resolution: f64,
    /// Standard deviation as a share of the reading.
    pub scatter_ratio: f64,
    /// Least standard deviation, in the scale's unit.
    pub scatter: f64,
    /// Largest reading, in the scale's unit.
    pub limit: f64,
    /// End of the drawn scale, in its unit.
    pub full: f64,
    /// Time to put it there and read it, s. Common practice.
    pub seconds: f64,
    /// More time when it has to be fitted first, s.
    pub fitting_s: f64,
    /// Names of the places it goes to.
    pub places: &'static [&'static str],
    /// What to mind.
    pub caution: &'static str,
}

/// Litres a minute in m³/s.
const L_PER_MIN: f64 = 1.0 / 60_000.0;
/// A millimetre of water in Pa: 998.2 kg/m³ times standard gravity.
pub(super) const MM_WATER_PA: f64 = 9.788_998;
/// Revolutions a minute in rad/s.
const RPM: f64 = core::f64::consts::PI / 30.0;

/// A measuring jug and a watch.
pub(super) const JUG: About = About {
    id: "jug_and_watch",
    name: text!("jug and watch"),
    quantity: Quantity::Flow,
    unit: "L/min",
    unit_si: L_PER_MIN,
    zero_si: 0.0,
    resolution: 0.1,
    scatter_ratio: 0.03,
    scatter: 0.05,
    limit: 60.0,
    full: 20.0,
    seconds: 10.0,
    fitting_s: 0.0,
    places: &["tub", "supply_hose", "drain_hose"],
    caution: text!("a bucket under it; hot water scalds"),
};

/// A watch.
pub(super) const WATCH: About = About {
    id: "watch",
    name: text!("watch"),
    quantity: Quantity::Time,
    unit: "s",
    unit_si: 1.0,
    zero_si: 0.0,
    resolution: 0.1,
    scatter_ratio: 0.0,
    scatter: 0.15,
    limit: 3600.0,
    full: 120.0,
    seconds: 1.0,
    fitting_s: 0.0,
    places: &["basket", "tub", "drain_hose", "drain_motor"],
    caution: "",
};

/// A pressure gauge on its tee.
pub(super) const PRESSURE: About = About {
    id: "pressure_gauge",
    name: text!("pressure gauge"),
    quantity: Quantity::Pressure,
    unit: "kPa",
    unit_si: 1e3,
    zero_si: 0.0,
    resolution: 5.0,
    scatter_ratio: 0.01,
    scatter: 2.0,
    limit: 1000.0,
    full: 1000.0,
    seconds: 10.0,
    fitting_s: 180.0,
    places: &["supply_hose"],
    caution: text!("tap shut and hose bled before the tee goes in"),
};

/// A U-tube on its tee.
pub(super) const U_TUBE: About = About {
    id: "u_tube",
    name: text!("U-tube"),
    quantity: Quantity::Pressure,
    unit: "mm water",
    unit_si: MM_WATER_PA,
    zero_si: 0.0,
    resolution: 1.0,
    scatter_ratio: 0.0,
    scatter: 0.5,
    limit: 600.0,
    full: 400.0,
    seconds: 10.0,
    fitting_s: 90.0,
    places: &["air_hose"],
    caution: text!("never blow hard into the sensor"),
};

/// An optical tachometer.
pub(super) const TACHOMETER: About = About {
    id: "tachometer",
    name: text!("tachometer"),
    quantity: Quantity::Speed,
    unit: "r/min",
    unit_si: RPM,
    zero_si: 0.0,
    resolution: 1.0,
    scatter_ratio: 0.002,
    scatter: 0.5,
    limit: 20_000.0,
    full: 1500.0,
    seconds: 10.0,
    fitting_s: 0.0,
    places: &["pulsator", "basket", "motor", "motor_pulley"],
    caution: text!("by its beam from outside: no hand near what turns"),
};

/// A spirit level.
pub(super) const LEVEL: About = About {
    id: "spirit_level",
    name: text!("spirit level"),
    quantity: Quantity::Slope,
    unit: "mm/m",
    unit_si: 1e-3,
    zero_si: 0.0,
    resolution: 0.5,
    scatter_ratio: 0.0,
    scatter: 0.3,
    limit: 60.0,
    full: 20.0,
    seconds: 30.0,
    fitting_s: 0.0,
    places: &["floor", "cabinet"],
    caution: "",
};

/// A spring balance and a rule.
pub(super) const BALANCE: About = About {
    id: "spring_balance",
    name: text!("spring balance and rule"),
    quantity: Quantity::Length,
    unit: "mm",
    unit_si: 1e-3,
    zero_si: 0.0,
    resolution: 0.5,
    scatter_ratio: 0.03,
    scatter: 0.3,
    limit: 40.0,
    full: 20.0,
    seconds: 60.0,
    fitting_s: 0.0,
    places: &["belt"],
    caution: text!("keep fingers out of the pulleys"),
};

/// A belt gauge.
pub(super) const BELT: About = About {
    id: "belt_gauge",
    name: text!("belt gauge"),
    quantity: Quantity::Force,
    unit: "N",
    unit_si: 1.0,
    zero_si: 0.0,
    resolution: 1.0,
    scatter_ratio: 0.03,
    scatter: 1.0,
    limit: 500.0,
    full: 150.0,
    seconds: 45.0,
    fitting_s: 0.0,
    places: &["belt"],
    caution: text!("keep fingers out of the pulleys"),
};

/// A contact thermometer.
pub(super) const THERMOMETER: About = About {
    id: "thermometer",
    name: text!("contact thermometer"),
    quantity: Quantity::Temperature,
    unit: "°C",
    unit_si: 1.0,
    zero_si: CELSIUS_ZERO_K,
    resolution: 0.5,
    scatter_ratio: 0.0,
    scatter: 0.5,
    limit: 300.0,
    full: 150.0,
    seconds: 30.0,
    fitting_s: 0.0,
    places: &["motor", "tub", "cabinet"],
    caution: text!("the motor stays hot long after it has stopped"),
};

/// A rule.
pub(super) const RULE: About = About {
    id: "rule",
    name: text!("rule"),
    quantity: Quantity::Length,
    unit: "mm",
    unit_si: 1e-3,
    zero_si: 0.0,
    resolution: 0.5,
    scatter_ratio: 0.0,
    scatter: 0.3,
    limit: 2000.0,
    full: 50.0,
    seconds: 10.0,
    fitting_s: 0.0,
    places: &[
        "drain_motor",
        "drain_hose",
        "balance_switch",
        "clutch_lever",
    ],
    caution: "",
};

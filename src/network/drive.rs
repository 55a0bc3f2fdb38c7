//! How elements conduct: at DC, and at one complex frequency.
//!
//! ```text
//! DC         resistor 1/R   capacitor nothing   inductor a plain link
//! frequency  resistor 1/R   capacitor s C       inductor 1/(s L)        s = j 2 pi f when steady
//! ```
//! A general `s` serves discharge curves, which are inverted from the network's answer at a
//! few complex frequencies.

use crate::network::complex::Complex;
use crate::network::netlist::ElementKind;
use crate::network::number::Number;

/// A way of driving the network: it turns values into admittances.
pub trait Drive: Copy {
    /// The number the analysis works in.
    type N: Number;
    /// True if inductors are plain links and capacitors are absent.
    const IS_DIRECT: bool;
    /// Admittance of a conducting element in siemens, its contact closed or open.
    fn admittance_siemens(&self, kind: &ElementKind, closed: bool) -> Self::N;
    /// Voltage of a source, V.
    fn source_v(&self, ac_v: f64, dc_v: f64) -> Self::N;
    /// Admittances `[y11, y12, y22]` of two coupled inductors, S.
    fn coupled_siemens(&self, first_h: f64, second_h: f64, mutual_h: f64) -> [Self::N; 3];
}

/// Direct current.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Direct;

/// One complex frequency; `j 2 pi f` for steady AC.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Frequency {
    /// Complex frequency, rad/s.
    pub s_rad_per_s: Complex,
}

impl Frequency {
    /// Steady AC of the given frequency.
    pub fn steady(frequency_hz: f64) -> Frequency {
        let im = 2.0 * core::f64::consts::PI * frequency_hz;
        Frequency {
            s_rad_per_s: Complex::new(0.0, im),
        }
    }
}

impl Drive for Direct {
    type N = f64;
    const IS_DIRECT: bool = true;
    fn admittance_siemens(&self, kind: &ElementKind, closed: bool) -> f64 {
        match *kind {
            ElementKind::Resistor { ohm } => 1.0 / ohm,
            ElementKind::Contact {
                closed_ohm,
                open_ohm,
                ..
            } => 1.0 / if closed { closed_ohm } else { open_ohm },
            _ => 0.0,
        }
    }
    fn source_v(&self, _ac_v: f64, dc_v: f64) -> f64 {
        dc_v
    }
    fn coupled_siemens(&self, _first_h: f64, _second_h: f64, _mutual_h: f64) -> [f64; 3] {
        [0.0; 3]
    }
}

impl Drive for Frequency {
    type N = Complex;
    const IS_DIRECT: bool = false;
    fn admittance_siemens(&self, kind: &ElementKind, closed: bool) -> Complex {
        match *kind {
            ElementKind::Resistor { ohm } => Complex::real(1.0 / ohm),
            ElementKind::Capacitor { farad } => self.s_rad_per_s.scale(farad),
            ElementKind::Inductor { henry } => self.s_rad_per_s.scale(henry).inverse(),
            ElementKind::Contact { closed_ohm, .. } if closed => Complex::real(1.0 / closed_ohm),
            ElementKind::Contact {
                open_ohm,
                open_farad,
                ..
            } => Complex::real(1.0 / open_ohm) + self.s_rad_per_s.scale(open_farad),
            ElementKind::Source { .. } => Complex::ZERO,
        }
    }
    fn source_v(&self, ac_v: f64, _dc_v: f64) -> Complex {
        Complex::real(ac_v)
    }
    fn coupled_siemens(&self, first_h: f64, second_h: f64, mutual_h: f64) -> [Complex; 3] {
        let scale = self
            .s_rad_per_s
            .scale(first_h * second_h - mutual_h * mutual_h)
            .inverse();
        [
            scale.scale(second_h),
            scale.scale(-mutual_h),
            scale.scale(first_h),
        ]
    }
}

//! Density of water against temperature and pressure.
//!
//! ```text
//! rho(t) = (a0 + a1 t + … + a5 t⁵)/(1 + b t)      t in °C, at one atmosphere
//! kappa(t) = (c0 + … + c5 t⁵)/(1 + d t)           per bar, times 1e-6
//! ```
//! Source: published, Kell 1975, from memory; within 1e-5 of IAPWS between 0 and 100 °C.
//! The level sensor feels it: hot water weighs less.

use crate::units::{CELSIUS_ZERO_K, STANDARD_ATMOSPHERE_PA};

/// Density at one atmosphere, kg/m³, for 0 to 100 °C; held at the ends outside.
pub fn density_kg_per_m3(temperature_k: f64) -> f64 {
    let t = (temperature_k - CELSIUS_ZERO_K).clamp(0.0, 100.0);
    let above = -7.987_040_1e-3 + t * (-46.170_461e-6 + t * (105.563_02e-9 - t * 280.542_53e-12));
    (999.839_52 + t * (16.945_176 + t * above)) / (1.0 + 16.879_850e-3 * t)
}

/// Density under pressure, kg/m³.
pub fn density_under_pressure_kg_per_m3(temperature_k: f64, pressure_pa: f64) -> f64 {
    let t = (temperature_k - CELSIUS_ZERO_K).clamp(0.0, 100.0);
    let above = 1.459_187e-3 + t * (20.084_38e-6 + t * (-58.477_27e-9 + t * 410.411_0e-12));
    let kappa_per_bar =
        1.0e-6 * (50.884_96 + t * (0.616_381_3 + t * above)) / (1.0 + 19.673_48e-3 * t);
    let excess_bar = (pressure_pa - STANDARD_ATMOSPHERE_PA) * 1.0e-5;
    density_kg_per_m3(temperature_k) * (1.0 + kappa_per_bar * excess_bar)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn densities_agree_with_iapws() {
        // Published: IAPWS-IF97 as evaluated by the `iapws` package at 101.325 kPa.
        for (degc, expected) in [(5.0, 999.9669), (20.0, 998.2061), (40.0, 992.2243)] {
            let got = density_kg_per_m3(CELSIUS_ZERO_K + degc);
            assert!((got - expected).abs() < 1e-2, "{degc} °C: {got}");
        }
    }

    #[test]
    fn water_is_heaviest_near_four_degrees() {
        let at = |degc: f64| density_kg_per_m3(CELSIUS_ZERO_K + degc);
        assert!(at(4.0) > at(0.0) && at(4.0) > at(8.0));
    }
}

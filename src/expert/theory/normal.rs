//! The normal distribution: its area below a point and between two points, and its density.
//!
//! ```text
//! Φ(z) = erfc(-z/√2) / 2
//! ```
//! Source: published.

use core::f64::consts::PI;
use core::f64::consts::SQRT_2;

/// Share of the standard normal distribution below `z`.
pub fn below(z: f64) -> f64 {
    0.5 * libm::erfc(-z / SQRT_2)
}

/// Share of the standard normal distribution between `low` and `high`, in the tail that keeps its
/// digits.
pub fn between(low: f64, high: f64) -> f64 {
    if low > 0.0 {
        below(-low) - below(-high)
    } else {
        below(high) - below(low)
    }
}

/// Density of the normal distribution with mean `mean` and standard deviation `sd` at `x`.
pub fn density(x: f64, mean: f64, sd: f64) -> f64 {
    let z = (x - mean) / sd;
    libm::exp(-0.5 * z * z) / (sd * (2.0 * PI).sqrt())
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Published tables of the normal distribution.
    #[test]
    fn areas_agree_with_the_table() {
        assert!((below(1.96) - 0.975_002_104_851_8).abs() < 1e-12);
        assert!((below(-3.0) - 0.001_349_898_031_630_1).abs() < 1e-15);
        assert!((between(-1.0, 1.0) - 0.682_689_492_137_1).abs() < 1e-12);
    }

    #[test]
    fn far_tails_keep_their_digits() {
        assert!(between(20.0, 21.0) > 0.0);
        assert!((between(20.0, 21.0) - between(-21.0, -20.0)).abs() < 1e-100);
    }
}

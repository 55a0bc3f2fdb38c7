//! Ability as a grid of nodes with normal weights: what all integrals over ability are sums on.
//!
//! ```text
//! integral of f(t) phi(t) dt  ~  sum_q w_q f(t_q)      w_q proportional to phi(t_q), sum 1
//! ```
//! Equally spaced nodes from -6 to 6 standard deviations: for smooth functions that vanish at both
//! ends the error falls faster than any power of the spacing (Trefethen and Weideman 2014), and
//! steep items do no harm as they do with few Gauss-Hermite nodes.

/// A normal distribution of ability or difficulty, logits.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Normal {
    /// Mean, logits.
    pub mean: f64,
    /// Standard deviation, logits, above 0.
    pub sd: f64,
}

impl Normal {
    /// Mean 0, standard deviation 1.
    pub const STANDARD: Self = Self { mean: 0.0, sd: 1.0 };

    /// Logarithm of the density, up to a constant that does not depend on `x`.
    pub fn log_kernel(&self, x: f64) -> f64 {
        let z = (x - self.mean) / self.sd;
        -0.5 * z * z
    }
}

/// Nodes and weights.
#[derive(Clone, Debug, PartialEq)]
pub struct Grid {
    /// Abilities, logits, rising.
    pub nodes: Vec<f64>,
    /// Weights, sum 1.
    pub weights: Vec<f64>,
}

/// Nodes of the usual grid: parameters of published sets come out to 1e-6.
const N_NODES: usize = 61;
/// Half the width of the usual grid, standard deviations.
const HALF_WIDTH: f64 = 6.0;

impl Grid {
    /// 61 nodes from -6 to 6 under the standard normal.
    pub fn standard() -> Self {
        Self::under(&Normal::STANDARD)
    }

    /// 61 nodes within six standard deviations of the mean.
    pub fn under(normal: &Normal) -> Self {
        let step = 2.0 * HALF_WIDTH / (N_NODES - 1) as f64;
        let z: Vec<f64> = (0..N_NODES).map(|q| q as f64 * step - HALF_WIDTH).collect();
        let raw: Vec<f64> = z.iter().map(|z| libm::exp(-0.5 * z * z)).collect();
        let sum: f64 = raw.iter().sum();
        Self {
            nodes: z.iter().map(|z| normal.mean + normal.sd * z).collect(),
            weights: raw.iter().map(|w| w / sum).collect(),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn moments_of_the_normal_come_out() {
        let grid = Grid::under(&Normal { mean: 0.5, sd: 2.0 });
        let moment = |k: i32| -> f64 {
            grid.nodes
                .iter()
                .zip(&grid.weights)
                .map(|(t, w)| w * (t - 0.5).powi(k))
                .sum()
        };
        // 1, 0, sd², 0, 3 sd⁴.
        assert!((moment(0) - 1.0).abs() < 1e-14);
        assert!(moment(1).abs() < 1e-14);
        assert!((moment(2) - 4.0).abs() < 1e-6);
        assert!((moment(4) - 48.0).abs() < 1e-4);
    }
}

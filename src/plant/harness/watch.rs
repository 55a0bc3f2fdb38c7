//! Readings the machine asks for at every step: coil voltages, line and leakage current.
//!
//! For one contact set everything outside of the motor is linear in the voltages of the
//! motor's nodes, so a reading is a constant plus one factor per node, found once:
//!
//! ```text
//! reading = c_0 + sum_m c_m v_m
//! ```

use crate::network::Base;
use crate::network::Complex;
use crate::network::ElementId;
use crate::network::Factors;
use crate::network::NodeId;
use crate::network::Solution;
use crate::network::solution::spread;

/// What is watched.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Watch {
    /// Voltage between two places, V.
    Voltage(NodeId, NodeId),
    /// Current through an element, A.
    Current(ElementId),
}

/// Readings as functions of the motor's node voltages.
#[derive(Clone, Debug, PartialEq)]
pub struct Watched {
    /// Row per watch: the constant, then one factor per node of the motor's block.
    rows: Vec<Complex>,
    width: usize,
}

impl Watched {
    /// Finds the factors for one contact set.
    pub fn new(base: &Base<Complex>, factors: &Factors<Complex>, watches: &[Watch]) -> Watched {
        let m = base.plan.inner();
        let width = m + 1;
        let mut rows = vec![Complex::ZERO; watches.len() * width];
        let mut solution = Solution::default();
        for column in 0..width {
            let mut block_v = vec![Complex::ZERO; m];
            if column > 0 {
                block_v[column - 1] = Complex::ONE;
            }
            spread(base, factors, &block_v, column == 0, &mut solution);
            for (row, watch) in watches.iter().enumerate() {
                rows[row * width + column] = read(base, &solution, *watch);
            }
        }
        Watched { rows, width }
    }

    /// One reading at given voltages of the motor's nodes.
    pub fn reading(&self, watch: usize, block_v: &[Complex]) -> Complex {
        let row = &self.rows[watch * self.width..(watch + 1) * self.width];
        let mut sum = row[0];
        for (factor, v) in row[1..].iter().zip(block_v) {
            sum += *factor * *v;
        }
        sum
    }
}

fn read(base: &Base<Complex>, solution: &Solution<Complex>, watch: Watch) -> Complex {
    match watch {
        Watch::Voltage(a, b) => solution.between_v(a, b),
        Watch::Current(element) => solution.current_a(base, element),
    }
}

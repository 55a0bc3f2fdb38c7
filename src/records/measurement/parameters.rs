//! What a calibration estimates of the jobs: cuts and slopes, and which slopes are free.

/// Which slopes are estimated.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SlopeRule {
    /// All 1.
    Fixed,
    /// One for all.
    Common,
    /// One an item.
    Free,
}

/// What is being estimated.
pub(super) struct Parameters {
    /// Cuts of each item.
    pub cuts: Vec<Vec<f64>>,
    /// Slope of each item; all the same unless slopes are free.
    pub slopes: Vec<f64>,
}

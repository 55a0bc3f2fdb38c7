//! Where the service test stands.

/// Where the service test stands.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct ServiceRun {
    /// Index of the step.
    pub step: usize,
    /// Index of the phase; past the last = the step is over.
    pub phase: usize,
    /// Ticks in the phase.
    pub phase_ticks: u32,
    /// Ticks the last finished phase took.
    pub last_ticks: u32,
    /// The step was refused because water stands in the tub.
    pub is_refused: bool,
    /// The step's first tick has been seen.
    pub is_begun: bool,
}

impl ServiceRun {
    /// At the beginning of a step.
    pub(crate) fn at_step(step: usize) -> ServiceRun {
        ServiceRun {
            step,
            ..ServiceRun::default()
        }
    }

    /// Hands the state to `sink`.
    pub fn hash_into(&self, sink: &mut impl FnMut(u64)) {
        sink(self.step as u64);
        sink(self.phase as u64);
        sink(u64::from(self.phase_ticks));
        sink(u64::from(self.last_ticks));
        sink(u64::from(self.is_refused) << 1 | u64::from(self.is_begun));
    }
}

//! Sound machines of a job that those with a cause are begun from, and how many are begun.

use std::sync::Arc;

use crate::bench::scenario::Scenario;
use crate::expert::cause::Variant;
use crate::expert::line::Line;
use crate::expert::symptom::Symptoms;
use crate::expert::twin::Twin;
use crate::machine::MachineError;

/// How often a customer who calls has shut the tap for some other reason: once in 200 calls. Design choice.
const SHUT_BY_HAND: f64 = 0.005;

/// Most machines begun between the first of all faults: bounds the time a belief takes.
pub(super) const MOST: usize = 48;

/// Sound machines that others are begun from.
#[derive(Clone, Debug)]
pub(super) struct Fresh {
    /// With the tap as a cause leaves it.
    open: Twin,
    /// With the tap shut by hand, where that is known.
    shut: Option<Twin>,
}

impl Fresh {
    pub fn of(scenario: &Arc<Scenario>, is_tap_shut: bool) -> Result<Self, MachineError> {
        let shut = is_tap_shut.then(|| {
            let mut shut = Scenario::clone(scenario);
            shut.site.tap_open = false;
            Twin::sound(&Arc::new(shut))
        });
        Ok(Self {
            open: Twin::sound(scenario)?,
            shut: shut.transpose()?,
        })
    }

    /// A machine with a cause that shows these symptoms, before anything was done.
    pub fn line(&self, variant: Variant, shows: Symptoms) -> Result<Line, MachineError> {
        let twin = self.open.with(&variant)?;
        match &self.shut {
            Some(shut) if !twin.is_tap_closed() => {
                let twin = shut.with(&variant)?;
                Ok(Line::fresh(variant, twin, shows, libm::log(SHUT_BY_HAND)))
            }
            _ => Ok(Line::fresh(variant, twin, shows, 0.0)),
        }
    }
}

//! The level oscillator as the wiring leaves it: running or not, and how far off.
//!
//! The plant gives the frequency of a sound sensor for the water as it is; a changed coil, capacitor
//! or joint multiplies it, or stops it. Source: closed form f = 1/(2π√(LC)).

use crate::machine::MachineError;
use crate::machine::electrics::Electrics;
use crate::network::Contacts;
use crate::network::ElementKind;
use crate::plant::harness::WiringModel;
use crate::plant::harness::level::level_frequency_hz;

/// How the frequency compares with a sound sensor's.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Oscillator {
    /// Frequency over a sound one's; none when it does not run or there is none.
    ratio: Option<f64>,
}

impl Oscillator {
    /// Finds it for the present wiring.
    pub fn of(electrics: &Electrics, model: &WiringModel) -> Result<Self, MachineError> {
        let Some(sensor) = &model.level_sensor else {
            return Ok(Self { ratio: None });
        };
        let value = |id: crate::network::ElementId| match model.elements[id.index()].kind {
            ElementKind::Inductor { henry } => henry,
            ElementKind::Capacitor { farad } => farad,
            _ => 0.0,
        };
        let [a, b] = sensor.capacitors.map(value);
        let (henry, farad) = (value(sensor.coil), a * b / (a + b));
        let sound_hz = 1.0 / (core::f64::consts::TAU * (henry * farad).sqrt());
        let hz = level_frequency_hz(electrics.harness(), Contacts::default(), 0.0)?;
        Ok(Self {
            ratio: (hz > 0.0).then(|| hz / sound_hz),
        })
    }

    /// The frequency for a sound sensor's frequency, Hz.
    pub fn hz(self, sound_hz: f64) -> Option<f64> {
        self.ratio.map(|ratio| ratio * sound_hz)
    }
}

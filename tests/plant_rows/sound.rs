//! Rows of sound: rates and tones.

use tubwright::plant::drive::MotorInput;
use tubwright::plant::sound::{self, SoundKind};
use tubwright::plant::{Plant, PlantInputs};

use crate::drive::{speed, stand_in};
use crate::machine::reference;
use crate::prose::Prose;

pub fn answer(q: &str, c: &Prose, whole: &Prose) -> Option<f64> {
    Some(match q {
        q if q.starts_with("outer-race factor") => race_ratio(whole)?,
        "outer-race rate" => sound::BASKET_RACE_RATIO * speed(c) / (2.0 * std::f64::consts::PI),
        "mains hum" => hum_hz(c.of("Hz")?),
        "slip beat of hum (2 s f)" => {
            2.0 * (c.of("Hz").unwrap_or(50.0) - speed(c) / std::f64::consts::PI)
        }
        q if q.starts_with("bubble tone") => sound::bubble_tone_hz(
            1e-3 * c.of("mm")?,
            1e3 * c.of("kPa").unwrap_or(101.325),
            998.2,
        ),
        _ => return None,
    })
}

/// Published: balls/2 (1 − ball/pitch), contact angle zero.
fn race_ratio(c: &Prose) -> Option<f64> {
    let n_balls = c.of("balls")?;
    let sizes = c.all("mm");
    Some(n_balls / 2.0 * (1.0 - sizes.first()? / sizes.get(1)?))
}

/// Tone of a motor's hum after one live tick.
fn hum_hz(mains_hz: f64) -> f64 {
    let table = stand_in(&Prose::new("")).table();
    let mut plant = Plant::new(reference());
    let motor = MotorInput::On {
        table: &table,
        is_forward: true,
    };
    plant.tick(&PlantInputs {
        motor,
        ..PlantInputs::IDLE
    });
    let heard = sound::sources(plant.params(), &plant.readings(), mains_hz);
    let hum = heard
        .iter()
        .find(|s| s.kind == SoundKind::Hum)
        .expect("a live motor hums");
    hum.tone_hz
}

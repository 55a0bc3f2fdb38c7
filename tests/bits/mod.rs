//! The list of results whose bits must be the same natively and in a browser.

use tubwright::plant::Plant;
use tubwright::plant::PlantInputs;
use tubwright::plant::params::PlantParams;
use tubwright::units;

/// Fails at the first result whose bits are not the ones written down.
pub fn check() {
    let filled = filled();
    let fixed = [
        (
            "speed of 750 r/min",
            units::rad_per_s_from_rpm(750.0),
            0x4053_a28c_59d5_433b_u64,
        ),
        (
            "level after three minutes of filling and ten of rest",
            filled.level_m(),
            0x3fcb_e326_184f_29c0,
        ),
        (
            "the level sensor's frequency then",
            filled.sensor_hz(),
            0x40d7_7029_ccdd_29b9,
        ),
    ];
    let wrong: Vec<String> = fixed
        .iter()
        .filter(|(_, value, bits)| value.to_bits() != *bits)
        .map(|(what, value, bits)| {
            format!(
                "{what}: {value:e} has bits {:#018x}, written down is {bits:#018x}",
                value.to_bits()
            )
        })
        .collect();
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

fn filled() -> Plant {
    let mut plant = Plant::new(PlantParams::typical());
    plant.advance(
        1_800,
        &PlantInputs {
            is_valve_energised: true,
            ..PlantInputs::IDLE
        },
    );
    plant.rest(6_000);
    plant
}

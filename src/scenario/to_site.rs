//! The place of a job file as plain types: what the plant and the bench have of it.

use crate::bench::scenario::Site;
use crate::scenario::job_file::SiteFile;
use crate::units;

/// Mass of a litre of tap water, kg. Published: IAPWS at 20 °C.
const WATER_KG_PER_L: f64 = 0.9982;

/// Plant parameters that the place and the load decide: field of the file's site, name, value in SI.
pub fn site_params(file: &SiteFile) -> [(&'static str, &'static str, f64); 5] {
    [
        (
            "floor_tilt_deg",
            "site.floor_tilt_rad",
            units::rad_from_deg(file.floor_tilt_deg),
        ),
        (
            "water_mpa",
            "inlet.supply_pa",
            units::pa_from_mpa(file.water_mpa),
        ),
        ("unbalance_kg", "load.unbalance_kg", file.unbalance_kg),
        ("load_kg", "load.dry_kg", file.load_kg),
        (
            "room_degc",
            "site.air_k",
            file.room_degc + units::CELSIUS_ZERO_K,
        ),
    ]
}

/// The place as the bench has it.
pub fn site(file: &SiteFile) -> Site {
    Site {
        load_kg: file.load_kg,
        tap_open: file.tap_open,
        water_kg: file.water_l * WATER_KG_PER_L,
        rcd_a: file.rcd_ma.map(|ma| ma / 1000.0),
        params: site_params(file)
            .map(|(_, name, value)| (name.to_owned(), value))
            .to_vec(),
        room_k: file.room_degc + units::CELSIUS_ZERO_K,
        notes: file.notes.clone(),
    }
}

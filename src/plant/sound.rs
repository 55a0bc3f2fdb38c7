//! What the machine sounds like: one entry a source, computed from parameters and readings.
//!
//! ```text
//! level = base + slope log10(quantity/reference)    dB at 1 m
//! tone  = a rate of the mechanism, or the middle of a noise band
//! ```
//! Source: frequencies follow from the mechanism (bearing factor, Minnaert bubble and quarter
//! wave published); levels design choice or from memory, 5 to 10 dB below what is quoted for
//! spinning. Limits: no room, no directions; captions and timbre belong to the app.

use core::f64::consts::PI;

use crate::plant::drive::DriveMode;
use crate::plant::drive::bearing_n_m;
use crate::plant::inlet;
use crate::plant::params::PlantParams;
use crate::plant::readings::PlantReadings;

/// What makes the sound.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum SoundKind {
    /// Motor's magnetic hum.
    Hum,
    /// Motor's fan and sound bearings.
    MotorAir,
    /// Motor bearing running dry or pressed too hard.
    BearingWhine,
    /// Belt joint or crack passing.
    BeltPass,
    /// Belt slipping.
    BeltSqueal,
    /// Planet gear in wash.
    Gear,
    /// Backlash at reversal.
    ReversalKnock,
    /// Water and load in wash.
    Swash,
    /// Air round the spinning basket.
    SpinAir,
    /// Basket bearing.
    BasketBearing,
    /// Coin or wire at the basket, stone under the pulsator.
    Scraping,
    /// Tub against cabinet.
    CabinetKnock,
    /// Water entering.
    FillJet,
    /// Water squeezed through valve or strainer.
    ValveHiss,
    /// Inlet valve's coil.
    ValveHum,
    /// Surge when the valve closes.
    WaterHammer,
    /// Water leaving.
    DrainFlow,
    /// Air in the drain.
    Gurgle,
    /// Drain pump.
    Pump,
    /// Drain motor pulling.
    ActuatorWhirr,
    /// Drain motor holding.
    ActuatorHum,
    /// Drain motor letting go.
    ActuatorClack,
    /// Brake rubbing.
    BrakeRub,
    /// A loose piece or panel shaken by the spin.
    Rattle,
}

/// One source now.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SoundSource {
    /// What makes it.
    pub kind: SoundKind,
    /// Level at 1 m, dB.
    pub level_db: f64,
    /// Tone, or middle of the band, Hz.
    pub tone_hz: f64,
    /// Rate at which it swells or repeats, Hz; 0 for steady.
    pub beat_hz: f64,
    /// Sounds once in this tick instead of lasting.
    pub is_impulse: bool,
}

/// Nothing below this level is worth a source, dB.
const QUIETEST_DB: f64 = 15.0;
/// Outer-race passes per turn of the basket bearing: 8 balls of 7.938 mm on 33.5 mm. Published form.
pub const BASKET_RACE_RATIO: f64 = 8.0 / 2.0 * (1.0 - 7.938 / 33.5);
/// Blades of the motor's fan. Design choice.
const N_FAN_BLADES: f64 = 8.0;
/// Speed at which motor levels are stated, rad/s: 1400 r/min.
const MOTOR_REFERENCE_RAD_PER_S: f64 = 1400.0 * PI / 30.0;
/// Speed at which spin levels are stated, rad/s: 760 r/min.
const SPIN_REFERENCE_RAD_PER_S: f64 = 760.0 * PI / 30.0;
/// Friction up to which a motor's loaded bearings are quiet, N·m. Design choice: above what a sound
/// one has under the tightest belt the trade allows.
const SOUND_BEARING_N_M: f64 = 0.18;
/// Radius of a gurgling bubble, m.
const BUBBLE_M: f64 = 0.005;

/// Tone of an air bubble in water, Hz. Published: Minnaert.
pub fn bubble_tone_hz(radius_m: f64, air_pa: f64, water_kg_per_m3: f64) -> f64 {
    (3.0 * 1.4 * air_pa / water_kg_per_m3).sqrt() / (2.0 * PI * radius_m)
}

/// Tooth rate of the planet gear at a motor speed, Hz: ring teeth times carrier turns.
pub fn gear_tone_hz(p: &PlantParams, rotor_rad_per_s: f64) -> f64 {
    let ratio = p.belt.large_pulley_m / p.belt.small_pulley_m * p.gear.ratio_ratio;
    p.gear.teeth_ratio * rotor_rad_per_s.abs() / (2.0 * PI * ratio)
}

/// Every source that can be heard after the last tick at a mains frequency, loudest kinds not sorted.
pub fn sources(p: &PlantParams, r: &PlantReadings, mains_hz: f64) -> Vec<SoundSource> {
    let mut heard = Vec::with_capacity(12);
    motor(p, r, mains_hz, &mut heard);
    belt(p, r, &mut heard);
    washing(p, r, &mut heard);
    spinning(p, r, &mut heard);
    filling(p, r, mains_hz, &mut heard);
    draining(p, r, mains_hz, &mut heard);
    actuator(p, r, mains_hz, &mut heard);
    heard.retain(|source| source.level_db > QUIETEST_DB && source.level_db.is_finite());
    heard
}

/// Power sum of all sources, dB.
pub fn total_db(sources: &[SoundSource]) -> f64 {
    let power: f64 = sources
        .iter()
        .map(|source| libm::pow(10.0, source.level_db / 10.0))
        .sum();
    10.0 * libm::log10(power.max(1.0e-12))
}

fn lasting(kind: SoundKind, level_db: f64, tone_hz: f64, beat_hz: f64) -> SoundSource {
    SoundSource {
        kind,
        level_db,
        tone_hz,
        beat_hz,
        is_impulse: false,
    }
}

fn impulse(kind: SoundKind, level_db: f64, tone_hz: f64) -> SoundSource {
    SoundSource {
        kind,
        level_db,
        tone_hz,
        beat_hz: 0.0,
        is_impulse: true,
    }
}

/// `slope log10(x)`, far down for nothing.
fn decades(slope_db: f64, x: f64) -> f64 {
    slope_db * libm::log10(x.max(1.0e-9))
}

fn motor(p: &PlantParams, r: &PlantReadings, mains_hz: f64, heard: &mut Vec<SoundSource>) {
    let speed = r.rotor_rad_per_s.abs();
    if r.line_a > 0.0 {
        // The torque ripple beats at twice the slip frequency (four poles).
        let slip_hz = (mains_hz - speed / PI).abs();
        heard.push(lasting(
            SoundKind::Hum,
            40.0 + decades(40.0, r.line_a / 1.2),
            2.0 * mains_hz,
            2.0 * slip_hz,
        ));
    }
    if speed > 1.0 {
        let turn_hz = speed / (2.0 * PI);
        heard.push(lasting(
            SoundKind::MotorAir,
            38.0 + decades(50.0, speed / MOTOR_REFERENCE_RAD_PER_S),
            N_FAN_BLADES * turn_hz,
            turn_hz,
        ));
        // What the bearing rubs away beyond a sound one sings.
        let rubbed_w = (bearing_n_m(&p.rotor, &p.belt) - SOUND_BEARING_N_M) * speed;
        if rubbed_w > 0.0 {
            heard.push(lasting(
                SoundKind::BearingWhine,
                53.0 + decades(10.0, rubbed_w / 100.0),
                2200.0 * speed / MOTOR_REFERENCE_RAD_PER_S,
                turn_hz,
            ));
        }
    }
}

fn belt(p: &PlantParams, r: &PlantReadings, heard: &mut Vec<SoundSource>) {
    let belt_m_per_s = r.rotor_rad_per_s.abs() * p.belt.small_pulley_m / 2.0;
    if belt_m_per_s > 0.3 && p.belt.tension_n > 0.0 {
        let pass_hz = belt_m_per_s / crate::plant::drive::belt_length_m(&p.belt);
        heard.push(lasting(
            SoundKind::BeltPass,
            34.0 + 12.0 * p.belt.cracked_ratio,
            pass_hz,
            pass_hz,
        ));
    }
    let slip_m_per_s = r.slip_rad_per_s * p.belt.small_pulley_m / 2.0;
    if slip_m_per_s > 0.05 && is_belt_slipping(p, r) {
        let level = 60.0 + decades(10.0, r.slip_w / 10.0) - 10.0 * p.belt.wet_ratio;
        heard.push(lasting(
            SoundKind::BeltSqueal,
            level,
            1200.0 + 400.0 * slip_m_per_s.min(5.0),
            0.0,
        ));
    }
}

/// A slipping spline clicks and a clutch slips silently; only rubber squeals.
fn is_belt_slipping(p: &PlantParams, r: &PlantReadings) -> bool {
    let d = crate::plant::drive::DriveDerived::new(p);
    let belt = crate::plant::drive::belt_limit_n_m(&p.belt, &d, r.rotor_rad_per_s);
    let other = match r.mode {
        DriveMode::Wash => p.pulsator.spline_n_m / d.wash_ratio,
        DriveMode::Spin => p.clutch.torque_n_m / d.belt_ratio,
    };
    belt > 0.0 && belt <= other && belt < p.belt.pulley_grip_n_m
}

fn washing(p: &PlantParams, r: &PlantReadings, heard: &mut Vec<SoundSource>) {
    if r.mode != DriveMode::Wash {
        return;
    }
    let motor_ratio = r.rotor_rad_per_s.abs() / MOTOR_REFERENCE_RAD_PER_S;
    let carrier_hz = r.pulsator_rad_per_s.abs() / (2.0 * PI);
    if carrier_hz > 0.05 {
        let level = 46.0
            + decades(20.0, r.load_n_m / 5.0)
            + decades(20.0, motor_ratio)
            + 10.0 * p.gear.worn_ratio;
        heard.push(lasting(
            SoundKind::Gear,
            level,
            gear_tone_hz(p, r.rotor_rad_per_s),
            carrier_hz,
        ));
        let stirred = (r.pulsator_rad_per_s - r.swirl_rad_per_s).abs();
        if r.level_m > 0.01 {
            heard.push(lasting(
                SoundKind::Swash,
                54.0 + decades(30.0, stirred / 10.0),
                280.0,
                0.0,
            ));
        }
        if p.pulsator.scrape_n_m > 0.0 {
            heard.push(lasting(
                SoundKind::Scraping,
                45.0 + decades(20.0, p.pulsator.scrape_n_m),
                900.0,
                carrier_hz,
            ));
        }
    }
    if r.is_reversal {
        let play_deg = (p.pulsator.play_rad + p.gear.bolts_play_rad) * 180.0 / PI;
        // A spline that slips has lost its teeth: up to 15 dB more.
        let worn_db = (15.0 * (1.0 - p.pulsator.spline_n_m / 20.0)).clamp(0.0, 15.0);
        heard.push(impulse(
            SoundKind::ReversalKnock,
            58.0 + decades(20.0, play_deg) + worn_db,
            250.0,
        ));
    }
}

fn spinning(p: &PlantParams, r: &PlantReadings, heard: &mut Vec<SoundSource>) {
    let speed = r.basket_rad_per_s.abs();
    let turn_hz = speed / (2.0 * PI);
    if speed < 0.5 {
        return;
    }
    let ratio = speed / SPIN_REFERENCE_RAD_PER_S;
    let rough_db = 8.0 * ((p.basket.bearing_n_m - 0.3) / 0.5).max(0.0);
    let race_hz = BASKET_RACE_RATIO * turn_hz;
    heard.push(lasting(
        SoundKind::SpinAir,
        52.0 + decades(55.0, ratio) - 6.0 * r.foam_ratio,
        470.0,
        turn_hz,
    ));
    heard.push(lasting(
        SoundKind::BasketBearing,
        45.0 + decades(20.0, ratio) + rough_db.min(40.0),
        300.0,
        race_hz,
    ));
    if p.basket.scrape_n_m > 0.0 {
        heard.push(lasting(
            SoundKind::Scraping,
            50.0 + decades(20.0, p.basket.scrape_n_m),
            1800.0,
            turn_hz,
        ));
    }
    if r.is_touching {
        let knock_m_per_s = (r.rim_m * speed).max(0.01);
        heard.push(lasting(
            SoundKind::CabinetKnock,
            70.0 + decades(20.0, knock_m_per_s / 0.1),
            120.0,
            turn_hz,
        ));
    }
    // Shaken with the rim's speed; level design choice.
    let shaken = p.suspension.rattle_ratio * r.rim_m * speed / 0.1;
    let rattle_db = 56.0 + decades(20.0, shaken);
    heard.push(lasting(SoundKind::Rattle, rattle_db, 1500.0, turn_hz));
    if r.linkage.brake_ratio > 0.0 {
        // Worn lining squeals, a weak one is only quiet.
        let rub_db = 50.0 + decades(10.0, r.linkage.brake_ratio * p.brake.stop_n_m / 14.0);
        heard.push(lasting(SoundKind::BrakeRub, rub_db, 1250.0, turn_hz));
    }
}

fn filling(p: &PlantParams, r: &PlantReadings, mains_hz: f64, heard: &mut Vec<SoundSource>) {
    let l_per_min = crate::units::l_per_min_from_m3_per_s(r.flows.inlet_m3_per_s);
    if l_per_min > 0.01 {
        heard.push(lasting(
            SoundKind::FillJet,
            50.0 + decades(25.0, l_per_min / 12.0),
            630.0,
            0.0,
        ));
        let pressure_ratio = p.inlet.supply_pa / 300_000.0;
        // A squeezed strainer hisses higher.
        let tone_hz = 2200.0 * (1.0 + p.inlet.strainer_blocked_ratio);
        heard.push(lasting(
            SoundKind::ValveHiss,
            40.0 + decades(20.0, pressure_ratio),
            tone_hz,
            0.0,
        ));
    }
    if r.is_valve_energised {
        // A plunger that cannot seat buzzes.
        let buzz_db = if p.inlet.valve_m3_per_s_sqrt_pa < 1.0e-9 {
            15.0
        } else {
            0.0
        };
        heard.push(lasting(
            SoundKind::ValveHum,
            35.0 + buzz_db,
            2.0 * mains_hz,
            0.0,
        ));
    }
    if r.hammer_pa > 0.0 {
        heard.push(impulse(
            SoundKind::WaterHammer,
            65.0 + decades(20.0, r.hammer_pa / 1.0e6),
            inlet::pipe_tone_hz(&p.inlet),
        ));
    }
}

fn draining(p: &PlantParams, r: &PlantReadings, mains_hz: f64, heard: &mut Vec<SoundSource>) {
    let l_per_min = crate::units::l_per_min_from_m3_per_s(r.flows.drain_m3_per_s);
    if l_per_min > 0.01 {
        heard.push(lasting(
            SoundKind::DrainFlow,
            48.0 + decades(25.0, l_per_min / 30.0),
            370.0,
            0.0,
        ));
        if r.level_m < 0.03 {
            let tone_hz = bubble_tone_hz(BUBBLE_M, p.site.air_pa, p.tub.water_kg_per_m3);
            heard.push(lasting(SoundKind::Gurgle, 45.0, tone_hz, 3.0));
        }
    }
    if r.is_pump_energised && p.drain.pump_fitted_ratio > 0.5 {
        let is_dry = l_per_min <= 0.01 && p.drain.open_ratio > 1.0e-3;
        heard.push(lasting(
            SoundKind::Pump,
            if is_dry { 58.0 } else { 50.0 },
            2.0 * mains_hz,
            if is_dry { 8.0 } else { 0.0 },
        ));
    }
}

fn actuator(p: &PlantParams, r: &PlantReadings, mains_hz: f64, heard: &mut Vec<SoundSource>) {
    if r.is_actuator_energised && r.stroke_m_per_s > 0.0 {
        heard.push(lasting(SoundKind::ActuatorWhirr, 32.0, 320.0, 0.0));
    } else if r.is_actuator_energised && p.actuator.pull_m_per_s > 0.0 {
        heard.push(lasting(SoundKind::ActuatorHum, 28.0, 2.0 * mains_hz, 0.0));
    } else if r.stroke_m_per_s < 0.0 && r.stroke_m <= 0.0 {
        heard.push(impulse(SoundKind::ActuatorClack, 50.0, 600.0));
    }
}

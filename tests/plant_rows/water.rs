//! Rows of water: properties, filling, level, air trap, draining.

use std::f64::consts::PI;

use tubwright::plant::air_trap::{self, COLUMN_PA_PER_M, TrapInputs};
use tubwright::plant::params::PlantParams;
use tubwright::plant::{Plant, PlantInputs, drain, inlet, tub, water_properties};
use tubwright::units::{CELSIUS_ZERO_K, l_per_min_from_m3_per_s, m3_per_s_from_l_per_min};

use crate::machine::{pulled, reference, time_until, without_lags};
use crate::prose::Prose;

const RHO: f64 = 998.2;

pub fn answer(q: &str, c: &Prose) -> Option<f64> {
    Some(match q {
        "water density" => water_properties::density_under_pressure_kg_per_m3(
            kelvin(c)?,
            1e3 * c.of("kPa").unwrap_or(101.325),
        ),
        "specific volume" => {
            1.0 / water_properties::density_under_pressure_kg_per_m3(kelvin(c)?, 1e6 * c.of("MPa")?)
        }
        "water viscosity" => viscosity_pa_s(kelvin(c)?),
        "sound speed in water" => sound_speed_m_per_s(c.of("C")?),
        "fill flow" => l_per_min_from_m3_per_s(inlet::valve_flow_m3_per_s(&supplied(c).inlet, 1.0)),
        "tub level" => level_m(c)?,
        "sensor pressure" if c.of("kHz").is_some() => {
            air_trap::pressure_of_frequency_pa(&reference().sensor, 1e3 * c.of("kHz")?)
        }
        "sensor pressure" => trapped(c)?.gauge_pa,
        "water rise in dome" => 1e3 * trapped(c)?.rise_m,
        "oscillator frequency" => {
            let sensor = reference().sensor;
            let gauge_pa = c.of("Pa").or_else(|| trapped(c).map(|b| b.gauge_pa))?;
            air_trap::oscillator_hz(&sensor, air_trap::coil_h(&sensor, gauge_pa))
        }
        "sensor inductance" => {
            let hz = 1e3 * c.of("kHz")?;
            let mut sensor = reference().sensor;
            sensor.capacitor_f = 2e-9 * c.of("nF")?;
            let unit_hz = air_trap::oscillator_hz(&sensor, 1.0);
            1e3 * unit_hz * unit_hz / (hz * hz)
        }
        q if q.starts_with("time until the reading has fallen") => leak_time_s(q, c)?,
        "sensor lag error while filling" => {
            let flow = m3_per_s_from_l_per_min(c.of("L/min")?);
            COLUMN_PA_PER_M * flow / reference().tub.area_high_m2 * c.after("tau")?
        }
        "fill time to high level" => filled(c).0,
        "free water at high level" => filled(c).1.state().tub.free_kg,
        q if q.starts_with("water speed") => {
            let mut p = reference();
            p.inlet.pipe_bore_m = 1e-3 * c.of("mm")?;
            inlet::pipe_speed_m_per_s(&p.inlet, m3_per_s_from_l_per_min(c.of("L/min")?))
        }
        q if q.starts_with("water hammer,") => 1e-6 * hammer_pa(q, c)?,
        "water-hammer ring" => {
            let mut p = reference();
            p.inlet.pipe_m = c.of("m")?;
            p.inlet.wave_m_per_s = c.of("m/s")?;
            inlet::pipe_tone_hz(&p.inlet)
        }
        "gravity drain time" | "gravity drain time incl. actuator" => drain_time_s(q, c)?,
        "contraction coefficient" => drain::contraction_ratio(c.after("fraction")?),
        "residual volume" => {
            let mut p = reference();
            p.drain.outlet_m = c.of("m")?;
            1e3 * tub::volume_m3(&p.tub, tub::residual_level_m(&p.drain))
        }
        "pump flow" => pump_flow_l_per_min(c)?,
        "pump shut-off" => highest_pumped_m(),
        "tank drain time" => tank_time_s(c)?,
        "actuator time" => actuator_time_s(c),
        "volume at level-switch pressure" => volume_at_l(c.of("Pa")?),
        _ => return None,
    })
}

fn kelvin(c: &Prose) -> Option<f64> {
    c.of("K").or_else(|| c.of("C").map(|t| t + CELSIUS_ZERO_K))
}

/// Published: Vogel form for water, from memory, within 0.1 % near room temperature. The plant
/// needs no viscosity; the row is answered so that every row is.
fn viscosity_pa_s(kelvin: f64) -> f64 {
    2.414e-5 * libm::pow(10.0, 247.8 / (kelvin - 140.0))
}

/// Published: Marczak 1997, from memory, within 0.1 % of IF97.
fn sound_speed_m_per_s(t: f64) -> f64 {
    [
        1.402385e3,
        5.038813,
        -5.799136e-2,
        3.287156e-4,
        -1.398845e-6,
        2.787860e-9,
    ]
    .iter()
    .rev()
    .fold(0.0, |sum, a| sum * t + a)
}

/// Supply, strainer and tap as the conditions say.
fn supplied(c: &Prose) -> PlantParams {
    let mut p = without_lags();
    p.inlet.supply_pa = 1e6 * c.of("MPa").unwrap_or(0.3);
    if let Some(percent) = c.after("strainer") {
        p.inlet.strainer_blocked_ratio = percent / 100.0;
    }
    if let Some(percent) = c.after("tap") {
        p.inlet.tap_closed_ratio = percent / 100.0;
    }
    if let Some(l_per_min) = c.of("L/min") {
        p.inlet.regulator_m3_per_s = m3_per_s_from_l_per_min(l_per_min);
    }
    p.load.dry_kg = if c.says("no load") {
        0.0
    } else {
        c.after("load").unwrap_or(0.0)
    };
    p
}

fn level_m(c: &Prose) -> Option<f64> {
    let p = supplied(c);
    Some(tub::level_m(
        &p.tub,
        &p.load,
        1e-3 * RHO * c.of("L")?,
        c.after("textile").unwrap_or(0.0),
    ))
}

fn trapped(c: &Prose) -> Option<air_trap::TrapBalance> {
    let p = reference();
    let u = TrapInputs {
        level_m: level_m(c)?,
        water_kg_per_m3: c.after("rho").unwrap_or(RHO),
        air_pa: 1e3 * c.of("kPa").unwrap_or(101.325),
    };
    air_trap::balance(&p.trap, air_trap::vented(&p.trap, u.air_pa).air_j, u)
}

fn leak_time_s(q: &str, c: &Prose) -> Option<f64> {
    let mut p = without_lags();
    p.load.dry_kg = 0.0;
    p.site.air_k = p.inlet.water_k;
    let mut plant = Plant::new(p);
    plant.pour_kg(1e-3 * RHO * c.of("L")?);
    plant.rest(20);
    plant.set("trap.leak_m3_per_s_pa", c.of("m3/s/Pa")?).ok()?;
    let share = Prose::new(q).of("%")? / 100.0;
    let target = plant.state().trap.sensor_pa * (1.0 - share);
    Some(time_until(
        &mut plant,
        &PlantInputs::IDLE,
        |m| m.state().trap.sensor_pa,
        target,
        1e5,
    ))
}

/// Time to the high level, and the machine then.
fn filled(c: &Prose) -> (f64, Plant) {
    let mut plant = Plant::new(supplied(c));
    plant.wet_load_kg(c.after("start").unwrap_or(0.0));
    let u = PlantInputs {
        is_valve_energised: true,
        ..PlantInputs::IDLE
    };
    let time_s = time_until(&mut plant, &u, |m| m.state().trap.sensor_pa, 2624.8, 1e4);
    (time_s, plant)
}

fn hammer_pa(q: &str, c: &Prose) -> Option<f64> {
    let mut p = reference();
    p.inlet.pipe_bore_m = 1e-3 * c.of("mm")?;
    let flow = m3_per_s_from_l_per_min(c.of("L/min").unwrap_or(12.0));
    let speed = inlet::pipe_speed_m_per_s(&p.inlet, flow);
    if q.ends_with("sudden") {
        p.inlet.wave_m_per_s = c.of("m/s")?;
        return Some(inlet::water_hammer_pa(&p.inlet, speed, RHO, 0.0));
    }
    p.inlet.pipe_m = c.of("m")?;
    Some(inlet::water_hammer_pa(&p.inlet, speed, RHO, c.of("s")?))
}

fn drain_time_s(q: &str, c: &Prose) -> Option<f64> {
    let mut p = supplied(c);
    p.drain.open_ratio = c.after("fraction").unwrap_or(1.0);
    let mut plant = Plant::new(p);
    plant.pour_kg(1e-3 * RHO * c.of("L")?);
    let u = if q.ends_with("actuator") {
        PlantInputs {
            is_actuator_energised: true,
            ..PlantInputs::IDLE
        }
    } else {
        PlantInputs {
            hand_stroke_m: 0.017,
            ..PlantInputs::IDLE
        }
    };
    Some(time_until(&mut plant, &u, Plant::level_m, c.of("m")?, 1e4))
}

fn pumping(p: PlantParams, litres: f64) -> f64 {
    let mut plant = Plant::new(p);
    plant.pour_kg(1e-3 * RHO * litres);
    let u = PlantInputs {
        is_pump_energised: true,
        ..PlantInputs::IDLE
    };
    plant.tick(&u);
    l_per_min_from_m3_per_s(plant.readings().flows.drain_m3_per_s)
}

fn pump_flow_l_per_min(c: &Prose) -> Option<f64> {
    let mut p = supplied(c);
    p.drain.pump_fitted_ratio = 1.0;
    p.drain.outlet_m = c.of("m")?;
    Some(pumping(p, c.of("L")?))
}

/// Bisects for the outlet at which a nearly empty tub (6 mm) just delivers.
fn highest_pumped_m() -> f64 {
    let (mut low, mut high) = (0.5, 5.0);
    let floor_m = 0.006;
    for _ in 0..40 {
        let mid = 0.5 * (low + high);
        let mut p = without_lags();
        p.load.dry_kg = 0.0;
        p.drain.pump_fitted_ratio = 1.0;
        p.drain.outlet_m = mid;
        let litres = 1e3 * tub::volume_m3(&p.tub, floor_m);
        if pumping(p, litres) > 0.0 {
            low = mid
        } else {
            high = mid
        }
    }
    low - floor_m
}

/// A bare cylinder with a hole: the tub without hose losses.
fn tank_time_s(c: &Prose) -> Option<f64> {
    const FOOT_M: f64 = 0.3048;
    let feet = c.all("ft");
    let mut p = without_lags();
    p.load.dry_kg = 0.0;
    let diameter_m = feet.get(1)? * FOOT_M;
    let area_m2 = PI / 4.0 * diameter_m * diameter_m;
    p.tub.area_low_m2 = area_m2;
    p.tub.area_high_m2 = area_m2;
    p.tub.overflow_m = 5.0;
    p.drain.bore_m = c.of("in")? * 0.0254;
    p.drain.loss_ratio = 1.0;
    p.drain.outlet_m = 0.0;
    let mut plant = Plant::new(p);
    plant.pour_kg(RHO * area_m2 * feet.first()? * FOOT_M);
    Some(time_until(
        &mut plant,
        &pulled(tubwright::plant::drive::MotorInput::Off),
        Plant::level_m,
        feet.get(2)? * FOOT_M,
        1e4,
    ))
}

fn actuator_time_s(c: &Prose) -> f64 {
    let mut p = reference();
    p.lever.play_m = c.after("play").map_or(p.lever.play_m, |mm| 1e-3 * mm);
    let travel_m = c.after("travel").map(|mm| 1e-3 * mm);
    let stroke_m = if c.says("clutch") {
        travel_m.unwrap_or(p.clutch.grips_m) + p.lever.play_m
    } else if c.says("brake starts") {
        travel_m.unwrap_or(p.brake.releases_m) + p.lever.play_m
    } else if c.says("brake") {
        travel_m.unwrap_or(p.brake.free_m) + p.lever.play_m
    } else if c.says("valve starts") {
        p.drain.valve_opens_m
    } else if c.says("valve") {
        p.drain.valve_open_m
    } else {
        c.of("mm").map_or(p.actuator.stroke_m, |mm| 1e-3 * mm)
    };
    // The wire must not stop short of the mark inside a tick.
    p.actuator.stroke_m = 0.05;
    let mut plant = Plant::new(p);
    let u = PlantInputs {
        is_actuator_energised: true,
        ..PlantInputs::IDLE
    };
    time_until(
        &mut plant,
        &u,
        |m| m.state().actuator.stroke_m,
        stroke_m - 1e-12,
        100.0,
    )
}

fn volume_at_l(gauge_pa: f64) -> f64 {
    let p = reference();
    let air_j = air_trap::vented(&p.trap, 101_325.0).air_j;
    let (mut low, mut high) = (0.0, 0.5);
    for _ in 0..60 {
        let mid = 0.5 * (low + high);
        let u = TrapInputs {
            level_m: mid,
            water_kg_per_m3: RHO,
            air_pa: 101_325.0,
        };
        let is_below = air_trap::balance(&p.trap, air_j, u).is_none_or(|b| b.gauge_pa < gauge_pa);
        if is_below { low = mid } else { high = mid }
    }
    1e3 * tub::volume_m3(&p.tub, low)
}

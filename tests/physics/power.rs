//! Where the power goes: what the plug gives is heat, friction, motion and fields, each worked out here
//! from its own definition (i²R, ½ J w², C dT) and not from the program's sums.

use std::sync::Arc;

use tubwright::machine::Machine;
use tubwright::machine::Setup;
use tubwright::network::Complex;
use tubwright::network::ElementId;
use tubwright::network::ElementKind;
use tubwright::plant::drive::DriveMode;
use tubwright::plant::drive::bearing_n_m;
use tubwright::plant::harness::COLD_K;
use tubwright::plant::harness::Harness;
use tubwright::plant::harness::Wiring;
use tubwright::plant::harness::steady_state::steady_state;
use tubwright::plant::params::PlantParams;
use tubwright::scenario::machines;

/// Supply = losses + shaft + what swings to and fro in fields, each element by its own value, in
/// every state of every machine, sound and with each of its faults.
#[test]
fn the_supply_covers_losses_shaft_and_stored_energy_element_by_element() {
    for pack in machines().expect("shipped files are sound").values() {
        let wired = Arc::new(pack.model.wiring.clone());
        let sound: &[_] = &[];
        let faulty = pack
            .model
            .faults
            .iter()
            .map(|fault| fault.wiring.as_slice());
        for changes in std::iter::once(sound).chain(faulty) {
            let mut wiring = Wiring::healthy(&wired);
            changes.iter().for_each(|change| wiring.apply(change, 1.0));
            for state in &wired.states {
                wiring.set_plugged(state.is_plugged);
                let what = format!("{} {} {changes:?}", pack.model.id, state.name);
                balance(&wiring, &state.closed, state.load_n_m, &what);
            }
        }
    }
}

fn balance(wiring: &Wiring, closed: &[ElementId], load_n_m: Option<f64>, what: &str) {
    let harness = Harness::new(wiring, &[]).expect("solvable");
    let state = steady_state(&harness, closed, load_n_m, COLD_K).expect("solvable");
    let point = &state.ac.network;
    let omega = 2.0 * std::f64::consts::PI * wiring.model.frequency_hz;
    let (mut given, mut lost_w, mut stored_var, mut size) = (Complex::ZERO, 0.0, 0.0, 0.0);
    for (index, e) in harness.netlist().elements().iter().enumerate() {
        let current = point.current_a(ElementId(index as u32));
        let volts = point.between_v(e.from, e.to);
        let power = volts * current.conjugate();
        let square = |x: Complex| x.re * x.re + x.im * x.im;
        size += power.abs();
        match e.kind {
            ElementKind::Source { .. } => given -= power,
            ElementKind::Resistor { ohm } if ohm.is_finite() => lost_w += square(current) * ohm,
            ElementKind::Capacitor { farad } => stored_var -= square(volts) * omega * farad,
            // A coil that shares its flux stores with its neighbour: taken whole.
            ElementKind::Inductor { .. } => {
                lost_w += power.re;
                stored_var += power.im;
            }
            _ => lost_w += power.re,
        }
    }
    let coils = harness.netlist().coils().iter().zip(&point.solution.coil_a);
    let motor = coils.fold(Complex::ZERO, |sum, (coil, current)| {
        sum + point.between_v(coil.from, coil.to) * current.conjugate()
    });
    size += motor.abs();
    // The motor: copper by i²R, shaft by torque and speed; iron and rotor heat are the rest, and
    // no part of it may be negative.
    let flow = &state.ac.flow;
    let params = &harness.wiring().model.motor.params;
    let shaft_w = flow.torque_n_m
        * (1.0 - state.ac.slip_ratio)
        * params.synchronous_rad_per_s(wiring.model.frequency_hz);
    let copper_w: f64 = flow.copper_20c_w.iter().sum();
    let iron_and_rotor_w = motor.re - copper_w - shaft_w;
    let floor = 1e-9 * size + 1e-6;
    assert!(
        iron_and_rotor_w >= -1e-6 * size - 1e-6,
        "{what}: {iron_and_rotor_w} W"
    );
    let taken = lost_w + copper_w + iron_and_rotor_w + shaft_w;
    assert!(
        (given.re - taken).abs() < floor,
        "{what}: {} W of {taken} W",
        given.re
    );
    let swinging = stored_var + motor.im;
    assert!(
        (given.im - swinging).abs() < floor,
        "{what}: {} var of {swinging}",
        given.im
    );
}

/// Sums over the ticks of a spin in which nothing slips, J.
#[derive(Debug, Default)]
struct Sums {
    input: f64,
    heat_stored: f64,
    heat_to_air: f64,
    motion_stored: f64,
    rubbed: f64,
}

/// Heat that motor and windings hold, J.
fn heat_j(p: &PlantParams, machine: &Machine) -> f64 {
    let heat = &machine.plant().state().heat;
    p.heat.winding_j_per_k * (heat.winding_k[0] + heat.winding_k[1])
        + p.heat.core_j_per_k * heat.core_k
}

fn add_tick(sums: &mut Sums, machine: &mut Machine) {
    const DT_S: f64 = 0.1;
    let p = machine.plant().params().clone();
    let before = machine.plant().state().clone();
    let heat_before_j = heat_j(&p, machine);
    machine.advance(1);
    let after = machine.plant().state().clone();
    let seen = machine.plant().readings();
    let ratio = p.belt.large_pulley_m / p.belt.small_pulley_m;
    let load_kg = p.load.dry_kg + before.tub.textile_kg;
    let basket_kg_m2 = p.basket.inertia_kg_m2 + load_kg * p.load.gyration_m * p.load.gyration_m;
    let joined_kg_m2 =
        p.rotor.inertia_kg_m2 + (p.belt.inertia_kg_m2 + basket_kg_m2) / (ratio * ratio);
    let (w0, w1) = (before.drive.rotor_rad_per_s, after.drive.rotor_rad_per_s);
    let rotor = 0.5 * (w0 + w1);
    let basket = rotor / ratio;
    let drag = p.basket.windage_n_m_s2
        + p.basket.water_drag_n_m_s2_per_m * seen.level_m
        + p.basket.foam_drag_n_m_s2 * seen.foam_ratio;
    let load_n_m = p.basket.bearing_n_m + drag * basket * basket;
    let motor_n_m = bearing_n_m(&p.rotor, &p.belt) + p.rotor.windage_n_m_s2 * rotor * rotor;
    let cooling = p.heat.core_air_w_per_k + p.heat.fan_w_per_k * rotor / 157.08;
    sums.input += seen.input_w * DT_S;
    sums.heat_stored += heat_j(&p, machine) - heat_before_j;
    sums.heat_to_air += cooling * (before.heat.core_k - p.site.air_k) * DT_S;
    sums.motion_stored += 0.5 * joined_kg_m2 * (w1 * w1 - w0 * w0);
    sums.rubbed += (motor_n_m * rotor + load_n_m * basket / p.belt.efficiency_ratio) * DT_S;
}

#[test]
fn the_energy_of_a_spin_is_found_again_as_heat_motion_and_friction() {
    for id in ["P", "T", "N"] {
        let model = Arc::clone(&machines().expect("shipped files are sound")[id].model);
        let mut machine = Machine::new(&model, Setup::default()).expect("sound");
        machine.settle_in(4.0, 298.15);
        machine.stand_ready();
        machine.start_program();
        let mut sums = Sums::default();
        while !machine.is_done() {
            let drive = &machine.plant().state().drive;
            let is_joined = drive.mode == DriveMode::Spin
                && drive.slip_ratio.abs() < 0.5
                && drive.rotor_rad_per_s > 5.0
                && machine.motor_energised()
                && machine.plant().readings().linkage.brake_ratio <= 0.0;
            if is_joined {
                add_tick(&mut sums, &mut machine);
            } else {
                machine.advance(1);
            }
        }
        let found = sums.heat_stored + sums.heat_to_air + sums.motion_stored + sums.rubbed;
        let ratio = found / sums.input;
        assert!(sums.input > 50_000.0, "{id}: {sums:?}");
        assert!((ratio - 1.0).abs() < 0.01, "{id}: {ratio} of {sums:?}");
    }
}

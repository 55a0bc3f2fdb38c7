//! What holds for whole machines whatever is wrong with them and whatever is done to them: random
//! fault sets at random severities, random hands.

use std::sync::Arc;

use proptest::prelude::*;

use tubwright::control::io::Key;
use tubwright::machine::ActiveFault;
use tubwright::machine::Machine;
use tubwright::machine::MachineModel;
use tubwright::machine::Onset;
use tubwright::machine::Setup;
use tubwright::network::Complex;
use tubwright::network::ElementId;
use tubwright::network::ElementKind;
use tubwright::plant::harness::COLD_K;
use tubwright::plant::harness::Harness;
use tubwright::plant::harness::SteadyState;
use tubwright::plant::harness::Wiring;
use tubwright::plant::harness::steady_state::steady_state;
use tubwright::scenario::machines;

fn model(id: &str) -> Arc<MachineModel> {
    Arc::clone(&machines().expect("shipped files are sound")[id].model)
}

/// Which machine, and up to four faults by their place in its catalogue, with severities.
fn faulty() -> impl Strategy<Value = (&'static str, Vec<(prop::sample::Index, f64)>)> {
    let severity = prop_oneof![Just(1.0), 0.0..1.0_f64];
    let fault = (any::<prop::sample::Index>(), severity);
    (
        prop::sample::select(vec!["P", "T", "N"]),
        prop::collection::vec(fault, 0..5),
    )
}

/// The machine held in one of its states.
fn held(
    id: &str,
    faults: &[(prop::sample::Index, f64)],
    state: prop::sample::Index,
) -> (Harness, SteadyState) {
    let model = model(id);
    let wired = Arc::new(model.wiring.clone());
    let mut wiring = Wiring::healthy(&wired);
    for (at, severity) in faults {
        for change in &at.get(&model.faults).wiring {
            wiring.apply(change, *severity);
        }
    }
    let state = state.get(&wired.states).clone();
    wiring.set_plugged(state.is_plugged);
    let harness = Harness::new(&wiring, &[]).expect("solvable");
    let solved = steady_state(&harness, &state.closed, state.load_n_m, COLD_K);
    (harness, solved.expect("solvable"))
}

/// Largest current left over at a node, over the sum of |y| (|va| + |vb|) there.
fn worst_residual(harness: &Harness, state: &SteadyState) -> f64 {
    let point = &state.ac.network;
    let (plan, solution) = (&point.base.plan, &point.solution);
    let net = solution.leaving_a(&point.base);
    let mut scale = vec![0.0; net.len()];
    let size_v = |nodes: [u32; 2]| {
        nodes
            .map(|n| solution.node_v[n as usize].abs())
            .iter()
            .sum::<f64>()
    };
    let mut add = |nodes: [u32; 2], flow: f64| nodes.map(|n| scale[n as usize] += flow);
    for (index, nodes) in plan.element_nodes.iter().enumerate() {
        let y = point
            .base
            .admittance_siemens(index, solution.contacts)
            .abs();
        let current = solution
            .current_a(&point.base, ElementId(index as u32))
            .abs();
        add(*nodes, (y * size_v(*nodes)).max(current));
    }
    for ([x, y], siemens) in plan.couplings.iter().zip(&point.base.coupled_siemens) {
        let ends = [x, y].map(|e| plan.element_nodes[*e as usize]);
        let size = ends.iter().map(|e| size_v(*e)).sum::<f64>();
        for nodes in ends {
            add(nodes, siemens.iter().map(|y| y.abs()).sum::<f64>() * size);
        }
    }
    let count = plan.coil_nodes.len();
    for (k, nodes) in plan.coil_nodes.iter().enumerate() {
        let row = &point.inner.coil_siemens[k * count..(k + 1) * count];
        let sizes = row
            .iter()
            .zip(&plan.coil_nodes)
            .map(|(y, n)| y.abs() * size_v(*n));
        add(*nodes, sizes.sum());
    }
    let root = &plan.merged.root;
    let alone = |n: &usize| root.iter().filter(|r| **r as usize == *n).count() == 1 && *n > 0;
    (0..harness.netlist().nodes().len())
        .filter(alone)
        .map(|n| net[n].abs() / scale[n].max(1e-300))
        .fold(0.0, f64::max)
}

/// Complex power into everything: what the sources give and everything else takes.
fn powers(harness: &Harness, state: &SteadyState) -> (Complex, Complex, f64) {
    let point = &state.ac.network;
    let (mut given, mut taken, mut size) = (Complex::ZERO, Complex::ZERO, 0.0);
    for (index, e) in harness.netlist().elements().iter().enumerate() {
        let current = point.current_a(ElementId(index as u32));
        let power = point.between_v(e.from, e.to) * current.conjugate();
        size += power.abs();
        if matches!(e.kind, ElementKind::Source { .. }) {
            given -= power;
        } else {
            taken += power;
        }
    }
    for (coil, current) in harness.netlist().coils().iter().zip(&point.solution.coil_a) {
        let power = point.between_v(coil.from, coil.to) * current.conjugate();
        size += power.abs();
        taken += power;
    }
    (given, taken, size)
}

/// One thing a hand may do, and how long is waited then, ticks.
type Act = (u8, u32);

fn perform(machine: &mut Machine, (act, wait): Act) {
    match act {
        0 => machine.press_power(),
        1 => machine.press_key(Key::Start),
        2 => machine.press_key(Key::Program),
        3 => machine.set_lid(!machine.hands().lid_open),
        4 => machine.set_tap(!machine.hands().tap_open),
        5 => machine.set_plugged(!machine.hands().plugged),
        6 => machine.press_key(Key::Service),
        7 => machine.pull_wire(0.017),
        8 => machine.pull_wire(0.0),
        9 => machine.bridge_lid(!machine.hands().lid_bridged),
        10 => machine.discharge_plug_pins(),
        11 => machine.discharge_run_capacitor(),
        _ => machine.press_key(Key::Level),
    }
    machine.advance(u64::from(wait));
}

fn check_limits(machine: &Machine, what: &str) {
    let state = machine.plant().state();
    let params = machine.plant().params();
    assert!(state.is_finite(), "{what}: {state:?}");
    let live = machine.live();
    let electric = [
        live.supply_v,
        live.regulated_v,
        live.line_a,
        live.earth_a,
        live.capacitor_v,
    ];
    assert!(
        electric.iter().all(|x| x.is_finite() && *x >= 0.0),
        "{what}: {live:?}"
    );
    let tub = &state.tub;
    let there_kg = tub.free_kg + tub.textile_kg + tub.drained_kg + tub.puddle_kg;
    assert!(
        (there_kg - tub.supplied_kg).abs() < 1e-6 * (1.0 + tub.supplied_kg),
        "{what}: {tub:?}"
    );
    let level_m = machine.plant().level_m();
    let rim_m = params.tub.overflow_m + 0.05;
    assert!((0.0..rim_m).contains(&level_m), "{what}: level {level_m} m");
    let textile = tub.textile_kg / params.load.dry_kg.max(1e-9);
    assert!(
        params.load.dry_kg <= 0.0 || textile < 4.0,
        "{what}: moisture {textile}"
    );
    for k in state.heat.winding_k {
        // Copper melts later; the protector or the balance of heat stops it long before.
        assert!((250.0..700.0).contains(&k), "{what}: winding {k} K");
    }
    assert!(
        (270.0..400.0).contains(&tub.bath_k),
        "{what}: bath {} K",
        tub.bath_k
    );
    let drive = &state.drive;
    assert!(drive.rotor_rad_per_s.abs() < 250.0, "{what}: {drive:?}");
    assert!(drive.basket_rad_per_s.abs() < 150.0, "{what}: {drive:?}");
    assert!(
        state.suspension.rim_m < 1.0,
        "{what}: {:?}",
        state.suspension
    );
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 120, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn any_faulty_machine_in_any_state_obeys_kirchhoff_and_keeps_its_power(
        (id, faults) in faulty(),
        state in any::<prop::sample::Index>(),
    ) {
        let (harness, solved) = held(id, &faults, state);
        let residual = worst_residual(&harness, &solved);
        prop_assert!(residual < 1e-12, "residual {residual}");
        // Supply = losses + shaft + stored: real and reactive power alike (Tellegen).
        let (given, taken, size) = powers(&harness, &solved);
        prop_assert!((given - taken).abs() <= 1e-9 * size + 1e-9, "{given:?} {taken:?}");
        // The motor's share: copper, iron and rotor heat are losses, so no shaft gives more than
        // the windings take while it drives.
        let flow = &solved.ac.flow;
        let motor = &harness.wiring().model.motor.params;
        let sync = motor.synchronous_rad_per_s(harness.wiring().model.frequency_hz);
        let shaft_w = flow.torque_n_m * (1.0 - solved.ac.slip_ratio) * sync;
        let copper_w = flow.copper_20c_w[0] + flow.copper_20c_w[1];
        prop_assert!(flow.input_w + 1e-9 * size >= shaft_w + 0.9 * copper_w * f64::from(u8::from(shaft_w > 0.0)),
            "{} W in, {shaft_w} W out, {copper_w} W copper", flow.input_w);
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 40, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn any_faulty_machine_in_any_hands_stays_within_physics(
        (id, faults) in faulty(),
        load_kg in 0.0..9.0_f64,
        room_k in 278.0..308.0_f64,
        acts in prop::collection::vec((0_u8..13, 1_u32..1500), 1..25),
    ) {
        let model = model(id);
        let active: Vec<ActiveFault> = faults.iter().map(|(at, severity)| ActiveFault {
            id: at.get(&model.faults).id.clone(),
            severity_ratio: *severity,
            onset: Some(Onset::Constant),
        }).collect();
        let mut machine = Machine::new(&model, Setup::of_faults(&active, 5)).expect("known");
        machine.settle_in(load_kg, room_k);
        machine.stand_ready();
        machine.start_program();
        let names: Vec<&str> = active.iter().map(|f| f.id.as_str()).collect();
        for act in acts {
            perform(&mut machine, act);
            check_limits(&machine, &format!("{id} {names:?} after {act:?}"));
        }
        prop_assert_eq!(machine.trouble(), None);
    }
}

/// Every fault of every machine, at two severities, a whole wash long: nothing leaves physics.
#[test]
fn every_fault_at_half_and_whole_severity_stays_within_physics() {
    for id in ["P", "T", "N"] {
        let model = model(id);
        for fault in &model.faults {
            for severity_ratio in [0.5, 1.0] {
                let active = ActiveFault {
                    id: fault.id.clone(),
                    severity_ratio,
                    onset: Some(Onset::Constant),
                };
                let mut machine =
                    Machine::new(&model, Setup::of_faults(&[active], 5)).expect("known");
                machine.settle_in(3.0, 295.0);
                machine.stand_ready();
                machine.start_program();
                for _ in 0..12 {
                    machine.advance(600);
                    check_limits(&machine, &format!("{id} {} at {severity_ratio}", fault.id));
                }
                assert_eq!(machine.trouble(), None, "{id} {}", fault.id);
            }
        }
    }
}

//! Every fault of the catalogue, at every severity, in every state: solved, and never odd.

use std::sync::Arc;

use tubwright::plant::harness::COLD_K;
use tubwright::plant::harness::Harness;
use tubwright::plant::harness::Wiring;
use tubwright::plant::harness::WiringModel;
use tubwright::plant::harness::steady_state::steady_state;
use tubwright::scenario::catalogue;
use tubwright::scenario::machine_files;
use tubwright::scenario::wiring_model;

fn check_all_states(mut wiring: Wiring, model: &Arc<WiringModel>, what: &str) {
    for state in &model.states {
        wiring.set_plugged(state.is_plugged);
        let harness = Harness::new(&wiring, &[]).expect("solvable");
        let solved = steady_state(&harness, &state.closed, state.load_n_m, COLD_K);
        let solved = solved.expect("solvable");
        let volts = &solved.ac.network.solution.node_v;
        let is_sound = volts.iter().all(|v| v.re.is_finite() && v.im.is_finite());
        assert!(
            is_sound && solved.ac.flow.torque_n_m.is_finite(),
            "{what} {}",
            state.name
        );
        let largest_v = volts.iter().map(|v| v.abs()).fold(0.0, f64::max);
        assert!(largest_v < 1000.0, "{what} {}: {largest_v} V", state.name);
    }
}

#[test]
fn every_fault_at_every_severity_solves_in_every_state() {
    for machine in machine_files().expect("sound files") {
        let model = wiring_model(&machine.id, &machine.wiring).expect("a good machine");
        for fault in &catalogue().expect("a sound catalogue").faults {
            let changes = fault
                .changes("faults.json", &machine.id, &model)
                .expect("good changes");
            for severity in [0.0, 0.01, 0.5, 0.99, 1.0] {
                let mut wiring = Wiring::healthy(&model);
                for change in &changes {
                    wiring.apply(change, severity);
                }
                if severity <= 0.0 {
                    assert_eq!(
                        wiring,
                        Wiring::healthy(&model),
                        "{} at severity 0",
                        fault.id
                    );
                } else if !changes.is_empty() {
                    check_all_states(wiring, &model, &format!("{} {severity}", fault.id));
                }
            }
        }
    }
}

#[test]
fn a_growing_joint_resistance_drops_ever_more_voltage() {
    // Severity moves a resistance geometrically: the drop rises with it, step by step.
    let machines = machine_files().expect("sound files");
    let p = machines.iter().find(|m| m.id == "P").expect("machine P");
    let model = wiring_model("P", &p.wiring).expect("a good machine");
    let faults = &catalogue().expect("a sound catalogue").faults;
    let joint = faults
        .iter()
        .find(|f| f.reference == "E09")
        .expect("the burnt joint");
    let changes = joint
        .changes("faults.json", "P", &model)
        .expect("good changes");
    let [a, b] = ["PL", "TBL"].map(|n| model.node(n).expect("known place"));
    let state = model.state("agitA").expect("known state").clone();
    let drops_v: Vec<f64> = (0..=10)
        .map(|step| {
            let mut wiring = Wiring::healthy(&model);
            for change in &changes {
                wiring.apply(change, f64::from(step) / 10.0);
            }
            let harness = Harness::new(&wiring, &[]).expect("solvable");
            let solved = steady_state(&harness, &state.closed, state.load_n_m, COLD_K);
            solved.expect("solvable").ac.network.between_v(a, b).abs()
        })
        .collect();
    assert!(drops_v.windows(2).all(|w| w[1] > w[0]), "{drops_v:?}");
    // Rows: 44.86 mV healthy, 3.372 V at full severity.
    assert!((drops_v[0] - 44.86e-3).abs() < 1e-4 && (drops_v[10] - 3.372).abs() < 5e-3);
}

#[test]
fn each_machine_has_at_least_ninety_distinct_faults_with_weight_source_and_onset() {
    let packs = tubwright::scenario::machines().expect("sound files");
    for (id, pack) in packs {
        let mut seen: Vec<String> = Vec::new();
        for fault in &pack.model.faults {
            assert!(fault.weight > 0.0, "{id} {}", fault.id);
            assert!(!fault.weight_source.is_empty(), "{id} {}", fault.id);
            let changes = (&fault.wiring, &fault.plant, &fault.control, fault.onset);
            seen.push(format!("{changes:?}"));
        }
        let named = seen.len();
        seen.sort_unstable();
        seen.dedup();
        println!("{id}: {} distinct of {named}", seen.len());
        assert!(seen.len() >= 90, "{id}: {} distinct faults", seen.len());
        // A fault under two names would be two causes that nothing tells apart.
        assert!(
            named - seen.len() <= named / 20,
            "{id}: {} doubled",
            named - seen.len()
        );
    }
}

//! How a reading answers to every value of a random network, against a central difference of the
//! reading itself.

#[path = "network/random.rs"]
mod random;

use std::sync::Arc;

use proptest::prelude::*;

use tubwright::network::Base;
use tubwright::network::Complex;
use tubwright::network::Contacts;
use tubwright::network::ElementKind;
use tubwright::network::Factors;
use tubwright::network::Frequency;
use tubwright::network::Inner;
use tubwright::network::Netlist;
use tubwright::network::NodeId;
use tubwright::network::Plan;
use tubwright::network::Solution;
use tubwright::network::SolveError;
use tubwright::network::Solver;
use tubwright::network::sensitivity::Probe;
use tubwright::network::sensitivity::voltage_gradient;

use crate::random::LINK_BELOW_V;
use crate::random::Random;
use crate::random::build;
use crate::random::random;
use crate::random::solve;

proptest! {
    #![proptest_config(ProptestConfig { cases: 1_000, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn the_gradient_of_a_reading_is_its_slope(r in random(), a in 0_usize..13, b in 0_usize..13, load in prop::option::of(1e2..1e6_f64)) {
        // Against a central difference in the size of each piece, source and coupled inductor.
        let (netlist, coils) = build(&r);
        let n = netlist.nodes().len();
        let (a, b) = (NodeId((a % n) as u32), NodeId((1 + b % (n - 1)) as u32));
        let plan = match Plan::new(&netlist, false) {
            Ok(plan) => Arc::new(plan),
            Err(SolveError::ShortedSource { .. }) => return Ok(()),
            Err(other) => panic!("{other}"),
        };
        let base = Base::new(plan, &netlist, Frequency::steady(50.0));
        let factors = Factors::new(&base, Contacts(u64::MAX)).expect("regular");
        let inner = Inner::new(&base, &factors, &coils).expect("regular");
        let solver = Solver { base: &base, factors: &factors, inner: &inner };
        let load_siemens = Complex::new(load.map_or(0.0, |ohm| 1.0 / ohm), 0.0);
        let probe = Probe { a, b, load_siemens };
        let s = Complex::new(0.0, 100.0 * std::f64::consts::PI);
        let gradient = voltage_gradient(&netlist, &solver, s, probe);
        let reading = |r: &Random| {
            let (mut netlist, coils) = build(r);
            if let Some(ohm) = load {
                netlist.resistor("meter", a, b, ohm);
            }
            let (_, solution) = solve(&netlist, Frequency::steady(50.0), &coils).expect("as before");
            solution.between_v(a, b)
        };
        let named = |name: &str| netlist.elements().iter().position(|e| e.name == name).expect("built");
        // What rounding leaves of a difference, see `spread_ratio`.
        let all = solver.solve();
        let largest = all.node_v.iter().map(|v| v.abs()).fold(1.0, f64::max);
        let rounding = 10.0 * spread_ratio(&netlist, &base, &all) * f64::EPSILON * largest;
        // Near resonance a reading is no straight line even over a small step: what twice the step shows
        // otherwise is no error of the gradient.
        let close = |name: &str, is: Complex, of: &dyn Fn(f64) -> Complex, rounding: f64| {
            let (slope, wider) = (of(1.0), of(2.0));
            let bound = 1e-5 * largest + 1e-4 * slope.abs() + 2.0 * (wider - slope).abs() + rounding;
            prop_assert!((is - slope).abs() < bound, "{}: {:?}, the slope is {:?}", name, is, slope);
            Ok(())
        };
        let check = |name: &str, value: f64, step: f64, changed: &dyn Fn(f64) -> Random| {
            let slope = |times: f64| {
                let rise = reading(&changed(times)) - reading(&changed(-times));
                rise * Complex::real(value / (2.0 * times * step))
            };
            let per_ratio = gradient.by_element[named(name)] * Complex::real(value);
            close(name, per_ratio, &slope, rounding * value / step)
        };
        for k in 0..r.pieces.len() {
            const STEP: f64 = 1e-4;
            // A piece is as large as ten to three times this.
            let ratio = 3.0 * std::f64::consts::LN_10 * STEP;
            let value = value_of(&netlist.elements()[named(&format!("e{k}"))].kind);
            check(&format!("e{k}"), value, value * ratio, &|times| {
                let mut changed = r.clone();
                changed.pieces[k].3 += times * STEP;
                changed
            })?;
        }
        for k in 0..r.sources.len() {
            const STEP_V: f64 = 1e-2;
            if r.sources[k].1.abs() > LINK_BELOW_V + 1.0 {
                check(&format!("v{k}"), 1.0, STEP_V, &|times| {
                    let mut changed = r.clone();
                    changed.sources[k].1 += times * STEP_V;
                    changed
                })?;
            }
        }
        for k in 0..netlist.coils().len() {
            // A small resistance in series with coil k takes from every admittance what flows through it.
            const OHM: f64 = 1e-3;
            let with = |ohm: f64| {
                let (mut netlist, mut y) = build(&r);
                if let Some(ohm) = load {
                    netlist.resistor("meter", a, b, ohm);
                }
                for i in 0..2 {
                    for j in 0..2 {
                        y[2 * i + j] -= coils[2 * i + k] * coils[2 * k + j] * Complex::real(ohm);
                    }
                }
                let (_, solution) = solve(&netlist, Frequency::steady(50.0), &y).expect("as before");
                solution.between_v(a, b)
            };
            let slope = |times: f64| {
                let rise = with(times * OHM) - with(-times * OHM);
                rise * Complex::real(1.0 / (2.0 * times * OHM))
            };
            close(&format!("coil {k}"), gradient.by_coil_ohm[k], &slope, rounding / OHM)?;
        }
        if let Some((l1, l2, _)) = r.coupling {
            for (name, value) in [("primary", l1), ("secondary", l2)] {
                check(name, value, value * 1e-4, &|times| {
                    let mut changed = r.clone();
                    let (first, second, _) = changed.coupling.as_mut().expect("has one");
                    let inductor = if name == "primary" { first } else { second };
                    *inductor *= 1.0 + times * 1e-4;
                    changed
                })?;
            }
        }
    }
}

/// The number of an element that its gradient is by.
fn value_of(kind: &ElementKind) -> f64 {
    match *kind {
        ElementKind::Resistor { ohm } => ohm,
        ElementKind::Capacitor { farad } => farad,
        ElementKind::Inductor { henry } => henry,
        ElementKind::Contact { closed_ohm, .. } => closed_ohm,
        ElementKind::Source { ac_v, .. } => ac_v,
    }
}

/// Stiffest over softest branch. The solver adds admittances at a node, so a soft branch beside a
/// stiff one is known to this many times the rounding of a number, and no voltage better.
fn spread_ratio(netlist: &Netlist, base: &Base<Complex>, solution: &Solution<Complex>) -> f64 {
    let (mut softest, mut stiffest) = (f64::INFINITY, 0.0);
    for (index, e) in netlist.elements().iter().enumerate() {
        let y = base.admittance_siemens(index, solution.contacts).abs();
        if y > 0.0 && e.from != e.to {
            softest = f64::min(softest, y);
            stiffest = f64::max(stiffest, y);
        }
    }
    stiffest / softest
}

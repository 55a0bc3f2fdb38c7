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
use tubwright::network::NodeId;
use tubwright::network::Plan;
use tubwright::network::SolveError;
use tubwright::network::Solver;
use tubwright::network::sensitivity::Probe;
use tubwright::network::sensitivity::voltage_gradient;

use crate::random::LINK_BELOW_V;
use crate::random::Random;
use crate::random::build;
use crate::random::random;
use crate::random::solve;
use crate::random::spread_ratio;

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
        let check = |name: &str, value: f64, step: f64, up: &Random, down: &Random| {
            let per_ratio = gradient.by_element[named(name)] * Complex::new(value, 0.0);
            let slope = (reading(up) - reading(down)) * Complex::new(value / (2.0 * step), 0.0);
            let bound = 1e-5 * largest + 1e-4 * slope.abs() + rounding * value / step;
            prop_assert!((per_ratio - slope).abs() < bound, "{}: {:?}, the slope is {:?}", name, per_ratio, slope);
            Ok(())
        };
        for k in 0..r.pieces.len() {
            const STEP: f64 = 1e-4;
            let (mut up, mut down) = (r.clone(), r.clone());
            up.pieces[k].3 += STEP;
            down.pieces[k].3 -= STEP;
            // A piece is as large as ten to three times this.
            let ratio = 3.0 * std::f64::consts::LN_10 * STEP;
            let value = value_of(&netlist.elements()[named(&format!("e{k}"))].kind);
            check(&format!("e{k}"), value, value * ratio, &up, &down)?;
        }
        for k in 0..r.sources.len() {
            if r.sources[k].1.abs() > LINK_BELOW_V + 1.0 {
                let (mut up, mut down) = (r.clone(), r.clone());
                up.sources[k].1 += 1e-2;
                down.sources[k].1 -= 1e-2;
                check(&format!("v{k}"), 1.0, 1e-2, &up, &down)?;
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
            let slope = (with(OHM) - with(-OHM)) * Complex::real(1.0 / (2.0 * OHM));
            let bound = 1e-5 * largest + 1e-4 * slope.abs() + rounding / OHM;
            let is = gradient.by_coil_ohm[k];
            prop_assert!((is - slope).abs() < bound, "coil {}: {:?}, the slope is {:?}", k, is, slope);
        }
        if let Some((l1, l2, _)) = r.coupling {
            for (name, value) in [("primary", l1), ("secondary", l2)] {
                let (mut up, mut down) = (r.clone(), r.clone());
                for (changed, sign) in [(&mut up, 1.0), (&mut down, -1.0)] {
                    let (first, second, _) = changed.coupling.as_mut().expect("has one");
                    let inductor = if name == "primary" { first } else { second };
                    *inductor *= 1.0 + sign * 1e-4;
                }
                check(name, value, value * 1e-4, &up, &down)?;
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

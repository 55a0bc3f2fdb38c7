//! The network solver against closed forms, and what it says of networks that have no answer.

use std::sync::Arc;

use faer::linalg::solvers::Solve;

use tubwright::network::Base;
use tubwright::network::Complex;
use tubwright::network::Contacts;
use tubwright::network::Direct;
use tubwright::network::Drive;
use tubwright::network::ElementId;
use tubwright::network::ElementKind;
use tubwright::network::Frequency;
use tubwright::network::Netlist;
use tubwright::network::NodeId;
use tubwright::network::Plan;
use tubwright::network::Solution;
use tubwright::network::SolveError;
use tubwright::network::solution::solve_once;

/// Numbers of a network and its voltages.
type Solved<N> = Result<(Base<N>, Solution<N>), SolveError>;

/// Numbers of a network and its voltages, every contact closed.
fn solve<D: Drive>(netlist: &Netlist, drive: D, coils: &[D::N]) -> Solved<D::N> {
    let plan = Arc::new(Plan::new(netlist, D::IS_DIRECT)?);
    let base = Base::new(plan, netlist, drive);
    let solution = solve_once(&base, Contacts(u64::MAX), coils)?;
    Ok((base, solution))
}

#[test]
fn milliohms_beside_1e11_ohm_keep_all_their_digits() {
    // A ladder of 1 milliohm links whose last node alone leaks to earth: 1 A in at the top
    // lifts it to exactly 1e11 + 19e-3 V, each link drops exactly 1 mV.
    let mut netlist = Netlist::new();
    let nodes: Vec<NodeId> = (0..20)
        .map(|k| netlist.add_node(&format!("n{k}")))
        .collect();
    for pair in nodes.windows(2) {
        netlist.resistor("link", pair[0], pair[1], 1e-3);
    }
    netlist.resistor("leak", nodes[19], NodeId::EARTH, 1e11);
    let plan = Arc::new(Plan::new(&netlist, true).expect("connected"));
    let base = Base::new(plan, &netlist, Direct);
    let factors = tubwright::network::Factors::new(&base, Contacts(0)).expect("regular");
    let inner = tubwright::network::Inner::new(&base, &factors, &[]).expect("no coils");
    let solver = tubwright::network::Solver {
        base: &base,
        factors: &factors,
        inner: &inner,
    };
    let exact = 1e11 + 19e-3;
    let v = solver.inject(&[(nodes[0], 1.0)]);
    assert!((v.node_v[1] / exact - 1.0).abs() < 1e-14, "{}", v.node_v[1]);
    let through = solver.inject(&[(nodes[0], 1.0), (nodes[19], -1.0)]);
    let drop_v = through.between_v(nodes[0], nodes[19]);
    assert!((drop_v / 19e-3 - 1.0).abs() < 1e-10, "{drop_v}");
    // The same by plain elimination shows what is gained.
    let mut a = faer::Mat::<f64>::zeros(20, 20);
    for k in 0..19 {
        a[(k, k)] += 1e3;
        a[(k + 1, k + 1)] += 1e3;
        a[(k, k + 1)] -= 1e3;
        a[(k + 1, k)] -= 1e3;
    }
    a[(19, 19)] += 1e-11;
    let mut b = faer::Mat::<f64>::zeros(20, 1);
    b[(0, 0)] = 1.0;
    let plain = a.partial_piv_lu().solve(&b)[(0, 0)];
    assert!(
        plain.is_nan() || (plain / exact - 1.0).abs() > 1e-6,
        "{plain}"
    );
}

#[test]
fn a_loaded_transformer_has_its_textbook_input_impedance() {
    // Z = j w L1 + (w M)^2 / (j w L2 + R)
    let (l1, l2, factor, ohm, w) = (40.0, 0.14, 0.99, 80.0, 100.0 * std::f64::consts::PI);
    let mut netlist = Netlist::new();
    let [p, s] = ["p", "s"].map(|n| netlist.add_node(n));
    netlist.add(
        "v",
        p,
        NodeId::EARTH,
        ElementKind::Source {
            ac_v: 230.0,
            dc_v: 0.0,
        },
    );
    let x = netlist.add("l1", p, NodeId::EARTH, ElementKind::Inductor { henry: l1 });
    let y = netlist.add("l2", s, NodeId::EARTH, ElementKind::Inductor { henry: l2 });
    netlist.couple("k", x, y, factor);
    netlist.resistor("load", s, NodeId::EARTH, ohm);
    let (base, solution) = solve(&netlist, Frequency::steady(50.0), &[]).expect("regular");
    let m = factor * (l1 * l2).sqrt();
    let z = Complex::new(0.0, w * l1) + Complex::real(w * w * m * m) / Complex::new(ohm, w * l2);
    let current = solution.current_a(&base, x);
    let error = (current * z - Complex::real(230.0)).abs();
    assert!(error < 1e-9, "{error}");
    // What the source gives enters the coil.
    let given = solution.current_a(&base, ElementId(0));
    assert!((given + current).abs() < 1e-12);
}

#[test]
fn a_place_without_path_to_earth_is_named() {
    let mut netlist = Netlist::new();
    let [a, b, c] = ["fed", "pulled 1", "pulled 2"].map(|n| netlist.add_node(n));
    netlist.add(
        "v",
        a,
        NodeId::EARTH,
        ElementKind::Source {
            ac_v: 1.0,
            dc_v: 1.0,
        },
    );
    netlist.resistor("loose", b, c, 10.0);
    let error = solve(&netlist, Direct, &[]).expect_err("it floats");
    assert_eq!(
        error,
        SolveError::Floating {
            node: "pulled 1".to_owned()
        }
    );
}

#[test]
fn a_capacitor_does_not_hold_a_place_at_dc_but_does_in_ac() {
    let mut netlist = Netlist::new();
    let a = netlist.add_node("a");
    netlist.add(
        "c",
        a,
        NodeId::EARTH,
        ElementKind::Capacitor { farad: 1e-6 },
    );
    let error = solve(&netlist, Direct, &[]).expect_err("it floats");
    assert_eq!(
        error,
        SolveError::Floating {
            node: "a".to_owned()
        }
    );
    assert!(solve(&netlist, Frequency::steady(50.0), &[]).is_ok());
}

#[test]
fn a_flux_link_alone_does_not_hold_a_place() {
    let mut netlist = Netlist::new();
    let [a, b, c] = ["a", "b", "c"].map(|n| netlist.add_node(n));
    netlist.add(
        "v",
        a,
        NodeId::EARTH,
        ElementKind::Source {
            ac_v: 1.0,
            dc_v: 0.0,
        },
    );
    let x = netlist.add("l1", a, NodeId::EARTH, ElementKind::Inductor { henry: 1.0 });
    let y = netlist.add("l2", b, c, ElementKind::Inductor { henry: 1.0 });
    netlist.couple("k", x, y, 0.9);
    netlist.resistor("load", b, c, 10.0);
    let error = solve(&netlist, Frequency::steady(50.0), &[]).expect_err("the secondary floats");
    assert_eq!(
        error,
        SolveError::Floating {
            node: "b".to_owned()
        }
    );
}

#[test]
fn a_shorted_source_is_named() {
    let mut netlist = Netlist::new();
    let [a, b] = ["a", "b"].map(|n| netlist.add_node(n));
    netlist.add(
        "battery",
        a,
        NodeId::EARTH,
        ElementKind::Source {
            ac_v: 5.0,
            dc_v: 5.0,
        },
    );
    netlist.resistor("bridge", b, NodeId::EARTH, 0.0);
    netlist.add("coil", a, b, ElementKind::Inductor { henry: 1.0 });
    let error = solve(&netlist, Direct, &[]).expect_err("shorted at DC");
    assert_eq!(
        error,
        SolveError::ShortedSource {
            element: "battery".to_owned()
        }
    );
    assert!(solve(&netlist, Frequency::steady(50.0), &[]).is_ok());
}

#[test]
fn links_and_coils_at_dc_carry_the_current_of_what_hangs_on_them() {
    let mut netlist = Netlist::new();
    let [a, b, c] = ["a", "b", "c"].map(|n| netlist.add_node(n));
    netlist.add(
        "battery",
        a,
        NodeId::EARTH,
        ElementKind::Source {
            ac_v: 0.0,
            dc_v: 12.0,
        },
    );
    let link = netlist.resistor("link", a, b, 0.0);
    let coil = netlist.add("coil", b, c, ElementKind::Inductor { henry: 1.0 });
    netlist.resistor("lamp", c, NodeId::EARTH, 6.0);
    netlist.resistor("lamp 2", b, NodeId::EARTH, 12.0);
    let (base, solution) = solve(&netlist, Direct, &[]).expect("regular");
    assert!((solution.current_a(&base, coil) - 2.0).abs() < 1e-14);
    assert!((solution.current_a(&base, link) - 3.0).abs() < 1e-14);
    assert!((solution.current_a(&base, ElementId(0)) + 3.0).abs() < 1e-14);
}

#[test]
fn a_lossless_resonance_is_named_with_its_node() {
    // At 1 rad/s a henry and a farad side by side let nothing through together.
    let mut netlist = Netlist::new();
    let [a, b] = ["feed", "trap"].map(|n| netlist.add_node(n));
    netlist.resistor("load", a, NodeId::EARTH, 1.0);
    netlist.add("l", b, NodeId::EARTH, ElementKind::Inductor { henry: 1.0 });
    netlist.add("c", b, NodeId::EARTH, ElementKind::Capacitor { farad: 1.0 });
    let at = Frequency::steady(0.5 * std::f64::consts::FRAC_1_PI);
    let error = solve(&netlist, at, &[]).expect_err("resonant");
    assert_eq!(
        error,
        SolveError::Resonant {
            node: "trap".to_owned()
        }
    );
}

#[test]
fn a_coil_that_undoes_all_that_holds_its_node_is_named_with_it() {
    let mut netlist = Netlist::new();
    let [a, b] = ["feed", "terminal"].map(|n| netlist.add_node(n));
    netlist.resistor("load", a, NodeId::EARTH, 1.0);
    netlist.resistor("held by", b, NodeId::EARTH, 10.0);
    netlist.add_coil("odd", b, NodeId::EARTH);
    let error = solve(&netlist, Direct, &[-0.1]).expect_err("nothing is left");
    assert_eq!(
        error,
        SolveError::Resonant {
            node: "terminal".to_owned()
        }
    );
}

#[test]
fn couplings_join_two_inductors_once_and_not_wholly() {
    let coupled = |factor: f64, wrong: Option<bool>| {
        let mut netlist = Netlist::new();
        let [a, b] = ["a", "b"].map(|n| netlist.add_node(n));
        let resistor = netlist.resistor("r", a, NodeId::EARTH, 1.0);
        netlist.resistor("s", b, NodeId::EARTH, 1.0);
        let coil = ElementKind::Inductor { henry: 1.0 };
        let x = netlist.add("x", a, NodeId::EARTH, coil);
        let y = netlist.add("y", b, NodeId::EARTH, coil);
        let z = netlist.add("z", a, b, coil);
        netlist.couple("k", x, y, factor);
        match wrong {
            Some(true) => netlist.couple("to no coil", z, resistor, 0.5),
            Some(false) => netlist.couple("again", y, z, 0.5),
            None => {}
        }
        netlist.check()
    };
    assert_eq!(coupled(0.99, None), Ok(()));
    assert_eq!(coupled(-0.99, None), Ok(()));
    for factor in [1.0, -1.0, f64::NAN] {
        let error = coupled(factor, None).expect_err("not below 1");
        assert!(
            error
                .to_string()
                .ends_with("it must be above -1 and below 1"),
            "{error}"
        );
    }
    for (wrong, name) in [(true, "to no coil"), (false, "again")] {
        let coupling = name.to_owned();
        assert_eq!(
            coupled(0.5, Some(wrong)),
            Err(SolveError::BadCoupling { coupling })
        );
    }
}

#[test]
fn a_wire_that_is_off_has_any_resistance_but_none_below_nothing() {
    let of = |ohm: f64| {
        let mut netlist = Netlist::new();
        let a = netlist.add_node("a");
        netlist.resistor("wire", a, NodeId::EARTH, ohm);
        netlist.check()
    };
    let coil = |henry: f64| {
        let mut netlist = Netlist::new();
        let a = netlist.add_node("a");
        netlist.add("coil", a, NodeId::EARTH, ElementKind::Inductor { henry });
        netlist.check()
    };
    assert_eq!(coil(1e-9), Ok(()));
    assert!(coil(0.0).is_err() && coil(-1.0).is_err());
    assert_eq!(of(f64::INFINITY), Ok(()));
    assert_eq!(of(0.0), Ok(()));
    for ohm in [f64::NEG_INFINITY, f64::NAN, -1.0] {
        assert!(of(ohm).is_err(), "{ohm}");
    }
}

#[test]
fn bad_values_are_named() {
    let mut netlist = Netlist::new();
    let a = netlist.add_node("a");
    netlist.resistor("odd", a, NodeId::EARTH, -3.0);
    let error = solve(&netlist, Direct, &[]).expect_err("negative");
    assert_eq!(
        error.to_string(),
        "element odd has the value -3; it must be 0 ohm or more"
    );
}

//! The motor model against published worked examples (recalled from memory: Fitzgerald,
//! Kingsley, Umans, Electric Machinery), its own limits, and a table read between samples.

#[path = "validation/mod.rs"]
mod validation;

use tubwright::network::Complex;
use tubwright::network::Frequency;
use tubwright::plant::harness::COLD_K;
use tubwright::plant::harness::MotorFlow;
use tubwright::plant::harness::MotorParams;
use tubwright::plant::harness::coils::Coils;
use tubwright::plant::harness::coils::invert;
use tubwright::plant::harness::motor::MotorFaults;
use tubwright::plant::harness::motor::TurnShort;

/// A motor with two equal windings and no iron or friction loss.
use validation::Check;

fn motor(poles: u32, r1: f64, x1: f64, xm: f64, r2: f64, x2: f64) -> MotorParams {
    MotorParams {
        poles,
        rated_frequency_hz: 60.0,
        winding_ohm: [r1; 2],
        leakage_ohm: [x1; 2],
        turns_ratio: 1.0,
        magnetising_ohm: xm,
        rotor_ohm: r2,
        rotor_leakage_ohm: x2,
        iron_loss_ohm: f64::INFINITY,
        friction_n_m: 0.0,
        windage_w: 0.0,
        common_leakage_ratio: 0.5,
    }
}

/// Winding currents and what the motor does with ideal voltages behind series impedances.
fn run(
    motor: &MotorParams,
    faults: &MotorFaults,
    slip: f64,
    volts: [Complex; 2],
    series: Complex,
) -> (Vec<Complex>, MotorFlow) {
    let s = Frequency::steady(60.0).s_rad_per_s;
    let coils = Coils::of(motor, faults);
    let port = motor
        .port(&coils, faults, COLD_K, slip, s)
        .expect("regular");
    // Impedances seen from the leads, the series impedance in winding 2.
    let mut z = port.siemens;
    invert(&mut z, 2).expect("regular");
    let inner = z;
    z[1][1] += series;
    invert(&mut z, 2).expect("regular");
    let i: Vec<Complex> = (0..2)
        .map(|k| z[k][0] * volts[0] + z[k][1] * volts[1])
        .collect();
    let v: Vec<Complex> = (0..2)
        .map(|k| inner[k][0] * i[0] + inner[k][1] * i[1])
        .collect();
    let flow = motor.flow(&coils, &port, &v, &i, 60.0);
    (i, flow)
}

fn close(value: f64, wanted: f64, share: f64, what: &str) {
    let check = Check {
        domain: "motor".to_owned(),
        source: "worked examples of a textbook of electric machinery, from memory".to_owned(),
        condition: what.to_owned(),
        expected: wanted,
        computed: value,
        unit: String::new(),
        allowed: share * wanted.abs(),
    };
    validation::leave(&format!("motor, {what}, {wanted}"), &[check]);
    assert!(
        (value - wanted).abs() <= share * wanted.abs(),
        "{what}: {value}, not {wanted}"
    );
}

#[test]
fn a_single_winding_motor_runs_as_in_the_book() {
    // 1/4 hp, 110 V, 60 Hz, 4 poles, slip 0.05, core loss 24 W, friction 13 W.
    let m = motor(4, 2.02, 2.79, 66.8, 4.12, 2.12);
    let s = Frequency::steady(60.0).s_rad_per_s;
    let [zf, zb] = m.field_ohm(0.05, s);
    close(zf.re, 15.9, 0.005, "Re Zf");
    close(zf.im, 20.1, 0.005, "Im Zf");
    close(zb.re, 0.99, 0.005, "Re Zb");
    close(zb.im, 1.06, 0.005, "Im Zb");
    let open = MotorFaults {
        series_ohm: [0.0, 1e11],
        ..MotorFaults::default()
    };
    let volts = [Complex::real(110.0), Complex::ZERO];
    let (i, flow) = run(&m, &open, 0.05, volts, Complex::ZERO);
    close(i[0].abs(), 3.59, 0.005, "stator current");
    close(
        flow.input_w / (110.0 * i[0].abs()),
        0.62,
        0.005,
        "power factor",
    );
    let speed = 0.95 * m.synchronous_rad_per_s(60.0);
    close(flow.torque_n_m * speed - 37.0, 147.0, 0.005, "output");
}

#[test]
fn an_unbalanced_two_phase_motor_runs_as_in_the_book() {
    // 5 hp, 220 V, 60 Hz, 4 poles, fed by 230 V and 210 V leading by 80 degrees.
    let m = motor(4, 0.534, 2.45, 70.1, 0.956, 2.96);
    let volts = [
        Complex::real(230.0),
        Complex::polar(210.0, 80.0_f64.to_radians()),
    ];
    let (i, flow) = run(&m, &MotorFaults::default(), 0.05, volts, Complex::ZERO);
    close(i[0].abs(), 15.2, 0.005, "first current");
    close(i[0].angle_rad().to_degrees(), -31.0, 0.005, "its angle");
    close(i[1].abs(), 7.4, 0.01, "second current");
    close(i[1].angle_rad().to_degrees(), 49.1, 0.005, "its angle");
    let mechanical_w = flow.torque_n_m * 0.95 * m.synchronous_rad_per_s(60.0);
    close(mechanical_w, 3928.0, 0.002, "mechanical power");
}

#[test]
fn a_motor_with_unequal_windings_and_a_capacitor_runs_as_in_the_book() {
    // 2 poles, 230 V 60 Hz, 35 uF, 3500 r/min, given by inductances; rotor leakage is put on
    // the stator by choosing the ratio main mutual / rotor.
    let w = 120.0 * std::f64::consts::PI;
    let (rotor_h, main_h, aux_h) = (4.70e-6, 0.588e-3, 0.909e-3);
    let k = main_h / rotor_h;
    let (xm, a) = (w * main_h * k, aux_h / main_h);
    let m = MotorParams {
        winding_ohm: [0.58, 3.37],
        leakage_ohm: [w * 80.6e-3 - xm, w * 196e-3 - a * a * xm],
        turns_ratio: a,
        ..motor(2, 0.58, 0.0, xm, 37.6e-6 * k * k, 0.0)
    };
    let slip = 100.0 / 3600.0;
    let capacitor = Complex::new(0.0, -1.0 / (w * 35e-6));
    let volts = [Complex::real(230.0); 2];
    let (i, flow) = run(&m, &MotorFaults::default(), slip, volts, capacitor);
    close(i[0].abs(), 15.9, 0.005, "main current");
    close(i[0].angle_rad().to_degrees(), -37.6, 0.005, "its angle");
    close(i[1].abs(), 5.20, 0.005, "auxiliary current");
    close((i[0] + i[1]).abs(), 18.5, 0.005, "source current");
    close((i[1] * capacitor).abs(), 394.0, 0.005, "capacitor voltage");
    close(flow.torque_n_m, 9.74, 0.005, "torque");
    close(230.0 * (i[0] + i[1]).re, 3936.0, 0.005, "input power");
}

#[test]
fn a_rotor_at_synchronous_speed_in_a_balanced_field_gives_no_torque() {
    let m = motor(4, 0.5, 2.0, 70.0, 1.0, 3.0);
    let volts = [Complex::real(200.0), Complex::new(0.0, 200.0)];
    let (i, flow) = run(&m, &MotorFaults::default(), 0.0, volts, Complex::ZERO);
    assert!(flow.torque_n_m.abs() < 1e-9, "{}", flow.torque_n_m);
    assert!((i[0].abs() - i[1].abs()).abs() < 1e-9);
}

#[test]
fn shorted_turns_beside_the_line_change_current_but_not_torque() {
    // Follows from the equations for a perfect short in the winding fed directly.
    let m = motor(4, 20.0, 24.0, 250.0, 40.0, 22.0);
    let short = TurnShort {
        winding: 0,
        share_ratio: 0.1,
        short_ohm: 0.0,
    };
    let faults = MotorFaults {
        short: Some(short),
        ..MotorFaults::default()
    };
    let s = Frequency::steady(60.0).s_rad_per_s;
    let coils = Coils::of(&m, &faults);
    assert_eq!(coils.count, 3);
    let port = m.port(&coils, &faults, COLD_K, 0.08, s).expect("regular");
    let volts = [
        Complex::real(230.0),
        Complex::ZERO,
        Complex::new(0.0, 230.0),
    ];
    let mut y = port.siemens;
    let currents = |y: &[[Complex; 4]; 4]| -> Vec<Complex> {
        (0..3)
            .map(|k| y[k][0] * volts[0] + y[k][1] * volts[1] + y[k][2] * volts[2])
            .collect()
    };
    let i = currents(&y);
    let faulty = m.flow(&coils, &port, &volts, &i, 60.0);
    let healthy_volts = [volts[0], volts[2]];
    let (healthy_i, healthy) = run(
        &m,
        &MotorFaults::default(),
        0.08,
        healthy_volts,
        Complex::ZERO,
    );
    assert!(
        i[0].abs() > 1.2 * healthy_i[0].abs(),
        "{} {}",
        i[0].abs(),
        healthy_i[0].abs()
    );
    // Copper drop of the line winding changes with its current: equal only without it.
    let no_copper = MotorParams {
        winding_ohm: [1e-9; 2],
        ..m
    };
    let port = no_copper
        .port(&coils, &faults, COLD_K, 0.08, s)
        .expect("regular");
    y = port.siemens;
    let without = no_copper.flow(&coils, &port, &volts, &currents(&y), 60.0);
    let (_, wanted) = run(
        &no_copper,
        &MotorFaults::default(),
        0.08,
        healthy_volts,
        Complex::ZERO,
    );
    close(
        faulty.torque_n_m,
        healthy.torque_n_m,
        0.1,
        "torque with copper",
    );
    close(
        without.torque_n_m,
        wanted.torque_n_m,
        1e-6,
        "torque without copper",
    );
}

#[test]
fn a_rotor_driven_faster_than_its_field_generates() {
    // Published theory of the induction machine: at negative slip the torque holds the rotor back,
    // power flows to the supply, and less of it than the shaft puts in.
    let m = motor(4, 0.534, 2.45, 70.1, 0.956, 2.96);
    let volts = [Complex::real(220.0), Complex::new(0.0, 220.0)];
    for slip in [-0.02, -0.05, -0.10] {
        let (_, flow) = run(&m, &MotorFaults::default(), slip, volts, Complex::ZERO);
        let speed = (1.0 - slip) * m.synchronous_rad_per_s(60.0);
        let put_in_w = -flow.torque_n_m * speed;
        assert!(
            flow.torque_n_m < 0.0 && flow.input_w < 0.0,
            "{slip}: {flow:?}"
        );
        assert!(
            -flow.input_w < put_in_w,
            "{slip}: {} of {put_in_w} W",
            -flow.input_w
        );
    }
    // Balanced and without iron loss, rotor heat is slip times the power of the air gap: published.
    let (_, flow) = run(&m, &MotorFaults::default(), -0.05, volts, Complex::ZERO);
    let copper_w: f64 = flow.copper_20c_w.iter().sum();
    let gap_w = flow.input_w - copper_w;
    let shaft_w = flow.torque_n_m * 1.05 * m.synchronous_rad_per_s(60.0);
    close(shaft_w, 1.05 * gap_w, 1e-3, "shaft power");
}

#[test]
fn a_motor_reversed_while_it_runs_brakes_hard_and_draws_more_than_at_rest() {
    // Plugging, published: at a slip near 2 the torque opposes the motion and the current exceeds
    // the locked rotor's.
    let m = motor(4, 21.0, 24.0, 250.0, 40.0, 22.0);
    let volts = [Complex::real(230.0), Complex::new(0.0, 230.0)];
    let at = |slip| run(&m, &MotorFaults::default(), slip, volts, Complex::ZERO);
    let (locked, plugged) = (at(1.0), at(1.95));
    assert!(
        plugged.1.torque_n_m > 0.0,
        "along the new field, against the motion"
    );
    assert!(plugged.0[0].abs() > locked.0[0].abs());
}

//! The same work given to programs from outside: ngspice for networks, scipy for motion.
//!
//! What is not installed is named in one line and left out. Times of the others are differences
//! of two runs of different length, so that starting them does not count.

use std::io::Write;
use std::process::Command;
use std::process::Stdio;
use std::time::Instant;

use serde_json::Value;
use serde_json::json;
use tubwright::network::Complex;
use tubwright::network::NodeId;
use tubwright::plant::Plant;
use tubwright::plant::PlantInputs;
use tubwright::plant::drive::MotorInput;
use tubwright::plant::harness::COLD_K;
use tubwright::plant::motor_table::MotorPoint;
use tubwright::plant::motor_table::MotorTable;
use tubwright::plant::params::PlantParams;

use crate::cases;
use crate::deck;
use crate::measure::time;

/// One piece of work, done by us and by another program.
pub struct Ratio {
    /// The work.
    pub name: &'static str,
    /// The other program.
    pub other: &'static str,
    /// Ours, s.
    pub own_s: f64,
    /// The other's, s.
    pub other_s: f64,
    /// Largest difference of the results, relative.
    pub apart: f64,
}

impl Ratio {
    /// One row of the JSON that `make bench` leaves.
    pub fn to_json(&self) -> Value {
        let ratio = self.other_s / self.own_s;
        json!({ "name": self.name, "other": self.other, "own_s": self.own_s, "other_s": self.other_s, "ratio": ratio, "apart": self.apart })
    }

    /// One row of the table.
    pub fn to_row(&self) -> String {
        format!(
            "{:<58} {:>10} {:>10} {:>9.0}x {:>10.1e}",
            self.name,
            time(self.own_s),
            time(self.other_s),
            self.other_s / self.own_s,
            self.apart
        )
    }
}

/// The head of the table.
pub fn head() -> String {
    format!(
        "{:<58} {:>10} {:>10} {:>10} {:>10}",
        "the same work by others", "own", "other", "ratio", "apart"
    )
}

/// Every comparison whose other program is there.
pub fn all() -> Vec<Ratio> {
    let told = |result: Result<Ratio, String>| match result {
        Ok(ratio) => Some(ratio),
        Err(why) => {
            println!("{why}");
            None
        }
    };
    [against_ngspice(), against_scipy()]
        .into_iter()
        .filter_map(told)
        .collect()
}

/// Points of the longer and the shorter sweep.
const POINTS: [u32; 2] = [20_001, 101];

/// Machine P while it spins, motor as it stands: every node's voltage at 20,000 frequencies, each
/// point built, factored and solved anew by both.
fn against_ngspice() -> Result<Ratio, String> {
    let (harness, contacts) = cases::spinning();
    let frequency_hz = harness.wiring().model.frequency_hz;
    let w_rad_per_s = 2.0 * std::f64::consts::PI * frequency_hz;
    let solved = harness.solve_ac(contacts, 1.0, COLD_K).expect("solvable");
    let mut body = String::new();
    deck::lines(harness.netlist(), contacts, 0, &mut body);
    let siemens = &solved.network.inner.coil_siemens;
    deck::coil_lines(harness.netlist(), siemens, w_rad_per_s, 0, &mut body);
    let last = harness.netlist().nodes().len() - 1;
    let watched = deck::node(0, NodeId(last as u32));
    let run = |points: u32| -> Result<(f64, f64), String> {
        let text = format!(
            "a machine while it spins\n{body}.options rshunt=1e15\n.control\nset numdgt=12\nac lin {points} {frequency_hz} {}\nlet size = mag(v({watched}))\nprint size[0]\nquit\n.endc\n.end\n",
            frequency_hz + 1.0
        );
        let path = std::env::temp_dir().join(format!("tubwright-speed-{}.cir", std::process::id()));
        std::fs::write(&path, text)
            .map_err(|error| format!("bench: no deck for ngspice: {error}"))?;
        let began = Instant::now();
        let output = Command::new("ngspice").arg("-b").arg(&path).output();
        let took_s = began.elapsed().as_secs_f64();
        std::fs::remove_file(&path).ok();
        let output =
            output.map_err(|_| "ngspice is not installed: solves are not compared".to_owned())?;
        let printed = String::from_utf8_lossy(&output.stdout).into_owned();
        let voltage = printed
            .lines()
            .filter(|line| line.starts_with("size"))
            .find_map(|line| line.split_once('=')?.1.trim().parse().ok());
        Ok((
            took_s,
            voltage.ok_or("ngspice gave no voltage: solves are not compared")?,
        ))
    };
    let ((long_s, theirs), (short_s, _)) = (run(POINTS[0])?, run(POINTS[1])?);
    let other_s = (long_s - short_s) / f64::from(POINTS[0] - POINTS[1]);

    let began = Instant::now();
    for point in 0..POINTS[0] {
        let at_hz = frequency_hz + f64::from(point) / f64::from(POINTS[0]);
        let s = Complex::new(0.0, 2.0 * std::f64::consts::PI * at_hz);
        std::hint::black_box(harness.solve_at(contacts, s).expect("solvable"));
    }
    let own_s = began.elapsed().as_secs_f64() / f64::from(POINTS[0]);
    let ours = solved.network.solution.node_v[last].abs();
    Ok(Ratio {
        name: "network P: one point of an AC sweep, every node",
        other: "ngspice",
        own_s,
        other_s,
        apart: (ours - theirs).abs() / ours.max(1e-3),
    })
}

/// Seconds of turning one way before the motor is reversed, and how often.
const STROKE_S: f64 = 1.0;
const STROKES: usize = 60;
/// Pull-out torque, N·m, pull-out slip and synchronous speed, rad/s, of the motor that both run.
const KLOSS: [f64; 3] = [2.0, 0.33, 157.08];

/// Torque of an induction motor by Kloss's form; published in every textbook of machines.
fn kloss_n_m(speed_rad_per_s: f64) -> f64 {
    let [pull_out_n_m, pull_out_slip, synchronous_rad_per_s] = KLOSS;
    let slip = 1.0 - speed_rad_per_s / synchronous_rad_per_s;
    2.0 * pull_out_n_m * slip * pull_out_slip / (slip * slip + pull_out_slip * pull_out_slip)
}

/// A minute of agitation in 40 l of water: rotor, pulsator and swirling bath. Ours moves water,
/// heat and suspension as well; scipy has these three equations alone.
fn against_scipy() -> Result<Ratio, String> {
    let mut params = PlantParams::typical();
    params.load.dry_kg = 0.0;
    let mut plant = Plant::new(params.clone());
    plant.pour_kg(40.0);
    let points: Vec<MotorPoint> = MotorTable::sample_speeds_rad_per_s(513)
        .map(|speed| MotorPoint {
            torque_n_m: kloss_n_m(speed),
            ..MotorPoint::default()
        })
        .collect();
    let table = MotorTable::from_samples(&points, 293.15).expect("finite samples");
    let still = plant.clone();
    let agitate = |plant: &mut Plant| {
        for stroke in 0..STROKES {
            let inputs = PlantInputs {
                motor: MotorInput::On {
                    table: &table,
                    is_forward: stroke % 2 == 0,
                },
                ..PlantInputs::IDLE
            };
            plant.advance((STROKE_S * 10.0) as u64, &inputs);
        }
    };
    let mut own_s = f64::INFINITY;
    for _ in 0..20 {
        plant = still.clone();
        let began = Instant::now();
        agitate(&mut plant);
        own_s = own_s.min(began.elapsed().as_secs_f64());
    }
    let p = &params;
    let task = json!({
        "stroke_s": STROKE_S, "strokes": STROKES, "kloss": KLOSS,
        "rotor_kg_m2": p.rotor.inertia_kg_m2, "friction_n_m": p.rotor.friction_n_m + p.rotor.pull_friction_n_m_per_n * 2.0 * p.belt.tension_n,
        "windage_n_m_s2": p.rotor.windage_n_m_s2, "belt_kg_m2": p.belt.inertia_kg_m2,
        "belt_ratio": p.belt.large_pulley_m / p.belt.small_pulley_m, "gear_ratio": p.gear.ratio_ratio,
        "efficiency": p.belt.efficiency_ratio * p.gear.efficiency_ratio, "pulsator_kg_m2": p.pulsator.inertia_kg_m2,
        "water_n_m_s2": p.pulsator.drag_n_m_s2, "wall_n_m_s2": p.basket.swirl_drag_n_m_s2,
        "swirl_kg_m2": 0.5 * 40.0 * p.basket.radius_m * p.basket.radius_m * p.basket.swirl_ratio + 0.02,
    });
    let answer = scipy(&task)?;
    let number = |name: &str| {
        answer[name]
            .as_f64()
            .ok_or_else(|| format!("scipy gave no {name}: motion is not compared"))
    };
    let speed = plant.state().drive.rotor_rad_per_s;
    Ok(Ratio {
        name: "plant: a minute of agitation, a stroke a second",
        other: "scipy solve_ivp",
        own_s,
        other_s: number("took_s")?,
        apart: (number("rotor_rad_per_s")? - speed).abs() / speed.abs().max(1.0),
    })
}

fn scipy(task: &Value) -> Result<Value, String> {
    let python = std::env::var("TUBWRIGHT_PYTHON").unwrap_or_else(|_| "python3".to_owned());
    let missing = || "scipy is not installed: motion is not compared".to_owned();
    let mut child = Command::new(python)
        .args(["-c", include_str!("agitation.py")])
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::null())
        .spawn()
        .map_err(|_| missing())?;
    let mut input = child.stdin.take().ok_or_else(missing)?;
    input
        .write_all(task.to_string().as_bytes())
        .map_err(|_| missing())?;
    drop(input);
    let output = child.wait_with_output().map_err(|_| missing())?;
    serde_json::from_slice(&output.stdout).map_err(|_| missing())
}

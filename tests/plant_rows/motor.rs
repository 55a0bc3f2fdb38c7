//! The motor the rows were made with: two equal windings in quadrature, one behind a capacitor.
//!
//! Not machine P's motor. Source: published, double revolving field theory; constants from the
//! rows' own data sheet: 18 + j14 ohm stator, 25 + j14 ohm rotor, j150 ohm magnetising.

use std::f64::consts::PI;
use std::ops::{Add, Div, Mul, Sub};

use tubwright::plant::motor_table::{MotorPoint, MotorTable};

#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Complex(pub f64, pub f64);

impl Add for Complex {
    type Output = Self;
    fn add(self, o: Self) -> Self {
        Self(self.0 + o.0, self.1 + o.1)
    }
}
impl Sub for Complex {
    type Output = Self;
    fn sub(self, o: Self) -> Self {
        Self(self.0 - o.0, self.1 - o.1)
    }
}
impl Mul for Complex {
    type Output = Self;
    fn mul(self, o: Self) -> Self {
        Self(self.0 * o.0 - self.1 * o.1, self.0 * o.1 + self.1 * o.0)
    }
}
impl Div for Complex {
    type Output = Self;
    fn div(self, o: Self) -> Self {
        let d = o.0 * o.0 + o.1 * o.1;
        Self(
            (self.0 * o.0 + self.1 * o.1) / d,
            (self.1 * o.0 - self.0 * o.1) / d,
        )
    }
}
impl Complex {
    fn norm2(self) -> f64 {
        self.0 * self.0 + self.1 * self.1
    }
}
const J: Complex = Complex(0.0, 1.0);

/// State of the run capacitor.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Capacitor {
    Farad(f64),
    Open,
    Short,
}

/// The stand-in motor's supply and capacitor.
#[derive(Debug, Clone, Copy)]
pub struct StandIn {
    pub supply_v: f64,
    pub capacitor: Capacitor,
}

/// Solution at one speed.
#[derive(Debug, Clone, Copy)]
pub struct Solution {
    pub point: MotorPoint,
    pub capacitor_v: f64,
    pub ripple_n_m: f64,
}

const R1: f64 = 18.0;
const X1: f64 = 14.0;
const R2: f64 = 25.0;
const X2: f64 = 14.0;
const XM: f64 = 150.0;
const IRON_W: f64 = 20.0;

impl StandIn {
    pub fn healthy() -> Self {
        Self {
            supply_v: 230.0,
            capacitor: Capacitor::Farad(12e-6),
        }
    }

    pub fn solve(&self, speed_rad_per_s: f64) -> Solution {
        let ws = PI * 50.0;
        let mut s = 1.0 - speed_rad_per_s / ws;
        if s.abs() < 1e-7 {
            s = 1e-7;
        }
        let branch = |slip: f64| {
            let rotor = Complex(R2 / slip, X2);
            let divided = Complex(0.0, XM) / (Complex(0.0, XM) + rotor);
            (Complex(R1, X1) + divided * rotor, divided)
        };
        let ((zp, kp), (zn, kn)) = (branch(s), branch(2.0 - s));
        let v = Complex(self.supply_v, 0.0);
        let zc = match self.capacitor {
            Capacitor::Farad(c) => Complex(0.0, -1.0 / (2.0 * PI * 50.0 * c)),
            Capacitor::Short | Capacitor::Open => Complex(0.0, 0.0),
        };
        let (ip, i_n) = if self.capacitor == Capacitor::Open {
            let i = v / (zp + zn);
            (i, i)
        } else {
            let (a11, a12) = (zp, zn);
            let (a21, a22) = (J * (zp + zc), Complex(0.0, -1.0) * (zn + zc));
            let det = a11 * a22 - a12 * a21;
            (v * (a22 - a12) / det, v * (a11 - a21) / det)
        };
        let (ia, ib) = (ip + i_n, J * (ip - i_n));
        let (fp, fn_) = ((ip * kp).norm2(), (i_n * kn).norm2());
        let line = ia + ib;
        let copper_w = R1 * (ia.norm2() + ib.norm2());
        Solution {
            point: MotorPoint {
                torque_n_m: 2.0 * fp * R2 / s / ws - 2.0 * fn_ * R2 / (2.0 - s) / ws,
                input_w: self.supply_v * line.0
                    + IRON_W * self.supply_v * self.supply_v / (230.0 * 230.0),
                // The rows lump both windings into one, so each takes half the heat.
                copper_1_w: copper_w / 2.0,
                copper_2_w: copper_w / 2.0,
                line_a: line.norm2().sqrt(),
            },
            capacitor_v: (ib * zc).norm2().sqrt(),
            ripple_n_m: 2.0 * (fp * fn_).sqrt() * R2 / ws * (1.0 / s - 1.0 / (2.0 - s)).abs(),
        }
    }

    pub fn table(&self) -> MotorTable {
        let samples: Vec<MotorPoint> = MotorTable::sample_speeds_rad_per_s(513)
            .map(|u| self.solve(u).point)
            .collect();
        MotorTable::from_samples(&samples, 293.15).expect("finite")
    }
}

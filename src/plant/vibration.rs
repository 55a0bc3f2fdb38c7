//! The hung tub resolved in time, for drawing and sound in real time only.
//!
//! ```text
//! M x'' + c x' + k x = U W² cos psi        M y'' + c y' + k y = U W² sin psi
//! It a'' + cp a' + kp a + Ip W b' = hu U W² cos psi
//! It b'' + cp b' + kp b − Ip W a' = hu U W² sin psi
//! c, cp contain dry friction F/|v|, M/|w|;  rim = (x + hrim a, y + hrim b)
//! ```
//! Needs steps of 12.5 ms or less (0.03 % of the rim); the envelope in `suspension.rs` serves
//! whole cycles. Source: design choice. Limits: no vertical bounce, no contact force.

use crate::plant::numerics::runge_kutta;
use crate::plant::params::PlantParams;
use crate::plant::swing::Body;

/// Centre of mass and rocking, with their rates.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct VibrationState {
    /// Displacement of the centre of mass, m.
    pub centre_m: [f64; 2],
    /// Its speed, m/s.
    pub centre_m_per_s: [f64; 2],
    /// Rocking such that a height h moves by h times it, rad.
    pub rock_rad: [f64; 2],
    /// Its rate, rad/s.
    pub rock_rad_per_s: [f64; 2],
}

/// What turns inside the tub during one step.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct VibrationInputs {
    /// Unbalance, kg·m.
    pub unbalance_kg_m: f64,
    /// Angle of the unbalance at the start, rad.
    pub angle_rad: f64,
    /// Speed at the start, rad/s.
    pub from_rad_per_s: f64,
    /// Speed at the end, rad/s.
    pub to_rad_per_s: f64,
}

/// Advances by `dt_s`; returns the rim's displacement, m.
pub fn step(
    p: &PlantParams,
    b: &Body,
    s: &mut VibrationState,
    u: VibrationInputs,
    dt_s: f64,
) -> [f64; 2] {
    let start = [
        s.centre_m[0],
        s.centre_m[1],
        s.centre_m_per_s[0],
        s.centre_m_per_s[1],
        s.rock_rad[0],
        s.rock_rad[1],
        s.rock_rad_per_s[0],
        s.rock_rad_per_s[1],
        0.0,
    ];
    // Time travels as the ninth state, so that angle and speed are right inside the step.
    let gain = (u.to_rad_per_s - u.from_rad_per_s) / dt_s;
    let slope = |x: [f64; 9]| {
        let t = x[8];
        let speed = u.from_rad_per_s + gain * t;
        let angle = u.angle_rad + (u.from_rad_per_s + 0.5 * gain * t) * t;
        slopes(p, b, &x, u.unbalance_kg_m * speed * speed, angle, speed)
    };
    let x = runge_kutta(start, slope(start), dt_s, slope);
    *s = VibrationState {
        centre_m: [x[0], x[1]],
        centre_m_per_s: [x[2], x[3]],
        rock_rad: [x[4], x[5]],
        rock_rad_per_s: [x[6], x[7]],
    };
    let rim = p.suspension.rim_m;
    [x[0] + rim * x[4], x[1] + rim * x[5]]
}

fn slopes(
    p: &PlantParams,
    b: &Body,
    x: &[f64; 9],
    force_n: f64,
    angle: f64,
    speed: f64,
) -> [f64; 9] {
    let s = &p.suspension;
    // The small terms keep dry friction finite at rest.
    let v = (x[2] * x[2] + x[3] * x[3] + 1.0e-6).sqrt();
    let w = (x[6] * x[6] + x[7] * x[7] + 1.0e-4).sqrt();
    let c = 2.0 * s.damping_ratio * (b.swing_n_per_m * b.mass_kg).sqrt() + s.swing_friction_n / v;
    let cp =
        2.0 * s.damping_ratio * (b.rock_n_m * b.transverse_kg_m2).sqrt() + s.rock_friction_n_m / w;
    let (cos, sin) = (libm::cos(angle), libm::sin(angle));
    let tilting = force_n * p.load.unbalance_height_m;
    let gyro = b.polar_kg_m2 * speed;
    [
        x[2],
        x[3],
        (force_n * cos - b.swing_n_per_m * x[0] - c * x[2]) / b.mass_kg,
        (force_n * sin - b.swing_n_per_m * x[1] - c * x[3]) / b.mass_kg,
        x[6],
        x[7],
        (tilting * cos - b.rock_n_m * x[4] - cp * x[6] - gyro * x[7]) / b.transverse_kg_m2,
        (tilting * sin - b.rock_n_m * x[5] - cp * x[7] + gyro * x[6]) / b.transverse_kg_m2,
        1.0,
    ]
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plant::swing::{body, whirl};

    #[test]
    fn after_long_turning_it_agrees_with_the_envelope() {
        let p = PlantParams::typical();
        let b = body(&p, 0.0, 4.8);
        let speed = 60.0;
        let mut s = VibrationState::default();
        let mut rim: f64 = 0.0;
        for i in 0..20_000 {
            let u = VibrationInputs {
                unbalance_kg_m: 0.057,
                angle_rad: speed * 0.002 * f64::from(i),
                from_rad_per_s: speed,
                to_rad_per_s: speed,
            };
            let [x, y] = step(&p, &b, &mut s, u, 0.002);
            rim = (x * x + y * y).sqrt();
        }
        let swing = (s.centre_m[0] * s.centre_m[0] + s.centre_m[1] * s.centre_m[1]).sqrt();
        let rock = (s.rock_rad[0] * s.rock_rad[0] + s.rock_rad[1] * s.rock_rad[1]).sqrt();
        let steady = whirl(&p, &b, 0.057, speed, swing, rock).rim_m;
        assert!((rim / steady - 1.0).abs() < 0.01, "{rim} against {steady}");
    }

    #[test]
    fn a_pushed_tub_comes_to_rest() {
        let p = PlantParams::typical();
        let b = body(&p, 0.0, 0.0);
        let mut s = VibrationState {
            centre_m: [0.02, 0.0],
            ..VibrationState::default()
        };
        let u = VibrationInputs {
            unbalance_kg_m: 0.0,
            angle_rad: 0.0,
            from_rad_per_s: 0.0,
            to_rad_per_s: 0.0,
        };
        (0..5000).for_each(|_| {
            step(&p, &b, &mut s, u, 0.01);
        });
        assert!(s.centre_m[0].abs() < 1e-3);
    }
}

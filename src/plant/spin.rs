//! The drive while spinning: motor and basket, locked or slipping, braked or coasting.
//!
//! ```text
//! load   Tl = Tbearing + (kwind + kwater h + kfoam f) w²  + brake
//! stuck  (Jm + (Jd + Jb)/n²) dwm/dt = Tm − Tf − (Tl/etabelt)/n
//! slip   the weaker of belt and clutch spring passes its limit; apart when the clutch is open
//! stop   t = J/sqrt(c k) atan(w0 sqrt(k/c))                c = brake + bearing
//! ```
//! One Runge-Kutta step of 100 ms, of 10 ms where the motor runs alone. Source: design
//! choice. Limits: the vibration takes no power from the drive.

use crate::plant::drive::{DriveDerived, DriveState, DriveSums, MotorInput, belt_limit_n_m};
use crate::plant::numerics::{runge_kutta, sign, smooth_sign};
use crate::plant::params::PlantParams;
use crate::plant::wash::basket_inertia_kg_m2;

/// What the neighbours impose during one tick.
#[derive(Debug, Clone, Copy)]
pub(crate) struct SpinInputs<'a> {
    pub motor: MotorInput<'a>,
    pub level_m: f64,
    pub textile_kg: f64,
    pub foam_ratio: f64,
    pub brake_ratio: f64,
    pub is_gripping: bool,
}

/// Slower than this and unable to break away, the drive stands.
const STANDING_RAD_PER_S: f64 = 0.5;
/// Speed difference at the motor above which a closing clutch has to slip first.
const CLOSING_RAD_PER_S: f64 = 0.5;
/// Share of the explicit stability limit that smoothed friction may use.
const SMOOTHING_SHARE: f64 = 0.667;

/// Everything constant during one step.
struct Frame<'a> {
    u: SpinInputs<'a>,
    ratio: f64,
    loss_ratio: f64,
    efficiency_ratio: f64,
    coulomb_n_m: f64,
    coulomb_width_rad_per_s: f64,
    drag_n_m_s2: f64,
    brake_n_m: f64,
    friction_n_m: f64,
    friction_width_rad_per_s: f64,
    windage_n_m_s2: f64,
    /// Motor side and basket side of the link that slips first; all of it at the motor.
    before_kg_m2: f64,
    behind_kg_m2: f64,
    joined_kg_m2: f64,
    limit_n_m: f64,
}

struct Slopes {
    change_per_s: [f64; 2],
    load_n_m: f64,
    link_n_m: f64,
}

impl<'a> Frame<'a> {
    fn new(
        p: &PlantParams,
        d: &DriveDerived,
        u: SpinInputs<'a>,
        s: &DriveState,
        dt_s: f64,
    ) -> Self {
        let ratio = d.belt_ratio;
        let is_joined = s.slip_ratio.abs() < 0.5;
        let basket = basket_inertia_kg_m2(p, u.textile_kg);
        let belt = belt_limit_n_m(&p.belt, d, s.rotor_rad_per_s);
        let clutch = p.clutch.torque_n_m / ratio;
        let belt_slips = u.is_gripping && belt <= clutch;
        let sun_at_motor = p.belt.inertia_kg_m2 / (ratio * ratio);
        let coulomb = p.basket.bearing_n_m + p.basket.scrape_n_m;
        let before = p.rotor.inertia_kg_m2 + if belt_slips { 0.0 } else { sun_at_motor };
        let joined = p.rotor.inertia_kg_m2 + sun_at_motor + basket / (ratio * ratio);
        // What the motor's friction slows: all of it, or the motor's side alone.
        let turning = if u.is_gripping && is_joined {
            joined
        } else {
            before
        };
        Self {
            u,
            ratio,
            loss_ratio: d.spin_loss_ratio,
            efficiency_ratio: p.belt.efficiency_ratio,
            coulomb_n_m: coulomb,
            coulomb_width_rad_per_s: (coulomb * dt_s / basket * SMOOTHING_SHARE).max(0.05),
            drag_n_m_s2: p.basket.windage_n_m_s2
                + p.basket.water_drag_n_m_s2_per_m * u.level_m
                + p.basket.foam_drag_n_m_s2 * u.foam_ratio,
            brake_n_m: p.brake.stop_n_m * u.brake_ratio,
            friction_n_m: d.friction_n_m,
            friction_width_rad_per_s: (d.friction_n_m * dt_s / turning * SMOOTHING_SHARE)
                .clamp(0.1, 400.0),
            windage_n_m_s2: p.rotor.windage_n_m_s2,
            before_kg_m2: before,
            behind_kg_m2: basket
                + if belt_slips {
                    p.belt.inertia_kg_m2
                } else {
                    0.0
                },
            joined_kg_m2: joined,
            limit_n_m: if u.is_gripping { belt.min(clutch) } else { 0.0 },
        }
    }

    fn slopes(&self, [rotor, basket]: [f64; 2], slip: f64) -> Slopes {
        let friction = self.friction_n_m * smooth_sign(rotor, self.friction_width_rad_per_s)
            + self.windage_n_m_s2 * rotor * rotor.abs();
        let free = self.u.motor.torque_n_m(rotor) - friction;
        let load = self.coulomb_n_m * smooth_sign(basket, self.coulomb_width_rad_per_s)
            + self.drag_n_m_s2 * basket * basket.abs()
            + self.brake_n_m * sign(basket);
        if !self.u.is_gripping {
            return Slopes {
                change_per_s: [free / self.before_kg_m2, -load / self.behind_kg_m2],
                load_n_m: load,
                link_n_m: 0.0,
            };
        }
        if slip.abs() < 0.5 {
            let felt = load + self.loss_ratio * load.abs() * smooth_sign(basket, 0.3);
            let a = (free - felt / self.ratio) / self.joined_kg_m2;
            return Slopes {
                change_per_s: [a, a / self.ratio],
                load_n_m: load,
                link_n_m: free - self.before_kg_m2 * a,
            };
        }
        let link = slip * self.limit_n_m;
        let behind = (link * self.efficiency_ratio * self.ratio - load) / self.behind_kg_m2;
        Slopes {
            change_per_s: [(free - link) / self.before_kg_m2, behind],
            load_n_m: load,
            link_n_m: link,
        }
    }

    /// Nothing moves and the motor cannot break it away.
    fn is_standing(&self, s: &DriveState) -> bool {
        if s.rotor_rad_per_s.abs() > STANDING_RAD_PER_S || s.slip_ratio.abs() > 0.5 {
            return false;
        }
        let link = self.u.motor.torque_n_m(0.0).abs() - self.friction_n_m;
        if !self.u.is_gripping {
            return link <= 0.0 && s.basket_rad_per_s.abs() <= 0.0;
        }
        let held = (self.coulomb_n_m + self.brake_n_m) / (self.ratio * self.efficiency_ratio);
        s.basket_rad_per_s.abs() * self.ratio <= STANDING_RAD_PER_S
            && link <= held.min(self.limit_n_m)
    }
}

/// Advances the drive by `dt_s`; returns the basket's load torque, N·m.
pub(crate) fn step(
    p: &PlantParams,
    d: &DriveDerived,
    s: &mut DriveState,
    u: SpinInputs<'_>,
    sums: &mut DriveSums,
    dt_s: f64,
) -> f64 {
    let frame = Frame::new(p, d, u, s, dt_s);
    if frame.is_standing(s) {
        s.rotor_rad_per_s = 0.0;
        s.basket_rad_per_s = 0.0;
        s.pulsator_rad_per_s = 0.0;
        sums.add_motor(&u.motor, 0.0, dt_s);
        return 0.0;
    }
    couple(&frame, s);
    let start = [s.rotor_rad_per_s, s.basket_rad_per_s];
    let mut first = frame.slopes(start, s.slip_ratio);
    if u.is_gripping && s.slip_ratio.abs() < 0.5 && first.link_n_m.abs() > frame.limit_n_m {
        s.slip_ratio = sign(first.link_n_m);
        first = frame.slopes(start, s.slip_ratio);
    }
    let slip = s.slip_ratio;
    let [rotor, basket] = runge_kutta(start, first.change_per_s, dt_s, |x| {
        frame.slopes(x, slip).change_per_s
    });
    // A brake stops the basket; it does not throw it back.
    let can_stop = u.brake_ratio > 0.0 || !u.is_gripping;
    let ahead = start[1] + dt_s * first.change_per_s[1];
    let is_stopped = can_stop && (basket * start[1] < 0.0 || ahead * start[1] < 0.0);
    s.rotor_rad_per_s = rotor;
    s.basket_rad_per_s = if is_stopped { 0.0 } else { basket };
    if slip.abs() > 0.5 {
        let lag = start[0] - frame.ratio * start[1];
        sums.slip_rad += dt_s * lag.abs();
        sums.slip_j += dt_s * (first.link_n_m * lag).abs();
        rejoin(&frame, s);
    }
    s.pulsator_rad_per_s = s.basket_rad_per_s;
    sums.add_motor(&u.motor, 0.5 * (start[0] + s.rotor_rad_per_s), dt_s);
    sums.load_n_m_s += dt_s * first.load_n_m.abs();
    first.load_n_m
}

/// A clutch that has just closed slips until the speeds meet; a closed one joins them.
fn couple(frame: &Frame<'_>, s: &mut DriveState) {
    if !frame.u.is_gripping {
        s.slip_ratio = 0.0;
    } else if s.slip_ratio.abs() < 0.5 {
        let lag = s.rotor_rad_per_s - frame.ratio * s.basket_rad_per_s;
        if lag.abs() > CLOSING_RAD_PER_S {
            s.slip_ratio = sign(lag);
        } else {
            s.basket_rad_per_s = s.rotor_rad_per_s / frame.ratio;
        }
    }
}

/// When both sides of a slipping link meet they join, momentum kept.
fn rejoin(frame: &Frame<'_>, s: &mut DriveState) {
    let lag = s.rotor_rad_per_s - frame.ratio * s.basket_rad_per_s;
    if lag * s.slip_ratio > 0.0 {
        return;
    }
    let behind = frame.behind_kg_m2 / (frame.ratio * frame.ratio);
    let joined = (frame.before_kg_m2 * s.rotor_rad_per_s
        + behind * frame.ratio * s.basket_rad_per_s)
        / (frame.before_kg_m2 + behind);
    s.rotor_rad_per_s = joined;
    s.basket_rad_per_s = joined / frame.ratio;
    s.slip_ratio = 0.0;
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plant::drive::DriveMode;
    use crate::plant::state::PlantState;

    fn coasting(p: &PlantParams, basket_rad_per_s: f64) -> DriveState {
        DriveState {
            basket_rad_per_s,
            mode: DriveMode::Spin,
            ..PlantState::empty(p).drive
        }
    }

    /// Steps with the clutch open until the basket stands; the time, s.
    fn stop_s(p: &PlantParams, from_rad_per_s: f64) -> f64 {
        let d = DriveDerived::new(p);
        let mut s = coasting(p, from_rad_per_s);
        let u = SpinInputs {
            motor: MotorInput::Off,
            level_m: 0.0,
            textile_kg: 3.1,
            foam_ratio: 0.0,
            brake_ratio: 1.0,
            is_gripping: false,
        };
        let mut n = 0;
        while s.basket_rad_per_s > 0.0 && n < 100_000 {
            step(p, &d, &mut s, u, &mut DriveSums::default(), 0.01);
            n += 1;
        }
        f64::from(n) * 0.01
    }

    #[test]
    fn a_braked_basket_stops_in_the_closed_form_time() {
        let p = PlantParams::typical();
        let inertia = basket_inertia_kg_m2(&p, 3.1);
        let (c, k) = (
            p.brake.stop_n_m + p.basket.bearing_n_m,
            p.basket.windage_n_m_s2,
        );
        let expected = inertia / (c * k).sqrt() * libm::atan(79.6 * (k / c).sqrt());
        let got = stop_s(&p, 79.6);
        assert!((got - expected).abs() < 0.02, "{got} against {expected}");
    }

    #[test]
    fn a_weaker_brake_never_stops_sooner() {
        let mut p = PlantParams::typical();
        let mut last = 0.0;
        for brake_n_m in [30.0, 14.0, 5.0, 1.0, 0.0] {
            p.brake.stop_n_m = brake_n_m;
            let now = stop_s(&p, 50.0);
            assert!(now >= last);
            last = now;
        }
    }

    #[test]
    fn a_closing_clutch_keeps_the_momentum_it_joins() {
        let p = PlantParams::typical();
        let d = DriveDerived::new(&p);
        let mut s = coasting(&p, 10.0);
        s.rotor_rad_per_s = 20.0;
        s.slip_ratio = 1.0;
        let u = SpinInputs {
            motor: MotorInput::Off,
            level_m: 0.0,
            textile_kg: 0.0,
            foam_ratio: 0.0,
            brake_ratio: 0.0,
            is_gripping: true,
        };
        let frame = Frame::new(&p, &d, u, &s, 0.01);
        let spin = |s: &DriveState| {
            frame.before_kg_m2 * frame.ratio * s.rotor_rad_per_s
                + frame.behind_kg_m2 * s.basket_rad_per_s
        };
        // The motor's side is behind the basket's, so the positive slip is over.
        s.rotor_rad_per_s = 10.0 * frame.ratio - 1.0;
        let before = spin(&s);
        rejoin(&frame, &mut s);
        assert!((spin(&s) / before - 1.0).abs() < 1e-12 && s.slip_ratio.abs() < 0.5);
    }
}

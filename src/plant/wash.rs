//! The drive while washing: motor, pulsator and swirling bath; the basket held or creeping.
//!
//! ```text
//! load    Tl = kw cov dw|dw| + Tt dw/sqrt(dw² + w0²)      dw = wo − Ow
//! stuck   J dwm/dt = Tm − Tf − Tl'/N                      Tl' = Tl/eta while it opposes
//! slip    motor side and pulsator side apart, the weakest link passes its limit
//! swirl   Jw dOw/dt = Tl − kb Ow|Ow| − wall Tt Ow/sqrt(Ow² + w0²)
//! basket  reaction −(1 − 1/gear) Tl + wall torque, held by the band or the one-way bearing
//! ```
//! One Runge-Kutta step of 20 ms, of 10 ms where a link slips (the motor alone has a rate of
//! 80 per second). Source: design choice. Limits: a creeping basket does not act back.

use crate::plant::drive::{DriveDerived, DriveState, DriveSums, MotorInput, belt_limit_n_m};
use crate::plant::load;
use crate::plant::numerics::{bounded, runge_kutta, sign};
use crate::plant::params::PlantParams;

/// What the neighbours impose during one tick.
#[derive(Debug, Clone, Copy)]
pub(crate) struct WashInputs<'a> {
    pub motor: MotorInput<'a>,
    pub level_m: f64,
    pub free_kg: f64,
    pub textile_kg: f64,
    pub brake_ratio: f64,
}

/// Slower than this and unable to break away, a rotor stands.
const STANDING_RAD_PER_S: f64 = 0.5;
/// The coarse step, s.
const COARSE_S: f64 = 0.02;
/// Share of the explicit stability limit that smoothed friction may use.
const SMOOTHING_SHARE: f64 = 0.667;

/// A dense load rubs so hard that 20 ms steps would need its friction smoothed.
pub(crate) fn needs_fine_steps(p: &PlantParams, d: &DriveDerived, u: &WashInputs<'_>) -> bool {
    let textile = load::textile_torque_n_m(&p.load, u.free_kg, u.textile_kg);
    let at_motor = 1.0 / (d.wash_kg_m2 * d.wash_ratio * d.wash_ratio);
    textile * COARSE_S * at_motor * SMOOTHING_SHARE > p.load.slip_rad_per_s
}

/// Everything constant during one tick; divisions are done here, not in every slope.
pub(crate) struct Frame<'a> {
    u: WashInputs<'a>,
    d: &'a DriveDerived,
    dt_s: f64,
    /// Drag over speed squared: water on the pulsator, wall on the bath.
    drag_n_m_s2: [f64; 2],
    /// Rubbing textile: on the pulsator, on the wall.
    textile_n_m: [f64; 2],
    textile_width_rad2_per_s2: f64,
    per_swirl_kg_m2: f64,
    per_wash_kg_m2: f64,
    per_wash_ratio: f64,
    scrape_n_m: f64,
    scrape_slope_n_m_s: f64,
    windage_n_m_s2: f64,
    friction_slope_n_m_s: f64,
    spline_n_m: f64,
}

/// Changes and torques at one instant.
struct Slopes {
    change_per_s: [f64; 3],
    load_n_m: f64,
    link_n_m: f64,
}

impl<'a> Frame<'a> {
    pub(crate) fn new(p: &PlantParams, d: &'a DriveDerived, u: WashInputs<'a>, dt_s: f64) -> Self {
        let bath_kg = u.free_kg + u.textile_kg + p.load.dry_kg;
        let radius2 = p.basket.radius_m * p.basket.radius_m;
        // The constant stands for the water film and fittings that always turn along.
        let swirl_kg_m2 = 0.5 * bath_kg * radius2 * p.basket.swirl_ratio + 0.02;
        let textile = load::textile_torque_n_m(&p.load, u.free_kg, u.textile_kg);
        let at_motor = 1.0 / (d.wash_kg_m2 * d.wash_ratio * d.wash_ratio);
        // Widened only where the fixed step would go unstable, as with jammed textile.
        let textile_width = p
            .load
            .slip_rad_per_s
            .max(textile * (1.0 + p.load.wall_ratio) * dt_s / swirl_kg_m2 * SMOOTHING_SHARE)
            .max(textile * dt_s * at_motor * SMOOTHING_SHARE);
        let scrape = p.pulsator.scrape_n_m;
        let scrape_width = (scrape * dt_s * at_motor * SMOOTHING_SHARE).max(0.05);
        let friction_width = d.friction_n_m * dt_s / d.wash_before_kg_m2 * SMOOTHING_SHARE;
        Self {
            u,
            d,
            dt_s,
            drag_n_m_s2: [
                p.pulsator.drag_n_m_s2 * (u.level_m / p.pulsator.cover_m).clamp(0.0, 1.0),
                p.basket.swirl_drag_n_m_s2,
            ],
            textile_n_m: [textile, p.load.wall_ratio * textile],
            textile_width_rad2_per_s2: textile_width * textile_width,
            per_swirl_kg_m2: 1.0 / swirl_kg_m2,
            per_wash_kg_m2: 1.0 / d.wash_kg_m2,
            per_wash_ratio: 1.0 / d.wash_ratio,
            scrape_n_m: scrape,
            scrape_slope_n_m_s: scrape / scrape_width,
            windage_n_m_s2: p.rotor.windage_n_m_s2,
            friction_slope_n_m_s: d.friction_n_m / friction_width.max(1.0),
            spline_n_m: p.pulsator.spline_n_m / d.wash_ratio,
        }
    }

    /// Torque at the motor above which the weakest link slips.
    fn limit_n_m(&self, p: &PlantParams, rotor_rad_per_s: f64) -> f64 {
        if self.d.belt_slips_first {
            belt_limit_n_m(&p.belt, self.d, rotor_rad_per_s)
        } else {
            self.spline_n_m
        }
    }

    /// Torques of the load on the pulsator and of the wall on the bath, N·m. In pairs: two roots
    /// and two divisions at a time are what a step mostly costs.
    fn torques_n_m(&self, pulsator: f64, swirl: f64) -> [f64; 2] {
        let speeds = [pulsator - swirl, swirl];
        let roots = speeds.map(|w| (w * w + self.textile_width_rad2_per_s2).sqrt());
        core::array::from_fn(|i| {
            self.drag_n_m_s2[i] * speeds[i] * speeds[i].abs()
                + self.textile_n_m[i] * speeds[i] / roots[i]
        })
    }

    fn load_n_m(&self, pulsator: f64, swirl: f64) -> f64 {
        self.torques_n_m(pulsator, swirl)[0]
    }

    fn wall_torque_n_m(&self, swirl: f64) -> f64 {
        self.torques_n_m(0.0, swirl)[1]
    }

    /// `link_n_m` is the torque of a slipping link, or `None` while nothing slips.
    fn slopes(&self, [rotor, pulsator, swirl]: [f64; 3], link_n_m: Option<f64>) -> Slopes {
        let d = self.d;
        let [load, wall] = self.torques_n_m(pulsator, swirl);
        let swirl_per_s = (load - wall) * self.per_swirl_kg_m2;
        let friction = bounded(
            rotor * self.friction_slope_n_m_s,
            -d.friction_n_m,
            d.friction_n_m,
        ) + self.windage_n_m_s2 * rotor * rotor.abs();
        let free = self.u.motor.torque_n_m(rotor) - friction;
        let opposing = load
            + d.wash_loss_ratio * load.abs() * bounded(20.0 * pulsator, -1.0, 1.0)
            + bounded(
                pulsator * self.scrape_slope_n_m_s,
                -self.scrape_n_m,
                self.scrape_n_m,
            );
        let Some(link) = link_n_m else {
            let a = (free - opposing * self.per_wash_ratio) * self.per_wash_kg_m2;
            return Slopes {
                change_per_s: [a, a * self.per_wash_ratio, swirl_per_s],
                load_n_m: load,
                link_n_m: free - d.wash_before_kg_m2 * a,
            };
        };
        let behind = (link * d.wash_ratio - opposing) / d.wash_behind_kg_m2;
        let before = (free - link) / d.wash_before_kg_m2;
        Slopes {
            change_per_s: [before, behind, swirl_per_s],
            load_n_m: load,
            link_n_m: link,
        }
    }

    /// The drive stands, or what scrapes brings it to a stand within this step, and its motor cannot break
    /// it away. A smoothed scrape alone would let it creep on for ever.
    fn is_standing(&self, s: &DriveState, limit_n_m: f64) -> bool {
        // What a torque brings to rest within the step.
        let is_slow = |torque_n_m: f64| {
            let stops_rad_per_s = torque_n_m * self.dt_s * self.per_wash_kg_m2;
            s.rotor_rad_per_s.abs() <= STANDING_RAD_PER_S.max(stops_rad_per_s)
        };
        let scrape = self.scrape_n_m * self.per_wash_ratio;
        // Most of the time it runs: the motor's torque need not be asked.
        if s.slip_ratio.abs() > 0.5 || !is_slow(scrape) {
            return false;
        }
        let load = self.load_n_m(0.0, s.swirl_rad_per_s) * self.per_wash_ratio;
        let left = self.d.friction_n_m + scrape - (self.u.motor.torque_n_m(0.0) - load).abs();
        left >= 0.0 && is_slow(left.min(scrape)) && load.abs() <= limit_n_m
    }
}

/// Advances the drive by one sub-step; returns the pulsator's load torque, N·m.
pub(crate) fn step(
    p: &PlantParams,
    frame: &Frame<'_>,
    s: &mut DriveState,
    sums: &mut DriveSums,
) -> f64 {
    let (d, dt_s) = (frame.d, frame.dt_s);
    let limit_n_m = frame.limit_n_m(p, s.rotor_rad_per_s);
    if frame.is_standing(s, limit_n_m) {
        return stand(p, frame, s, sums);
    }
    let mut link = (s.slip_ratio.abs() > 0.5).then_some(s.slip_ratio * limit_n_m);
    if link.is_none() {
        s.pulsator_rad_per_s = s.rotor_rad_per_s * frame.per_wash_ratio;
    }
    let start = [s.rotor_rad_per_s, s.pulsator_rad_per_s, s.swirl_rad_per_s];
    let mut first = frame.slopes(start, link);
    if link.is_none() && first.link_n_m.abs() > limit_n_m {
        s.slip_ratio = sign(first.link_n_m);
        link = Some(s.slip_ratio * limit_n_m);
        first = frame.slopes(start, link);
    }
    let [rotor, pulsator, swirl] = runge_kutta(start, first.change_per_s, dt_s, |x| {
        frame.slopes(x, link).change_per_s
    });
    s.rotor_rad_per_s = rotor;
    s.pulsator_rad_per_s = pulsator;
    s.swirl_rad_per_s = swirl;
    if link.is_some() {
        let lag = start[0] - d.wash_ratio * start[1];
        sums.slip_rad += dt_s * lag.abs();
        sums.slip_j += dt_s * (first.link_n_m * lag).abs();
        rejoin(d, s);
    }
    creep(p, frame, s, start[2], first.load_n_m);
    sums.add_motor(&frame.u.motor, 0.5 * (start[0] + s.rotor_rad_per_s), dt_s);
    sums.load_n_m_s += dt_s * first.load_n_m.abs();
    first.load_n_m
}

/// The rotor stands: only the bath still moves.
fn stand(p: &PlantParams, frame: &Frame<'_>, s: &mut DriveState, sums: &mut DriveSums) -> f64 {
    let dt_s = frame.dt_s;
    let swirl = s.swirl_rad_per_s;
    let load = frame.load_n_m(0.0, swirl);
    let slope = |[ow]: [f64; 1]| {
        let [load, wall] = frame.torques_n_m(0.0, ow);
        [(load - wall) * frame.per_swirl_kg_m2]
    };
    let [next] = runge_kutta([swirl], slope([swirl]), dt_s, slope);
    s.rotor_rad_per_s = 0.0;
    s.pulsator_rad_per_s = 0.0;
    s.swirl_rad_per_s = next;
    creep(p, frame, s, swirl, load);
    sums.add_motor(&frame.u.motor, 0.0, dt_s);
    sums.load_n_m_s += dt_s * load.abs();
    load
}

/// When both sides of a slipping link meet they join, momentum kept.
fn rejoin(d: &DriveDerived, s: &mut DriveState) {
    let lag = s.rotor_rad_per_s - d.wash_ratio * s.pulsator_rad_per_s;
    if lag * s.slip_ratio > 0.0 {
        return;
    }
    let behind = d.wash_behind_kg_m2 / (d.wash_ratio * d.wash_ratio);
    let joined = (d.wash_before_kg_m2 * s.rotor_rad_per_s
        + behind * d.wash_ratio * s.pulsator_rad_per_s)
        / (d.wash_before_kg_m2 + behind);
    s.rotor_rad_per_s = joined;
    s.pulsator_rad_per_s = joined / d.wash_ratio;
    s.slip_ratio = 0.0;
}

/// Basket driven by gear reaction and bath against band brake and one-way bearing.
fn creep(p: &PlantParams, frame: &Frame<'_>, s: &mut DriveState, swirl: f64, load_n_m: f64) {
    let torque = -(1.0 - 1.0 / p.gear.ratio_ratio) * load_n_m + frame.wall_torque_n_m(swirl);
    let hold = |direction: f64| {
        if direction > 0.0 {
            p.clutch.one_way_n_m
        } else {
            p.brake.hold_n_m * frame.u.brake_ratio
        }
    };
    let basket = s.basket_rad_per_s;
    if basket.abs() <= 0.0 && torque.abs() <= hold(torque) {
        return;
    }
    let direction = if basket.abs() > 0.0 {
        sign(basket)
    } else {
        sign(torque)
    };
    let radius2 = p.basket.radius_m * p.basket.radius_m;
    let inertia = basket_inertia_kg_m2(p, frame.u.textile_kg) + 0.1 * frame.u.free_kg * radius2;
    let against = direction * (hold(direction) + p.basket.bearing_n_m + p.basket.scrape_n_m);
    let next = basket + frame.dt_s * (torque - against - 0.05 * basket * basket.abs()) / inertia;
    s.basket_rad_per_s = if next * direction < 0.0 { 0.0 } else { next };
}

/// Basket with its wet load, kg·m².
pub(crate) fn basket_inertia_kg_m2(p: &PlantParams, textile_kg: f64) -> f64 {
    p.basket.inertia_kg_m2 + (p.load.dry_kg + textile_kg) * p.load.gyration_m * p.load.gyration_m
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plant::state::PlantState;

    fn still_water(p: &PlantParams) -> WashInputs<'static> {
        WashInputs {
            motor: MotorInput::Off,
            level_m: 0.29,
            free_kg: 42.0,
            textile_kg: 2.5 * p.load.dry_kg,
            brake_ratio: 1.0,
        }
    }

    /// A bath set swirling at 4 rad/s, then left to itself for 30 s.
    fn left_alone(p: &PlantParams) -> DriveState {
        let d = DriveDerived::new(p);
        let frame = Frame::new(p, &d, still_water(p), 0.02);
        let mut s = PlantState::empty(p).drive;
        s.swirl_rad_per_s = 4.0;
        (0..1500).for_each(|_| {
            step(p, &frame, &mut s, &mut DriveSums::default());
        });
        s
    }

    #[test]
    fn a_bath_left_alone_slows_and_never_turns_back() {
        let s = left_alone(&PlantParams::typical());
        assert!((0.0..0.5).contains(&s.swirl_rad_per_s), "{s:?}");
    }

    #[test]
    fn a_sound_brake_and_bearing_hold_the_basket() {
        let s = left_alone(&PlantParams::typical());
        assert!(s.basket_rad_per_s.abs() <= 0.0);
    }

    #[test]
    fn a_worn_one_way_bearing_lets_the_swirl_drag_the_basket_one_way_only() {
        let mut p = PlantParams::typical();
        p.clutch.one_way_n_m = 0.0;
        p.basket.bearing_n_m = 0.0;
        let d = DriveDerived::new(&p);
        let frame = Frame::new(&p, &d, still_water(&p), 0.02);
        for (swirl_rad_per_s, creeps) in [(4.0, true), (-4.0, false)] {
            let mut s = PlantState::empty(&p).drive;
            s.swirl_rad_per_s = swirl_rad_per_s;
            step(&p, &frame, &mut s, &mut DriveSums::default());
            assert_eq!(s.basket_rad_per_s.abs() > 0.0, creeps, "{swirl_rad_per_s}");
        }
    }

    #[test]
    fn joining_sides_of_a_slipping_link_keep_their_momentum() {
        let mut p = PlantParams::typical();
        p.belt.tension_n = 12.0;
        let d = DriveDerived::new(&p);
        let mut s = PlantState::empty(&p).drive;
        s.slip_ratio = 1.0;
        s.rotor_rad_per_s = 90.0;
        s.pulsator_rad_per_s = 100.0 / d.wash_ratio;
        let momentum = |s: &DriveState| {
            d.wash_before_kg_m2 * s.rotor_rad_per_s
                + d.wash_behind_kg_m2 * s.pulsator_rad_per_s / d.wash_ratio
        };
        let before = momentum(&s);
        rejoin(&d, &mut s);
        assert!((momentum(&s) / before - 1.0).abs() < 1e-12 && s.slip_ratio.abs() < 0.5);
    }
}

//! The hung tub: how far its rim swings at each speed, and what the swing touches.
//!
//! ```text
//! swing  z   = U W²/(k − M W² + i c W)             k = M g/rod, c = 2 zeta sqrt(k M) + F/(W|z|)
//! rock   phi = U hu W²/(kphi − (It − Ip) W² + i cp W)   kphi = 2 krod r² (four rods)
//! rim    |z + hrim phi|; lever opens when rim + rod sin(tilt) + lean > gap
//! ring   Uleft = U − min(U ma/(M + ma), ma e), faded in from 1.3 to 2 times the rock speed
//! walk   k |z| > grip (cabinet + M) g
//! ```
//! Steady circular whirl; dry friction at the amplitude reached so far. Source: rotating
//! unbalance published (textbooks); values design choice. Limits: passage is quasi-steady
//! (5.3 mm against 5.8 mm resolved, see `vibration.rs`); contact is detected, not felt.

use crate::plant::params::PlantParams;
use crate::plant::suspension::{RingParams, SuspensionState};
use crate::units::STANDARD_GRAVITY_M_PER_S2;

/// Slowest turning that swings, rad/s.
const SLOWEST_RAD_PER_S: f64 = 0.5;

/// Speed at which loose basket bolts show their stated unbalance, rad/s.
const LOOSE_REFERENCE_RAD_PER_S: f64 = 80.0;

/// How much stiffer transport pieces make the suspension.
const LOCKED_STIFFNESS_RATIO: f64 = 4000.0;

/// Transverse inertia per kilogram of load, m². Design choice.
const LOAD_TRANSVERSE_M2: f64 = 0.015;

/// Masses and stiffnesses of the hung body now.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Body {
    /// Suspended mass with load and water, kg.
    pub mass_kg: f64,
    /// Transverse inertia, kg·m².
    pub transverse_kg_m2: f64,
    /// Inertia about the spin axis, kg·m².
    pub polar_kg_m2: f64,
    /// Pendulum stiffness of the swing, N/m.
    pub swing_n_per_m: f64,
    /// Rocking stiffness, N·m/rad.
    pub rock_n_m: f64,
}

/// The body with what it carries.
pub fn body(p: &PlantParams, free_kg: f64, textile_kg: f64) -> Body {
    let s = &p.suspension;
    let load_kg = p.load.dry_kg + textile_kg;
    let mass_kg = s.mass_kg + load_kg + free_kg;
    let stiffer = 1.0 + LOCKED_STIFFNESS_RATIO * s.locked_ratio;
    Body {
        mass_kg,
        transverse_kg_m2: s.inertia_kg_m2 + LOAD_TRANSVERSE_M2 * load_kg,
        polar_kg_m2: p.basket.inertia_kg_m2 + load_kg * p.load.gyration_m * p.load.gyration_m,
        swing_n_per_m: mass_kg * STANDARD_GRAVITY_M_PER_S2 / s.rod_m * stiffer,
        rock_n_m: 2.0 * s.spring_n_per_m * s.circle_m * s.circle_m * stiffer,
    }
}

/// What changes only with the parameters.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct SuspensionDerived {
    pub rock_rad_per_s: f64,
    pub ring_kg: f64,
    pub static_rim_m: f64,
}

impl SuspensionDerived {
    pub(crate) fn new(p: &PlantParams) -> Self {
        let s = &p.suspension;
        Self {
            rock_rad_per_s: (2.0 * s.spring_n_per_m * s.circle_m * s.circle_m / s.inertia_kg_m2)
                .sqrt(),
            ring_kg: ring_kg(&p.ring),
            static_rim_m: s.rod_m * libm::sin(p.site.floor_tilt_rad) * (1.0 - s.locked_ratio)
                + s.lean_m,
        }
    }
}

/// Mass that the ring's liquid displaces, kg.
pub fn ring_kg(p: &RingParams) -> f64 {
    let area_m2 = core::f64::consts::PI * p.radius_m * p.radius_m;
    p.liquid_kg_per_m3 * area_m2 * p.height_m * p.fill_ratio
}

/// Unbalance left after the balance ring at a speed, kg·m.
pub(crate) fn unbalance_kg_m(
    p: &PlantParams,
    d: &SuspensionDerived,
    unbalance_kg: f64,
    speed_rad_per_s: f64,
) -> f64 {
    let loose = speed_rad_per_s / LOOSE_REFERENCE_RAD_PER_S;
    let whole = unbalance_kg * p.load.unbalance_m
        + p.ring.one_sided_kg_m
        + p.basket.loose_kg_m * loose * loose;
    let mass_kg = p.suspension.mass_kg + p.load.dry_kg;
    let taken = (whole * d.ring_kg / (mass_kg + d.ring_kg)).min(d.ring_kg * p.ring.eccentricity_m);
    let x = ((speed_rad_per_s / d.rock_rad_per_s - 1.3) / 0.7).clamp(0.0, 1.0);
    whole - x * x * (3.0 - 2.0 * x) * taken
}

/// Steady amplitudes at a speed.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Whirl {
    /// Swing of the centre of mass, m.
    pub swing_m: f64,
    /// Rocking angle, rad.
    pub rock_rad: f64,
    /// Swing of the rim, m.
    pub rim_m: f64,
}

/// Steady whirl for an unbalance; dry friction is taken at amplitudes `swing_m`, `rock_rad`.
pub fn whirl(
    p: &PlantParams,
    b: &Body,
    unbalance_kg_m: f64,
    speed_rad_per_s: f64,
    swing_m: f64,
    rock_rad: f64,
) -> Whirl {
    let w = speed_rad_per_s;
    if w < SLOWEST_RAD_PER_S {
        return Whirl::default();
    }
    let s = &p.suspension;
    let c_swing = 2.0 * s.damping_ratio * (b.swing_n_per_m * b.mass_kg).sqrt()
        + s.swing_friction_n / (w * swing_m.max(2.0e-4));
    let c_rock = 2.0 * s.damping_ratio * (b.rock_n_m * b.transverse_kg_m2).sqrt()
        + s.rock_friction_n_m / (w * rock_rad.max(1.0e-3));
    let (zr, zi) = (b.swing_n_per_m - b.mass_kg * w * w, c_swing * w);
    let (pr, pi) = (
        b.rock_n_m - (b.transverse_kg_m2 - b.polar_kg_m2) * w * w,
        c_rock * w,
    );
    let force = unbalance_kg_m * w * w;
    let (z2, p2) = (zr * zr + zi * zi, pr * pr + pi * pi);
    let height = p.load.unbalance_height_m;
    let lever = s.rim_m * height;
    let re = force * (zr / z2 + lever * pr / p2);
    let im = force * (zi / z2 + lever * pi / p2);
    Whirl {
        swing_m: force / z2.sqrt(),
        rock_rad: force * height.abs() / p2.sqrt(),
        rim_m: (re * re + im * im).sqrt(),
    }
}

/// Advances the envelope; shares are `1 − exp(−dt·rate)` of swing and rock.
pub(crate) fn step(
    p: &PlantParams,
    d: &SuspensionDerived,
    s: &mut SuspensionState,
    b: &Body,
    speed_rad_per_s: f64,
    shares: [f64; 2],
) {
    let left = unbalance_kg_m(
        p,
        d,
        s.unbalance_ratio * p.load.unbalance_kg,
        speed_rad_per_s,
    );
    let steady = whirl(p, b, left, speed_rad_per_s, s.swing_m, s.rock_rad);
    s.swing_m += (steady.swing_m - s.swing_m) * shares[0];
    s.rock_rad += (steady.rock_rad - s.rock_rad) * shares[1];
    s.rim_m = steady.rim_m;
    if s.rim_m + d.static_rim_m > p.suspension.lever_gap_m && !s.is_clumped {
        s.is_clumped = true;
        s.spreading_s = 0.0;
    }
}

/// Pulsator speed above which it moves the load about, rad/s.
const SPREADING_RAD_PER_S: f64 = 1.0;

/// Turning in water that spreads a clumped load, s. Design choice.
const SPREADING_S: f64 = 30.0;

/// A load that has tripped the lever spreads when it is agitated in water again, and tangles anew
/// in the next wash or rinse.
pub(crate) fn spread(
    p: &PlantParams,
    s: &mut SuspensionState,
    level_m: f64,
    pulsator_rad_per_s: f64,
    dt_s: f64,
) {
    let is_as_loaded = !s.is_clumped && s.unbalance_ratio >= 1.0;
    if is_as_loaded
        || level_m < p.pulsator.cover_m
        || pulsator_rad_per_s.abs() < SPREADING_RAD_PER_S
    {
        return;
    }
    s.spreading_s += dt_s;
    if s.is_clumped && s.spreading_s >= SPREADING_S {
        s.unbalance_ratio *= p.load.spread_ratio;
        s.is_clumped = false;
        s.spreading_s = 0.0;
    } else if !s.is_clumped && s.spreading_s >= p.load.tangling_s {
        s.unbalance_ratio = 1.0;
        s.spreading_s = 0.0;
    }
}

/// Horizontal force of the swing on the cabinet, N.
pub fn foot_force_n(b: &Body, swing_m: f64) -> f64 {
    b.swing_n_per_m * swing_m
}

/// Horizontal force the feet hold, N.
pub fn foot_limit_n(p: &PlantParams, b: &Body) -> f64 {
    let weight_n = (p.suspension.cabinet_kg + b.mass_kg) * STANDARD_GRAVITY_M_PER_S2;
    p.site.foot_friction_ratio * p.site.foot_firm_ratio * weight_n
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn without_friction_the_swing_is_the_textbook_response() {
        let mut p = PlantParams::typical();
        p.suspension.swing_friction_n = 0.0;
        let b = body(&p, 0.0, 4.8);
        let natural = (b.swing_n_per_m / b.mass_kg).sqrt();
        let r: f64 = 3.0;
        let got = whirl(&p, &b, 0.057, r * natural, 1.0, 1.0).swing_m;
        let z = 0.07;
        let expected = 0.057 / b.mass_kg * r * r
            / ((1.0 - r * r) * (1.0 - r * r) + (2.0 * z * r) * (2.0 * z * r)).sqrt();
        assert!((got / expected - 1.0).abs() < 1e-12);
    }

    #[test]
    fn a_full_ring_helps_above_the_critical_speed_only() {
        let p = PlantParams::typical();
        let d = SuspensionDerived::new(&p);
        let whole = 0.3 * 0.19;
        assert!((unbalance_kg_m(&p, &d, 0.3, 5.0) - whole).abs() < 1e-15);
        assert!((unbalance_kg_m(&p, &d, 0.3, 80.0) - 0.046_691_23).abs() < 1e-7);
    }

    #[test]
    fn a_heavier_lump_never_swings_less() {
        let p = PlantParams::typical();
        let b = body(&p, 0.0, 4.8);
        let rims: Vec<f64> = (0..20)
            .map(|i| whirl(&p, &b, 0.02 * f64::from(i), 40.0, 0.003, 0.01).rim_m)
            .collect();
        assert!(rims.windows(2).all(|pair| pair[1] >= pair[0]));
    }

    #[test]
    fn transport_pieces_stop_the_swing_and_shake_the_feet() {
        let mut p = PlantParams::typical();
        let free = body(&p, 0.0, 4.8);
        p.suspension.locked_ratio = 1.0;
        let locked = body(&p, 0.0, 4.8);
        let at = |b: &Body| whirl(&p, b, 0.057, 80.0, 0.002, 0.002);
        assert!(at(&locked).rim_m < at(&free).rim_m);
        assert!(
            foot_force_n(&locked, at(&locked).swing_m) > foot_force_n(&free, at(&free).swing_m)
        );
    }

    #[test]
    fn agitation_spreads_a_load_after_a_trip_and_a_rinse_tangles_it_again() {
        let p = PlantParams::typical();
        let mut s = SuspensionState {
            swing_m: 0.0,
            rock_rad: 0.0,
            rim_m: 0.0,
            unbalance_ratio: 1.0,
            is_clumped: false,
            spreading_s: 0.0,
        };
        (0..1000).for_each(|_| spread(&p, &mut s, 0.29, 15.0, 0.1));
        assert!((s.unbalance_ratio - 1.0).abs() < 1e-12);
        s.is_clumped = true;
        (0..1000).for_each(|_| spread(&p, &mut s, 0.29, 15.0, 0.1));
        assert!((s.unbalance_ratio - 0.5).abs() < 1e-12, "once a trip");
        (0..1000).for_each(|_| spread(&p, &mut s, 0.29, 15.0, 0.1));
        assert!((s.unbalance_ratio - 1.0).abs() < 1e-12, "a rinse tangles");
    }
}

//! Steps and smooth signs that drive, bath and vibration share.
//!
//! ```text
//! x(t + dt) = x + dt (k1 + 2 k2 + 2 k3 + k4)/6       classical Runge-Kutta
//! sign      = clamp(x/width, −1, 1)                  dry friction without a jump
//! ```
//! Source: published, any textbook of numerical analysis.

/// `x` kept between two bounds: two instructions, where `f64::clamp` also checks the bounds.
#[inline]
pub(crate) fn bounded(x: f64, low: f64, high: f64) -> f64 {
    let raised = if x > low { x } else { low };
    if raised < high { raised } else { high }
}

/// Friction direction, smoothed below `width`.
pub(crate) fn smooth_sign(x: f64, width: f64) -> f64 {
    bounded(x / width, -1.0, 1.0)
}

/// +1, 0 or −1.
pub(crate) fn sign(x: f64) -> f64 {
    if x > 0.0 {
        1.0
    } else if x < 0.0 {
        -1.0
    } else {
        0.0
    }
}

/// One classical Runge-Kutta step from the slope `k1` at its start.
#[inline(always)]
pub(crate) fn runge_kutta<const N: usize>(
    x: [f64; N],
    k1: [f64; N],
    dt_s: f64,
    slope: impl Fn([f64; N]) -> [f64; N],
) -> [f64; N] {
    let along = |k: &[f64; N], h: f64| {
        let mut at = x;
        for i in 0..N {
            at[i] += h * k[i];
        }
        at
    };
    let k2 = slope(along(&k1, 0.5 * dt_s));
    let k3 = slope(along(&k2, 0.5 * dt_s));
    let k4 = slope(along(&k3, dt_s));
    let mut end = x;
    for i in 0..N {
        end[i] += dt_s * (1.0 / 6.0) * (k1[i] + 2.0 * (k2[i] + k3[i]) + k4[i]);
    }
    end
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn runge_kutta_is_of_fourth_order() {
        let error = |n: usize| {
            let dt = 1.0 / n as f64;
            let end = (0..n).fold([1.0], |x, _| runge_kutta(x, [-x[0]], dt, |y| [-y[0]]));
            (end[0] - libm::exp(-1.0)).abs()
        };
        let gain = error(10) / error(20);
        assert!((gain - 16.0).abs() < 1.5, "{gain}");
    }

    #[test]
    fn a_smooth_sign_reaches_one_at_its_width() {
        assert!((smooth_sign(0.5, 1.0) - 0.5).abs() < 1e-15);
        assert!((smooth_sign(-7.0, 1.0) + 1.0).abs() < 1e-15);
        assert!(sign(0.0).abs() < 1e-15);
    }
}

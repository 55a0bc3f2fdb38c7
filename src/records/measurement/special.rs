//! Tail probabilities: chi-square and normal.
//!
//! ```text
//! chi-square: Q(df/2, x/2), the upper incomplete gamma function; series below a + 1, continued
//! fraction above (Abramowitz and Stegun 6.5.29, 6.5.31)
//! ```

/// Terms summed at most; the series needs about 6 sqrt(a) of them.
const MOST_TERMS: usize = 10_000;
/// Relative size of the last term.
const SMALL: f64 = 1e-16;

/// Chance that a chi-square variable with `df` degrees of freedom is above `x`. 1 for `x` at or
/// below 0 or `df` 0.
pub fn chi_square_tail(x: f64, df: f64) -> f64 {
    let (a, x) = (df / 2.0, x / 2.0);
    if !(x > 0.0 && a > 0.0) {
        return 1.0;
    }
    let scale = libm::exp(a * libm::log(x) - x - libm::lgamma(a));
    if x < a + 1.0 {
        let mut term = 1.0 / a;
        let mut sum = term;
        for n in 1..MOST_TERMS {
            term *= x / (a + n as f64);
            sum += term;
            if term < sum * SMALL {
                break;
            }
        }
        (1.0 - scale * sum).max(0.0)
    } else {
        // Lentz's way through the continued fraction 1/(x+1-a- 1(1-a)/(x+3-a- ...)).
        let mut b = x + 1.0 - a;
        let mut c = 1.0 / f64::MIN_POSITIVE;
        let mut d = 1.0 / b;
        let mut h = d;
        for n in 1..MOST_TERMS {
            let n = n as f64;
            let factor = -n * (n - a);
            b += 2.0;
            d = 1.0 / (factor * d + b);
            c = b + factor / c;
            let change = c * d;
            h *= change;
            if (change - 1.0).abs() < SMALL * 8.0 {
                break;
            }
        }
        scale * h
    }
}

/// Chance that a standard normal variable is below `z`.
pub fn normal_below(z: f64) -> f64 {
    0.5 * libm::erfc(-z / std::f64::consts::SQRT_2)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn tails_agree_with_closed_forms() {
        // Two degrees of freedom: exp(-x/2). One: the normal's two tails.
        for x in [0.1, 1.0, 2.9, 7.0, 60.0] {
            assert!((chi_square_tail(x, 2.0) / f64::exp(-x / 2.0) - 1.0).abs() < 1e-13);
            let two_tails = 2.0 * normal_below(-f64::sqrt(x));
            assert!((chi_square_tail(x, 1.0) / two_tails - 1.0).abs() < 1e-12);
        }
        assert!((chi_square_tail(0.0, 3.0) - 1.0).abs() < 1e-15);
    }

    #[test]
    fn the_usual_critical_values_come_out() {
        // Tables of every statistics textbook: 3.841 at 1, 18.307 at 10, 124.342 at 100.
        for (x, df) in [(3.841_459, 1.0), (18.307_038, 10.0), (124.342_113, 100.0)] {
            assert!((chi_square_tail(x, df) - 0.05).abs() < 1e-7);
        }
    }
}

//! Bits: how open a question is, what a test promises, what it brought.
//!
//! ```text
//! H = -Σ p log2 p        IG = H(b) - Σ_o z_o H(b|o)
//! realised G = H(b) - H(b')        surprise KL = Σ b' log2(b'/b)
//! ```
//! G may be negative: a reading may rightly make one less sure. Both average to IG. Source: published
//! (Shannon; Lindley 1956).

use crate::expert::theory::acts::Test;

/// Entropy, bits.
pub fn entropy(p: &[f64]) -> f64 {
    p.iter()
        .filter(|p| **p > 0.0)
        .map(|p| -p * libm::log2(*p))
        .sum()
}

/// Expected gain of a test, bits: never negative.
pub fn expected_gain(p: &[f64], test: &Test) -> f64 {
    // Sum of p L log2(L/z): what cancels elsewhere never appears here.
    let mut gain = 0.0;
    for o in 0..test.n_outcomes {
        let z: f64 = p.iter().enumerate().map(|(h, p)| p * test.row(h)[o]).sum();
        for (h, p) in p.iter().enumerate() {
            let l = test.row(h)[o];
            if *p > 0.0 && l > 0.0 {
                gain += p * l * libm::log2(l / z);
            }
        }
    }
    gain.max(0.0)
}

/// Gain of a reading that came, bits.
pub fn gain(before: &[f64], after: &[f64]) -> f64 {
    entropy(before) - entropy(after)
}

/// Surprise of a reading that came, bits: never negative.
pub fn surprise(before: &[f64], after: &[f64]) -> f64 {
    let each = before.iter().zip(after);
    each.filter(|(_, a)| **a > 0.0)
        .map(|(b, a)| a * libm::log2(a / b))
        .sum::<f64>()
        .max(0.0)
}

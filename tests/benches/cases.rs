//! What is timed. A budget is a promise about the user's machine; a case without one is there to compare.

use crate::measure::Case;

/// Every case, from the bottom of the program to its top.
pub fn all() -> Vec<Case> {
    vec![yardstick()]
}

/// Work that never changes, so that figures from two machines, or two days, can be compared.
fn yardstick() -> Case {
    Case::new("yardstick: 1,000 x libm::sin and libm::exp", || {
        (0..1_000)
            .map(|n| libm::sin(f64::from(n)) + libm::exp(-f64::from(n) * 0.01))
            .sum()
    })
}

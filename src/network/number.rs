//! What elimination needs of a number, so that DC (f64) and AC (Complex) share one code.
//!
//! DC uses real numbers because a sum of positive conductances then never cancels; AC uses
//! complex ones.

use core::ops::Add;
use core::ops::AddAssign;
use core::ops::Mul;
use core::ops::Neg;
use core::ops::Sub;
use core::ops::SubAssign;

use crate::network::complex::Complex;

/// A number that networks are solved in: `f64` at DC, [`Complex`] at one frequency.
pub trait Number:
    Copy
    + Default
    + PartialEq
    + core::fmt::Debug
    + Add<Output = Self>
    + Sub<Output = Self>
    + Mul<Output = Self>
    + Neg<Output = Self>
    + AddAssign
    + SubAssign
{
    /// The number standing for a real one.
    fn from_real(value: f64) -> Self;
    /// One divided by the number.
    fn inverse(self) -> Self;
    /// True if the number is neither zero, infinite nor NaN.
    fn is_usable(self) -> bool;
}

impl Number for f64 {
    fn from_real(value: f64) -> f64 {
        value
    }
    fn inverse(self) -> f64 {
        1.0 / self
    }
    fn is_usable(self) -> bool {
        self.is_finite() && self.abs() > 0.0
    }
}

impl Number for Complex {
    fn from_real(value: f64) -> Complex {
        Complex::real(value)
    }
    fn inverse(self) -> Complex {
        Complex::inverse(self)
    }
    fn is_usable(self) -> bool {
        let size = self.re.abs() + self.im.abs();
        size.is_finite() && size > 0.0
    }
}

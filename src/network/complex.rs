//! Complex numbers for phasors, with the same bits natively and in WebAssembly.
//!
//! Only `+ - * /`, `sqrt` and the `libm` crate: the usual complex crates use the platform's
//! `hypot` and `atan2`, which differ in the last bit between targets.
//! Limits: division squares its divisor, so magnitudes outside 1e-150 to 1e150 overflow.

use core::ops::Add;
use core::ops::AddAssign;
use core::ops::Div;
use core::ops::Mul;
use core::ops::Neg;
use core::ops::Sub;
use core::ops::SubAssign;

/// A complex number `re + j im`; a phasor's unit is that of the quantity it stands for.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Complex {
    /// Real part.
    pub re: f64,
    /// Imaginary part.
    pub im: f64,
}

impl Complex {
    /// Zero.
    pub const ZERO: Complex = Complex { re: 0.0, im: 0.0 };
    /// One.
    pub const ONE: Complex = Complex { re: 1.0, im: 0.0 };
    /// The imaginary unit.
    pub const J: Complex = Complex { re: 0.0, im: 1.0 };

    /// `re + j im`.
    pub const fn new(re: f64, im: f64) -> Complex {
        Complex { re, im }
    }

    /// A real number.
    pub const fn real(re: f64) -> Complex {
        Complex { re, im: 0.0 }
    }

    /// The number of the given length and angle.
    pub fn polar(length: f64, angle_rad: f64) -> Complex {
        Complex::new(length * libm::cos(angle_rad), length * libm::sin(angle_rad))
    }

    /// Length; never overflows before its parts do.
    pub fn abs(self) -> f64 {
        libm::hypot(self.re, self.im)
    }

    /// Length squared.
    #[inline]
    pub fn abs_squared(self) -> f64 {
        self.re * self.re + self.im * self.im
    }

    /// Angle from the positive real axis, -pi to pi.
    pub fn angle_rad(self) -> f64 {
        libm::atan2(self.im, self.re)
    }

    /// The mirror image in the real axis.
    #[inline]
    pub fn conjugate(self) -> Complex {
        Complex::new(self.re, -self.im)
    }

    /// One divided by the number.
    #[inline]
    pub fn inverse(self) -> Complex {
        let scale = 1.0 / self.abs_squared();
        Complex::new(self.re * scale, -self.im * scale)
    }

    /// e to the power of the number.
    pub fn exponential(self) -> Complex {
        Complex::polar(libm::exp(self.re), self.im)
    }

    /// The number times a real factor.
    #[inline]
    pub fn scale(self, factor: f64) -> Complex {
        Complex::new(self.re * factor, self.im * factor)
    }
}

impl Add for Complex {
    type Output = Complex;
    #[inline]
    fn add(self, other: Complex) -> Complex {
        Complex::new(self.re + other.re, self.im + other.im)
    }
}

impl Sub for Complex {
    type Output = Complex;
    #[inline]
    fn sub(self, other: Complex) -> Complex {
        Complex::new(self.re - other.re, self.im - other.im)
    }
}

impl Mul for Complex {
    type Output = Complex;
    #[inline]
    fn mul(self, other: Complex) -> Complex {
        Complex::new(
            self.re * other.re - self.im * other.im,
            self.re * other.im + self.im * other.re,
        )
    }
}

impl Div for Complex {
    type Output = Complex;
    #[expect(
        clippy::suspicious_arithmetic_impl,
        reason = "a quotient is a product with the inverse"
    )]
    #[inline]
    fn div(self, other: Complex) -> Complex {
        self * other.inverse()
    }
}

impl Neg for Complex {
    type Output = Complex;
    #[inline]
    fn neg(self) -> Complex {
        Complex::new(-self.re, -self.im)
    }
}

impl AddAssign for Complex {
    #[inline]
    fn add_assign(&mut self, other: Complex) {
        *self = *self + other;
    }
}

impl SubAssign for Complex {
    #[inline]
    fn sub_assign(&mut self, other: Complex) {
        *self = *self - other;
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_number_divided_by_itself_is_one() {
        let z = Complex::new(3.0, -4.0);
        let q = z / z;
        assert!((q.re - 1.0).abs() < 1e-15 && q.im.abs() < 1e-15);
        assert!((z.abs() - 5.0).abs() < 1e-15);
    }

    #[test]
    fn half_a_turn_of_the_exponential_is_minus_one() {
        let z = Complex::new(0.0, core::f64::consts::PI).exponential();
        assert!((z.re + 1.0).abs() < 1e-15 && z.im.abs() < 1e-15);
    }
}

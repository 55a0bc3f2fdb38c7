//! Small symmetric positive definite systems by Cholesky's factorisation, rows one after another.

/// A factor L with A = L Lᵀ, lower triangle, row by row.
pub struct Cholesky {
    n: usize,
    l: Vec<f64>,
}

impl Cholesky {
    /// Factors an n by n matrix, of which the lower triangle is read. `None` when it is not
    /// positive definite: some combination of unknowns does not follow from the data.
    pub fn new(a: &[f64], n: usize) -> Option<Self> {
        let mut l = vec![0.0; n * n];
        for i in 0..n {
            for j in 0..=i {
                let mut sum = a[i * n + j];
                for k in 0..j {
                    sum -= l[i * n + k] * l[j * n + k];
                }
                if i == j {
                    // The pivot must stand out of rounding of the number it came from.
                    let holds = sum > a[i * n + i].abs() * 1e-13;
                    if !holds {
                        return None;
                    }
                    l[i * n + i] = sum.sqrt();
                } else {
                    l[i * n + j] = sum / l[j * n + j];
                }
            }
        }
        Some(Self { n, l })
    }

    /// x with A x = b.
    pub fn solve(&self, b: &[f64]) -> Vec<f64> {
        let n = self.n;
        let mut x = b.to_vec();
        for i in 0..n {
            for k in 0..i {
                x[i] -= self.l[i * n + k] * x[k];
            }
            x[i] /= self.l[i * n + i];
        }
        for i in (0..n).rev() {
            for k in i + 1..n {
                x[i] -= self.l[k * n + i] * x[k];
            }
            x[i] /= self.l[i * n + i];
        }
        x
    }

    /// The inverse, row by row.
    pub fn inverse(&self) -> Vec<f64> {
        let n = self.n;
        let mut inverse = vec![0.0; n * n];
        for j in 0..n {
            let mut unit = vec![0.0; n];
            unit[j] = 1.0;
            for (i, x) in self.solve(&unit).into_iter().enumerate() {
                inverse[i * n + j] = x;
            }
        }
        inverse
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_inverse_times_its_matrix_is_one() {
        let a = [4.0, 1.0, 0.5, 1.0, 3.0, -0.2, 0.5, -0.2, 2.0];
        let inverse = Cholesky::new(&a, 3).expect("definite").inverse();
        for i in 0..3 {
            for j in 0..3 {
                let sum: f64 = (0..3).map(|k| a[i * 3 + k] * inverse[k * 3 + j]).sum();
                assert!((sum - f64::from(u8::from(i == j))).abs() < 1e-14);
            }
        }
    }

    #[test]
    fn a_matrix_that_settles_nothing_is_refused() {
        assert!(Cholesky::new(&[1.0, 1.0, 1.0, 1.0], 2).is_none());
        assert!(Cholesky::new(&[f64::NAN], 1).is_none());
    }
}

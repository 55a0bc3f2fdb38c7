//! How far numbers lie apart, and nothing claimed where that cannot be told.

/// Numbers nearer than this are equal, whatever their last digits say.
const EQUAL: f64 = 1e-6;

/// Some numbers in short.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spread {
    /// Mean.
    pub mean: f64,
    /// Lowest.
    pub least: f64,
    /// Highest.
    pub most: f64,
    /// Standard deviation; none where there is one number only, or all are equal.
    pub deviation: Option<f64>,
}

/// Sums numbers up; none when there are none.
pub fn spread(numbers: &[f64]) -> Option<Spread> {
    let least = numbers.iter().copied().reduce(f64::min)?;
    let most = numbers.iter().copied().reduce(f64::max)?;
    let n = numbers.len() as f64;
    let mean = numbers.iter().sum::<f64>() / n;
    let squares: f64 = numbers.iter().map(|x| (x - mean) * (x - mean)).sum();
    Some(Spread {
        mean,
        least,
        most,
        deviation: (most - least > EQUAL).then(|| (squares / (n - 1.0)).sqrt()),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn one_number_or_equal_numbers_have_no_spread() {
        assert_eq!(spread(&[]), None);
        for equal in [&[70.0][..], &[70.0, 70.0, 70.0]] {
            let found = spread(equal).expect("some");
            assert_eq!((found.mean, found.deviation), (70.0, None));
        }
        let found = spread(&[80.0, 60.0, 70.0]).expect("some");
        assert_eq!((found.least, found.mean, found.most), (60.0, 70.0, 80.0));
        assert!((found.deviation.expect("apart") - 10.0).abs() < 1e-12);
    }
}

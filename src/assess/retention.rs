//! When results are to be erased: so many calendar months after the day on which they began.

use crate::assess::date::civil;
use crate::assess::date::day_of;
use crate::assess::date::moment_ms;
use crate::say;

/// Milliseconds in a day.
const DAY_MS: i64 = 86_400_000;

/// The day since 1970 on which results that began at `started` (RFC 3339) are to be erased; `None` where
/// the record does not say when it began. A day that the month lacks is its last one.
pub fn due_day(started: &str, months: u32) -> Option<i64> {
    let (year, month, day) = civil(moment_ms(started)?.div_euclid(DAY_MS));
    let count = year * 12 + month - 1 + i64::from(months);
    let (year, month) = (count.div_euclid(12), count.rem_euclid(12) + 1);
    let next = if month == 12 {
        day_of(year + 1, 1, 1)
    } else {
        day_of(year, month + 1, 1)
    };
    Some(day_of(year, month, day).min(next - 1))
}

/// Such as `24 months`.
pub fn months_in_words(months: u32) -> String {
    if months == 1 {
        say!("one month").to_owned()
    } else {
        say!("{n} months", n = months)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn months_are_those_of_the_calendar() {
        let due = |started: &str, months| due_day(started, months).map(civil);
        assert_eq!(due("2031-03-04T09:00:00.000Z", 24), Some((2033, 3, 4)));
        assert_eq!(due("2031-12-31T23:59:59Z", 1), Some((2032, 1, 31)));
        // Months that lack the day, a leap year among them.
        assert_eq!(due("2031-01-31T09:00:00Z", 1), Some((2031, 2, 28)));
        assert_eq!(due("2031-10-31T09:00:00Z", 16), Some((2033, 2, 28)));
        assert_eq!(due("2031-08-31T09:00:00Z", 6), Some((2032, 2, 29)));
        assert_eq!(due("2031-11-30T09:00:00Z", 1), Some((2031, 12, 30)));
        assert_eq!(due("", 6), None);
    }
}

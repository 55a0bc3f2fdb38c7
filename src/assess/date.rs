//! Days and moments as people write them: the Gregorian calendar, RFC 3339 in UTC.

/// Seconds in a day, as UTC counts them here: leap seconds left out.
const DAY_S: i64 = 86_400;

/// Year, month and day of a day since 1 January 1970. Published: Hinnant, "chrono-compatible
/// low-level date algorithms".
pub fn civil(day: i64) -> (i64, i64, i64) {
    let shifted = day + 719_468;
    let era = shifted.div_euclid(146_097);
    let of_era = shifted.rem_euclid(146_097);
    let year = (of_era - of_era / 1460 + of_era / 36_524 - of_era / 146_096) / 365;
    let of_year = of_era - (365 * year + year / 4 - year / 100);
    let from_march = (5 * of_year + 2) / 153;
    let day = of_year - (153 * from_march + 2) / 5 + 1;
    let month = if from_march < 10 {
        from_march + 3
    } else {
        from_march - 9
    };
    (year + era * 400 + i64::from(month <= 2), month, day)
}

/// Day since 1 January 1970. Same source.
pub fn day_of(year: i64, month: i64, day: i64) -> i64 {
    let year = year - i64::from(month <= 2);
    let era = year.div_euclid(400);
    let of_era = year.rem_euclid(400);
    let from_march = if month > 2 { month - 3 } else { month + 9 };
    let of_year = (153 * from_march + 2) / 5 + day - 1;
    era * 146_097 + of_era * 365 + of_era / 4 - of_era / 100 + of_year - 719_468
}

/// Milliseconds since 1970 of a moment such as `2031-03-04T09:00:00.000Z`; offsets such as `+02:00`
/// are taken. `None` for anything else.
pub fn moment_ms(text: &str) -> Option<i64> {
    let bytes = text.as_bytes();
    if !text.is_ascii() || bytes.len() < 20 {
        return None;
    }
    let number = |from: usize, to: usize| -> Option<i64> {
        let digits = text.get(from..to)?;
        let all = digits.bytes().all(|b| b.is_ascii_digit());
        all.then(|| digits.parse().ok()).flatten()
    };
    let is = |at: usize, byte: u8| bytes.get(at) == Some(&byte);
    let separated = is(4, b'-') && is(7, b'-') && is(10, b'T') && is(13, b':') && is(16, b':');
    if !separated {
        return None;
    }
    let (year, month, day) = (number(0, 4)?, number(5, 7)?, number(8, 10)?);
    let (hour, minute, second) = (number(11, 13)?, number(14, 16)?, number(17, 19)?);
    let days = day_of(year, month, day);
    if civil(days) != (year, month, day) || hour > 23 || minute > 59 || second > 59 {
        return None;
    }
    let rest = text.get(19..)?;
    let (fraction, zone) = match rest.strip_prefix('.') {
        Some(after) => {
            let n = after.bytes().take_while(u8::is_ascii_digit).count();
            after
                .split_at_checked(n)
                .filter(|(digits, _)| !digits.is_empty())?
        }
        None => ("", rest),
    };
    let mut ms = 0;
    for place in 0..3 {
        let digit = fraction.as_bytes().get(place).map_or(0, |b| b - b'0');
        ms = ms * 10 + i64::from(digit);
    }
    let offset_min = match zone.as_bytes() {
        b"Z" => 0,
        [sign @ (b'+' | b'-'), h1, h2, b':', m1, m2] => {
            let digits = [h1, h2, m1, m2];
            if !digits.iter().all(|b| b.is_ascii_digit()) {
                return None;
            }
            let [h1, h2, m1, m2] = digits.map(|b| i64::from(b - b'0'));
            let minutes = (h1 * 10 + h2) * 60 + m1 * 10 + m2;
            if *sign == b'+' { minutes } else { -minutes }
        }
        _ => return None,
    };
    let seconds = days * DAY_S + hour * 3600 + minute * 60 + second - offset_min * 60;
    Some(seconds * 1000 + ms)
}

/// A moment in UTC with milliseconds.
pub fn moment(ms: i64) -> String {
    let seconds = ms.div_euclid(1000);
    let (year, month, day) = civil(seconds.div_euclid(DAY_S));
    let rest = seconds.rem_euclid(DAY_S);
    format!(
        "{year:04}-{month:02}-{day:02}T{:02}:{:02}:{:02}.{:03}Z",
        rest / 3600,
        rest / 60 % 60,
        rest % 60,
        ms.rem_euclid(1000)
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn days_have_their_dates() {
        // Common practice: 11016 is 29 February 2000, the leap day of a century.
        for (day, date) in [
            (0, (1970, 1, 1)),
            (11_016, (2000, 2, 29)),
            (-1, (1969, 12, 31)),
        ] {
            assert_eq!(civil(day), date);
            assert_eq!(day_of(date.0, date.1, date.2), day);
        }
        for day in (-200_000..200_000).step_by(37) {
            let (y, m, d) = civil(day);
            assert_eq!(day_of(y, m, d), day);
        }
    }

    #[test]
    fn a_moment_is_read_in_any_zone_and_written_in_utc() {
        // Published: RFC 3339, section 5.8, first two examples.
        for (text, utc) in [
            ("1985-04-12T23:20:50.52Z", "1985-04-12T23:20:50.520Z"),
            ("1996-12-19T16:39:57-08:00", "1996-12-20T00:39:57.000Z"),
        ] {
            assert_eq!(moment_ms(text).map(moment).as_deref(), Some(utc));
        }
        for wrong in [
            "",
            "yesterday",
            "2031-02-29T00:00:00Z",
            "2031-03-04T09:00:00",
            "2031-03-04T09:00:00.Z",
            "2031-03-04T25:00:00Z",
            "２０31-03-04T09:00:00Z",
        ] {
            assert_eq!(moment_ms(wrong), None, "{wrong}");
        }
    }
}

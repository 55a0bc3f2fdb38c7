//! Numbers as people read them: clock, durations, money. The only place where the screens turn
//! ticks and ratios into text; readings come formatted from the instrument.

use crate::assess::date::civil;
use crate::bench::notebook::TICKS_PER_S;
use crate::bench::notebook::Tick;
use crate::say;

/// Time of day at which the bell rings, minutes after midnight. Design choice: a morning call.
const BELL_MIN: u64 = 10 * 60 + 15;

/// Time of day, such as `10:42`.
pub fn clock(tick: Tick) -> String {
    let minutes = BELL_MIN + tick / (60 * TICKS_PER_S);
    format!("{:02}:{:02}", minutes / 60 % 24, minutes % 60)
}

/// Time of day with seconds, such as `10:42:07`.
pub fn clock_with_seconds(tick: Tick) -> String {
    format!("{}:{:02}", clock(tick), tick / TICKS_PER_S % 60)
}

/// How often, such as `once` or `3 times`.
pub fn times(n: usize) -> String {
    match n {
        1 => say!("once").to_owned(),
        2 => say!("twice").to_owned(),
        n => say!("{n} times", n),
    }
}

/// How long, such as `40 s`, `3 min` or `1 h 5 min`.
pub fn duration(ticks: Tick) -> String {
    let seconds = (ticks + TICKS_PER_S / 2) / TICKS_PER_S;
    match seconds {
        0..=90 => say!("{n} s", n = seconds),
        91..3570 => say!("{n} min", n = (seconds + 30) / 60),
        _ => {
            let (hours, minutes) = ((seconds + 30) / 3600, (seconds + 30) / 60 % 60);
            say!("{hours} h {minutes} min", hours, minutes)
        }
    }
}

/// Seconds as a duration.
pub fn seconds(time_s: f64) -> String {
    duration((time_s.max(0.0) * TICKS_PER_S as f64) as Tick)
}

/// Minutes since the bell, such as `24 min`.
pub fn on_site(tick: Tick) -> String {
    say!("{n} min", n = tick / (60 * TICKS_PER_S))
}

/// A day since 1 January 1970 as ISO 8601 writes it, such as `2031-03-04`: the same in every language.
pub fn date(day: f64) -> String {
    let (year, month, day) = civil(day.floor() as i64);
    format!("{year:04}-{month:02}-{day:02}")
}

/// An amount in the job's money unit, whole units.
pub fn money(amount: f64) -> String {
    if amount.is_finite() {
        format!("{:.0}", amount + 0.0)
    } else {
        "–".to_owned()
    }
}

/// The first letter as a capital, for words that open a line. A mark that opens a question or a call in
/// Spanish stands before it.
pub fn sentence(text: &str) -> String {
    let letters = text.trim_start_matches(['¿', '¡']);
    let (marks, mut letters) = (&text[..text.len() - letters.len()], letters.chars());
    match letters.next() {
        Some(first) => marks
            .chars()
            .chain(first.to_uppercase())
            .chain(letters)
            .collect(),
        None => marks.to_owned(),
    }
}

/// Words joined as a person says them: `a`, `a and b`, `a, b and c`.
pub fn listed(words: &[String]) -> String {
    match words {
        [] => String::new(),
        [only] => only.clone(),
        [start @ .., last] => say!("{first} and {last}", first = start.join(", "), last),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_clock_starts_when_the_bell_rings_and_turns_over_at_midnight() {
        assert_eq!(clock(0), "10:15");
        assert_eq!(clock_with_seconds(10 * (27 * 60 + 7)), "10:42:07");
        assert_eq!(clock(10 * 60 * (13 * 60 + 45)), "00:00");
    }

    #[test]
    fn durations_are_said_in_the_unit_a_person_would_use() {
        let said: Vec<String> = [0, 45, 200, 900, 910, 1800, 35_690, 36_000, 39_000]
            .map(duration)
            .into();
        assert_eq!(
            said,
            [
                "0 s",
                "5 s",
                "20 s",
                "90 s",
                "2 min",
                "3 min",
                "59 min",
                "1 h 0 min",
                "1 h 5 min"
            ]
        );
    }

    #[test]
    fn money_is_whole_and_never_minus_nothing() {
        assert_eq!(money(31.4), "31");
        assert_eq!(money(-0.0), "0");
        assert_eq!(money(f64::NAN), "–");
    }

    #[test]
    fn lists_read_like_speech() {
        let words =
            |list: &[&str]| listed(&list.iter().map(|w| (*w).to_owned()).collect::<Vec<_>>());
        assert_eq!(words(&["plug"]), "plug");
        assert_eq!(words(&["plug", "tap"]), "plug and tap");
        assert_eq!(words(&["plug", "tap", "hose"]), "plug, tap and hose");
    }

    #[test]
    fn a_line_opens_with_a_capital_in_every_script() {
        assert_eq!(sentence("belt off"), "Belt off");
        assert_eq!(sentence("¿qué zumba?"), "¿Qué zumba?");
        assert_eq!(sentence("पट्टा ढीला"), "पट्टा ढीला");
        assert_eq!(
            (sentence(""), sentence("¿")),
            (String::new(), "¿".to_owned())
        );
    }
}

//! Refreshers as a calendar file, RFC 5545: one whole-day event a day, with a reminder that morning.
//!
//! Whole days have no time zone, so a file made in one is right in another.

use std::collections::BTreeMap;

use crate::assess::date::civil;
use crate::assess::refresher::Due;
use crate::language::worded;
use crate::say;

/// Octets in a line at most, the end of line left out. RFC 5545, section 3.1.
const LONGEST_LINE: usize = 75;

/// The file. `now_s` is the time it is made, s since 1970 UTC; `home` tells whose it is and makes
/// events of two people differ, such as a candidate's number.
pub fn calendar(due: &[Due], now_s: u64, home: &str) -> String {
    let mut days: BTreeMap<i64, Vec<&Due>> = BTreeMap::new();
    for one in due {
        days.entry(one.day.floor() as i64).or_default().push(one);
    }
    let mut text = String::new();
    let mut line = |content: &str| fold(content, &mut text);
    line("BEGIN:VCALENDAR");
    line("VERSION:2.0");
    line("PRODID:-//Tubwright//Refreshers//EN");
    line("CALSCALE:GREGORIAN");
    line("METHOD:PUBLISH");
    let stamp = stamp(now_s);
    for (day, skills) in days {
        let names: Vec<_> = skills.iter().map(|one| worded(&one.skill)).collect();
        let safety = skills.iter().any(|one| one.is_safety);
        line("BEGIN:VEVENT");
        line(&format!("UID:{day}-{}@tubwright.invalid", plain(home)));
        line(&format!("DTSTAMP:{stamp}"));
        line(&format!("DTSTART;VALUE=DATE:{}", date(day)));
        line(&format!("DTEND;VALUE=DATE:{}", date(day + 1)));
        let summary = say!("Refresher: {skills}", skills = names.join(", "));
        line(&format!("SUMMARY:{}", escaped(&summary)));
        line(&format!("PRIORITY:{}", if safety { 1 } else { 5 }));
        line("TRANSP:TRANSPARENT");
        line("BEGIN:VALARM");
        line("ACTION:DISPLAY");
        line(&format!("DESCRIPTION:{}", escaped(say!("Refresher due"))));
        line("TRIGGER:PT9H");
        line("END:VALARM");
        line("END:VEVENT");
    }
    line("END:VCALENDAR");
    text
}

/// A line, folded between characters; continued lines begin with a space.
fn fold(content: &str, text: &mut String) {
    let mut used = 0;
    for c in content.chars() {
        if used + c.len_utf8() > LONGEST_LINE {
            text.push_str("\r\n ");
            used = 1;
        }
        text.push(c);
        used += c.len_utf8();
    }
    text.push_str("\r\n");
}

/// A text value: section 3.3.11.
fn escaped(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            '\\' | ';' | ',' => {
                out.push('\\');
                out.push(c);
            }
            '\n' => out.push_str("\\n"),
            c if c.is_control() => {}
            c => out.push(c),
        }
    }
    out
}

/// Letters, digits and dashes alone.
fn plain(text: &str) -> String {
    text.chars()
        .map(|c| if c.is_ascii_alphanumeric() { c } else { '-' })
        .collect()
}

fn date(day: i64) -> String {
    let (year, month, day) = civil(day);
    format!("{year:04}{month:02}{day:02}")
}

fn stamp(now_s: u64) -> String {
    let day = (now_s / 86_400) as i64;
    let rest = now_s % 86_400;
    format!(
        "{}T{:02}{:02}{:02}Z",
        date(day),
        rest / 3600,
        rest / 60 % 60,
        rest % 60
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    fn due(skill: &str, day: f64) -> Due {
        Due {
            skill: skill.to_owned(),
            is_safety: false,
            day,
            retained: 0.8,
            is_by_rule: false,
        }
    }

    #[test]
    fn a_stamp_is_in_utc() {
        assert_eq!(stamp(951_782_400 + 3661), "20000229T010101Z");
    }

    #[test]
    fn lines_are_folded_and_texts_escaped() {
        let long = "é".repeat(100) + "; a, b\\c\nd";
        let text = calendar(&[due(&long, 11_016.9), due("x", 11_016.1)], 0, "c 1;\r\nX:");
        assert!(text.split("\r\n").all(|line| line.len() <= LONGEST_LINE));
        assert!(!text.replace("\r\n", "").contains(['\n', '\r']));
        let unfolded = text.replace("\r\n ", "");
        assert!(unfolded.contains("\\; a\\, b\\\\c\\nd\\, x\r\n"));
        assert!(unfolded.contains("DTSTART;VALUE=DATE:20000229\r\nDTEND;VALUE=DATE:20000301\r\n"));
        assert_eq!(unfolded.matches("BEGIN:VEVENT").count(), 1);
        assert!(unfolded.contains("UID:11016-c-1---X-@"));
    }
}

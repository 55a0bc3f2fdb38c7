//! What is due again: for each skill the day by which it should be shown once more, and why then.
//!
//! The memory model's day is taken at a share that skills can bear (0.7, and 0.85 for safety), never
//! later than the longest interval the instructor allows. Skills decay over months without use:
//! published, Tatel and Ackerman, half of the gain in accuracy after about half a year; from memory,
//! Arthur et al. 1998.

use std::collections::BTreeMap;

use crate::assess::assessment_file::RefreshFile;
use crate::assess::memory;
use crate::assess::memory::Grade;

/// Share retained at which an ordinary skill is due. Design choice.
const ORDINARY_SHARE: f64 = 0.7;
/// Share retained at which a skill of safety is due. Design choice.
const SAFETY_SHARE: f64 = 0.85;
/// Days in a month, mean of the calendar.
const DAYS_PER_MONTH: f64 = 30.44;

/// A skill that was shown.
#[derive(Clone, Debug, PartialEq)]
pub struct Shown {
    /// Plain name of the skill.
    pub skill: String,
    /// It keeps people from harm.
    pub is_safety: bool,
    /// When, days since 1 January 1970.
    pub day: f64,
    /// How it went.
    pub grade: Grade,
}

/// A skill with the day it is due.
#[derive(Clone, Debug, PartialEq)]
pub struct Due {
    /// Plain name of the skill.
    pub skill: String,
    /// It keeps people from harm.
    pub is_safety: bool,
    /// By when, days since 1 January 1970.
    pub day: f64,
    /// Share retained today.
    pub retained: f64,
    /// The longest interval decided, not the memory model.
    pub is_by_rule: bool,
}

/// What is known of a skill: whether safety hangs on it, and a grade each day it was shown.
#[derive(Default)]
struct Practice {
    is_safety: bool,
    grades: Vec<(f64, Grade)>,
}

/// What is due, safety first among equals, soonest first. Entries dated after today, as a wrong
/// clock leaves them, count as today.
pub fn due(shown: &[Shown], today: f64, rules: &RefreshFile) -> Vec<Due> {
    let mut skills: BTreeMap<&str, Practice> = BTreeMap::new();
    for entry in shown {
        let practice = skills.entry(&entry.skill).or_default();
        practice.is_safety |= entry.is_safety;
        practice.grades.push((entry.day.min(today), entry.grade));
    }
    let mut list: Vec<Due> = skills
        .into_iter()
        .filter_map(|(skill, practice)| {
            let Practice {
                is_safety,
                mut grades,
            } = practice;
            grades.sort_by(|a, b| a.0.total_cmp(&b.0));
            let (last, memory) = memory::after(&grades)?;
            let (share, months) = if is_safety {
                (SAFETY_SHARE, rules.safety_months)
            } else {
                (ORDINARY_SHARE, rules.other_months)
            };
            let by_memory = memory.days_until(share);
            let by_rule = months * DAYS_PER_MONTH;
            Some(Due {
                skill: skill.to_owned(),
                is_safety,
                day: last + by_memory.min(by_rule),
                retained: memory.retained(today - last),
                is_by_rule: by_rule < by_memory,
            })
        })
        .collect();
    list.sort_by(|a, b| a.day.total_cmp(&b.day).then(b.is_safety.cmp(&a.is_safety)));
    list
}

#[cfg(test)]
mod tests {
    use super::*;

    fn shown(skill: &str, is_safety: bool, day: f64, grade: Grade) -> Shown {
        Shown {
            skill: skill.to_owned(),
            is_safety,
            day,
            grade,
        }
    }

    #[test]
    fn the_longest_interval_always_wins() {
        let mut history = Vec::new();
        for day in [0.0, 30.0, 120.0, 400.0] {
            history.push(shown("prove dead", true, day, Grade::Easy));
            history.push(shown("service test", false, day, Grade::Easy));
        }
        let due = due(&history, 401.0, &RefreshFile::default());
        assert_eq!(due[0].skill, "prove dead");
        assert!((due[0].day - (400.0 + 6.0 * DAYS_PER_MONTH)).abs() < 1e-9 && due[0].is_by_rule);
        assert!((due[1].day - (400.0 + 12.0 * DAYS_PER_MONTH)).abs() < 1e-9);
    }

    #[test]
    fn what_went_badly_is_due_sooner() {
        let of = |grade| {
            let history = [
                shown("s", false, 0.0, Grade::Good),
                shown("s", false, 20.0, grade),
            ];
            due(&history, 21.0, &RefreshFile::default())[0].day
        };
        assert!(of(Grade::Again) < of(Grade::Hard) && of(Grade::Hard) < of(Grade::Good));
    }

    #[test]
    fn a_clock_that_ran_ahead_delays_nothing() {
        let ahead = [shown("s", false, 9000.0, Grade::Good)];
        let due = due(&ahead, 100.0, &RefreshFile::default());
        assert!(due[0].day < 200.0 && due[0].retained > 0.99);
    }
}

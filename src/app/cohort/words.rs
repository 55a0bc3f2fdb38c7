//! One record in the words of tables, and the buttons in them that print as plain text.

use std::borrow::Cow;

use yew::prelude::*;

use crate::app::format;
use crate::assess::assessment_file::AssessmentFile;
use crate::bench::safety;
use crate::language::decimals;
use crate::language::said;
use crate::language::worded;
use crate::records::cohort::lines::JobLine;
use crate::records::cohort::lines::Measured;
use crate::records::result::JobResult;
use crate::records::result::SafetyResult;
use crate::say;
use crate::scenario;

/// How a job ended.
pub fn ended(result: &JobResult) -> &'static str {
    match (result.ending.as_str(), result.fixed) {
        ("made_safe", _) => say!("made safe and left"),
        (_, true) => say!("put right"),
        ("closed", false) => say!("not put right"),
        _ => say!("not handed over"),
    }
}

/// Safety rules broken, each with how grave it is.
pub fn broken(result: &JobResult) -> String {
    let one = |broken: &SafetyResult| {
        say!(
            "{severity}: {rule}",
            severity = worded(&broken.severity),
            rule = rule_title(&broken.rule)
        )
    };
    if result.safety.is_empty() {
        return say!("none broken").to_owned();
    }
    let all: Vec<String> = result.safety.iter().map(one).collect();
    all.join("; ")
}

/// Title of a safety rule; the name of one that is not known.
pub fn rule_title(rule: &str) -> &str {
    safety::rule(rule).map_or(rule, |known| said(known.title))
}

/// Title of a job that ships; the name of any other.
pub fn title_of(job: &str) -> Cow<'_, str> {
    let shipped = scenario::job_files().unwrap_or_default();
    let found = shipped.iter().find(|one| one.id == job);
    found.map_or(Cow::Borrowed(job), |one| worded(&one.file.title))
}

/// Title of an assessment whose file is known, the name of any other; practice has an empty name.
pub fn title_of_assessment(id: &str, files: &[AssessmentFile]) -> String {
    let found = files.iter().find(|file| file.id == id);
    match (id, found) {
        ("", _) => say!("practice").to_owned(),
        (_, Some(file)) => worded(&file.title).into_owned(),
        (id, None) => id.to_owned(),
    }
}

/// A fault in plain words.
pub fn fault_name(id: &str) -> String {
    let known = scenario::catalogue()
        .ok()
        .and_then(|all| all.faults.iter().find(|fault| fault.id == id));
    known.map_or_else(|| id.to_owned(), |fault| worded(&fault.name).into_owned())
}

/// A way to more, in a table; on paper the words alone. `label` says where it leads.
pub fn go(words: &str, label: String, onclick: Callback<MouseEvent>) -> Html {
    html! {
        <><button type="button" class="desk__go no-print" {onclick} aria-label={label}><bdi>{ words }</bdi></button><bdi class="only-print">{ words }</bdi></>
    }
}

/// What was taken with its target behind it, such as `52 min, target 45 min`.
pub fn of_target(taken: &str, target: Option<String>) -> String {
    target.map_or_else(
        || say!("{taken}, no target known", taken),
        |target| say!("{taken}, target {target}", taken, target),
    )
}

/// What was taken on average, its target, and the one over the other.
pub fn beside(taken: &str, target: Option<String>, ratio: Option<f64>) -> String {
    target.zip(ratio).map_or_else(
        || say!("{taken}; no target is known", taken),
        |(target, ratio)| {
            say!(
                "{taken}; target {target}, {ratio} times as much",
                taken,
                target,
                ratio = decimals(format!("{ratio:.2}"))
            )
        },
    )
}

/// Minutes, such as `52 min`.
pub fn minutes(minutes: f64) -> String {
    say!("{n} min", n = format!("{minutes:.0}"))
}

/// What one job's target cost is, where one is known.
pub fn target_cost(result: &JobResult) -> Option<String> {
    (result.target_cost > 0.0).then(|| format::money(result.target_cost))
}

/// A ratio, such as `1.20`; a dash where none is known.
pub fn ratio(ratio: Option<f64>) -> String {
    ratio.map_or_else(|| "–".to_owned(), |ratio| decimals(format!("{ratio:.2}")))
}

/// A number with its error, such as `+0.52 ± 0.31`.
pub fn measured(number: Measured) -> String {
    decimals(format!("{:+.2} ± {:.2}", number.value, number.se))
}

/// How hard a job is, with the number where there is one.
pub fn difficulty(line: &JobLine) -> String {
    let words = worded(&line.words);
    line.difficulty.map_or_else(
        || words.clone().into_owned(),
        |number| say!("{number}: {words}", number = measured(number), words),
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_record_is_put_in_words_and_unknown_names_stay_as_they_are() {
        let mut result = JobResult {
            ending: "closed".to_owned(),
            ..JobResult::nothing()
        };
        assert_eq!(
            (ended(&result), broken(&result).as_str()),
            ("not put right", "none broken")
        );
        result.ending = "open".to_owned();
        result.safety.push(SafetyResult {
            rule: "of_another_version".to_owned(),
            severity: "major".to_owned(),
            step: 1,
        });
        assert_eq!(ended(&result), "not handed over");
        assert_eq!(broken(&result), "major: of_another_version");
        assert_eq!(title_of("no_water"), "No water comes in");
        assert_eq!(title_of("nowhere"), "nowhere");
        assert_eq!(ratio(None), "–");
        assert_eq!(target_cost(&result), None);
    }

    #[test]
    fn time_and_cost_stand_beside_their_target_where_one_is_known() {
        assert_eq!(
            of_target("52 min", Some(minutes(45.0))),
            "52 min, target 45 min"
        );
        assert_eq!(of_target("52 min", None), "52 min, no target known");
        assert_eq!(
            beside("52 min", Some(minutes(45.0)), Some(1.156)),
            "52 min; target 45 min, 1.16 times as much"
        );
        assert_eq!(beside("52 min", None, None), "52 min; no target is known");
    }
}

//! One record in the words of tables, and the buttons in them that print as plain text.

use yew::prelude::*;

use crate::app::format;
use crate::assess::assessment_file::AssessmentFile;
use crate::bench::safety;
use crate::records::result::JobResult;
use crate::records::result::SafetyResult;
use crate::scenario;

/// How a job ended.
pub fn ended(result: &JobResult) -> &'static str {
    match (result.ending.as_str(), result.fixed) {
        ("made_safe", _) => "made safe and left",
        (_, true) => "put right",
        ("closed", false) => "not put right",
        _ => "not handed over",
    }
}

/// Safety rules broken, each with how grave it is.
pub fn broken(result: &JobResult) -> String {
    let one = |broken: &SafetyResult| {
        let title = safety::rule(&broken.rule).map_or(broken.rule.as_str(), |rule| rule.title);
        format!("{}: {title}", broken.severity)
    };
    if result.safety.is_empty() {
        return "none broken".to_owned();
    }
    let all: Vec<String> = result.safety.iter().map(one).collect();
    all.join("; ")
}

/// Title of a job that ships; the name of any other.
pub fn title_of(job: &str) -> &str {
    let shipped = scenario::job_files().unwrap_or_default();
    let found = shipped.iter().find(|one| one.id == job);
    found.map_or(job, |one| one.file.title.as_str())
}

/// Title of an assessment whose file is known, the name of any other; practice has an empty name.
pub fn title_of_assessment(id: &str, files: &[AssessmentFile]) -> String {
    let found = files.iter().find(|file| file.id == id);
    match (id, found) {
        ("", _) => "practice".to_owned(),
        (_, Some(file)) => file.title.clone(),
        (id, None) => id.to_owned(),
    }
}

/// A fault in plain words.
pub fn fault_name(id: &str) -> String {
    let known = scenario::catalogue()
        .ok()
        .and_then(|all| all.faults.iter().find(|fault| fault.id == id));
    known.map_or_else(|| id.to_owned(), |fault| fault.name.clone())
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
        || format!("{taken}, no target known"),
        |target| format!("{taken}, target {target}"),
    )
}

/// What was taken on average, its target, and the one over the other.
pub fn beside(taken: &str, target: Option<String>, ratio: Option<f64>) -> String {
    target.zip(ratio).map_or_else(
        || format!("{taken}; no target is known"),
        |(target, ratio)| format!("{taken}; target {target}, {ratio:.2} times as much"),
    )
}

/// Minutes, such as `52 min`.
pub fn minutes(minutes: f64) -> String {
    format!("{minutes:.0} min")
}

/// What one job's target cost is, where one is known.
pub fn target_cost(result: &JobResult) -> Option<String> {
    (result.target_cost > 0.0).then(|| format::money(result.target_cost))
}

/// A ratio, such as `1.20`; a dash where none is known.
pub fn ratio(ratio: Option<f64>) -> String {
    ratio.map_or_else(|| "–".to_owned(), |ratio| format!("{ratio:.2}"))
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

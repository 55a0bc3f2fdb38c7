//! An assessment as a whole: begun, passed or failed, completed, over.
//!
//! On the border more jobs decide: then there is a score, and neither `passed` nor `failed`. Marks and
//! decision may differ: a broken safety rule is not made up for by marks. The reasons stand beside.

use serde_json::Value;
use serde_json::json;
use uuid::Uuid;

use crate::assess::decide::Decided;
use crate::assess::decide::Decision;
use crate::bench::notebook::Tick;
use crate::records::seal::Hash;
use crate::records::xapi::ADL_TYPES;
use crate::records::xapi::ADL_VERBS;
use crate::records::xapi::Deployment;
use crate::records::xapi::Frame;
use crate::records::xapi::Mode;
use crate::records::xapi::Part;
use crate::records::xapi::activity;
use crate::records::xapi::assessment_iri;
use crate::records::xapi::attempt;
use crate::records::xapi::duration;
use crate::records::xapi::extension;
use crate::records::xapi::score;
use crate::records::xapi::whole_marks;

/// What a sitting came to.
#[derive(Clone, Debug, PartialEq)]
pub struct Whole<'a> {
    /// Name of the assessment.
    pub id: &'a str,
    /// Its title.
    pub title: &'a str,
    /// Number or pseudonym.
    pub candidate: &'a str,
    /// The attempt.
    pub registration: Uuid,
    /// Sealed with a start code; otherwise it is practice.
    pub is_sealed: bool,
    /// It began, ms since 1970, where that was written down.
    pub started_ms: Option<i64>,
    /// It was handed in, ms since 1970, where that was written down.
    pub ended_ms: Option<i64>,
    /// Time used, in ticks.
    pub took: Tick,
    /// Jobs asked, and jobs worked on.
    pub n_jobs: (usize, usize),
    /// What is decided.
    pub decided: &'a Decided,
}

/// The attempt that sitting an assessment as practice is; its jobs are attempts of their own.
pub fn practice_run(candidate: &str, assessment: &str, started_ms: i64) -> Uuid {
    let parts = [
        candidate.as_bytes(),
        assessment.as_bytes(),
        &started_ms.to_le_bytes(),
    ];
    attempt(Hash::of("tubwright practice run 1", &parts))
}

/// All statements of the whole, oldest first.
pub fn whole(whole: &Whole<'_>, place: &Deployment) -> Vec<Value> {
    let name = Some((place.language.as_str(), whole.title));
    let object = activity(
        &assessment_iri(place, whole.id),
        ADL_TYPES,
        "assessment",
        name,
    );
    let took = duration(whole.took);
    let (verb, judged) = judged(whole, &took);
    let all = [
        ("initialized", None),
        (verb, Some(judged)),
        (
            "completed",
            Some(json!({"completion": true, "duration": took})),
        ),
        ("terminated", Some(json!({"duration": took}))),
    ];
    let framed = |(at, (verb, result)): (usize, (&'static str, Option<Value>))| {
        let is_first = at == 0;
        let frame = Frame {
            place,
            candidate: whole.candidate,
            registration: whole.registration,
            mode: if whole.is_sealed {
                Mode::Assessment
            } else {
                Mode::Practice
            },
            start_ms: if is_first {
                whole.started_ms
            } else {
                whole.ended_ms
            },
        };
        let (asked, worked) = whole.n_jobs;
        let part = Part {
            verb: (ADL_VERBS, verb),
            object: object.clone(),
            result,
            parent: None,
            grouping: None,
            extensions: vec![
                ("pass-mark", json!({"marks": whole.decided.cut, "max": 100})),
                ("jobs", json!({"asked": asked, "worked": worked})),
            ],
        };
        frame.statement(part, at, &format!("assessment/{}/{at}", whole.id))
    };
    all.into_iter().enumerate().map(framed).collect()
}

fn judged(whole: &Whole<'_>, took: &str) -> (&'static str, Value) {
    let decided = whole.decided;
    let reasons = json!({"reasons": decided.reasons});
    let mut result = json!({
        "score": score(decided.marks, whole_marks(decided.marks)),
        "duration": took,
        "extensions": {(extension("decision")): reasons},
    });
    let verb = match decided.decision {
        Decision::Passed => "passed",
        Decision::NotYet => "failed",
        Decision::Border => "scored",
    };
    if decided.decision != Decision::Border {
        result["success"] = json!(decided.decision == Decision::Passed);
    }
    (verb, result)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::assess::decide::Reason;

    fn place() -> Deployment {
        Deployment {
            base: "https://s.example/".to_owned(),
            home_page: "https://s.example".to_owned(),
            language: "en".to_owned(),
        }
    }

    fn told(decision: Decision, marks: f64, is_sealed: bool) -> Vec<Value> {
        let decided = Decided {
            decision,
            marks,
            cut: 65.0,
            cut_se: 0.0,
            reasons: vec![Reason::Critical { n: 1 }],
        };
        let one = Whole {
            id: "autumn",
            title: "Autumn",
            candidate: "c-1",
            registration: practice_run("c-1", "autumn", 0),
            is_sealed,
            started_ms: Some(0),
            ended_ms: Some(900_000),
            took: 9000,
            n_jobs: (4, 3),
            decided: &decided,
        };
        whole(&one, &place())
    }

    fn verbs(all: &[Value]) -> Vec<&str> {
        all.iter()
            .filter_map(|one| one["verb"]["display"]["en"].as_str())
            .collect()
    }

    #[test]
    fn it_is_passed_failed_or_on_the_border_scored_and_completed_without_a_score() {
        for (decision, verb, success) in [
            (Decision::Passed, "passed", Some(true)),
            (Decision::NotYet, "failed", Some(false)),
            (Decision::Border, "scored", None),
        ] {
            let all = told(decision, 64.9, true);
            assert_eq!(
                verbs(&all),
                ["initialized", verb, "completed", "terminated"]
            );
            let result = &all[1]["result"];
            assert_eq!(result["success"].as_bool(), success);
            assert_eq!(
                [&result["score"]["raw"], &result["score"]["max"]],
                [&json!(64), &json!(100)]
            );
            assert_eq!(result["duration"], "PT15M0S");
            assert!(result.get("completion").is_none());
            let done = &all[2]["result"];
            assert!(done.get("score").is_none() && done["completion"] == true);
        }
    }

    #[test]
    fn it_stands_above_its_jobs_and_under_nothing() {
        let all = told(Decision::Passed, 80.0, false);
        for one in &all {
            assert_eq!(one["object"]["id"], "https://s.example/assessment/autumn");
            let activities = &one["context"]["contextActivities"];
            assert!(activities.get("parent").is_none() && activities.get("grouping").is_none());
            let mode = &one["context"]["extensions"][extension("mode")];
            assert_eq!(mode["kind"], "practice");
            assert!(!one.to_string().contains("null"), "{one}");
        }
        assert_eq!(all[0]["timestamp"], "1970-01-01T00:00:00.000Z");
        assert_eq!(all[3]["timestamp"], "1970-01-01T00:15:00.003Z");
    }

    #[test]
    fn each_run_of_practice_is_an_attempt_of_its_own() {
        let run = |candidate, at| practice_run(candidate, "autumn", at);
        assert_eq!(run("c-1", 5), run("c-1", 5));
        assert!(run("c-1", 5) != run("c-1", 6) && run("c-1", 5) != run("c-2", 5));
    }
}

//! What a SCORM run-time is told, as names and values of its data model: SCORM 1.2 and SCORM 2004 4th
//! edition. Limits are kept here, since run-times differ in holding them.

use crate::assess::decide::Decided;
use crate::assess::decide::Decision;
use crate::records::record::Record;

/// Which data model.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Model {
    /// SCORM 1.2.
    Scorm12,
    /// SCORM 2004, 4th edition.
    Scorm2004,
}

/// A name and its value.
pub type Field = (String, String);

impl Model {
    /// Name of a call as this model has it.
    pub fn call(self, name: &'static str) -> &'static str {
        match (self, name) {
            (Self::Scorm2004, name) => name,
            (Self::Scorm12, "Initialize") => "LMSInitialize",
            (Self::Scorm12, "Terminate") => "LMSFinish",
            (Self::Scorm12, "Commit") => "LMSCommit",
            (Self::Scorm12, "GetValue") => "LMSGetValue",
            (Self::Scorm12, _) => "LMSSetValue",
        }
    }

    /// Most letters of suspended data. Published: SCORM 1.2 run-time environment, 3.4.4, and SCORM
    /// 2004 4th edition run-time environment, 4.2.22.
    pub fn most_suspended(self) -> usize {
        match self {
            Self::Scorm12 => 4096,
            Self::Scorm2004 => 64_000,
        }
    }

    /// Where the learner's number stands.
    pub fn learner(self) -> &'static str {
        match self {
            Self::Scorm12 => "cmi.core.student_id",
            Self::Scorm2004 => "cmi.learner_id",
        }
    }

    /// Where the name of what is started stands.
    pub fn launch_data(self) -> &'static str {
        "cmi.launch_data"
    }

    /// Where it stands that the learner only looks, not works for a mark.
    pub fn mode(self) -> &'static str {
        match self {
            Self::Scorm12 => "cmi.core.lesson_mode",
            Self::Scorm2004 => "cmi.mode",
        }
    }

    /// The work goes on some other time.
    pub fn suspended(self, seconds: f64) -> Vec<Field> {
        match self {
            Self::Scorm12 => own(&[
                ("cmi.core.session_time", &self.time(seconds)),
                ("cmi.core.exit", "suspend"),
            ]),
            Self::Scorm2004 => own(&[
                ("cmi.session_time", &self.time(seconds)),
                ("cmi.exit", "suspend"),
            ]),
        }
    }

    /// The work is over.
    pub fn over(self, seconds: f64) -> Vec<Field> {
        match self {
            Self::Scorm12 => own(&[
                ("cmi.core.session_time", &self.time(seconds)),
                ("cmi.core.exit", ""),
            ]),
            Self::Scorm2004 => own(&[
                ("cmi.session_time", &self.time(seconds)),
                ("cmi.exit", "normal"),
            ]),
        }
    }

    /// It has begun.
    pub fn begun(self) -> Vec<Field> {
        match self {
            Self::Scorm12 => own(&[("cmi.core.lesson_status", "incomplete")]),
            Self::Scorm2004 => own(&[
                ("cmi.completion_status", "incomplete"),
                ("cmi.success_status", "unknown"),
            ]),
        }
    }

    /// What came of it: each job, then the score, then the status, since a run-time may work out a
    /// status of its own from the score.
    pub fn ended(self, decided: &Decided, records: &[Record]) -> Vec<Field> {
        let mut all: Vec<Field> = records
            .iter()
            .enumerate()
            .flat_map(|(at, record)| self.job(at, record))
            .collect();
        let raw = format!("{:.2}", decided.marks.clamp(0.0, 100.0));
        let score = match self {
            Self::Scorm12 => own(&[
                ("cmi.core.score.min", "0"),
                ("cmi.core.score.max", "100"),
                ("cmi.core.score.raw", &raw),
            ]),
            Self::Scorm2004 => {
                let scaled = format!("{:.4}", decided.marks.clamp(0.0, 100.0) / 100.0);
                own(&[
                    ("cmi.score.min", "0"),
                    ("cmi.score.max", "100"),
                    ("cmi.score.raw", &raw),
                    ("cmi.score.scaled", &scaled),
                ])
            }
        };
        all.extend(score);
        all.extend(match (self, decided.decision) {
            (Self::Scorm12, Decision::Passed) => own(&[("cmi.core.lesson_status", "passed")]),
            (Self::Scorm12, Decision::NotYet) => own(&[("cmi.core.lesson_status", "failed")]),
            (Self::Scorm12, Decision::Border) => own(&[("cmi.core.lesson_status", "completed")]),
            (Self::Scorm2004, decision) => {
                let success = match decision {
                    Decision::Passed => "passed",
                    Decision::NotYet => "failed",
                    Decision::Border => "unknown",
                };
                own(&[
                    ("cmi.completion_status", "completed"),
                    ("cmi.progress_measure", "1"),
                    ("cmi.success_status", success),
                ])
            }
        });
        all
    }

    /// One job as an interaction.
    fn job(self, at: usize, record: &Record) -> Vec<Field> {
        let result = record.body.counted();
        let right = result.fixed && result.safe;
        let response = format!(
            "{:.0} of 100, {}, {}",
            result.total,
            if result.fixed {
                "put right"
            } else {
                "not put right"
            },
            if result.safe { "safe" } else { "not safe" }
        );
        let took = self.time(result.minutes * 60.0);
        let id = format!("job-{}", at + 1);
        let fields: Vec<(&str, &str)> = match self {
            Self::Scorm12 => vec![
                ("id", &id),
                ("type", "performance"),
                ("student_response", &response),
                ("result", if right { "correct" } else { "wrong" }),
                ("latency", &took),
            ],
            Self::Scorm2004 => vec![
                ("id", &id),
                ("type", "other"),
                ("learner_response", &response),
                ("result", if right { "correct" } else { "incorrect" }),
                ("latency", &took),
            ],
        };
        fields
            .into_iter()
            .map(|(name, value)| (format!("cmi.interactions.{at}.{name}"), value.to_owned()))
            .collect()
    }

    /// A span of time as this model writes it; hundredths of a second at most.
    pub fn time(self, seconds: f64) -> String {
        let hundredths = (seconds.clamp(0.0, 3.5e7) * 100.0).round() as u64;
        let (hours, minutes) = (hundredths / 360_000, hundredths / 6000 % 60);
        let (whole, rest) = (hundredths / 100 % 60, hundredths % 100);
        match self {
            Self::Scorm12 => format!("{:04}:{minutes:02}:{whole:02}.{rest:02}", hours.min(9999)),
            Self::Scorm2004 => format!("PT{hours}H{minutes}M{whole}.{rest:02}S"),
        }
    }
}

fn own(fields: &[(&str, &str)]) -> Vec<Field> {
    fields
        .iter()
        .map(|(name, value)| ((*name).to_owned(), (*value).to_owned()))
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn decided(decision: Decision, marks: f64) -> Decided {
        Decided {
            decision,
            marks,
            cut: 65.0,
            cut_se: 0.0,
            reasons: Vec::new(),
        }
    }

    #[test]
    fn times_are_written_as_each_edition_wants_them() {
        // Published: SCORM 1.2 CMITimespan; SCORM 2004 timeinterval(second,10,2).
        assert_eq!(Model::Scorm12.time(750.0), "0000:12:30.00");
        assert_eq!(Model::Scorm2004.time(750.256), "PT0H12M30.26S");
        assert_eq!(Model::Scorm12.time(-1.0), "0000:00:00.00");
    }

    #[test]
    fn the_status_comes_after_the_score_and_a_border_is_neither_passed_nor_failed() {
        let last = |model: Model, decision| {
            model
                .ended(&decided(decision, 64.25), &[])
                .pop()
                .expect("told")
        };
        assert_eq!(last(Model::Scorm12, Decision::Border).1, "completed");
        assert_eq!(last(Model::Scorm12, Decision::NotYet).1, "failed");
        assert_eq!(
            last(Model::Scorm2004, Decision::Border),
            ("cmi.success_status".to_owned(), "unknown".to_owned())
        );
        let all = Model::Scorm2004.ended(&decided(Decision::Passed, 85.0), &[]);
        assert!(all.contains(&("cmi.score.scaled".to_owned(), "0.8500".to_owned())));
    }
}

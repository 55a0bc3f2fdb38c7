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

    /// Where it stands whether the learner comes for the first time.
    pub fn entry(self) -> &'static str {
        match self {
            Self::Scorm12 => "cmi.core.entry",
            Self::Scorm2004 => "cmi.entry",
        }
    }

    /// Where it stands that the learner only looks, not works for a mark.
    pub fn mode(self) -> &'static str {
        match self {
            Self::Scorm12 => "cmi.core.lesson_mode",
            Self::Scorm2004 => "cmi.mode",
        }
    }

    /// Where the mark that passes stands.
    pub fn pass_mark(self) -> &'static str {
        match self {
            Self::Scorm12 => "cmi.student_data.mastery_score",
            Self::Scorm2004 => "cmi.scaled_passing_score",
        }
    }

    /// Marks of 100 that pass, as it is written there; none where nothing is.
    pub fn pass_marks(self, written: &str) -> Option<f64> {
        let number: f64 = written.trim().parse().ok()?;
        let marks = match self {
            Self::Scorm12 => number,
            // As a number of hundredths: 0.55 is 55.
            Self::Scorm2004 => (10_000.0 * number).round() / 100.0,
        };
        marks.is_finite().then_some(marks)
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

    /// What came of it: each job, then the score, then the status. A run-time that knows a mark that
    /// passes works out a status of its own from the score, whatever it is told: a score goes along
    /// only where that comes to what was decided, so not on the border, and not where a minimum beside
    /// the cut was missed. `pass_marks` is that mark, where there is one.
    pub fn ended(
        self,
        decided: &Decided,
        records: &[Record],
        pass_marks: Option<f64>,
    ) -> Vec<Field> {
        let mut all: Vec<Field> = records
            .iter()
            .enumerate()
            .flat_map(|(at, record)| self.job(at, record))
            .collect();
        let marks = (decided.marks.clamp(0.0, 100.0) * 100.0).round() / 100.0;
        let passes = marks >= pass_marks.unwrap_or(decided.cut);
        let says_the_same = match decided.decision {
            Decision::Passed => passes,
            Decision::NotYet => !passes,
            Decision::Border => false,
        };
        if says_the_same {
            all.extend(self.score(marks));
        }
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

    fn score(self, marks: f64) -> Vec<Field> {
        let (raw, scaled) = (format!("{marks:.2}"), format!("{:.4}", marks / 100.0));
        match self {
            Self::Scorm12 => own(&[
                ("cmi.core.score.min", "0"),
                ("cmi.core.score.max", "100"),
                ("cmi.core.score.raw", &raw),
            ]),
            Self::Scorm2004 => own(&[
                ("cmi.score.min", "0"),
                ("cmi.score.max", "100"),
                ("cmi.score.raw", &raw),
                ("cmi.score.scaled", &scaled),
            ]),
        }
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
                .ended(&decided(decision, 64.25), &[], None)
                .pop()
                .expect("told")
        };
        assert_eq!(last(Model::Scorm12, Decision::Border).1, "completed");
        assert_eq!(last(Model::Scorm12, Decision::NotYet).1, "failed");
        assert_eq!(
            last(Model::Scorm2004, Decision::Border),
            ("cmi.success_status".to_owned(), "unknown".to_owned())
        );
        let all = Model::Scorm2004.ended(&decided(Decision::Passed, 85.0), &[], Some(80.0));
        assert!(all.contains(&("cmi.score.scaled".to_owned(), "0.8500".to_owned())));
    }

    #[test]
    fn a_run_time_that_counts_for_itself_comes_to_no_other_status() {
        let scores = |decision, marks, pass_marks| {
            [Model::Scorm12, Model::Scorm2004].map(|model| {
                let all = model.ended(&decided(decision, marks), &[], pass_marks);
                all.iter()
                    .filter(|(name, _)| name.contains("score"))
                    .count()
            })
        };
        assert_eq!(scores(Decision::Passed, 70.0, None), [3, 4]);
        assert_eq!(scores(Decision::NotYet, 50.0, Some(65.0)), [3, 4]);
        // A safety rule was broken, or the border is wide: the marks alone would pass, or decide.
        assert_eq!(scores(Decision::NotYet, 90.0, Some(65.0)), [0, 0]);
        assert_eq!(scores(Decision::Border, 66.0, Some(65.0)), [0, 0]);
        // The system asks for more than the assessment.
        assert_eq!(scores(Decision::Passed, 70.0, Some(80.0)), [0, 0]);
        // As it is told, 64.996 is 65.
        assert_eq!(scores(Decision::NotYet, 64.996, Some(65.0)), [0, 0]);
    }

    #[test]
    fn the_mark_that_passes_is_read_in_either_model() {
        assert_eq!(Model::Scorm12.pass_marks("80"), Some(80.0));
        assert_eq!(Model::Scorm2004.pass_marks(" 0.8 "), Some(80.0));
        assert_eq!(Model::Scorm2004.pass_marks("0.55"), Some(55.0));
        for none in ["", "eighty", "NaN"] {
            assert_eq!(Model::Scorm12.pass_marks(none), None, "{none}");
        }
    }
}

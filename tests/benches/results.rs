//! Cases of records: one verified, a cohort worked out.

use tubwright::bench::job::Entry;
use tubwright::bench::job::Job;
use tubwright::records::check::body_of;
use tubwright::records::check::check;
use tubwright::records::library::Library;
use tubwright::records::measurement::calibration::calibrate;
use tubwright::records::measurement::parameters::SlopeRule;
use tubwright::records::measurement::priors::Priors;
use tubwright::records::measurement::responses::Responses;
use tubwright::records::measurement::responses::Row;
use tubwright::records::record::Body;
use tubwright::records::record::Record;

use crate::measure::Case;

/// Reading, hashing, replaying and marking; records a second on one core is one over it.
pub fn one_record_verified() -> Case {
    let library = Library::shipped().expect("ships");
    let task = library.task("hums_and_stands").expect("ships").clone();
    let log: Vec<Entry> =
        serde_json::from_str(include_str!("../jobs/hums_and_stands.json")).expect("a log");
    let (job, _) = Job::replay(task.scenario.clone(), 1, &log).expect("starts");
    let body = body_of(&job, &task, "c-1", Body::root("c-1", None)).expect("marks");
    let record = Record::close(body, None, None).expect("finite");
    let text = record.write().expect("finite");
    Case::new("records: one of 46 minutes verified", None, move || {
        let record = Record::read("r.json", &text).expect("a record");
        check(&record, &library, None).expect("accepted");
        record.body.result.total
    })
}

/// A thousand people by forty jobs.
pub fn thousand_by_forty() -> Case {
    let name = "cohort: 1,000 people x 40 jobs, import and Rasch fit";
    people_by_forty(name, Some((2.0, 2.0)), 1000)
}

/// So many people by forty jobs, graded 0 or 1 by a fixed mixing of their numbers.
pub fn people_by_forty(name: &'static str, budget_s: Option<(f64, f64)>, people: u64) -> Case {
    let rows: Vec<Row> = (0..people)
        .map(|person| {
            (0..40_u64)
                .map(|job| {
                    let mixed = (person * 40 + job + 1).wrapping_mul(0x9e37_79b9_7f4a_7c15);
                    let draw = (mixed ^ mixed >> 29) % 1000;
                    Some(u8::from(draw + job * 10 < person * 1000 / people))
                })
                .collect()
        })
        .collect();
    Case::new(name, budget_s, move || {
        let responses = Responses::new(&rows).expect("scores");
        let fitted = calibrate(&responses, SlopeRule::Fixed, &Priors::small_cohort(40));
        fitted.expect("settles").log_likelihood
    })
}

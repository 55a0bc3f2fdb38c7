//! Every reference row of measurement, worked out from its data file and compared.
//!
//! A row names a case and a quantity. The case is a file of scores (`lsat6` is `lsat6.csv`) or an
//! entry of `instances.json`; the quantity says what to work out, so that rows of the same kinds on
//! other data run too. Folder: `TUBWRIGHT_ROWS`, by default `tests/fixtures/rows`, searched with
//! what is below it. Each row names the outside program it came from.

#[path = "measurement_rows/cohort.rs"]
mod cohort;
#[path = "measurement_rows/files.rs"]
mod files;
#[path = "measurement_rows/instance.rs"]
mod instance;
#[path = "measurement_rows/quantity.rs"]
mod quantity;
#[path = "validation/mod.rs"]
mod validation;

use std::collections::BTreeMap;

use rand_chacha::ChaCha8Rng;
use rand_core::RngCore;
use rand_core::SeedableRng;

use tubwright::records::measurement::calibration::calibrate;
use tubwright::records::measurement::parameters::SlopeRule;
use tubwright::records::measurement::priors::Priors;
use tubwright::records::measurement::responses::Responses;

use cohort::Cohort;
use files::Row;
use validation::Check;

/// What a case stands for.
enum Case {
    Scores(Box<Cohort>),
    Instance(serde_json::Value),
    /// A case of the expert's, which another test works out.
    Others,
}

fn cases(rows: &[Row]) -> BTreeMap<String, Case> {
    let instances = files::instances();
    let mut cases = BTreeMap::new();
    for row in rows {
        if cases.contains_key(&row.case) {
            continue;
        }
        let found = if let Some(text) = files::scores(&row.case) {
            Case::Scores(Box::new(Cohort::read(&text)))
        } else if let Some(value) = instances.get(&row.case) {
            if instance::is_ours(value) {
                Case::Instance(value.clone())
            } else {
                Case::Others
            }
        } else if instances
            .keys()
            .any(|key| row.case.starts_with(&format!("{key}_")))
        {
            Case::Others
        } else {
            panic!("case {}: no file of scores and no instance", row.case)
        };
        cases.insert(row.case.clone(), found);
    }
    cases
}

#[test]
fn every_row_is_worked_out_and_agrees() {
    let rows = files::rows();
    let mut cases = cases(&rows);
    let (mut wrong, mut checks) = (Vec::new(), Vec::new());
    let mut n_rows = 0;
    for row in &rows {
        let got = match cases.get_mut(&row.case) {
            Some(Case::Scores(cohort)) => cohort.answer(&row.quantity),
            Some(Case::Instance(value)) => instance::answer(value, &row.quantity),
            _ => continue,
        };
        n_rows += 1;
        checks.extend(got.map(|computed| Check {
            domain: "measurement of people and jobs".to_owned(),
            source: row.source.clone(),
            condition: format!("{}, {}", row.case, row.quantity),
            expected: row.value,
            computed,
            unit: String::new(),
            allowed: row.tolerance,
        }));
        match got {
            Some(got) if (got - row.value).abs() <= row.tolerance + 1e-12 => {}
            Some(got) => wrong.push(format!(
                "{},{}: {got} instead of {} +- {} ({})",
                row.case, row.quantity, row.value, row.tolerance, row.source
            )),
            None => wrong.push(format!("{},{}: not understood", row.case, row.quantity)),
        }
    }
    validation::leave("measurement", &checks);
    assert!(n_rows > 0, "no rows of measurement in this folder");
    assert!(
        wrong.is_empty(),
        "{} of {n_rows}:\n{}",
        wrong.len(),
        wrong.join("\n")
    );
}

/// Published estimates stopped at looser convergence than ours: their own gradients show it.
#[test]
fn published_numbers_agree_as_far_as_they_were_converged() {
    let rows = files::rows();
    let mut cases = cases(&rows);
    let mut wrong = Vec::new();
    for row in &rows {
        let (Some(published), Some(Case::Scores(cohort))) =
            (row.published, cases.get_mut(&row.case))
        else {
            continue;
        };
        // Expected numbers of people carry the looseness of all parameters, in proportion.
        let of_people = if row.quantity.contains("expfreq") {
            4e-4
        } else {
            1e-6
        };
        let allowed = 0.003 + of_people * published.abs();
        match cohort.answer(&row.quantity) {
            Some(got) if (got - published).abs() <= allowed => {}
            got => wrong.push(format!("{}: {got:?} instead of {published}", row.quantity)),
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

/// Published after merging thin groups: item 3 of LSAT section 6, help page of R's `mirt`.
#[test]
fn thin_groups_merge_as_published() {
    let text = std::fs::read_to_string("tests/fixtures/rows/lsat6.csv").expect("ships");
    let mut cohort = Cohort::read(&text);
    let got = cohort.merged_score_fit(2);
    assert!((got - 0.871).abs() < 5e-3, "{got}");
}

/// What data were drawn from is found again within the errors that are told.
#[test]
fn forty_jobs_of_a_thousand_people_are_found_again() {
    let mut rng = ChaCha8Rng::seed_from_u64(11);
    let mut even = || (rng.next_u64() >> 11) as f64 / 2f64.powi(53);
    let truth: Vec<f64> = (0..40).map(|job| f64::from(job) / 10.0 - 2.0).collect();
    let rows: Vec<Vec<Option<u8>>> = (0..1000)
        .map(|_| {
            // Twelve even numbers make a normal one near enough.
            let ability = (0..12).map(|_| even()).sum::<f64>() - 6.0;
            let mut score = |b: &f64| {
                let chance = 1.0 / (1.0 + f64::exp(b - ability));
                // One job in five is missing by design.
                (even() > 0.2).then(|| u8::from(even() < chance))
            };
            truth.iter().map(&mut score).collect()
        })
        .collect();
    let responses = Responses::new(&rows).expect("scores");
    let fitted = calibrate(&responses, SlopeRule::Common, &Priors::none()).expect("settles");
    assert!(fitted.is_settled);
    assert!((fitted.items[0].slope - 1.0).abs() < 4.0 * fitted.slope_se(0));
    for (job, b) in truth.iter().enumerate() {
        let (away, se) = (fitted.items[job].steps[0] - b, fitted.step_se(job, 0));
        assert!(
            away.abs() < 4.0 * se && se < 0.2,
            "job {job}: {away} +- {se}"
        );
    }
}

//! Readings, causes that come and go, several faults at once, causes that look alike.

use serde_json::Value;
use tubwright::expert::theory::ambiguity;
use tubwright::expert::theory::ambiguity::Limits;
use tubwright::expert::theory::ambiguity::Shows;
use tubwright::expert::theory::epoch;
use tubwright::expert::theory::information;
use tubwright::expert::theory::observation;
use tubwright::expert::theory::posterior::Posterior;
use tubwright::expert::theory::reading::Display;
use tubwright::expert::theory::reading::Expected;
use tubwright::expert::theory::reading::Meter;
use tubwright::expert::theory::sets::Sets;

use crate::decision::by_rule;
use crate::rows::Answer;
use crate::rows::Case;
use crate::rows::index_of;
use crate::rows::inside;
use crate::rows::names;
use crate::rows::number;
use crate::rows::numbers;

pub fn meter(case: &Case, quantity: &str) -> Result<Answer, String> {
    let of = |field: &str| number(&case.value[field]);
    let meter = Meter {
        step: of("q"),
        n_steps: of("J") as u32,
        accuracy_ratio: of("acc"),
        accuracy_steps: of("digits"),
        outlier_ratio: of("eps"),
    };
    let causes = case.value["hyp"].as_array().ok_or("no hyp")?;
    let expected = |h: &Value| match h["open"].as_bool() {
        Some(true) => Expected::Open,
        _ => Expected::within(number(&h["mu"]), number(&h["tol"])),
    };
    let expected: Vec<Expected> = causes.iter().map(expected).collect();
    let prior: Vec<f64> = causes.iter().map(|h| number(&h["prior"])).collect();
    let called: Vec<String> = causes
        .iter()
        .filter_map(|h| h["name"].as_str().map(str::to_owned))
        .collect();
    if quantity == "IG_bits_one_reading" {
        let gain = |display: Display| {
            let l: Vec<f64> = expected
                .iter()
                .map(|e| meter.probability(display, *e))
                .collect();
            let z: f64 = l.iter().zip(&prior).map(|(l, p)| l * p).sum();
            let mut posterior = Posterior::new(&prior);
            posterior.observe(&l);
            z * information::gain(&prior, &posterior.probabilities())
        };
        return Ok(Answer::Number(meter.displays().map(gain).sum()));
    }
    let naive = inside(quantity, "P_naive");
    let told = naive
        .or(inside(quantity, "P"))
        .ok_or(format!("'{quantity}' is not known"))?;
    let (cause, shown) = told.split_once('|').ok_or("no reading")?;
    let same_part = shown.ends_with(" same part");
    let displays: Vec<Display> = shown
        .trim_end_matches(" same part")
        .split(',')
        .map(|text| text.parse().map_or(Display::OverRange, Display::Value))
        .collect();
    let mut posterior = Posterior::new(&prior);
    if same_part {
        let l = expected
            .iter()
            .map(|e| meter.probability_of_repeats(&displays, *e));
        posterior.observe(&l.collect::<Vec<_>>());
    } else {
        for display in displays {
            let l = expected.iter().map(|e| meter.probability(display, *e));
            posterior.observe(&l.collect::<Vec<_>>());
        }
    }
    Ok(Answer::Number(
        posterior.probabilities()[index_of(&called, cause)?],
    ))
}

pub fn intermittent(case: &Case, quantity: &str) -> Result<Answer, String> {
    let of = |field: &str| number(&case.value[field]);
    let (active, false_alarm, repaired) = (of("q"), of("false_alarm"), of("repair_success"));
    if let Some(percent) = quantity
        .strip_prefix("clean_runs_for_")
        .and_then(|s| s.strip_suffix("pct"))
    {
        let risk: f64 = percent.parse().map_err(|_| "no percentage")?;
        let runs = epoch::clean_runs(active, repaired, risk / 100.0).ok_or("no number will do")?;
        return Ok(Answer::Number(f64::from(runs)));
    }
    let (what, seen) = inside(quantity, "P")
        .and_then(|s| s.split_once('|'))
        .ok_or(format!("'{quantity}' is not known"))?;
    if what == "not_fixed" {
        let runs = seen
            .trim_end_matches("_clean_runs")
            .parse()
            .map_err(|_| "no number")?;
        return Ok(Answer::Number(epoch::not_repaired(active, repaired, runs)));
    }
    let prior = case.value["prior"].as_object().ok_or("no prior")?;
    let weights: Vec<f64> = prior.values().map(number).collect();
    let called: Vec<String> = prior.keys().cloned().collect();
    let mut posterior = Posterior::new(&weights);
    for epoch in seen.split('-') {
        let failed = epoch == "fail";
        let if_active = f64::from(failed);
        let if_healthy = if failed {
            false_alarm
        } else {
            1.0 - false_alarm
        };
        let l = called.iter().map(|name| match name.as_str() {
            "none" => if_healthy,
            "perm" => if_active,
            _ => epoch::likelihood(active, if_active, if_healthy),
        });
        posterior.observe(&l.collect::<Vec<_>>());
    }
    Ok(Answer::Number(
        posterior.probabilities()[index_of(&called, what)?],
    ))
}

pub fn several(case: &Case, quantity: &str) -> Result<Answer, String> {
    let faults = case.names("faults");
    let sets = Sets::of(&case.numbers("rho"), faults.len());
    let eps = number(&case.value["eps"]);
    let (what, shown) = inside(quantity, "P")
        .and_then(|s| s.split_once("|FAIL"))
        .ok_or(format!("'{quantity}' is not known"))?;
    let mut posterior = Posterior::new(&sets.prior);
    for one in shown.split(',').filter(|s| !s.is_empty()) {
        let (name, outcome) = one.split_once('=').ok_or("no outcome")?;
        let test = &case.value["tests"][name];
        let outcomes = names(&test["outcomes"]);
        let seen = index_of(&outcomes, outcome)?;
        let rule = test["rule"].as_str().ok_or("no rule")?;
        let mut likelihood = Vec::new();
        for set in &sets.sets {
            let gives = index_of(&outcomes, by_rule(rule, &faults, *set)?)?;
            likelihood.push(observation::row(gives, outcomes.len(), eps)[seen]);
        }
        posterior.observe(&likelihood);
    }
    let p = posterior.probabilities();
    Ok(Answer::Number(
        match what.strip_prefix("works_after_replacing_") {
            Some(fault) => sets.works_after(&p, index_of(&faults, fault)?),
            None if what == "double_or_more" => sets.several(&p),
            None => sets.share(&p, index_of(&faults, what)?),
        },
    ))
}

pub fn ambiguity(case: &Case, quantity: &str) -> Result<Answer, String> {
    let causes = case.value["hyp"].as_object().ok_or("no hyp")?;
    let called: Vec<String> = causes.keys().cloned().collect();
    let shows = |tests: &Value| -> Vec<Shows> {
        let each = tests.as_array().expect("tests").iter().map(numbers);
        each.map(|x| Shows::Value {
            mean: x[0],
            sd: x[1],
        })
        .collect()
    };
    let shows: Vec<Vec<Shows>> = causes.values().map(shows).collect();
    let limits = Limits {
        least_variation: case
            .value
            .get("tv_min")
            .map_or(ambiguity::LIMITS.least_variation, number),
        ..ambiguity::LIMITS
    };
    let pair = |names: &str| -> Result<ambiguity::Pair, String> {
        let (a, b) = names.split_once(',').ok_or("no pair")?;
        let (a, b) = (index_of(&called, a)?, index_of(&called, b.trim())?);
        Ok(ambiguity::pair(&shows, a, b, limits))
    };
    if let Some(names) = inside(quantity, "maxTV") {
        return Ok(Answer::Number(pair(names)?.variation));
    }
    if let Some(names) = inside(quantity, "half_prod_BC") {
        return Ok(Answer::Number(pair(names)?.overlap));
    }
    let remedies: Vec<&str> = called
        .iter()
        .filter_map(|h| case.value["remedy"][h].as_str())
        .collect();
    let remedy: Vec<usize> = remedies
        .iter()
        .filter_map(|r| remedies.iter().position(|other| other == r))
        .collect();
    let all = ambiguity::groups(called.len(), &ambiguity::pairs(&shows, limits), &remedy);
    let wanted = all.iter().filter(|g| quantity == "groups" || g.is_harmful);
    let told = wanted.map(|g| {
        let each: Vec<&str> = g.causes.iter().map(|h| called[*h].as_str()).collect();
        each.join("+")
    });
    match quantity {
        "groups" | "harmful_groups" => Ok(Answer::Text(told.collect::<Vec<_>>().join("|"))),
        other => Err(format!("quantity '{other}' is not known")),
    }
}

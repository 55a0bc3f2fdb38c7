//! Rows about an entry of the instances: abilities, equating, group differences, tracing, memory.

use serde_json::Value;

use tubwright::assess::memory;
use tubwright::assess::memory::Grade;
use tubwright::records::measurement::ability;
use tubwright::records::measurement::functioning::Stratum;
use tubwright::records::measurement::functioning::functioning;
use tubwright::records::measurement::grid::Normal;
use tubwright::records::measurement::item::Item;
use tubwright::records::measurement::item::expected_score;
use tubwright::records::measurement::item::information;
use tubwright::records::measurement::standard;
use tubwright::records::measurement::sum_score::chance_of_at_least;
use tubwright::records::measurement::tracing::Tracing;

use crate::quantity::pattern;
use crate::quantity::word_and_number;

const KINDS: [&str; 5] = ["eap", "equate", "mh", "bkt", "fsrs6"];

pub fn is_ours(instance: &Value) -> bool {
    instance["kind"]
        .as_str()
        .is_some_and(|kind| KINDS.contains(&kind))
}

pub fn answer(instance: &Value, quantity: &str) -> Option<f64> {
    match instance["kind"].as_str()? {
        "eap" => abilities(instance, quantity),
        "equate" => equating(instance, quantity),
        "mh" => groups(instance, quantity),
        "bkt" => tracing(instance, quantity),
        "fsrs6" => remembered(instance, quantity),
        _ => None,
    }
}

fn numbers(value: &Value) -> Option<Vec<f64>> {
    value.as_array()?.iter().map(Value::as_f64).collect()
}

fn items(value: &Value) -> Option<Vec<Item>> {
    let (a, b) = (numbers(&value["a"])?, numbers(&value["b"])?);
    Some(
        a.iter()
            .zip(&b)
            .map(|(a, b)| Item::two_parameter(*a, *b))
            .collect(),
    )
}

fn abilities(instance: &Value, quantity: &str) -> Option<f64> {
    let items = items(instance)?;
    let prior = Normal {
        mean: instance["mu"].as_f64().unwrap_or(0.0),
        sd: instance["sd"].as_f64().unwrap_or(1.0),
    };
    if let Some(rest) = quantity.strip_prefix("P(theta>") {
        let (cut, scores) = rest.strip_suffix(')')?.split_once('|')?;
        let cut = cut.parse().ok()?;
        return Some(ability::chance_above(&items, &pattern(scores), &prior, cut));
    }
    let (word, scores) = quantity.rsplit_once('_')?;
    if word == "info_at" {
        return Some(information(&items, scores.parse().ok()?));
    }
    let scores = pattern(scores);
    match word {
        "EAP" => Some(ability::eap(&items, &scores, &prior).value),
        "SD" => Some(ability::eap(&items, &scores, &prior).se),
        "MAP" => Some(ability::map(&items, &scores, &prior).value),
        "marginal_P" => Some(ability::Posterior::new(&items, &scores, &prior).marginal),
        _ => None,
    }
}

fn equating(instance: &Value, quantity: &str) -> Option<f64> {
    let (old, new) = (numbers(&instance["b_old"])?, numbers(&instance["b_new"])?);
    let link = standard::shift(&old, &new).ok()?;
    let judges: Vec<Vec<f64>> = instance["angoff"]
        .as_array()?
        .iter()
        .map(numbers)
        .collect::<Option<_>>()?;
    let cut = standard::angoff(&judges).ok()?;
    let ability = standard::ability_at(&items(&instance["oldform"])?, cut.value)?;
    let new_form = standard::shifted(&items(&instance["newform"])?, link.shift.value);
    let raw = expected_score(&new_form, ability);
    let whole = standard::whole_cut(raw);
    match quantity {
        "rasch_shift_old_minus_new" => Some(link.shift.value),
        "shift_SE" => Some(link.shift.se),
        "max_anchor_displacement" => link.displacements.iter().map(|d| d.abs()).reduce(f64::max),
        "angoff_raw_cut_oldform" => Some(cut.value),
        "angoff_SE" => Some(cut.se),
        "theta_cut" => Some(ability),
        "equated_raw_cut_newform" => Some(raw),
        "integer_cut_newform" => Some(whole as f64),
        "P(pass|theta=theta_cut)" => Some(chance_of_at_least(&new_form, ability, whole)),
        _ => None,
    }
}

fn groups(instance: &Value, quantity: &str) -> Option<f64> {
    let strata: Vec<Stratum> = instance["tables"]
        .as_array()?
        .iter()
        .map(|table| {
            let cell = |i: usize, j: usize| table[i][j].as_f64();
            Some([[cell(0, 0)?, cell(0, 1)?], [cell(1, 0)?, cell(1, 1)?]])
        })
        .collect::<Option<_>>()?;
    let found = functioning(&strata)?;
    match quantity {
        "MH_odds_ratio" => Some(found.odds_ratio),
        "ETS_delta" => Some(found.delta),
        "MH_chi2_corrected" => Some(found.chi_square),
        "MH_p" => Some(found.p),
        _ => None,
    }
}

fn tracing(instance: &Value, quantity: &str) -> Option<f64> {
    let number = |key: &str| instance[key].as_f64();
    let model = Tracing {
        known: number("L0")?,
        learn: number("T")?,
        slip: number("S")?,
        guess: number("G")?,
    };
    let seen: Vec<bool> = numbers(&instance["obs"])?
        .iter()
        .map(|x| *x > 0.5)
        .collect();
    if quantity == "loglik_all" {
        return Some(model.log_likelihood(&seen));
    }
    let (word, upto) = quantity.strip_suffix(')')?.split_once("|obs1..")?;
    let traced = model.trace(&seen[..upto.parse().ok()?]);
    let last = traced.last()?;
    match word {
        "P(L" => Some(last.known),
        "P(L_next" => Some(last.known_next),
        "P(correct_next" => Some(last.right_next),
        _ => None,
    }
}

fn remembered(instance: &Value, quantity: &str) -> Option<f64> {
    let history: Vec<(f64, Grade)> = instance["history_day_grade"]
        .as_array()?
        .iter()
        .map(|pair| {
            let grade = match pair[1].as_u64()? {
                1 => Grade::Again,
                2 => Grade::Hard,
                3 => Grade::Good,
                _ => Grade::Easy,
            };
            Some((pair[0].as_f64()?, grade))
        })
        .collect::<Option<_>>()?;
    let (word, number) = word_and_number(quantity)?;
    match word {
        "S_after_review" => Some(memory::after(&history[..number])?.1.stability_days),
        "D_after_review" => Some(memory::after(&history[..number])?.1.difficulty),
        "R_before_review" => {
            let (day, memory) = memory::after(&history[..number - 1])?;
            Some(memory.retained(history[number - 1].0 - day))
        }
        _ => None,
    }
}

//! Orders of repair, and single decisions.

use serde_json::Value;
use tubwright::expert::theory::one_shot::Decision;
use tubwright::expert::theory::order::Candidates;

use crate::rows::Answer;
use crate::rows::Case;
use crate::rows::number;
use crate::rows::numbers;

pub fn answer(case: &Case, quantity: &str, value: &str) -> Result<Answer, String> {
    let candidates = candidates(case);
    let cost = |order: &[usize]| Ok(Answer::Number(candidates.expected_cost(order)));
    match quantity {
        "best_ECR" => cost(&candidates.best().ok_or("too many")?),
        "worst_ECR" => cost(&candidates.worst().ok_or("too many")?),
        "given_order_ECR" => {
            let order: Vec<usize> = case.numbers("order").iter().map(|i| *i as usize).collect();
            cost(&order)
        }
        "most_probable_first_ECR" => cost(&candidates.by(|r| r.p)),
        "cheapest_first_ECR" => cost(&candidates.by(|r| -r.cost)),
        "order_by_p_over_total_cost_ECR" => cost(&candidates.by(|r| r.p / (r.cost + r.cost_if_it))),
        "pc_ignoring_panels_ECR" => cost(&candidates.by_p_over_cost()),
        "pc_panels_always_added_ECR" => cost(&candidates.by_p_over_cost_and_cover()),
        "best_order" => best_order(&candidates, value),
        other => Err(format!("quantity '{other}' is not known")),
    }
}

/// Orders that cost the same are all right.
fn best_order(candidates: &Candidates, value: &str) -> Result<Answer, String> {
    let best = candidates.best().ok_or("too many")?;
    let told: Vec<usize> = value.split('-').filter_map(|i| i.parse().ok()).collect();
    let gap = candidates.expected_cost(&told) - candidates.expected_cost(&best);
    let is_as_good = told.len() == best.len() && gap.abs() < 1e-9;
    let ours = best
        .iter()
        .map(usize::to_string)
        .collect::<Vec<_>>()
        .join("-");
    Ok(Answer::Text(if is_as_good {
        value.to_owned()
    } else {
        ours
    }))
}

fn candidates(case: &Case) -> Candidates {
    let p = case.numbers("p");
    match case.kind() {
        "obs" => Candidates::looked_at(&p, &case.numbers("co"), &case.numbers("cr")),
        "cluster" => {
            let mut candidates = Candidates::plain(&p, &case.numbers("c"));
            let covers = case.value["pcost"]
                .as_object()
                .expect("covers with their cost");
            let names: Vec<&String> = covers.keys().collect();
            candidates.covers = covers.values().map(number).collect();
            let of = case.value["panel"]
                .as_array()
                .expect("a cover for each repair");
            for (repair, cover) in candidates.repairs.iter_mut().zip(of) {
                let name = cover.as_str();
                repair.cover = name.and_then(|name| names.iter().position(|n| *n == name));
            }
            candidates
        }
        _ => Candidates::plain(&p, &case.numbers("c")),
    }
}

pub fn one_shot(case: &Case, quantity: &str) -> Result<Answer, String> {
    let choices = case.value["cost"].as_array().ok_or("no costs")?;
    // Each line is the choice's name, then its cost under each cause.
    let costs = |line: &Value| -> Vec<f64> {
        line.as_array()
            .expect("a line")
            .iter()
            .skip(1)
            .map(number)
            .collect()
    };
    let decision = Decision {
        p: case.numbers("prior"),
        cost: choices.iter().map(costs).collect(),
    };
    let test = &case.value["test"];
    let likelihood: Vec<Vec<f64>> = test["L"]
        .as_array()
        .ok_or("no L")?
        .iter()
        .map(numbers)
        .collect();
    let worth = decision.worth_of_test(&likelihood);
    Ok(Answer::Number(match quantity {
        "EC_no_test" => decision.best().1,
        "EC_with_free_test" => decision.with_test(&likelihood),
        "EVSI" => worth,
        "EVPI" => decision.worth_of_knowing(),
        "net_value_of_test" => worth - number(&test["cost"]),
        other => return Err(format!("quantity '{other}' is not known")),
    }))
}

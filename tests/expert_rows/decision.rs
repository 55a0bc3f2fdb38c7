//! Problems with tests and repairs: one place or several, single faults or sets of them.

use serde_json::Value;
use tubwright::expert::theory::acts::Repair;
use tubwright::expert::theory::acts::Test;
use tubwright::expert::theory::evaluate::Evaluator;
use tubwright::expert::theory::exact::Exact;
use tubwright::expert::theory::information;
use tubwright::expert::theory::known::Act;
use tubwright::expert::theory::known::Known;
use tubwright::expert::theory::known::cost_of;
use tubwright::expert::theory::look_ahead::LookAhead;
use tubwright::expert::theory::model::Model;
use tubwright::expert::theory::observation;
use tubwright::expert::theory::places::Places;
use tubwright::expert::theory::policy::Greedy;
use tubwright::expert::theory::policy::Policy;
use tubwright::expert::theory::policy::RepairOnly;
use tubwright::expert::theory::policy::ToGo;
use tubwright::expert::theory::rollout::Rollout;
use tubwright::expert::theory::sets::Sets;

use crate::rows::Answer;
use crate::rows::Case;
use crate::rows::index_of;
use crate::rows::inside;
use crate::rows::names;
use crate::rows::number;
use crate::rows::numbers;

/// A problem with the names of what is in it.
pub struct Problem {
    pub model: Model,
    /// Names of causes; sets as `A+B`.
    pub causes: Vec<String>,
    /// Names of repairs: those of the faults.
    pub repairs: Vec<String>,
    pub tests: Vec<String>,
    pub outcomes: Vec<Vec<String>>,
}

impl Problem {
    /// An act by its name: `replace_A`, or a test's name.
    pub fn act(&self, name: &str) -> Result<Act, String> {
        match name.strip_prefix("replace_") {
            Some(fault) => Ok(Act::Repair(index_of(&self.repairs, fault)?)),
            None => Ok(Act::Test(index_of(&self.tests, name)?)),
        }
    }

    fn told(&self, act: Option<Act>) -> String {
        match act {
            Some(Act::Repair(i)) => format!("R:{i}"),
            Some(Act::Test(t)) => format!("T:{}", self.tests[t]),
            None => "none".to_owned(),
        }
    }

    pub fn outcome(&self, test: usize, name: &str) -> Result<usize, String> {
        index_of(&self.outcomes[test], name)
    }

    /// What is known after `TEST=outcome,TEST=outcome`.
    fn after(&self, shown: &str) -> Result<Known, String> {
        let mut known = Known::at_start(&self.model);
        for one in shown.split(',').filter(|s| !s.is_empty()) {
            let (test, outcome) = one.split_once('=').ok_or(format!("'{one}'"))?;
            let t = index_of(&self.tests, test)?;
            let o = self.outcome(t, outcome)?;
            known = known
                .after_outcome(&self.model, t, o)
                .ok_or("impossible")?
                .1;
        }
        Ok(known)
    }
}

pub fn answer(case: &Case, quantity: &str) -> Result<Answer, String> {
    let problem = match case.kind() {
        "double_dp" => of_sets(case, 2)?,
        _ => of_faults(case)?,
    };
    let model = &problem.model;
    let start = Known::at_start(model);
    let mut exact = Exact::new(model);
    let number = |x: f64| Ok(Answer::Number(x));
    let policy = |policy: &mut dyn ToGo| Ok(Answer::Number(policy.to_go(&start)));
    match quantity {
        "par_V*" | "par_V*_with_doubles" => return number(exact.to_go(&start)),
        "par_V*_single_fault_model" => {
            let singles = of_sets(case, 1)?.model;
            return number(Exact::new(&singles).to_go(&Known::at_start(&singles)));
        }
        "optimal_first_action" => {
            return Ok(Answer::Text(problem.told(exact.choose(&start))));
        }
        "one_step_first_action" => {
            let first = LookAhead::new(model, 1).choose(&start);
            return Ok(Answer::Text(problem.told(first)));
        }
        "ECR_repair_only_pc" => return policy(&mut RepairOnly::new(model)),
        "cost_one_step_lookahead_policy" => {
            return policy(&mut Evaluator::new(model, LookAhead::new(model, 1)));
        }
        "cost_two_step_lookahead_policy" => {
            return policy(&mut Evaluator::new(model, LookAhead::new(model, 2)));
        }
        "cost_rollout_policy" => {
            return policy(&mut Evaluator::new(model, Rollout::of_one_step(model)));
        }
        "perfect_information_bound" => return number(knowing(model)),
        "H_prior_bits" => return number(information::entropy(model.prior())),
        "best_repair_only_cost_with_moves" => {
            let repairs = model.without_tests();
            return number(Exact::new(&repairs).to_go(&start));
        }
        "best_repair_only_order" => return Ok(Answer::Text(repair_order(model))),
        "cost_of_policy_planned_without_moves" => {
            let free = model.without_ways();
            return policy(&mut Evaluator::new(model, Exact::new(&free)));
        }
        _ => {}
    }
    if let Some(sure) = quantity.strip_prefix("cost_greedy_IG_per_cost_until_") {
        let sure_ratio = sure.parse().map_err(|_| "no ratio")?;
        return policy(&mut Evaluator::new(model, Greedy::new(model, sure_ratio)));
    }
    if let Some(fault) = quantity.strip_prefix("par_given_fault_") {
        let cause = index_of(&problem.causes, fault)?;
        return number(Evaluator::new(model, exact).by_cause(&start)[cause]);
    }
    if let Some(set) = quantity.strip_prefix("prior_") {
        return number(model.prior()[index_of(&problem.causes, set)?]);
    }
    if let Some(act) = quantity.strip_prefix("regret_first_") {
        let q = q(model, &start, problem.act(act)?, &mut exact);
        return number(q - exact.to_go(&start));
    }
    if let Some(act) = quantity.strip_prefix("Q_first_") {
        return number(q(model, &start, problem.act(act)?, &mut exact));
    }
    if let Some(test) = quantity.strip_prefix("IG_bits_first_") {
        let test = &model.tests()[index_of(&problem.tests, test)?];
        return number(information::expected_gain(start.p(), test));
    }
    if let Some(test) = quantity.strip_prefix("one_step_cost_") {
        return number(q(
            model,
            &start,
            problem.act(test)?,
            &mut LookAhead::new(model, 0),
        ));
    }
    if let Some(test) = quantity.strip_prefix("VOI_one_step_") {
        let mut leaf = LookAhead::new(model, 0);
        let with = q(model, &start, problem.act(test)?, &mut leaf);
        return number(leaf.to_go(&start) - with);
    }
    if let Some(shown) = quantity.strip_prefix("realised_gain_bits_") {
        return number(information::gain(start.p(), problem.after(shown)?.p()));
    }
    if let Some(shown) = quantity.strip_prefix("KL_bits_") {
        return number(information::surprise(start.p(), problem.after(shown)?.p()));
    }
    if let Some(inside) = inside(quantity, "P") {
        let (cause, shown) = inside.split_once('|').unwrap_or((inside, ""));
        let known = problem.after(shown)?;
        return number(known.p()[index_of(&problem.causes, cause)?]);
    }
    if let Some((what, shown)) = quantity.split_once('|') {
        let known = problem.after(shown)?;
        return match what {
            "H_bits" => number(information::entropy(known.p())),
            "V*" => number(exact.to_go(&known)),
            "optimal_action" => Ok(Answer::Text(problem.told(exact.choose(&known)))),
            other => Err(format!("quantity '{other}|' is not known")),
        };
    }
    Err(format!("quantity '{quantity}' is not known"))
}

fn q(model: &Model, known: &Known, act: Act, to_go: &mut impl ToGo) -> f64 {
    cost_of(model, known, act, &mut |k| to_go.to_go(k))
}

/// Cost if the cause were known: its own cheapest repair.
fn knowing(model: &Model) -> f64 {
    let cheapest = |h: usize| {
        let sure = model.repairs().iter().filter(|r| r.after[h].is_none());
        sure.map(|r| r.cost).fold(f64::INFINITY, f64::min)
    };
    model
        .prior()
        .iter()
        .enumerate()
        .map(|(h, p)| p * cheapest(h))
        .sum()
}

fn repair_order(model: &Model) -> String {
    let repairs = model.without_tests();
    let mut exact = Exact::new(&repairs);
    let mut order = Vec::new();
    let mut known = Some(Known::at_start(&repairs));
    while let Some(now) = known {
        let Some(Act::Repair(i)) = exact.choose(&now) else {
            break;
        };
        order.push(i.to_string());
        known = now.after_repair(&repairs, i).1;
    }
    order.join("-")
}

fn single(n: usize, i: usize) -> Vec<Option<usize>> {
    (0..n).map(|h| (h != i).then_some(h)).collect()
}

/// Single faults: `dp` (costs in `rcost`) and `config_dp` (costs and places in `repair`).
pub fn of_faults(case: &Case) -> Result<Problem, String> {
    let faults = case.names("faults");
    let configs = case.value.get("configs").map(names);
    let place = |value: &Value| -> Result<Option<usize>, String> {
        match (&configs, value.as_str()) {
            (Some(configs), Some(name)) => index_of(configs, name).map(Some),
            _ => Ok(None),
        }
    };
    let mut repairs = Vec::new();
    for i in 0..faults.len() {
        let (cost, at) = match case.value.get("rcost") {
            Some(costs) => (number(&costs[i]), None),
            None => {
                let repair = &case.value["repair"][i];
                (number(&repair["cost"]), place(&repair["config"])?)
            }
        };
        repairs.push(Repair {
            cost,
            cost_if_not: 0.0,
            place: at,
            after: single(faults.len(), i),
        });
    }
    let mut tests = Vec::new();
    for test in case.value["tests"].as_object().ok_or("no tests")?.values() {
        tests.push(Test {
            cost: number(&test["cost"]),
            place: place(&test["config"])?,
            n_outcomes: names(&test["outcomes"]).len(),
            likelihood: test["L"]
                .as_array()
                .ok_or("no L")?
                .iter()
                .flat_map(numbers)
                .collect(),
        });
    }
    let prior = case.numbers("prior");
    let model = match &configs {
        Some(configs) => {
            let start = index_of(configs, case.value["start"].as_str().ok_or("no start")?)?;
            let direct: Vec<Vec<f64>> = case.value["move"]
                .as_array()
                .ok_or("no move")?
                .iter()
                .map(numbers)
                .collect();
            // The machine is left as it was found.
            Model::with_places(prior, repairs, tests, Places::new(&direct, start), start)
        }
        None => Model::new(prior, repairs, tests),
    };
    named(
        case,
        model.map_err(|e| e.to_string())?,
        faults.clone(),
        faults,
    )
}

fn named(
    case: &Case,
    model: Model,
    causes: Vec<String>,
    repairs: Vec<String>,
) -> Result<Problem, String> {
    let tests = case.value["tests"].as_object().ok_or("no tests")?;
    Ok(Problem {
        model,
        causes,
        repairs,
        tests: tests.keys().cloned().collect(),
        outcomes: tests.values().map(|t| names(&t["outcomes"])).collect(),
    })
}

/// Sets of at most `most` faults; tests as rules in words, noted wrongly with the share `eps`.
fn of_sets(case: &Case, most: usize) -> Result<Problem, String> {
    let faults = case.names("faults");
    let sets = Sets::of(&case.numbers("rho"), most);
    let costs = case.numbers("cost");
    let repairs = (0..faults.len()).map(|i| Repair {
        cost: costs[i],
        cost_if_not: 0.0,
        place: None,
        after: sets.after(i),
    });
    let eps = number(&case.value["eps"]);
    let mut tests = Vec::new();
    for (name, test) in case.value["tests"].as_object().ok_or("no tests")? {
        let outcomes = names(&test["outcomes"]);
        let rule = case.value["rule"][name]
            .as_str()
            .or(test["rule"].as_str())
            .ok_or("no rule")?;
        let mut likelihood = Vec::new();
        for set in &sets.sets {
            let outcome = by_rule(rule, &faults, *set)?;
            likelihood.extend(observation::row(
                index_of(&outcomes, outcome)?,
                outcomes.len(),
                eps,
            ));
        }
        tests.push(Test {
            cost: test.get("cost").map_or(0.0, number),
            place: None,
            n_outcomes: outcomes.len(),
            likelihood,
        });
    }
    let name = |set: &u64| -> String {
        let members = (0..faults.len()).filter(|i| set >> i & 1 == 1);
        members
            .map(|i| faults[i].as_str())
            .collect::<Vec<_>>()
            .join("+")
    };
    let causes = sets.sets.iter().map(name).collect();
    let model =
        Model::new(sets.prior.clone(), repairs.collect(), tests).map_err(|e| e.to_string())?;
    named(case, model.with_tests_renewed_by_repairs(), causes, faults)
}

/// `silent if A or D in set; else hum if B in set; else runs`: the outcome for a set of faults.
pub fn by_rule<'a>(rule: &'a str, faults: &[String], set: u64) -> Result<&'a str, String> {
    for clause in rule.split(';') {
        let clause = clause.trim();
        let clause = clause.strip_prefix("else ").unwrap_or(clause);
        let Some((outcome, when)) = clause.split_once(" if ") else {
            return Ok(clause);
        };
        let when = when.trim_end_matches(" in set");
        let mut holds = false;
        for all in when.split(" or ") {
            let mut each = true;
            for fault in all.split(" and ") {
                each &= set >> index_of(faults, fault.trim())? & 1 == 1;
            }
            holds |= each;
        }
        if holds {
            return Ok(outcome);
        }
    }
    Err(format!("rule '{rule}' leaves a case open"))
}

//! Whole runs of a problem, marked.

use serde_json::Value;
use tubwright::expert::theory::account::Happened;
use tubwright::expert::theory::account::Walk;
use tubwright::expert::theory::account::walk;
use tubwright::expert::theory::exact::Exact;
use tubwright::expert::theory::justify::justification;
use tubwright::expert::theory::known::Act;
use tubwright::expert::theory::known::Known;
use tubwright::expert::theory::policy::RepairOnly;
use tubwright::expert::theory::policy::ToGo;
use tubwright::score::formula;
use tubwright::score::formula::Breach;
use tubwright::score::formula::Due;
use tubwright::score::formula::Gravity;
use tubwright::score::formula::Minimum;
use tubwright::score::formula::Replaced;
use tubwright::score::formula::Shares;
use tubwright::score::formula::Stated;
use tubwright::score::formula::Verdict;
use tubwright::score::formula::WEIGHTS;
use tubwright::score::formula::Weights;

use crate::decision::Problem;
use crate::decision::of_faults;
use crate::rows::Answer;
use crate::rows::Case;
use crate::rows::index_of;
use crate::rows::names;
use crate::rows::number;

/// A marked run.
pub struct Marked {
    pub walk: Walk,
    pub shares: Shares,
    pub weights: Weights,
}

impl Marked {
    pub fn total(&self) -> f64 {
        self.shares.total(&self.weights)
    }

    pub fn verdict(&self) -> Verdict {
        self.shares.verdict(&self.weights, formula::PASS_TOTAL)
    }
}

pub fn answer(case: &Case, quantity: &str) -> Result<Answer, String> {
    let run = case.value["runs"]
        .get(case.name)
        .ok_or(format!("no run '{}'", case.name))?;
    let marked = mark(case, run)?;
    let account = &marked.walk.account;
    Ok(Answer::Number(match quantity {
        "total_cost" => account.paid(),
        "decision_regret_R" => account.avoidable(),
        "luck_L" => account.chance(),
        "S" => marked.shares.safety,
        "D" => marked.shares.diagnosis,
        "D_eff" => marked.shares.effective_diagnosis(),
        "E" => marked.shares.economy,
        "P" => marked.shares.procedure,
        "Q" => marked.shares.evidence,
        "T" => marked.total(),
        "result" => return Ok(Answer::Text(word(&marked.verdict()))),
        other => return Err(format!("quantity '{other}' is not known")),
    }))
}

/// Row words for the plain ones.
pub fn word(verdict: &Verdict) -> String {
    let letter = |m: &Minimum| match m {
        Minimum::Gate => "G",
        Minimum::Safety => "S",
        Minimum::Diagnosis => "D",
        Minimum::Procedure => "P",
        Minimum::Evidence => "Q",
        Minimum::Total => "T",
    };
    match verdict {
        Verdict::NotYet(missed) => {
            format!(
                "FAIL({})",
                missed.iter().map(letter).collect::<Vec<_>>().join(",")
            )
        }
        Verdict::Passed => "PASS".to_owned(),
        Verdict::Good => "MERIT".to_owned(),
        Verdict::Excellent => "DISTINCTION".to_owned(),
    }
}

/// Marks a run given as data: events `["T", test, outcome]`, `["R", fault]`, `["DUP", test]`,
/// `["IDLE", minutes]`, `["CLOSE"]`.
pub fn mark(case: &Case, run: &Value) -> Result<Marked, String> {
    let of = case.value["problem"].as_str().ok_or("no problem")?;
    let value = case.all.get(of).ok_or(format!("no problem '{of}'"))?;
    let problem = of_faults(&Case {
        name: of,
        value,
        all: case.all,
        folder: case.folder,
    })?;
    let callback = number(&case.value["callback"]);
    let happened = happened(&problem, run, callback)?;
    let model = &problem.model;
    let start = Known::at_start(model);
    let mut exact = Exact::new(model);
    let walk = walk(model, &start, &happened, &mut exact);
    let v = walk.account.start;
    let yardstick = formula::yardstick(RepairOnly::new(model).to_go(&start), v);
    let replaced: Vec<(usize, Replaced)> = happened
        .iter()
        .zip(&walk.account.steps)
        .filter_map(|(event, step)| match event {
            Happened::Repair { repair, .. } => {
                let cost = model.repairs()[*repair].cost;
                let justification = justification(step.avoidable(), cost);
                Some((
                    *repair,
                    Replaced {
                        cost,
                        justification,
                    },
                ))
            }
            _ => None,
        })
        .collect();
    let truth = names_or_one(&run["truth"]);
    let first = names_or_one(&run["declared_first"]);
    let last = names_or_one(&run["declared_final"]);
    let f1 = |stated: &[String]| {
        let n_met = stated.iter().filter(|s| truth.contains(s)).count();
        formula::f1(n_met, stated.len(), truth.len())
    };
    let of_the_part = |(repair, r): &(usize, Replaced)| {
        (first == [problem.repairs[*repair].clone()]).then_some(r.justification)
    };
    let stated = Stated {
        first_f1: f1(&first),
        first_justification: replaced.first().and_then(of_the_part),
        last_f1: f1(&last),
    };
    let replaced: Vec<Replaced> = replaced.into_iter().map(|(_, r)| r).collect();
    let closing = walk
        .account
        .steps
        .last()
        .map_or(0.0, |s| justification(s.avoidable(), callback));
    let (safety, is_gate_open) = safety(case, run, &happened);
    let (procedure, is_proved) = procedure(case, run)?;
    let shares = Shares {
        safety,
        is_gate_open,
        diagnosis: formula::diagnosis(stated, walk.last.is_none()),
        economy: formula::economy(walk.account.avoidable(), yardstick),
        procedure,
        is_proved,
        evidence: formula::evidence(&replaced, closing),
    };
    Ok(Marked {
        walk,
        shares,
        weights: weights(case),
    })
}

fn happened(problem: &Problem, run: &Value, callback: f64) -> Result<Vec<Happened>, String> {
    let truth = names_or_one(&run["truth"]);
    let mut left: Vec<String> = truth;
    let mut happened = Vec::new();
    for event in run["events"].as_array().ok_or("no events")? {
        let text = |k: usize| event[k].as_str().unwrap_or("");
        happened.push(match text(0) {
            "T" => {
                let test = index_of(&problem.tests, text(1))?;
                let outcome = problem.outcome(test, text(2))?;
                Happened::Test { test, outcome }
            }
            "R" => {
                let Act::Repair(repair) = problem.act(&format!("replace_{}", text(1)))? else {
                    return Err("no repair".to_owned());
                };
                let was_broken = !left.is_empty();
                left.retain(|fault| fault != text(1));
                if was_broken {
                    Happened::Repair {
                        repair,
                        works: left.is_empty(),
                    }
                } else {
                    Happened::Repair {
                        repair,
                        works: true,
                    }
                }
            }
            "DUP" => {
                let test = index_of(&problem.tests, text(1))?;
                Happened::Idle {
                    cost: problem.model.tests()[test].cost,
                }
            }
            "IDLE" => Happened::Idle {
                cost: number(&event[1]),
            },
            "CLOSE" => Happened::Idle { cost: callback },
            other => return Err(format!("event '{other}' is not known")),
        });
    }
    Ok(happened)
}

fn safety(case: &Case, run: &Value, happened: &[Happened]) -> (f64, bool) {
    // As the rows have it; the usual ones else.
    let penalties = &case.value["penalties"];
    assert!((number(&penalties["major"]) - formula::MAJOR_RATIO).abs() < 1e-12);
    assert!((number(&penalties["minor"]) - formula::MINOR_RATIO).abs() < 1e-12);
    let told = run.get("viol").map_or_else(Vec::new, names);
    let breach = |(k, gravity): (usize, &String)| Breach {
        rule: "",
        gravity: match gravity.as_str() {
            "critical" => Gravity::Critical,
            "major" => Gravity::Major,
            _ => Gravity::Minor,
        },
        exposure: k as u32,
    };
    let breaches: Vec<Breach> = told.iter().enumerate().map(breach).collect();
    let was_exposed = happened.iter().any(|h| !matches!(h, Happened::Idle { .. }));
    formula::safety(&breaches, was_exposed)
}

fn procedure(case: &Case, run: &Value) -> Result<(f64, bool), String> {
    let weights = case.value["procedure_weights"]
        .as_object()
        .ok_or("no weights")?;
    let done = names(&run["proc_done"]);
    // Where a run does not say what was due, all of it was.
    let is_due = |step: &String| {
        run.get("proc_due")
            .is_none_or(|due| names(due).contains(step))
    };
    let due: Vec<Due> = weights
        .iter()
        .filter(|(step, _)| is_due(step))
        .map(|(step, weight)| Due {
            weight: number(weight),
            done_ratio: f64::from(done.contains(step)),
        })
        .collect();
    let is_proved = ["verify", "elec_test"]
        .iter()
        .all(|step| done.iter().any(|d| d == step));
    Ok((formula::procedure(&due), is_proved))
}

fn weights(case: &Case) -> Weights {
    match case.value.get("weights") {
        Some(w) => Weights {
            safety: number(&w["S"]),
            diagnosis: number(&w["D"]),
            economy: number(&w["E"]),
            procedure: number(&w["P"]),
            evidence: number(&w["Q"]),
        },
        None => WEIGHTS,
    }
}

fn names_or_one(value: &Value) -> Vec<String> {
    match value.as_str() {
        Some(name) => vec![name.to_owned()],
        None => value.as_array().map_or_else(Vec::new, |_| names(value)),
    }
}

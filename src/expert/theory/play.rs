//! Runs of a policy drawn from the problem: how costs scatter when nothing but chance differs.

use crate::expert::theory::account::Happened;
use crate::expert::theory::known::Act;
use crate::expert::theory::known::Known;
use crate::expert::theory::model::Model;
use crate::expert::theory::policy::Policy;

/// Plays one run; `draw` gives numbers in 0..1. The cause is drawn first, from what is known.
pub fn play(
    model: &Model,
    policy: &mut impl Policy,
    start: &Known,
    draw: &mut impl FnMut() -> f64,
) -> Vec<Happened> {
    let mut cause = pick(start.p(), draw());
    let mut known = start.clone();
    let mut happened = Vec::new();
    while let Some(act) = policy.choose(&known) {
        match act {
            Act::Test(test) => {
                let outcome = pick(model.tests()[test].row(cause), draw());
                happened.push(Happened::Test { test, outcome });
                match known.after_outcome(model, test, outcome) {
                    Some((_, next)) => known = next,
                    None => return happened,
                }
            }
            Act::Repair(repair) => {
                let left = model.repairs()[repair].after[cause];
                let works = left.is_none();
                happened.push(Happened::Repair { repair, works });
                match (left, known.after_repair(model, repair).1) {
                    (Some(h), Some(next)) => (cause, known) = (h, next),
                    _ => return happened,
                }
            }
        }
    }
    happened
}

fn pick(p: &[f64], draw: f64) -> usize {
    let mut left = draw * p.iter().sum::<f64>();
    for (i, p) in p.iter().enumerate() {
        left -= p;
        if left < 0.0 {
            return i;
        }
    }
    // Rounding: the last that is possible at all.
    p.iter().rposition(|p| *p > 0.0).unwrap_or(0)
}

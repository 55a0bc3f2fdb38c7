//! What was done beside what the expert did: each act with its minute and the cost by then.

use std::sync::Arc;

use crate::app::format;
use crate::bench::job::Entry;
use crate::bench::job::Job;
use crate::bench::words;
use crate::say;

/// One way of working a job.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Way {
    /// Minute, act, cost by then.
    pub acts: Vec<[String; 3]>,
    /// Cost, time and number of acts in one line.
    pub sum: String,
}

/// The way of a log on a job; none when it cannot be run.
pub fn way(job: &Job, log: &[Entry]) -> Option<Way> {
    let workshop = &job.scenario().workshop;
    let mut again = Job::new(Arc::clone(job.scenario()), job.seed()).ok()?;
    let mut acts: Vec<[String; 3]> = Vec::new();
    let mut earlier: Option<&Entry> = None;
    let (mut n_acts, mut n_same) = (0, 1);
    for entry in log {
        again.advance_to(entry.tick);
        let minute = format!("{:.0}", again.tick() as f64 / 600.0);
        if again.act(entry.action.clone()).refusal.is_some() {
            continue;
        }
        n_acts += 1;
        let words = format::sentence(&words::act(&entry.action, workshop));
        let is_same = earlier.is_some_and(|e| e.action == entry.action);
        n_same = if is_same { n_same + 1 } else { 1 };
        earlier = Some(entry);
        match acts.last_mut().filter(|_| is_same) {
            Some([_, row, cost]) => {
                *row = say!("{act}, {n} times", act = words, n = n_same);
                *cost = format::money(again.cost());
            }
            None => acts.push([minute, words, format::money(again.cost())]),
        }
    }
    let sum = say!(
        "cost {cost}, {minutes} min, {n} acts",
        cost = format::money(again.cost()),
        minutes = format!("{:.0}", again.tick() as f64 / 600.0),
        n = n_acts,
    );
    Some(Way { acts, sum })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::app::library;
    use crate::bench::action::Action;
    use crate::bench::action::PanelKey;

    #[test]
    fn a_way_tells_minute_act_and_cost_by_then() {
        let job = Job::new(library::find("no_water").expect("ships"), 7).expect("starts");
        let entry = |action| Entry { tick: 600, action };
        let key = || Action::Key {
            key: PanelKey::Program,
        };
        let log = [
            entry(Action::Tap { open: true }),
            entry(key()),
            entry(key()),
        ];
        let way = way(&job, &log).expect("runs");
        let words = |row: usize| [way.acts[row][0].as_str(), way.acts[row][1].as_str()];
        assert_eq!(words(0), ["1", "Open the tap"]);
        assert_eq!(words(1), ["1", "Press program, 2 times"]);
        assert!(way.sum.ends_with("3 acts"), "{}", way.sum);
    }
}

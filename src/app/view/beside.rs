//! What was done beside what the expert did: each act with its minute and the cost by then.

use std::sync::Arc;

use crate::app::format;
use crate::bench::job::Entry;
use crate::bench::job::Job;
use crate::bench::words;

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
    let mut acts = Vec::new();
    for entry in log {
        again.advance_to(entry.tick);
        let minute = format!("{:.0}", again.tick() as f64 / 600.0);
        if again.act(entry.action.clone()).refusal.is_none() {
            let words = format::sentence(&words::act(&entry.action, workshop));
            acts.push([minute, words, format::money(again.cost())]);
        }
    }
    let sum = format!(
        "cost {}, {:.0} min, {} acts",
        format::money(again.cost()),
        again.tick() as f64 / 600.0,
        acts.len()
    );
    Some(Way { acts, sum })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::app::library;
    use crate::bench::action::Action;

    #[test]
    fn a_way_tells_minute_act_and_cost_by_then() {
        let job = Job::new(library::find("no_water").expect("ships"), 7).expect("starts");
        let log = [Entry {
            tick: 600,
            action: Action::Tap { open: true },
        }];
        let way = way(&job, &log).expect("runs");
        let [minute, words, _] = &way.acts[0];
        assert_eq!((minute.as_str(), words.as_str()), ("1", "Open the tap"));
        assert!(way.sum.ends_with("1 acts"), "{}", way.sum);
    }
}

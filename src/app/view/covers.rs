//! Covers, joints and what else is in the way of something: taken off, and put back also from what
//! lies behind them, since what hangs open or lies aside is not always drawn.

use std::collections::BTreeSet;

use crate::app::view::candidate::Candidate;
use crate::app::view::candidate::candidate;
use crate::app::view::names::place_of;
use crate::app::view::names::works_at;
use crate::bench::action::Action;
use crate::bench::workshop::Step;
use crate::bench::workshop::Workshop;
use crate::language::worded;
use crate::say;

/// Taking off what is in hand, and putting it back.
pub(super) fn off_and_on(step: &Step, list: &mut Vec<Candidate>) {
    let off = |helped| Action::TakeOff {
        step: step.id.clone(),
        helped,
    };
    let (verb, caution) = (worded(&step.verb), worded(&step.caution));
    let mut add = |word: String, helped| list.push(candidate(word, &*caution, off(helped)));
    if step.needs_help {
        add(say!("{verb}, with help or a strap", verb), true);
        add(say!("{verb}, alone", verb), false);
    } else if step.lets_water_out {
        add(say!("{verb}, bucket and cloth below", verb), true);
        add(say!("{verb}, nothing below", verb), false);
    } else if step.needs_support {
        add(verb.into_owned(), true);
        add(say!("open it and let it stand by itself").to_owned(), false);
    } else {
        add(verb.into_owned(), false);
    }
    on(step, &worded(&step.refit_verb), list);
}

/// Putting back what had to be off for the thing in hand or for a work on it. All are candidates;
/// those that are on already fall away.
pub(super) fn back_on(workshop: &Workshop, id: &str, own: &[&Step], list: &mut Vec<Candidate>) {
    let whole_machine = matches!(id, "cabinet" | "under_machine" | "floor");
    let mut needs: BTreeSet<String> = BTreeSet::new();
    if whole_machine {
        needs.extend(workshop.steps.iter().map(|step| step.id.clone()));
    } else {
        needs.extend(
            place_of(workshop, id)
                .into_iter()
                .flat_map(|p| p.needs.clone()),
        );
        needs.extend(
            works_at(workshop, id)
                .into_iter()
                .flat_map(|w| w.needs.clone()),
        );
    }
    let needs: Vec<String> = needs.into_iter().collect();
    // What was opened last goes back first.
    for step in workshop.closure(&needs).into_iter().rev() {
        if own.iter().all(|other| other.id != step.id) {
            let verb = say!(
                "{label}: {value}",
                label = worded(&step.name),
                value = worded(&step.refit_verb),
            );
            on(step, &verb, list);
        }
    }
}

fn on(step: &Step, verb: &str, list: &mut Vec<Candidate>) {
    let on = |check| Action::Refit {
        step: step.id.clone(),
        check,
    };
    if step.refit_check.is_empty() {
        list.push(candidate(verb, "", on(false)));
        return;
    }
    let check = worded(&step.refit_check);
    let checked = say!("{act} and check: {check}", act = verb, check);
    list.push(candidate(checked, "", on(true)));
    let unchecked = say!("{act}, no check", act = verb);
    list.push(candidate(unchecked, "", on(false)));
}

#[cfg(test)]
mod tests {
    use crate::app::library;
    use crate::app::view::Thing;
    use crate::app::view::verbs::verbs;
    use crate::bench::action::Action;
    use crate::bench::job::Job;

    fn words(job: &Job, place: &str) -> Vec<String> {
        let thing = Thing::Place(place.to_owned());
        let list = verbs(job, &thing).into_iter();
        list.map(|verb| verb.word).collect()
    }

    fn opened(scenario: &str, steps: &[&str]) -> Job {
        let mut job = Job::new(library::find(scenario).expect("ships"), 1).expect("starts");
        let mut acts = vec![
            Action::Plug { inserted: false },
            Action::Tap { open: false },
            Action::SupplyHose { attached: false },
        ];
        acts.extend(steps.iter().map(|step| Action::TakeOff {
            step: (*step).to_owned(),
            helped: true,
        }));
        for act in acts {
            assert_eq!(job.act(act.clone()).refusal, None, "{act:?}");
        }
        job
    }

    fn has(words: &[String], start: &str) -> bool {
        words.iter().any(|word| word.starts_with(start))
    }

    #[test]
    fn what_is_behind_a_cover_offers_what_goes_back_first_first() {
        let steps = ["pull_out", "back_cover", "top_cover_up", "panel_open"];
        let mut job = opened("dial_stands_still", &steps);
        for (step, start, later) in [
            (
                "panel_open",
                "timer panel: refit and check",
                "top cover: lower",
            ),
            (
                "top_cover_up",
                "top cover: lower and check",
                "back cover: refit",
            ),
            (
                "back_cover",
                "back cover: refit and check",
                "machine: push back",
            ),
        ] {
            let listed = words(&job, "timer");
            let at = |start: &str| listed.iter().position(|word| word.starts_with(start));
            assert!(
                at(start).is_some() && at(start) < at(later),
                "no {start} before {later} in {listed:?}"
            );
            let of_all = words(&job, "cabinet");
            assert!(has(&of_all, start), "no {start} in {of_all:?}");
            let act = Action::Refit {
                step: step.to_owned(),
                check: true,
            };
            assert_eq!(job.act(act).refusal, None);
        }
    }

    #[test]
    fn a_joint_is_joined_where_it_was_parted() {
        let job = opened("turns_one_way", &["pull_out", "lay_down", "joint_drain"]);
        for place in ["drain_pump", "drain_hose", "under_machine"] {
            let words = words(&job, place);
            assert!(has(&words, "drain joint: join and check"), "{words:?}");
        }
    }
}

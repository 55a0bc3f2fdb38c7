//! Covers, joints and what else is in the way of something: taken off, and put back also from what
//! lies behind them, since what hangs open or lies aside is not always drawn.

use std::collections::BTreeSet;

use crate::app::view::names::place_of;
use crate::app::view::verbs::Candidate;
use crate::app::view::verbs::candidate;
use crate::app::view::verbs::works_at;
use crate::bench::action::Action;
use crate::bench::workshop::Step;
use crate::bench::workshop::Workshop;

/// Taking off what is in hand, and putting it back.
pub(super) fn off_and_on(step: &Step, list: &mut Vec<Candidate>) {
    let off = |helped| Action::TakeOff {
        step: step.id.clone(),
        helped,
    };
    if step.needs_help {
        list.push(candidate(
            format!("{}, with help or a strap", step.verb),
            &step.caution,
            off(true),
        ));
        list.push(candidate(
            format!("{}, alone", step.verb),
            &step.caution,
            off(false),
        ));
    } else if step.lets_water_out {
        let tray = format!("{}, bucket and cloth below", step.verb);
        list.push(candidate(tray, &step.caution, off(true)));
        let bare = format!("{}, nothing below", step.verb);
        list.push(candidate(bare, &step.caution, off(false)));
    } else if step.needs_support {
        list.push(candidate(&step.verb, &step.caution, off(true)));
        let untied = "open it and let it stand by itself".to_owned();
        list.push(candidate(untied, &step.caution, off(false)));
    } else {
        list.push(candidate(&step.verb, &step.caution, off(false)));
    }
    on(step, &step.refit_verb, list);
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
            on(step, &format!("{}: {}", step.name, step.refit_verb), list);
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
    let checked = format!("{verb} and check: {}", step.refit_check);
    list.push(candidate(checked, "", on(true)));
    list.push(candidate(format!("{verb}, no check"), "", on(false)));
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

//! What is in the way of something, in the words a colleague would use, and the acts that clear it.

use crate::app::format;
use crate::app::view::Order;
use crate::app::view::VerbView;
use crate::app::view::shown;
use crate::bench::action::Action;
use crate::bench::job::Job;
use crate::bench::workshop::Step;
use crate::bench::workshop::Workshop;
use crate::language::worded;
use crate::say;

/// Steps of `needs` that are not done yet, in working order.
pub fn missing<'a>(job: &'a Job, needs: &[String]) -> Vec<&'a Step> {
    let off = &job.bench().off;
    job.scenario()
        .workshop
        .closure(needs)
        .into_iter()
        .filter(|s| !off.contains(&s.id))
        .collect()
}

/// The steps with these names.
pub fn steps<'a>(workshop: &'a Workshop, ids: &[String]) -> Vec<&'a Step> {
    ids.iter().filter_map(|id| workshop.step(id)).collect()
}

/// Such as `back cover is on: 8 screws, 3 min`.
pub fn in_the_way(steps: &[&Step]) -> Option<String> {
    let first = steps.first()?;
    let time = format::seconds(steps.iter().map(|s| s.off_s).sum());
    if steps.len() == 1 {
        let what = format::sentence(&worded(&first.name));
        return Some(if first.fasteners.is_empty() {
            say!("{what} comes first: {time}", what, time)
        } else {
            let held = worded(&first.fasteners);
            say!("{what} comes first: {held}, {time}", what, held, time)
        });
    }
    let names: Vec<String> = steps.iter().map(|step| named(step, steps)).collect();
    let names = format::listed(&names);
    Some(say!("In the way: {names}, {time} together", names, time))
}

/// The step's thing; with its verb where two steps are about one thing.
fn named(step: &Step, among: &[&Step]) -> String {
    let is_shared = among.iter().filter(|s| s.name == step.name).count() > 1;
    if is_shared {
        format!("{} ({})", worded(&step.name), worded(&step.verb))
    } else {
        worded(&step.name).into_owned()
    }
}

/// One button that does the missing steps in order, and then `then`.
pub fn clear(steps: &[&Step], then: Option<Action>, then_words: &str) -> Option<VerbView> {
    if steps.is_empty() {
        return None;
    }
    let time_s: f64 = steps.iter().map(|s| s.off_s).sum();
    let all: Vec<String> = steps.iter().map(|step| taken_off(step)).collect();
    let all = all.join(", ");
    let word = match then_words {
        "" => all,
        then => say!("{act}, then {then}", act = all, then),
    };
    let mut acts: Vec<Action> = steps
        .iter()
        .map(|s| Action::TakeOff {
            step: s.id.clone(),
            helped: s.wants_aid(),
        })
        .collect();
    acts.extend(then);
    let cautions = steps.iter().map(|s| s.caution.as_str());
    let cautions = shown::all(cautions.filter(|c| !c.is_empty()));
    Some(VerbView {
        word,
        takes: format::seconds(time_s),
        hint: cautions.join(" "),
        blocked: false,
        order: Order::Do(acts),
    })
}

/// What opens a machine of which nothing is off: each cover within two steps, one button a cover.
pub fn ways_in(job: &Job) -> Vec<VerbView> {
    if job.is_over() || !job.bench().off.is_empty() {
        return Vec::new();
    }
    let steps = job.scenario().workshop.steps.iter();
    steps
        .map(|step| missing(job, std::slice::from_ref(&step.id)))
        .filter(|steps| steps.len() <= 2)
        .filter_map(|steps| clear(&steps, None, ""))
        .collect()
}

/// What is taken off and how.
fn taken_off(step: &Step) -> String {
    say!(
        "{label}: {value}",
        label = worded(&step.name),
        value = worded(&step.verb),
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    fn step(id: &str, name: &str, fasteners: &str, off_s: f64) -> Step {
        Step {
            id: id.into(),
            name: name.into(),
            verb: "take off".into(),
            refit_verb: "refit".into(),
            needs: Vec::new(),
            tools: Vec::new(),
            fasteners: fasteners.into(),
            n_fasteners: 0,
            off_s,
            on_s: off_s,
            caution: String::new(),
            refit_check: String::new(),
            while_off: Vec::new(),
            mistakes: Vec::new(),
            opens_live_parts: false,
            moves_machine: false,
            lays_down: false,
            lets_water_out: false,
            needs_dry_tub: false,
            needs_help: false,
            needs_support: false,
            harms: Vec::new(),
        }
    }

    #[test]
    fn one_thing_in_the_way_is_named_with_what_holds_it() {
        let cover = step("back_cover", "back cover", "8 screws", 180.0);
        assert_eq!(
            in_the_way(&[&cover]).as_deref(),
            Some("Back cover comes first: 8 screws, 3 min")
        );
        assert_eq!(in_the_way(&[]), None);
    }

    #[test]
    fn two_steps_about_one_thing_are_told_apart_by_their_verbs() {
        let mut pull = step("pull_out", "machine", "", 120.0);
        pull.verb = "pull forward".to_owned();
        let mut lay = step("lay_down", "machine", "", 180.0);
        lay.verb = "lay down".to_owned();
        assert_eq!(
            in_the_way(&[&pull, &lay]).as_deref(),
            Some("In the way: machine (pull forward) and machine (lay down), 5 min together")
        );
    }

    #[test]
    fn several_are_listed_and_cleared_in_order_by_one_button() {
        let cover = step("back_cover", "back cover", "8 screws", 180.0);
        let belt = step("belt", "belt", "", 60.0);
        assert_eq!(
            in_the_way(&[&cover, &belt]).as_deref(),
            Some("In the way: back cover and belt, 4 min together")
        );
        let verb = clear(&[&cover, &belt], None, "");
        let word = verb.as_ref().map(|v| v.word.as_str());
        assert_eq!(word, Some("back cover: take off, belt: take off"));
        let verb = verb.map(|v| v.order);
        let take = |id: &str| Action::TakeOff {
            step: id.into(),
            helped: false,
        };
        assert_eq!(
            verb,
            Some(Order::Do(vec![take("back_cover"), take("belt")]))
        );
    }
}

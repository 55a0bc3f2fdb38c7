//! What can be done with a thing: candidate acts by what it is, each asked of the job whether
//! hands can do it now.

use crate::app::format;
use crate::app::view::Thing;
use crate::app::view::VerbView;
use crate::app::view::around::TIMER_KNOB;
use crate::app::view::around::around;
use crate::app::view::around::hands;
use crate::app::view::around::panel;
use crate::app::view::candidate::Candidate;
use crate::app::view::candidate::candidate;
use crate::app::view::candidate::verb;
use crate::app::view::covers;
use crate::app::view::gauges;
use crate::app::view::names::place_of;
use crate::app::view::names::resolve;
use crate::app::view::names::step_of;
use crate::app::view::names::works_at;
use crate::bench::action::Action;
use crate::bench::action::PanelKey;
use crate::bench::action::Sense;
use crate::bench::job::Job;
use crate::bench::store;
use crate::bench::workshop::Step;
use crate::bench::workshop::Work;
use crate::bench::workshop::WorkKind;
use crate::bench::workshop::Workshop;
use crate::language::worded;
use crate::say;

/// All verbs for a thing that make sense now. Works and covers that something is in the way of are
/// there, and say so when tried; the rest is left out until the way is clear.
pub fn verbs(job: &Job, thing: &Thing) -> Vec<VerbView> {
    candidates(job, thing)
        .into_iter()
        .filter_map(|candidate| verb(job, candidate))
        .collect()
}

fn candidates(job: &Job, thing: &Thing) -> Vec<Candidate> {
    let workshop = &job.scenario().workshop;
    let id = resolve(workshop, thing.id());
    let mut list = Vec::new();
    match thing {
        Thing::Key(drawn) if drawn == TIMER_KNOB => {
            panel(job, id, &mut list);
            senses(workshop, id, &mut list);
        }
        Thing::Key(_) => list.extend(
            key(id)
                .map(|key| candidate(say!("press" as "verb, of a key"), "", Action::Key { key })),
        ),
        Thing::Connector(_) => {
            // Some connectors are places to look at as well.
            senses(workshop, id, &mut list);
            connector(id, "", &mut list);
        }
        Thing::Point(_) | Thing::Element(_) => {}
        Thing::Step(_) | Thing::Place(_) => {
            senses(workshop, id, &mut list);
            around(id, &mut list);
            panel(job, id, &mut list);
            let own = steps(workshop, id);
            for step in &own {
                covers::off_and_on(step, &mut list);
            }
            covers::back_on(workshop, id, &own, &mut list);
            hands(id, &mut list);
            for (word, hint, act) in gauges::verbs_at(job, id) {
                list.push(candidate(word, hint, act));
            }
            let place = place_of(workshop, id).map_or(id, |place| place.id.as_str());
            if let Some(point) = workshop.test_points.iter().find(|t| t.place == place) {
                let point = point.node.clone();
                let word = say!("hold the contactless tester to it");
                list.push(candidate(word, "", Action::VoltagePen { point }));
            }
            for found in workshop
                .connectors
                .iter()
                .filter(|c| c.place == place || c.place == id)
            {
                connector(&found.id, &worded(&found.name), &mut list);
            }
        }
    }
    list
}

/// What puts something right at a thing, each asked of the job whether it can be done now.
pub fn repairs(job: &Job, thing: &Thing) -> Vec<VerbView> {
    let workshop = &job.scenario().workshop;
    let mut list = Vec::new();
    let id = resolve(workshop, thing.id());
    for found in works_at(workshop, id) {
        work(job, found, &mut list);
    }
    for found in &workshop.works {
        if found.part.is_empty() && is_put_right_at(found, id) {
            work(job, found, &mut list);
        }
    }
    list.into_iter()
        .filter_map(|candidate| verb(job, candidate))
        .collect()
}

/// What puts something right outside the machine: tap, socket, load, and how it is used.
pub fn repairs_outside(job: &Job) -> Vec<VerbView> {
    let mut list = Vec::new();
    for found in job
        .scenario()
        .workshop
        .works
        .iter()
        .filter(|w| w.part.is_empty())
    {
        work(job, found, &mut list);
    }
    list.into_iter()
        .filter_map(|candidate| verb(job, candidate))
        .collect()
}

/// Whether a work outside the machine puts right what is found at this place.
fn is_put_right_at(work: &Work, id: &str) -> bool {
    let is_of = |group: &str| work.params.iter().any(|name| name.starts_with(group));
    match id {
        "socket" | "plug" => !work.elements.is_empty(),
        "tap" => is_of("inlet."),
        "basket" => is_of("load.") || is_of("foam."),
        _ => false,
    }
}

/// Steps that move a thing: its own, or those that move the whole machine.
fn steps<'a>(workshop: &'a Workshop, id: &str) -> Vec<&'a Step> {
    if matches!(id, "cabinet" | "under_machine" | "floor") {
        return workshop
            .steps
            .iter()
            .filter(|s| s.moves_machine || s.lays_down)
            .collect();
    }
    step_of(workshop, id).into_iter().collect()
}

fn senses(workshop: &Workshop, id: &str, list: &mut Vec<Candidate>) {
    let Some(place) = place_of(workshop, id) else {
        return;
    };
    let words = [
        (say!("look"), Sense::Look),
        (say!("feel"), Sense::Feel),
        (say!("listen"), Sense::Listen),
        (say!("smell"), Sense::Smell),
    ];
    for (word, sense) in words {
        list.push(candidate(
            word,
            "",
            Action::Sense {
                sense,
                place: place.id.clone(),
            },
        ));
    }
}

fn connector(id: &str, name: &str, list: &mut Vec<Candidate>) {
    let said = |verb: &str| {
        if name.is_empty() {
            verb.to_owned()
        } else {
            say!("{label}: {value}", label = name, value = verb)
        }
    };
    list.push(candidate(
        said(say!("pull apart")),
        "",
        Action::PullApart {
            connector: id.to_owned(),
        },
    ));
    list.push(candidate(
        said(say!("push home")),
        "",
        Action::PushTogether {
            connector: id.to_owned(),
        },
    ));
}

/// What can be fitted: a name of the work and plain words for each make aboard.
fn makes(job: &Job, work: &Work) -> Vec<(String, String)> {
    let (workshop, van) = (&job.scenario().workshop, &job.bench().around.van);
    let of_part = |item: &store::Item| item.part.id == work.part;
    let aboard: Vec<store::Item> = van
        .iter()
        .filter_map(|name| store::item(workshop, name))
        .filter(of_part)
        .collect();
    if work.kind != WorkKind::Replace || aboard.is_empty() {
        return vec![(work.id.clone(), worded(&work.name).into_owned())];
    }
    let has_makes = aboard.iter().any(|item| item.variant.is_some());
    aboard
        .into_iter()
        .map(|item| {
            let id = match item.variant {
                Some(make) => format!("{}:{}", work.id, make.id),
                None => work.id.clone(),
            };
            let price = format::money(store::price(job.scenario(), &item));
            let name = worded(&work.name);
            let name = if has_makes {
                let part = worded(item.name());
                say!("{work}: {part}, part for {price}", work = name, part, price)
            } else {
                say!("{work}, part for {price}", work = name, price)
            };
            (id, name)
        })
        .collect()
}

fn work(job: &Job, work: &Work, list: &mut Vec<Candidate>) {
    let caution = worded(&work.caution);
    for (id, name) in makes(job, work) {
        let act = |check| Action::Work {
            work: id.clone(),
            check,
        };
        if work.check.is_empty() {
            list.push(candidate(name, &*caution, act(false)));
            continue;
        }
        let check = worded(&work.check);
        let checked = say!("{act} and check: {check}", act = name, check);
        list.push(candidate(checked, &*caution, act(true)));
        let unchecked = say!("{act}, no check", act = name);
        list.push(candidate(unchecked, &*caution, act(false)));
    }
}

/// The panel key a drawn key or knob stands for; none for a timer's knob, with which several things
/// can be done.
pub fn key(id: &str) -> Option<PanelKey> {
    Some(match id {
        "on_off" => PanelKey::Power,
        "start_pause" => PanelKey::Start,
        "program" => PanelKey::Program,
        "water_level" | "level_knob" => PanelKey::Level,
        "service" => PanelKey::Service,
        _ => return None,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::app::library;

    #[test]
    fn a_connector_that_is_a_place_is_looked_at_and_felt_too() {
        let mut job =
            Job::new(library::find("hums_and_stands").expect("ships"), 1).expect("starts");
        assert_eq!(job.act(Action::Plug { inserted: false }).refusal, None);
        for step in ["pull_out", "back_cover"] {
            let off = Action::TakeOff {
                step: step.to_owned(),
                helped: false,
            };
            assert_eq!(job.act(off).refusal, None);
        }
        let plug = Thing::Connector("motor_plug".to_owned());
        let words: Vec<String> = verbs(&job, &plug).into_iter().map(|v| v.word).collect();
        for word in ["look", "feel", "pull apart"] {
            assert!(words.iter().any(|w| w == word), "no {word} in {words:?}");
        }
    }

    #[test]
    fn a_part_of_another_make_is_named_before_it_is_fitted() {
        let mut job =
            Job::new(library::find("no_spin_since_cousin").expect("ships"), 1).expect("starts");
        let load = Action::LoadVan {
            parts: ["run_capacitor:8uf", "run_capacitor"]
                .map(str::to_owned)
                .to_vec(),
        };
        assert_eq!(job.act(load).refusal, None);
        let words = |id: &str| -> Vec<String> {
            let work = job.scenario().workshop.work(id).expect("known");
            let list = makes(&job, work).into_iter();
            list.map(|(id, name)| format!("{id} {name}")).collect()
        };
        let capacitors = words("replace_run_capacitor");
        assert_eq!(capacitors.len(), 2, "{capacitors:?}");
        assert!(capacitors[0].contains(": run capacitor 8 µF, part "));
        assert!(capacitors[1].contains(": run capacitor, part "));
        assert!(words("replace_belt").iter().all(|name| !name.contains(':')));
    }
}

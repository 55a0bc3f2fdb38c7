//! What is in hand: its name, what is in the way, and its verbs.

use crate::app::format;
use crate::app::view::Lead;
use crate::app::view::Order;
use crate::app::view::SelectionView;
use crate::app::view::Thing;
use crate::app::view::VerbView;
use crate::app::view::names::name_of;
use crate::app::view::names::part_of;
use crate::app::view::names::place_of;
use crate::app::view::names::resolve;
use crate::app::view::names::step_of;
use crate::app::view::verbs::repairs;
use crate::app::view::verbs::verbs;
use crate::app::view::way;
use crate::bench::job::Job;
use crate::bench::workshop::TestPoint;
use crate::language::worded;
use crate::say;

/// What is in hand, as the bar shows it.
pub fn selection(job: &Job, thing: &Thing, lead: Lead) -> SelectionView {
    let workshop = &job.scenario().workshop;
    let id = thing.id();
    let needs = needs(job, thing);
    let missing = way::missing(job, &needs);
    let mut verbs = verbs(job, thing);
    let points = if missing.is_empty() && !job.is_over() {
        measure_here(job, thing, lead)
    } else {
        Vec::new()
    };
    if job.is_over() {
        verbs.clear();
    }
    SelectionView {
        name: format::sentence(&name_of(workshop, id)),
        about: part_of(workshop, thing)
            .map(|p| worded(&p.does).into_owned())
            .unwrap_or_default(),
        blocked: way::in_the_way(&missing),
        clear_way: if job.is_over() {
            None
        } else {
            way::clear(&missing, None, "")
        },
        repairs: if job.is_over() {
            Vec::new()
        } else {
            repairs(job, thing)
        },
        verbs,
        points,
    }
}

/// Steps that come before the thing is reached.
fn needs(job: &Job, thing: &Thing) -> Vec<String> {
    let workshop = &job.scenario().workshop;
    let id = resolve(workshop, thing.id());
    match thing {
        Thing::Connector(_) => workshop.connector(id).map(|c| c.needs.clone()),
        Thing::Point(_) => workshop.test_point(id).map(|t| t.needs.clone()),
        Thing::Step(_) => workshop.step(id).map(|s| s.needs.clone()),
        Thing::Place(_) => place_of(workshop, id)
            .map(|p| p.needs.clone())
            .or_else(|| step_of(workshop, id).map(|s| s.needs.clone()))
            .or_else(|| {
                workshop
                    .works
                    .iter()
                    .find(|w| w.part == id)
                    .map(|w| w.needs.clone())
            }),
        Thing::Key(_) | Thing::Element(_) => None,
    }
    .unwrap_or_default()
}

fn measure_here(job: &Job, thing: &Thing, lead: Lead) -> Vec<VerbView> {
    let points = points_at(job, thing);
    let verb = |word: String, order| VerbView {
        word,
        takes: String::new(),
        hint: String::new(),
        blocked: false,
        order,
    };
    points
        .iter()
        .map(|p| {
            let point = worded(&p.name);
            let word = match lead {
                Lead::Red => say!("red lead on {point}", point),
                Lead::Black => say!("black lead on {point}", point),
            };
            verb(word, Order::Put(lead, Some(p.node.clone())))
        })
        .collect()
}

fn points_at<'a>(job: &'a Job, thing: &Thing) -> Vec<&'a TestPoint> {
    let workshop = &job.scenario().workshop;
    let id = resolve(workshop, thing.id());
    let place = match thing {
        Thing::Connector(_) => workshop.connector(id).map_or(id, |c| c.place.as_str()),
        _ => place_of(workshop, id).map_or(id, |p| p.id.as_str()),
    };
    workshop
        .test_points
        .iter()
        .filter(|t| t.place == place || t.place == id || t.node == id)
        .collect()
}

//! Parts: fitting from the van, trying and putting back, and a new board that burns out.

use std::collections::BTreeSet;

use crate::bench::acts::way::in_the_way;
use crate::bench::around::Fitted;
use crate::bench::event::Event;
use crate::bench::event::Refusal;
use crate::bench::job::Job;
use crate::bench::notebook::NoteEntry;
use crate::bench::store;
use crate::bench::workshop::Part;
use crate::bench::workshop::Work;
use crate::bench::workshop::WorkKind;
use crate::language::worded;
use crate::machine::Target;
use crate::text;

/// What the van holds for a part: the make that is named, else the original before another make.
pub fn in_van<'a>(job: &'a Job, part: &str, make: Option<&str>) -> Option<&'a String> {
    let of_part = |item: &&String| item.split(':').next() == Some(part);
    let mut van = job.bench.around.van.iter().filter(of_part);
    match make {
        Some(_) => van.find(|item| item.split_once(':').map(|(_, made)| made) == make),
        None => van.min_by_key(|item| item.contains(':')),
    }
}

/// The work that fits a part.
pub fn replacement<'a>(job: &'a Job, part: &str) -> Option<&'a Work> {
    let works = &job.scenario().workshop.works;
    works
        .iter()
        .find(|w| w.kind == WorkKind::Replace && w.part == part)
}

/// Fits the part that is in the van: it costs, and everything that comes with it is as new.
pub(super) fn fit(job: &mut Job, part: &Part, make: Option<&str>) {
    let scenario = job.scenario().clone();
    let Some(name) = in_van(job, &part.id, make).cloned() else {
        return;
    };
    let Some(item) = store::item(&scenario.workshop, &name) else {
        return;
    };
    let price = store::price(&scenario, &item);
    let elements = part.elements.iter().cloned().map(Target::Element);
    let params = part.params.iter().cloned().map(Target::Param);
    let healed: BTreeSet<Target> = elements
        .chain(params)
        .filter(|target| !job.bench.healed.contains(target))
        .collect();
    job.bench.healed.extend(healed.iter().cloned());
    job.bench.around.van.retain(|other| *other != name);
    job.bench
        .around
        .burnt
        .retain(|element| !part.elements.contains(element));
    // A new part knows nothing of what killed the old one.
    job.machine.forget_surge();
    job.ledger.material += price;
    job.ledger.fitted.push(part.id.clone());
    job.bench.around.fitted.push(Fitted {
        item: name,
        tick: job.tick(),
        price,
        healed,
    });
}

fn last_fitted(job: &Job, part: &str) -> Option<usize> {
    let fitted = &job.bench.around.fitted;
    fitted
        .iter()
        .rposition(|f| f.item.split(':').next() == Some(part))
}

pub(super) fn cannot_put_back(job: &Job, part: &str) -> Option<Refusal> {
    let workshop = &job.scenario().workshop;
    let Some(known) = workshop.part(part) else {
        return Some(super::way::unknown(part));
    };
    if last_fitted(job, part).is_none() {
        return super::way::not_now(text!("the part in the machine is the old one"));
    }
    if known.sold_once_fitted {
        return super::way::not_now(text!(
            "once fitted it is sold: the store does not take it back"
        ));
    }
    let work = replacement(job, part)?;
    in_the_way(job, &work.needs)
}

pub(super) fn put_back(job: &mut Job, part: &str) {
    let Some(index) = last_fitted(job, part) else {
        return;
    };
    let fitted = job.bench.around.fitted.remove(index);
    for target in &fitted.healed {
        job.bench.healed.remove(target);
    }
    job.ledger.material -= fitted.price;
    if let Some(at) = job.ledger.fitted.iter().rposition(|id| id == part) {
        job.ledger.fitted.remove(at);
    }
    let workshop = job.scenario().workshop.clone();
    let name = store::item(&workshop, &fitted.item).map_or(part, |item| item.part.name.as_str());
    job.bench.around.van.push(fitted.item.clone());
    job.write(NoteEntry::Act {
        text: format!("{name}: old one put back, new one back in the van"),
    });
    job.refit_machine();
}

/// New parts through which more flows than they stand burn out.
pub(super) fn burn(job: &mut Job) -> Vec<Event> {
    let workshop = job.scenario().workshop.clone();
    let mut events = Vec::new();
    let items: Vec<String> = job
        .bench
        .around
        .fitted
        .iter()
        .map(|f| f.item.clone())
        .collect();
    for item in items.iter().filter_map(|name| store::item(&workshop, name)) {
        for (element, most_a) in &item.part.burns_above_a {
            let too_much = job.machine.stress_a(element) > *most_a;
            if too_much && job.bench.around.burnt.insert(element.clone()) {
                job.bench.healed.insert(Target::Element(element.clone()));
                events.push(Event::BurntOut {
                    what: worded(&item.part.name).into_owned(),
                });
            }
        }
    }
    if !events.is_empty() {
        job.refit_machine();
    }
    events
}

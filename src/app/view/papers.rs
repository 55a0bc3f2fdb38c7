//! The papers a technician has along: the data sheet and the way to each thing, as the machine's
//! file has them.

use crate::app::format;
use crate::app::view::PaperLine;
use crate::app::view::PapersView;
use crate::app::view::sheet;
use crate::app::view::shown;
use crate::bench::workshop::Step;
use crate::bench::workshop::Workshop;
use crate::language::worded;
use crate::say;

/// The papers of a machine.
pub fn papers(machine: &str, workshop: &Workshop) -> PapersView {
    PapersView {
        machine: machine.to_owned(),
        sheet: sheet::lines(workshop),
        access: workshop.steps.iter().map(|s| access(workshop, s)).collect(),
    }
}

fn access(workshop: &Workshop, step: &Step) -> PaperLine {
    let before = step.needs.iter().filter_map(|id| workshop.step(id));
    let before = shown::all(before.map(|s| s.name.as_str()));
    let mut text = vec![say!(
        "{off} off, {on} on",
        off = format::seconds(step.off_s),
        on = format::seconds(step.on_s),
    )];
    if !before.is_empty() {
        text.push(say!("after {steps}", steps = before.join(", ")));
    }
    if !step.fasteners.is_empty() {
        text.push(worded(&step.fasteners).into_owned());
    }
    if !step.tools.is_empty() {
        text.push(shown::all(step.tools.iter().map(String::as_str)).join(", "));
    }
    let mut told = vec![text.join("; ")];
    if !step.caution.is_empty() {
        told.push(say!("Mind: {caution}", caution = worded(&step.caution)));
    }
    if !step.refit_check.is_empty() {
        let check = worded(&step.refit_check);
        told.push(say!("Going back: {check}", check));
    }
    PaperLine {
        what: format::sentence(&say!(
            "{label}: {value}",
            label = worded(&step.name),
            value = worded(&step.verb),
        )),
        text: shown::one_after_another(&told),
    }
}

//! The papers a technician has along: the data sheet and the way to each thing, as the machine's
//! file has them.

use crate::app::format;
use crate::app::view::PaperLine;
use crate::app::view::PapersView;
use crate::app::view::sheet;
use crate::bench::workshop::Step;
use crate::bench::workshop::Workshop;

/// The papers of a machine.
pub fn papers(machine: &str, workshop: &Workshop) -> PapersView {
    PapersView {
        machine: machine.to_owned(),
        sheet: sheet::lines(workshop),
        access: workshop.steps.iter().map(|s| access(workshop, s)).collect(),
    }
}

fn access(workshop: &Workshop, step: &Step) -> PaperLine {
    let before: Vec<&str> = step
        .needs
        .iter()
        .filter_map(|id| workshop.step(id))
        .map(|s| s.name.as_str())
        .collect();
    let mut text = vec![format!(
        "{} off, {} on",
        format::seconds(step.off_s),
        format::seconds(step.on_s)
    )];
    if !before.is_empty() {
        text.push(format!("after {}", before.join(", ")));
    }
    if !step.fasteners.is_empty() {
        text.push(step.fasteners.clone());
    }
    if !step.tools.is_empty() {
        text.push(step.tools.join(", "));
    }
    let mut said = text.join("; ");
    for (word, line) in [("Mind", &step.caution), ("Going back", &step.refit_check)] {
        if !line.is_empty() {
            said.push_str(&format!(". {word}: {line}"));
        }
    }
    PaperLine {
        what: format::sentence(&format!("{}: {}", step.name, step.verb)),
        text: said,
    }
}

//! `draw`: a machine as an SVG file that needs nothing else.

use std::collections::BTreeSet;
use std::io::Write;

use crate::cli::Verdict;
use crate::cli::args::DrawArgs;
use crate::cli::failure::Failure;
use crate::cli::files;
use crate::cli::library;
use crate::drawing;
use crate::drawing::DrawingInput;
use crate::drawing::Features;
use crate::drawing::Probes;
use crate::drawing::svg::Element;
use crate::drawing::wiring;
use crate::drawing::wiring::Symbol;
use crate::drawing::wiring::WiringElement;
use crate::drawing::wiring::WiringInput;
use crate::machine::Machine;
use crate::machine::Setup;
use crate::network::ElementKind;
use crate::network::NodeId;
use crate::scenario::MachinePack;

/// Latest moment that is drawn, s: twice the longest program.
const MOST_S: u32 = 7200;

/// Does it.
pub fn run(args: &DrawArgs, out: &mut dyn Write) -> Result<Verdict, Failure> {
    let pack = library::machine(&args.machine)?;
    if let Some(step) = args
        .off
        .iter()
        .find(|step| pack.workshop.step(step).is_none())
    {
        let known: Vec<&str> = pack.workshop.steps.iter().map(|s| s.id.as_str()).collect();
        return Err(Failure::usage(
            "--off",
            step,
            format!("name one of {}", known.join(", ")),
        ));
    }
    let picture = match args.view.view() {
        Some(view) => drawing::draw(view, &input(args, &pack)?.borrowed(&pack)),
        None => diagram(&pack),
    };
    let text = drawing::document(&picture);
    match &args.out {
        Some(file) => files::write(file, &text)?,
        None => writeln!(out, "{text}")?,
    }
    Ok(Verdict::Passed)
}

/// What the picture shows, owned.
struct Shown {
    removed: BTreeSet<String>,
    apart: BTreeSet<String>,
    pose: crate::machine::Pose,
}

impl Shown {
    fn borrowed<'a>(&'a self, pack: &'a MachinePack) -> DrawingInput<'a> {
        DrawingInput {
            workshop: &pack.workshop,
            features: Features::of(&pack.workshop),
            removed: &self.removed,
            apart: &self.apart,
            selected: None,
            probes: Probes::default(),
            pose: &self.pose,
            names: &drawing::plain_name,
        }
    }
}

fn input(args: &DrawArgs, pack: &MachinePack) -> Result<Shown, Failure> {
    let failed = |error| Failure::Machine {
        what: format!("machine {}", pack.model.id),
        error,
    };
    let mut machine = Machine::new(&pack.model, Setup::default()).map_err(failed)?;
    if let Some(seconds) = args.at {
        if seconds > MOST_S {
            let remedy = format!("a program is over by then; give at most {MOST_S} seconds");
            return Err(Failure::usage("--at", &seconds.to_string(), remedy));
        }
        machine.stand_ready();
        machine.start_program();
        machine.advance(u64::from(seconds) * 10);
    }
    Ok(Shown {
        removed: args.off.iter().cloned().collect(),
        apart: BTreeSet::new(),
        pose: machine.pose(),
    })
}

fn diagram(pack: &MachinePack) -> Element {
    let wiring = &pack.model.wiring;
    let name = |node: NodeId| {
        wiring
            .nodes
            .get(node.index())
            .map_or("", |n| n.name.as_str())
    };
    let elements: Vec<WiringElement<'_>> = wiring
        .elements
        .iter()
        .map(|element| WiringElement {
            name: &element.name,
            symbol: symbol(element.kind),
            nodes: element.nodes.map(name),
            what: &element.what,
        })
        .collect();
    let points: Vec<(&str, &str)> = pack
        .workshop
        .test_points
        .iter()
        .map(|point| (point.node.as_str(), point.name.as_str()))
        .collect();
    wiring::draw(&WiringInput {
        layout: &pack.model.id,
        elements: &elements,
        points: &points,
        closed: &BTreeSet::new(),
        apart: &BTreeSet::new(),
        selected: None,
        probes: Probes::default(),
        names: &drawing::plain_name,
    })
}

fn symbol(kind: ElementKind) -> Symbol {
    match kind {
        ElementKind::Resistor { .. } => Symbol::Resistor,
        ElementKind::Capacitor { .. } => Symbol::Capacitor,
        ElementKind::Inductor { .. } => Symbol::Inductor,
        ElementKind::Contact { .. } => Symbol::Contact,
        ElementKind::Source { .. } => Symbol::Source,
    }
}

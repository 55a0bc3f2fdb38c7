//! `probe`: instruments put to a machine held in one state, or to every row of a reference file.

use std::io::Write;
use std::sync::Arc;

use serde::Serialize;

use crate::bench::action::MeterMode;
use crate::bench::words;
use crate::cli::Verdict;
use crate::cli::args::Lid;
use crate::cli::args::ProbeArgs;
use crate::cli::failure::COMMAND_LINE;
use crate::cli::failure::Failure;
use crate::cli::hold::At;
use crate::cli::hold::Held;
use crate::cli::hold::Hold;
use crate::cli::hold::Link;
use crate::cli::hold::elements;
use crate::cli::hold::nodes;
use crate::cli::library;
use crate::cli::mode;
use crate::cli::rows;
use crate::plant::harness::WiringModel;
use crate::scenario::MachinePack;
use crate::scenario::problem::Problems;

/// One reading asked for.
struct Asked<'a> {
    mode: MeterMode,
    words: &'a [String],
    at: At,
}

/// One reading given.
#[derive(Serialize)]
struct Given<'a> {
    mode: MeterMode,
    points: &'a [String],
    /// SI; null when over range.
    value: Option<f64>,
    unit: &'static str,
    over_range: bool,
    /// What a hand meter shows.
    display: String,
    /// A dead test was made on a live circuit.
    live: bool,
}

/// Does it.
pub fn run(args: &ProbeArgs, out: &mut dyn Write) -> Result<Verdict, Failure> {
    if let Some(file) = &args.rows {
        return rows::run(file, args.json, out);
    }
    let pack = library::machine(args.machine.as_deref().unwrap_or_default())?;
    let mut problems = Problems::new(COMMAND_LINE);
    let hold = hold(args, &pack, &mut problems)?;
    let asked = asked(&args.readings, &hold.model, &mut problems);
    problems.into_result(())?;
    let mut held = hold.solve_as(&pack.model.id)?;
    let given = asked
        .iter()
        .map(|reading| read(&mut held, reading, &pack.model.id))
        .collect::<Result<Vec<_>, Failure>>()?;
    if args.json {
        serde_json::to_writer_pretty(&mut *out, &given)?;
        writeln!(out)?;
    } else {
        given.iter().try_for_each(|one| write_line(one, out))?;
    }
    Ok(Verdict::Passed)
}

fn write_line(one: &Given<'_>, out: &mut dyn Write) -> Result<(), Failure> {
    let mut words = vec![mode::id(one.mode)];
    words.extend(one.points.iter().map(String::as_str));
    let exact = one
        .value
        .map(|value| format!("  ({value:.9e} {})", one.unit));
    let live = if one.live { "  live circuit" } else { "" };
    writeln!(
        out,
        "{}: {}{}{live}",
        words.join(" "),
        one.display,
        exact.unwrap_or_default()
    )?;
    Ok(())
}

fn hold(
    args: &ProbeArgs,
    pack: &MachinePack,
    problems: &mut Problems<'_>,
) -> Result<Hold, Failure> {
    let model = Arc::new(pack.model.wiring.clone());
    let mut hold = Hold::sound(&model, args.state.as_deref().unwrap_or_default());
    hold.is_lid_open = args.lid == Lid::Open;
    hold.open.clone_from(&args.open);
    for word in &args.link {
        match Link::typed(word) {
            Some(link) => hold.links.push(link),
            None => {
                let remedy = "write OHM:A-B with a resistance above 0, such as 2000:CAB-0";
                problems.add("--link", word, remedy);
            }
        }
    }
    for word in &args.fault {
        let active = library::fault(pack, word)?;
        let changes = pack.model.fault(&active.id).map(|def| def.wiring.clone());
        let changes = changes.unwrap_or_default();
        if changes.is_empty() {
            super::tell(&format_args!(
                "note: {} changes nothing in the wiring; `simulate` shows what it does",
                active.id
            ));
        }
        hold.faults.push((changes, active.severity_ratio));
    }
    hold.check(problems);
    Ok(hold)
}

/// `MODE RED BLACK` or `clamp ELEMENT` or `leakage`, again and again.
fn asked<'a>(
    words: &'a [String],
    model: &WiringModel,
    problems: &mut Problems<'_>,
) -> Vec<Asked<'a>> {
    let mut list = Vec::new();
    let mut rest = words;
    while let Some((word, after)) = rest.split_first() {
        let Some(mode) = mode::of(word) else {
            let known = MeterMode::ALL.map(mode::id).join(", ");
            problems.add(
                "reading",
                word,
                format!("a reading begins with one of {known}"),
            );
            return list;
        };
        let (count, remedy) = match mode {
            MeterMode::Leakage => (0, ""),
            MeterMode::Clamp => (1, "the element in its jaws follows this mode"),
            _ => (
                2,
                "the nodes under the red and the black lead follow this mode",
            ),
        };
        if after.len() < count {
            problems.add("reading", word, remedy);
            return list;
        }
        let (places, others) = after.split_at(count);
        let names = match mode {
            MeterMode::Clamp => elements(model),
            _ => nodes(model),
        };
        names.expect_all(&format!("reading {word}"), places, problems);
        let at = match places {
            [red, black] => model
                .node(red)
                .zip(model.node(black))
                .map(|(a, b)| At::Nodes([a, b])),
            [element] => model.element(element).map(At::Element),
            _ => Some(At::Cord),
        };
        list.extend(at.map(|at| Asked {
            mode,
            words: places,
            at,
        }));
        rest = others;
    }
    list
}

fn read<'a>(held: &mut Held, asked: &Asked<'a>, machine: &str) -> Result<Given<'a>, Failure> {
    let found = held
        .measure(asked.mode, &asked.at)
        .map_err(|error| Failure::Solve {
            what: format!("machine {machine}"),
            error,
        })?;
    let is_over_range = found.is_over_range || !found.value_si.is_finite();
    Ok(Given {
        mode: asked.mode,
        points: asked.words,
        value: (!is_over_range).then_some(found.value_si),
        unit: words::si_unit(asked.mode),
        over_range: is_over_range,
        display: found.display(asked.mode),
        live: found.is_live,
    })
}

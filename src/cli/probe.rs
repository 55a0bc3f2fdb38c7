//! `probe`: readings of a machine held in one state, or of every row of a reference file.

use std::io::Write;
use std::sync::Arc;

use serde::Serialize;

use crate::bench::action::MeterMode;
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
use crate::cli::rows;
use crate::scenario::MachinePack;
use crate::scenario::problem::Problems;

/// One reading asked for.
struct Asked<'a> {
    mode: MeterMode,
    words: &'a [String],
}

/// One reading given.
#[derive(Serialize)]
struct Given<'a> {
    mode: MeterMode,
    points: &'a [String],
    /// SI; null when over range.
    value: Option<f64>,
    unit: &'static str,
    display: String,
    live: bool,
}

/// Does it.
pub fn run(args: &ProbeArgs, out: &mut dyn Write) -> Result<Verdict, Failure> {
    if let Some(file) = &args.rows {
        return rows::run(file, out);
    }
    let machine = args.machine.as_deref().unwrap_or_default();
    let pack = library::machine(machine)?;
    let hold = hold(args, &pack)?;
    let asked = asked(&args.readings)?;
    let mut problems = Problems::new(COMMAND_LINE);
    hold.check(&mut problems);
    for reading in &asked {
        let names = if reading.mode.is_clamp() {
            elements(&hold.model)
        } else {
            nodes(&hold.model)
        };
        names.expect_all("reading", reading.words, &mut problems);
    }
    problems.into_result(())?;
    let mut held = hold.solve_as(&pack.model.id)?;
    let given = asked
        .iter()
        .map(|reading| read(&mut held, reading, &pack))
        .collect::<Result<Vec<_>, Failure>>()?;
    if args.json {
        serde_json::to_writer_pretty(&mut *out, &given)?;
        writeln!(out)?;
    } else {
        for one in &given {
            let live = if one.live { "  (live circuit)" } else { "" };
            writeln!(
                out,
                "{:?} {}: {}{live}",
                one.mode,
                one.points.join(" "),
                one.display
            )?;
        }
    }
    Ok(Verdict::Passed)
}

fn hold(args: &ProbeArgs, pack: &MachinePack) -> Result<Hold, Failure> {
    let faults = args
        .fault
        .iter()
        .map(|word| {
            let active = library::fault(pack, word)?;
            let changes = pack.model.fault(&active.id).map(|d| d.wiring.clone());
            Ok((changes.unwrap_or_default(), active.severity_ratio))
        })
        .collect::<Result<_, Failure>>()?;
    Ok(Hold {
        faults,
        is_lid_open: args.lid == Lid::Open,
        open: args.open.clone(),
        links: args
            .link
            .iter()
            .map(|word| link(word))
            .collect::<Result<_, _>>()?,
        ..Hold::sound(
            &Arc::new(pack.model.wiring.clone()),
            args.state.as_deref().unwrap_or_default(),
        )
    })
}

/// `OHM:A-B`.
fn link(word: &str) -> Result<Link, Failure> {
    let wrong = || Failure::usage("--link", word, "write OHM:A-B, such as 2000:CAB-0");
    let (ohm, ends) = word.split_once(':').ok_or_else(wrong)?;
    let (a, b) = ends.split_once('-').ok_or_else(wrong)?;
    let ohm = ohm
        .parse::<f64>()
        .ok()
        .filter(|ohm| *ohm >= 0.0 && ohm.is_finite())
        .ok_or_else(wrong)?;
    Ok(Link {
        name: "LINK".to_owned(),
        ohm,
        ends: [a.to_owned(), b.to_owned()],
    })
}

/// `MODE RED BLACK` or `clamp ELEMENT` or `leakage`, again and again.
fn asked(words: &[String]) -> Result<Vec<Asked<'_>>, Failure> {
    let mut list = Vec::new();
    let mut rest = words;
    while let Some((word, after)) = rest.split_first() {
        let mode: MeterMode = serde_json::from_value(serde_json::Value::String(word.clone()))
            .map_err(|_| {
                let modes: Vec<String> = MeterMode::ALL
                    .iter()
                    .filter_map(|m| serde_json::to_value(m).ok()?.as_str().map(str::to_owned))
                    .collect();
                Failure::usage(
                    "reading",
                    word,
                    format!("begin with one of {}", modes.join(", ")),
                )
            })?;
        let takes = match mode {
            MeterMode::Leakage => 0,
            MeterMode::Clamp => 1,
            _ => 2,
        };
        if after.len() < takes {
            let remedy = format!("{takes} names follow this mode");
            return Err(Failure::usage("reading", word, remedy));
        }
        list.push(Asked {
            mode,
            words: &after[..takes],
        });
        rest = &after[takes..];
    }
    Ok(list)
}

fn read<'a>(held: &mut Held, asked: &Asked<'a>, pack: &MachinePack) -> Result<Given<'a>, Failure> {
    let at = match asked.words {
        [red, black] => held.pair(red, black).map(At::Nodes),
        [element] => held
            .harness
            .wiring()
            .model
            .element(element)
            .map(At::Element),
        _ => Some(At::Cord),
    };
    let at = at.ok_or_else(|| {
        Failure::usage(
            "reading",
            &asked.words.join(" "),
            "name nodes or elements of this machine",
        )
    })?;
    let found = held
        .measure(asked.mode, &at)
        .map_err(|error| Failure::Solve {
            what: format!("machine {}", pack.model.id),
            error,
        })?;
    Ok(Given {
        mode: asked.mode,
        points: asked.words,
        value: (!found.is_over_range && found.value_si.is_finite()).then_some(found.value_si),
        unit: unit(asked.mode),
        display: found.display(asked.mode),
        live: found.is_live,
    })
}

/// SI unit of a mode.
pub fn unit(mode: MeterMode) -> &'static str {
    match mode {
        MeterMode::AcVolts | MeterMode::LowAcVolts | MeterMode::DcVolts => "V",
        MeterMode::Ohms | MeterMode::Continuity | MeterMode::Insulation | MeterMode::EarthBond => {
            "ohm"
        }
        MeterMode::Capacitance => "F",
        MeterMode::Clamp | MeterMode::Leakage => "A",
    }
}

//! What is still off, apart or shut: a last look round.

use crate::app::format;
use crate::bench::gauge::Gauge;
use crate::bench::job::Job;

/// One line for each thing that is not as a working machine stands.
pub fn still_open(job: &Job) -> Vec<String> {
    let (bench, workshop, machine) = (job.bench(), &job.scenario().workshop, job.machine());
    let mut lines: Vec<String> = bench
        .off
        .iter()
        .filter_map(|id| workshop.step(id))
        .map(|step| {
            let held = if step.fasteners.is_empty() {
                String::new()
            } else {
                format!(" ({})", step.fasteners)
            };
            format!(
                "{}{held} is still to be put back",
                format::sentence(&step.name)
            )
        })
        .collect();
    let apart = bench.apart.iter().filter_map(|id| workshop.connector(id));
    lines.extend(apart.map(|c| format!("{} is apart", format::sentence(&c.name))));
    let mut line = |open: bool, words: &str| {
        if open {
            lines.push(words.to_owned());
        }
    };
    line(!bench.hose_attached, "The supply hose is off");
    line(bench.splitter, "The splitter lead is still in the socket");
    line(
        bench.fitted.contains(&Gauge::PressureGauge),
        "The tee with the pressure gauge is in the supply line",
    );
    line(
        bench.fitted.contains(&Gauge::UTube),
        "The tee with the U-tube is in the air hose",
    );
    line(
        bench.isolation.house_off,
        "The socket's circuit is off at the board",
    );
    line(machine.lid_bridged(), "The lid switch is bridged");
    line(machine.lid_open(), "The lid is open");
    line(!machine.tap_open(), "The tap is shut");
    line(!machine.plugged(), "The plug is out");
    lines
}

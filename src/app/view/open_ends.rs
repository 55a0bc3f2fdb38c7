//! What is still off, apart or shut: a last look round.

use crate::app::format;
use crate::bench::action::Action;
use crate::bench::gauge::Gauge;
use crate::bench::job::Job;
use crate::language::worded;
use crate::say;

/// One line for each thing that is not as a working machine stands. A tap that the technician has
/// neither turned nor looked at is told only of once the job is over: it may be what is to be found.
pub fn still_open(job: &Job) -> Vec<String> {
    let (bench, workshop, machine) = (job.bench(), &job.scenario().workshop, job.machine());
    let mut lines: Vec<String> = bench
        .off
        .iter()
        .filter_map(|id| workshop.step(id))
        .map(|step| {
            let what = format::sentence(&worded(&step.name));
            if step.fasteners.is_empty() {
                say!("{what} is still to be put back", what)
            } else {
                let held = worded(&step.fasteners);
                say!("{what} ({held}) is still to be put back", what, held)
            }
        })
        .collect();
    let apart = bench.apart.iter().filter_map(|id| workshop.connector(id));
    lines.extend(apart.map(|connector| {
        let what = format::sentence(&worded(&connector.name));
        say!("{what} is apart", what)
    }));
    let mut line = |open: bool, words: &str| {
        if open {
            lines.push(words.to_owned());
        }
    };
    line(!bench.hose_attached, say!("The supply hose is off"));
    line(
        bench.splitter,
        say!("The splitter lead is still in the socket"),
    );
    line(
        bench.fitted.contains(&Gauge::PressureGauge),
        say!("The tee with the pressure gauge is in the supply line"),
    );
    line(
        bench.fitted.contains(&Gauge::UTube),
        say!("The tee with the U-tube is in the air hose"),
    );
    line(
        bench.isolation.house_off,
        say!("The socket's circuit is off at the board"),
    );
    let off: u32 = bench
        .off
        .iter()
        .filter_map(|id| workshop.step(id))
        .map(|step| step.n_fasteners)
        .sum();
    let left_over = job.n_pieces_on_cloth().saturating_sub(off);
    line(
        left_over > 0,
        &say!("On the cloth lie {n} pieces too many", n = left_over),
    );
    line(
        job.sealed_at().is_some(),
        say!("A sealed joint still needs its time before water"),
    );
    line(machine.lid_bridged(), say!("The lid switch is bridged"));
    line(machine.lid_open(), say!("The lid is open"));
    let tap_told = job.is_over() || tap_known(job);
    line(!machine.tap_open() && tap_told, say!("The tap is shut"));
    line(!machine.plugged(), say!("The plug is out"));
    lines
}

/// The technician has turned the tap or looked at it.
pub fn tap_known(job: &Job) -> bool {
    job.log().iter().any(|entry| match &entry.action {
        Action::Tap { .. } => true,
        Action::Sense { place, .. } => place == "tap",
        _ => false,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scenario;

    #[test]
    fn a_shut_tap_nobody_looked_at_is_not_given_away() {
        let shut = scenario::job("no_water").expect("sound").expect("ships");
        let mut job = Job::new(shut, 1).expect("a machine");
        let told = |job: &Job| still_open(job).iter().any(|line| line == "The tap is shut");
        assert!(!told(&job));
        for open in [true, false] {
            job.act(Action::Tap { open });
        }
        assert!(told(&job));
    }
}

//! Wash programs as lists of steps, and the usual five.
//!
//! A program is data of the machine file; the five here are a design choice and serve the
//! tests and whoever writes a new file.

/// What a program step does; each is a state of the control.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum StepKind {
    /// Water in, to the chosen level.
    Fill,
    /// Reversing motion.
    Agitate,
    /// Standing in water.
    Soak,
    /// Water out.
    Drain,
    /// Motor on and off, so that the load settles.
    SpinStep,
    /// Steady spin.
    SpinFull,
    /// All off until the basket stands.
    Brake,
}

/// One step of a program.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Step {
    /// What it does.
    pub kind: StepKind,
    /// Its length, s; fills and drains end by level and ignore it.
    pub time_s: f64,
    /// A fill that follows the chosen temperature; rinses stay cold.
    pub may_be_warm: bool,
}

impl Step {
    /// A step of a length in s, cold.
    pub const fn new(kind: StepKind, time_s: f64) -> Step {
        Step {
            kind,
            time_s,
            may_be_warm: false,
        }
    }

    /// The first fill of a wash, at the chosen temperature.
    pub const fn wash_fill() -> Step {
        Step {
            kind: StepKind::Fill,
            time_s: 0.0,
            may_be_warm: true,
        }
    }
}

/// Reversing pattern of the wash: on, off, the other way on, off.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pattern {
    /// Motor on in one direction, s.
    pub on_s: f64,
    /// Pause between directions, s.
    pub off_s: f64,
}

/// A program: a name and its steps.
#[derive(Clone, Debug, PartialEq)]
pub struct Program {
    /// Name on the panel.
    pub name: String,
    /// Steps in order.
    pub steps: Vec<Step>,
    /// A pattern of its own; otherwise the level's.
    pub pattern: Option<Pattern>,
}

use StepKind::Agitate;
use StepKind::Brake;
use StepKind::Drain;
use StepKind::Fill;
use StepKind::Soak;
use StepKind::SpinFull;
use StepKind::SpinStep;

const STEP_SPIN_S: f64 = 60.0;
const BRAKE_S: f64 = 10.0;

/// Drain, step spin, full spin of a length (none for 0), brake.
fn spin_block(full_s: f64) -> Vec<Step> {
    let mut steps = vec![Step::new(Drain, 0.0), Step::new(SpinStep, STEP_SPIN_S)];
    if full_s > 0.0 {
        steps.push(Step::new(SpinFull, full_s));
    }
    steps.push(Step::new(Brake, BRAKE_S));
    steps
}

/// Fill and agitate 180 s, then a spin block.
fn rinse(full_s: f64) -> Vec<Step> {
    let mut steps = vec![Step::new(Fill, 0.0), Step::new(Agitate, 180.0)];
    steps.extend(spin_block(full_s));
    steps
}

fn program(name: &str, wash: &[Step], parts: [Vec<Step>; 3], pattern: Option<Pattern>) -> Program {
    let mut steps = wash.to_vec();
    steps.extend(parts.into_iter().flatten());
    Program {
        name: name.to_owned(),
        steps,
        pattern,
    }
}

const NORMAL_WASH: [Step; 4] = [
    Step::wash_fill(),
    Step::new(Agitate, 240.0),
    Step::new(Soak, 240.0),
    Step::new(Agitate, 480.0),
];

/// Wash with a soak between two agitations, two rinses.
pub fn normal() -> Program {
    let parts = [spin_block(90.0), rinse(90.0), rinse(300.0)];
    program("Normal", &NORMAL_WASH, parts, None)
}

/// One short wash, one rinse.
pub fn quick() -> Program {
    let wash = [Step::wash_fill(), Step::new(Agitate, 240.0)];
    let parts = [spin_block(90.0), rinse(180.0), Vec::new()];
    program("Quick", &wash, parts, None)
}

/// Short strokes, long pauses, no full spin between.
pub fn gentle() -> Program {
    let pattern = Pattern {
        on_s: 0.8,
        off_s: 1.2,
    };
    let parts = [spin_block(0.0), rinse(0.0), rinse(300.0)];
    program("Gentle", &NORMAL_WASH, parts, Some(pattern))
}

/// Half an hour in water, then as normal.
pub fn soak() -> Program {
    let mut wash = NORMAL_WASH.to_vec();
    wash.insert(1, Step::new(Soak, 1800.0));
    let parts = [spin_block(90.0), rinse(90.0), rinse(300.0)];
    program("Soak", &wash, parts, None)
}

/// Water out and spin.
pub fn drain_and_spin() -> Program {
    let parts = [spin_block(300.0), Vec::new(), Vec::new()];
    program("Drain and spin", &[], parts, None)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_program_ends_with_a_standing_basket() {
        for program in [normal(), quick(), gentle(), soak(), drain_and_spin()] {
            let last = program.steps.last().map(|step| step.kind);
            assert_eq!(last, Some(Brake), "{}", program.name);
        }
    }

    #[test]
    fn every_full_spin_follows_a_step_spin() {
        for program in [normal(), quick(), gentle(), soak(), drain_and_spin()] {
            for pair in program.steps.windows(2) {
                if pair[1].kind == SpinFull {
                    assert_eq!(pair[0].kind, SpinStep, "{}", program.name);
                }
            }
        }
    }
}

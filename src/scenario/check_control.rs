//! Checks of a machine's `control` section: times and thresholds that can be, cams that exist.

use crate::scenario::control_file::CamTimerFile;
use crate::scenario::control_file::ControlFile;
use crate::scenario::control_file::ElectronicFile;
use crate::scenario::control_file::LevelFile;
use crate::scenario::control_file::PhaseEndFile;
use crate::scenario::control_file::ProgramStepFile;
use crate::scenario::control_file::StepSpanFile;
use crate::scenario::names::Names;
use crate::scenario::problem::Problems;

/// Longest time a control counts, s: a day.
const LONGEST_S: f64 = 86_400.0;
/// Contacts a cam timer can have.
const MOST_CONTACTS: usize = 32;

/// Checks a control; contacts of a cam timer are elements of the wiring.
pub fn check_control(file: &ControlFile, elements: &Names, problems: &mut Problems) {
    match file {
        ControlFile::Electronic(control) => check_electronic(control, problems),
        ControlFile::CamTimer(timer) => check_timer(timer, elements, problems),
    }
}

fn check_electronic(control: &ElectronicFile, problems: &mut Problems) {
    let at = "control.electronic";
    problems.in_range(
        &format!("{at}.nominal_supply_v"),
        control.nominal_supply_v,
        50.0,
        500.0,
    );
    problems.in_range(
        &format!("{at}.supply_low_ratio"),
        control.supply_low_ratio,
        0.0,
        1.0,
    );
    problems.in_range(
        &format!("{at}.supply_high_ratio"),
        control.supply_high_ratio,
        1.0,
        3.0,
    );
    check_level(&control.level, problems);
    for (index, program) in control.programs.iter().enumerate() {
        for (step_index, step) in program.steps.iter().enumerate() {
            let path = format!("{at}.programs[{index}].steps[{step_index}]");
            problems.in_range(&path, time_s(*step), 0.0, LONGEST_S);
        }
    }
    for (index, step) in control.service_steps.iter().enumerate() {
        for (phase_index, phase) in step.phases.iter().enumerate() {
            let path = format!("{at}.service_steps[{index}].phases[{phase_index}].until");
            match phase.until {
                PhaseEndFile::TimeS(time_s) => problems.in_range(&path, time_s, 0.1, LONGEST_S),
                PhaseEndFile::Full(level) if level >= control.level.targets.len() => {
                    let count = control.level.targets.len();
                    problems.add(&path, level, format!("there are {count} levels, from 0"));
                }
                PhaseEndFile::Full(_) | PhaseEndFile::Empty | PhaseEndFile::Key => {}
            }
        }
    }
}

fn time_s(step: ProgramStepFile) -> f64 {
    match step {
        ProgramStepFile::Fill | ProgramStepFile::WashFill | ProgramStepFile::Drain => 0.0,
        ProgramStepFile::Agitate(time_s)
        | ProgramStepFile::Soak(time_s)
        | ProgramStepFile::SpinStep(time_s)
        | ProgramStepFile::SpinFull(time_s)
        | ProgramStepFile::Brake(time_s) => time_s,
    }
}

/// More water makes the oscillator slower, so the thresholds have one possible order.
fn check_level(level: &LevelFile, problems: &mut Problems) {
    let at = "control.electronic.level";
    problems.in_range(
        &format!("{at}.plausible_high_hz"),
        level.plausible_high_hz,
        1.0,
        1.0e7,
    );
    let (low, high) = (level.plausible_low_hz, level.plausible_high_hz);
    problems.in_range(&format!("{at}.empty_hz"), level.empty_hz, low, high);
    problems.in_range(
        &format!("{at}.overflow_hz"),
        level.overflow_hz,
        low,
        level.empty_hz,
    );
    for (index, target) in level.targets.iter().enumerate() {
        let path = format!("{at}.targets[{index}]");
        problems.in_range(
            &format!("{path}.full_hz"),
            target.full_hz,
            level.overflow_hz,
            level.empty_hz,
        );
        problems.in_range(
            &format!("{path}.top_up_hz"),
            target.top_up_hz,
            target.full_hz,
            level.empty_hz,
        );
        problems.in_range(
            &format!("{path}.pattern.on_s"),
            target.pattern.on_s,
            0.1,
            60.0,
        );
        problems.in_range(
            &format!("{path}.pattern.off_s"),
            target.pattern.off_s,
            0.1,
            60.0,
        );
    }
}

fn check_timer(timer: &CamTimerFile, elements: &Names, problems: &mut Problems) {
    let at = "control.cam_timer";
    problems.in_range(&format!("{at}.step_s"), timer.step_s, 1.0, 3600.0);
    if timer.contacts.len() > MOST_CONTACTS {
        let found = timer.contacts.len();
        problems.add(
            &format!("{at}.contacts"),
            found,
            format!("at most {MOST_CONTACTS}"),
        );
    }
    for (index, cam) in timer.fast_cams.iter().enumerate() {
        let path = format!("{at}.fast_cams[{index}]");
        problems.in_range(&format!("{path}.period_s"), cam.period_s, 0.2, 600.0);
        problems.in_range(
            &format!("{path}.closed_to_s"),
            cam.closed_to_s,
            0.0,
            cam.period_s,
        );
        problems.in_range(
            &format!("{path}.closed_from_s"),
            cam.closed_from_s,
            0.0,
            cam.closed_to_s,
        );
    }
    for (index, contact) in timer.contacts.iter().enumerate() {
        let path = format!("{at}.contacts[{index}]");
        elements.expect(&format!("{path}.name"), &contact.name, problems);
        check_spans(&format!("{path}.spans"), &contact.spans, timer, problems);
    }
    check_spans(&format!("{at}.bell"), &timer.bell, timer, problems);
}

fn check_spans(path: &str, spans: &[StepSpanFile], timer: &CamTimerFile, problems: &mut Problems) {
    for (index, span) in spans.iter().enumerate() {
        let at = format!("{path}[{index}]");
        if span.first > span.last || span.last >= timer.n_steps {
            let found = format!("{} to {}", span.first, span.last);
            problems.add(
                &at,
                found,
                format!("steps run from 0 to {}", timer.n_steps - 1),
            );
        }
        if let Some(cam) = span.fast_cam
            && cam >= timer.fast_cams.len()
        {
            let count = timer.fast_cams.len();
            problems.add(
                &format!("{at}.fast_cam"),
                cam,
                format!("there are {count}, from 0"),
            );
        }
    }
}

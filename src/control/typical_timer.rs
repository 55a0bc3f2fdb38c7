//! A typical cam timer: 43 steps of 60 s, a 4.2 s reversing shaft, a 12 s step-spin shaft.
//!
//! Contacts as in the harness with a pressure switch between fill feed and wash feed:
//! TC1 feeds the pressure switch, whose empty side is the valve and whose full side is the
//! wash feed; TC7 and TCA/TCB hang on the wash feed, so the timer waits while filling.
//! TC4 feeds actuator, lid and lever; TC6 the timer motor; TC5 lets lid and lever through
//! to the motor. With these contacts the timer motor can run only beside the wash feed or
//! beside the actuator: so the soak keeps TC1, and the minute after a spin keeps TC4 (the
//! basket runs out; the brake falls in when the next fill begins). Source: design choice.

use crate::control::cam_timer::CamContact;
use crate::control::cam_timer::CamTimerModel;
use crate::control::cam_timer::FastCam;
use crate::control::cam_timer::StepSpan;

const FORWARD: usize = 0;
const REVERSE: usize = 1;
const STEP_SPIN: usize = 2;

fn span(first_step: u32, last_step: u32) -> StepSpan {
    StepSpan {
        first_step,
        last_step,
        fast_cam: None,
    }
}

fn following(cam: usize, (first_step, last_step): (u32, u32)) -> StepSpan {
    StepSpan {
        first_step,
        last_step,
        fast_cam: Some(cam),
    }
}

fn contact(name: &str, spans: Vec<StepSpan>) -> CamContact {
    CamContact {
        name: name.to_owned(),
        spans,
        needs_knob: false,
    }
}

/// Wash of 4 + 8 min with a soak between, two rinses of 3 min, bell in the last step.
pub fn cam_timer() -> CamTimerModel {
    // Fill and agitate, soak, and the three runs of drain, step spin, spin, run-out.
    let agitate = [(1, 4), (9, 16), (23, 25), (32, 34)];
    let spin_blocks = [(17, 22), (26, 31), (35, 43)];
    let wash_spans = || vec![span(1, 16), span(23, 25), span(32, 34)];
    let outlet_spans = || spin_blocks.map(|(first, last)| span(first, last)).to_vec();
    let reversing = |cam: usize| agitate.map(|steps| following(cam, steps)).to_vec();
    let mut spin = [(19, 19), (28, 28), (37, 37)]
        .map(|steps| following(STEP_SPIN, steps))
        .to_vec();
    spin.extend([span(20, 21), span(29, 30), span(38, 42)]);
    CamTimerModel {
        step_s: 60.0,
        n_steps: 44,
        fast_cams: vec![
            fast(4.2, 0.0, 1.4),
            fast(4.2, 2.1, 3.5),
            fast(12.0, 0.0, 6.0),
        ],
        contacts: vec![
            CamContact {
                needs_knob: true,
                ..contact("TC0", vec![span(1, 43)])
            },
            contact("TC1", wash_spans()),
            contact("TC4", outlet_spans()),
            contact("TC5", spin),
            contact("TC6", outlet_spans()),
            contact("TC7", wash_spans()),
            contact("TCA", reversing(FORWARD)),
            contact("TCB", reversing(REVERSE)),
        ],
        bell: vec![span(43, 43)],
    }
}

fn fast(period_s: f64, closed_from_s: f64, closed_to_s: f64) -> FastCam {
    FastCam {
        period_s,
        closed_from_s,
        closed_to_s,
    }
}

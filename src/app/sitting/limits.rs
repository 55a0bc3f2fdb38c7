//! What an assessment keeps from the bench: hints, the look round, and the aids that are not allowed.

use crate::app::session::Session;
use crate::app::shared::Shared;
use crate::app::sitting::jobs;
use crate::app::sitting::running;
use crate::app::view::BenchView;
use crate::app::view::ExamView;
use crate::app::view::Order;
use crate::app::view::Picture;
use crate::say;

/// The order may be carried out here and now.
pub fn allows(session: &Session, order: &Order) -> bool {
    if !jobs::is_sitting(&session.job().scenario().id) {
        return true;
    }
    let may = running::with(|now| {
        (
            now.sitting.is_running() && !now.sitting.stands(),
            now.aids().wiring,
        )
    });
    let (is_at_work, wiring) = may.unwrap_or_default();
    match order {
        Order::StartAgain | Order::TryFrom(_) | Order::BackToWhole => false,
        Order::Show(Picture::Wiring) => wiring,
        _ => is_at_work,
    }
}

/// Takes away what is not shown in an assessment; leaves every other job as it is.
pub fn limit(bench: &mut BenchView) {
    if !jobs::is_sitting(&bench.id) {
        return;
    }
    let Some(aids) = running::with(|now| now.aids()) else {
        return;
    };
    bench.exam = Some(ExamView {
        wiring: aids.wiring,
    });
    bench.guide = None;
    bench.still_open.clear();
    if aids.data_sheet {
        return;
    }
    bench.meter.sheet = None;
    if let Some(face) = &mut bench.gauge {
        face.sheet = None;
    }
    let mut notes = (*bench.notes).clone();
    notes.iter_mut().for_each(|note| note.sheet = None);
    bench.notes = Shared::new(notes);
    let mut gauges = (*bench.gauges).clone();
    for place in gauges.iter_mut().flat_map(|gauge| &mut gauge.places) {
        place.sheet = None;
    }
    bench.gauges = Shared::new(gauges);
}

/// Time left as the bench shows it, such as `1 h 12 min left`; none outside an assessment.
pub fn time_left(id: &str) -> Option<String> {
    jobs::is_sitting(id).then(|| running::with(|now| in_words(now.left_s())))?
}

/// Whole minutes, and seconds once it is short.
pub fn in_words(left_s: f64) -> String {
    let seconds = left_s.ceil() as u64;
    match seconds {
        0..=120 => say!("{n} s left", n = seconds),
        121..3600 => say!("{n} min left", n = seconds / 60),
        _ => say!(
            "{hours} h {minutes} min left",
            hours = seconds / 3600,
            minutes = seconds / 60 % 60
        ),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn time_left_is_told_in_the_unit_that_matters() {
        let told = [0.2, 119.0, 125.0, 3599.0, 4320.0].map(in_words);
        assert_eq!(
            told,
            [
                "1 s left",
                "119 s left",
                "2 min left",
                "59 min left",
                "1 h 12 min left"
            ]
        );
    }
}

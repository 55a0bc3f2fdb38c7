//! Instruments that need no circuit, the tests after a repair and the recorder, as the screens show
//! them.

use crate::app::format;
use crate::app::view::GaugeFaceView;
use crate::app::view::GaugePlaceView;
use crate::app::view::GaugeView;
use crate::app::view::Order;
use crate::app::view::PenView;
use crate::app::view::RecorderView;
use crate::app::view::TestView;
use crate::app::view::VerbView;
use crate::app::view::names::name_of;
use crate::app::view::sheet;
use crate::app::view::shown;
use crate::app::view::way;
use crate::bench::action::Action;
use crate::bench::after_repair;
use crate::bench::after_repair::Shown;
use crate::bench::display;
use crate::bench::gauge::Gauge;
use crate::bench::job::Job;
use crate::bench::notebook::TICKS_PER_S;
use crate::bench::notebook::Tick;
use crate::bench::recorder::Channel;
use crate::bench::recorder::Recorder;
use crate::bench::words;
use crate::language::decimals;
use crate::language::said;
use crate::language::worded;
use crate::say;

/// Lines of the table under the chart.
const TABLE_LINES: usize = 12;
/// The chart's lane, in its own units.
const LANE: (f64, f64) = (300.0, 56.0);

/// Every instrument with the places it goes to on this machine.
pub fn gauges(job: &Job) -> Vec<GaugeView> {
    Gauge::ALL
        .into_iter()
        .filter(|gauge| job.scenario().rules.has_gauge(*gauge))
        .map(|gauge| GaugeView {
            gauge,
            name: said(gauge.about().name),
            caution: said(gauge.about().caution),
            places: places(job, gauge),
        })
        .filter(|view| !view.places.is_empty())
        .collect()
}

fn places(job: &Job, gauge: Gauge) -> Vec<GaugePlaceView> {
    let workshop = &job.scenario().workshop;
    let known = gauge.about().places.iter();
    known
        .filter_map(|id| {
            let place = workshop.place(id)?;
            Some(GaugePlaceView {
                name: say!(
                    "{place}, {way}",
                    place = worded(&place.name),
                    way = way_of(gauge, id),
                ),
                blocked: way::in_the_way(&way::missing(job, &place.needs)),
                sheet: sheet::gauge_range(workshop, gauge, id, ""),
                channel: gauge.is_continuous().then(|| Channel::Gauge {
                    gauge,
                    place: place.id.clone(),
                }),
                order: Order::Do(vec![act(gauge, id)]),
            })
        })
        .collect()
}

fn act(gauge: Gauge, place: &str) -> Action {
    Action::Gauge {
        gauge,
        place: place.to_owned(),
    }
}

/// What the instrument does at a place, in words for a key.
fn way_of(gauge: Gauge, place: &str) -> &'static str {
    match (gauge, place) {
        (Gauge::JugAndWatch, "tub") => say!("the stream that runs in"),
        (Gauge::JugAndWatch, "supply_hose") => say!("its open end over a bucket"),
        (Gauge::JugAndWatch, _) => say!("the stream that runs out"),
        (Gauge::Watch, "basket") => say!("until it stands"),
        (Gauge::Watch, "tub") => say!("until it has filled"),
        (Gauge::Watch, "drain_hose") => say!("until no more water comes"),
        (Gauge::Watch, _) => say!("until its wire stands"),
        (Gauge::PressureGauge, _) => say!("pressure in the line"),
        (Gauge::UTube, _) => say!("pressure in the hose"),
        (Gauge::Tachometer, _) => say!("highest speed in ten seconds"),
        (Gauge::SpiritLevel, "floor") => say!("slope of the floor beside it"),
        (Gauge::SpiritLevel, _) => say!("slope of the machine"),
        (Gauge::SpringBalance, _) => say!("gives at 7 N"),
        (Gauge::BeltGauge, _) => say!("tension by its tone"),
        (Gauge::Thermometer, "motor") => say!("hottest winding"),
        (Gauge::Thermometer, "tub") => say!("the water"),
        (Gauge::Thermometer, _) => say!("the room"),
        (Gauge::Rule, "drain_motor") => say!("travel of its wire"),
        (Gauge::Rule, "drain_hose") => say!("height of its end over the floor"),
        (Gauge::Rule, "balance_switch") => say!("gap to the tub"),
        (Gauge::Rule, _) => say!("play"),
    }
}

/// What can be gauged at a thing, as verbs of what is in hand.
pub fn verbs_at(job: &Job, id: &str) -> Vec<(String, &'static str, Action)> {
    let rules = &job.scenario().rules;
    let known = |gauge: &Gauge| gauge.about().places.contains(&id) && rules.has_gauge(*gauge);
    let workshop = &job.scenario().workshop;
    if workshop.place(id).is_none() {
        return Vec::new();
    }
    let verb = |gauge: Gauge| {
        let word = say!(
            "{label}: {value}",
            label = said(gauge.about().name),
            value = way_of(gauge, id),
        );
        (word, said(gauge.about().caution), act(gauge, id))
    };
    Gauge::ALL.into_iter().filter(known).map(verb).collect()
}

/// What such an instrument showed last.
pub fn face(job: &Job) -> Option<GaugeFaceView> {
    let reading = job.bench().gauge.as_ref()?;
    let workshop = &job.scenario().workshop;
    let about = reading.gauge.about();
    let display = shown::reading(&reading.display);
    let (value, unit) = display.split_once(' ').unwrap_or((&display, ""));
    let share = reading.value_si.map(|si| {
        let on_scale = (si - about.zero_si) / about.unit_si;
        (on_scale / about.full).clamp(0.0, 1.0)
    });
    Some(GaugeFaceView {
        gauge: reading.gauge,
        value: value.to_owned(),
        unit: unit.to_owned(),
        share,
        place: name_of(workshop, &reading.place),
        sheet: sheet::gauge_range(workshop, reading.gauge, &reading.place, ""),
    })
}

/// The tests after a repair.
pub fn tests(job: &Job) -> Vec<TestView> {
    after_repair::tests(job)
        .into_iter()
        .map(|test| {
            let (value, passed) = match &test.shown {
                Shown::NotYet => (None, None),
                Shown::Seen => (Some(say!("seen").to_owned()), Some(true)),
                Shown::Value { display, passed } => (Some(shown::reading(display)), Some(*passed)),
            };
            TestView {
                what: said(test.what),
                how: said(test.how),
                limit: said(test.limit),
                source: said(test.source),
                value,
                passed,
                measure: test.leads.map(|leads| VerbView {
                    word: say!("leads there").to_owned(),
                    takes: String::new(),
                    hint: said(test.how).to_owned(),
                    blocked: false,
                    order: Order::Measure(leads.mode, leads.red, leads.black),
                }),
            }
        })
        .collect()
}

/// The recorder's strip.
pub fn recorder(job: &Job, recorder: &Recorder) -> RecorderView {
    let samples = recorder.samples();
    let (first, last) = match (samples.first(), samples.last()) {
        (Some(first), Some(last)) => (first.tick, last.tick),
        _ => (job.tick(), job.tick()),
    };
    let span = (last - first).max(1) as f64;
    let pens = recorder.channels().iter().enumerate();
    let pens = pens
        .map(|(pen, channel)| {
            let points = samples
                .iter()
                .map(|s| ((s.tick - first) as f64 / span, s.values[pen]));
            pen_view(job, channel, points)
        })
        .collect();
    let step = samples.len().div_ceil(TABLE_LINES).max(1);
    let is_last = |at: usize| at + 1 == samples.len();
    let rows = samples
        .iter()
        .enumerate()
        .filter(|(at, _)| at.is_multiple_of(step) || is_last(*at))
        .map(|(_, sample)| {
            let shown = recorder.channels().iter().zip(sample.values);
            let mut row = vec![format::clock_with_seconds(sample.tick)];
            row.extend(shown.map(|(channel, value)| show(channel, value)));
            row
        })
        .collect();
    RecorderView {
        pens,
        rows,
        moments: moments(first, last),
        seconds: (last - first) / TICKS_PER_S,
    }
}

/// Times of day at the start, after each quarter, at the end.
fn moments(first: Tick, last: Tick) -> Vec<String> {
    (0..=4)
        .map(|quarter| format::clock_with_seconds(first + (last - first) * quarter / 4))
        .collect()
}

fn pen_view(
    job: &Job,
    channel: &Channel,
    points: impl Iterator<Item = (f64, Option<f64>)> + Clone,
) -> PenView {
    let values = points.clone().filter_map(|(_, value)| value);
    let (low, high) = values.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), v| {
        (low.min(v), high.max(v))
    });
    let (low, high) = if low <= high { (low, high) } else { (0.0, 0.0) };
    // A lane never magnifies less than a hundredth of its value into noise.
    let room = (high - low)
        .max(0.01 * high.abs().max(low.abs()))
        .max(1e-12);
    let mut path = String::new();
    let mut is_down = false;
    for (along, value) in points.clone() {
        let Some(value) = value else {
            is_down = false;
            continue;
        };
        let (x, y) = (along * LANE.0, LANE.1 * (1.0 - (value - low) / room));
        let pen = if is_down { 'L' } else { 'M' };
        path.push_str(&format!("{pen}{x:.1} {y:.1} "));
        is_down = true;
    }
    PenView {
        name: channel_name(job, channel),
        path,
        low: show(channel, Some(low)),
        high: show(channel, Some(high)),
        now: show(channel, points.last().and_then(|(_, value)| value)),
    }
}

fn show(channel: &Channel, value: Option<f64>) -> String {
    match (channel, value) {
        (_, None) => "–".to_owned(),
        (Channel::Meter { mode, .. }, value) => decimals(display::digits(*mode, value).1),
        (Channel::Gauge { gauge, .. }, Some(value)) => shown::reading(&gauge.shown(value).1),
    }
}

fn channel_name(job: &Job, channel: &Channel) -> String {
    let workshop = &job.scenario().workshop;
    match channel {
        Channel::Meter { mode, red, black } => {
            words::placed(*mode, Some(red), black.as_deref(), workshop)
        }
        Channel::Gauge { gauge, place } => {
            say!(
                "{instrument}, {place}",
                instrument = said(gauge.about().name),
                place = name_of(workshop, place),
            )
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_time_along_a_strip_is_told_from_its_start_to_its_end() {
        // The bell rings at a quarter past ten.
        let told = moments(10, 410);
        assert_eq!(
            told,
            ["10:15:01", "10:15:11", "10:15:21", "10:15:31", "10:15:41"].map(str::to_owned)
        );
        assert_eq!(moments(10, 10), vec!["10:15:01".to_owned(); 5]);
    }
}

//! What the data sheet says of a good machine, beside a reading of the same kind.

use crate::app::format;
use crate::app::view::PaperLine;
use crate::app::view::shown;
use crate::bench::action::MeterMode;
use crate::bench::display;
use crate::bench::gauge::Gauge;
use crate::bench::kept;
use crate::bench::workshop::DataSheetLine;
use crate::bench::workshop::Workshop;
use crate::language::decimals;
use crate::language::worded;
use crate::say;

/// The range of a good machine between these points, such as `19.0 to 23.0 Ω, unplugged`. Lines
/// that hold for the machine's present state come first; every other condition is said.
pub fn range(
    workshop: &Workshop,
    mode: MeterMode,
    red: Option<&str>,
    black: Option<&str>,
    state: &str,
) -> Option<String> {
    let mut fitting: Vec<&DataSheetLine> = workshop
        .data_sheet
        .iter()
        .filter(|line| line.mode == key(mode) && same_points(line, mode, red, black))
        .collect();
    // The sort is stable: the sheet's own order stays within each group.
    fitting.sort_by_key(|line| line.state != state);
    let line = fitting.first()?;
    let mut told = vec![between(mode, line.low, line.high)];
    if !line.state.is_empty() {
        told.push(state_words(&line.state));
    }
    for id in &line.apart {
        let name = workshop
            .connector(id)
            .map_or(id.as_str(), |c| c.name.as_str());
        told.push(say!("{connector} apart", connector = worded(name)));
    }
    Some(told.join(", "))
}

/// The range of a good machine for an instrument that needs no circuit, at a place.
pub fn gauge_range(workshop: &Workshop, gauge: Gauge, place: &str, state: &str) -> Option<String> {
    let quantity = gauge.about().quantity.id();
    let mut fitting: Vec<&DataSheetLine> = workshop
        .data_sheet
        .iter()
        .filter(|line| line.mode == quantity && line.red == place)
        .collect();
    fitting.sort_by_key(|line| line.state != state);
    let line = fitting.first()?;
    let low = shown::reading(&gauge.shown(line.low).1);
    let (over, high) = gauge.shown(line.high);
    let number = low.split(' ').next().unwrap_or(&low);
    let told = match over {
        Some(_) => say!(
            "{low} to {high}",
            low = number,
            high = shown::reading(&high)
        ),
        None => say!("{low} or more", low),
    };
    Some(format!("{told}, {}", state_words(&line.state)))
}

/// The whole sheet, a line a value.
pub fn lines(workshop: &Workshop) -> Vec<PaperLine> {
    workshop
        .data_sheet
        .iter()
        .filter_map(|line| told(workshop, line))
        .collect()
}

/// A line of the sheet in words: range, what the machine does meanwhile, where the leads go.
pub fn told(workshop: &Workshop, line: &DataSheetLine) -> Option<PaperLine> {
    let mode = MeterMode::ALL.iter().find(|mode| key(**mode) == line.mode);
    let gauge = Gauge::ALL
        .iter()
        .find(|gauge| gauge.about().quantity.id() == line.mode);
    let range = match (mode, gauge) {
        (Some(mode), _) => range(
            workshop,
            *mode,
            Some(&line.red),
            Some(&line.black),
            &line.state,
        ),
        (_, Some(gauge)) => gauge_range(workshop, *gauge, &line.red, &line.state),
        _ => None,
    }?;
    let points: Vec<String> = [&line.red, &line.black]
        .into_iter()
        .filter_map(|node| workshop.test_point(node))
        .map(|point| worded(&point.name).into_owned())
        .collect();
    let place = match points.as_slice() {
        [] => String::new(),
        [red, black] => say!("{red} to {black}", red, black),
        others => others.join(", "),
    };
    Some(PaperLine {
        what: format::sentence(&worded(&line.what)),
        text: if place.is_empty() {
            range
        } else {
            format!("{range} ({place})")
        },
    })
}

fn same_points(
    line: &DataSheetLine,
    mode: MeterMode,
    red: Option<&str>,
    black: Option<&str>,
) -> bool {
    let is = (
        red.unwrap_or(""),
        if mode.is_clamp() {
            ""
        } else {
            black.unwrap_or("")
        },
    );
    let (a, b) = (line.red.as_str(), line.black.as_str());
    is == (a, b) || (mode != MeterMode::DcVolts && is == (b, a))
}

/// What the machine is doing, for the names that machine files give their states.
pub fn state_words(state: &str) -> String {
    let words = match state {
        "unplugged_on" => say!("unplugged, its switch or knob on"),
        "standby" => say!("switched on, waiting"),
        "agitA" => say!("washing, spin direction"),
        "agitB" => say!("washing, other direction"),
        "lid_opened_at_full_spin" => say!("lid opened at full spin"),
        "normal_program" => say!("in a normal program"),
        other => return kept::doing(other),
    };
    words.to_owned()
}

/// Two values with their unit said once where it is the same.
fn between(mode: MeterMode, low: f64, high: f64) -> String {
    let low_text = decimals(display::digits(mode, Some(low)).1);
    let (over, high_text) = display::digits(mode, Some(high));
    if over.is_none() {
        return say!("{low} or more", low = low_text);
    }
    let high = decimals(high_text);
    let low = match (low_text.split_once(' '), high.split_once(' ')) {
        (Some((number, unit)), Some((_, other))) if unit == other => number,
        _ => &low_text,
    };
    say!("{low} to {high}", low, high)
}

/// The mode's name in files.
fn key(mode: MeterMode) -> &'static str {
    match mode {
        MeterMode::AcVolts => "ac_volts",
        MeterMode::LowAcVolts => "low_ac_volts",
        MeterMode::DcVolts => "dc_volts",
        MeterMode::Ohms => "ohms",
        MeterMode::Continuity => "continuity",
        MeterMode::Capacitance => "capacitance",
        MeterMode::Frequency => "frequency",
        MeterMode::Diode => "diode",
        MeterMode::Amps => "amps",
        MeterMode::Clamp => "clamp",
        MeterMode::Insulation => "insulation",
        MeterMode::EarthBond => "earth_bond",
        MeterMode::Leakage => "leakage",
        MeterMode::TouchCurrent => "touch_current",
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn line(state: &str, low: f64, high: f64) -> DataSheetLine {
        DataSheetLine {
            mode: "ohms".into(),
            red: "MA".into(),
            black: "MC".into(),
            state: state.into(),
            apart: Vec::new(),
            low,
            high,
            what: "main winding".into(),
        }
    }

    #[test]
    fn the_line_for_the_present_state_is_the_one_shown() {
        let workshop = Workshop {
            data_sheet: vec![line("filling", 1.0, 2.0), line("unplugged", 19.0, 23.0)],
            ..Workshop::default()
        };
        let said = |red, black| {
            range(
                &workshop,
                MeterMode::Ohms,
                Some(red),
                Some(black),
                "unplugged",
            )
        };
        assert_eq!(
            said("MA", "MC").as_deref(),
            Some("19.0 to 23.0 Ω, unplugged")
        );
        assert_eq!(said("MC", "MA"), said("MA", "MC"));
        assert_eq!(said("MA", "PE"), None);
    }

    #[test]
    fn the_modes_have_the_names_that_files_give_them() {
        for mode in MeterMode::ALL {
            let written = serde_json::to_string(&mode).unwrap_or_default();
            assert_eq!(written, format!("\"{}\"", key(mode)));
        }
    }
}

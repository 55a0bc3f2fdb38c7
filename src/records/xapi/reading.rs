//! Readings as statements: what is a number is a number, in the SI unit, beside what the instrument
//! showed.
//!
//! Off the scale there is no number: then there is no response, and only what was shown. Which number
//! a good machine would give is not said: it hangs on what was done before.

use serde_json::json;

use crate::bench::notebook::Note;
use crate::bench::notebook::NoteEntry;
use crate::bench::words;
use crate::bench::workshop::Workshop;
use crate::language::in_english;
use crate::records::xapi::ADL_TYPES;
use crate::records::xapi::ADL_VERBS;
use crate::records::xapi::Deployment;
use crate::records::xapi::Event;
use crate::records::xapi::activity;
use crate::records::xapi::extension;
use crate::records::xapi::segment;

/// A reading before it is a statement.
struct Read {
    instrument: String,
    /// What it was put to, red and black, or one place.
    at: Vec<(&'static str, String)>,
    name: String,
    quantity: &'static str,
    unit: &'static str,
    value: Option<f64>,
    shown: String,
    warning: Option<String>,
}

/// The statement of a line of the notebook that holds a reading; none for any other.
pub(super) fn reading(
    note: &Note,
    job: &str,
    workshop: &Workshop,
    place: &Deployment,
) -> Option<Event> {
    let read = read(note, workshop)?;
    let points: Vec<String> = read.at.iter().map(|(_, point)| segment(point)).collect();
    // Volts and ohms between the same two points are two things to ask for.
    let iri = format!(
        "{job}/reading/{}/{}",
        segment(&read.instrument),
        points.join("-")
    );
    let mut object = activity(
        iri.trim_end_matches('/'),
        ADL_TYPES,
        "cmi.interaction",
        Some((place.language.as_str(), &read.name)),
    );
    object["definition"]["interactionType"] = json!("numeric");
    let mut told = json!({
        "instrument": read.instrument,
        "quantity": read.quantity,
        "shown": read.shown,
        "line": note.number,
    });
    for (key, point) in read.at {
        told[key] = json!(point);
    }
    if let Some(warning) = read.warning {
        told["warning"] = json!(warning);
    }
    let mut result = json!({});
    if let Some(value) = read.value.and_then(plain) {
        told["value"] = json!(value);
        told["unit"] = json!(read.unit);
        result["response"] = json!(value.to_string());
    }
    result["extensions"] = json!({(extension("reading")): told});
    Some(Event {
        verb: (ADL_VERBS, "interacted"),
        tick: note.tick,
        object,
        result: Some(result),
        extensions: Vec::new(),
    })
}

fn read(note: &Note, workshop: &Workshop) -> Option<Read> {
    match &note.entry {
        NoteEntry::Reading(reading) => {
            let points = [("from", &reading.red), ("to", &reading.black)];
            let at = points
                .into_iter()
                .filter_map(|(key, point)| Some((key, point.clone()?)));
            let unit = words::si_unit(reading.mode);
            let (red, black) = (reading.red.as_deref(), reading.black.as_deref());
            Some(Read {
                instrument: name_of(&reading.mode),
                at: at.collect(),
                name: in_english(|| words::placed(reading.mode, red, black, workshop)),
                quantity: quantity(unit),
                unit,
                value: reading.value,
                shown: reading.display.clone(),
                warning: reading.warning.clone(),
            })
        }
        NoteEntry::Gauge(reading) => {
            let about = reading.gauge.about();
            let place = workshop.place(&reading.place);
            let place_name = place.map_or(reading.place.as_str(), |place| &place.name);
            Some(Read {
                instrument: about.id.to_owned(),
                at: vec![("place", reading.place.clone())],
                name: format!("{}, {place_name}", about.name),
                quantity: about.quantity.id(),
                unit: about.quantity.unit(),
                value: reading.value_si,
                shown: reading.display.clone(),
                warning: None,
            })
        }
        _ => None,
    }
}

/// A name as it stands in logs.
fn name_of(mode: &crate::bench::action::MeterMode) -> String {
    let written = serde_json::to_value(mode).unwrap_or_default();
    written.as_str().unwrap_or("meter").to_owned()
}

fn quantity(unit: &str) -> &'static str {
    match unit {
        "V" => "voltage",
        "A" => "current",
        "ohm" => "resistance",
        "F" => "capacitance",
        _ => "frequency",
    }
}

/// A number without the noise of its last digits: no instrument here resolves ten.
fn plain(value: f64) -> Option<f64> {
    let plain: f64 = format!("{value:.9e}").parse().ok()?;
    plain.is_finite().then_some(plain)
}

#[cfg(test)]
mod tests {
    use serde_json::Value;

    use super::*;
    use crate::bench::action::MeterMode;
    use crate::bench::gauge::Gauge;
    use crate::bench::gauge::GaugeReading;
    use crate::bench::notebook::Reading;
    use crate::scenario;

    fn told(entry: NoteEntry) -> Value {
        let jobs = scenario::jobs().expect("ship");
        let job = jobs.iter().find(|job| job.id == "no_water").expect("ships");
        let place = Deployment {
            base: "https://s.example/".to_owned(),
            home_page: "https://s.example".to_owned(),
            language: "en".to_owned(),
        };
        let note = Note {
            number: 7,
            tick: 950,
            state: "unplugged".to_owned(),
            entry,
        };
        let event = reading(&note, "https://s.example/job/j", &job.workshop, &place);
        let event = event.expect("a reading");
        json!({"object": event.object, "result": event.result})
    }

    fn meter(mode: MeterMode, value: Option<f64>, display: &str) -> NoteEntry {
        NoteEntry::Reading(Reading {
            mode,
            red: Some("l_in".to_owned()),
            black: Some("n_in".to_owned()),
            value,
            display: display.to_owned(),
            warning: None,
        })
    }

    #[test]
    fn a_reading_is_a_number_in_response_and_extension() {
        let told = told(meter(MeterMode::AcVolts, Some(230.1 + 0.3), "230.4 V"));
        let own = &told["result"]["extensions"][extension("reading")];
        assert_eq!(told["result"]["response"], "230.4");
        assert_eq!(own["value"], json!(230.4));
        assert_eq!(
            [&own["unit"], &own["quantity"], &own["from"], &own["to"]],
            ["V", "voltage", "l_in", "n_in"]
        );
        assert_eq!(own["shown"], "230.4 V");
        assert_eq!(told["object"]["definition"]["interactionType"], "numeric");
        assert!(
            told["object"]["id"]
                .as_str()
                .is_some_and(|id| id.ends_with("/reading/ac_volts/l_in-n_in"))
        );
    }

    #[test]
    fn small_values_are_written_out_and_what_is_off_the_scale_is_no_number() {
        let small = told(meter(MeterMode::Capacitance, Some(1.21e-5), "12.1 µF"));
        assert_eq!(small["result"]["response"], "0.0000121");
        for none in [None, Some(f64::NAN)] {
            let over = told(meter(MeterMode::Ohms, none, "OL"));
            let own = &over["result"]["extensions"][extension("reading")];
            assert_eq!(own["shown"], "OL");
            assert!(own.get("value").is_none() && own.get("unit").is_none());
            assert!(over["result"].get("response").is_none());
            assert!(!over.to_string().contains("null"), "{over}");
        }
    }

    #[test]
    fn instruments_that_need_no_circuit_are_read_too() {
        let (value_si, display) = Gauge::PressureGauge.shown(301_400.0);
        let told = told(NoteEntry::Gauge(GaugeReading {
            gauge: Gauge::PressureGauge,
            place: "supply_hose".to_owned(),
            value_si,
            display,
        }));
        let own = &told["result"]["extensions"][extension("reading")];
        assert_eq!(own["value"], json!(300_000.0));
        assert_eq!(
            [&own["unit"], &own["quantity"], &own["place"]],
            ["Pa", "pressure", "supply_hose"]
        );
        assert_eq!(told["result"]["response"], "300000");
    }
}

//! A next step in plain words.

use crate::bench::action::Action;
use crate::bench::action::MeterMode;
use crate::bench::action::Sense;
use crate::bench::scenario::Scenario;
use crate::bench::words;
use crate::expert::plan::Next;
use crate::expert::plan::Remedy;
use crate::language::worded;
use crate::say;

/// Such as `look at the belt` or `seat the clutch lever in its link`.
pub fn next_words(next: &Next, scenario: &Scenario) -> String {
    match next {
        Next::Try(name) => trial(name, scenario),
        Next::Do(Remedy::Work(id)) => {
            let work = scenario.workshop.work(id);
            work.map_or(id.clone(), |w| worded(&w.name).into_owned())
        }
        Next::Do(Remedy::HandOver) => say!("hand over").to_owned(),
        Next::Do(Remedy::LookFurther) => say!("look further").to_owned(),
        Next::Do(Remedy::Help) => say!("call for help").to_owned(),
    }
}

fn trial(name: &str, scenario: &Scenario) -> String {
    let workshop = &scenario.workshop;
    let words: Vec<&str> = name.split(' ').collect();
    let place = |id: &str| {
        let place = workshop.place(id);
        place.map_or(id.to_owned(), |p| worded(&p.name).into_owned())
    };
    match words.as_slice() {
        ["run", "spin"] => say!("let it drain and spin, and watch").to_owned(),
        ["run", "wash"] => say!("let it fill and wash, and watch").to_owned(),
        ["run", ..] => say!("let it wash, drain and spin, and watch").to_owned(),
        ["look", id] => words::act(
            &Action::Sense {
                sense: Sense::Look,
                place: (*id).to_owned(),
            },
            workshop,
        ),
        ["turn", id] => say!("move it by hand: {place}", place = place(id)),
        [mode, red, rest @ ..] => {
            let Ok(mode) = serde_json::from_value::<MeterMode>((*mode).into()) else {
                return name.to_owned();
            };
            let black = rest.first().filter(|b| !b.is_empty());
            words::act(
                &Action::Meter {
                    mode,
                    red: Some((*red).to_owned()),
                    black: black.map(|b| (*b).to_owned()),
                },
                workshop,
            )
        }
        _ => name.to_owned(),
    }
}

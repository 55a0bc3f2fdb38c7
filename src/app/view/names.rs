//! Plain names for everything on the machine and around it.

use crate::app::view::Thing;
use crate::bench::workshop::Part;
use crate::bench::workshop::Place;
use crate::bench::workshop::Step;
use crate::bench::workshop::Work;
use crate::bench::workshop::Workshop;
use crate::drawing::plain_name;
use crate::language::worded;
use crate::say;

/// Names that pictures use for what machine files call otherwise.
const ALSO_CALLED: [(&str, &str); 11] = [
    ("wash_motor", "motor"),
    ("gearbox", "mechanism"),
    ("gearbox_pulley", "mechanism_pulley"),
    ("out_of_balance_switch", "balance_switch"),
    ("outer_tub", "tub"),
    ("suspension_rods", "rods"),
    ("display_panel", "display"),
    ("timer_knob", "display"),
    ("clutch", "clutch_set"),
    ("feet", "floor"),
    ("clutch_motor", "drain_motor"),
];

/// The id the machine's file knows for an id from a picture.
pub fn resolve<'a>(workshop: &Workshop, id: &'a str) -> &'a str {
    let known =
        workshop.part(id).is_some() || workshop.place(id).is_some() || workshop.step(id).is_some();
    let other = ALSO_CALLED.iter().find(|(drawn, _)| *drawn == id);
    match other {
        Some((_, filed)) if !known => filed,
        _ => id,
    }
}

/// The name a person reads for an id.
pub fn name_of(workshop: &Workshop, id: &str) -> String {
    let id = resolve(workshop, id);
    workshop
        .part(id)
        .map(|p| &p.name)
        .or_else(|| workshop.place(id).map(|p| &p.name))
        .or_else(|| workshop.connector(id).map(|c| &c.name))
        .or_else(|| workshop.step(id).map(|s| &s.name))
        .or_else(|| workshop.test_point(id).map(|t| &t.name))
        .map(|name| worded(name).into_owned())
        .unwrap_or_else(|| around(id).map_or_else(|| plain_name(id), str::to_owned))
}

/// Things around the machine that no machine's file lists.
fn around(id: &str) -> Option<&'static str> {
    Some(match id {
        "on_off" => say!("on/off key"),
        "start_pause" => say!("start and pause key"),
        "program" => say!("program key"),
        "water_level" => say!("water level key"),
        "service" => say!("service key"),
        "level_knob" => say!("water level knob"),
        "cold_valve" => say!("cold valve"),
        "hot_valve" => say!("hot valve"),
        "timer_motor" => say!("timer motor"),
        "plug" => say!("mains plug"),
        "socket" => say!("wall socket"),
        "outside" => say!("the machine from outside"),
        "opened" => say!("the machine opened"),
        "section" => say!("the machine in section"),
        "water" => say!("the way of the water"),
        "wiring" => say!("the wiring diagram"),
        _ => return None,
    })
}

/// The place a thing is looked at: the place of this name, or where the part of this name is.
pub fn place_of<'a>(workshop: &'a Workshop, id: &str) -> Option<&'a Place> {
    workshop
        .place(id)
        .or_else(|| workshop.places.iter().find(|place| place.part == id))
}

/// The part in hand, if it is one.
pub fn part_of<'a>(workshop: &'a Workshop, thing: &Thing) -> Option<&'a Part> {
    let id = resolve(workshop, thing.id());
    workshop.part(id).or_else(|| {
        workshop
            .place(id)
            .and_then(|place| workshop.part(&place.part))
    })
}

/// The step of the way in that takes a thing off, by its name or the usual endings of step names.
pub fn step_of<'a>(workshop: &'a Workshop, id: &str) -> Option<&'a Step> {
    const ENDINGS: [&str; 6] = ["", "_off", "_up", "_open", "_out", "_unhook"];
    ENDINGS
        .iter()
        .find_map(|ending| workshop.step(&format!("{id}{ending}")))
}

/// Works on the part at a place. At one place of a part that is everywhere, such as the harness,
/// those that name the place.
pub(super) fn works_at<'a>(workshop: &'a Workshop, id: &str) -> Vec<&'a Work> {
    let part = workshop
        .place(id)
        .map_or(id, |p| if p.part.is_empty() { id } else { &p.part });
    let all: Vec<&Work> = workshop
        .works
        .iter()
        .filter(|w| w.part == part || w.part == id)
        .collect();
    let named: Vec<&Work> = all.iter().copied().filter(|w| w.id.contains(id)).collect();
    if part != id && part == "harness" && !named.is_empty() {
        named
    } else {
        all
    }
}

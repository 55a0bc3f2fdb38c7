//! Checks of a machine's `workshop` section: every reference leads somewhere, no step stands in
//! its own way, numbers are possible.

use std::collections::BTreeMap;

use crate::bench::gauge_scales::Quantity;
use crate::scenario::effect_file::EffectFile;
use crate::scenario::effect_file::HarmFile;
use crate::scenario::effect_file::MistakeFile;
use crate::scenario::names::Names;
use crate::scenario::problem::Problems;
use crate::scenario::problem::quoted;
use crate::scenario::workshop_file::PartFile;
use crate::scenario::workshop_file::StepFile;
use crate::scenario::workshop_file::WorkKindFile;
use crate::scenario::workshop_file::WorkshopFile;

/// Instrument functions a data sheet line may name; the first fourteen take leads or jaws.
pub const SHEET_MODES: [&str; 22] = [
    "ac_volts",
    "low_ac_volts",
    "dc_volts",
    "ohms",
    "continuity",
    "capacitance",
    "frequency",
    "diode",
    "amps",
    "clamp",
    "insulation",
    "earth_bond",
    "leakage",
    "touch_current",
    "flow",
    "time",
    "pressure",
    "speed",
    "slope",
    "length",
    "force",
    "temperature",
];

/// What the other sections of a machine file define.
#[derive(Debug)]
pub struct Surroundings {
    /// Nodes of the wiring a probe can reach.
    pub nodes: Names,
    /// Elements of the wiring.
    pub elements: Names,
    /// Plant and control parameters, dotted.
    pub params: Names,
    /// States in which a reading is defined.
    pub states: Names,
}

/// Names the workshop defines itself.
struct Own {
    steps: Names,
    parts: Names,
    connectors: Names,
    places: Names,
    modes: Names,
}

/// Checks a workshop against itself and its surroundings.
pub fn check_workshop(file: &WorkshopFile, around: &Surroundings, problems: &mut Problems) {
    let own = define(file, problems);
    check_steps(file, around, &own, problems);
    check_parts(file, around, problems);
    check_works(file, around, &own, problems);
    check_points(file, around, &own, problems);
    check_data_sheet(file, around, &own, problems);
}

fn define(file: &WorkshopFile, problems: &mut Problems) -> Own {
    Names::define(
        "work",
        "workshop.works",
        file.works.iter().map(|w| w.id.as_str()),
        problems,
    );
    let points = file.test_points.iter().map(|t| t.node.as_str());
    Names::define("test point", "workshop.test_points", points, problems);
    let designations = file.parts.iter().map(|p| p.designation.as_str());
    Names::define("designation", "workshop.parts", designations, problems);
    let ids = |list: Vec<&'_ str>| list.into_iter().map(str::to_owned).collect::<Vec<_>>();
    let steps = ids(file.steps.iter().map(|s| s.id.as_str()).collect());
    let parts = ids(file.parts.iter().map(|p| p.id.as_str()).collect());
    let connectors = ids(file.connectors.iter().map(|c| c.id.as_str()).collect());
    let places = ids(file.places.iter().map(|p| p.id.as_str()).collect());
    let mut names = |kind, list, ids: &[String]| {
        Names::define(kind, list, ids.iter().map(String::as_str), problems)
    };
    Own {
        steps: names("step", "workshop.steps", &steps),
        parts: names("part", "workshop.parts", &parts),
        connectors: names("connector", "workshop.connectors", &connectors),
        places: names("place", "workshop.places", &places),
        modes: Names::known("meter mode", SHEET_MODES),
    }
}

fn check_steps(file: &WorkshopFile, around: &Surroundings, own: &Own, problems: &mut Problems) {
    for (index, step) in file.steps.iter().enumerate() {
        let at = format!("workshop.steps[{index}]");
        problems.not_blank(&format!("{at}.name"), &step.name);
        own.steps
            .expect_all(&format!("{at}.needs"), &step.needs, problems);
        problems.in_range(&format!("{at}.off_min"), step.off_min, 0.0, 240.0);
        problems.in_range(&format!("{at}.on_min"), step.on_min, 0.0, 240.0);
        check_effects(
            &format!("{at}.while_off"),
            &step.while_off,
            around,
            problems,
        );
        check_mistakes(&at, &step.mistakes, around, problems);
        check_harms(&at, &step.harms, around, own, problems);
        if !step.mistakes.is_empty() && step.refit_check.is_empty() {
            let remedy = "a step that can go back wrong needs a check that finds it";
            problems.add(&format!("{at}.refit_check"), "\"\"", remedy);
        }
    }
    if let Some(id) = in_its_own_way(&file.steps) {
        problems.add(
            "workshop.steps",
            quoted(id),
            "this step needs itself to be off first",
        );
    }
}

/// The first step that can never come off because it waits for itself.
fn in_its_own_way(steps: &[StepFile]) -> Option<&str> {
    let needs: BTreeMap<&str, &[String]> = steps
        .iter()
        .map(|s| (s.id.as_str(), s.needs.as_slice()))
        .collect();
    let mut off: Vec<&str> = Vec::new();
    loop {
        let next = steps.iter().find(|step| {
            !off.contains(&step.id.as_str())
                && step.needs.iter().all(|need| {
                    // A need that is no step is reported elsewhere.
                    off.contains(&need.as_str()) || !needs.contains_key(need.as_str())
                })
        });
        match next {
            Some(step) => off.push(&step.id),
            None => break,
        }
    }
    steps
        .iter()
        .map(|s| s.id.as_str())
        .find(|id| !off.contains(id))
}

fn check_effects(
    path: &str,
    effects: &[EffectFile],
    around: &Surroundings,
    problems: &mut Problems,
) {
    for (index, effect) in effects.iter().enumerate() {
        let at = format!("{path}[{index}]");
        match effect {
            EffectFile::Open(element) => {
                around
                    .elements
                    .expect(&format!("{at}.open"), element, problems);
            }
            EffectFile::Value { element, value } => {
                let at = format!("{at}.value");
                around
                    .elements
                    .expect(&format!("{at}.element"), element, problems);
                problems.in_range(&format!("{at}.value"), *value, 0.0, 1.0e12);
            }
            EffectFile::Param { name, .. } => {
                around
                    .params
                    .expect(&format!("{at}.param.name"), name, problems);
            }
        }
    }
}

fn check_harms(
    at: &str,
    harms: &[HarmFile],
    around: &Surroundings,
    own: &Own,
    problems: &mut Problems,
) {
    for (index, harm) in harms.iter().enumerate() {
        let at = format!("{at}.harms[{index}]");
        problems.not_blank(&format!("{at}.what"), &harm.what);
        own.steps
            .expect_all(&format!("{at}.on"), &harm.on, problems);
        if harm.on.is_empty() && !harm.dead && !harm.dry {
            let remedy = "name the steps that must be in place, or set \"dead\" or \"dry\"";
            problems.add(&format!("{at}.on"), "[]", remedy);
        }
        check_effects(&format!("{at}.effects"), &harm.effects, around, problems);
    }
}

fn check_mistakes(
    at: &str,
    mistakes: &[MistakeFile],
    around: &Surroundings,
    problems: &mut Problems,
) {
    for (index, mistake) in mistakes.iter().enumerate() {
        let at = format!("{at}.mistakes[{index}]");
        problems.not_blank(&format!("{at}.what"), &mistake.what);
        problems.in_range(&format!("{at}.chance"), mistake.chance, 0.0, 1.0);
        check_effects(&format!("{at}.effects"), &mistake.effects, around, problems);
    }
}

fn check_parts(file: &WorkshopFile, around: &Surroundings, problems: &mut Problems) {
    for (index, part) in file.parts.iter().enumerate() {
        let at = format!("workshop.parts[{index}]");
        problems.not_blank(&format!("{at}.name"), &part.name);
        problems.in_range(&format!("{at}.price"), part.price, 0.0, 100_000.0);
        around
            .elements
            .expect_all(&format!("{at}.elements"), &part.elements, problems);
        around
            .params
            .expect_all(&format!("{at}.params"), &part.params, problems);
        let is_replaced = file
            .works
            .iter()
            .any(|work| work.part == part.id && work.kind == WorkKindFile::Replace);
        check_variants(&at, part, problems);
        if !is_replaced {
            problems.add(
                &at,
                quoted(&part.id),
                "no work of kind \"replace\" fits this part",
            );
        }
    }
}

/// Another make changes only what comes with the part.
fn check_variants(at: &str, part: &PartFile, problems: &mut Problems) {
    let elements = Names::known(
        "element of this part",
        part.elements.iter().map(String::as_str),
    );
    let params = Names::known(
        "parameter of this part",
        part.params.iter().map(String::as_str),
    );
    let ids = part.variants.iter().map(|v| v.id.as_str());
    Names::define("variant", &format!("{at}.variants"), ids, problems);
    for (element, most_a) in &part.burns_above_a {
        let at = format!("{at}.burns_above_a.{element}");
        elements.expect(&at, element, problems);
        problems.in_range(&at, *most_a, 0.001, 1000.0);
    }
    for (index, variant) in part.variants.iter().enumerate() {
        let at = format!("{at}.variants[{index}]");
        problems.not_blank(&format!("{at}.name"), &variant.name);
        problems.in_range(&format!("{at}.price"), variant.price, 0.0, 100_000.0);
        if variant.id.contains(':') {
            problems.add(
                &format!("{at}.id"),
                quoted(&variant.id),
                "must not hold a colon",
            );
        }
        for (name, value) in &variant.values {
            let at = format!("{at}.values.{name}");
            elements.expect(&at, name, problems);
            problems.in_range(&at, *value, 0.0, 1.0e12);
        }
        for name in variant.params.keys() {
            params.expect(&format!("{at}.params.{name}"), name, problems);
        }
    }
}

fn check_works(file: &WorkshopFile, around: &Surroundings, own: &Own, problems: &mut Problems) {
    for (index, work) in file.works.iter().enumerate() {
        let at = format!("workshop.works[{index}]");
        problems.not_blank(&format!("{at}.name"), &work.name);
        if !work.part.is_empty() {
            own.parts
                .expect(&format!("{at}.part"), &work.part, problems);
        } else if work.kind == WorkKindFile::Replace {
            problems.add(
                &format!("{at}.part"),
                "",
                "a replacement names the part it fits",
            );
        }
        own.steps
            .expect_all(&format!("{at}.needs"), &work.needs, problems);
        problems.in_range(&format!("{at}.work_min"), work.work_min, 0.0, 480.0);
        problems.in_range(
            &format!("{at}.material_price"),
            work.material_price,
            0.0,
            100_000.0,
        );
        around
            .elements
            .expect_all(&format!("{at}.elements"), &work.elements, problems);
        around
            .params
            .expect_all(&format!("{at}.params"), &work.params, problems);
        check_mistakes(&at, &work.mistakes, around, problems);
        if let Some(sealant) = &work.sealant {
            let at = format!("{at}.sealant");
            problems.in_range(&format!("{at}.sets_min"), sealant.sets_min, 0.0, 240.0);
            check_effects(&format!("{at}.effects"), &sealant.effects, around, problems);
        }
    }
}

fn check_points(file: &WorkshopFile, around: &Surroundings, own: &Own, problems: &mut Problems) {
    for (index, connector) in file.connectors.iter().enumerate() {
        let at = format!("workshop.connectors[{index}]");
        check_harms(&at, &connector.harms, around, own, problems);
        around
            .elements
            .expect_all(&format!("{at}.elements"), &connector.elements, problems);
        own.steps
            .expect_all(&format!("{at}.needs"), &connector.needs, problems);
        own.places
            .expect(&format!("{at}.place"), &connector.place, problems);
    }
    for (index, point) in file.test_points.iter().enumerate() {
        let at = format!("workshop.test_points[{index}]");
        around
            .nodes
            .expect(&format!("{at}.node"), &point.node, problems);
        own.steps
            .expect_all(&format!("{at}.needs"), &point.needs, problems);
        own.places
            .expect(&format!("{at}.place"), &point.place, problems);
    }
    for (index, place) in file.places.iter().enumerate() {
        let at = format!("workshop.places[{index}]");
        own.steps
            .expect_all(&format!("{at}.needs"), &place.needs, problems);
        if !place.part.is_empty() {
            own.parts
                .expect(&format!("{at}.part"), &place.part, problems);
        }
    }
}

fn check_data_sheet(
    file: &WorkshopFile,
    around: &Surroundings,
    own: &Own,
    problems: &mut Problems,
) {
    for (index, line) in file.data_sheet.iter().enumerate() {
        let at = format!("workshop.data_sheet[{index}]");
        own.modes
            .expect(&format!("{at}.mode"), &line.mode, problems);
        around
            .states
            .expect(&format!("{at}.state"), &line.state, problems);
        own.connectors
            .expect_all(&format!("{at}.apart"), &line.apart, problems);
        match line.mode.as_str() {
            "clamp" | "leakage" => {
                around
                    .elements
                    .expect(&format!("{at}.red"), &line.red, problems);
            }
            mode if Quantity::ALL.iter().any(|q| q.id() == mode) => {
                own.places.expect(&format!("{at}.red"), &line.red, problems);
            }
            _ => {
                around
                    .nodes
                    .expect(&format!("{at}.red"), &line.red, problems);
                around
                    .nodes
                    .expect(&format!("{at}.black"), &line.black, problems);
            }
        }
        problems.in_range(&format!("{at}.low"), line.low, 0.0, 1.0e12);
        if let Some(high) = line.high {
            problems.in_range(&format!("{at}.high"), high, line.low, 1.0e12);
        }
    }
}

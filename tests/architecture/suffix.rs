//! Physical fields say their unit: the last word of every f64 field's name is a known one.

use crate::source::Source;
use crate::source::is_word;

/// Modules whose f64 fields are physical.
const PHYSICAL: [&str; 4] = ["plant", "control", "bench", "machine"];

/// SI units as they end a name (`torque_n_m`, `flow_m3_per_s`), then the few quantities that have none.
const UNITS: [&str; 36] = [
    "v", "a", "c", "ohm", "siemens", "h", "henry", "f", "farad", "w", "j", "k", "pa", "s", "s2",
    "hz", "n", "kg", "m", "m2", "m3", "m5", "rad", "a2", "v2", "kg2", "db", "ratio", "share",
    "price", "weight", "factor", "count", "coulomb", "sign", "si",
];

/// A field that says the unit of all numbers beside it: the unit itself, a meter's mode, a parameter's full name.
const SAYS_UNIT: [&str; 4] = ["unit", "mode", "field", "key"];

/// Structs that count money, in the one unit of the job's price list.
const MONEY: [&str; 3] = ["Ledger", "Rates", "Reference"];

/// Every f64 field or parameter without a unit, as `file:line: rule`.
pub fn findings(source: &Source) -> Vec<String> {
    if !source
        .module()
        .is_some_and(|module| PHYSICAL.contains(&module))
    {
        return Vec::new();
    }
    let mut found = Vec::new();
    let mut open: Option<Struct> = None;
    for line in source.lines.iter().filter(|line| !line.in_test) {
        let code = line.code.trim();
        if let Some(name) = parameter(code).filter(|name| !has_unit(name)) {
            found.push(nameless(source, line.number, name));
        }
        if let Some(this) = &mut open {
            if let Some((name, kind)) = field(code) {
                this.has_unit |= SAYS_UNIT.contains(&name);
                if holds_f64(kind) {
                    this.numbers.push((line.number, name.to_owned()));
                }
            }
            if code.starts_with('}') {
                found.extend(this.nameless(source));
                open = None;
            }
        } else if code.contains("struct ") && code.ends_with('{') {
            let name = code
                .split("struct ")
                .nth(1)
                .unwrap_or_default()
                .trim_end_matches([' ', '{']);
            open = Some(Struct {
                has_unit: MONEY.contains(&name),
                ..Struct::default()
            });
        }
    }
    found
}

#[derive(Default)]
struct Struct {
    numbers: Vec<(usize, String)>,
    /// A field of [`SAYS_UNIT`] stands beside the numbers.
    has_unit: bool,
}

impl Struct {
    fn nameless(&self, source: &Source) -> Vec<String> {
        self.numbers
            .iter()
            .filter(|(_, name)| !self.has_unit && !has_unit(name))
            .map(|(line, name)| nameless(source, *line, name))
            .collect()
    }
}

fn nameless(source: &Source, line: usize, name: &str) -> String {
    format!(
        "src/{}:{line}: number '{name}' does not end in a unit (see UNITS in tests/architecture/suffix.rs)",
        source.path
    )
}

/// Name of the parameter a line of `component_params!` states: `name = typical, lowest => highest, "words";`.
fn parameter(code: &str) -> Option<&str> {
    let (name, rest) = code.split_once(" = ")?;
    (name.chars().all(is_word) && rest.contains("=>") && rest.ends_with(';')).then_some(name)
}

fn has_unit(name: &str) -> bool {
    name.rsplit('_')
        .next()
        .is_some_and(|last| UNITS.contains(&last))
}

/// Name and type of the field a line declares.
fn field(code: &str) -> Option<(&str, &str)> {
    let code = code
        .strip_prefix("pub(crate) ")
        .or_else(|| code.strip_prefix("pub(super) "))
        .or_else(|| code.strip_prefix("pub "))
        .unwrap_or(code);
    let (name, kind) = code.split_once(": ")?;
    name.chars()
        .all(is_word)
        .then_some((name, kind.trim_end_matches(',')))
}

/// A number, perhaps one that may be missing, or a row of them.
fn holds_f64(kind: &str) -> bool {
    matches!(kind, "f64" | "Option<f64>" | "Vec<f64>") || kind.starts_with("[f64;")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_number_without_a_unit_is_found() {
        let text = "pub struct Valve {\n    pub opening: f64,\n    pub flow_m3_per_s: f64,\n    pub levels: [f64; 3],\n    pub open: bool,\n}\n";
        let found = findings(&Source::new("plant/valve.rs", text));
        assert_eq!(found.len(), 2, "{found:?}");
        assert!(found[0].starts_with("src/plant/valve.rs:2: number 'opening'"));
        assert!(findings(&Source::new("expert/a.rs", text)).is_empty());
    }

    #[test]
    fn a_parameter_without_a_unit_is_found() {
        let text = "component_params! {\n    InletParams {\n        supply_pa = 3.0, 0.0 => 9.0, \"the pressure\";\n        opening = 0.1, 0.0 => 1.0, \"the opening\";\n    }\n}\n";
        assert_eq!(findings(&Source::new("plant/inlet.rs", text)).len(), 1);
    }

    #[test]
    fn a_unit_beside_the_value_is_enough() {
        assert!(
            findings(&Source::new(
                "bench/reading.rs",
                "pub struct Reading {\n    pub value: f64,\n    pub unit: Unit,\n}\n"
            ))
            .is_empty()
        );
    }
}

//! As much of JSON Schema (draft 2020-12) as the published schemas use, to hold files against
//! them without a further dependency: references, types, properties, items, enumerations and
//! alternatives. A keyword it does not know is a problem, so that nothing passes unread.

use serde_json::Value;

/// Keywords that say nothing about validity.
const REMARKS: [&str; 6] = [
    "$schema",
    "$defs",
    "title",
    "description",
    "default",
    "format",
];

/// A schema ready to hold values against.
pub struct Validator<'s> {
    root: &'s Value,
}

impl<'s> Validator<'s> {
    /// A validator for this schema.
    pub fn new(root: &'s Value) -> Self {
        Self { root }
    }

    /// All that is wrong with the value.
    pub fn problems(&self, value: &Value) -> Vec<String> {
        let mut problems = Vec::new();
        self.check(self.root, value, "", &mut problems);
        problems
    }

    fn is_good(&self, schema: &Value, value: &Value) -> bool {
        let mut problems = Vec::new();
        self.check(schema, value, "", &mut problems);
        problems.is_empty()
    }

    fn check(&self, schema: &Value, value: &Value, at: &str, problems: &mut Vec<String>) {
        let Value::Object(keywords) = schema else {
            if schema == &Value::Bool(false) {
                problems.push(format!("{at}: nothing is allowed here"));
            }
            return;
        };
        for (keyword, rule) in keywords {
            match keyword.as_str() {
                "$ref" => self.check(self.referred(rule), value, at, problems),
                "type" => check_type(rule, value, at, problems),
                "properties" => self.check_properties(rule, value, at, problems),
                "required" => check_required(rule, value, at, problems),
                "additionalProperties" => self.check_others(schema, rule, value, at, problems),
                "items" => {
                    for (index, item) in list(value).iter().enumerate() {
                        self.check(rule, item, &format!("{at}[{index}]"), problems);
                    }
                }
                "minItems" if (list(value).len() as u64) < number(rule) => {
                    problems.push(format!("{at}: too few"));
                }
                "maxItems" if value.is_array() && list(value).len() as u64 > number(rule) => {
                    problems.push(format!("{at}: too many"));
                }
                "enum" if !list(rule).contains(value) => {
                    problems.push(format!("{at}: {value} is not one of {rule}"));
                }
                "const" if rule != value => problems.push(format!("{at}: {value} is not {rule}")),
                "oneOf" | "anyOf" => {
                    let fits = list(rule)
                        .iter()
                        .filter(|one| self.is_good(one, value))
                        .count();
                    if fits == 0 || keyword == "oneOf" && fits > 1 {
                        problems.push(format!("{at}: {fits} of the alternatives fit"));
                    }
                }
                "minimum" if value.is_number() && value.as_f64() < rule.as_f64() => {
                    problems.push(format!("{at}: below {rule}"));
                }
                "maximum" if value.is_number() && value.as_f64() > rule.as_f64() => {
                    problems.push(format!("{at}: above {rule}"));
                }
                "minItems" | "maxItems" | "enum" | "const" | "minimum" | "maximum" => {}
                other if REMARKS.contains(&other) => {}
                other => problems.push(format!("{at}: unknown keyword {other}")),
            }
        }
    }

    fn referred(&self, reference: &Value) -> &'s Value {
        let path = reference
            .as_str()
            .and_then(|r| r.strip_prefix('#'))
            .expect("a local reference");
        self.root
            .pointer(path)
            .expect("the reference leads somewhere")
    }

    fn check_properties(&self, rule: &Value, value: &Value, at: &str, problems: &mut Vec<String>) {
        for (name, schema) in rule.as_object().into_iter().flatten() {
            if let Some(field) = value.get(name) {
                self.check(schema, field, &format!("{at}.{name}"), problems);
            }
        }
    }

    fn check_others(
        &self,
        schema: &Value,
        rule: &Value,
        value: &Value,
        at: &str,
        problems: &mut Vec<String>,
    ) {
        for (name, field) in value.as_object().into_iter().flatten() {
            if schema["properties"].get(name).is_none() {
                self.check(rule, field, &format!("{at}.{name}"), problems);
            }
        }
    }
}

fn list(value: &Value) -> &[Value] {
    value.as_array().map_or(&[], Vec::as_slice)
}

fn number(value: &Value) -> u64 {
    value.as_u64().unwrap_or(0)
}

fn check_type(rule: &Value, value: &Value, at: &str, problems: &mut Vec<String>) {
    let is = |name: &str| match name {
        "object" => value.is_object(),
        "array" => value.is_array(),
        "string" => value.is_string(),
        "boolean" => value.is_boolean(),
        "null" => value.is_null(),
        "integer" => value.is_i64() || value.is_u64(),
        "number" => value.is_number(),
        _ => false,
    };
    let fits = match rule {
        Value::String(name) => is(name),
        names => list(names).iter().filter_map(Value::as_str).any(is),
    };
    if !fits {
        problems.push(format!("{at}: {value} is no {rule}"));
    }
}

fn check_required(rule: &Value, value: &Value, at: &str, problems: &mut Vec<String>) {
    for name in list(rule).iter().filter_map(Value::as_str) {
        if value.is_object() && value.get(name).is_none() {
            problems.push(format!("{at}: {name} is missing"));
        }
    }
}

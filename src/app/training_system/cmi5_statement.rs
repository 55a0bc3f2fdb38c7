//! Statements of a cmi5 unit (AICC, cmi5 specification, "Quartz"): the five it defines, and those it
//! allows between the first and the last.

use serde_json::Value;
use serde_json::json;

use crate::assess::decide::Decided;
use crate::assess::decide::Decision;

const VERBS: &str = "http://adlnet.gov/expapi/verbs/";
const CATEGORY: &str = "https://w3id.org/xapi/cmi5/context/categories/";
const MASTERY: &str = "https://w3id.org/xapi/cmi5/context/extensions/masteryscore";

/// What the unit was launched with.
#[derive(Clone, Debug, PartialEq)]
pub struct Launch {
    /// Who learns.
    pub actor: Value,
    /// The attempt.
    pub registration: String,
    /// The unit.
    pub activity: String,
    /// What every statement's context begins with.
    pub template: Value,
    /// `Normal`, `Browse` or `Review`.
    pub mode: String,
    /// Share of marks that passes.
    pub mastery: Option<f64>,
}

/// A defined statement: its verb, result, id and moment.
pub fn defined(launch: &Launch, verb: &str, result: Option<Value>, id: &str, at: &str) -> Value {
    let judges = matches!(verb, "passed" | "failed");
    let mut context = launch.context();
    let mut categories = listed(&context["contextActivities"]["category"]);
    categories.push(json!({"id": format!("{CATEGORY}cmi5")}));
    if judges || verb == "completed" {
        categories.push(json!({"id": format!("{CATEGORY}moveon")}));
    }
    context["contextActivities"]["category"] = Value::Array(categories);
    if let (true, Some(mastery)) = (judges, launch.mastery) {
        context["extensions"][MASTERY] = json!(mastery);
    }
    let mut statement = json!({
        "id": id,
        "actor": launch.actor,
        "verb": {"id": format!("{VERBS}{verb}"), "display": {"en": verb}},
        "object": {"objectType": "Activity", "id": launch.activity},
        "context": context,
        "timestamp": at,
    });
    if let Some(result) = result {
        statement["result"] = result;
    }
    statement
}

/// What judges the attempt: verb and result; none on the border, where more jobs decide. A score
/// goes along only where it says the same as the verb.
pub fn judged(launch: &Launch, decided: &Decided, duration: &str) -> Option<(&'static str, Value)> {
    let passed = match decided.decision {
        Decision::Passed => true,
        Decision::NotYet => false,
        Decision::Border => return None,
    };
    let scaled = (decided.marks / 100.0).clamp(0.0, 1.0);
    let mut result = json!({"success": passed, "duration": duration});
    if launch
        .mastery
        .is_none_or(|mastery| (scaled >= mastery) == passed)
    {
        let raw = (100.0 * scaled).round() as u64;
        result["score"] = json!({"scaled": scaled, "raw": raw, "min": 0, "max": 100});
    }
    Some((if passed { "passed" } else { "failed" }, result))
}

/// One of our own statements, put into the unit's frame.
pub fn allowed(launch: &Launch, mut statement: Value) -> Value {
    let mut context = launch.context();
    let own = statement["context"].take();
    for kind in ["category", "grouping", "parent", "other"] {
        let mut list = listed(&context["contextActivities"][kind]);
        list.extend(listed(&own["contextActivities"][kind]));
        if !list.is_empty() {
            context["contextActivities"][kind] = Value::Array(list);
        }
    }
    // What the template says stands.
    for (key, value) in own["extensions"].as_object().into_iter().flatten() {
        if context["extensions"].get(key).is_none() {
            context["extensions"][key] = value.clone();
        }
    }
    for key in ["platform", "language"] {
        if context.get(key).is_none() && !own[key].is_null() {
            context[key] = own[key].clone();
        }
    }
    statement["context"] = context;
    statement["actor"] = launch.actor.clone();
    statement
}

/// Activities of a context: a list, or one alone, as older stores write them.
fn listed(activities: &Value) -> Vec<Value> {
    match activities {
        Value::Array(list) => list.clone(),
        Value::Object(_) => vec![activities.clone()],
        _ => Vec::new(),
    }
}

impl Launch {
    fn context(&self) -> Value {
        let mut context = if self.template.is_object() {
            self.template.clone()
        } else {
            json!({})
        };
        for key in ["contextActivities", "extensions"] {
            if !context[key].is_object() {
                context[key] = json!({});
            }
        }
        context["registration"] = json!(self.registration);
        context
    }

    /// Nothing but the first and the last statement is said.
    pub fn only_looks(&self) -> bool {
        self.mode != "Normal"
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn launch() -> Launch {
        Launch {
            actor: json!({"account": {"homePage": "https://school.example", "name": "c-1"}}),
            registration: "0f8fad5b-d9cb-469f-a165-70867728950e".to_owned(),
            activity: "https://school.example/au/1".to_owned(),
            template: json!({"contextActivities": {"grouping": [{"id": "https://school.example/course"}]}, "extensions": {"https://w3id.org/xapi/cmi5/context/extensions/sessionid": "s-1"}}),
            mode: "Normal".to_owned(),
            mastery: Some(0.65),
        }
    }

    fn decided(decision: Decision, marks: f64) -> Decided {
        Decided {
            decision,
            marks,
            cut: 65.0,
            cut_se: 0.0,
            reasons: Vec::new(),
        }
    }

    #[test]
    fn a_score_never_contradicts_the_verb() {
        let (verb, result) =
            judged(&launch(), &decided(Decision::NotYet, 90.0), "PT1S").expect("judged");
        assert_eq!((verb, result.get("score")), ("failed", None));
        let (verb, result) =
            judged(&launch(), &decided(Decision::Passed, 90.0), "PT1S").expect("judged");
        assert_eq!((verb, &result["score"]["scaled"]), ("passed", &json!(0.9)));
        assert_eq!(result["score"]["raw"], json!(90));
        assert_eq!(
            judged(&launch(), &decided(Decision::Border, 66.0), "PT1S"),
            None
        );
    }

    #[test]
    fn the_template_stands_in_every_statement_and_is_added_to() {
        let told = defined(&launch(), "passed", None, "id", "2031-03-04T09:00:00.000Z");
        let context = &told["context"];
        assert_eq!(
            context["contextActivities"]["grouping"][0]["id"],
            "https://school.example/course"
        );
        assert_eq!(
            context["contextActivities"]["category"]
                .as_array()
                .map(Vec::len),
            Some(2)
        );
        assert_eq!(context["extensions"][MASTERY], json!(0.65));
        let own = json!({"id": "x", "actor": {}, "verb": {}, "object": {}, "context": {"registration": "other", "extensions": {"https://a.example/x": 1}, "contextActivities": {"category": [{"id": "https://a.example/p"}]}}});
        let told = allowed(&launch(), own);
        assert_eq!(told["context"]["registration"], launch().registration);
        assert_eq!(
            told["context"]["extensions"]
                .as_object()
                .map(serde_json::Map::len),
            Some(2)
        );
        assert_eq!(told["actor"], launch().actor);
    }

    #[test]
    fn what_the_template_says_is_never_written_over() {
        let key = "https://a.example/x";
        let launch = Launch {
            template: json!({"platform": "the school", "contextActivities": {"category": {"id": "https://school.example/kind"}}, "extensions": {key: "theirs"}}),
            ..launch()
        };
        let own = json!({"context": {"platform": "Tubwright", "language": "en", "extensions": {key: "ours"}, "contextActivities": {"category": [{"id": "https://a.example/p"}]}}});
        let context = &allowed(&launch, own)["context"];
        assert_eq!(context["platform"], "the school");
        assert_eq!(context["language"], "en");
        assert_eq!(context["extensions"][key], "theirs");
        // One activity alone stands for a list of one.
        let ids = |context: &Value| -> Vec<String> {
            let all = context["contextActivities"]["category"].as_array();
            all.into_iter()
                .flatten()
                .map(|one| one["id"].as_str().unwrap_or_default().to_owned())
                .collect()
        };
        assert_eq!(
            ids(context),
            ["https://school.example/kind", "https://a.example/p"]
        );
        let told = defined(
            &launch,
            "initialized",
            None,
            "id",
            "2031-03-04T09:00:00.000Z",
        );
        assert_eq!(ids(&told["context"]).len(), 2);
        assert!(!told.to_string().contains("null"), "{told}");
    }
}

//! Statements of a cmi5 unit (AICC, cmi5 specification, "Quartz"): the five it defines, and those it
//! allows between the first and the last.

use serde_json::Value;
use serde_json::json;

use crate::assess::assessment_file::AssessmentFile;
use crate::assess::assessment_file::CutFile;
use crate::assess::date;
use crate::assess::decide;
use crate::assess::decide::Decided;
use crate::assess::decide::Decision;
use crate::assess::decide::Taken;
use crate::records::record::Record;
use crate::records::xapi;

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

/// The decision by the mark that the system asks, where it asks one: whoever keeps the system may have
/// changed it, and passed and failed are said by it. The minima beside it are the assessment's.
pub fn by_mastery(launch: &Launch, file: &AssessmentFile, records: &[Record]) -> Option<Decided> {
    // As a number of hundredths: 0.55 is 55.
    let marks = (10_000.0 * launch.mastery?).round() / 100.0;
    let mut rules = file.pass.clone();
    rules.cut = CutFile::Fixed(marks);
    let taken: Vec<Taken> = records
        .iter()
        .map(|record| Taken::from(&record.body.counted()))
        .collect();
    Some(decide::decide(&rules, &taken, file.n_jobs()))
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
        let raw = xapi::whole_marks(decided.marks);
        result["score"] = json!({"scaled": scaled, "raw": raw, "min": 0, "max": 100});
    }
    Some((if passed { "passed" } else { "failed" }, result))
}

/// One of our own statements, put into the unit's frame. Order goes by the moments (9.3), so its own one,
/// of a job begun in an earlier session, is moved to within this one: `span`, ms since 1970.
pub fn allowed(launch: &Launch, mut statement: Value, span: [i64; 2]) -> Value {
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
    let own = statement["timestamp"].as_str().and_then(date::moment_ms);
    let [from, to] = span;
    let at = own.unwrap_or(from).max(from).min(to.max(from));
    statement["timestamp"] = json!(date::moment(at));
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
    /// Who learns in which attempt of which unit, and the launch data.
    pub fn of(actor: Value, registration: &str, activity: &str, data: &Value) -> Self {
        Self {
            actor,
            registration: registration.to_owned(),
            activity: activity.to_owned(),
            template: data["contextTemplate"].clone(),
            mode: data["launchMode"].as_str().unwrap_or("Normal").to_owned(),
            mastery: data["masteryScore"].as_f64(),
        }
    }

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
    fn our_own_statements_lie_within_the_session_whenever_the_work_was_done() {
        let at = |own: &str| {
            let told = allowed(&launch(), json!({"timestamp": own}), [60_000, 120_000]);
            told["timestamp"].as_str().map(str::to_owned)
        };
        for (own, told) in [
            ("1970-01-01T00:00:30.000Z", "1970-01-01T00:01:00.000Z"),
            ("1970-01-01T00:01:30.000Z", "1970-01-01T00:01:30.000Z"),
            ("1970-01-01T01:00:00.000Z", "1970-01-01T00:02:00.000Z"),
            ("", "1970-01-01T00:01:00.000Z"),
        ] {
            assert_eq!(at(own).as_deref(), Some(told), "{own}");
        }
    }

    #[test]
    fn passed_and_failed_go_by_the_mark_that_the_system_asks() {
        let text = include_str!("../../../scenarios/assessments/first_visits.json");
        let file: AssessmentFile = serde_json::from_str(text).expect("ships");
        let asks = |mastery| Launch {
            mastery,
            ..launch()
        };
        assert_eq!(by_mastery(&asks(None), &file, &[]), None);
        let own = by_mastery(&asks(Some(0.55)), &file, &[]).expect("decided");
        assert!((own.cut - 55.0).abs() < 1e-9 && own.decision == Decision::NotYet);
        // A mark of nothing is passed by nothing done, unless the assessment has minima.
        let mut easy = file;
        (easy.pass.border, easy.pass.fixed_share) = (0.0, 0.0);
        easy.pass.parts.clear();
        let own = by_mastery(&asks(Some(0.0)), &easy, &[]).expect("decided");
        assert_eq!(own.decision, Decision::Passed);
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
        let told = allowed(&launch(), own, [0, 1]);
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
        let context = &allowed(&launch, own, [0, 1])["context"];
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

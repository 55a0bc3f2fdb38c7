//! The skills that jobs practise by now, offered to whoever types some.

use std::collections::BTreeSet;

use yew::prelude::*;

use crate::language::worded;
use crate::scenario;

/// Id of the list that a field offers.
pub const KNOWN: &str = "known-skills";

/// Skills of the jobs that ship.
pub fn known() -> BTreeSet<&'static str> {
    let jobs = scenario::job_files().unwrap_or_default();
    let skills = jobs.iter().flat_map(|job| &job.file.skills);
    skills.map(String::as_str).collect()
}

/// The list, each skill behind those that are typed: a browser only offers what fills a whole field.
pub fn offered(typed: &str) -> Html {
    let before = typed.rsplit_once(',');
    let before = before.map_or_else(String::new, |(before, _)| format!("{before}, "));
    let option = |skill: &str| {
        html! { <option value={format!("{before}{skill}")}>{ worded(skill).into_owned() }</option> }
    };
    html! { <datalist id={KNOWN}>{ for known().into_iter().map(option) }</datalist> }
}

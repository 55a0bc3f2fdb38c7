//! Causes as a list to choose from, grouped by part. Every cause the machine can have is in it,
//! in the order of the alphabet, which says nothing about this job.

use yew::prelude::*;

use crate::app::view::CauseView;

/// The options of a `select`, grouped by part.
pub fn cause_groups(causes: &[CauseView]) -> Html {
    let mut groups: Vec<(&str, Vec<&CauseView>)> = Vec::new();
    for cause in causes {
        match groups.iter_mut().find(|(part, _)| *part == cause.part) {
            Some((_, list)) => list.push(cause),
            None => groups.push((&cause.part, vec![cause])),
        }
    }
    groups.sort_by_key(|(part, _)| sorted_as(part));
    groups
        .into_iter()
        .map(|(part, list)| group(part, &list))
        .collect()
}

/// Articles that begin a name, in the languages of the page that have them.
const ARTICLES: [&str; 8] = ["the ", "a ", "an ", "el ", "la ", "los ", "las ", "un "];

/// A name as it stands in an alphabet: without its article.
fn sorted_as(name: &str) -> String {
    let name = name.to_lowercase();
    let bare = ARTICLES
        .iter()
        .find_map(|article| name.strip_prefix(article));
    bare.map(str::to_owned).unwrap_or(name)
}

fn group(part: &str, causes: &[&CauseView]) -> Html {
    let mut causes = causes.to_vec();
    causes.sort_by_key(|cause| sorted_as(&cause.what));
    html! {
        <optgroup label={part.to_owned()}>
            { for causes.iter().map(|cause| html! {
                <option value={cause.id.clone()}>{ &cause.what }</option>
            }) }
        </optgroup>
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_name_is_sorted_by_what_it_names() {
        let mut names = ["the tap is shut", "A belt slips", "air in the hose"];
        names.sort_by_key(|name| sorted_as(name));
        assert_eq!(
            names,
            ["air in the hose", "A belt slips", "the tap is shut"]
        );
    }
}

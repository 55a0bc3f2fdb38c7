//! Skills as a table with a bar each: the chance that it is known, and how sure that is.

use yew::prelude::*;

use crate::app::format;
use crate::language::worded;
use crate::records::measurement::tracing::MASTERED;
use crate::records::practice::Standing;
use crate::say;

/// What the table shows.
#[derive(Properties, PartialEq)]
pub struct SkillsProps {
    /// Standings, as they are to be shown.
    pub standings: Vec<Standing>,
}

/// The table.
#[component]
pub fn Skills(props: &SkillsProps) -> Html {
    html! {
        <div class="table__wrap" tabindex="0" role="region" aria-label={say!("Skills, a table")}>
            <table class="table me__skills">
                <thead><tr>
                    <th scope="col">{ say!("Skill") }</th>
                    <th scope="col">{ say!("How well you know it") }</th>
                    <th scope="col" class="numbers">{ say!("Went right") }</th>
                    <th scope="col" class="numbers">{ say!("Show it again by") }</th>
                </tr></thead>
                <tbody>{ for props.standings.iter().map(row) }</tbody>
            </table>
        </div>
    }
}

fn row(standing: &Standing) -> Html {
    html! {
        <tr key={standing.skill.clone()}>
            <th scope="row">{ worded(&standing.skill).into_owned() }</th>
            <td>
                { bar(standing) }
                <span class="me__known">{ in_words(standing) }</span>
            </td>
            <td class="numbers">{ say!("{n} of {of}", n = standing.n_right, of = standing.n_shown) }</td>
            <td class="numbers">{ format::date(standing.due.day) }</td>
        </tr>
    }
}

/// The same in words: a number alone would promise more than it holds.
pub fn in_words(standing: &Standing) -> String {
    let word = if standing.is_known() {
        say!("known" as "of a skill")
    } else if standing.known >= 0.7 {
        say!("nearly there" as "of a skill")
    } else if standing.known >= 0.4 {
        say!("on the way" as "of a skill")
    } else {
        say!("not yet" as "of a skill")
    };
    let percent = |share: f64| format!("{:.0}", share * 100.0);
    say!(
        "{word}: chance {known} %, between {lowest} and {highest}",
        word,
        known = percent(standing.known),
        lowest = percent(standing.lowest),
        highest = percent(standing.highest)
    )
}

/// A bar from 0 to 1, the band of how sure it is, and the mark from which a skill counts as known.
fn bar(standing: &Standing) -> Html {
    let x = |share: f64| format!("{:.1}", share.clamp(0.0, 1.0) * 100.0);
    html! {
        <svg class="me__bar" viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true">
            <rect class="me__bar-all" x="0" y="3" width="100" height="4" />
            <rect class="me__bar-known" x="0" y="3" width={x(standing.known)} height="4" />
            <rect class="me__bar-band" x={x(standing.lowest)} y="1"
                width={x((standing.highest - standing.lowest).max(0.005))} height="8" />
            <rect class="me__bar-mark" x={x(MASTERED)} y="0" width="0.6" height="10" />
        </svg>
    }
}

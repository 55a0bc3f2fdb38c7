//! Pauses of the whole room in a person's sitting, as their records tell them, for whoever reviews.

use yew::prelude::*;

use crate::app::cohort::rows::Row;
use crate::assess::assessment_file::AssessmentFile;
use crate::assess::date;
use crate::records::room_pause::Pause;
use crate::say;

/// The pauses of a person's records, each once; nothing where there were none.
pub fn pauses(rows: &[Row], files: &[AssessmentFile]) -> Html {
    let all = each_once(rows);
    if all.is_empty() {
        return Html::default();
    }
    let line = |(assessment, pause): &(&str, &Pause)| {
        let file = files.iter().find(|file| file.id == *assessment);
        html! {
            <tr key={pause.from.clone()}><th scope="row" class="numbers">{ minute(&pause.from) }</th><td class="numbers">{ pause.to.as_deref().map_or_else(|| say!("not ended").to_owned(), minute) }</td><td class="numbers">{ lasted(pause) }</td><td>{ code_words(pause, file) }</td></tr>
        }
    };
    html! {
        <section class="stack" aria-labelledby="pauses"><h3 id="pauses">{ say!("Pauses of the whole room") }</h3>
            <div class="table__wrap" tabindex="0" role="region" aria-label={say!("Pauses, a table")}>
                <table class="table"><thead><tr><th scope="col">{ say!("From, by their clock") }</th><th scope="col">{ say!("To" as "until when") }</th><th scope="col" class="numbers">{ say!("Minutes") }</th><th scope="col">{ say!("Codes") }</th></tr></thead>
                <tbody>{ for all.iter().map(line) }</tbody></table>
            </div>
            <p>{ say!("This time did not count. Compare it with the pauses you called: a pause that only one person had was not the room’s.") }</p>
        </section>
    }
}

/// Every record of a sitting tells the same pauses.
fn each_once(rows: &[Row]) -> Vec<(&str, &Pause)> {
    let mut all: Vec<(&str, &Pause)> = Vec::new();
    for row in rows {
        for pause in &row.is.pauses {
            let one = (row.is.assessment.as_str(), pause);
            if !all.contains(&one) {
                all.push(one);
            }
        }
    }
    all.sort_by(|a, b| a.1.from.cmp(&b.1.from));
    all
}

/// Such as `2031-03-04 09:20`.
fn minute(moment: &str) -> String {
    moment.get(..16).unwrap_or("–").replace('T', " ")
}

fn lasted(pause: &Pause) -> String {
    let to = pause.to.as_deref().and_then(date::moment_ms);
    match (date::moment_ms(&pause.from), to) {
        (Some(from), Some(to)) => format!("{:.0}", (to - from) as f64 / 60_000.0),
        _ => "–".to_owned(),
    }
}

/// Whether its codes are the assessment's, where its file is known.
fn code_words(pause: &Pause, file: Option<&AssessmentFile>) -> &'static str {
    let Some(file) = file else {
        return say!("not looked at: the assessment’s file is not here");
    };
    match &file.room_pause {
        Some(anchor) if pause.is_of(anchor) => say!("the assessment’s"),
        _ => say!("none of the assessment’s"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::records::room_pause;
    use crate::records::seal::AssessmentKey;

    #[test]
    fn a_pause_is_told_with_its_length_and_an_invented_one_as_such() {
        let key = AssessmentKey::new([9; 32]);
        let text = include_str!("../../../scenarios/assessments/first_visits.json");
        let mut file: AssessmentFile = serde_json::from_str(text).expect("ships");
        file.room_pause = Some(room_pause::anchor(&key));
        let codes = room_pause::codes(&key);
        let pause = Pause {
            from: "2031-03-04T09:20:00.000Z".to_owned(),
            to: Some("2031-03-04T09:35:10.000Z".to_owned()),
            stop: codes[0].clone(),
            go: Some(codes[1].clone()),
        };
        assert_eq!(
            (minute(&pause.from).as_str(), lasted(&pause).as_str()),
            ("2031-03-04 09:20", "15")
        );
        assert_eq!(code_words(&pause, Some(&file)), "the assessment’s");
        assert!(code_words(&pause, None).starts_with("not looked at"));
        let invented = Pause {
            stop: "ABCD-EFGH".to_owned(),
            to: None,
            ..pause
        };
        assert!(code_words(&invented, Some(&file)).starts_with("none"));
        assert_eq!(lasted(&invented), "–");
    }
}

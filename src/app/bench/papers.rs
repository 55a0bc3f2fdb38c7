//! The papers at hand on the bench: data sheet, access guide, and the way into the handbook.

use yew::prelude::*;

use crate::app::route::Route;
use crate::app::shared::Shared;
use crate::app::view::PaperLine;
use crate::app::view::PapersView;
use crate::say;

/// What the papers show.
#[derive(Properties, PartialEq)]
pub struct PapersProps {
    /// Name of the scenario.
    pub id: AttrValue,
    /// The papers.
    pub papers: Shared<PapersView>,
}

/// The papers.
#[component]
pub fn Papers(props: &PapersProps) -> Html {
    let papers = &props.papers;
    let faults = Route::Faults {
        machine: Some(papers.machine.clone()),
        fault: None,
    };
    let chapter = |id: &str| Route::Handbook(Some(id.to_owned())).href();
    let parts = format!("parts_{}", papers.machine.to_lowercase());
    html! {
        <section class="papers" aria-label={say!("Papers")}>
            <p>{ say!("The wiring diagram is the picture “wiring”. In a tab of their own:") }{ " " }
                <a href={faults.href()} target="_blank">{ say!("faults of this machine") }</a>{ ", " }
                <a href={chapter(&parts)} target="_blank">{ say!("its parts") }</a>{ ", " }
                <a href={chapter("measure")} target="_blank">{ say!("measuring") }</a>{ ", " }
                <a href={chapter("safe")} target="_blank">{ say!("making safe") }</a>{ ", " }
                <a href={chapter("job")} target="_blank">{ say!("the handbook") }</a></p>
            <p><a class="button button--small" href={Route::Sheets(props.id.to_string()).href()}>{ say!("Print job card and pictures") }</a></p>
            <details open=true>
                <summary>{ say!("Data sheet: what a good one reads") }</summary>
                { lines(&papers.sheet) }
            </details>
            <details>
                <summary>{ say!("Access guide: what is off before what") }</summary>
                { lines(&papers.access) }
            </details>
        </section>
    }
}

fn lines(lines: &[PaperLine]) -> Html {
    html! {
        <dl class="papers__lines">
            { for lines.iter().map(|line| html! { <><dt>{ &line.what }</dt><dd class="numbers">{ &line.text }</dd></> }) }
        </dl>
    }
}

#[cfg(all(test, not(target_arch = "wasm32")))]
mod tests {
    use super::*;
    use crate::app::as_text::as_text;
    use crate::app::library;
    use crate::app::view::papers::papers;

    #[test]
    fn data_sheet_and_access_guide_lie_on_the_bench() {
        for (job, winding) in [
            ("no_spin_since_cousin", "winding"),
            ("trips_and_old", "winding"),
            ("weak_in_the_new_place", "winding"),
        ] {
            let scenario = library::find(job).expect("ships");
            let view = papers(&scenario.machine.id, &scenario.workshop);
            assert_eq!(view.access.len(), scenario.workshop.steps.len());
            let n = scenario.workshop.data_sheet.len();
            assert!(
                view.sheet.len() * 10 >= n * 9,
                "{} of {n}",
                view.sheet.len()
            );
            assert!(view.sheet.iter().any(|l| l.what.contains(winding)), "{job}");
        }
        let text = as_text::<Papers>(|| {
            let scenario = library::find("no_spin_since_cousin").expect("ships");
            PapersProps {
                id: "no_spin_since_cousin".into(),
                papers: Shared::new(papers(&scenario.machine.id, &scenario.workshop)),
            }
        });
        for words in [
            "8 screws",
            "Going back:",
            "#/handbook/faults/P",
            "#/handbook/parts_p",
            "#/sheets/no_spin_since_cousin",
            "Data sheet",
        ] {
            assert!(text.contains(words), "{words}: {text}");
        }
    }
}

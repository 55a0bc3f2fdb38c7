//! The handbook: chapters in Markdown, machines drawn and running, parts from the machines' files,
//! worked jobs to step through.

mod live_machine;
mod parts;
mod worked;

use yew::prelude::*;

use crate::app::handbook::live_machine::LiveMachine;
use crate::app::handbook::parts::Parts;
use crate::app::handbook::worked::Worked;
use crate::app::handbook::worked::title_of;
use crate::app::markdown;
use crate::app::route::Route;
use crate::language::said;
use crate::language::worded;
use crate::say;
use crate::text;

/// Name of the faults' chapter in addresses.
pub const FAULTS: &str = "faults";

/// What stands below a chapter's text.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Below {
    Nothing,
    /// The machine, drawn and running.
    Machine(&'static str),
    /// The machine's parts.
    Parts(&'static str),
}

/// A chapter: name in the address, title, text.
struct Chapter {
    id: &'static str,
    title: &'static str,
    text: &'static str,
    below: Below,
}

macro_rules! chapter {
    ($id:literal, $title:expr, $below:expr) => {
        Chapter {
            id: $id,
            title: $title,
            text: include_str!(concat!(env!("OUT_DIR"), "/", $id, ".txt")),
            below: $below,
        }
    };
}

const fn parts(id: &'static str, title: &'static str, machine: &'static str) -> Chapter {
    Chapter {
        id,
        title,
        text: "",
        below: Below::Parts(machine),
    }
}

const CHAPTERS: &[Chapter] = &[
    chapter!("job", text!("How a job goes"), Below::Nothing),
    chapter!("safe", text!("Making safe"), Below::Nothing),
    chapter!("measure", text!("Measuring"), Below::Nothing),
    chapter!("diagnose", text!("How to find a fault"), Below::Nothing),
    chapter!("after", text!("After a repair"), Below::Nothing),
    chapter!("marks", text!("How marks are given"), Below::Nothing),
    chapter!(
        "machine_p",
        text!("How machine P works"),
        Below::Machine("P")
    ),
    parts("parts_p", text!("Parts of machine P"), "P"),
    chapter!(
        "machine_t",
        text!("How machine T works"),
        Below::Machine("T")
    ),
    parts("parts_t", text!("Parts of machine T"), "T"),
    chapter!(
        "machine_n",
        text!("How machine N works"),
        Below::Machine("N")
    ),
    parts("parts_n", text!("Parts of machine N"), "N"),
    chapter!("desk", text!("Writing a job"), Below::Nothing),
    chapter!("sharing", text!("Sharing a job"), Below::Nothing),
    chapter!("assess", text!("Assessing"), Below::Nothing),
    chapter!(
        "systems",
        text!("Training systems and stores"),
        Below::Nothing
    ),
    chapter!(
        "results",
        text!("Results and what they prove"),
        Below::Nothing
    ),
    chapter!("sizing", text!("For many people"), Below::Nothing),
    chapter!("limits", text!("What this is and is not"), Below::Nothing),
    chapter!(
        "validation",
        text!("What it was checked against"),
        Below::Nothing
    ),
];

/// Which chapter.
#[derive(Properties, PartialEq)]
pub struct HandbookProps {
    /// Its name; the first one without.
    pub chapter: Option<String>,
}

/// The screen.
#[component]
pub fn HandbookScreen(props: &HandbookProps) -> Html {
    let asked = props.chapter.as_deref().unwrap_or(CHAPTERS[0].id);
    let worked = asked
        .strip_prefix("worked-")
        .filter(|id| title_of(id).is_some());
    let chapter = CHAPTERS
        .iter()
        .find(|c| c.id == asked)
        .unwrap_or(&CHAPTERS[0]);
    let here = worked.map_or(chapter.id, |_| "diagnose");
    html! {
        <main class="page handbook" id="main" tabindex="-1">
            <Contents {here} />
            <article class="handbook__text prose" key={asked.to_owned()}>
                if let Some(id) = worked {
                    <h1>{ say!("Worked job: {title}", title = worded(&title_of(id).unwrap_or_default())) }</h1>
                    <Worked id={id.to_owned()} />
                } else {
                    <h1>{ said(chapter.title) }</h1>
                    { match chapter.below {
                        Below::Machine(machine) => html! { <LiveMachine key={machine} machine={machine} /> },
                        Below::Parts(machine) => html! { <Parts machine={machine} /> },
                        Below::Nothing => Html::default(),
                    } }
                    { markdown::rendered(chapter.text) }
                }
            </article>
        </main>
    }
}

/// Which chapter is shown beside the list of all.
#[derive(Properties, PartialEq)]
pub struct ContentsProps {
    /// Its name.
    pub here: AttrValue,
}

/// The chapters, and the list of faults. Where there is no room beside the text they are folded away.
#[component]
pub fn Contents(props: &ContentsProps) -> Html {
    let is_open = use_state_eq(|| false);
    let turn = {
        let is_open = is_open.clone();
        Callback::from(move |_: MouseEvent| is_open.set(!*is_open))
    };
    let fold = {
        let is_open = is_open.clone();
        Callback::from(move |_: MouseEvent| is_open.set(false))
    };
    let here = &*props.here;
    let list = classes!(
        "handbook__list",
        is_open.then_some("handbook__list--unfolded")
    );
    html! {
        <nav class="handbook__contents" aria-label={say!("Chapters")}>
            <button class="button handbook__fold" type="button" onclick={turn} aria-expanded={is_open.to_string()}>{ say!("Chapters") }</button>
            <div class={list} onclick={fold}>
                { for CHAPTERS.iter().map(|c| html! {
                    <a href={Route::Handbook(Some(c.id.to_owned())).href()}
                       aria-current={(c.id == here).then_some("page")}>{ said(c.title) }</a>
                }) }
                <a href={Route::faults().href()} aria-current={(here == FAULTS).then_some("page")}>{ say!("Faults") }</a>
                <a href={Route::Readings(None).href()}>{ say!("Readings and faults") }</a>
            </div>
        </nav>
    }
}

#[cfg(all(test, not(target_arch = "wasm32")))]
mod tests {
    use super::*;
    use crate::app::as_text::as_text;
    use crate::app::library;
    use crate::scenario;

    #[test]
    fn an_unknown_chapter_shows_the_first_one() {
        let text = as_text::<HandbookScreen>(|| HandbookProps {
            chapter: Some("nowhere".into()),
        });
        assert!(text.contains("<h1>How a job goes</h1>"), "{text}");
    }

    #[test]
    fn every_chapter_says_something_and_every_link_leads_somewhere() {
        for chapter in CHAPTERS {
            let has_parts = matches!(chapter.below, Below::Parts(_));
            assert!(has_parts || chapter.text.len() > 200, "{}", chapter.id);
            for address in chapter
                .text
                .lines()
                .flat_map(|line| line.split("](").skip(1))
                .filter_map(|after| after.split(')').next())
                .filter(|address| address.starts_with("#/"))
            {
                let route = Route::parse(address);
                let known = match &route {
                    Route::Handbook(Some(id)) => {
                        let worked = id.strip_prefix("worked-").and_then(title_of);
                        CHAPTERS.iter().any(|c| c.id == id) || worked.is_some()
                    }
                    Route::Bench(id) => library::find(id).is_some(),
                    Route::Faults {
                        machine: Some(machine),
                        fault: Some(fault),
                    } => scenario::machines()
                        .expect("ship")
                        .get(machine)
                        .is_some_and(|pack| pack.model.fault(fault).is_some()),
                    other => *other != Route::Unknown,
                };
                assert!(known, "{}: {address}", chapter.id);
            }
        }
    }

    #[test]
    fn a_part_says_how_it_is_reached_and_checked() {
        let text = as_text::<HandbookScreen>(|| HandbookProps {
            chapter: Some("parts_p".into()),
        });
        assert!(
            text.contains("Reach it:") && text.contains("On refit:"),
            "{text}"
        );
    }
}

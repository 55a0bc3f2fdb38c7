//! The handbook: how a job goes, making safe, measuring, and the words, in short chapters.

use yew::prelude::*;

use crate::app::route::Route;

/// A chapter: name in the address, title, paragraphs. A paragraph that begins with `- ` is a line
/// of a list.
struct Chapter {
    id: &'static str,
    title: &'static str,
    text: &'static str,
}

const CHAPTERS: [Chapter; 5] = [
    Chapter {
        id: "job",
        title: "How a job goes",
        text: include_str!("handbook/job.txt"),
    },
    Chapter {
        id: "safe",
        title: "Making safe",
        text: include_str!("handbook/safe.txt"),
    },
    Chapter {
        id: "measure",
        title: "Measuring",
        text: include_str!("handbook/measure.txt"),
    },
    Chapter {
        id: "after",
        title: "After a repair",
        text: include_str!("handbook/after.txt"),
    },
    Chapter {
        id: "limits",
        title: "What this is and is not",
        text: include_str!("handbook/limits.txt"),
    },
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
    let chapter = CHAPTERS
        .iter()
        .find(|c| c.id == asked)
        .unwrap_or(&CHAPTERS[0]);
    html! {
        <main class="page handbook" id="main" tabindex="-1">
            <nav class="handbook__contents" aria-label="Chapters">
                { for CHAPTERS.iter().map(|c| html! {
                    <a href={Route::Handbook(Some(c.id.to_owned())).href()}
                       aria-current={(c.id == chapter.id).then_some("page")}>{ c.title }</a>
                }) }
            </nav>
            <article class="handbook__text prose">
                <h1>{ chapter.title }</h1>
                { for chapter.text.split("\n\n").map(paragraph) }
            </article>
        </main>
    }
}

fn paragraph(text: &'static str) -> Html {
    let text = text.trim();
    if text.starts_with("- ") {
        let lines = text.lines().map(|line| line.trim_start_matches("- "));
        return html! { <ul>{ for lines.map(|line| html! { <li>{ line }</li> }) }</ul> };
    }
    html! { <p>{ text }</p> }
}

#[cfg(all(test, not(target_arch = "wasm32")))]
mod tests {
    use super::*;
    use crate::app::as_text::as_text;

    #[test]
    fn an_unknown_chapter_shows_the_first_one() {
        let text = as_text::<HandbookScreen>(|| HandbookProps {
            chapter: Some("nowhere".into()),
        });
        assert!(text.contains("<h1>How a job goes</h1>"), "{text}");
    }

    #[test]
    fn every_chapter_says_something() {
        assert!(CHAPTERS.iter().all(|c| c.text.len() > 200));
    }
}

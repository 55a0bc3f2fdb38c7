//! When the program itself fails, or a part of it cannot be fetched: a calm page instead of a dead one.
//! The log is saved after every act, so work goes on from the last one.
//!
//! After a panic nothing of Yew can be trusted; this writes plain elements.

use std::cell::Cell;

use gloo::events::EventListener;
use wasm_bindgen::JsCast;
use web_sys::Document;
use web_sys::Element;

use crate::say;

/// On a button of the calm page: where it loads the page anew.
const WAY: &str = "data-way";
/// Local key that counts failures since the last act that went well.
const COUNT: &str = "tubwright/stopped";

thread_local! {
    /// The calm page stands: what fails from now on follows from what failed first.
    static IS_SHOWN: Cell<bool> = const { Cell::new(false) };
}

/// Shows the calm page from now on when the program fails.
pub fn watch() {
    // Yew would put its own hook in place of one set without its knowledge.
    yew::set_custom_panic_hook(Box::new(|info| {
        if IS_SHOWN.replace(true) {
            return;
        }
        set_count(count() + 1);
        let place = info
            .location()
            .map(|l| format!("{}:{}", l.file(), l.line()))
            .unwrap_or_default();
        // Without a page there is nobody to tell.
        let _ = show(&Calm {
            title: say!("The program has stopped"),
            said: say!("That is our mistake, not yours. Your job is saved up to your last act."),
            ways: &[(say!("Go on from the last act"), "")],
            report: Some(say!("For a report: {place}", place)),
        });
        let again = EventListener::new(&gloo::utils::document(), "click", |event| {
            let pressed = event.target().and_then(|t| t.dyn_into::<Element>().ok());
            if pressed.is_some_and(|element| element.has_attribute(WAY)) {
                // A page that cannot be loaded again can be closed by the person.
                let _ = gloo::utils::window().location().reload();
            }
        });
        again.forget();
    }));
    // What fetches the rest of the program tells so by an event: it knows no words. It hears what is
    // pressed, too, since that could lead to what is missing.
    let missing = EventListener::new(&gloo::utils::window(), "rest-missing", |_| {
        if IS_SHOWN.replace(true) {
            return;
        }
        let _ = show(&Calm {
            title: say!("A part of the program is missing"),
            said: say!(
                "It could not be fetched: is there a network? Your job is saved up to your last act."
            ),
            ways: &[(say!("Try again"), ""), (say!("To the jobs"), "#/jobs")],
            report: None,
        });
    });
    missing.forget();
}

/// How often the program failed since an act went well.
pub fn count() -> u32 {
    let storage = gloo::utils::window().local_storage().ok().flatten();
    storage
        .and_then(|s| s.get_item(COUNT).ok().flatten())
        .and_then(|n| n.parse().ok())
        .unwrap_or(0)
}

/// An act went well: what failed is behind us.
pub fn all_well() {
    if count() > 0 {
        set_count(0);
    }
}

fn set_count(count: u32) {
    if let Ok(Some(storage)) = gloo::utils::window().local_storage() {
        // Where nothing can be kept, the next start simply does not know.
        let _ = storage.set_item(COUNT, &count.to_string());
    }
}

/// What the calm page says.
struct Calm<'a> {
    title: &'a str,
    said: &'a str,
    /// Buttons that load the page anew, here or at another address.
    ways: &'a [(&'a str, &'static str)],
    report: Option<String>,
}

fn show(calm: &Calm<'_>) -> Option<()> {
    let document = gloo::utils::document();
    let app = document.get_element_by_id("app")?;
    app.set_inner_html("");
    let page = child(&document, &app, "main", "")?;
    page.set_class_name("page page--narrow stack");
    child(&document, &page, "h1", calm.title)?;
    child(&document, &page, "p", calm.said)?;
    let row = child(&document, &page, "p", "")?;
    row.set_class_name("row");
    for (n, (label, way)) in calm.ways.iter().enumerate() {
        let button = child(&document, &row, "button", label)?;
        button.set_class_name(if n == 0 {
            "button button--main"
        } else {
            "button"
        });
        button.set_attribute(WAY, way).ok()?;
    }
    if let Some(report) = &calm.report {
        child(&document, &page, "p", report)?.set_class_name("field__hint");
    }
    Some(())
}

fn child(document: &Document, parent: &Element, tag: &str, text: &str) -> Option<Element> {
    let element = document.create_element(tag).ok()?;
    element.set_text_content(Some(text));
    parent.append_child(&element).ok()?;
    Some(element)
}

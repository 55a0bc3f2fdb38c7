//! When the program itself fails, or a part of it cannot be fetched: a calm page instead of a dead one.
//! The log is saved after every act, so work goes on from the last one.
//!
//! After a panic nothing of Yew can be trusted; this writes plain elements.

use gloo::events::EventListener;
use web_sys::Document;
use web_sys::Element;

use crate::say;

/// Local key that counts failures since the last act that went well.
const COUNT: &str = "tubwright/stopped";

/// Shows the calm page from now on when the program fails.
pub fn watch() {
    // Yew would put its own hook in place of one set without its knowledge.
    yew::set_custom_panic_hook(Box::new(|info| {
        set_count(count() + 1);
        let place = info
            .location()
            .map(|l| format!("{}:{}", l.file(), l.line()))
            .unwrap_or_default();
        let title = say!("The program has stopped");
        let said = say!("That is our mistake, not yours. Your job is saved up to your last act.");
        // Without a page there is nobody to tell.
        let _ = show(title, said, Some(&say!("For a report: {place}", place)));
    }));
    // What fetches the rest of the program tells so by an event: it knows no words.
    let missing = EventListener::new(&gloo::utils::window(), "rest-missing", |_| {
        let title = say!("A part of the program is missing");
        let said = say!(
            "It could not be fetched: is there a network? Your job is saved up to your last act."
        );
        let _ = show(title, said, None);
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

fn show(title: &str, said: &str, report: Option<&str>) -> Option<()> {
    let document = gloo::utils::document();
    let app = document.get_element_by_id("app")?;
    app.set_inner_html("");
    let page = child(&document, &app, "main", "")?;
    page.set_class_name("page page--narrow");
    child(&document, &page, "h1", title)?;
    child(&document, &page, "p", said)?;
    let button = child(&document, &page, "button", say!("Go on from the last act"))?;
    button.set_class_name("button button--main");
    let again = EventListener::new(&button, "click", |_| {
        // A page that cannot be loaded again can be closed by the person.
        let _ = gloo::utils::window().location().reload();
    });
    again.forget();
    if let Some(report) = report {
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

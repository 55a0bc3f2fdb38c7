//! Markdown as Yew's nodes. No raw HTML comes through: it is shown as the text it is, and links
//! lead to screens of this page or nowhere.

use pulldown_cmark::Event;
use pulldown_cmark::HeadingLevel;
use pulldown_cmark::Options;
use pulldown_cmark::Parser;
use pulldown_cmark::Tag;
use yew::prelude::*;
use yew::virtual_dom::VNode;
use yew::virtual_dom::VTag;
use yew::virtual_dom::VText;

/// A chapter's text as nodes.
pub fn rendered(text: &str) -> Html {
    let mut open: Vec<VTag> = Vec::new();
    let mut done: Vec<VNode> = Vec::new();
    for event in Parser::new_ext(text, Options::ENABLE_TABLES) {
        match event {
            Event::Start(tag) => open.push(element(&tag)),
            Event::End(_) => {
                if let Some(closed) = open.pop() {
                    put(&mut open, &mut done, closed.into());
                }
            }
            Event::Code(code) => {
                let mut tag = VTag::new("code");
                tag.add_child(VText::new(code.to_string()).into());
                put(&mut open, &mut done, tag.into());
            }
            Event::SoftBreak => put(&mut open, &mut done, VText::new(" ").into()),
            Event::HardBreak => put(&mut open, &mut done, VTag::new("br").into()),
            Event::Rule => put(&mut open, &mut done, VTag::new("hr").into()),
            Event::Text(text) | Event::Html(text) | Event::InlineHtml(text) => {
                put(&mut open, &mut done, VText::new(text.to_string()).into());
            }
            // Switched off above.
            Event::FootnoteReference(_)
            | Event::TaskListMarker(_)
            | Event::InlineMath(_)
            | Event::DisplayMath(_) => {}
        }
    }
    done.into_iter().collect()
}

fn put(open: &mut [VTag], done: &mut Vec<VNode>, node: VNode) {
    match open.last_mut() {
        Some(tag) => tag.add_child(node),
        None => done.push(node),
    }
}

fn element(tag: &Tag<'_>) -> VTag {
    let name = match tag {
        Tag::Paragraph | Tag::HtmlBlock => "p",
        // The chapter's own title is the page's first heading.
        Tag::Heading { level, .. } => match level {
            HeadingLevel::H1 | HeadingLevel::H2 => "h2",
            _ => "h3",
        },
        Tag::BlockQuote(_) => "blockquote",
        Tag::CodeBlock(_) => "pre",
        Tag::List(Some(_)) => "ol",
        Tag::List(None) => "ul",
        Tag::Item => "li",
        Tag::Table(_) => "table",
        Tag::TableHead | Tag::TableRow => "tr",
        Tag::TableCell => "td",
        Tag::Emphasis => "em",
        Tag::Strong => "strong",
        Tag::Link { dest_url, .. } => return link(dest_url),
        _ => "span",
    };
    let mut element = VTag::new(name);
    if name == "table" {
        element.add_attribute("class", "table");
    }
    element
}

fn link(address: &str) -> VTag {
    if !address.starts_with("#/") {
        return VTag::new("span");
    }
    let mut link = VTag::new("a");
    link.add_attribute("href", address.to_owned());
    link
}

#[cfg(all(test, not(target_arch = "wasm32")))]
mod tests {
    use super::*;
    use crate::app::as_text::as_text;

    #[component]
    fn Sample() -> Html {
        rendered(
            "# Top\n\nOne **two** <b>three</b>\n\n<script>alert(1)</script>\n\n- a\n- [b](#/jobs) [c](javascript:alert(1)) ![d](https://x.example/y.png)\n",
        )
    }

    #[test]
    fn text_becomes_nodes_and_raw_html_stays_text() {
        let text = as_text::<Sample>(|| ());
        assert!(
            text.contains("<h2>Top</h2>") && text.contains("<strong>two</strong>"),
            "{text}"
        );
        assert!(
            text.contains("&lt;b&gt;three") && text.contains("&lt;script&gt;"),
            "{text}"
        );
        assert!(text.contains("<a href=\"#/jobs\">b</a>"), "{text}");
        assert!(
            !text.contains("javascript:") && !text.contains("<img"),
            "{text}"
        );
    }
}

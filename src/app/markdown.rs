//! A chapter as Yew's nodes, from the plain lines that the build makes of its Markdown file.

use yew::prelude::*;
use yew::virtual_dom::VNode;
use yew::virtual_dom::VTag;
use yew::virtual_dom::VText;

/// A chapter's lines as nodes.
pub fn rendered(lines: &'static str) -> Html {
    let mut open: Vec<VTag> = Vec::new();
    let mut done: Vec<VNode> = Vec::new();
    for line in lines.lines().filter(|line| !line.is_empty()) {
        let (mark, words) = line.split_at(1);
        match mark {
            "<" => open.push(element(words)),
            ">" => {
                if let Some(closed) = open.pop() {
                    put(&mut open, &mut done, closed.into());
                }
            }
            "@" => {
                if let Some(link) = open.last_mut() {
                    link.add_attribute("href", words);
                }
            }
            _ => put(&mut open, &mut done, VText::new(words).into()),
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

fn element(name: &'static str) -> VTag {
    let mut element = VTag::new(name);
    if name == "table" {
        element.add_attribute("class", "table");
    }
    element
}

#[cfg(all(test, not(target_arch = "wasm32")))]
#[path = "../../build/chapter.rs"]
mod chapter;

#[cfg(all(test, not(target_arch = "wasm32")))]
mod tests {
    use super::*;
    use crate::app::as_text::as_text;

    #[component]
    fn Sample() -> Html {
        let lines = chapter::lines(
            "# Top\n\nOne **two** <b>three</b>\n\n<script>alert(1)</script>\n\n- a\n- [b](#/jobs) [c](javascript:alert(1)) ![d](https://x.example/y.png)\n",
        );
        rendered(lines.leak())
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

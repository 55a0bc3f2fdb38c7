//! A chapter as Yew's nodes, from the plain lines that the build makes of its Markdown file.

use yew::prelude::*;
use yew::virtual_dom::VNode;
use yew::virtual_dom::VTag;
use yew::virtual_dom::VText;

use crate::language::said;

/// A chapter's lines as nodes, in the reader's language.
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
            _ => {
                for node in marked(said(words)) {
                    put(&mut open, &mut done, node);
                }
            }
        }
    }
    done.into_iter().collect()
}

/// Marks inside a text, each with the element it stands for.
const MARKS: [(&str, &str); 3] = [("**", "strong"), ("*", "em"), ("`", "code")];

/// A text with its marks as elements; a mark without its other half is a letter like any other.
fn marked(text: &str) -> Vec<VNode> {
    let mut nodes = Vec::new();
    let mut rest = text;
    while let Some(at) = rest.find(['*', '`', '[']) {
        let (before, from) = rest.split_at(at);
        let Some((node, after)) = first_marked(from) else {
            // Only a sign: it goes with what stands before it.
            let sign = at + 1;
            nodes.push(letters(&rest[..sign]));
            rest = &rest[sign..];
            continue;
        };
        if !before.is_empty() {
            nodes.push(letters(before));
        }
        nodes.push(node);
        rest = after;
    }
    if !rest.is_empty() {
        nodes.push(letters(rest));
    }
    nodes
}

fn letters(text: &str) -> VNode {
    VText::new(text.to_owned()).into()
}

/// The element that a text begins with, and what comes after it.
fn first_marked(text: &str) -> Option<(VNode, &str)> {
    if let Some(inner) = text.strip_prefix('[') {
        let (words, after) = inner.split_once("](")?;
        let (address, after) = after.split_once(')')?;
        let mut link = element("a");
        // Languages come in files of their own: a link in them leads to this page too, or nowhere.
        if address.starts_with("#/") || !address.contains(['/', ':']) {
            link.add_attribute("href", address.to_owned());
        }
        link.add_children(marked(words));
        return Some((link.into(), after));
    }
    let (mark, name) = MARKS.iter().find(|(mark, _)| text.starts_with(mark))?;
    let (words, after) = text[mark.len()..].split_once(mark)?;
    let mut tag = element(name);
    match *name {
        "code" => tag.add_child(letters(words)),
        _ => tag.add_children(marked(words)),
    }
    Some((tag.into(), after))
}

/// The lines under the second-level heading with this title.
pub fn section(lines: &'static str, title: &str) -> Option<&'static str> {
    let head = format!("<h2\n={title}\n>\n");
    let (_, below) = lines.split_once(head.as_str())?;
    below.split("<h2\n").next()
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

    #[test]
    fn a_section_ends_where_the_next_one_begins() {
        let lines: &'static str = chapter::lines("## a b\n\none\n\n## a b c\n\ntwo\n").leak();
        assert_eq!(section(lines, "a b"), Some("<p\n=one\n>\n"));
        assert_eq!(section(lines, "a b c"), Some("<p\n=two\n>\n"));
        assert_eq!(section(lines, "b"), None);
    }

    #[test]
    fn the_first_row_of_a_table_heads_its_columns() {
        let lines = chapter::lines("| a | b |\n| --- | --- |\n| c | d |\n");
        assert_eq!(lines.matches("<th\n").count(), 2, "{lines}");
        assert_eq!(lines.matches("<td\n").count(), 2, "{lines}");
    }

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

//! A Markdown chapter as plain lines, made when the program is built, so that the page carries no
//! Markdown reader.
//!
//! ```text
//! <p        an element opens          >         it closes
//! @#/jobs   the link that just opened leads there
//! =words    text
//! ```
//! Raw HTML becomes text; links lead to screens of the page or to a page beside it, or nowhere.

use pulldown_cmark::Event;
use pulldown_cmark::HeadingLevel;
use pulldown_cmark::Options;
use pulldown_cmark::Parser;
use pulldown_cmark::Tag;
use pulldown_cmark::TagEnd;

/// The chapter's lines.
pub fn lines(markdown: &str) -> String {
    let mut out = String::new();
    let mut line = |mark: char, words: &str| {
        out.push(mark);
        out.push_str(&words.replace('\n', " "));
        out.push('\n');
    };
    let mut in_table_head = false;
    for event in Parser::new_ext(markdown, Options::ENABLE_TABLES) {
        match event {
            Event::Start(tag) => {
                in_table_head |= matches!(tag, Tag::TableHead);
                let heads_a_column = in_table_head && matches!(tag, Tag::TableCell);
                line('<', if heads_a_column { "th" } else { name(&tag) });
                if let Tag::Link { dest_url, .. } = &tag
                    && is_ours(dest_url)
                {
                    line('@', dest_url);
                }
            }
            Event::End(end) => {
                in_table_head &= end != TagEnd::TableHead;
                line('>', "");
            }
            Event::Code(code) => {
                line('<', "code");
                line('=', &code);
                line('>', "");
            }
            Event::SoftBreak => line('=', " "),
            Event::HardBreak => {
                line('<', "br");
                line('>', "");
            }
            Event::Rule => {
                line('<', "hr");
                line('>', "");
            }
            Event::Text(text) | Event::Html(text) | Event::InlineHtml(text) => line('=', &text),
            // Switched off above.
            Event::FootnoteReference(_)
            | Event::TaskListMarker(_)
            | Event::InlineMath(_)
            | Event::DisplayMath(_) => {}
        }
    }
    out
}

fn name(tag: &Tag<'_>) -> &'static str {
    match tag {
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
        Tag::Link { dest_url, .. } if is_ours(dest_url) => "a",
        _ => "span",
    }
}
/// A screen of the page, or a page that ships beside it.
fn is_ours(address: &str) -> bool {
    address.starts_with("#/") || (address.ends_with(".html") && !address.contains(['/', ':']))
}

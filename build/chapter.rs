//! A Markdown chapter as plain lines, made when the program is built, so that the page carries no
//! Markdown reader.
//!
//! ```text
//! <p        an element opens          >         it closes
//! =words    what one element says, marks inside it as they are written: **strong**, *said with
//!           stress*, `code`, [a link](#/jobs)
//! ```
//! What an element says stands whole, so that it can be said in another language. Raw HTML becomes
//! text; links lead to screens of the page or to a page beside it, or nowhere.

use pulldown_cmark::Event;
use pulldown_cmark::HeadingLevel;
use pulldown_cmark::Options;
use pulldown_cmark::Parser;
use pulldown_cmark::Tag;
use pulldown_cmark::TagEnd;

/// The chapter's lines.
pub fn lines(markdown: &str) -> String {
    let mut chapter = Chapter::default();
    for event in Parser::new_ext(markdown, Options::ENABLE_TABLES) {
        chapter.take(event);
    }
    chapter.out
}

/// Lines so far, and what the open element says so far.
#[derive(Default)]
struct Chapter {
    out: String,
    said: String,
    /// What each open link ends with.
    links: Vec<String>,
    in_table_head: bool,
}

impl Chapter {
    fn take(&mut self, event: Event<'_>) {
        match event {
            Event::Start(Tag::Strong) | Event::End(TagEnd::Strong) => self.said.push_str("**"),
            Event::Start(Tag::Emphasis) | Event::End(TagEnd::Emphasis) => self.said.push('*'),
            Event::Start(Tag::Link { dest_url, .. }) => {
                let (begin, end) = match is_ours(&dest_url) {
                    true => ("[", format!("]({dest_url})")),
                    false => ("", String::new()),
                };
                self.said.push_str(begin);
                self.links.push(end);
            }
            Event::End(TagEnd::Link) => self.said.push_str(&self.links.pop().unwrap_or_default()),
            Event::Start(tag) => {
                self.in_table_head |= matches!(tag, Tag::TableHead);
                let heads_a_column = self.in_table_head && matches!(tag, Tag::TableCell);
                self.line('<', if heads_a_column { "th" } else { name(&tag) });
            }
            Event::End(end) => {
                self.in_table_head &= end != TagEnd::TableHead;
                self.line('>', "");
            }
            Event::Code(code) => {
                self.said.push('`');
                self.said.push_str(&code);
                self.said.push('`');
            }
            Event::SoftBreak => self.said.push(' '),
            Event::HardBreak => {
                self.line('<', "br");
                self.line('>', "");
            }
            Event::Rule => {
                self.line('<', "hr");
                self.line('>', "");
            }
            Event::Text(text) | Event::Html(text) | Event::InlineHtml(text) => {
                self.said.push_str(&text.replace('\n', " "));
            }
            // Switched off above.
            Event::FootnoteReference(_)
            | Event::TaskListMarker(_)
            | Event::InlineMath(_)
            | Event::DisplayMath(_) => {}
        }
    }

    /// Writes a line, and before it what the open element has said.
    fn line(&mut self, mark: char, words: &str) {
        let said = std::mem::take(&mut self.said);
        if !said.trim().is_empty() {
            self.out.push('=');
            self.out.push_str(&said);
            self.out.push('\n');
        }
        self.out.push(mark);
        self.out.push_str(words);
        self.out.push('\n');
    }
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
        _ => "span",
    }
}

/// A screen of the page, or a page that ships beside it.
fn is_ours(address: &str) -> bool {
    address.starts_with("#/") || (address.ends_with(".html") && !address.contains(['/', ':']))
}

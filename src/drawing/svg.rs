//! A small tree of SVG elements.
//!
//! Yew builds its nodes from this tree and the command line writes it to a file, so that one
//! drawing serves the bench, the debrief, the report and the handbook. Text and attribute values
//! are escaped when they are written; numbers have at most two decimals, the same everywhere.

use core::fmt::Write;

/// A child of an element.
#[derive(Clone, Debug, PartialEq)]
pub enum Node {
    /// Another element.
    Element(Element),
    /// Plain text, not yet escaped.
    Text(String),
}

/// An SVG element with its attributes in writing order.
#[derive(Clone, Debug, PartialEq)]
pub struct Element {
    /// Name of the element, such as `path`.
    pub tag: &'static str,
    /// Names and values, not yet escaped.
    pub attributes: Vec<(&'static str, String)>,
    /// What is inside, in painting order.
    pub children: Vec<Node>,
}

impl Element {
    /// An element without attributes and children.
    pub fn new(tag: &'static str) -> Self {
        Self {
            tag,
            attributes: Vec::new(),
            children: Vec::new(),
        }
    }

    /// Sets an attribute, replacing an earlier value.
    pub fn set(&mut self, name: &'static str, value: impl Into<String>) {
        let value = value.into();
        match self.attributes.iter_mut().find(|(n, _)| *n == name) {
            Some((_, old)) => *old = value,
            None => self.attributes.push((name, value)),
        }
    }

    /// The same element with an attribute set.
    pub fn with(mut self, name: &'static str, value: impl Into<String>) -> Self {
        self.set(name, value);
        self
    }

    /// The same element with an `id`.
    pub fn id(self, id: &'static str) -> Self {
        self.with("id", id)
    }

    /// The same element with a child added on top.
    pub fn child(mut self, child: Element) -> Self {
        self.children.push(Node::Element(child));
        self
    }

    /// The same element with children added on top.
    pub fn children(mut self, children: impl IntoIterator<Item = Element>) -> Self {
        self.children
            .extend(children.into_iter().map(Node::Element));
        self
    }

    /// The same element with text added.
    pub fn text(mut self, text: impl Into<String>) -> Self {
        self.children.push(Node::Text(text.into()));
        self
    }

    /// Value of an attribute.
    pub fn attribute(&self, name: &str) -> Option<&str> {
        self.attributes
            .iter()
            .find(|(n, _)| *n == name)
            .map(|(_, value)| value.as_str())
    }

    /// Calls `visit` on this element and everything inside, in painting order.
    pub fn walk<'a>(&'a self, visit: &mut dyn FnMut(&'a Element)) {
        visit(self);
        for child in &self.children {
            if let Node::Element(element) = child {
                element.walk(visit);
            }
        }
    }

    /// Calls `visit` on this element and everything inside, and lets it change them.
    pub fn walk_mut(&mut self, visit: &mut dyn FnMut(&mut Element)) {
        visit(self);
        for child in &mut self.children {
            if let Node::Element(element) = child {
                element.walk_mut(visit);
            }
        }
    }

    /// The element as SVG text.
    pub fn to_svg_string(&self) -> String {
        let mut out = String::new();
        self.write(&mut out);
        out
    }

    fn write(&self, out: &mut String) {
        out.push('<');
        out.push_str(self.tag);
        for (name, value) in &self.attributes {
            out.push(' ');
            out.push_str(name);
            out.push_str("=\"");
            escape(value, out);
            out.push('"');
        }
        if self.children.is_empty() {
            out.push_str("/>");
            return;
        }
        out.push('>');
        for child in &self.children {
            match child {
                Node::Element(element) => element.write(out),
                Node::Text(text) => escape(text, out),
            }
        }
        out.push_str("</");
        out.push_str(self.tag);
        out.push('>');
    }
}

fn escape(text: &str, out: &mut String) {
    for character in text.chars() {
        match character {
            '&' => out.push_str("&amp;"),
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            '"' => out.push_str("&quot;"),
            // Control characters are not allowed in XML at all.
            c if c < ' ' && c != '\n' && c != '\t' => {}
            c => out.push(c),
        }
    }
}

/// A number as it stands in an attribute: at most two decimals, no trailing zeros, never `-0`.
/// A value that is not finite is drawn as zero.
pub fn num(value: f64) -> String {
    if !value.is_finite() {
        return "0".to_owned();
    }
    let mut text = String::new();
    // Writing into a String cannot fail.
    let _ = write!(text, "{value:.2}");
    let kept = text.trim_end_matches('0').trim_end_matches('.').len();
    text.truncate(kept);
    if text == "-0" {
        text.remove(0);
    }
    text
}

/// A group.
pub fn group(class: &str) -> Element {
    let element = Element::new("g");
    if class.is_empty() {
        return element;
    }
    element.with("class", class)
}

/// A rectangle by its upper left corner and size.
pub fn rect(x: f64, y: f64, width: f64, height: f64, class: &str) -> Element {
    Element::new("rect")
        .with("class", class)
        .with("x", num(x))
        .with("y", num(y))
        .with("width", num(width))
        .with("height", num(height))
}

/// A rectangle with rounded corners.
pub fn rounded(x: f64, y: f64, width: f64, height: f64, radius: f64, class: &str) -> Element {
    rect(x, y, width, height, class).with("rx", num(radius))
}

/// A straight line.
pub fn line(x1: f64, y1: f64, x2: f64, y2: f64, class: &str) -> Element {
    Element::new("line")
        .with("class", class)
        .with("x1", num(x1))
        .with("y1", num(y1))
        .with("x2", num(x2))
        .with("y2", num(y2))
}

/// A circle.
pub fn circle(cx: f64, cy: f64, radius: f64, class: &str) -> Element {
    Element::new("circle")
        .with("class", class)
        .with("cx", num(cx))
        .with("cy", num(cy))
        .with("r", num(radius))
}

/// An ellipse.
pub fn ellipse(cx: f64, cy: f64, rx: f64, ry: f64, class: &str) -> Element {
    Element::new("ellipse")
        .with("class", class)
        .with("cx", num(cx))
        .with("cy", num(cy))
        .with("rx", num(rx))
        .with("ry", num(ry))
}

/// A path in SVG path language.
pub fn path(data: impl Into<String>, class: &str) -> Element {
    Element::new("path").with("class", class).with("d", data)
}

/// A closed outline through the points.
pub fn outline(points: &[(f64, f64)], class: &str) -> Element {
    let mut data = String::new();
    for (index, (x, y)) in points.iter().enumerate() {
        data.push(if index == 0 { 'M' } else { 'L' });
        data.push_str(&num(*x));
        data.push(' ');
        data.push_str(&num(*y));
    }
    data.push('Z');
    path(data, class)
}

/// Lettering is drawn no smaller than this share of its size.
const SMALLEST_LETTERING: f64 = 0.65;
/// What a translated name may be longer than the English one before it is drawn smaller.
const GROWTH: f64 = 1.15;

/// How many letters wide words are: signs over and under a letter take no width of their own.
pub fn letters(words: &str) -> f64 {
    words.chars().filter(|c| !is_mark(*c)).count().max(1) as f64
}

/// Non-spacing marks of Devanagari. Source: Unicode, general category Mn, from memory.
fn is_mark(c: char) -> bool {
    matches!(c, '\u{900}'..='\u{902}' | '\u{93a}' | '\u{93c}' | '\u{941}'..='\u{948}' | '\u{94d}')
}

/// Letters that fit where a picture was laid out for the English words: those and a few more, or
/// `free` where there is more room.
pub fn room_for(english: &str, free: f64) -> f64 {
    (GROWTH * letters(english)).max(free)
}

/// Text with its anchor at (x, y), drawn smaller where it is longer than `room` letters.
pub fn fitted(x: f64, y: f64, class: &str, words: impl Into<String>, room: f64) -> Element {
    let words = words.into();
    let share = (room / letters(&words)).clamp(SMALLEST_LETTERING, 1.0);
    let drawn = label(x, y, class, words);
    if share >= 1.0 {
        return drawn;
    }
    let (x, y) = (x * (1.0 - share), y * (1.0 - share));
    let smaller = format!("translate({} {}) scale({})", num(x), num(y), num(share));
    drawn.with("transform", smaller)
}

/// Text with its anchor at (x, y).
pub fn label(x: f64, y: f64, class: &str, words: impl Into<String>) -> Element {
    Element::new("text")
        .with("class", class)
        .with("x", num(x))
        .with("y", num(y))
        .text(words)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn hostile_text_is_escaped_in_attributes_and_content() {
        let drawn = label(1.0, 2.0, "a\"b", "<script>&\u{7}").to_svg_string();
        assert_eq!(
            drawn,
            "<text class=\"a&quot;b\" x=\"1\" y=\"2\">&lt;script&gt;&amp;</text>"
        );
    }

    #[test]
    fn words_longer_than_their_room_are_drawn_smaller_from_the_same_point() {
        assert_eq!(
            fitted(10.0, 20.0, "", "motor", 5.0),
            label(10.0, 20.0, "", "motor")
        );
        let long = fitted(100.0, 20.0, "", "interruptor", 8.8);
        let smaller = long.attribute("transform");
        assert_eq!(smaller, Some("translate(20 4) scale(0.8)"));
        let longest = fitted(0.0, 0.0, "", "x".repeat(99), 8.0);
        assert_eq!(
            longest.attribute("transform"),
            Some("translate(0 0) scale(0.65)")
        );
    }

    #[test]
    fn the_english_words_always_have_room_and_signs_take_none() {
        assert!(room_for("lid", 0.0) > letters("lid"));
        assert!((letters("कुर्सी") - 4.0).abs() < 1e-9);
    }

    #[test]
    fn numbers_are_short_and_never_minus_zero() {
        let written: Vec<String> = [1.0, 1.25, -0.001, 100.0, 1e-9, f64::NAN, 2.5]
            .into_iter()
            .map(num)
            .collect();
        assert_eq!(written, ["1", "1.25", "0", "100", "0", "0", "2.5"]);
    }

    #[test]
    fn setting_an_attribute_twice_keeps_the_last_value() {
        let element = group("a").with("class", "b");
        assert_eq!(element.attribute("class"), Some("b"));
        assert_eq!(element.attributes.len(), 1);
    }
}

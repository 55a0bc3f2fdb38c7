//! What the program says, in the language of whoever reads it.
//!
//! The program is written in English: a text in the source is its own key. [`say!`](crate::say) says a
//! text of the source; [`said`] one that stands in a table, where [`text!`](crate::text) marks it; [`worded`] one out of a file, such as a
//! part's name. In English all three give back what they get. In another language the text's message is
//! looked up, by [`key`], in that language's catalogue ([Project Fluent](https://projectfluent.org)
//! files under `locales/`); what has no message stays English. A test holds that none is missing.
//!
//! What is kept, sealed or sent does not depend on the reader: such text is made [`in_english`].

mod catalogue;
mod dangerous;
mod key;
mod numbers;
mod present;
mod retell;

pub use catalogue::Catalogue;
pub use catalogue::CatalogueError;
pub use key::Key;
pub use key::id;
pub use numbers::decimals;
pub use present::code;
pub use present::filled;
pub use present::in_english;
pub use present::is_right_to_left;
pub use present::said;
pub use present::said_as;
pub use present::speak;
pub use present::worded;
pub use retell::retold;

/// Says a text of the source in the present language.
///
/// ```
/// use tubwright::say;
///
/// // A text alone is a `&'static str`.
/// assert_eq!(say!("Making safe"), "Making safe");
/// // With values it is a `String`; a value is a variable of that name or given by `name = value`.
/// let minutes = 3;
/// assert_eq!(say!("{what}: {minutes} min", what = "pull out", minutes), "pull out: 3 min");
/// // Where one English text has two meanings, the meaning is given too; it is not shown.
/// assert_eq!(say!("Open" as "of a circuit"), "Open");
/// ```
///
/// Values are shown by `Display`: round a number before. Braces are doubled as in `format!`, in texts with values only.
#[macro_export]
macro_rules! say {
    (@value $name:ident) => { $name };
    (@value $name:ident $value:expr) => { $value };
    ($text:literal) => { $crate::language::said($text) };
    ($text:literal as $meaning:literal) => { $crate::language::said_as($text, $meaning) };
    ($text:literal, $($name:ident $(= $value:expr)?),+ $(,)?) => {
        $crate::language::filled(
            $text,
            &[$(::core::stringify!($name)),+],
            &[$(&$crate::say!(@value $name $($value)?) as &dyn ::core::fmt::Display),+],
        )
    };
}

/// Marks a text of a table that is shown by [`said`](crate::language::said), so that it is translated.
#[macro_export]
macro_rules! text {
    ($text:literal) => {
        $text
    };
}

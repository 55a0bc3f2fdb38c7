//! What is shown in place of the results for a while: a record's work step by step, or a record as it
//! was written.

use yew::prelude::*;

use crate::app::cohort::replay;
use crate::app::cohort::written::Written;
use crate::app::replay::Replay;
use crate::app::replay::Replayed;
use crate::app::sitting;
use crate::records::as_written::AsWritten;
use crate::records::record::Record;
use crate::say;

/// Which.
#[derive(Clone, PartialEq)]
pub enum Aside {
    /// The log run again.
    Replayed(Box<Replayed>),
    /// As it was written.
    Written(Box<AsWritten>),
}

impl Aside {
    /// One line of a text, run again.
    ///
    /// # Errors
    /// Why it cannot be.
    pub fn replayed(
        name: &str,
        text: &str,
        line: usize,
        against: &[(String, String)],
    ) -> Result<Self, String> {
        let replayed = replay::of_line(name, text, line, against);
        replayed
            .map(|replayed| Self::Replayed(Box::new(replayed)))
            .ok_or_else(|| say!("{file}: this record cannot be run again here: its job or its assessment is not known. It can still be read as it was written.", file = name))
    }

    /// One line of a text, to be read.
    ///
    /// # Errors
    /// Why it cannot be.
    pub fn written(name: &str, text: &str, line: usize) -> Result<Self, String> {
        let text = Record::lines(text).nth(line).unwrap_or_default();
        let library = sitting::library().map_err(|error| error.to_string())?;
        let written = AsWritten::read(name, text, &library).map_err(|error| error.to_string())?;
        Ok(Self::Written(Box::new(written)))
    }

    /// The page; `back` are the words of the way back.
    pub fn page(&self, back: &'static str, on_back: Callback<()>) -> Html {
        match self {
            Self::Replayed(replayed) => {
                html! { <Replay replayed={Replayed::clone(replayed)} {back} {on_back} /> }
            }
            Self::Written(written) => {
                html! { <Written written={AsWritten::clone(written)} {back} {on_back} /> }
            }
        }
    }
}

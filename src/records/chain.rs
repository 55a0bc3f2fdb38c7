//! A candidate's records in a row: none dropped, none added, in the order they were made, even after
//! what is personal was erased.
//!
//! ```text
//! {"format": "tubwright-erased-1", "body": hash, "previous": link, "link": link, "seal": code}
//! ```
//! An erased record keeps its hash alone. The records around it still follow from each other.

use serde::Deserialize;
use serde::Serialize;
use thiserror::Error;

use crate::records::record::Record;
use crate::records::record::link;
use crate::records::seal::Hash;

/// The format of what is left of a record.
pub const ERASED_FORMAT: &str = "tubwright-erased-1";

/// What is left of a record once everything personal, log and result included, was erased.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Erased {
    /// `tubwright-erased-1`.
    pub format: String,
    /// Hash of the body that was there.
    pub body: Hash,
    /// Link before.
    pub previous: Hash,
    /// Its own link.
    pub link: Hash,
    /// Its seal.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub seal: Option<Hash>,
}

impl Record {
    /// Strikes out everything but what the chain needs.
    ///
    /// # Errors
    /// When a number in the record is not finite.
    pub fn erased(&self) -> Result<Erased, serde_json::Error> {
        Ok(Erased {
            format: ERASED_FORMAT.to_owned(),
            body: self.body.hash()?,
            previous: self.body.previous,
            link: self.link,
            seal: self.seal,
        })
    }
}

/// One member of a chain.
#[derive(Clone, Debug, PartialEq)]
pub enum Member {
    /// A whole record.
    Whole(Box<Record>),
    /// What is left of one.
    Erased(Erased),
}

impl Member {
    fn previous(&self) -> &Hash {
        match self {
            Member::Whole(record) => &record.body.previous,
            Member::Erased(erased) => &erased.previous,
        }
    }

    fn link(&self) -> &Hash {
        match self {
            Member::Whole(record) => &record.link,
            Member::Erased(erased) => &erased.link,
        }
    }

    fn own_link(&self) -> Option<Hash> {
        match self {
            Member::Whole(record) => record
                .body
                .hash()
                .ok()
                .map(|hash| link(&record.body.previous, &hash)),
            Member::Erased(erased) => Some(link(&erased.previous, &erased.body)),
        }
    }
}

/// Why records are not one unbroken row.
#[derive(Clone, Debug, PartialEq, Eq, Error)]
pub enum Broken {
    /// A link does not follow from its body.
    #[error("record {0} of the row: its link does not follow from it, it was edited")]
    Link(usize),
    /// Records that follow on nothing here.
    #[error("record {0} of the row follows on one that is not here: one was dropped")]
    Gap(usize),
    /// Two that follow on the same one.
    #[error("record {0} of the row follows on one that another follows on too: one was added")]
    Fork(usize),
}

/// Puts a candidate's records in a row from its root; any order is taken.
///
/// # Errors
/// When they are no unbroken row. Numbers count from 1 in the row found so far.
pub fn in_a_row(root: Hash, mut members: Vec<Member>) -> Result<Vec<Member>, Broken> {
    let mut row: Vec<Member> = Vec::with_capacity(members.len());
    let mut at = root;
    while !members.is_empty() {
        let place = row.len() + 1;
        let mut next = members
            .iter()
            .enumerate()
            .filter(|(_, member)| *member.previous() == at)
            .map(|(index, _)| index);
        let index = next.next().ok_or(Broken::Gap(place))?;
        if next.next().is_some() {
            return Err(Broken::Fork(place));
        }
        let member = members.swap_remove(index);
        if member.own_link() != Some(*member.link()) {
            return Err(Broken::Link(place));
        }
        at = *member.link();
        row.push(member);
    }
    Ok(row)
}

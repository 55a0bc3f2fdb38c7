//! A candidate's records in a row: none dropped, none added, in the order they were made, even after
//! what is personal was erased.
//!
//! ```text
//! {"format": "tubwright-erased-1", "body": hash, "previous": link, "link": link, "seal": code}
//! ```
//! An erased record keeps its hash alone. The records around it still follow from each other.

use std::collections::BTreeSet;

use serde::Deserialize;
use serde::Serialize;
use thiserror::Error;

use crate::records::record::Record;
use crate::records::record::link;
use crate::records::seal::Hash;
use crate::say;

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

/// A file of records, one a line, with some of them erased; the other lines stay to the byte.
///
/// # Errors
/// The first line that is to be erased and is no record, from 1.
pub fn erase_lines(
    file: &str,
    text: &str,
    which: &BTreeSet<usize>,
) -> Result<(String, Vec<(usize, Erased)>), usize> {
    let mut left = String::with_capacity(text.len());
    let mut all = Vec::new();
    for (at, line) in Record::lines(text).enumerate() {
        if !which.contains(&at) {
            left.push_str(line);
            continue;
        }
        let record = Record::read(file, line).map_err(|_| at + 1)?;
        let erased = record.erased().map_err(|_| at + 1)?;
        left.push_str(&serde_json::to_string(&erased).map_err(|_| at + 1)?);
        left.push('\n');
        all.push((at, erased));
    }
    Ok((left, all))
}

impl Erased {
    /// Its link follows from it.
    pub fn holds(&self) -> bool {
        self.link == link(&self.previous, &self.body)
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
    #[error("{}", say!("record {n} of the row: its link does not follow from it, it was edited", n = .0))]
    Link(usize),
    /// Records that follow on nothing here.
    #[error("{}", say!("record {n} of the row follows on one that is not here: one was dropped", n = .0))]
    Gap(usize),
    /// Two that follow on the same one.
    #[error("{}", say!("record {n} of the row follows on one that another follows on too: one was added", n = .0))]
    Fork(usize),
}

/// The order of links, each with the link before it, from a root on; any order is taken.
///
/// # Errors
/// When they are no unbroken row. Numbers count from 1 in the row found so far.
pub fn order(root: Hash, links: &[(Hash, Hash)]) -> Result<Vec<usize>, Broken> {
    let mut row = Vec::with_capacity(links.len());
    let mut left: Vec<usize> = (0..links.len()).collect();
    let mut at = root;
    while !left.is_empty() {
        let place = row.len() + 1;
        let mut next = (0..left.len()).filter(|n| links[left[*n]].0 == at);
        let found = next.next().ok_or(Broken::Gap(place))?;
        if next.next().is_some() {
            return Err(Broken::Fork(place));
        }
        let index = left.swap_remove(found);
        at = links[index].1;
        row.push(index);
    }
    Ok(row)
}

/// Puts a candidate's records in a row from its root; any order is taken.
///
/// # Errors
/// When they are no unbroken row. Numbers count from 1 in the row found so far.
pub fn in_a_row(root: Hash, members: Vec<Member>) -> Result<Vec<Member>, Broken> {
    let links: Vec<(Hash, Hash)> = members.iter().map(|m| (*m.previous(), *m.link())).collect();
    let row = order(root, &links)?;
    let own = |index: &usize| members[*index].own_link() == Some(*members[*index].link());
    if let Some(at) = row.iter().position(|index| !own(index)) {
        return Err(Broken::Link(at + 1));
    }
    let mut members: Vec<Option<Member>> = members.into_iter().map(Some).collect();
    Ok(row
        .into_iter()
        .filter_map(|index| members[index].take())
        .collect())
}

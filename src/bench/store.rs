//! The parts store: which part a name means, what it costs, when it is handed over.
//!
//! A name is `part` for what the maker fits, `part:variant` for another make. What a job's file
//! does not say is in stock today at the machine's price.

use crate::bench::scenario::Scenario;
use crate::bench::visit::Ready;
use crate::bench::workshop::Part;
use crate::bench::workshop::Variant;
use crate::bench::workshop::Workshop;

/// A part as the store knows it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Item<'a> {
    /// The part whose place it takes.
    pub part: &'a Part,
    /// Another make; none for the original.
    pub variant: Option<&'a Variant>,
}

impl Item<'_> {
    /// Name in logs and files.
    pub fn id(&self) -> String {
        match self.variant {
            Some(variant) => format!("{}:{}", self.part.id, variant.id),
            None => self.part.id.clone(),
        }
    }

    /// Plain name.
    pub fn name(&self) -> &str {
        self.variant.map_or(&self.part.name, |v| &v.name)
    }
}

/// The part a name means.
pub fn item<'a>(workshop: &'a Workshop, name: &str) -> Option<Item<'a>> {
    let (part, variant) = match name.split_once(':') {
        Some((part, variant)) => (part, Some(variant)),
        None => (name, None),
    };
    let part = workshop.part(part)?;
    let variant = match variant {
        Some(id) => Some(part.variants.iter().find(|v| v.id == id)?),
        None => None,
    };
    Some(Item { part, variant })
}

/// Everything the store has a line for: each part, each make.
pub fn items(workshop: &Workshop) -> impl Iterator<Item = Item<'_>> {
    workshop.parts.iter().flat_map(|part| {
        let original = core::iter::once(Item {
            part,
            variant: None,
        });
        original.chain(part.variants.iter().map(move |variant| Item {
            part,
            variant: Some(variant),
        }))
    })
}

/// Price in the money unit.
pub fn price(scenario: &Scenario, item: &Item<'_>) -> f64 {
    let listed = item.variant.map_or(item.part.price, |v| v.price);
    let stock = scenario.visit.store.get(&item.id());
    stock.and_then(|s| s.price).unwrap_or(listed)
}

/// When it is handed over.
pub fn ready(scenario: &Scenario, item: &Item<'_>) -> Ready {
    let stock = scenario.visit.store.get(&item.id());
    stock.map_or(Ready::Today, |s| s.ready)
}

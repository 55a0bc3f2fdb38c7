//! The order of elimination: fewest neighbours first, the coils' nodes last.
//!
//! Minimum degree keeps fill small; the coils' nodes form one dense block at the end, so
//! that everything before it is reduced once per set of contacts and only the block is
//! redone when a motor changes speed. Published: Tinney and Walker 1967 (scheme 2).

use std::collections::BTreeSet;

/// The order and, for each place in it, the later neighbours including fill.
#[derive(Clone, Debug, PartialEq)]
pub struct Order {
    /// Unknown at each place.
    pub unknown_at: Vec<u32>,
    /// Later neighbours (as places, rising) of each place.
    pub later: Vec<Vec<u32>>,
}

/// Orders the unknowns; `is_last` marks those forced to the end, which become a clique.
pub fn order(neighbours: &[BTreeSet<u32>], is_last: &[bool]) -> Order {
    let n = neighbours.len();
    let mut graph = neighbours.to_vec();
    let last: Vec<u32> = (0..n as u32).filter(|u| is_last[*u as usize]).collect();
    for &a in &last {
        graph[a as usize].extend(last.iter().copied().filter(|b| *b != a));
    }
    let mut unknown_at = Vec::with_capacity(n);
    let mut place_of = vec![u32::MAX; n];
    let mut later_unknowns = Vec::with_capacity(n);
    for place in 0..n {
        let open = (0..n as u32).filter(|u| place_of[*u as usize] == u32::MAX);
        let chosen = open
            .min_by_key(|u| (is_last[*u as usize], graph[*u as usize].len(), *u))
            .expect("as many places as unknowns");
        place_of[chosen as usize] = place as u32;
        unknown_at.push(chosen);
        let around = core::mem::take(&mut graph[chosen as usize]);
        for &a in &around {
            graph[a as usize].remove(&chosen);
            graph[a as usize].extend(around.iter().copied().filter(|b| *b != a));
        }
        later_unknowns.push(around);
    }
    let later = later_unknowns
        .into_iter()
        .map(|set| {
            let mut places: Vec<u32> = set.into_iter().map(|u| place_of[u as usize]).collect();
            places.sort_unstable();
            places
        })
        .collect();
    Order { unknown_at, later }
}

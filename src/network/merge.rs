//! Nodes that are one node: ideal sources, zero-ohm links and, at DC, inductors.
//!
//! Each group becomes a tree; a node's voltage is its root's plus the sources on the way:
//!
//! ```text
//! v(child) = v(parent) + sign * source voltage        (0 for links)
//! ```
//! The tree also gives the currents of merged elements, summed from the leaves. A link that
//! closes a loop of links carries an undefined share and is given none. Earth is a root.

use crate::network::error::SolveError;
use crate::network::netlist::ElementId;
use crate::network::netlist::ElementKind;
use crate::network::netlist::Netlist;

/// One step of a group's tree.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TreeLink {
    /// The source or link.
    pub element: ElementId,
    /// Node nearer the root.
    pub parent: u32,
    /// Node away from the root.
    pub child: u32,
    /// True if the element points from child to parent (`from` is the child).
    pub from_is_child: bool,
    /// True if the element is a source.
    pub is_source: bool,
}

/// The groups of merged nodes.
#[derive(Clone, Debug, PartialEq)]
pub struct Merged {
    /// Root node of each node.
    pub root: Vec<u32>,
    /// Tree steps, parents before children.
    pub links: Vec<TreeLink>,
    /// True for each element that merges its nodes (tree or loop).
    pub is_merged: Vec<bool>,
}

/// True if the element makes its two nodes one.
fn merges(kind: &ElementKind, is_direct: bool) -> bool {
    match kind {
        ElementKind::Resistor { ohm } => *ohm <= 0.0,
        ElementKind::Inductor { .. } => is_direct,
        ElementKind::Source { .. } => true,
        _ => false,
    }
}

/// Finds the groups.
///
/// # Errors
/// [`SolveError::ShortedSource`] if sources and links form a loop.
pub fn merge(netlist: &Netlist, is_direct: bool) -> Result<Merged, SolveError> {
    let n = netlist.nodes().len();
    let mut group: Vec<u32> = (0..n as u32).collect();
    let mut tree: Vec<Vec<(u32, usize)>> = vec![Vec::new(); n];
    let is_merged: Vec<bool> = netlist
        .elements()
        .iter()
        .map(|e| merges(&e.kind, is_direct))
        .collect();
    // Links before sources, so that a loop is found at a source if it contains one.
    for wants_source in [false, true] {
        for (index, e) in netlist.elements().iter().enumerate() {
            let is_source = matches!(e.kind, ElementKind::Source { .. });
            if !is_merged[index] || is_source != wants_source {
                continue;
            }
            let (a, b) = (find(&mut group, e.from.0), find(&mut group, e.to.0));
            if a == b {
                if is_source {
                    return Err(SolveError::ShortedSource {
                        element: e.name.clone(),
                    });
                }
                continue;
            }
            // The smaller number stays root, so earth (0) always does.
            let (low, high) = if a < b { (a, b) } else { (b, a) };
            group[high as usize] = low;
            tree[e.from.index()].push((e.to.0, index));
            tree[e.to.index()].push((e.from.0, index));
        }
    }
    let root: Vec<u32> = (0..n as u32).map(|node| find(&mut group, node)).collect();
    let links = walk(netlist, &tree, &root);
    Ok(Merged {
        root,
        links,
        is_merged,
    })
}

fn walk(netlist: &Netlist, tree: &[Vec<(u32, usize)>], root: &[u32]) -> Vec<TreeLink> {
    let mut links = Vec::new();
    let mut seen = vec![false; root.len()];
    for start in (0..root.len() as u32).filter(|node| root[*node as usize] == *node) {
        let mut queue = vec![start];
        seen[start as usize] = true;
        let mut next = 0;
        while next < queue.len() {
            let parent = queue[next];
            next += 1;
            for &(child, index) in &tree[parent as usize] {
                if core::mem::replace(&mut seen[child as usize], true) {
                    continue;
                }
                let e = &netlist.elements()[index];
                links.push(TreeLink {
                    element: ElementId(index as u32),
                    parent,
                    child,
                    from_is_child: e.from.0 == child,
                    is_source: matches!(e.kind, ElementKind::Source { .. }),
                });
                queue.push(child);
            }
        }
    }
    links
}

fn find(group: &mut [u32], node: u32) -> u32 {
    let mut at = node;
    while group[at as usize] != at {
        group[at as usize] = group[group[at as usize] as usize];
        at = group[at as usize];
    }
    at
}

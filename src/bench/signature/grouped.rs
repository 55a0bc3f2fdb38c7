//! Readings that a fault changes in the same way, told together: eight points that are dead are one
//! thing to know.

use crate::bench::action::MeterMode;
use crate::bench::signature::Difference;

/// Readings of one mode that show the same, sound and faulty, in the same states.
#[derive(Clone, Debug, PartialEq)]
pub struct Group {
    /// What they are about, plain words, in the order of the readings.
    pub whats: Vec<String>,
    /// States of the machine's file, each with the connectors that are apart.
    pub states: Vec<(String, Vec<String>)>,
    /// Mode of the instrument.
    pub mode: MeterMode,
    /// What a sound machine shows.
    pub sound: String,
    /// What the faulty one shows.
    pub faulty: String,
}

impl Group {
    fn of(line: &Difference) -> Self {
        Self {
            whats: vec![line.what.clone()],
            states: vec![(line.state.clone(), line.apart.clone())],
            mode: line.mode,
            sound: line.sound.clone(),
            faulty: line.faulty.clone(),
        }
    }

    fn shows_as(&self, other: &Self) -> bool {
        self.mode == other.mode && self.sound == other.sound && self.faulty == other.faulty
    }
}

/// What differs on the display, equal readings together; the order is that of the most different of
/// each group.
pub fn grouped(lines: &[Difference]) -> Vec<Group> {
    let mut points: Vec<Group> = Vec::new();
    for line in lines.iter().filter(|line| line.sound != line.faulty) {
        let one = Group::of(line);
        let known = points
            .iter_mut()
            .find(|group| group.shows_as(&one) && group.whats == one.whats);
        match known {
            Some(group) => join(&mut group.states, one.states),
            None => points.push(one),
        }
    }
    let mut groups: Vec<Group> = Vec::new();
    for one in points {
        let known = groups
            .iter_mut()
            .find(|group| group.shows_as(&one) && same(&group.states, &one.states));
        match known {
            Some(group) => join(&mut group.whats, one.whats),
            None => groups.push(one),
        }
    }
    groups
}

fn join<T: PartialEq>(list: &mut Vec<T>, more: Vec<T>) {
    for one in more {
        if !list.contains(&one) {
            list.push(one);
        }
    }
}

fn same<T: PartialEq>(one: &[T], other: &[T]) -> bool {
    one.len() == other.len() && one.iter().all(|entry| other.contains(entry))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn line(what: &str, state: &str, sound: &str, faulty: &str) -> Difference {
        Difference {
            state: state.to_owned(),
            what: what.to_owned(),
            mode: MeterMode::LowAcVolts,
            red: what.to_owned(),
            black: "N".to_owned(),
            apart: Vec::new(),
            sound: sound.to_owned(),
            faulty: faulty.to_owned(),
            size: 1.0,
        }
    }

    #[test]
    fn points_that_show_the_same_in_the_same_states_are_one_row() {
        let lines = [
            line("a", "spinning", "230 V", "0 V"),
            line("c", "spinning", "115 V", "0 V"),
            line("b", "spinning", "230 V", "0 V"),
            line("a", "draining", "230 V", "0 V"),
            line("b", "draining", "230 V", "0 V"),
            line("d", "draining", "230 V", "0 V"),
            line("e", "draining", "0.1 V", "0.1 V"),
        ];
        let groups = grouped(&lines);
        let whats: Vec<String> = groups.iter().map(|group| group.whats.join("")).collect();
        assert_eq!(whats, ["ab", "c", "d"]);
        assert_eq!(groups[0].states.len(), 2);
    }
}

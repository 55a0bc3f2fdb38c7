//! Readings of held machines: each line in its own state, each degree of a fault by itself.

use super::*;
use crate::scenario::machines;

#[test]
fn each_line_is_read_in_its_own_state_and_a_sound_machine_keeps_to_its_data_sheet() {
    let pack = &machines().expect("sound")["P"];
    let matrix = Matrix::new(&pack.model, &pack.workshop).expect("solves");
    for (index, column) in matrix.columns().iter().enumerate() {
        let Source::Meter(line, mode) = &column.source else {
            continue;
        };
        let read = matrix.metered(&mut Vec::new(), None, index, (line, *mode));
        let read = read.expect("solves");
        assert_eq!(read, matrix.sound().cells[index], "{}", column.what);
        let is_kept = |v: f64| (line.low..=line.high).contains(&v);
        assert!(read.value.is_none_or(is_kept), "{}: {read:?}", column.what);
    }
}

#[test]
fn degrees_of_one_fault_are_told_apart_by_what_they_read() {
    let pack = &machines().expect("sound")["P"];
    let matrix = Matrix::new(&pack.model, &pack.workshop).expect("solves");
    let fault = matrix.faults().iter().find(|f| f.id == "capacitor_low");
    let at = |ratio| {
        matrix
            .row_at(fault.expect("listed"), ratio)
            .expect("solves")
    };
    let (half, full) = (at(0.5), at(1.0));
    let differ = |(a, b): (&Cell, &Cell)| a.differs && b.differs && a.value != b.value;
    let both = half.cells.iter().zip(&full.cells).position(differ);
    let both = both.expect("a column that shows either");
    assert!(matrix.separating(&half, &full).contains(&both));
    assert_eq!(matrix.row(fault.expect("listed")).expect("solves"), full);
}

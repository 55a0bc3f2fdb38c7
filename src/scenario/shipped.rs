//! The files that ship, compiled in, read and checked once.

use std::sync::LazyLock;

use crate::scenario::check_faults::check_catalogue_for;
use crate::scenario::check_faults::read_catalogue;
use crate::scenario::check_machine::read_machine;
use crate::scenario::fault_file::CatalogueFile;
use crate::scenario::machine_file::MachineFile;
use crate::scenario::problem::FileError;

const CATALOGUE: (&str, &str) = (
    "scenarios/faults.json",
    include_str!("../../scenarios/faults.json"),
);

/// File name and text of each machine.
const MACHINES: [(&str, &str); 3] = [
    (
        "scenarios/machines/p.json",
        include_str!("../../scenarios/machines/p.json"),
    ),
    (
        "scenarios/machines/t.json",
        include_str!("../../scenarios/machines/t.json"),
    ),
    (
        "scenarios/machines/n.json",
        include_str!("../../scenarios/machines/n.json"),
    ),
];

/// All that ships, or all that is wrong with it.
static SHIPPED: LazyLock<Result<Shipped, FileError>> = LazyLock::new(read_all);

struct Shipped {
    catalogue: CatalogueFile,
    machines: Vec<MachineFile>,
}

fn read_all() -> Result<Shipped, FileError> {
    let catalogue = read_catalogue(CATALOGUE.0, CATALOGUE.1)?;
    let mut problems = Vec::new();
    let mut machines = Vec::new();
    for (file, text) in MACHINES {
        let machine = read_machine(file, text, &catalogue);
        let checked = machine.and_then(|machine| {
            check_catalogue_for(CATALOGUE.0, &catalogue, &machine).map(|()| machine)
        });
        match checked {
            Ok(machine) => machines.push(machine),
            Err(error) => problems.extend(error.problems),
        }
    }
    if problems.is_empty() {
        Ok(Shipped {
            catalogue,
            machines,
        })
    } else {
        Err(FileError { problems })
    }
}

/// The machines that ship. A test holds that they are sound, so an error is a broken build.
pub fn machine_files() -> Result<&'static [MachineFile], FileError> {
    SHIPPED
        .as_ref()
        .map(|all| all.machines.as_slice())
        .map_err(Clone::clone)
}

/// The fault catalogue that ships. A test holds that it is sound.
pub fn catalogue() -> Result<&'static CatalogueFile, FileError> {
    SHIPPED
        .as_ref()
        .map(|all| &all.catalogue)
        .map_err(Clone::clone)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_shipped_file_is_sound() {
        if let Err(error) = machine_files() {
            panic!("{error}");
        }
    }

    #[test]
    fn every_shipped_machine_survives_writing_and_reading() {
        for machine in machine_files().expect("sound") {
            let text = serde_json::to_string(machine).expect("writes");
            let again = read_machine("again.json", &text, catalogue().expect("sound"));
            assert_eq!(&again.expect("reads"), machine);
        }
    }

    #[test]
    fn the_catalogue_survives_writing_and_reading() {
        let catalogue = catalogue().expect("sound");
        let text = serde_json::to_string(catalogue).expect("writes");
        assert_eq!(
            &read_catalogue("again.json", &text).expect("reads"),
            catalogue
        );
    }
}

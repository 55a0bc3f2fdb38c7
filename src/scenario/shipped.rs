//! The files that ship, compiled in, read and checked once.

use std::sync::LazyLock;

use crate::scenario::check_faults::check_catalogue_for;
use crate::scenario::check_faults::read_catalogue;
use crate::scenario::check_job::read_job;
use crate::scenario::check_machine::read_machine;
use crate::scenario::fault_file::CatalogueFile;
use crate::scenario::job_file::JobFile;
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

/// Names a job's file from its id.
macro_rules! shipped {
    ($id:literal) => {
        (
            $id,
            concat!("scenarios/jobs/", $id, ".json"),
            include_str!(concat!("../../scenarios/jobs/", $id, ".json")),
        )
    };
}

/// Id, file name and text of each job, in the order a beginner meets them.
const JOBS: [(&str, &str, &str); 16] = [
    shipped!("no_water"),
    shipped!("washes_will_not_spin"),
    shipped!("hums_and_stands"),
    shipped!("stops_and_beeps_before_spin"),
    shipped!("hums_and_water_stays"),
    shipped!("walks_and_fills_again"),
    shipped!("silent_and_dry"),
    shipped!("stops_full_of_water"),
    shipped!("squeals_and_comes_out_wet"),
    shipped!("dark_panel"),
    shipped!("dial_stands_still"),
    shipped!("no_spin_since_cousin"),
    shipped!("overflows_since_the_repair"),
    shipped!("water_runs_at_once"),
    shipped!("hot_and_stops"),
    shipped!("bites_bare_feet"),
];

/// A job that ships.
#[derive(Clone, Debug, PartialEq)]
pub struct ShippedJob {
    /// Its id: the file's name without its ending.
    pub id: &'static str,
    /// What the file says.
    pub file: JobFile,
}

/// All that ships, or all that is wrong with it.
static SHIPPED: LazyLock<Result<Shipped, FileError>> = LazyLock::new(read_all);

struct Shipped {
    catalogue: CatalogueFile,
    machines: Vec<MachineFile>,
    jobs: Vec<ShippedJob>,
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
    let mut jobs = Vec::new();
    for (id, file, text) in JOBS {
        match read_job(file, text, &machines, &catalogue) {
            Ok(file) => jobs.push(ShippedJob { id, file }),
            Err(error) => problems.extend(error.problems),
        }
    }
    if !problems.is_empty() {
        return Err(FileError { problems });
    }
    Ok(Shipped {
        catalogue,
        machines,
        jobs,
    })
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

/// The jobs that ship, easiest first. A test holds that they are sound.
pub fn job_files() -> Result<&'static [ShippedJob], FileError> {
    SHIPPED
        .as_ref()
        .map(|all| all.jobs.as_slice())
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

    #[test]
    fn every_shipped_job_survives_writing_and_reading() {
        let (machines, catalogue) = (machine_files().expect("sound"), catalogue().expect("sound"));
        for job in job_files().expect("sound") {
            let text = serde_json::to_string(&job.file).expect("writes");
            let again = read_job("again.json", &text, machines, catalogue);
            assert_eq!(again.expect("reads"), job.file, "{}", job.id);
        }
    }

    #[test]
    fn jobs_grow_harder_from_the_opening_job() {
        let levels: Vec<u8> = job_files()
            .expect("sound")
            .iter()
            .map(|job| job.file.level)
            .collect();
        assert_eq!(levels[0], 1);
        assert!(levels.is_sorted(), "{levels:?}");
    }
}

//! The files that ship, compiled in and read once.

use std::iter;
use std::sync::LazyLock;
use std::sync::OnceLock;

use crate::scenario::fault_file::CatalogueFile;
use crate::scenario::job_file::JobFile;
use crate::scenario::machine_file::MachineFile;
use crate::scenario::problem::FileError;
use crate::scenario::read::read;
use crate::scenario::set_file::SetFile;

const CATALOGUE: (&str, &str) = (
    "scenarios/faults.json",
    include_str!(concat!(env!("OUT_DIR"), "/scenarios/faults.json")),
);

/// File name and text of each machine.
const MACHINES: [(&str, &str); 3] = [
    (
        "scenarios/machines/p.json",
        include_str!(concat!(env!("OUT_DIR"), "/scenarios/machines/p.json")),
    ),
    (
        "scenarios/machines/t.json",
        include_str!(concat!(env!("OUT_DIR"), "/scenarios/machines/t.json")),
    ),
    (
        "scenarios/machines/n.json",
        include_str!(concat!(env!("OUT_DIR"), "/scenarios/machines/n.json")),
    ),
];

/// Names a job's file from its id.
macro_rules! shipped {
    ($id:literal) => {
        (
            $id,
            concat!("scenarios/jobs/", $id, ".json"),
            include_str!(concat!(env!("OUT_DIR"), "/scenarios/jobs/", $id, ".json")),
        )
    };
}

/// Id, file name and text of each job, in the order a beginner meets them.
const JOBS: [(&str, &str, &str); 70] = [
    shipped!("no_water"),
    shipped!("gives_up_at_once"),
    shipped!("keys_do_nothing"),
    shipped!("nothing_at_all"),
    shipped!("waits_for_its_water"),
    shipped!("white_mountain"),
    shipped!("says_later"),
    shipped!("washes_will_not_spin"),
    shipped!("hums_and_stands"),
    shipped!("stops_and_beeps_before_spin"),
    shipped!("hums_and_water_stays"),
    shipped!("clicks_and_stirs_nothing"),
    shipped!("everything_in_one_go"),
    shipped!("fills_and_never_gets_full"),
    shipped!("goes_quiet_in_the_middle"),
    shipped!("slow_to_empty"),
    shipped!("takes_an_hour_to_fill"),
    shipped!("water_comes_back_up"),
    shipped!("walks_and_fills_again"),
    shipped!("silent_and_dry"),
    shipped!("stops_full_of_water"),
    shipped!("not_the_wash_that_smells"),
    shipped!("squeals_and_comes_out_wet"),
    shipped!("dark_panel"),
    shipped!("dial_stands_still"),
    shipped!("bangs_like_a_drum"),
    shipped!("bath_before_rinse"),
    shipped!("changes_its_mind"),
    shipped!("dead_after_the_storm"),
    shipped!("empties_and_stops_there"),
    shipped!("fuller_than_ever"),
    shipped!("has_to_be_coaxed_on"),
    shipped!("hums_quietly_no_wash"),
    shipped!("pulls_and_nothing_opens"),
    shipped!("shakes_the_pictures"),
    shipped!("slow_since_the_drought"),
    shipped!("squeals_after_the_new_belt"),
    shipped!("third_valve_still_slow"),
    shipped!("turns_one_way"),
    shipped!("walked_to_the_door"),
    shipped!("whines_and_stands"),
    shipped!("whirls_and_does_not_wring"),
    shipped!("water_from_somewhere_else"),
    shipped!("slaps_and_rubs"),
    shipped!("no_spin_since_cousin"),
    shipped!("overflows_since_the_repair"),
    shipped!("water_runs_at_once"),
    shipped!("hot_and_stops"),
    shipped!("dead_after_a_buzz"),
    shipped!("drinks_and_slaps_over"),
    shipped!("drips_and_slips"),
    shipped!("forgets_what_it_was_doing"),
    shipped!("half_as_strong_since_the_fitter"),
    shipped!("hot_since_the_cheap_part"),
    shipped!("one_way_only_and_hot"),
    shipped!("prickles_in_the_scullery"),
    shipped!("rests_after_ten_minutes"),
    shipped!("smells_and_counts_for_nothing"),
    shipped!("takes_its_time_stopping"),
    shipped!("weak_in_the_new_place"),
    shipped!("fuller_and_splashing"),
    shipped!("stops_if_you_look_at_it"),
    shipped!("bites_bare_feet"),
    shipped!("creeps_and_tears_sheets"),
    shipped!("grandmothers_machine"),
    shipped!("no_heart_after_a_while"),
    shipped!("rust_and_rumble"),
    shipped!("starts_when_it_likes"),
    shipped!("stops_when_it_gets_going"),
    shipped!("trips_and_old"),
];

/// File name and text of each training set.
const SETS: [(&str, &str); 1] = [(
    "scenarios/sets/first_month.json",
    include_str!(concat!(env!("OUT_DIR"), "/scenarios/sets/first_month.json")),
)];

/// A job that ships.
#[derive(Clone, Debug, PartialEq)]
pub struct ShippedJob {
    /// Its id: the file's name without its ending.
    pub id: &'static str,
    /// What the file says.
    pub file: JobFile,
}

static CATALOGUE_FILE: LazyLock<Result<CatalogueFile, FileError>> =
    LazyLock::new(|| read(CATALOGUE.0, CATALOGUE.1));

/// All other files, or what is wrong with the first that is not sound.
static SHIPPED: OnceLock<Result<Shipped, FileError>> = OnceLock::new();

fn shipped() -> &'static Result<Shipped, FileError> {
    SHIPPED.get_or_init(|| {
        let mut shipped = Shipped::NONE;
        while shipped.read_next()? {}
        Ok(shipped)
    })
}

/// Files as they stand. That they are sound is for the tests to say: to check them whenever a page starts
/// would take half as long again.
struct Shipped {
    machines: Vec<MachineFile>,
    jobs: Vec<ShippedJob>,
    sets: Vec<SetFile>,
}

impl Shipped {
    const NONE: Self = Self {
        machines: Vec::new(),
        jobs: Vec::new(),
        sets: Vec::new(),
    };

    /// Reads one more file; false if there is none.
    fn read_next(&mut self) -> Result<bool, FileError> {
        if let Some((file, text)) = MACHINES.get(self.machines.len()) {
            self.machines.push(read(file, text)?);
        } else if let Some((id, file, text)) = JOBS.get(self.jobs.len()) {
            let file = read(file, text)?;
            self.jobs.push(ShippedJob { id, file });
        } else if let Some((file, text)) = SETS.get(self.sets.len()) {
            self.sets.push(read(file, text)?);
        } else {
            return Ok(false);
        }
        Ok(true)
    }
}

/// Reads the files one a step before they are asked for, so that a page can do other things between two.
pub fn read_ahead() -> impl Iterator<Item = ()> {
    let mut shipped = Some(Shipped::NONE);
    iter::from_fn(move || {
        let has_more = shipped.as_mut()?.read_next();
        if matches!(has_more, Ok(true)) {
            return Some(());
        }
        let read = shipped.take()?;
        // Who asked meanwhile has read them all.
        drop(SHIPPED.set(has_more.map(|_| read)));
        None
    })
}

/// The machines that ship. A test holds that they are sound, so an error is a broken build.
pub fn machine_files() -> Result<&'static [MachineFile], FileError> {
    shipped()
        .as_ref()
        .map(|all| all.machines.as_slice())
        .map_err(Clone::clone)
}

/// The fault catalogue that ships. A test holds that it is sound.
pub fn catalogue() -> Result<&'static CatalogueFile, FileError> {
    CATALOGUE_FILE.as_ref().map_err(Clone::clone)
}

/// The jobs that ship, easiest first. A test holds that they are sound.
pub fn job_files() -> Result<&'static [ShippedJob], FileError> {
    shipped()
        .as_ref()
        .map(|all| all.jobs.as_slice())
        .map_err(Clone::clone)
}

/// The training sets that ship. A test holds that they are sound.
pub fn set_files() -> Result<&'static [SetFile], FileError> {
    shipped()
        .as_ref()
        .map(|all| all.sets.as_slice())
        .map_err(Clone::clone)
}

#[cfg(test)]
#[path = "../../build/dense.rs"]
mod dense;

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scenario::check_faults::check_catalogue_for;
    use crate::scenario::check_faults::read_catalogue;
    use crate::scenario::check_job::read_job;
    use crate::scenario::check_machine::read_machine;
    use crate::scenario::check_set::read_set;

    /// All that is wrong with what ships.
    fn problems() -> Result<(), FileError> {
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
        for (_, file, text) in JOBS {
            if let Err(error) = read_job(file, text, &machines, &catalogue) {
                problems.extend(error.problems);
            }
        }
        let ids = JOBS.map(|(id, _, _)| id);
        for (file, text) in SETS {
            if let Err(error) = read_set(file, text, &ids, &machines, &catalogue) {
                problems.extend(error.problems);
            }
        }
        if problems.is_empty() {
            Ok(())
        } else {
            Err(FileError { problems })
        }
    }

    #[test]
    fn every_shipped_file_is_sound() {
        if let Err(error) = problems() {
            panic!("{error}");
        }
    }

    #[test]
    fn white_space_goes_and_strings_stay() {
        let json =
            "{ \"a b\" : [ 1.5,\n\t-2e3 ], \"say \\\" so\": \"back\\\\\" , \"c\": null }\r\n";
        let dense = dense::dense(json);
        assert_eq!(dense, r#"{"a b":[1.5,-2e3],"say \" so":"back\\","c":null}"#);
        let value = |text: &str| serde_json::from_str::<serde_json::Value>(text).expect("JSON");
        assert_eq!(value(&dense), value(json));
    }

    #[test]
    fn what_ships_says_what_its_source_says() {
        let texts = MACHINES.into_iter().chain(SETS).chain([CATALOGUE]);
        for (file, text) in texts.chain(JOBS.map(|(_, file, text)| (file, text))) {
            let source = std::fs::read_to_string(file).expect("a file of this project");
            let value = |text: &str| serde_json::from_str::<serde_json::Value>(text).expect("JSON");
            assert_eq!(value(text), value(&source), "{file}");
            assert!(text.len() < source.len() && !text.contains('\n'), "{file}");
        }
    }

    #[test]
    fn reading_ahead_reads_each_file_once() {
        assert_eq!(
            read_ahead().count(),
            MACHINES.len() + JOBS.len() + SETS.len()
        );
        assert_eq!(job_files().expect("sound").len(), JOBS.len());
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

//! Reference rows: readings that another program computed, and ours beside them.
//!
//! ```text
//! variant,state,fault,quantity,value,unit,lid,setup,signed_slip,display
//! P,spinning,E51,Vac(10M||100p) C1-C2,183.2,V,closed,open P21 open P22,0.0412,
//! met:  |ours - value| <= max(0.1 % of |value|, floor)   and   OL where the row says OL
//! ```
//! Several faults stand as `E04+E46`, a milder one as `E51=0.5`; a fault goes by number or name.
//! Columns are found by their names. `probe --rows` and the row tests share this file, so they
//! cannot disagree. Floors below which a row only says "nothing" stand with each quantity.

mod answer; // a row's own reading
mod quantity; // what a row asks for
mod table; // the file
mod told; // rows as they are told

use std::collections::BTreeMap;
use std::sync::Arc;

pub use answer::Answer;
pub use quantity::Quantity;
pub use table::Row;
pub use table::read;
pub use told::run;

use crate::cli::failure::Failure;
use crate::cli::hold::Hold;
use crate::plant::harness::WiringModel;
use crate::scenario;
use crate::scenario::fault_file::CatalogueFile;
use crate::scenario::machine_file::MachineFile;
use crate::scenario::names::Names;
use crate::scenario::problem::Problems;
use crate::scenario::wiring_model;

/// Share of its value by which a row may differ.
pub const TOLERANCE_RATIO: f64 = 1e-3;

/// The wirings and faults that rows name.
pub struct Machines {
    wirings: BTreeMap<String, Arc<WiringModel>>,
    catalogue: &'static CatalogueFile,
}

impl Machines {
    /// The machines that ship.
    ///
    /// # Errors
    /// When a shipped file is wrong.
    pub fn shipped() -> Result<Self, Failure> {
        let wiring = |machine: &MachineFile| -> Result<_, Failure> {
            Ok((
                machine.id.clone(),
                wiring_model(&machine.id, &machine.wiring)?,
            ))
        };
        Ok(Self {
            wirings: scenario::machine_files()?
                .iter()
                .map(wiring)
                .collect::<Result<_, Failure>>()?,
            catalogue: scenario::catalogue()?,
        })
    }

    /// The machine of a row, held as the row says.
    ///
    /// # Errors
    /// Names the field of each thing that the machine does not have.
    pub fn hold(&self, file: &str, row: &Row) -> Result<Hold, Failure> {
        let at = format!("line {}", row.line);
        let mut problems = Problems::new(file);
        let Some(model) = self.wirings.get(&row.machine) else {
            let known = self.wirings.keys().map(String::as_str);
            Names::known("machine", known).expect(
                &format!("{at}, variant"),
                &row.machine,
                &mut problems,
            );
            return Err(Failure::from_problems(problems));
        };
        let mut hold = Hold::sound(model, &row.state);
        hold.is_lid_open = row.is_lid_open;
        hold.open = row.open.clone();
        hold.links = row.links.clone();
        hold.check(&mut problems);
        self.add_faults(file, row, &mut hold, &mut problems)?;
        match problems.into_result(hold) {
            Ok(hold) => Ok(hold),
            Err(mut error) => {
                for problem in &mut error.problems {
                    problem.path = format!("{at}, {}", problem.path);
                }
                Err(Failure::Input(error))
            }
        }
    }

    fn add_faults(
        &self,
        file: &str,
        row: &Row,
        hold: &mut Hold,
        problems: &mut Problems<'_>,
    ) -> Result<(), Failure> {
        let words = row.fault.split(['+', '&', ';', ',', ' ']);
        for word in words.filter(|w| !w.is_empty() && !w.eq_ignore_ascii_case("none")) {
            let (name, severity) = word.split_once('=').unwrap_or((word, "1"));
            let severity_ratio = severity.parse().ok().filter(|s| (0.0..=1.0).contains(s));
            let Some(severity_ratio) = severity_ratio else {
                problems.add("fault", word, "give a severity from 0 to 1 behind =");
                continue;
            };
            let has = |fault: &&scenario::fault_file::FaultFile| {
                fault.machines.contains_key(&row.machine)
                    && (fault.reference.eq_ignore_ascii_case(name) || fault.id == name)
            };
            if let Some(fault) = self.catalogue.faults.iter().find(has) {
                let changes = fault.changes(file, &row.machine, &hold.model)?;
                hold.faults.push((changes, severity_ratio));
            } else {
                self.known_faults(row).expect("fault", name, problems);
            }
        }
        Ok(())
    }

    /// Faults that a row's machine can have, by reference number and by name.
    fn known_faults(&self, row: &Row) -> Names {
        let all = self.catalogue.faults.iter();
        let here: Vec<&str> = all
            .filter(|f| f.machines.contains_key(&row.machine))
            .flat_map(|f| [f.reference.as_str(), f.id.as_str()])
            .collect();
        Names::known("fault of this machine", here)
    }
}

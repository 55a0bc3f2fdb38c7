//! JSON Schemas of the file formats, made from the types that read them, so that an editor can
//! help whoever writes a file and no second description can drift. Native only.

use schemars::Schema;
use schemars::schema_for;

use crate::scenario::fault_file::CatalogueFile;
use crate::scenario::fault_file::FAULT_FORMAT;
use crate::scenario::job_file::JOB_FORMAT;
use crate::scenario::job_file::JobFile;
use crate::scenario::machine_file::MACHINE_FORMAT;
use crate::scenario::machine_file::MachineFile;
use crate::scenario::set_file::SET_FORMAT;
use crate::scenario::set_file::SetFile;
use crate::scenario::share::SEALED_FORMAT;
use crate::scenario::share::SealedFile;

/// The schema of each file format, by the format's name.
pub fn schema() -> Vec<(&'static str, Schema)> {
    vec![
        (MACHINE_FORMAT, schema_for!(MachineFile)),
        (FAULT_FORMAT, schema_for!(CatalogueFile)),
        (JOB_FORMAT, schema_for!(JobFile)),
        (SEALED_FORMAT, schema_for!(SealedFile)),
        (SET_FORMAT, schema_for!(SetFile)),
    ]
}

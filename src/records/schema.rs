//! JSON Schemas of assessments and records, made from the types that read them. Native only.

use schemars::Schema;
use schemars::schema_for;

use crate::assess::assessment_file::ASSESSMENT_FORMAT;
use crate::assess::assessment_file::AssessmentFile;
use crate::records::chain::ERASED_FORMAT;
use crate::records::chain::Erased;
use crate::records::record::RECORD_FORMAT;
use crate::records::record::Record;

/// The schema of each file format, by the format's name.
pub fn schema() -> Vec<(&'static str, Schema)> {
    vec![
        (ASSESSMENT_FORMAT, schema_for!(AssessmentFile)),
        (RECORD_FORMAT, schema_for!(Record)),
        (ERASED_FORMAT, schema_for!(Erased)),
    ]
}

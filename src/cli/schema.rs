//! `schema`: the JSON Schema of each file format, from the types that read them.

use std::io::Write;

use serde_json::Map;
use serde_json::Value;

use crate::cli::Verdict;
use crate::cli::args::SchemaArgs;
use crate::cli::failure::Failure;
use crate::records;
use crate::scenario;

/// Does it.
pub fn run(args: &SchemaArgs, out: &mut dyn Write) -> Result<Verdict, Failure> {
    let mut schemas = scenario::schema();
    schemas.extend(records::schema());
    let Some(format) = &args.format else {
        let all: Map<String, Value> = schemas
            .into_iter()
            .map(|(name, schema)| (name.to_owned(), schema.to_value()))
            .collect();
        serde_json::to_writer_pretty(&mut *out, &all)?;
        writeln!(out)?;
        return Ok(Verdict::Passed);
    };
    let found = schemas
        .iter()
        .find(|(name, _)| name.contains(format.as_str()));
    let (_, schema) = found.ok_or_else(|| {
        let names: Vec<&str> = schemas.iter().map(|(name, _)| *name).collect();
        Failure::usage(
            "FORMAT",
            format,
            format!("name one of {}", names.join(", ")),
        )
    })?;
    serde_json::to_writer_pretty(&mut *out, schema)?;
    writeln!(out)?;
    Ok(Verdict::Passed)
}

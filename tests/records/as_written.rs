//! Records read as they were written: every line at its act, and what is not known here in its own words.

use rayon::prelude::*;

use tubwright::bench::job::Entry;
use tubwright::bench::job::Job;
use tubwright::bench::words;
use tubwright::records::as_written::AsWritten;

use crate::CANDIDATE;
use crate::LIBRARY;
use crate::RECORD;
use crate::close;

/// Read without replay, every line of the notebook stands at the act that wrote it.
#[test]
fn as_it_was_written_each_act_has_the_lines_that_it_wrote() {
    let logs: Vec<(String, Vec<Entry>)> = std::fs::read_dir("tests/jobs")
        .expect("there")
        .filter_map(|entry| {
            let path = entry.ok()?.path();
            let job = path.file_stem()?.to_str()?.to_owned();
            let text = std::fs::read_to_string(&path).ok()?;
            LIBRARY.task(&job)?;
            Some((job, serde_json::from_str(&text).ok()?))
        })
        .collect();
    assert!(logs.len() > 20, "{}", logs.len());
    logs.par_iter().for_each(|(name, log)| {
        let task = LIBRARY.task(name).expect("ships");
        let workshop = &task.scenario.workshop;
        let mut job = Job::new(task.scenario.clone(), 5).expect("starts");
        let mut wrote: Vec<Vec<u32>> = Vec::new();
        for entry in log {
            job.advance_to(entry.tick);
            let outcome = job.act(entry.action.clone());
            if outcome.refusal.is_none() {
                wrote.push(outcome.notes);
            }
        }
        let mut body = RECORD.body.clone();
        body.job.clone_from(name);
        body.log = job.log().to_vec();
        body.notebook = job.notebook().to_vec();
        let text = close(body, CANDIDATE).write().expect("finite");
        let written = AsWritten::read("r.json", &text, &LIBRARY).expect("a record");
        assert_eq!(written.acts.len(), wrote.len());
        for (act, wrote) in written.acts.iter().zip(&wrote) {
            assert_eq!(act.lines.len(), wrote.len(), "{name}: {act:?} {wrote:?}");
            for (line, number) in act.lines.iter().zip(wrote) {
                let note = &job.notebook()[*number as usize - 1];
                let shown = words::note(note, workshop);
                assert!(line.words.starts_with(&shown), "{name}: {line:?}, {shown}");
            }
        }
    });
}

#[test]
fn a_record_that_this_version_does_not_know_is_told_in_its_own_words() {
    let text = RECORD.write().expect("finite");
    let whole = AsWritten::read("r.json", &text, &LIBRARY).expect("a record");
    assert_eq!(whole.result.as_ref(), Some(&RECORD.body.counted()));
    assert_eq!(whole.sitting, RECORD.body.sitting);
    assert!(whole.is_of_this_engine() && whole.seal.is_some());
    let mut other: serde_json::Value = serde_json::from_str(&text).expect("JSON");
    other["body"]["engine"] = "9.0.0".into();
    other["body"]["result"]["stars"] = 4.into();
    other["body"]["log"][0] = serde_json::json!({"tick": 7, "do": "x_ray", "of": "motor"});
    other["body"]["notebook"][0]["entry"] = serde_json::json!({"picture": "all well"});
    let other = AsWritten::read("r.json", &other.to_string(), &LIBRARY).expect("a record");
    assert_eq!(other.result, None);
    let stars = ("stars".to_owned(), "4".to_owned());
    assert!(other.as_it_stands.contains(&stars), "{other:?}");
    assert_eq!(other.acts[0].words, "do: x_ray, of: motor");
    assert_eq!(other.acts[0].lines[0].words, "picture: all well");
    assert!(other.caution().contains("Only version 9.0.0"));
    for text in [
        "",
        "{}",
        "[1]",
        r#"{"format":"tubwright-record-1"}"#,
        &"[".repeat(9999),
    ] {
        assert!(
            AsWritten::read("r.json", text, &LIBRARY).is_err(),
            "{text:.20}"
        );
    }
}

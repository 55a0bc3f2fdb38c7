//! `play --record`, `verify`, `cohort`, `statements`, `assess`, `package`: results as files.

use crate::code;
use crate::json;
use crate::run;
use crate::said;
use tubwright::records::course::Kind;
use tubwright::records::course::LANGUAGE;
use tubwright::records::course::Package;

/// A folder of this test's own.
fn folder(name: &str) -> std::path::PathBuf {
    let folder = std::path::Path::new(env!("CARGO_TARGET_TMPDIR")).join(name);
    let _ = std::fs::remove_dir_all(&folder);
    std::fs::create_dir_all(&folder).expect("a folder");
    folder
}

/// Whose record keeps the decisions.
const WITH_DECISIONS: &str = "c-1";

fn played(folder: &std::path::Path, job: &str, candidate: &str) -> String {
    let file = folder.join(format!("{job}_{}.json", candidate.len()));
    let file = file.display().to_string();
    let log = format!("tests/jobs/{job}.json");
    // One of them keeps what its decisions were worth, and is verified with them.
    let mut words = vec![
        "play",
        job,
        &log,
        "--record",
        &file,
        "--candidate",
        candidate,
    ];
    if (job, candidate) != ("no_water", WITH_DECISIONS) {
        words.push("--quick");
    }
    let output = run(&words);
    assert_eq!(code(&output), 0, "{}", said(&output));
    file
}

#[test]
fn what_was_played_verifies_and_what_was_edited_does_not() {
    let folder = folder("verify");
    let file = played(&folder, "no_water", WITH_DECISIONS);
    played(&folder, "hums_and_stands", WITH_DECISIONS);
    let all = folder.display().to_string();
    assert_eq!(
        code(&run(&[
            "check",
            &file,
            "scenarios/assessments/first_visits.json"
        ])),
        0
    );
    let answers = json(&["verify", &all, "--json"]);
    let accepted = |answers: &serde_json::Value| {
        let list = answers.as_array().expect("a list").clone();
        list.iter().filter(|a| a["accepted"] == true).count()
    };
    assert_eq!(accepted(&answers), 2);
    let text = std::fs::read_to_string(&file).expect("written");
    let edited = text.replacen("\"safe\":true", "\"safe\":false", 1);
    assert_ne!(edited, text);
    std::fs::write(&file, edited).expect("writes");
    let output = run(&["verify", &all]);
    assert_eq!(code(&output), 1);
    let told = String::from_utf8_lossy(&output.stdout).into_owned();
    assert!(told.contains("the record was edited"), "{told}");
    assert!(told.contains("1 of 2 accepted"), "{told}");
}

#[test]
fn a_record_of_another_engine_is_refused_and_can_be_read_as_it_was_written() {
    let folder = folder("read");
    let file = played(&folder, "hums_and_stands", "c-1");
    let text = std::fs::read_to_string(&file).expect("written");
    let engine = concat!("\"engine\":\"", env!("CARGO_PKG_VERSION"), "\"");
    let old = text.replacen(engine, "\"engine\":\"0.0.7\"", 1);
    // An act that no version here knows, and what it showed.
    let old = old.replacen(
        "\"log\":[",
        "\"log\":[{\"tick\":0,\"do\":\"x_ray\",\"of\":\"motor\"},",
        1,
    );
    assert_ne!(old, text);
    std::fs::write(&file, &old).expect("writes");
    assert_eq!(code(&run(&["verify", &file])), 1);
    let output = run(&["verify", &file, "--read"]);
    assert_eq!(code(&output), 0, "{}", said(&output));
    let told = String::from_utf8_lossy(&output.stdout).into_owned();
    for part in [
        "as version 0.0.7 wrote it",
        "do: x_ray, of: motor",
        "It was not worked out again",
        "total ",
    ] {
        assert!(told.contains(part), "{part} in {told}");
    }
    let answers = json(&["verify", &file, "--read", "--json"]);
    assert_eq!(answers[0]["engine"], "0.0.7");
    let record: serde_json::Value = serde_json::from_str(&old).expect("JSON");
    let displays = record["body"]["notebook"].as_array().expect("a list");
    let shown: Vec<&str> = displays
        .iter()
        .filter_map(|note| note["entry"]["reading"]["display"].as_str())
        .collect();
    assert!(!shown.is_empty());
    for display in shown {
        assert!(told.contains(display), "{display} in {told}");
    }
    std::fs::write(&file, "{}").expect("writes");
    assert_eq!(code(&run(&["verify", &file, "--read"])), 1);
    assert_eq!(code(&run(&["verify", &file, "--read", "--without-key"])), 2);
}

#[test]
fn a_file_of_one_record_a_line_is_read_line_by_line() {
    let folder = folder("lines");
    let lines: String = ["no_water", "hums_and_stands"]
        .map(|job| std::fs::read_to_string(played(&folder, job, "c-1")).expect("written"))
        .concat();
    let file = folder.join("c-1.jsonl").display().to_string();
    std::fs::write(&file, lines).expect("writes");
    let answers = json(&["verify", &file, "--json"]);
    let names: Vec<&str> = answers
        .as_array()
        .expect("a list")
        .iter()
        .filter_map(|a| a["file"].as_str())
        .collect();
    assert_eq!(names.len(), 2);
    assert!(names[1].ends_with("c-1.jsonl, line 2"), "{names:?}");
    assert!(
        answers
            .as_array()
            .is_some_and(|all| all.iter().all(|a| a["accepted"] == true))
    );
}

#[test]
fn a_cohort_as_csv_is_safe_to_open() {
    let folder = folder("cohort");
    played(&folder, "no_water", "=1+1");
    played(&folder, "hums_and_stands", "=1+1");
    played(&folder, "no_water", "\u{202e}ab,\"c");
    let all = folder.display().to_string();
    let output = run(&["cohort", &all, "--csv"]);
    assert_eq!(code(&output), 0, "{}", said(&output));
    let text = String::from_utf8(output.stdout).expect("text");
    let lines: Vec<&str> = text.split_terminator("\r\n").collect();
    assert_eq!(lines.len(), 3, "{text}");
    assert!(lines[1].starts_with("'=1+1,2,"), "{text}");
    assert!(
        lines[2].starts_with("\"\u{202e}ab,\"\"c\u{202c}\",1,"),
        "{text}"
    );
    let found = json(&["cohort", &all, "--json"]);
    assert_eq!(found["people"].as_array().map(Vec::len), Some(2));
    assert!(found["reliability"]["words"].is_string());
}

#[test]
fn an_assessment_is_drawn_and_packed() {
    let folder = folder("package");
    let assessment = "scenarios/assessments/first_visits.json";
    let key = folder.join("key").display().to_string();
    std::fs::write(&key, format!("{}\n", "5a".repeat(32))).expect("writes");
    let words = [
        "assess",
        assessment,
        "--candidate",
        "c-1",
        "--release",
        "r",
        "--key",
        &key,
    ];
    let answer = json(&[&words[..], &["--json"]].concat());
    assert_eq!(answer["jobs"].as_array().map(Vec::len), Some(4));
    assert_eq!(answer["start_code"].as_str().map(str::len), Some(19));

    let dist = folder.join("dist");
    std::fs::create_dir_all(dist.join("styles")).expect("a folder");
    std::fs::write(dist.join("index.html"), "<!doctype html>").expect("writes");
    std::fs::write(dist.join("styles/a b.css"), "p{}").expect("writes");
    let dist = dist.display().to_string();
    for (kind, manifest) in [
        ("--scorm12", "imsmanifest.xml"),
        ("--scorm2004", "imsmanifest.xml"),
        ("--cmi5", "cmi5.xml"),
    ] {
        let zip = folder.join("course.zip");
        let out = zip.display().to_string();
        let output = run(&[
            "package",
            kind,
            "--assessment",
            assessment,
            "--dist",
            &dist,
            "--out",
            &out,
        ]);
        assert_eq!(code(&output), 0, "{}", said(&output));
        let mut package =
            zip::ZipArchive::new(std::fs::File::open(&zip).expect("written")).expect("a zip");
        for name in [
            manifest,
            "index.html",
            "styles/a b.css",
            "assessments/first_visits.json",
        ] {
            assert!(package.index_for_name(name).is_some(), "{name} is packed");
        }
        let text =
            std::io::read_to_string(package.by_name(manifest).expect("there")).expect("text");
        assert!(text.contains("First visits alone"));
        assert!(
            kind == "--cmi5" || text.contains("href=\"styles/a%20b.css\""),
            "{text}"
        );
        let bytes = std::fs::read(&zip).expect("written");
        assert!(
            packed_as_in_the_page(manifest, kind, assessment) == bytes,
            "{kind}: the page makes the same bytes"
        );
    }
}

/// The package as the page makes it: of a list of files in any order, each fetched when its turn comes.
fn packed_as_in_the_page(manifest: &str, kind: &str, assessment: &str) -> Vec<u8> {
    let kind = Kind::ALL
        .into_iter()
        .find(|one| format!("--{}", one.name()) == kind)
        .expect("one of three");
    assert_eq!(kind.manifest(), manifest);
    let text = std::fs::read_to_string(assessment).expect("ships");
    let file = serde_json::from_str(&text).expect("ships");
    let list = vec!["styles/a b.css".to_owned(), "index.html".to_owned()];
    let base = "https://tubwright.example";
    let package = Package::new(kind, (&file, &text), list, base, LANGUAGE).expect("fits");
    let mut zip = package.begun().expect("room");
    for file in package.build() {
        let bytes: &[u8] = match file.as_str() {
            "index.html" => b"<!doctype html>",
            _ => b"p{}",
        };
        zip.add(file, bytes).expect("room");
    }
    package.closed(zip).expect("room")
}

#[test]
fn a_base_that_is_no_address_is_refused() {
    let folder = folder("base");
    std::fs::write(folder.join("index.html"), "<!doctype html>").expect("writes");
    let (dist, zip) = (folder.display().to_string(), folder.join("course.zip"));
    let output = run(&[
        "package",
        "--cmi5",
        "--assessment",
        "scenarios/assessments/first_visits.json",
        "--dist",
        &dist,
        "--base",
        "school",
        "--out",
        &zip.display().to_string(),
    ]);
    assert_eq!(code(&output), 2);
    assert!(said(&output).contains("--base"), "{}", said(&output));
    assert!(!zip.exists(), "nothing is written");
}

#[test]
fn statements_come_from_a_record() {
    let folder = folder("statements");
    let file = played(&folder, "no_water", "c-2");
    let words = [
        "statements",
        &file,
        "--base",
        "https://school.example/",
        "--home-page",
        "https://school.example",
    ];
    let all = json(&[&words[..], &["--json"]].concat());
    assert!(all.as_array().is_some_and(|all| all.len() > 4));
    let output = run(&[
        "statements",
        &file,
        "--base",
        "school",
        "--home-page",
        "https://a.example",
    ]);
    assert_eq!(code(&output), 2);
    assert!(said(&output).contains("--base"), "{}", said(&output));
}

#[test]
fn statements_of_several_records_are_told_apart_and_what_is_no_sitting_is_refused() {
    let folder = folder("statements_of_several");
    let first = played(&folder, "no_water", "c-2");
    let second = played(&folder, "hums_and_stands", "c-2");
    let text = |file: &str| std::fs::read_to_string(file).expect("written");
    let both = folder.join("both.jsonl").display().to_string();
    std::fs::write(&both, text(&first) + &text(&second)).expect("a file");
    let place = [
        "--base",
        "https://school.example/",
        "--home-page",
        "https://school.example",
    ];
    let all = json(&[&["statements", &both, "--json"][..], &place].concat());
    let registrations: std::collections::BTreeSet<String> = all
        .as_array()
        .expect("a list")
        .iter()
        .map(|statement| statement["context"]["registration"].to_string())
        .collect();
    assert_eq!(
        registrations.len(),
        2,
        "two jobs of practice are two attempts"
    );
    let assessment = ["--assessment", "scenarios/assessments/first_visits.json"];
    let output = run(&[&["statements", &both][..], &place, &assessment].concat());
    assert_eq!(code(&output), 2);
    assert!(
        said(&output).contains("another assessment"),
        "{}",
        said(&output)
    );
    let empty = folder.join("empty.jsonl").display().to_string();
    std::fs::write(&empty, "").expect("a file");
    let output = run(&[&["statements", &empty][..], &place].concat());
    assert_eq!(code(&output), 2);
    assert!(said(&output).contains("no record"), "{}", said(&output));
}

//! Links and files from outside: whatever stands in them, the reader answers with a sound job or
//! with problems that name a field and a remedy, and never fails.

use proptest::prelude::*;
use serde_json::Value;
use tubwright::scenario::FileError;
use tubwright::scenario::edit;
use tubwright::scenario::job_file::JobFile;
use tubwright::scenario::job_files;
use tubwright::scenario::share;
use tubwright::scenario::write;

fn shipped(index: usize) -> &'static JobFile {
    let jobs = job_files().expect("sound");
    &jobs[index % jobs.len()].file
}

/// Every problem says what would be right.
fn is_helpful(error: &FileError) -> bool {
    !error.problems.is_empty()
        && error
            .problems
            .iter()
            .all(|p| p.remedy.len() > 5 && p.file == "given")
}

/// Paths of all that can be written over in a job.
fn paths(at: &str, value: &Value, found: &mut Vec<String>) {
    if !at.is_empty() {
        found.push(at.to_owned());
    }
    match value {
        Value::Object(fields) => {
            for (name, inside) in fields {
                let path = if at.is_empty() {
                    name.clone()
                } else {
                    format!("{at}.{name}")
                };
                paths(&path, inside, found);
            }
        }
        Value::Array(list) => {
            for (index, inside) in list.iter().enumerate() {
                paths(&format!("{at}[{index}]"), inside, found);
            }
        }
        _ => {}
    }
}

fn anything() -> impl Strategy<Value = Value> {
    let leaf = prop_oneof![
        Just(Value::Null),
        any::<bool>().prop_map(Value::from),
        any::<f64>().prop_map(Value::from),
        any::<i64>().prop_map(Value::from),
        "\\PC{0,24}".prop_map(Value::from),
        Just(Value::from("<script>alert(1)</script>")),
    ];
    leaf.prop_recursive(2, 8, 3, |inner| {
        prop_oneof![
            proptest::collection::vec(inner.clone(), 0..3).prop_map(Value::from),
            proptest::collection::btree_map("[a-z_]{1,8}", inner, 0..3)
                .prop_map(|map| Value::Object(map.into_iter().collect())),
        ]
    })
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 300, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn any_letters_are_a_job_or_a_told_problem(letters in "1?[A-Za-z0-9_-]{0,200}") {
        if let Err(error) = share::from_letters("given", &letters) {
            prop_assert!(is_helpful(&error), "{error}");
        }
    }

    #[test]
    fn one_changed_letter_never_gives_another_job(index in 0_usize..16, at in 0_usize..4000, letter in "[A-Za-z0-9_-]") {
        let job = shipped(index);
        let mut letters = share::to_letters(job);
        let at = at % letters.len();
        letters.replace_range(at..=at, &letter);
        match share::from_letters("given", &letters) {
            Ok(read) => prop_assert_eq!(&read, job),
            Err(error) => prop_assert!(is_helpful(&error), "{error}"),
        }
    }

    #[test]
    fn any_text_as_a_file_is_a_told_problem(text in "\\PC{0,300}") {
        let error = share::read_shared("given", &text).expect_err("no job is so short");
        prop_assert!(is_helpful(&error), "{error}");
    }

    #[test]
    fn a_job_with_anything_in_one_field_is_a_job_or_names_the_field(
        index in 0_usize..16, field in any::<prop::sample::Index>(), value in anything(),
    ) {
        let mut whole = edit::as_value(shipped(index));
        let mut all = Vec::new();
        paths("", &whole, &mut all);
        let path = &all[field.index(all.len())];
        let pointer = format!("/{}", path.replace('[', ".").replace(']', "").replace('.', "/"));
        *whole.pointer_mut(&pointer).expect("a path of this job") = value;
        let text = serde_json::to_string(&whole).expect("writes");
        match share::read_shared("given", &text) {
            Ok(job) => {
                let letters = share::to_letters(&job);
                prop_assert_eq!(share::from_letters("given", &letters).expect("was sound"), job);
            }
            Err(error) => prop_assert!(is_helpful(&error), "{path}: {error}"),
        }
    }
}

#[test]
fn a_trainees_copy_written_and_read_again_is_the_same_to_the_byte() {
    for job in job_files().expect("sound") {
        let text = write::write(&share::sealed(&job.file)).expect("writes");
        let read = share::read_shared("given", &text).expect("sound");
        assert_eq!(write::write(&share::sealed(&read)).expect("writes"), text);
    }
}

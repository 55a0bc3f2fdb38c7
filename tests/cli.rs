//! The command line as its users meet it: answers, error words, exit codes.

#[path = "cli/files.rs"]
mod files;
#[path = "cli/probe.rs"]
mod probe;
#[path = "cli/records.rs"]
mod records;
#[path = "cli/rows.rs"]
mod rows;
#[path = "cli/runs.rs"]
mod runs;
#[path = "cli/usage.rs"]
mod usage;

use std::io::Write;
use std::process::Command;
use std::process::Output;
use std::process::Stdio;

use serde_json::Value;

fn run(words: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_tubwright"))
        .current_dir(env!("CARGO_MANIFEST_DIR"))
        .args(words)
        .output()
        .expect("the program starts")
}

fn code(output: &Output) -> i32 {
    output.status.code().expect("ends by itself")
}

fn json(words: &[&str]) -> Value {
    let output = run(words);
    assert_eq!(
        code(&output),
        0,
        "{}",
        String::from_utf8_lossy(&output.stderr)
    );
    serde_json::from_slice(&output.stdout).expect("JSON")
}

fn said(output: &Output) -> String {
    String::from_utf8_lossy(&output.stderr).into_owned()
}

fn piped(words: &[&str], bytes: &[u8]) -> Output {
    let mut child = Command::new(env!("CARGO_BIN_EXE_tubwright"))
        .current_dir(env!("CARGO_MANIFEST_DIR"))
        .args(words)
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .expect("the program starts");
    let mut stdin = child.stdin.take().expect("a pipe");
    // A program that has seen enough may close its end first.
    let _ = stdin.write_all(bytes);
    drop(stdin);
    child.wait_with_output().expect("ends")
}

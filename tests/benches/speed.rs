//! Times what has a budget: natively by `cargo bench`, and compiled for the web by `make bench` in Chromium.
//!
//! `cargo bench --bench speed -- [--json FILE] [WORD]` prints one table; only cases whose name holds WORD.

#[cfg(not(target_arch = "wasm32"))]
mod against;
mod cases;
mod clock;
#[cfg(not(target_arch = "wasm32"))]
#[path = "../network/deck.rs"]
mod deck;
mod fleet;
#[cfg(not(target_arch = "wasm32"))]
mod growth;
mod judgement;
mod measure;
mod results;

#[cfg(not(target_arch = "wasm32"))]
fn main() {
    let mut json_path = None;
    let mut word = String::new();
    let mut arguments = std::env::args().skip(1);
    while let Some(argument) = arguments.next() {
        match argument.as_str() {
            "--json" => json_path = arguments.next(),
            "--bench" => {} // cargo's own
            other => word = other.to_owned(),
        }
    }
    println!("{}", measure::head("natively, one core"));
    let (mut rows, mut fleet) = (Vec::new(), Vec::new());
    for mut case in cases::all()
        .into_iter()
        .filter(|case| case.name.contains(&word))
    {
        let timing = measure::measure(&mut case);
        println!("{}", timing.to_row());
        fleet.extend(fleet::size(timing.name).map(|n| (n, timing.least_s)));
        rows.push(timing.to_json());
    }
    if let [(one, one_s), (many, many_s)] = fleet[..] {
        let ratio = many_s / one_s / f64::from(many / one);
        println!("{many} machines cost {ratio:.2} times {many} single ones");
    }
    let others = if word.is_empty() || word == "others" {
        println!("\n{}", against::head());
        against::all()
    } else {
        Vec::new()
    };
    others
        .iter()
        .for_each(|ratio| println!("{}", ratio.to_row()));
    let growth = if word.is_empty() || word == "growth" {
        println!("\nwhat grows, size: least time");
        growth::all()
    } else {
        Vec::new()
    };
    growth.iter().for_each(|one| println!("{}", one.to_row()));
    let growth: Vec<_> = growth.iter().map(growth::Growth::to_json).collect();
    let others: Vec<_> = others.iter().map(against::Ratio::to_json).collect();
    if let Some(path) = json_path {
        let text =
            serde_json::json!({ "native": rows, "others": others, "growth": growth }).to_string();
        if let Err(error) = std::fs::write(&path, text) {
            eprintln!("bench: cannot write {path}: {error}; give a file that can be written.");
            std::process::exit(1);
        }
    }
}

/// Leaves the result where the page's driver looks for it.
#[cfg(target_arch = "wasm32")]
fn main() {
    let mut lines = vec![measure::head("in Chromium, one core")];
    let mut rows = Vec::new();
    for mut case in cases::all() {
        let timing = measure::measure(&mut case);
        lines.push(timing.to_row());
        rows.push(timing.to_json());
    }
    let result = serde_json::json!({ "table": lines.join("\n"), "rows": rows }).to_string();
    js_sys::Reflect::set(&js_sys::global(), &"speed".into(), &result.into())
        .expect("a page's global object takes a value");
}

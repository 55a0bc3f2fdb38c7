//! Rows, and machines prepared as they say.

use std::collections::BTreeMap;
use std::fs;
use std::path::PathBuf;
use std::sync::Arc;

use tubwright::network::Contacts;
use tubwright::network::ElementId;
use tubwright::network::NodeId;
use tubwright::plant::harness::COLD_K;
use tubwright::plant::harness::Harness;
use tubwright::plant::harness::SteadyState;
use tubwright::plant::harness::Wiring;
use tubwright::plant::harness::WiringModel;
use tubwright::plant::harness::steady_state::steady_state;
use tubwright::scenario::catalogue;
use tubwright::scenario::fault_file::FaultFile;
use tubwright::scenario::machine_files;
use tubwright::scenario::wiring_model;

#[derive(Debug)]
pub struct Row {
    pub line: usize,
    pub fields: Vec<String>,
}

impl Row {
    pub fn get(&self, index: usize) -> &str {
        self.fields.get(index).map_or("", String::as_str)
    }
    pub fn machine(&self) -> &str {
        self.get(0)
    }
    pub fn quantity(&self) -> &str {
        self.get(3)
    }
    pub fn value(&self) -> f64 {
        self.get(4).parse().expect("value is a number")
    }
    pub fn setup(&self) -> &str {
        self.get(7)
    }
    pub fn display(&self) -> &str {
        self.get(9)
    }
}

pub fn split_csv(line: &str) -> Vec<String> {
    let (mut fields, mut field, mut is_quoted) = (Vec::new(), String::new(), false);
    for c in line.trim_end_matches('\r').chars() {
        match c {
            '"' => is_quoted = !is_quoted,
            ',' if !is_quoted => fields.push(std::mem::take(&mut field)),
            other => field.push(other),
        }
    }
    fields.push(field);
    fields
}

pub fn rows() -> Vec<Row> {
    let root = PathBuf::from(env!("CARGO_MANIFEST_DIR"));
    let folder = std::env::var_os("TUBWRIGHT_ROWS")
        .map_or_else(|| root.join("tests/fixtures/rows"), PathBuf::from);
    let names = [
        "refs.csv",
        "network/refs.csv",
        "refs_network.csv",
        "network_refs.csv",
    ];
    let mut rows = Vec::new();
    for path in names.iter().map(|n| folder.join(n)).filter(|p| p.exists()) {
        let text = fs::read_to_string(&path).expect("rows can be read");
        for (index, line) in text
            .lines()
            .enumerate()
            .skip(1)
            .filter(|(_, l)| !l.is_empty())
        {
            rows.push(Row {
                line: index + 1,
                fields: split_csv(line),
            });
        }
    }
    assert!(!rows.is_empty(), "no network rows in {}", folder.display());
    rows
}

/// The machines and faults that ship.
pub struct Library {
    pub models: BTreeMap<String, Arc<WiringModel>>,
    pub faults: Vec<FaultFile>,
}

impl Library {
    pub fn load() -> Library {
        let mut models = BTreeMap::new();
        for machine in machine_files().expect("sound files") {
            let wiring = wiring_model(&machine.id, &machine.wiring).expect("a good machine");
            models.insert(machine.id.clone(), wiring);
        }
        let faults = catalogue().expect("a sound catalogue").faults.clone();
        Library { models, faults }
    }
}

/// A machine prepared as a row says.
pub struct Bench {
    pub harness: Harness,
    pub state: SteadyState,
    pub closed: Contacts,
    pub body: Option<ElementId>,
}

pub fn prepare(library: &Library, row: &Row) -> Bench {
    let model = &library.models[row.machine()];
    let mut wiring = faulty(library, row, model);
    let mut words = row.setup().split_whitespace();
    let mut body = None;
    while let Some(word) = words.next() {
        if word == "open" {
            let name = words.next().expect("open what");
            wiring.open_by_hand(model.element(name).expect("known link"), true);
            continue;
        }
        let ohm: f64 = words.next().expect("ohms").parse().expect("a number");
        assert_eq!(words.next(), Some("ohm"));
        let ends = pair(model, words.next().expect("places"));
        body = Some(ElementId(
            (wiring.first_extra() + wiring.extra_links().len()) as u32,
        ));
        wiring.add_link(word, ends, ohm);
    }
    let state = model.state(row.get(1)).expect("known state");
    wiring.set_plugged(state.is_plugged);
    let mut closed = state.closed.clone();
    if row.get(6) == "open" {
        closed.retain(|c| *c != model.lid_contact);
    }
    let mut harness = Harness::new(&wiring, &[]).expect("solvable");
    let contacts = harness.contacts(&closed);
    let state = steady_state(&mut harness, &closed, state.load_n_m, COLD_K).expect("solvable");
    Bench {
        harness,
        state,
        closed: contacts,
        body,
    }
}

pub fn faulty(library: &Library, row: &Row, model: &Arc<WiringModel>) -> Wiring {
    let mut wiring = Wiring::healthy(model);
    if row.get(2) != "none" {
        let fault = library
            .faults
            .iter()
            .find(|f| f.reference == row.get(2))
            .expect("known fault");
        let changes = fault
            .changes("faults.json", row.machine(), model)
            .expect("good changes");
        assert!(!fault.machines[row.machine()].is_empty(), "{}", fault.id);
        for change in &changes {
            wiring.apply(change, 1.0);
        }
    }
    wiring
}

pub fn pair(model: &WiringModel, places: &str) -> [NodeId; 2] {
    let (a, b) = places.split_once('-').expect("two places");
    [a, b].map(|name| model.node(name).expect("known place"))
}

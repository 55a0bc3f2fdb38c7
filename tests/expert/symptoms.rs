//! What a fault shows to a customer: the shipped table is what the machines do.

use std::collections::BTreeMap;
use std::path::Path;

use tubwright::expert::Told;
use tubwright::expert::table;
use tubwright::expert::table::Table;
use tubwright::scenario::machines;

/// `make tables` writes the table anew; otherwise every twelfth fault is computed again.
#[test]
fn the_shipped_table_is_what_the_machines_do() {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("scenarios/symptoms.json");
    let writes = std::env::var_os("TUBWRIGHT_WRITE").is_some();
    let every = if writes { 1 } else { 12 };
    let computed: BTreeMap<_, _> = machines()
        .expect("sound")
        .iter()
        .map(|(id, pack)| {
            let shown = table::computed(&pack.model, every).expect("runs");
            (id.clone(), shown)
        })
        .collect();
    if writes {
        let text = serde_json::to_string(&Table(computed)).expect("writes");
        let text = text.replace("],", "],\n").replace("},", "},\n") + "\n";
        std::fs::write(&path, text).expect("can be written");
        return;
    }
    let text = std::fs::read_to_string(&path).expect("ships");
    let shipped: Table = serde_json::from_str(&text).expect("reads");
    for (id, faults) in computed {
        for (fault, symptoms) in faults {
            let listed = shipped.0.get(&id).and_then(|table| table.get(&fault));
            assert_eq!(listed, Some(&symptoms), "{id} {fault}: run `make tables`");
        }
    }
}

#[test]
fn a_customers_words_point_towards_the_fault() {
    for (id, pack) in machines().expect("sound") {
        let all = table::shown(&pack.model).expect("runs");
        let mut found = 0;
        for def in &pack.model.faults {
            let mut told = Told::default();
            told.hear(&def.complaint);
            let own = told.fits(all[&def.id]);
            let better = all.values().filter(|s| told.fits(**s) > own + 1e-9);
            let rank = better.count();
            found += usize::from(rank < all.len() / 4);
            if rank >= all.len() / 4 {
                println!(
                    "{id} {} rank {rank} “{}”\n   shows {:?}\n   told {:?} right {:?}",
                    def.id,
                    def.complaint,
                    all[&def.id].list(),
                    told.wrong.list(),
                    told.right.list()
                );
            }
        }
        println!("{id}: {found} of {} in the first quarter", all.len());
        assert!(found * 4 > all.len() * 3, "{id}: {found} of {}", all.len());
    }
}

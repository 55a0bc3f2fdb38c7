//! Simulated apprentices differ as their kinds do, and each is the same again for the same seed.

use std::collections::BTreeMap;

use rayon::prelude::*;
use tubwright::expert::crowd::Kind;
use tubwright::scenario::job;
use tubwright::score::Crowd;
use tubwright::score::Fared;
use tubwright::score::Run;
use tubwright::score::fared;

/// One job on each machine, with causes that looking alone does not settle.
const WORKED: [&str; 3] = [
    "hums_and_stands",
    "walked_to_the_door",
    "clicks_and_stirs_nothing",
];
const RUNS: u64 = 8;

#[test]
fn kinds_of_apprentices_fare_as_one_would_expect() {
    let mut runs: BTreeMap<Kind, Vec<Run>> = BTreeMap::new();
    for id in WORKED {
        let scenario = job(id).expect("sound").expect("ships");
        let crowd = Crowd::new(&scenario, &mut |_, _| ()).expect("starts");
        for kind in Kind::ALL {
            let of_kind: Vec<Run> = (0..RUNS)
                .into_par_iter()
                .map(|seed| crowd.run(kind, seed).expect("runs"))
                .collect();
            let again = crowd.run(kind, 3).expect("runs");
            assert_eq!(again, of_kind[3], "{id} {kind:?}: same seed, same job");
            println!("{id} {:?}", fared(kind, &of_kind));
            runs.entry(kind).or_default().extend(of_kind);
        }
    }
    let all: BTreeMap<Kind, Fared> = runs.iter().map(|(k, r)| (*k, fared(*k, r))).collect();
    let best = &all[&Kind::Methodical];
    for (kind, other) in all.iter().filter(|(kind, _)| **kind != Kind::Methodical) {
        assert!(
            best.success_ratio > other.success_ratio,
            "{kind:?} {all:#?}"
        );
        assert!(
            best.safety_findings < other.safety_findings,
            "{kind:?} {all:#?}"
        );
    }
    let careless = &all[&Kind::Careless];
    assert!(careless.safety_findings > all[&Kind::Novice].safety_findings);
    assert!(careless.unsafe_ratio > best.unsafe_ratio);
    assert!(careless.minutes < best.minutes);
    let swapper = &all[&Kind::PartSwapper];
    for kind in [Kind::Methodical, Kind::MeterShy, Kind::Novice] {
        assert!(swapper.material > all[&kind].material, "{kind:?} {all:#?}");
    }
}

//! The jobs of one candidate, drawn from the library: other faults of equal difficulty, other
//! values, other people, so that answers cannot be passed on. The same seed draws the same.

use std::collections::BTreeMap;

use rand_chacha::ChaCha8Rng;
use rand_core::RngCore;
use rand_core::SeedableRng;

use crate::assess::assessment_file::AssessmentFile;
use crate::assess::assessment_file::VariantsFile;
use crate::scenario::job_file::JobFile;

/// Purpose of the stream that picks jobs; variants take the streams after it.
const JOBS: u64 = 0;
/// Purpose of the streams that make variants.
const VARIANTS: u64 = 1 << 32;

/// One job of a candidate.
#[derive(Clone, Debug, PartialEq)]
pub struct Drawn {
    /// Name of the job it is a variant of.
    pub job: String,
    /// The job as this candidate gets it.
    pub file: JobFile,
    /// Its seed, 53 bits.
    pub seed: u64,
}

/// Draws all jobs, in the order they are worked. `None` when the library has too few; an assessment
/// that was checked against it never does.
pub fn draw(
    assessment: &AssessmentFile,
    library: &BTreeMap<String, JobFile>,
    machines_of_fault: &BTreeMap<String, Vec<String>>,
    seed: [u8; 32],
) -> Option<Vec<Drawn>> {
    let taken = names(assessment, library, seed)?;
    let drawn = taken.iter().enumerate().map(|(place, id)| {
        let mut rng = ChaCha8Rng::from_seed(seed);
        rng.set_stream(VARIANTS + place as u64);
        let job_seed = rng.next_u64() >> 11;
        let file = variant(
            library.get(*id)?,
            &assessment.variants,
            machines_of_fault,
            &mut rng,
        );
        Some(Drawn {
            job: (*id).to_owned(),
            file,
            seed: job_seed,
        })
    });
    drawn.collect()
}

/// Names of the jobs that [`draw`] gives, without making the variants.
pub fn names<'a>(
    assessment: &AssessmentFile,
    library: &'a BTreeMap<String, JobFile>,
    seed: [u8; 32],
) -> Option<Vec<&'a str>> {
    let mut rng = ChaCha8Rng::from_seed(seed);
    rng.set_stream(JOBS);
    let mut taken: Vec<&str> = Vec::new();
    for slot in &assessment.jobs {
        for _ in 0..slot.n {
            let free: Vec<&str> = library
                .iter()
                .filter(|(id, job)| slot.takes(id, job) && !taken.contains(&id.as_str()))
                .map(|(id, _)| id.as_str())
                .collect();
            taken.push(free.get(below(&mut rng, free.len())?).copied()?);
        }
    }
    Some(taken)
}

/// A job as one candidate gets it. Draws are made whether they are used or not, so that leaving one
/// out does not move the others.
fn variant(
    job: &JobFile,
    rules: &VariantsFile,
    machines_of_fault: &BTreeMap<String, Vec<String>>,
    rng: &mut ChaCha8Rng,
) -> JobFile {
    let mut file = job.clone();
    // Nobody is helped in an assessment, whatever the job allows elsewhere.
    file.rules.hints = Some(false);
    // Nobody is helped in an assessment.
    file.rules.hints = Some(false);
    let [water, room, load, severity] = [share(rng), share(rng), share(rng), share(rng)];
    let between =
        |range: Option<[f64; 2]>, at: f64| range.map(|[low, high]| low + at * (high - low));
    if let Some(mpa) = between(rules.water_mpa, water) {
        file.site.water_mpa = rounded(mpa, 1000.0);
    }
    if let Some(degc) = between(rules.room_degc, room) {
        file.site.room_degc = rounded(degc, 2.0);
    }
    if let Some(share) = between(rules.load_share, load) {
        file.site.load_kg = rounded(job.site.load_kg * share, 10.0);
        file.site.unbalance_kg = file
            .site
            .unbalance_kg
            .min(file.site.load_kg.max(job.site.unbalance_kg.min(0.3)));
    }
    let caller = below(rng, rules.customers.len());
    if let Some(caller) = caller.and_then(|at| rules.customers.get(at)) {
        file.customer.name.clone_from(&caller.name);
        file.customer.home.clone_from(&caller.home);
    }
    for fault in &mut file.faults {
        if let Some(share) = between(rules.severity_share, severity) {
            fault.severity = rounded(fault.severity * share, 100.0);
        }
        let pick = rng.next_u64();
        let set = rules
            .equal_faults
            .iter()
            .find(|set| set.iter().any(|equal| equal.id == fault.id));
        let here: Vec<&str> = set
            .into_iter()
            .flatten()
            .map(|equal| equal.id.as_str())
            .filter(|id| {
                machines_of_fault
                    .get(*id)
                    .is_some_and(|machines| machines.contains(&job.machine))
            })
            .collect();
        if !here.is_empty() {
            let chosen = here[(pick % here.len() as u64) as usize];
            if chosen != fault.id {
                chosen.clone_into(&mut fault.id);
                fault.onset = None;
            }
        }
    }
    file
}

/// Even between 0 and 1.
fn share(rng: &mut ChaCha8Rng) -> f64 {
    (rng.next_u64() >> 11) as f64 / (1_u64 << 53) as f64
}

/// A place in a list of `n`; the bias is below one in 2⁵⁰. `None` for an empty list.
fn below(rng: &mut ChaCha8Rng, n: usize) -> Option<usize> {
    let word = rng.next_u64();
    (n > 0).then(|| (word % n as u64) as usize)
}

/// To a whole number of parts, so that a file shows what is meant.
fn rounded(value: f64, parts: f64) -> f64 {
    (value * parts).round() / parts
}

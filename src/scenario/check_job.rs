//! Reads a job file strictly and checks it against the machine and the fault catalogue; a job
//! that is being written is checked in the same way, field by field.

use crate::bench::questions::QUESTIONS;
use crate::bench::visit::VAN_SLOTS;
use crate::plant::params::PlantParams;
use crate::say;
use crate::scenario::check_faults::check_onset;
use crate::scenario::check_visit::check_visit;
use crate::scenario::check_visit::check_visit_against;
use crate::scenario::fault_file::CatalogueFile;
use crate::scenario::job_file::JOB_FORMAT;
use crate::scenario::job_file::JobFile;
use crate::scenario::job_file::RatesFile;
use crate::scenario::job_file::RulesFile;
use crate::scenario::machine_file::MachineFile;
use crate::scenario::names::Names;
use crate::scenario::problem::FileError;
use crate::scenario::problem::Problems;
use crate::scenario::problem::quoted;
use crate::scenario::read::read;
use crate::scenario::to_site::site_params;
use crate::text;

/// Reads and checks a job file; `file` is the name errors use.
pub fn read_job(
    file: &str,
    text: &str,
    machines: &[MachineFile],
    catalogue: &CatalogueFile,
) -> Result<JobFile, FileError> {
    let job: JobFile = read(file, text)?;
    let () = check_job(file, &job, machines, catalogue)?;
    Ok(job)
}

/// Checks a job; `file` is the name errors use.
pub fn check_job(
    file: &str,
    job: &JobFile,
    machines: &[MachineFile],
    catalogue: &CatalogueFile,
) -> Result<(), FileError> {
    let mut problems = Problems::new(file);
    if job.format != JOB_FORMAT {
        let remedy = say!("this version reads {format}", format = quoted(JOB_FORMAT));
        problems.add("format", quoted(&job.format), remedy);
    }
    problems.not_blank("title", &job.title);
    problems.in_range("site.water_l", job.site.water_l, 0.0, 70.0);
    problems.in_range("level", f64::from(job.level), 1.0, 5.0);
    check_customer(job, &mut problems);
    check_site(job, &mut problems);
    check_money(&job.money, &mut problems);
    check_rules(&job.rules, &mut problems);
    check_visit(job, &mut problems);
    let ids = Names::known(
        text!("machine"),
        machines.iter().map(|machine| machine.id.as_str()),
    );
    ids.expect("machine", &job.machine, &mut problems);
    if let Some(machine) = machines.iter().find(|machine| machine.id == job.machine) {
        check_against(job, machine, catalogue, &mut problems);
    }
    problems.into_result(())
}

fn check_customer(job: &JobFile, problems: &mut Problems) {
    problems.not_blank("customer.name", &job.customer.name);
    problems.not_blank("customer.complaint", &job.customer.complaint);
    let questions = Names::known(text!("question"), QUESTIONS.iter().map(|q| q.id));
    for (question, answers) in &job.customer.answers {
        let path = format!("customer.answers.{question}");
        questions.expect(&path, question, problems);
        if !(1..=2).contains(&answers.len()) {
            problems.add(
                &path,
                answers.len(),
                say!("one answer, or two where asking again helps"),
            );
        }
        for (index, answer) in answers.iter().enumerate() {
            problems.not_blank(&format!("{path}[{index}]"), answer);
        }
    }
    for question in QUESTIONS.iter().map(|q| q.id) {
        if !job.customer.answers.contains_key(question) {
            let remedy = say!(
                "the customer needs an answer to {question}",
                question = quoted(question)
            );
            problems.add(&format!("customer.answers.{question}"), "", remedy);
        }
    }
}

/// Ranges of the place: what the plant accepts, and what a house can have.
fn check_site(job: &JobFile, problems: &mut Problems) {
    let site = &job.site;
    problems.in_range("site.load_kg", site.load_kg, 0.0, 20.0);
    problems.in_range("site.unbalance_kg", site.unbalance_kg, 0.0, 5.0);
    problems.in_range("site.room_degc", site.room_degc, -10.0, 50.0);
    problems.in_range("site.water_mpa", site.water_mpa, 0.0, 1.0);
    problems.in_range("site.floor_tilt_deg", site.floor_tilt_deg, 0.0, 10.0);
    if let Some(rcd_ma) = site.rcd_ma {
        problems.in_range("site.rcd_ma", rcd_ma, 1.0, 500.0);
    }
    let mut plant = PlantParams::typical();
    for (field, name, value) in site_params(&job.site) {
        let path = format!("site.{field}");
        if let Err(error) = plant.set(name, value)
            && !problems.has(&path)
        {
            problems.add(&path, value, error.to_string());
        }
    }
}

fn check_money(money: &RatesFile, problems: &mut Problems) {
    let amounts = [
        ("labour_per_min", money.labour_per_min),
        ("call_out", money.call_out),
        ("second_visit", money.second_visit),
        ("callback", money.callback),
        ("new_machine", money.new_machine),
    ];
    for (field, amount) in amounts {
        problems.in_range(&format!("money.{field}"), amount, 0.0, 1.0e6);
    }
}

fn check_rules(rules: &RulesFile, problems: &mut Problems) {
    let bars = [
        ("budget", rules.budget, 1.0e6),
        ("minutes", rules.minutes, 1440.0),
        ("pass_marks", rules.pass_marks, 100.0),
    ];
    for (field, bar, most) in bars {
        if let Some(bar) = bar {
            problems.in_range(&format!("rules.{field}"), bar, 1.0, most);
        }
    }
}

fn check_against(
    job: &JobFile,
    machine: &MachineFile,
    catalogue: &CatalogueFile,
    problems: &mut Problems,
) {
    check_visit_against(job, machine, problems);
    let possible = catalogue
        .faults
        .iter()
        .filter(|f| f.machines.contains_key(&machine.id));
    let faults = Names::known(
        text!("fault of this machine"),
        possible.map(|f| f.id.as_str()),
    );
    for (index, pair) in job.double_faults.iter().enumerate() {
        for fault in pair {
            faults.expect(&format!("double_faults[{index}]"), fault, problems);
        }
    }
    for (index, fault) in job.faults.iter().enumerate() {
        let at = format!("faults[{index}]");
        faults.expect(&format!("{at}.id"), &fault.id, problems);
        problems.in_range(&format!("{at}.severity"), fault.severity, 0.0, 1.0);
        if let Some(onset) = fault.onset {
            check_onset(&format!("{at}.onset"), onset, problems);
        }
    }
    let parts = machine.workshop.parts.iter().map(|part| part.id.as_str());
    Names::known(text!("part of this machine"), parts).expect_all("van", &job.van, problems);
    if job.van.len() > VAN_SLOTS {
        problems.add(
            "van",
            job.van.len(),
            say!("the van has {n} slots", n = VAN_SLOTS),
        );
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scenario::catalogue;
    use crate::scenario::job_files;
    use crate::scenario::machine_files;

    /// The first shipped job with one piece of text exchanged; its problems as text.
    fn problems_after(from: &str, to: &str) -> String {
        let job = &job_files().expect("sound")[0].file;
        let text = serde_json::to_string(job)
            .expect("writes")
            .replace(from, to);
        let machines = machine_files().expect("sound");
        read_job("j.json", &text, machines, catalogue().expect("sound"))
            .expect_err("something is wrong")
            .to_string()
    }

    #[test]
    fn a_misspelt_fault_names_the_nearest() {
        let told = problems_after("\"tap_closed\"", "\"tap_close\"");
        assert!(
            told.contains("faults[0].id") && told.contains("\"tap_closed\""),
            "{told}"
        );
    }

    #[test]
    fn a_fault_of_another_machine_is_refused() {
        let told = problems_after("\"tap_closed\"", "\"timer_motor_open\"");
        assert!(told.contains("no such fault of this machine"), "{told}");
    }

    #[test]
    fn an_unknown_question_and_a_missing_answer_are_told_together() {
        let told = problems_after("\"since\"", "\"sins\"");
        assert!(told.contains("customer.answers.sins"), "{told}");
        assert!(told.contains("needs an answer to \"since\""), "{told}");
    }

    #[test]
    fn impossible_numbers_are_refused_with_their_range() {
        let told = problems_after("\"water_mpa\":0.3", "\"water_mpa\":30.0");
        assert!(
            told.contains("site.water_mpa: 30: must lie between 0 and 1"),
            "{told}"
        );
    }

    #[test]
    fn an_unknown_field_is_named() {
        let told = problems_after("\"tap_open\"", "\"tap_opened\"");
        assert!(told.contains("unknown field `tap_opened`"), "{told}");
    }
}

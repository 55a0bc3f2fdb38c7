//! The page of what is opened: a person, what is behind a skill, or a job.

use yew::prelude::*;

use crate::app::cohort::decision;
use crate::app::cohort::job_page::JobPage;
use crate::app::cohort::kept_rulings::Change;
use crate::app::cohort::looks::Looks;
use crate::app::cohort::message::Msg;
use crate::app::cohort::opened::Opened;
use crate::app::cohort::pauses::pauses;
use crate::app::cohort::person::Person;
use crate::app::cohort::rows::Row;
use crate::app::cohort::skill_page::SkillPage;
use crate::language::worded;
use crate::records::cohort::Attempt;
use crate::records::rulings::Ruling;
use crate::records::rulings::is_void;
use crate::records::rulings::of_candidate;

/// The page of what is opened.
pub fn page(opened: &Opened, looks: &Looks<'_>, on: &Callback<Msg>) -> Html {
    match opened {
        Opened::Person(candidate) => person(looks, candidate, on),
        Opened::Skill(candidate, skill) => {
            let is_of_it = |a: &Attempt| a.candidate == *candidate && a.skills.contains(skill);
            html! {
                <SkillPage key={format!("{candidate} {skill}")} candidate={candidate.clone()} skill={skill.clone()} rows={first(looks, is_of_it)}
                    on_replay={on.reform(|(source, line)| Msg::Replay(source, line))}
                    on_job={on.reform(|job| Msg::Open(Some(Opened::Job(job))))}
                    on_person={on.reform(|name| Msg::Open(Some(Opened::Person(name))))}
                    on_back={on.reform(|()| Msg::Open(None))} />
            }
        }
        Opened::Job(job) => {
            let line = looks
                .cohort
                .and_then(|cohort| cohort.jobs.iter().find(|line| line.job == *job));
            html! {
                <JobPage key={job.clone()} job={job.clone()} line={line.cloned()} rows={first(looks, |a| a.job == *job)}
                    on_replay={on.reform(|(source, line)| Msg::Replay(source, line))}
                    on_person={on.reform(|name| Msg::Open(Some(Opened::Person(name))))}
                    on_back={on.reform(|()| Msg::Open(None))} />
            }
        }
    }
}

/// The records that the numbers are of and that are asked for, by person.
fn first(looks: &Looks<'_>, is_asked: impl Fn(&Attempt) -> bool) -> Vec<Row> {
    let mut all = looks.rows.first(looks.rulings);
    all.retain(|(_, attempt)| is_asked(attempt));
    all.sort_by(|(_, a), (_, b)| a.candidate.cmp(&b.candidate));
    all.into_iter().map(|(row, _)| row.clone()).collect()
}

fn person(looks: &Looks<'_>, candidate: &str, on: &Callback<Msg>) -> Html {
    let is_theirs = |row: &&Row| {
        row.is
            .attempt
            .as_ref()
            .is_some_and(|a| a.candidate == candidate)
    };
    let mut rows: Vec<Row> = looks.rows.all().filter(is_theirs).cloned().collect();
    rows.sort_by(|a, b| (a.is.place, &a.is.started).cmp(&(b.is.place, &b.is.started)));
    let is_void = |row: &&Row| {
        let job = row.attempt().map_or("", |attempt| attempt.job.as_str());
        is_void(looks.rulings, job, &row.is.assessment)
    };
    let voided = rows.iter().filter(is_void);
    let voided: Vec<(usize, usize)> = voided.map(|row| (row.source, row.line)).collect();
    let line = looks.cohort.and_then(|cohort| {
        cohort
            .people
            .iter()
            .find(|line| line.candidate == candidate)
    });
    let sat = rows.iter().find_map(|row| {
        let file = looks
            .files
            .iter()
            .find(|file| file.id == row.is.assessment)?;
        Some((
            worded(&file.title).into_owned(),
            decision::asked(row, looks.rulings, file),
        ))
    });
    let counted = first(looks, |attempt| attempt.candidate == candidate);
    let marks: Vec<f64> = counted
        .iter()
        .filter_map(Row::attempt)
        .map(|attempt| attempt.result.total)
        .collect();
    let of_whom = candidate.to_owned();
    let skill = on.reform(move |skill| Msg::Open(Some(Opened::Skill(of_whom.clone(), skill))));
    let of = decision::sat_by(candidate, looks.rows);
    let ruling = of_candidate(looks.rulings, candidate, &of).cloned();
    let pauses = pauses(&rows, looks.files);
    html! {
        <>
        <Person key={candidate.to_owned()} candidate={candidate.to_owned()} line={line.cloned()} {rows} {voided} {sat} {marks}
            skills={looks.cohort.map(|cohort| cohort.skills.clone()).unwrap_or_default()}
            decided={decision::of(candidate, looks.rows, looks.rulings, looks.files)}
            {ruling} on_skill={skill} on_replay={on.reform(|(source, line)| Msg::Replay(source, line))}
            on_read={on.reform(|(source, line)| Msg::Read(source, line))} lost={looks.marked.to_vec()}
            on_rule={on.reform(move |ruling: Ruling| Msg::Rule(Change::Made(ruling.within(&of))))} on_back={on.reform(|()| Msg::Open(None))} />
        { pauses }
        </>
    }
}

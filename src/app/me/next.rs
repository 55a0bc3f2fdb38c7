//! What to do next: what is due first, then what is least known, each with a job to do it on.

use crate::app::format;
use crate::app::job_tile::JobTile;
use crate::app::job_tile::Progress;
use crate::records::practice::Standing;
use crate::say;

/// Days ahead from which a skill counts as due. Design choice: a fortnight is time to fit it in.
const SOON_DAYS: f64 = 14.0;
/// More at once is no advice.
const MOST: usize = 3;

/// One piece of advice.
#[derive(Clone, Debug, PartialEq)]
pub struct Advice {
    /// The skill.
    pub skill: String,
    /// Why now.
    pub why: String,
    /// Name and title of a job that shows it.
    pub job: Option<(String, String)>,
}

/// Up to three pieces of advice. `tiles` are the jobs there are, easiest first.
pub fn next(standings: &[Standing], tiles: &[JobTile], today: f64) -> Vec<Advice> {
    let mut due: Vec<&Standing> = standings
        .iter()
        .filter(|s| s.due.day <= today + SOON_DAYS)
        .collect();
    due.sort_by(|a, b| a.due.day.total_cmp(&b.due.day));
    let weak = standings.iter().filter(|s| !s.is_known());
    let mut list: Vec<Advice> = Vec::new();
    for (standing, is_due) in due
        .into_iter()
        .map(|s| (s, true))
        .chain(weak.map(|s| (s, false)))
    {
        if list.len() == MOST {
            break;
        }
        if list.iter().any(|one| one.skill == standing.skill) {
            continue;
        }
        list.push(Advice {
            skill: standing.skill.clone(),
            why: why(standing, is_due, today),
            job: job_for(&standing.skill, tiles, &list),
        });
    }
    list
}

fn why(standing: &Standing, is_due: bool, today: f64) -> String {
    if is_due && standing.due.day < today {
        say!("it is due: some time has passed since you last showed it").to_owned()
    } else if is_due {
        let n = (standing.due.day - today).ceil() as i64;
        say!("it is due in {n} days", n)
    } else if standing.n_right < standing.n_shown {
        say!(
            "it went right in {right} of {n} jobs",
            right = standing.n_right,
            n = standing.n_shown
        )
    } else {
        say!(
            "shown {times} so far; once more makes it surer",
            times = format::times(standing.n_shown)
        )
    }
}

/// The easiest job not done yet, else the one done worst; not one that is advised already.
fn job_for(skill: &str, tiles: &[JobTile], advised: &[Advice]) -> Option<(String, String)> {
    let is_free = |t: &&JobTile| {
        advised
            .iter()
            .all(|one| one.job.as_ref().is_none_or(|(id, _)| *id != t.id))
    };
    let shows = |t: &&JobTile| {
        skill == crate::records::practice::SAFELY || t.skills.iter().any(|own| own == skill)
    };
    let all = || tiles.iter().filter(shows).filter(is_free);
    let undone = all().find(|t| !matches!(t.progress, Progress::Done { .. }));
    let worst = || {
        all().min_by(|a, b| {
            let marks = |t: &JobTile| t.marks.unwrap_or(100.0);
            marks(a).total_cmp(&marks(b))
        })
    };
    undone
        .or_else(worst)
        .map(|t| (t.id.clone(), t.title.clone()))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::assess::refresher::Due;

    fn standing(skill: &str, known: f64, due_day: f64) -> Standing {
        Standing {
            skill: skill.into(),
            is_safety: false,
            n_shown: 2,
            n_right: 1,
            known,
            lowest: known,
            highest: known,
            due: Due {
                skill: skill.into(),
                is_safety: false,
                day: due_day,
                retained: 1.0,
                is_by_rule: false,
            },
        }
    }

    fn tile(id: &str, skill: &str, marks: Option<f64>) -> JobTile {
        JobTile {
            id: id.into(),
            title: id.to_uppercase(),
            skills: vec![skill.into()],
            marks,
            progress: marks.map_or(Progress::New, |_| Progress::Done {
                words: String::new(),
                marks: String::new(),
            }),
            ..JobTile::default()
        }
    }

    #[test]
    fn what_is_overdue_comes_before_what_is_weak() {
        let standings = [standing("weak", 0.2, 900.0), standing("old", 0.99, 90.0)];
        let tiles = [tile("a", "weak", None), tile("b", "old", Some(70.0))];
        let list = next(&standings, &tiles, 100.0);
        let skills: Vec<&str> = list.iter().map(|one| one.skill.as_str()).collect();
        assert_eq!(skills, ["old", "weak"]);
        assert_eq!(list[0].job, Some(("b".into(), "B".into())));
    }

    #[test]
    fn a_job_not_done_yet_is_advised_first_and_none_twice() {
        let standings = [standing("belt", 0.2, 900.0), standing("pulley", 0.3, 900.0)];
        let mut both = tile("two", "belt", None);
        both.skills.push("pulley".into());
        let tiles = [tile("one", "belt", Some(50.0)), both];
        let list = next(&standings, &tiles, 0.0);
        assert_eq!(list[0].job.as_ref().map(|j| j.0.as_str()), Some("two"));
        assert_eq!(list[1].job, None);
    }
}

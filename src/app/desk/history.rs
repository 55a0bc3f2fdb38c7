//! Undo and redo of a job that is being written.

use crate::scenario::job_file::JobFile;

/// Steps kept. Design choice: an evening's work.
const MOST: usize = 200;

/// A job with what it was before and what was undone.
#[derive(Clone, Debug, PartialEq)]
pub struct History {
    now: JobFile,
    past: Vec<JobFile>,
    future: Vec<JobFile>,
    /// The field changed last: typing in one field is one step.
    last: Option<String>,
}

impl History {
    /// Begins with a job.
    pub fn of(job: JobFile) -> Self {
        Self {
            now: job,
            past: Vec::new(),
            future: Vec::new(),
            last: None,
        }
    }

    /// As it is.
    pub fn now(&self) -> &JobFile {
        &self.now
    }

    /// Something can be undone.
    pub fn can_undo(&self) -> bool {
        !self.past.is_empty()
    }

    /// Something can be done again.
    pub fn can_redo(&self) -> bool {
        !self.future.is_empty()
    }

    /// Takes a change of a field.
    pub fn change(&mut self, field: &str, job: JobFile) {
        if job == self.now {
            return;
        }
        let before = std::mem::replace(&mut self.now, job);
        if self.last.as_deref() != Some(field) || self.past.is_empty() {
            self.past.push(before);
            if self.past.len() > MOST {
                self.past.remove(0);
            }
        }
        self.future.clear();
        self.last = Some(field.to_owned());
    }

    /// The next change of the same field is a step of its own.
    pub fn settle(&mut self) {
        self.last = None;
    }

    /// Back by one step.
    pub fn undo(&mut self) {
        if let Some(before) = self.past.pop() {
            self.future.push(std::mem::replace(&mut self.now, before));
        }
        self.last = None;
    }

    /// Forward again.
    pub fn redo(&mut self) {
        if let Some(after) = self.future.pop() {
            self.past.push(std::mem::replace(&mut self.now, after));
        }
        self.last = None;
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::app::desk::draft::blank;

    fn titled(history: &History, title: &str) -> JobFile {
        JobFile {
            title: title.to_owned(),
            ..history.now().clone()
        }
    }

    #[test]
    fn typing_in_one_field_is_one_step_and_undo_goes_back_before_it() {
        let mut history = History::of(blank());
        for title in ["D", "Dr", "Drip"] {
            history.change("title", titled(&history, title));
        }
        history.settle();
        history.change("title", titled(&history, "Drips"));
        history.undo();
        assert_eq!(history.now().title, "Drip");
        history.undo();
        assert_eq!(history.now(), &blank());
        assert!(!history.can_undo());
        history.redo();
        history.redo();
        assert_eq!(history.now().title, "Drips");
    }

    #[test]
    fn a_new_change_ends_what_could_be_done_again() {
        let mut history = History::of(blank());
        history.change("title", titled(&history, "One"));
        history.undo();
        history.change("title", titled(&history, "Two"));
        assert!(!history.can_redo());
    }
}

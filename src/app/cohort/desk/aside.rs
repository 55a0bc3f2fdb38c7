//! What the desk fetches of single records: their work step by step, themselves as they were written,
//! and what explains the marks of a person.

use yew::prelude::*;

use crate::app::cohort::aside::Aside;
use crate::app::cohort::desk::CohortScreen;
use crate::app::cohort::message::Msg;
use crate::app::cohort::opened::Opened;
use crate::app::cohort::replay;
use crate::app::cohort::rows::Row;

impl CohortScreen {
    /// Opens a record: run again where this engine wrote it and `reads` is not asked for, as it was
    /// written otherwise.
    pub(super) fn set_aside(&self, ctx: &Context<Self>, source: usize, line: usize, reads: bool) {
        let is_it = |row: &&Row| row.source == source && row.line == line;
        let reads = reads || self.rows.all().find(is_it).is_some_and(Row::is_foreign);
        let (source, against) = (self.sources[source].clone(), self.known.against());
        ctx.link().send_future(async move {
            let text = source.text().await.unwrap_or_default();
            Msg::Aside(if reads {
                Aside::written(&source.name, &text, line)
            } else {
                Aside::replayed(&source.name, &text, line, &against)
            })
        });
    }

    /// Fetches what explains the marks of a person that is opened.
    pub(super) fn explain(&mut self, ctx: &Context<Self>) {
        self.marked.clear();
        let Some(Opened::Person(candidate)) = self.opened.clone() else {
            return;
        };
        let counted = self.rows.first(&self.rulings);
        let mut own: Vec<&Row> = counted
            .into_iter()
            .filter(|(row, attempt)| attempt.candidate == candidate && !row.is_foreign())
            .map(|(row, _)| row)
            .collect();
        own.sort_by_key(|row| row.is.place);
        let lines = own
            .into_iter()
            .map(|row| (self.sources[row.source].clone(), row.line))
            .collect();
        let against = self.known.against();
        ctx.link().send_future(async move {
            let marked = replay::marked(lines, against).await;
            Msg::Marked(candidate, marked)
        });
    }
}

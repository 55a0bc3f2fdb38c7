//! The report: pictures, and the customer's signature under it.

use crate::bench::around::Picture;
use crate::bench::event::Refusal;
use crate::bench::job::Job;
use crate::bench::notebook::NoteEntry;
use crate::bench::visit::Advice;
use crate::bench::visit::PictureOf;

pub(super) fn take_picture(job: &mut Job, of: PictureOf) {
    let picture = Picture {
        tick: job.tick(),
        entry: job.log().len().saturating_sub(1),
        of,
    };
    job.bench.around.pictures.push(picture);
    let view = match of {
        PictureOf::Outside => "from outside",
        PictureOf::Opened => "opened",
    };
    job.write(NoteEntry::Act {
        text: format!("Picture taken: the machine {view}"),
    });
}

pub(super) fn cannot_sign(job: &Job) -> Option<Refusal> {
    if job.bench.around.signed {
        return Some(Refusal::AlreadySo);
    }
    if job.bench.findings.is_empty() {
        return super::not_now("the report names no cause yet");
    }
    if !job.bench.advice.contains(&Advice::WhatWasDone) {
        return super::not_now("the customer wants to be told first what was done");
    }
    None
}

pub(super) fn sign(job: &mut Job) {
    job.bench.around.signed = true;
    job.write(NoteEntry::Act {
        text: "Report read and signed by the customer".to_owned(),
    });
}

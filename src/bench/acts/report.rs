//! The report: pictures, and the customer's signature under it.

use crate::bench::around::Picture;
use crate::bench::event::Refusal;
use crate::bench::job::Job;
use crate::bench::notebook::NoteEntry;
use crate::bench::visit::Advice;
use crate::bench::visit::PictureOf;
use crate::text;

pub(super) fn take_picture(job: &mut Job, of: PictureOf) {
    let picture = Picture {
        tick: job.tick(),
        entry: job.log().len().saturating_sub(1),
        of,
    };
    job.bench.around.pictures.push(picture);
    let text = match of {
        PictureOf::Outside => text!("Picture taken: the machine from outside"),
        PictureOf::Opened => text!("Picture taken: the machine opened"),
    };
    job.write(NoteEntry::Act {
        text: text.to_owned(),
    });
}

pub(super) fn cannot_sign(job: &Job) -> Option<Refusal> {
    if job.bench.around.signed {
        return Some(Refusal::AlreadySo);
    }
    if job.bench.findings.is_empty() {
        return super::way::not_now(text!("the report names no cause yet"));
    }
    if !job.bench.advice.contains(&Advice::WhatWasDone) {
        return super::way::not_now(text!("the customer wants to be told first what was done"));
    }
    None
}

pub(super) fn sign(job: &mut Job) {
    job.bench.around.signed = true;
    job.write(NoteEntry::Act {
        text: text!("Report read and signed by the customer").to_owned(),
    });
}

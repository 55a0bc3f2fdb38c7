### assess/assessment_file.rs

diagnosis-76b861fe = diagnosis
economy-b945e5f7 = economy
procedure-a6e741ce = procedure
evidence-c21f2024 = evidence
this-version-reads-format-8dd9c5e1 = this version reads { $format }
eight-letters-as-the-page-makes-a3dfba87 = eight letters as the page makes them from the assessment’s key, such as "K7QF-2M9D"; leave it out where the room has no pauses
ask-for-1-to-most-jobs-in-all-9829d344 = ask for 1 to { $most } jobs in all
name-a-job-of-the-library-517e39ef = name a job of the library
the-library-has-n-such-jobs-ask-6cd2031c = the library has { $n } such jobs: ask for fewer or widen it
name-a-fault-of-the-catalogue-d8bfa9e0 = name a fault of the catalogue
equal-faults-lie-within-most-9df49a3f = equal faults lie within { $most } logits of the first, at { $first }
name-one-of-parts-79f24ad7 = name one of { $parts }
ask-five-judges-or-more-900d106c = ask five judges or more
one-number-for-each-of-the-n-c0c587da = one number for each of the { $n } jobs

### assess/calendar.rs

refresher-skills-813e66a3 = Refresher: { $skills }
refresher-due-f609c0a9 = Refresher due

### assess/decide.rs

a-critical-safety-rule-was-4cb8d976 = a critical safety rule was broken in { $n } of the jobs
share-of-the-jobs-were-put-right-8839ddfb = { $share } % of the jobs were put right, { $least } % are asked
part-share-of-its-points-least-4038e672 = { $part }: { $share } % of its points, { $least } % are asked
marks-marks-are-within-border-of-9a60a0f8 = { $marks } marks are within { $border } of { $cut }: more jobs decide
marks-marks-cut-are-asked-3feebe2b = { $marks } marks, { $cut } are asked

### assess/retention.rs

one-month-8c1d208d = one month
n-months-53904ff6 = { $n } months

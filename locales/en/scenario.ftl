### scenario/check_job.rs

machine-e103566e = machine
question-06d5a845 = question
one-answer-or-two-where-asking-5e8c57a6 = one answer, or two where asking again helps
the-customer-needs-an-answer-to-f2e581d1 = the customer needs an answer to { $question }
fault-of-this-machine-c6579391 = fault of this machine
part-of-this-machine-c6d20ece = part of this machine
the-van-has-n-slots-9fe2a5f0 = the van has { $n } slots

### scenario/check_set.rs

name-1-to-most-jobs-b7335535 = name 1 to { $most } jobs
name-each-job-once-a2b3e275 = name each job once
name-a-job-that-ships-or-put-its-83d67eeb = name a job that ships, or put its file into `files`

### scenario/check_visit.rs

question-on-the-phone-b40c9eed = question on the phone
a-mistaken-customer-needs-a-de8a1b0f = a mistaken customer needs a question with two answers, the wrong one first
stands-there-already-8be684ca = stands there already
a-house-without-the-device-holds-16c7d3c5 = a house without the device holds no number in `site.rcd_ma`
hot-water-needs-water-say-how-2bb9dbf3 = hot water needs water: say how much in `site.water_l`
part-or-variant-in-the-store-39324589 = part or variant in the store

### scenario/pack.rs

name-a-machine-that-ships-ef6cfaae = name a machine that ships

### scenario/problem.rs

must-not-be-blank-bc7db88c = must not be blank
there-is-no-such-kind-85f89bb5 = there is no such { $kind }
there-is-no-such-kind-nearest-is-dc5cf1d7 = there is no such { $kind }; nearest is { $known }

### scenario/read.rs

at-most-most-are-read-93d168da = at most { $most } are read
line-n-54d86573 = line { $n }
not-json-error-2091875a = not JSON: { $error }
a-list-of-n-434eaf11 = a list of { $n }
an-object-of-n-fields-22543677 = an object of { $n } fields

### scenario/share.rs

start-and-so-on-n-letters-7c1d7aa8 = { $start } and so on, { $n } letters
the-letters-were-cut-or-changed-a8d2823a = the letters were cut or changed on the way: copy the whole address or file again
this-is-longer-than-any-job-ask-a1c9d230 = this is longer than any job: ask for it as a file
this-version-reads-letters-that-68035ce9 = this version reads letters that begin with 1: ask for the job as a file, or use a newer version

### records/as_written.rs

a-record-has-at-most-n-1cacb055 = a record has at most { $n }
n-bytes-8c9bc920 = { $n } bytes
no-json-f6fd6898 = no JSON
a-record-is-json-error-c828590f = a record is JSON: { $error }
the-format-of-a-record-begins-122c1417 = the format of a record begins with { $format }
a-record-says-everything-in-it-c3c5f228 = a record says everything in it
this-is-the-record-as-version-2de6580c = This is the record as version { $version } of the program wrote it. It was not worked out again here: nothing on this page shows that its readings and marks come out.
only-version-version-can-run-it-152a5c96 = Only version { $version } can run it again to the bit.

### records/chain.rs

record-n-of-the-row-its-link-712aca5b = record { $n } of the row: its link does not follow from it, it was edited
record-n-of-the-row-follows-on-4671ba18 = record { $n } of the row follows on one that is not here: one was dropped
record-n-of-the-row-follows-on-929df477 = record { $n } of the row follows on one that another follows on too: one was added

### records/check.rs

the-link-is-link-body-and-link-929e8c67 = the link is { $link }, body and link before give { $own }: the record was edited
the-name-is-not-the-one-of-the-e6755393 = the name is not the one of the day: it was changed
no-seal-a-record-of-an-505ab001 = no seal: a record of an assessment has one
the-seal-is-not-candidate-s-for-a3ab23ef = the seal is not { $candidate }'s for { $assessment }: edited, or another candidate's record
engine-engine-wrote-it-verify-it-a43070dc = engine { $engine } wrote it: verify it with that engine, this is { $own }
job-job-is-not-in-the-library-f62bfdc8 = job { $job } is not in the library: give its file
job-job-is-another-now-own-49aa7f48 = job { $job } is another now: { $own } instead of { $said }
act-act-tick-tick-is-later-than-b42ffa19 = act { $act }: tick { $tick } is later than a day after the bell
act-act-words-hands-could-not-do-42a61180 = act { $act }, { $words }: hands could not do this then
act-act-words-at-tick-said-could-2816f4d0 = act { $act }, { $words }: at tick { $said }, could begin at { $own } only
line-line-said-replay-gives-own-5a971099 = line { $line }: { $said }, replay gives { $own }
result-field-said-replay-gives-e7fc42ec = result, { $field }: { $said }, replay gives { $own }
the-machine-s-last-state-is-2477a49b = the machine's last state is another
the-job-cannot-be-run-why-8b5e063c = the job cannot be run: { $why }

### records/cohort/mod.rs

hard-for-this-cohort-cc81ca0a = hard for this cohort
easy-for-this-cohort-299d313d = easy for this cohort
neither-easy-nor-hard-or-not-8a879929 = neither easy nor hard, or not sure yet
one-person-alone-reliability-82943e64 = one person alone: reliability cannot be told
people-can-be-told-apart-one-by-44ca4281 = people can be told apart one by one
enough-for-a-decision-about-one-ab1934f2 = enough for a decision about one person, with a border zone that means more jobs
enough-to-compare-groups-not-for-b555ce08 = enough to compare groups, not for a decision about one person
too-low-for-any-decision-about-1bf7239a = too low for any decision about one person
judged-no-number-of-jobs-like-77ad4cfc = { $judged }; no number of jobs like these would help
judged-about-n-jobs-a-person-4f4e2bc8 = { $judged }; about { $n } jobs a person would reach { $reached }

### records/course.rs

there-is-no-file-among-the-files-befd43f2 = there is no { $file } among the files of the build
base-cannot-begin-names-give-an-88b4f0bb = “{ $base }” cannot begin names: give an address such as https://school.example/, without ? and #

### records/practice.rs

work-safely-1551597e = work safely

### records/record.rs

byte-n-e678c8db = byte { $n }
not-as-a-record-is-written-it-60dbf605 = not as a record is written: it was edited or saved anew by another program

### records/rulings.rs

of-which-assessment-choose-one-e977c3c3 = Of which assessment? Choose one.
what-holds-choose-one-a482872b = What holds? Choose one.
who-rules-give-a-name-fe31c432 = Who rules? Give a name.
why-a-ruling-stands-with-its-1cfa6ca1 = Why? A ruling stands with its reason.

### records/seal.rs

must-be-64-hexadecimal-digits-0-940122fe = must be 64 hexadecimal digits 0-9 a-f
letter-is-in-no-start-code-use-2e1d638d = '{ $letter }' is in no start code: use digits and letters
n-letters-a-start-code-has-7440fd41 = { $n } letters: a start code has { $wanted }

### records/sift.rs

erased-its-place-in-the-row-is-d289ea4f = erased; its place in the row is kept
erased-but-its-link-does-not-9664e4c1 = erased, but its link does not follow from what is left: it was edited
file-line-n-51269141 = { $file }, line { $n }
job-job-is-not-among-those-here-43e7eaad = job { $job } is not among those here
assessment-assessment-is-not-a35f17f6 = assessment { $assessment } is not here: open its file too

### records/sitting.rs

it-is-of-another-assessment-than-35a7df27 = it is of another assessment than { $assessment }
job-n-of-this-candidate-is-own-b2985c48 = job { $n } of this candidate is { $own }, not { $said }
the-variant-that-was-drawn-is-no-1d5b620f = the variant that was drawn is no job: { $why }
# no job
none-903f9f01 = none

### records/zip.rs

a-zip-file-takes-65-535-files-2491f08e = a zip file takes 65,535 files and 4 GB at most

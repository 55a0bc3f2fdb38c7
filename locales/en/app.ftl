### app/asking.rs

this-browser-has-no-threads-295d94cd = This browser has no threads.

### app/assessments/course.rs

cancelled-nothing-is-saved-6905c264 = Cancelled: nothing is saved.
course-package-for-a-training-fbd07c07 = Course package for a training system
the-workshop-and-this-assessment-fea97212 = The workshop and this assessment in one zip file, made here of the very build that you are looking at. A training system takes it as a course, and its learners sit it there.
which-kind-the-system-takes-01c04a98 = Which kind the system takes
address-that-the-course-s-names-93e82dc5 = Address that the course’s names begin with
it-need-not-answer-take-one-that-3db8f8e1 = It need not answer. Take one that is yours and let it stay: by it the system tells courses apart.
packing-6714ec88 = Packing
cancel-35afca3b = Cancel
make-the-package-506cd1d4 = Make the package
packing-the-files-of-this-build-be43086f = Packing the files of this build …
no-package-error-e5823216 = No package: { $error }.
the-browser-did-not-let-the-page-8a26f41d = The browser did not let the page save a file.
file-is-saved-n-files-size-mb-c91deda4 = { $file } is saved: { $n } files, { $size } MB. Hand it to the keeper of the training system.

### app/assessments/given.rs

candidate-stands-twice-each-ca45b0ca = “{ $candidate }” stands twice: each candidate has one slip.
line-a-line-is-a-number-or-a-0bea8548 = “{ $line }”: a line is a number, or a number, a comma and extra minutes in steps of { $step }, at most { $most }.
mrs-alder-fbbdef4b = Mrs Alder
flat-on-the-third-floor-d3588053 = flat on the third floor
mr-birch-f010ed28 = Mr Birch
house-at-the-end-of-the-lane-97e1d086 = house at the end of the lane
mrs-cedar-0c00c12c = Mrs Cedar
ground-floor-kitchen-to-the-yard-d6aea71e = ground floor, kitchen to the yard
mr-dogwood-288d632d = Mr Dogwood
two-rooms-above-the-bakery-2a36cb7d = two rooms above the bakery

### app/assessments/packing.rs

this-page-does-not-say-which-75f6a780 = This page does not say which files it consists of: put it together by “make dist”, or make the package on the command line.
list-is-no-list-of-files-1ee40907 = “{ $list }” is no list of files.
there-is-too-much-in-this-build-00190c6f = There is too much in this build: { $error }.
the-server-has-another-build-of-fa004f13 = The server has another build of this page by now.
load-this-page-anew-where-there-d6dccb6f = Load this page anew where there is a network, then try again.
file-cannot-be-had-why-566a0d95 = “{ $file }” cannot be had: { $why }.

### app/assessments/room_codes.rs

the-codes-are-saved-keep-them-fa906d32 = The codes are saved. Keep them from candidates.
pauses-of-the-whole-room-70c49c42 = Pauses of the whole room
the-clock-can-be-stopped-for-the-f52246a8 = The clock can be stopped for the whole room by codes that are read out
each-candidate-types-the-code-66299a7a = Each candidate types the code. Read out the first one to stop, the second one to go on, and so forth; cross off what was used, with any group: a code is good once. Each pause stands in the result with its time.
show-the-codes-not-on-a-screen-f8daa6c0 = Show the codes: not on a screen that candidates see
pause-codes-a-table-60e7100e = Pause codes, a table
pause-44f9bf2d = Pause
to-stop-8cec5da4 = To stop
to-go-on-9ae941a7 = To go on
save-the-codes-as-a-text-d52471a3 = Save the codes as a text
pause-codes-title-9818671b = Pause codes: { $title }

### app/assessments/rules.rs

time-and-aids-92bdde14 = Time and aids
allowed-586f52e3 = Allowed
the-data-sheet-beside-a-reading-58d50094 = the data sheet beside a reading
the-wiring-diagram-65a4e9df = the wiring diagram
the-handbook-904a74c8 = the handbook
stopping-the-clock-between-jobs-61974bb4 = stopping the clock between jobs
each-candidate-gets-other-values-6e47dbff = Each candidate gets other values, loads and customers
what-passes-f79a6354 = What passes
a-critical-safety-rule-broken-in-255698af = A critical safety rule broken in any job means: not yet
after-a7dd3a69 = After
cut-58e25863 = Cut
a-fixed-number-of-marks-121ea35e = a fixed number of marks
from-judges-after-angoff-7cefbe10 = from judges, after Angoff
for-each-job-with-commas-between-c5f1ad6b = For each job, with commas between: the marks that a just competent technician would get. Five judges or more, two rounds with a talk between.
no-judge-has-given-marks-yet-1050e4be = No judge has given marks yet.
cut-marks-marks-of-one-judge-how-508054a2 = Cut { $marks } marks, of one judge: how sure it is can be told from two judges on.
cut-marks-marks-the-judges-agree-23f43550 = Cut { $marks } marks; the judges agree, and so few alike tell of no spread.
cut-marks-marks-among-the-judges-5a357079 = Cut { $marks } marks; among the judges it is sure to about ±{ $spread }.

### app/assessments/screen.rs

this-browser-gives-no-random-d1182b8e = This browser gives no random numbers, so it can make no key: use another one.
file-is-an-assessment-too-one-is-9b047416 = { $file } is an assessment, too: one is worked on at a time.
what-was-given-out-stays-on-the-792ef0d9 = What was given out stays on the list as it was. This is a new one: give out its own file, link and slips.
make-an-assessment-daec6f30 = Make an assessment
all-assessments-25f835af = All assessments
say-which-skills-at-which-level-9841b34b = Say which skills at which level, how many jobs, and what passes. Each candidate then gets jobs of their own, equally hard, and a result that can be checked.
make-a-new-one-480e8586 = Make a new one
review-results-7563f90b = Review results
observer-s-sheet-58c73c5a = Observer’s sheet
files-of-assessments-to-work-on-406bbd79 = Files of assessments to work on
made-here-b6c0ccf6 = Made here
none-yet-786bc275 = None yet.
n-candidates-8816d347 = { $n } candidates
given-out-9bbc2516 = given out
forget-title-3eb6f653 = Forget “{ $title }”
forget-6e3fab8c = Forget
this-has-been-given-out-and-its-4818810e = This has been given out, and its results stand on it as it is. A change here makes a new one, with slips of its own; this one stays on the list, and its results still count.
how-sure-its-decisions-are-c7d8a265 = How sure its decisions are
still-to-do-2fbfc23f = Still to do
n-jobs-reliability-at-least-541001e0 = { $n } jobs: reliability at least { $least } of 1. Enough for a decision about one person.
n-jobs-reliability-at-least-d3f6db2a = { $n } jobs: reliability at least { $least } of 1. For a decision about one person alone 0.8 is asked: add jobs, or take several sittings and the practical together.

### app/assessments/slips.rs

the-file-for-all-candidates-is-a202bc33 = The file for all candidates is saved.
the-key-is-saved-keep-it-where-eaf8ba1b = The key is saved. Keep it where only you can open it: whoever has it can seal results.
give-it-out-97f482bd = Give it out
save-the-file-3310d52f = Save the file
save-the-key-6c2f08c0 = Save the key
link-n-characters-7ba21125 = Link, { $n } characters
the-link-as-a-code-for-a-9c367c25 = The link as a code for a classroom screen
the-link-as-a-qr-code-f9cdcb6b = The link as a QR code
candidates-6e9467ab = Candidates
one-number-a-line-after-a-comma-3f63682d = One number a line. After a comma extra minutes, where somebody has them: they do not show on the slip; the clock on the candidate’s screen has them in it.
slips-a-table-978d20c7 = Slips, a table
title-cut-along-the-lines-one-e6f5a6d5 = { $title }: cut along the lines, one slip each
your-number-89a480eb = Your number
start-code-8f4e7f8c = Start code
letters-beside-it-478bec05 = Letters beside it
print-the-slips-7a90592c = Print the slips
when-all-begin-tell-a-word-for-218ed81b = When all begin, tell a word for today, the same for all: with another word, other values are drawn, so that yesterday’s group can tell nothing. Write the word down; every result holds it.
open-the-link-or-the-file-that-f4de2830 = Open the link or the file that the room is given. Type these in, with the word for today, and begin. The workshop: { $page }

### app/assessments/slots.rs

jobs-4ae6a79d = Jobs
jobs-asked-for-a-table-e19236ad = Jobs asked for, a table
level-4155597d = Level
skill-6fd141d6 = Skill
machine-67a5be0e = Machine
how-many-c31ec050 = How many
there-are-5404447f = There are
take-off-5e080abf = Take off
one-more-kind-of-job-475586c4 = One more kind of job
any-2c29f04d = any
level-of-row-n-2dee7dc2 = Level of row { $n }
skill-of-row-n-107d9ea3 = Skill of row { $n }
machine-of-row-n-2634753b = Machine of row { $n }
how-many-of-row-n-e7e4d8a5 = How many of row { $n }
take-off-row-n-60fb1b1f = Take off row { $n }
# of a list
take-off-a785e709 = take off

### app/assessments/table.rs

the-assessment-d781e1ee = The assessment
title-24d471a9 = Title
as-candidates-see-it-its-name-in-f54cb1c6 = As candidates see it. Its name in files comes from it.
time-for-all-jobs-f5c77140 = Time for all jobs
minutes-adbcc5ee = minutes
generous-it-is-to-be-a-limit-not-53dae4fc = Generous: it is to be a limit, not a race. Extra time is given to single candidates, on their slips.
results-are-erased-after-89f8c11d = Results are erased after
months-18182bc2 = months
counted-from-the-day-they-began-464031f3 = Counted from the day they began. Candidates are told; the review says which are past it. Empty: nothing is said.
marks-to-pass-3190e823 = Marks to pass
marks-d9763829 = marks
of-100-100e3e37 = Of 100.
border-0cad6f57 = Border
to-either-side-of-the-cut-within-8323e239 = To either side of the cut. Within it more jobs decide: it is neither passed nor failed.
machines-put-right-eb165258 = Machines put right
of-the-jobs-813c3f45 = Of the jobs.
safety-least-of-its-points-f2d898ba = Safety, least of its points
marks-elsewhere-do-not-make-up-661d5232 = Marks elsewhere do not make up for it.
least-of-the-points-b22499d7 = Least of the points
one-judge-a-line-4c7a1cef = One judge a line
needs-a-letter-from-a-to-z-or-a-ec6745e6 = needs a letter from a to z or a digit, for the names of files

### app/bench/aloud.rs

read-aloud-2a5da106 = Read aloud

### app/bench/drawer.rs

put-away-what-02c8620c = Put away: { $what }
put-away-453860f0 = put away

### app/bench/estimate.rs

price-for-the-whole-job-b926379e = Price for the whole job
or-with-a-part-of-another-make-e91891c8 = Or with a part of another make
or-a-new-machine-5e1134d0 = Or a new machine
estimate-2649bd57 = Estimate
for-what-is-held-to-be-wrong-aec7e19a = For what is held to be wrong
not-known-yet-43730b83 = not known yet
so-far-cf95b99e = So far
add-the-part-and-the-time-still-652c603c = Add the part and the time still needed. A way without a price is not named.
a-price-is-a-number-above-zero-8503dd0e = A price is a number above zero, such as 95. At least one is needed.
name-the-price-dc72528c = Name the price

### app/bench/gauge_face.rs

label-value-af517aba = { $label }: { $value }

### app/bench/gauges.rs

water-speed-length-warmth-2bd00d7e = water, speed, length, warmth
mind-caution-bc1989ec = mind: { $caution }
instruments-that-need-no-circuit-cbd0aff2 = Instruments that need no circuit
data-sheet-b68bc762 = data sheet
record-place-ee20a911 = Record: { $place }
record-593058cc = record

### app/bench/help.rs

hints-bca2dc31 = Hints
thinking-about-what-your-notes-a64468f9 = Thinking about what your notes say; this takes some seconds.
no-hint-can-be-given-why-4eb02ceb = No hint can be given. { $why }
you-have-shown-that-you-can-do-cc122c6a = You have shown that you can do this: there are no more hints here.
these-were-all-the-hints-for-325be3f4 = These were all the hints for this step.
hint-gives-costs-percent-of-the-ea494b74 = Hint: { $gives } (costs { $percent } % of the target)
one-more-gives-costs-percent-of-be7315b4 = One more: { $gives } (costs { $percent } % of the target)

### app/bench/instrument.rs

instrument-in-hand-8e0e36f8 = Instrument in hand
note-it-5052aaba = Note it
instrument-and-mode-9a27bed4 = Instrument and mode
other-tools-6a3c046e = other tools
clamp-ammeter-8375ff6f = Clamp ammeter
insulation-tester-3b4b5cee = Insulation tester
earth-bond-tester-7f060bf7 = Earth bond tester
leakage-clamp-01f4d8b2 = Leakage clamp
touch-current-tester-70242ec0 = Touch current tester
multimeter-a8f8b613 = Multimeter
one-conductor-only-round-a-whole-30acd193 = one conductor only: round a whole cord it reads nothing
line-and-neutral-together-on-its-f4b128b8 = line and neutral together on its own lead · limit 3.5 mA
metal-to-earth-through-2-k-4c1f4c64 = metal to earth through 2 kΩ, running · limit 0.5 mA
t-500-v-dc-plug-out-its-switch-or-5ffe4cc5 = 500 V DC · plug out, its switch or knob on · limit 1 MΩ
t-0-2-a-plug-out-earth-pin-to-3ec28f32 = 0.2 A · plug out, earth pin to metal · limit 0.3 Ω
v-low-73ed07af = V~ low
tone-5c714e81 = tone
diode-2ee60b90 = diode
clamp-a-c1e05a4f = clamp A
insulation-b68ffc2f = insulation
earth-bond-8e7e400c = earth bond
leakage-607b4f11 = leakage
touch-ma-279e16ba = touch mA

### app/bench/job_bar.rs

next-job-3d6d361b = Next job
debrief-6692941a = Debrief
finish-9f29eeb2 = Finish
assessment-7f464e4f = Assessment
time-of-day-70a27853 = Time of day
on-site-time-019c7e7e = on site { $time }
cost-so-far-48d8a29b = cost so far

### app/bench/job_card.rs

job-card-6f422c4a = Job card
asked-4e3af9c3 = Asked
ask-the-customer-44068b63 = Ask the customer
put-right-outside-the-machine-7cc266b9 = Put right outside the machine
machine-and-place-da4d1a40 = Machine and place
ask-again-in-other-words-9c1f8288 = Ask again in other words: { $question }
ask-again-in-other-words-7634d5c6 = ask again in other words

### app/bench/keys.rs

picture-outside-db718606 = picture: outside
picture-opened-678d48f6 = picture: opened
picture-section-d90da37e = picture: section
picture-wiring-c31eebe9 = picture: wiring
picture-water-e4995b5a = picture: water
to-the-picture-arrows-and-page-34e69c49 = to the picture; arrows and page keys move, Enter takes in hand
to-what-can-be-done-with-what-is-ebe98f1f = to what can be done with what is in hand
to-the-job-card-4e493632 = to the job card
to-the-notebook-5b816e18 = to the notebook
to-the-instrument-s-modes-arrows-5966354c = to the instrument's modes; arrows move, Enter chooses
to-the-red-lead-type-a-point-s-7e968541 = to the red lead; type a point's name
to-the-black-lead-55d69ff2 = to the black lead
write-the-reading-down-695589b1 = write the reading down
stop-the-clock-df0f06e0 = stop the clock
let-the-clock-go-on-d00ee020 = let the clock go on
wait-until-something-changes-197ec1b5 = wait until something changes
wait-a-minute-fbc721a5 = wait a minute
put-the-card-away-or-let-go-350c7631 = put the card away, or let go

### app/bench/moving.rs

instrument-87615d50 = Instrument
leads-and-mode-8ddd0280 = leads and mode
heard-1b794a4b = Heard:
display-46357c1d = Display:
sound-is-on-130aeb85 = Sound is on
sound-is-off-0d4529a1 = Sound is off

### app/bench/notebook.rs

notebook-9db5b440 = Notebook
nothing-noted-yet-what-you-look-4b8cc67b = Nothing noted yet. What you look at, listen to, ask or note stands here and counts as evidence; what only passes by does not.
remark-3a635eb1 = Remark
write-down-83c15880 = Write down
data-sheet-range-5a7b7f53 = data sheet { $range }
evidence-text-value-06ee0d82 = Evidence: { $text } { $value }

### app/bench/notice.rs

making-safe-2585e0f5 = Making safe
i-have-read-this-9be0b48a = I have read this
all-right-ea58a416 = All right
leave-it-fb3e2fed = Leave it

### app/bench/papers.rs

papers-8da5b89e = Papers
the-wiring-diagram-is-the-441bdd2d = The wiring diagram is the picture “wiring”. In a tab of their own:
faults-of-this-machine-c1caed1e = faults of this machine
its-parts-bd6bcf1f = its parts
measuring-b238bd68 = measuring
making-safe-0aabd0d5 = making safe
print-job-card-and-pictures-ece512cd = Print job card and pictures
data-sheet-what-a-good-one-reads-4a1d500f = Data sheet: what a good one reads
access-guide-what-is-off-before-ca5774c7 = Access guide: what is off before what

### app/bench/picture.rs

closer-3c01daa3 = Closer
farther-1001bf65 = Farther
whole-e55b9774 = whole

### app/bench/point_picker.rs

touch-or-type-a-point-e92e3faa = touch or type a point
jaws-1e22169e = jaws
take-the-jaws-lead-off-476135a7 = Take the jaws lead off
points-for-the-jaws-lead-cede13b1 = Points for the jaws lead
red-40f480dc = red
take-the-red-lead-off-442d2c79 = Take the red lead off
points-for-the-red-lead-4fb2627d = Points for the red lead
black-568f4ba4 = black
take-the-black-lead-off-4fbeb951 = Take the black lead off
points-for-the-black-lead-6850dee9 = Points for the black lead

### app/bench/recorder.rs

recorder-n-of-4-pens-34713556 = recorder, { $n } of 4 pens
record-the-meter-2b030b72 = record the meter
fresh-strip-7ccee1e9 = fresh strip
print-the-chart-5001857f = Print the chart
put-a-pen-on-the-meter-as-it-is-1481b5d1 = Put a pen on the meter as it is set, or on a speed, a pressure or a temperature above.
strip-chart-seconds-s-1f4fab67 = Strip chart, { $seconds } s
pen-low-to-high-in-seconds-s-now-30079048 = { $pen }, { $low } to { $high } in { $seconds } s, now { $now }
lift-the-pen-pen-e72eb469 = Lift the pen: { $pen }
lift-f6c75a7c = lift
highest-value-9bf00bd2 = highest { $value }
lowest-value-ccd67596 = lowest { $value }
as-a-table-931aef9a = as a table
time-5d3c9be4 = time

### app/bench/safe_strip.rs

safe-a297bdc5 = Safe?
not-done-bfbdbd26 = not done
done-26f38071 = done
proved-f57ccffb = proved

### app/bench/screen.rs

job-card-and-notebook-4c0b0860 = Job card and notebook
card-0855387f = Card
notebook-n-86f28c80 = Notebook { $n }
tests-n-70b01d82 = Tests { $n }
# noun
visit-66211a50 = Visit
begin-this-job-anew-2af39090 = Begin this job anew
what-was-done-so-far-is-laid-ca7585ae = What was done so far is laid aside: you come to the door once more.
begin-anew-5cd20a8d = Begin anew
pictures-0d70feae = Pictures
the-machine-picture-30a04b7f = The machine, { $picture }
you-are-still-at-the-workshop-3246716f = You are still at the workshop.
telephone-and-van-1cfb6ecb = Telephone and van
nothing-is-open-yet-7aa03d52 = Nothing is open yet.
tried-again-from-after-step-step-48f062fe = Tried again from after step { $step }: practice that does not count.
back-to-the-job-as-you-finished-368f5a65 = Back to the job as you finished it
this-job-is-open-in-another-tab-07ea4fe1 = This job is open in another tab
you-can-look-here-nothing-you-do-8cd9dafc = You can look here; nothing you do in this tab is saved.
work-in-this-tab-cb3fa592 = Work in this tab

### app/bench/selection_bar.rs

in-hand-35557bdf = In hand
touch-a-part-of-the-machine-the-ad31efbd = Touch a part of the machine, the tap or the plug to see what can be done with it.
what-to-do-with-thing-ee452e8d = What to do with: { $thing }
measure-here-173c550f = measure here …
repair-3be949b8 = repair …
let-go-f998886c = Let go
let-go-4029d5cc = let go
no-check-54c4001e = no check

### app/bench/suspects.rs

possible-13fe35aa = possible
likely-7e993075 = likely
nearly-sure-e5c89c35 = nearly sure
suspects-edcd4227 = Suspects
add-a-suspect-fe9882ee = Add a suspect
choose-a-cause-c5214810 = choose a cause …
bring-back-cause-bc24b35f = Bring back: { $cause }
strike-out-cause-5ae6c48c = Strike out: { $cause }
struck-out-6afe6ab2 = (struck out)
how-sure-sure-change-cause-11182196 = How sure: { $sure }. Change: { $cause }
move-up-cause-d828cd5a = Move up: { $cause }
bring-back-a06663be = bring back
strike-out-3aeb38d7 = strike out

### app/bench/tests_list.rs

tests-after-the-repair-fc8f9de4 = Tests after the repair
in-this-order-after-the-last-e5d97be8 = In this order, after the last change to the machine. A later change makes them open again.
within-the-limit-11fba76a = within the limit
outside-the-limit-084a4dec = outside the limit
leads-are-there-note-it-9cdd794f = Leads are there: note it.

### app/bench/time_bar.rs

clock-bb5f80fd = Clock
waiting-until-958504d0 = waiting until
wait-until-0b643398 = wait until

### app/bench/visit.rs

the-visit-f9bcdb57 = The visit
parts-for-the-van-087612f0 = Parts for the van
load-the-van-46378a93 = Load the van
at-the-customer-s-with-the-first-6f316291 = At the customer's: with the first of these, or the first touch of the machine, you have driven there.
second-visit-parts-to-bring-1196e7ef = Second visit: parts to bring
leave-until-the-second-visit-0567815e = Leave until the second visit
see-the-report-a1ba93cf = See the report
before-you-drive-on-the-phone-cdb4c2d5 = Before you drive: on the phone
asked-on-the-phone-41fc6a57 = Asked on the phone
no-longer-made-ad8748b0 = no longer made
tomorrow-ac3c2a26 = tomorrow
n-of-most-33e97535 = { $n } of { $most }
the-van-is-full-take-one-out-to-89166b23 = The van is full: take one out to make room for another.
hang-on-a-label-do-not-use-77951b5b = Hang on a label “do not use”

### app/cohort/aside.rs

file-this-record-cannot-be-run-8fc814a4 = { $file }: this record cannot be run again here: its job or its assessment is not known. It can still be read as it was written.

### app/cohort/decision.rs

decision-by-who-fbc7180c = { $decision }, by { $who }
passed-513cb799 = passed
border-more-jobs-f2f942b0 = border: more jobs
not-yet-6d9d33dc = not yet

### app/cohort/desk/checking.rs

this-browser-has-no-threads-2afe55bc = This browser has no threads: nothing can be checked in it.
name-what-925f8a22 = { $name }: { $what }.
file-this-assessment-does-not-bb1c22c4 = { $file }: this assessment does not fit the jobs here; open it where assessments are made to see why.

### app/cohort/desk.rs

opening-ae1c2bab = Opening …
back-c2954bc2 = Back
results-9cf82695 = Results
drop-any-number-of-result-files-d85709e3 = Drop any number of result files. Each is checked here: its seal at once, then its work is run again. Nothing leaves this browser.

### app/cohort/drop.rs

results-their-assessment-and-its-b2c5c1dd = Results, their assessment and its key: drop them here, or
open-files-dcbec6c2 = Open files
open-a-folder-ee1a4322 = Open a folder

### app/cohort/erase_tab.rs

erasing-strikes-out-all-that-a-c19b78e7 = Erasing strikes out all that a record holds but its place in the row, so that the records around it can still be checked. Rulings kept in this browser about a person of whom nothing is left go with it. It cannot be taken back.
a-page-cannot-delete-your-files-4b0596ba = A page cannot delete your files: save what is left, then delete the files it came from, their copies and files of rulings that name the person.
erasing-waits-until-everything-47b5693c = Erasing waits until everything is checked.
what-is-left-cf019dae = What is left
save-what-is-left-67b90b63 = Save what is left
past-their-time-2e718d52 = Past their time
no-result-here-is-past-the-time-399b1095 = No result here is past the time that its assessment sets, or none sets one.
one-person-a3b729f8 = One person
whose-results-02dd5a51 = Whose results
choose-73c66160 = Choose
erase-everything-of-person-5c99f8ce = Erase everything of { $person }
yes-erase-everything-of-person-102389f7 = Yes, erase everything of { $person }
past-their-time-a-table-8ec36cd9 = Past their time, a table
person-c36eeba0 = Person
to-be-erased-since-b71a2b5f = To be erased since
records-593ef94d = Records
erase-this-one-record-0256da3c = Erase this one record
yes-erase-this-one-record-a4ca7c2f = Yes, erase this one record
erase-these-n-records-134680c8 = Erase these { $n } records
yes-erase-these-n-records-a4eb771f = Yes, erase these { $n } records
changed-here-by-erasing-one-file-dbd157ff = Changed here by erasing: one file. The files on your disk are as they were.
changed-here-by-erasing-n-files-15b08610 = Changed here by erasing: { $n } files. The files on your disk are as they were.

### app/cohort/erasing.rs

nothing-was-erased-91da2747 = Nothing was erased.
one-record-is-erased-here-save-5a09964a = One record is erased here. Save what is left, and delete the file it came from.
n-records-are-erased-here-save-8f9148ad = { $n } records are erased here. Save what is left, and delete the files they came from.
file-it-cannot-be-read-any-more-cc391a75 = { $file }: it cannot be read any more, so nothing of it was erased: drop it again.
file-line-line-is-not-the-record-24b24ab6 = { $file }: line { $line } is not the record that was taken in, so nothing of it was erased: drop it again.

### app/cohort/job_page.rs

back-to-all-19024338 = Back to all
print-this-job-35b2ac67 = Print this job
who-did-it-20ff4f7f = Who did it
faults-confused-da5e7feb = Faults confused
safety-rules-broken-a2def315 = Safety rules broken
no-record-of-it-counts-any-more-5cb49e28 = No record of it counts any more.
people-8390060e = People
marks-of-100-72d62e79 = Marks of 100
score-0-to-3-12e6e831 = Score, 0 to 3
mean-on-average-9f19fdc4 = { $mean } on average
difficulty-8520a210 = Difficulty
tells-people-apart-939f5f04 = Tells people apart
# of a job to the model
fit-6fa1a18c = Fit
on-site-7777eb8b = On site
cost-68887f58 = Cost
mean-on-average-from-so-few-or-f7cf8afe = { $mean } on average; from so few or equal marks no spread can be told
mean-on-average-from-least-to-1cf0e835 = { $mean } on average, from { $least } to { $most }; standard deviation { $deviation }
mean-min-on-average-from-least-39ccbafb = { $mean } min on average, from { $least } to { $most } min
too-few-people-or-all-alike-it-f1d68d70 = too few people, or all alike: it cannot be told
n-how-far-the-score-goes-with-678b3462 = { $n }: how far the score goes with the person’s other jobs, 1 at most
too-few-people-to-say-64148cec = too few people to say
fit-1-is-as-expected-7a878322 = { $fit }; 1 is as expected
people-at-this-job-a-table-f1f23289 = People at this job, a table
marks-ab70bac9 = Marks
score-77eb0235 = Score
# how a job ended
ended-27128bb9 = Ended
target-time-3a72ba31 = Target time
target-cost-af52e51d = Target cost
safety-b04d1727 = Safety
step-by-step-92ec0206 = Step by step
person-the-person-s-page-0e05d399 = { $person }: the person’s page
replay-what-29fb39e0 = Replay { $what }
# verb
replay-191d9d13 = Replay

### app/cohort/jobs.rs

with-fewer-than-ten-people-no-4a2f660a = With fewer than ten people no number is given for a job: it would be noise.
jobs-a-table-d8bd0b7c = Jobs, a table
job-42d9307c = Job
mean-score-0-to-3-78733dda = Mean score, 0 to 3
time-to-target-d89aa142 = Time to target
cost-to-target-3ac1de36 = Cost to target
# verb, of a job
void-cc5090ad = Void
job-more-about-this-job-1b19cd5d = { $job }: more about this job
void-job-for-everybody-ca82a8f0 = Void { $job } for everybody
# verb, of a job
void-44a9670d = void
infit-in-outfit-out-look-at-it-0b635bd0 = { $infit } in, { $outfit } out: look at it
infit-in-outfit-out-c09f9c57 = { $infit } in, { $outfit } out
people-bars-n-of-them-and-jobs-d93114b4 = People (bars, { $n } of them) and jobs (dots with their error) on one scale: who stands above a job gets it right more often than not. The numbers are in the tables.
abilities-of-people-and-bb744d82 = Abilities of people and difficulties of jobs on one scale; the same numbers stand in the tables
job-difficulty-4941f4ad = { $job }: { $difficulty }

### app/cohort/kept_rulings.rs

one-ruling-made-earlier-in-this-27b9e2bf = One ruling made earlier in this browser, or in another tab of it, the last on { $day } by { $who }. They are not in force for what is dropped here now.
n-rulings-made-earlier-in-this-f8b0fd98 = { $n } rulings made earlier in this browser, or in another tab of it, the last on { $day } by { $who }. They are not in force for what is dropped here now.
rulings-made-earlier-bb14b7be = Rulings made earlier
put-them-in-force-d73d5a00 = Put them in force
forget-them-12b24b6e = Forget them
rulings-not-kept-5a128060 = Rulings not kept
the-last-change-was-not-kept-1eebf256 = The last change was not kept.
save-the-rulings-as-a-file-8efdd8ca = Save the rulings as a file

### app/cohort/marks_picture.rs

marks-of-100-a-dot-for-each-068c7b45 = Marks of 100, a dot for each person. The numbers are in the table.
marks-of-all-people-on-one-line-b6420ed9 = Marks of all people on one line; the same numbers stand in the table

### app/cohort/opened.rs

back-to-the-person-5c790be5 = Back to the person
back-to-the-skill-ad78769d = Back to the skill
back-to-the-job-ba3a0173 = Back to the job

### app/cohort/others.rs

no-safety-rule-was-broken-2f3ea64a = No safety rule was broken.
safety-a-table-18bd4546 = Safety, a table
# of safety
rule-fa1c27b6 = Rule
how-grave-0e5cf784 = How grave
# how often
times-8895ebbf = Times
# drawn in a table
bar-fd57b0ba = Bar
no-fault-was-taken-for-another-8793faa6 = No fault was taken for another.
faults-taken-for-others-a-table-298476ce = Faults taken for others, a table
was-wrong-728021cb = Was wrong
was-stated-aac7487d = Was stated
rows-with-a-gap-3776a0f3 = Rows with a gap
rows-that-are-not-whole-2af5ff29 = Rows that are not whole
every-record-is-accepted-as-far-09bc41d4 = Every record is accepted as far as it was looked at.
not-accepted-a-table-5f08031e = Not accepted, a table
# of a job
record-759c2fa5 = Record
first-difference-f02bd10c = First difference
as-written-b6ecf6b2 = As written
and-n-more-ec67458f = And { $n } more.
read-this-record-as-it-was-cad9e24b = Read this record as it was written
read-what-as-it-was-written-99fc37f2 = Read { $what } as it was written
# verb, of a record
read-018668d1 = Read

### app/cohort/pauses.rs

not-ended-58f8c33a = not ended
pauses-a-table-6b7ecb11 = Pauses, a table
from-by-their-clock-1dd326c2 = From, by their clock
# until when
to-2f3be1d8 = To
minutes-36d9968e = Minutes
codes-758add25 = Codes
this-time-did-not-count-compare-ef3251b7 = This time did not count. Compare it with the pauses you called: a pause that only one person had was not the room’s.
not-looked-at-the-assessment-s-41d3ea39 = not looked at: the assessment’s file is not here
the-assessment-s-66e74a34 = the assessment’s
none-of-the-assessment-s-00fe56ad = none of the assessment’s

### app/cohort/people.rs

people-and-skills-a-table-24b50bf2 = People and skills, a table
decision-be93ff03 = Decision
ability-error-15e74a94 = Ability ± error
put-right-1cc4be18 = Put right
critical-87d09fa8 = Critical
n-of-of-dfb9b397 = { $n } of { $of }
ability-unusual-947ee932 = { $ability }, unusual
count-skill-person-the-jobs-c3842e00 = { $count }, { $skill }, { $person }: the jobs behind it

### app/cohort/person.rs

print-this-person-7f0c05b1 = Print this person
override-the-decision-303539bc = Override the decision
this-sheet-was-made-on-day-7d958af5 = this sheet was made on { $day }.
an-unknown-day-0be93afa = an unknown day
assessment-jobs-that-count-n-70e12da3 = { $assessment }, jobs that count: { $n }
assessment-assessment-whose-file-cc5aa75c = assessment { $assessment }, whose file is not here
practice-of-no-assessment-7e0c9b9e = Practice, of no assessment
what-begun-on-day-1f6ea0fa = { $what }; begun on { $day }
what-begun-on-day-with-the-word-8fc618e2 = { $what }; begun on { $day } with the word “{ $word }”
by-the-rules-alone-decision-8966d0ff = By the rules alone: { $decision }
decision-marks-of-100-marks-on-68fe697f = { $decision }: { $marks } of 100 marks on average, { $cut } are asked
holds-by-who-day-why-ee2134cc = { $holds } by { $who }, { $day }: { $why }
overridden-decision-efb4d661 = Overridden: { $decision }
skill-n-of-of-b3cfe3b2 = { $skill } { $n } of { $of }
count-the-jobs-behind-it-248a950e = { $count }: the jobs behind it
ability-sure-to-about-range-0-is-612a52e0 = { $ability }, sure to about ±{ $range }; 0 is the middle of these people
n-counted-fixed-put-right-marks-41080f06 = { $n } counted, { $fixed } put right, { $marks } of 100 marks on average
taken-each-f5125359 = { $taken } each
ability-ff93d931 = Ability
never-opened-0-marks-each-n-0e9166b5 = never opened, 0 marks each: { $n }
rules-broken-n-critical-critical-14c2cdfd = rules broken: { $n }, critical: { $critical }
# of scores
pattern-3ef62895 = Pattern
unusual-right-on-hard-jobs-and-ba283ef4 = unusual: right on hard jobs and wrong on easy ones; look at the records
skills-ab6a56bf = Skills
records-a-table-eabd42ec = Records, a table
began-by-their-clock-06f21209 = Began, by their clock
# how often it was left
page-left-69e76460 = Page left
checked-51ba2a66 = Checked
read-what-977e8019 = Read { $what }
the-job-was-voided-it-counts-for-0a0a85dc = the job was voided: it counts for nobody
not-accepted-why-6613153b = not accepted: { $why }
# of a record
sealed-67f4cdae = sealed
practice-no-seal-a0f59e3c = practice, no seal
seal-not-looked-at-no-key-here-1978e9f6 = seal not looked at: no key here
seal-run-again-4bfaaadb = { $seal }, run again
seal-not-run-again-yet-037be9c0 = { $seal }, not run again yet

### app/cohort/received.rs

running-it-again-46c86b2d = Running it again …
saved-ae0ab8fe = Saved.
not-accepted-why-09b24d5b = Not accepted: { $why }
it-is-as-it-was-made-run-again-851bdf76 = It is as it was made: run again, everything came out the same.
a-result-from-a-code-5701eb7f = A result, from a code
candidate-job-n-of-assessment-defed6e8 = { $candidate }, job { $n } of { $assessment }: { $marks } of 100 marks.
the-letters-were-cut-or-changed-8833609c = The letters were cut or changed on the way: read the code again.
the-jobs-of-this-page-cannot-be-01236680 = The jobs of this page cannot be read.
this-browser-cannot-make-it-cdd5e9b8 = This browser cannot make it whole: { $why }.
run-again-it-does-not-come-out-a6ad2cb6 = Run again, it does not come out as it says: it was changed, or made by another version.

### app/cohort/replay.rs

job-n-title-d70dfe00 = Job { $n }, { $title }

### app/cohort/rows.rs

candidate-broken-19464ae3 = { $candidate }: { $broken }

### app/cohort/ruling_store.rs

rulings-are-kept-in-this-browser-8c4dcf72 = Rulings are kept in this browser; save their file to take them to another one, or to keep them with the results.
this-browser-has-no-room-left-74509029 = This browser has no room left: rulings made now are gone when this page is closed or loaded again. Save them as a file.
this-browser-does-not-let-the-7bb28bcf = This browser does not let the page keep rulings: they are gone when this page is closed or loaded again. Save them as a file.

### app/cohort/rulings.rs

void-job-job-for-everybody-18cb3f4f = Void job { $job } for everybody
override-the-decision-about-ff61a298 = Override the decision about { $person }
of-which-assessment-3d8b9381 = Of which assessment
of-assessment-alone-46ab0e15 = Of { $assessment } alone.
what-holds-ea4ebb89 = What holds
who-rules-8b930858 = Who rules
why-7b8038d9 = Why
it-holds-from-now-on-0223bdf3 = It holds from now on
not-after-all-b64ebe87 = Not after all
it-holds-save-as-a-file-ab8f93f3 = It holds; save as a file
throw-away-what-is-typed-about-7f0a96ce = Throw away what is typed about { $what }
throw-away-c2487923 = throw away
rulings-typed-by-half-53e9a69f = Rulings typed by half
typed-by-half-and-not-in-force-159956c5 = Typed by half and not in force. Open the form again to go on: on the person’s page, or beside the job.
job-job-ca48e31b = Job { $job }
nothing-was-ruled-a-job-is-fd17f4ab = Nothing was ruled. A job is voided from the table of jobs, a decision overridden on the person’s page; each stands with name, day and reason, and the records stay as they are.
take-back-the-ruling-about-what-8dfbcbbc = Take back the ruling about { $what }
# verb, of a ruling
take-back-cc425459 = take back
yes-take-it-back-3488ddb3 = Yes, take it back
rulings-a-table-d1340d34 = Rulings, a table
about-58e096de = About
# what holds from now on
holds-85d31ea6 = Holds
# who ruled
by-bea06c0e = By
day-4954229d = Day
# verb, of a ruling
take-back-a1f54b79 = Take back
taken-back-what-holds-by-who-day-cc3cde1c = Taken back: { $what }, { $holds }, by { $who }, { $day }: { $why }
any-it-names-none-a505d0bc = any: it names none
assessment-not-applied-no-result-fc58e591 = { $assessment }: not applied, no result here is of it

### app/cohort/save_tab.rs

people-csv-250c6812 = People, CSV
jobs-csv-4879e823 = Jobs, CSV
safety-csv-6d00c94d = Safety, CSV
faults-confused-csv-3ea45ac9 = Faults confused, CSV
everything-json-872b56ae = Everything, JSON
rulings-to-go-on-with-later-18aabe6b = Rulings, to go on with later
print-e8320d28 = Print
the-file-of-rulings-takes-them-2ffb8818 = The file of rulings takes them to another browser: drop it there with the results.
results-day-604f0153 = Results, { $day }

### app/cohort/saving.rs

there-is-nothing-to-save-yet-e66a9f34 = There is nothing to save yet.
nothing-was-erased-so-there-is-f7d9fa84 = Nothing was erased, so there is nothing to save.
not-saved-why-erase-and-save-96135f71 = Not saved: { $why }. Erase and save fewer at a time.
file-is-saved-38cc5918 = { $file } is saved.

### app/cohort/shown.rs

looking-at-links-and-seals-f152dd29 = Looking at links and seals: { $looked } of { $n } files
running-the-work-again-run-of-n-17ce71a7 = Running the work again: { $run } of { $n } files
stopped-not-every-record-was-run-352fb6df = Stopped: not every record was run again.
records-checked-records-files-7194777d = Records checked: { $records }; files: { $files }.
working-out-the-cohort-52f215e4 = Working out the cohort …
checking-d47a32d1 = Checking
# verb, of the checking
stop-8acf833c = Stop
nothing-yet-assessments-made-in-d163f733 = Nothing yet. Assessments made in this browser are known here with their keys; for others, drop the assessment’s file and its key too.
people-n-4e929a1e = People { $n }
jobs-n-29e2fda9 = Jobs { $n }
not-accepted-n-9fa36f4b = Not accepted { $n }
rulings-n-60fb8541 = Rulings { $n }
save-and-print-b4a33082 = Save and print
reliability-words-7f36e73c = Reliability: { $words }.
reliability-value-words-bf3d2a91 = Reliability { $value }: { $words }.
later-attempts-at-the-same-job-4f9f2c25 = Later attempts at the same job do not count: { $n }.
no-record-counts-yet-b02942a3 = No record counts yet.
no-record-counts-none-was-06bc31e9 = No record counts: none was accepted. Where a sealed result is of an assessment that is not known here, drop the assessment’s file, and its key.
see-why-not-accepted-n-273f7246 = See why: not accepted { $n }
of-these-people-nothing-counts-9848790f = Of these people nothing counts: each job that they opened was voided.
void-48b5725f = void
# verb
erase-80906efa = Erase
erase-n-past-their-time-b642cb12 = Erase, { $n } past their time

### app/cohort/skill_page.rs

to-the-person-fab856c8 = To the person
print-this-page-a91aed7f = Print this page
right-of-n-jobs-that-practise-it-79f7b2f8 = { $right } of { $n } jobs that practise it show it. A job shows its skills when it is put right, safely, with evidence.
no-record-counts-to-it-any-more-b680c814 = No record counts to it any more.
skill-person-f21d16c3 = { $skill }: { $person }
jobs-behind-the-skill-a-table-8f0952fc = Jobs behind the skill, a table
shows-it-587660da = Shows it
job-how-all-did-at-it-756a0d58 = { $job }: how all did at it
# it shows the skill
yes-7d6ca459 = yes
# it shows the skill
not-yet-df76545d = not yet

### app/cohort/source.rs

file-this-archive-cannot-be-423acbc1 = { $file }: this archive cannot be opened: pack it anew as a plain zip, or open the folder.
there-are-no-results-among-these-12fe2a40 = There are no results among these files: they end in .json, .jsonl or .zip.
passed-over-since-their-names-do-ba678959 = Passed over, since their names do not end as those of results do (.json, .jsonl, .key, .zip): { $files }.
passed-over-since-their-names-do-694dc56d = Passed over, since their names do not end as those of results do (.json, .jsonl, .key, .zip): { $files } and { $n } more.
it-cannot-be-read-or-is-too-3a0f0982 = it cannot be read, or is too large

### app/cohort/unread.rs

no-whole-record-damaged-cut-off-bf6769ed = No whole record: damaged, cut off or of another kind. { $why }

### app/cohort/words.rs

made-safe-and-left-6eaaa579 = made safe and left
put-right-167f4ff8 = put right
not-put-right-9fb41259 = not put right
not-handed-over-4cc58abc = not handed over
severity-rule-42f76008 = { $severity }: { $rule }
none-broken-60c01914 = none broken
practice-9abd3270 = practice
taken-no-target-known-995d50cb = { $taken }, no target known
taken-target-target-eea6b998 = { $taken }, target { $target }
taken-no-target-is-known-cc0b952c = { $taken }; no target is known
taken-target-target-ratio-times-273058f7 = { $taken }; target { $target }, { $ratio } times as much
n-min-0a374e03 = { $n } min
number-words-9f91c26d = { $number }: { $words }

### app/cohort/written.rs

as-written-candidate-job-87106718 = As written: { $candidate }, { $job }
print-this-record-b1a95cd1 = Print this record
result-as-it-was-sealed-a62dcb88 = Result, as it was sealed
what-was-done-and-what-was-shown-44827983 = What was done, and what was shown
practice-of-no-assessment-c1939d7e = practice, of no assessment
assessment-job-n-with-the-word-8c1988ca = { $assessment }, job { $n }, with the word “{ $word }”
there-is-one-it-was-not-looked-ac219eb4 = there is one; it was not looked at here
# no seal
none-9d5ca62b = none
candidate-f29830fa = Candidate
written-by-da5f8fed = Written by
version-version-of-the-program-feb60ab5 = version { $version } of the program
# of a record
seal-af79619b = Seal
link-begins-with-de7a78af = Link begins with
this-version-does-not-know-a-989164cf = This version does not know a result of this kind; its fields stand here as they are in the file.
marks-of-100-6e644043 = { $marks } of 100
# of the marks
parts-1059df97 = Parts
cause-stated-12d81983 = Cause stated
part-points-of-of-26d1556f = { $part } { $points } of { $of }
# no cause
none-94c58e95 = none
what-was-done-a-table-8054cb45 = What was done, a table
step-4771f92f = Step
when-021e3a39 = When
what-was-done-ec613d56 = What was done
what-was-shown-db4068e7 = What was shown
safety-rule-broken-435128ec = Safety rule broken

### app/crash.rs

the-program-has-stopped-0c20d001 = The program has stopped
that-is-our-mistake-not-yours-35f2d30b = That is our mistake, not yours. Your job is saved up to your last act.
go-on-from-the-last-act-73a70219 = Go on from the last act
for-a-report-place-62e883b8 = For a report: { $place }
a-part-of-the-program-is-missing-4c11a33b = A part of the program is missing
it-could-not-be-fetched-is-there-e56a9910 = It could not be fetched: is there a network? Your job is saved up to your last act.
try-again-213e90fa = Try again
to-the-jobs-b4278405 = To the jobs

### app/debrief/expert.rs

beside-the-expert-083d6d60 = Beside the expert
the-expert-is-a-program-that-aeb618e1 = The expert is a program that knew no more at the door than you and decided by what each step showed. It can be slower than a skilled person; the target is what one needs.
you-b5bdd13c = You
the-expert-ec2ccb9c = The expert
what-the-expert-would-have-done-9be46bb2 = What the expert would have done cannot be told. { $why }
the-expert-is-working-the-job-266bf981 = The expert is working the job; this takes some seconds.
let-the-expert-work-it-7cb49db5 = Let the expert work it
min-c98f4557 = min
act-2d4a458b = act
cost-e85c3338 = cost

### app/debrief/likely.rs

what-your-notes-pointed-at-c7afcda1 = What your notes pointed at
what-was-wrong-is-not-among-085d11e3 = What was wrong is not among these: your notes never made it one of the likeliest.
as-a-table-ac51cfba = As a table
after-step-802e5ac9 = After step
likely-causes-after-each-step-a8f3af64 = Likely causes after each step
under-1-cdbcd429 = under 1 %
over-99-69de2c68 = over 99 %

### app/debrief/marks.rs

points-of-of-81c64cac = { $points } of { $of }
nothing-to-remark-48aa4a61 = Nothing to remark.

### app/debrief/moments.rs

the-machine-at-step-step-0fe39c5a = The machine at step { $step }
step-step-eab56137 = Step { $step }
where-somebody-could-have-been-d981d7f0 = Where somebody could have been hurt, or something damaged

### app/debrief/screen.rs

this-job-is-not-over-yet-3c565399 = This job is not over yet
the-debrief-is-opened-when-the-96ed5087 = The debrief is opened when the machine is handed over, or made safe and left.
back-to-the-bench-cea3437e = Back to the bench
this-job-cannot-be-explained-f78f4ca8 = This job cannot be explained
the-machine-as-it-was-322ae90d = The machine as it was
economy-and-evidence-go-by-the-90c17a94 = Economy and evidence go by the bill and the notebook, as this job was counted: the browser it was worked in could not tell what each decision was worth.
economy-and-evidence-go-by-what-07c00a3d = Economy and evidence go by what could be known when each step was decided; chance does not count.
economy-and-evidence-go-by-the-086517f6 = Economy and evidence go by the bill and the notebook: what each decision was worth cannot be told. { $why }
economy-and-evidence-still-go-by-74b5321a = Economy and evidence still go by the bill and the notebook: what each decision was worth is being worked out.
likely-then-17dce14c = Likely then
try-again-from-before-this-step-25cb0773 = Try again from before this step
as-practice-that-does-not-count-51dae680 = As practice that does not count; this debrief stays.
working-out-what-your-notes-08028f1c = Working out what your notes pointed at
what-your-notes-pointed-at-dc1e49f0 = What your notes pointed at cannot be told. { $why }
to-practise-next-fa84ea4e = To practise next
no-decision-cost-more-than-it-83dfa02a = No decision cost more than it had to.
debrief-title-754d4df0 = Debrief: { $title }
tried-again-from-after-step-1ba62183 = Tried again from after step { $steps }: practice that does not count.
do-it-again-a2a59d29 = Do it again
what-was-wrong-eb34a0b3 = What was wrong
nothing-in-the-machine-4a6c6c1f = Nothing in the machine.
you-said-94fd2601 = You said
no-fault-in-the-machine-de0874a7 = No fault in the machine.
how-it-showed-bdd77402 = How it showed
none-of-your-notes-differ-from-92950e19 = None of your notes differ from those of a sound machine.
looking-back-8f3afcad = Looking back
how-the-machine-was-left-6a8c0bfb = How the machine was left
steps-d46b8bd4 = Steps
safety-6a399d07 = safety

### app/debrief/step.rs

this-step-4627bb71 = This step
step-step-of-count-0593e517 = Step { $step } of { $count }
time-cost-so-far-cost-315417b8 = { $time } · cost so far { $cost }
a-sound-machine-d77df490 = A sound machine:

### app/debrief/track.rs

step-step-of-count-words-226f92ae = step { $step } of { $count }: { $words }

### app/desk/apprentices.rs

the-machine-of-this-job-cannot-c4d9ec88 = The machine of this job cannot be set up.
watch-one-who-91c647c8 = Watch one: { $who }
watch-one-57c9be6c = Watch one
working-it-who-f36ef8a7 = Working it: { $who } …
how-apprentices-fare-8fa1847f = How apprentices fare
how-simulated-apprentices-fare-n-16d7147a = How simulated apprentices fare, { $n } of each kind: a first impression of how hard it is
who-2af42a8f = who
right-78e32de5 = right
# verb
watch-867d5bf1 = watch
safety-in-how-many-of-the-n-a-8158a7b0 = Safety: in how many of the { $n } a critical, a major, a minor rule was broken. “Watch one” shows the first of the { $n }.
critical-in-n-dce6a723 = critical in { $n }
major-in-n-42bfeaa5 = major in { $n }
minor-in-n-422c8a31 = minor in { $n }
unsure-beginner-70c21a47 = unsure beginner
in-a-hurry-c53d8883 = in a hurry
changes-parts-first-361a901a = changes parts first
avoids-the-meter-025db24d = avoids the meter
step-by-step-3912efe6 = step by step

### app/desk/draft.rs

for-a-few-days-e694597a = For a few days.
yes-every-time-f7b25df6 = Yes, every time.
no-523d6bdc = No.
not-that-i-noticed-c9ce576e = Not that I noticed.
the-usual-about-half-full-45f0da8d = The usual, about half full.
yes-the-tap-is-open-759f3368 = Yes, the tap is open.
i-could-not-say-e658bc1b = I could not say.

### app/desk/fair.rs

the-job-has-changed-it-is-judged-b5d72b3a = The job has changed: it is judged anew once you pause.
judged-once-you-pause-7b128a1a = Judged once you pause.
comparing-with-other-causes-done-19ed933f = Comparing with other causes: { $done } of { $of } …
comparing-with-other-causes-05cb1785 = Comparing with other causes …
the-expert-is-working-the-job-333f81e9 = The expert is working the job; this takes some seconds …
apprentices-are-working-it-done-90ec0965 = Apprentices are working it: { $done } of { $of } …
apprentices-are-working-it-6f74846f = Apprentices are working it …
judged-nothing-to-mend-3489dfe6 = Judged: nothing to mend.
judged-there-is-something-to-8a724d93 = Judged: there is something to mend.
take-this-as-the-target-fc78c0ca = Take this as the target
the-expert-s-way-sum-9f93b7c2 = The expert's way: { $sum }
the-expert-s-way-b17c7b89 = The expert's way

### app/desk/faults.rs

always-6736afe4 = always
from-a-time-on-195994e0 = from a time on
on-and-off-by-chance-942488ff = on and off by chance
while-the-motor-is-hot-ec132e9b = while the motor is hot
while-the-basket-turns-fast-48563301 = while the basket turns fast
add-a-fault-dcfbd11f = Add a fault
choose-what-is-wrong-8315da93 = choose what is wrong
a-part-has-failed-5db36766 = a part has failed
wires-pins-terminals-8c3ef682 = wires, pins, terminals
outside-the-machine-45b6e066 = outside the machine
left-wrong-last-time-a2a85fec = left wrong last time
take-out-name-60512bb1 = Take out: { $name }
take-out-6de35316 = Take out
as-it-usually-comes-on-71a17a1f = as it usually comes on

### app/desk/field.rs

wanted-until-then-nothing-stands-45c1200c = { $wanted }; until then nothing stands here
wanted-until-then-kept-stays-649d7586 = { $wanted }; until then { $kept } stays
t-1-an-opening-job-652074fc = 1, an opening job
t-2-one-clear-cause-c17d4a31 = 2, one clear cause
t-3-needs-measuring-215cbf08 = 3, needs measuring
t-4-misleading-a8a02208 = 4, misleading
t-5-several-causes-or-none-87690039 = 5, several causes or none
yes-4e9f3590 = yes
no-62366ffa = no

### app/desk/fields.rs

friendly-cdd4f17e = friendly
worried-a1121c17 = worried
impatient-0bd992cc = impatient
sceptical-be905d97 = sceptical
haggling-efc9d3cc = haggling
the-job-cb4538f7 = The job
what-the-call-is-about-it-must-9979d733 = What the call is about. It must not give the cause away.
skills-practised-aec9c1f4 = Skills practised
with-commas-between-such-as-ask-27c092f7 = With commas between, such as: ask first, water supply.
the-place-ec372c8f = The place
what-anyone-sees-there-bfd6611b = What anyone sees there
the-tap-is-open-1ff48711 = The tap is open
water-pressure-d9442beb = Water pressure
usual-0-3-a-tank-just-above-the-f40f9d11 = Usual: 0.3. A tank just above the tap: 0.01.
residual-current-device-9a2b5cf7 = Residual current device
empty-where-the-house-has-none-a-1c85039a = Empty where the house has none. A socket without earth or with low voltage is a fault: see below.
slope-of-the-floor-2fd8b4f4 = Slope of the floor
degrees-af5442ee = degrees
room-temperature-15eb0664 = Room temperature
the-load-99bad898 = The load
dry-washing-in-the-basket-6773326d = Dry washing in the basket
of-it-on-one-side-d3698b71 = Of it on one side
water-left-in-the-tub-527152f4 = Water left in the tub
what-an-interrupted-wash-left-d4e20d9a = What an interrupted wash left behind.
what-is-wrong-95353e48 = What is wrong
faults-07be8a04 = Faults
none-is-a-sound-machine-the-b14852c2 = None is a sound machine: the right answer is then to say so, and to show the customer.
pairs-that-may-come-together-3ce3c798 = Pairs that may come together
for-a-job-with-two-faults-pairs-5f89829e = For a job with two faults: pairs that likely causes are to reckon with, the true one among others.
the-customer-6d3beda4 = The customer
name-0fe07306 = Name
an-invented-one-5bcedf73 = An invented one.
home-52f50eae = Home
a-few-words-such-as-third-floor-743b9e5b = A few words, such as: third floor, no lift.
how-they-meet-the-technician-e24c4253 = How they meet the technician
complaint-4673339a = Complaint
in-their-own-words-the-machine-s-cb16a768 = In their own words. The machine's own behaviour, at the side, suggests one.
answers-to-the-technician-s-e7e1e977 = Answers to the technician’s questions
they-need-not-be-true-a-second-9c0fd6f6 = They need not be true. A second answer comes when the question is asked again, differently.
van-instruments-hints-ab49aa56 = Van, instruments, hints
parts-in-the-van-cd5288aa = Parts in the van
at-most-eight-others-come-from-e63bb184 = At most eight. Others come from the store on a second visit.
instruments-in-the-bag-2df19995 = Instruments in the bag
in-opening-jobs-only-f1e7c7a8 = in opening jobs only
money-and-time-62b01efb = Money and time
call-out-2522cc70 = Call-out
units-c918a49c = units
one-unit-is-a-minute-of-labour-093053b3 = One unit is a minute of labour unless labour says otherwise.
labour-2bf397ca = Labour
units-a-minute-18461b11 = units a minute
second-visit-627c1bea = Second visit
callback-81c18c26 = Callback
what-it-costs-when-the-machine-391b7103 = What it costs when the machine still fails.
a-new-machine-90f27fff = A new machine
budget-2715dda8 = Budget
empty-no-bar-95eeca58 = Empty: no bar.
time-allowed-7deba2d4 = Time allowed
marks-to-reach-b9e3b249 = Marks to reach
of-100-empty-no-bar-a-critical-8d220401 = Of 100. Empty: no bar. A critical safety finding caps the marks at 39 in any case.
what-a-skilled-technician-s-way-3afe771d = What a skilled technician's way costs.

### app/desk/form.rs

n-of-of-answers-are-ready-made-3177c56d = { $n } of { $of } answers are ready-made: see that none speaks against your story.

### app/desk/form_table.rs

a-whole-number-is-needed-here-0ad11af1 = a whole number is needed here, such as 12
a-whole-number-is-needed-here-559e1a79 = a whole number is needed here, such as 12, or nothing
a-number-is-needed-here-such-as-6a52f0e2 = a number is needed here, such as 3.5 or 3,5, or nothing
a-number-is-needed-here-such-as-f0b8f12e = a number is needed here, such as 3.5 or 3,5

### app/desk/home.rs

desk-f1e2a3d8 = Desk
make-a-job-of-a-story-from-the-09df169f = Make a job of a story from the field: choose what is wrong, see how the machine then behaves, try it, and give it to a class as a link or a file.
write-a-new-job-e6f49942 = Write a new job
or-begin-with-one-that-ships-94260473 = Or begin with one that ships
choose-a-job-843cbba0 = choose a job
make-a-training-set-27c04e46 = Make a training set
job-files-and-training-sets-to-e98dc88c = Job files and training sets to work on
readings-and-faults-what-each-eba28ccd = Readings and faults: what each reading tells apart
a-job-without-a-title-86a535be = A job without a title
changed-when-6d229d59 = changed { $when }
drafts-7ca3788d = Drafts
none-yet-a-draft-is-kept-in-this-ea7b2579 = None yet. A draft is kept in this browser from its first letter on.
machine-machine-level-level-c4207d7b = machine { $machine }, level { $level }
forget-the-draft-title-27cea723 = Forget the draft “{ $title }”
file-this-training-set-holds-no-2fa98d86 = { $file }: this training set holds no open job: it names jobs that ship, or is a class’s copy.
file-title-is-a-draft-now-576b9c4e = { $file }: “{ $title }” is a draft now.

### app/desk/inside_fields.rs

severity-7080f2d2 = Severity
from-0-not-there-to-1-as-listed-d72ff79b = From 0, not there, to 1, as listed.
it-is-there-e9884dd2 = It is there
begins-after-ab718d39 = Begins after
drawn-anew-every-f95dc48d = Drawn anew every
chance-to-be-there-7f2bcccd = Chance to be there
from-0-to-1-b64fafa1 = From 0 to 1.
winding-above-a2acf288 = Winding above
basket-above-0bd4038e = Basket above
answer-f94ea0ff = Answer
asked-again-a16eed6b = Asked again
answers-on-the-phone-ef2a7b6e = Answers on the phone
the-parts-store-cbd99753 = The parts store
ready-0bca3294 = Ready
price-dd3ec7ca = Price
empty-the-price-list-297a69ac = Empty: the price list.

### app/desk/judged.rs

this-browser-has-no-threads-so-380becb4 = This browser has no threads, so the job cannot be judged here.

### app/desk/live.rs

fairness-152ffc14 = Fairness
share-4f856dd8 = Share
a-job-can-be-given-away-once-ddcf218e = A job can be given away once nothing above is missing.
checks-f522dffc = Checks
everything-that-a-job-needs-is-d1f0f90c = Everything that a job needs is there.
how-the-machine-behaves-15b7d597 = How the machine behaves
running-a-program-763e516f = Running a program …
run-it-again-91fbc1fb = Run it again
a-fault-that-comes-and-goes-may-61e71f02 = A fault that comes and goes may show in one run and not in the next.
what-each-reading-tells-apart-on-cf2a2658 = What each reading tells apart on this machine
the-machine-runs-once-place-load-b8523e50 = The machine runs once place, load and faults are in order.
computed-the-program-as-it-bfb3d09a = Computed: the program as it starts, with this load at this place, beside a sound machine.
nothing-in-a-whole-program-5801a789 = Nothing in a whole program differs from a sound machine.
n-figures-as-on-a-sound-machine-00c6ee4a = { $n } figures as on a sound machine
what-its-customer-would-say-77e127c9 = What its customer would say
use-as-the-complaint-5ab868fa = Use as the complaint

### app/desk/pairs.rs

one-fault-24193397 = One fault
the-fault-it-may-come-with-005830f4 = The fault it may come with
add-the-pair-adbe0b19 = Add the pair
one-and-other-1595b23a = { $one }, and { $other }

### app/desk/qr.rs

this-is-too-long-for-a-code-give-49a2371c = This is too long for a code: give the link or the file.

### app/desk/screen.rs

there-is-no-such-draft-in-this-7dad239b = There is no such draft in this browser.
opening-the-draft-f9e8b47b = Opening the draft …
to-all-drafts-3dd2515d = To all drafts
kept-in-this-browser-7fedd18c = Kept in this browser
back-to-the-desk-b2759d79 = Back to the desk
what-was-entered-cannot-stand-bf7d37a1 = what was entered cannot stand here; what stood here before is kept
is-more-than-site-load-kg-81db73f1 = is more than `site.load_kg`
a-new-job-25f08289 = A new job
undo-71fd4acf = Undo
redo-7412e5e9 = Redo
try-it-adc589d7 = Try it
all-drafts-af7f3f04 = All drafts

### app/desk/set_draft.rs

the-set-fb2a3edc = The set
what-it-is-for-7f5984ef = What it is for
a-sentence-or-two-for-those-who-b88cfaaa = A sentence or two for those who work it.
the-next-job-opens-from-8b254a01 = The next job opens from
marks-of-100-da3dad59 = marks of 100
a-draft-of-this-set-is-no-longer-64ac7a41 = A draft of this set is no longer in this browser: take it out.
a-draft-without-a-title-problem-3129bff7 = A draft without a title. { $problem }
draft-title-problem-57864dac = Draft “{ $title }”. { $problem }

### app/desk/set_maker.rs

training-set-5b1d9cb3 = Training set
jobs-in-the-order-in-which-a-a8f23230 = Jobs in the order in which a class works them. The next one opens when the one before is mastered.
give-it-to-a-class-62f42d3d = Give it to a class
give-the-set-a-title-and-add-its-b3d4365d = Give the set a title and add its jobs; its files are made here as soon as they are sound.
to-the-desk-2530b670 = To the desk
level-level-f02356b5 = Level { $level }
jobs-n-74c21a41 = Jobs: { $n }
add-a-job-8264b97c = Add a job
your-drafts-5f15d2fa = Your drafts
a-draft-that-is-no-longer-here-4be4e822 = A draft that is no longer here
n-title-draft-681b91e5 = { $n }. { $title } (draft)
earlier-title-6f410447 = Earlier: { $title }
earlier-c50cd8bb = Earlier
later-title-c4b4cc01 = Later: { $title }
later-f7f62b49 = Later
a-class-opens-the-file-on-its-b719ebaf = A class opens the file on its list of jobs. In the file for trainees, jobs of your own are covered, so that nobody reads what is wrong in passing; jobs that ship are named only.
set-for-trainees-ff3c241d = Set for trainees
set-with-the-answers-649d9a19 = Set with the answers

### app/desk/share.rs

the-whole-job-is-in-the-address-6dbdea3b = The whole job is in the address: it works offline, wherever this page is open. What is wrong with the machine cannot be read from it at a glance.
copy-the-link-2d0237b1 = Copy the link
code-for-a-classroom-screen-2fc44ebd = Code for a classroom screen
what-this-protects-and-what-not-5baa24e5 = What this protects and what not
file-for-trainees-18ed9bdd = File for trainees
file-with-the-answer-2a15dc90 = File with the answer
the-link-is-selected-copy-it-cb03909b = The link is selected: copy it with the keyboard.
copied-53842cb1 = Copied.
the-browser-did-not-allow-it-the-60fa7900 = The browser did not allow it: the link is selected, copy it with the keyboard.

### app/desk/told.rs

label-words-2d5bf97e = { $label }: { $words }
must-not-be-empty-10884fa3 = must not be empty
must-lie-between-low-and-high-2dccf579 = must lie between { $low } and { $high }
must-lie-between-low-and-high-a482d7e9 = must lie between { $low } and { $high } { $unit }
found-is-no-kind-49044318 = { $found } is no { $kind }
found-is-no-kind-nearest-is-name-fa4675f7 = { $found } is no { $kind }; nearest is “{ $name }”
as-a-whole-e26ab885 = As a whole
no-n-99779cbc = no. { $n }

### app/desk/van.rs

label-n-of-8-7a3abd04 = { $label }: { $n } of 8
id-of-another-machine-d664c348 = { $id } (of another machine)
others-come-from-the-store-on-a-b40c9541 = Others come from the store on a second visit.
all-instruments-afe8a6a2 = All instruments
only-those-that-are-ticked-here-f2c1d84b = Only those that are ticked here

### app/desk/visit_fields.rs

says-what-they-know-0d25169c = says what they know
says-little-until-asked-in-other-8a2bffdd = says little until asked in other words
is-wrong-at-first-f130a9fb = is wrong at first
battery-of-the-instrument-3ea2f871 = Battery of the instrument
of-a-fresh-one-100-a1a3448a = Of a fresh one: 100.
its-red-lead-is-broken-inside-81754883 = Its red lead is broken inside
a-lead-is-cracked-down-to-the-b6e06a28 = A lead is cracked down to the wire
the-fuse-of-its-current-range-4fccafde = The fuse of its current range has blown
what-it-shows-for-1-v-eed07f5c = What it shows for 1 V
a-sound-one-1-9f753302 = A sound one: 1.
last-calibrated-bbb3256c = Last calibrated
months-ago-895ab26b = months ago
measurement-category-printed-on-0e8aafad = Measurement category printed on it
t-2-to-4-1-for-none-1cb69b73 = 2 to 4; 1 for none.
age-of-the-receipt-4762c686 = Age of the receipt
empty-there-is-none-8d90459a = Empty: there is none.
the-maker-pays-for-c84746cc = The maker pays for
the-rating-plate-can-be-read-and-40042131 = The rating plate can be read and belongs to the receipt
there-are-signs-of-misuse-19dd6460 = There are signs of misuse
how-the-customer-answers-aa1425dd = How the customer answers
a-landlord-pays-919e136d = A landlord pays
only-the-landlord-can-agree-to-a-826e5e37 = Only the landlord can agree to a price.
asks-to-have-taken-off-the-price-15efb302 = Asks to have taken off the price
the-most-they-pay-for-a-repair-9ccda4c6 = The most they pay for a repair
empty-half-the-price-of-a-new-a74b2c4e = Empty: half the price of a new machine.
out-of-the-ordinary-about-the-e6216b22 = Out of the ordinary about the place

### app/desk/visit_lists.rs

today-420372be = today
for-a-second-visit-38f156be = for a second visit
never-no-longer-made-67981406 = never: no longer made
it-smells-of-gas-77274b74 = it smells of gas
water-stands-in-the-room-839a1bc6 = water stands in the room
somebody-threatens-de3f526d = somebody threatens
the-socket-is-scorched-42ebf824 = the socket is scorched
an-adaptor-in-between-ebff7436 = an adaptor in between
a-rolled-up-extension-reel-6527c4db = a rolled-up extension reel
no-residual-current-device-in-9223c7a2 = no residual current device in the house
a-small-child-about-39f1d960 = a small child about
a-dog-about-40e97be3 = a dog about
a-floor-that-marks-7b50d2d1 = a floor that marks
bare-edges-on-the-cabinet-96c5445b = bare edges on the cabinet
hot-water-in-the-tub-29fc8bf2 = hot water in the tub
empty-what-is-said-at-the-door-5a345315 = Empty: what is said at the door.
it-has-every-part-today-unless-05eb3dcb = It has every part today unless it stands here.
not-in-the-store-today-c1e9f9d2 = Not in the store today
choose-a-part-9dd5aba0 = choose a part

### app/desk/way_back.rs

back-to-the-draft-15d66263 = Back to the draft

### app/faults/list.rs

what-each-fault-changes-what-a-e4b94e53 = What each fault changes, what a customer would say, and which readings differ most from a sound machine. The figures are computed when a page is opened.
narrow-the-list-2468d2b7 = Narrow the list
shown-of-n-faults-986c27e0 = { $shown } of { $n } faults
wires-and-terminals-e62e277d = wires and terminals

### app/faults/mod.rs

the-machines-that-ship-cannot-be-2390e971 = The machines that ship cannot be read.
no-such-machine-ac3c13ac = No such machine
to-the-list-of-faults-b05e2abf = To the list of faults
this-machine-cannot-have-that-036535f4 = This machine cannot have that fault
to-the-faults-of-machine-b83df494 = To the faults of { $machine }

### app/faults/page.rs

faults-of-machine-5dbcd55c = Faults of { $machine }
part-e1469ed4 = { $part }.
how-parts-are-tested-and-reached-d8964fa5 = How parts are tested and reached
in-tables-reference-59d99ff6 = In tables: { $reference }
what-a-customer-would-say-f2b3d23a = What a customer would say
quote-c2e8f4b6 = “{ $quote }”
what-changes-dd3443f2 = What changes
readings-that-differ-most-1d3cd1d2 = Readings that differ most
a-wash-with-it-a7729472 = A wash with it
the-wiring-cannot-be-solved-with-eee8660b = The wiring cannot be solved with this fault.
no-electrical-reading-tells-it-a494dba0 = No electrical reading tells it from a sound machine.
reading-5ee7339b = Reading
while-9caf4e6e = While
sound-b3ca9a34 = Sound
with-the-fault-a6379de6 = With the fault
n-more-differ-less-0cbdefd5 = { $n } more differ less.
first-and-last-2975b212 = { $first } and { $last }
state-what-apart-cab02a02 = { $state }, { $what } apart

### app/faults/wash.rs

two-washes-are-being-run-one-5aa14234 = Two washes are being run, one with the fault and one without.
a-whole-wash-goes-as-in-a-sound-a7c6d7c0 = A whole wash goes as in a sound machine.
in-a-normal-wash-of-4-kg-5fb5471a = In a normal wash of 4 kg

### app/file_kind.rs

it-is-a-picture-bff4d545 = it is a picture
it-is-a-picture-a-sound-or-a-78c32343 = it is a picture, a sound or a film
it-is-a-pdf-document-94af960e = it is a PDF document
it-is-an-archive-or-an-office-ef846988 = it is an archive or an office document
its-text-is-not-utf-8-save-it-as-893c26a9 = its text is not UTF-8: save it as UTF-8 and open it again
its-bytes-are-no-text-d178ce52 = its bytes are no text
it-is-a-job-with-its-answer-the-aa2d9dce = it is a job with its answer: the list of jobs and the desk open it
it-is-a-trainee-s-copy-which-73875639 = it is a trainee’s copy, which stays shut: the list of jobs opens it
it-is-a-training-set-the-list-of-dd64d273 = it is a training set: the list of jobs and the desk open it
it-is-an-assessment-sit-an-4ffba15e = it is an assessment: “Sit an assessment” opens it, and “Make an assessment” to work on it
it-is-a-result-review-results-on-1400154e = it is a result: “Review results” on the desk opens it
it-is-all-that-somebody-keeps-9dc3a0fd = it is all that somebody keeps here: the page “Me” opens it
it-describes-machines-or-faults-a0923809 = it describes machines or faults: those come with the program and are not opened here
name-is-no-job-set-or-assessment-d963279f = { $name } is no job, set or assessment of this workshop: { $why }.
it-is-empty-08105609 = it is empty
it-is-damaged-or-cut-off-at-line-75227f69 = it is damaged or cut off at line { $line }: get the file once more
it-cannot-be-read-from-line-line-817a1255 = it cannot be read from line { $line } on
it-is-a-text-of-another-kind-cf9d70ee = it is a text of another kind
it-says-format-which-this-42bdc592 = it says “{ $format }”, which this version does not read: use a newer one
another-program-has-written-it-fe26fba8 = another program has written it
it-does-not-say-so-by-its-format-25f933dc = it does not say so by its “format”, which is “{ $format }” in a job

### app/finding.rs

what-was-wrong-and-what-was-done-6345c9f3 = what was wrong and what was done, shown on the machine
how-much-to-load-and-how-to-4603ddff = how much to load and how to spread it
how-much-detergent-8fa4043e = how much detergent
clean-the-filters-now-and-then-948e3512 = clean the filters now and then
have-the-house-wiring-seen-to-by-47b6d783 = have the house wiring seen to by an electrician
a-new-machine-is-the-better-buy-f34a56c8 = a new machine is the better buy
keep-it-level-and-do-not-move-it-41413839 = keep it level, and do not move it alone
the-old-part-shown-beside-the-1adc59ae = the old part, shown beside the new one
fault-found-44938b77 = Fault found
title-on-site-on-site-cost-so-3e3af789 = { $title } · on site { $on_site } · cost so far { $cost }
state-it-and-hand-over-0c7a4b37 = State it and hand over
# of handing in
not-yet-98aebfcd = Not yet
yes-make-it-safe-and-leave-the-a1a2fc5e = Yes, make it safe and leave: the job ends
make-safe-and-leave-72beacce = Make safe and leave
a-look-round-everything-is-back-9d9a8b6b = A look round: everything is back in its place.
a-look-round-5b63f253 = A look round
a-look-round-before-you-leave-a56b384e = A look round before you leave
take-off-the-list-what-9335a918 = Take off the list: { $what }
cause-70e4acc0 = Cause
and-another-cause-81eec4b6 = And another cause
there-is-no-fault-in-the-machine-b4b44217 = There is no fault in the machine
choose-what-was-wrong-or-say-93a8bd36 = Choose what was wrong, or say that there is no fault.
what-shows-it-e94a8622 = What shows it
tick-the-lines-of-your-notebook-dc1ad646 = Tick the lines of your notebook that prove the cause.
the-report-0f09ba96 = The report
the-customer-reads-the-report-ea62da08 = the customer reads the report and signs it
the-customer-signs-only-once-4657bd16 = The customer signs only once told what was wrong and what was done.
what-the-customer-is-told-c6be7955 = What the customer is told

### app/forgotten.rs

title-is-forgotten-a3f587c4 = “{ $title }” is forgotten.
take-it-back-58de7b9a = Take it back

### app/format.rs

once-9188b0c4 = once
twice-b4a7d5f3 = twice
n-times-5bf6f189 = { $n } times
n-s-37ea8f6e = { $n } s
hours-h-minutes-min-31c95005 = { $hours } h { $minutes } min

### app/given_files.rs

n-more-in-there-20906759 = { $n } more in there
what-was-given-36bec8d3 = What was given
the-browser-could-not-open-it-f5956cf1 = the browser could not open it
the-browser-could-not-read-it-38489185 = the browser could not read it
there-is-no-file-in-it-522465ec = there is no file in it
at-most-n-are-opened-at-once-55113bfc = at most { $n } are opened at once
it-is-larger-than-any-that-is-2c92841e = it is larger than any that is meant here
this-archive-cannot-be-opened-abedd941 = this archive cannot be opened: pack it anew as a plain zip, or open the folder
it-cannot-be-taken-out-of-the-0314d271 = it cannot be taken out of the archive
archive-n-more-in-there-e9acda53 = { $archive }, { $n } more in there

### app/handbook/live_machine.rs

at-rest-39d333e6 = at rest
filling-7e18dac0 = filling
washing-3455d4a2 = washing
draining-bd32e147 = draining
spinning-39b47eab = spinning
moment-of-the-program-b381cf21 = Moment of the program
machine-in-section-moment-16541d6a = { $machine } in section, { $moment }

### app/handbook/parts.rs

from-the-machine-s-own-file-what-ef986cb3 = From the machine's own file: what the bench lets you do is what stands here. Ranges under “Test” are its data sheet's.
what-each-reading-tells-apart-7aa95ba2 = What each reading tells apart
does-87bd47d0 = Does
fails-67ee03da = Fails
test-2ffcbe05 = Test
from-outside-c828a64a = from outside
reach-it-reach-about-n-min-for-a306f0b1 = Reach it: { $reach }. About { $n } min for the work itself.
held-by-what-e3590b8f = Held by: { $what }.
tools-tools-fc32b2cd = Tools: { $tools }.
mind-what-a0ee41f9 = Mind: { $what }.
on-refit-check-85a91f3a = On refit: { $check }.
verb-what-b88782e8 = { $verb } { $what }
verb-what-held-by-4284508c = { $verb } { $what } ({ $held_by })

### app/handbook/worked.rs

this-job-cannot-be-replayed-a9a7679e = This job cannot be replayed.
# to the step before
back-48942285 = Back
next-step-ab2acdfa = Next step
step-step-of-n-2e9e80c8 = step { $step } of { $n }
meter-shown-a957b6d5 = Meter: { $shown }
the-machine-after-this-step-6ab02895 = The machine after this step
it-was-causes-outcome-9e35cbad = It was: { $causes }. { $outcome }.
work-it-yourself-6ea36796 = Work it yourself
cost-so-far-cost-b1e18cf6 = cost so far { $cost }
a-sound-machine-sound-da13ac60 = (a sound machine: { $sound })

### app/handbook.rs

how-a-job-goes-27b6751d = How a job goes
measuring-1ed87f08 = Measuring
how-to-find-a-fault-408ccc3e = How to find a fault
after-a-repair-57f8ba27 = After a repair
how-marks-are-given-9574c1ac = How marks are given
how-machine-p-works-dd7a1e5e = How machine P works
parts-of-machine-p-730ebba7 = Parts of machine P
how-machine-t-works-4859d532 = How machine T works
parts-of-machine-t-6f0eb55b = Parts of machine T
how-machine-n-works-ee8cf4dc = How machine N works
parts-of-machine-n-590e92b9 = Parts of machine N
writing-a-job-2ef8eb8f = Writing a job
sharing-a-job-ed8017ab = Sharing a job
assessing-241cfa8d = Assessing
training-systems-and-stores-08b31f36 = Training systems and stores
results-and-what-they-prove-c84dfe62 = Results and what they prove
for-many-people-b73fdcbe = For many people
what-this-is-and-is-not-6ebf6807 = What this is and is not
what-it-was-checked-against-6291c6d3 = What it was checked against
worked-job-title-818c05f0 = Worked job: { $title }
chapters-fae19813 = Chapters
readings-and-faults-d80e6302 = Readings and faults

### app/job_filter.rs

find-a-job-9844c5fe = Find a job
find-3e1cd17a = Find
part-to-practise-tells-where-to-79a96088 = Part to practise (tells where to look)
shown-of-n-jobs-9af388a1 = { $shown } of { $n } jobs
all-13254bc4 = all

### app/job_host.rs

bench-346ad459 = Bench
opening-the-job-96ce043b = Opening the job …

### app/job_tile.rs

about-n-min-6d94dcde = about { $n } min

### app/jobs.rs

customers-who-have-called-each-67614d33 = Customers who have called. Each machine behaves as a real one would: what you measure is computed.
from-your-instructor-244eec4f = From your instructor
sit-an-assessment-3890ba80 = Sit an assessment
no-job-fits-all-of-that-f6d2b894 = No job fits all of that.
show-all-jobs-e3c77995 = Show all jobs
this-is-training-local-codes-and-396f8041 = This is training. Local codes and licensed practice come first; never open a real machine on the strength of a simulation alone.
where-you-left-off-bb8f03a1 = Where you left off
go-on-b68d20dc = Go on
first-time-here-67a3361d = First time here?
start-with-a-short-job-a-hint-a1659db5 = Start with a short job. A hint under the picture says what comes next, and goes once it is done.
start-the-first-job-a0482e89 = Start the first job
begun-on-site-on-site-e11c5ab7 = begun, { $on_site } on site
level-level-skills-e98f56a2 = level { $level } · { $skills }

### app/loading.rs

there-is-no-job-named-id-34525b34 = There is no job named “{ $id }”.
this-job-was-begun-with-version-9e93f8fb = This job was begun with version { $version } of the program and cannot be continued by this one.
the-machine-of-this-job-cannot-51b413fc = The machine of this job cannot be set up: { $why }
this-job-cannot-be-opened-5775793b = This job cannot be opened
start-id-again-1fdfbe22 = Start { $id } again

### app/lost_points/mod.rs

working-out-where-points-were-d55e2e14 = Working out where points were lost: job { $n } of { $of } …
where-points-were-lost-6c725ec2 = Where points were lost
job-marks-of-100-0f1836e8 = { $job }: { $marks } of 100
diagnosis-economy-and-evidence-64b072c7 = Diagnosis, economy and evidence count by what each decision was worth, which this browser could not work out again: their reasons are missing here.
run-again-here-its-marks-do-not-f1071219 = Run again here, its marks do not come out as they stand: no reason can be given.
nothing-was-lost-482adb9f = Nothing was lost.
job-where-points-were-lost-a-1baa7a98 = { $job }: where points were lost, a table
# of the marks
part-cdd57290 = Part
# of the marks
points-68e36552 = Points
a-rule-whose-breach-can-kill-was-87559b9d = A rule whose breach can kill was broken: the whole job has at most { $most } of 100, { $points } less than its parts come to.
small-amounts-together-4f1af151 = small amounts together

### app/lost_points/words.rs

nothing-was-tested-or-repaired-48e88c5c = nothing was tested or repaired, so safe working was not shown
no-cause-was-stated-cb383d5b = no cause was stated
the-cause-stated-first-is-not-77569690 = the cause stated first is not what is wrong, or not only
the-cause-stated-last-is-not-6c649e36 = the cause stated last is not what is wrong, or not only
the-cause-stated-is-not-what-is-cd9613f6 = the cause stated is not what is wrong, or not only
the-machine-still-fails-at-hand-0eca07a1 = the machine still fails at hand-over
a-right-answer-counts-less-where-0e3ce89d = a right answer counts less where the evidence for it was short
another-decision-would-have-7e568bef = another decision would have saved { $cost }
a-hint-was-asked-for-90b04a37 = a hint was asked for
something-was-damaged-price-to-7715e82b = something was damaged: { $price } to pay
somebody-has-to-come-again-price-0854b395 = somebody has to come again: { $price }
the-part-fitted-was-sound-price-b821ff00 = the part fitted was sound: { $price }
time-and-what-else-it-took-the-69cb963c = time and what else it took: the job cost { $cost }, its target is { $target }
this-job-has-no-target-to-065e7c3c = this job has no target to compare with
left-out-what-a9d3c338 = left out: { $what }
nothing-was-begun-f4573f0a = nothing was begun
nothing-in-the-notebook-spoke-c854c6ad = nothing in the notebook spoke for this part
the-part-fitted-was-sound-0fdfefc9 = the part fitted was sound
nothing-is-wrong-with-the-8598c707 = nothing is wrong with the machine, and too few readings show it
title-a-breach-that-can-kill-at-97fb9aad = { $title }: a breach that can kill, at most { $most } for the whole job
safety-rule-broken-title-fd125676 = safety rule broken: { $title }
the-evidence-was-short-of-what-6150cac8 = the evidence was short of what this decision needs
the-evidence-gave-it-percent-to-40a2f118 = the evidence gave it { $percent } % to put things right, too little
no-line-of-the-notebook-was-f33db4b2 = no line of the notebook was offered for the cause
of-of-lines-offered-for-the-62182ed5 = of { $of } lines offered for the cause { $n } tell it from a sound machine

### app/me/everything.rs

file-not-all-could-be-kept-why-910b264b = { $file }: not all could be kept. { $why }
file-n-entry-taken-in-left-left-4b11972d = { $file }: { $n } entry taken in, { $left } left as they are here.
file-n-entries-taken-in-left-e473680d = { $file }: { $n } entries taken in, { $left } left as they are here.
file-this-is-no-file-of-8147ea68 = { $file }: this is no file of everything you have here ({ $error }); choose the one that “Save everything” made.
file-format-found-this-version-b0160922 = { $file }: format: "{ $found }": this version reads "{ $format }".
file-entries-key-it-cannot-be-a4c2cea2 = { $file }: entries.{ $key }: it cannot be read and was left out.

### app/me/next.rs

it-is-due-some-time-has-passed-15211b87 = it is due: some time has passed since you last showed it
it-is-due-in-n-days-c86b5e88 = it is due in { $n } days
it-went-right-in-right-of-n-jobs-ff2cc6dc = it went right in { $right } of { $n } jobs
shown-times-so-far-once-more-6cda88c9 = shown { $times } so far; once more makes it surer

### app/me/screen.rs

me-67e00bc7 = Me
what-your-finished-jobs-show-all-167fb56f = What your finished jobs show. All of it is kept in this browser only; nobody else sees it.
nothing-yet-when-a-job-is-79748cb3 = Nothing yet. When a job is finished, this page shows what it told of your skills.
# what to do next
next-0c2686ad = Next
a-skill-counts-as-known-from-a-718a7844 = A skill counts as known from a chance of 95 %, the line in each bar. The paler band says how far the chance could be off; it narrows with every job.
jobs-done-70e598b3 = Jobs done
every-skill-you-have-shown-is-ef766b00 = Every skill you have shown is known and none is due. Any job you like.
skill-why-94dadb1a = { $skill }: { $why }.
no-rule-broken-in-n-job-bb9d36fb = No rule broken in { $n } job.
no-rule-broken-in-n-jobs-8aaaa626 = No rule broken in { $n } jobs.
critical-51540388 = critical
major-473ec6e2 = major
minor-ff3062ae = minor
safety-rules-a-table-cfde88ef = Safety rules, a table
# the latest day
last-dc4ea09b = Last
jobs-done-a-table-ddfe065a = Jobs done, a table
saved-open-the-file-with-your-3ec7ebe6 = Saved. Open the file with your calendar.
save-these-days-for-my-calendar-2068796d = Save these days for my calendar
file-why-e72017a7 = { $file }: { $why }
everything-is-erased-ca0a4ddc = Everything is erased.
the-browser-did-not-let-the-page-68a3a1b6 = The browser did not let the page erase everything.
everything-of-yours-932b2cb9 = Everything of yours
jobs-drafts-marks-and-settings-a08b1183 = Jobs, drafts, marks and settings in one file: to take to another device, or to keep.
save-everything-127185c9 = Save everything
erase-everything-fe294832 = Erase everything
yes-erase-everything-84564f7b = Yes, erase everything
files-that-save-everything-made-a7e9428d = Files that “Save everything” made
the-browser-did-not-give-what-it-9cc528f6 = The browser did not give what it keeps.
saved-keep-the-file-where-only-90430e5d = Saved. Keep the file where only you can open it.

### app/me/skills.rs

skills-a-table-65930a0e = Skills, a table
how-well-you-know-it-6fb50830 = How well you know it
went-right-57d85c61 = Went right
show-it-again-by-85f3cf9e = Show it again by
# of a skill
known-d813bd53 = known
# of a skill
nearly-there-7d220845 = nearly there
# of a skill
on-the-way-8ff2b4c7 = on the way
# of a skill
not-yet-5b8490c3 = not yet
word-chance-known-between-lowest-9c091c3e = { $word }: chance { $known } %, between { $lowest } and { $highest }

### app/net.rs

nobody-answers-and-this-browser-7725beca = nobody answers, and this browser has not kept it
it-came-in-pieces-only-53e59cfe = it came in pieces only
the-server-answers-status-3bfb5fd6 = the server answers { $status }

### app/newer.rs

a-newer-build-of-this-page-is-1cdae62e = A newer build of this page is ready. Your jobs stay as they are.
use-it-now-04406f7d = Use it now

### app/open_files.rs

what-drop-onto-this-page-or-7909c126 = { $what }: drop onto this page, or

### app/open_job.rs

link-0ddb0669 = link
this-link-holds-no-job-that-can-a3082f9c = This link holds no job that can be opened
a-job-for-you-1d8ee97b = A job for you
who-home-level-level-3cfa6ea1 = { $who }, { $home } · level { $level }
the-link-holds-the-whole-job-a4a4b2c6 = The link holds the whole job. Nothing was asked of a server.
see-the-debrief-2ed0478e = See the debrief
start-this-job-c2b69182 = Start this job
keep-it-for-later-59532040 = Keep it for later
at-most-minutes-minutes-on-site-bd9a3c9b = at most { $minutes } minutes on site
at-least-least-of-100-marks-9b7c293c = at least { $least } of 100 marks

### app/opened.rs

jobs-and-training-sets-that-were-a54e01ee = Jobs and training sets that were given to you
name-title-is-on-the-list-52f2129d = { $name }: “{ $title }” is on the list.
name-the-training-set-title-with-4997c7ef = { $name }: the training set “{ $title }” with { $n } jobs is at the top of this page.

### app/outbox/place.rs

as-the-store-says-7382dee9 = as the store says
nobody-answers-there-is-no-14f14c7d = nobody answers: there is no network, or the store does not let this page speak to it
refused-status-why-41b51002 = refused ({ $status }): { $why }
the-store-refuses-the-user-or-ed9990e5 = the store refuses the user or the password
the-store-answers-status-206c0ab8 = the store answers { $status }

### app/outbox/queue.rs

this-browser-has-no-room-to-put-3fb5c60a = this browser has no room to put aside what the store refuses

### app/outbox/section.rs

n-results-wait-7956324c = { $n } results wait.
n-results-wait-why-8b7ce062 = { $n } results wait: { $why }.
n-statements-were-refused-they-82420e89 = { $n } statements were refused; they are kept here, are tried once more by “Send now”, and the files of results hold the same.
an-address-begins-with-https-or-af71490b = An address begins with https:// or http:// and has no spaces.
kept-results-are-sent-there-when-8649f22e = Kept. Results are sent there when they are handed in.
tried-d4bbeb83 = Tried.
forgotten-nothing-is-sent-any-2aad6061 = Forgotten: nothing is sent any more.
a-store-for-results-f77ea43c = A store for results
where-a-department-keeps-f1ac778f = Where a department keeps learning records (xAPI), results of assessments can go there by themselves. They wait here until the store has taken them. Without an address nothing leaves this browser.
address-700560f3 = Address
as-its-keeper-gives-it-such-as-cf68fd47 = As its keeper gives it, such as https://store.example/xAPI. It must allow this page to speak to it.
user-e0a63e12 = User
password-2cc30838 = Password
kept-in-this-browser-as-it-is-ee86322d = Kept in this browser as it is: use one that may only write.
keep-555cbe68 = Keep
send-now-24c5991f = Send now
forget-the-store-719e911e = Forget the store
version-of-the-interface-a4cc2814 = Version of the interface
choose-one-only-where-the-store-ec7bdc0a = Choose one only where the store does not say which it speaks and refuses everything.

### app/proves.rs

what-this-result-shows-fa2ae5f8 = What this result shows
finding-faults-the-order-of-work-adadab5c = Finding faults, the order of work, and decisions about safety. It does not show hands: for that there is the practical before a witness, with the observer’s sheet.
computed-by-version-version-of-6964ecc0 = Computed by version { $version } of the program, from everything that was done; { $computed }
reliability-of-n-jobs-at-least-84ab6fcf = Reliability of { $n } jobs: at least { $least } of 1, enough for a decision about one person.
reliability-of-n-jobs-at-least-d2d9bc47 = Reliability of { $n } jobs: at least { $least } of 1, too little for a decision about one person by itself: take it together with other sittings and the practical.
from-job-to-job-the-marks-lie-2b795df5 = From job to job the marks lie apart: the mean is sure to about ±{ $marks }.
the-marks-of-these-jobs-are-191277d0 = The marks of these jobs are equal: from so few no spread can be told.
one-job-tells-of-no-spread-how-1d3f090c = One job tells of no spread: how sure its marks are is not known.

### app/readings.rs

every-fault-a-machine-can-have-3230fbdd = Every fault a machine can have against the readings of its data sheet and the figures of a whole program. What a technician would notice is marked ●; what is not marked looks like a sound machine there.
the-table-of-this-machine-cannot-25d6501d = The table of this machine cannot be computed.
done-of-n-faults-computed-866421ca = { $done } of { $n } faults computed …
save-as-csv-b30635b0 = Save as CSV
faults-against-readings-fdac3068 = Faults against readings

### app/report.rs

report-4681fa0b = Report
what-the-customer-said-69287971 = What the customer said
found-0abaed3f = Found
done-8dd31791 = Done
told-and-shown-74c6f73c = Told and shown
signature-of-the-customer-8ecd44d3 = Signature of the customer:
from-a-simulated-machine-for-bc193b34 = From a simulated machine, for training.
the-machine-at-when-5ce4e4f6 = The machine at { $when }
measured-69a8be81 = Measured
what-0815494f = What
bill-24a8cf3c = Bill

### app/rows.rs

this-browser-has-no-threads-so-6fb62a2e = This browser has no threads, so nothing can be computed in it.

### app/session.rs

title-text-5c0a14b4 = { $title }. { $text }

### app/settings.rs

as-the-device-is-set-cefbfa20 = as the device is set
# of colours
light-6cc5e111 = light
# of colours
dark-d9af6257 = dark
settings-4b058728 = Settings
give-hints-in-the-opening-jobs-ef3700a2 = Give hints in the opening jobs
show-all-names-on-the-pictures-15bb4512 = Show all names on the pictures
single-keys-work-on-the-bench-6ac8f39c = Single keys work on the bench
colours-1a29ff2a = Colours
strong-contrast-f6f08b9c = Strong contrast
# what is heard
sound-c25ddb22 = Sound
hear-the-machine-c33f3bb7 = Hear the machine
what-sounds-is-also-written-34e64458 = What sounds is also written under the picture.
language-9a73db9b = Language
volume-74f576af = Volume
percent-percent-dd8ba63f = { $percent } percent
keys-on-the-bench-fa8e11c3 = Keys on the bench
everything-works-with-tab-arrow-cdd074ff = Everything works with Tab, arrow keys and Enter. These single keys are quicker; they do nothing while you type.
key-cd1ac90c = Key
what-it-does-4a4676fd = What it does
your-data-0819f3fe = Your data
yes-erase-all-my-jobs-35fd8beb = Yes, erase all my jobs
erase-my-jobs-665d38c7 = Erase my jobs
the-browser-did-not-let-the-page-142f08d7 = The browser did not let the page erase anything.
all-jobs-are-erased-0ba72486 = All jobs are erased.

### app/sheets.rs

told-the-customer-3ca98071 = Told the customer
date-and-name-b226327f = Date and name
job-card-36e6252a = job card
sheets-to-print-9c686f7d = Sheets to print
who-the-machine-as-it-stands-44bb8062 = { $who }: the machine as it stands after the last act. Each sheet prints alone, black on white.
which-sheets-e2f02066 = Which sheets
job-card-title-0aa664e0 = Job card: { $title }
a-simulated-job-for-training-46e6e78c = A simulated job, for training.
machine-picture-title-customer-0500cd06 = { $machine }, { $picture }. { $title }, { $customer }, { $clock }.

### app/shell.rs

to-the-content-394b43aa = To the content
handbook-b94a65c5 = Handbook
there-is-nothing-at-this-address-b42878d1 = There is nothing at this address
tubwright-37232af5 = Tubwright
screens-984019e6 = Screens

### app/sitting/form.rs

give-the-number-on-your-slip-or-2f428199 = Give the number on your slip, or one of your own for practice.
at-most-n-letters-on-one-line-8eae01b7 = At most { $n } letters on one line.
the-letters-do-not-go-with-the-b419a06b = The letters do not go with the start code and the number: compare all three with your slip.
your-instructor-tells-this-word-0bf48ebd = Your instructor tells this word when all begin.
without-this-nothing-can-be-11f994da = Without this nothing can be recorded, and so nothing assessed.

### app/sitting/jobs.rs

job-place-of-n-1a528084 = Job { $place } of { $n }
job-n-c9c3bafc = Job { $n }

### app/sitting/limits.rs

n-s-left-f5a7ac47 = { $n } s left
n-min-left-eadff3f4 = { $n } min left
hours-h-minutes-min-left-24fe93d6 = { $hours } h { $minutes } min left

### app/sitting/lock.rs

the-clock-stands-3a77a06b = The clock stands
the-jobs-of-the-assessment-open-24529712 = The jobs of the assessment open again once the clock goes on, other pages once it is handed in.
not-during-the-assessment-452fc9de = Not during the assessment
an-assessment-is-running-in-this-f2e10823 = An assessment is running in this browser. This page opens again once it is handed in.
this-job-is-handed-in-9aaffb01 = This job is handed in
what-came-of-it-stands-with-the-40eedb90 = What came of it stands with the result.
to-the-assessment-44e0e277 = To the assessment

### app/sitting/mark_sheet.rs

passed-254b3fb9 = Passed
on-the-border-more-jobs-decide-802130f4 = On the border: more jobs decide
# of a pass
not-yet-d79d1753 = Not yet
mark-sheet-a7391383 = Mark sheet
mark-sheet-a-table-7e75496a = Mark sheet, a table
ended-ec2b41db = Ended
economy-and-evidence-go-by-the-67a8098a = Economy and evidence go by the bill and the notebook in job { $places }: this browser could not work out what each decision was worth.
not-begun-ab66e96f = not begun
points-of-all-81479442 = { $points } of { $all }
severity-rule-times-93493130 = { $severity }: { $rule }, { $times }

### app/sitting/observer.rs

switches-off-unplugs-keeps-the-806f1a67 = switches off, unplugs, keeps the plug in sight
shuts-the-tap-and-bleeds-the-2a7b40c0 = shuts the tap and bleeds the hose
waits-discharges-proves-the-474e95b5 = waits, discharges, proves the tester before and after
proves-dead-where-the-hands-will-106a2c2f = proves dead where the hands will be
hands-and-tools-7f644a87 = Hands and tools
takes-covers-off-without-harm-to-a27a681b = takes covers off without harm to edges, clips and wires
holds-and-places-probes-with-dry-e56344cc = holds and places probes with dry, steady hands
pulls-connectors-by-their-body-209bd007 = pulls connectors by their body, never by the wire
lifts-and-lays-down-with-help-or-64962182 = lifts and lays down with help or a strap
putting-back-85509675 = Putting back
seats-belt-hoses-and-lever-and-54b75e66 = seats belt, hoses and lever, and checks each by hand
refits-the-earth-first-and-c27eb72f = refits the earth first and leaves no fastener over
earth-bond-insulation-and-0e619643 = earth bond, insulation and leakage measured and written down
runs-the-machine-looks-for-leaks-b0ea26b2 = runs the machine, looks for leaks, times the brake
asks-listens-names-the-price-d9296870 = asks, listens, names the price before the work
leaves-the-place-dry-and-clean-b2c55f5f = leaves the place dry and clean, shows what was done
for-a-practical-on-a-real-4b38e8bb = For a practical on a real machine, before a witness. The simulation tells of finding faults, order of work and decisions about safety; this sheet tells of hands.
candidate-s-number-6e11d3d1 = Candidate’s number
machine-and-fault-set-21cdd40f = Machine and fault set
place-and-date-4c16688b = Place and date
observer-3fac8c77 = Observer
seen-da72188a = Seen
with-help-1090bd08 = with help
note-919a0c3d = note
a-step-that-endangers-anybody-ac1dfee5 = A step that endangers anybody ends the practical: stop, make safe, write it down.
may-work-alone-yes-or-what-comes-a09f7d65 = May work alone: yes, or what comes first
signature-of-the-observer-50b3b991 = Signature of the observer
signature-of-the-candidate-5a306df0 = Signature of the candidate

### app/sitting/overview.rs

no-assessment-is-running-6475eef3 = No assessment is running
open-one-49afee59 = Open one
handed-in-58e821c0 = Handed in
this-assessment-was-handed-in-54ee37a9 = This assessment was handed in. The training system has its result; the result’s pages are in the browser in which it was sat.
this-assessment-is-open-in-cd4f6448 = This assessment is open in another tab
it-goes-on-there-with-its-clock-2d9ff623 = It goes on there, with its clock: work and hand in there. Nothing that is done here counts, and this tab hands nothing in.
to-go-on-here-instead-close-the-846614f0 = To go on here instead, close the other tab, then load this page again. Nothing is lost.
load-this-page-again-8b449af6 = Load this page again
the-clock-stands-453c5dcb = the clock stands
go-on-the-clock-starts-again-bfa9f424 = Go on: the clock starts again
stop-the-clock-e19ac980 = Stop the clock
hand-in-206f3f5f = Hand in
yes-hand-in-ff40daec = Yes, hand in
yes-hand-in-with-one-job-open-f480328d = Yes, hand in with one job open
yes-hand-in-with-n-jobs-open-1e4cff64 = Yes, hand in with { $n } jobs open
a-job-that-is-not-handed-over-9d0a1869 = A job that is not handed over counts as it stands; one that was never opened counts as 0.
handing-in-working-out-what-your-9fd00ae9 = Handing in: working out what your decisions were worth. Leave this page open.
handed-over-0d3cbb91 = handed over

### app/sitting/result.rs

saved-hand-this-file-to-your-98a16102 = Saved. Hand this file to your instructor.
result-title-044cde4e = Result: { $title }
sealed-with-the-start-code-07982d01 = sealed with the start code
told-to-your-training-system-not-8ee90e7b = told to your training system; not sealed with a start code
practice-not-sealed-proves-18df76f7 = practice: not sealed, proves nothing to others
receipt-1b9120e3 = Receipt
nothing-was-done-19b38c41 = nothing was done
done-of-n-jobs-the-start-of-the-44890606 = { $done } of { $n } jobs. The start of the last record’s hash: write it down, and nobody can exchange the file unseen.
your-instructor-s-copy-computes-203bb577 = your instructor’s copy computes it again and decides.
back-to-the-course-05831de5 = Back to the course
print-this-sheet-f6a770b7 = Print this sheet
clear-for-the-next-candidate-fc11d8d6 = Clear for the next candidate
yes-the-file-is-handed-over-750f2786 = Yes, the file is handed over: clear
verdict-marks-of-100-marks-on-40739ce9 = { $verdict } · { $marks } of 100 marks on average, { $cut } are asked
job-n-as-a-link-2827b189 = Job { $n } as a link
result-of-job-n-as-a-qr-code-df24b449 = Result of job { $n } as a QR code
as-qr-codes-to-be-read-with-a-05d50a16 = As QR codes, to be read with a telephone at the same server

### app/sitting/room.rs

this-is-no-code-of-this-d608a92d = This is no code of this assessment: compare it with what was read out.
this-code-was-used-already-each-5503a65f = This code was used already: each is good once. Ask for the next one.
this-code-lets-the-clock-go-on-09e317bb = This code lets the clock go on, and it is running.
this-code-stops-the-clock-and-it-2711a227 = This code stops the clock, and it stands already. Wait for the code to go on.

### app/sitting/room_pause.rs

pause-code-221397d6 = Pause code
stop-the-clock-for-the-room-b683a587 = Stop the clock for the room
the-room-pauses-the-clock-stands-4c375972 = The room pauses: the clock stands
nothing-can-be-done-at-the-jobs-6f77ce97 = Nothing can be done at the jobs meanwhile, and the time does not count. Type the code that your instructor reads out to go on.
pause-of-the-whole-room-8c8a302d = Pause of the whole room
when-your-instructor-reads-out-a-0442c468 = When your instructor reads out a pause code, type it here. The clock stands until you type the next one.

### app/sitting/start.rs

the-letters-were-cut-or-changed-610558b7 = The letters were cut or changed on the way: copy the whole address again.
there-is-no-assessment-id-beside-9cfd903f = There is no assessment “{ $id }” beside this page: open its file.
open-the-file-or-the-link-that-62e5a1d5 = Open the file or the link that your instructor gave you.
the-assessment-s-file-9b42810a = The assessment’s file
name-is-an-assessment-too-one-is-51d31cac = { $name } is an assessment, too: one is sat at a time.
the-rules-9abb76fb = The rules
this-computer-fa0d176a = This computer
who-sits-it-ab9aa5d9 = Who sits it
as-on-your-slip-a-number-is-899ccb1b = As on your slip. A number is enough; no name is needed.
your-name-3a0663bd = Your name
may-stay-empty-it-can-be-struck-06262575 = May stay empty. It can be struck out of the result later.
you-have-a-slip-with-a-start-c044b6f1 = You have a slip with a start code
from-your-slip-fc518f22 = From your slip
sixteen-characters-on-your-slip-97dc5ae8 = Sixteen characters on your slip. Without it this is practice, and the result says so.
the-four-letters-beside-it-2ac6fc2e = The four letters beside it
they-find-a-misread-code-dc831d6f = They find a misread code.
word-for-today-eacde8b7 = Word for today
your-instructor-tells-it-when-18d8bb72 = Your instructor tells it when all begin.
i-know-what-is-recorded-c1da6593 = I know what is recorded: everything I do at the bench with its time, and when this page is left. It goes to the training system, and stays in this browser until it is erased.
i-know-what-is-recorded-10490fe5 = I know what is recorded: everything I do at the bench with its time, and when this page is left. It stays in this browser until I hand the file over or erase it.
begin-the-clock-starts-2829212a = Begin: the clock starts
begin-as-practice-c4fbf2df = Begin as practice
one-job-minutes-minutes-for-all-6a0028a5 = One job, { $minutes } minutes for all of them.
n-jobs-minutes-minutes-for-all-8a8d5d08 = { $n } jobs, { $minutes } minutes for all of them.
the-data-sheet-8347c967 = the data sheet
the-jobs-are-drawn-for-you-5ad6a43f = The jobs are drawn for you: others get other jobs of the same kinds. There are no hints, and nothing is said about right or wrong before you hand in.
no-aids-neither-data-sheet-nor-0405a824 = No aids: neither data sheet nor wiring diagram nor handbook.
you-may-use-aids-d2a86f5b = You may use { $aids }.
the-clock-can-be-stopped-between-54656696 = The clock can be stopped between jobs.
the-clock-does-not-stop-once-it-6ac2ba95 = The clock does not stop once it has started.
leaving-the-page-is-noted-after-660549f4 = Leaving the page is noted. After a reload you go on where you were.
to-pass-cut-of-100-marks-on-38ac139b = To pass: { $cut } of 100 marks on average. Within { $border } marks of that, more jobs decide.
your-instructor-can-stop-the-de789e14 = Your instructor can stop the clock for the whole room, by a code that is read out and noted in the result.
a-critical-safety-rule-broken-is-4567fccd = A critical safety rule broken is not made up for by marks.
n-of-the-machines-must-be-put-8b6e8d73 = { $n } % of the machines must be put right, or rightly made safe and left.
of-the-marks-for-part-at-least-n-42ade5ba = Of the marks for { $part }, at least { $n } % on average.
whoever-keeps-the-results-is-to-4609cdd8 = Whoever keeps the results is to erase them { $months } after the day they began.
an-assessment-is-running-in-this-2c749c1f = An assessment is running in this browser already: hand it in first.
in-order-8600af38 = in order:
mind-3923f209 = mind:
looking-1c16e9be = looking …
what-you-do-is-kept-after-every-a5ff5d46 = What you do is kept after every act, also if the page is closed.
this-browser-keeps-nothing-a-439678b3 = This browser keeps nothing: a reload would lose everything. Ask for another one before you begin.
mouse-finger-or-keyboard-alone-898c7a9c = Mouse, finger or keyboard alone: all of it can be worked with any of them. Sounds are captioned.

### app/store/error.rs

this-browser-has-no-room-left-so-a09ec24a = This browser has no room left, so the last step is not saved. Free some space, or finish in this sitting.
this-browser-does-not-let-the-4ebada3c = This browser does not let the page save. You can work on, but closing the page loses the job.
the-saved-job-cannot-be-read-and-2c9f4acc = The saved job cannot be read and was left untouched. You can start it again.

### app/store/mod.rs

your-jobs-are-kept-in-this-e8c13a5a = Your jobs are kept in this browser, on this device only.
this-browser-does-not-let-the-27f8ea85 = This browser does not let the page keep anything: your jobs are gone when you close it.

### app/told_files.rs

not-opened-since-something-is-d6ff13a6 = Not opened, since something is wrong: { $n }
passed-over-n-da625485 = Passed over: { $n }

### app/training_set.rs

mastered-87fde572 = mastered
next-5cb68de8 = next
later-523ab9a9 = later
title-done-of-n-mastered-dcae9d31 = { $title }: { $done } of { $n } mastered
about-the-next-job-opens-when-04ee2c20 = { $about } The next job opens when the one before has { $marks } marks of 100.
forget-this-set-title-5ff4911a = Forget this set: { $title }
forget-this-set-e76dc550 = Forget this set

### app/training_system/awaiting.rs

address-is-asked-for-the-key-70b134f7 = { $address } is asked for the key that lets this visit in.
address-is-asked-for-what-was-8a63ccc7 = { $address } is asked for what was started, and for whom.
address-is-asked-for-the-work-797c284a = { $address } is asked for the work you have done before.
address-is-asked-to-note-that-03b658ef = { $address } is asked to note that you begin.
the-key-is-given-once-so-it-4defa442 = The key is given once, so it cannot be asked for again: wait, or go on without it, and start this page anew from the course later.
go-on-it-is-told-as-soon-as-the-73c2b5f8 = Go on: it is told as soon as the system takes it, before anything else is.
ask-again-or-go-on-without-it-050059ca = Ask again, or go on without it: then the system is told nothing until you load this page again, and work you have done elsewhere is not here.
waiting-for-the-training-system-04613867 = Waiting for the training system
n-s-so-far-2398f3f1 = { $n } s so far.
ask-again-13a6f1ce = Ask again
go-on-without-it-46b6dc7d = Go on without it
there-is-no-answer-for-n-seconds-c942b834 = There is no answer for { $n } seconds.

### app/training_system/trouble.rs

the-training-system-has-started-2ac938db = The training system has started this page but does not let it begin, so it is told nothing of what you do here. Start it anew from the course.
you-go-on-without-the-training-53370f0f = You go on without the training system, which has not answered: it is told nothing of what you do here. Load this page again to ask it once more, or start it anew from the course.
this-page-was-left-or-loaded-f53eb94d = This page was left or loaded anew, and with that your visit in the training system has ended. Your work is kept. Start the page again from the course: what you hand in is told then.
the-training-system-has-no-room-3e61fd59 = The training system has no room for all of your work: it is kept in this browser alone. Go on here, on no other computer, and save the file at the end.
the-training-system-has-not-937ff3d3 = The training system has not taken your result yet. It is told again when the network is back, and by “Back to the course” where that is shown. Save the file.

### app/view/around.rs

press-on-off-1fd9c6bb = press on/off
press-start-2eee9150 = press start
press-program-245fa278 = press program
press-water-level-475b7b49 = press water level
press-the-service-key-behind-the-d83626dc = press the service key behind the panel
push-the-knob-in-off-81e98d20 = push the knob in: off
pull-the-knob-out-on-00ab3e08 = pull the knob out: on
turn-the-dial-to-the-start-1df92c25 = turn the dial to the start
turn-the-dial-one-step-on-e137a5ba = turn the dial one step on
turn-the-dial-five-steps-on-657bf64d = turn the dial five steps on
pull-the-plug-98cca383 = pull the plug
put-the-plug-in-fd882a6a = put the plug in
keep-it-in-sight-87c1a3ed = keep it in sight
put-the-splitter-lead-in-349dec81 = put the splitter lead in
take-the-splitter-lead-away-5f60faf4 = take the splitter lead away
switch-its-circuit-off-at-the-4af7d5c9 = switch its circuit off at the board
switch-its-circuit-on-ab211a55 = switch its circuit on
prove-the-tester-on-its-known-d182e67c = prove the tester on its known source
put-new-fuses-into-the-2257ae21 = put new fuses into the instruments
discharge-plug-pins-with-the-19da3ea1 = discharge plug pins with the resistor
short-plug-pins-with-a-5264868e = short plug pins with a screwdriver
shut-the-tap-12bcf3e1 = shut the tap
open-the-tap-2c749523 = open the tap
bleed-the-hose-into-a-bucket-3e07f690 = bleed the hose into a bucket
bleed-it-into-a-bucket-1f671da9 = bleed it into a bucket
take-the-hose-off-10670ceb = take the hose off
screw-the-hose-on-a56aac3e = screw the hose on
# verb, of a lid
open-55412a21 = open
# verb, of a lid
shut-5bedcd3f = shut
bridge-it-ca60eb1d = bridge it
take-the-bridge-off-10fc92db = take the bridge off
# verb, of a key
press-10ef7c14 = press
dry-what-got-wet-inside-f33d4756 = dry what got wet inside
discharge-it-with-the-resistor-7028473a = discharge it with the resistor
short-it-with-a-screwdriver-9867048f = short it with a screwdriver
bail-the-water-out-45419391 = bail the water out
let-the-water-out-by-the-wire-5dc1573d = let the water out by the wire

### app/view/beside.rs

act-n-times-0f5a7849 = { $act }, { $n } times
cost-cost-minutes-min-n-acts-d8f603c5 = cost { $cost }, { $minutes } min, { $n } acts

### app/view/card.rs

place-9ad2489c = Place
in-the-van-3fcacd24 = In the van
rates-72ebb81c = Rates
call-out-call-out-labour-hour-an-b6ea9aee = call-out { $call_out }, labour { $hour } an hour, new machine { $new }
costs-at-most-most-786ac53e = costs at most { $most }
to-reach-bd2d21b7 = To reach
in-the-bag-6439528b = In the bag
instrument-place-e3f2c311 = { $instrument }, { $place }
outside-the-machine-or-left-by-be1bd085 = outside the machine, or left by an earlier repair

### app/view/covers.rs

verb-with-help-or-a-strap-040e63a7 = { $verb }, with help or a strap
verb-alone-597c1139 = { $verb }, alone
verb-bucket-and-cloth-below-d23a24e4 = { $verb }, bucket and cloth below
verb-nothing-below-1a5a37aa = { $verb }, nothing below
open-it-and-let-it-stand-by-c8149547 = open it and let it stand by itself
act-and-check-check-fe6743c4 = { $act } and check: { $check }
act-no-check-e77037de = { $act }, no check

### app/view/debrief.rs

so-it-counts-as-not-repaired-a-929761d3 = So it counts as not repaired: a machine is handed over whole and in its place
all-that-is-asked-of-a-job-was-a97b7fd6 = All that is asked of a job was shown.
no-rule-broken-whose-breach-can-1ec3d278 = no rule broken whose breach can kill
safety-of-70-97766810 = safety of 70 %
a-diagnosis-of-60-de2b2563 = a diagnosis of 60 %
a-procedure-of-60-with-run-and-83be6db8 = a procedure of 60 % with run and electrical tests
evidence-of-50-1130c5b9 = evidence of 50 %
t-65-of-100-in-all-3bbb991e = 65 of 100 in all
still-missing-what-3117aed1 = Still missing: { $what }.
rightly-made-safe-and-left-7157eb52 = Rightly made safe and left
repaired-2f042b45 = Repaired
not-repaired-6882b9f2 = Not repaired
not-safe-719d4feb = not safe
safety-rules-broken-e6881775 = safety rules broken
safe-ad27ee58 = safe
how-marks-of-100-9cf7b4dc = { $how } · { $marks } of 100
how-marks-of-100-for-now-dfc8b5c3 = { $how } · { $marks } of 100 for now
to-be-expected-5822b097 = to be expected
target-32608848 = target
avoidable-f84bfa72 = avoidable
money-dearer-than-could-be-0c37158a = { $money } (dearer than could be expected)
money-cheaper-than-could-be-f3bef78b = { $money } (cheaper than could be expected)
# good or bad luck
chance-db7e15a1 = chance
on-site-46cf0feb = on site
minutes-min-689f1a0e = { $minutes } min
kept-e8614759 = kept
not-kept-67ecfbda = not kept
at-most-most-met-ccc3dfe6 = at most { $most }: { $met }
budget-39baa088 = budget
at-most-most-min-met-78b9d89a = at most { $most } min: { $met }
time-allowed-3e870934 = time allowed
reached-564dd9f9 = reached
not-reached-5ea156cc = not reached
at-least-least-met-1258904e = at least { $least }: { $met }
marks-to-reach-8a4c03a9 = marks to reach

### app/view/decided.rs

ruled-out-names-and-more-more-a59c0355 = Ruled out: { $names }; and { $more } more.
ruled-out-names-25664043 = Ruled out: { $names }.
what-was-known-then-gave-it-sure-02623023 = What was known then gave it { $sure } % to put things right: { $standing }.
cost-cost-deciding-otherwise-9990d4b0 = Cost { $cost }; deciding otherwise would have saved { $saved }.
cost-cost-3b1561d7 = Cost { $cost }.
a-hint-12f3c3fd = a hint
the-hint-gave-rung-and-counts-as-0df94d8a = The hint gave { $rung } and counts as avoidable: { $money }.
it-was-about-step-77ea7a8a = It was about: { $step }.
better-then-step-f54c61c0 = Better then: { $step }.
ask-what-a-reading-can-still-13a6a0ae = Ask what a reading can still tell before taking it.
prove-the-cause-before-this-a1ba0315 = Prove the cause before this repair.
prove-that-it-works-before-cfd19d47 = Prove that it works before handing over.
work-on-without-a-hint-for-one-955514eb = Work on without a hint for one step longer.
it-cost-money-more-than-it-had-182318b0 = It cost { $money } more than it had to.

### app/view/gauges.rs

place-way-13384dc3 = { $place }, { $way }
the-stream-that-runs-in-fb6453e8 = the stream that runs in
its-open-end-over-a-bucket-51a8b1a7 = its open end over a bucket
the-stream-that-runs-out-39ea604d = the stream that runs out
until-it-stands-8460c231 = until it stands
until-it-has-filled-ba60d6f8 = until it has filled
until-no-more-water-comes-d62a3141 = until no more water comes
until-its-wire-stands-4c94ceef = until its wire stands
pressure-in-the-line-7a5b4e88 = pressure in the line
pressure-in-the-hose-55bd25d7 = pressure in the hose
highest-speed-in-ten-seconds-865df7b1 = highest speed in ten seconds
slope-of-the-floor-beside-it-1ce7c19f = slope of the floor beside it
slope-of-the-machine-29ff4d83 = slope of the machine
gives-at-7-n-c69e2c65 = gives at 7 N
tension-by-its-tone-cf202e58 = tension by its tone
hottest-winding-37a681a2 = hottest winding
the-water-5085ff63 = the water
the-room-557956ef = the room
travel-of-its-wire-80e6ebc9 = travel of its wire
height-of-its-end-over-the-floor-cd828cab = height of its end over the floor
gap-to-the-tub-29f2ff90 = gap to the tub
play-c2cbd863 = play
seen-5a45cc6a = seen
leads-there-79405206 = leads there

### app/view/hints.rs

ask-first-the-questions-are-on-c81ce553 = Ask first: the questions are on the job card.
let-it-do-what-the-customer-99bd1624 = Let it do what the customer described: touch the dial, turn it to the start, pull the knob out, and listen.
let-it-do-what-the-customer-1023b263 = Let it do what the customer described: switch it on at its panel, wait until it is ready, touch start, and listen.
look-before-you-open-anything-4c5b3999 = Look before you open anything: touch something in the picture, then choose “look”. What you see goes into the notebook.
put-back-what-you-took-off-the-0321b8d1 = Put back what you took off, the last first, and check each joint as it goes on. What lies beside the machine is still off.
prove-it-plug-in-tap-open-and-03dc2f63 = Prove it: plug in, tap open, and let it wash, drain and spin. “Wait until” and the faster clock let time pass.
once-it-does-what-it-should-499b08c5 = Once it does what it should, choose Finish: say what was wrong, tick the lines that show it, tell the customer.
put-right-what-you-have-found-499725b2 = Put right what you have found: take it in hand and choose what to do. If looking does not settle it, read the socket first, line to neutral: it proves the supply and your tester.
make-it-safe-before-you-open-it-ab6f1bd7 = Make it safe before you open it: switch off, then touch the plug and pull it.
pulled-is-not-yet-dead-keep-the-e44f850c = Pulled is not yet dead: keep the plug in sight, shut the tap, then read the plug's pins against each other until they stand near 0 V.
a-tester-that-died-reads-0-v-too-64f69f39 = A tester that died reads 0 V too: read the live socket once more. Then it is proved dead.
now-open-the-way-touch-a-cover-23e3ec81 = Now open the way: touch a cover in the picture. What holds it, and how long it takes, stands with the verbs.
look-again-at-what-is-open-now-4c40c5cd = Look again at what is open now, and measure where looking does not settle it; Papers give the values a sound one has. Then put right what you have found.

### app/view/likely.rs

it-made-the-picture-less-clear-197a8600 = It made the picture less clear, and rightly so.
it-told-nothing-new-about-the-3391340b = It told nothing new about the cause.
it-told-a-little-about-the-cause-1f07c047 = It told a little about the cause.
it-told-something-about-the-64093292 = It told something about the cause.
it-told-a-great-deal-about-the-bae1fde8 = It told a great deal about the cause.
it-ruled-out-one-5dc9d3b4 = It ruled out one.
it-ruled-out-n-ccb6cc30 = It ruled out { $n }.
nothing-wrong-79225783 = Nothing wrong
one-and-next-6f6d33b1 = { $one }, and { $next }

### app/view/meter.rs

the-whole-cord-8c572891 = the whole cord

### app/view/names.rs

on-off-key-2ecedfcd = on/off key
start-and-pause-key-0ddba433 = start and pause key
program-key-8f2624f8 = program key
water-level-key-293990a9 = water level key
service-key-a785183b = service key
water-level-knob-e909f396 = water level knob
cold-valve-71421f39 = cold valve
hot-valve-898f302e = hot valve
timer-motor-20c84357 = timer motor
mains-plug-94ee392b = mains plug
wall-socket-433a0786 = wall socket
the-machine-from-outside-94571b34 = the machine from outside
the-machine-opened-708c8d06 = the machine opened
the-machine-in-section-68cb27cf = the machine in section
the-way-of-the-water-2697dac0 = the way of the water

### app/view/notice.rs

measure-10bf34df = measure
something-is-in-the-way-055e86e0 = Something is in the way
it-is-so-already-dc0015ba = It is so already
there-is-no-such-thing-on-this-e3347017 = There is no such thing on this machine
no-part-in-the-van-a-second-0923373a = No { $part } in the van. A second visit would bring it.
not-on-board-dd6c107b = Not on board
the-job-is-over-8c1ee0e5 = The job is over
nothing-more-is-done-to-the-01c0b484 = Nothing more is done to the machine.
not-as-things-are-5a0cbc6d = Not as things are
what-why-daa67e7b = { $what }. { $why }.
something-goes-back-first-ba97efcc = Something goes back first
still-off-names-5ec7deae = Still off: { $names }.
refit-and-check-in-order-0b3d7ba5 = refit and check in order
act-first-5eacb877 = { $act } first
plug-in-by-the-splitter-lead-9070178d = plug in by the splitter lead, then clamp
the-machine-goes-off-meanwhile-f875a97e = the machine goes off meanwhile
done-act-time-ad1abca0 = Done: { $act }, { $time }
you-had-a-shock-b9261700 = You had a shock
a-charge-went-off-ac41fe0b = A charge went off
volts-v-joules-j-through-what-fd34cdc4 = { $volts } V, { $joules } J, through { $what }.
the-supply-went-off-821de58e = The supply went off
the-meter-s-fuse-blew-685112f2 = The meter's fuse blew
water-on-the-floor-7a4831c4 = Water on the floor
litres-litres-why-3c981df7 = { $litres } litres: { $why }.
a-moving-part-caught-your-hand-fce26a7d = A moving part caught your hand
it-turned-at-speed-r-min-with-77a223d1 = It turned at { $speed } r/min with { $joules } J.
something-fell-155b61a8 = Something fell
what-joules-j-0fa8bc4a = { $what }; { $joules } J.
the-customer-agrees-d8a37f45 = The customer agrees
what-was-agreed-and-for-how-much-63742473 = What was agreed, and for how much, stands in the notebook.
not-agreed-1730b3b2 = Not agreed
what-the-customer-said-stands-in-d500179a = What the customer said stands in the notebook. Name another price, ask whoever pays, or take the fee and leave the machine safe.
something-was-spoilt-ea6be1d1 = Something was spoilt
what-that-costs-price-655f46e3 = { $what }. That costs { $price }.
you-hurt-yourself-3f8c82ae = You hurt yourself
the-new-part-has-burnt-out-bc1d2654 = The new part has burnt out
the-new-part-carried-more-than-e8987c5e = The new { $part } carried more than it stands: what killed the old one is still there.
sentence-d8132730 = { $sentence }.
volts-v-across-you-drove-current-04fdaa9c = { $volts } V across you drove { $current } mA through you for { $time } s. What opened the circuit: { $opened_by }. Effect zone { $zone }.

### app/view/open_ends.rs

what-is-still-to-be-put-back-24188ba3 = { $what } is still to be put back
what-held-is-still-to-be-put-f8b26c59 = { $what } ({ $held }) is still to be put back
what-is-apart-91570a3b = { $what } is apart
the-supply-hose-is-off-06da1639 = The supply hose is off
the-splitter-lead-is-still-in-dd0ffe5e = The splitter lead is still in the socket
the-tee-with-the-pressure-gauge-e47319c4 = The tee with the pressure gauge is in the supply line
the-tee-with-the-u-tube-is-in-d99f01a4 = The tee with the U-tube is in the air hose
the-socket-s-circuit-is-off-at-60444c61 = The socket's circuit is off at the board
on-the-cloth-lie-n-pieces-too-61fef585 = On the cloth lie { $n } pieces too many
a-sealed-joint-still-needs-its-58e7b54a = A sealed joint still needs its time before water
the-lid-switch-is-bridged-e99bdb86 = The lid switch is bridged
the-lid-is-open-a965fa55 = The lid is open
the-tap-is-shut-5c4fa3f7 = The tap is shut
the-plug-is-out-46a53c44 = The plug is out

### app/view/orders.rs

# a picture of the machine
outside-d1285534 = outside
# a picture of the machine
opened-366c5730 = opened
# a picture of the machine
section-6dcd408c = section
# a picture of the machine
wiring-94e4b165 = wiring
# a picture of the machine: the way of the water
water-f065dc13 = water
# of the clock: stand still
pause-a6143235 = pause
something-changes-2fd22f86 = something changes
it-does-something-else-1bbea7fa = it does something else
a-minute-has-passed-22e304b4 = a minute has passed

### app/view/papers.rs

off-off-on-on-252b3fc5 = { $off } off, { $on } on
after-steps-7789fcea = after { $steps }
mind-caution-a7f4cd8c = Mind: { $caution }
going-back-check-488750e8 = Going back: { $check }

### app/view/past.rs

the-meter-is-connected-to-41ea90a8 = the meter is connected to nothing

### app/view/safe.rs

# of the machine: switched off
off-e5d98837 = off
secured-6889d45c = secured
tap-shut-5016da0c = tap shut
hose-bled-240ea1cb = hose bled
tester-proved-567757e4 = tester proved
off-at-the-board-181e85c0 = off at the board
unplugged-c7ab8726 = unplugged
plug-pins-run-capacitor-1cbe5624 = plug pins, run capacitor
plug-pins-dd661773 = plug pins
run-capacitor-00729536 = run capacitor
discharged-73c24729 = discharged
red-to-black-0d40071e = { $red } to { $black }
proved-dead-b564a2bb = proved dead
shown-dead-cc669728 = shown dead
prove-the-tester-again-fd02cbe1 = prove the tester again

### app/view/selection.rs

red-lead-on-point-d08cbd1b = red lead on { $point }
black-lead-on-point-fdaa6d63 = black lead on { $point }

### app/view/sheet.rs

connector-apart-e1622896 = { $connector } apart
low-to-high-52434f50 = { $low } to { $high }
low-or-more-582d7e75 = { $low } or more
unplugged-its-switch-or-knob-on-ee0fb054 = unplugged, its switch or knob on
switched-on-waiting-da931398 = switched on, waiting
washing-spin-direction-1ae32cff = washing, spin direction
washing-other-direction-a2bc9915 = washing, other direction
lid-opened-at-full-spin-da4967a7 = lid opened at full spin
in-a-normal-program-658b7b40 = in a normal program

### app/view/shown.rs

sentence-next-bb017a53 = { $sentence }. { $next }

### app/view/verbs.rs

hold-the-contactless-tester-to-30b0595f = hold the contactless tester to it
look-e6ef5696 = look
feel-b33572bd = feel
listen-3b3b76a6 = listen
smell-f052b280 = smell
pull-apart-fd25b5d8 = pull apart
push-home-3883d34c = push home
work-part-part-for-price-143a0524 = { $work }: { $part }, part for { $price }
work-part-for-price-43c34c65 = { $work }, part for { $price }

### app/view/visit.rs

put-the-old-part-back-b47eca06 = put the old { $part } back
look-it-over-probes-together-a31306c6 = look it over, probes together
take-the-spare-one-58f7545e = take the spare one
who-pays-037f5c56 = Who pays
read-receipt-and-rating-plate-f6270b75 = read receipt and rating plate
the-maker-pays-020f2093 = the maker pays
the-customer-pays-9ce4c983 = the customer pays
telephone-the-landlord-e6ee38ee = telephone the landlord
take-the-fee-for-finding-the-618a16f4 = take the fee for finding the fault
with-care-085adaea = With care
gloves-on-8110ad20 = gloves on
gloves-off-a354987a = gloves off
blanket-on-the-floor-bd780f0c = blanket on the floor
keep-the-room-free-3f5206b8 = keep the room free
mop-the-floor-a7515f4a = mop the floor
cold-water-into-the-tub-797de7c2 = cold water into the tub
work-on-the-house-wiring-209f437c = work on the house wiring
parts-on-trial-231772da = Parts on trial
picture-from-outside-746003c4 = picture from outside
picture-opened-86473536 = picture opened
have-it-signed-9162c954 = have it signed

### app/view/way.rs

what-comes-first-time-fa764dcd = { $what } comes first: { $time }
what-comes-first-held-time-dc1c1d20 = { $what } comes first: { $held }, { $time }
in-the-way-names-time-together-7818c4e1 = In the way: { $names }, { $time } together
act-then-then-eb566ed7 = { $act }, then { $then }

### app/waiting.rs

nothing-has-changed-in-n-minutes-b6064d92 = Nothing has changed in { $n } minutes.
after-n-second-state-218a3276 = After { $n } second: { $state }
after-n-seconds-state-c51f28bf = After { $n } seconds: { $state }
nothing-has-changed-024972de = Nothing has changed
you-have-waited-n-minutes-5f660be7 = You have waited { $n } minutes.

### app/worker/inside.rs

the-question-cannot-be-read-a861cc9e = The question cannot be read.

### app/worker/page.rs

the-browser-has-stopped-the-bb4ad385 = The browser has stopped the computation.

### app/worker/work.rs

there-is-no-machine-named-fd279948 = There is no machine named “{ $machine }”.
the-table-of-this-machine-cannot-1ca251ed = The table of this machine cannot be computed: { $why }

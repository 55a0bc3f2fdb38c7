### app/assessments/course.rs

course-package-for-a-training-fbd07c07 = Course package for a training system
the-workshop-and-this-assessment-fea97212 = The workshop and this assessment in one zip file, made here of the very build that you are looking at. A training system takes it as a course, and its learners sit it there.
which-kind-the-system-takes-01c04a98 = Which kind the system takes
address-that-the-course-s-names-93e82dc5 = Address that the course’s names begin with
it-need-not-answer-take-one-that-3db8f8e1 = It need not answer. Take one that is yours and let it stay: by it the system tells courses apart.
packing-6714ec88 = Packing
cancel-35afca3b = Cancel
make-the-package-506cd1d4 = Make the package

### app/assessments/room_codes.rs

pauses-of-the-whole-room-70c49c42 = Pauses of the whole room
the-clock-can-be-stopped-for-the-f52246a8 = The clock can be stopped for the whole room by codes that are read out
each-candidate-types-the-code-66299a7a = Each candidate types the code. Read out the first one to stop, the second one to go on, and so forth; cross off what was used, with any group: a code is good once. Each pause stands in the result with its time.
show-the-codes-not-on-a-screen-f8daa6c0 = Show the codes: not on a screen that candidates see
pause-codes-a-table-60e7100e = Pause codes, a table
pause-44f9bf2d = Pause
to-stop-8cec5da4 = To stop
to-go-on-9ae941a7 = To go on
save-the-codes-as-a-text-d52471a3 = Save the codes as a text

### app/assessments/rules.rs

time-and-aids-92bdde14 = Time and aids
allowed-586f52e3 = Allowed
what-passes-f79a6354 = What passes
after-a7dd3a69 = After
cut-58e25863 = Cut
a-fixed-number-of-marks-121ea35e = a fixed number of marks
from-judges-after-angoff-7cefbe10 = from judges, after Angoff
for-each-job-with-commas-between-c5f1ad6b = For each job, with commas between: the marks that a just competent technician would get. Five judges or more, two rounds with a talk between.

### app/assessments/screen.rs

make-an-assessment-daec6f30 = Make an assessment
say-which-skills-at-which-level-9841b34b = Say which skills at which level, how many jobs, and what passes. Each candidate then gets jobs of their own, equally hard, and a result that can be checked.
make-a-new-one-480e8586 = Make a new one
review-results-7563f90b = Review results
observer-s-sheet-58c73c5a = Observer’s sheet
made-here-b6c0ccf6 = Made here
none-yet-786bc275 = None yet.
how-sure-its-decisions-are-c7d8a265 = How sure its decisions are
enough-for-a-decision-about-one-61ad668d = Enough for a decision about one person.
for-a-decision-about-one-person-730b37f9 = For a decision about one person alone 0.8 is asked: add jobs, or take several sittings and the practical together.
still-to-do-2fbfc23f = Still to do

### app/assessments/slips.rs

give-it-out-97f482bd = Give it out
save-the-file-3310d52f = Save the file
save-the-key-6c2f08c0 = Save the key
the-link-as-a-code-for-a-9c367c25 = The link as a code for a classroom screen
the-link-as-a-qr-code-f9cdcb6b = The link as a QR code
candidates-6e9467ab = Candidates
one-number-a-line-after-a-comma-ddcd5146 = One number a line. After a comma extra minutes, where somebody has them: they do not show on the slip or the screen.
slips-a-table-978d20c7 = Slips, a table
your-number-89a480eb = Your number
start-code-8f4e7f8c = Start code
letters-beside-it-478bec05 = Letters beside it
print-the-slips-7a90592c = Print the slips
when-all-begin-tell-a-word-for-218ed81b = When all begin, tell a word for today, the same for all: with another word, other values are drawn, so that yesterday’s group can tell nothing. Write the word down; every result holds it.

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
take-off-66f6f69f = take off

### app/bench/drawer.rs

put-away-453860f0 = put away

### app/bench/estimate.rs

estimate-2649bd57 = Estimate
for-what-is-held-to-be-wrong-aec7e19a = For what is held to be wrong
not-known-yet-43730b83 = not known yet
so-far-86b3661a = So far{" "}
add-the-part-and-the-time-still-b0138d02 = {"."} Add the part and the time still needed. A way without a price is not named.
a-price-is-a-number-above-zero-8503dd0e = A price is a number above zero, such as 95. At least one is needed.
name-the-price-dc72528c = Name the price

### app/bench/gauges.rs

water-speed-length-warmth-2bd00d7e = water, speed, length, warmth
instruments-that-need-no-circuit-cbd0aff2 = Instruments that need no circuit
data-sheet-6ac14082 = , data sheet{" "}
record-593058cc = record

### app/bench/help.rs

hints-bca2dc31 = Hints
thinking-about-what-your-notes-a64468f9 = Thinking about what your notes say; this takes some seconds.
you-have-shown-that-you-can-do-cc122c6a = You have shown that you can do this: there are no more hints here.
these-were-all-the-hints-for-325be3f4 = These were all the hints for this step.
hint-cbf455d8 = Hint
one-more-d868d598 = One more

### app/bench/instrument.rs

instrument-in-hand-8e0e36f8 = Instrument in hand
jaws-1e22169e = jaws
red-40f480dc = red
data-sheet-a00aace6 = data sheet{" "}
note-it-5052aaba = Note it
instrument-and-mode-9a27bed4 = Instrument and mode
other-tools-6a3c046e = other tools

### app/bench/job_bar.rs

time-of-day-c2c39d09 = Time of day{" "}
on-site-c8f77977 = {" "}on site{" "}
cost-so-far-68082c61 = cost so far{" "}

### app/bench/job_card.rs

job-card-6f422c4a = Job card
asked-4e3af9c3 = Asked
ask-the-customer-44068b63 = Ask the customer
put-right-outside-the-machine-7cc266b9 = Put right outside the machine
machine-and-place-da4d1a40 = Machine and place
ask-again-in-other-words-7634d5c6 = ask again in other words

### app/bench/moving.rs

instrument-87615d50 = Instrument
leads-and-mode-8ddd0280 = leads and mode
heard-aaf02671 = Heard:{" "}
display-c3329407 = Display:{" "}
sound-is-on-130aeb85 = Sound is on
sound-is-off-0d4529a1 = Sound is off

### app/bench/notebook.rs

notebook-9db5b440 = Notebook
nothing-noted-yet-what-you-look-31391408 = Nothing noted yet. What you look at, ask and measure is written here.
remark-3a635eb1 = Remark
write-down-83c15880 = Write down

### app/bench/notice.rs

making-safe-2585e0f5 = Making safe
i-have-read-this-9be0b48a = I have read this
all-right-ea58a416 = All right
leave-it-fb3e2fed = Leave it

### app/bench/papers.rs

papers-8da5b89e = Papers
the-wiring-diagram-is-the-44dcfb77 = The wiring diagram is the picture “wiring”. In a tab of their own:{" "}
faults-of-this-machine-c1caed1e = faults of this machine
its-parts-bd6bcf1f = its parts
measuring-b238bd68 = measuring
making-safe-0aabd0d5 = making safe
the-handbook-904a74c8 = the handbook
print-job-card-and-pictures-ece512cd = Print job card and pictures
data-sheet-what-a-good-one-reads-4a1d500f = Data sheet: what a good one reads
access-guide-what-is-off-before-ca5774c7 = Access guide: what is off before what

### app/bench/picture.rs

closer-3c01daa3 = Closer
farther-1001bf65 = Farther
whole-e55b9774 = whole

### app/bench/point_picker.rs

touch-or-type-a-point-e92e3faa = touch or type a point

### app/bench/recorder.rs

record-the-meter-2b030b72 = record the meter
fresh-strip-7ccee1e9 = fresh strip
print-the-chart-5001857f = Print the chart
put-a-pen-on-the-meter-as-it-is-1481b5d1 = Put a pen on the meter as it is set, or on a speed, a pressure or a temperature above.
lift-f6c75a7c = lift
highest-b8127b7d = highest{" "}
lowest-e9508501 = lowest{" "}
as-a-table-931aef9a = as a table
time-5d3c9be4 = time

### app/bench/safe_strip.rs

safe-a297bdc5 = Safe?

### app/bench/screen.rs

card-0855387f = Card
begin-this-job-anew-2af39090 = Begin this job anew
what-was-done-so-far-is-laid-ca7585ae = What was done so far is laid aside: you come to the door once more.
begin-anew-5cd20a8d = Begin anew
pictures-0d70feae = Pictures
you-are-still-at-the-workshop-73e45f5d = You are still at the workshop.{" "}
telephone-and-van-1cfb6ecb = Telephone and van
back-to-the-job-as-you-finished-368f5a65 = Back to the job as you finished it
this-job-is-open-in-another-tab-07ea4fe1 = This job is open in another tab
you-can-look-here-nothing-you-do-8cd9dafc = You can look here; nothing you do in this tab is saved.
work-in-this-tab-cb3fa592 = Work in this tab
side-1-8a59d528 = side-1
side-0-8b59d6bb = side-0

### app/bench/selection_bar.rs

in-hand-35557bdf = In hand
touch-a-part-of-the-machine-the-ad31efbd = Touch a part of the machine, the tap or the plug to see what can be done with it.
let-go-f998886c = Let go
let-go-4029d5cc = let go

### app/bench/suspects.rs

suspects-edcd4227 = Suspects
add-a-suspect-fe9882ee = Add a suspect
choose-a-cause-c5214810 = choose a cause …
struck-out-ecebbeb0 = {" "}(struck out)
bring-back-d3a64fde = Bring back
strike-out-7b6097f7 = Strike out
bring-back-a06663be = bring back
strike-out-3aeb38d7 = strike out

### app/bench/tests_list.rs

tests-after-the-repair-fc8f9de4 = Tests after the repair
in-this-order-after-the-last-e5d97be8 = In this order, after the last change to the machine. A later change makes them open again.

### app/bench/time_bar.rs

clock-bb5f80fd = Clock
waiting-until-958504d0 = waiting until
wait-until-0b643398 = wait until

### app/bench/visit.rs

the-visit-f9bcdb57 = The visit
at-the-customer-s-with-the-first-6f316291 = At the customer's: with the first of these, or the first touch of the machine, you have driven there.
see-the-report-a1ba93cf = See the report
before-you-drive-on-the-phone-cdb4c2d5 = Before you drive: on the phone
asked-on-the-phone-41fc6a57 = Asked on the phone
the-van-is-full-take-one-out-to-89166b23 = The van is full: take one out to make room for another.
hang-on-a-label-do-not-use-77951b5b = Hang on a label “do not use”

### app/cohort/desk.rs

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
past-their-time-a-table-8ec36cd9 = Past their time, a table
person-c36eeba0 = Person
assessment-7f464e4f = Assessment
to-be-erased-since-b71a2b5f = To be erased since
records-593ef94d = Records

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
difficulty-8520a210 = Difficulty
tells-people-apart-939f5f04 = Tells people apart
fit-116f13cc = Fit
on-site-7777eb8b = On site
cost-68887f58 = Cost
people-at-this-job-a-table-f1f23289 = People at this job, a table
marks-ab70bac9 = Marks
score-77eb0235 = Score
ended-ec2b41db = Ended
target-time-3a72ba31 = Target time
target-cost-af52e51d = Target cost
safety-b04d1727 = Safety
step-by-step-92ec0206 = Step by step
replay-ff9139f2 = Replay

### app/cohort/jobs.rs

with-fewer-than-ten-people-no-4a2f660a = With fewer than ten people no number is given for a job: it would be noise.
jobs-a-table-d8bd0b7c = Jobs, a table
job-42d9307c = Job
mean-score-0-to-3-78733dda = Mean score, 0 to 3
time-to-target-d89aa142 = Time to target
cost-to-target-3ac1de36 = Cost to target
void-c8e3517f = Void
void-48b5725f = void
look-at-it-0ea4c04e = : look at it
abilities-of-people-and-bb744d82 = Abilities of people and difficulties of jobs on one scale; the same numbers stand in the tables

### app/cohort/kept_rulings.rs

rulings-made-earlier-bb14b7be = Rulings made earlier
they-are-not-in-force-for-what-bf737369 = {"."} They are not in force for what is dropped here now.
put-them-in-force-d73d5a00 = Put them in force
forget-them-12b24b6e = Forget them
rulings-not-kept-5a128060 = Rulings not kept
the-last-change-was-not-kept-c1e6b3f4 = {" "}The last change was not kept.
save-the-rulings-as-a-file-8efdd8ca = Save the rulings as a file

### app/cohort/marks_picture.rs

marks-of-100-a-dot-for-each-068c7b45 = Marks of 100, a dot for each person. The numbers are in the table.
marks-of-all-people-on-one-line-b6420ed9 = Marks of all people on one line; the same numbers stand in the table

### app/cohort/others.rs

no-safety-rule-was-broken-2f3ea64a = No safety rule was broken.
safety-a-table-18bd4546 = Safety, a table
rule-7c5a8cf3 = Rule
how-grave-0e5cf784 = How grave
times-ec53a755 = Times
bar-dbbc7dba = Bar
no-fault-was-taken-for-another-8793faa6 = No fault was taken for another.
faults-taken-for-others-a-table-298476ce = Faults taken for others, a table
was-wrong-728021cb = Was wrong
was-stated-aac7487d = Was stated
rows-with-a-gap-3776a0f3 = Rows with a gap
rows-that-are-not-whole-2af5ff29 = Rows that are not whole
every-record-is-accepted-as-far-09bc41d4 = Every record is accepted as far as it was looked at.
not-accepted-a-table-5f08031e = Not accepted, a table
record-9f4565ec = Record
first-difference-f02bd10c = First difference
as-written-b6ecf6b2 = As written
read-4f0befe5 = Read

### app/cohort/pauses.rs

pauses-a-table-6b7ecb11 = Pauses, a table
from-by-their-clock-1dd326c2 = From, by their clock
to-41f59644 = To
minutes-36d9968e = Minutes
codes-758add25 = Codes
this-time-did-not-count-compare-ef3251b7 = This time did not count. Compare it with the pauses you called: a pause that only one person had was not the room’s.

### app/cohort/people.rs

ascending-a0bf18a1 = ascending
none-ada7afdb = none
people-and-skills-a-table-24b50bf2 = People and skills, a table
decision-be93ff03 = Decision
put-right-1cc4be18 = Put right
unusual-3c21b144 = , unusual

### app/cohort/person.rs

print-this-person-7f0c05b1 = Print this person
override-the-decision-303539bc = Override the decision
by-47554eae = {" "}by{" "}
ability-ff93d931 = Ability
pattern-f49120c9 = Pattern
unusual-right-on-hard-jobs-and-ba283ef4 = unusual: right on hard jobs and wrong on easy ones; look at the records
skills-ab6a56bf = Skills
records-a-table-eabd42ec = Records, a table
began-by-their-clock-06f21209 = Began, by their clock
page-left-5db7430f = Page left
checked-51ba2a66 = Checked

### app/cohort/received.rs

running-it-again-46c86b2d = Running it again …
a-result-from-a-code-5701eb7f = A result, from a code

### app/cohort/rulings.rs

of-which-assessment-3d8b9381 = Of which assessment
of-c7c64678 = Of{" "}
alone-02e0845c = {" "}alone.
what-holds-ea4ebb89 = What holds
who-rules-8b930858 = Who rules
why-7b8038d9 = Why
it-holds-from-now-on-0223bdf3 = It holds from now on
not-after-all-b64ebe87 = Not after all
field-error-1aa27ae1 = field__error
field-hint-17ba07e8 = field__hint
it-holds-save-as-a-file-ab8f93f3 = It holds; save as a file
throw-away-c2487923 = throw away
rulings-typed-by-half-53e9a69f = Rulings typed by half
typed-by-half-and-not-in-force-159956c5 = Typed by half and not in force. Open the form again to go on: on the person’s page, or beside the job.
nothing-was-ruled-a-job-is-fd17f4ab = Nothing was ruled. A job is voided from the table of jobs, a decision overridden on the person’s page; each stands with name, day and reason, and the records stay as they are.
take-back-4fbb31e1 = take back
rulings-a-table-d1340d34 = Rulings, a table
about-58e096de = About
holds-ffe19c31 = Holds
by-53ddadb4 = By
day-4954229d = Day
take-back-0650c681 = Take back

### app/cohort/shown.rs

working-out-the-cohort-7feb9ef2 = {" "}Working out the cohort …
checking-d47a32d1 = Checking
stop-4b7f7705 = Stop
nothing-yet-assessments-made-in-d163f733 = Nothing yet. Assessments made in this browser are known here with their keys; for others, drop the assessment’s file and its key too.
no-record-counts-yet-b02942a3 = No record counts yet.
no-record-counts-none-was-06bc31e9 = No record counts: none was accepted. Where a sealed result is of an assessment that is not known here, drop the assessment’s file, and its key.
print-e8320d28 = Print
the-file-of-rulings-takes-them-2ffb8818 = The file of rulings takes them to another browser: drop it there with the results.

### app/cohort/skill_page.rs

to-the-person-fab856c8 = To the person
print-this-page-a91aed7f = Print this page
no-record-counts-to-it-any-more-b680c814 = No record counts to it any more.
jobs-behind-the-skill-a-table-8f0952fc = Jobs behind the skill, a table
shows-it-587660da = Shows it
yes-4e9f3590 = yes
not-yet-6d9d33dc = not yet

### app/cohort/written.rs

print-this-record-b1a95cd1 = Print this record
as-written-31be2028 = As written:{" "}
result-as-it-was-sealed-a62dcb88 = Result, as it was sealed
what-was-done-and-what-was-shown-44827983 = What was done, and what was shown
candidate-f29830fa = Candidate
written-by-da5f8fed = Written by
seal-d87ca2c0 = Seal
link-begins-with-de7a78af = Link begins with
this-version-does-not-know-a-989164cf = This version does not know a result of this kind; its fields stand here as they are in the file.
parts-2cb28fc5 = Parts
cause-stated-12d81983 = Cause stated
what-was-done-a-table-8054cb45 = What was done, a table
step-4771f92f = Step
when-021e3a39 = When
what-was-done-ec613d56 = What was done
what-was-shown-db4068e7 = What was shown
safety-rule-broken-435128ec = Safety rule broken

### app/debrief/expert.rs

beside-the-expert-083d6d60 = Beside the expert
the-expert-is-a-program-that-aeb618e1 = The expert is a program that knew no more at the door than you and decided by what each step showed. It can be slower than a skilled person; the target is what one needs.
the-expert-is-working-the-job-266bf981 = The expert is working the job; this takes some seconds.
let-the-expert-work-it-7cb49db5 = Let the expert work it
min-c98f4557 = min
act-2d4a458b = act
cost-e85c3338 = cost

### app/debrief/likely.rs

what-your-notes-pointed-at-c7afcda1 = What your notes pointed at
as-a-table-ac51cfba = As a table
likely-causes-after-each-step-a8f3af64 = Likely causes after each step
after-step-802e5ac9 = After step

### app/debrief/marks.rs

nothing-to-remark-48aa4a61 = Nothing to remark.

### app/debrief/moments.rs

where-somebody-could-have-been-d981d7f0 = Where somebody could have been hurt, or something damaged

### app/debrief/screen.rs

this-job-is-not-over-yet-3c565399 = This job is not over yet
the-debrief-is-opened-when-the-96ed5087 = The debrief is opened when the machine is handed over, or made safe and left.
back-to-the-bench-cea3437e = Back to the bench
this-job-cannot-be-explained-f78f4ca8 = This job cannot be explained
the-machine-as-it-was-322ae90d = The machine as it was
likely-then-17dce14c = Likely then
try-again-from-before-this-step-25cb0773 = Try again from before this step
as-practice-that-does-not-count-f8d7c096 = {" "}As practice that does not count; this debrief stays.
working-out-what-your-notes-d8077b74 = Working out what your notes pointed at{" "}
to-practise-next-fa84ea4e = To practise next
no-decision-cost-more-than-it-83dfa02a = No decision cost more than it had to.
do-it-again-a2a59d29 = Do it again
next-job-3d6d361b = Next job
what-was-wrong-eb34a0b3 = What was wrong
you-said-94fd2601 = You said
how-it-showed-bdd77402 = How it showed
looking-back-8f3afcad = Looking back
how-the-machine-was-left-6a8c0bfb = How the machine was left
steps-d46b8bd4 = Steps
safety-51123d09 = {" "}safety

### app/debrief/step.rs

this-step-4627bb71 = This step
a-sound-machine-eb483110 = A sound machine:{" "}

### app/desk/apprentices.rs

watch-one-57c9be6c = Watch one
how-apprentices-fare-8fa1847f = How apprentices fare
who-2af42a8f = who
right-78e32de5 = right
safety-6a399d07 = safety
watch-5fb7b228 = watch

### app/desk/fair.rs

fair-00535833 = fair
unfair-a4572da0 = unfair
take-this-as-the-target-fc78c0ca = Take this as the target
the-expert-s-way-b17c7b89 = The expert's way

### app/desk/faults.rs

add-a-fault-dcfbd11f = Add a fault
choose-what-is-wrong-8315da93 = choose what is wrong
take-out-6de35316 = Take out
as-it-usually-comes-on-71a17a1f = as it usually comes on

### app/desk/home.rs

desk-f1e2a3d8 = Desk
make-a-job-of-a-story-from-the-09df169f = Make a job of a story from the field: choose what is wrong, see how the machine then behaves, try it, and give it to a class as a link or a file.
write-a-new-job-e6f49942 = Write a new job
or-begin-with-one-that-ships-94260473 = Or begin with one that ships
choose-a-job-843cbba0 = choose a job
make-a-training-set-27c04e46 = Make a training set
readings-and-faults-what-each-eba28ccd = Readings and faults: what each reading tells apart
drafts-7ca3788d = Drafts
none-yet-a-draft-is-kept-in-this-ea7b2579 = None yet. A draft is kept in this browser from its first letter on.
forget-6e3fab8c = Forget

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
computed-the-program-as-it-bfb3d09a = Computed: the program as it starts, with this load at this place, beside a sound machine.
nothing-in-a-whole-program-5801a789 = Nothing in a whole program differs from a sound machine.
what-its-customer-would-say-77e127c9 = What its customer would say
use-as-the-complaint-5ab868fa = Use as the complaint

### app/desk/pairs.rs

add-the-pair-adbe0b19 = Add the pair

### app/desk/qr.rs

this-is-too-long-for-a-code-give-49a2371c = This is too long for a code: give the link or the file.

### app/desk/screen.rs

to-all-drafts-3dd2515d = To all drafts
undo-71fd4acf = Undo
redo-7412e5e9 = Redo
try-it-adc589d7 = Try it
all-drafts-af7f3f04 = All drafts

### app/desk/set_maker.rs

training-set-5b1d9cb3 = Training set
jobs-in-the-order-in-which-a-a8f23230 = Jobs in the order in which a class works them. The next one opens when the one before is mastered.
give-it-to-a-class-62f42d3d = Give it to a class
give-the-set-a-title-and-add-its-b3d4365d = Give the set a title and add its jobs; its files are made here as soon as they are sound.
to-the-desk-2530b670 = To the desk
add-a-job-8264b97c = Add a job
your-drafts-5f15d2fa = Your drafts
earlier-c50cd8bb = Earlier
later-f7f62b49 = Later
a-class-opens-the-file-on-its-b719ebaf = A class opens the file on its list of jobs. In the file for trainees, jobs of your own are covered, so that nobody reads what is wrong in passing; jobs that ship are named only.
set-for-trainees-ff3c241d = Set for trainees
set-with-the-answers-649d9a19 = Set with the answers

### app/desk/share.rs

the-whole-job-is-in-the-address-6dbdea3b = The whole job is in the address: it works offline, wherever this page is open. What is wrong with the machine cannot be read from it at a glance.
copy-the-link-2d0237b1 = Copy the link
code-for-a-classroom-screen-2fc44ebd = Code for a classroom screen
what-this-protects-and-what-not-5baa24e5 = What this protects and what not

### app/desk/van.rs

others-come-from-the-store-on-a-b40c9541 = Others come from the store on a second visit.

### app/desk/visit_lists.rs

empty-what-is-said-at-the-door-5a345315 = Empty: what is said at the door.
it-has-every-part-today-unless-05eb3dcb = It has every part today unless it stands here.
not-in-the-store-today-c1e9f9d2 = Not in the store today
choose-a-part-9dd5aba0 = choose a part

### app/faults/list.rs

faults-07be8a04 = Faults
what-each-fault-changes-what-a-e4b94e53 = What each fault changes, what a customer would say, and which readings differ most from a sound machine. The figures are computed when a page is opened.
narrow-the-list-e80383b5 = Narrow the list{" "}

### app/faults/mod.rs

the-machines-that-ship-cannot-be-2390e971 = The machines that ship cannot be read.
no-such-machine-ac3c13ac = No such machine
to-the-list-of-faults-b05e2abf = To the list of faults
this-machine-cannot-have-that-036535f4 = This machine cannot have that fault

### app/faults/page.rs

how-parts-are-tested-and-reached-d8964fa5 = How parts are tested and reached
what-a-customer-would-say-f2b3d23a = What a customer would say
what-changes-dd3443f2 = What changes
readings-that-differ-most-1d3cd1d2 = Readings that differ most
a-wash-with-it-a7729472 = A wash with it
the-wiring-cannot-be-solved-with-eee8660b = The wiring cannot be solved with this fault.
no-electrical-reading-tells-it-a494dba0 = No electrical reading tells it from a sound machine.
reading-5ee7339b = Reading
while-9caf4e6e = While
sound-b3ca9a34 = Sound
with-the-fault-a6379de6 = With the fault

### app/faults/wash.rs

two-washes-are-being-run-one-5aa14234 = Two washes are being run, one with the fault and one without.
a-whole-wash-goes-as-in-a-sound-a7c6d7c0 = A whole wash goes as in a sound machine.
in-a-normal-wash-of-4-kg-5fb5471a = In a normal wash of 4 kg

### app/finding.rs

fault-found-44938b77 = Fault found
state-it-and-hand-over-0c7a4b37 = State it and hand over
make-safe-and-leave-72beacce = Make safe and leave
a-look-round-everything-is-back-9d9a8b6b = A look round: everything is back in its place.
a-look-round-5b63f253 = A look round
a-look-round-before-you-leave-a56b384e = A look round before you leave
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

### app/handbook/live_machine.rs

moment-of-the-program-b381cf21 = Moment of the program

### app/handbook/parts.rs

from-the-machine-s-own-file-what-bff2eb69 = From the machine's own file: what the bench lets you do is what stands here. Ranges under “Test” are its data sheet's.{" "}
what-each-reading-tells-apart-7aa95ba2 = What each reading tells apart
test-2ffcbe05 = Test

### app/handbook/worked.rs

this-job-cannot-be-replayed-a9a7679e = This job cannot be replayed.
back-c2954bc2 = Back
next-step-ab2acdfa = Next step
the-machine-after-this-step-6ab02895 = The machine after this step
work-it-yourself-6ea36796 = Work it yourself

### app/handbook.rs

parts-of-machine-p-730ebba7 = Parts of machine P
parts-of-machine-t-6f0eb55b = Parts of machine T
parts-of-machine-n-590e92b9 = Parts of machine N
worked-job-title-818c05f0 = Worked job: { $title }
chapters-fae19813 = Chapters
readings-and-faults-d80e6302 = Readings and faults

### app/job_filter.rs

find-a-job-9844c5fe = Find a job
find-3e1cd17a = Find
all-13254bc4 = all

### app/job_host.rs

bench-346ad459 = Bench
opening-the-job-96ce043b = Opening the job …

### app/jobs.rs

customers-who-have-called-each-67614d33 = Customers who have called. Each machine behaves as a real one would: what you measure is computed.
no-job-fits-all-of-that-f6d2b894 = No job fits all of that.
show-all-jobs-e3c77995 = Show all jobs
this-is-training-local-codes-and-396f8041 = This is training. Local codes and licensed practice come first; never open a real machine on the strength of a simulation alone.

### app/loading.rs

this-job-cannot-be-opened-5775793b = This job cannot be opened
to-the-jobs-b4278405 = To the jobs

### app/lost_points/mod.rs

where-points-were-lost-6c725ec2 = Where points were lost
diagnosis-economy-and-evidence-64b072c7 = Diagnosis, economy and evidence count by what each decision was worth, which this browser could not work out again: their reasons are missing here.
run-again-here-its-marks-do-not-f1071219 = Run again here, its marks do not come out as they stand: no reason can be given.
nothing-was-lost-482adb9f = Nothing was lost.
part-e3596034 = Part
points-a9f0a4e6 = Points

### app/me/screen.rs

me-67e00bc7 = Me
what-your-finished-jobs-show-all-167fb56f = What your finished jobs show. All of it is kept in this browser only; nobody else sees it.
nothing-yet-when-a-job-is-79748cb3 = Nothing yet. When a job is finished, this page shows what it told of your skills.
next-dce2da08 = Next
a-skill-counts-as-known-from-a-718a7844 = A skill counts as known from a chance of 95 %, the line in each bar. The paler band says how far the chance could be off; it narrows with every job.
jobs-done-70e598b3 = Jobs done
every-skill-you-have-shown-is-ef766b00 = Every skill you have shown is known and none is due. Any job you like.
safety-rules-a-table-cfde88ef = Safety rules, a table
last-e40e2439 = Last
jobs-done-a-table-ddfe065a = Jobs done, a table
save-these-days-for-my-calendar-2068796d = Save these days for my calendar
everything-of-yours-932b2cb9 = Everything of yours
jobs-drafts-marks-and-settings-a08b1183 = Jobs, drafts, marks and settings in one file: to take to another device, or to keep.
save-everything-127185c9 = Save everything
yes-erase-everything-84564f7b = Yes, erase everything
erase-everything-fe294832 = Erase everything

### app/me/skills.rs

skills-a-table-65930a0e = Skills, a table
how-well-you-know-it-6fb50830 = How well you know it
went-right-57d85c61 = Went right
show-it-again-by-85f3cf9e = Show it again by

### app/newer.rs

a-newer-build-of-this-page-is-1cdae62e = A newer build of this page is ready. Your jobs stay as they are.
use-it-now-04406f7d = Use it now

### app/open_job.rs

this-link-holds-no-job-that-can-a3082f9c = This link holds no job that can be opened
a-job-for-you-1d8ee97b = A job for you
start-this-job-c2b69182 = Start this job
keep-it-for-later-59532040 = Keep it for later

### app/opened.rs

from-your-instructor-244eec4f = From your instructor
sit-an-assessment-3890ba80 = Sit an assessment

### app/outbox/section.rs

a-store-for-results-f77ea43c = A store for results
where-a-department-keeps-f1ac778f = Where a department keeps learning records (xAPI), results of assessments can go there by themselves. They wait here until the store has taken them. Without an address nothing leaves this browser.
keep-555cbe68 = Keep
send-now-24c5991f = Send now
forget-the-store-719e911e = Forget the store
version-of-the-interface-a4cc2814 = Version of the interface
choose-one-only-where-the-store-ec7bdc0a = Choose one only where the store does not say which it speaks and refuses everything.

### app/proves.rs

what-this-result-shows-fa2ae5f8 = What this result shows
finding-faults-the-order-of-work-adadab5c = Finding faults, the order of work, and decisions about safety. It does not show hands: for that there is the practical before a witness, with the observer’s sheet.

### app/readings.rs

every-fault-a-machine-can-have-3230fbdd = Every fault a machine can have against the readings of its data sheet and the figures of a whole program. What a technician would notice is marked ●; what is not marked looks like a sound machine there.
the-table-of-this-machine-cannot-25d6501d = The table of this machine cannot be computed.
save-as-csv-b30635b0 = Save as CSV
faults-against-readings-fdac3068 = Faults against readings
what-is-wrong-95353e48 = What is wrong
descending-7693d73b = descending

### app/report.rs

report-4681fa0b = Report
signature-of-the-customer-c0238a89 = Signature of the customer:{" "}
from-a-simulated-machine-for-bc193b34 = From a simulated machine, for training.
measured-69a8be81 = Measured
what-0815494f = What
bill-24a8cf3c = Bill

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
the-browser-did-not-let-the-page-68a3a1b6 = The browser did not let the page erase everything.
all-jobs-are-erased-0ba72486 = All jobs are erased.

### app/sheets.rs

sheets-to-print-9c686f7d = Sheets to print
which-sheets-e2f02066 = Which sheets
a-simulated-job-for-training-46e6e78c = A simulated job, for training.

### app/shell.rs

to-the-content-394b43aa = To the content
debrief-6692941a = Debrief
handbook-b94a65c5 = Handbook
there-is-nothing-at-this-address-b42878d1 = There is nothing at this address
tubwright-37232af5 = Tubwright
screens-984019e6 = Screens

### app/sitting/lock.rs

to-the-assessment-44e0e277 = To the assessment

### app/sitting/mark_sheet.rs

mark-sheet-a7391383 = Mark sheet
mark-sheet-a-table-7e75496a = Mark sheet, a table

### app/sitting/observer.rs

for-a-practical-on-a-real-4b38e8bb = For a practical on a real machine, before a witness. The simulation tells of finding faults, order of work and decisions about safety; this sheet tells of hands.
seen-da72188a = Seen
with-help-1090bd08 = with help
no-62366ffa = no
note-919a0c3d = note
a-step-that-endangers-anybody-ac1dfee5 = A step that endangers anybody ends the practical: stop, make safe, write it down.

### app/sitting/overview.rs

no-assessment-is-running-6475eef3 = No assessment is running
open-one-49afee59 = Open one
this-assessment-is-open-in-cd4f6448 = This assessment is open in another tab
it-goes-on-there-with-its-clock-2d9ff623 = It goes on there, with its clock: work and hand in there. Nothing that is done here counts, and this tab hands nothing in.
to-go-on-here-instead-close-the-846614f0 = To go on here instead, close the other tab, then load this page again. Nothing is lost.
load-this-page-again-8b449af6 = Load this page again
the-clock-stands-1bc9f1af = , the clock stands
go-on-the-clock-starts-again-bfa9f424 = Go on: the clock starts again
stop-the-clock-e19ac980 = Stop the clock
not-yet-458dd27c = Not yet
hand-in-206f3f5f = Hand in
button-main-80d59efa = button--main
button-danger-b2892858 = button--danger
a-job-that-is-not-handed-over-9d0a1869 = A job that is not handed over counts as it stands; one that was never opened counts as 0.
handing-in-working-out-what-your-5d80fa6b = Handing in: working out what your decisions were worth. Leave this page open.{" "}

### app/sitting/result.rs

sealed-with-the-start-code-3e7be798 = {" "}· sealed with the start code
told-to-your-training-system-not-08915a2a = {" "}· told to your training system; not sealed with a start code
practice-not-sealed-proves-f6f8552e = {" "}· practice: not sealed, proves nothing to others
receipt-1b9120e3 = Receipt
back-to-the-course-05831de5 = Back to the course
print-this-sheet-f6a770b7 = Print this sheet
yes-the-file-is-handed-over-750f2786 = Yes, the file is handed over: clear
clear-for-the-next-candidate-fc11d8d6 = Clear for the next candidate
as-qr-codes-to-be-read-with-a-05d50a16 = As QR codes, to be read with a telephone at the same server

### app/sitting/room_pause.rs

pause-code-221397d6 = Pause code
stop-the-clock-for-the-room-b683a587 = Stop the clock for the room
the-room-pauses-the-clock-stands-4c375972 = The room pauses: the clock stands
nothing-can-be-done-at-the-jobs-6f77ce97 = Nothing can be done at the jobs meanwhile, and the time does not count. Type the code that your instructor reads out to go on.
pause-of-the-whole-room-8c8a302d = Pause of the whole room
when-your-instructor-reads-out-a-0442c468 = When your instructor reads out a pause code, type it here. The clock stands until you type the next one.

### app/sitting/start.rs

open-the-file-or-the-link-that-62e5a1d5 = Open the file or the link that your instructor gave you.
the-rules-9abb76fb = The rules
this-computer-fa0d176a = This computer
who-sits-it-ab9aa5d9 = Who sits it
you-have-a-slip-with-a-start-c044b6f1 = You have a slip with a start code
from-your-slip-fc518f22 = From your slip
i-know-what-is-recorded-10490fe5 = I know what is recorded: everything I do at the bench with its time, and when this page is left. It stays in this browser until I hand the file over or erase it.
begin-the-clock-starts-2829212a = Begin: the clock starts
begin-as-practice-c4fbf2df = Begin as practice

### app/training_set.rs

forget-this-set-e76dc550 = Forget this set

### app/training_system/awaiting.rs

waiting-for-the-training-system-04613867 = Waiting for the training system
ask-again-13a6f1ce = Ask again
go-on-without-it-46b6dc7d = Go on without it

### app/training_system/cmi5_statement.rs

passed-513cb799 = passed
failed-e0accfb4 = failed

### app/training_system/fields.rs

safe-ad27ee58 = safe
not-safe-719d4feb = not safe
correct-15e39af1 = correct
wrong-e7252e76 = wrong
incorrect-32822f6c = incorrect

### app/view/debrief.rs

for-now-a5aed60e = {" "}for now
reached-564dd9f9 = reached
not-reached-5ea156cc = not reached

### app/view/visit.rs

gloves-on-8110ad20 = gloves on
gloves-off-a354987a = gloves off

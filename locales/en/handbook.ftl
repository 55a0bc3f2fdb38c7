### after.md

after-any-work-inside-the-e5fe7190 = After any work inside the machine, before it runs for the customer, in this order. Each test has a limit; each is written down with its number.
how-644e442d = How
limit-d8964ad4 = Limit
look-69960bb6 = Look
plug-cord-covers-screws-no-wire-b3741013 = plug, cord, covers, screws; no wire under an edge
protective-conductor-b086288f = Protective conductor
plug-out-earth-pin-to-the-7f4d1737 = plug out: earth pin to the cabinet and to the motor's frame, the cord moved meanwhile
t-0-3-at-most-cord-to-5-m-bde07e06 = 0.3 Ω at most, cord to 5 m
insulation-cd4c734f = Insulation
plug-out-the-switch-pressed-in-c58c8779 = plug out, the switch pressed in or the timer knob pulled, where there is one: line and neutral together to earth, 500 V
leakage-91242ab1 = Leakage
plug-in-running-leakage-clamp-b2c1846f = plug in, running: leakage clamp round line and neutral, in each state
touch-current-78af020d = Touch current
plug-in-running-metal-a-hand-078dbab3 = plug in, running: metal a hand reaches, through 2 kΩ to earth
run-8d57e66a = Run
fill-wash-both-ways-drain-spin-d917b301 = fill, wash both ways, drain, spin to full speed
lid-92d75426 = Lid
opened-at-full-spin-389ac84e = opened at full spin
stands-within-7-s-50811ee3 = stands within 7 s
leaks-205ecc67 = Leaks
filled-drained-then-under-the-0bb5184b = filled, drained, then under the machine with a dry cloth
the-first-five-follow-en-50678-6f9aac39 = The first five follow EN 50678 and EN 50699, quoted from memory: check the edition in force where you work, and who may sign for it there. The lid's time is from memory, the others are common practice.
a-failed-test-is-a-finding-the-b818a86c = A failed test is a finding. The machine does not go back into use until it is mended; if it cannot be, it stays unplugged and labelled, and the customer has it in writing.
what-each-can-miss-7f2098d6 = What each can miss
bond-to-a-painted-screw-reads-9772d707 = Bond to a painted screw reads open; to a second way to earth, such as a pipe, it reads good with the wire off.
insulation-stops-at-open-e1f02e8b = Insulation stops at open contacts: what lies behind a relay, a triac or a timer contact shows in leakage while it runs.
leakage-in-one-direction-of-the-e6eb844f = Leakage in one direction of the motor only: measure both, and the drain, and the spin.
a-joint-dry-after-a-minute-may-502077ca = A joint dry after a minute may weep after five. Sealant needs its time before water means anything.
count-your-screws-count-your-5347d99e = Count your screws, count your tools. Feel that the earth wire is back on its post: it shows in no function of the machine. Air hose free under the top cover, lever in its link, motor leads clear of the belt, wedges out, feet level. The check for each thing is on the pages of the parts: [P](#/handbook/parts_p), [T](#/handbook/parts_t), [N](#/handbook/parts_n).
then-show-the-customer-the-run-d6983560 = Then show the customer: the run, the old part, the numbers, and what keeps it from coming back.

### assess.md

an-assessment-is-a-file-which-a388032a = An assessment is a file: which skills at which level, how many jobs, how long, what may be used, what passes. It is made [here](#/assessments), and everybody gets the same file. The jobs are drawn for each candidate from their number and the word for today, so that answers cannot be passed on: other values, other customers, other faults of the same difficulty.
before-make-the-assessment-and-ac4b3000 = {"*"}*Before.** Make the assessment and type the candidates' numbers. Each gets a slip with a start code and four letters beside it. Extra time is in those letters; only the clock on the candidate's screen has it in it. Save the key where only you can open it.
at-the-start-candidates-open-the-c71fc98d = {"*"}*At the start.** Candidates open the file or the link, type what is on their slip, and wait for the word for today. Only an invigilated room makes a result of it; at home the same file is practice.
during-no-hints-no-likely-causes-d49fbf8f = {"*"}*During.** No hints, no likely causes, nothing about right or wrong. Every act is kept at once: a reload, a dead battery or another browser window loses nothing. Time runs on while the page is closed, unless stopping the clock is allowed. Leaving the page is noted with its time; it is a note, not a verdict.
a-pause-for-the-whole-room-a-new-e7e537db = {"*"}*A pause for the whole room.** A new assessment has ten pairs of pause codes, made from its key; they are shown beside the form, not on a screen that candidates see. Read out the first code of a pair: each candidate types it under *Pause of the whole room* on the page of the assessment, and the clock stands and the jobs are shut until the second code of the pair, or a later one, is typed. Time paused does not count, also over a reload. A code is good once, so cross it off, whatever group it was read to; who missed one goes on with the next. Every pause stands in the result with its time and its codes, and on the person's page when you review. What this does not prevent: a candidate who types late has a shorter pause, and who types the second code late a longer one; who was told a code before can stop the clock with it once; and whoever changes the page or the clock of the computer needs no code. That is why you see each pause: one that only one person had was not the room's. Codes are not for one person's needs: give extra time on the slip.
after-the-candidate-hands-in-and-6cb973b3 = {"*"}*After.** The candidate hands in and saves one file, or shows the codes. You drop all files on [Results](#/cohort): seals are checked at once, then every job is run again and compared line by line, and a missing record in a row is found. The result says how sure it is, and where each point was lost. Near the cut, more jobs decide.
appeals-replay-the-work-step-by-9ef3bf5b = {"*"}*Appeals.** Replay the work step by step. A faulty job is voided for everybody and all are worked out anew: it is asked of nobody any more, whether they opened it or not, so it counts neither in the marks nor in the number of jobs nor in what a pass asks for; a decision is overridden with name, day and reason. The records stay as they are. A ruling belongs to one assessment: with results of another it is listed as not applied. Files of rulings from earlier versions name none, and hold in any. What is typed by half stays when you look at somebody else or load the page again; it ends with the tab. Rulings are kept in this browser, each by itself, so two tabs never write over each other: what one rules, the other is offered. Taken back in one tab, a ruling still stands in another that has it in force. Where the browser keeps nothing or has no room, the form says so and saves a file instead.
how-long-results-are-kept-say-in-7e5a3619 = {"*"}*How long results are kept.** Say in the form after how many months results are to be erased. Candidates read it before they begin, and it travels with the file. On [Results](#/cohort), *Erase* tells whose results are past that day, counted from the day they began by the candidate's clock, and erases them, or everything of one person. Of an erased record only hashes stay: no log, marks, number or name, so the records around it can still be checked. Rulings kept here about somebody of whom nothing is left go, too. A page cannot delete files: save what is left, then delete the files it came from and their copies, and files of rulings that name the person. Whoever knows a number, the assessment and the word for today can still tell that the first erased record of a row was that person's; delete it whole where that matters, if nothing of the row is needed any more.
a-room-without-internet-make-d510e4da = {"*"}*A room without internet.** `make room` serves the page from a laptop to the local network. Browsers withhold their cryptography and their offline store there, so sealing is done by the page itself and nothing is missing. Results come back as files or as codes read by a telephone on the same network.
in-a-training-system-beside-the-d102b318 = {"*"}*In a training system.** Beside the file, the assessment can be saved as a course package for SCORM 1.2, SCORM 2004 4th edition or cmi5. What the system is then told, and how results go to a store of learning records without one, is in [Training systems and stores](#/handbook/systems).
a-practical-is-still-needed-the-125e031b = {"*"}*A practical is still needed**: the [observer's sheet](#/observer) is printed for it.

### desk.md

at-the-desk-desk-a-story-from-55ab20df = At the [desk](#/desk) a story from the field becomes a job.
choose-what-is-wrong-one-fault-62afa5f3 = {"*"}*Choose what is wrong.** One fault or several, each with a severity from 0 to 1 and, if you like, an onset: from a time on, by chance, only when hot, only at speed. Things outside the machine and things left wrong by an earlier visit are on the same list.
see-what-the-machine-does-at-the-c80c6295 = {"*"}*See what the machine does.** At the side it runs a whole program, beside a sound machine of the same kind with the same load, and says what differs. Nothing is looked up: if your fault shows nothing there, it shows nothing to the customer either.
write-the-customer-the-complaint-ae600353 = {"*"}*Write the customer.** The complaint can be taken from the machine's behaviour and put in the person's own words. Answers may be wrong. A second answer comes when the question is asked again, differently.
say-what-is-allowed-van-0c2ad8a1 = {"*"}*Say what is allowed**: van, instruments, hints, budget, time, marks.
read-the-fairness-panel-it-works-8a202608 = {"*"}*Read the fairness panel.** It works in the background, a moment after you pause, and again after every change.
try-it-on-the-bench-and-watch-an-7c652a74 = {"*"}*Try it** on the bench, and watch an apprentice try it. Then **share** it.
every-change-can-be-undone-a-8e4c1cca = Every change can be undone. A draft is kept in your browser from its first letter on; nothing is sent anywhere.
checks-stand-beside-their-field-991f1af4 = Checks stand beside their field and, all together, at the side. A job can be tried and shared once none is left.
what-the-panel-says-and-how-it-a23ec86a = What the panel says, and how it knows
what-the-customer-would-notice-97105245 = {"*"}*What the customer would notice**, from a whole program of your machine, and whether the complaint speaks of that. The complaint is heard by its words, so a turn of phrase it does not know is not held against you.
what-shows-each-fault-with-the-2e542495 = {"*"}*What shows each fault** with the instruments you allow. First the readings of the data sheet and the figures of a program; where those say nothing, the machine is run, looked at, listened to and moved by hand.
what-looks-like-it-and-the-one-385ab4e3 = {"*"}*What looks like it**, and the one reading or look that tells the two apart. Where nothing does, it says so and what to change. Two causes that the same work puts right need not be told apart.
van-budget-time-against-the-951e9cbb = {"*"}*Van, budget, time** against the target.
the-expert-s-way-the-built-in-3599f1c8 = {"*"}*The expert's way.** The built-in expert works the job from the bell, knowing no more than the apprentice. Its figures can be taken as the target. It is careful rather than quick; where it fails, a person with a good idea may still do it, so the panel asks for a target that somebody has shown.
apprentices-five-kinds-try-the-602f2948 = {"*"}*Apprentices.** Five kinds try the job: the unsure beginner, one in a hurry, one who changes parts first, one who avoids the meter, one who goes step by step. Five of each are a first impression, no statistics. Safety tells in how many of the five a critical, a major or a minor rule was broken. **Watch one** shows the first of the five as a debrief, step by step; nothing of it is kept.
the-panel-compares-one-fault-at-521c9b1e = The panel compares one fault at a time, and other causes at full severity. It holds no gauge readings (flow, pressure, speed, tension) against each other beyond what a program shows.
languages-0c632e38 = Languages
the-desk-shows-a-file-s-own-ad0a5dc7 = The desk shows a file's own words. A job that ships is translated with the page; yours is shown to everybody as you wrote it, so write it in the language of those who will work it. Customers' words are heard for the fairness panel in English only.
training-sets-2f9dc240 = Training sets
a-training-set-sets-is-an-2d2f4a96 = A [training set](#/sets) is an ordered list of jobs, yours and shipped ones; the next opens when the one before has the marks you ask for. Give the file for trainees to a class: they open it on their list of jobs. `tubwright pack DIR --sealed` makes one of a folder.

### diagnose.md

a-fault-changes-what-a-machine-03108608 = A fault changes what a machine does. Finding it is choosing, again and again, the look or reading that separates most of what is still possible for the least time and risk.
hear-the-complaint-and-ask-what-de6fe848 = {"*"}*Hear** the complaint, and ask what separates: since when, every time, what does it show, who worked on it.
see-it-happen-note-the-last-701987ab = {"*"}*See it happen.** Note the last thing that worked and the first that did not: the cause lies between.
look-before-you-measure-measure-3a14114c = {"*"}*Look before you measure, measure before you open, open before you replace.**
halve-pick-a-point-in-the-middle-7eaadd3c = {"*"}*Halve.** Pick a point in the middle of the chain: is the supply there or not? Each such reading strikes out half of the chain. Nearer to you beats the exact middle: a reading from outside costs one minute, one behind the panel twelve and the way back.
explain-everything-a-cause-that-8ddb12a1 = {"*"}*Explain everything.** A cause that explains two of three findings is not the cause, or not the only one.
prove-it-the-reading-that-fits-6bb097be = {"*"}*Prove it.** The reading that fits the part before it is replaced; the run that works after.
ask-why-it-failed-a-fuse-a-board-bba5d5b0 = {"*"}*Ask why it failed.** A fuse, a board, a belt, a protector has a reason that is still there.
say-what-you-expect-before-you-bd7786d8 = Say what you expect before you measure. A reading that would be the same with either cause is worth nothing, however exact it is.
a-chain-halved-2bc1e829 = A chain, halved
p-drains-and-does-not-spin-whole-b3cdf7ac = P drains and does not spin. Whole chain: lid and lever contacts, board, motor lead, motor with capacitor, belt, gearbox, wire, lever, clutch, brake.
it-washes-both-ways-motor-c7a44bc2 = It washes both ways: motor, capacitor, both leads, board outputs and belt are struck out, without a tool.
it-drains-drain-motor-and-its-81d10935 = It drains: drain motor and its wire pull, at least as far as the valve.
in-the-spin-step-the-motor-3b13f40c = In the spin step the motor whines and the basket stands: the contacts are struck out, for the board did call. What is left lies between wire and clutch.
machine-laid-down-wire-pulled-by-3a3cc810 = Machine laid down, wire pulled by hand, 17 mm, the lever stays where it is: it is out of its link. Four looks, no part.
had-the-motor-stood-still-86d072eb = Had the motor stood still instead: voltage at its plug in the spin direction, then the board's output, then the input that forbids it.
where-to-look-first-f8534d2e = Where to look first
the-customer-says-8bdec87c = The customer says
what-separates-30c62599 = What separates
practise-cc3eacc0 = Practise
no-water-or-slowly-b0ba3afa = no water, or slowly
a-hum-at-the-valve-tap-filter-e9326c03 = a hum at the valve: tap, filter, pressure; silence: volts at its coil; both: the stream at the hose end
no-water-bench-no-water-in-9fde5130 = {"["}no water](#/bench/no_water), [in silence](#/bench/silent_and_dry), [the third valve](#/bench/third_valve_still_slow), [since the drought, T](#/bench/slow_since_the_drought)
fills-does-not-wash-214b6dfc = fills, does not wash
hum-or-no-hum-turns-by-hand-or-187ce937 = hum or no hum; turns by hand or not; motor or only pulsator
hums-and-stands-bench-hums-and-2100f1e1 = {"["}hums and stands](#/bench/hums_and_stands), [ticks](#/bench/hums_quietly_no_wash), [nothing stirs, T](#/bench/clicks_and_stirs_nothing)
one-way-only-or-hot-1a4753bc = one way only, or hot
both-strokes-one-after-the-other-0766fdd2 = both strokes one after the other: volts at the plug, current, windings
growls-one-way-bench-hot-and-eea81bd3 = {"["}growls one way](#/bench/hot_and_stops), [one way, N](#/bench/turns_one_way), [one way, T](#/bench/one_way_only_and_hot)
does-not-empty-5ff34540 = does not empty
whirr-and-pull-or-hum-then-hose-7cad8aab = whirr and pull, or hum; then hose and path
stops-full-bench-stops-full-of-b79e8f7c = {"["}stops full](#/bench/stops_full_of_water), [hums, N](#/bench/hums_and_water_stays), [whirrs, T](#/bench/pulls_and_nothing_opens)
does-not-spin-c081ddef = does not spin
washes-both-ways-motor-running-74912ecd = washes both ways? motor running meanwhile?
drains-no-spin-bench-washes-will-fb426555 = {"["}drains, no spin](#/bench/washes_will_not_spin), [whirls, N](#/bench/whirls_and_does_not_wring), [empties and stops, T](#/bench/empties_and_stops_there)
too-full-never-full-drinks-e4edf906 = too full, never full, drinks
the-count-against-the-mark-on-871dab4f = the count against the mark on the tub, standing still
overflows-bench-overflows-since-e76e01df = {"["}overflows](#/bench/overflows_since_the_repair), [drinks](#/bench/drinks_and_slaps_over), [never full, N](#/bench/fills_and_never_gets_full), [fuller than ever, T](#/bench/fuller_than_ever)
dead-b5df2b27 = dead
socket-cord-fuse-then-06f31de6 = socket, cord, fuse, then transformer or timer contact; one reading at each
dark-panel-bench-dark-panel-4d278d5a = {"["}dark panel](#/bench/dark_panel), [after the storm](#/bench/dead_after_the_storm), [nothing at all, T](#/bench/nothing_at_all), [after a buzz, N](#/bench/dead_after_a_buzz)
walks-bangs-d6354538 = walks, bangs
level-and-load-before-rods-at-2913af77 = level and load before rods; at which speed
walks-bench-walks-and-fills-fb0baad3 = {"["}walks](#/bench/walks_and_fills_again), [like a drum, T](#/bench/bangs_like_a_drum), [pictures, N](#/bench/shakes_the_pictures)
squeals-rumbles-smells-57f40dd3 = squeals, rumbles, smells
in-which-act-gone-with-the-belt-1cdeb5a7 = in which act; gone with the belt off?
squeals-bench-squeals-and-comes-234b5f60 = {"["}squeals](#/bench/squeals_and_comes_out_wet), [new belt, N](#/bench/squeals_after_the_new_belt), [slaps and rubs](#/bench/slaps_and_rubs)
tears-creeps-runs-on-6b17191f = tears, creeps, runs on
with-the-lever-pulled-with-it-f13048fe = with the lever pulled, with it released, each way
creeps-bench-creeps-and-tears-ac967e4e = {"["}creeps](#/bench/creeps_and_tears_sheets), [slow to stop, N](#/bench/takes_its_time_stopping)
tingles-trips-283d0749 = tingles, trips
plug-out-first-earth-of-the-0f967c15 = plug out first; earth of the house, bond, insulation
bites-bench-bites-bare-feet-3de21dea = {"["}bites](#/bench/bites_bare_feet), [prickles, T](#/bench/prickles_in_the_scullery), [drops the breaker, T](#/bench/trips_and_old)
water-below-a83b6425 = water below
dry-it-fill-look-with-a-dry-3e654b4b = dry it, fill, look with a dry cloth where it begins
damp-patch-t-bench-drips-and-7c17dafa = {"["}damp patch, T](#/bench/drips_and_slips), [rust water, N](#/bench/rust_and_rumble)
now-and-then-9fe8c67d = now and then
provoke-it-move-warm-shake-start-39d81ed4 = provoke it: move, warm, shake, start often; a recorder
forgets-bench-forgets-what-it-db3055fa = {"["}forgets](#/bench/forgets_what_it_was_doing), [rests, T](#/bench/rests_after_ten_minutes), [loses heart, N](#/bench/no_heart_after_a_while)
does-not-do-what-it-should-356ca0d4 = does not do what it should
keys-lock-delay-load-detergent-e44d3101 = keys, lock, delay, load, detergent: show, do not repair
keys-bench-keys-do-nothing-later-6c0d55ff = {"["}keys](#/bench/keys_do_nothing), [later, N](#/bench/says_later), [white mountain](#/bench/white_mountain)
what-the-display-s-alarms-mean-363ffaa5 = What the display's alarms mean is with [machine P](#/handbook/machine_p); a [timer](#/handbook/machine_t) has none.
dead-test-or-live-test-2aaea9ac = Dead test or live test
where-a-resistance-settles-the-ab4b57c2 = Where a resistance settles the question, isolate and measure dead. Live volts are for what only a live circuit shows: is the board commanding, does the voltage fall under load. One hand, one lead hooked on, know where you stand.
what-fools-people-944f7469 = What fools people
a-meter-without-load-ghost-volts-256c8e96 = A meter without load: ghost volts. Use the low-impedance mode.
a-part-measured-with-everything-271303c9 = A part measured with everything else in parallel.
a-machine-that-washes-one-way-3b550954 = A machine that washes **one way only**: half the strokes look like washing.
a-lead-that-reads-0-1-ohm-and-21f29cfd = A lead that reads 0.1 ohm and carries nothing: load it, then measure its drop.
a-part-that-was-changed-and-11d1d3f1 = A part that was changed and helped by accident: something was moved on the way to it.
alarms-name-what-the-board-86dfcf63 = Alarms name what the board noticed, not what is broken.
the-last-man-said-motor-words-f3c7a128 = "The last man said motor": words are no reading.
a-house-a-dead-socket-a-missing-ce3e358f = A house: a dead socket, a missing earth, a low tap. The machine is good and the complaint is real.
two-faults-at-once-after-the-527af6be = Two faults at once: after the first is mended, run the whole program before you pack.
when-it-does-not-show-d108154b = When it does not show
nobody-watches-ten-cycles-8d50c66a = Nobody watches ten cycles. Provoke it: move the cord, press the connector, warm the motor, start ten spins of twenty seconds, load it unevenly. A fault that comes and goes with your hand is found. One that does not come: say so, write down what was tried and what is now known to be good, leave advice and a number to call. That is a proper close.
worked-jobs-70bf594b = Worked jobs
step-through-how-a-skilled-675db6bf = Step through how a skilled technician went about them, then work them yourself:
no-water-comes-in-handbook-093008b2 = {"["}No water comes in](#/handbook/worked-no_water), P: look before you measure
it-hums-and-nothing-turns-21451feb = {"["}It hums and nothing turns](#/handbook/worked-hums_and_stands), P: a capacitor, made safe and measured
it-washes-but-will-not-spin-92d4c89a = {"["}It washes but will not spin](#/handbook/worked-washes_will_not_spin), P: one direction is missing
no-spin-since-the-cousin-was-cb745de7 = {"["}No spin since the cousin was here](#/handbook/worked-no_spin_since_cousin), P: the whole job from the door to the signature, no part
it-bites-with-bare-feet-handbook-30979824 = {"["}It bites with bare feet](#/handbook/worked-bites_bare_feet), P: make safe and leave
it-washes-on-and-on-handbook-054fb2ff = {"["}It washes on and on](#/handbook/worked-dial_stands_still), T: reasoning on a timer
it-hums-and-the-water-stays-in-e4f21daa = {"["}It hums and the water stays in](#/handbook/worked-hums_and_water_stays), N: emptying, laying down, a pump
each-ends-with-work-it-yourself-03c41973 = Each ends with "Work it yourself", which opens the job on the bench.
what-each-reading-tells-apart-on-8e69ece7 = What each reading tells apart on a machine is computed: [readings and faults](#/readings).

### job.md

a-customer-has-called-read-the-4280b0bc = A customer has called. Read the job card, ask what you would ask at the door, and look before you touch anything: cord, socket, hose, tap, floor. Customers tell what they saw; it is often right and sometimes not.
let-the-machine-do-what-the-975f6532 = Let the machine do what the customer described, if it is safe: touch the keys of its panel, or the dial and knob of a timer, in the picture from outside. Watch, listen, read its display. The clock at the foot of the bench can run faster, or wait until something changes.
then-make-it-safe-handbook-safe-7734db55 = Then [make it safe](#/handbook/safe), open it, [measure](#/handbook/measure), and reason. Write readings down: the notebook is your evidence. Put causes on the list of suspects, strike out what a reading rules out, and change one thing at a time.
name-a-price-before-you-repair-f4bf823d = Name a price before you repair.
repair-what-you-have-proved-not-e1c8bb74 = Repair what you have proved, not what you suspect.
put-everything-back-and-check-it-e42928c3 = Put everything back and check it as you do: the part behind a cover, or the cabinet, offers the cover, joint or lever that goes back next.
prove-that-the-machine-works-and-62db2a3f = Prove that the machine works and is electrically safe.
state-the-fault-found-tick-the-694fc18c = State the fault found, tick the lines that show it, tell the customer, hand over.
what-surrounds-a-repair-4eb3a720 = What surrounds a repair
on-the-telephone-which-machine-0f84ac85 = {"*"}*On the telephone**: which machine, how far does it get, since when, what does it show, where does it stand. The answers load the van, and a part in the van is a second visit saved.
warranty-date-of-purchase-rating-3a7bf979 = {"*"}*Warranty**: date of purchase, rating plate, misuse; who pays is decided before the work.
estimate-a-price-for-finding-the-65fd278d = {"*"}*Estimate**: a price for finding the cause, a price for the repair, and again when the cause changes. Beside the price of a new machine it may be fair to advise against a repair. Declined is an answer.
a-second-visit-closed-earthed-8db7123b = {"*"}*A second visit**: closed, earthed, unplugged, tap shut, labelled, the customer told when.
refused-work-when-to-stop-e08d20ee = {"*"}*Refused work**: [when to stop](#/handbook/safe).
teaching-one-sentence-that-fits-00e9ad36 = {"*"}*Teaching**: one sentence that fits the cause: detergent, load, filter, level.
on-paper-under-papers-on-the-ad4e4413 = On paper: under *Papers* on the bench, “Print job card and pictures” puts the card, with lines to write on, and each picture of the machine as it stands (outside, opened, section, wiring, water) on a sheet of its own, in shades of grey on white. In an assessment the wiring is among them only where it is allowed.
the-page-speaks-several-b5edea97 = The page speaks several languages: choose yours in the [settings](#/settings). Jobs, readings, marks and this handbook are the same in each; a job that somebody wrote is shown as it was written.
the-debrief-goes-through-the-job-4f094370 = The debrief goes through the job step by step: what each reading told, what it cost, and what was already known.

### limits.md

this-is-a-workshop-for-practice-ea9cf118 = This is a workshop for practice. The machines are computed: voltages, currents, water, belts and heat follow from the physics of the parts, and a fault changes a part, nothing else. What you read is what such a machine would show.
it-trains-finding-faults-the-d7198440 = It trains finding faults, the order of work and decisions about safety. It does not train hands: how much force a clip takes, how a worn bearing feels, how heavy a machine is.
what-is-not-modelled-220ee82a = What is not modelled
water-hammer-beyond-its-peak-c18e6a96 = Water hammer beyond its peak pressure; waves on the water; single textiles and how they tangle (a load is a mass, an absorption and an unbalance); wear during a job; radio interference; the control's processor below its states, inputs and outputs; semiconductor junctions, so that a diode test sees resistances; the burden of a clamp; burns and mechanical injury beyond the rule that was broken; hands.
the-machines-are-nobody-s-their-c8b81f77 = The machines are nobody's. Their values are chosen so that all of them fit together; they are right for these machines and for no other. Take the data sheet of the machine in front of you.
values-from-memory-7cab3574 = Values from memory
limits-and-rules-that-name-a-6e4475a6 = Limits and rules that name a standard were recalled and not looked up (EN 50678, EN 50699, EN 50110-1, IEC 60335, IEC 60364-4-41, IEC 60479, IEC 61010): the edition in force wins. So were the accuracy of gauges, the times of protective devices, the wire's speed and the tub's textiles. What this handbook calls common practice has no other source than that it is done so.
what-comes-first-f1d12480 = What comes first
local-codes-and-licensed-f7109f74 = Local codes and licensed practice come first. Never open a real machine on the strength of a simulation alone.
everything-stays-in-this-browser-8d2deb35 = Everything stays in this browser. Nothing is sent anywhere.

### machine_n.md

t-120-v-60-hz-36-kg-what-is-line-1e72de28 = 120 V, 60 Hz, 36 kg; what is line and earth elsewhere is hot and ground here, the tap a faucet. A board with relays, its 5 V side isolated from the mains. A pump drains; a clutch motor of its own moves the lever. There is no mains switch: the board is live as soon as the plug is in, whatever the display shows, and after a power failure of less than half an hour it goes on by itself.
each-part-with-its-test-and-its-62148357 = Each part, with its test and its way in: [parts of N](#/handbook/parts_n). What can go wrong: [faults of N](#/handbook/faults/N). Filling, washing and the service test go as on [P](#/handbook/machine_p).
what-differs-from-p-696f13f2 = What differs from P
the-lid-switch-carries-the-motor-a3c6902c = {"*"}*The lid switch carries the motor's current.** With the lid open nothing turns, in the wash either.
lid-and-out-of-balance-switch-98cd20f0 = Lid and out-of-balance switch are two inputs: the display tells them apart.
two-valves-cold-and-hot-each-878e4457 = Two valves, cold and hot, each with a coil and an output of its own: try both.
the-count-is-24-9-khz-for-an-ac03beb3 = The count is 24.9 kHz for an empty tub, about 23.6, 23.0 and 22.5 kHz for low, medium and high, 21.9 kHz for overflow; believed between 21.5 and 25.5 kHz.
the-fuse-sits-on-the-board-a-46cd4a52 = The fuse sits on the board: a pump with shorted turns or a shorted motor opens it, and everything is dark.
currents-are-nearly-three-times-e4ba5a35 = Currents are nearly three times those of P for the same work, 2.9 to 4.4 A in the wash: a joint of a few ohms in an extension lead shows sooner. A motor winding has only 3.1 to 3.4 ohms: the leads' 0.1 counts.
the-pump-lifts-the-water-so-the-87b336a9 = The pump lifts the water, so the end of the hose hangs high; one that hangs low lets the tub run out by itself through the standing pump, and it never gets full. From high it empties in 110 to 190 s, the pump drawing 0.9 to 1.25 A.
measured-from-0-v-to-the-cabinet-a4e7f1d2 = Measured from 0 V to the cabinet, the low-voltage side may show ghost volts, and nothing in the low-impedance mode: it floats, and that is right. A reading there that stays is a fault.
relays-reverse-the-motor-one-8d201094 = Relays reverse the motor. One relay switches the motor on, a changeover relay chooses its direction. A welded or burnt contact is found as on a timer: volts at the output with the relay called, and without; volts across the contact while it is closed. A relay that sometimes closes: warm it, tap it, start it often; a provoked start counts.

### machine_p.md

an-electronic-control-commands-a472db89 = An electronic control commands everything: 230 V, 50 Hz, 35 kg. Its 5 V come from a transformer; its 5 V side is joined to the mains, so every plug of the board counts as live while the machine is plugged in. The on/off switch opens one conductor only; with line and neutral exchanged, the board stays live with the switch off.
each-part-with-its-test-and-its-f351eaeb = Each part, with its test and its way in: [parts of P](#/handbook/parts_p). What can go wrong: [faults of P](#/handbook/faults/P).
the-board-closes-a-triac-and-the-f4b79469 = The board closes a triac and the inlet valve opens. Rising water shuts air into the chamber at the tub and presses it up the air hose; the level sensor there is an oscillator whose frequency falls as the pressure rises. The board counts: 26.0 kHz is an empty tub, about 24.5, 23.9 and 23.4 kHz are low, medium and high. When the count says full, the valve shuts; at 22.6 kHz the board calls it overflow and drains. The stream is 12 L/min at 0.3 MPa, held by a regulator in the valve, so pressure changes it little until it is very low; high takes 210 to 290 s with 4 kg. A hose that leaks air, or is pinched, makes the board believe in the wrong water.
the-motor-runs-to-one-side-and-3fe1444f = The motor runs to one side and the other, with the run capacitor in series with whichever winding is not fed directly. Belt and gearbox turn the pulsator at 140 to 155 r/min; the brake holds the basket. The line current is 1.0 to 1.5 A; a stalled motor draws about 2.9 A, and its protector opens after about a minute. The wash runs on with the lid open: only the spin is guarded. A weak capacitor or one winding open leaves torque to one side only, or none.
draining-and-spinning-374f9e9c = Draining and spinning
the-drain-motor-pulls-a-wire-the-75188a20 = The drain motor pulls a wire. The wire opens the drain valve after about a second and a half, and on its last millimetres moves the clutch lever: the brake lets go, the clutch joins pulsator and basket. If the lever is out of its link the water leaves and the basket stays.
the-order-after-the-drain-motor-8d765229 = The order after the drain motor is fed, by the parts' own values: valve begins to open 1.6 s, brake free 2.5 s, clutch grips 3.8 s, full stroke of 17 mm 5.3 s. A stroke that ends at 10 mm empties the tub and never spins. The valve is shut at rest: nothing drains by lowering the hose. From high it takes 75 to 130 s.
spinning-starts-in-steps-to-let-2c142a66 = Spinning starts in steps, to let water out before full speed, 720 to 790 r/min, at 0.8 to 1.1 A. Lid switch and out-of-balance switch share one input, in series: the board tells them apart by time. An opening shorter than about a second is a knock; a longer one is a lid.
when-it-stops-and-beeps-2be939cf = When it stops and beeps
the-board-stops-on-what-its-few-4beb963d = The board stops on what its few senses tell it: no level in time, no fall of level in time, the lid input open, repeated swings, a count that cannot be. The display gives plain words; which part is behind it is the technician's work.
display-5a05d9b5 = Display
what-the-board-noticed-074eb6c4 = What the board noticed
first-look-869c25c0 = First look
not-full-after-20-min-d2217d35 = not full after 20 min
tap-hose-filter-pressure-is-cf1792e0 = tap, hose, filter, pressure; is water running out again; does the count follow the water
not-empty-after-10-min-90daf416 = not empty after 10 min
drain-hose-does-the-motor-whirr-b3393b46 = drain hose; does the motor whirr, the wire pull; does the count follow the water
three-corrections-were-not-72c5c116 = three corrections were not enough
load-feet-floor-the-lever-s-gap-6b6614e2 = load, feet, floor; the lever's gap; the lid plug
the-shared-input-stayed-open-for-16c954cf = the shared input stayed open for 10 min
the-lid-then-each-of-the-two-ba0bc7c2 = the lid; then each of the two switches by itself
no-pulses-or-a-count-outside-22-e1fa6865 = no pulses, or a count outside 22.3 to 26.6 kHz
sensor-plug-coil-then-the-board-57593906 = sensor plug, coil, then the board
t-22-6-khz-or-less-a86d8694 = 22.6 kHz or less
water-or-not-valve-leaking-by-62e338cb = water or not? Valve leaking by, output that stays on, hose
topped-up-again-and-again-4082da8b = topped up again and again
drain-valve-hose-end-pinhole-in-d77b002d = drain valve, hose end, pinhole in the air hose
under-75-or-over-120-for-5-s-ba1fcf1a = under 75 % or over 120 % for 5 s
volts-at-the-socket-at-rest-and-e921a9ee = volts at the socket, at rest and under load
the-service-test-64e84de5 = The service test
a-labelled-key-behind-the-panel-8168df84 = A labelled key behind the panel, to be pressed with the display in hand, steps through it: lamps and buzzer; the count; the two switches; valve 10 s, about 2 litres; motor forward 5 s, then reverse; drain motor; spin 20 s, tub empty; stop; fill to low and out again. It calls one output at a time and holds it, so that readings stand still: the quickest way to halve a machine. Take the current with the splitter lead while you are at it: the same in both directions, with the pulsator at its speed, says that capacitor, both windings, both outputs and the belt are well.
what-is-easily-taken-for-7743e06b = What is easily taken for something else
washes-drains-no-spin-washes-it-471da64d = {"*"}*Washes, drains, no spin**: washes it both ways? One direction missing is a lead, an output or a winding, and the spin needs that one. Both there: wire, lever, clutch.
an-out-of-balance-switch-stuck-1f95412e = {"*"}*An out-of-balance switch stuck open** looks like an open lid, for they share one input.
uses-much-water-spins-with-water-ab31612f = {"*"}*Uses much water, spins with water in**: the count drifts back while the water stands: a pinhole.
fills-slowly-with-the-third-new-5edd9952 = {"*"}*Fills slowly with the third new valve**: the tap gives nothing. Jug and watch first.

### machine_t.md

no-electronics-230-v-50-hz-34-kg-faf6fd0a = No electronics: 230 V, 50 Hz, 34 kg. A small motor turns cams; cams close contacts; a pressure switch with three set pressures decides between filling and washing. Everything in this machine is at mains voltage.
each-part-with-its-test-and-its-5c75ee03 = Each part, with its test and its way in: [parts of T](#/handbook/parts_t). What can go wrong: [faults of T](#/handbook/faults/T).
filling-and-washing-225c9174 = Filling and washing
the-timer-s-feed-passes-through-708ef84c = The timer's feed passes through the pressure switch. Empty, the switch sends it to the inlet valve; full, to the motor and to the timer's own motor. So **the dial stands still while it fills**, and a dial that never moves may mean water that never reaches its level, a switch that does not turn over, or a timer motor that is open. A turn is 43 steps of a minute each.
the-pressure-switch-changes-over-9fa8cfdb = The pressure switch changes over at about 138, 203 or 268 mm of water for low, medium and high, and goes back below about 41 mm. Water leaves: it fills again only when nearly all is gone.
a-second-faster-shaft-reverses-4fd9218a = A second, faster shaft reverses the motor: 1.4 s one way, a short rest, 1.4 s the other. One contact gone there, and it washes one way only; one welded there, and the motor is fed both ways at once, hums, gets hot and opens its protector. Both show at the timer's terminals: forward and reverse, each against neutral, while the dial stands at wash. Across a closed contact 0 to 0.5 V is right.
the-drain-motor-opens-the-valve-1e799c16 = The drain motor opens the valve and moves the clutch lever as on P. The lid switch lies in the feed of the motor in the spin: an open lid, or an open switch, and it drains but does not spin. Lid switch and out-of-balance switch are in series there, so a lever that trips stops the spin until the tub swings back, and a lever bent against the tub stops it for good. The wash is not guarded: it runs with the lid open. There is no alarm and no display: what it does not do is all it says.
finding-the-way-on-a-timer-cf9bfa75 = Finding the way on a timer
no-service-test-the-dial-is-it-2f0dc6d6 = No service test; the dial is it. Take the dial in hand, push the knob, turn to the step, pull, and see which of fill, forward, reverse, drain and spin are there. All of one feed missing: the contact, or what lies in front of it. One load missing: its wire or itself. Draw the path from line through contact, pressure switch or lid, load, to neutral, and halve it: a volt reading in the middle, or with the plug out the ohms of each half. Neutral is common to all, at its splice: loads that all fail together share it.
renew-a-timer-wire-by-wire-one-62a04e40 = Renew a timer wire by wire, one moved over at a time; look at each terminal for heat before you blame the contact.

### marks.md

five-things-are-marked-safety-20-d5d893ff = Five things are marked: safety 20, diagnosis 30, economy 15, procedure 15, evidence 20. Each opens in the debrief to the steps behind it.
safety-every-broken-rule-takes-a-b243c8fb = {"*"}*Safety.** Every broken rule takes a share away, the same rule once until the plug is moved again: a tenth for an untidy act, three tenths for one that could have hurt or flooded. A rule whose breach can kill holds the whole job at 39. Who tests and repairs nothing risks nothing, and gets nothing here.
diagnosis-what-was-stated-first-e6412bd0 = {"*"}*Diagnosis.** What was stated, first and last, beside what is wrong. Faults with the same repair count as one. Naming everything does not help: each wrong name weighs as much as a missing one. A right answer without evidence earns half.
evidence-how-far-each-repair-was-2abc8e94 = {"*"}*Evidence.** How far each repair was justified when it was made. The notes up to then make some causes likely; a repair is justified when no other step would have been cheaper in the long run. Truth does not come into it: a lucky guess is not justified, a good decision that turned out wrong is.
economy-what-the-job-cost-is-the-d13e91a2 = {"*"}*Economy.** What the job cost is the target, what could have been avoided, and chance. Only the avoidable counts. A second reading of the same thing, a cover off for nothing, a part too early, damage, a hint: each step's share is shown, with what would have been better then. Chance costs no marks and brings none.
procedure-what-this-job-made-5e4a20f0 = {"*"}*Procedure.** What this job made necessary: everything back and checked, a look for leaks, the electrical tests, a whole run, the price agreed before, the customer told.
a-pass-needs-no-breach-that-can-01443c7a = A pass needs no breach that can kill, safety 70 %, diagnosis 60 %, procedure 60 % with the run and the electrical tests, evidence 50 % and 65 of 100. Instructors can ask for more.
hints-are-for-practice-only-they-ac8fd8f9 = {"*"}*Hints** are for practice only. They climb from a question back, over where to look and which step, to what it would mean, and cost 5, 10, 15 and 40 % of the target as avoidable. They come from your notes, not from what is wrong: wrong notes give wrong hints. With any other act the ladder begins anew. What you have shown that you can do gets fewer of them.
what-each-step-was-worth-takes-927295cf = What each step was worth takes some seconds to work out. Until then, economy goes by the bill beside the target, and evidence by whether the notes differ from those of a sound machine; the debrief says which.

### measure.md

choose-the-mode-then-put-the-cb6e90c2 = Choose the mode, then put the leads where they are to go: touch a point on the wiring diagram, or press `r` for the red lead and `b` for the black one and type a few letters of the point's name. The data sheet's value stands beside the display when there is one for these two points.
before-the-first-reading-of-a-789002f2 = Before the first reading of a job: look the leads over, hold the probes together on ohms (about 0.1 Ω), see the battery, measure a known voltage. An instrument that lies does it quietly:
what-it-shows-a3f6f5b6 = What it shows
broken-lead-10fe8a76 = broken lead
t-0-v-on-everything-ol-on-ohms-a-a7b14580 = 0 V on everything, OL on ohms: a live circuit looks dead
weak-battery-825ff930 = weak battery
too-much-on-most-ranges-too-90ebb427 = too much on most ranges, too little on insulation
blown-fuse-inside-dc1e4e62 = blown fuse inside
the-current-range-and-the-bond-f2f590e7 = the current range and the bond tester read nothing
calibration-out-of-date-e1df0ab4 = calibration out of date
perhaps-nothing-wrong-its-20b2805f = perhaps nothing wrong; its reading counts for nothing in a report
category-too-low-for-the-place-e6ed926e = category too low for the place
all-is-well-until-the-surge-11adbbdc = all is well until the surge comes
a-display-settles-in-about-half-da1cd135 = A display settles in about half a second, its last digit flickers, automatic ranges hunt, capacitance takes seconds. Write down what stands still. In a wash with strokes of a second and a half, take steady readings in the [service test](#/handbook/machine_p) instead.
which-reading-tells-which-faults-0ca68c69 = Which reading tells which faults apart is computed for each machine: see [readings and faults](#/readings). What each part should read: parts of [P](#/handbook/parts_p), [T](#/handbook/parts_t), [N](#/handbook/parts_n).
volts-87c7093b = Volts
ac-volts-ten-megohms-of-input-feb29721 = {"*"}*AC volts.** Ten megohms of input hardly load the circuit, so wires that lie beside live ones, outputs that are off, and a cabinet without earth show **ghost volts**: tens of volts with nothing behind them. Always say between which two points; a voltage at one point is nothing.
low-impedance-volts-about-4-1024f899 = {"*"}*Low-impedance volts.** About 4 kilohms across the points load ghosts away; what is left is a real source. Use it to prove dead, and whenever a reading is neither nothing nor the supply. It also loads a weak source: a leak through 100 kilohms reads next to nothing here and is still a leak; the insulation tester finds it. And it draws enough current to trip a residual current device when it goes to earth.
dc-volts-the-low-voltage-side-of-a5f28284 = {"*"}*DC volts.** The low-voltage side of a board, and the charge left on a capacitor. Red to plus. On AC it reads about nothing, so it proves nothing about the mains.
zero-volts-across-a-closed-7d71836a = Zero volts across a closed switch is right, supply voltage across it means open, anything between is a burnt contact. Volts at a load that does nothing: the load. No volts: go back towards the supply, half the way at a time.
ohms-continuity-diode-9d06b41b = Ohms, continuity, diode
on-a-dead-circuit-only-the-3b4a1ad9 = On a dead circuit only: the instrument drives its own current. On a live circuit the reading is wrong, the meter may burn, and OL is not proof of dead.
lead-resistance-the-leads-add-21722301 = {"*"}*Lead resistance.** The leads add about 0.1 Ω: a reading below 0.3 Ω says "joined" and nothing finer. What matters in milliohms, the earth, is for the bond tester.
parallel-paths-what-is-still-de84d801 = {"*"}*Parallel paths.** What is still connected is measured together with everything else: a winding through the other winding and the capacitor, a coil through the board. It can only make a reading lower. Pull the connector apart when a reading does not fit, and on the data sheet wherever it says "apart".
ol-is-over-range-here-above-50-m-a25011af = {"*"}*OL** is over range, here above 50 MΩ: for a winding, open.
charge-a-capacitor-that-is-not-235b8e1b = {"*"}*Charge.** A capacitor that is not empty pushes its own current through the meter.
fingers-on-both-probe-tips-are-a-5f093f69 = {"*"}*Fingers** on both probe tips are a few hundred kilohms in parallel.
a-warm-winding-reads-more-copper-f5cdaed6 = A warm winding reads more: copper gains 0.4 % for each kelvin.
low-current-proves-little-a-5da5f604 = Low current proves little: a burnt contact may read 0.1 Ω and drop ten volts under load. Measure its drop while it carries current.
continuity-sounds-below-about-30-31b91b1f = {"*"}*Continuity** sounds below about 30 Ω. It is for switches and wires, opened and moved while it sounds; a motor winding of 21 Ω sounds too, and so does a good deal of resistance in a bad joint. **Diode test** sends about a milliampere and shows the drop; the machines here hold no diode one can reach, so it shows resistance at best.
capacitance-frequency-3bcb1a15 = Capacitance, frequency
a-run-capacitor-is-measured-with-e1e45fb4 = A run capacitor is measured with both leads off and its charge led off and measured. Ten per cent below the label is the usual limit. Left in place, the windings lie in parallel and the number means nothing. A capacitor can read right at the meter's volt or two and fail at 350 V: its voltage while it works is the second test.
frequency-reads-the-level-sensor-88f63767 = {"*"}*Frequency** reads the level sensor: the board's own count, 26.0 kHz on P and 24.9 kHz on N for an empty tub, less with more water. It needs a running oscillator, so the machine is on: plan the probes with the plug out.
current-b3d0c37a = Current
clamp-round-one-conductor-round-7f49f840 = {"*"}*Clamp, round one conductor.** Round a whole cord it reads nearly nothing, because the currents of line and neutral cancel: a true reading, and no information. Put a **splitter lead** between plug and socket (plug out while you do), or clamp a single wire inside. Two turns through the jaws read double. It may be off by 5 mA, which is little in a motor lead and a good deal in a coil of 20 to 34 mA.
amperes-through-the-leads-is-a-0ed3458f = {"*"}*Amperes through the leads** is a short circuit with a fuse of 10 A: never across a voltage, and the lead back in the volts socket at once. The clamp does nearly all of it without opening anything.
leakage-clamp-round-line-and-aae7be5a = {"*"}*Leakage clamp**, round line and neutral together: what does not come back, in milliamperes. It reads the machine's leakage and not the fault of the house. Other earth paths, a metal pipe or a neighbour machine, carry part of it past a clamp that sits on the earth wire.
touch-current-metal-that-a-hand-ab046e68 = {"*"}*Touch current**: metal that a hand reaches, through 2 kilohms to earth, as a person would be. At most 0.5 mA.
insulation-tester-earth-bond-97ce20d3 = Insulation tester, earth-bond tester
both-on-a-machine-that-is-f05053b8 = Both on a machine that is unplugged and proved dead.
insulation-500-v-from-line-and-09fbcc8c = {"*"}*Insulation**: 500 V from line and neutral joined to earth, the switch pressed in where there is one, so that what lies behind it is tested too. Never across a board: its surge absorber conducts and the board may not survive. Wait until it stands; a long cord charges first. A used machine reads 5 to 200 MΩ; below 1 it does not go back to a customer. Contacts of the control are open at rest: what lies behind them is reached only part by part, or by the leakage clamp while it runs.
earth-bond-0-2-a-from-the-plug-s-0c696196 = {"*"}*Earth bond**: 0.2 A from the plug's earth pin to bare metal, by four leads, so its own leads do not count. At most 0.3 Ω with a cord up to 5 m. Move the cord meanwhile. Scratch through paint to bright metal: a coated screw reads open on a sound machine. A machine that touches a water pipe has a second way to earth: pull it away first.
water-and-air-080b5225 = Water and air
jug-and-watch-in-the-stream-at-4d4280e0 = {"*"}*Jug and watch** in the stream, at the hose end or at the tub: litres a minute. Let it run steady, use a jug that takes half a minute. It cannot tell pressure from a blocked way; two places can.
pressure-gauge-on-a-tee-in-the-69303248 = {"*"}*Pressure gauge** on a tee in the supply line: at rest it shows the house's pressure, and with water running what is left. A tap nearly shut shows full pressure at rest; only the running reading finds it.
u-tube-on-a-tee-in-the-air-hose-95bbf58c = {"*"}*U-tube** on a tee in the air hose: the pressure that the sensor gets, in millimetres of water. It adds air to the hose, so it reads a hair low. Held for minutes it finds a pinhole. Never blow hard into a sensor.
watch-filling-emptying-the-wire-80a7093f = {"*"}*Watch**: filling, emptying, the wire's stroke, the basket's stop. Say from what to what.
speed-belt-position-heat-2764e024 = Speed, belt, position, heat
tachometer-by-its-beam-from-ad7a83f8 = {"*"}*Tachometer**, by its beam from outside: pulsator, basket, motor. It holds the highest speed of its ten seconds, so a stroke reads its peak. A mark counted twice reads double. Motor and pulsator together show a slip.
spring-balance-and-rule-a-strand-988808c6 = {"*"}*Spring balance and rule**: a strand of the belt pushed with 7 N in its middle gives 4 to 6.5 mm. **Belt gauge**: the tone of the plucked strand as a tension, 52 to 80 N; turn the pulleys once and read again, for a belt is not the same all round.
spirit-level-both-ways-at-most-e572bd76 = {"*"}*Spirit level**, both ways, at most 10 mm on a metre: on the cabinet in its place; on the floor it finds who is to blame. Turn it round once: if it then says something else, the level is off.
rule-wire-travel-lever-gap-and-b16b5ae4 = {"*"}*Rule**: wire travel, lever gap and play, height of the hose's end.
contact-thermometer-the-motor-s-9d9e9687 = {"*"}*Contact thermometer**: the motor's skin is colder than its winding, by tens of kelvins after a stall. Press it on, wait half a minute.
recorder-b4ec379b = Recorder
four-pens-follow-what-stays-693e77c1 = Four pens follow what stays connected: meter leads where they are, pressure gauge, U-tube, tachometer, thermometer. It sees what nobody waits for: the volt that drops at each reversal, the level that sinks in the soak. Twice a second at first; when the strip is full it keeps every other point, so a knock of a tenth of a second can fall between. What cannot be reached leaves a gap, not a zero.
print-the-chart-puts-the-strip-acba183b = “Print the chart” puts the strip alone on paper: whose job, each pen with its name and line, highest and lowest with their unit, the time of day below, and the table. The lines differ in style, so black and white will do. A fresh strip, or a pen put on or lifted, begins anew: print before.

### results.md

a-result-is-a-file-it-holds-what-67056307 = A result is a file. It holds what was done, every reading as it was shown, the marks, and the version of the program that can run it again. Anyone with the program can check it: the log is run again, and every line, mark and the last state of the machine must come out the same.
where-a-part-of-the-marks-is-e44b60e0 = Where a part of the marks is below full, the sheet says why: each step that cost points with its time, what was done then, how many points it cost, and the reason. What was left out stands at the step by which it had to be done. The reasons are found by running the log again, on the candidate's own sheet and on the person's page of the [Results](#/cohort); they are not in the file.
what-a-result-shows-finding-38174abf = What a result shows: finding faults, the order of work, decisions about safety. What it does not show: hands. A witnessed practical is still needed.
in-an-assessment-each-candidate-d2058139 = In an assessment each candidate types a start code of their own. With it the result is sealed: nobody who lacks the code can change it, move it to another person, or drop one from the middle of a row.
what-no-page-in-a-browser-can-4854a342 = What no page in a browser can prevent: whoever sits at it knows their own code and could have help, or prepare a log elsewhere. Such a log must still work when it is run again, so somebody solved the job; who it was is seen only in an invigilated room. Results made at home count as practice.
a-result-of-another-version-of-c9f903f8 = A result of another version of the program is not run again here: another version may reckon a digit otherwise. It can still be read as it was written: who, when, which version, each act with what was shown, the result as it was sealed. Under **Not accepted** and on the person's page there is a **Read** for it; `tubwright verify FILE --read` tells the same on the command line. Such a page says that nothing on it was worked out again. Any other result can be read so too.
a-name-can-be-struck-out-of-a-7425c10d = A name can be struck out of a result, or everything in it erased: the results around it still check. An assessment can say after how many months that is due; the review of results shows what is past it.
pauses-of-the-whole-room-stand-4471f07c = Pauses of the whole room stand in a result with their time; that time did not count.
time-and-cost-stand-beside-those-1f30f083 = Time and cost stand beside those that a skilled technician needs for the job, for each person and each job, in the tables and in the saved files. The target time is kept in the result, so it is there for a job that does not ship; results from before it was kept take it from the job where that is known.
the-more-jobs-the-surer-the-56310cae = The more jobs, the surer the decision. Few jobs tell little about one person, and near the cut more jobs decide, not a fail.
economy-and-evidence-of-a-result-eefe68e5 = Economy and evidence of a result go by what each decision was worth, worked out while the next job is worked; handing in waits for what is missing. It is worked out again when the result is checked, which takes seconds a job. Where the browser has no thread for it, the job is marked by the bill and the notebook, and the result says so.

### safe.md

this-page-is-for-practice-at-05d19832 = This page is for practice at this bench. Where you work, the local codes, the maker's instructions and what your licence allows come first; where they ask for more, do more. Work on the wiring of a house belongs to an electrician with a licence.
before-anything-is-opened-43eed079 = Before anything is opened
look-cord-plug-socket-floor-2547d406 = {"*"}*Look**: cord, plug, socket, floor, smell, who is about. Keep children and animals out of the room.
measure-the-socket-line-to-fb3f1ab4 = {"*"}*Measure the socket**: line to neutral, line to earth, neutral to earth. A reversible plug is measured both ways: exchanged line and neutral is no fault there, and means that a switch may open the wrong wire.
switch-off-unplug-keep-the-plug-cac76d58 = {"*"}*Switch off, unplug, keep the plug in sight**, tag it or lock it. A switch opens one conductor, sometimes the wrong one; the board of N has no switch before it at all.
shut-the-tap-let-the-pressure-9264ad88 = {"*"}*Shut the tap, let the pressure down.** An inlet hose pulled with the tap open floods the flat below.
wait-a-minute-then-lead-the-fe4bb57b = {"*"}*Wait a minute, then lead the charge off.** The mains filter empties through its bleed resistor, unless that is broken; the run capacitor empties through the windings, unless a lead is off. Treat both as charged until a meter says otherwise: through 10 to 20 kilohms, never with a blade, then measure. Above 34 V they are not to be touched (IEC 60335-1, from memory).
proving-dead-bb99a908 = Proving dead
unplugged-is-not-dead-bb157fb3 = Unplugged is not dead.
prove-the-tester-on-a-source-you-dfda37d2 = Prove the tester on a source you know to be live.
test-where-you-will-touch-each-4674cdb8 = Test where you will touch, each conductor against the other and both against earth: with a broken neutral, line to neutral reads nothing and both are live.
prove-the-tester-again-on-the-604a08c2 = Prove the tester again on the live source. Only now is the machine proved dead.
a-contactless-tester-proves-aeb4fcd4 = A contactless tester proves nothing, an ohmmeter less. Use volts, in the low-impedance mode where ghosts are about.
the-line-safe-under-the-picture-2f084401 = The line "Safe?" under the picture shows what you have done with one tick and what you have proved with two. It never says more than you have established.
when-only-a-live-reading-will-do-9c3a22ad = When only a live reading will do
ask-first-whether-a-dead-test-7f532a26 = Ask first whether [a dead test settles it](#/handbook/diagnose). If not: dry floor and shoes, sound leads of the right category with fuses, probes placed with the plug out where that can be, one hand, stand so that you cannot fall into it, plug in, read, plug out. On P the 5 V side stands at mains potential: there is no harmless side of that board. Nobody alone in the building is a good rule (common practice).
alternating-current-through-the-f3e541fb = Alternating current through the hands: from about 0.5 mA felt, from about 10 mA one cannot let go, from about 30 mA the heart is in danger when it lasts (IEC 60479-1, from memory). A residual current device shortens it; it does not act between line and neutral, and not every house has one.
what-turns-falls-scalds-and-cuts-db55aabd = What turns, falls, scalds and cuts
basket-hands-out-until-it-stands-01c12390 = {"*"}*Basket**: hands out until it stands. Never bridge a lid switch; test it with the continuity range. A machine that spins with its lid open does not stay in use.
belt-and-pulleys-plug-out-wait-8577920f = {"*"}*Belt and pulleys**: plug out, wait, no fingers between strand and pulley.
water-drain-by-the-machine-on-p-af4e5a12 = {"*"}*Water**: drain by the machine; on P and T the valve is shut at rest, so lowering the hose does nothing. If it will not drain, bail or siphon from above: 52 litres by bucket take 10 to 15 minutes. Never tilt a machine with water in it.
weight-about-35-kg-heavy-at-the-1392d83a = {"*"}*Weight**: about 35 kg, heavy at the top. Help, a strap or a stand for each step that tilts it; a blanket below, wedges at the tub. Never reach under what is not propped. A raised top cover is tied or supported.
heat-a-motor-and-hot-water-burn-9e8f76de = {"*"}*Heat**: a motor and hot water burn; feel near before you touch. **Edges**: gloves for the reach, off again near anything that turns.
static-touch-the-cabinet-before-b752d249 = {"*"}*Static**: touch the cabinet before a board.
putting-power-back-951139b2 = Putting power back
every-earth-link-on-bond-and-3a17a9a1 = Every earth link on, bond and insulation measured, wet parts dried, tools counted: then the plug. A fuse or protective device that opened had a reason: test dead before you set it again; never a larger fuse. A run capacitor never for less voltage than the old one. Then the [tests after a repair](#/handbook/after).
if-something-happens-f41ca90f = If something happens
somebody-is-held-by-the-current-9afc03fd = Somebody is held by the current: switch off or pull the plug, do not touch them before. Call for help, then first aid as you were taught; after any shock through the body a doctor sees them, also when they feel well. Water near live parts: off at the board of the house if the way there is dry, else stay away. Fire: plug out if that is safe, out of the room, call. (Common practice; your own rules come first.)
when-to-stop-9546563a = When to stop
a-socket-without-earth-a-fe2e7529 = A socket without earth, a scorched socket, a smell of gas, water near live parts, a flood, a person who threatens you, a task beyond your licence: make it safe and leave. Unplugged, tap shut, closed, labelled "do not use", the customer told and the report says so. Smell of gas: touch no switch and no plug, get everybody out, call from outside. That is a whole job, well done, and is marked as one. [See one worked](#/handbook/worked-bites_bare_feet).

### sharing.md

a-job-leaves-your-browser-only-a0aaba02 = A job leaves your browser only when you give it away: as a link, as a code on a classroom screen, or as a file. There is no server behind it.
link-and-code-420bf581 = Link and code
the-whole-job-is-in-the-address-86dcb790 = The whole job is in the address, after `#/job/`. It works wherever this page is open, with no network. The part of an address after `#` is not sent to the server that hosts the page. Messengers and mail programs sometimes cut long addresses: a link that was cut says so when it is opened.
file-for-trainees-file-with-the-3b33db84 = File for trainees, file with the answer
the-file-for-trainees-holds-the-11d78cbb = The file for trainees holds the same letters as the link. The file with the answer is plain text that you can read, edit and keep; the desk opens it again. Its format is `tubwright-job-1`; its schema is written by `tubwright schema`.
a-training-set-is-one-file-the-0c77481a = A training set is one file. The file for trainees covers the jobs in it as a link does; it names shipped jobs and does not contain them. Whoever opens it finds the set on top of the list of jobs. Its format is `tubwright-set-1`.
what-this-protects-and-what-not-8e513b43 = What this protects, and what not
link-trainee-s-file-and-trainees-353b3385 = Link, trainee's file and trainees' set are compressed and covered, so that **nobody reads the fault in passing**: not in the address bar, not in an editor, not by searching the file for a word.
it-is-not-a-lock-the-program-a940eb98 = It is not a lock. The program must be able to open the job without asking anybody, so everything needed to open it is in the program, which is open source. Somebody who can program, and wants to, can read the fault. The jobs that ship with the page can be read by anyone too.
for-practice-that-is-enough-5a6ee311 = For practice that is enough. Where marks count, work in a room with an invigilator.
what-comes-in-72d5a0e5 = What comes in
a-link-or-file-from-elsewhere-is-b97ad1f3 = A link or file from elsewhere is checked field by field before anything is done with it. Text in it is shown as text and never as anything else. What is wrong is told with its field and what would be right.
many-files-are-opened-at-once-cc721bb9 = Many files are opened at once: choose or drop them, a folder of them, or a zip. Each file is answered for; what is no job, set or assessment is named as passed over, with the reason.

### sizing.md

the-page-is-a-folder-of-files-44c72931 = The page is a folder of files. Any web server or content network can offer it to any number of people; nothing of it runs on a server. Results are files, or statements that go to a learning record store, which exists in clustered form. So the load of a large department falls on two things that others know how to scale: static files, and that store.
measured-on-70-worked-jobs-of-06b506eb = {"*"}*Measured on 70 worked jobs of this library**, one careful technician's log each, 65 acts and 57 minutes of the technician's time on average: a record is 8.7 kB on average, 2.2 kB once packed. It becomes 10.2 statements a job, 1.4 kB each: begun, each reading, each part replaced, each rule broken, the marks, completed, over. There are 4 more for the assessment as a whole: begun, passed or failed, completed, over. The statements of a job are sent in one request, those of the whole in another; before them the store is asked once which version it speaks.
a-million-candidates-with-four-429740b2 = {"*"}*A million candidates with four jobs each**, by these figures:
t-4-million-records-35-gb-as-files-048f29ea = 4 million records, 35 GB as files, 9 GB packed in archives;
t-45-million-statements-61-gb-as-8b902043 = 45 million statements, 61 GB as they travel, in 5 million requests, and a million questions for the store's version;
spread-over-20-working-days-of-8-65d48ea6 = spread over 20 working days of 8 hours: 10 requests and 78 statements a second on average. If a tenth of all hand in within the same hour: 167 requests a second for that hour, 1,250 statements a second for that hour, 1.7 MB a second for that hour;
the-page-itself-about-a-megabyte-46652b85 = the page itself, about a megabyte packed and kept by the browser after the first visit: 1 TB once, from whatever content network serves it.
in-a-training-system-that-starts-68e2b3e7 = In a training system that starts the page by cmi5 the same statements go to that system's own store, with three or four more a visit: begun, passed or failed, completed, over. There the unfinished work travels too, with every act.
measured-again-by-cargo-test-c1e44105 = {"*"}*Measured again** by `cargo test --test statements sizes -- --nocapture`: it works the library's jobs, makes their statements, prints each figure above, and fails where this page says another one. It runs with all other tests.
a-store-that-is-slow-full-or-73df9117 = A store that is slow, full or away for a day costs nothing but time: statements wait in the candidate's browser and are sent again, and their identifiers are made from what they say, so that sending twice is storing once. The file that the candidate hands over holds the same.
checking-them-each-record-is-run-65056a06 = {"*"}*Checking them.** Each record is run again on its own; nothing is shared. `tubwright verify` uses all cores of a machine, and a folder can be split over any number of machines. `make bench` prints how long one record takes on yours. In a browser, checking uses the computer's other cores and can be stopped and gone on with.
reviewing-them-results-cohort-is-cfa3bf65 = {"*"}*Reviewing them.** [Results](#/cohort) is made for a department: a thousand people with forty jobs each on one laptop. Larger bodies look at each department and compare the saved tables.

### systems.md

a-training-system-starts-the-ed0847c5 = A training system starts the page, names the learner, keeps unfinished work and is told the result. A store of learning records takes results without a training system. Both are open standards; without either, results are files.
a-course-package-is-made-where-bb8b285c = {"*"}*A course package** is made where the [assessment](#/assessments) is: for SCORM 1.2, SCORM 2004 4th edition or cmi5, one zip file with this very build of the workshop and the assessment in it. It is made in your browser, without a network too, where the browser has kept the page; if a file cannot be had, it is named and nothing is saved. For cmi5 say the address that the course’s names begin with: it need not answer, but it must be yours and stay, since the system tells courses apart by it. Give the package to whoever keeps the system. `tubwright package` on the command line makes the same package.
what-the-system-is-told-when-the-59b9561c = {"*"}*What the system is told.** When the assessment is handed in: passed or failed, near the cut neither, since there more jobs decide. The marks go along where they say the same: a system that reckons from marks alone would pass whom a broken safety rule fails. Under cmi5 the system may ask for another mark than the assessment does; then passed and failed go by the system’s mark, and the assessment’s other rules hold beside it. Without a start code this is practice all the same: only the file that the candidate saves can be sealed and checked.
a-visit-ends-when-the-page-is-7b6b5821 = {"*"}*A visit ends when the page is left**, by “Back to the course”, by closing it or by going elsewhere, handed in or not: the system is told so, with the time spent. Unfinished work stays, there and in the browser. Start the page from the course again to go on; on another computer too. Looking at another tab is not leaving.
loading-the-page-anew-by-the-62549d47 = {"*"}*Loading the page anew** by the keys for it (F5, Ctrl+R, ⌘R) or by a button of the page goes on in the same visit under cmi5. The browser’s own button cannot be told from closing, so it ends the visit: the page says so, and “Back to the course” leads to where it is started again. Nothing is lost; what is handed in meanwhile is told in the next visit. Under SCORM every way of loading anew ends the visit.
if-the-system-answers-slowly-the-75c243c0 = {"*"}*If the system answers slowly**, the page says at once who is asked for what, and for how long already. After eight seconds you can ask again, or go on without it: then it is told nothing until the page is loaded again. The key of a visit is given once, so it is not asked for twice; if it comes late, it is there when you load the page again. If the system does not answer when you hand in, or has no room for the work, the page says so, and tells it again when the network is back.
a-store-of-learning-records-xapi-29f320de = {"*"}*A store of learning records** (xAPI) is set in [Settings](#/settings): address, user, password. From then on every assessment that is handed in in this browser goes there, sealed or practice. It waits here until the store has taken it; what the store refuses for good is kept aside and tried once more by “Send now”. The records are named by the candidate’s number, never by a name.
says-aada77e9 = says
the-assessment-afaa79ce = the assessment
begun-passed-or-failed-with-the-9a7a11c4 = begun; passed or failed with the marks, the reasons and the time used, or near the cut only the marks; completed; over
each-job-under-the-assessment-9d3ee5c2 = each job, under the assessment
begun-its-marks-part-by-part-3461f8e1 = begun; its marks, part by part; completed; over
each-reading-part-replaced-3ac2bbe9 = each reading, part replaced, safety rule broken, under its job
what-was-measured-as-a-number-in-a77a14ac = what was measured, as a number in its SI unit beside what the instrument showed; which part; which rule and how grave
one-attempt-is-one-registration-68fb9c3c = One attempt is one registration: a sealed sitting with all its jobs. In practice each job is an attempt by itself, and so is the run as a whole. The identifiers are made from what was done, so that sending twice is storing once. A job’s clock runs ahead of yours, and no statement may lie in the future: each has the moment at which the job was opened, and says beside it when on the job’s clock it was. `tubwright statements` makes the same of a file of results; with `--assessment` and the assessment’s file it adds the whole, for a sealed sitting.
how-much-that-is-for-many-people-0bdb1bc4 = How much that is for many people is in [For many people](#/handbook/sizing).

### testing.md

last-not-first-prove-that-supply-fffc3a06 = Last, not first: prove that supply, fuse, wires and load are good, and that nobody shorted the board. Service test: call one output after the other. Called, and no volts at its own pin with the load connected: the output is dead. Volts there and none at the load: wire or connector. Volts at rest: the output stays on, or leaks; measure with the load connected, and once more in the low-impedance mode. Look for insects, damp and scorched places. A board that died had a reason: ohms of every load before the new one goes in.
control-board-p-bb7cddda = control board P
line-at-plug-1-pins-1-and-3-5-v-37df55eb = Line at plug 1, pins 1 and 3; 5 V between plug 5 pin 1 and plug 6 pin 2. At rest, load connected, against plug 1 pin 3: valve output plug 4 pin 1 at most 10 V, drain output plug 4 pin 3 at most 12 V, motor output plug 3 pin 1 at most 2 V (data sheet). All of it stands at mains potential.
control-board-n-9d7caea0 = control board N
t-5-v-between-plug-7-pin-1-and-b72db20a = 5 V between plug 7 pin 1 and plug 8 pin 2. The 5 V side floats: 0 V to cabinet reads nothing in the low-impedance mode, and that is right. A relay that clicks may still have a burnt contact: volts across it while it is closed. It should read well under a volt (common practice).
by-the-dial-one-place-after-665229e8 = By the dial, one place after another: what should run there, and does it? Volts at the timer terminal of that load. Feed there and the load dead: wire or load. No feed: the contact, or what comes before it (pressure switch, lid, out-of-balance switch). A closed contact drops 0 to 0.5 V (data sheet); more is burnt. Welded: volts where none belong; with a forward contact that stays on, the motor hums at each reversal and gets hot. A dial that stands: is it still filling? If not, volts at the timer motor, then its coil.
display-board-90da07cd = display board
press-every-key-each-clicks-and-7f205e64 = Press every key: each clicks and springs back. All lamps light in the first step of the service test. A key that sticks looks like a machine that chooses for itself. Key lock and delayed start are no fault: hold, look, explain.
on-off-switch-b7c866ef = on off switch
dead-joined-and-open-the-data-65344dff = Dead, joined and open: the data sheet's value pressed in, OL released. Under load a burnt contact warms and drops volts that no ohmmeter shows.
dead-continuity-or-ohms-lid-5c306114 = Dead, continuity or ohms, lid opened and shut slowly: it clicks 10 to 20 mm before the lid is down. Never bridge it. Listen for the click first: a bent lever has a sound switch. Joined when open is worse than open when shut: the basket would spin for a hand. Moving the lid while the meter is on finds the contact that fails now and then.
lid-switch-p-fa424c9a = lid switch P
it-shares-one-input-with-the-out-e9f6210c = It shares one input with the out-of-balance switch, in series: measure each of the two on its own.
lid-switch-t-f642464e = lid switch T
in-the-feed-of-the-spin-at-mains-c1920b97 = In the feed of the spin, at mains voltage. In the spin the drop across it is the finer test: 0 to 0.5 V (data sheet).
lid-switch-n-dc421d60 = lid switch N
it-carries-the-motor-s-current-87b94402 = It carries the motor's current, so ohms may look good while it fails under load. The drop while washing decides: 0 to 0.5 V (data sheet).
balance-switch-29b1199d = balance switch
joined-at-rest-open-while-the-9a122e5f = Joined at rest, open while the lever is pushed. Lever 25 mm from the tub, straight, springs back. It opens in every spin: look at rods, floor, feet and load before you blame the switch. Never seen to open, even when the tub knocks: bent away.
order-tap-hose-filter-pressure-57322eeb = Order: tap, hose, filter, pressure, and only then the valve. Volts at the coil and no water: coil by ohms; a hum with a good coil is a stuck plunger or too little pressure (the valve needs about 0.02 MPa to lift). Water with the coil dead is the valve leaking by; water because the coil is fed is the control. A high coil reading that jumps is a terminal.
tap-shut-pressure-down-nut-off-7848f130 = Tap shut, pressure down, nut off, look. Jug and watch before and after: the stream is 10.2 to 13.8 L/min at 0.3 MPa (data sheet). No use in cleaning it while the tap gives little: take the stream at the hose end too.
level-sensor-9b896809 = level sensor
count-first-then-coil-the-count-9d0ab86f = Count first, then coil. The count must follow a gentle breath through the hose, and again a breath straight into the sensor: only the second moves it, then the hose is at fault. Standing still at full level, count and water mark must both stay.
level-sensor-p-7d51c0c1 = level sensor P
service-test-26-0-khz-empty-25-9-e4acb7d4 = Service test: 26.0 kHz empty (25.9 to 26.1, data sheet); full is about 24.5, 23.9 or 23.4 kHz at low, medium and high level.
level-sensor-n-67519e1f = level sensor N
service-test-24-9-khz-empty-24-8-8a91ad75 = Service test: 24.9 kHz empty (24.8 to 25.1, data sheet); full is about 23.6, 23.0 or 22.5 kHz at low, medium and high level.
a-u-tube-on-the-hose-while-it-21ff8be9 = A U-tube on the hose while it fills: changes over at about 138, 203 or 268 mm of water at low, medium and high, and back below about 41 mm. Dead and empty, 11 to 12 joined, 11 to 14 open; breathe into it gently: it clicks, and the two change places. The high level has its own contacts, 21, 22 and 24.
look-along-it-pinched-under-the-850a280a = Look along it: pinched under the top cover, kinked, split at an end. Fill, switch off, watch a U-tube for 5 min: it must stay. A pinhole loses about a tenth of the pressure in two minutes while the water stands; a pinched hose shows nothing at all; lint in the chamber makes the reading follow late.
ohms-of-both-windings-plugs-33046bbc = Ohms of both windings, plugs apart; then the output with the board connected. No output with a sound primary feed: thermal fuse or winding. Too low and warm: shorted turns, or a board that shorts it; pull the low-voltage plug to tell the two apart.
dead-at-the-plug-pins-on-off-fd11ef81 = Dead, at the plug pins: on/off switch released, the value of the data sheet is its bleed resistor. Lower: leaks or shorted; OL: the bleed resistor is open, and the pins hold a charge after the plug is pulled. Leaking to earth shows only in insulation and leakage.
suppressor-1681746b = suppressor
dead-at-the-plug-pins-10-m-or-1f366292 = Dead, at the plug pins: 10 MΩ or more. Anything lower and it leaks; a warm smell with the machine off belongs to it.
ohms-across-it-dead-a-blown-fuse-e608cc29 = Ohms across it, dead. A blown fuse is a finding, not the cause: measure insulation and the loads before a new one of the same type and rating goes in, and run every load once after.
first-step-of-the-service-test-d82cc862 = First step of the service test. It calls nothing else into question.
mains-cord-1e9c78cb = mains cord
look-at-both-ends-and-along-it-7bb43d7e = Look at both ends and along it. Ohms of line and neutral, plug pin to terminal block, while the cord is moved at the strain relief: at most 0.3 Ω, without a jump (data sheet). Earth with the bond tester, moved as well. Under load a burnt joint shows as a falling voltage at the terminal block, and as warmth: volts there, at rest and washing.
harness-b51a41eb = harness
volts-at-both-ends-of-a-wire-or-dcbd8dba = Volts at both ends of a wire, or ohms with both ends apart. Pull gently at each pin. Wiggle while measuring: a break inside the insulation closes when nobody touches it. Insulation of each branch finds the chafed one. After mice, look at all of it below.
charge-led-off-and-measured-f0017883 = Charge led off and measured first, both leads off, then capacitance: down to 10 % below its label is usual (common practice). Ohms between its terminals shows a short or a leak. In place and washing, its voltage says more than a hum: too low is weak, nothing is open or shorted. A bulge or a scorched terminal ends the test.
motor-caf08472 = motor
plug-apart-capacitor-leads-off-32f8549c = Plug apart, capacitor leads off: the two windings are alike within 5 % (common practice), and in series they read their sum. One open: it turns one way or only hums. Both open to the common, and the pair still joined in series: the protector. Hot, it closes again at about 80 °C; cold and open, it is gone. Shorted turns hide from ohms on a warm motor: compare the two windings, the two currents and the smell. Insulation to the frame. By hand, belt off: turns freely without grinding. The plug off shows whether the volts come; volts at the motor while it does not turn, and the motor or what it drives is at fault. Stalled it draws about two and a half times its running current, and opens its protector in about a minute.
motor-turns-belt-stands-a-mark-8996ae07 = Motor turns, belt stands: a mark across pulley and shaft drifts apart. A knock at each reversal is the same, earlier.
squeals-at-a-start-and-slows-417c8b7a = Squeals at a start and slows under load: loose, oily or worn. Look for cracks and shine, measure the give and the tension, compare motor and pulsator speed with a tachometer. Tight is no better: it eats bearings.
mechanism-pulley-4683c317 = mechanism pulley
watch-it-edge-on-while-it-turns-c2b7c9f8 = Watch it edge-on while it turns with the guard off and nobody near: a wobble is a split hub or a loose nut.
mechanism-4f23c9f6 = mechanism
clutch-lever-at-rest-the-564206e4 = Clutch lever at rest: the pulsator turns both ways, the basket stands; lever pulled: both turn together. A basket that creeps in one direction only, and stops in its usual time after a spin, has a worn one-way bearing; a weak band also stops late. Rumble that rises with speed is the bearing. Whine and a pulsator that gives way are worn gears. Oil below is its last sign.
clutch-set-cdb2fdc0 = clutch set
pull-the-wire-by-hand-brake-eaf78c6b = Pull the wire by hand: brake frees, clutch grips at 10 mm of lever travel, play 1 to 3 mm (data sheet). Motor and gear whine go on while the basket stands: the clutch was never asked. Line current then falls to about 0.7 A on P; a seized bearing or a dragging brake stays near the stalled value.
lid-opened-at-full-spin-the-1c1babcc = Lid opened at full spin: the basket stands within 1.5 to 7 s (data sheet), about 3 s when all is well. Longer: glazed, worn or greasy. By hand, lever released: basket held both ways; lever pulled: free. Held while pulled makes the spin heavy and warm.
service-test-or-on-a-timer-the-63d9fe6d = Service test, or on a timer the dial at drain: wire pulled 16 to 19 mm (data sheet) in about 5 s, whirring. Volts and no whirr: coil. Whirr and no pull: gears or a torn wire. A short pull opens the valve and never reaches the clutch.
drain-motor-n-d7db575a = drain motor N
this-one-only-pulls-the-clutch-0d6d3e30 = This one only pulls the clutch lever; the pump does the emptying.
listen-a-steady-hum-and-no-water-0faee590 = Listen: a steady hum and no water is jammed; silence with volts is open. Ohms at its terminals, its current while draining. Free it by hand before you condemn it: a coin, a cloth, a hairpin. Too much current also blows the board's fuse.
drain-from-high-75-to-130-s-data-2d751c30 = Drain from high: 75 to 130 s (data sheet). Drips at the hose end at rest: dirty seat, coin or torn bellows. Wire pulled and no water: path blocked. Look at where the wire ends before you open anything.
look-kink-behind-the-machine-end-794c69b3 = Look: kink behind the machine, end too high, deep and airtight in a pipe. Low jets and a slow time by the watch are a kink; gurgling and a tub that empties while it fills is a siphon. Joints dry after 5 min at high level.
drain-hose-p-76d0b1e2 = drain hose P
the-end-must-lie-below-the-tub-s-fc942e91 = The end must lie below the tub's floor: there is no pump to lift water. Drain from high 75 to 130 s (data sheet).
drain-hose-t-72d0ab96 = drain hose T
as-on-p-the-end-below-the-tub-s-23ddb5e5 = As on P: the end below the tub's floor, 75 to 130 s from high (data sheet).
drain-hose-n-68d09bd8 = drain hose N
from-high-110-to-190-s-data-e0cecdf6 = From high 110 to 190 s (data sheet). Its end hangs high, with air round it: a pumped hose that lies low empties the tub by itself.
pressure-at-a-gauge-with-no-087a2da5 = Pressure at a gauge with no water running: 30 to 800 kPa (data sheet). Then jug and watch at its end: a strong jet here and a dribble in the tub is the filter or the valve; a dribble here is kink, tap or house.
tachometer-140-to-155-r-min-both-ed9212d3 = Tachometer: 140 to 155 r/min both ways (data sheet). Turns without moving the textiles: cracked; turns and its spline slips: it lags and clicks. Lift it: play up and down is the screw. Stiff by hand with the lever at rest: something lies below.
by-hand-wire-pulled-runs-true-b88c0f37 = By hand, wire pulled: runs true and silent through a full turn. Tips by hand: bolts. Sloshes to one side after standing: ring. Scratching once a turn: a thing between basket and tub. Full spin 720 to 790 r/min (data sheet).
water-over-the-rim-in-the-spin-adc7b59a = Water over the rim in the spin, none while it stands: look at the seal lip all round.
tub-filled-to-high-and-left-for-9553ae6f = Tub filled to high and left for 30 min: wet under the centre is the seal. Wipe dry first, and look at the hoses before you lift the basket.
as-for-the-seal-wet-where-no-ee6e77aa = As for the seal: wet where no joint and no shaft is, with the level falling.
rods-3212ef57 = rods
empty-tub-hangs-straight-pushed-b692fc43 = Empty: tub hangs straight, pushed down it settles after 2 or 3 swings. Weak springs, oily cups and an unhooked rod look alike from above: look at every corner. A knock at the same speed each time is the tub touching the cabinet.
spirit-level-both-ways-at-most-a219f103 = Spirit level both ways: at most 10 mm on a metre (data sheet). Press each corner: no rocking. Do it with the machine in its place, not where you worked.
look-6-bolts-nothing-touching-b90357b0 = Look: 6 bolts, nothing touching the belt. Off is also a finding.
look-and-hold-it-to-the-light-a-a344c801 = Look and hold it to the light. A packed one slows the emptying and leaves lint on the washing.

### validation.md

what-the-machines-compute-was-20533a27 = What the machines compute was compared with things from outside: an independent circuit simulator, general numerical libraries, published examples, standards. 1671 checks, all within their tolerance. [Every one of them](validation.html), with a plot for each domain.
by-domain-ea0be4a8 = By domain
diagnosis-and-score-447-checks-061fe18b = {"*"}*Diagnosis and score**: 447 checks; half of them nearer than 2.692e-7 of the value; the one that uses most of its tolerance uses 50 %. Against: enumeration of 120 orders; enumeration; enumeration of 24 orders; LP; policy tree enumeration; policy tree enumeration with fault fixed.
measurement-of-people-and-jobs-53aea688 = {"*"}*Measurement of people and jobs**: 587 checks; half of them nearer than 3.625e-7 of the value; the one that uses most of its tolerance uses 54 %. Against: enumeration of 2^k paths = pyagrum DBN; enumeration of extended paths; enumeration; scipy.integrate.quad; grid argmax; direct.
motor-22-checks-half-of-them-b3917039 = {"*"}*Motor**: 22 checks; half of them nearer than 0.00125213 of the value; the one that uses most of its tolerance uses 83 %. Against: worked examples of a textbook of electric machinery.
electric-network-450-checks-half-719e59be = {"*"}*Electric network**: 450 checks; half of them nearer than 1.877e-9 of the value; the one that uses most of its tolerance uses 47 %. Against: ngspice.
water-and-air-57-checks-half-of-cd358616 = {"*"}*Water and air**: 57 checks; half of them nearer than 1.400e-7 of the value; the one that uses most of its tolerance uses 70 %. Against: iapws IF97; published: IAPWS-IF97 table 5; iapws; closed form; brentq on Boyle balance; brentq + LC formula.
drive-and-motor-66-checks-half-8ad5b1b2 = {"*"}*Drive and motor**: 66 checks; half of them nearer than 3.405e-7 of the value; the one that uses most of its tolerance uses 99 %. Against: published formula; closed form; 4x4 phasor solution in fixed axes; 4x4 phasor; symmetry: forward and backward fields equal; solve_ivp DOP853 of the transient 2-axis machine.
heat-10-checks-half-of-them-120f8bbe = {"*"}*Heat**: 10 checks; half of them nearer than 2.575e-5 of the value; the one that uses most of its tolerance uses 23 %. Against: published: IEC 60028 coefficient; published: resistance method k=235; closed form; matrix exponential; linear solve; solve_ivp DOP853 rtol 1e-10.
suspension-23-checks-half-of-9616f5b9 = {"*"}*Suspension**: 23 checks; half of them nearer than 5.000e-8 of the value; the one that uses most of its tolerance uses 3 %. Against: published: Thomson; published: Rao; solve_ivp LSODA; closed form; solve_ivp DOP853 rtol 1e-9; linear solve of 4-spring plate.
sound-6-checks-half-of-them-3a4bdc39 = {"*"}*Sound**: 6 checks; half of them nearer than 4.933e-8 of the value; the one that uses most of its tolerance uses 0 %. Against: published table value; closed form; published formula.
whole-cycle-3-checks-half-of-ddf17c63 = {"*"}*Whole cycle**: 3 checks; half of them nearer than 0.000550927 of the value; the one that uses most of its tolerance uses 74 %. Against: piecewise solve_ivp; piecewise solve_ivp with event location.
besides-these-each-run-of-the-ac6185d8 = Besides these, each run of the tests compares 200 random networks and 60 states of faulty machines node by node with the circuit simulator, where that is installed.
what-the-words-mean-4c119e62 = What the words mean
expected-the-value-from-outside-b3559174 = {"*"}*Expected**: the value from outside, computed once by its source.
computed-what-this-program-gives-d043e098 = {"*"}*Computed**: what this program gives for the same question.
tolerance-the-largest-difference-3bbf0d41 = {"*"}*Tolerance**: the largest difference a test accepts. For the network a thousandth of the value, or a floor under which a reading says "nothing".
what-is-not-modelled-and-values-e32db06c = What is not modelled, and values from memory
the-limits-handbook-limits-name-7f022f98 = {"["}The limits](#/handbook/limits) name both. A value marked "from memory" in the program was recalled, not looked up; one marked "common practice" is what the trade does; "design choice" is ours.

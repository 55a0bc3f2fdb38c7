### score/behaviour.rs

what-value-a-sound-one-sound-358ac331 = { $what }: { $value }, a sound one { $sound }
ends-after-minutes-min-with-dce57c94 = ends after { $minutes } min with “{ $alarm }”
does-not-come-to-an-end-within-359ba110 = does not come to an end within two hours
ends-after-minutes-min-a-sound-ca00302b = ends after { $minutes } min, a sound one { $sound } min
it-does-nothing-at-all-as-if-it-89fc0671 = It does nothing at all, as if it were not plugged in.
i-press-start-and-no-water-comes-a7a82a4f = I press start and no water comes.
the-water-runs-and-runs-and-it-14aa4b68 = The water runs and runs and it never begins to wash.
it-takes-water-and-then-it-does-a5d5e06f = It takes water, and then it does not wash.
it-takes-ages-to-fill-ae608234 = It takes ages to fill.
there-is-far-too-much-water-in-9d0d35b8 = There is far too much water in it.
it-washes-with-too-little-water-1c1e6d70 = It washes with too little water.
it-washes-feebly-not-as-it-used-048cac54 = It washes feebly, not as it used to.
the-basket-goes-round-with-the-0c6b1881 = The basket goes round with the washing and things get torn.
it-takes-long-to-empty-d2d7d5e8 = It takes long to empty.
the-water-stays-in-it-72b78f95 = The water stays in it.
it-washes-and-empties-but-it-31775b27 = It washes and empties, but it does not spin.
it-spins-more-slowly-than-it-did-4d506b65 = It spins more slowly than it did.
when-it-should-spin-it-stops-b96e8393 = When it should spin it stops, takes water again and tries over and over.
it-bangs-and-walks-when-it-spins-735ae646 = It bangs and walks when it spins.
the-washing-comes-out-dripping-ae3905ef = The washing comes out dripping.
there-is-water-on-the-floor-b90d1cd2 = There is water on the floor.
it-gets-hot-stops-and-goes-on-ffd531c7 = It gets hot, stops, and goes on after a while.
it-goes-on-turning-long-after-i-c034d89d = It goes on turning long after I open the lid.
it-tingles-when-i-touch-it-with-77e9ec77 = It tingles when I touch it with bare feet.
it-washes-but-it-makes-a-noise-b6167ccf = It washes, but it makes a noise it did not make before.
in-the-end-it-beeps-and-shows-0953e213 = In the end it beeps and shows “{ $alarm }”.

### score/debrief.rs

line-n-is-a-sound-machine-sound-d2c93d98 = Line { $n }: { $is }; a sound machine: { $sound }

### score/decisions.rs

step-step-cost-avoidable-ae10bcdb = step { $step }: { $cost } avoidable
damage-cost-6d16aa85 = damage: { $cost }
callback-cost-892eed9f = callback: { $cost }
no-decision-cost-more-than-it-503193a0 = no decision cost more than it had to
step-step-what-the-evidence-gave-d60e663c = step { $step }, { $what }: the evidence gave it { $sure } % to put things right, { $standing }
justified-3184949e = justified
defensible-5226aeb4 = defensible
not-justified-f1c86eaf = not justified

### score/diagnosis.rs

the-place-was-not-safe-nothing-6dbbe0c3 = the place was not safe: nothing was looked for
stated-causes-651b7d8c = stated: { $causes }
no-fault-66a79a52 = no fault

### score/economy.rs

parts-fitted-n-790bc343 = parts fitted: { $n }
n-hint-percent-of-what-the-job-b334422d = { $n } hint: { $percent } % of what the job should cost
n-hints-percent-of-what-the-job-5ea40f96 = { $n } hints: { $percent } % of what the job should cost
cost-cost-with-the-visit-to-come-e31f7c0e = cost { $cost } with the visit to come, target { $target }
cost-cost-target-target-bd5c1c2d = cost { $cost }, target { $target }

### score/evidence.rs

work-nothing-in-the-notebook-8e7ea7ec = { $work }: nothing in the notebook spoke for it
work-the-part-was-sound-f5849d02 = { $work }: the part was sound
each-part-fitted-had-a-reading-8e865b34 = each part fitted had a reading behind it

### score/fairness/alike.rs

what-shows-first-03b10862 = “{ $what }” shows: { $first }.
what-shows-first-and-n-more-832e56c8 = “{ $what }” shows: { $first }, and { $n } more.
what-shows-in-nothing-that-can-2e921020 = “{ $what }” shows in nothing that can be read, seen or heard on this bench: only the customer's words point to it, so let the complaint or an answer name it.
what-shows-when-you-how-900069f1 = “{ $what }” shows when you { $how }.
no-instrument-in-the-bag-shows-45c75d37 = No instrument in the bag shows “{ $what }”: put in { $instrument }.
nothing-shows-what-neither-a-7450dbae = Nothing shows “{ $what }”, neither a reading nor a look, a run or a turn by hand: raise its severity.
reads-like-what-until-reading-471e4807 = Reads like “{ $what }” until { $reading } ({ $how }) is read.
reads-like-what-until-you-how-c5186915 = Reads like “{ $what }” until you { $how }.
nothing-tells-it-from-what-and-17337e69 = Nothing tells it from “{ $what }”, and nothing needs to: the same work puts both right.
reads-the-same-as-what-with-the-03e8abe7 = Reads the same as “{ $what }” with the instruments allowed: put { $instrument } in the bag.
nothing-tells-it-from-what-b128b51c = Nothing tells it from “{ $what }”, neither a reading nor a look, a run or a turn by hand: let something else in the job point to it, or choose another fault.

### score/fairness/bars.rs

one-and-other-change-the-same-08e35675 = “{ $one }” and “{ $other }” change the same thing: keep one of them.
the-part-is-not-in-the-van-if-it-a4fc7c96 = The { $part } is not in the van: if it must be replaced, that is a second visit for { $price }.
the-target-is-not-known-yet-take-39ef223a = The target is not known yet: take over what the expert needs, or work the job yourself and enter what it took.
the-budget-of-bar-is-below-the-4bd46656 = The budget of { $bar } is below the { $needs } that a skilled technician needs: raise it to { $room } or more.
the-time-allowed-bar-minutes-is-05a32134 = The time allowed, { $bar } minutes, is below the { $needs } that a skilled technician needs: raise it to { $room } or more.
target-cost-in-minutes-minutes-615d11cc = Target: { $cost }, in { $minutes } minutes.
the-expert-gets-it-right-but-in-050918d1 = The expert gets it right, but in { $minutes } minutes for { $price }: that is more than the job allows.
the-expert-leaves-with-the-b2334c37 = The expert leaves with the machine at work and does not name “{ $fault }”: let something point to it, or take it out.
the-expert-who-knows-no-more-at-478a8e5b = The expert, who knows no more at the door than the apprentice, gets it right in { $minutes } minutes for { $price }: it can be solved with what is allowed.
one-and-next-474c2c83 = { $one } and { $next }
the-expert-does-not-get-it-right-41a18fae = The expert does not get it right: it ended with “{ $causes }” for the cause. That the job can be done rests on the stored target, which comes from a person's work; expect it to be hard.
the-expert-does-not-get-it-right-da1231fa = The expert does not get it right: it ended without a cause. That the job can be done rests on the stored target, which comes from a person's work; expect it to be hard.
the-expert-does-not-get-it-right-21a589b6 = The expert does not get it right with what is allowed: it ended with “{ $causes }” for the cause. Let more point to the cause, allow more instruments, or work it yourself and enter what it took.
the-expert-does-not-get-it-right-1fb5cb9a = The expert does not get it right with what is allowed: it ended without a cause. Let more point to the cause, allow more instruments, or work it yourself and enter what it took.

### score/fairness/customer.rs

the-customer-would-notice-e6f2acc4 = The customer would notice: { $suggested }
while-it-is-there-the-customer-f981e6b5 = While it is there the customer would notice: { $symptoms }.
the-machine-is-sound-the-right-71a5b6e7 = The machine is sound: the right answer is to say so and to show the customer.
the-cause-lies-outside-the-7729ff6e = The cause lies outside the machine and shows in no program: the complaint must come from what the customer knows.
over-a-whole-program-the-57344ad3 = Over a whole program the customer would notice nothing: raise the severity, let the fault come on more often, or let the complaint say when it happens.
the-complaint-names-nothing-that-329139c1 = The complaint names nothing that could be held against the machine: whether it fits is yours to judge.
the-complaint-fits-what-the-0f8eb612 = The complaint fits what the machine does: { $fits }.
the-complaint-fits-what-the-d9ea501c = The complaint fits what the machine does: { $fits }. It also speaks of what the machine does not do over a program: { $other }.
the-machine-does-not-do-what-the-47cb94f0 = The machine does not do what the complaint speaks of ({ $other }): finding that out is part of this job.
the-complaint-speaks-of-what-the-893fef0e = The complaint speaks of what the machine does not do over a program ({ $other }), and of nothing that it does ({ $shown }): take the complaint that the machine's behaviour suggests, or let the customer be mistaken.
it-is-dead-3ade2316 = it is dead
the-house-s-device-trips-0c2708c8 = the house's device trips
it-tingles-to-the-touch-e32ba3f1 = it tingles to the touch
it-runs-without-being-started-0c85b5b0 = it runs without being started
no-water-comes-96c85f3c = no water comes
it-fills-slowly-666bab6c = it fills slowly
too-much-water-d843175d = too much water
too-little-water-f6f41d70 = too little water
it-does-not-wash-ea88b86f = it does not wash
it-turns-one-way-only-d4a2d50f = it turns one way only
it-washes-weakly-6d39dad2 = it washes weakly
the-basket-goes-round-in-the-ab50c927 = the basket goes round in the wash
the-water-stays-in-f78d216c = the water stays in
it-empties-slowly-8b3a682d = it empties slowly
water-leaves-in-the-wash-9e95f417 = water leaves in the wash
it-does-not-spin-c53bc288 = it does not spin
it-spins-weakly-or-leaves-the-af2cba3d = it spins weakly or leaves the washing wet
it-breaks-the-spin-off-and-fills-60fffe33 = it breaks the spin off and fills again
it-shakes-34c3bfbf = it shakes
it-runs-on-after-the-lid-is-d3e2a412 = it runs on after the lid is opened
a-new-noise-52d37240 = a new noise
it-hums-and-nothing-moves-1053f8b9 = it hums and nothing moves
a-smell-of-heat-3ee6fc4a = a smell of heat
it-stops-with-an-alarm-0ad17293 = it stops with an alarm
it-stops-and-goes-on-later-cff4ad89 = it stops and goes on later
the-program-takes-much-longer-740c5372 = the program takes much longer

### score/functional.rs

time-to-fill-783bbba6 = time to fill
water-level-4f73ca56 = water level
pulsator-one-way-aed3e01c = pulsator one way
pulsator-the-other-way-ee5b9ea9 = pulsator the other way
basket-creep-in-the-wash-010d7db5 = basket creep in the wash
time-to-drain-ff19a7d7 = time to drain
spin-speed-a945b026 = spin speed
spins-broken-off-to-spread-the-e5521b2b = spins broken off to spread the load
swing-of-the-tub-3ec74bee = swing of the tub
moisture-left-54c21758 = moisture left
cabinet-to-earth-d5506a6c = cabinet to earth
stop-after-the-lid-is-opened-3e6ab5ec = stop after the lid is opened
loudest-fault-sound-over-normal-54d52709 = loudest fault sound over normal

### score/hindsight.rs

line-n-words-ffbbb770 = line { $n }, { $words }
part-the-part-was-sound-and-8316f90b = { $part }: the part was sound, and nothing in the notebook spoke against it yet
part-the-part-was-sound-already-d9481805 = { $part }: the part was sound; already known: { $lines }
a-look-at-the-place-would-have-44e32422 = A look at the place would have taken { $minutes } min; the { $part } cost { $price }
right-by-accident-as-something-8155212f = Right by accident, as something else was put back: { $what }

### score/matrix.rs

sound-0e0d9594 = sound

### score/matrix_columns.rs

meter-state-pulled-apart-eaa55293 = { $meter }, { $state }, pulled apart
whole-program-f3e082b8 = whole program
washing-one-way-7ef8c2d1 = washing one way
washing-the-other-way-4c60ee78 = washing the other way
# of a machine
off-8778eb8d = off
standby-e0f4bf1e = standby
unplugged-switch-on-67a1997f = unplugged, switch on
ac-volts-4c78ea95 = ac volts
low-ac-volts-8d615643 = low ac volts
dc-volts-25e77aa4 = dc volts
amps-4f5814de = amps

### score/procedure.rs

protective-conductor-measured-52fbafa9 = protective conductor measured
insulation-measured-dfddc2e9 = insulation measured
leakage-measured-7fd14127 = leakage measured
a-run-of-wash-drain-and-spin-ccc3003c = a run of wash, drain and spin
price-agreed-before-the-repair-16429bff = price agreed before the repair
what-done-d6ca0721 = { $what }: done
what-left-out-5bf79664 = { $what }: left out
everything-back-and-checked-b3ff54af = everything back and checked
a-look-for-leaks-3bb47dd4 = a look for leaks
customer-told-deebaafe = customer told

### score/safety.rs

step-step-title-8c30d3f3 = step { $step }: { $title }
went-away-when-it-was-not-safe-6976957f = went away when it was not safe
nothing-was-tested-or-repaired-46f5e84b = nothing was tested or repaired
no-safety-rule-was-broken-8e3a5940 = no safety rule was broken
a-rule-whose-breach-can-kill-at-1f792c26 = a rule whose breach can kill: at most { $most } of 100 for the whole job

### score/visit.rs

asked-on-the-phone-before-062f2939 = asked on the phone before driving
put-right-on-the-first-visit-736d9483 = put right on the first visit
decided-rightly-who-pays-44690535 = decided rightly who pays
the-price-was-agreed-for-what-it-abfc4900 = the price was agreed for what it turned out to be
fee-taken-after-the-estimate-was-e59d5cae = fee taken after the estimate was declined
old-part-shown-94441f2a = old part shown
taught-what-keeps-it-away-31e57d5b = taught what keeps it away
told-and-wrote-down-what-is-ea59a8ea = told and wrote down what is wrong with the house
report-with-a-picture-signed-b28ded00 = report with a picture, signed

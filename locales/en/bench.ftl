### bench/acts/access.rs

the-basket-is-still-turning-49dc3875 = the basket is still turning
it-stands-under-water-take-the-026a2857 = it stands under water: take the water out first
the-supply-hose-still-holds-it-de8f62cd = the supply hose still holds it
the-lid-is-shut-db3c9be3 = the lid is shut
water-ran-out-of-the-joint-with-3db4b7d3 = water ran out of the joint, with nothing under it
the-tub-was-not-empty-its-water-fc368c10 = the tub was not empty: its water ran out over motor and floor
the-machine-slipped-from-the-5e4a1c13 = the machine slipped from the hands: a foot is bent, the floor is chipped

### bench/acts/agree.rs

an-estimate-names-at-least-one-e0e89a25 = an estimate names at least one price
price-is-no-price-43890080 = { $price } is no price
whoever-stands-there-pays-8dfdb819 = whoever stands there pays
no-estimate-was-declined-935f7989 = no estimate was declined
repair-29520bb4 = repair
repair-with-a-part-of-another-39fb46b8 = repair with a part of another make
a-new-machine-instead-3aa8fea9 = a new machine instead
the-tenant-cannot-agree-the-1771c235 = the tenant cannot agree: the landlord pays
customer-declined-4b22d4cd = customer declined
no-receipt-75f22286 = no receipt
no-warranty-1027aaae = no warranty
rating-plate-readable-and-the-81213b3d = rating plate readable and the same number
rating-plate-missing-or-another-e6ad6acb = rating plate missing or another number
signs-of-misuse-5607db98 = signs of misuse
no-sign-of-misuse-50cfc4ae = no sign of misuse
who-pays-the-maker-under-e5b3b1d5 = Who pays: the maker, under warranty
who-pays-whoever-owns-the-1b52c027 = Who pays: whoever owns the machine

### bench/acts/finishing.rs

oh-it-just-does-not-work-as-it-e6bdb210 = Oh, it just does not work as it should.
notebook-line-n-47ec424a = notebook line { $n }
a-remark-needs-words-afc07ab0 = a remark needs words
a-remark-has-at-most-most-31944268 = a remark has at most { $most } letters, this has { $n }
no-fault-in-the-machine-f668fb93 = no fault in the machine
told-and-shown-what-was-wrong-ee1ee418 = Told and shown: what was wrong and what was done
told-how-much-to-load-and-how-to-78b72f6e = Told: how much to load and how to spread it
told-how-much-detergent-69819e4d = Told: how much detergent
told-clean-the-filters-now-and-2eabc7f1 = Told: clean the filters now and then
told-have-the-house-wiring-seen-399ee2aa = Told: have the house wiring seen to by an electrician
told-a-new-machine-is-the-better-d7832225 = Told: a new machine is the better buy
told-keep-it-level-and-do-not-69d0132c = Told: keep it level, and do not move it alone
shown-the-old-part-beside-the-fca5a006 = Shown: the old part beside the new one

### bench/acts/gauge.rs

this-instrument-is-not-in-the-860b6203 = this instrument is not in the bag on this job
the-hose-is-on-the-machine-shut-266f23ca = the hose is on the machine: shut the tap and take it off first
the-hose-is-off-f57073a2 = the hose is off
the-basket-stands-there-is-9eaa4134 = the basket stands: there is nothing to time
no-water-runs-in-there-is-6575a42f = no water runs in: there is nothing to time
no-water-runs-out-there-is-21c6ec06 = no water runs out: there is nothing to time
the-drain-motor-rests-there-is-96d335f3 = the drain motor rests: there is nothing to time
the-belt-runs-3f6b8759 = the belt runs
there-is-no-belt-to-gauge-it-b821af7b = there is no belt to gauge: it hangs or is off
the-lever-s-end-lies-beside-its-7913fc0e = the lever's end lies beside its link: there is no play to measure
the-supply-line-was-opened-under-bf34f294 = the supply line was opened under pressure

### bench/acts/handle.rs

blanket-laid-where-the-machine-75b45cc7 = Blanket laid where the machine will lie
asked-for-the-room-to-be-kept-e8876b02 = Asked for the room to be kept free
floor-mopped-dry-c9744667 = Floor mopped dry
a-bucket-of-cold-water-poured-in-70b2f5d6 = A bucket of cold water poured in
wiring-of-the-house-worked-on-c5f0bfb2 = Wiring of the house worked on
dried-inside-with-cloth-and-warm-20e4f50d = Dried inside, with cloth and warm air
the-cabinet-has-marked-the-floor-bf557d5d = the cabinet has marked the floor
you-slipped-on-the-wet-floor-02114269 = you slipped on the wet floor
the-sheet-edge-cut-your-hand-c47d3178 = the sheet edge cut your hand
hot-water-ran-over-your-hand-9d0a45f8 = hot water ran over your hand
the-part-is-too-hot-to-touch-b01bba3c = the part is too hot to touch

### bench/acts/isolate.rs

the-plug-is-in-the-socket-966b8abd = the plug is in the socket
the-supply-hose-came-off-under-1fc81830 = the supply hose came off under pressure
the-blade-of-a-screwdriver-with-9f8610e6 = the blade of a screwdriver, with a crack and a burnt spot

### bench/acts/leave.rs

the-van-has-eight-slots-for-6a1f2cda = the van has eight slots for parts
part-is-no-longer-made-3b4af813 = { $part } is no longer made
left-until-the-second-visit-17c44901 = Left until the second visit, labelled “do not use”
left-until-the-second-visit-b4572f07 = Left until the second visit, without a label
second-visit-somebody-has-tried-8ad901b6 = Second visit: somebody has tried it; plug in, tap open
second-visit-as-it-was-left-acba5e31 = Second visit: as it was left
left-isolated-and-labelled-e11b83fe = Left isolated and labelled; customer informed
handed-over-66c265b1 = Handed over

### bench/acts/measure.rs

the-plug-is-in-the-socket-pull-f748e9e3 = the plug is in the socket: pull it first
the-cord-s-conductors-lie-in-one-7fb9679c = the cord's conductors lie in one sheath: put the splitter lead in
current-a-through-the-instrument-105805c7 = { $current } A through the instrument until its 10 A fuse opened, { $time } ms
the-instrument-8a81578d = the instrument
instrument-9a67fb30 = instrument
the-spare-instrument-is-in-hand-4d652250 = The spare instrument is in hand

### bench/acts/mod.rs

a-day-has-passed-since-you-rang-c810b28c = a day has passed since you rang the bell: say what you found, and hand over or make it safe and leave
water-has-run-onto-the-floor-2c494f72 = water has run onto the floor

### bench/acts/office.rs

you-are-at-the-customer-s-bad8a7a6 = you are at the customer's already
the-store-has-no-part-today-ecf2c7a2 = the store has no { $part } today
one-part-is-enough-687d235e = one { $part } is enough

### bench/acts/order.rs

the-raised-cover-came-down-on-fa355d42 = the raised cover came down on the hands: nothing held it

### bench/acts/parts.rs

the-part-in-the-machine-is-the-84b2211c = the part in the machine is the old one
once-fitted-it-is-sold-the-store-191d6d9e = once fitted it is sold: the store does not take it back

### bench/acts/report.rs

picture-taken-the-machine-from-a5607239 = Picture taken: the machine from outside
picture-taken-the-machine-opened-56213837 = Picture taken: the machine opened
the-report-names-no-cause-yet-4d0ade5c = the report names no cause yet
the-customer-wants-to-be-told-6c295f89 = the customer wants to be told first what was done
report-read-and-signed-by-the-925cd26a = Report read and signed by the customer

### bench/acts/touch.rs

# it opened the circuit
nothing-60823bd0 = nothing
zone-effect-3a3b86e7 = { $zone } ({ $effect })
the-hand-be251895 = the hand

### bench/after_repair.rs

en-50678-en-50699-from-memory-9f4db445 = EN 50678 / EN 50699 (from memory)
common-practice-7984cd95 = common practice
plug-cord-covers-and-screws-e04f4f25 = plug, cord, covers and screws; nothing left off, no wire under an edge
nothing-damaged-or-missing-807290be = nothing damaged or missing
protective-conductor-fdcbd96f = protective conductor
plug-out-earth-pin-to-the-50787348 = plug out: earth pin to the cabinet
t-0-3-at-most-abf45ab9 = 0.3 Ω at most
t-1-m-at-least-abadc69a = 1 MΩ at least
protective-conductor-current-9d3ffd43 = protective-conductor current
plug-in-running-shows-most-the-876382f2 = plug in, running shows most: the leakage clamp round line and neutral together
t-3-5-ma-at-most-bcf24447 = 3.5 mA at most
touch-current-8f797c6d = touch current
plug-in-running-shows-most-metal-50c19b61 = plug in, running shows most: metal that a hand reaches, through 2 kΩ to earth
t-0-5-ma-at-most-84defd64 = 0.5 mA at most
functions-454a414e = functions
fill-wash-both-ways-drain-spin-cc708574 = fill, wash both ways, drain, spin
each-of-them-seen-5708d2b8 = each of them seen
lid-304cbc86 = lid
opened-at-full-spin-the-basket-d71dd327 = opened at full spin: the basket stands within 7 s
t-7-s-at-most-7746f6d3 = 7 s at most
from-memory-e401e148 = from memory
leaks-7aa35ac7 = leaks
after-filling-and-draining-look-cd717f0c = after filling and draining, look under the machine
dry-dc25c75e = dry
plug-out-timer-knob-pulled-out-d800b4fa = plug out, timer knob pulled out: line and neutral together to the earth pin, 500 V
plug-out-switch-pressed-in-line-52e2ba28 = plug out, switch pressed in: line and neutral together to the earth pin, 500 V
plug-out-line-and-neutral-53a28c09 = plug out: line and neutral together to the earth pin, 500 V

### bench/bill.rs

fee-for-finding-the-fault-08efa26e = fee for finding the fault
to-pay-71acc4c2 = to pay
call-out-1531ebd0 = call-out
second-visit-5c3422ca = second visit
labour-n-min-30497682 = labour, { $n } min
part-name-33bd0173 = part: { $name }
small-material-919d814d = small material
to-pay-the-maker-pays-a9c11742 = to pay: the maker pays
to-pay-as-agreed-89c12162 = to pay, as agreed

### bench/gauge.rs

off-the-scale-e5283ddf = off the scale

### bench/gauge_scales.rs

jug-and-watch-ce04472b = jug and watch
a-bucket-under-it-hot-water-e4d10194 = a bucket under it; hot water scalds
watch-5fb7b228 = watch
pressure-gauge-e4b9b98d = pressure gauge
tap-shut-and-hose-bled-before-6cac90bc = tap shut and hose bled before the tee goes in
u-tube-4387b325 = U-tube
never-blow-hard-into-the-sensor-18d1f7c1 = never blow hard into the sensor
tachometer-c9276a77 = tachometer
by-its-beam-from-outside-no-hand-8baefd92 = by its beam from outside: no hand near what turns
spirit-level-5c3c6e8e = spirit level
spring-balance-and-rule-5b81decd = spring balance and rule
keep-fingers-out-of-the-pulleys-f477c42a = keep fingers out of the pulleys
belt-gauge-cab1d473 = belt gauge
contact-thermometer-7a3303b3 = contact thermometer
the-motor-stays-hot-long-after-16773ab0 = the motor stays hot long after it has stopped
rule-fc2e40d3 = rule

### bench/hint.rs

a-question-back-cbeeb1d3 = a question back
where-to-look-9fe91c80 = where to look
which-step-848d41b4 = which step
what-it-would-mean-8e36383e = what it would mean
this-job-gives-no-hints-63a26d95 = this job gives no hints
there-is-no-further-hint-until-eafcd752 = there is no further hint until something else is done

### bench/instrument.rs

the-battery-sign-is-on-74183b33 = the battery sign is on
ohms-35092b8a = ohms
earth-bond-0-2-a-6d5447ab = earth bond, 0.2 A
a-lead-is-cracked-down-to-the-45e5d288 = a lead is cracked down to the wire
leads-whole-to-look-at-51a32110 = leads whole to look at
no-measurement-category-printed-45342f62 = no measurement category printed on it

### bench/kept.rs

it-gives-n-mm-under-a-finger-8e5a0f32 = it gives { $n } mm under a finger
the-wire-travels-n-mm-c2e5847a = the wire travels { $n } mm
pushed-it-settles-after-n-swings-1b66f4ee = pushed, it settles after { $n } swings
about-n-l-min-at-the-hose-end-957d08db = about { $n } L/min at the hose end
water-about-n-mm-deep-7883e0b1 = water about { $n } mm deep
the-basket-turns-about-n-r-min-e9e24efa = the basket turns, about { $n } r/min
the-tub-swings-about-n-mm-b578ba47 = the tub swings about { $n } mm
the-pulsator-turns-one-way-about-f1e35713 = the pulsator turns one way, about { $n } r/min
the-pulsator-turns-the-other-way-125e6370 = the pulsator turns the other way, about { $n } r/min
the-machine-leans-about-n-to-one-3b0446c7 = the machine leans, about { $n }° to one side
about-n-mm-of-play-c4869e51 = about { $n } mm of play
pulled-about-n-mm-4bd73740 = pulled about { $n } mm
the-wire-is-pulled-n-mm-4c05e4d3 = the wire is pulled { $n } mm
the-label-says-n-f-28ad7563 = the label says { $n } µF
about-n-mm-between-lever-and-tub-131a420a = about { $n } mm between lever and tub
probes-together-on-instrument-59125993 = probes together on { $instrument }: { $value }
battery-at-n-of-its-voltage-04407f61 = battery at { $n } % of its voltage
calibrated-n-months-ago-d2effcfc = calibrated { $n } months ago
category-category-printed-on-it-70af536f = category { $category } printed on it
the-connector-is-apart-37df8183 = the { $connector } is apart
wire-it-does-not-sit-home-9b733956 = { $wire }: it does not sit home
wire-brown-and-rough-64116e34 = { $wire }: brown and rough
point-the-contactless-tester-b13b2f8d = { $point }: the contactless tester lights
point-the-contactless-tester-ac1c1e66 = { $point }: the contactless tester stays dark
remark-own-6b814b4f = Remark: { $own }
price-named-offers-answer-16898539 = Price named: { $offers }; { $answer }
customer-agreed-what-eda9cec3 = customer agreed: { $what }
customer-asks-could-you-do-it-7347a084 = customer asks: could you do it for { $price }?
offer-or-other-02bacc96 = { $offer }, or { $other }
what-for-price-fef2e461 = { $what } for { $price }
landlord-on-the-phone-agrees-to-c8986f48 = Landlord on the phone: agrees to a repair up to { $price }
fee-for-finding-the-fault-price-ca048e2d = Fee for finding the fault: { $price }
papers-bought-covered-plate-1a1d634c = Papers: { $bought }; { $covered }; { $plate }; { $misuse }
bought-n-months-ago-by-the-f1ca66de = bought { $n } months ago by the receipt
the-maker-pays-for-n-months-1f28d9eb = the maker pays for { $n } months
fault-found-causes-f3d2d4b9 = Fault found: { $causes }
cause-other-a046f299 = { $cause }; { $other }
part-old-one-put-back-new-one-5747b0a7 = { $part }: old one put back, new one back in the van
connector-pulled-apart-c69e9d9e = { $connector }: pulled apart
connector-pushed-home-8b5e613a = { $connector }: pushed home
name-verb-1-of-n-is-left-over-on-8f3ac54f = { $name }: { $verb }; 1 of { $n } is left over on the cloth
name-verb-checked-d62de14e = { $name }: { $verb }, checked
work-1-of-n-is-left-over-on-the-767e9010 = { $work }; 1 of { $n } is left over on the cloth
work-checked-a6d3b9bb = { $work }, checked
name-verb-5c4a4d59 = { $name }: { $verb }
machine-it-says-so-on-the-front-acb4225e = { $machine }. It says so on the front.
voltage-on-the-circuit-about-n-v-9747a7cb = voltage on the circuit: about { $n } V
n-mm-water-ab9a4664 = { $n } mm water
dial-at-n-2bffd6a4 = dial at { $n }
level-name-e0e2bd56 = level { $name }
low-4f516a81 = low
medium-35afd776 = medium
high-3dddb9fd = high
service-test-n-26b1f1d8 = Service test { $n }
lid-closed-fec9fade = lid closed
lid-open-6801fcda = lid open
off-ab3a8a0a = off
running-147eb74c = running
on-61342fd0 = on
on-display-dark-3f44003a = on, display dark
ready-660ec0f4 = ready
starts-later-5e91d8d6 = starts later
soaking-a3f6314d = soaking
stopping-160a4da9 = stopping
spreading-the-load-b6b8048f = spreading the load
close-the-lid-d511a9a1 = close the lid
paused-0a1997cb = paused
waiting-for-the-supply-e9769d97 = waiting for the supply
power-was-off-press-start-to-go-da7c2d03 = power was off: press start to go on
finished-ade176a3 = finished
service-test-2912eca8 = service test
drain-the-tub-first-bd65a183 = drain the tub first
fills-too-slowly-fa271a53 = fills too slowly
drains-too-slowly-65e337e6 = drains too slowly
basket-keeps-swinging-d1e48139 = basket keeps swinging
lid-is-open-cfa59aaa = lid is open
water-level-reading-not-127ef074 = water level reading not plausible
overflow-danger-4e08b9aa = overflow danger
the-display-reads-shown-25978513 = the display reads “{ $shown }”

### bench/observe/feel.rs

the-valve-trembles-with-the-43df6979 = the valve trembles with the mains
the-drain-hose-is-squeezed-or-fc4b0dc4 = the drain hose is squeezed or full of lint at one spot
the-basket-tilts-on-its-flange-a71d6622 = the basket tilts on its flange
the-pulsator-lifts-and-rattles-8eea82ae = the pulsator lifts and rattles
too-hot-to-touch-59beeaec = too hot to touch
warm-81fa6638 = warm
cool-f03e2abc = cool

### bench/observe/hands.rs

the-pulsator-is-jammed-something-c98a3a1a = the pulsator is jammed; something is under it
the-pulsator-scrapes-8453372f = the pulsator scrapes
the-pulsator-slips-on-its-shaft-27ef437f = the pulsator slips on its shaft with a click
the-pulsator-turns-with-even-bad405fb = the pulsator turns with even resistance
behind-the-gear-something-is-668190bb = behind the gear something is seized
the-basket-is-held-06848431 = the basket is held
the-basket-turns-but-drags-on-1f0a9afb = the basket turns but drags on the brake
the-basket-turns-freely-2c6a3ff7 = the basket turns freely
it-turns-roughly-with-a-rumble-398ebe16 = it turns roughly, with a rumble
a-scratch-once-a-turn-6ac13103 = a scratch once a turn
the-motor-shaft-does-not-turn-438a4ba6 = the motor shaft does not turn
the-motor-shaft-is-stiff-8abf9f25 = the motor shaft is stiff
the-motor-shaft-turns-freely-bac7860e = the motor shaft turns freely
there-is-no-belt-to-press-67b96353 = there is no belt to press
the-clutch-lever-stays-where-it-5d1cf0b3 = the clutch lever stays where it is
the-lever-follows-and-the-brake-d0a744c8 = the lever follows and the brake frees
the-lever-follows-but-the-brake-e34aac1b = the lever follows but the brake does not free
moved-by-hand-the-brake-frees-a02ecbb9 = moved by hand the brake frees
moved-by-hand-the-brake-still-980d5e66 = moved by hand the brake still holds
the-clutch-grips-03091a20 = the clutch grips
the-clutch-slips-8fb7a1aa = the clutch slips
the-tub-cannot-be-pushed-0ee83d00 = the tub cannot be pushed
the-lever-does-not-spring-back-f84fe200 = the lever does not spring back
the-lever-clicks-and-springs-4ee09259 = the lever clicks and springs back

### bench/observe/listen.rs

a-steady-hum-9aec83d8 = a steady hum
a-fan-s-rush-from-below-1217d5b4 = a fan's rush from below
a-thin-whine-from-the-motor-8e2ef416 = a thin whine from the motor
a-soft-thump-at-the-belt-s-rate-45b850c3 = a soft thump at the belt's rate
a-squeal-from-below-147114fc = a squeal from below
a-gear-s-whine-bf3e006a = a gear's whine
a-knock-at-each-reversal-7bc7a7bc = a knock at each reversal
water-swashing-aed4d596 = water swashing
air-rushing-round-the-basket-8df0996c = air rushing round the basket
a-rumble-once-the-basket-turns-0d99fa0d = a rumble once the basket turns
a-scrape-once-a-turn-83b64965 = a scrape once a turn
the-tub-bangs-against-the-0d88e318 = the tub bangs against the cabinet
water-running-in-6c44ed96 = water running in
a-hiss-at-the-back-023c7540 = a hiss at the back
a-faint-hum-at-the-back-ce228181 = a faint hum at the back
a-thud-in-the-pipe-6e6882b5 = a thud in the pipe
water-running-out-873ca3d7 = water running out
a-gurgle-in-the-drain-0f1ddfda = a gurgle in the drain
a-pump-s-buzz-ab07c409 = a pump's buzz
a-small-whirr-from-below-1b06184e = a small whirr from below
a-faint-hum-from-below-3a4007c1 = a faint hum from below
a-clack-from-below-67970299 = a clack from below
something-rattles-in-the-cabinet-34dbdb24 = something rattles in the cabinet
a-rub-while-the-basket-stops-0a52b57a = a rub while the basket stops

### bench/observe/look.rs

the-tap-is-shut-e3ed3ad7 = the tap is shut
the-tap-is-hardly-open-259daf45 = the tap is hardly open
the-tap-is-open-a517b4f1 = the tap is open
the-supply-hose-is-kinked-behind-f07fe548 = the supply hose is kinked behind the machine
drops-at-the-hose-nut-c032328d = drops at the hose nut
the-inlet-filter-is-packed-with-e49a8cad = the inlet filter is packed with sand and rust
the-inlet-filter-is-mostly-cd650135 = the inlet filter is mostly covered with dirt
the-inlet-filter-is-clean-ad4a47ff = the inlet filter is clean
a-thin-trickle-at-the-hose-end-e1d7bb05 = a thin trickle at the hose end
the-hose-end-hangs-too-high-0ea97571 = the hose end hangs too high
the-hose-end-lies-too-low-008fa5b3 = the hose end lies too low
suds-come-out-of-the-hose-end-f1a441d6 = suds come out of the hose end
a-puddle-under-the-machine-e8e03790 = a puddle under the machine
damp-under-the-machine-7b9933b3 = damp under the machine
dry-under-the-machine-09b1185e = dry under the machine
the-display-is-dark-1cdbcfda = the display is dark
the-lid-is-open-03e1d7b5 = the lid is open
a-thick-layer-of-suds-4bcbbbc2 = a thick layer of suds
the-tub-hangs-crooked-125a3447 = the tub hangs crooked
the-pulsator-stands-still-7aae8811 = the pulsator stands still
the-pulsator-sits-loose-f26cefa9 = the pulsator sits loose
the-machine-leans-a-little-to-9515aefd = the machine leans a little to one side
the-machine-stands-level-100c8274 = the machine stands level
one-foot-lifts-when-a-corner-is-06c3485b = one foot lifts when a corner is pressed
the-plug-is-in-its-socket-e0909252 = the plug is in its socket
the-plug-is-out-ffbeef24 = the plug is out
a-crust-of-salt-on-the-balance-89bdbb50 = a crust of salt on the balance ring

### bench/observe/look_below.rs

the-belt-is-off-454c8016 = the belt is off
the-belt-hangs-slack-black-dust-9f169116 = the belt hangs slack; black dust around the pulleys
the-belt-is-tight-as-a-string-144a48eb = the belt is tight as a string
the-belt-sits-in-line-a5802115 = the belt sits in line
the-belt-s-flanks-are-dark-and-cda68876 = the belt's flanks are dark and shiny
the-belt-is-cracked-f0ad8b1c = the belt is cracked
the-pulley-s-mark-has-moved-9101f9cb = the pulley's mark has moved against the shaft
the-motor-stands-still-93c88ad4 = the motor stands still
the-motor-s-slots-are-full-of-c5c99897 = the motor's slots are full of fluff
the-clutch-lever-s-end-lies-0e263851 = the clutch lever's end lies beside its link
the-clutch-lever-sits-in-its-dd5ba85d = the clutch lever sits in its link
the-clutch-lever-does-not-go-9f816405 = the clutch lever does not go back all the way
the-wire-is-at-rest-e44adb3e = the wire is at rest
lint-and-cloth-in-the-drain-9ea9b48f = lint and cloth in the drain valve
the-bellows-does-not-close-on-a37b2ed4 = the bellows does not close on its seat
dirt-on-the-valve-seat-5b38afc9 = dirt on the valve seat
the-drain-joint-is-wet-333763ae = the drain joint is wet
the-capacitor-s-can-is-swollen-554ea69c = the capacitor's can is swollen
the-impeller-does-not-turn-fc1472df = the impeller does not turn; something sits in it
the-impeller-turns-with-a-finger-dcbd45ea = the impeller turns with a finger
the-air-hose-is-off-or-split-f8197913 = the air hose is off or split
a-chafed-spot-on-the-air-hose-fd296ae0 = a chafed spot on the air hose
the-air-hose-is-pinched-flat-f0c79ae9 = the air hose is pinched flat
the-air-hose-has-a-kink-e6ff9d75 = the air hose has a kink
a-rusty-track-of-water-below-the-a65ffd06 = a rusty track of water below the gearbox
the-gearbox-moves-against-its-d15df09b = the gearbox moves against its plate
the-transport-pieces-are-still-b126116f = the transport pieces are still in
one-rod-is-out-of-its-seat-4fe09bee = one rod is out of its seat
one-spring-is-shorter-than-the-ea632e3a = one spring is shorter than the others
oil-on-the-rods-cups-3efe773d = oil on the rods' cups
the-lid-switch-is-not-pressed-2756ccbe = the lid switch is not pressed
the-lid-presses-the-lid-switch-9555f61c = the lid presses the lid switch
a-wire-bridge-sits-across-its-b7626417 = a wire bridge sits across its terminals
the-out-of-balance-lever-is-403521e3 = the out-of-balance lever is pushed already, with the tub at rest
the-out-of-balance-lever-is-bent-e5f5dc46 = the out-of-balance lever is bent away from the tub

### bench/observe/mod.rs

nothing-unusual-e5a680f1 = nothing unusual
drops-of-water-on-motor-and-110f763f = drops of water on motor and plugs
quiet-ea353217 = quiet
hot-varnish-f0fd6da3 = hot varnish
hot-rubber-82d6397e = hot rubber
scorched-plastic-d1b233c0 = scorched plastic

### bench/observe/surroundings.rs

water-stands-in-the-room-more-13b33a2a = water stands in the room, more than a machine holds
somebody-stands-in-the-door-and-32ec82e7 = somebody stands in the door and shouts
the-socket-is-brown-and-soft-04ab1052 = the socket is brown and soft
the-plug-sits-in-an-adaptor-with-c03ecce9 = the plug sits in an adaptor with other plugs
the-plug-sits-in-a-rolled-up-eeda0ffe = the plug sits in a rolled-up extension reel
no-residual-current-device-in-d9f1874d = no residual current device in the board beside it
a-small-child-comes-to-look-280b9f64 = a small child comes to look
a-dog-lies-in-front-of-the-020a0b4e = a dog lies in front of the machine
a-soft-floor-that-marks-easily-6236297e = a soft floor that marks easily
the-cut-edges-of-the-sheet-are-951816fb = the cut edges of the sheet are bare
steam-rises-from-the-water-a2d3888f = steam rises from the water

### bench/observe/wires.rs

a-wire-is-chafed-bare-copper-2c4d8944 = a wire is chafed; bare copper touches metal
damp-and-green-between-the-pins-c9976cfa = damp and green between the pins

### bench/protection.rs

residual-current-device-e0830ed7 = residual current device
circuit-breaker-23d46db8 = circuit breaker
machine-fuse-367ca20f = machine fuse

### bench/questions.rs

when-in-the-wash-does-it-happen-7a1ed525 = When in the wash does it happen?
since-when-did-it-come-slowly-or-118ac7d8 = Since when? Did it come slowly or at once?
does-it-happen-every-time-b045c126 = Does it happen every time?
what-does-the-display-show-does-2610a410 = What does the display show? Does it beep?
does-it-make-a-noise-it-did-not-f0ea70c5 = Does it make a noise it did not make before?
any-smell-smoke-or-wet-floor-2fd6aa83 = Any smell, smoke or wet floor?
has-anyone-worked-on-it-or-moved-0da3ed19 = Has anyone worked on it or moved it?
what-was-in-it-how-much-and-how-14f63e5f = What was in it, how much, and how much powder?
is-the-tap-open-and-is-the-water-fe23ce1a = Is the tap open, and is the water strong elsewhere?
has-a-breaker-tripped-is-it-on-9752660a = Has a breaker tripped? Is it on an extension lead?
which-machine-is-it-and-how-old-beba7e7d = Which machine is it, and how old?
what-does-it-still-do-and-where-27e7f955 = What does it still do, and where does it stop?
where-does-it-stand-and-can-991cb6e3 = Where does it stand, and can somebody help to lay it down?

### bench/safety/closing.rs

handed-over-with-a-failed-earth-1da023cf = Handed over with a failed earth test
without-earth-the-next-fault-is-88af2c24 = Without earth the next fault is on the cabinet, where the customer's hand is.
published-en-50678-en-50699-from-3a49add1 = published: EN 50678, EN 50699 (from memory: 0.3 ohm with a cord to 5 m)
mend-the-earth-and-test-again-or-d1dfb6c3 = Mend the earth and test again, or put the machine out of use.
handed-over-with-a-failed-cf4cc757 = Handed over with a failed insulation test
what-leaks-through-today-flashes-708c10ba = What leaks through today flashes over tomorrow.
published-en-50678-en-50699-from-5d3a708f = published: EN 50678, EN 50699 (from memory: 1 Mohm, class I)
find-the-wet-or-burnt-part-test-e535eea8 = Find the wet or burnt part, test again, or put the machine out of use.
handed-over-with-too-much-5619daed = Handed over with too much leakage current
all-of-it-flows-through-a-hand-3e3c7df6 = All of it flows through a hand as soon as the earth breaks.
published-en-50678-en-50699-from-4f83b4b0 = published: EN 50678, EN 50699 (from memory: 3.5 mA)
find-the-part-that-leaks-test-6da987f9 = Find the part that leaks, test again, or put the machine out of use.
no-earth-test-after-the-repair-a32ec6f0 = No earth test after the repair
an-earth-link-left-off-shows-in-32c1f799 = An earth link left off shows in no function of the machine.
published-en-50678-from-memory-86d999d4 = published: EN 50678 (from memory)
plug-earth-to-every-metal-part-f04ac021 = Plug earth to every metal part one can touch, moving the cord.
no-insulation-or-leakage-test-3f0e8ebd = No insulation or leakage test after the repair
a-pinched-wire-works-perfectly-a6604e74 = A pinched wire works perfectly until somebody touches the cabinet.
t-500-v-dc-line-and-neutral-joined-4426da6e = 500 V dc, line and neutral joined, against earth; then leakage in each state.
no-run-after-the-repair-54687c97 = No run after the repair
half-of-what-is-left-wrong-shows-7077594e = Half of what is left wrong shows in the first five minutes.
published-en-50678-from-memory-06d7c550 = published: EN 50678 (from memory): function is the last test; common practice
fill-both-directions-drain-spin-9826506c = Fill, both directions, drain, spin to full speed.
did-not-try-that-the-lid-stops-92e2fa25 = Did not try that the lid stops the spin
a-welded-switch-or-a-weak-brake-daddf9cb = A welded switch or a weak brake gives no sign until it is tried.
published-iec-60335-2-7-from-685afc17 = published: IEC 60335-2-7 (from memory); common practice
open-the-lid-at-full-speed-it-c25d898c = Open the lid at full speed: it stops in about 3 s.
left-with-a-cover-off-68e884d9 = Left with a cover off
live-and-moving-parts-are-within-37fdb329 = Live and moving parts are within everybody's reach.
published-iec-60335-1-8-from-941a969b = published: IEC 60335-1, 8 (from memory)
close-the-machine-also-when-it-74bef626 = Close the machine, also when it is only until the next visit.
left-with-an-earth-link-off-46684350 = Left with an earth link off
it-works-so-somebody-will-use-it-729b6bc6 = It works, so somebody will use it.
published-en-50678-from-memory-df65f1e7 = published: EN 50678 (from memory); common practice
refit-every-earth-link-before-72aeffb0 = Refit every earth link before closing, also until the next visit.
screws-or-clips-left-over-8e97123b = Screws or clips left over
panels-rattle-loose-and-a-3fddc5fd = Panels rattle loose, and a missing screw may have been the earth path.
count-them-out-and-count-them-in-6d9fe6d5 = Count them out and count them in.
left-an-unfinished-machine-f985fd0c = Left an unfinished machine plugged in
somebody-will-try-it-74482563 = Somebody will try it.
unplug-label-do-not-use-tell-the-c81bf8c7 = Unplug, label "do not use", tell the customer.
left-an-unfinished-machine-32447b74 = Left an unfinished machine without a label
whoever-comes-home-next-does-not-71f21cf7 = Whoever comes home next does not know, and plugs it in.
hang-a-label-do-not-use-on-the-1ce831a0 = Hang a label "do not use" on the plug and tell the customer.
left-tools-or-parts-inside-976dcada = Left tools or parts inside
they-bridge-terminals-or-jam-the-be7dd4a1 = They bridge terminals or jam the basket.
count-the-tools-before-the-last-f1788786 = Count the tools before the last cover goes on.
the-socket-was-never-tested-241cd49f = The socket was never tested
a-missing-earth-or-exchanged-8c35aaf7 = A missing earth or exchanged wires make a good machine dangerous.
line-to-neutral-line-to-earth-a83050e8 = Line to neutral, line to earth, neutral to earth, before anything else.
left-the-machine-connected-to-a-9ce966e2 = Left the machine connected to a socket without earth
the-customer-has-felt-it-already-9ddd8656 = The customer has felt it already; the next fault is worse than a tingle.
published-iec-60364-4-41-from-6aa7164c = published: IEC 60364-4-41 (from memory)
unplug-label-tell-the-customer-182ba0b3 = Unplug, label, tell the customer in writing.
saw-a-defect-of-the-house-and-fb259afd = Saw a defect of the house and told nobody
the-technician-is-often-the-only-bddd9f5a = The technician is often the only one who will ever look.
tell-and-write-it-down-what-859b4aa6 = Tell and write it down: what, where, what it can do.

### bench/safety/handling.rs

laid-the-machine-down-alone-3e526675 = Laid the machine down alone, without a strap
t-35-kg-with-the-weight-up-high-8f5f3b15 = 35 kg with the weight up high: backs, feet and floors give way.
get-help-or-use-a-strap-and-a-c6c364c7 = Get help, or use a strap and a corner to let it down.
laid-the-machine-on-a-bare-floor-f35bc225 = Laid the machine on a bare floor
tiles-chip-and-cabinets-scratch-bbba38c7 = Tiles chip and cabinets scratch; both are paid for.
put-a-blanket-or-cardboard-under-68cb0236 = Put a blanket or cardboard under it.
reached-under-a-machine-that-was-df59635c = Reached under a machine that was not propped
it-comes-back-on-the-arm-7dfda122 = It comes back on the arm.
prop-it-or-lay-it-flat-before-d80cb6a4 = Prop it or lay it flat before reaching under.
worked-under-an-opened-top-37b0c51b = Worked under an opened top without support
it-falls-on-hands-and-its-edge-038207bb = It falls on hands, and its edge is sheet metal.
prop-or-tie-it-then-reach-in-15b4b71f = Prop or tie it, then reach in.
reached-past-sheet-metal-edges-d0ab1be6 = Reached past sheet-metal edges without gloves
pressed-edges-cut-like-knives-fb9cc03d = Pressed edges cut like knives, above all when something slips.
cut-proof-gloves-for-the-reach-aeef6aa6 = Cut-proof gloves for the reach; off again near anything that turns.
touched-a-hot-part-1ec7156a = Touched a hot part
a-motor-that-has-stalled-is-hot-994c1754 = A motor that has stalled is hot enough to burn long after it stopped.
published-iso-13732-1-from-84e4fcd4 = published: ISO 13732-1 (from memory)
feel-near-it-first-or-measure-518119f9 = Feel near it first, or measure; let it cool.

### bench/safety/isolation.rs

touched-a-live-conductor-2516395d = Touched a live conductor
above-50-v-or-25-v-where-it-is-dce360ba = Above 50 V, or 25 V where it is wet, enough current can flow to stop the heart.
published-iec-60364-4-41-and-iec-3eaeee8e = published: IEC 60364-4-41 and IEC 60479-1 (from memory)
unplug-prove-dead-and-only-then-bcce1e7a = Unplug, prove dead, and only then put hands to conductors.
worked-inside-with-the-machine-eff5cbe0 = Worked inside with the machine on
conductors-are-live-and-a-6d6ab976 = Conductors are live, and a program can start the motor at any moment.
published-en-50110-1-6-2-from-078621c5 = published: EN 50110-1, 6.2 (from memory)
switch-off-pull-the-plug-keep-it-61c91336 = Switch off, pull the plug, keep it in sight.
relied-on-the-switch-and-left-ab5f9be2 = Relied on the switch and left the plug in
the-switch-opens-one-conductor-f86c3d45 = The switch opens one conductor only; with line and neutral exchanged the rest stays live.
published-en-50110-1-6-2-1-from-478ca2ff = published: EN 50110-1, 6.2.1 (from memory); common practice
pull-the-plug-it-opens-both-80e69bfa = Pull the plug: it opens both conductors, and one can see that it is out.
took-a-cover-off-with-the-plug-42ec8cfd = Took a cover off with the plug in
live-parts-come-within-reach-a0fb5eec = Live parts come within reach before anybody has decided to work live.
pull-the-plug-first-put-it-back-6fa63490 = Pull the plug first; put it back only for a measurement that needs it.
the-pulled-plug-was-out-of-sight-4bd840fd = The pulled plug was out of sight
somebody-may-put-it-back-while-c319d416 = Somebody may put it back while hands are inside.
published-en-50110-1-6-2-2-from-545bceb9 = published: EN 50110-1, 6.2.2 (from memory)
keep-the-plug-in-sight-tag-it-or-ec82f931 = Keep the plug in sight, tag it or lock it.
went-to-conductors-without-56c01e5f = Went to conductors without proving them dead
the-wrong-plug-a-second-feed-or-231126c4 = The wrong plug, a second feed or a charged filter is found only by measuring.
published-en-50110-1-6-2-3-from-a10e4ab2 = published: EN 50110-1, 6.2.3 (from memory)
prove-the-tester-test-line-88fa0b11 = Prove the tester, test line, neutral and earth against each other, prove the tester again.
took-a-contactless-tester-as-8327371a = Took a contactless tester as proof of dead
it-is-blind-behind-earthed-metal-25d7600d = It is blind behind earthed metal and with direct voltage; silence proves nothing.
use-a-two-pole-tester-or-a-meter-4a2d0fed = Use a two-pole tester or a meter on volts.
took-an-ohm-reading-as-proof-of-7ac46d7a = Took an ohm reading as proof of dead
on-a-live-circuit-an-ohmmeter-95e59873 = On a live circuit an ohmmeter shows anything, "open" included, and may burn.
published-en-50110-1-6-2-3-from-0bdab781 = published: EN 50110-1, 6.2.3 (from memory); common practice
prove-dead-with-volts-ohms-come-15989793 = Prove dead with volts; ohms come after.
the-tester-was-not-proved-before-6971c96b = The tester was not proved before the dead test
a-flat-battery-or-a-broken-lead-f76900fa = A flat battery or a broken lead reads zero too.
measure-a-live-socket-first-on-53dfbfd0 = Measure a live socket first, on the same range.
the-tester-was-not-proved-again-a9c3b3f4 = The tester was not proved again after the dead test
it-may-have-failed-in-between-a53bdb4e = It may have failed in between; then the zero was worth nothing.
go-back-to-the-same-live-socket-ca974dea = Go back to the same live socket and see the reading again.
did-not-test-all-conductors-2c59ac7a = Did not test all conductors against each other
with-a-broken-neutral-line-to-0e10343c = With a broken neutral, line to neutral reads zero and both are live to earth.
line-to-neutral-line-to-earth-431eced8 = Line to neutral, line to earth, neutral to earth.
touched-a-charged-capacitor-e08e84b6 = Touched a charged capacitor
a-run-capacitor-with-a-wire-off-7ff23d7c = A run capacitor with a wire off holds a blow of more than a joule for an hour.
published-iec-60335-1-22-5-from-f624c261 = published: IEC 60335-1, 22.5 (from memory: 34 V)
discharge-through-10-to-20-0f179be6 = Discharge through 10 to 20 kilohm, measure, then touch.
touched-a-capacitor-without-7bd0c5e0 = Touched a capacitor without measuring it first
it-was-empty-this-time-it-2e1ed034 = It was empty this time. It empties itself only while wires and windings hold.
treat-every-capacitor-as-charged-19447706 = Treat every capacitor as charged until a meter says otherwise.
short-circuited-a-charged-a6f0c3d1 = Short-circuited a charged capacitor
the-spark-throws-metal-and-c0d4a9bd = The spark throws metal and spoils the capacitor.
use-a-resistor-of-10-to-20-cee9c530 = Use a resistor of 10 to 20 kilohm for five time constants.

### bench/safety/measuring.rs

measured-ohms-on-a-live-circuit-b04c7fab = Measured ohms on a live circuit
the-reading-is-nonsense-and-the-73c842bd = The reading is nonsense, and the meter may burn in the hand.
unplug-and-prove-dead-then-a67b093d = Unplug and prove dead, then measure ohms.
put-the-current-range-across-the-4380a993 = Put the current range across the mains
the-current-range-is-a-short-be2c00c5 = The current range is a short circuit: an arc at the probes, if the fuse is not good.
published-iec-61010-2-033-from-5c3f5ce9 = published: IEC 61010-2-033 (from memory); common practice
use-a-clamp-put-the-leads-back-6cd74aec = Use a clamp; put the leads back to volts at once after measuring current.
used-a-meter-of-too-low-a-12aec54c = Used a meter of too low a category
a-surge-on-the-mains-can-flash-48b3e2db = A surge on the mains can flash over inside a meter not made for that place.
published-iec-61010-1-from-9a57c5a0 = published: IEC 61010-1 (from memory)
at-a-socket-at-least-category-ii-6c9701cd = At a socket at least category II, better III, with fused leads.
measured-mains-with-damaged-9bbc6a99 = Measured mains with damaged leads
the-fingers-are-as-close-to-the-b60e8f6f = The fingers are as close to the mains as the crack in the insulation.
look-the-leads-over-before-each-5445ce84 = Look the leads over before each job; throw bad ones away.
used-an-instrument-without-4b4cb489 = Used an instrument without checking it
a-flat-battery-a-blown-fuse-or-a-cf88a51a = A flat battery, a blown fuse or a broken lead lies, and quietly.
look-at-leads-and-battery-short-c72f7d44 = Look at leads and battery, short the probes on ohms, measure a known voltage.
probed-live-where-a-dead-test-546300ed = Probed live where a dead test would do
every-live-measurement-is-a-risk-597ccba1 = Every live measurement is a risk; it must buy something a dead one cannot.
published-en-50110-1-4-1-from-b816935d = published: EN 50110-1, 4.1 (from memory); common practice
choose-the-dead-test-when-it-982b8019 = Choose the dead test when it settles the question.
measured-live-standing-on-a-wet-ea50dddd = Measured live standing on a wet floor
wet-shoes-and-floor-take-away-21c3e630 = Wet shoes and floor take away most of what lies between the body and earth.
published-iec-60479-1-from-9892379e = published: IEC 60479-1 (from memory): wet skin; common practice
dry-the-floor-first-or-stand-on-f1e479bf = Dry the floor first, or stand on something insulating.
insulation-test-with-the-plug-in-b7c56f0f = Insulation test with the plug in
the-test-voltage-meets-the-mains-ab377bc4 = The test voltage meets the mains: tester, board and person are at risk.
published-en-50699-from-memory-7f0e8f31 = published: EN 50699 (from memory)
unplug-join-line-and-neutral-4f62f487 = Unplug; join line and neutral; test against earth.
insulation-test-across-1a9531d5 = Insulation test across electronics
t-500-v-across-a-board-or-its-2ef42448 = 500 V across a board or its surge arrester destroys it or reads the arrester.
test-joined-line-and-neutral-cf4aaa2d = Test joined line and neutral against earth, never line against neutral.

### bench/safety/motion.rs

reached-into-a-spinning-basket-f48b2f2e = Reached into a spinning basket
wet-cloth-winds-round-a-hand-and-b3b37471 = Wet cloth winds round a hand and takes the arm with it.
published-iec-60335-2-7-from-ced1dc2b = published: IEC 60335-2-7 (from memory: 60 r/min)
wait-until-it-stands-still-e03af94e = Wait until it stands still.
reached-into-a-basket-still-ab8b45d3 = Reached into a basket still turning
even-a-slow-basket-has-the-11d5237e = Even a slow basket has the momentum of the wet load.
reached-in-while-motor-or-belt-4d26af8c = Reached in while motor or belt turned
between-belt-and-pulley-fingers-8a5724de = Between belt and pulley fingers are lost.
switch-off-unplug-wait-until-342c4d0e = Switch off, unplug, wait until everything stands.
bridged-the-lid-switch-to-test-412d4e0e = Bridged the lid switch to test it
the-guard-is-gone-while-it-is-042e9d66 = The guard is gone while it is bridged, and bridges get forgotten.
unplug-and-measure-the-switch-89e3c265 = Unplug and measure the switch for continuity, lid open and shut.
started-the-machine-with-the-lid-878f5350 = Started the machine with the lid open and bridged
the-basket-spins-in-the-open-fd7f2edb = The basket spins in the open, within reach.
take-the-bridge-out-shut-the-lid-ffb271d5 = Take the bridge out; shut the lid.
left-the-lid-switch-bridged-78782e25 = Left the lid switch bridged
from-now-on-the-basket-spins-a2338047 = From now on the basket spins with the lid open, and the customer does not know.
take-the-bridge-out-fit-a-switch-d39e15b6 = Take the bridge out, fit a switch, try that the lid stops the spin.
left-a-machine-that-spins-with-85c4e5e8 = Left a machine that spins with the lid open
a-welded-lid-switch-gives-no-493e9bc4 = A welded lid switch gives no complaint, only an accident.
published-iec-60335-2-7-from-8bef45e4 = published: IEC 60335-2-7 (from memory)
mend-it-or-put-the-machine-out-9d30862d = Mend it, or put the machine out of use and say so in writing.
started-with-tools-or-parts-57487d72 = Started with tools or parts loose inside
the-belt-throws-them-or-they-9cec08e1 = The belt throws them, or they bridge live terminals.
count-the-tools-look-with-a-lamp-67cb8c07 = Count the tools, look with a lamp, then start.
energised-the-open-machine-with-df264375 = Energised the open machine with a child or animal near
they-reach-where-no-grown-person-ae84cf0b = They reach where no grown person would.
ask-for-the-room-to-be-kept-free-b33bd75d = Ask for the room to be kept free, or wait.

### bench/safety/power.rs

energised-the-machine-with-an-374c58d3 = Energised the machine with an earth link off
the-next-insulation-fault-puts-a8488d91 = The next insulation fault puts mains on the cabinet, and nothing trips.
refit-every-earth-link-and-f762f6b0 = Refit every earth link and measure the bond before the plug goes in.
energised-wet-electrics-fc52e51b = Energised wet electrics
water-carries-mains-to-the-391e9a67 = Water carries mains to the cabinet and to the hand.
dry-the-parts-measure-insulation-984515a9 = Dry the parts, measure insulation, then plug in.
energised-the-machine-after-a-92153567 = Energised the machine after a failed test
earth-and-insulation-come-first-9cca6719 = Earth and insulation come first because the first switch-on may hurt.
published-en-50678-from-memory-6c01bb79 = published: EN 50678 (from memory): the first failed step stops the tests
find-and-mend-the-cause-test-be0ee96d = Find and mend the cause, test again, then plug in.
switched-on-after-the-repair-bee20b07 = Switched on after the repair before testing the earth
the-earth-conductor-is-what-03dd3641 = The earth conductor is what makes a mistake in the repair harmless.
published-en-50678-from-memory-c0715086 = published: EN 50678 (from memory): look, earth, insulation, then function
close-the-machine-measure-earth-96c3a1e2 = Close the machine, measure earth bond and insulation, then run it.
switched-on-standing-in-water-e9346a59 = Switched on standing in water
a-wet-floor-makes-the-body-a-2dc5405c = A wet floor makes the body a good path to earth.
mop-up-first-0e6e4658 = Mop up first.
ran-the-machine-on-a-socket-e69e6d28 = Ran the machine on a socket known to have no earth
the-filter-alone-bites-a-fault-65a89bbf = The filter alone bites; a fault kills. A good machine does not change that.
make-safe-tell-the-customer-let-0138ed49 = Make safe, tell the customer, let an electrician mend the socket.
used-a-scorched-socket-265d167d = Used a scorched socket
a-loose-contact-that-has-burnt-ecacd4e6 = A loose contact that has burnt once burns again, behind the wall.
put-it-out-of-use-tell-the-8d1cfa5b = Put it out of use, tell the customer in writing, use another circuit.
set-a-tripped-device-again-57c13be1 = Set a tripped device again without finding why
it-opened-for-a-reason-and-the-cfecbacf = It opened for a reason, and the reason is still there.
unplug-the-machine-test-it-dead-6f9296bd = Unplug the machine, test it dead, then set the device again.
fitted-a-larger-fuse-or-bridged-5a3085d5 = Fitted a larger fuse or bridged it
wires-and-windings-now-burn-17293da4 = Wires and windings now burn before the fuse does.
published-iec-60127-1-from-024c0daf = published: IEC 60127-1 (from memory); common practice
same-rating-same-speed-find-what-9e510bcc = Same rating, same speed; find what blew it.
fitted-a-run-capacitor-of-too-ded369d1 = Fitted a run capacitor of too low a voltage
in-run-it-stands-far-above-the-ac07bb99 = In run it stands far above the mains: it bursts or burns.
published-iec-60252-1-from-3608c6fd = published: IEC 60252-1 (from memory)
read-the-old-one-s-rating-never-7f1761a3 = Read the old one's rating; never fit less.
worked-on-the-wiring-of-the-54ef7585 = Worked on the wiring of the house
it-belongs-to-a-licensed-9c06e5b2 = It belongs to a licensed electrician; a mistake there is live for everybody.
common-practice-local-law-a8141cdd = common practice; local law
measure-tell-record-never-repair-0ec7ed45 = Measure, tell, record; never repair.
went-on-although-the-place-was-d2031933 = Went on although the place was not safe
gas-flood-fire-or-a-threat-do-09d2a3f1 = Gas, flood, fire or a threat do not wait for a washing machine.
make-safe-and-leave-a-job-7d32f693 = Make safe and leave; a job refused for a reason is a job done right.

### bench/safety/water.rs

pulled-the-inlet-hose-with-the-d6197483 = Pulled the inlet hose with the tap open
twelve-litres-a-minute-and-the-460092b1 = Twelve litres a minute, and the ceiling below is the dearest mistake of all.
shut-the-tap-let-the-pressure-2af1f118 = Shut the tap, let the pressure down, then pull the hose.
pulled-the-inlet-hose-under-9b23cdf2 = Pulled the inlet hose under pressure
it-sprays-and-over-what-is-2bc317ad = It sprays, and over what is electrical.
open-the-valve-for-a-moment-with-f6b17ba0 = Open the valve for a moment with the tap shut, or loosen slowly over a bucket.
opened-the-tap-with-the-hose-off-8ca8d26b = Opened the tap with the hose off
the-room-floods-before-the-tap-664af35f = The room floods before the tap is shut again.
screw-on-both-ends-then-open-195b6cd0 = Screw on both ends, then open slowly and look.
opened-a-water-joint-without-a-ff6919cd = Opened a water joint without a tray
water-on-the-floor-reaches-b94eb149 = Water on the floor reaches sockets, and makes people fall.
bucket-tray-and-cloth-before-the-f768128e = Bucket, tray and cloth before the clamp is loosened.
tilted-the-machine-with-water-in-36668e73 = Tilted the machine with water in the tub
fifty-litres-move-at-once-the-a585b376 = Fifty litres move at once: the machine falls, the water goes over the electrics.
drain-by-the-machine-else-bail-648beb55 = Drain by the machine; else bail or siphon from above.
let-hot-water-out-over-hands-0b894002 = Let hot water out over hands
from-50-c-it-scalds-within-c14dfbbb = From 50 °C it scalds within minutes, from 60 °C within seconds.
let-it-cool-or-thin-it-with-cold-0f593be4 = Let it cool, or thin it with cold water first.
tried-a-joint-before-its-sealant-c044ea26 = Tried a joint before its sealant had set
it-lets-go-now-or-worse-next-4fda4134 = It lets go now or, worse, next week.
give-it-the-time-on-the-tube-2712cea1 = Give it the time on the tube, then let water in.
let-water-in-with-a-joint-still-ba0e8bfb = Let water in with a joint still open
it-runs-into-the-machine-58888b34 = It runs into the machine.
go-round-every-joint-that-was-4fc5d667 = Go round every joint that was opened before the tap is opened.
left-a-water-joint-unsealed-9939d93b = Left a water joint unsealed
it-leaks-when-nobody-is-at-home-5efb0d11 = It leaks when nobody is at home.
seal-fit-the-clamp-try-with-7fd9391e = Seal, fit the clamp, try with water and a dry cloth.
did-not-try-the-opened-joint-b81c076d = Did not try the opened joint with water
a-seal-is-sound-when-it-has-held-8266cf1c = A seal is sound when it has held water, not when it looks good.
fill-look-and-feel-with-a-dry-8ff4cf41 = Fill, look and feel with a dry cloth, drain, look again.
left-an-unfinished-machine-with-17e137bb = Left an unfinished machine with the tap open
nobody-watches-the-open-joint-762d7a4e = Nobody watches the open joint until the second visit.
shut-the-tap-label-it-tell-the-136c119c = Shut the tap, label it, tell the customer.
left-the-floor-wet-46492b4d = Left the floor wet
the-next-person-slips-or-stands-b86f41ef = The next person slips, or stands in it at the switch.
mop-up-before-leaving-ecdb16c3 = Mop up before leaving.

### bench/shock.rs

hardly-felt-86b15da0 = hardly felt
a-start-muscles-twitch-usually-4e49df1a = a start; muscles twitch, usually no harm
cramp-the-hand-cannot-let-go-c85c0e0b = cramp: the hand cannot let go, breathing is hard
the-heart-may-stop-pumping-burns-8468b9e8 = the heart may stop pumping; burns

### bench/signature/mod.rs

point-to-neutral-42a3d717 = { $point } to neutral

### bench/signature/values.rs

what-from-to-unit-5bf2095c = { $what }: { $from } → { $to } { $unit }
what-to-unit-671e2964 = { $what }: { $to } { $unit }
what-factor-4ff36978 = { $what }: × { $factor }
what-to-b16c3c56 = { $what }: { $to }
what-open-fa9667d9 = { $what }: open
what-closed-to-351426f6 = { $what }, closed: { $to }
a-path-name-to-7663eb1b = a path, { $name }: { $to }
supply-n-v-b4ef1026 = supply: { $n } V
line-and-neutral-exchanged-at-4d0de6ed = line and neutral exchanged at the socket
exchanged-one-and-other-15397b75 = exchanged: { $one } and { $other }
motor-winding-1-and-2-open-8172ba5a = motor winding 1 and 2: open
motor-winding-n-open-e3b05e86 = motor winding { $n }: open
motor-winding-n-percent-of-its-d40d0065 = motor winding { $n }: { $percent } % of its turns shorted by { $short }
motor-winding-n-to-the-frame-765da21c = motor winding { $n } to the frame: { $path }
the-motor-s-rotor-is-stuck-241c9059 = the motor's rotor is stuck
load-on-the-motor-factor-25e7bc89 = load on the motor: × { $factor }
the-5-v-supply-of-the-board-0bbeb0f5 = the 5 V supply of the board gives nothing
# of a circuit
open-87a3af6e = open

### bench/signature/wash.rs

first-fill-e1ee62c2 = first fill
water-level-while-washing-84498ba2 = water level while washing
pulsator-spin-direction-fd0428e2 = pulsator, spin direction
pulsator-other-direction-c3febfe2 = pulsator, other direction
basket-creeps-while-washing-d1e57bb7 = basket creeps while washing
drain-until-empty-410dea64 = drain until empty
fastest-spin-d038f7f7 = fastest spin
times-the-load-was-spread-again-859aa9ce = times the load was spread again
widest-swing-of-the-tub-ac38df34 = widest swing of the tub
water-left-in-the-load-per-dry-29226b15 = water left in the load per dry mass
water-used-0a746f55 = water used
water-on-the-floor-3706e824 = water on the floor
times-the-motor-s-protector-10ef6660 = times the motor's protector opened
basket-stops-after-the-lid-is-099252e7 = basket stops after the lid is opened
loudest-moment-ed048c05 = loudest moment
# alarms
none-5ef2092b = none
alarm-19ebecda = alarm

### bench/words.rs

ask-on-the-phone-question-591a4056 = ask on the phone: { $question }
what-place-c91c3258 = { $what }: { $place }
contactless-tester-point-1727f9f5 = contactless tester: { $point }
what-by-hand-802444ad = { $what } by hand
name-the-price-price-6a393987 = name the price: { $price }
load-the-van-with-n-parts-92c4dcef = load the van with { $n } parts
open-the-lid-e9ab1b7f = open the lid
shut-the-lid-cff37a3d = shut the lid
set-the-breaker-again-e52807a8 = set the breaker again
switch-the-socket-s-circuit-on-188f4e53 = switch the socket's circuit on
switch-the-socket-s-circuit-off-a25fca67 = switch the socket's circuit off at the board
keep-the-plug-in-sight-7290459d = keep the plug in sight
write-a-remark-04607be9 = write a remark
bleed-the-supply-hose-into-a-73044775 = bleed the supply hose into a bucket
screw-the-supply-hose-on-de2526c5 = screw the supply hose on
take-the-supply-hose-off-f9ed2cd4 = take the supply hose off
bridge-the-lid-switch-06033ec6 = bridge the lid switch
take-the-bridge-off-the-lid-744300bb = take the bridge off the lid switch
note-the-reading-e29dbe92 = note the reading
bail-the-water-out-with-a-bucket-666c6b0e = bail the water out with a bucket
let-the-water-out-by-the-drain-22b84b9b = let the water out by the drain wire
decide-the-maker-pays-318225bd = decide: the maker pays
decide-the-customer-pays-6a791169 = decide: the customer pays
look-the-instrument-over-probes-75193587 = look the instrument over, probes together
take-the-spare-instrument-9ac89d07 = take the spare instrument
lay-a-blanket-on-the-floor-20b9ac5b = lay a blanket on the floor
put-gloves-on-634a9df9 = put gloves on
take-the-gloves-off-78e85e04 = take the gloves off
ask-for-the-room-to-be-kept-free-a04e4c2d = ask for the room to be kept free
pour-a-bucket-of-cold-water-in-882fda9f = pour a bucket of cold water in
work-on-the-wiring-of-the-house-182e1892 = work on the wiring of the house
take-a-picture-for-the-report-ea79e93b = take a picture for the report
have-the-report-signed-17c365ba = have the report signed
ask-for-a-hint-ba5cd873 = ask for a hint
leave-until-the-second-visit-0a83842d = leave until the second visit, labelled
leave-until-the-second-visit-63e832d7 = leave until the second visit, without a label
state-the-fault-found-acaf8701 = state the fault found
advise-the-customer-5ef995c2 = advise the customer
make-safe-and-leave-07b2532e = make safe and leave
hand-over-5e9dcb2a = hand over
take-off-66f6f69f = take off
refit-7c3aa3df = refit
name-verb-with-check-98c81015 = { $name }: { $verb }, with check
connector-pull-apart-febb71e7 = { $connector }: pull apart
connector-push-home-a210c7a9 = { $connector }: push home
work-with-check-57b9f392 = { $work }, with check
place-seen-53b9e2df = { $place }: { $seen }
question-answer-0a3a005e = { $question } “{ $answer }”
what-value-b26654ca = { $what }: { $value }
ac-volts-4bb2d9d5 = AC volts
ac-volts-low-impedance-56a01cf1 = AC volts, low impedance
dc-volts-b9e859e4 = DC volts
continuity-ba1cb7df = continuity
capacitance-74e2cf9d = capacitance
frequency-2fb31c01 = frequency
diode-test-64064db4 = diode test
ac-amperes-through-the-leads-91e4d509 = AC amperes through the leads
clamp-a82efcbc = clamp
leakage-clamp-9a5b5f12 = leakage clamp
leakage-clamp-round-line-and-353578fc = leakage clamp round line and neutral together
# in the jaws of a clamp
nothing-da8f1d1a = nothing
mode-round-conductor-3a8b5589 = { $mode } round { $conductor }
# of a test lead
free-9bb16e65 = free
mode-red-to-black-f9cdb3d3 = { $mode }, { $red } to { $black }
press-the-on-off-switch-6ebf4d46 = press the on/off switch
press-the-service-key-1d86d553 = press the service key
pull-or-push-the-timer-knob-472bea71 = pull or push the timer knob
turn-the-water-level-knob-d508e444 = turn the water level knob
# verb
look-652ada57 = look
# verb
listen-eb7fc527 = listen
# verb
feel-e7445382 = feel
# verb
smell-c6678c89 = smell
turn-the-pulsator-11d4f9cd = turn the pulsator
turn-the-basket-e646cc49 = turn the basket
turn-the-motor-pulley-6db29bb9 = turn the motor pulley
press-the-belt-cffa9f78 = press the belt
pull-the-drain-wire-ef59da34 = pull the drain wire
move-the-clutch-lever-10d3b7ac = move the clutch lever
push-the-tub-d94a5f61 = push the tub
push-the-out-of-balance-lever-b44a4bb9 = push the out-of-balance lever
discharge-the-plug-pins-with-the-3b9ac6e2 = discharge the plug pins with the bleed resistor
discharge-the-plug-pins-with-the-5e780485 = discharge the plug pins with the screwdriver
discharge-the-run-capacitor-with-de79101f = discharge the run capacitor with the bleed resistor
discharge-the-run-capacitor-with-6350c4fa = discharge the run capacitor with the screwdriver

### bangs_like_a_drum.json

it-bangs-like-a-drum-5f74cc63 = It bangs like a drum
suspension-and-level-06c24fbf = suspension and level
more-than-one-cause-bcd2d674 = more than one cause
ms-achterberg-097dcb32 = Ms Achterberg
houseboat-laundry-in-the-bow-43b6d1a2 = houseboat, laundry in the bow
laughs-then-worries-ba54a515 = laughs, then worries
when-it-spins-the-whole-boat-e2eceef8 = When it spins, the whole boat knows. It throws itself about, hits the side, stops and tries again slower, and the wash comes out sopping.
the-boat-lies-a-little-down-by-abf4c776 = The boat lies a little down by the bow. Oil drops on the cabinet floor.
every-spin-3e012d66 = Every spin.
three-kilos-well-spread-i-have-4b56858e = Three kilos, well spread, I have tried everything.
bang-bang-bang-76eab467 = Bang, bang, bang.
shore-power-never-trips-52ac6abf = Shore power, never trips.
the-dial-goes-on-9fc1ea41 = The dial goes on.
it-was-always-lively-7fa67a03 = It was always lively.
since-the-winter-it-is-wild-we-d2a83979 = Since the winter it is wild. We have shifted the ballast as well.
yes-e981313a = Yes.
when-the-spin-begins-39c4ba22 = When the spin begins.
my-friend-greased-it-eea50aa5 = My friend greased it.
the-four-rods-with-the-springs-c26ce2d3 = The four rods with the springs. They squeaked, so he oiled them. Generously.

### bath_before_rinse.json

it-stays-in-its-bath-water-4c0fae9b = It stays in its bath water
timer-machines-44410b64 = timer machines
follow-the-supply-7038e61a = follow the supply
mrs-bauermann-9468c3f6 = Mrs Bauermann
farmhouse-washhouse-across-the-53a694be = farmhouse, washhouse across the yard
practical-has-sleeves-rolled-up-01e2056e = practical, has sleeves rolled up
it-washes-as-it-always-has-then-836a592d = It washes as it always has. Then comes the place on the dial where the water should go, and nothing goes. It stands there. I have been ladling for a week.
whitewashed-room-stone-floor-6cc88137 = Whitewashed room, stone floor with a gully. A ladle hangs on the machine.
every-time-72d76ef9 = Every time.
overalls-dda53f7f = Overalls.
quiet-the-whirr-below-that-used-1cbf9aba = Quiet. The whirr below that used to come there does not come.
the-dial-creeps-to-the-end-of-2636bee9 = The dial creeps to the end of the wash and then stands still.
a-week-a10c6352 = A week.
yes-our-own-well-3bae2838 = Yes, our own well.
when-the-washing-is-over-09614089 = When the washing is over.
my-husband-oiled-the-lid-that-is-cd8d47bb = My husband oiled the lid. That is all.

### bites_bare_feet.json

it-bites-me-when-i-touch-it-with-aa3296c6 = It bites me when I touch it with bare feet
insulation-and-leakage-1e62399c = insulation and leakage
house-and-supply-ef9faa35 = house and supply
mrs-delgado-7b436617 = Mrs Delgado
old-house-by-the-river-ground-323d8f9b = old house by the river, ground floor
frightened-293e41c7 = frightened
it-bites-when-i-stand-there-with-94e16e86 = It bites! When I stand there with bare feet and touch the lid, it prickles right up my arm. The children must not go near it any more.
stone-floor-damp-in-winter-new-05c1e895 = Stone floor, damp in winter. New sockets in an old wall. Two small children in the house.
in-the-kitchen-on-the-stone-c0cab8db = In the kitchen, on the stone floor. My sister can help. The little ones run about, I cannot keep them out alone.
with-shoes-i-feel-nothing-7926d2fb = With shoes I feel nothing.
nothing-in-it-d2604bc0 = Nothing in it.
no-breaker-has-ever-dropped-08f826a6 = No breaker has ever dropped.
there-is-only-one-old-breaker-2f4db39c = There is only one old breaker with ceramic fuses beside it. I do not know of any test button.
it-works-quite-normally-10a313d6 = It works quite normally.
since-we-moved-in-in-april-7cd8ac96 = Since we moved in, in April.
in-the-old-flat-never-it-is-the-9452e8b0 = In the old flat, never. It is the same machine.
always-when-it-is-plugged-in-it-7c60cb1b = Always when it is plugged in. It does not even have to run.
nobody-has-touched-the-machine-5c65a0ec = Nobody has touched the machine.
the-house-the-landlord-had-new-84d05b28 = The house? The landlord had new sockets put in before we came. By his brother-in-law.

### changes_its_mind.json

it-changes-its-mind-and-never-b112456f = It changes its mind and never calls
board-or-part-9a8433fd = board or part
mr-lindgren-19c6cf71 = Mr Lindgren
retirement-home-his-own-small-7798ad24 = retirement home, his own small kitchen
courteous-hard-of-hearing-caec0546 = courteous, hard of hearing
it-jumps-from-one-program-to-the-bfd95fe3 = It jumps from one program to the next by itself, and when I do manage to catch one it does not begin. And it never calls me any more when it is done, or else my ears are worse than I thought.
a-brown-edge-under-one-of-the-3dc6c152 = A brown edge under one of the keys. The neighbour confirms that the machine has been silent for weeks.
two-shirts-26dd6f4c = Two shirts.
that-is-just-it-nothing-d639f1cc = That is just it. Nothing.
one-program-after-the-other-310c8dae = One program after the other.
since-i-had-the-coffee-accident-ce7fd595 = Since I had the coffee accident.
it-was-a-full-cup-i-wiped-it-off-e1750f21 = It was a full cup. I wiped it off at once.
coffee-a-little-e5dfa3b2 = Coffee, a little.
as-soon-as-i-switch-it-on-14b8a397 = As soon as I switch it on.
nobody-183b9df0 = Nobody.

### clicks_and_stirs_nothing.json

it-whirls-below-and-nothing-d61d30e0 = It whirls below and nothing stirs above
belt-and-drive-23092041 = belt and drive
mr-tavares-d4e1bd5a = Mr Tavares
barber-s-shop-back-room-25d1c6c3 = barber’s shop, back room
chatty-3afc649c = chatty
i-hear-it-working-away-e6a5e63b = I hear it working away underneath, and the towels lie there like cats in the sun. They hardly move. They come out as grey as they went in.
back-room-with-a-mirror-and-a-57508d5b = Back room with a mirror and a radio. Level tiles.
yes-the-spin-is-fine-fb34737f = Yes. The spin is fine.
towels-a-lot-of-them-i-admit-29a6455c = Towels. A lot of them, I admit.
it-clicks-now-and-then-and-runs-55d23459 = It clicks now and then, and runs fast below.
the-dial-goes-through-as-always-3a5cf582 = The dial goes through as always.
a-few-weeks-it-skipped-at-first-42786802 = A few weeks. It skipped at first, with a click.
in-the-wash-d7e021de = In the wash.
no-one-305664d8 = No one.

### creeps_and_tears_sheets.json

the-drum-creeps-and-the-sheets-a98391cd = The drum creeps and the sheets come out torn
clutch-and-brake-4adbe7ae = clutch and brake
price-and-worth-082dd53f = price and worth
mrs-thorvald-8e68ca09 = Mrs Thorvald
guest-house-with-six-rooms-52a7b72f = guest house with six rooms, cellar laundry
businesslike-short-of-time-8e9bc288 = businesslike, short of time
my-sheets-come-out-torn-and-9e48d09a = My sheets come out torn and knotted into ropes. When I watch through the lid, the whole drum wanders round while the bottom plate is washing. It should stand still, should it not?
a-second-machine-of-the-same-701c7d80 = A second machine of the same make stands beside it and washes well. Dry floor, room to lay a machine down.
every-load-62ab137a = Every load.
double-sheets-as-always-b4f48ab5 = Double sheets, as always.
no-new-noise-that-i-would-notice-2b98daab = No new noise that I would notice over the others.
nothing-b8d0f14c = Nothing.
since-the-season-began-6653fdec = Since the season began.
it-has-done-four-or-five-loads-a-7ee82614 = It has done four or five loads a day for three years.
in-the-wash-spinning-is-fine-4dccfd96 = In the wash. Spinning is fine.
my-nephew-changed-the-pulsator-3c251be5 = My nephew changed the pulsator in winter, the old one was cracked.
he-took-out-the-big-bolt-in-the-b9c8daa7 = He took out the big bolt in the middle and put it back. Nothing else, he says.

### dark_panel.json

the-panel-is-dark-acd2ea82 = The panel is dark
why-did-it-fail-1ef9ae6b = why did it fail
mr-silva-4500ac3b = Mr Silva
first-floor-flat-for-rent-4285608e = first floor, flat for rent
landlord-on-the-telephone-tenant-8357af93 = landlord on the telephone, tenant at home
my-tenant-says-the-machine-is-95d6b643 = My tenant says the machine is dead. She is a careful person. I want to know what is broken before you change anything.
the-tenant-lets-you-in-and-must-95ed3695 = The tenant lets you in and must leave in an hour. Consent to a repair comes from the landlord by telephone.
dead-is-dead-19f9f3b5 = Dead is dead.
empty-2c26c8e0 = Empty.
not-even-the-click-it-makes-when-f41bc2f0 = Not even the click it makes when it wakes up.
the-other-sockets-work-ed6bc4d1 = The other sockets work.
the-breaker-was-on-she-tried-a-e135636c = The breaker was on, she tried a lamp in the same socket: it lights.
nothing-no-lamp-7cc8ca33 = Nothing. No lamp.
since-friday-49fdbe96 = Since Friday.
the-tenant-says-it-smelt-warm-9c86bbe1 = The tenant says it smelt warm behind the panel on Thursday, after two washes one after the other.
it-was-dead-in-the-morning-in-f17b07c7 = It was dead in the morning. In the evening it had washed.
not-while-i-have-owned-it-b3a4e7ae = Not while I have owned it.

### dead_after_a_buzz.json

it-buzzed-at-the-end-and-then-96e62b25 = It buzzed at the end and then went dead
mrs-castellane-brooks-ad19b008 = Mrs Castellane-Brooks
duplex-shared-laundry-room-1c596242 = duplex, shared laundry room
neighbours-are-waiting-cc7aed7c = neighbours are waiting
it-was-draining-it-buzzed-louder-b70586e9 = It was draining, it buzzed louder than usual for a while, and then it went dark. No light, nothing. Both families use it, so there is a queue.
a-sheet-for-signing-up-hangs-on-e0af010a = A sheet for signing up hangs on the door, with a lot of crossing out.
it-is-dead-now-7f44c0f4 = It is dead now.
mixed-half-full-1dad3df4 = Mixed, half full.
it-used-to-buzz-loudly-when-37e5ba23 = It used to buzz loudly when pumping. Now nothing.
the-breaker-held-the-dryer-on-d091a479 = The breaker held. The dryer on the same circuit runs.
dark-72f57611 = Dark.
yesterday-noon-the-loud-buzz-for-0dd1e959 = Yesterday noon. The loud buzz for a couple of weeks.
a-bit-of-hot-plastic-down-low-6665a7b5 = A bit of hot plastic down low, yesterday.
it-went-while-it-was-pumping-out-d3f08a8b = It went while it was pumping out.

### dead_after_the_storm.json

dead-since-the-thunderstorm-d88fabc5 = Dead since the thunderstorm
mrs-raharjo-695f5c60 = Mrs Raharjo
last-house-on-the-hill-f99f797c = last house on the hill
calm-has-candles-ready-20c646af = calm, has candles ready
there-was-a-bang-in-the-storm-33e0bf11 = There was a bang in the storm and all the lights went. They came back, the washing machine did not. No light, no sound.
the-neighbour-s-router-and-the-ff290303 = The neighbour’s router and the doorbell are dead as well.
still-in-it-half-washed-11846a08 = Still in it, half washed.
the-breaker-dropped-that-night-i-b50d33e9 = The breaker dropped that night. I put it in again and it has stayed. The radio on the same socket plays.
since-the-storm-on-tuesday-night-823d7c55 = Since the storm on Tuesday night.
a-little-burnt-on-tuesday-f7ac5a19 = A little burnt, on Tuesday.
it-came-from-the-top-behind-the-713c1b23 = It came from the top, behind the panel.
it-does-not-start-at-all-f3633078 = It does not start at all.

### dial_stands_still.json

it-washes-on-and-on-e9046c86 = It washes on and on
mr-osei-57db91de = Mr Osei
boarding-house-laundry-room-604b9721 = boarding house, laundry room
good-humoured-a1923d1e = good-humoured
it-washes-and-washes-i-went-to-44fea6ff = It washes and washes. I went to market, I came back, it was still washing. Very clean shirts, but I need them today.
plenty-of-room-the-machine-is-77b3a178 = Plenty of room. The machine is needed every day; a second visit within two days is agreed beforehand if a part must be ordered.
if-i-turn-the-dial-by-hand-to-b06d2aed = If I turn the dial by hand to drain, it drains, and if I turn it on it spins. But it does not go on by itself.
shirts-three-kilos-a6f53524 = Shirts, three kilos.
it-sounds-as-always-063896dd = It sounds as always.
the-little-ticking-in-the-panel-065f81fc = The little ticking in the panel has gone.
no-trouble-be213051 = No trouble.
it-has-no-lamps-only-the-dial-8c8f6bbd = It has no lamps, only the dial. The dial stands.
since-wednesday-404978c5 = Since Wednesday.
fills-well-ae90359f = Fills well.
in-the-wash-it-never-gets-to-the-0f2068d0 = In the wash. It never gets to the draining.
no-it-is-an-honest-old-machine-cd235cab = No, it is an honest old machine.

### drinks_and_slaps_over.json

it-drinks-water-and-slaps-it-on-115746a9 = It drinks water and slaps it on the floor
intermittent-faults-cd5108b9 = intermittent faults
mrs-ferreira-e5bdc2d3 = Mrs Ferreira
ground-floor-one-step-down-to-fba789e8 = ground floor, one step down to the yard
worried-about-the-bill-7958d516 = worried about the bill
it-drinks-the-water-bill-has-0a9710d4 = It drinks! The water bill has doubled. It fills and it washes, and then it fills a little more and a little more, and when it comes to spinning there is still water in it and it slaps out over the tiles.
tiled-floor-with-a-gully-in-the-5b306d2b = Tiled floor with a gully in the corner. A mop stands ready.
every-wash-a2266027 = Every wash.
bed-sheets-and-the-boys-football-9035c03a = Bed sheets and the boys’ football things.
only-the-water-running-in-when-1dbd10d2 = Only the water running in when it should not.
it-never-complains-it-just-goes-a65c41a6 = It never complains, it just goes on.
since-about-the-rainy-season-it-4c8dd7d2 = Since about the rainy season. It got worse slowly.
a-wet-floor-that-is-all-clean-c8d01c3d = A wet floor, that is all. Clean water with soap.
yes-and-strong-ca0cec7a = Yes, and strong.
all-the-time-a-bit-more-and-a-d1f69119 = All the time, a bit more and a bit more.
if-i-stop-it-half-way-and-come-ecc53c2b = If I stop it half way and come back, it takes water again as soon as it goes on.
there-was-a-man-who-sprayed-532a72dd = There was a man who sprayed against cockroaches, he may have moved it.

### drips_and_slips.json

it-leaves-a-damp-patch-and-slips-9c6fdd8f = It leaves a damp patch and slips
water-in-d322508f = water in
mr-abdurahman-3adb72a7 = Mr Abdurahman
carpet-washer-s-yard-f05a911c = carpet washer’s yard
direct-5fe7049c = direct
two-things-there-is-a-damp-patch-f970bd1d = Two things. There is a damp patch under it after every wash. And it has no strength any more, it slides when it should turn.
concrete-yard-under-a-roof-a-433e32e8 = Concrete yard under a roof. A dark round spot on the floor below the middle of the machine.
runners-and-mats-3465fdae = Runners and mats.
it-hums-and-slides-a-bit-of-a-b7879c14 = It hums and slides. A bit of a squeak.
first-the-patch-then-the-sliding-e76ff659 = First the patch, then the sliding. A month between.
rubber-sometimes-cdee918f = Rubber, sometimes.
the-damp-patch-after-the-wash-92a7f22a = The damp patch after the wash. The sliding all the time.

### empties_and_stops_there.json

it-empties-and-stops-there-ab1f1b0b = It empties and stops there
dead-test-ef41ac25 = dead test
ask-and-listen-c9e66b3e = ask and listen
mr-ionescu-c8ecf9d4 = Mr Ionescu
block-of-flats-eighth-floor-lift-c69a618a = block of flats, eighth floor, lift out of order
friendly-out-of-breath-265d225b = friendly, out of breath
the-water-goes-out-and-then-b714aacf = The water goes out and then there should come the spin, and there comes nothing. The dial turns, the pump thing whirrs, the drum stands.
a-dent-in-the-top-edge-of-the-16c1198b = A dent in the top edge of the cabinet; the lid closes well.
sweaters-39bfdc2d = Sweaters.
only-the-whirr-from-below-d12f1e8f = Only the whirr from below.
the-dial-goes-on-to-the-end-fe8ce346 = The dial goes on to the end.
since-it-came-back-from-my-2f533d81 = Since it came back from my daughter’s.
at-each-spin-24bf2f43 = At each spin.
no-repair-50e91df7 = No repair.
four-men-carried-it-up-one-of-f2efd607 = Four men carried it up. One of them fell with it on the sixth. The top was a bit open after that and they hit it shut.

### everything_in_one_go.json

it-cannot-manage-the-blankets-91ad145f = It cannot manage the blankets
teach-the-customer-3f4aca13 = teach the customer
no-part-needed-fcd2d214 = no part needed
mr-and-mrs-petrossian-73c5cf69 = Mr and Mrs Petrossian
guest-house-at-the-pass-90228964 = guest house at the pass
hard-working-open-to-advice-9d96fc19 = hard-working, open to advice
we-do-the-blankets-in-one-go-now-ad2ed7e3 = We do the blankets in one go now, because the season is short. It groans, turns a hand’s breadth, smells, and rests. Is it the motor?
a-mountain-of-woollen-blankets-21c2f7a1 = A mountain of woollen blankets on the bench; the drum is stuffed to the rim.
with-the-blankets-yes-75a1e891 = With the blankets, yes.
blankets-32853ebd = Blankets.
how-many-as-many-as-go-in-nine-90938825 = How many? As many as go in. Nine, ten kilos perhaps. Anna stands on them.
it-groans-677b5ab0 = It groans.
since-we-began-with-the-blankets-6d53eda5 = Since we began with the blankets, last week.
warm-bf9e3ac2 = Warm.

### fills_and_never_gets_full.json

it-fills-and-never-gets-full-0c165ec3 = It fills and never gets full
look-before-opening-ca9a0aad = look before opening
cure-without-a-part-1ceeaa9c = cure without a part
ms-tallgrass-39a1e60e = Ms Tallgrass
garage-conversion-level-with-the-d6d3cf53 = garage conversion, level with the yard
efficient-4f3ae9f4 = efficient
it-fills-for-ever-i-can-hear-it-14382934 = It fills for ever. I can hear it running in, and when I look, there is a bit of water in it, and I look again and there is not. The yard outside is green as anything.
the-drain-hose-goes-through-a-a566677f = The drain hose goes through a hole at floor level and ends in the grass outside, lower than the machine stands.
kids-clothes-6f244f59 = Kids’ clothes.
water-running-in-and-if-you-fc0980d6 = Water running. In and, if you stand outside, out.
its-own-outlet-ab8903e0 = Its own outlet.
filling-and-then-that-it-fills-be22fd2f = “Filling”, and then that it fills too slowly.
since-we-put-it-out-here-in-the-2fbd5262 = Since we put it out here in the garage, in May.
no-and-the-floor-is-dry-029499e3 = No, and the floor is dry.
full-blast-ed6ed928 = Full blast.
while-it-fills-b7a11a4d = While it fills.
we-moved-it-ourselves-my-wife-46797e93 = We moved it ourselves. My wife ran the hose out through the wall.

### forgets_what_it_was_doing.json

it-forgets-what-it-was-doing-83e8bdf7 = It forgets what it was doing
connectors-c91e2539 = connectors
mr-castellanos-d9d6b3ed = Mr Castellanos
bungalow-at-the-end-of-the-bus-f6195761 = bungalow at the end of the bus line
talkative-f667bbb8 = talkative
half-way-through-a-wash-it-goes-2b6a92ff = Half way through a wash it goes black, just like that, and when I jiggle about behind it comes back and wants me to press start. It is like living with my brother.
fresh-paint-the-lead-comes-out-84aff603 = Fresh paint. The lead comes out from under a foot of the machine with a flat spot.
it-comes-and-goes-0eab900c = It comes and goes.
lean-on-it-and-it-goes-sometimes-7dafcd71 = Lean on it and it goes. Sometimes.
the-usual-67791174 = The usual.
a-faint-crackle-if-the-kitchen-dc3fb005 = A faint crackle, if the kitchen is quiet.
no-breaker-has-gone-the-lamp-on-b9013b9a = No breaker has gone. The lamp on the same socket stays on.
black-then-power-was-off-b9bb0919 = Black. Then “Power was off”.
since-i-pulled-it-out-to-paint-24d2d727 = Since I pulled it out to paint the wall.
any-time-washing-rinsing-it-does-46eb98a1 = Any time. Washing, rinsing, it does not matter.
i-moved-it-myself-for-the-a25fa85c = I moved it myself for the painting. It may have stood on its own lead for an afternoon.

### fuller_and_splashing.json

too-full-and-it-splashes-over-66fd3739 = Too full, and it splashes over inside
mr-ferreira-lund-b46f4b6e = Mr Ferreira-Lund
converted-barn-upstairs-bath-2b3cc40e = converted barn, upstairs bath
careful-has-put-a-tray-under-it-b1b66180 = careful, has put a tray under it
it-fills-higher-than-it-used-to-df1f3988 = It fills higher than it used to, and when it gets going the water slaps over the inner edge. I have a tray under it so nothing has come through the ceiling, yet.
a-metal-tray-under-the-machine-d7fb8fd9 = A metal tray under the machine, dry today. Plank ceiling below.
four-of-us-so-plenty-bbbf40d6 = Four of us, so plenty.
it-slaps-ba3e646b = It slaps.
the-filling-crept-up-over-the-58b23dda = The filling crept up over the year. The slapping since I looked inside.
in-the-wash-when-it-is-full-6667b302 = In the wash, when it is full.
i-looked-in-from-above-40c50c18 = I looked in from above.
i-had-the-plastic-ring-off-the-8f61457b = I had the plastic ring off the tub to fetch a spoon. It snapped back in. Most of it.

### fuller_than_ever.json

it-is-fuller-than-it-ever-was-deeeed27 = It is fuller than it ever was
mr-and-mrs-kovalenko-87060aeb = Mr and Mrs Kovalenko
flat-over-the-pharmacy-f9f2fb24 = flat over the pharmacy
she-worries-he-reassures-her-f89ddc15 = she worries, he reassures her
it-fills-right-up-to-where-the-8a22d7b8 = It fills right up to where the little holes are. My husband says that is good for the washing, but I have to think of the pharmacy below.
a-carpet-in-the-passage-the-a8cdb0a2 = A carpet in the passage. The ceiling of the pharmacy has been painted this year.
for-two-people-dea62299 = For two people.
it-knocks-a-bit-when-it-turns-68925d25 = It knocks a bit when it turns about, with so much water.
the-dial-starts-late-because-it-257414bc = The dial starts late, because it fills so long.
it-has-grown-fuller-from-month-2c97847c = It has grown fuller from month to month.
dry-so-far-89729941 = Dry so far.
every-time-it-fills-80bc650a = Every time it fills.
the-old-fitter-died-nobody-since-e4d619f4 = The old fitter died. Nobody since.

### gives_up_at_once.json

it-gives-up-at-once-since-the-53ebf3bb = It gives up at once since the visit
mrs-nakamura-bell-1bb2d7d3 = Mrs Nakamura-Bell
town-house-closet-laundry-6f573904 = town house, closet laundry
brisk-ecb0730a = brisk
a-young-man-came-about-a-rattle-8891b0e0 = A young man came about a rattle and tightened something under the top. The rattle is gone. So is everything else: it beeps after a few seconds and says something is not plausible.
a-closet-with-folding-doors-good-1a7670ea = A closet with folding doors, good light. Two of the top screws are shiny.
a-bed-set-0db8ad93 = A bed set.
just-the-beep-5b5f86d2 = Just the beep.
water-level-reading-not-9d7aad21 = “Water level reading not plausible”.
since-the-rattle-man-this-9c455d8a = Since the rattle man, this morning.
a-few-seconds-after-start-380bb281 = A few seconds after start.
the-rattle-man-835300b8 = The rattle man.
he-was-very-quick-he-had-to-be-1ea7e406 = He was very quick. He had to be somewhere else.

### goes_quiet_in_the_middle.json

it-goes-quiet-in-the-middle-ec029893 = It goes quiet in the middle
mr-ozturk-hale-1c29fc7a = Mr Ozturk-Hale
first-apartment-second-floor-81c05245 = first apartment, second floor
anxious-to-do-it-right-63e80f83 = anxious to do it right
it-washes-and-after-a-few-cbd240f8 = It washes, and after a few minutes it goes dead quiet, with the water in it. I thought it was broken, so I turned it off and bailed it out. Then I did it again and it was the same.
the-instruction-leaflet-is-still-e9cf0b4a = The instruction leaflet is still in its plastic bag, taped under the lid.
yes-at-about-the-same-place-ee687d1e = Yes, at about the same place.
shirts-and-jeans-half-full-a-c1cce2d2 = Shirts and jeans, half full, a small cup.
none-that-is-what-worries-me-b8e4788d = None, that is what worries me.
it-had-numbers-on-it-that-went-3f034692 = It had numbers on it that went down.
i-turned-it-off-after-two-or-0608db80 = I turned it off after two or three minutes of nothing.
i-only-got-it-last-week-it-is-ccc18762 = I only got it last week. It is second-hand.
after-four-or-five-minutes-of-a7649e1f = After four or five minutes of washing.
the-shop-that-sold-it-checked-it-7c2a68b5 = The shop that sold it checked it. They said.

### grandmothers_machine.json

it-was-my-grandmother-s-machine-228fd82f = It was my grandmother’s machine
worth-of-a-repair-39ed1ba0 = worth of a repair
ms-iyer-7cb3b996 = Ms Iyer
old-town-house-stone-floor-35281425 = old town house, stone floor
attached-to-the-machine-fcc541ec = attached to the machine
it-growls-and-grinds-and-the-108dab94 = It growls and grinds and the washing hardly moves. After some minutes it goes quiet, and later it tries again. It was my grandmother’s. Can it be made good? I would pay a fair price.
the-plate-at-the-back-says-that-197c2130 = The plate at the back says that it is eighteen years old. It has been polished.
a-few-dresses-i-no-longer-dare-deda059e = A few dresses. I no longer dare to put in more.
it-growls-below-and-when-it-does-1b8247b1 = It growls below, and when it does move, it grinds.
it-counts-down-as-if-nothing-5f45546d = It counts down as if nothing were the matter.
the-grinding-for-years-one-gets-1c7bef8d = The grinding for years, one gets used to it.
the-standing-still-since-last-038a7b72 = The standing still since last week.
hot-after-a-while-4115ceda = Hot, after a while.
as-soon-as-it-should-wash-a800de8b = As soon as it should wash.
never-it-is-eighteen-years-old-536f542a = Never. It is eighteen years old.

### half_as_strong_since_the_fitter.json

it-hums-and-labours-since-the-a94a822c = It hums and labours since the fitter was here
motor-and-capacitor-03ad0def = motor and capacitor
mr-baptiste-f75a2fa0 = Mr Baptiste
semi-detached-house-washroom-845c5240 = semi-detached house, washroom behind the garage
precise-keeps-receipts-d255cdd5 = precise, keeps receipts
a-man-fitted-a-new-back-panel-c7a89efc = A man fitted a new back panel because the old one rattled. For a week all was well. Now it hums, moves the washing a little, smells warm and stops. And my wife says it tingles when she touches the side.
a-single-self-cutting-screw-lies-2fab2f9d = A single self-cutting screw lies on the shelf beside the powder. Concrete floor.
each-time-93af93ad = Each time.
work-clothes-two-measures-393af841 = Work clothes. Two measures.
a-deep-hum-2e5a0742 = A deep hum.
nothing-has-tripped-0195d96c = Nothing has tripped.
it-ends-as-if-it-had-finished-d3506338 = It ends as if it had finished, with wet washing inside.
four-days-the-panel-is-two-weeks-688c4147 = Four days. The panel is two weeks old.
warm-like-a-hair-dryer-no-smoke-63b05f04 = Warm, like a hair dryer. No smoke.
when-it-should-wash-it-hums-5f971b9d = When it should wash. It hums, gives up, and after a quarter of an hour it tries again.
the-man-with-the-panel-492f60f5 = The man with the panel.
he-was-ten-minutes-he-had-one-3d71f034 = He was ten minutes. He had one screw left over and laid it on the shelf, there.

### has_to_be_coaxed_on.json

it-has-to-be-coaxed-to-come-on-988eedf8 = It has to be coaxed to come on
mr-ravindran-62f180a9 = Mr Ravindran
flat-share-of-three-nurses-b18b6d94 = flat share of three nurses
tired-after-a-night-shift-0ff6377e = tired after a night shift
you-press-the-button-and-there-8b959140 = You press the button and there is light, or there is not. Then it runs and suddenly everything is off. All three of us press it in our own way, and none of them works.
a-strip-of-tape-beside-the-8ec73f14 = A strip of tape beside the button says “firmly!” in three handwritings.
not-always-1f8ef26f = Not always.
when-one-holds-the-button-in-57b01e35 = When one holds the button in with a thumb it is better.
scrubs-e542d075 = Scrubs.
a-small-fizzle-from-the-button-65ff705c = A small fizzle from the button.
no-breaker-the-plug-is-in-the-d62a053c = No breaker. The plug is in the wall, no lead.
dark-then-power-was-off-29b46de2 = Dark. Then “Power was off”.
a-few-weeks-83612817 = A few weeks.
when-switching-on-and-sometimes-d6ecdd16 = When switching on, and sometimes in the middle.
no-it-is-the-landlord-s-bbb1b1d8 = No, it is the landlord’s.

### hot_and_stops.json

it-gets-hot-and-growls-one-way-a49323cc = It gets hot and growls one way
mr-abebe-077f01c5 = Mr Abebe
workers-hostel-heavily-used-64377626 = workers hostel, heavily used
sober-keeps-the-books-a8658a5f = sober, keeps the books
it-growls-one-way-hardly-starts-662c935e = It growls one way, hardly starts the other, it smells hot and then it stops for half an hour. Thirty people use it. What does it cost, and is it worth it?
the-motor-is-still-too-hot-to-88163692 = The motor is still too hot to touch when you come. A price limit of half a new machine was agreed by telephone.
whenever-it-is-full-empty-it-c04aeeaf = Whenever it is full. Empty it turns, but it growls.
work-clothes-always-full-2b95be60 = Work clothes, always full.
a-growl-then-a-click-then-9386fa4f = A growl, then a click, then silence. Half an hour later again.
the-fuse-for-the-room-has-held-71faba7f = The fuse for the room has held.
no-alarm-it-only-stands-and-goes-1d9c1af5 = No alarm, it only stands and goes on later.
tuesday-9f5419ba = Tuesday.
it-had-been-running-warm-for-4ae95e64 = It had been running warm for weeks, the night porter says.
hot-varnish-the-porter-opened-1faf20dc = Hot varnish. The porter opened the window.
good-c12a17e2 = Good.
in-the-wash-it-has-never-1a4a721a = In the wash. It has never finished a full load since Tuesday.
your-colleagues-fitted-a-3cc33dda = Your colleagues fitted a capacitor last year. There is a bill.

### hot_since_the_cheap_part.json

hot-and-halting-since-the-cheap-1f92160b = Hot and halting since the cheap part
mr-abernathy-diallo-683e37e2 = Mr Abernathy-Diallo
hobby-farm-pump-shed-149f8113 = hobby farm, pump shed
sheepish-9e99763c = sheepish
it-would-not-start-so-i-put-in-a-1aed8913 = It would not start, so I put in a new part from the mail-order. It started! But it does not want to turn back the other way, it runs hot and then takes a long rest.
a-mail-order-envelope-on-the-8f7ca5fe = A mail-order envelope on the bench. The shed is dry.
yes-the-first-minutes-are-the-07f2556f = Yes. The first minutes are the best.
work-clothes-95e94c62 = Work clothes.
a-deep-hum-where-it-should-turn-2b2c1db1 = A deep hum where it should turn back.
since-i-put-the-part-in-ten-days-92edcc0c = Since I put the part in, ten days.
hot-882dbaae = Hot.
i-did-it-myself-a085d3e4 = I did it myself.
the-round-can-at-the-back-it-is-6147826a = The round can at the back. It is the same size as the old one, I held them side by side. I threw the old one away.

### hums_and_stands.json

it-hums-and-nothing-turns-308139b7 = It hums and nothing turns
ms-petrov-bf021c27 = Ms Petrov
fourth-floor-shared-laundry-of-a-1cb0c0b8 = fourth floor, shared laundry of a small house
it-hums-like-a-fridge-and-the-3f469d6a = It hums like a fridge and the washing does not move. My daughter gave it a push with a spoon handle and then it ran. I told her never again.
the-machine-has-run-just-before-c002889e = The machine has run just before you came and may still be warm. Concrete floor, good drain.
with-a-push-it-goes-either-way-2ccbc0b9 = With a push it goes. Either way round, she says.
we-had-taken-everything-out-by-8c64d0f7 = We had taken everything out by the end and it still only hummed.
a-steady-hum-then-after-a-minute-d1012a6c = A steady hum, then after a minute it goes quiet, and later it hums again.
no-the-lamp-above-it-dims-a-9cd7e329 = No. The lamp above it dims a little when it hums.
nothing-special-the-minutes-efb240d8 = Nothing special, the minutes count down.
it-has-been-lazy-for-months-7c2bdb2d = It has been lazy for months. Since Sunday it does not start at all.
a-little-warm-perhaps-at-the-f8bd5a73 = A little warm, perhaps, at the back.
water-comes-in-as-always-8f43a4c9 = Water comes in as always.
as-soon-as-it-has-filled-and-10e14782 = As soon as it has filled and should begin to wash.
no-never-it-is-nine-years-old-7999561e = No, never. It is nine years old.

### hums_and_water_stays.json

it-hums-and-the-water-stays-in-66359797 = It hums and the water stays in
ms-whitefeather-67a053eb = Ms Whitefeather
ranch-house-mud-room-37bc5274 = ranch house, mud room
practical-b3e06f70 = practical
it-hums-the-water-stays-in-and-e47e3476 = It hums, the water stays in, and it gives up. I would bail it out myself but the phone man said to leave it for you to see.
the-tub-is-full-when-you-come-a-eb17d43a = The tub is full when you come. A wet-dry bucket and a floor drain are there.
twice-now-94802d1f = Twice now.
dog-blankets-with-what-was-in-55667a07 = Dog blankets. With what was in them, I guess.
a-loud-hum-down-on-one-side-99046bd4 = A loud hum, down on one side.
just-before-there-was-a-rattle-d43bbf7b = Just before, there was a rattle as if a pebble went through.
the-breaker-held-869d97e3 = The breaker held.
drains-too-slowly-08357f63 = “Drains too slowly”.
since-i-washed-the-dog-blankets-6694cd0b = Since I washed the dog blankets.
wet-dog-otherwise-no-b9edbcf8 = Wet dog. Otherwise no.
good-from-the-well-beab33e5 = Good, from the well.
after-the-wash-when-it-should-972305a5 = After the wash, when it should pump out.

### hums_quietly_no_wash.json

it-fills-ticks-and-does-not-wash-a8f817aa = It fills, ticks and does not wash
mr-haile-2188b517 = Mr Haile
ground-floor-behind-a-tailor-s-e2d6c980 = ground floor behind a tailor’s shop
hopeful-8aef8fca = hopeful
it-takes-water-as-it-should-then-1dbae90f = It takes water as it should. Then I hear it tick, tick, one way and the other, but the plate in the drum does not stir. No hum either. Yesterday my friend cleaned the fluff out of it, and it ran before that, only hotter than he liked.
the-back-cover-has-been-off-two-159250fc = The back cover has been off: two of its screws are new. A ball of grey fluff lies under the bench.
trousers-3126d6d6 = Trousers.
a-ticking-behind-the-panel-7e5c6c02 = A ticking behind the panel.
it-counts-down-as-if-all-were-3108131b = It counts down as if all were well.
since-yesterday-55b76ae1 = Since yesterday.
in-the-wash-it-does-not-turn-at-1de69754 = In the wash. It does not turn at all.
my-friend-blew-the-fluff-out-74fc962f = My friend blew the fluff out.
from-the-back-with-his-workshop-bb20fd14 = From the back, with his workshop air. He had to move some wires to get at the motor, he said.

### keys_do_nothing.json

the-keys-do-nothing-416c877c = The keys do nothing
mrs-papadimas-9f9ef419 = Mrs Papadimas
first-floor-two-grandchildren-8515693f = first floor, two grandchildren visiting
apologetic-dd91b90c = apologetic
it-lights-up-when-i-switch-it-on-8261808e = It lights up when I switch it on, but it does not care what I press. I press start and it says it is ready, and there it stays.
a-child-s-drawing-hangs-on-the-9771a68c = A child’s drawing hangs on the machine. The panel is clean and dry.
yes-i-have-tried-every-button-9efbed03 = Yes. I have tried every button, more than once.
a-few-blouses-51c729b1 = A few blouses.
ready-it-beeps-at-me-6a16494c = “Ready”. It beeps at me.
since-sunday-b912c52f = Since Sunday.
since-the-little-ones-were-here-9d86d056 = Since the little ones were here, now you ask. They are four and six and like buttons.
straight-away-59029c2f = Straight away.

### no_heart_after_a_while.json

it-loses-heart-after-a-while-aee6b7f2 = It loses heart after a while
ms-vasquez-okoro-4af1b073 = Ms Vasquez-Okoro
dog-groomer-s-two-loads-an-hour-1a88bae6 = dog groomer’s, two loads an hour
precise-keeps-a-log-of-it-eec230bb = precise, keeps a log of it
here-is-my-list-first-load-of-16974f2a = Here is my list. First load of the day: fine. Second load: it washes, then it does nothing for a while, then it washes. Third load: it does not turn at all. Over lunch it gets well again.
warm-steamy-room-her-list-is-on-60dc3215 = Warm, steamy room. Her list is on the wall, in two colours.
always-in-that-order-dfd18ad2 = Always in that order.
towels-50b1f66d = Towels.
the-pump-runs-the-motor-is-a21bf468 = The pump runs. The motor is silent, it does not even hum.
it-goes-on-counting-052aa3ea = It goes on counting.
the-list-starts-on-the-third-of-11295e79 = The list starts on the third of last month.
wet-dog-that-is-not-the-machine-07e9d395 = Wet dog. That is not the machine.
when-it-has-worked-for-a-while-69e28a8f = When it has worked for a while.

### no_spin_since_cousin.json

fills-washes-drains-does-not-7322c14f = Fills, washes, drains, does not spin
earlier-repairs-4d24aec1 = earlier repairs
mrs-okafor-d4d9f1c9 = Mrs Okafor
third-floor-no-lift-854e01dc = third floor, no lift
a-little-embarrassed-53bdf489 = a little embarrassed
it-fills-and-it-washes-and-the-de1bf1e0 = It fills and it washes and the water goes out, but it does not spin. The washing is soaking.
help-can-be-had-the-cousin-lives-fecb7937 = Help can be had: the cousin lives downstairs and is at home. Linoleum floor, slippery when wet.
the-white-one-that-opens-at-the-9eee0600 = The white one that opens at the top. Six years old, about.
in-the-bathroom-third-floor-5ceb2e9f = In the bathroom, third floor. Somebody could help to lift, yes.
it-fills-it-washes-the-water-58d1ffd4 = It fills, it washes, the water goes out. Then it does not spin.
bed-sheets-four-kilos-or-so-da8f9507 = Bed sheets, four kilos or so.
it-whirrs-when-the-water-goes-78e8231f = It whirrs when the water goes out, as always. Then that whine.
the-whine-is-the-same-as-when-it-398680ee = The whine is the same as when it washes.
no-nothing-has-tripped-b6b9c0ef = No, nothing has tripped.
no-beep-nothing-it-ends-as-if-it-756bb869 = No beep, nothing. It ends as if it were done.
three-weeks-1d38de10 = Three weeks.
yes-good-pressure-1b075a22 = Yes, good pressure.
at-the-spin-you-hear-it-whine-0564dac9 = At the spin. You hear it whine down there, but the drum stands still.
not-really-20045ad9 = Not really.
all-right-my-cousin-fitted-the-6ad80ef9 = All right. My cousin fitted the pulling motor, the one with the wire. He is very good with his hands.

### no_water.json

no-water-comes-in-98f56d2b = No water comes in
mrs-adeyemi-0e73eb3b = Mrs Adeyemi
ground-floor-laundry-niche-cebaa00b = ground floor, laundry niche behind the kitchen
i-put-the-washing-in-pressed-cda52219 = I put the washing in, pressed start, and it just sits there. I can hear a faint hum on top, but no water comes.
the-machine-stands-in-a-niche-b4ec920c = The machine stands in a niche; the tap is on the wall behind it, low down, and can be reached with an arm. Dry tiles.
yes-i-tried-three-times-49bbb505 = Yes, I tried three times.
towels-about-half-full-and-one-6447352b = Towels, about half full, and one measure of powder.
only-the-hum-up-at-the-back-c9c89787 = Only the hum, up at the back. Otherwise nothing.
no-everything-else-is-on-fc0b3af5 = No, everything else is on.
after-twenty-minutes-or-so-it-c6f4e737 = After twenty minutes or so it beeped and said “Fills too slowly”.
since-this-morning-on-saturday-e55db532 = Since this morning. On Saturday it still washed.
since-the-plumber-was-here-on-926cd71f = Since the plumber was here on Monday for the sink, come to think of it.
no-nothing-and-the-floor-is-dry-3f028fac = No, nothing, and the floor is dry.
i-suppose-so-the-kitchen-tap-9344f84d = I suppose so. The kitchen tap runs well.
the-one-for-the-machine-it-is-15327292 = The one for the machine? It is down there behind, I never touch it.
right-at-the-start-it-never-gets-7cfa12d9 = Right at the start. It never gets any further.
on-the-machine-no-nobody-e39facc9 = On the machine? No, nobody.
the-plumber-was-behind-it-he-had-2e8e9f46 = The plumber was behind it, he had to get at the pipes. But he did not touch the machine.

### not_the_wash_that_smells.json

it-smells-when-the-wash-is-on-13260057 = It smells when the wash is on
mrs-kowalczyk-104add28 = Mrs Kowalczyk
bungalow-utility-room-beside-the-d183c239 = bungalow, utility room beside the boiler
tired-in-a-hurry-to-go-out-5594208a = tired, in a hurry to go out
for-two-days-it-has-smelt-in-the-840484ab = For two days it has smelt in the laundry, like bad eggs. My neighbour says it is the belt. Could you be quick? I have to leave at noon.
a-narrow-room-without-a-window-37da99e9 = A narrow room without a window. The boiler hangs on the wall beside the machine; its cover stands on the floor.
in-the-utility-room-next-to-the-284e391c = In the utility room, next to the boiler.
it-does-everything-it-only-d81d1487 = It does everything. It only smells.
it-is-stronger-in-the-morning-44967476 = It is stronger in the morning, with the door shut all night.
nothing-in-it-now-844ef2ac = Nothing in it now.
no-breaker-no-92d78075 = No breaker, no.
nothing-it-washes-as-always-c7ffda99 = Nothing. It washes as always.
since-tuesday-a214521c = Since Tuesday.
the-fitter-was-at-the-boiler-on-27b59d4b = The fitter was at the boiler on Monday.
like-bad-eggs-it-gives-me-a-57381f04 = Like bad eggs. It gives me a headache.
all-the-time-come-to-think-of-it-ab25e885 = All the time, come to think of it. Also when it is not washing.
the-machine-nobody-3ec423c8 = The machine, nobody.

### nothing_at_all.json

nothing-at-all-e3d8b818 = Nothing at all
mr-okonjo-4dd85f86 = Mr Okonjo
allotment-house-new-lean-to-d80abe21 = allotment house, new lean-to kitchen
i-pull-the-knob-i-turn-it-to-the-66fe446f = I pull the knob, I turn it to the start, and nothing. No click, no hum, no water. It washed in the old kitchen until the day we carried it over.
two-sockets-side-by-side-on-the-cf76b9be = Two sockets side by side on the new wall. A lamp burns in the left one, the machine is in the right one.
nothing-in-it-yet-6ee1f29a = Nothing in it yet.
not-a-sound-1b2e9580 = Not a sound.
nothing-has-dropped-ffa7d67e = Nothing has dropped.
the-lamp-it-is-on-the-other-c39c145c = The lamp? It is on the other socket. That one is fine.
the-dial-does-not-move-ad000cc7 = The dial does not move.
since-we-carried-it-into-the-1f3c2373 = Since we carried it into the lean-to, yesterday.
yes-new-pipe-good-pressure-4155c84c = Yes, new pipe, good pressure.
it-does-not-even-begin-e449e1b5 = It does not even begin.
carried-nothing-else-upright-all-a6ae5c49 = Carried, nothing else. Upright all the way.
my-brother-did-the-electrics-in-7dc4cfe2 = My brother did the electrics in here. He has done three houses.

### one_way_only_and_hot.json

one-way-only-and-hot-db8df720 = One way only, and hot
mr-sepulveda-94a7c249 = Mr Sepulveda
boat-builder-s-shed-by-the-river-001349f5 = boat-builder’s shed by the river
knows-engines-listens-carefully-a1db2893 = knows engines, listens carefully
she-turns-one-way-and-then-she-cea3b3ac = She turns one way and then she does not turn back. She hums, gets hot, cuts out, and after ten minutes she begins again. In one direction she would go on for ever.
everything-in-the-shed-is-2aa09b36 = Everything in the shed is labelled. The machine stands on rubber mats, dead level.
canvas-covers-one-at-a-time-7e71c870 = Canvas covers, one at a time.
a-hum-where-the-other-direction-abf17f31 = A hum where the other direction should be.
the-dial-goes-on-slowly-287c522f = The dial goes on, slowly.
since-the-weekend-fc9fd6cb = Since the weekend.
warm-varnish-i-know-that-smell-d9424647 = Warm varnish. I know that smell.
i-do-not-let-anybody-near-my-369756d7 = I do not let anybody near my machines. Except you.

### overflows_since_the_repair.json

it-overflows-since-the-repair-915e1553 = It overflows since the repair
mr-and-mrs-farouk-29f5ad97 = Mr and Mrs Farouk
top-floor-over-a-bakery-f338ef3d = top floor, over a bakery
angry-with-the-last-repairer-86019da7 = angry with the last repairer
the-board-was-changed-on-f77acbb1 = The board was changed on Thursday and since then it runs over. The baker below had water on his flour. Somebody is going to pay for this.
the-baker-has-put-a-bucket-under-c8647f6e = The baker has put a bucket under the stain. The tap was shut by the customer. Towels lie on the floor.
the-one-time-was-enough-we-shut-d59bcd64 = The one time was enough. We shut the tap.
empty-now-it-was-bed-linen-9b52004b = Empty, now. It was bed linen.
just-the-water-running-371bc262 = Just the water running.
at-last-it-said-fills-too-slowly-5e68c5fb = At last it said “Fills too slowly”. Too slowly! With the floor under water!
since-thursday-when-the-board-a3b673cb = Since Thursday, when the board was changed. Before that it was only dark.
no-smell-wet-floor-as-i-say-9a280fdb = No smell. Wet floor, as I say.
the-tap-is-shut-now-the-pressure-f5f4eb3e = The tap is shut now. The pressure up here is fair.
while-it-fills-it-fills-and-bb0d3c0d = While it fills. It fills and fills and does not wash.
a-man-from-the-paper-put-in-a-5405d4c7 = A man from the paper put in a board. He was very quick.
he-had-the-top-up-he-shut-it-d26c0be4 = He had the top up. He shut it with his knee, my husband saw it.

### prickles_in_the_scullery.json

it-prickles-in-the-scullery-796ab3e0 = It prickles in the scullery
mrs-wanjiru-71b91911 = Mrs Wanjiru
old-parsonage-scullery-with-a-6657bde9 = old parsonage, scullery with a stone floor
worried-for-her-mother-129e9622 = worried for her mother
my-mother-says-it-prickles-when-40a0c79f = My mother says it prickles when she leans on it. I thought it was her age. Yesterday I did the washing barefoot and I felt it as well.
stone-floor-often-damp-a-test-b5c49e36 = Stone floor, often damp. A test certificate for the house hangs by the fuse box. The cord behind the machine has tooth marks.
with-dry-shoes-not-8ab0cf3d = With dry shoes, not.
whatever-there-is-01727c47 = Whatever there is.
nothing-trips-0ef14a84 = Nothing trips.
the-sockets-were-tested-for-the-cb2432be = The sockets were tested for the insurance in spring. I have the paper.
it-washes-quite-normally-8c005597 = It washes quite normally.
a-month-my-mother-says-dd680041 = A month, my mother says.
whenever-it-is-plugged-in-35b24399 = Whenever it is plugged in.
the-cat-has-a-basket-behind-it-ac643b9a = The cat has a basket behind it. She plays with everything that hangs.

### pulls_and_nothing_opens.json

it-whirrs-and-nothing-opens-04e5328a = It whirrs and nothing opens
mr-halloran-6a8d0e93 = Mr Halloran
public-house-yard-laundry-e9120221 = public house, yard laundry
jolly-in-the-middle-of-things-9d53bb14 = jolly, in the middle of things
it-whirrs-away-down-there-as-it-475fb45b = It whirrs away down there as it should when it wants to empty, and not a drop comes out of the hose. We have bailed it with a stout jug three nights running.
stone-yard-with-a-gully-a-dish-293345bc = Stone yard with a gully. A dish of coins and bottle caps found in the wash stands on the sill.
bar-cloths-and-aprons-3c8d5ceb = Bar cloths and aprons.
the-girls-empty-the-pockets-dfe579f2 = The girls empty the pockets. Mostly.
a-whirr-and-once-on-the-first-870d2230 = A whirr, and once, on the first day, a twang.
the-dial-stands-and-waits-b0b823be = The dial stands and waits.
three-days-fcf8fa38 = Three days.
it-was-slow-to-shut-off-before-297e87a2 = It was slow to shut off before that. It ran a bit into the gully all the time, day and night.
a-bit-of-beer-but-that-is-the-fb309d4d = A bit of beer, but that is the bar cloths.
when-it-should-empty-2b67a8c6 = When it should empty.

### rests_after_ten_minutes.json

it-rests-after-ten-minutes-23195503 = It rests after ten minutes
mr-fonseka-0d212319 = Mr Fonseka
tea-room-kitchen-c122b03f = tea-room kitchen
patient-offers-tea-4f9c89a7 = patient, offers tea
it-washes-beautifully-and-then-a79bbfb1 = It washes beautifully, and then it takes a rest. I go away, I come back, it washes again. With two loads one after the other it hardly works at all.
a-hot-kitchen-the-machine-stands-9f66e5d0 = A hot kitchen; the machine stands beside the oven.
not-in-the-morning-50d9d96c = Not in the morning.
when-the-kitchen-is-cool-never-eecf156f = When the kitchen is cool, never.
aprons-and-cloths-not-heavy-742a9f3e = Aprons and cloths, not heavy.
when-it-rests-it-is-quite-silent-af14afd8 = When it rests it is quite silent. No hum.
the-dial-goes-on-without-it-b5c63fc8 = The dial goes on without it.
since-the-hot-weather-8a01e2f1 = Since the hot weather.
after-ten-minutes-or-a-quarter-5e694c3e = After ten minutes or a quarter of an hour. Sooner with the second load.

### rust_and_rumble.json

rust-water-and-a-rumble-0fbf92c7 = Rust water and a rumble
mrs-guidry-onwudiwe-97307716 = Mrs Guidry-Onwudiwe
bungalow-under-live-oaks-9633731a = bungalow under live oaks
wants-the-truth-c7935656 = wants the truth
there-is-rusty-water-under-it-e5e3a3d5 = There is rusty water under it and it rumbles like a freight train when it spins, slower every week. My sister says buy a new one, my son says fix it. What do you say?
a-baking-tin-under-the-machine-2357776e = A baking tin under the machine holds a little brown water. The plate says it is sixteen years old.
less-and-less-1c498d18 = Less and less.
a-freight-train-8596e9fd = A freight train.
it-finishes-mostly-280e1e5b = It finishes, mostly.
a-year-or-more-27ee9f1f = A year or more.
rust-under-it-after-washing-the-2f469969 = Rust under it after washing. The rumble at the spin.
my-son-put-in-a-belt-two-years-82078000 = My son put in a belt two years ago.

### says_later.json

it-will-not-start-when-i-want-it-e7dd425c = It will not start when I want it to
mrs-lightfoot-ames-f5a3f9a4 = Mrs Lightfoot-Ames
trailer-by-the-lake-fb2ce1e5 = trailer by the lake
cheerful-2c18b95d = cheerful
i-put-the-clothes-in-and-press-576bcdb1 = I put the clothes in and press start, and it will not start. It just sits there with its light on. By the time I come home from the diner it has done them, though, and they are all crumpled.
reading-glasses-lie-on-the-shelf-f368bea8 = Reading glasses lie on the shelf above the machine.
uniforms-33bcfcea = Uniforms.
no-and-no-extension-cord-0c397fe5 = No, and no extension cord.
some-words-and-a-number-fb3c2813 = Some words, and a number.
i-never-have-my-glasses-on-cff9966f = I never have my glasses on.
my-niece-stayed-over-she-is-e3725730 = My niece stayed over. She is clever with anything that has buttons.
yes-faucet-is-open-da9b92e2 = Yes, faucet is open.
right-when-i-press-start-a53e9f53 = Right when I press start.

### shakes_the_pictures.json

it-shakes-the-pictures-off-the-a34b51eb = It shakes the pictures off the wall
mr-osterhaus-lee-5de841db = Mr Osterhaus-Lee
frame-house-laundry-above-the-f449bc75 = frame house, laundry above the living room
has-catalogued-every-noise-5fd6616b = has catalogued every noise
it-sways-to-one-side-and-at-a-cc7bd064 = It sways to one side, and at a certain speed the whole house joins in. The picture of my mother has come down twice.
the-machine-stands-level-the-439bb5c1 = The machine stands level. The drum hangs a finger’s breadth lower at one corner.
yes-whatever-i-put-in-1fa74e03 = Yes, whatever I put in.
i-weigh-it-three-kilos-d25b5d6b = I weigh it. Three kilos.
a-rumble-that-swells-and-swells-06636141 = A rumble that swells and swells.
sometimes-spreading-the-load-fc3df848 = Sometimes “Spreading the load”.
gradually-and-then-since-the-ae87b3fb = Gradually, and then since the last hot summer a lot.
when-the-spin-gathers-speed-fad39a7d = When the spin gathers speed.

### silent_and_dry.json

it-starts-and-no-water-comes-in-aad91ce5 = It starts and no water comes, in silence
mrs-kowalska-95cb2fde = Mrs Kowalska
third-floor-kitchen-2a3866b0 = third floor, kitchen
hard-of-hearing-precise-ad0b58d6 = hard of hearing, precise
i-start-it-the-lamps-light-and-9459a081 = I start it, the lamps light, and no water comes. I have good taps, I looked at the hose, it is not kinked.
the-customer-has-pulled-the-998f21c2 = The customer has pulled the machine forward by herself and laid towels.
always-f83ac91e = Always.
i-do-not-hear-so-well-you-must-ffb53784 = I do not hear so well, you must listen yourself.
my-niece-says-it-is-quite-silent-33d839c7 = My niece says it is quite silent. There used to be a hum.
fills-too-slowly-i-wrote-it-down-299bc891 = “Fills too slowly”, I wrote it down.
since-the-day-before-yesterday-bcb764a4 = Since the day before yesterday. Before, it took water properly.
in-spring-there-was-a-warm-smell-b9d3a0ac = In spring there was a warm smell on top, once.
i-opened-and-shut-the-tap-twice-e1aeb355 = I opened and shut the tap twice. It is open. The bucket filled in no time.
at-the-beginning-at-once-98fda244 = At the beginning, at once.

### slaps_and_rubs.json

it-slaps-and-rubs-below-33de6851 = It slaps and rubs below
mr-zeleny-77d90a45 = Mr Zeleny
mill-house-laundry-by-the-wheel-20d88e15 = mill house, laundry by the wheel
thorough-takes-notes-9b4f7f08 = thorough, takes notes
it-does-its-work-but-it-has-got-2fd0e6f3 = It does its work, but it has got loud. It slaps below when it turns, and there is a rub with it, like a broom on a board. The noise is worse since we pushed it over the sill with the sack truck.
crumbs-of-black-rubber-on-the-cb4c72b1 = Crumbs of black rubber on the floor where the machine stood. The sill has a bright scratch.
flour-sacks-three-kilos-89eea3e0 = Flour sacks, three kilos.
a-slap-and-a-rub-9f26da11 = A slap and a rub.
the-slap-for-some-time-9a906e0a = The slap for some time.
the-rub-since-the-sack-truck-it-a2a0bc48 = The rub since the sack truck. It caught on the sill, underneath.
a-bit-of-rubber-dust-3d42e440 = A bit of rubber dust.
whenever-it-turns-06f54830 = Whenever it turns.
only-moved-f578f20a = Only moved.

### slow_since_the_drought.json

slow-since-the-drought-daf1c7e2 = Slow since the drought
mrs-benhaddou-b6f14e71 = Mrs Benhaddou
mountain-village-house-by-the-e7c2ec9d = mountain village, house by the spring
hospitable-tea-first-f1a2e85e = hospitable, tea first
it-fills-drop-by-drop-since-the-7c42892e = It fills drop by drop. Since the drought the water is hard as stone here, and the machine has got slow like the rest of us.
a-white-crust-on-tap-and-sink-43c2d2ee = A white crust on tap and sink. Sand in the bottom of the water jug.
wool-mostly-45a807d6 = Wool, mostly.
it-hums-and-hisses-34885cd7 = It hums and hisses.
the-dial-does-not-move-on-until-158b2d1e = The dial does not move on until it is full.
since-the-dry-summer-67a41216 = Since the dry summer.
at-the-sink-it-runs-well-you-can-18166856 = At the sink it runs well. You can see the white crust on everything.
my-son-looked-at-the-hose-it-was-deaa2ba6 = My son looked at the hose. It was straight.

### slow_to_empty.json

it-takes-long-to-empty-and-c79317e8 = It takes long to empty and leaves lint on everything
mrs-oyelaran-a690ff14 = Mrs Oyelaran
hairdresser-s-back-room-aaba491d = hairdresser’s, back room
cheerful-customers-waiting-975b334d = cheerful, customers waiting
forty-towels-a-day-that-is-my-4aa6cdf4 = Forty towels a day, that is my life. It empties so slowly now that I run out of dry ones before noon, and what comes out is covered in fluff.
a-bin-of-damp-towels-the-little-0dd3e608 = A bin of damp towels. The little bag inside the drum is grey and hard as felt.
each-load-6ba4e2ae = Each load.
towels-with-hair-of-course-10b5ed69 = Towels. With hair, of course.
it-whirrs-and-trickles-6fe08d3b = It whirrs and trickles.
nothing-once-drains-too-slowly-29716d4b = Nothing. Once “Drains too slowly”, but then it went on.
it-has-got-slower-over-the-last-63c1bd9c = It has got slower over the last months.
a-bit-stale-d57f1128 = A bit stale.
when-the-water-goes-out-a939c439 = When the water goes out.
no-one-it-is-a-good-machine-a3ae593e = No one. It is a good machine.

### smells_and_counts_for_nothing.json

it-fills-to-nothing-and-hums-at-91313bdf = It fills to nothing and hums at the back
mrs-sandoval-3d0265eb = Mrs Sandoval
dressmaker-s-first-floor-2d567bfe = dressmaker’s, first floor
observant-db000249 = observant
it-thinks-it-is-full-when-it-is-c4482cb3 = It thinks it is full when it is empty: it goes round with a dry tub. And I have smelt it at the back for weeks, warm, even when it was switched off.
the-wall-behind-the-machine-has-f35e85bb = The wall behind the machine has a pale brown mark, hand-sized.
muslin-i-took-it-out-cedb664a = Muslin. I took it out.
it-turns-and-scrapes-dry-2be07429 = It turns and scrapes, dry.
the-dial-goes-on-as-if-all-were-7b3b5755 = The dial goes on as if all were in order.
yesterday-the-dry-turning-the-29b96dc2 = Yesterday the dry turning. The smell for weeks.
warm-a-bit-like-ironing-at-the-44c254aa = Warm, a bit like ironing. At the back.
the-tap-is-open-and-strong-7f0505b7 = The tap is open and strong.
from-the-first-minute-no-water-37fe21fb = From the first minute. No water, it just turns.

### squeals_after_the_new_belt.json

it-squeals-like-a-pig-a20d7994 = It squeals like a pig
mr-thibodeaux-mensah-274079f8 = Mr Thibodeaux-Mensah
corner-store-stock-room-33579948 = corner store, stock room
bargaining-good-natured-ef918946 = bargaining, good-natured
i-bought-a-belt-my-brother-in-1294d7e3 = I bought a belt, my brother-in-law put it on, and now it squeals like a pig and spins like a snail. He says belts need running in. Do belts need running in?
the-packet-of-the-belt-is-on-the-47018dce = The packet of the belt is on the shelf; it is the right one.
aprons-6262e992 = Aprons.
it-squeals-and-there-is-a-tick-ca8626f3 = It squeals, and there is a tick, tick with it.
since-the-new-belt-4faea66d = Since the new belt.
rubber-7a64ffef = Rubber.
at-the-spin-in-the-wash-a-little-e6119f1f = At the spin. In the wash a little.
my-brother-in-law-e41e9f3c = My brother-in-law.
he-had-the-motor-loose-and-the-0246ae85 = He had the motor loose and the little wheel off, to get the belt on better.

### squeals_and_comes_out_wet.json

it-squeals-and-the-washing-comes-eb09cdee = It squeals and the washing comes out wet
mr-novak-4bdf547d = Mr Novak
farm-house-wash-kitchen-6d199ade = farm house, wash kitchen
it-squeals-like-a-piglet-when-it-fc723972 = It squeals like a piglet when it starts and the washing comes out wet as a dishcloth. My wife says the motor is gone. I say it is not.
stone-floor-machine-well-07fc6e3a = Stone floor, machine well accessible. A farm hand can help to lift.
with-a-full-drum-yes-empty-it-89c033ec = With a full drum, yes. Empty it hardly squeals.
work-trousers-full-five-kilos-83a475d6 = Work trousers. Full, five kilos.
the-squeal-from-below-and-it-43306fc1 = The squeal, from below. And it hums along quite happily meanwhile.
its-own-socket-nothing-trips-1899b46d = Its own socket. Nothing trips.
the-usual-it-ends-at-the-usual-f9ebc51e = The usual. It ends at the usual time.
a-good-month-ca60f963 = A good month.
it-began-small-a-chirp-on-cold-065e2789 = It began small. A chirp on cold mornings, you know.
like-a-rubber-boot-by-the-stove-af18a67b = Like a rubber boot by the stove, if you put your nose to it.
from-our-own-tank-with-a-pump-b40219ca = From our own tank, with a pump, plenty.
mostly-when-it-changes-direction-f04241c8 = Mostly when it changes direction, and when it starts to spin.
never-only-moved-it-when-we-276e91a1 = Never. Only moved it when we whitewashed the wall.

### starts_when_it_likes.json

it-starts-when-it-likes-efda6fb4 = It starts when it likes
ms-delacroix-mbuyi-182be0a7 = Ms Delacroix-Mbuyi
puppet-theatre-wardrobe-room-8cdd531b = puppet theatre, wardrobe room
curious-about-everything-8584de4d = curious about everything
sometimes-it-takes-water-at-once-452dad62 = Sometimes it takes water at once. Sometimes I turn the knob a little to and fro and then it does. Sometimes it makes me wait, and then thinks better of it.
the-knob-s-edge-is-worn-smooth-a-b6c3a153 = The knob’s edge is worn smooth. A pencil mark shows where it likes to start.
no-that-is-what-drives-me-mad-4712608b = No! That is what drives me mad.
costumes-gently-6cab5855 = Costumes. Gently.
when-it-will-not-it-is-silent-no-0e210875 = When it will not, it is silent. No hum at the back.
the-dial-stands-at-the-beginning-59d0c333 = The dial stands at the beginning and waits.
all-this-season-725f11f1 = All this season.
once-a-whiff-of-something-burnt-03ba113f = Once, a whiff of something burnt at the knob.
it-runs-like-a-river-33d53bc2 = It runs like a river.
at-the-filling-009fcffe = At the filling.
no-one-dares-758634e9 = No one dares.

### stops_and_beeps_before_spin.json

it-stops-and-beeps-before-the-015bb829 = It stops and beeps before the spin
mr-haddad-b3e53c18 = Mr Haddad
first-floor-kitchen-50ed6e15 = first floor, kitchen
helpful-5f98198d = helpful
it-washes-fine-then-it-stops-f6c35f84 = It washes fine, then it stops full of wet things, and after a while it beeps. The lid is shut, I promise.
a-shelf-hangs-above-the-machine-24d934f5 = A shelf hangs above the machine; the lid hits it when it is opened wide.
now-it-is-every-time-ee08c642 = Now it is every time.
mixed-things-three-kilos-maybe-c0f2b98d = Mixed things, three kilos maybe.
i-no-longer-hear-the-little-191f9fee = I no longer hear the little click when I shut the lid. There used to be a click.
all-good-03a56dcd = All good.
lid-is-open-but-it-is-not-3a421324 = “Lid is open”. But it is not.
since-last-week-once-or-twice-it-0e08cd7c = Since last week. Once or twice it still spun when I banged the lid.
when-the-water-is-out-and-it-913f418c = When the water is out and it should spin.
my-son-leant-on-the-lid-to-reach-36ad5703 = My son leant on the lid to reach the shelf, a month ago. It still worked after that.

### stops_full_of_water.json

it-stops-full-of-water-e259eedc = It stops full of water
ms-lindqvist-940df587 = Ms Lindqvist
basement-flat-28feae5b = basement flat
worried-about-the-floor-eec8d597 = worried about the floor
it-has-stopped-with-all-the-179a9a3a = It has stopped with all the water in it and it beeps. I am afraid to open anything.
the-tub-is-full-when-you-come-e84adcc5 = The tub is full when you come. The floor drain is two metres away, the drain hose lies in it.
i-switched-it-off-and-on-and-12d03a1d = I switched it off and on and chose spin only. The same.
baby-clothes-three-kilos-2099c741 = Baby clothes, three kilos.
nothing-at-all-when-it-should-b6dda2c8 = Nothing at all when it should drain.
there-used-to-be-a-whirr-for-a-f368c354 = There used to be a whirr for a few seconds. That is gone.
yesterday-evening-from-one-wash-e0cf1dd9 = Yesterday evening, from one wash to the next.
no-the-floor-is-dry-thank-heaven-bdc172f1 = No. The floor is dry, thank heaven.
it-came-in-as-always-it-is-up-to-2e6e37c1 = It came in as always, it is up to here.
after-the-wash-when-the-water-54fac36c = After the wash, when the water should go out.

### stops_if_you_look_at_it.json

it-stops-if-you-so-much-as-look-2651ab51 = It stops if you so much as look at it
mr-kekona-4e614055 = Mr Kekona
surf-shop-back-yard-4fcdd10c = surf shop, back yard
easy-going-8d5d47d8 = easy-going
it-stops-whenever-it-likes-says-a05a8119 = It stops whenever it likes, says to close the lid, and the lid is closed! Slap it and it goes again. My staff have got very good at slapping it.
a-worn-patch-on-the-lid-where-53b73221 = A worn patch on the lid where hands have slapped it. Open-sided shed, sea two streets away.
no-only-now-and-then-85493d62 = No, only now and then.
more-when-it-shakes-i-would-say-22dee845 = More when it shakes, I would say.
rash-vests-and-towels-bc367597 = Rash vests and towels.
a-click-and-then-it-is-quiet-ee3ba7c7 = A click, and then it is quiet.
close-the-lid-501eaab8 = “Close the lid”.
since-the-summer-32e4b0bf = Since the summer.
any-time-washing-spinning-7bbed8fd = Any time. Washing, spinning, draining.
no-salt-air-does-for-everything-37204f4f = No. Salt air does for everything here.

### stops_when_it_gets_going.json

it-gets-going-and-then-starts-3e383b29 = It gets going and then starts all over again
ms-yildiz-7f833ab2 = Ms Yildiz
flat-over-a-workshop-that-shakes-34f6a2a1 = flat over a workshop that shakes the floor
sceptical-the-last-visit-found-7cb633ba = sceptical: the last visit found nothing
it-drains-it-begins-to-spin-it-d1d953b9 = It drains, it begins to spin, it gets quite fast, and then it stops, fills up and stirs about, and tries again. In the end it says it cannot. The last man turned it on, it ran, he left, and it did it again the same night.
the-floor-trembles-when-the-1173065f = The floor trembles when the press below is working. The machine stands level and does not rock.
nearly-always-c455f059 = Nearly always.
with-an-empty-drum-it-does-it-612853ee = With an empty drum it does it too, I have tried that.
anything-even-one-towel-6005cd10 = Anything. Even one towel.
no-banging-at-all-83d71728 = No banging at all.
spreading-the-load-and-later-4f07f477 = “Spreading the load”, and later that it swings too much. But it stands as quiet as a cupboard.
six-weeks-or-so-71726633 = Six weeks or so.
when-it-gets-really-fast-never-7cc01f87 = When it gets really fast. Never before.
the-man-who-found-nothing-cd3d4f9d = The man who found nothing.
and-before-that-one-who-changed-5b5df847 = And before that one who changed the display, in spring. He had the top open.

### takes_an_hour_to_fill.json

it-takes-an-hour-to-fill-1be18b8d = It takes an hour to fill
mr-quispe-c248b37b = Mr Quispe
second-floor-above-a-bakery-eca66987 = second floor above a bakery
patient-a-little-tired-03a0b2cd = patient, a little tired
it-washes-well-in-the-end-but-499f0ed8 = It washes well in the end, but first it stands there for the better part of an hour and dribbles water into the tub. Sometimes it gives up and beeps before it is full.
the-machine-stands-close-to-the-61e4ad0c = The machine stands close to the wall between a freezer and the door. The tap is open.
every-time-now-76cad28d = Every time now.
nappies-and-towels-the-right-52ab09e9 = Nappies and towels. The right amount of powder, I measure it.
a-thin-hiss-instead-of-the-3a55aa19 = A thin hiss instead of the rushing it used to make.
fills-too-slowly-when-it-gives-135acdf6 = “Fills too slowly”, when it gives up.
it-has-crept-up-on-us-cb568718 = It has crept up on us.
worse-since-we-pushed-it-further-3956d5f8 = Worse since we pushed it further back to make room for the pram.
the-sink-beside-it-runs-hard-b2d14265 = The sink beside it runs hard enough to splash me.
at-the-beginning-while-the-water-2ed83fbf = At the beginning, while the water comes in. And again for each rinse.
no-repairs-36a018fa = No repairs.
the-water-people-dug-up-the-d1490516 = The water people dug up the street in spring. For two days everything came out brown.

### takes_its_time_stopping.json

it-takes-its-time-stopping-c9c608b9 = It takes its time stopping
mrs-whitlock-adeyinka-f0fccc43 = Mrs Whitlock-Adeyinka
day-nursery-staff-laundry-e430ed00 = day nursery, staff laundry
serious-about-safety-1d4c9d5a = serious about safety
when-i-open-the-lid-while-it-d284f457 = When I open the lid while it spins, it goes on turning for ever so long. With children in the house I will not have that. There is a wobble down there as well.
the-laundry-door-has-a-high-bolt-15fddc4b = The laundry door has a high bolt. No child is in the room.
bibs-and-sheets-c687ba88 = Bibs and sheets.
a-wobble-wum-wum-from-below-5d2c430c = A wobble, wum, wum, from below.
it-says-to-close-the-lid-as-it-012a7457 = It says to close the lid, as it should.
half-a-year-getting-worse-5358c77a = Half a year, getting worse.
after-the-spin-and-when-i-lift-9e62e4f5 = After the spin, and when I lift the lid.

### third_valve_still_slow.json

the-third-new-valve-and-it-still-333014d3 = The third new valve, and it still fills slowly
mr-andriamana-6ebe756a = Mr Andriamana
top-floor-tank-on-the-roof-59c64250 = top floor, tank on the roof terrace
polite-has-stopped-believing-568ac42c = polite, has stopped believing anyone
two-men-have-put-in-three-inlet-3c0f2383 = Two men have put in three inlet valves between them and I have paid for all three. It still needs twenty minutes to fill, and then it beeps. Please do not sell me a fourth.
the-roof-tank-stands-on-a-frame-22c6b5a7 = The roof tank stands on a frame; its outlet is about one metre above the tap.
top-floor-there-is-a-lift-when-4b37195b = Top floor. There is a lift, when it runs.
shirts-one-measure-of-powder-0711e0e6 = Shirts. One measure of powder.
it-hums-and-trickles-f19ca05b = It hums and trickles.
fills-too-slowly-c89ea75a = “Fills too slowly”.
since-we-moved-up-here-08964225 = Since we moved up here.
downstairs-at-my-mother-s-it-e33d4d26 = Downstairs, at my mother’s, it filled in a few minutes. She has the mains, I have the tank.
the-tap-is-open-8cf0e82d = The tap is open.
the-shower-one-has-to-be-patient-af1f9f45 = The shower? One has to be patient up here.
three-valves-in-two-months-the-82982983 = Three valves in two months. The last man cleaned the little sieve as well, he showed it to me.

### trips_and_old.json

it-drops-the-breaker-and-it-is-307027c4 = It drops the breaker, and it is not young
mr-moyo-4d6e2e6e = Mr Moyo
smallholding-pump-house-3df54505 = smallholding, pump house
resigned-8c93abb8 = resigned
when-it-begins-to-wash-the-light-ddd198f0 = When it begins to wash, the light goes out in the whole house. It has rumbled and groaned for years. Tell me straight whether it is worth it.
rust-along-the-bottom-edge-the-0ee486a3 = Rust along the bottom edge. The mended mends have been mended.
in-the-pump-house-on-concrete-i-de781083 = In the pump house, on concrete. I can lift.
it-used-to-rumble-when-it-spun-68482530 = It used to rumble when it spun. Now it does not get so far.
the-breaker-with-the-test-button-f41d936f = The breaker with the test button.
it-holds-as-long-as-the-machine-a3cab22b = It holds as long as the machine is only filling.
the-rumbling-for-years-the-cd5302cd = The rumbling for years. The tripping since the rains.
it-fills-and-the-moment-it-18719fda = It fills, and the moment it should turn, everything goes dark.
i-have-kept-it-going-with-my-own-71508485 = I have kept it going with my own hands for fifteen years.

### turns_one_way.json

it-turns-one-way-and-never-spins-1c7ef6d5 = It turns one way and never spins
mr-pemberley-cruz-ffefd726 = Mr Pemberley-Cruz
dry-humour-dfcf0a92 = dry humour
half-of-it-works-it-turns-one-a194afcc = Half of it works. It turns one way, thinks about it, and turns the same way again. And when it ought to spin, it hums to itself down there with the pump and that is that.
mud-room-with-a-drain-a-dog-2c2fbcb7 = Mud room with a drain. A dog asleep on a heap of coats.
yes-sir-67ab8dac = Yes, sir.
barn-clothes-050f650e = Barn clothes.
a-click-where-the-other-turn-0380f79c = A click where the other turn ought to be.
no-breaker-no-cord-4029e677 = No breaker, no cord.
it-counts-down-919ec4e2 = It counts down.
since-the-cold-snap-6645ec1e = Since the cold snap.
washing-and-spinning-52f66587 = Washing and spinning.
nobody-but-the-dog-goes-in-there-aa09132b = Nobody but the dog goes in there.

### waits_for_its_water.json

it-waits-and-waits-for-its-water-f390613f = It waits and waits for its water
mrs-solheim-deafeb0c = Mrs Solheim
holiday-cabin-by-the-fjord-7f3ba77b = holiday cabin by the fjord
relaxed-on-holiday-2a52ede1 = relaxed, on holiday
we-opened-the-cabin-up-last-week-fc706bb7 = We opened the cabin up last week. It washes, but it takes the whole morning: it stands there hissing for ages before it begins to stir. In other summers it was quicker.
the-tap-sits-low-behind-the-b5221d50 = The tap sits low behind the machine and has a stiff old handle. The hose lies straight.
swimming-things-and-bed-linen-30071367 = Swimming things and bed linen.
it-hisses-753de6e1 = It hisses.
the-dial-just-stands-where-i-put-50a413bc = The dial just stands where I put it and waits.
this-summer-from-the-first-wash-bbc0c58c = This summer, from the first wash.
my-son-turned-the-water-on-again-1fea7d8e = My son turned the water on again after the winter. He is careful about such things.
the-kitchen-tap-is-good-6073632a = The kitchen tap is good.
at-the-start-and-again-in-the-d39668e0 = At the start, and again in the rinses.
no-it-sleeps-here-all-winter-92e6c94d = No. It sleeps here all winter.

### walked_to_the_door.json

the-drum-hangs-to-one-side-86691b09 = The drum hangs to one side
mrs-harlan-sato-0c3ff853 = Mrs Harlan-Sato
apartment-with-a-narrow-hall-87e5c332 = apartment with a narrow hall
apologises-for-the-mess-5b9d462b = apologises for the mess
the-drum-sits-crooked-i-can-see-92049f45 = The drum sits crooked, I can see it through the lid. It fills and washes, more or less, and when it should spin it swishes about, takes in water, and tries again, until it gives up.
scrape-marks-on-the-corner-of-37922dec = Scrape marks on the corner of the hall. The machine stands level.
three-kilos-at-most-469ccb71 = Three kilos at most.
a-clonk-against-the-side-when-it-a9d28dde = A clonk against the side when it starts.
basket-keeps-swinging-000ff910 = “Basket keeps swinging”.
since-the-move-4266fac7 = Since the move.
they-got-it-round-the-corner-in-2f435aa0 = They got it round the corner in the hall on its side, and it went clonk.
at-the-spin-4bda2cf1 = At the spin.
the-movers-and-my-husband-pushed-0490a4aa = The movers. And my husband pushed at the drum from above and said it was fine.

### walks_and_fills_again.json

it-walks-and-fills-again-and-96dd5d9c = It walks and fills again and again
mr-mbeki-4a42d1f8 = Mr Mbeki
garden-shed-with-a-wooden-floor-781d09c7 = garden shed with a wooden floor
it-walks-through-the-shed-like-a-66ed1e9c = It walks through the shed like a goat, stops, fills up again, and in the end it gives up. The shop says the damping is worn and wants to sell me rods.
plank-floor-that-slopes-to-the-d8ae2d1c = Plank floor that slopes to the door; the feet stand at their shortest. The bath mats are still in the basket.
with-a-few-shirts-it-sometimes-d4ab61ba = With a few shirts it sometimes gets through.
bath-mats-and-a-blanket-e9ee9f74 = Bath mats and a blanket.
it-bangs-three-or-four-times-c3f9fe09 = It bangs three or four times, then it stops and takes water.
a-cable-from-the-house-nothing-a46dbe7b = A cable from the house. Nothing trips.
since-it-stands-in-the-shed-in-c55438b4 = Since it stands in the shed. In the old house it was quiet.
from-the-garden-tap-fine-e70a6c8c = From the garden tap, fine.
when-it-begins-to-spin-93d30b3f = When it begins to spin.
i-moved-it-myself-it-weighs-like-81cf4e9c = I moved it myself. It weighs like a calf.

### washes_will_not_spin.json

it-washes-and-drains-but-will-64536d11 = It washes and drains but will not spin
mr-tanaka-e12a3f94 = Mr Tanaka
second-floor-bathroom-0cefdcb5 = second floor, bathroom
patient-80ee595e = patient
it-fills-it-washes-it-pumps-the-7178b7f0 = It fills, it washes, it pumps the water out, and then it stops with everything dripping wet. No alarm at all.
good-light-room-to-pull-the-429d4dcc = Good light, room to pull the machine forward. The stairs are narrow.
every-time-since-72b657e3 = Every time since.
shirts-four-or-five-kilos-the-a5a04ee4 = Shirts, four or five kilos, the usual measure.
quiet-no-humming-either-106cc8f4 = Quiet. No humming either.
now-that-you-ask-in-the-wash-it-21777d3a = Now that you ask: in the wash it used to go to and fro. Now it goes, rests, rests, goes.
nothing-has-tripped-it-is-0fadbddb = Nothing has tripped. It is straight in the wall.
it-goes-through-to-the-end-as-if-f67717cd = It goes through to the end as if all were well.
about-two-weeks-0e36b741 = About two weeks.
from-one-wash-to-the-next-it-had-d527597f = From one wash to the next. It had just been carried over from my old flat.
yes-the-water-is-strong-here-7fe2ddaf = Yes, the water is strong here.
at-the-end-when-it-should-start-cd3a433f = At the end, when it should start to spin. The drum does not move.
two-friends-carried-it-up-the-3250684f = Two friends carried it up the stairs. Nobody opened it, as far as I know.

### water_comes_back_up.json

the-water-will-not-go-away-cad2f7f4 = The water will not go away
ms-nakoa-235c8617 = Ms Nakoa
new-kitchen-ground-floor-4ca1e850 = new kitchen, ground floor
proud-of-the-kitchen-44c22d25 = proud of the kitchen
the-kitchen-is-new-and-beautiful-f34c1c0f = The kitchen is new and beautiful and the washing machine has stopped emptying itself. It stands there with water in it, and then it beeps and tells me it drains too slowly.
the-hose-runs-up-the-wall-and-1a8f0a4a = The hose runs up the wall and ends in a chrome spout at the height of the worktop.
every-time-since-then-86dd6e10 = Every time since then.
tea-towels-and-paint-rags-1a99b825 = Tea towels and paint rags.
it-whirrs-below-as-it-always-did-3d6fa78d = It whirrs below as it always did.
the-gurgle-in-the-pipe-is-not-f81fe64c = The gurgle in the pipe is not there any more.
since-the-kitchen-was-finished-065217c8 = Since the kitchen was finished, last Friday.
no-it-is-all-new-b4f13576 = No, it is all new.
after-the-wash-when-the-water-f7a5e1b1 = After the wash, when the water should run out.
on-the-machine-no-the-kitchen-2bcadd94 = On the machine, no. The kitchen fitters made a new outlet for it, up behind the worktop, so that one does not see the hose.

### water_from_somewhere_else.json

there-is-water-everywhere-84b3995e = There is water everywhere
mr-takahashi-byrne-306f98ed = Mr Takahashi-Byrne
basement-flat-by-the-canal-a7201054 = basement flat by the canal
upset-3a785bf0 = upset
the-machine-has-flooded-the-b2b6424b = The machine has flooded the whole cellar! It washed last night, and this morning I stepped into water. You must stop it leaking.
four-steps-down-to-the-cellar-89a60844 = Four steps down to the cellar. The socket sits a hand above the floor.
in-the-cellar-under-water-up-to-57edada7 = In the cellar, under water up to the ankle.
it-did-its-wash-then-the-water-00adae3b = It did its wash. Then the water came.
it-never-leaked-before-a92e987f = It never leaked before.
it-is-empty-i-took-the-washing-e7ce86d5 = It is empty, I took the washing out.
a-gurgling-but-from-the-drain-in-87b92233 = A gurgling, but from the drain in the floor.
the-light-still-works-37984a12 = The light still works.
nothing-the-dial-stood-at-off-8b8fa876 = Nothing. The dial stood at off.
since-this-morning-466a39b3 = Since this morning.
like-the-canal-98659eec = Like the canal.
i-shut-the-tap-and-it-still-9b7dcc20 = I shut the tap, and it still rises.
in-the-night-i-suppose-the-wash-e6ba76d4 = In the night, I suppose. The wash was over at ten.
no-nobody-b62f45b1 = No, nobody.

### water_runs_at_once.json

water-runs-as-soon-as-it-is-f9434d8a = Water runs as soon as it is switched on
ms-rao-69e5b38b = Ms Rao
fifth-floor-new-building-3596b3b6 = fifth floor, new building
careful-reads-manuals-db398763 = careful, reads manuals
the-moment-i-switch-it-on-the-a119d69e = The moment I switch it on the water runs, before I have pressed start. It stops when I switch it off. I keep the tap shut now.
the-manual-lies-on-the-lid-the-417f4588 = The manual lies on the lid. The customer would like to see each reading.
the-hum-on-top-as-when-it-fills-3622fce3 = The hum on top, as when it fills.
the-lights-flickered-in-the-e3277375 = The lights flickered in the storm. The breaker did not trip.
after-a-while-overflow-danger-193175b1 = After a while “Overflow danger”, and then it lets water out.
since-the-storm-last-week-i-f0b7b148 = Since the storm last week, I believe.
no-the-floor-is-dry-because-i-f39bfeb2 = No. The floor is dry because I watched it.
strong-the-tap-is-shut-now-9ac9d17e = Strong. The tap is shut now.
at-once-it-does-not-wait-for-5d981576 = At once. It does not wait for start.
no-it-is-out-of-warranty-by-a-449f109a = No. It is out of warranty by a month.

### weak_in_the_new_place.json

it-has-been-weak-since-we-moved-dd67acfb = It has been weak since we moved
mr-delacruz-whitby-4c87b8f8 = Mr Delacruz-Whitby
rented-cottage-back-porch-f9f8918f = rented cottage, back porch
annoyed-with-the-movers-566fba9e = annoyed with the movers
in-the-old-house-it-was-strong-736c9bae = In the old house it was strong as an ox. Here it stirs one way and hardly the other, and the porch light goes dim when it works. The movers must have dropped it.
a-flat-brown-cord-comes-out-of-25ee191f = A flat brown cord comes out of the wall by the door. A second outlet, newer, is behind the bench. A dog lies in the doorway.
on-the-back-porch-mind-the-dog-54744b0e = On the back porch. Mind the dog, he only wants to play.
it-hums-more-2317889a = It hums more.
no-breaker-bf8151c8 = No breaker.
it-is-on-the-long-cord-from-the-0fbb7fd4 = It is on the long cord from the kitchen. The landlord ran it through the wall.
nothing-special-82fe9da9 = Nothing special.
since-we-moved-in-df5f2cab = Since we moved in.
by-the-outlet-maybe-a-warm-dust-2f87aec4 = By the outlet, maybe. A warm dust kind of smell.
in-the-wash-mostly-b5762d72 = In the wash, mostly.
the-movers-had-it-on-its-side-1c32d345 = The movers had it on its side, they say they did not drop it.

### whines_and_stands.json

it-whines-and-the-drum-stands-e009984f = It whines and the drum stands
sister-agathe-c002840d = Sister Agathe
convent-kitchen-basement-laundry-570806cc = convent kitchen, basement laundry
kind-exact-009eb076 = kind, exact
it-washes-it-empties-then-it-d8004027 = It washes. It empties. Then it whines as it does in the wash, for as long as it used to spin, and the linen lies in the drum like wet clay.
flagstones-well-lit-a-second-92abf35b = Flagstones, well lit, a second pair of strong hands in the kitchen.
table-linen-four-kilos-de8ce001 = Table linen, four kilos.
the-whine-of-the-wash-instead-of-8022add2 = The whine of the wash, instead of the rushing.
the-dial-goes-through-to-the-end-e45a0b7e = The dial goes through to the end.
since-monday-6adf9167 = Since Monday.
the-gardener-is-our-mechanic-6f9d9f20 = The gardener is our mechanic.
he-changed-the-spring-and-lever-a01f0057 = He changed the spring and lever below on Saturday, from a box of parts we were given.

### whirls_and_does_not_wring.json

it-pumps-it-whirls-it-does-not-8213b2ed = It pumps, it whirls, it does not wring
mrs-oduya-prentiss-cb782d56 = Mrs Oduya-Prentiss
row-house-basement-b855c52e = row house, basement
tired-three-small-children-f8d0ac4b = tired, three small children
the-water-goes-out-the-motor-92c0bed8 = The water goes out, the motor runs, I can hear it. But the tub does not go round. I have been wringing diapers by hand since Thursday.
dry-basement-good-light-a-7a516c8d = Dry basement, good light, a neighbour across the street offers a hand with lifting.
diapers-baby-things-10ffd2e4 = Diapers, baby things.
the-motor-and-the-pump-the-034c88f3 = The motor, and the pump. The little whirr before the spin is gone.
it-counts-down-and-says-it-is-0a242a18 = It counts down and says it is finished.
thursday-466ee4fb = Thursday.
no-one-has-touched-it-acc44911 = No one has touched it.

### white_mountain.json

a-white-mountain-climbs-out-of-bc952384 = A white mountain climbs out of it
jomo-2ef957aa = Jomo
student-flat-fourth-floor-ac7d33f1 = student flat, fourth floor
amused-and-a-bit-ashamed-c363b62c = amused and a bit ashamed
i-wanted-it-really-clean-this-eb7c606f = I wanted it really clean this time. Now white stuff comes up out of the lid and out of the hose, and the spin is feeble, it groans and everything stays wet.
a-packet-of-hand-washing-powder-5f6d8124 = A packet of hand-washing powder and a soup mug stand on the lid.
i-have-only-done-three-washes-2ae2b783 = I have only done three washes.
my-whole-wardrobe-not-packed-f500589f = My whole wardrobe, not packed tight.
powder-a-cup-a-big-one-the-kind-15656557 = Powder? A cup. A big one, the kind for soup. And some of the liquid.
it-groans-at-the-spin-383e68b6 = It groans at the spin.
it-shows-that-it-is-done-34a66bce = It shows that it is done.
since-this-morning-it-is-my-559c9af0 = Since this morning. It is my first week with a machine.
it-smells-of-lavender-strongly-94772e34 = It smells of lavender. Strongly.
it-starts-in-the-wash-at-the-de346864 = It starts in the wash. At the spin it is worst.

### first_month.json

a-first-month-b22e9fc8 = A first month
twenty-four-calls-in-an-order-59f8f1a8 = Twenty-four calls in an order that builds up: first asking, looking and the house around the machine, then opening and measuring, then faults that hide.

### first_visits.json

first-visits-alone-de727dd4 = First visits alone

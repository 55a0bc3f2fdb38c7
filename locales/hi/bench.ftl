### bench/acts/access.rs

the-basket-is-still-turning-49dc3875 = बास्केट अभी घूम रही है
it-stands-under-water-take-the-026a2857 = यह पानी के नीचे है: पहले पानी निकालें
the-supply-hose-still-holds-it-de8f62cd = सप्लाई होज़ अभी इसे पकड़े हुए है
the-lid-is-shut-db3c9be3 = ढक्कन बंद है
water-ran-out-of-the-joint-with-3db4b7d3 = जोड़ से पानी बह निकला, और नीचे कुछ नहीं रखा था
the-tub-was-not-empty-its-water-fc368c10 = टब ख़ाली नहीं था: उसका पानी मोटर और फ़र्श पर बह गया
the-machine-slipped-from-the-5e4a1c13 = मशीन हाथों से फिसल गई: एक पाया मुड़ गया, फ़र्श का टुकड़ा टूट गया

### bench/acts/agree.rs

an-estimate-names-at-least-one-e0e89a25 = अनुमानित ख़र्च में कम से कम एक दाम होना चाहिए
price-is-no-price-43890080 = { $price } कोई दाम नहीं है
whoever-stands-there-pays-8dfdb819 = जो सामने खड़ा है, पैसे वही देता है
no-estimate-was-declined-935f7989 = किसी अनुमानित ख़र्च के लिए मना नहीं किया गया
repair-29520bb4 = मरम्मत
repair-with-a-part-of-another-39fb46b8 = दूसरे मेक के पार्ट से मरम्मत
a-new-machine-instead-3aa8fea9 = इसके बजाय नई मशीन
the-tenant-cannot-agree-the-1771c235 = किरायेदार हाँ नहीं कर सकता: पैसे मकान-मालिक देता है
customer-declined-4b22d4cd = ग्राहक ने मना कर दिया
no-receipt-75f22286 = रसीद नहीं
no-warranty-1027aaae = वारंटी नहीं
rating-plate-readable-and-the-81213b3d = रेटिंग प्लेट पढ़ी जाती है और नंबर वही है
rating-plate-missing-or-another-e6ad6acb = रेटिंग प्लेट ग़ायब है या नंबर दूसरा है
signs-of-misuse-5607db98 = ग़लत इस्तेमाल के निशान
no-sign-of-misuse-50cfc4ae = ग़लत इस्तेमाल का कोई निशान नहीं
who-pays-the-maker-under-e5b3b1d5 = पैसे कौन देगा: बनाने वाला, वारंटी में
who-pays-whoever-owns-the-1b52c027 = पैसे कौन देगा: मशीन का मालिक

### bench/acts/finishing.rs

oh-it-just-does-not-work-as-it-e6bdb210 = अरे, बस जैसे चलनी चाहिए वैसे नहीं चलती।
notebook-line-n-47ec424a = नोटबुक की पंक्ति { $n }
a-remark-needs-words-afc07ab0 = टिप्पणी में शब्द होने चाहिए
a-remark-has-at-most-most-31944268 = टिप्पणी में ज़्यादा से ज़्यादा { $most } अक्षर होते हैं, इसमें { $n } हैं
no-fault-in-the-machine-f668fb93 = मशीन में कोई ख़राबी नहीं
told-and-shown-what-was-wrong-ee1ee418 = बताया और दिखाया: क्या ख़राब था और क्या किया गया
told-how-much-to-load-and-how-to-78b72f6e = बताया: कितने कपड़े डालें और उन्हें कैसे फैलाएँ
told-how-much-detergent-69819e4d = बताया: कितना डिटर्जेंट
told-clean-the-filters-now-and-2eabc7f1 = बताया: बीच-बीच में फ़िल्टर साफ़ करें
told-have-the-house-wiring-seen-399ee2aa = बताया: घर की वायरिंग इलेक्ट्रीशियन से दिखवाएँ
told-a-new-machine-is-the-better-d7832225 = बताया: नई मशीन लेना बेहतर सौदा है
told-keep-it-level-and-do-not-69d0132c = बताया: इसे समतल रखें, और अकेले न खिसकाएँ
shown-the-old-part-beside-the-fca5a006 = दिखाया: पुराना पार्ट नए के बग़ल में

### bench/acts/gauge.rs

this-instrument-is-not-in-the-860b6203 = इस जॉब में यह यंत्र बैग में नहीं है
the-hose-is-on-the-machine-shut-266f23ca = होज़ मशीन पर लगा है: पहले नल बंद करें और होज़ उतारें
the-hose-is-off-f57073a2 = होज़ उतरा हुआ है
the-basket-stands-there-is-9eaa4134 = बास्केट खड़ी है: समय नापने को कुछ नहीं
no-water-runs-in-there-is-6575a42f = पानी अंदर नहीं आ रहा: समय नापने को कुछ नहीं
no-water-runs-out-there-is-21c6ec06 = पानी बाहर नहीं जा रहा: समय नापने को कुछ नहीं
the-drain-motor-rests-there-is-96d335f3 = ड्रेन मोटर आराम में है: समय नापने को कुछ नहीं
the-belt-runs-3f6b8759 = बेल्ट चल रही है
there-is-no-belt-to-gauge-it-b821af7b = नापने को बेल्ट नहीं है: ढीली लटकी है या उतरी हुई है
the-lever-s-end-lies-beside-its-7913fc0e = लीवर का सिरा अपने लिंक के बग़ल में पड़ा है: नापने को प्ले नहीं है
the-supply-line-was-opened-under-bf34f294 = सप्लाई लाइन प्रेशर रहते खोली गई

### bench/acts/handle.rs

blanket-laid-where-the-machine-75b45cc7 = जहाँ मशीन लेटेगी वहाँ कंबल बिछाया
asked-for-the-room-to-be-kept-e8876b02 = कमरा ख़ाली रखने को कहा
floor-mopped-dry-c9744667 = फ़र्श पोंछकर सुखाया
a-bucket-of-cold-water-poured-in-70b2f5d6 = एक बाल्टी ठंडा पानी अंदर डाला
wiring-of-the-house-worked-on-c5f0bfb2 = घर की वायरिंग पर काम किया
dried-inside-with-cloth-and-warm-20e4f50d = अंदर सुखाया, कपड़े और गरम हवा से
the-cabinet-has-marked-the-floor-bf557d5d = कैबिनेट से फ़र्श पर निशान पड़ गया
you-slipped-on-the-wet-floor-02114269 = आप गीले फ़र्श पर फिसल गए
the-sheet-edge-cut-your-hand-c47d3178 = लोहे की चादर के किनारे से आपका हाथ कट गया
hot-water-ran-over-your-hand-9d0a45f8 = गरम पानी आपके हाथ पर बह गया
the-part-is-too-hot-to-touch-b01bba3c = पार्ट इतना गरम है कि छुआ नहीं जा सकता

### bench/acts/isolate.rs

the-plug-is-in-the-socket-966b8abd = प्लग सॉकेट में है
the-supply-hose-came-off-under-1fc81830 = सप्लाई होज़ प्रेशर रहते निकल गया
the-blade-of-a-screwdriver-with-9f8610e6 = पेचकस का ब्लेड: तड़ाक की आवाज़ और जला हुआ निशान

### bench/acts/leave.rs

the-van-has-eight-slots-for-6a1f2cda = वैन में पार्ट के लिए आठ जगहें हैं
part-is-no-longer-made-3b4af813 = { $part } अब नहीं बनता
left-until-the-second-visit-17c44901 = दूसरे दौरे तक छोड़ी, “इस्तेमाल न करें” का लेबल लगाकर
left-until-the-second-visit-b4572f07 = दूसरे दौरे तक छोड़ी, बिना लेबल
second-visit-somebody-has-tried-8ad901b6 = दूसरा दौरा: किसी ने इसे चलाने की कोशिश की है; प्लग लगा, नल खुला
second-visit-as-it-was-left-acba5e31 = दूसरा दौरा: जैसी छोड़ी थी वैसी ही
left-isolated-and-labelled-e11b83fe = सप्लाई से अलग करके और लेबल लगाकर छोड़ी; ग्राहक को बताया
handed-over-66c265b1 = मशीन सौंपी

### bench/acts/measure.rs

the-plug-is-in-the-socket-pull-f748e9e3 = प्लग सॉकेट में है: पहले निकालें
the-cord-s-conductors-lie-in-one-7fb9679c = कॉर्ड के कंडक्टर एक ही खोल में हैं: स्प्लिटर लीड लगाएँ
current-a-through-the-instrument-105805c7 = यंत्र से होकर { $current } A, जब तक उसका 10 A का फ़्यूज़ नहीं खुला, { $time } ms
the-instrument-8a81578d = यंत्र
instrument-9a67fb30 = यंत्र
the-spare-instrument-is-in-hand-4d652250 = अतिरिक्त यंत्र हाथ में है

### bench/acts/mod.rs

a-day-has-passed-since-you-rang-c810b28c = घंटी बजाए एक दिन बीत चुका है: जो मिला वह बताएँ, और सौंपें या सुरक्षित करके जाएँ
water-has-run-onto-the-floor-2c494f72 = पानी फ़र्श पर बह गया है

### bench/acts/office.rs

you-are-at-the-customer-s-bad8a7a6 = आप ग्राहक के यहाँ पहुँच चुके हैं
the-store-has-no-part-today-ecf2c7a2 = स्टोर में आज { $part } नहीं है
one-part-is-enough-687d235e = { $part }: एक काफ़ी है

### bench/acts/order.rs

the-raised-cover-came-down-on-fa355d42 = उठा हुआ कवर हाथों पर आ गिरा: उसे कुछ रोके नहीं था

### bench/acts/parts.rs

the-part-in-the-machine-is-the-84b2211c = मशीन में जो पार्ट लगा है वह पुराना ही है
once-fitted-it-is-sold-the-store-191d6d9e = लगने के बाद वह बिक चुका: स्टोर वापस नहीं लेता

### bench/acts/report.rs

picture-taken-the-machine-from-a5607239 = तस्वीर ली: मशीन बाहर से
picture-taken-the-machine-opened-56213837 = तस्वीर ली: मशीन खुली हुई
the-report-names-no-cause-yet-4d0ade5c = रिपोर्ट में अभी कोई कारण नहीं है
the-customer-wants-to-be-told-6c295f89 = ग्राहक पहले जानना चाहता है कि क्या किया गया
report-read-and-signed-by-the-925cd26a = ग्राहक ने रिपोर्ट पढ़ी और दस्तख़त किए

### bench/acts/touch.rs

# it opened the circuit
nothing-60823bd0 = कुछ नहीं
zone-effect-3a3b86e7 = { $zone } ({ $effect })
the-hand-be251895 = हाथ

### bench/after_repair.rs

en-50678-en-50699-from-memory-9f4db445 = EN 50678 / EN 50699 (याद से)
common-practice-7984cd95 = आम चलन
plug-cord-covers-and-screws-e04f4f25 = प्लग, कॉर्ड, कवर और स्क्रू; कुछ भी लगना बाक़ी नहीं, किसी किनारे के नीचे कोई तार नहीं
nothing-damaged-or-missing-807290be = कुछ भी टूटा-फूटा या ग़ायब नहीं
protective-conductor-fdcbd96f = अर्थ कंडक्टर
plug-out-earth-pin-to-the-50787348 = प्लग बाहर: अर्थ पिन से कैबिनेट तक
t-0-3-at-most-abf45ab9 = ज़्यादा से ज़्यादा 0.3 Ω
t-1-m-at-least-abadc69a = कम से कम 1 MΩ
protective-conductor-current-9d3ffd43 = अर्थ कंडक्टर का करंट
plug-in-running-shows-most-the-876382f2 = प्लग लगा हो, चलते समय सबसे अधिक दिखता है: लीकेज क्लैंप फेज़ और न्यूट्रल दोनों के चारों ओर
t-3-5-ma-at-most-bcf24447 = ज़्यादा से ज़्यादा 3.5 mA
touch-current-8f797c6d = टच करंट
plug-in-running-shows-most-metal-50c19b61 = प्लग लगा, चलते हुए सबसे ज़्यादा दिखता है: जिस धातु तक हाथ पहुँचे, उससे 2 kΩ के ज़रिए अर्थ तक
t-0-5-ma-at-most-84defd64 = ज़्यादा से ज़्यादा 0.5 mA
functions-454a414e = मशीन के काम
fill-wash-both-ways-drain-spin-cc708574 = भराई, दोनों दिशाओं में धुलाई, ड्रेन, स्पिन
each-of-them-seen-5708d2b8 = हर एक होते हुए देखा गया
lid-304cbc86 = ढक्कन
opened-at-full-spin-the-basket-d71dd327 = पूरी स्पिन पर खोला गया: बास्केट 7 s के भीतर रुकती है
t-7-s-at-most-7746f6d3 = ज़्यादा से ज़्यादा 7 s
from-memory-e401e148 = याद से
leaks-7aa35ac7 = लीक
after-filling-and-draining-look-cd717f0c = भरने और ड्रेन करने के बाद मशीन के नीचे देखें
dry-dc25c75e = सूखा
plug-out-timer-knob-pulled-out-d800b4fa = प्लग बाहर, टाइमर की नॉब खिंची हुई: फ़ेज़ और न्यूट्रल एक साथ, अर्थ पिन तक, 500 V
plug-out-switch-pressed-in-line-52e2ba28 = प्लग बाहर, स्विच दबा हुआ: फ़ेज़ और न्यूट्रल एक साथ, अर्थ पिन तक, 500 V
plug-out-line-and-neutral-53a28c09 = प्लग बाहर: फ़ेज़ और न्यूट्रल एक साथ, अर्थ पिन तक, 500 V

### bench/bill.rs

fee-for-finding-the-fault-08efa26e = ख़राबी ढूँढने का शुल्क
to-pay-71acc4c2 = देय
call-out-1531ebd0 = विज़िट शुल्क
second-visit-5c3422ca = दूसरा दौरा
labour-n-min-30497682 = लेबर, { $n } min
part-name-33bd0173 = पार्ट: { $name }
small-material-919d814d = छोटा-मोटा सामान
to-pay-the-maker-pays-a9c11742 = देय: बनाने वाला देता है
to-pay-as-agreed-89c12162 = देय, जैसा तय हुआ

### bench/gauge.rs

off-the-scale-e5283ddf = स्केल से बाहर

### bench/gauge_scales.rs

jug-and-watch-ce04472b = जग और घड़ी
a-bucket-under-it-hot-water-e4d10194 = इसके नीचे बाल्टी; गरम पानी झुलसाता है
watch-5fb7b228 = घड़ी
pressure-gauge-e4b9b98d = प्रेशर गेज
tap-shut-and-hose-bled-before-6cac90bc = टी-जोड़ लगाने से पहले नल बंद और होज़ का प्रेशर निकला हुआ
u-tube-4387b325 = U-ट्यूब
never-blow-hard-into-the-sensor-18d1f7c1 = सेंसर में कभी ज़ोर से न फूँकें
tachometer-c9276a77 = टैकोमीटर
by-its-beam-from-outside-no-hand-8baefd92 = बाहर से, अपनी किरण से: घूमती चीज़ के पास हाथ नहीं
spirit-level-5c3c6e8e = स्पिरिट लेवल
spring-balance-and-rule-5b81decd = स्प्रिंग बैलेंस और स्केल
keep-fingers-out-of-the-pulleys-f477c42a = उँगलियाँ पुलियों से दूर रखें
belt-gauge-cab1d473 = बेल्ट गेज
contact-thermometer-7a3303b3 = छूकर नापने वाला थर्मामीटर
the-motor-stays-hot-long-after-16773ab0 = मोटर रुकने के बहुत देर बाद तक गरम रहती है
rule-fc2e40d3 = स्केल

### bench/hint.rs

a-question-back-cbeeb1d3 = पलटकर एक सवाल
where-to-look-9fe91c80 = कहाँ देखें
which-step-848d41b4 = कौन-सा क़दम
what-it-would-mean-8e36383e = उसका मतलब क्या होगा
this-job-gives-no-hints-63a26d95 = इस जॉब में संकेत नहीं मिलते
there-is-no-further-hint-until-eafcd752 = जब तक कुछ और न किया जाए, आगे संकेत नहीं है

### bench/instrument.rs

the-battery-sign-is-on-74183b33 = बैटरी का निशान दिख रहा है
ohms-35092b8a = ओम
earth-bond-0-2-a-6d5447ab = अर्थ बॉन्ड, 0.2 A
a-lead-is-cracked-down-to-the-45e5d288 = एक लीड तार तक चटकी हुई है
leads-whole-to-look-at-51a32110 = देखने में लीड साबुत हैं
no-measurement-category-printed-45342f62 = इस पर कोई मेज़रमेंट कैटेगरी नहीं छपी है

### bench/kept.rs

it-gives-n-mm-under-a-finger-8e5a0f32 = उँगली से दबाने पर { $n } mm दबती है
the-wire-travels-n-mm-c2e5847a = केबल { $n } mm चलती है
pushed-it-settles-after-n-swings-1b66f4ee = धक्का देने पर { $n } बार झूलकर ठहर जाता है
about-n-l-min-at-the-hose-end-957d08db = होज़ के सिरे पर लगभग { $n } L/min
water-about-n-mm-deep-7883e0b1 = पानी लगभग { $n } mm गहरा
the-basket-turns-about-n-r-min-e9e24efa = बास्केट घूमती है, लगभग { $n } r/min
the-tub-swings-about-n-mm-b578ba47 = टब लगभग { $n } mm झूलता है
the-pulsator-turns-one-way-about-f1e35713 = पल्सेटर एक तरफ़ घूमता है, लगभग { $n } r/min
the-pulsator-turns-the-other-way-125e6370 = पल्सेटर दूसरी तरफ़ घूमता है, लगभग { $n } r/min
the-machine-leans-about-n-to-one-3b0446c7 = मशीन एक तरफ़ झुकी है, लगभग { $n }°
about-n-mm-of-play-c4869e51 = लगभग { $n } mm प्ले
pulled-about-n-mm-4bd73740 = लगभग { $n } mm खिंचा हुआ
the-wire-is-pulled-n-mm-4c05e4d3 = केबल { $n } mm खिंची है
the-label-says-n-f-28ad7563 = लेबल पर { $n } µF लिखा है
about-n-mm-between-lever-and-tub-131a420a = लीवर और टब के बीच लगभग { $n } mm
probes-together-on-instrument-59125993 = { $instrument } पर प्रोब आपस में मिलाकर: { $value }
battery-at-n-of-its-voltage-04407f61 = बैटरी अपने वोल्टेज के { $n } % पर
calibrated-n-months-ago-d2effcfc = { $n } महीने पहले कैलिब्रेट किया गया
category-category-printed-on-it-70af536f = इस पर कैटेगरी { $category } छपी है
the-connector-is-apart-37df8183 = अलग किया हुआ है: { $connector }
wire-it-does-not-sit-home-9b733956 = { $wire }: पूरा नहीं बैठा है
wire-brown-and-rough-64116e34 = { $wire }: भूरा और खुरदरा
point-the-contactless-tester-b13b2f8d = { $point }: बिना छुए जाँचने वाला टेस्टर की बत्ती जलती है
point-the-contactless-tester-ac1c1e66 = { $point }: बिना छुए जाँचने वाला टेस्टर की बत्ती नहीं जलती
remark-own-6b814b4f = टिप्पणी: { $own }
price-named-offers-answer-16898539 = दाम बताया: { $offers }; { $answer }
customer-agreed-what-eda9cec3 = ग्राहक ने हाँ की: { $what }
customer-asks-could-you-do-it-7347a084 = ग्राहक पूछता है: क्या { $price } में कर देंगे?
offer-or-other-02bacc96 = { $offer }, या { $other }
what-for-price-fef2e461 = { $what }, { $price } में
landlord-on-the-phone-agrees-to-c8986f48 = फ़ोन पर मकान-मालिक: { $price } तक की मरम्मत के लिए हाँ
fee-for-finding-the-fault-price-ca048e2d = ख़राबी ढूँढने का शुल्क: { $price }
papers-bought-covered-plate-1a1d634c = काग़ज़ात: { $bought }; { $covered }; { $plate }; { $misuse }
bought-n-months-ago-by-the-f1ca66de = रसीद के हिसाब से { $n } महीने पहले ख़रीदी
the-maker-pays-for-n-months-1f28d9eb = बनाने वाला { $n } महीने तक ख़र्च देता है
fault-found-causes-f3d2d4b9 = मिली ख़राबी: { $causes }
cause-other-a046f299 = { $cause }; { $other }
part-old-one-put-back-new-one-5747b0a7 = { $part }: पुराना वापस लगाया, नया वापस वैन में
connector-pulled-apart-c69e9d9e = { $connector }: खींचकर अलग किया
connector-pushed-home-8b5e613a = { $connector }: पूरा बैठाया
name-verb-1-of-n-is-left-over-on-8f3ac54f = { $name }: { $verb }; { $n } में से 1 बिछे कपड़े पर बचा रह गया
name-verb-checked-d62de14e = { $name }: { $verb }, जाँचा
work-1-of-n-is-left-over-on-the-767e9010 = { $work }; { $n } में से 1 बिछे कपड़े पर बचा रह गया
work-checked-a6d3b9bb = { $work }, जाँचा
name-verb-5c4a4d59 = { $name }: { $verb }
machine-it-says-so-on-the-front-acb4225e = { $machine }, सामने यही लिखा है।
voltage-on-the-circuit-about-n-v-9747a7cb = सर्किट पर वोल्टेज: लगभग { $n } V
n-mm-water-ab9a4664 = { $n } mm पानी
dial-at-n-2bffd6a4 = डायल { $n } पर
level-name-e0e2bd56 = लेवल { $name }
low-4f516a81 = कम
medium-35afd776 = मध्यम
high-3dddb9fd = ऊँचा
service-test-n-26b1f1d8 = सर्विस टेस्ट { $n }
lid-closed-fec9fade = ढक्कन बंद
lid-open-6801fcda = ढक्कन खुला
off-ab3a8a0a = मशीन बंद
running-147eb74c = चल रही है
on-61342fd0 = चालू
on-display-dark-3f44003a = चालू, डिस्प्ले अँधेरा
ready-660ec0f4 = तैयार
starts-later-5e91d8d6 = बाद में शुरू होगी
soaking-a3f6314d = भिगो रही है
stopping-160a4da9 = रुक रही है
spreading-the-load-b6b8048f = कपड़े फैलाए जा रहे हैं
close-the-lid-d511a9a1 = ढक्कन बंद करें
paused-0a1997cb = रुकी हुई
waiting-for-the-supply-e9769d97 = सप्लाई का इंतज़ार
power-was-off-press-start-to-go-da7c2d03 = बिजली चली गई थी: आगे बढ़ने के लिए स्टार्ट दबाएँ
finished-ade176a3 = पूरा हो गया
service-test-2912eca8 = सर्विस टेस्ट
drain-the-tub-first-bd65a183 = पहले टब ख़ाली करें
fills-too-slowly-fa271a53 = पानी बहुत धीरे भर रहा है
drains-too-slowly-65e337e6 = पानी बहुत धीरे निकल रहा है
basket-keeps-swinging-d1e48139 = बास्केट बार-बार झूल रही है
lid-is-open-cfa59aaa = ढक्कन खुला है
water-level-reading-not-127ef074 = पानी के लेवल की रीडिंग मानने लायक नहीं
overflow-danger-4e08b9aa = पानी छलकने का ख़तरा
the-display-reads-shown-25978513 = डिस्प्ले पर “{ $shown }” लिखा है

### bench/observe/feel.rs

the-valve-trembles-with-the-43df6979 = वाल्व मेन्स के साथ काँपता है
the-drain-hose-is-squeezed-or-fc4b0dc4 = ड्रेन होज़ एक जगह दबा हुआ है या रोएँ से भरा है
the-basket-tilts-on-its-flange-a71d6622 = बास्केट अपनी फ़्लैंज पर झुक जाती है
the-pulsator-lifts-and-rattles-8eea82ae = पल्सेटर उठता है और खड़खड़ाता है
too-hot-to-touch-59beeaec = इतनी गरम कि छुई नहीं जाती
warm-81fa6638 = हल्की गरम
cool-f03e2abc = ठंडी

### bench/observe/hands.rs

the-pulsator-is-jammed-something-c98a3a1a = पल्सेटर फँसा हुआ है; उसके नीचे कुछ है
the-pulsator-scrapes-8453372f = पल्सेटर रगड़ता है
the-pulsator-slips-on-its-shaft-27ef437f = पल्सेटर अपनी शाफ़्ट पर क्लिक के साथ फिसलता है
the-pulsator-turns-with-even-bad405fb = पल्सेटर एक समान रुकावट के साथ घूमता है
behind-the-gear-something-is-668190bb = गियर के पीछे कुछ सीज़ है
the-basket-is-held-06848431 = बास्केट रुकी रहती है
the-basket-turns-but-drags-on-1f0a9afb = बास्केट घूमती है पर ब्रेक पर रगड़ती है
the-basket-turns-freely-2c6a3ff7 = बास्केट आराम से घूमती है
it-turns-roughly-with-a-rumble-398ebe16 = खुरदरेपन से घूमती है, गड़गड़ाहट के साथ
a-scratch-once-a-turn-6ac13103 = हर चक्कर में एक बार खुरचता है
the-motor-shaft-does-not-turn-438a4ba6 = मोटर की शाफ़्ट नहीं घूमती
the-motor-shaft-is-stiff-8abf9f25 = मोटर की शाफ़्ट कड़ी घूमती है
the-motor-shaft-turns-freely-bac7860e = मोटर की शाफ़्ट आराम से घूमती है
there-is-no-belt-to-press-67b96353 = दबाने को बेल्ट नहीं है
the-clutch-lever-stays-where-it-5d1cf0b3 = क्लच लीवर जहाँ है वहीं रहता है
the-lever-follows-and-the-brake-d0a744c8 = लीवर साथ चलता है और ब्रेक छूटता है
the-lever-follows-but-the-brake-e34aac1b = लीवर साथ चलता है पर ब्रेक नहीं छूटता
moved-by-hand-the-brake-frees-a02ecbb9 = हाथ से चलाने पर ब्रेक छूटता है
moved-by-hand-the-brake-still-980d5e66 = हाथ से चलाने पर भी ब्रेक पकड़े रहता है
the-clutch-grips-03091a20 = क्लच पकड़ता है
the-clutch-slips-8fb7a1aa = क्लच फिसलता है
the-tub-cannot-be-pushed-0ee83d00 = टब धकेला नहीं जा सकता
the-lever-does-not-spring-back-f84fe200 = लीवर स्प्रिंग से वापस नहीं आता
the-lever-clicks-and-springs-4ee09259 = लीवर क्लिक करता है और स्प्रिंग से वापस आता है

### bench/observe/listen.rs

a-steady-hum-9aec83d8 = लगातार भनभनाहट
a-fan-s-rush-from-below-1217d5b4 = नीचे से पंखे की हवा की आवाज़
a-thin-whine-from-the-motor-8e2ef416 = मोटर से पतली सूँ-सूँ
a-soft-thump-at-the-belt-s-rate-45b850c3 = बेल्ट के चक्कर की ताल पर हल्की धप
a-squeal-from-below-147114fc = नीचे से चीख़
a-gear-s-whine-bf3e006a = गियर की सूँ-सूँ
a-knock-at-each-reversal-7bc7a7bc = हर बार दिशा पलटने पर ठक
water-swashing-aed4d596 = पानी की छपछप
air-rushing-round-the-basket-8df0996c = बास्केट के चारों ओर हवा की तेज़ आवाज़
a-rumble-once-the-basket-turns-0d99fa0d = बास्केट घूमने लगे तो गड़गड़ाहट
a-scrape-once-a-turn-83b64965 = हर चक्कर में एक बार रगड़ की आवाज़
the-tub-bangs-against-the-0d88e318 = टब कैबिनेट से धम-धम टकराता है
water-running-in-6c44ed96 = पानी अंदर आ रहा है
a-hiss-at-the-back-023c7540 = पीछे सीं-सीं
a-faint-hum-at-the-back-ce228181 = पीछे हल्की भनभनाहट
a-thud-in-the-pipe-6e6882b5 = पाइप में एक धम
water-running-out-873ca3d7 = पानी बाहर जा रहा है
a-gurgle-in-the-drain-0f1ddfda = ड्रेन में गुड़गुड़ाहट
a-pump-s-buzz-ab07c409 = पंप की भनभनाहट
a-small-whirr-from-below-1b06184e = नीचे से हल्की घर्र-घर्र
a-faint-hum-from-below-3a4007c1 = नीचे से हल्की भनभनाहट
a-clack-from-below-67970299 = नीचे से खट
something-rattles-in-the-cabinet-34dbdb24 = कैबिनेट में कुछ खड़खड़ाता है
a-rub-while-the-basket-stops-0a52b57a = बास्केट के रुकते समय रगड़

### bench/observe/look.rs

the-tap-is-shut-e3ed3ad7 = नल बंद है
the-tap-is-hardly-open-259daf45 = नल नाममात्र खुला है
the-tap-is-open-a517b4f1 = नल खुला है
the-supply-hose-is-kinked-behind-f07fe548 = सप्लाई होज़ मशीन के पीछे मुड़ा हुआ है
drops-at-the-hose-nut-c032328d = होज़ के नट पर बूँदें
the-inlet-filter-is-packed-with-e49a8cad = इनलेट फ़िल्टर रेत और ज़ंग से ठसाठस भरा है
the-inlet-filter-is-mostly-cd650135 = इनलेट फ़िल्टर ज़्यादातर गंदगी से ढका है
the-inlet-filter-is-clean-ad4a47ff = इनलेट फ़िल्टर साफ़ है
a-thin-trickle-at-the-hose-end-e1d7bb05 = होज़ के सिरे पर पतली धार
the-hose-end-hangs-too-high-0ea97571 = होज़ का सिरा बहुत ऊँचा टँगा है
the-hose-end-lies-too-low-008fa5b3 = होज़ का सिरा बहुत नीचे पड़ा है
suds-come-out-of-the-hose-end-f1a441d6 = होज़ के सिरे से झाग निकलता है
a-puddle-under-the-machine-e8e03790 = मशीन के नीचे पानी जमा है
damp-under-the-machine-7b9933b3 = मशीन के नीचे नमी है
dry-under-the-machine-09b1185e = मशीन के नीचे सूखा है
the-display-is-dark-1cdbcfda = डिस्प्ले अँधेरा है
the-lid-is-open-03e1d7b5 = ढक्कन खुला है
a-thick-layer-of-suds-4bcbbbc2 = झाग की मोटी परत
the-tub-hangs-crooked-125a3447 = टब टेढ़ा लटका है
the-pulsator-stands-still-7aae8811 = पल्सेटर खड़ा है
the-pulsator-sits-loose-f26cefa9 = पल्सेटर ढीला बैठा है
the-machine-leans-a-little-to-9515aefd = मशीन थोड़ी-सी एक तरफ़ झुकी है
the-machine-stands-level-100c8274 = मशीन समतल खड़ी है
one-foot-lifts-when-a-corner-is-06c3485b = कोना दबाने पर एक पाया उठता है
the-plug-is-in-its-socket-e0909252 = प्लग अपने सॉकेट में है
the-plug-is-out-ffbeef24 = प्लग बाहर है
a-crust-of-salt-on-the-balance-89bdbb50 = बैलेंस रिंग पर नमक की पपड़ी

### bench/observe/look_below.rs

the-belt-is-off-454c8016 = बेल्ट उतरी हुई है
the-belt-hangs-slack-black-dust-9f169116 = बेल्ट ढीली लटकी है; पुलियों के आसपास काली धूल
the-belt-is-tight-as-a-string-144a48eb = बेल्ट डोरी की तरह तनी है
the-belt-sits-in-line-a5802115 = बेल्ट सीध में बैठी है
the-belt-s-flanks-are-dark-and-cda68876 = बेल्ट की बग़लें काली और चमकती हैं
the-belt-is-cracked-f0ad8b1c = बेल्ट में दरारें हैं
the-pulley-s-mark-has-moved-9101f9cb = पुली का निशान शाफ़्ट के मुक़ाबले खिसक गया है
the-motor-stands-still-93c88ad4 = मोटर खड़ी है
the-motor-s-slots-are-full-of-c5c99897 = मोटर की झिरियाँ रोएँ से भरी हैं
the-clutch-lever-s-end-lies-0e263851 = क्लच लीवर का सिरा अपने लिंक के बग़ल में पड़ा है
the-clutch-lever-sits-in-its-dd5ba85d = क्लच लीवर अपने लिंक में बैठा है
the-clutch-lever-does-not-go-9f816405 = क्लच लीवर पूरा वापस नहीं जाता
the-wire-is-at-rest-e44adb3e = केबल आराम में है
lint-and-cloth-in-the-drain-9ea9b48f = ड्रेन वाल्व में रोएँ और कपड़ा
the-bellows-does-not-close-on-a37b2ed4 = बेलो अपनी सीट पर बंद नहीं होता
dirt-on-the-valve-seat-5b38afc9 = वाल्व की सीट पर गंदगी
the-drain-joint-is-wet-333763ae = ड्रेन जोड़ गीला है
the-capacitor-s-can-is-swollen-554ea69c = कैपेसिटर का डिब्बा फूला हुआ है
the-impeller-does-not-turn-fc1472df = इम्पेलर नहीं घूमता; उसमें कुछ फँसा है
the-impeller-turns-with-a-finger-dcbd45ea = इम्पेलर उँगली से घूमता है
the-air-hose-is-off-or-split-f8197913 = एयर होज़ उतरा हुआ या फटा है
a-chafed-spot-on-the-air-hose-fd296ae0 = एयर होज़ पर एक घिसी जगह
the-air-hose-is-pinched-flat-f0c79ae9 = एयर होज़ दबकर चपटा है
the-air-hose-has-a-kink-e6ff9d75 = एयर होज़ में मोड़ है
a-rusty-track-of-water-below-the-a65ffd06 = गियरबॉक्स के नीचे ज़ंग वाले पानी की लकीर
the-gearbox-moves-against-its-d15df09b = गियरबॉक्स अपनी प्लेट पर हिलता है
the-transport-pieces-are-still-b126116f = ट्रांसपोर्ट की रोक अब भी लगी है
one-rod-is-out-of-its-seat-4fe09bee = एक रॉड अपनी सीट से बाहर है
one-spring-is-shorter-than-the-ea632e3a = एक स्प्रिंग बाक़ियों से छोटा है
oil-on-the-rods-cups-3efe773d = रॉड के कप पर तेल
the-lid-switch-is-not-pressed-2756ccbe = ढक्कन स्विच दबा हुआ नहीं है
the-lid-presses-the-lid-switch-9555f61c = ढक्कन से ढक्कन स्विच दबता है
a-wire-bridge-sits-across-its-b7626417 = उसके टर्मिनलों के आर-पार तार का जंपर लगा है
the-out-of-balance-lever-is-403521e3 = अनबैलेंस लीवर टब आराम में होने पर भी दबा हुआ है
the-out-of-balance-lever-is-bent-e5f5dc46 = अनबैलेंस लीवर टब से दूर मुड़ा हुआ है

### bench/observe/mod.rs

nothing-unusual-e5a680f1 = कुछ असामान्य नहीं
drops-of-water-on-motor-and-110f763f = मोटर और प्लगों पर पानी की बूँदें
quiet-ea353217 = शांत
hot-varnish-f0fd6da3 = गरम वार्निश
hot-rubber-82d6397e = गरम रबर
scorched-plastic-d1b233c0 = झुलसा हुआ प्लास्टिक

### bench/observe/surroundings.rs

water-stands-in-the-room-more-13b33a2a = कमरे में पानी भरा है, मशीन में जितना आता है उससे ज़्यादा
somebody-stands-in-the-door-and-32ec82e7 = दरवाज़े में कोई खड़ा है और चिल्ला रहा है
the-socket-is-brown-and-soft-04ab1052 = सॉकेट भूरा और नरम है
the-plug-sits-in-an-adaptor-with-c03ecce9 = प्लग एक अडैप्टर में है, जिसमें दूसरे प्लग भी हैं
the-plug-sits-in-a-rolled-up-eeda0ffe = प्लग एक लिपटी हुई एक्सटेंशन रील में है
no-residual-current-device-in-d9f1874d = पास के बोर्ड में रेज़िडुअल करंट डिवाइस नहीं है
a-small-child-comes-to-look-280b9f64 = एक छोटा बच्चा देखने आता है
a-dog-lies-in-front-of-the-020a0b4e = मशीन के सामने एक कुत्ता लेटा है
a-soft-floor-that-marks-easily-6236297e = नरम फ़र्श जिस पर आसानी से निशान पड़ते हैं
the-cut-edges-of-the-sheet-are-951816fb = लोहे की चादर के कटे किनारे नंगे हैं
steam-rises-from-the-water-a2d3888f = पानी से भाप उठती है

### bench/observe/wires.rs

a-wire-is-chafed-bare-copper-2c4d8944 = एक तार घिसा हुआ है; नंगा कॉपर धातु को छूता है
damp-and-green-between-the-pins-c9976cfa = पिनों के बीच नमी और हरापन

### bench/protection.rs

residual-current-device-e0830ed7 = रेज़िडुअल करंट डिवाइस
circuit-breaker-23d46db8 = सर्किट ब्रेकर
machine-fuse-367ca20f = मशीन का फ़्यूज़

### bench/questions.rs

when-in-the-wash-does-it-happen-7a1ed525 = धुलाई में यह कब होता है?
since-when-did-it-come-slowly-or-118ac7d8 = कब से? धीरे-धीरे हुआ या अचानक?
does-it-happen-every-time-b045c126 = क्या हर बार होता है?
what-does-the-display-show-does-2610a410 = डिस्प्ले पर क्या दिखता है? क्या बीप करती है?
does-it-make-a-noise-it-did-not-f0ea70c5 = क्या कोई ऐसी आवाज़ करती है जो पहले नहीं करती थी?
any-smell-smoke-or-wet-floor-2fd6aa83 = कोई गंध, धुआँ या गीला फ़र्श?
has-anyone-worked-on-it-or-moved-0da3ed19 = क्या किसी ने इस पर काम किया या इसे खिसकाया है?
what-was-in-it-how-much-and-how-14f63e5f = इसमें क्या डाला था, कितना, और पाउडर कितना?
is-the-tap-open-and-is-the-water-fe23ce1a = क्या नल खुला है, और क्या बाक़ी जगह पानी तेज़ आता है?
has-a-breaker-tripped-is-it-on-9752660a = क्या कोई ब्रेकर ट्रिप हुआ? क्या यह एक्सटेंशन लीड पर है?
which-machine-is-it-and-how-old-beba7e7d = कौन-सी मशीन है, और कितनी पुरानी?
what-does-it-still-do-and-where-27e7f955 = अब भी क्या-क्या करती है, और कहाँ रुकती है?
where-does-it-stand-and-can-991cb6e3 = कहाँ रखी है, और क्या उसे लिटाने में कोई मदद कर सकता है?

### bench/safety/closing.rs

handed-over-with-a-failed-earth-1da023cf = अर्थ का टेस्ट फ़ेल रहते सौंपी
without-earth-the-next-fault-is-88af2c24 = अर्थ न हो तो अगली ख़राबी कैबिनेट पर होती है, जहाँ ग्राहक का हाथ होता है।
published-en-50678-en-50699-from-3a49add1 = प्रकाशित: EN 50678, EN 50699 (याद से: 5 m तक की कॉर्ड के साथ 0.3 Ω)
mend-the-earth-and-test-again-or-d1dfb6c3 = अर्थ की मरम्मत करें और फिर टेस्ट करें, या मशीन को इस्तेमाल से बाहर करें।
handed-over-with-a-failed-cf4cc757 = इंसुलेशन का टेस्ट फ़ेल रहते सौंपी
what-leaks-through-today-flashes-708c10ba = जो आज लीकेज है, वह कल आर-पार चिंगारी बनकर कूदेगा।
published-en-50678-en-50699-from-5d3a708f = प्रकाशित: EN 50678, EN 50699 (याद से: 1 MΩ, क्लास I)
find-the-wet-or-burnt-part-test-e535eea8 = गीला या जला पार्ट ढूँढें, फिर टेस्ट करें, या मशीन को इस्तेमाल से बाहर करें।
handed-over-with-too-much-5619daed = लीकेज करंट ज़्यादा रहते सौंपी
all-of-it-flows-through-a-hand-3e3c7df6 = अर्थ टूटते ही यह सारा का सारा हाथ से होकर बहता है।
published-en-50678-en-50699-from-4f83b4b0 = प्रकाशित: EN 50678, EN 50699 (याद से: 3.5 mA)
find-the-part-that-leaks-test-6da987f9 = लीकेज वाला पार्ट ढूँढें, फिर टेस्ट करें, या मशीन को इस्तेमाल से बाहर करें।
no-earth-test-after-the-repair-a32ec6f0 = मरम्मत के बाद अर्थ का टेस्ट नहीं
an-earth-link-left-off-shows-in-32c1f799 = अर्थ का जोड़ लगना रह जाए तो मशीन के किसी काम में नहीं दिखता।
published-en-50678-from-memory-86d999d4 = प्रकाशित: EN 50678 (याद से)
plug-earth-to-every-metal-part-f04ac021 = प्लग के अर्थ से हर उस धातु तक जिसे छुआ जा सके, कॉर्ड हिलाते हुए।
no-insulation-or-leakage-test-3f0e8ebd = मरम्मत के बाद इंसुलेशन या लीकेज का टेस्ट नहीं
a-pinched-wire-works-perfectly-a6604e74 = दबा हुआ तार बिल्कुल ठीक काम करता है, जब तक कोई कैबिनेट न छुए।
t-500-v-dc-line-and-neutral-joined-4426da6e = 500 V DC, फ़ेज़ और न्यूट्रल आपस में जुड़े, अर्थ के मुक़ाबले; फिर हर अवस्था में लीकेज।
no-run-after-the-repair-54687c97 = मरम्मत के बाद मशीन नहीं चलाई
half-of-what-is-left-wrong-shows-7077594e = जो ग़लत रह गया, उसका आधा पहले पाँच मिनट में दिख जाता है।
published-en-50678-from-memory-06d7c550 = प्रकाशित: EN 50678 (याद से): कामकाज का टेस्ट आख़िरी होता है; आम चलन
fill-both-directions-drain-spin-9826506c = भराई, दोनों दिशाएँ, ड्रेन, पूरी रफ़्तार तक स्पिन।
did-not-try-that-the-lid-stops-92e2fa25 = यह नहीं आज़माया कि ढक्कन से स्पिन रुकती है
a-welded-switch-or-a-weak-brake-daddf9cb = चिपका स्विच या कमज़ोर ब्रेक तब तक कुछ नहीं दिखाता जब तक आज़माया न जाए।
published-iec-60335-2-7-from-685afc17 = प्रकाशित: IEC 60335-2-7 (याद से); आम चलन
open-the-lid-at-full-speed-it-c25d898c = पूरी रफ़्तार पर ढक्कन खोलें: बास्केट लगभग 3 s में रुकती है।
left-with-a-cover-off-68e884d9 = कवर उतरा छोड़ा
live-and-moving-parts-are-within-37fdb329 = चालू सप्लाई वाले और घूमते हिस्से हर किसी की पहुँच में हैं।
published-iec-60335-1-8-from-941a969b = प्रकाशित: IEC 60335-1, 8 (याद से)
close-the-machine-also-when-it-74bef626 = मशीन बंद करें (कवर लगाएँ), चाहे सिर्फ़ अगले दौरे तक के लिए।
left-with-an-earth-link-off-46684350 = अर्थ का जोड़ उतरा छोड़ा
it-works-so-somebody-will-use-it-729b6bc6 = मशीन चलती है, इसलिए कोई न कोई इसे इस्तेमाल करेगा।
published-en-50678-from-memory-df65f1e7 = प्रकाशित: EN 50678 (याद से); आम चलन
refit-every-earth-link-before-72aeffb0 = बंद करने से पहले अर्थ का हर जोड़ दोबारा लगाएँ, अगले दौरे तक के लिए भी।
screws-or-clips-left-over-8e97123b = स्क्रू या क्लिप बचे रह गए
panels-rattle-loose-and-a-3fddc5fd = पैनल खड़खड़ाकर ढीले होते हैं, और जो स्क्रू नहीं लगा वही अर्थ का रास्ता रहा हो सकता है।
count-them-out-and-count-them-in-6d9fe6d5 = निकालते समय गिनें, लगाते समय गिनें।
left-an-unfinished-machine-f985fd0c = अधूरी मशीन प्लग लगी छोड़ी
somebody-will-try-it-74482563 = कोई न कोई इसे चलाकर देखेगा।
unplug-label-do-not-use-tell-the-c81bf8c7 = प्लग निकालें, "इस्तेमाल न करें" का लेबल लगाएँ, ग्राहक को बताएँ।
left-an-unfinished-machine-32447b74 = अधूरी मशीन बिना लेबल छोड़ी
whoever-comes-home-next-does-not-71f21cf7 = इसके बाद जो घर आएगा उसे पता नहीं होगा, और वह प्लग लगा देगा।
hang-a-label-do-not-use-on-the-1ce831a0 = प्लग पर "इस्तेमाल न करें" का लेबल टाँगें और ग्राहक को बताएँ।
left-tools-or-parts-inside-976dcada = औज़ार या पार्ट अंदर छोड़े
they-bridge-terminals-or-jam-the-be7dd4a1 = वे टर्मिनलों को शॉर्ट करते हैं या बास्केट को जाम करते हैं।
count-the-tools-before-the-last-f1788786 = आख़िरी कवर लगाने से पहले औज़ार गिनें।
the-socket-was-never-tested-241cd49f = सॉकेट एक बार भी नहीं नापा
a-missing-earth-or-exchanged-8c35aaf7 = अर्थ न होना या तारों का अदल-बदल होना अच्छी मशीन को ख़तरनाक बना देता है।
line-to-neutral-line-to-earth-a83050e8 = फ़ेज़ से न्यूट्रल, फ़ेज़ से अर्थ, न्यूट्रल से अर्थ, किसी भी दूसरे काम से पहले।
left-the-machine-connected-to-a-9ce966e2 = मशीन बिना अर्थ वाले सॉकेट से जुड़ी छोड़ी
the-customer-has-felt-it-already-9ddd8656 = ग्राहक को यह महसूस हो चुका है; अगली ख़राबी झनझनाहट से बुरी होगी।
published-iec-60364-4-41-from-6aa7164c = प्रकाशित: IEC 60364-4-41 (याद से)
unplug-label-tell-the-customer-182ba0b3 = प्लग निकालें, लेबल लगाएँ, ग्राहक को लिखकर बताएँ।
saw-a-defect-of-the-house-and-fb259afd = घर की कमी देखी और किसी को नहीं बताया
the-technician-is-often-the-only-bddd9f5a = अक्सर तकनीशियन ही अकेला होता है जो कभी इसे देखेगा।
tell-and-write-it-down-what-859b4aa6 = बताएँ और लिखें: क्या, कहाँ, उससे क्या हो सकता है।

### bench/safety/handling.rs

laid-the-machine-down-alone-3e526675 = मशीन अकेले, बिना पट्टे के लिटाई
t-35-kg-with-the-weight-up-high-8f5f3b15 = 35 kg, और वज़न ऊपर: कमर, पैर और फ़र्श जवाब दे देते हैं।
get-help-or-use-a-strap-and-a-c6c364c7 = मदद लें, या पट्टा लगाएँ और किसी कोने पर टिकाकर नीचे उतारें।
laid-the-machine-on-a-bare-floor-f35bc225 = मशीन नंगे फ़र्श पर लिटाई
tiles-chip-and-cabinets-scratch-bbba38c7 = टाइलें टूटती हैं और कैबिनेट पर खरोंच आती है; दोनों का पैसा भरना पड़ता है।
put-a-blanket-or-cardboard-under-68cb0236 = इसके नीचे कंबल या गत्ता बिछाएँ।
reached-under-a-machine-that-was-df59635c = ऐसी मशीन के नीचे हाथ डाला जो टेकी हुई नहीं थी
it-comes-back-on-the-arm-7dfda122 = वह बाँह पर वापस आ गिरती है।
prop-it-or-lay-it-flat-before-d80cb6a4 = नीचे हाथ डालने से पहले टेक लगाएँ या पूरा लिटा दें।
worked-under-an-opened-top-37b0c51b = बिना टेक के खुले ऊपरी हिस्से के नीचे काम किया
it-falls-on-hands-and-its-edge-038207bb = वह हाथों पर गिरता है, और उसका किनारा लोहे की चादर का है।
prop-or-tie-it-then-reach-in-15b4b71f = टेक लगाएँ या बाँधें, फिर हाथ अंदर डालें।
reached-past-sheet-metal-edges-d0ab1be6 = बिना दस्तानों के लोहे की चादर के किनारों के पार हाथ डाला
pressed-edges-cut-like-knives-fb9cc03d = प्रेस किए हुए किनारे चाकू की तरह काटते हैं, ख़ासकर जब कुछ फिसल जाए।
cut-proof-gloves-for-the-reach-aeef6aa6 = हाथ अंदर डालने के लिए कट से बचाने वाले दस्ताने; किसी भी घूमती चीज़ के पास फिर उतार दें।
touched-a-hot-part-1ec7156a = गरम पार्ट छुआ
a-motor-that-has-stalled-is-hot-994c1754 = अटक चुकी मोटर रुकने के बहुत देर बाद भी इतनी गरम होती है कि जला दे।
published-iso-13732-1-from-84e4fcd4 = प्रकाशित: ISO 13732-1 (याद से)
feel-near-it-first-or-measure-518119f9 = पहले पास से महसूस करें, या नापें; ठंडा होने दें।

### bench/safety/isolation.rs

touched-a-live-conductor-2516395d = चालू सप्लाई वाला कंडक्टर छुआ
above-50-v-or-25-v-where-it-is-dce360ba = 50 V से ऊपर, या जहाँ गीला हो वहाँ 25 V से ऊपर, इतना करंट बह सकता है कि दिल रुक जाए।
published-iec-60364-4-41-and-iec-3eaeee8e = प्रकाशित: IEC 60364-4-41 और IEC 60479-1 (याद से)
unplug-prove-dead-and-only-then-bcce1e7a = प्लग निकालें, डेड साबित करें, उसके बाद ही कंडक्टरों पर हाथ लगाएँ।
worked-inside-with-the-machine-eff5cbe0 = मशीन चालू रहते अंदर काम किया
conductors-are-live-and-a-6d6ab976 = कंडक्टरों पर सप्लाई चालू होती है, और प्रोग्राम किसी भी पल मोटर चला सकता है।
published-en-50110-1-6-2-from-078621c5 = प्रकाशित: EN 50110-1, 6.2 (याद से)
switch-off-pull-the-plug-keep-it-61c91336 = स्विच बंद करें, प्लग निकालें, उसे नज़र के सामने रखें।
relied-on-the-switch-and-left-ab5f9be2 = स्विच पर भरोसा किया और प्लग लगा छोड़ा
the-switch-opens-one-conductor-f86c3d45 = स्विच एक ही कंडक्टर काटता है; फ़ेज़ और न्यूट्रल अदल-बदल हों तो बाक़ी सब चालू रहता है।
published-en-50110-1-6-2-1-from-478ca2ff = प्रकाशित: EN 50110-1, 6.2.1 (याद से); आम चलन
pull-the-plug-it-opens-both-80e69bfa = प्लग निकालें: वह दोनों कंडक्टर काटता है, और दिखता है कि वह बाहर है।
took-a-cover-off-with-the-plug-42ec8cfd = प्लग लगा रहते कवर उतारा
live-parts-come-within-reach-a0fb5eec = चालू हिस्से पहुँच में आ जाते हैं, इससे पहले कि किसी ने चालू सप्लाई पर काम करने का फ़ैसला किया हो।
pull-the-plug-first-put-it-back-6fa63490 = पहले प्लग निकालें; वापस सिर्फ़ उस रीडिंग के लिए लगाएँ जिसे इसकी ज़रूरत है।
the-pulled-plug-was-out-of-sight-4bd840fd = निकला हुआ प्लग नज़र के सामने नहीं था
somebody-may-put-it-back-while-c319d416 = हाथ अंदर हों तब कोई उसे वापस लगा सकता है।
published-en-50110-1-6-2-2-from-545bceb9 = प्रकाशित: EN 50110-1, 6.2.2 (याद से)
keep-the-plug-in-sight-tag-it-or-ec82f931 = प्लग नज़र के सामने रखें, उस पर टैग या ताला लगाएँ।
went-to-conductors-without-56c01e5f = डेड साबित किए बिना कंडक्टरों पर हाथ लगाया
the-wrong-plug-a-second-feed-or-231126c4 = ग़लत प्लग, दूसरी फ़ीड या चार्ज वाला फ़िल्टर सिर्फ़ नापने से पता चलता है।
published-en-50110-1-6-2-3-from-a10e4ab2 = प्रकाशित: EN 50110-1, 6.2.3 (याद से)
prove-the-tester-test-line-88fa0b11 = टेस्टर को जाँचें, फ़ेज़, न्यूट्रल और अर्थ को एक-दूसरे के मुक़ाबले टेस्ट करें, टेस्टर को फिर जाँचें।
took-a-contactless-tester-as-8327371a = बिना छुए जाँचने वाले टेस्टर को डेड होने का सबूत माना
it-is-blind-behind-earthed-metal-25d7600d = अर्थ की हुई धातु के पीछे और DC वोल्टेज पर वह अंधा है; उसकी चुप्पी कुछ साबित नहीं करती।
use-a-two-pole-tester-or-a-meter-4a2d0fed = दो पोल वाला टेस्टर या वोल्ट पर मीटर इस्तेमाल करें।
took-an-ohm-reading-as-proof-of-7ac46d7a = ओम की रीडिंग को डेड होने का सबूत माना
on-a-live-circuit-an-ohmmeter-95e59873 = चालू सर्किट पर ओममीटर कुछ भी दिखाता है, "ओपन" भी, और जल सकता है।
published-en-50110-1-6-2-3-from-0bdab781 = प्रकाशित: EN 50110-1, 6.2.3 (याद से); आम चलन
prove-dead-with-volts-ohms-come-15989793 = वोल्ट से डेड साबित करें; ओम उसके बाद।
the-tester-was-not-proved-before-6971c96b = डेड टेस्ट से पहले टेस्टर को नहीं जाँचा
a-flat-battery-or-a-broken-lead-f76900fa = कमज़ोर बैटरी या टूटी लीड भी शून्य पढ़ती है।
measure-a-live-socket-first-on-53dfbfd0 = पहले उसी रेंज पर चालू सॉकेट नापें।
the-tester-was-not-proved-again-a9c3b3f4 = डेड टेस्ट के बाद टेस्टर को फिर नहीं जाँचा
it-may-have-failed-in-between-a53bdb4e = हो सकता है वह बीच में ख़राब हो गया हो; तब वह शून्य किसी काम का नहीं था।
go-back-to-the-same-live-socket-ca974dea = उसी चालू सॉकेट पर वापस जाएँ और वही रीडिंग फिर देखें।
did-not-test-all-conductors-2c59ac7a = सब कंडक्टरों को एक-दूसरे के मुक़ाबले टेस्ट नहीं किया
with-a-broken-neutral-line-to-0e10343c = न्यूट्रल टूटा हो तो फ़ेज़ से न्यूट्रल शून्य पढ़ता है और अर्थ के मुक़ाबले दोनों चालू होते हैं।
line-to-neutral-line-to-earth-431eced8 = फ़ेज़ से न्यूट्रल, फ़ेज़ से अर्थ, न्यूट्रल से अर्थ।
touched-a-charged-capacitor-e08e84b6 = चार्ज वाला कैपेसिटर छुआ
a-run-capacitor-with-a-wire-off-7ff23d7c = जिस रन कैपेसिटर का एक तार उतरा हो, वह एक जूल से ज़्यादा का झटका एक घंटे तक रखता है।
published-iec-60335-1-22-5-from-f624c261 = प्रकाशित: IEC 60335-1, 22.5 (याद से: 34 V)
discharge-through-10-to-20-0f179be6 = 10 से 20 kΩ से चार्ज उतारें, नापें, फिर छुएँ।
touched-a-capacitor-without-7bd0c5e0 = पहले नापे बिना कैपेसिटर छुआ
it-was-empty-this-time-it-2e1ed034 = इस बार ख़ाली था। वह अपने आप तभी ख़ाली होता है जब तार और वाइंडिंग साबुत हों।
treat-every-capacitor-as-charged-19447706 = जब तक मीटर कुछ और न बताए, हर कैपेसिटर को चार्ज मानें।
short-circuited-a-charged-a6f0c3d1 = चार्ज वाले कैपेसिटर को शॉर्ट किया
the-spark-throws-metal-and-c0d4a9bd = चिंगारी धातु उछालती है और कैपेसिटर ख़राब करती है।
use-a-resistor-of-10-to-20-cee9c530 = 10 से 20 kΩ का रेज़िस्टर पाँच टाइम कॉन्स्टेंट तक लगाएँ।

### bench/safety/measuring.rs

measured-ohms-on-a-live-circuit-b04c7fab = चालू सर्किट पर ओम नापा
the-reading-is-nonsense-and-the-73c842bd = रीडिंग बेमतलब होती है, और मीटर हाथ में जल सकता है।
unplug-and-prove-dead-then-a67b093d = प्लग निकालें और डेड साबित करें, फिर ओम नापें।
put-the-current-range-across-the-4380a993 = करंट की रेंज मेन्स के आर-पार लगाई
the-current-range-is-a-short-be2c00c5 = करंट की रेंज शॉर्ट सर्किट है: फ़्यूज़ अच्छा न हो तो प्रोब पर आर्क।
published-iec-61010-2-033-from-5c3f5ce9 = प्रकाशित: IEC 61010-2-033 (याद से); आम चलन
use-a-clamp-put-the-leads-back-6cd74aec = क्लैंप इस्तेमाल करें; करंट नापते ही लीड वापस वोल्ट पर लगाएँ।
used-a-meter-of-too-low-a-12aec54c = बहुत नीची कैटेगरी का मीटर इस्तेमाल किया
a-surge-on-the-mains-can-flash-48b3e2db = मेन्स का सर्ज ऐसे मीटर के अंदर आर-पार चिंगारी बनकर कूद सकता है जो उस जगह के लिए नहीं बना।
published-iec-61010-1-from-9a57c5a0 = प्रकाशित: IEC 61010-1 (याद से)
at-a-socket-at-least-category-ii-6c9701cd = सॉकेट पर कम से कम कैटेगरी II, बेहतर III, फ़्यूज़ वाली लीड के साथ।
measured-mains-with-damaged-9bbc6a99 = ख़राब लीड से मेन्स नापा
the-fingers-are-as-close-to-the-b60e8f6f = उँगलियाँ मेन्स के उतनी ही पास हैं जितनी इंसुलेशन की दरार।
look-the-leads-over-before-each-5445ce84 = हर जॉब से पहले लीड ध्यान से देखें; ख़राब फेंक दें।
used-an-instrument-without-4b4cb489 = यंत्र को जाँचे बिना इस्तेमाल किया
a-flat-battery-a-blown-fuse-or-a-cf88a51a = कमज़ोर बैटरी, उड़ा फ़्यूज़ या टूटी लीड झूठ बोलती है, और चुपचाप।
look-at-leads-and-battery-short-c72f7d44 = लीड और बैटरी देखें, ओम पर प्रोब आपस में मिलाएँ, कोई जाना हुआ वोल्टेज नापें।
probed-live-where-a-dead-test-546300ed = जहाँ डेड टेस्ट काफ़ी था वहाँ चालू सप्लाई पर प्रोब लगाए
every-live-measurement-is-a-risk-597ccba1 = चालू सप्लाई पर हर रीडिंग जोखिम है; उससे वह मिलना चाहिए जो डेड रीडिंग से नहीं मिल सकता।
published-en-50110-1-4-1-from-b816935d = प्रकाशित: EN 50110-1, 4.1 (याद से); आम चलन
choose-the-dead-test-when-it-982b8019 = जहाँ डेड टेस्ट से बात तय हो जाए, वहाँ उसे चुनें।
measured-live-standing-on-a-wet-ea50dddd = गीले फ़र्श पर खड़े होकर चालू सप्लाई पर नापा
wet-shoes-and-floor-take-away-21c3e630 = गीले जूते और फ़र्श शरीर और अर्थ के बीच जो कुछ है उसका ज़्यादातर हटा देते हैं।
published-iec-60479-1-from-9892379e = प्रकाशित: IEC 60479-1 (याद से): गीली त्वचा; आम चलन
dry-the-floor-first-or-stand-on-f1e479bf = पहले फ़र्श सुखाएँ, या किसी इंसुलेशन वाली चीज़ पर खड़े हों।
insulation-test-with-the-plug-in-b7c56f0f = प्लग लगा रहते इंसुलेशन टेस्ट
the-test-voltage-meets-the-mains-ab377bc4 = टेस्ट का वोल्टेज मेन्स से टकराता है: टेस्टर, बोर्ड और व्यक्ति ख़तरे में हैं।
published-en-50699-from-memory-7f0e8f31 = प्रकाशित: EN 50699 (याद से)
unplug-join-line-and-neutral-4f62f487 = प्लग निकालें; फ़ेज़ और न्यूट्रल जोड़ें; अर्थ के मुक़ाबले टेस्ट करें।
insulation-test-across-1a9531d5 = इलेक्ट्रॉनिक्स के आर-पार इंसुलेशन टेस्ट
t-500-v-across-a-board-or-its-2ef42448 = बोर्ड या उसके सर्ज रोकने वाले पार्ट के आर-पार 500 V उसे नष्ट कर देता है, या उस पार्ट को ही पढ़ता है।
test-joined-line-and-neutral-cf4aaa2d = आपस में जुड़े फ़ेज़ और न्यूट्रल को अर्थ के मुक़ाबले टेस्ट करें, फ़ेज़ को न्यूट्रल के मुक़ाबले कभी नहीं।

### bench/safety/motion.rs

reached-into-a-spinning-basket-f48b2f2e = स्पिन करती बास्केट में हाथ डाला
wet-cloth-winds-round-a-hand-and-b3b37471 = गीला कपड़ा हाथ पर लिपटता है और बाँह को साथ खींच ले जाता है।
published-iec-60335-2-7-from-ced1dc2b = प्रकाशित: IEC 60335-2-7 (याद से: 60 r/min)
wait-until-it-stands-still-e03af94e = पूरी तरह रुकने तक इंतज़ार करें।
reached-into-a-basket-still-ab8b45d3 = ऐसी बास्केट में हाथ डाला जो अभी घूम रही थी
even-a-slow-basket-has-the-11d5237e = धीमी बास्केट में भी गीले कपड़ों का ज़ोर होता है।
reached-in-while-motor-or-belt-4d26af8c = मोटर या बेल्ट घूमते समय हाथ अंदर डाला
between-belt-and-pulley-fingers-8a5724de = बेल्ट और पुली के बीच उँगलियाँ चली जाती हैं।
switch-off-unplug-wait-until-342c4d0e = स्विच बंद करें, प्लग निकालें, सब कुछ रुकने तक इंतज़ार करें।
bridged-the-lid-switch-to-test-412d4e0e = ढक्कन स्विच को टेस्ट करने के लिए जंपर से शॉर्ट किया
the-guard-is-gone-while-it-is-042e9d66 = जंपर लगा रहते सुरक्षा की रोक नहीं रहती, और जंपर भूल से रह जाते हैं।
unplug-and-measure-the-switch-89e3c265 = प्लग निकालें और ढक्कन खुला व बंद रखकर स्विच की कंटिन्यूटी नापें।
started-the-machine-with-the-lid-878f5350 = ढक्कन खुला और स्विच जंपर से शॉर्ट रखकर मशीन चलाई
the-basket-spins-in-the-open-fd7f2edb = बास्केट खुले में, हाथ की पहुँच में स्पिन करती है।
take-the-bridge-out-shut-the-lid-ffb271d5 = जंपर निकालें; ढक्कन बंद करें।
left-the-lid-switch-bridged-78782e25 = ढक्कन स्विच जंपर से शॉर्ट छोड़ा
from-now-on-the-basket-spins-a2338047 = अब से बास्केट ढक्कन खुला रहते स्पिन करेगी, और ग्राहक को पता नहीं है।
take-the-bridge-out-fit-a-switch-d39e15b6 = जंपर निकालें, स्विच लगाएँ, आज़माएँ कि ढक्कन से स्पिन रुकती है।
left-a-machine-that-spins-with-85c4e5e8 = ऐसी मशीन छोड़ी जो ढक्कन खुला रहते स्पिन करती है
a-welded-lid-switch-gives-no-493e9bc4 = चिपके ढक्कन स्विच की शिकायत नहीं आती, सिर्फ़ दुर्घटना होती है।
published-iec-60335-2-7-from-8bef45e4 = प्रकाशित: IEC 60335-2-7 (याद से)
mend-it-or-put-the-machine-out-9d30862d = इसकी मरम्मत करें, या मशीन को इस्तेमाल से बाहर करें और यह लिखकर दें।
started-with-tools-or-parts-57487d72 = अंदर औज़ार या पार्ट खुले पड़े रहते मशीन चलाई
the-belt-throws-them-or-they-9cec08e1 = बेल्ट उन्हें उछालती है, या वे चालू टर्मिनलों को शॉर्ट करते हैं।
count-the-tools-look-with-a-lamp-67cb8c07 = औज़ार गिनें, लैंप से देखें, फिर चलाएँ।
energised-the-open-machine-with-df264375 = बच्चे या जानवर के पास रहते खुली मशीन को सप्लाई दी
they-reach-where-no-grown-person-ae84cf0b = वे वहाँ हाथ डालते हैं जहाँ कोई बड़ा नहीं डालेगा।
ask-for-the-room-to-be-kept-free-b33bd75d = कमरा ख़ाली रखने को कहें, या इंतज़ार करें।

### bench/safety/power.rs

energised-the-machine-with-an-374c58d3 = अर्थ का जोड़ उतरा रहते मशीन को सप्लाई दी
the-next-insulation-fault-puts-a8488d91 = अगली इंसुलेशन ख़राबी कैबिनेट पर मेन्स ले आती है, और कुछ ट्रिप नहीं होता।
refit-every-earth-link-and-f762f6b0 = प्लग लगाने से पहले अर्थ का हर जोड़ दोबारा लगाएँ और बॉन्ड नापें।
energised-wet-electrics-fc52e51b = गीले बिजली के हिस्सों को सप्लाई दी
water-carries-mains-to-the-391e9a67 = पानी मेन्स को कैबिनेट तक और हाथ तक ले जाता है।
dry-the-parts-measure-insulation-984515a9 = पार्ट सुखाएँ, इंसुलेशन नापें, फिर प्लग लगाएँ।
energised-the-machine-after-a-92153567 = फ़ेल हुए टेस्ट के बाद मशीन को सप्लाई दी
earth-and-insulation-come-first-9cca6719 = अर्थ और इंसुलेशन पहले आते हैं, क्योंकि पहली बार चालू करने से ही चोट लग सकती है।
published-en-50678-from-memory-6c01bb79 = प्रकाशित: EN 50678 (याद से): पहला फ़ेल हुआ चरण टेस्ट रोक देता है
find-and-mend-the-cause-test-be0ee96d = कारण ढूँढें और उसकी मरम्मत करें, फिर टेस्ट करें, तब प्लग लगाएँ।
switched-on-after-the-repair-bee20b07 = मरम्मत के बाद अर्थ टेस्ट करने से पहले चालू किया
the-earth-conductor-is-what-03dd3641 = मरम्मत में हुई ग़लती को अर्थ कंडक्टर ही बेख़तर बनाता है।
published-en-50678-from-memory-c0715086 = प्रकाशित: EN 50678 (याद से): देखना, अर्थ, इंसुलेशन, फिर कामकाज
close-the-machine-measure-earth-96c3a1e2 = मशीन बंद करें (कवर लगाएँ), अर्थ बॉन्ड और इंसुलेशन नापें, फिर चलाएँ।
switched-on-standing-in-water-e9346a59 = पानी में खड़े होकर चालू किया
a-wet-floor-makes-the-body-a-2dc5405c = गीला फ़र्श शरीर को अर्थ तक अच्छा रास्ता बना देता है।
mop-up-first-0e6e4658 = पहले फ़र्श पोंछें।
ran-the-machine-on-a-socket-e69e6d28 = मशीन ऐसे सॉकेट पर चलाई जिसमें अर्थ न होना पता था
the-filter-alone-bites-a-fault-65a89bbf = अकेले फ़िल्टर से झटका लगता है; ख़राबी से जान जाती है। मशीन अच्छी हो, इससे यह नहीं बदलता।
make-safe-tell-the-customer-let-0138ed49 = सुरक्षित करें, ग्राहक को बताएँ, सॉकेट की मरम्मत इलेक्ट्रीशियन से होने दें।
used-a-scorched-socket-265d167d = झुलसा सॉकेट इस्तेमाल किया
a-loose-contact-that-has-burnt-ecacd4e6 = ढीला कॉन्टैक्ट जो एक बार जला, वह फिर जलता है, दीवार के पीछे।
put-it-out-of-use-tell-the-8d1cfa5b = उसे इस्तेमाल से बाहर करें, ग्राहक को लिखकर बताएँ, दूसरा सर्किट इस्तेमाल करें।
set-a-tripped-device-again-57c13be1 = ट्रिप हुआ उपकरण कारण ढूँढे बिना दोबारा चढ़ाया
it-opened-for-a-reason-and-the-cfecbacf = वह किसी वजह से खुला, और वजह अब भी वहीं है।
unplug-the-machine-test-it-dead-6f9296bd = मशीन का प्लग निकालें, डेड टेस्ट करें, फिर उपकरण दोबारा चढ़ाएँ।
fitted-a-larger-fuse-or-bridged-5a3085d5 = बड़ा फ़्यूज़ लगाया या फ़्यूज़ शॉर्ट किया
wires-and-windings-now-burn-17293da4 = अब तार और वाइंडिंग फ़्यूज़ से पहले जलेंगे।
published-iec-60127-1-from-024c0daf = प्रकाशित: IEC 60127-1 (याद से); आम चलन
same-rating-same-speed-find-what-9e510bcc = वही रेटिंग, उड़ने की वही रफ़्तार; ढूँढें कि वह किससे उड़ा।
fitted-a-run-capacitor-of-too-ded369d1 = बहुत कम वोल्टेज का रन कैपेसिटर लगाया
in-run-it-stands-far-above-the-ac07bb99 = चलते समय उस पर मेन्स से बहुत ऊपर वोल्टेज होता है: वह फटता या जलता है।
published-iec-60252-1-from-3608c6fd = प्रकाशित: IEC 60252-1 (याद से)
read-the-old-one-s-rating-never-7f1761a3 = पुराने की रेटिंग पढ़ें; उससे कम कभी न लगाएँ।
worked-on-the-wiring-of-the-54ef7585 = घर की वायरिंग पर काम किया
it-belongs-to-a-licensed-9c06e5b2 = वह लाइसेंस वाले इलेक्ट्रीशियन का काम है; वहाँ हुई ग़लती से हर किसी को करंट का ख़तरा है।
common-practice-local-law-a8141cdd = आम चलन; स्थानीय क़ानून
measure-tell-record-never-repair-0ec7ed45 = नापें, बताएँ, लिखें; मरम्मत कभी नहीं।
went-on-although-the-place-was-d2031933 = जगह सुरक्षित न होने पर भी काम जारी रखा
gas-flood-fire-or-a-threat-do-09d2a3f1 = गैस, भरा हुआ पानी, आग या धमकी वॉशिंग मशीन का इंतज़ार नहीं करते।
make-safe-and-leave-a-job-7d32f693 = सुरक्षित करें और चले जाएँ; वजह से मना किया गया जॉब सही किया गया जॉब है।

### bench/safety/water.rs

pulled-the-inlet-hose-with-the-d6197483 = नल खुला रहते इनलेट होज़ निकाला
twelve-litres-a-minute-and-the-460092b1 = एक मिनट में बारह लीटर, और नीचे वालों की छत सबसे महँगी ग़लती है।
shut-the-tap-let-the-pressure-2af1f118 = नल बंद करें, प्रेशर निकालें, फिर होज़ निकालें।
pulled-the-inlet-hose-under-9b23cdf2 = प्रेशर रहते इनलेट होज़ निकाला
it-sprays-and-over-what-is-2bc317ad = फुहार छूटती है, और बिजली के हिस्सों पर।
open-the-valve-for-a-moment-with-f6b17ba0 = नल बंद रखकर वाल्व पल भर खोलें, या बाल्टी के ऊपर धीरे-धीरे ढीला करें।
opened-the-tap-with-the-hose-off-8ca8d26b = होज़ उतरा रहते नल खोला
the-room-floods-before-the-tap-664af35f = नल फिर बंद होने से पहले कमरे में पानी भर जाता है।
screw-on-both-ends-then-open-195b6cd0 = दोनों सिरे कसकर लगाएँ, फिर धीरे से खोलें और देखें।
opened-a-water-joint-without-a-ff6919cd = ट्रे के बिना पानी का जोड़ खोला
water-on-the-floor-reaches-b94eb149 = फ़र्श पर पानी सॉकेटों तक पहुँचता है, और लोग फिसलकर गिरते हैं।
bucket-tray-and-cloth-before-the-f768128e = क्लैंप ढीला करने से पहले बाल्टी, ट्रे और कपड़ा।
tilted-the-machine-with-water-in-36668e73 = टब में पानी रहते मशीन झुकाई
fifty-litres-move-at-once-the-a585b376 = पचास लीटर एक साथ सरकते हैं: मशीन गिरती है, पानी बिजली के हिस्सों पर जाता है।
drain-by-the-machine-else-bail-648beb55 = मशीन से ही ड्रेन करें; नहीं तो ऊपर से मग से या साइफ़न से निकालें।
let-hot-water-out-over-hands-0b894002 = गरम पानी हाथों पर निकलने दिया
from-50-c-it-scalds-within-c14dfbbb = 50 °C से यह मिनटों में झुलसाता है, 60 °C से सेकंडों में।
let-it-cool-or-thin-it-with-cold-0f593be4 = ठंडा होने दें, या पहले ठंडा पानी मिलाकर गरमी घटाएँ।
tried-a-joint-before-its-sealant-c044ea26 = सीलेंट जमने से पहले जोड़ आज़माया
it-lets-go-now-or-worse-next-4fda4134 = वह अभी खुल जाता है या, उससे बुरा, अगले हफ़्ते।
give-it-the-time-on-the-tube-2712cea1 = ट्यूब पर लिखा समय दें, फिर पानी आने दें।
let-water-in-with-a-joint-still-ba0e8bfb = एक जोड़ खुला रहते पानी आने दिया
it-runs-into-the-machine-58888b34 = वह मशीन के अंदर बहता है।
go-round-every-joint-that-was-4fc5d667 = नल खोलने से पहले हर उस जोड़ को देख आएँ जो खोला गया था।
left-a-water-joint-unsealed-9939d93b = पानी का जोड़ बिना सील किए छोड़ा
it-leaks-when-nobody-is-at-home-5efb0d11 = वह तब लीक करता है जब घर पर कोई नहीं होता।
seal-fit-the-clamp-try-with-7fd9391e = सील करें, क्लैंप लगाएँ, पानी और सूखे कपड़े से आज़माएँ।
did-not-try-the-opened-joint-b81c076d = खोले गए जोड़ को पानी से नहीं आज़माया
a-seal-is-sound-when-it-has-held-8266cf1c = सील तब सही है जब उसने पानी रोककर दिखाया हो, तब नहीं जब वह अच्छी दिखे।
fill-look-and-feel-with-a-dry-8ff4cf41 = भरें, सूखे कपड़े से देखें और टटोलें, ड्रेन करें, फिर देखें।
left-an-unfinished-machine-with-17e137bb = अधूरी मशीन नल खुला छोड़कर छोड़ी
nobody-watches-the-open-joint-762d7a4e = दूसरे दौरे तक खुले जोड़ पर किसी की नज़र नहीं रहती।
shut-the-tap-label-it-tell-the-136c119c = नल बंद करें, लेबल लगाएँ, ग्राहक को बताएँ।
left-the-floor-wet-46492b4d = फ़र्श गीला छोड़ा
the-next-person-slips-or-stands-b86f41ef = अगला व्यक्ति फिसलता है, या स्विच पर उसी में खड़ा होता है।
mop-up-before-leaving-ecdb16c3 = जाने से पहले फ़र्श पोंछें।

### bench/shock.rs

hardly-felt-86b15da0 = मुश्किल से महसूस
a-start-muscles-twitch-usually-4e49df1a = चौंक; मांसपेशियाँ फड़कती हैं, आम तौर पर कोई नुक़सान नहीं
cramp-the-hand-cannot-let-go-c85c0e0b = जकड़न: हाथ छोड़ नहीं पाता, साँस लेना मुश्किल
the-heart-may-stop-pumping-burns-8468b9e8 = दिल पंप करना बंद कर सकता है; जलने के घाव

### bench/signature/mod.rs

point-to-neutral-42a3d717 = { $point } से न्यूट्रल

### bench/signature/values.rs

what-from-to-unit-5bf2095c = { $what }: { $from } → { $to } { $unit }
what-to-unit-671e2964 = { $what }: { $to } { $unit }
what-factor-4ff36978 = { $what }: × { $factor }
what-to-b16c3c56 = { $what }: { $to }
what-open-fa9667d9 = { $what }: ओपन
what-closed-to-351426f6 = { $what }, बंद (जुड़ा): { $to }
a-path-name-to-7663eb1b = एक रास्ता, { $name }: { $to }
supply-n-v-b4ef1026 = सप्लाई: { $n } V
line-and-neutral-exchanged-at-4d0de6ed = सॉकेट पर फ़ेज़ और न्यूट्रल अदल-बदल
exchanged-one-and-other-15397b75 = अदल-बदल: { $one } और { $other }
motor-winding-1-and-2-open-8172ba5a = मोटर वाइंडिंग 1 और 2: ओपन
motor-winding-n-open-e3b05e86 = मोटर वाइंडिंग { $n }: ओपन
motor-winding-n-percent-of-its-d40d0065 = मोटर वाइंडिंग { $n }: इसके { $percent } % टर्न { $short } से शॉर्ट
motor-winding-n-to-the-frame-765da21c = मोटर वाइंडिंग { $n } से फ़्रेम: { $path }
the-motor-s-rotor-is-stuck-241c9059 = मोटर का रोटर अटका है
load-on-the-motor-factor-25e7bc89 = मोटर पर लोड: × { $factor }
the-5-v-supply-of-the-board-0bbeb0f5 = बोर्ड की 5 V सप्लाई कुछ नहीं देती
# of a circuit
open-87a3af6e = ओपन

### bench/signature/wash.rs

first-fill-e1ee62c2 = पहली भराई
water-level-while-washing-84498ba2 = धुलाई के दौरान पानी का लेवल
pulsator-spin-direction-fd0428e2 = पल्सेटर, स्पिन की दिशा
pulsator-other-direction-c3febfe2 = पल्सेटर, दूसरी दिशा
basket-creeps-while-washing-d1e57bb7 = धुलाई में बास्केट का सरकना
drain-until-empty-410dea64 = ख़ाली होने तक ड्रेन
fastest-spin-d038f7f7 = सबसे तेज़ स्पिन
times-the-load-was-spread-again-859aa9ce = कितनी बार कपड़े फिर फैलाए गए
widest-swing-of-the-tub-ac38df34 = टब का सबसे बड़ा झूलना
water-left-in-the-load-per-dry-29226b15 = कपड़ों में बचा पानी, सूखे वज़न के मुक़ाबले
water-used-0a746f55 = कितना पानी लगा
water-on-the-floor-3706e824 = फ़र्श पर पानी
times-the-motor-s-protector-10ef6660 = मोटर का प्रोटेक्टर कितनी बार खुला
basket-stops-after-the-lid-is-099252e7 = ढक्कन खुलने के बाद बास्केट का रुकना
loudest-moment-ed048c05 = सबसे तेज़ आवाज़ का पल
# alarms
none-5ef2092b = कोई नहीं
alarm-19ebecda = अलार्म

### bench/words.rs

ask-on-the-phone-question-591a4056 = फ़ोन पर पूछना: { $question }
what-place-c91c3258 = { $what }: { $place }
contactless-tester-point-1727f9f5 = बिना छुए जाँचने वाला टेस्टर: { $point }
what-by-hand-802444ad = हाथ से { $what }
name-the-price-price-6a393987 = दाम बताना: { $price }
load-the-van-with-n-parts-92c4dcef = वैन में { $n } पार्ट रखना
open-the-lid-e9ab1b7f = ढक्कन खोलना
shut-the-lid-cff37a3d = ढक्कन बंद करना
set-the-breaker-again-e52807a8 = ब्रेकर दोबारा चढ़ाना
switch-the-socket-s-circuit-on-188f4e53 = सॉकेट का सर्किट चालू करना
switch-the-socket-s-circuit-off-a25fca67 = घर के बोर्ड पर सॉकेट का सर्किट बंद करना
keep-the-plug-in-sight-7290459d = प्लग नज़र के सामने रखना
write-a-remark-04607be9 = टिप्पणी लिखना
bleed-the-supply-hose-into-a-73044775 = सप्लाई होज़ का प्रेशर बाल्टी में निकालना
screw-the-supply-hose-on-de2526c5 = सप्लाई होज़ कसकर लगाना
take-the-supply-hose-off-f9ed2cd4 = सप्लाई होज़ उतारना
bridge-the-lid-switch-06033ec6 = ढक्कन स्विच जंपर से शॉर्ट करना
take-the-bridge-off-the-lid-744300bb = ढक्कन स्विच से जंपर निकालना
note-the-reading-e29dbe92 = रीडिंग नोट करना
bail-the-water-out-with-a-bucket-666c6b0e = बाल्टी से पानी निकालना
let-the-water-out-by-the-drain-22b84b9b = ड्रेन की केबल से पानी निकालना
decide-the-maker-pays-318225bd = तय करना: पैसे बनाने वाला देगा
decide-the-customer-pays-6a791169 = तय करना: पैसे ग्राहक देगा
look-the-instrument-over-probes-75193587 = यंत्र को ध्यान से देखना, प्रोब आपस में मिलाकर
take-the-spare-instrument-9ac89d07 = अतिरिक्त यंत्र लेना
lay-a-blanket-on-the-floor-20b9ac5b = फ़र्श पर कंबल बिछाना
put-gloves-on-634a9df9 = दस्ताने पहनना
take-the-gloves-off-78e85e04 = दस्ताने उतारना
ask-for-the-room-to-be-kept-free-a04e4c2d = कमरा ख़ाली रखने को कहना
pour-a-bucket-of-cold-water-in-882fda9f = एक बाल्टी ठंडा पानी अंदर डालना
work-on-the-wiring-of-the-house-182e1892 = घर की वायरिंग पर काम करना
take-a-picture-for-the-report-ea79e93b = रिपोर्ट के लिए तस्वीर लेना
have-the-report-signed-17c365ba = रिपोर्ट पर दस्तख़त कराना
ask-for-a-hint-ba5cd873 = संकेत माँगना
leave-until-the-second-visit-0a83842d = दूसरे दौरे तक छोड़ना, लेबल लगाकर
leave-until-the-second-visit-63e832d7 = दूसरे दौरे तक छोड़ना, बिना लेबल
state-the-fault-found-acaf8701 = मिली ख़राबी बताना
advise-the-customer-5ef995c2 = ग्राहक को सलाह देना
make-safe-and-leave-07b2532e = सुरक्षित करके चले जाना
hand-over-5e9dcb2a = सौंपना
take-off-66f6f69f = उतारना
refit-7c3aa3df = दोबारा लगाना
name-verb-with-check-98c81015 = { $name }: { $verb }, जाँच के साथ
connector-pull-apart-febb71e7 = { $connector }: खींचकर अलग करना
connector-push-home-a210c7a9 = { $connector }: पूरा बैठाना
work-with-check-57b9f392 = { $work }, जाँच के साथ
place-seen-53b9e2df = { $place }: { $seen }
question-answer-0a3a005e = { $question } “{ $answer }”
what-value-b26654ca = { $what }: { $value }
ac-volts-4bb2d9d5 = AC वोल्ट
ac-volts-low-impedance-56a01cf1 = AC वोल्ट, लो-इम्पीडेंस
dc-volts-b9e859e4 = DC वोल्ट
continuity-ba1cb7df = कंटिन्यूटी
capacitance-74e2cf9d = कैपेसिटेंस
frequency-2fb31c01 = फ़्रीक्वेंसी
diode-test-64064db4 = डायोड टेस्ट
ac-amperes-through-the-leads-91e4d509 = लीड से AC एम्पियर
clamp-a82efcbc = क्लैंप
leakage-clamp-9a5b5f12 = लीकेज क्लैंप
leakage-clamp-round-line-and-353578fc = लीकेज क्लैंप फेज़ और न्यूट्रल दोनों के चारों ओर
# in the jaws of a clamp
nothing-da8f1d1a = कुछ नहीं
mode-round-conductor-3a8b5589 = { $mode }, जबड़ों में: { $conductor }
# of a test lead
free-9bb16e65 = खुली लीड
mode-red-to-black-f9cdb3d3 = { $mode }, { $red } से { $black } तक
press-the-on-off-switch-6ebf4d46 = ऑन/ऑफ़ स्विच दबाना
press-the-service-key-1d86d553 = सर्विस बटन दबाना
pull-or-push-the-timer-knob-472bea71 = टाइमर की नॉब खींचना या दबाना
turn-the-water-level-knob-d508e444 = पानी के लेवल की नॉब घुमाना
# verb
look-652ada57 = देखना
# verb
listen-eb7fc527 = सुनना
# verb
feel-e7445382 = छूकर महसूस करना
# verb
smell-c6678c89 = सूँघना
turn-the-pulsator-11d4f9cd = पल्सेटर घुमाना
turn-the-basket-e646cc49 = बास्केट घुमाना
turn-the-motor-pulley-6db29bb9 = मोटर की पुली घुमाना
press-the-belt-cffa9f78 = बेल्ट दबाना
pull-the-drain-wire-ef59da34 = ड्रेन की केबल खींचना
move-the-clutch-lever-10d3b7ac = क्लच लीवर चलाना
push-the-tub-d94a5f61 = टब धकेलना
push-the-out-of-balance-lever-b44a4bb9 = अनबैलेंस लीवर दबाना
discharge-the-plug-pins-with-the-3b9ac6e2 = प्लग की पिनों का चार्ज ब्लीड रेज़िस्टर से उतारना
discharge-the-plug-pins-with-the-5e780485 = प्लग की पिनों का चार्ज पेचकस से उतारना
discharge-the-run-capacitor-with-de79101f = रन कैपेसिटर का चार्ज ब्लीड रेज़िस्टर से उतारना
discharge-the-run-capacitor-with-6350c4fa = रन कैपेसिटर का चार्ज पेचकस से उतारना

### score/behaviour.rs

what-value-a-sound-one-sound-358ac331 = { $what }: { $value }, सही मशीन में { $sound }
ends-after-minutes-min-with-dce57c94 = { $minutes } min बाद “{ $alarm }” के साथ ख़त्म होता है
does-not-come-to-an-end-within-359ba110 = दो घंटे के भीतर ख़त्म नहीं होता
ends-after-minutes-min-a-sound-ca00302b = { $minutes } min बाद ख़त्म होता है, सही मशीन में { $sound } min बाद
it-does-nothing-at-all-as-if-it-89fc0671 = बिल्कुल कुछ नहीं करती, जैसे प्लग ही न लगा हो।
i-press-start-and-no-water-comes-a7a82a4f = स्टार्ट दबाने पर पानी आता ही नहीं।
the-water-runs-and-runs-and-it-14aa4b68 = पानी आता रहता है, आता रहता है, और धोना कभी शुरू ही नहीं करती।
it-takes-water-and-then-it-does-a5d5e06f = पानी ले लेती है, फिर धोती नहीं।
it-takes-ages-to-fill-ae608234 = भरने में ज़माना लगा देती है।
there-is-far-too-much-water-in-9d0d35b8 = इसमें बहुत ही ज़्यादा पानी भर जाता है।
it-washes-with-too-little-water-1c1e6d70 = बहुत कम पानी में धोती है।
it-washes-feebly-not-as-it-used-048cac54 = धीमे-धीमे, बेजान-सा धोती है, पहले जैसा नहीं।
the-basket-goes-round-with-the-0c6b1881 = धोते समय बास्केट कपड़ों के साथ घूमती है और कपड़े फट जाते हैं।
it-takes-long-to-empty-d2d7d5e8 = ख़ाली होने में बहुत देर लगाती है।
the-water-stays-in-it-72b78f95 = पानी इसी में रह जाता है।
it-washes-and-empties-but-it-31775b27 = धोती है और ख़ाली भी होती है, पर स्पिन नहीं करती।
it-spins-more-slowly-than-it-did-4d506b65 = पहले से धीमे स्पिन करती है।
when-it-should-spin-it-stops-b96e8393 = जब स्पिन करना हो तब रुक जाती है, फिर पानी लेती है और बार-बार कोशिश करती है।
it-bangs-and-walks-when-it-spins-735ae646 = स्पिन करते समय धम-धम करती है और खिसकती जाती है।
the-washing-comes-out-dripping-ae3905ef = कपड़े टपकते हुए निकलते हैं।
there-is-water-on-the-floor-b90d1cd2 = फ़र्श पर पानी है।
it-gets-hot-stops-and-goes-on-ffd531c7 = गरम हो जाती है, रुक जाती है, और थोड़ी देर बाद फिर चल पड़ती है।
it-goes-on-turning-long-after-i-c034d89d = ढक्कन खोलने के बाद भी देर तक घूमती रहती है।
it-tingles-when-i-touch-it-with-77e9ec77 = नंगे पैर छूने पर झनझनाहट होती है।
it-washes-but-it-makes-a-noise-b6167ccf = धोती तो है, पर ऐसी आवाज़ करती है जो पहले नहीं करती थी।
in-the-end-it-beeps-and-shows-0953e213 = आख़िर में बीप करती है और “{ $alarm }” दिखाती है।

### score/debrief.rs

line-n-is-a-sound-machine-sound-d2c93d98 = पंक्ति { $n }: { $is }; सही मशीन: { $sound }

### score/decisions.rs

step-step-cost-avoidable-ae10bcdb = क़दम { $step }: { $cost } टाले जा सकते थे
damage-cost-6d16aa85 = नुक़सान: { $cost }
callback-cost-892eed9f = दोबारा बुलावा: { $cost }
no-decision-cost-more-than-it-503193a0 = किसी फ़ैसले की लागत ज़रूरत से ज़्यादा नहीं थी
step-step-what-the-evidence-gave-d60e663c = क़दम { $step }, { $what }: सबूतों के हिसाब से इससे ठीक होने की संभावना { $sure } % थी, { $standing }
justified-3184949e = उचित
defensible-5226aeb4 = मानने लायक
not-justified-f1c86eaf = उचित नहीं

### score/diagnosis.rs

the-place-was-not-safe-nothing-6dbbe0c3 = जगह सुरक्षित नहीं थी: कुछ ढूँढा नहीं गया
stated-causes-651b7d8c = बताया गया: { $causes }
no-fault-66a79a52 = कोई ख़राबी नहीं

### score/economy.rs

parts-fitted-n-790bc343 = लगाए गए पार्ट: { $n }
n-hint-percent-of-what-the-job-b334422d = { $n } संकेत: जॉब की जितनी लागत होनी चाहिए उसका { $percent } %
n-hints-percent-of-what-the-job-5ea40f96 = { $n } संकेत: जॉब की जितनी लागत होनी चाहिए उसका { $percent } %
cost-cost-with-the-visit-to-come-e31f7c0e = लागत { $cost }, आने वाले दौरे समेत; लक्ष्य { $target }
cost-cost-target-target-bd5c1c2d = लागत { $cost }, लक्ष्य { $target }

### score/evidence.rs

work-nothing-in-the-notebook-8e7ea7ec = { $work }: नोटबुक में इसके पक्ष में कुछ नहीं था
work-the-part-was-sound-f5849d02 = { $work }: पार्ट सही था
each-part-fitted-had-a-reading-8e865b34 = लगाए गए हर पार्ट के पीछे एक रीडिंग थी

### score/fairness/alike.rs

what-shows-first-03b10862 = “{ $what }” यहाँ दिखता है: { $first }
what-shows-first-and-n-more-832e56c8 = “{ $what }” यहाँ दिखता है: { $first }, और { $n } और जगह।
what-shows-in-nothing-that-can-2e921020 = “{ $what }” ऐसी किसी चीज़ में नहीं दिखता जो इस बेंच पर पढ़ी, देखी या सुनी जा सके: सिर्फ़ ग्राहक के शब्द उसकी ओर इशारा करते हैं, इसलिए शिकायत या किसी जवाब में उसका नाम आने दें।
what-shows-when-you-how-900069f1 = “{ $what }” ऐसा करने पर दिखता है: { $how }।
no-instrument-in-the-bag-shows-45c75d37 = बैग का कोई यंत्र “{ $what }” नहीं दिखाता: यह रखें: { $instrument }।
nothing-shows-what-neither-a-7450dbae = “{ $what }” किसी से नहीं दिखता, न रीडिंग से, न देखने से, न चलाने से, न हाथ से घुमाने से: उसकी गंभीरता बढ़ाएँ।
reads-like-what-until-reading-471e4807 = “{ $what }” जैसा ही पढ़ता है, जब तक { $reading } ({ $how }) न पढ़ा जाए।
reads-like-what-until-you-how-c5186915 = “{ $what }” जैसा ही पढ़ता है, जब तक यह न किया जाए: { $how }।
nothing-tells-it-from-what-and-17337e69 = इसे “{ $what }” से कुछ अलग नहीं करता, और ज़रूरत भी नहीं: दोनों को एक ही काम ठीक करता है।
reads-the-same-as-what-with-the-03e8abe7 = जिन यंत्रों की अनुमति है उनसे “{ $what }” जैसा ही पढ़ता है: बैग में यह रखें: { $instrument }।
nothing-tells-it-from-what-b128b51c = इसे “{ $what }” से कुछ अलग नहीं करता, न रीडिंग, न देखना, न चलाना, न हाथ से घुमाना: जॉब में कुछ और उसकी ओर इशारा करे, या दूसरी ख़राबी चुनें।

### score/fairness/bars.rs

one-and-other-change-the-same-08e35675 = “{ $one }” और “{ $other }” एक ही चीज़ बदलते हैं: इनमें से एक रखें।
the-part-is-not-in-the-van-if-it-a4fc7c96 = वैन में { $part } नहीं है: अगर इसे बदलना ही पड़े, तो वह { $price } का दूसरा दौरा है।
the-target-is-not-known-yet-take-39ef223a = लक्ष्य अभी मालूम नहीं: विशेषज्ञ को जितना चाहिए वह ले लें, या जॉब ख़ुद करें और जितना लगा वह लिखें।
the-budget-of-bar-is-below-the-4bd46656 = { $bar } का बजट उन { $needs } से कम है जो कुशल तकनीशियन को चाहिए: इसे { $room } या ज़्यादा करें।
the-time-allowed-bar-minutes-is-05a32134 = { $bar } मिनट का मिला हुआ समय उन { $needs } से कम है जो कुशल तकनीशियन को चाहिए: इसे { $room } या ज़्यादा करें।
target-cost-in-minutes-minutes-615d11cc = लक्ष्य: { $cost }, { $minutes } मिनट में।
the-expert-gets-it-right-but-in-050918d1 = विशेषज्ञ इसे ठीक कर लेता है, पर { $minutes } मिनट और { $price } में: यह काम की सीमा से अधिक है।
the-expert-leaves-with-the-b2334c37 = विशेषज्ञ मशीन चलती छोड़कर जाता है और “{ $fault }” का नाम नहीं लेता: कोई संकेत दें या इसे हटा दें।
the-expert-who-knows-no-more-at-478a8e5b = विशेषज्ञ, जो दरवाज़े पर अप्रेंटिस से ज़्यादा नहीं जानता, { $minutes } मिनट में { $price } पर इसे ठीक कर लेता है: जिसकी अनुमति है उससे यह हल हो सकता है।
one-and-next-474c2c83 = { $one } और { $next }
the-expert-does-not-get-it-right-41a18fae = विशेषज्ञ इसे ठीक नहीं कर पाता: अंत में उसने “{ $causes }” को कारण माना। जॉब हो सकता है, यह बात सहेजे हुए लक्ष्य पर टिकी है, जो किसी व्यक्ति के काम से आया है; मानकर चलें कि यह कठिन होगा।
the-expert-does-not-get-it-right-da1231fa = विशेषज्ञ इसे ठीक नहीं कर पाता: अंत में उसके पास कोई कारण नहीं था। जॉब हो सकता है, यह बात सहेजे हुए लक्ष्य पर टिकी है, जो किसी व्यक्ति के काम से आया है; मानकर चलें कि यह कठिन होगा।
the-expert-does-not-get-it-right-21a589b6 = जिसकी अनुमति है उससे विशेषज्ञ इसे ठीक नहीं कर पाता: अंत में उसने “{ $causes }” को कारण माना। और चीज़ें कारण की ओर इशारा करें, और यंत्रों की अनुमति दें, या ख़ुद करें और जितना लगा वह लिखें।
the-expert-does-not-get-it-right-1fb5cb9a = जिसकी अनुमति है उससे विशेषज्ञ इसे ठीक नहीं कर पाता: अंत में उसके पास कोई कारण नहीं था। और चीज़ें कारण की ओर इशारा करें, और यंत्रों की अनुमति दें, या ख़ुद करें और जितना लगा वह लिखें।

### score/fairness/customer.rs

the-customer-would-notice-e6f2acc4 = ग्राहक को यह नज़र आएगा: { $suggested }
while-it-is-there-the-customer-f981e6b5 = जब तक वह मौजूद है, ग्राहक को यह नज़र आएगा: { $symptoms }।
the-machine-is-sound-the-right-71a5b6e7 = मशीन सही है: सही जवाब यही है कि ऐसा कहा जाए और ग्राहक को दिखाया जाए।
the-cause-lies-outside-the-7729ff6e = कारण मशीन के बाहर है और किसी प्रोग्राम में नहीं दिखता: शिकायत उससे बननी चाहिए जो ग्राहक को मालूम है।
over-a-whole-program-the-57344ad3 = पूरे प्रोग्राम में ग्राहक को कुछ नज़र नहीं आएगा: गंभीरता बढ़ाएँ, ख़राबी को ज़्यादा बार आने दें, या शिकायत में बताएँ कि यह कब होता है।
the-complaint-names-nothing-that-329139c1 = शिकायत में ऐसा कुछ नहीं जिसे मशीन से मिलाया जा सके: वह बैठती है या नहीं, यह आप तय करें।
the-complaint-fits-what-the-0f8eb612 = शिकायत मशीन के व्यवहार से मेल खाती है: { $fits }।
the-complaint-fits-what-the-d9ea501c = शिकायत मशीन के व्यवहार से मेल खाती है: { $fits }। उसमें वह भी है जो मशीन प्रोग्राम में नहीं करती: { $other }।
the-machine-does-not-do-what-the-47cb94f0 = शिकायत जिसकी बात करती है, मशीन वह नहीं करती ({ $other }): यह पता लगाना इस जॉब का हिस्सा है।
the-complaint-speaks-of-what-the-893fef0e = शिकायत उसकी बात करती है जो मशीन प्रोग्राम में नहीं करती ({ $other }), और उसकी कोई बात नहीं करती जो वह करती है ({ $shown }): वह शिकायत लें जो मशीन का व्यवहार सुझाता है, या ग्राहक को ग़लतफ़हमी में रहने दें।
it-is-dead-3ade2316 = बिल्कुल बंद है
the-house-s-device-trips-0c2708c8 = घर का ब्रेकर ट्रिप होता है
it-tingles-to-the-touch-e32ba3f1 = छूने पर झनझनाहट होती है
it-runs-without-being-started-0c85b5b0 = बिना चालू किए चलती है
no-water-comes-96c85f3c = पानी नहीं आता
it-fills-slowly-666bab6c = धीरे भरती है
too-much-water-d843175d = पानी बहुत ज़्यादा
too-little-water-f6f41d70 = पानी बहुत कम
it-does-not-wash-ea88b86f = धोती नहीं
it-turns-one-way-only-d4a2d50f = सिर्फ़ एक तरफ़ घूमती है
it-washes-weakly-6d39dad2 = कमज़ोर धोती है
the-basket-goes-round-in-the-ab50c927 = धुलाई में बास्केट साथ घूमती है
the-water-stays-in-f78d216c = पानी इसी में रह जाता है
it-empties-slowly-8b3a682d = धीरे ख़ाली होती है
water-leaves-in-the-wash-9e95f417 = धुलाई में पानी निकल जाता है
it-does-not-spin-c53bc288 = स्पिन नहीं करती
it-spins-weakly-or-leaves-the-af2cba3d = कमज़ोर स्पिन करती है या कपड़े गीले छोड़ती है
it-breaks-the-spin-off-and-fills-60fffe33 = स्पिन बीच में रोककर फिर पानी भरती है
it-shakes-34c3bfbf = हिलती है
it-runs-on-after-the-lid-is-d3e2a412 = ढक्कन खोलने के बाद भी चलती रहती है
a-new-noise-52d37240 = नई आवाज़
it-hums-and-nothing-moves-1053f8b9 = भनभनाती है और कुछ नहीं घूमता
a-smell-of-heat-3ee6fc4a = गरमी की गंध
it-stops-with-an-alarm-0ad17293 = अलार्म के साथ रुकती है
it-stops-and-goes-on-later-cff4ad89 = रुकती है और बाद में चल पड़ती है
the-program-takes-much-longer-740c5372 = प्रोग्राम में बहुत ज़्यादा समय लगता है

### score/functional.rs

time-to-fill-783bbba6 = भरने का समय
water-level-4f73ca56 = पानी का लेवल
pulsator-one-way-aed3e01c = पल्सेटर एक तरफ़
pulsator-the-other-way-ee5b9ea9 = पल्सेटर दूसरी तरफ़
basket-creep-in-the-wash-010d7db5 = धुलाई में बास्केट का सरकना
time-to-drain-ff19a7d7 = ड्रेन का समय
spin-speed-a945b026 = स्पिन की रफ़्तार
spins-broken-off-to-spread-the-e5521b2b = कपड़े फैलाने के लिए बीच में रोकी गई स्पिन
swing-of-the-tub-3ec74bee = टब का झूलना
moisture-left-54c21758 = बची नमी
cabinet-to-earth-d5506a6c = कैबिनेट से अर्थ
stop-after-the-lid-is-opened-3e6ab5ec = ढक्कन खुलने के बाद रुकना
loudest-fault-sound-over-normal-54d52709 = ख़राबी की सबसे तेज़ आवाज़, सामान्य से कितनी ऊपर

### score/hindsight.rs

line-n-words-ffbbb770 = पंक्ति { $n }, { $words }
part-the-part-was-sound-and-8316f90b = { $part }: पार्ट सही था, और नोटबुक में अभी तक उसके ख़िलाफ़ कुछ नहीं था
part-the-part-was-sound-already-d9481805 = { $part }: पार्ट सही था; पहले से मालूम: { $lines }
a-look-at-the-place-would-have-44e32422 = उस जगह एक नज़र में { $minutes } मिनट लगते; पार्ट की लागत { $price } थी: { $part }
right-by-accident-as-something-8155212f = संयोग से ठीक, जब कुछ और वापस लगाया गया: { $what }

### score/matrix.rs

sound-0e0d9594 = सही

### score/matrix_columns.rs

meter-state-pulled-apart-eaa55293 = { $meter }, { $state }, अलग किया हुआ
whole-program-f3e082b8 = पूरा प्रोग्राम
washing-one-way-7ef8c2d1 = धुलाई, एक दिशा
washing-the-other-way-4c60ee78 = धुलाई, दूसरी दिशा
# of a machine
off-8778eb8d = मशीन बंद
standby-e0f4bf1e = स्टैंडबाय
unplugged-switch-on-67a1997f = प्लग बाहर, स्विच चालू
ac-volts-4c78ea95 = AC वोल्ट
low-ac-volts-8d615643 = लो AC वोल्ट
dc-volts-25e77aa4 = DC वोल्ट
amps-4f5814de = एम्पियर

### score/procedure.rs

protective-conductor-measured-52fbafa9 = अर्थ कंडक्टर नापना
insulation-measured-dfddc2e9 = इंसुलेशन नापना
leakage-measured-7fd14127 = लीकेज नापना
a-run-of-wash-drain-and-spin-ccc3003c = धुलाई, ड्रेन और स्पिन चलाकर देखना
price-agreed-before-the-repair-16429bff = मरम्मत से पहले दाम तय करना
what-done-d6ca0721 = { $what }: किया
what-left-out-5bf79664 = { $what }: छूट गया
everything-back-and-checked-b3ff54af = सब कुछ वापस लगाना और जाँचना
a-look-for-leaks-3bb47dd4 = लीक के लिए देखना
customer-told-deebaafe = ग्राहक को बताना

### score/safety.rs

step-step-title-8c30d3f3 = क़दम { $step }: { $title }
went-away-when-it-was-not-safe-6976957f = सुरक्षित न होने पर वहाँ से हटना
nothing-was-tested-or-repaired-46f5e84b = कुछ जाँचा या ठीक नहीं किया गया
no-safety-rule-was-broken-8e3a5940 = कोई सुरक्षा नियम नहीं टूटा
a-rule-whose-breach-can-kill-at-1f792c26 = ऐसा नियम टूटा जिसके टूटने से जान जा सकती है: पूरे जॉब के लिए 100 में से ज़्यादा से ज़्यादा { $most }

### score/visit.rs

asked-on-the-phone-before-062f2939 = निकलने से पहले फ़ोन पर पूछना
put-right-on-the-first-visit-736d9483 = पहले ही दौरे में ठीक करना
decided-rightly-who-pays-44690535 = सही तय करना कि पैसे कौन देगा
the-price-was-agreed-for-what-it-abfc4900 = दाम उसी काम का तय होना जो असल में निकला
fee-taken-after-the-estimate-was-e59d5cae = अनुमानित ख़र्च के लिए मना होने पर शुल्क लेना
old-part-shown-94441f2a = पुराना पार्ट दिखाना
taught-what-keeps-it-away-31e57d5b = सिखाना कि ख़राबी दोबारा कैसे न आए
told-and-wrote-down-what-is-ea59a8ea = बताना और लिखना कि घर में क्या ख़राब है
report-with-a-picture-signed-b28ded00 = तस्वीर के साथ रिपोर्ट, दस्तख़त समेत

### app/asking.rs

this-browser-has-no-threads-295d94cd = इस ब्राउज़र में थ्रेड नहीं हैं।

### app/assessments/course.rs

cancelled-nothing-is-saved-6905c264 = रद्द किया गया: कुछ सहेजा नहीं गया।
course-package-for-a-training-fbd07c07 = प्रशिक्षण सिस्टम के लिए कोर्स पैकेज
the-workshop-and-this-assessment-fea97212 = वर्कशॉप और यह मूल्यांकन एक ही zip फ़ाइल में, ठीक उसी बिल्ड से यहीं बनी जो आप देख रहे हैं। प्रशिक्षण सिस्टम इसे कोर्स के रूप में लेता है, और उसके सीखने वाले वहीं मूल्यांकन देते हैं।
which-kind-the-system-takes-01c04a98 = सिस्टम कौन-सी क़िस्म लेता है
address-that-the-course-s-names-93e82dc5 = पता जिससे कोर्स के नाम शुरू होते हैं
it-need-not-answer-take-one-that-3db8f8e1 = उसका जवाब देना ज़रूरी नहीं। ऐसा पता लें जो आपका हो और उसे बदलें नहीं: सिस्टम उसी से कोर्स अलग-अलग पहचानता है।
packing-6714ec88 = पैक हो रहा है
cancel-35afca3b = रद्द करें
make-the-package-506cd1d4 = पैकेज बनाएँ
packing-the-files-of-this-build-be43086f = इस बिल्ड की फ़ाइलें पैक हो रही हैं …
no-package-error-e5823216 = पैकेज नहीं बना: { $error }।
the-browser-did-not-let-the-page-8a26f41d = ब्राउज़र ने पेज को फ़ाइल सहेजने नहीं दी।
file-is-saved-n-files-size-mb-c91deda4 = { $file } सहेज ली गई: { $n } फ़ाइलें, { $size } MB। इसे उसे दें जो प्रशिक्षण सिस्टम सँभालता है।

### app/assessments/given.rs

candidate-stands-twice-each-ca45b0ca = “{ $candidate }” दो बार है: हर परीक्षार्थी की एक ही पर्ची होती है।
line-a-line-is-a-number-or-a-0bea8548 = “{ $line }”: पंक्ति में एक नंबर हो, या नंबर, कॉमा और अतिरिक्त मिनट, { $step } के क़दमों में, ज़्यादा से ज़्यादा { $most } मिनट।
mrs-alder-fbbdef4b = श्रीमती Alder
flat-on-the-third-floor-d3588053 = तीसरी मंज़िल का फ़्लैट
mr-birch-f010ed28 = श्री Birch
house-at-the-end-of-the-lane-97e1d086 = गली के आख़िर में घर
mrs-cedar-0c00c12c = श्रीमती Cedar
ground-floor-kitchen-to-the-yard-d6aea71e = ग्राउंड फ़्लोर, आँगन की तरफ़ रसोई
mr-dogwood-288d632d = श्री Dogwood
two-rooms-above-the-bakery-2a36cb7d = बेकरी के ऊपर दो कमरे

### app/assessments/packing.rs

this-page-does-not-say-which-75f6a780 = यह पेज नहीं बताता कि वह किन फ़ाइलों से बना है: उसे “make dist” से तैयार करें, या पैकेज कमांड लाइन पर बनाएँ।
list-is-no-list-of-files-1ee40907 = “{ $list }” फ़ाइलों की सूची नहीं है।
there-is-too-much-in-this-build-00190c6f = इस बिल्ड में बहुत ज़्यादा है: { $error }।
the-server-has-another-build-of-fa004f13 = सर्वर पर अब इस पेज का दूसरा बिल्ड है।
load-this-page-anew-where-there-d6dccb6f = जहाँ नेटवर्क हो वहाँ यह पेज नए सिरे से लोड करें, फिर कोशिश करें।
file-cannot-be-had-why-566a0d95 = “{ $file }” नहीं मिल सकती: { $why }।

### app/assessments/room_codes.rs

the-codes-are-saved-keep-them-fa906d32 = कोड सहेज लिए गए। उन्हें परीक्षार्थियों से दूर रखें।
pauses-of-the-whole-room-70c49c42 = पूरे कमरे के विराम
the-clock-can-be-stopped-for-the-f52246a8 = पढ़कर सुनाए गए कोड से पूरे कमरे की घड़ी रोकी जा सकती है
each-candidate-types-the-code-66299a7a = हर परीक्षार्थी कोड टाइप करता है। रोकने के लिए पहला पढ़कर सुनाएँ, आगे बढ़ने के लिए दूसरा, और इसी तरह आगे; जो इस्तेमाल हुआ उसे काट दें, चाहे किसी भी समूह के साथ: कोड एक ही बार चलता है। हर विराम अपने समय के साथ परिणाम में रहता है।
show-the-codes-not-on-a-screen-f8daa6c0 = कोड दिखाएँ: ऐसी स्क्रीन पर नहीं जिसे परीक्षार्थी देखें
pause-codes-a-table-60e7100e = विराम के कोड, तालिका
pause-44f9bf2d = विराम
to-stop-8cec5da4 = रोकने के लिए
to-go-on-9ae941a7 = आगे बढ़ने के लिए
save-the-codes-as-a-text-d52471a3 = कोड टेक्स्ट के रूप में सहेजें
pause-codes-title-9818671b = विराम के कोड: { $title }

### app/assessments/rules.rs

time-and-aids-92bdde14 = समय और साधन
allowed-586f52e3 = अनुमति
the-data-sheet-beside-a-reading-58d50094 = रीडिंग के पास डेटा शीट
the-wiring-diagram-65a4e9df = वायरिंग डायग्राम
the-handbook-904a74c8 = हैंडबुक
stopping-the-clock-between-jobs-61974bb4 = जॉब के बीच घड़ी रोकना
each-candidate-gets-other-values-6e47dbff = हर परीक्षार्थी को दूसरे मान, लोड और ग्राहक मिलते हैं
what-passes-f79a6354 = किससे पास
a-critical-safety-rule-broken-in-255698af = किसी भी जॉब में जानलेवा दर्जे का सुरक्षा नियम टूटा तो: अभी नहीं
after-a7dd3a69 = बाद में
cut-58e25863 = पास की सीमा
a-fixed-number-of-marks-121ea35e = अंकों की तय संख्या
from-judges-after-angoff-7cefbe10 = जजों से, Angoff के तरीक़े से
for-each-job-with-commas-between-c5f1ad6b = हर जॉब के लिए, बीच में कॉमा: वे अंक जो उस तकनीशियन को मिलेंगे जो बस सक्षम ठहरता है। पाँच या ज़्यादा जज, दो दौर, बीच में बातचीत।
no-judge-has-given-marks-yet-1050e4be = अब तक किसी जज ने अंक नहीं दिए।
cut-marks-marks-of-one-judge-how-508054a2 = पास की सीमा { $marks } अंक, एक जज की: यह कितनी पक्की है, दो जज होने पर ही बताया जा सकता है।
cut-marks-marks-the-judges-agree-23f43550 = पास की सीमा { $marks } अंक; जज एकमत हैं, और इतने कम एक जैसे अंक फैलाव के बारे में कुछ नहीं बताते।
cut-marks-marks-among-the-judges-5a357079 = पास की सीमा { $marks } अंक; जजों के बीच यह लगभग ±{ $spread } तक पक्की है।

### app/assessments/screen.rs

this-browser-gives-no-random-d1182b8e = यह ब्राउज़र रैंडम संख्याएँ नहीं देता, इसलिए कुंजी नहीं बना सकता: दूसरा ब्राउज़र इस्तेमाल करें।
file-is-an-assessment-too-one-is-9b047416 = { $file } भी एक मूल्यांकन है: एक बार में एक पर ही काम होता है।
what-was-given-out-stays-on-the-792ef0d9 = जो बाँटा गया था वह सूची में जैसा था वैसा ही रहता है। यह नया है: इसकी अपनी फ़ाइल, लिंक और पर्चियाँ बाँटें।
make-an-assessment-daec6f30 = मूल्यांकन बनाएँ
all-assessments-25f835af = सब मूल्यांकन
say-which-skills-at-which-level-9841b34b = बताएँ कि कौन-से कौशल किस स्तर पर, कितने जॉब, और किससे पास। तब हर परीक्षार्थी को अपने जॉब मिलते हैं, बराबर कठिन, और ऐसा परिणाम जो जाँचा जा सके।
make-a-new-one-480e8586 = नया बनाएँ
review-results-7563f90b = परिणामों का रिव्यू
observer-s-sheet-58c73c5a = निरीक्षण-पत्र
files-of-assessments-to-work-on-406bbd79 = काम करने के लिए मूल्यांकन की फ़ाइलें
made-here-b6c0ccf6 = यहाँ बनाए गए
none-yet-786bc275 = अभी कोई नहीं।
n-candidates-8816d347 = { $n } परीक्षार्थी
given-out-9bbc2516 = बाँटा गया
forget-title-3eb6f653 = “{ $title }” को भुला दें
forget-6e3fab8c = भुला दें
this-has-been-given-out-and-its-4818810e = यह मूल्यांकन बाँटा जा चुका है, और इसके परिणाम इसी रूप पर टिके हैं। यहाँ कुछ बदलने से नया मूल्यांकन बनता है, अपनी पर्चियों के साथ; यह वाला सूची में रहता है और इसके परिणाम गिने जाते रहते हैं।
how-sure-its-decisions-are-c7d8a265 = इसके फ़ैसले कितने पक्के हैं
still-to-do-2fbfc23f = अभी करना बाक़ी
n-jobs-reliability-at-least-541001e0 = { $n } जॉब: 1 में से कम से कम { $least } विश्वसनीयता। एक व्यक्ति के बारे में फ़ैसले के लिए काफ़ी।
n-jobs-reliability-at-least-d3f6db2a = { $n } जॉब: 1 में से कम से कम { $least } विश्वसनीयता। अकेले एक व्यक्ति के बारे में फ़ैसले के लिए 0.8 माँगा जाता है: जॉब बढ़ाएँ, या कई बैठकें और प्रैक्टिकल मिलाकर देखें।

### app/assessments/slips.rs

the-file-for-all-candidates-is-a202bc33 = सब परीक्षार्थियों के लिए फ़ाइल सहेज ली गई।
the-key-is-saved-keep-it-where-eaf8ba1b = कुंजी सहेज ली गई। उसे ऐसी जगह रखें जिसे सिर्फ़ आप खोल सकें: जिसके पास वह है, वह परिणाम सील कर सकता है।
give-it-out-97f482bd = बाँटें
save-the-file-3310d52f = फ़ाइल सहेजें
save-the-key-6c2f08c0 = कुंजी सहेजें
link-n-characters-7ba21125 = लिंक, { $n } अक्षर
the-link-as-a-code-for-a-9c367c25 = लिंक, कक्षा की स्क्रीन के लिए कोड के रूप में
the-link-as-a-qr-code-f9cdcb6b = लिंक, QR कोड के रूप में
candidates-6e9467ab = परीक्षार्थी
one-number-a-line-after-a-comma-3f63682d = हर पंक्ति में एक नंबर। जिसे अतिरिक्त मिनट मिलने हों, उसके नंबर के बाद कॉमा और मिनट: वे पर्ची पर नहीं दिखते; परीक्षार्थी की स्क्रीन की घड़ी में वे जुड़े होते हैं।
slips-a-table-978d20c7 = पर्चियाँ, तालिका
title-cut-along-the-lines-one-e6f5a6d5 = { $title }: लाइनों पर काटें, हर एक को एक पर्ची
your-number-89a480eb = आपका नंबर
start-code-8f4e7f8c = स्टार्ट कोड
letters-beside-it-478bec05 = उसके पास के अक्षर
print-the-slips-7a90592c = पर्चियाँ प्रिंट करें
when-all-begin-tell-a-word-for-218ed81b = जब सब शुरू करें, तब आज का शब्द बताएँ, सबके लिए एक ही: दूसरे शब्द से दूसरे मान निकलते हैं, इसलिए कल वाला समूह कुछ नहीं बता सकता। शब्द लिख लें; हर परिणाम में वह रहता है।
open-the-link-or-the-file-that-f4de2830 = कमरे में दिया गया लिंक या फ़ाइल खोलें। ये सब आज के शब्द के साथ टाइप करें और शुरू करें। वर्कशॉप: { $page }

### app/assessments/slots.rs

jobs-4ae6a79d = जॉब
jobs-asked-for-a-table-e19236ad = माँगे गए जॉब, तालिका
level-4155597d = स्तर
skill-6fd141d6 = कौशल
machine-67a5be0e = मशीन
how-many-c31ec050 = कितने
there-are-5404447f = मौजूद
take-off-5e080abf = हटाएँ
one-more-kind-of-job-475586c4 = एक और तरह का जॉब
any-2c29f04d = कोई भी
level-of-row-n-2dee7dc2 = पंक्ति { $n } का स्तर
skill-of-row-n-107d9ea3 = पंक्ति { $n } का कौशल
machine-of-row-n-2634753b = पंक्ति { $n } की मशीन
how-many-of-row-n-e7e4d8a5 = पंक्ति { $n } में कितने
take-off-row-n-60fb1b1f = पंक्ति { $n } हटाएँ
# of a list
take-off-a785e709 = हटाएँ

### app/assessments/table.rs

the-assessment-d781e1ee = मूल्यांकन
title-24d471a9 = शीर्षक
as-candidates-see-it-its-name-in-f54cb1c6 = जैसा परीक्षार्थी देखते हैं। फ़ाइलों में इसका नाम इसी से बनता है।
time-for-all-jobs-f5c77140 = सब जॉब के लिए समय
minutes-adbcc5ee = मिनट
generous-it-is-to-be-a-limit-not-53dae4fc = खुलकर दें: यह सीमा हो, दौड़ नहीं। अतिरिक्त समय अलग-अलग परीक्षार्थियों को उनकी पर्ची पर दिया जाता है।
results-are-erased-after-89f8c11d = परिणाम इतने समय बाद मिटेंगे
months-18182bc2 = महीने
counted-from-the-day-they-began-464031f3 = शुरू करने के दिन से गिना जाता है। परीक्षार्थियों को बताया जाता है; रिव्यू बताता है कि किनका समय निकल चुका है। ख़ाली: कुछ नहीं कहा जाता।
marks-to-pass-3190e823 = पास होने के अंक
marks-d9763829 = अंक
of-100-100e3e37 = 100 में से।
border-0cad6f57 = सीमा का दायरा
to-either-side-of-the-cut-within-8323e239 = पास की सीमा के दोनों तरफ़। इसके भीतर और जॉब फ़ैसला करते हैं: न पास, न फ़ेल।
machines-put-right-eb165258 = ठीक की गई मशीनें
of-the-jobs-813c3f45 = जॉब में से।
safety-least-of-its-points-f2d898ba = सुरक्षा, उसके अंकों का कम से कम
marks-elsewhere-do-not-make-up-661d5232 = दूसरी जगह के अंक इसकी भरपाई नहीं करते।
least-of-the-points-b22499d7 = अंकों का कम से कम
one-judge-a-line-4c7a1cef = हर पंक्ति में एक जज
needs-a-letter-from-a-to-z-or-a-ec6745e6 = फ़ाइलों के नाम के लिए a से z तक का कोई अक्षर या 0-9 का कोई अंक चाहिए

### app/bench/aloud.rs

read-aloud-2a5da106 = पढ़कर सुनाएँ

### app/bench/drawer.rs

put-away-what-02c8620c = हटाकर रखें: { $what }
put-away-453860f0 = हटाकर रखें

### app/bench/estimate.rs

price-for-the-whole-job-b926379e = पूरे काम का दाम
or-with-a-part-of-another-make-e91891c8 = या दूसरे मेक के पार्ट के साथ
or-a-new-machine-5e1134d0 = या नई मशीन
estimate-2649bd57 = अनुमानित ख़र्च
for-what-is-held-to-be-wrong-aec7e19a = जो ख़राब माना जा रहा है उसके लिए
not-known-yet-43730b83 = अभी पता नहीं
so-far-cf95b99e = अब तक
add-the-part-and-the-time-still-652c603c = पार्ट का दाम और अभी बाक़ी समय जोड़ें। जिस विकल्प का दाम नहीं, वह नहीं बताया जाता।
a-price-is-a-number-above-zero-8503dd0e = दाम शून्य से बड़ी संख्या होता है (जैसे 95)। कम से कम एक दाम चाहिए।
name-the-price-dc72528c = दाम बताएँ

### app/bench/gauge_face.rs

label-value-af517aba = { $label }: { $value }

### app/bench/gauges.rs

water-speed-length-warmth-2bd00d7e = पानी, रफ़्तार, लंबाई, तापमान
mind-caution-bc1989ec = ध्यान रखें: { $caution }
instruments-that-need-no-circuit-cbd0aff2 = यंत्र जिन्हें सर्किट नहीं चाहिए
data-sheet-b68bc762 = डेटा शीट
record-place-ee20a911 = रिकॉर्ड करें: { $place }
record-593058cc = रिकॉर्ड करें

### app/bench/help.rs

hints-bca2dc31 = संकेत
thinking-about-what-your-notes-a64468f9 = आपके नोट्स क्या कहते हैं, इस पर सोचा जा रहा है; इसमें कुछ सेकंड लगते हैं।
no-hint-can-be-given-why-4eb02ceb = कोई संकेत नहीं दिया जा सकता। { $why }
you-have-shown-that-you-can-do-cc122c6a = आप दिखा चुके हैं कि आपको यह आता है: यहाँ अब संकेत नहीं हैं।
these-were-all-the-hints-for-325be3f4 = इस क़दम के सारे संकेत यही थे।
hint-gives-costs-percent-of-the-ea494b74 = संकेत: { $gives } (लक्ष्य का { $percent } % लगेगा)
one-more-gives-costs-percent-of-be7315b4 = एक और: { $gives } (लक्ष्य का { $percent } % लगेगा)

### app/bench/instrument.rs

instrument-in-hand-8e0e36f8 = हाथ में यंत्र
note-it-5052aaba = नोट करें
instrument-and-mode-9a27bed4 = यंत्र और मोड
other-tools-6a3c046e = दूसरे औज़ार
clamp-ammeter-8375ff6f = क्लैंप मीटर
insulation-tester-3b4b5cee = इंसुलेशन टेस्टर
earth-bond-tester-7f060bf7 = अर्थ बॉन्ड टेस्टर
leakage-clamp-01f4d8b2 = लीकेज क्लैंप
touch-current-tester-70242ec0 = टच करंट टेस्टर
multimeter-a8f8b613 = मल्टीमीटर
one-conductor-only-round-a-whole-30acd193 = सिर्फ़ एक कंडक्टर: पूरी कॉर्ड के चारों ओर यह कुछ नहीं पढ़ता
line-and-neutral-together-on-its-f4b128b8 = फ़ेज़ और न्यूट्रल एक साथ, इसकी अपनी लीड पर · सीमा 3.5 mA
metal-to-earth-through-2-k-4c1f4c64 = धातु से अर्थ तक 2 kΩ के ज़रिए, चलते हुए · सीमा 0.5 mA
t-500-v-dc-plug-out-its-switch-or-5ffe4cc5 = 500 V DC · प्लग बाहर, मशीन का स्विच या नॉब चालू · सीमा 1 MΩ
t-0-2-a-plug-out-earth-pin-to-3ec28f32 = 0.2 A · प्लग बाहर, अर्थ पिन से धातु तक · सीमा 0.3 Ω
v-low-73ed07af = V~ लो
tone-5c714e81 = बीप
diode-2ee60b90 = डायोड
clamp-a-c1e05a4f = क्लैंप A
insulation-b68ffc2f = इंसुलेशन
earth-bond-8e7e400c = अर्थ बॉन्ड
leakage-607b4f11 = लीकेज
touch-ma-279e16ba = टच mA

### app/bench/job_bar.rs

next-job-3d6d361b = अगला जॉब
debrief-6692941a = समीक्षा
finish-9f29eeb2 = पूरा करें
assessment-7f464e4f = मूल्यांकन
time-of-day-70a27853 = दिन का समय
on-site-time-019c7e7e = मौक़े पर { $time }
cost-so-far-48d8a29b = अब तक की लागत

### app/bench/job_card.rs

job-card-6f422c4a = जॉब कार्ड
asked-4e3af9c3 = पूछा गया
ask-the-customer-44068b63 = ग्राहक से पूछें
put-right-outside-the-machine-7cc266b9 = मशीन के बाहर ठीक करना
machine-and-place-da4d1a40 = मशीन और जगह
ask-again-in-other-words-9c1f8288 = दूसरे शब्दों में फिर पूछें: { $question }
ask-again-in-other-words-7634d5c6 = दूसरे शब्दों में फिर पूछें

### app/bench/keys.rs

picture-outside-db718606 = चित्र: बाहर से
picture-opened-678d48f6 = चित्र: खुली हुई
picture-section-d90da37e = चित्र: काट
picture-wiring-c31eebe9 = चित्र: वायरिंग
picture-water-e4995b5a = चित्र: पानी
to-the-picture-arrows-and-page-34e69c49 = चित्र पर; तीर और पेज वाली कुंजियाँ आगे-पीछे ले जाती हैं, Enter हाथ में लेता है
to-what-can-be-done-with-what-is-ebe98f1f = उस पर जो हाथ की चीज़ के साथ किया जा सकता है
to-the-job-card-4e493632 = जॉब कार्ड पर
to-the-notebook-5b816e18 = नोटबुक पर
to-the-instrument-s-modes-arrows-5966354c = यंत्र के मोड पर; तीर आगे-पीछे जाते हैं, Enter चुनता है
to-the-red-lead-type-a-point-s-7e968541 = लाल लीड पर; किसी पॉइंट का नाम टाइप करें
to-the-black-lead-55d69ff2 = काली लीड पर
write-the-reading-down-695589b1 = रीडिंग लिखें
stop-the-clock-df0f06e0 = घड़ी रोकें
let-the-clock-go-on-d00ee020 = घड़ी चलने दें
wait-until-something-changes-197ec1b5 = कुछ बदलने तक इंतज़ार करें
wait-a-minute-fbc721a5 = एक मिनट इंतज़ार करें
put-the-card-away-or-let-go-350c7631 = कार्ड हटाकर रखें, या छोड़ दें

### app/bench/moving.rs

instrument-87615d50 = यंत्र
leads-and-mode-8ddd0280 = लीड और मोड
heard-1b794a4b = सुनाई दिया:
display-46357c1d = डिस्प्ले:
sound-is-on-130aeb85 = आवाज़ चालू है
sound-is-off-0d4529a1 = आवाज़ बंद है

### app/bench/notebook.rs

notebook-9db5b440 = नोटबुक
nothing-noted-yet-what-you-look-4b8cc67b = अभी कुछ नोट नहीं हुआ। आप जो देखते, सुनते, पूछते या नोट करते हैं, वह यहाँ लिखा जाता है और सबूत माना जाता है; जो बस नज़र से गुज़र जाए, वह नहीं।
remark-3a635eb1 = टिप्पणी
write-down-83c15880 = लिखें
data-sheet-range-5a7b7f53 = डेटा शीट { $range }
evidence-text-value-06ee0d82 = सबूत: { $text } { $value }

### app/bench/notice.rs

making-safe-2585e0f5 = सुरक्षित करना
i-have-read-this-9be0b48a = मैंने यह पढ़ लिया
all-right-ea58a416 = ठीक है
leave-it-fb3e2fed = रहने दें

### app/bench/papers.rs

papers-8da5b89e = काग़ज़ात
the-wiring-diagram-is-the-441bdd2d = वायरिंग डायग्राम “वायरिंग” वाला चित्र है। अपने अलग टैब में:
faults-of-this-machine-c1caed1e = इस मशीन की ख़राबियाँ
its-parts-bd6bcf1f = इसके पार्ट
measuring-b238bd68 = नापना
making-safe-0aabd0d5 = सुरक्षित करना
print-job-card-and-pictures-ece512cd = जॉब कार्ड और चित्र प्रिंट करें
data-sheet-what-a-good-one-reads-4a1d500f = डेटा शीट: सही पार्ट कितना पढ़ता है
access-guide-what-is-off-before-ca5774c7 = खोलने का क्रम: किससे पहले क्या उतरता है

### app/bench/picture.rs

closer-3c01daa3 = पास
farther-1001bf65 = दूर
whole-e55b9774 = पूरा

### app/bench/point_picker.rs

touch-or-type-a-point-e92e3faa = पॉइंट छुएँ या टाइप करें
jaws-1e22169e = जबड़े
take-the-jaws-lead-off-476135a7 = जबड़ों वाली लीड हटाएँ
points-for-the-jaws-lead-cede13b1 = जबड़ों वाली लीड के पॉइंट
red-40f480dc = लाल
take-the-red-lead-off-442d2c79 = लाल लीड हटाएँ
points-for-the-red-lead-4fb2627d = लाल लीड के पॉइंट
black-568f4ba4 = काली
take-the-black-lead-off-4fbeb951 = काली लीड हटाएँ
points-for-the-black-lead-6850dee9 = काली लीड के पॉइंट

### app/bench/recorder.rs

recorder-n-of-4-pens-34713556 = रिकॉर्डर, 4 में से { $n } पेन
record-the-meter-2b030b72 = मीटर रिकॉर्ड करें
fresh-strip-7ccee1e9 = नई पट्टी
print-the-chart-5001857f = चार्ट प्रिंट करें
put-a-pen-on-the-meter-as-it-is-1481b5d1 = मीटर जैसा अभी सेट है उस पर पेन लगाएँ, या ऊपर की किसी रफ़्तार, प्रेशर या तापमान पर।
strip-chart-seconds-s-1f4fab67 = पट्टी चार्ट, { $seconds } s
pen-low-to-high-in-seconds-s-now-30079048 = { $pen }, { $seconds } s में { $low } से { $high } तक, अभी { $now }
lift-the-pen-pen-e72eb469 = पेन उठाएँ: { $pen }
lift-f6c75a7c = उठाएँ
highest-value-9bf00bd2 = सबसे ऊँचा { $value }
lowest-value-ccd67596 = सबसे नीचा { $value }
as-a-table-931aef9a = तालिका के रूप में
time-5d3c9be4 = समय

### app/bench/safe_strip.rs

safe-a297bdc5 = सुरक्षित?
not-done-bfbdbd26 = नहीं किया
done-26f38071 = किया
proved-f57ccffb = साबित

### app/bench/screen.rs

job-card-and-notebook-4c0b0860 = जॉब कार्ड और नोटबुक
card-0855387f = कार्ड
notebook-n-86f28c80 = नोटबुक { $n }
tests-n-70b01d82 = टेस्ट { $n }
# noun
visit-66211a50 = दौरा
begin-this-job-anew-2af39090 = यह जॉब नए सिरे से शुरू करें
what-was-done-so-far-is-laid-ca7585ae = अब तक जो किया गया वह अलग रख दिया जाता है: आप फिर से दरवाज़े पर आते हैं।
begin-anew-5cd20a8d = नए सिरे से शुरू करें
pictures-0d70feae = चित्र
the-machine-picture-30a04b7f = मशीन, { $picture }
you-are-still-at-the-workshop-3246716f = आप अभी वर्कशॉप में ही हैं।
telephone-and-van-1cfb6ecb = फ़ोन और वैन
nothing-is-open-yet-7aa03d52 = अभी कुछ खुला नहीं है।
tried-again-from-after-step-step-48f062fe = क़दम { $step } के बाद से फिर आज़माया गया: अभ्यास, जो गिना नहीं जाता।
back-to-the-job-as-you-finished-368f5a65 = वापस उस जॉब पर, जैसा आपने पूरा किया था
this-job-is-open-in-another-tab-07ea4fe1 = यह जॉब दूसरे टैब में खुला है
you-can-look-here-nothing-you-do-8cd9dafc = आप यहाँ देख सकते हैं; इस टैब में आप जो करते हैं, वह सहेजा नहीं जाता।
work-in-this-tab-cb3fa592 = इसी टैब में काम करें

### app/bench/selection_bar.rs

in-hand-35557bdf = हाथ में
touch-a-part-of-the-machine-the-ad31efbd = मशीन का कोई पार्ट, नल या प्लग छुएँ, तो दिखेगा कि उसके साथ क्या किया जा सकता है।
what-to-do-with-thing-ee452e8d = क्या करें: { $thing }
measure-here-173c550f = यहाँ नापें …
repair-3be949b8 = मरम्मत करें …
let-go-f998886c = छोड़ दें
let-go-4029d5cc = छोड़ दें
no-check-54c4001e = बिना जाँच

### app/bench/suspects.rs

possible-13fe35aa = संभव
likely-7e993075 = संभावित
nearly-sure-e5c89c35 = लगभग पक्का
suspects-edcd4227 = शक की सूची
add-a-suspect-fe9882ee = शक की सूची में जोड़ें
choose-a-cause-c5214810 = कोई कारण चुनें …
bring-back-cause-bc24b35f = वापस लाएँ: { $cause }
strike-out-cause-5ae6c48c = काट दें: { $cause }
struck-out-6afe6ab2 = (काटा हुआ)
how-sure-sure-change-cause-11182196 = कितना पक्का: { $sure }। बदलें: { $cause }
move-up-cause-d828cd5a = ऊपर ले जाएँ: { $cause }
bring-back-a06663be = वापस लाएँ
strike-out-3aeb38d7 = काट दें

### app/bench/tests_list.rs

tests-after-the-repair-fc8f9de4 = मरम्मत के बाद के टेस्ट
in-this-order-after-the-last-e5d97be8 = इसी क्रम में, मशीन में आख़िरी बदलाव के बाद। बाद का कोई बदलाव इन्हें फिर बाक़ी कर देता है।
within-the-limit-11fba76a = सीमा के भीतर
outside-the-limit-084a4dec = सीमा से बाहर
leads-are-there-note-it-9cdd794f = लीड वहाँ हैं: नोट करें।

### app/bench/time_bar.rs

clock-bb5f80fd = घड़ी
waiting-until-958504d0 = इंतज़ार:
wait-until-0b643398 = इंतज़ार करें:

### app/bench/visit.rs

the-visit-f9bcdb57 = दौरा
parts-for-the-van-087612f0 = वैन के लिए पार्ट
load-the-van-46378a93 = वैन में रखें
at-the-customer-s-with-the-first-6f316291 = ग्राहक के यहाँ: इनमें से पहले के साथ, या मशीन को पहली बार छूते ही, आप वहाँ पहुँच चुके होते हैं।
second-visit-parts-to-bring-1196e7ef = दूसरा दौरा: लाने के पार्ट
leave-until-the-second-visit-0567815e = दूसरे दौरे तक छोड़ें
see-the-report-a1ba93cf = रिपोर्ट देखें
before-you-drive-on-the-phone-cdb4c2d5 = निकलने से पहले: फ़ोन पर
asked-on-the-phone-41fc6a57 = फ़ोन पर पूछा गया
no-longer-made-ad8748b0 = अब नहीं बनता
tomorrow-ac3c2a26 = कल
n-of-most-33e97535 = { $most } में से { $n }
the-van-is-full-take-one-out-to-89166b23 = वैन भरी है: दूसरे की जगह बनाने के लिए एक निकालें।
hang-on-a-label-do-not-use-77951b5b = “इस्तेमाल न करें” का लेबल लगाएँ

### app/cohort/aside.rs

file-this-record-cannot-be-run-8fc814a4 = { $file }: यह रिकॉर्ड यहाँ दोबारा नहीं चलाया जा सकता: इसका जॉब या इसका मूल्यांकन मालूम नहीं। फिर भी इसे वैसा पढ़ा जा सकता है जैसा लिखा गया था।

### app/cohort/decision.rs

decision-by-who-fbc7180c = { $decision }, { $who } का निर्णय
passed-513cb799 = पास
border-more-jobs-f2f942b0 = सीमा पर: और जॉब
not-yet-6d9d33dc = अभी नहीं

### app/cohort/desk/checking.rs

this-browser-has-no-threads-2afe55bc = इस ब्राउज़र में थ्रेड नहीं हैं: इसमें कुछ भी जाँचा नहीं जा सकता।
name-what-925f8a22 = { $name }: { $what }।
file-this-assessment-does-not-bb1c22c4 = { $file }: यह मूल्यांकन यहाँ के जॉब पर नहीं बैठता; कारण देखने के लिए इसे वहाँ खोलें जहाँ मूल्यांकन बनते हैं।

### app/cohort/desk.rs

opening-ae1c2bab = खुल रहा है …
back-c2954bc2 = वापस
results-9cf82695 = परिणाम
drop-any-number-of-result-files-d85709e3 = परिणामों की कितनी भी फ़ाइलें यहाँ डालें। हर एक यहीं जाँची जाती है: उसकी सील तुरंत, फिर उसका काम दोबारा चलाया जाता है। इस ब्राउज़र से कुछ बाहर नहीं जाता।

### app/cohort/drop.rs

results-their-assessment-and-its-b2c5c1dd = परिणाम, उनका मूल्यांकन और उसकी कुंजी: यहाँ डालें, या
open-files-dcbec6c2 = फ़ाइलें खोलें
open-a-folder-ee1a4322 = फ़ोल्डर खोलें

### app/cohort/erase_tab.rs

erasing-strikes-out-all-that-a-c19b78e7 = मिटाने से रिकॉर्ड में जो कुछ है सब कट जाता है, क्रम में उसकी जगह के सिवा, ताकि आसपास के रिकॉर्ड अब भी जाँचे जा सकें। जिस व्यक्ति का कुछ नहीं बचा, उसके बारे में इस ब्राउज़र में रखे निर्णय भी साथ चले जाते हैं। यह वापस नहीं लिया जा सकता।
a-page-cannot-delete-your-files-4b0596ba = पेज आपकी फ़ाइलें नहीं हटा सकता: जो बचा है उसे सहेजें, फिर वे फ़ाइलें जिनसे वह आया, उनकी प्रतियाँ और निर्णयों की वे फ़ाइलें हटा दें जिनमें उस व्यक्ति का नाम है।
erasing-waits-until-everything-47b5693c = मिटाना तब तक रुका है जब तक सब कुछ जाँच न लिया जाए।
what-is-left-cf019dae = जो बचा है
save-what-is-left-67b90b63 = जो बचा है उसे सहेजें
past-their-time-2e718d52 = जिनका समय निकल चुका
no-result-here-is-past-the-time-399b1095 = यहाँ किसी परिणाम का वह समय नहीं निकला जो उसका मूल्यांकन तय करता है, या कोई मूल्यांकन समय तय नहीं करता।
one-person-a3b729f8 = एक व्यक्ति
whose-results-02dd5a51 = किसके परिणाम
choose-73c66160 = चुनें
erase-everything-of-person-5c99f8ce = { $person } का सब कुछ मिटाएँ
yes-erase-everything-of-person-102389f7 = हाँ, { $person } का सब कुछ मिटाएँ
past-their-time-a-table-8ec36cd9 = जिनका समय निकल चुका, तालिका
person-c36eeba0 = व्यक्ति
to-be-erased-since-b71a2b5f = मिटाया जाना था
records-593ef94d = रिकॉर्ड
erase-this-one-record-0256da3c = यह एक रिकॉर्ड मिटाएँ
yes-erase-this-one-record-a4ca7c2f = हाँ, यह एक रिकॉर्ड मिटाएँ
erase-these-n-records-134680c8 = ये { $n } रिकॉर्ड मिटाएँ
yes-erase-these-n-records-a4eb771f = हाँ, ये { $n } रिकॉर्ड मिटाएँ
changed-here-by-erasing-one-file-dbd157ff = मिटाने से यहाँ बदली: एक फ़ाइल। आपकी डिस्क पर फ़ाइलें जैसी थीं वैसी ही हैं।
changed-here-by-erasing-n-files-15b08610 = मिटाने से यहाँ बदलीं: { $n } फ़ाइलें। आपकी डिस्क पर फ़ाइलें जैसी थीं वैसी ही हैं।

### app/cohort/erasing.rs

nothing-was-erased-91da2747 = कुछ नहीं मिटाया गया।
one-record-is-erased-here-save-5a09964a = यहाँ एक रिकॉर्ड मिटाया गया। जो बचा है उसे सहेजें, और वह फ़ाइल हटा दें जिससे वह आया।
n-records-are-erased-here-save-8f9148ad = यहाँ { $n } रिकॉर्ड मिटाए गए। जो बचा है उसे सहेजें, और वे फ़ाइलें हटा दें जिनसे वे आए।
file-it-cannot-be-read-any-more-cc391a75 = { $file }: यह अब पढ़ी नहीं जा सकती, इसलिए इसका कुछ नहीं मिटाया गया: इसे फिर डालें।
file-line-line-is-not-the-record-24b24ab6 = { $file }: पंक्ति { $line } वह रिकॉर्ड नहीं है जो लिया गया था, इसलिए इसका कुछ नहीं मिटाया गया: इसे फिर डालें।

### app/cohort/job_page.rs

back-to-all-19024338 = सब पर वापस
print-this-job-35b2ac67 = यह जॉब प्रिंट करें
who-did-it-20ff4f7f = किसने किया
faults-confused-da5e7feb = ग़लत पहचानी ख़राबियाँ
safety-rules-broken-a2def315 = टूटे सुरक्षा नियम
no-record-of-it-counts-any-more-5cb49e28 = इसका कोई रिकॉर्ड अब नहीं गिना जाता।
people-8390060e = लोग
marks-of-100-72d62e79 = 100 में से अंक
score-0-to-3-12e6e831 = स्कोर, 0 से 3
mean-on-average-9f19fdc4 = औसतन { $mean }
difficulty-8520a210 = कठिनाई
tells-people-apart-939f5f04 = लोगों में फ़र्क़ बताता है
# of a job to the model
fit-6fa1a18c = मेल
on-site-7777eb8b = मौक़े पर
cost-68887f58 = लागत
mean-on-average-from-so-few-or-f7cf8afe = औसतन { $mean }; इतने कम या बराबर अंकों से फैलाव नहीं बताया जा सकता
mean-on-average-from-least-to-1cf0e835 = औसतन { $mean }, { $least } से { $most } तक; मानक विचलन { $deviation }
mean-min-on-average-from-least-39ccbafb = औसतन { $mean } min, { $least } से { $most } min तक
too-few-people-or-all-alike-it-f1d68d70 = लोग बहुत कम हैं, या सब एक जैसे: बताया नहीं जा सकता
n-how-far-the-score-goes-with-678b3462 = { $n }: स्कोर व्यक्ति के बाक़ी जॉब के साथ कितना चलता है, ज़्यादा से ज़्यादा 1
too-few-people-to-say-64148cec = लोग बहुत कम हैं, कहा नहीं जा सकता
fit-1-is-as-expected-7a878322 = { $fit }; 1 मतलब उम्मीद के मुताबिक़
people-at-this-job-a-table-f1f23289 = इस जॉब पर लोग, तालिका
marks-ab70bac9 = अंक
score-77eb0235 = स्कोर
# how a job ended
ended-27128bb9 = अंत
target-time-3a72ba31 = लक्ष्य समय
target-cost-af52e51d = लक्ष्य लागत
safety-b04d1727 = सुरक्षा
step-by-step-92ec0206 = क़दम-दर-क़दम
person-the-person-s-page-0e05d399 = { $person }: व्यक्ति का पेज
replay-what-29fb39e0 = { $what } को चलाकर देखें
# verb
replay-191d9d13 = चलाकर देखें

### app/cohort/jobs.rs

with-fewer-than-ten-people-no-4a2f660a = दस से कम लोगों पर किसी जॉब के लिए कोई संख्या नहीं दी जाती: वह बस शोर होगी।
jobs-a-table-d8bd0b7c = जॉब, तालिका
job-42d9307c = जॉब
mean-score-0-to-3-78733dda = औसत स्कोर, 0 से 3
time-to-target-d89aa142 = समय / लक्ष्य
cost-to-target-3ac1de36 = लागत / लक्ष्य
# verb, of a job
void-cc5090ad = रद्द करें
job-more-about-this-job-1b19cd5d = { $job }: इस जॉब के बारे में और
void-job-for-everybody-ca82a8f0 = { $job } को सबके लिए रद्द करें
# verb, of a job
void-44a9670d = रद्द करें
infit-in-outfit-out-look-at-it-0b635bd0 = { $infit } इनफ़िट, { $outfit } आउटफ़िट: इसे देखें
infit-in-outfit-out-c09f9c57 = { $infit } इनफ़िट, { $outfit } आउटफ़िट
people-bars-n-of-them-and-jobs-d93114b4 = लोग (पट्टियाँ, कुल { $n }) और जॉब (अपनी त्रुटि के साथ बिंदु) एक ही पैमाने पर: जो किसी जॉब से ऊपर है, वह उसे ज़्यादातर बार सही करता है। संख्याएँ तालिकाओं में हैं।
abilities-of-people-and-bb744d82 = लोगों की क्षमता और जॉब की कठिनाई एक ही पैमाने पर; यही संख्याएँ तालिकाओं में हैं
job-difficulty-4941f4ad = { $job }: { $difficulty }

### app/cohort/kept_rulings.rs

one-ruling-made-earlier-in-this-27b9e2bf = एक निर्णय पहले का है, इस ब्राउज़र में या उसके दूसरे टैब में किया गया, आख़िरी { $day } को { $who } का। अभी यहाँ जो डाला गया है, उस पर वे लागू नहीं हैं।
n-rulings-made-earlier-in-this-f8b0fd98 = { $n } निर्णय पहले के हैं, इस ब्राउज़र में या उसके दूसरे टैब में किए गए, आख़िरी { $day } को { $who } का। अभी यहाँ जो डाला गया है, उस पर वे लागू नहीं हैं।
rulings-made-earlier-bb14b7be = पहले के निर्णय
put-them-in-force-d73d5a00 = उन्हें लागू करें
forget-them-12b24b6e = उन्हें भुला दें
rulings-not-kept-5a128060 = निर्णय नहीं रखे गए
the-last-change-was-not-kept-1eebf256 = आख़िरी बदलाव नहीं रखा गया।
save-the-rulings-as-a-file-8efdd8ca = निर्णय फ़ाइल के रूप में सहेजें

### app/cohort/marks_picture.rs

marks-of-100-a-dot-for-each-068c7b45 = 100 में से अंक, हर व्यक्ति के लिए एक बिंदु। संख्याएँ तालिका में हैं।
marks-of-all-people-on-one-line-b6420ed9 = सब लोगों के अंक एक लाइन पर; यही संख्याएँ तालिका में हैं

### app/cohort/opened.rs

back-to-the-person-5c790be5 = व्यक्ति पर वापस
back-to-the-skill-ad78769d = कौशल पर वापस
back-to-the-job-ba3a0173 = जॉब पर वापस

### app/cohort/others.rs

no-safety-rule-was-broken-2f3ea64a = कोई सुरक्षा नियम नहीं टूटा।
safety-a-table-18bd4546 = सुरक्षा, तालिका
# of safety
rule-fa1c27b6 = नियम
how-grave-0e5cf784 = कितना गंभीर
# how often
times-8895ebbf = कितनी बार
# drawn in a table
bar-fd57b0ba = पट्टी
no-fault-was-taken-for-another-8793faa6 = कोई ख़राबी दूसरी नहीं समझी गई।
faults-taken-for-others-a-table-298476ce = दूसरी समझी गई ख़राबियाँ, तालिका
was-wrong-728021cb = असल में ख़राब था
was-stated-aac7487d = बताया गया
rows-with-a-gap-3776a0f3 = टूटे क्रम
rows-that-are-not-whole-2af5ff29 = क्रम जो पूरे नहीं हैं
every-record-is-accepted-as-far-09bc41d4 = जहाँ तक देखा गया, हर रिकॉर्ड स्वीकार है।
not-accepted-a-table-5f08031e = स्वीकार नहीं, तालिका
# of a job
record-759c2fa5 = रिकॉर्ड
first-difference-f02bd10c = पहला फ़र्क़
as-written-b6ecf6b2 = जैसा लिखा गया
and-n-more-ec67458f = बाक़ी { $n } और हैं।
read-this-record-as-it-was-cad9e24b = यह रिकॉर्ड वैसा पढ़ें जैसा लिखा गया था
read-what-as-it-was-written-99fc37f2 = { $what } को वैसा पढ़ें जैसा लिखा गया था
# verb, of a record
read-018668d1 = पढ़ें

### app/cohort/pauses.rs

not-ended-58f8c33a = ख़त्म नहीं हुआ
pauses-a-table-6b7ecb11 = विराम, तालिका
from-by-their-clock-1dd326c2 = कब से, उनकी घड़ी से
# until when
to-2f3be1d8 = कब तक
minutes-36d9968e = मिनट
codes-758add25 = कोड
this-time-did-not-count-compare-ef3251b7 = यह समय नहीं गिना गया। इसे उन विरामों से मिलाएँ जो आपने दिए: जो विराम सिर्फ़ एक व्यक्ति का था, वह कमरे का नहीं था।
not-looked-at-the-assessment-s-41d3ea39 = नहीं देखा गया: मूल्यांकन की फ़ाइल यहाँ नहीं है
the-assessment-s-66e74a34 = मूल्यांकन के
none-of-the-assessment-s-00fe56ad = मूल्यांकन के नहीं

### app/cohort/people.rs

people-and-skills-a-table-24b50bf2 = लोग और कौशल, तालिका
decision-be93ff03 = फ़ैसला
ability-error-15e74a94 = क्षमता ± त्रुटि
put-right-1cc4be18 = ठीक किए
critical-87d09fa8 = जानलेवा
n-of-of-dfb9b397 = { $of } में से { $n }
ability-unusual-947ee932 = { $ability }, असामान्य
count-skill-person-the-jobs-c3842e00 = { $count }, { $skill }, { $person }: इसके पीछे के जॉब

### app/cohort/person.rs

print-this-person-7f0c05b1 = यह व्यक्ति प्रिंट करें
override-the-decision-303539bc = फ़ैसला बदलें
this-sheet-was-made-on-day-7d958af5 = यह पत्र { $day } को बनाया गया।
an-unknown-day-0be93afa = अज्ञात दिन
assessment-jobs-that-count-n-70e12da3 = { $assessment }, गिने जाने वाले जॉब: { $n }
assessment-assessment-whose-file-cc5aa75c = मूल्यांकन { $assessment }, जिसकी फ़ाइल यहाँ नहीं है
practice-of-no-assessment-7e0c9b9e = अभ्यास, किसी मूल्यांकन का नहीं
what-begun-on-day-1f6ea0fa = { $what }; शुरू { $day } को
what-begun-on-day-with-the-word-8fc618e2 = { $what }; शुरू { $day } को, शब्द “{ $word }” के साथ
by-the-rules-alone-decision-8966d0ff = सिर्फ़ नियमों से: { $decision }
decision-marks-of-100-marks-on-68fe697f = { $decision }: औसतन 100 में से { $marks } अंक, { $cut } माँगे जाते हैं
holds-by-who-day-why-ee2134cc = { $holds }, { $who } द्वारा, { $day }: { $why }
overridden-decision-efb4d661 = फ़ैसला बदला गया: { $decision }
skill-n-of-of-b3cfe3b2 = { $skill } { $of } में से { $n }
count-the-jobs-behind-it-248a950e = { $count }: इसके पीछे के जॉब
ability-sure-to-about-range-0-is-612a52e0 = { $ability }, लगभग ±{ $range } तक पक्की; 0 इन लोगों का बीच है
n-counted-fixed-put-right-marks-41080f06 = { $n } गिने गए, { $fixed } ठीक किए, औसतन 100 में से { $marks } अंक
taken-each-f5125359 = हर जॉब { $taken }
ability-ff93d931 = क्षमता
never-opened-0-marks-each-n-0e9166b5 = कभी नहीं खोले गए, हर एक के 0 अंक: { $n }
rules-broken-n-critical-critical-14c2cdfd = टूटे नियम: { $n }, इनमें जानलेवा: { $critical }
# of scores
pattern-3ef62895 = पैटर्न
unusual-right-on-hard-jobs-and-ba283ef4 = असामान्य: कठिन जॉब सही और आसान ग़लत; रिकॉर्ड देखें
skills-ab6a56bf = कौशल
records-a-table-eabd42ec = रिकॉर्ड, तालिका
began-by-their-clock-06f21209 = शुरू, उनकी घड़ी से
# how often it was left
page-left-69e76460 = पेज छोड़ा
checked-51ba2a66 = जाँच
read-what-977e8019 = { $what } पढ़ें
the-job-was-voided-it-counts-for-0a0a85dc = जॉब रद्द किया गया: यह किसी के लिए नहीं गिना जाता
not-accepted-why-6613153b = स्वीकार नहीं: { $why }
# of a record
sealed-67f4cdae = सील है
practice-no-seal-a0f59e3c = अभ्यास, सील नहीं
seal-not-looked-at-no-key-here-1978e9f6 = सील नहीं देखी गई: यहाँ कुंजी नहीं है
seal-run-again-4bfaaadb = { $seal }, दोबारा चलाया गया
seal-not-run-again-yet-037be9c0 = { $seal }, अभी दोबारा नहीं चलाया गया

### app/cohort/received.rs

running-it-again-46c86b2d = दोबारा चलाया जा रहा है …
saved-ae0ab8fe = सहेजा गया।
not-accepted-why-09b24d5b = स्वीकार नहीं: { $why }
it-is-as-it-was-made-run-again-851bdf76 = यह वैसा ही है जैसा बना था: दोबारा चलाने पर सब कुछ वही निकला।
a-result-from-a-code-5701eb7f = एक परिणाम, कोड से
candidate-job-n-of-assessment-defed6e8 = { $candidate }, { $assessment } का जॉब { $n }: 100 में से { $marks } अंक।
the-letters-were-cut-or-changed-8833609c = रास्ते में अक्षर कट गए या बदल गए: कोड फिर से पढ़ें।
the-jobs-of-this-page-cannot-be-01236680 = इस पेज के जॉब पढ़े नहीं जा सकते।
this-browser-cannot-make-it-cdd5e9b8 = यह ब्राउज़र इसे पूरा नहीं कर सकता: { $why }।
run-again-it-does-not-come-out-a6ad2cb6 = दोबारा चलाने पर यह वैसा नहीं निकलता जैसा कहता है: इसे बदला गया, या यह दूसरे संस्करण का बना है।

### app/cohort/replay.rs

job-n-title-d70dfe00 = जॉब { $n }, { $title }

### app/cohort/rows.rs

candidate-broken-19464ae3 = { $candidate }: { $broken }

### app/cohort/ruling_store.rs

rulings-are-kept-in-this-browser-8c4dcf72 = निर्णय इस ब्राउज़र में रखे जाते हैं; दूसरे ब्राउज़र में ले जाने या परिणामों के साथ रखने के लिए उनकी फ़ाइल सहेजें।
this-browser-has-no-room-left-74509029 = इस ब्राउज़र में जगह नहीं बची: अब किए गए निर्णय इस पेज के बंद होने या दोबारा लोड होने पर चले जाते हैं। उन्हें फ़ाइल के रूप में सहेजें।
this-browser-does-not-let-the-7bb28bcf = यह ब्राउज़र पेज को निर्णय रखने नहीं देता: इस पेज के बंद होने या दोबारा लोड होने पर वे चले जाते हैं। उन्हें फ़ाइल के रूप में सहेजें।

### app/cohort/rulings.rs

void-job-job-for-everybody-18cb3f4f = जॉब { $job } सबके लिए रद्द करें
override-the-decision-about-ff61a298 = { $person } के बारे में फ़ैसला बदलें
of-which-assessment-3d8b9381 = किस मूल्यांकन का
of-assessment-alone-46ab0e15 = सिर्फ़ { $assessment } का।
what-holds-ea4ebb89 = क्या मान्य होगा
who-rules-8b930858 = निर्णय किसका
why-7b8038d9 = क्यों
it-holds-from-now-on-0223bdf3 = अब से लागू
not-after-all-b64ebe87 = रहने दें
it-holds-save-as-a-file-ab8f93f3 = लागू करें; फ़ाइल के रूप में सहेजें
throw-away-what-is-typed-about-7f0a96ce = { $what } के बारे में जो टाइप किया उसे फेंक दें
throw-away-c2487923 = फेंक दें
rulings-typed-by-half-53e9a69f = आधे टाइप किए निर्णय
typed-by-half-and-not-in-force-159956c5 = आधे टाइप किए, लागू नहीं। आगे बढ़ने के लिए फ़ॉर्म फिर खोलें: व्यक्ति के पेज पर, या जॉब के पास।
job-job-ca48e31b = जॉब { $job }
nothing-was-ruled-a-job-is-fd17f4ab = कोई निर्णय नहीं हुआ। जॉब को जॉब की तालिका से रद्द किया जाता है, फ़ैसला व्यक्ति के पेज पर बदला जाता है; हर एक नाम, दिन और कारण के साथ रहता है, और रिकॉर्ड जैसे हैं वैसे ही रहते हैं।
take-back-the-ruling-about-what-8dfbcbbc = { $what } के बारे में निर्णय वापस लें
# verb, of a ruling
take-back-cc425459 = वापस लें
yes-take-it-back-3488ddb3 = हाँ, वापस लें
rulings-a-table-d1340d34 = निर्णय, तालिका
about-58e096de = किसके बारे में
# what holds from now on
holds-85d31ea6 = मान्य
# who ruled
by-bea06c0e = किसने
day-4954229d = दिन
# verb, of a ruling
take-back-a1f54b79 = वापस लें
taken-back-what-holds-by-who-day-cc3cde1c = वापस लिया गया: { $what }, { $holds }, { $who } द्वारा, { $day }: { $why }
any-it-names-none-a505d0bc = कोई भी: इसमें नाम नहीं है
assessment-not-applied-no-result-fc58e591 = { $assessment }: लागू नहीं हुआ, यहाँ इसका कोई परिणाम नहीं है

### app/cohort/save_tab.rs

people-csv-250c6812 = लोग, CSV
jobs-csv-4879e823 = जॉब, CSV
safety-csv-6d00c94d = सुरक्षा, CSV
faults-confused-csv-3ea45ac9 = ग़लत पहचानी ख़राबियाँ, CSV
everything-json-872b56ae = सब कुछ, JSON
rulings-to-go-on-with-later-18aabe6b = निर्णय, बाद में आगे बढ़ने के लिए
print-e8320d28 = प्रिंट करें
the-file-of-rulings-takes-them-2ffb8818 = निर्णयों की फ़ाइल उन्हें दूसरे ब्राउज़र में ले जाती है: वहाँ उसे परिणामों के साथ डालें।
results-day-604f0153 = परिणाम, { $day }

### app/cohort/saving.rs

there-is-nothing-to-save-yet-e66a9f34 = अभी सहेजने को कुछ नहीं है।
nothing-was-erased-so-there-is-f7d9fa84 = कुछ मिटाया नहीं गया, इसलिए सहेजने को कुछ नहीं है।
not-saved-why-erase-and-save-96135f71 = सहेजा नहीं गया: { $why }। एक बार में कम मिटाएँ और सहेजें।
file-is-saved-38cc5918 = { $file } सहेज ली गई।

### app/cohort/shown.rs

looking-at-links-and-seals-f152dd29 = कड़ियाँ और सीलें देखी जा रही हैं: { $n } में से { $looked } फ़ाइलें
running-the-work-again-run-of-n-17ce71a7 = काम दोबारा चलाया जा रहा है: { $n } में से { $run } फ़ाइलें
stopped-not-every-record-was-run-352fb6df = रोका गया: हर रिकॉर्ड दोबारा नहीं चलाया गया।
records-checked-records-files-7194777d = जाँचे गए रिकॉर्ड: { $records }; फ़ाइलें: { $files }।
working-out-the-cohort-52f215e4 = समूह का हिसाब निकाला जा रहा है …
checking-d47a32d1 = जाँच
# verb, of the checking
stop-8acf833c = रोकें
nothing-yet-assessments-made-in-d163f733 = अभी कुछ नहीं। इस ब्राउज़र में बने मूल्यांकन अपनी कुंजियों समेत यहाँ मालूम हैं; दूसरों के लिए मूल्यांकन की फ़ाइल और उसकी कुंजी भी डालें।
people-n-4e929a1e = लोग { $n }
jobs-n-29e2fda9 = जॉब { $n }
not-accepted-n-9fa36f4b = स्वीकार नहीं { $n }
rulings-n-60fb8541 = निर्णय { $n }
save-and-print-b4a33082 = सहेजें और प्रिंट करें
reliability-words-7f36e73c = विश्वसनीयता: { $words }।
reliability-value-words-bf3d2a91 = विश्वसनीयता { $value }: { $words }।
later-attempts-at-the-same-job-4f9f2c25 = उसी जॉब की बाद की कोशिशें नहीं गिनी जातीं: { $n }।
no-record-counts-yet-b02942a3 = अभी कोई रिकॉर्ड नहीं गिना जाता।
no-record-counts-none-was-06bc31e9 = कोई रिकॉर्ड नहीं गिना जाता: एक भी स्वीकार नहीं हुआ। जहाँ सील किया परिणाम ऐसे मूल्यांकन का है जो यहाँ मालूम नहीं, वहाँ उस मूल्यांकन की फ़ाइल और उसकी कुंजी डालें।
see-why-not-accepted-n-273f7246 = कारण देखें: स्वीकार नहीं { $n }
of-these-people-nothing-counts-9848790f = इन लोगों का कुछ नहीं गिना जाता: उनका खोला हुआ हर जॉब रद्द किया गया।
void-48b5725f = रद्द
# verb
erase-80906efa = मिटाएँ
erase-n-past-their-time-b642cb12 = मिटाएँ, { $n } का समय निकल चुका

### app/cohort/skill_page.rs

to-the-person-fab856c8 = व्यक्ति पर जाएँ
print-this-page-a91aed7f = यह पेज प्रिंट करें
right-of-n-jobs-that-practise-it-79f7b2f8 = इसका अभ्यास कराने वाले { $n } जॉब में से { $right } इसे दिखाते हैं। जॉब अपने कौशल तब दिखाता है जब मशीन ठीक हो, सुरक्षित ढंग से, सबूत के साथ।
no-record-counts-to-it-any-more-b680c814 = इसमें अब कोई रिकॉर्ड नहीं गिना जाता।
skill-person-f21d16c3 = { $skill }: { $person }
jobs-behind-the-skill-a-table-8f0952fc = इस कौशल के पीछे के जॉब, तालिका
shows-it-587660da = दिखाता है
job-how-all-did-at-it-756a0d58 = { $job }: सबने इसे कैसा किया
# it shows the skill
yes-7d6ca459 = हाँ
# it shows the skill
not-yet-df76545d = अभी नहीं

### app/cohort/source.rs

file-this-archive-cannot-be-423acbc1 = { $file }: यह आर्काइव नहीं खुल सकता: इसे सादे zip के रूप में फिर से पैक करें, या फ़ोल्डर खोलें।
there-are-no-results-among-these-12fe2a40 = इन फ़ाइलों में कोई परिणाम नहीं है: उनके नाम के अंत में .json, .jsonl या .zip होता है।
passed-over-since-their-names-do-ba678959 = छोड़ दी गईं, क्योंकि उनके नाम परिणामों के नामों की तरह ख़त्म नहीं होते (.json, .jsonl, .key, .zip): { $files }।
passed-over-since-their-names-do-694dc56d = छोड़ दी गईं, क्योंकि उनके नाम परिणामों के नामों की तरह ख़त्म नहीं होते (.json, .jsonl, .key, .zip): { $files } और { $n } और।
it-cannot-be-read-or-is-too-3a0f0982 = इसे पढ़ा नहीं जा सकता, या यह बहुत बड़ी है

### app/cohort/unread.rs

no-whole-record-damaged-cut-off-bf6769ed = पूरा रिकॉर्ड नहीं: टूटा, कटा हुआ या किसी और तरह का। { $why }

### app/cohort/words.rs

made-safe-and-left-6eaaa579 = सुरक्षित करके छोड़ी
put-right-167f4ff8 = ठीक की
not-put-right-9fb41259 = ठीक नहीं की
not-handed-over-4cc58abc = सौंपी नहीं
severity-rule-42f76008 = { $severity }: { $rule }
none-broken-60c01914 = कोई नहीं टूटा
practice-9abd3270 = अभ्यास
taken-no-target-known-995d50cb = { $taken }, लक्ष्य मालूम नहीं
taken-target-target-eea6b998 = { $taken }, लक्ष्य { $target }
taken-no-target-is-known-cc0b952c = { $taken }; लक्ष्य मालूम नहीं
taken-target-target-ratio-times-273058f7 = { $taken }; लक्ष्य { $target }, उसका { $ratio } गुना
n-min-0a374e03 = { $n } min
number-words-9f91c26d = { $number }: { $words }

### app/cohort/written.rs

as-written-candidate-job-87106718 = जैसा लिखा गया: { $candidate }, { $job }
print-this-record-b1a95cd1 = यह रिकॉर्ड प्रिंट करें
result-as-it-was-sealed-a62dcb88 = परिणाम, जैसा सील हुआ
what-was-done-and-what-was-shown-44827983 = क्या किया गया, और क्या दिखा
practice-of-no-assessment-c1939d7e = अभ्यास, किसी मूल्यांकन का नहीं
assessment-job-n-with-the-word-8c1988ca = { $assessment }, जॉब { $n }, शब्द “{ $word }” के साथ
there-is-one-it-was-not-looked-ac219eb4 = सील है; यहाँ उसे देखा नहीं गया
# no seal
none-9d5ca62b = कोई नहीं
candidate-f29830fa = परीक्षार्थी
written-by-da5f8fed = किसका लिखा
version-version-of-the-program-feb60ab5 = प्रोग्राम का संस्करण { $version }
# of a record
seal-af79619b = सील
link-begins-with-de7a78af = कड़ी की शुरुआत
this-version-does-not-know-a-989164cf = यह संस्करण इस तरह का परिणाम नहीं जानता; उसके ख़ाने यहाँ वैसे ही हैं जैसे फ़ाइल में।
marks-of-100-6e644043 = 100 में से { $marks }
# of the marks
parts-1059df97 = हिस्से
cause-stated-12d81983 = बताया गया कारण
part-points-of-of-26d1556f = { $part } { $of } में से { $points }
# no cause
none-94c58e95 = कोई नहीं
what-was-done-a-table-8054cb45 = क्या किया गया, तालिका
step-4771f92f = क़दम
when-021e3a39 = कब
what-was-done-ec613d56 = क्या किया गया
what-was-shown-db4068e7 = क्या दिखा
safety-rule-broken-435128ec = टूटा सुरक्षा नियम

### app/crash.rs

the-program-has-stopped-0c20d001 = प्रोग्राम रुक गया है
that-is-our-mistake-not-yours-35f2d30b = ग़लती हमारी है, आपकी नहीं। आपका जॉब आपकी आख़िरी क्रिया तक सहेजा हुआ है।
go-on-from-the-last-act-73a70219 = आख़िरी क्रिया से आगे बढ़ें
for-a-report-place-62e883b8 = सूचना देने के लिए: { $place }
a-part-of-the-program-is-missing-4c11a33b = प्रोग्राम का एक हिस्सा नहीं आया है
it-could-not-be-fetched-is-there-e56a9910 = उसे लाया नहीं जा सका: क्या नेटवर्क है? आपका जॉब आपकी आख़िरी क्रिया तक सहेजा हुआ है।
try-again-213e90fa = फिर कोशिश करें
to-the-jobs-b4278405 = जॉब की सूची पर

### app/debrief/expert.rs

beside-the-expert-083d6d60 = विशेषज्ञ के मुक़ाबले
the-expert-is-a-program-that-aeb618e1 = विशेषज्ञ एक प्रोग्राम है, जो दरवाज़े पर आपसे ज़्यादा नहीं जानता था और हर क़दम ने जो दिखाया उससे तय करता था। वह किसी कुशल व्यक्ति से धीमा हो सकता है; लक्ष्य वह है जो ऐसे व्यक्ति को चाहिए।
you-b5bdd13c = आप
the-expert-ec2ccb9c = विशेषज्ञ
what-the-expert-would-have-done-9be46bb2 = विशेषज्ञ क्या करता, यह नहीं बताया जा सकता। { $why }
the-expert-is-working-the-job-266bf981 = विशेषज्ञ जॉब कर रहा है; इसमें कुछ सेकंड लगते हैं।
let-the-expert-work-it-7cb49db5 = विशेषज्ञ से करवाएँ
min-c98f4557 = min
act-2d4a458b = क्रिया
cost-e85c3338 = लागत

### app/debrief/likely.rs

what-your-notes-pointed-at-c7afcda1 = आपके नोट्स का इशारा किस ओर था
what-was-wrong-is-not-among-085d11e3 = जो ख़राबी थी वह इनमें नहीं है: आपके नोट्स ने उसे कभी सबसे संभावित कारणों में नहीं रखा।
as-a-table-ac51cfba = तालिका के रूप में
after-step-802e5ac9 = क़दम के बाद
likely-causes-after-each-step-a8f3af64 = हर क़दम के बाद संभावित कारण
under-1-cdbcd429 = 1 % से कम
over-99-69de2c68 = 99 % से ज़्यादा

### app/debrief/marks.rs

points-of-of-81c64cac = { $of } में से { $points }
nothing-to-remark-48aa4a61 = कोई टिप्पणी नहीं।

### app/debrief/moments.rs

the-machine-at-step-step-0fe39c5a = क़दम { $step } पर मशीन
step-step-eab56137 = क़दम { $step }
where-somebody-could-have-been-d981d7f0 = जहाँ किसी को चोट लग सकती थी, या कुछ ख़राब हो सकता था

### app/debrief/screen.rs

this-job-is-not-over-yet-3c565399 = यह जॉब अभी पूरा नहीं हुआ
the-debrief-is-opened-when-the-96ed5087 = समीक्षा तब खुलती है जब मशीन सौंप दी जाए, या सुरक्षित करके छोड़ी जाए।
back-to-the-bench-cea3437e = बेंच पर वापस
this-job-cannot-be-explained-f78f4ca8 = इस जॉब की व्याख्या नहीं की जा सकती
the-machine-as-it-was-322ae90d = मशीन जैसी थी
economy-and-evidence-go-by-the-90c17a94 = किफ़ायत और सबूत बिल और नोटबुक से आँके गए हैं, जैसा यह जॉब गिना गया था: जिस ब्राउज़र में यह किया गया, वह नहीं बता सका कि हर फ़ैसले का मोल क्या था।
economy-and-evidence-go-by-what-07c00a3d = किफ़ायत और सबूत इससे आँके जाते हैं कि हर क़दम तय करते समय क्या जाना जा सकता था; संयोग नहीं गिना जाता।
economy-and-evidence-go-by-the-086517f6 = किफ़ायत और सबूत बिल और नोटबुक से आँके गए हैं: हर फ़ैसले का मोल क्या था, यह नहीं बताया जा सकता। { $why }
economy-and-evidence-still-go-by-74b5321a = किफ़ायत और सबूत अभी बिल और नोटबुक से आँके गए हैं: हर फ़ैसले का मोल क्या था, यह निकाला जा रहा है।
likely-then-17dce14c = तब संभावित
try-again-from-before-this-step-25cb0773 = इस क़दम से पहले से फिर आज़माएँ
as-practice-that-does-not-count-51dae680 = अभ्यास के रूप में, जो गिना नहीं जाता; यह समीक्षा बनी रहती है।
working-out-what-your-notes-08028f1c = निकाला जा रहा है कि आपके नोट्स का इशारा किस ओर था
what-your-notes-pointed-at-dc1e49f0 = आपके नोट्स का इशारा किस ओर था, यह नहीं बताया जा सकता। { $why }
to-practise-next-fa84ea4e = आगे किसका अभ्यास करें
no-decision-cost-more-than-it-83dfa02a = किसी फ़ैसले की लागत ज़रूरत से ज़्यादा नहीं थी।
debrief-title-754d4df0 = समीक्षा: { $title }
tried-again-from-after-step-1ba62183 = क़दम { $steps } के बाद से फिर आज़माया गया: अभ्यास, जो गिना नहीं जाता।
do-it-again-a2a59d29 = फिर से करें
what-was-wrong-eb34a0b3 = क्या ख़राब था
nothing-in-the-machine-4a6c6c1f = मशीन में कुछ नहीं।
you-said-94fd2601 = आपने कहा
no-fault-in-the-machine-de0874a7 = मशीन में कोई ख़राबी नहीं।
how-it-showed-bdd77402 = कैसे दिखा
none-of-your-notes-differ-from-92950e19 = आपका कोई नोट सही मशीन के नोट से अलग नहीं है।
looking-back-8f3afcad = पीछे मुड़कर
how-the-machine-was-left-6a8c0bfb = मशीन कैसी छोड़ी गई
steps-d46b8bd4 = क़दम
safety-6a399d07 = सुरक्षा

### app/debrief/step.rs

this-step-4627bb71 = यह क़दम
step-step-of-count-0593e517 = क़दम { $step }, कुल { $count }
time-cost-so-far-cost-315417b8 = { $time } · अब तक की लागत { $cost }
a-sound-machine-d77df490 = सही मशीन:

### app/debrief/track.rs

step-step-of-count-words-226f92ae = क़दम { $step }, कुल { $count }: { $words }

### app/desk/apprentices.rs

the-machine-of-this-job-cannot-c4d9ec88 = इस जॉब की मशीन तैयार नहीं की जा सकती।
watch-one-who-91c647c8 = एक को देखें: { $who }
watch-one-57c9be6c = एक को देखें
working-it-who-f36ef8a7 = जॉब कर रहा है: { $who } …
how-apprentices-fare-8fa1847f = अप्रेंटिस कैसा करते हैं
how-simulated-apprentices-fare-n-16d7147a = नक़ली अप्रेंटिस कैसा करते हैं, हर तरह के { $n }: कितना कठिन है, इसकी पहली झलक
who-2af42a8f = कौन
right-78e32de5 = सही
# verb
watch-867d5bf1 = देखना
safety-in-how-many-of-the-n-a-8158a7b0 = सुरक्षा: { $n } में से कितनों में जानलेवा, बड़े या छोटे दर्जे का नियम टूटा। “एक को देखें” { $n } में से पहले को दिखाता है।
critical-in-n-dce6a723 = { $n } में जानलेवा
major-in-n-42bfeaa5 = { $n } में बड़ा
minor-in-n-422c8a31 = { $n } में छोटा
unsure-beginner-70c21a47 = हिचकने वाला नौसिखिया
in-a-hurry-c53d8883 = जल्दी में
changes-parts-first-361a901a = पहले पार्ट बदलने वाला
avoids-the-meter-025db24d = मीटर से बचने वाला
step-by-step-3912efe6 = क़दम-दर-क़दम चलने वाला

### app/desk/draft.rs

for-a-few-days-e694597a = कुछ दिनों से।
yes-every-time-f7b25df6 = हाँ, हर बार।
no-523d6bdc = नहीं।
not-that-i-noticed-c9ce576e = मुझे तो नहीं लगा।
the-usual-about-half-full-45f0da8d = जितने हमेशा, क़रीब आधी भरी।
yes-the-tap-is-open-759f3368 = हाँ, नल खुला है।
i-could-not-say-e658bc1b = यह तो पता नहीं।

### app/desk/fair.rs

the-job-has-changed-it-is-judged-b5d72b3a = जॉब बदल गया है: आपके रुकने पर इसे नए सिरे से परखा जाएगा।
judged-once-you-pause-7b128a1a = आपके रुकने पर परखा जाएगा।
comparing-with-other-causes-done-19ed933f = दूसरे कारणों से तुलना हो रही है: { $of } में से { $done } …
comparing-with-other-causes-05cb1785 = दूसरे कारणों से तुलना हो रही है …
the-expert-is-working-the-job-333f81e9 = विशेषज्ञ जॉब कर रहा है; इसमें कुछ सेकंड लगते हैं …
apprentices-are-working-it-done-90ec0965 = अप्रेंटिस जॉब कर रहे हैं: { $of } में से { $done } …
apprentices-are-working-it-6f74846f = अप्रेंटिस जॉब कर रहे हैं …
judged-nothing-to-mend-3489dfe6 = परखा गया: कुछ सुधारना नहीं है।
judged-there-is-something-to-8a724d93 = परखा गया: कुछ सुधारना है।
take-this-as-the-target-fc78c0ca = इसे लक्ष्य के रूप में लें
the-expert-s-way-sum-9f93b7c2 = विशेषज्ञ का तरीक़ा: { $sum }
the-expert-s-way-b17c7b89 = विशेषज्ञ का तरीक़ा

### app/desk/faults.rs

always-6736afe4 = हमेशा
from-a-time-on-195994e0 = किसी समय से
on-and-off-by-chance-942488ff = संयोग से, कभी है कभी नहीं
while-the-motor-is-hot-ec132e9b = जब मोटर गरम हो
while-the-basket-turns-fast-48563301 = जब बास्केट तेज़ घूमे
add-a-fault-dcfbd11f = ख़राबी जोड़ें
choose-what-is-wrong-8315da93 = चुनें कि क्या ख़राब है
a-part-has-failed-5db36766 = कोई पार्ट ख़राब हुआ है
wires-pins-terminals-8c3ef682 = तार, पिन, टर्मिनल
outside-the-machine-45b6e066 = मशीन के बाहर
left-wrong-last-time-a2a85fec = पिछली बार ग़लत छोड़ा गया
take-out-name-60512bb1 = हटाएँ: { $name }
take-out-6de35316 = हटाएँ
as-it-usually-comes-on-71a17a1f = जैसे आम तौर पर होती है

### app/desk/field.rs

wanted-until-then-nothing-stands-45c1200c = { $wanted }; तब तक यहाँ कुछ नहीं है
wanted-until-then-kept-stays-649d7586 = { $wanted }; तब तक { $kept } ही रहता है
t-1-an-opening-job-652074fc = 1, शुरुआती जॉब
t-2-one-clear-cause-c17d4a31 = 2, एक साफ़ कारण
t-3-needs-measuring-215cbf08 = 3, नापना ज़रूरी
t-4-misleading-a8a02208 = 4, भटकाने वाला
t-5-several-causes-or-none-87690039 = 5, कई कारण या कोई नहीं
yes-4e9f3590 = हाँ
no-62366ffa = नहीं

### app/desk/fields.rs

friendly-cdd4f17e = मिलनसार
worried-a1121c17 = चिंतित
impatient-0bd992cc = बेसब्र
sceptical-be905d97 = शक करने वाले
haggling-efc9d3cc = मोलभाव पर उतारू
the-job-cb4538f7 = जॉब
what-the-call-is-about-it-must-9979d733 = बुलावा किस बारे में है। इससे कारण पता नहीं चलना चाहिए।
skills-practised-aec9c1f4 = किन कौशलों का अभ्यास
with-commas-between-such-as-ask-27c092f7 = बीच में कॉमा, जैसे: पहले पूछना, पानी की सप्लाई।
the-place-ec372c8f = जगह
what-anyone-sees-there-bfd6611b = वहाँ जो किसी को भी दिखता है
the-tap-is-open-1ff48711 = नल खुला है
water-pressure-d9442beb = पानी का प्रेशर
usual-0-3-a-tank-just-above-the-f40f9d11 = आम तौर पर 0.3 होता है। नल के ठीक ऊपर टंकी हो तो 0.01 होता है।
residual-current-device-9a2b5cf7 = रेज़िडुअल करंट डिवाइस
empty-where-the-house-has-none-a-1c85039a = जिस घर में नहीं है वहाँ ख़ाली। बिना अर्थ या कम वोल्टेज वाला सॉकेट एक ख़राबी है: नीचे देखें।
slope-of-the-floor-2fd8b4f4 = फ़र्श की ढलान
degrees-af5442ee = डिग्री
room-temperature-15eb0664 = कमरे का तापमान
the-load-99bad898 = लोड
dry-washing-in-the-basket-6773326d = बास्केट में सूखे कपड़े
of-it-on-one-side-d3698b71 = उनमें से एक तरफ़
water-left-in-the-tub-527152f4 = टब में बचा पानी
what-an-interrupted-wash-left-d4e20d9a = जो बीच में रुकी धुलाई छोड़ गई।
what-is-wrong-95353e48 = क्या ख़राब है
faults-07be8a04 = ख़राबियाँ
none-is-a-sound-machine-the-b14852c2 = कोई नहीं मतलब सही मशीन: तब सही जवाब यही कहना है, और ग्राहक को दिखाना।
pairs-that-may-come-together-3ce3c798 = जोड़े जो साथ आ सकते हैं
for-a-job-with-two-faults-pairs-5f89829e = दो ख़राबियों वाले जॉब के लिए: वे जोड़े जिन्हें संभावित कारणों में गिना जाए, असली जोड़ा बाक़ियों के बीच।
the-customer-6d3beda4 = ग्राहक
name-0fe07306 = नाम
an-invented-one-5bcedf73 = मनगढ़ंत।
home-52f50eae = घर
a-few-words-such-as-third-floor-743b9e5b = कुछ शब्द, जैसे: तीसरी मंज़िल, लिफ़्ट नहीं।
how-they-meet-the-technician-e24c4253 = तकनीशियन से कैसे मिलते हैं
complaint-4673339a = शिकायत
in-their-own-words-the-machine-s-cb16a768 = उनके अपने शब्दों में। बग़ल में मशीन का अपना व्यवहार एक शिकायत सुझाता है।
answers-to-the-technician-s-e7e1e977 = तकनीशियन के सवालों के जवाब
they-need-not-be-true-a-second-9c0fd6f6 = उनका सच होना ज़रूरी नहीं। जब सवाल दोबारा, दूसरे ढंग से पूछा जाए, तो दूसरा जवाब आता है।
van-instruments-hints-ab49aa56 = वैन, यंत्र, संकेत
parts-in-the-van-cd5288aa = वैन में पार्ट
at-most-eight-others-come-from-e63bb184 = ज़्यादा से ज़्यादा आठ। बाक़ी दूसरे दौरे पर स्टोर से आते हैं।
instruments-in-the-bag-2df19995 = थैले में यंत्र
in-opening-jobs-only-f1e7c7a8 = सिर्फ़ शुरुआती जॉब में
money-and-time-62b01efb = पैसा और समय
call-out-2522cc70 = विज़िट शुल्क
units-c918a49c = यूनिट
one-unit-is-a-minute-of-labour-093053b3 = एक यूनिट एक मिनट की लेबर है, जब तक “लेबर” में कुछ और न लिखा हो।
labour-2bf397ca = लेबर
units-a-minute-18461b11 = यूनिट प्रति मिनट
second-visit-627c1bea = दूसरा दौरा
callback-81c18c26 = दोबारा बुलावा
what-it-costs-when-the-machine-391b7103 = मशीन फिर भी ख़राब रहे तो जो लागत आती है।
a-new-machine-90f27fff = नई मशीन
budget-2715dda8 = बजट
empty-no-bar-95eeca58 = ख़ाली: कोई सीमा नहीं।
time-allowed-7deba2d4 = मिला हुआ समय
marks-to-reach-b9e3b249 = लाने के अंक
of-100-empty-no-bar-a-critical-8d220401 = 100 में से। ख़ाली: कोई सीमा नहीं। जानलेवा सुरक्षा चूक हो तो अंक हर हाल में 39 से ऊपर नहीं जाते।
what-a-skilled-technician-s-way-3afe771d = कुशल तकनीशियन के तरीक़े की लागत।

### app/desk/form.rs

n-of-of-answers-are-ready-made-3177c56d = { $of } में से { $n } जवाब पहले से लिखे हैं: देख लें कि कोई आपकी कहानी के ख़िलाफ़ न हो।

### app/desk/form_table.rs

a-whole-number-is-needed-here-0ad11af1 = यहाँ पूर्ण संख्या चाहिए, जैसे 12
a-whole-number-is-needed-here-559e1a79 = यहाँ पूर्ण संख्या चाहिए, जैसे 12, या कुछ नहीं
a-number-is-needed-here-such-as-6a52f0e2 = यहाँ संख्या चाहिए, जैसे 3.5 या 3,5, या कुछ नहीं
a-number-is-needed-here-such-as-f0b8f12e = यहाँ संख्या चाहिए, जैसे 3.5 या 3,5

### app/desk/home.rs

desk-f1e2a3d8 = डेस्क
make-a-job-of-a-story-from-the-09df169f = फ़ील्ड के क़िस्से को जॉब बनाएँ: चुनें कि क्या ख़राब है, देखें कि तब मशीन क्या करती है, आज़माएँ, और लिंक या फ़ाइल के रूप में कक्षा को दें।
write-a-new-job-e6f49942 = नया जॉब लिखें
or-begin-with-one-that-ships-94260473 = या साथ आने वाले किसी जॉब से शुरू करें
choose-a-job-843cbba0 = जॉब चुनें
make-a-training-set-27c04e46 = प्रशिक्षण सेट बनाएँ
job-files-and-training-sets-to-e98dc88c = काम करने के लिए जॉब की फ़ाइलें और प्रशिक्षण सेट
readings-and-faults-what-each-eba28ccd = रीडिंग और ख़राबियाँ: हर रीडिंग क्या अलग करती है
a-job-without-a-title-86a535be = बिना शीर्षक का जॉब
changed-when-6d229d59 = बदला गया { $when }
drafts-7ca3788d = ड्राफ़्ट
none-yet-a-draft-is-kept-in-this-ea7b2579 = अभी कोई नहीं। ड्राफ़्ट पहले अक्षर से ही इस ब्राउज़र में रखा जाता है।
machine-machine-level-level-c4207d7b = मशीन { $machine }, स्तर { $level }
forget-the-draft-title-27cea723 = ड्राफ़्ट “{ $title }” भुला दें
file-this-training-set-holds-no-2fa98d86 = { $file }: इस प्रशिक्षण सेट में कोई खुला जॉब नहीं है: यह साथ आने वाले जॉब के नाम देता है, या कक्षा की प्रति है।
file-title-is-a-draft-now-576b9c4e = { $file }: “{ $title }” अब ड्राफ़्ट है।

### app/desk/inside_fields.rs

severity-7080f2d2 = गंभीरता
from-0-not-there-to-1-as-listed-d72ff79b = 0, यानी नहीं है, से 1, यानी सूची के मुताबिक़।
it-is-there-e9884dd2 = कब रहती है
begins-after-ab718d39 = इसके बाद शुरू
drawn-anew-every-f95dc48d = हर इतने में नए सिरे से तय
chance-to-be-there-7f2bcccd = मौजूद होने की संभावना
from-0-to-1-b64fafa1 = 0 से 1 तक।
winding-above-a2acf288 = वाइंडिंग इससे ऊपर
basket-above-0bd4038e = बास्केट इससे ऊपर
answer-f94ea0ff = जवाब
asked-again-a16eed6b = दोबारा पूछने पर
answers-on-the-phone-ef2a7b6e = फ़ोन पर जवाब
the-parts-store-cbd99753 = पार्ट का स्टोर
ready-0bca3294 = तैयार
price-dd3ec7ca = दाम
empty-the-price-list-297a69ac = ख़ाली: दाम-सूची से।

### app/desk/judged.rs

this-browser-has-no-threads-so-380becb4 = इस ब्राउज़र में थ्रेड नहीं हैं, इसलिए यहाँ जॉब नहीं परखा जा सकता।

### app/desk/live.rs

fairness-152ffc14 = निष्पक्षता
share-4f856dd8 = साझा करें
a-job-can-be-given-away-once-ddcf218e = जॉब तब दिया जा सकता है जब ऊपर कुछ बाक़ी न हो।
checks-f522dffc = जाँचें
everything-that-a-job-needs-is-d1f0f90c = जॉब को जो कुछ चाहिए, सब है।
how-the-machine-behaves-15b7d597 = मशीन क्या करती है
running-a-program-763e516f = प्रोग्राम चल रहा है …
run-it-again-91fbc1fb = दोबारा चलाएँ
a-fault-that-comes-and-goes-may-61e71f02 = जो ख़राबी आती-जाती है, वह एक बार चलाने पर दिख सकती है और अगली बार नहीं।
what-each-reading-tells-apart-on-cf2a2658 = इस मशीन पर हर रीडिंग क्या अलग करती है
the-machine-runs-once-place-load-b8523e50 = जगह, लोड और ख़राबियाँ ठीक होते ही मशीन चलती है।
computed-the-program-as-it-bfb3d09a = गणना से: प्रोग्राम जैसा शुरू होता है, इस जगह पर इस लोड के साथ, सही मशीन के मुक़ाबले।
nothing-in-a-whole-program-5801a789 = पूरे प्रोग्राम में कुछ भी सही मशीन से अलग नहीं है।
n-figures-as-on-a-sound-machine-00c6ee4a = { $n } आँकड़े सही मशीन जैसे
what-its-customer-would-say-77e127c9 = इसका ग्राहक क्या कहता
use-as-the-complaint-5ab868fa = शिकायत के रूप में लें

### app/desk/pairs.rs

one-fault-24193397 = एक ख़राबी
the-fault-it-may-come-with-005830f4 = जिस ख़राबी के साथ वह आ सकती है
add-the-pair-adbe0b19 = जोड़ा जोड़ें
one-and-other-1595b23a = { $one }, और { $other }

### app/desk/qr.rs

this-is-too-long-for-a-code-give-49a2371c = यह कोड के लिए बहुत लंबा है: लिंक या फ़ाइल दें।

### app/desk/screen.rs

there-is-no-such-draft-in-this-7dad239b = इस ब्राउज़र में ऐसा कोई ड्राफ़्ट नहीं है।
opening-the-draft-f9e8b47b = ड्राफ़्ट खुल रहा है …
to-all-drafts-3dd2515d = सब ड्राफ़्ट पर
kept-in-this-browser-7fedd18c = इस ब्राउज़र में रखा हुआ
back-to-the-desk-b2759d79 = डेस्क पर वापस
what-was-entered-cannot-stand-bf7d37a1 = जो भरा गया वह यहाँ नहीं रह सकता; पहले जो था वही रखा गया
is-more-than-site-load-kg-81db73f1 = `site.load_kg` से ज़्यादा है
a-new-job-25f08289 = नया जॉब
undo-71fd4acf = वापस लें
redo-7412e5e9 = फिर करें
try-it-adc589d7 = आज़माएँ
all-drafts-af7f3f04 = सब ड्राफ़्ट

### app/desk/set_draft.rs

the-set-fb2a3edc = सेट
what-it-is-for-7f5984ef = यह किसलिए है
a-sentence-or-two-for-those-who-b88cfaaa = जो इसे करेंगे उनके लिए एक-दो वाक्य।
the-next-job-opens-from-8b254a01 = अगला जॉब इतने से खुलता है
marks-of-100-da3dad59 = 100 में से अंक
a-draft-of-this-set-is-no-longer-64ac7a41 = इस सेट का एक ड्राफ़्ट अब इस ब्राउज़र में नहीं है: उसे हटाएँ।
a-draft-without-a-title-problem-3129bff7 = बिना शीर्षक का ड्राफ़्ट। { $problem }
draft-title-problem-57864dac = ड्राफ़्ट “{ $title }”। { $problem }

### app/desk/set_maker.rs

training-set-5b1d9cb3 = प्रशिक्षण सेट
jobs-in-the-order-in-which-a-a8f23230 = जॉब उसी क्रम में जिसमें कक्षा उन्हें करती है। अगला तब खुलता है जब पिछला अच्छी तरह आ जाए।
give-it-to-a-class-62f42d3d = कक्षा को दें
give-the-set-a-title-and-add-its-b3d4365d = सेट को शीर्षक दें और उसके जॉब जोड़ें; सब ठीक होते ही उसकी फ़ाइलें यहाँ बनती हैं।
to-the-desk-2530b670 = डेस्क पर
level-level-f02356b5 = स्तर { $level }
jobs-n-74c21a41 = जॉब: { $n }
add-a-job-8264b97c = जॉब जोड़ें
your-drafts-5f15d2fa = आपके ड्राफ़्ट
a-draft-that-is-no-longer-here-4be4e822 = एक ड्राफ़्ट जो अब यहाँ नहीं है
n-title-draft-681b91e5 = { $n }. { $title } (ड्राफ़्ट)
earlier-title-6f410447 = पहले: { $title }
earlier-c50cd8bb = पहले
later-title-c4b4cc01 = बाद में: { $title }
later-f7f62b49 = बाद में
a-class-opens-the-file-on-its-b719ebaf = कक्षा फ़ाइल को अपनी जॉब सूची पर खोलती है। प्रशिक्षुओं वाली फ़ाइल में आपके अपने जॉब ढके होते हैं, ताकि कोई चलते-चलते न पढ़ ले कि क्या ख़राब है; साथ आने वाले जॉब के सिर्फ़ नाम होते हैं।
set-for-trainees-ff3c241d = प्रशिक्षुओं वाला सेट
set-with-the-answers-649d9a19 = जवाबों वाला सेट

### app/desk/share.rs

the-whole-job-is-in-the-address-6dbdea3b = पूरा जॉब पते में है: यह बिना नेटवर्क के चलता है, जहाँ भी यह पेज खुला हो। मशीन में क्या ख़राब है, यह उसमें से एक नज़र में नहीं पढ़ा जा सकता।
copy-the-link-2d0237b1 = लिंक कॉपी करें
code-for-a-classroom-screen-2fc44ebd = कक्षा की स्क्रीन के लिए कोड
what-this-protects-and-what-not-5baa24e5 = यह किससे बचाता है, और किससे नहीं
file-for-trainees-18ed9bdd = प्रशिक्षुओं वाली फ़ाइल
file-with-the-answer-2a15dc90 = जवाब वाली फ़ाइल
the-link-is-selected-copy-it-cb03909b = लिंक चुना हुआ है: उसे कीबोर्ड से कॉपी करें।
copied-53842cb1 = कॉपी हो गया।
the-browser-did-not-allow-it-the-60fa7900 = ब्राउज़र ने अनुमति नहीं दी: लिंक चुना हुआ है, उसे कीबोर्ड से कॉपी करें।

### app/desk/told.rs

label-words-2d5bf97e = { $label }: { $words }
must-not-be-empty-10884fa3 = ख़ाली नहीं छोड़ सकते
must-lie-between-low-and-high-2dccf579 = { $low } और { $high } के बीच होना चाहिए
must-lie-between-low-and-high-a482d7e9 = { $low } और { $high } { $unit } के बीच होना चाहिए
found-is-no-kind-49044318 = { $found } कोई { $kind } नहीं है
found-is-no-kind-nearest-is-name-fa4675f7 = { $found } कोई { $kind } नहीं है; सबसे मिलता-जुलता है “{ $name }”
as-a-whole-e26ab885 = कुल मिलाकर
no-n-99779cbc = नं. { $n }

### app/desk/van.rs

label-n-of-8-7a3abd04 = { $label }: 8 में से { $n }
id-of-another-machine-d664c348 = { $id } (दूसरी मशीन का)
others-come-from-the-store-on-a-b40c9541 = बाक़ी दूसरे दौरे पर स्टोर से आते हैं।
all-instruments-afe8a6a2 = सब यंत्र
only-those-that-are-ticked-here-f2c1d84b = सिर्फ़ वे जिन पर यहाँ निशान है

### app/desk/visit_fields.rs

says-what-they-know-0d25169c = जो पता है वह बताते हैं
says-little-until-asked-in-other-8a2bffdd = दूसरे शब्दों में पूछने तक कम बोलते हैं
is-wrong-at-first-f130a9fb = पहले ग़लत बताते हैं
battery-of-the-instrument-3ea2f871 = यंत्र की बैटरी
of-a-fresh-one-100-a1a3448a = नई बैटरी का 100 होता है।
its-red-lead-is-broken-inside-81754883 = उसकी लाल लीड अंदर से टूटी है
a-lead-is-cracked-down-to-the-b6e06a28 = एक लीड तार तक फटी हुई है
the-fuse-of-its-current-range-4fccafde = उसकी करंट रेंज का फ़्यूज़ उड़ा हुआ है
what-it-shows-for-1-v-eed07f5c = 1 V पर क्या दिखाता है
a-sound-one-1-9f753302 = सही यंत्र 1 दिखाता है।
last-calibrated-bbb3256c = आख़िरी कैलिब्रेशन
months-ago-895ab26b = महीने पहले
measurement-category-printed-on-0e8aafad = उस पर छपी मेज़रमेंट कैटेगरी
t-2-to-4-1-for-none-1cb69b73 = 2 से 4; कोई न हो तो 1 लिखें।
age-of-the-receipt-4762c686 = रसीद कितनी पुरानी
empty-there-is-none-8d90459a = ख़ाली: रसीद नहीं है।
the-maker-pays-for-c84746cc = निर्माता इतने समय तक पैसे देता है
the-rating-plate-can-be-read-and-40042131 = रेटिंग प्लेट पढ़ी जा सकती है और इसी रसीद की है
there-are-signs-of-misuse-19dd6460 = ग़लत इस्तेमाल के निशान हैं
how-the-customer-answers-aa1425dd = ग्राहक कैसे जवाब देते हैं
a-landlord-pays-919e136d = पैसे मकान-मालिक देते हैं
only-the-landlord-can-agree-to-a-826e5e37 = दाम की मंज़ूरी सिर्फ़ मकान-मालिक दे सकते हैं।
asks-to-have-taken-off-the-price-15efb302 = दाम में इतनी कटौती माँगते हैं
the-most-they-pay-for-a-repair-9ccda4c6 = मरम्मत के लिए ज़्यादा से ज़्यादा देंगे
empty-half-the-price-of-a-new-a74b2c4e = ख़ाली: नई मशीन के दाम का आधा।
out-of-the-ordinary-about-the-e6216b22 = इस जगह की असाधारण बातें

### app/desk/visit_lists.rs

today-420372be = आज
for-a-second-visit-38f156be = दूसरे दौरे के लिए
never-no-longer-made-67981406 = कभी नहीं: अब नहीं बनता
it-smells-of-gas-77274b74 = गैस की गंध है
water-stands-in-the-room-839a1bc6 = कमरे में पानी भरा है
somebody-threatens-de3f526d = कोई धमकी दे रहा है
the-socket-is-scorched-42ebf824 = सॉकेट झुलसा हुआ है
an-adaptor-in-between-ebff7436 = बीच में अडैप्टर लगा है
a-rolled-up-extension-reel-6527c4db = लिपटी हुई एक्सटेंशन रील
no-residual-current-device-in-9223c7a2 = घर में रेज़िडुअल करंट डिवाइस नहीं है
a-small-child-about-39f1d960 = आसपास छोटा बच्चा
a-dog-about-40e97be3 = आसपास कुत्ता
a-floor-that-marks-7b50d2d1 = फ़र्श जिस पर निशान पड़ते हैं
bare-edges-on-the-cabinet-96c5445b = कैबिनेट के नंगे किनारे
hot-water-in-the-tub-29fc8bf2 = टब में गरम पानी
empty-what-is-said-at-the-door-5a345315 = ख़ाली: दरवाज़े पर जो कहा जाता है।
it-has-every-part-today-unless-05eb3dcb = जो यहाँ नहीं लिखा, वह हर पार्ट आज उसमें है।
not-in-the-store-today-c1e9f9d2 = आज स्टोर में नहीं
choose-a-part-9dd5aba0 = पार्ट चुनें

### app/desk/way_back.rs

back-to-the-draft-15d66263 = ड्राफ़्ट पर वापस

### app/faults/list.rs

what-each-fault-changes-what-a-e4b94e53 = हर ख़राबी क्या बदलती है, ग्राहक क्या कहेगा, और कौन-सी रीडिंग सही मशीन से सबसे ज़्यादा अलग हैं। आँकड़े पेज खोलने पर निकाले जाते हैं।
narrow-the-list-2468d2b7 = सूची छोटी करें
shown-of-n-faults-986c27e0 = { $n } में से { $shown } ख़राबियाँ
wires-and-terminals-e62e277d = तार और टर्मिनल

### app/faults/mod.rs

the-machines-that-ship-cannot-be-2390e971 = साथ आने वाली मशीनें पढ़ी नहीं जा सकतीं।
no-such-machine-ac3c13ac = ऐसी कोई मशीन नहीं
to-the-list-of-faults-b05e2abf = ख़राबियों की सूची पर
this-machine-cannot-have-that-036535f4 = इस मशीन में यह ख़राबी नहीं हो सकती
to-the-faults-of-machine-b83df494 = ख़राबियों पर: { $machine }

### app/faults/page.rs

faults-of-machine-5dbcd55c = ख़राबियाँ: { $machine }
part-e1469ed4 = { $part }।
how-parts-are-tested-and-reached-d8964fa5 = पार्ट कैसे जाँचे जाते हैं और उन तक कैसे पहुँचते हैं
in-tables-reference-59d99ff6 = तालिकाओं में: { $reference }
what-a-customer-would-say-f2b3d23a = ग्राहक क्या कहेगा
quote-c2e8f4b6 = “{ $quote }”
what-changes-dd3443f2 = क्या बदलता है
readings-that-differ-most-1d3cd1d2 = सबसे ज़्यादा अलग रीडिंग
a-wash-with-it-a7729472 = इस ख़राबी के साथ एक धुलाई
the-wiring-cannot-be-solved-with-eee8660b = इस ख़राबी के साथ वायरिंग का हल नहीं निकाला जा सकता।
no-electrical-reading-tells-it-a494dba0 = कोई बिजली की रीडिंग इसे सही मशीन से अलग नहीं करती।
reading-5ee7339b = रीडिंग
while-9caf4e6e = किस दौरान
sound-b3ca9a34 = सही
with-the-fault-a6379de6 = ख़राबी के साथ
n-more-differ-less-0cbdefd5 = { $n } और कम अलग हैं।
first-and-last-2975b212 = { $first } और { $last }
state-what-apart-cab02a02 = { $state }, अलग किया हुआ: { $what }

### app/faults/wash.rs

two-washes-are-being-run-one-5aa14234 = दो धुलाइयाँ चलाई जा रही हैं, एक ख़राबी के साथ और एक बिना।
a-whole-wash-goes-as-in-a-sound-a7c6d7c0 = पूरी धुलाई सही मशीन जैसी ही चलती है।
in-a-normal-wash-of-4-kg-5fb5471a = 4 kg की सामान्य धुलाई में

### app/file_kind.rs

it-is-a-picture-bff4d545 = यह चित्र है
it-is-a-picture-a-sound-or-a-78c32343 = यह चित्र, आवाज़ या फ़िल्म है
it-is-a-pdf-document-94af960e = यह PDF दस्तावेज़ है
it-is-an-archive-or-an-office-ef846988 = यह आर्काइव या ऑफ़िस दस्तावेज़ है
its-text-is-not-utf-8-save-it-as-893c26a9 = इसका टेक्स्ट UTF-8 नहीं है: इसे UTF-8 में सहेजें और फिर खोलें
its-bytes-are-no-text-d178ce52 = इसके बाइट टेक्स्ट नहीं हैं
it-is-a-job-with-its-answer-the-aa2d9dce = यह जवाब वाला जॉब है: जॉब की सूची और डेस्क इसे खोलते हैं
it-is-a-trainee-s-copy-which-73875639 = यह प्रशिक्षु की प्रति है, जो बंद रहती है: जॉब की सूची इसे खोलती है
it-is-a-training-set-the-list-of-dd64d273 = यह प्रशिक्षण सेट है: जॉब की सूची और डेस्क इसे खोलते हैं
it-is-an-assessment-sit-an-4ffba15e = यह मूल्यांकन है: “मूल्यांकन दें” इसे खोलता है, और इस पर काम करने के लिए “मूल्यांकन बनाएँ”
it-is-a-result-review-results-on-1400154e = यह परिणाम है: डेस्क पर “परिणामों का रिव्यू” इसे खोलता है
it-is-all-that-somebody-keeps-9dc3a0fd = यह वह सब है जो कोई यहाँ रखता है: “मेरा पेज” इसे खोलता है
it-describes-machines-or-faults-a0923809 = यह मशीनों या ख़राबियों का ब्योरा है: वे प्रोग्राम के साथ आती हैं और यहाँ नहीं खोली जातीं
name-is-no-job-set-or-assessment-d963279f = { $name } इस वर्कशॉप का न जॉब है, न सेट, न मूल्यांकन: { $why }।
it-is-empty-08105609 = यह ख़ाली है
it-is-damaged-or-cut-off-at-line-75227f69 = यह पंक्ति { $line } पर टूटी या कटी हुई है: फ़ाइल एक बार फिर लें
it-cannot-be-read-from-line-line-817a1255 = यह पंक्ति { $line } से आगे पढ़ी नहीं जा सकती
it-is-a-text-of-another-kind-cf9d70ee = यह दूसरी तरह का टेक्स्ट है
it-says-format-which-this-42bdc592 = इसमें “{ $format }” लिखा है, जिसे यह संस्करण नहीं पढ़ता: नया संस्करण इस्तेमाल करें
another-program-has-written-it-fe26fba8 = इसे दूसरे प्रोग्राम ने लिखा है
it-does-not-say-so-by-its-format-25f933dc = यह अपने “format” से ऐसा नहीं बताती, जो जॉब में “{ $format }” होता है

### app/finding.rs

what-was-wrong-and-what-was-done-6345c9f3 = क्या ख़राब था और क्या किया गया, मशीन पर दिखाकर
how-much-to-load-and-how-to-4603ddff = कितने कपड़े डालें और उन्हें कैसे फैलाएँ
how-much-detergent-8fa4043e = कितना डिटर्जेंट
clean-the-filters-now-and-then-948e3512 = बीच-बीच में फ़िल्टर साफ़ करें
have-the-house-wiring-seen-to-by-47b6d783 = घर की वायरिंग इलेक्ट्रीशियन से दिखवाएँ
a-new-machine-is-the-better-buy-f34a56c8 = नई मशीन लेना बेहतर सौदा है
keep-it-level-and-do-not-move-it-41413839 = इसे समतल रखें, और अकेले न खिसकाएँ
the-old-part-shown-beside-the-1adc59ae = पुराना पार्ट, नए के बग़ल में दिखाकर
fault-found-44938b77 = मिली ख़राबी
title-on-site-on-site-cost-so-3e3af789 = { $title } · मौक़े पर { $on_site } · अब तक की लागत { $cost }
state-it-and-hand-over-0c7a4b37 = बताएँ और सौंप दें
# of handing in
not-yet-98aebfcd = अभी नहीं
yes-make-it-safe-and-leave-the-a1a2fc5e = हाँ, सुरक्षित करके जाएँ: काम समाप्त
make-safe-and-leave-72beacce = सुरक्षित करके छोड़ें
a-look-round-everything-is-back-9d9a8b6b = चारों ओर एक नज़र: सब कुछ अपनी जगह वापस है।
a-look-round-5b63f253 = चारों ओर एक नज़र
a-look-round-before-you-leave-a56b384e = जाने से पहले चारों ओर एक नज़र
take-off-the-list-what-9335a918 = सूची से हटाएँ: { $what }
cause-70e4acc0 = कारण
and-another-cause-81eec4b6 = और एक कारण
there-is-no-fault-in-the-machine-b4b44217 = मशीन में कोई ख़राबी नहीं है
choose-what-was-wrong-or-say-93a8bd36 = चुनें कि क्या ख़राब था, या कहें कि कोई ख़राबी नहीं है।
what-shows-it-e94a8622 = किससे दिखता है
tick-the-lines-of-your-notebook-dc1ad646 = अपनी नोटबुक की उन पंक्तियों पर निशान लगाएँ जो कारण साबित करती हैं।
the-report-0f09ba96 = रिपोर्ट
the-customer-reads-the-report-ea62da08 = ग्राहक रिपोर्ट पढ़ता है और दस्तख़त करता है
the-customer-signs-only-once-4657bd16 = ग्राहक तभी दस्तख़त करता है जब उसे बताया जाए कि क्या ख़राब था और क्या किया गया।
what-the-customer-is-told-c6be7955 = ग्राहक को क्या बताया जाता है

### app/forgotten.rs

title-is-forgotten-a3f587c4 = “{ $title }” भुला दिया गया।
take-it-back-58de7b9a = वापस लाएँ

### app/format.rs

once-9188b0c4 = एक बार
twice-b4a7d5f3 = दो बार
n-times-5bf6f189 = { $n } बार
n-s-37ea8f6e = { $n } s
hours-h-minutes-min-31c95005 = { $hours } h { $minutes } min

### app/given_files.rs

n-more-in-there-20906759 = उसमें { $n } और
what-was-given-36bec8d3 = जो दिया गया
the-browser-could-not-open-it-f5956cf1 = ब्राउज़र इसे खोल नहीं सका
the-browser-could-not-read-it-38489185 = ब्राउज़र इसे पढ़ नहीं सका
there-is-no-file-in-it-522465ec = इसमें कोई फ़ाइल नहीं है
at-most-n-are-opened-at-once-55113bfc = एक बार में ज़्यादा से ज़्यादा { $n } खुलती हैं
it-is-larger-than-any-that-is-2c92841e = यह यहाँ की किसी भी फ़ाइल से बड़ी है
this-archive-cannot-be-opened-abedd941 = यह आर्काइव नहीं खुल सकता: इसे सादे zip के रूप में फिर से पैक करें, या फ़ोल्डर खोलें
it-cannot-be-taken-out-of-the-0314d271 = इसे आर्काइव से निकाला नहीं जा सकता
archive-n-more-in-there-e9acda53 = { $archive }, उसमें { $n } और

### app/handbook/live_machine.rs

at-rest-39d333e6 = आराम में
filling-7e18dac0 = भराई
washing-3455d4a2 = धुलाई
draining-bd32e147 = ड्रेन
spinning-39b47eab = स्पिन
moment-of-the-program-b381cf21 = प्रोग्राम का चरण
machine-in-section-moment-16541d6a = { $machine }, काट में, { $moment }

### app/handbook/parts.rs

from-the-machine-s-own-file-what-ef986cb3 = मशीन की अपनी फ़ाइल से: बेंच पर आप वही कर सकते हैं जो यहाँ लिखा है। “टेस्ट” के नीचे की सीमाएँ उसकी डेटा शीट की हैं।
what-each-reading-tells-apart-7aa95ba2 = हर रीडिंग किन्हें अलग करती है
does-87bd47d0 = क्या करता है
fails-67ee03da = कैसे ख़राब होता है
test-2ffcbe05 = टेस्ट
from-outside-c828a64a = बाहर से
reach-it-reach-about-n-min-for-a306f0b1 = वहाँ तक पहुँच: { $reach }। काम में ही लगभग { $n } min लगते हैं।
held-by-what-e3590b8f = किससे कसा: { $what }।
tools-tools-fc32b2cd = औज़ार: { $tools }।
mind-what-a0ee41f9 = ध्यान रखें: { $what }।
on-refit-check-85a91f3a = दोबारा लगाते समय: { $check }।
verb-what-b88782e8 = { $what } { $verb }
verb-what-held-by-4284508c = { $what } { $verb } ({ $held_by })

### app/handbook/worked.rs

this-job-cannot-be-replayed-a9a7679e = यह जॉब चलाकर नहीं दिखाया जा सकता।
# to the step before
back-48942285 = पिछला क़दम
next-step-ab2acdfa = अगला क़दम
step-step-of-n-2e9e80c8 = क़दम { $step }, कुल { $n }
meter-shown-a957b6d5 = मीटर: { $shown }
the-machine-after-this-step-6ab02895 = इस क़दम के बाद मशीन
it-was-causes-outcome-9e35cbad = ख़राबी यह थी: { $causes }। { $outcome }।
work-it-yourself-6ea36796 = ख़ुद करके देखें
cost-so-far-cost-b1e18cf6 = अब तक की लागत { $cost }
a-sound-machine-sound-da13ac60 = (सही मशीन: { $sound })

### app/handbook.rs

how-a-job-goes-27b6751d = जॉब कैसे चलता है
measuring-1ed87f08 = नापना
how-to-find-a-fault-408ccc3e = ख़राबी कैसे ढूँढें
after-a-repair-57f8ba27 = मरम्मत के बाद
how-marks-are-given-9574c1ac = अंक कैसे मिलते हैं
how-machine-p-works-dd7a1e5e = मशीन P कैसे काम करती है
parts-of-machine-p-730ebba7 = मशीन P के पार्ट
how-machine-t-works-4859d532 = मशीन T कैसे काम करती है
parts-of-machine-t-6f0eb55b = मशीन T के पार्ट
how-machine-n-works-ee8cf4dc = मशीन N कैसे काम करती है
parts-of-machine-n-590e92b9 = मशीन N के पार्ट
writing-a-job-2ef8eb8f = जॉब लिखना
sharing-a-job-ed8017ab = जॉब बाँटना
assessing-241cfa8d = मूल्यांकन करना
training-systems-and-stores-08b31f36 = प्रशिक्षण सिस्टम और भंडार
results-and-what-they-prove-c84dfe62 = परिणाम और वे क्या साबित करते हैं
for-many-people-b73fdcbe = बहुत लोगों के लिए
what-this-is-and-is-not-6ebf6807 = यह क्या है और क्या नहीं
what-it-was-checked-against-6291c6d3 = इसे किससे मिलाकर जाँचा गया
worked-job-title-818c05f0 = करके दिखाया जॉब: { $title }
chapters-fae19813 = अध्याय
readings-and-faults-d80e6302 = रीडिंग और ख़राबियाँ

### app/job_filter.rs

find-a-job-9844c5fe = जॉब खोजें
find-3e1cd17a = खोजें
part-to-practise-tells-where-to-79a96088 = अभ्यास का पार्ट (बता देता है कि कहाँ देखें)
shown-of-n-jobs-9af388a1 = { $n } में से { $shown } जॉब
all-13254bc4 = सब

### app/job_host.rs

bench-346ad459 = बेंच
opening-the-job-96ce043b = जॉब खुल रहा है …

### app/job_tile.rs

about-n-min-6d94dcde = लगभग { $n } min

### app/jobs.rs

customers-who-have-called-each-67614d33 = ग्राहक जिन्होंने फ़ोन किया है। हर मशीन असली की तरह चलती है: आप जो नापते हैं, वह हिसाब से निकाला जाता है।
from-your-instructor-244eec4f = आपके इंस्ट्रक्टर से
sit-an-assessment-3890ba80 = मूल्यांकन दें
no-job-fits-all-of-that-f6d2b894 = कोई जॉब इन सबसे मेल नहीं खाता।
show-all-jobs-e3c77995 = सब जॉब दिखाएँ
this-is-training-local-codes-and-396f8041 = यह प्रशिक्षण है। स्थानीय नियम और लाइसेंस वाला कामकाज पहले आते हैं; सिर्फ़ सिमुलेशन के भरोसे कभी असली मशीन न खोलें।
where-you-left-off-bb8f03a1 = जहाँ आपने छोड़ा था
go-on-b68d20dc = आगे बढ़ें
first-time-here-67a3361d = यहाँ पहली बार?
start-with-a-short-job-a-hint-a1659db5 = छोटे जॉब से शुरू करें। चित्र के नीचे का संकेत बताता है कि आगे क्या करना है, और हो जाने पर हट जाता है।
start-the-first-job-a0482e89 = पहला जॉब शुरू करें
begun-on-site-on-site-e11c5ab7 = शुरू किया, मौक़े पर { $on_site }
level-level-skills-e98f56a2 = स्तर { $level } · { $skills }

### app/loading.rs

there-is-no-job-named-id-34525b34 = “{ $id }” नाम का कोई जॉब नहीं है।
this-job-was-begun-with-version-9e93f8fb = यह जॉब प्रोग्राम के संस्करण { $version } से शुरू हुआ था और इस संस्करण से जारी नहीं रखा जा सकता।
the-machine-of-this-job-cannot-51b413fc = इस जॉब की मशीन तैयार नहीं की जा सकती: { $why }
this-job-cannot-be-opened-5775793b = यह जॉब नहीं खुल सकता
start-id-again-1fdfbe22 = { $id } फिर शुरू करें

### app/lost_points/mod.rs

working-out-where-points-were-d55e2e14 = हिसाब लगाया जा रहा है कि अंक कहाँ गए: { $of } में से जॉब { $n } …
where-points-were-lost-6c725ec2 = अंक कहाँ गए
job-marks-of-100-0f1836e8 = { $job }: 100 में से { $marks }
diagnosis-economy-and-evidence-64b072c7 = निदान, किफ़ायत और सबूत इससे गिने जाते हैं कि हर फ़ैसले की कितनी क़ीमत थी, जो यह ब्राउज़र फिर से नहीं निकाल सका: उनके कारण यहाँ नहीं हैं।
run-again-here-its-marks-do-not-f1071219 = यहाँ दोबारा चलाने पर इसके अंक वैसे नहीं निकलते जैसे लिखे हैं: कोई कारण नहीं दिया जा सकता।
nothing-was-lost-482adb9f = कुछ नहीं गया।
job-where-points-were-lost-a-1baa7a98 = { $job }: अंक कहाँ गए, तालिका
# of the marks
part-cdd57290 = हिस्सा
# of the marks
points-68e36552 = अंक
a-rule-whose-breach-can-kill-was-87559b9d = ऐसा नियम टूटा जिसका टूटना जान ले सकता है: पूरे जॉब के 100 में से ज़्यादा से ज़्यादा { $most } हैं, उसके हिस्सों के जोड़ से { $points } कम।
small-amounts-together-4f1af151 = छोटे-छोटे अंक मिलाकर

### app/lost_points/words.rs

nothing-was-tested-or-repaired-48e88c5c = कुछ भी न जाँचा गया न सुधारा गया, इसलिए सुरक्षित काम दिखा ही नहीं
no-cause-was-stated-cb383d5b = कोई कारण नहीं बताया गया
the-cause-stated-first-is-not-77569690 = पहले बताया गया कारण वह नहीं है जो ख़राब है, या सिर्फ़ वही नहीं
the-cause-stated-last-is-not-6c649e36 = आख़िर में बताया गया कारण वह नहीं है जो ख़राब है, या सिर्फ़ वही नहीं
the-cause-stated-is-not-what-is-cd9613f6 = बताया गया कारण वह नहीं है जो ख़राब है, या सिर्फ़ वही नहीं
the-machine-still-fails-at-hand-0eca07a1 = सौंपते समय मशीन अब भी ख़राब है
a-right-answer-counts-less-where-0e3ce89d = सही जवाब वहाँ कम गिना जाता है जहाँ उसका सबूत कम था
another-decision-would-have-7e568bef = दूसरे फ़ैसले से { $cost } बच जाते
a-hint-was-asked-for-90b04a37 = संकेत माँगा गया
something-was-damaged-price-to-7715e82b = कुछ टूट-फूट हुई: { $price } भरने होंगे
somebody-has-to-come-again-price-0854b395 = किसी को दोबारा आना पड़ेगा: { $price }
the-part-fitted-was-sound-price-b821ff00 = लगाया गया पार्ट सही था: { $price }
time-and-what-else-it-took-the-69cb963c = समय और बाक़ी जो लगा: जॉब में { $cost } लगे, उसका लक्ष्य { $target } है
this-job-has-no-target-to-065e7c3c = इस जॉब का कोई लक्ष्य नहीं जिससे तुलना हो
left-out-what-a9d3c338 = छूट गया: { $what }
nothing-was-begun-f4573f0a = कुछ शुरू नहीं किया गया
nothing-in-the-notebook-spoke-c854c6ad = नोटबुक में कुछ भी इस पार्ट की तरफ़ इशारा नहीं करता था
the-part-fitted-was-sound-0fdfefc9 = लगाया गया पार्ट सही था
nothing-is-wrong-with-the-8598c707 = मशीन में कुछ ख़राब नहीं है, और इसे दिखाने वाली रीडिंग बहुत कम हैं
title-a-breach-that-can-kill-at-97fb9aad = { $title }: ऐसा उल्लंघन जो जान ले सकता है, पूरे जॉब के ज़्यादा से ज़्यादा { $most }
safety-rule-broken-title-fd125676 = सुरक्षा नियम टूटा: { $title }
the-evidence-was-short-of-what-6150cac8 = इस फ़ैसले को जितना चाहिए, सबूत उससे कम था
the-evidence-gave-it-percent-to-40a2f118 = सबूत के हिसाब से इससे ठीक होने की संभावना { $percent } % थी, बहुत कम
no-line-of-the-notebook-was-f33db4b2 = कारण के लिए नोटबुक की कोई पंक्ति नहीं दी गई
of-of-lines-offered-for-the-62182ed5 = कारण के लिए दी गई { $of } पंक्तियों में से { $n } उसे सही मशीन से अलग करती हैं

### app/me/everything.rs

file-not-all-could-be-kept-why-910b264b = { $file }: सब कुछ नहीं रखा जा सका। { $why }
file-n-entry-taken-in-left-left-4b11972d = { $file }: { $n } प्रविष्टि ली गई, { $left } यहाँ जैसी हैं वैसी ही छोड़ी गईं।
file-n-entries-taken-in-left-e473680d = { $file }: { $n } प्रविष्टियाँ ली गईं, { $left } यहाँ जैसी हैं वैसी ही छोड़ी गईं।
file-this-is-no-file-of-8147ea68 = { $file }: यह आपके यहाँ के सब कुछ वाली फ़ाइल नहीं है ({ $error }); वह चुनें जो “सब कुछ सहेजें” ने बनाई।
file-format-found-this-version-b0160922 = { $file }: format: "{ $found }": यह संस्करण "{ $format }" पढ़ता है।
file-entries-key-it-cannot-be-a4c2cea2 = { $file }: entries.{ $key }: इसे पढ़ा नहीं जा सकता और यह छोड़ दिया गया।

### app/me/next.rs

it-is-due-some-time-has-passed-15211b87 = इसका समय हो गया: आपने इसे आख़िरी बार दिखाया, तब से कुछ समय बीत चुका है
it-is-due-in-n-days-c86b5e88 = इसका समय { $n } दिन में है
it-went-right-in-right-of-n-jobs-ff2cc6dc = यह { $n } जॉब में से { $right } में सही गया
shown-times-so-far-once-more-6cda88c9 = अब तक दिखाया: { $times }; एक बार और से यह और पक्का होगा

### app/me/screen.rs

me-67e00bc7 = मेरा पेज
what-your-finished-jobs-show-all-167fb56f = आपके पूरे किए जॉब क्या दिखाते हैं। यह सब सिर्फ़ इस ब्राउज़र में रखा है; कोई और इसे नहीं देखता।
nothing-yet-when-a-job-is-79748cb3 = अभी कुछ नहीं। जब कोई जॉब पूरा होगा, यह पेज दिखाएगा कि उसने आपके कौशलों के बारे में क्या बताया।
# what to do next
next-0c2686ad = आगे
a-skill-counts-as-known-from-a-718a7844 = कौशल 95 % संभावना से आता हुआ माना जाता है, यह हर पट्टी में लाइन है। फीका हिस्सा बताता है कि संभावना कितनी ग़लत हो सकती है; हर जॉब के साथ वह सँकरा होता है।
jobs-done-70e598b3 = किए गए जॉब
every-skill-you-have-shown-is-ef766b00 = आपने जो भी कौशल दिखाए वे सब आते हैं और किसी का समय नहीं हुआ। जो जॉब चाहें करें।
skill-why-94dadb1a = { $skill }: { $why }।
no-rule-broken-in-n-job-bb9d36fb = { $n } जॉब में कोई नियम नहीं टूटा।
no-rule-broken-in-n-jobs-8aaaa626 = { $n } जॉब में कोई नियम नहीं टूटा।
critical-51540388 = जानलेवा
major-473ec6e2 = बड़ा
minor-ff3062ae = छोटा
safety-rules-a-table-cfde88ef = सुरक्षा नियम, तालिका
# the latest day
last-dc4ea09b = आख़िरी बार
jobs-done-a-table-ddfe065a = किए गए जॉब, तालिका
saved-open-the-file-with-your-3ec7ebe6 = सहेज लिया। फ़ाइल को अपने कैलेंडर से खोलें।
save-these-days-for-my-calendar-2068796d = ये दिन मेरे कैलेंडर के लिए सहेजें
file-why-e72017a7 = { $file }: { $why }
everything-is-erased-ca0a4ddc = सब कुछ मिटा दिया गया।
the-browser-did-not-let-the-page-68a3a1b6 = ब्राउज़र ने पेज को सब कुछ मिटाने नहीं दिया।
everything-of-yours-932b2cb9 = आपका सब कुछ
jobs-drafts-marks-and-settings-a08b1183 = जॉब, ड्राफ़्ट, अंक और सेटिंग्स एक फ़ाइल में: दूसरे डिवाइस पर ले जाने या रखने के लिए।
save-everything-127185c9 = सब कुछ सहेजें
erase-everything-fe294832 = सब कुछ मिटाएँ
yes-erase-everything-84564f7b = हाँ, सब कुछ मिटाएँ
files-that-save-everything-made-a7e9428d = “सब कुछ सहेजें” से बनी फ़ाइलें
the-browser-did-not-give-what-it-9cc528f6 = ब्राउज़र ने वह नहीं दिया जो वह रखता है।
saved-keep-the-file-where-only-90430e5d = सहेज लिया। फ़ाइल ऐसी जगह रखें जिसे सिर्फ़ आप खोल सकें।

### app/me/skills.rs

skills-a-table-65930a0e = कौशल, तालिका
how-well-you-know-it-6fb50830 = आपको कितना आता है
went-right-57d85c61 = सही गया
show-it-again-by-85f3cf9e = तब तक फिर दिखाएँ
# of a skill
known-d813bd53 = आता है
# of a skill
nearly-there-7d220845 = लगभग आता है
# of a skill
on-the-way-8ff2b4c7 = रास्ते में
# of a skill
not-yet-5b8490c3 = अभी नहीं
word-chance-known-between-lowest-9c091c3e = { $word }: संभावना { $known } %, { $lowest } और { $highest } के बीच

### app/net.rs

nobody-answers-and-this-browser-7725beca = कोई जवाब नहीं देता, और इस ब्राउज़र ने इसे नहीं रखा है
it-came-in-pieces-only-53e59cfe = यह सिर्फ़ टुकड़ों में आया
the-server-answers-status-3bfb5fd6 = सर्वर ने { $status } जवाब दिया

### app/newer.rs

a-newer-build-of-this-page-is-1cdae62e = इस पेज का नया बिल्ड तैयार है। आपके जॉब जैसे हैं वैसे ही रहते हैं।
use-it-now-04406f7d = अभी इस्तेमाल करें

### app/open_files.rs

what-drop-onto-this-page-or-7909c126 = { $what }: इस पेज पर डालें, या

### app/open_job.rs

link-0ddb0669 = लिंक
this-link-holds-no-job-that-can-a3082f9c = इस लिंक में ऐसा कोई जॉब नहीं है जो खुल सके
a-job-for-you-1d8ee97b = आपके लिए एक जॉब
who-home-level-level-3cfa6ea1 = { $who }, { $home } · स्तर { $level }
the-link-holds-the-whole-job-a4a4b2c6 = लिंक में पूरा जॉब है। किसी सर्वर से कुछ नहीं पूछा गया।
see-the-debrief-2ed0478e = समीक्षा देखें
start-this-job-c2b69182 = यह जॉब शुरू करें
keep-it-for-later-59532040 = बाद के लिए रखें
at-most-minutes-minutes-on-site-bd9a3c9b = मौक़े पर ज़्यादा से ज़्यादा { $minutes } मिनट
at-least-least-of-100-marks-9b7c293c = 100 में से कम से कम { $least } अंक

### app/opened.rs

jobs-and-training-sets-that-were-a54e01ee = आपको दिए गए जॉब और प्रशिक्षण सेट
name-title-is-on-the-list-52f2129d = { $name }: “{ $title }” सूची में है।
name-the-training-set-title-with-4997c7ef = { $name }: प्रशिक्षण सेट “{ $title }”, { $n } जॉब के साथ, इस पेज पर सबसे ऊपर है।

### app/outbox/place.rs

as-the-store-says-7382dee9 = जैसा भंडार बताए
nobody-answers-there-is-no-14f14c7d = कोई जवाब नहीं देता: नेटवर्क नहीं है, या भंडार इस पेज को अपने से बात नहीं करने देता
refused-status-why-41b51002 = मना किया ({ $status }): { $why }
the-store-refuses-the-user-or-ed9990e5 = भंडार यूज़र या पासवर्ड नहीं मानता
the-store-answers-status-206c0ab8 = भंडार ने { $status } जवाब दिया

### app/outbox/queue.rs

this-browser-has-no-room-to-put-3fb5c60a = भंडार जो नहीं लेता, उसे अलग रखने की जगह इस ब्राउज़र में नहीं है

### app/outbox/section.rs

n-results-wait-7956324c = { $n } परिणाम इंतज़ार में हैं।
n-results-wait-why-8b7ce062 = { $n } परिणाम इंतज़ार में हैं: { $why }।
n-statements-were-refused-they-82420e89 = { $n } स्टेटमेंट नहीं लिए गए; वे यहाँ रखे हैं, “अभी भेजें” से एक बार फिर आज़माए जाते हैं, और परिणामों की फ़ाइलों में भी वही है।
an-address-begins-with-https-or-af71490b = पता https:// या http:// से शुरू होता है और उसमें ख़ाली जगह नहीं होती।
kept-results-are-sent-there-when-8649f22e = रख लिया। परिणाम जमा होने पर वहाँ भेजे जाते हैं।
tried-d4bbeb83 = कोशिश की गई।
forgotten-nothing-is-sent-any-2aad6061 = भुला दिया: अब कुछ नहीं भेजा जाता।
a-store-for-results-f77ea43c = परिणामों का भंडार
where-a-department-keeps-f1ac778f = जहाँ कोई विभाग लर्निंग रिकॉर्ड (xAPI) रखता है, वहाँ मूल्यांकन के परिणाम अपने आप जा सकते हैं। वे यहाँ तब तक इंतज़ार करते हैं जब तक भंडार उन्हें ले न ले। पता न हो तो इस ब्राउज़र से कुछ बाहर नहीं जाता।
address-700560f3 = पता
as-its-keeper-gives-it-such-as-cf68fd47 = जैसा उसे सँभालने वाला देता है (जैसे https://store.example/xAPI)। उसे इस पेज को अपने से बात करने की अनुमति देनी होगी।
user-e0a63e12 = यूज़र
password-2cc30838 = पासवर्ड
kept-in-this-browser-as-it-is-ee86322d = इस ब्राउज़र में जैसा है वैसा ही रखा जाता है: ऐसा इस्तेमाल करें जिसे सिर्फ़ लिखने की अनुमति हो।
keep-555cbe68 = रखें
send-now-24c5991f = अभी भेजें
forget-the-store-719e911e = भंडार को भुला दें
version-of-the-interface-a4cc2814 = इंटरफ़ेस का संस्करण
choose-one-only-where-the-store-ec7bdc0a = तभी चुनें जब भंडार न बताए कि वह कौन-सा समझता है, और सब कुछ मना कर दे।

### app/proves.rs

what-this-result-shows-fa2ae5f8 = यह परिणाम क्या दिखाता है
finding-faults-the-order-of-work-adadab5c = ख़राबी ढूँढना, काम का क्रम, और सुरक्षा के फ़ैसले। यह हाथ का काम नहीं दिखाता: उसके लिए गवाह के सामने प्रैक्टिकल है, निरीक्षण-पत्र के साथ।
computed-by-version-version-of-6964ecc0 = प्रोग्राम के संस्करण { $version } ने, जो कुछ किया गया उस सबसे, हिसाब निकाला; { $computed }
reliability-of-n-jobs-at-least-84ab6fcf = { $n } जॉब की विश्वसनीयता: 1 में से कम से कम { $least }, एक व्यक्ति के बारे में फ़ैसले के लिए काफ़ी।
reliability-of-n-jobs-at-least-d2d9bc47 = { $n } जॉब की विश्वसनीयता: 1 में से कम से कम { $least }, अकेले इसी से एक व्यक्ति के बारे में फ़ैसले के लिए बहुत कम: इसे दूसरी बैठकों और प्रैक्टिकल के साथ मिलाकर देखें।
from-job-to-job-the-marks-lie-2b795df5 = जॉब-दर-जॉब अंक अलग-अलग हैं: औसत लगभग ±{ $marks } तक पक्का है।
the-marks-of-these-jobs-are-191277d0 = इन जॉब के अंक बराबर हैं: इतने कम से फैलाव नहीं बताया जा सकता।
one-job-tells-of-no-spread-how-1d3f090c = एक जॉब फैलाव के बारे में कुछ नहीं बताता: उसके अंक कितने पक्के हैं, यह मालूम नहीं।

### app/readings.rs

every-fault-a-machine-can-have-3230fbdd = मशीन में हो सकने वाली हर ख़राबी, उसकी डेटा शीट की रीडिंग और पूरे प्रोग्राम के आँकड़ों के सामने। जो तकनीशियन को नज़र आएगा उस पर ● का निशान है; जिस पर निशान नहीं, वह वहाँ सही मशीन जैसा दिखता है।
the-table-of-this-machine-cannot-25d6501d = इस मशीन की तालिका निकाली नहीं जा सकती।
done-of-n-faults-computed-866421ca = { $n } में से { $done } ख़राबियों का हिसाब हुआ …
save-as-csv-b30635b0 = CSV के रूप में सहेजें
faults-against-readings-fdac3068 = रीडिंग के सामने ख़राबियाँ

### app/report.rs

report-4681fa0b = रिपोर्ट
what-the-customer-said-69287971 = ग्राहक ने क्या कहा
found-0abaed3f = पाया गया
done-8dd31791 = किया गया
told-and-shown-74c6f73c = बताया और दिखाया गया
signature-of-the-customer-8ecd44d3 = ग्राहक के दस्तख़त:
from-a-simulated-machine-for-bc193b34 = सिमुलेटेड मशीन से, प्रशिक्षण के लिए।
the-machine-at-when-5ce4e4f6 = { $when } पर मशीन
measured-69a8be81 = नापा गया
what-0815494f = क्या
bill-24a8cf3c = बिल

### app/rows.rs

this-browser-has-no-threads-so-6fb62a2e = इस ब्राउज़र में थ्रेड नहीं हैं, इसलिए इसमें कुछ भी निकाला नहीं जा सकता।

### app/session.rs

title-text-5c0a14b4 = { $title }। { $text }

### app/settings.rs

as-the-device-is-set-cefbfa20 = जैसा डिवाइस में सेट है
# of colours
light-6cc5e111 = हल्का
# of colours
dark-d9af6257 = गहरा
settings-4b058728 = सेटिंग्स
give-hints-in-the-opening-jobs-ef3700a2 = शुरुआती जॉब में संकेत दें
show-all-names-on-the-pictures-15bb4512 = चित्रों पर सब नाम दिखाएँ
single-keys-work-on-the-bench-6ac8f39c = बेंच पर एक कुंजी वाले आदेश चलें
colours-1a29ff2a = रंग
strong-contrast-f6f08b9c = तेज़ कंट्रास्ट
# what is heard
sound-c25ddb22 = आवाज़
hear-the-machine-c33f3bb7 = मशीन की आवाज़ सुनें
what-sounds-is-also-written-34e64458 = जो आवाज़ होती है, वह चित्र के नीचे लिखी भी होती है।
language-9a73db9b = भाषा
volume-74f576af = वॉल्यूम
percent-percent-dd8ba63f = { $percent } प्रतिशत
keys-on-the-bench-fa8e11c3 = बेंच पर कुंजियाँ
everything-works-with-tab-arrow-cdd074ff = सब कुछ Tab, तीर वाली कुंजियों और Enter से चलता है। ये एक-एक कुंजियाँ ज़्यादा तेज़ हैं; आपके टाइप करते समय ये कुछ नहीं करतीं।
key-cd1ac90c = कुंजी
what-it-does-4a4676fd = क्या करती है
your-data-0819f3fe = आपका डेटा
yes-erase-all-my-jobs-35fd8beb = हाँ, मेरे सब जॉब मिटाएँ
erase-my-jobs-665d38c7 = मेरे जॉब मिटाएँ
the-browser-did-not-let-the-page-142f08d7 = ब्राउज़र ने पेज को कुछ मिटाने नहीं दिया।
all-jobs-are-erased-0ba72486 = सब जॉब मिटा दिए गए।

### app/sheets.rs

told-the-customer-3ca98071 = ग्राहक को बताया
date-and-name-b226327f = तारीख़ और नाम
job-card-36e6252a = जॉब कार्ड
sheets-to-print-9c686f7d = प्रिंट करने के पन्ने
who-the-machine-as-it-stands-44bb8062 = { $who }: मशीन, आख़िरी क्रिया के बाद जैसी है। हर पन्ना अलग छपता है, सफ़ेद पर काला।
which-sheets-e2f02066 = कौन-से पन्ने
job-card-title-0aa664e0 = जॉब कार्ड: { $title }
a-simulated-job-for-training-46e6e78c = सिमुलेटेड जॉब, प्रशिक्षण के लिए।
machine-picture-title-customer-0500cd06 = { $machine }, { $picture }। { $title }, { $customer }, { $clock } बजे।

### app/shell.rs

to-the-content-394b43aa = सामग्री पर जाएँ
handbook-b94a65c5 = हैंडबुक
there-is-nothing-at-this-address-b42878d1 = इस पते पर कुछ नहीं है
tubwright-37232af5 = Tubwright
screens-984019e6 = स्क्रीन

### app/sitting/form.rs

give-the-number-on-your-slip-or-2f428199 = अपनी पर्ची का नंबर दें, या अभ्यास के लिए अपना कोई नंबर।
at-most-n-letters-on-one-line-8eae01b7 = एक पंक्ति में ज़्यादा से ज़्यादा { $n } अक्षर।
the-letters-do-not-go-with-the-b419a06b = ये अक्षर स्टार्ट कोड और नंबर से मेल नहीं खाते: तीनों को अपनी पर्ची से मिलाएँ।
your-instructor-tells-this-word-0bf48ebd = जब सब शुरू करते हैं, तब आपका इंस्ट्रक्टर यह शब्द बताता है।
without-this-nothing-can-be-11f994da = इसके बिना कुछ रिकॉर्ड नहीं हो सकता, इसलिए मूल्यांकन भी नहीं हो सकता।

### app/sitting/jobs.rs

job-place-of-n-1a528084 = जॉब { $place }, कुल { $n }
job-n-c9c3bafc = जॉब { $n }

### app/sitting/limits.rs

n-s-left-f5a7ac47 = { $n } s बाक़ी
n-min-left-eadff3f4 = { $n } min बाक़ी
hours-h-minutes-min-left-24fe93d6 = { $hours } h { $minutes } min बाक़ी

### app/sitting/lock.rs

the-clock-stands-3a77a06b = घड़ी रुकी है
the-jobs-of-the-assessment-open-24529712 = घड़ी चलने पर मूल्यांकन के जॉब फिर खुलते हैं, बाक़ी पेज जमा करने के बाद।
not-during-the-assessment-452fc9de = मूल्यांकन के दौरान नहीं
an-assessment-is-running-in-this-f2e10823 = इस ब्राउज़र में मूल्यांकन चल रहा है। यह पेज जमा करने के बाद फिर खुलता है।
this-job-is-handed-in-9aaffb01 = यह जॉब जमा हो चुका है
what-came-of-it-stands-with-the-40eedb90 = इसका नतीजा परिणाम के साथ है।
to-the-assessment-44e0e277 = मूल्यांकन पर

### app/sitting/mark_sheet.rs

passed-254b3fb9 = पास
on-the-border-more-jobs-decide-802130f4 = सीमा पर: और जॉब फ़ैसला करते हैं
# of a pass
not-yet-d79d1753 = अभी नहीं
mark-sheet-a7391383 = अंक-पत्र
mark-sheet-a-table-7e75496a = अंक-पत्र, तालिका
ended-ec2b41db = अंत
economy-and-evidence-go-by-the-67a8098a = जॉब { $places } में किफ़ायत और सबूत बिल और नोटबुक से आँके गए हैं: यह ब्राउज़र नहीं निकाल सका कि हर फ़ैसले का मोल क्या था।
not-begun-ab66e96f = शुरू नहीं किया
points-of-all-81479442 = { $all } में से { $points }
severity-rule-times-93493130 = { $severity }: { $rule }, { $times }

### app/sitting/observer.rs

switches-off-unplugs-keeps-the-806f1a67 = स्विच बंद करना, प्लग निकालना, प्लग नज़र के सामने रखना
shuts-the-tap-and-bleeds-the-2a7b40c0 = नल बंद करना और होज़ का प्रेशर निकालना
waits-discharges-proves-the-474e95b5 = रुकना, चार्ज उतारना, टेस्टर को पहले और बाद में जाँचना
proves-dead-where-the-hands-will-106a2c2f = जहाँ हाथ जाएँगे वहाँ डेड साबित करना
hands-and-tools-7f644a87 = हाथ और औज़ार
takes-covers-off-without-harm-to-a27a681b = किनारों, क्लिपों और तारों को नुक़सान पहुँचाए बिना कवर उतारना
holds-and-places-probes-with-dry-e56344cc = प्रोब सूखे, स्थिर हाथों से पकड़ना और लगाना
pulls-connectors-by-their-body-209bd007 = कनेक्टर को उसकी बॉडी से खींचना, तार से कभी नहीं
lifts-and-lays-down-with-help-or-64962182 = किसी की मदद या पट्टे से उठाना और लिटाना
putting-back-85509675 = वापस लगाना
seats-belt-hoses-and-lever-and-54b75e66 = बेल्ट, होज़ और लीवर ठीक से बैठाना, और हर एक को हाथ से जाँचना
refits-the-earth-first-and-c27eb72f = अर्थ सबसे पहले दोबारा लगाना, और अंत में कोई स्क्रू या क्लिप बचा न रहना
earth-bond-insulation-and-0e619643 = अर्थ बॉन्ड, इंसुलेशन और लीकेज नापना और लिखना
runs-the-machine-looks-for-leaks-b0ea26b2 = मशीन चलाना, लीक देखना, ब्रेक का समय नापना
asks-listens-names-the-price-d9296870 = पूछना, सुनना, काम से पहले दाम बताना
leaves-the-place-dry-and-clean-b2c55f5f = जगह सूखी और साफ़ छोड़ना, दिखाना कि क्या किया गया
for-a-practical-on-a-real-4b38e8bb = असली मशीन पर, गवाह के सामने प्रैक्टिकल के लिए। सिमुलेशन ख़राबी ढूँढने, काम के क्रम और सुरक्षा के फ़ैसलों के बारे में बताता है; यह पत्र हाथ के काम के बारे में बताता है।
candidate-s-number-6e11d3d1 = परीक्षार्थी का नंबर
machine-and-fault-set-21cdd40f = मशीन और लगाई गई ख़राबी
place-and-date-4c16688b = जगह और तारीख़
observer-3fac8c77 = निरीक्षक
seen-da72188a = देखा
with-help-1090bd08 = मदद से
note-919a0c3d = नोट
a-step-that-endangers-anybody-ac1dfee5 = जिस क़दम से किसी को ख़तरा हो, उससे प्रैक्टिकल ख़त्म हो जाता है: रोकें, सुरक्षित करें, लिख लें।
may-work-alone-yes-or-what-comes-a09f7d65 = अकेले काम करने लायक: हाँ, या पहले क्या चाहिए
signature-of-the-observer-50b3b991 = निरीक्षक के दस्तख़त
signature-of-the-candidate-5a306df0 = परीक्षार्थी के दस्तख़त

### app/sitting/overview.rs

no-assessment-is-running-6475eef3 = कोई मूल्यांकन नहीं चल रहा
open-one-49afee59 = एक खोलें
handed-in-58e821c0 = सौंपा गया
this-assessment-was-handed-in-54ee37a9 = यह मूल्यांकन सौंपा जा चुका है। इसका परिणाम प्रशिक्षण प्रणाली के पास है; परिणाम के पन्ने उस ब्राउज़र में हैं जिसमें यह दिया गया था।
this-assessment-is-open-in-cd4f6448 = यह मूल्यांकन दूसरे टैब में खुला है
it-goes-on-there-with-its-clock-2d9ff623 = वह वहीं चल रहा है, अपनी घड़ी के साथ: वहीं काम करें और वहीं जमा करें। यहाँ किया कुछ भी नहीं गिना जाता, और यह टैब कुछ जमा नहीं करता।
to-go-on-here-instead-close-the-846614f0 = इसके बजाय यहाँ आगे बढ़ने के लिए दूसरा टैब बंद करें, फिर यह पेज दोबारा लोड करें। कुछ नहीं खोता।
load-this-page-again-8b449af6 = यह पेज दोबारा लोड करें
the-clock-stands-453c5dcb = घड़ी रुकी है
go-on-the-clock-starts-again-bfa9f424 = आगे बढ़ें: घड़ी फिर चलती है
stop-the-clock-e19ac980 = घड़ी रोकें
hand-in-206f3f5f = जमा करें
yes-hand-in-ff40daec = हाँ, जमा करें
yes-hand-in-with-one-job-open-f480328d = हाँ, एक जॉब खुला रहते जमा करें
yes-hand-in-with-n-jobs-open-1e4cff64 = हाँ, { $n } जॉब खुले रहते जमा करें
a-job-that-is-not-handed-over-9d0a1869 = जो जॉब सौंपा नहीं गया वह जैसा है वैसा गिना जाता है; जो कभी खोला ही नहीं गया वह 0 गिना जाता है।
handing-in-working-out-what-your-9fd00ae9 = जमा हो रहा है: निकाला जा रहा है कि आपके फ़ैसलों का मोल क्या था। यह पेज खुला रहने दें।
handed-over-0d3cbb91 = सौंपा गया

### app/sitting/result.rs

saved-hand-this-file-to-your-98a16102 = सहेजा गया। यह फ़ाइल अपने इंस्ट्रक्टर को दें।
result-title-044cde4e = परिणाम: { $title }
sealed-with-the-start-code-07982d01 = स्टार्ट कोड से सील किया हुआ
told-to-your-training-system-not-8ee90e7b = आपके प्रशिक्षण सिस्टम को बताया गया; स्टार्ट कोड से सील नहीं
practice-not-sealed-proves-18df76f7 = अभ्यास: सील नहीं, दूसरों के सामने कुछ साबित नहीं करता
receipt-1b9120e3 = रसीद
nothing-was-done-19b38c41 = कुछ नहीं किया गया
done-of-n-jobs-the-start-of-the-44890606 = { $n } में से { $done } जॉब। आख़िरी रिकॉर्ड के हैश की शुरुआत: इसे लिख लें, तो कोई चुपके से फ़ाइल नहीं बदल सकता।
your-instructor-s-copy-computes-203bb577 = आपके इंस्ट्रक्टर की प्रति इसे फिर निकालती है और फ़ैसला करती है।
back-to-the-course-05831de5 = कोर्स पर वापस
print-this-sheet-f6a770b7 = यह पन्ना प्रिंट करें
clear-for-the-next-candidate-fc11d8d6 = अगले परीक्षार्थी के लिए ख़ाली करें
yes-the-file-is-handed-over-750f2786 = हाँ, फ़ाइल दे दी गई: ख़ाली करें
verdict-marks-of-100-marks-on-40739ce9 = { $verdict } · औसतन 100 में से { $marks } अंक, { $cut } माँगे जाते हैं
job-n-as-a-link-2827b189 = जॉब { $n } लिंक के रूप में
result-of-job-n-as-a-qr-code-df24b449 = जॉब { $n } का परिणाम QR कोड के रूप में
as-qr-codes-to-be-read-with-a-05d50a16 = QR कोड के रूप में, जिन्हें उसी सर्वर पर फ़ोन से पढ़ा जाता है

### app/sitting/room.rs

this-is-no-code-of-this-d608a92d = यह इस मूल्यांकन का कोड नहीं है: इसे पढ़कर सुनाए गए कोड से मिलाएँ।
this-code-was-used-already-each-5503a65f = यह कोड इस्तेमाल हो चुका है: हर कोड एक ही बार चलता है। अगला माँगें।
this-code-lets-the-clock-go-on-09e317bb = यह कोड घड़ी को आगे चलाता है, और वह चल ही रही है।
this-code-stops-the-clock-and-it-2711a227 = यह कोड घड़ी रोकता है, और वह पहले से रुकी है। आगे चलाने वाले कोड का इंतज़ार करें।

### app/sitting/room_pause.rs

pause-code-221397d6 = विराम का कोड
stop-the-clock-for-the-room-b683a587 = कमरे के लिए घड़ी रोकें
the-room-pauses-the-clock-stands-4c375972 = कमरे में विराम है: घड़ी रुकी है
nothing-can-be-done-at-the-jobs-6f77ce97 = इस बीच जॉब पर कुछ नहीं किया जा सकता, और यह समय नहीं गिना जाता। आगे बढ़ने के लिए वह कोड टाइप करें जो आपका इंस्ट्रक्टर पढ़कर सुनाए।
pause-of-the-whole-room-8c8a302d = पूरे कमरे का विराम
when-your-instructor-reads-out-a-0442c468 = जब आपका इंस्ट्रक्टर विराम का कोड पढ़कर सुनाए, उसे यहाँ टाइप करें। घड़ी तब तक रुकी रहती है जब तक आप अगला कोड टाइप न करें।

### app/sitting/start.rs

the-letters-were-cut-or-changed-610558b7 = रास्ते में अक्षर कट गए या बदल गए: पूरा पता फिर से कॉपी करें।
there-is-no-assessment-id-beside-9cfd903f = इस पेज के साथ कोई मूल्यांकन “{ $id }” नहीं है: उसकी फ़ाइल खोलें।
open-the-file-or-the-link-that-62e5a1d5 = वह फ़ाइल या लिंक खोलें जो आपके इंस्ट्रक्टर ने आपको दिया।
the-assessment-s-file-9b42810a = मूल्यांकन की फ़ाइल
name-is-an-assessment-too-one-is-51d31cac = { $name } भी एक मूल्यांकन है: एक बार में एक ही दिया जाता है।
the-rules-9abb76fb = नियम
this-computer-fa0d176a = यह कंप्यूटर
who-sits-it-ab9aa5d9 = कौन दे रहा है
as-on-your-slip-a-number-is-899ccb1b = जैसा आपकी पर्ची पर है। नंबर काफ़ी है; नाम ज़रूरी नहीं।
your-name-3a0663bd = आपका नाम
may-stay-empty-it-can-be-struck-06262575 = ख़ाली रह सकता है। बाद में परिणाम से काटा जा सकता है।
you-have-a-slip-with-a-start-c044b6f1 = आपके पास स्टार्ट कोड वाली पर्ची है
from-your-slip-fc518f22 = आपकी पर्ची से
sixteen-characters-on-your-slip-97dc5ae8 = आपकी पर्ची पर सोलह अक्षर। इसके बिना यह अभ्यास है, और परिणाम में यही लिखा होता है।
the-four-letters-beside-it-2ac6fc2e = उसके पास के चार अक्षर
they-find-a-misread-code-dc831d6f = इनसे ग़लत पढ़ा हुआ कोड पकड़ में आता है।
word-for-today-eacde8b7 = आज का शब्द
your-instructor-tells-it-when-18d8bb72 = जब सब शुरू करते हैं, तब आपका इंस्ट्रक्टर इसे बताता है।
i-know-what-is-recorded-c1da6593 = मुझे पता है कि क्या दर्ज होता है: बेंच पर मेरा हर काम समय सहित, और यह पन्ना कब छोड़ा गया। यह प्रशिक्षण प्रणाली को जाता है और मिटाए जाने तक इस ब्राउज़र में रहता है।
i-know-what-is-recorded-10490fe5 = मुझे मालूम है कि क्या रिकॉर्ड होता है: बेंच पर मेरी हर क्रिया उसके समय के साथ, और यह पेज कब छोड़ा गया। यह सब इसी ब्राउज़र में रहता है जब तक फ़ाइल मेरे हाथ से दी या मिटाई न जाए।
begin-the-clock-starts-2829212a = शुरू करें: घड़ी चलने लगती है
begin-as-practice-c4fbf2df = अभ्यास के रूप में शुरू करें
one-job-minutes-minutes-for-all-6a0028a5 = एक जॉब, कुल मिलाकर { $minutes } मिनट।
n-jobs-minutes-minutes-for-all-8a8d5d08 = { $n } जॉब, सबके लिए कुल मिलाकर { $minutes } मिनट।
the-data-sheet-8347c967 = डेटा शीट
the-jobs-are-drawn-for-you-5ad6a43f = जॉब आपके लिए निकाले जाते हैं: दूसरों को उन्हीं क़िस्मों के दूसरे जॉब मिलते हैं। संकेत नहीं हैं, और आपके जमा करने से पहले सही-ग़लत के बारे में कुछ नहीं कहा जाता।
no-aids-neither-data-sheet-nor-0405a824 = कोई साधन नहीं: न डेटा शीट, न वायरिंग डायग्राम, न हैंडबुक।
you-may-use-aids-d2a86f5b = आप ये इस्तेमाल कर सकते हैं: { $aids }।
the-clock-can-be-stopped-between-54656696 = जॉब के बीच घड़ी रोकी जा सकती है।
the-clock-does-not-stop-once-it-6ac2ba95 = एक बार चलने के बाद घड़ी नहीं रुकती।
leaving-the-page-is-noted-after-660549f4 = पेज छोड़ना दर्ज होता है। दोबारा लोड करने पर आप वहीं से आगे बढ़ते हैं जहाँ थे।
to-pass-cut-of-100-marks-on-38ac139b = पास होने के लिए: औसतन 100 में से { $cut } अंक। उससे { $border } अंक के भीतर हों तो और जॉब फ़ैसला करते हैं।
your-instructor-can-stop-the-de789e14 = आपका इंस्ट्रक्टर पूरे कमरे की घड़ी रोक सकता है, ऐसे कोड से जो पढ़कर सुनाया जाता है और परिणाम में दर्ज होता है।
a-critical-safety-rule-broken-is-4567fccd = टूटे हुए जानलेवा दर्जे के सुरक्षा नियम की भरपाई अंकों से नहीं होती।
n-of-the-machines-must-be-put-8b6e8d73 = { $n } % मशीनें ठीक की जानी चाहिए, या सही वजह से सुरक्षित करके छोड़ी जानी चाहिए।
of-the-marks-for-part-at-least-n-42ade5ba = { $part } के अंकों का औसतन कम से कम { $n } % चाहिए।
whoever-keeps-the-results-is-to-4609cdd8 = जो परिणाम रखता है उसे उन्हें मिटाना होता है, शुरू करने के दिन से इतना समय बीतने पर: { $months }।
an-assessment-is-running-in-this-2c749c1f = इस ब्राउज़र में एक मूल्यांकन पहले से चल रहा है: पहले उसे जमा करें।
in-order-8600af38 = ठीक है:
mind-3923f209 = ध्यान दें:
looking-1c16e9be = देखा जा रहा है …
what-you-do-is-kept-after-every-a5ff5d46 = आप जो करते हैं वह हर क्रिया के बाद रखा जाता है, पेज बंद हो जाए तब भी।
this-browser-keeps-nothing-a-439678b3 = यह ब्राउज़र कुछ नहीं रखता: पेज दोबारा लोड हुआ तो सब खो जाएगा। शुरू करने से पहले दूसरा ब्राउज़र माँगें।
mouse-finger-or-keyboard-alone-898c7a9c = सिर्फ़ माउस, उँगली या कीबोर्ड: सब कुछ इनमें से किसी से भी किया जा सकता है। आवाज़ें लिखकर भी दिखाई जाती हैं।

### app/store/error.rs

this-browser-has-no-room-left-so-a09ec24a = इस ब्राउज़र में जगह नहीं बची, इसलिए आख़िरी क़दम सहेजा नहीं गया। कुछ जगह ख़ाली करें, या इसी बैठक में पूरा करें।
this-browser-does-not-let-the-4ebada3c = यह ब्राउज़र पेज को सहेजने नहीं देता। आप काम जारी रख सकते हैं, पर पेज बंद करने पर जॉब खो जाता है।
the-saved-job-cannot-be-read-and-2c9f4acc = सहेजा हुआ जॉब पढ़ा नहीं जा सकता और उसे छेड़ा नहीं गया। आप उसे फिर शुरू कर सकते हैं।

### app/store/mod.rs

your-jobs-are-kept-in-this-e8c13a5a = आपके जॉब इसी ब्राउज़र में रखे जाते हैं, सिर्फ़ इसी डिवाइस पर।
this-browser-does-not-let-the-27f8ea85 = यह ब्राउज़र पेज को कुछ रखने नहीं देता: पेज बंद करते ही आपके जॉब चले जाते हैं।

### app/told_files.rs

not-opened-since-something-is-d6ff13a6 = नहीं खोली गईं, क्योंकि कुछ ग़लत है: { $n }
passed-over-n-da625485 = छोड़ दी गईं: { $n }

### app/training_set.rs

mastered-87fde572 = सीख लिया
next-5cb68de8 = अगला
later-523ab9a9 = बाद में
title-done-of-n-mastered-dcae9d31 = { $title }: { $n } में से { $done } सीख लिए
about-the-next-job-opens-when-04ee2c20 = { $about } अगला जॉब तब खुलता है जब पिछले में 100 में से { $marks } अंक हों।
forget-this-set-title-5ff4911a = यह सेट भुला दें: { $title }
forget-this-set-e76dc550 = यह सेट भुला दें

### app/training_system/awaiting.rs

address-is-asked-for-the-key-70b134f7 = { $address } से वह कुंजी माँगी जा रही है जिससे यह दौरा शुरू हो सके।
address-is-asked-for-what-was-8a63ccc7 = { $address } से पूछा जा रहा है कि क्या शुरू किया गया, और किसके लिए।
address-is-asked-for-the-work-797c284a = { $address } से वह काम माँगा जा रहा है जो आपने पहले किया है।
address-is-asked-to-note-that-03b658ef = { $address } से कहा जा रहा है कि आपका शुरू करना दर्ज करे।
the-key-is-given-once-so-it-4defa442 = कुंजी एक ही बार दी जाती है, इसलिए दोबारा नहीं माँगी जा सकती: इंतज़ार करें, या इसके बिना आगे बढ़ें, और बाद में यह पेज कोर्स से नए सिरे से शुरू करें।
go-on-it-is-told-as-soon-as-the-73c2b5f8 = आगे बढ़ें: सिस्टम लेने लगे तो सबसे पहले उसे यही बताया जाता है, किसी और बात से पहले।
ask-again-or-go-on-without-it-050059ca = फिर पूछें, या इसके बिना आगे बढ़ें: तब जब तक आप यह पेज दोबारा लोड न करें, सिस्टम को कुछ नहीं बताया जाता, और जो काम आपने कहीं और किया है वह यहाँ नहीं है।
waiting-for-the-training-system-04613867 = प्रशिक्षण सिस्टम का इंतज़ार
n-s-so-far-2398f3f1 = अब तक { $n } s
ask-again-13a6f1ce = फिर पूछें
go-on-without-it-46b6dc7d = इसके बिना आगे बढ़ें
there-is-no-answer-for-n-seconds-c942b834 = { $n } सेकंड से कोई जवाब नहीं है।

### app/training_system/trouble.rs

the-training-system-has-started-2ac938db = प्रशिक्षण सिस्टम ने यह पेज शुरू किया है पर उसे शुरुआत नहीं करने देता, इसलिए आप यहाँ जो करते हैं वह उसे नहीं बताया जाता। इसे कोर्स से नए सिरे से शुरू करें।
you-go-on-without-the-training-53370f0f = आप प्रशिक्षण सिस्टम के बिना आगे बढ़ रहे हैं, जिसने जवाब नहीं दिया: आप यहाँ जो करते हैं वह उसे नहीं बताया जाता। उससे एक बार फिर पूछने के लिए यह पेज दोबारा लोड करें, या इसे कोर्स से नए सिरे से शुरू करें।
this-page-was-left-or-loaded-f53eb94d = यह पेज छोड़ा गया या दोबारा लोड हुआ, और इसके साथ प्रशिक्षण सिस्टम में आपका दौरा ख़त्म हो गया। आपका काम रखा हुआ है। पेज को फिर कोर्स से शुरू करें: आप जो जमा करते हैं वह तब बताया जाता है।
the-training-system-has-no-room-3e61fd59 = प्रशिक्षण सिस्टम में आपके सारे काम के लिए जगह नहीं है: वह सिर्फ़ इसी ब्राउज़र में रखा है। यहीं आगे बढ़ें, किसी और कंप्यूटर पर नहीं, और अंत में फ़ाइल सहेजें।
the-training-system-has-not-937ff3d3 = प्रशिक्षण सिस्टम ने अभी आपका परिणाम नहीं लिया है। नेटवर्क लौटने पर, और जहाँ दिखाया गया हो वहाँ “कोर्स पर वापस” से, उसे फिर बताया जाता है। फ़ाइल सहेजें।

### app/view/around.rs

press-on-off-1fd9c6bb = ऑन/ऑफ़ दबाना
press-start-2eee9150 = स्टार्ट दबाना
press-program-245fa278 = प्रोग्राम दबाना
press-water-level-475b7b49 = पानी का लेवल दबाना
press-the-service-key-behind-the-d83626dc = पैनल के पीछे का सर्विस बटन दबाना
push-the-knob-in-off-81e98d20 = नॉब अंदर दबाना: बंद
pull-the-knob-out-on-00ab3e08 = नॉब बाहर खींचना: चालू
turn-the-dial-to-the-start-1df92c25 = डायल शुरुआत पर घुमाना
turn-the-dial-one-step-on-e137a5ba = डायल एक चरण आगे घुमाना
turn-the-dial-five-steps-on-657bf64d = डायल पाँच चरण आगे घुमाना
pull-the-plug-98cca383 = प्लग निकालना
put-the-plug-in-fd882a6a = प्लग लगाना
keep-it-in-sight-87c1a3ed = इसे नज़र के सामने रखना
put-the-splitter-lead-in-349dec81 = स्प्लिटर लीड लगाना
take-the-splitter-lead-away-5f60faf4 = स्प्लिटर लीड हटाना
switch-its-circuit-off-at-the-4af7d5c9 = घर के बोर्ड पर इसका सर्किट बंद करना
switch-its-circuit-on-ab211a55 = इसका सर्किट चालू करना
prove-the-tester-on-its-known-d182e67c = टेस्टर को उसके जाने हुए स्रोत पर जाँचना
put-new-fuses-into-the-2257ae21 = यंत्रों में नए फ़्यूज़ लगाना
discharge-plug-pins-with-the-19da3ea1 = प्लग की पिनों का चार्ज रेज़िस्टर से उतारना
short-plug-pins-with-a-5264868e = प्लग की पिनें पेचकस से शॉर्ट करना
shut-the-tap-12bcf3e1 = नल बंद करना
open-the-tap-2c749523 = नल खोलना
bleed-the-hose-into-a-bucket-3e07f690 = होज़ का प्रेशर बाल्टी में निकालना
bleed-it-into-a-bucket-1f671da9 = इसका प्रेशर बाल्टी में निकालना
take-the-hose-off-10670ceb = होज़ उतारना
screw-the-hose-on-a56aac3e = होज़ कसकर लगाना
# verb, of a lid
open-55412a21 = खोलना
# verb, of a lid
shut-5bedcd3f = बंद करना
bridge-it-ca60eb1d = जंपर से शॉर्ट करना
take-the-bridge-off-10fc92db = जंपर निकालना
# verb, of a key
press-10ef7c14 = दबाना
dry-what-got-wet-inside-f33d4756 = अंदर जो गीला हुआ उसे सुखाना
discharge-it-with-the-resistor-7028473a = इसका चार्ज रेज़िस्टर से उतारना
short-it-with-a-screwdriver-9867048f = इसे पेचकस से शॉर्ट करना
bail-the-water-out-45419391 = बाल्टी से पानी निकालना
let-the-water-out-by-the-wire-5dc1573d = केबल से पानी निकालना

### app/view/beside.rs

act-n-times-0f5a7849 = { $act }, { $n } बार
cost-cost-minutes-min-n-acts-d8f603c5 = लागत { $cost }, { $minutes } min, { $n } क्रियाएँ

### app/view/card.rs

place-9ad2489c = जगह
in-the-van-3fcacd24 = वैन में
rates-72ebb81c = दरें
call-out-call-out-labour-hour-an-b6ea9aee = विज़िट शुल्क { $call_out }, लेबर { $hour } प्रति घंटा, नई मशीन { $new }
costs-at-most-most-786ac53e = लागत ज़्यादा से ज़्यादा { $most }
to-reach-bd2d21b7 = लक्ष्य
in-the-bag-6439528b = बैग में
instrument-place-e3f2c311 = { $instrument }, { $place }
outside-the-machine-or-left-by-be1bd085 = मशीन के बाहर, या पिछली मरम्मत में छूटा हुआ

### app/view/covers.rs

verb-with-help-or-a-strap-040e63a7 = { $verb }, मदद या पट्टे के साथ
verb-alone-597c1139 = { $verb }, अकेले
verb-bucket-and-cloth-below-d23a24e4 = { $verb }, नीचे बाल्टी और कपड़ा
verb-nothing-below-1a5a37aa = { $verb }, नीचे कुछ नहीं
open-it-and-let-it-stand-by-c8149547 = खोलकर अपने आप टिका रहने देना
act-and-check-check-fe6743c4 = { $act } और जाँचना: { $check }
act-no-check-e77037de = { $act }, बिना जाँच

### app/view/debrief.rs

so-it-counts-as-not-repaired-a-929761d3 = इसलिए यह ठीक नहीं की गई मानी जाती है: मशीन पूरी और अपनी जगह पर सौंपी जाती है
all-that-is-asked-of-a-job-was-a97b7fd6 = जॉब में जो कुछ माँगा जाता है, सब दिखाया गया।
no-rule-broken-whose-breach-can-1ec3d278 = ऐसा कोई नियम न टूटे जिसके टूटने से जान जा सकती है
safety-of-70-97766810 = सुरक्षा 70 %
a-diagnosis-of-60-de2b2563 = निदान 60 %
a-procedure-of-60-with-run-and-83be6db8 = कार्यविधि 60 %, चलाने और बिजली के टेस्ट के साथ
evidence-of-50-1130c5b9 = सबूत 50 %
t-65-of-100-in-all-3bbb991e = कुल 100 में से 65
still-missing-what-3117aed1 = अभी बाक़ी: { $what }।
rightly-made-safe-and-left-7157eb52 = सही वजह से सुरक्षित करके छोड़ी
repaired-2f042b45 = ठीक की
not-repaired-6882b9f2 = ठीक नहीं की
not-safe-719d4feb = सुरक्षित नहीं
safety-rules-broken-e6881775 = सुरक्षा नियम टूटे
safe-ad27ee58 = सुरक्षित
how-marks-of-100-9cf7b4dc = { $how } · 100 में से { $marks }
how-marks-of-100-for-now-dfc8b5c3 = { $how } · फ़िलहाल 100 में से { $marks }
to-be-expected-5822b097 = अपेक्षित
target-32608848 = लक्ष्य
avoidable-f84bfa72 = टाली जा सकने वाली
money-dearer-than-could-be-0c37158a = { $money } (जितनी उम्मीद हो सकती थी उससे महँगा)
money-cheaper-than-could-be-f3bef78b = { $money } (जितनी उम्मीद हो सकती थी उससे सस्ता)
# good or bad luck
chance-db7e15a1 = संयोग
on-site-46cf0feb = मौक़े पर
minutes-min-689f1a0e = { $minutes } min
kept-e8614759 = निभाई गई
not-kept-67ecfbda = नहीं निभाई गई
at-most-most-met-ccc3dfe6 = ज़्यादा से ज़्यादा { $most }: { $met }
budget-39baa088 = बजट
at-most-most-min-met-78b9d89a = ज़्यादा से ज़्यादा { $most } min: { $met }
time-allowed-3e870934 = मिला हुआ समय
reached-564dd9f9 = पूरा हुआ
not-reached-5ea156cc = पूरा नहीं हुआ
at-least-least-met-1258904e = कम से कम { $least }: { $met }
marks-to-reach-8a4c03a9 = पाने के अंक

### app/view/decided.rs

ruled-out-names-and-more-more-a59c0355 = ख़ारिज हुए: { $names }; और { $more } और।
ruled-out-names-25664043 = ख़ारिज हुए: { $names }।
what-was-known-then-gave-it-sure-02623023 = तब जो मालूम था उसके हिसाब से इससे ठीक होने की संभावना { $sure } % थी: { $standing }।
cost-cost-deciding-otherwise-9990d4b0 = लागत { $cost }; दूसरा फ़ैसला { $saved } बचाता।
cost-cost-3b1561d7 = लागत { $cost } हुई।
a-hint-12f3c3fd = संकेत
the-hint-gave-rung-and-counts-as-0df94d8a = संकेत ने यह दिया: { $rung }; यह टाली जा सकने वाली लागत में गिना जाता है: { $money }
it-was-about-step-77ea7a8a = यह इसके बारे में था: { $step }
better-then-step-f54c61c0 = तब बेहतर होता: { $step }
ask-what-a-reading-can-still-13a6a0ae = रीडिंग लेने से पहले सोचें कि वह अब भी क्या बता सकती है।
prove-the-cause-before-this-a1ba0315 = इस मरम्मत से पहले कारण साबित करें।
prove-that-it-works-before-cfd19d47 = सौंपने से पहले साबित करें कि मशीन चलती है।
work-on-without-a-hint-for-one-955514eb = एक क़दम और बिना संकेत के काम करें।
it-cost-money-more-than-it-had-182318b0 = लागत ज़रूरत से { $money } ज़्यादा हुई।

### app/view/gauges.rs

place-way-13384dc3 = { $place }, { $way }
the-stream-that-runs-in-fb6453e8 = अंदर आती धार
its-open-end-over-a-bucket-51a8b1a7 = इसका खुला सिरा बाल्टी के ऊपर
the-stream-that-runs-out-39ea604d = बाहर जाती धार
until-it-stands-8460c231 = रुकने तक
until-it-has-filled-ba60d6f8 = भर जाने तक
until-no-more-water-comes-d62a3141 = पानी आना बंद होने तक
until-its-wire-stands-4c94ceef = इसकी केबल रुकने तक
pressure-in-the-line-7a5b4e88 = लाइन में प्रेशर
pressure-in-the-hose-55bd25d7 = होज़ में प्रेशर
highest-speed-in-ten-seconds-865df7b1 = दस सेकंड में सबसे ऊँची रफ़्तार
slope-of-the-floor-beside-it-1ce7c19f = बग़ल के फ़र्श की ढलान
slope-of-the-machine-29ff4d83 = मशीन की ढलान
gives-at-7-n-c69e2c65 = 7 N पर कितना दबती है
tension-by-its-tone-cf202e58 = छेड़ने की आवाज़ से टेंशन
hottest-winding-37a681a2 = सबसे गरम वाइंडिंग
the-water-5085ff63 = पानी
the-room-557956ef = कमरा
travel-of-its-wire-80e6ebc9 = इसकी केबल कितनी चलती है
height-of-its-end-over-the-floor-cd828cab = इसके सिरे की फ़र्श से ऊँचाई
gap-to-the-tub-29f2ff90 = टब से फ़ासला
play-c2cbd863 = प्ले
seen-5a45cc6a = देखा
leads-there-79405206 = लीड वहाँ रखें

### app/view/hints.rs

ask-first-the-questions-are-on-c81ce553 = पहले पूछें: सवाल जॉब कार्ड पर हैं।
let-it-do-what-the-customer-99bd1624 = मशीन से वह करवाएँ जो ग्राहक ने बताया: डायल छुएँ, उसे शुरुआत पर घुमाएँ, नॉब बाहर खींचें, और सुनें।
let-it-do-what-the-customer-1023b263 = मशीन से वह करवाएँ जो ग्राहक ने बताया: उसे उसके पैनल पर चालू करें, तैयार होने तक इंतज़ार करें, स्टार्ट छुएँ, और सुनें।
look-before-you-open-anything-4c5b3999 = कुछ भी खोलने से पहले देखें: चित्र में कुछ छुएँ, फिर “देखना” चुनें। आप जो देखते हैं वह नोटबुक में जाता है।
put-back-what-you-took-off-the-0321b8d1 = जो उतारा है उसे वापस लगाएँ, आख़िरी वाला पहले, और लगाते समय हर जोड़ जाँचें। जो मशीन के बग़ल में पड़ा है वह अभी उतरा हुआ है।
prove-it-plug-in-tap-open-and-03dc2f63 = साबित करें: प्लग लगाएँ, नल खोलें, और मशीन को धोने, पानी निकालने और स्पिन करने दें। “इंतज़ार करें” और तेज़ घड़ी से समय बीतता है।
once-it-does-what-it-should-499b08c5 = जब मशीन वह करने लगे जो उसे करना चाहिए, तो “पूरा करें” चुनें: बताएँ कि क्या ख़राब था, जो पंक्तियाँ उसे दिखाती हैं उन पर निशान लगाएँ, ग्राहक को बताएँ।
put-right-what-you-have-found-499725b2 = जो मिला है उसे ठीक करें: उसे हाथ में लें और चुनें कि क्या करना है। देखने से बात तय न हो, तो पहले सॉकेट नापें, फ़ेज़ से न्यूट्रल: इससे सप्लाई और आपका टेस्टर दोनों साबित होते हैं।
make-it-safe-before-you-open-it-ab6f1bd7 = खोलने से पहले सुरक्षित करें: स्विच बंद करें, फिर प्लग छुएँ और उसे निकालें।
pulled-is-not-yet-dead-keep-the-e44f850c = प्लग निकला होना अभी डेड होना नहीं है: प्लग नज़र के सामने रखें, नल बंद करें, फिर प्लग की पिनों को एक-दूसरे के मुक़ाबले नापें, जब तक वे 0 V के पास न ठहरें।
a-tester-that-died-reads-0-v-too-64f69f39 = जो टेस्टर ख़राब हो गया वह भी 0 V पढ़ता है: चालू सॉकेट एक बार फिर नापें। तब जाकर डेड साबित हुआ।
now-open-the-way-touch-a-cover-23e3ec81 = अब रास्ता खोलें: चित्र में कोई कवर छुएँ। वह किससे कसा है और कितना समय लगता है, यह करने की चीज़ों के साथ लिखा है।
look-again-at-what-is-open-now-4c40c5cd = जो अब खुला है उसे फिर देखें, और जहाँ देखने से बात तय न हो वहाँ नापें; काग़ज़ात में वे मान हैं जो सही पार्ट के होते हैं। फिर जो मिला है उसे ठीक करें।

### app/view/likely.rs

it-made-the-picture-less-clear-197a8600 = इससे तस्वीर कम साफ़ हुई, और यही सही था।
it-told-nothing-new-about-the-3391340b = इसने कारण के बारे में कुछ नया नहीं बताया।
it-told-a-little-about-the-cause-1f07c047 = इसने कारण के बारे में थोड़ा-सा बताया।
it-told-something-about-the-64093292 = इसने कारण के बारे में कुछ बताया।
it-told-a-great-deal-about-the-bae1fde8 = इसने कारण के बारे में बहुत कुछ बताया।
it-ruled-out-one-5dc9d3b4 = इसने एक को ख़ारिज किया।
it-ruled-out-n-ccb6cc30 = इसने { $n } को ख़ारिज किया।
nothing-wrong-79225783 = कुछ ख़राब नहीं
one-and-next-6f6d33b1 = { $one }, और { $next }

### app/view/meter.rs

the-whole-cord-8c572891 = पूरी कॉर्ड

### app/view/names.rs

on-off-key-2ecedfcd = ऑन/ऑफ़ बटन
start-and-pause-key-0ddba433 = स्टार्ट और विराम बटन
program-key-8f2624f8 = प्रोग्राम बटन
water-level-key-293990a9 = पानी के लेवल का बटन
service-key-a785183b = सर्विस बटन
water-level-knob-e909f396 = पानी के लेवल की नॉब
cold-valve-71421f39 = ठंडे पानी का वाल्व
hot-valve-898f302e = गरम पानी का वाल्व
timer-motor-20c84357 = टाइमर मोटर
mains-plug-94ee392b = मेन्स प्लग
wall-socket-433a0786 = दीवार का सॉकेट
the-machine-from-outside-94571b34 = मशीन बाहर से
the-machine-opened-708c8d06 = मशीन खुली हुई
the-machine-in-section-68cb27cf = मशीन काट में
the-way-of-the-water-2697dac0 = पानी का रास्ता

### app/view/notice.rs

measure-10bf34df = नापना
something-is-in-the-way-055e86e0 = रास्ते में कुछ है
it-is-so-already-dc0015ba = यह पहले से ऐसा ही है
there-is-no-such-thing-on-this-e3347017 = इस मशीन में ऐसी कोई चीज़ नहीं है
no-part-in-the-van-a-second-0923373a = वैन में { $part } नहीं है। दूसरे दौरे में इसे लाया जा सकता है।
not-on-board-dd6c107b = वैन में नहीं
the-job-is-over-8c1ee0e5 = जॉब पूरा हो चुका है
nothing-more-is-done-to-the-01c0b484 = मशीन पर अब और कुछ नहीं किया जाता।
not-as-things-are-5a0cbc6d = अभी की हालत में नहीं
what-why-daa67e7b = { $what }; { $why }।
something-goes-back-first-ba97efcc = पहले कुछ वापस लगता है
still-off-names-5ec7deae = अभी उतरा हुआ: { $names }
refit-and-check-in-order-0b3d7ba5 = क्रम से दोबारा लगाना और जाँचना
act-first-5eacb877 = पहले { $act }
plug-in-by-the-splitter-lead-9070178d = स्प्लिटर लीड से प्लग लगाना, फिर क्लैंप
the-machine-goes-off-meanwhile-f875a97e = इस बीच मशीन बंद हो जाती है
done-act-time-ad1abca0 = हो गया: { $act }, { $time }
you-had-a-shock-b9261700 = आपको करंट का झटका लगा
a-charge-went-off-ac41fe0b = चार्ज एक झटके में उतरा
volts-v-joules-j-through-what-fd34cdc4 = { $volts } V, { $joules } J, इससे होकर: { $what }।
the-supply-went-off-821de58e = सप्लाई चली गई
the-meter-s-fuse-blew-685112f2 = मीटर का फ़्यूज़ उड़ गया
water-on-the-floor-7a4831c4 = फ़र्श पर पानी
litres-litres-why-3c981df7 = { $litres } लीटर: { $why }।
a-moving-part-caught-your-hand-fce26a7d = चलते पुर्ज़े में आपका हाथ आ गया
it-turned-at-speed-r-min-with-77a223d1 = वह { $speed } r/min पर घूम रहा था, { $joules } J के साथ।
something-fell-155b61a8 = कुछ गिर गया
what-joules-j-0fa8bc4a = { $what }; { $joules } J।
the-customer-agrees-d8a37f45 = ग्राहक राज़ी है
what-was-agreed-and-for-how-much-63742473 = क्या तय हुआ और कितने में, यह नोटबुक में है।
not-agreed-1730b3b2 = बात नहीं बनी
what-the-customer-said-stands-in-d500179a = ग्राहक ने जो कहा वह नोटबुक में है। दूसरा दाम बताएँ, जो पैसे देगा उससे पूछें, या शुल्क लेकर मशीन सुरक्षित छोड़ें।
something-was-spoilt-ea6be1d1 = कुछ ख़राब हो गया
what-that-costs-price-655f46e3 = { $what }। इसका ख़र्च { $price } है।
you-hurt-yourself-3f8c82ae = आपको चोट लगी
the-new-part-has-burnt-out-bc1d2654 = नया पार्ट जल गया
the-new-part-carried-more-than-e8987c5e = नए पार्ट ({ $part }) पर उसकी सहने की हद से ज़्यादा पड़ा: जिस चीज़ ने पुराने को मारा, वह अब भी है।
sentence-d8132730 = { $sentence }।
volts-v-across-you-drove-current-04fdaa9c = आपके आर-पार { $volts } V से आपमें { $time } s तक { $current } mA बहा। सर्किट किसने खोला: { $opened_by }। असर का ज़ोन: { $zone }

### app/view/open_ends.rs

what-is-still-to-be-put-back-24188ba3 = वापस लगाना बाक़ी: { $what }
what-held-is-still-to-be-put-f8b26c59 = वापस लगाना बाक़ी: { $what } ({ $held })
what-is-apart-91570a3b = अलग किया हुआ: { $what }
the-supply-hose-is-off-06da1639 = सप्लाई होज़ उतरा हुआ है
the-splitter-lead-is-still-in-dd0ffe5e = स्प्लिटर लीड अभी सॉकेट में है
the-tee-with-the-pressure-gauge-e47319c4 = प्रेशर गेज वाला टी-जोड़ सप्लाई लाइन में है
the-tee-with-the-u-tube-is-in-d99f01a4 = U-ट्यूब वाला टी-जोड़ एयर होज़ में है
the-socket-s-circuit-is-off-at-60444c61 = घर के बोर्ड पर सॉकेट का सर्किट बंद है
on-the-cloth-lie-n-pieces-too-61fef585 = बिछे कपड़े पर ज़रूरत से { $n } ज़्यादा टुकड़े पड़े हैं
a-sealed-joint-still-needs-its-58e7b54a = सील किए जोड़ को पानी से पहले अभी समय चाहिए
the-lid-switch-is-bridged-e99bdb86 = ढक्कन स्विच जंपर से शॉर्ट है
the-lid-is-open-a965fa55 = ढक्कन खुला है
the-tap-is-shut-5c4fa3f7 = नल बंद है
the-plug-is-out-46a53c44 = प्लग निकला हुआ है

### app/view/orders.rs

# a picture of the machine
outside-d1285534 = बाहर से
# a picture of the machine
opened-366c5730 = खुली हुई
# a picture of the machine
section-6dcd408c = काट
# a picture of the machine
wiring-94e4b165 = वायरिंग
# a picture of the machine: the way of the water
water-f065dc13 = पानी
# of the clock: stand still
pause-a6143235 = रोकें
something-changes-2fd22f86 = कुछ बदलने तक
it-does-something-else-1bbea7fa = कुछ और करने लगे तब तक
a-minute-has-passed-22e304b4 = एक मिनट बीतने तक

### app/view/papers.rs

off-off-on-on-252b3fc5 = उतारना { $off }, लगाना { $on }
after-steps-7789fcea = इसके बाद: { $steps }
mind-caution-a7f4cd8c = ध्यान रखें: { $caution }
going-back-check-488750e8 = वापस लगाते समय: { $check }

### app/view/past.rs

the-meter-is-connected-to-41ea90a8 = मीटर किसी चीज़ से जुड़ा नहीं है

### app/view/safe.rs

# of the machine: switched off
off-e5d98837 = मशीन बंद
secured-6889d45c = नज़र में रखा
tap-shut-5016da0c = नल बंद
hose-bled-240ea1cb = होज़ का प्रेशर निकला
tester-proved-567757e4 = टेस्टर जाँचा
off-at-the-board-181e85c0 = घर के बोर्ड पर बंद
unplugged-c7ab8726 = प्लग बाहर
plug-pins-run-capacitor-1cbe5624 = प्लग की पिनें, रन कैपेसिटर
plug-pins-dd661773 = प्लग की पिनें
run-capacitor-00729536 = रन कैपेसिटर
discharged-73c24729 = चार्ज उतरा
red-to-black-0d40071e = { $red } से { $black }
proved-dead-b564a2bb = डेड साबित
shown-dead-cc669728 = डेड दिखा
prove-the-tester-again-fd02cbe1 = टेस्टर फिर जाँचें

### app/view/selection.rs

red-lead-on-point-d08cbd1b = लाल लीड यहाँ: { $point }
black-lead-on-point-fdaa6d63 = काली लीड यहाँ: { $point }

### app/view/sheet.rs

connector-apart-e1622896 = अलग किया हुआ: { $connector }
low-to-high-52434f50 = { $low } से { $high }
low-or-more-582d7e75 = { $low } या ज़्यादा
unplugged-its-switch-or-knob-on-ee0fb054 = प्लग बाहर, मशीन का स्विच या नॉब चालू
switched-on-waiting-da931398 = चालू, इंतज़ार में
washing-spin-direction-1ae32cff = धुलाई, स्पिन की दिशा
washing-other-direction-a2bc9915 = धुलाई, दूसरी दिशा
lid-opened-at-full-spin-da4967a7 = पूरे स्पिन में ढक्कन खोला
in-a-normal-program-658b7b40 = सामान्य प्रोग्राम में

### app/view/shown.rs

sentence-next-bb017a53 = { $sentence }। { $next }

### app/view/verbs.rs

hold-the-contactless-tester-to-30b0595f = बिना छुए जाँचने वाला टेस्टर इसके पास लाना
look-e6ef5696 = देखना
feel-b33572bd = छूकर महसूस करना
listen-3b3b76a6 = सुनना
smell-f052b280 = सूँघना
pull-apart-fd25b5d8 = खींचकर अलग करना
push-home-3883d34c = पूरा बैठाना
work-part-part-for-price-143a0524 = { $work }: { $part }, पार्ट का दाम { $price }
work-part-for-price-43c34c65 = { $work }, पार्ट का दाम { $price }

### app/view/visit.rs

put-the-old-part-back-b47eca06 = पुराना पार्ट वापस लगाना: { $part }
look-it-over-probes-together-a31306c6 = इसे ध्यान से देखना, प्रोब आपस में मिलाकर
take-the-spare-one-58f7545e = अतिरिक्त यंत्र लेना
who-pays-037f5c56 = पैसे कौन देगा
read-receipt-and-rating-plate-f6270b75 = रसीद और रेटिंग प्लेट पढ़ना
the-maker-pays-020f2093 = पैसे बनाने वाला देगा
the-customer-pays-9ce4c983 = पैसे ग्राहक देगा
telephone-the-landlord-e6ee38ee = मकान-मालिक को फ़ोन करना
take-the-fee-for-finding-the-618a16f4 = ख़राबी ढूँढने का शुल्क लेना
with-care-085adaea = सावधानी से
gloves-on-8110ad20 = दस्ताने पहनना
gloves-off-a354987a = दस्ताने उतारना
blanket-on-the-floor-bd780f0c = फ़र्श पर कंबल बिछाना
keep-the-room-free-3f5206b8 = कमरा ख़ाली रखवाना
mop-the-floor-a7515f4a = फ़र्श पोंछना
cold-water-into-the-tub-797de7c2 = टब में ठंडा पानी डालना
work-on-the-house-wiring-209f437c = घर की वायरिंग पर काम करना
parts-on-trial-231772da = आज़माने को लगाए पार्ट
picture-from-outside-746003c4 = बाहर से तस्वीर
picture-opened-86473536 = खुली हुई की तस्वीर
have-it-signed-9162c954 = दस्तख़त कराना

### app/view/way.rs

what-comes-first-time-fa764dcd = पहले { $what }: { $time }
what-comes-first-held-time-dc1c1d20 = पहले { $what }: { $held }, { $time }
in-the-way-names-time-together-7818c4e1 = रास्ते में: { $names }, कुल { $time }
act-then-then-eb566ed7 = { $act }, फिर { $then }

### app/waiting.rs

nothing-has-changed-in-n-minutes-b6064d92 = { $n } मिनट में कुछ नहीं बदला।
after-n-second-state-218a3276 = { $n } सेकंड के बाद: { $state }
after-n-seconds-state-c51f28bf = { $n } सेकंड के बाद: { $state }
nothing-has-changed-024972de = कुछ नहीं बदला
you-have-waited-n-minutes-5f660be7 = आपने { $n } मिनट इंतज़ार किया।

### app/worker/inside.rs

the-question-cannot-be-read-a861cc9e = सवाल पढ़ा नहीं जा सकता।

### app/worker/page.rs

the-browser-has-stopped-the-bb4ad385 = ब्राउज़र ने हिसाब रोक दिया है।

### app/worker/work.rs

there-is-no-machine-named-fd279948 = “{ $machine }” नाम की कोई मशीन नहीं है।
the-table-of-this-machine-cannot-1ca251ed = इस मशीन की तालिका निकाली नहीं जा सकती: { $why }

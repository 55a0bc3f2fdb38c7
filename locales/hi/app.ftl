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
make-an-assessment-daec6f30 = मूल्यांकन बनाएँ
say-which-skills-at-which-level-9841b34b = बताएँ कि कौन-से कौशल किस स्तर पर, कितने जॉब, और किससे पास। तब हर परीक्षार्थी को अपने जॉब मिलते हैं, बराबर कठिन, और ऐसा परिणाम जो जाँचा जा सके।
make-a-new-one-480e8586 = नया बनाएँ
review-results-7563f90b = परिणामों का रिव्यू
observer-s-sheet-58c73c5a = निरीक्षण-पत्र
files-of-assessments-to-work-on-406bbd79 = काम करने के लिए मूल्यांकन की फ़ाइलें
made-here-b6c0ccf6 = यहाँ बनाए गए
none-yet-786bc275 = अभी कोई नहीं।
n-candidates-8816d347 = { $n } परीक्षार्थी
how-sure-its-decisions-are-c7d8a265 = इसके फ़ैसले कितने पक्के हैं
still-to-do-2fbfc23f = अभी करना बाक़ी
n-jobs-reliability-at-least-541001e0 = { $n } जॉब: 1 में से कम से कम { $least } विश्वसनीयता। एक व्यक्ति के बारे में फ़ैसले के लिए काफ़ी।
n-jobs-reliability-at-least-d3f6db2a = { $n } जॉब: 1 में से कम से कम { $least } विश्वसनीयता। अकेले एक व्यक्ति के बारे में फ़ैसले के लिए 0.8 माँगा जाता है: जॉब बढ़ाएँ, या कई बैठकें और प्रैक्टिकल मिलाकर देखें।

### app/assessments/slips.rs

give-it-out-97f482bd = बाँटें
the-file-for-all-candidates-is-a202bc33 = सब परीक्षार्थियों के लिए फ़ाइल सहेज ली गई।
save-the-file-3310d52f = फ़ाइल सहेजें
the-key-is-saved-keep-it-where-eaf8ba1b = कुंजी सहेज ली गई। उसे ऐसी जगह रखें जिसे सिर्फ़ आप खोल सकें: जिसके पास वह है, वह परिणाम सील कर सकता है।
save-the-key-6c2f08c0 = कुंजी सहेजें
link-n-characters-7ba21125 = लिंक, { $n } अक्षर
the-link-as-a-code-for-a-9c367c25 = लिंक, कक्षा की स्क्रीन के लिए कोड के रूप में
the-link-as-a-qr-code-f9cdcb6b = लिंक, QR कोड के रूप में
candidates-6e9467ab = परीक्षार्थी
one-number-a-line-after-a-comma-ddcd5146 = हर पंक्ति में एक नंबर। जिसे अतिरिक्त मिनट मिलने हों, उसके नंबर के बाद कॉमा और मिनट: वे न पर्ची पर दिखते हैं, न स्क्रीन पर।
slips-a-table-978d20c7 = पर्चियाँ, तालिका
title-cut-along-the-lines-one-e6f5a6d5 = { $title }: लाइनों पर काटें, हर एक को एक पर्ची
your-number-89a480eb = आपका नंबर
start-code-8f4e7f8c = स्टार्ट कोड
letters-beside-it-478bec05 = उसके पास के अक्षर
print-the-slips-7a90592c = पर्चियाँ प्रिंट करें
when-all-begin-tell-a-word-for-218ed81b = जब सब शुरू करें, तब आज का शब्द बताएँ, सबके लिए एक ही: दूसरे शब्द से दूसरे मान निकलते हैं, इसलिए कल वाला समूह कुछ नहीं बता सकता। शब्द लिख लें; हर परिणाम में वह रहता है।

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
take-off-66f6f69f = उतारना

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


### app/bench/drawer.rs


### app/bench/estimate.rs


### app/bench/gauge_face.rs


### app/bench/gauges.rs


### app/bench/help.rs


### app/bench/instrument.rs


### app/bench/job_bar.rs

debrief-6692941a = समीक्षा
assessment-7f464e4f = मूल्यांकन

### app/bench/job_card.rs


### app/bench/keys.rs


### app/bench/moving.rs


### app/bench/notebook.rs


### app/bench/notice.rs


### app/bench/papers.rs


### app/bench/picture.rs


### app/bench/point_picker.rs


### app/bench/recorder.rs


### app/bench/safe_strip.rs


### app/bench/screen.rs


### app/bench/selection_bar.rs


### app/bench/suspects.rs


### app/bench/tests_list.rs


### app/bench/time_bar.rs


### app/bench/visit.rs


### app/cohort/aside.rs

file-this-record-cannot-be-run-8fc814a4 = { $file }: यह रिकॉर्ड यहाँ दोबारा नहीं चलाया जा सकता: इसका जॉब या इसका मूल्यांकन मालूम नहीं। फिर भी इसे वैसा पढ़ा जा सकता है जैसा लिखा गया था।

### app/cohort/decision.rs

decision-by-who-fbc7180c = { $decision }, { $who } का निर्णय
passed-513cb799 = पास
border-more-jobs-f2f942b0 = सीमा पर: और जॉब
not-yet-6d9d33dc = अभी नहीं

### app/cohort/desk/checking.rs

this-browser-has-no-threads-2afe55bc = इस ब्राउज़र में थ्रेड नहीं हैं: इसमें कुछ भी जाँचा नहीं जा सकता।
file-it-cannot-be-read-as-text-8a70b7af = { $file }: इसे टेक्स्ट की तरह नहीं पढ़ा जा सकता, या यह बहुत बड़ी है।
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
assessment-n-jobs-that-count-ac1d66eb = { $assessment }, गिने जाने वाले जॉब: { $n }
assessment-assessment-whose-file-cc5aa75c = मूल्यांकन { $assessment }, जिसकी फ़ाइल यहाँ नहीं है
practice-of-no-assessment-7e0c9b9e = अभ्यास, किसी मूल्यांकन का नहीं
what-begun-on-day-1f6ea0fa = { $what }; शुरू { $day } को
what-begun-on-day-with-the-word-8fc618e2 = { $what }; शुरू { $day } को, शब्द “{ $word }” के साथ
decision-marks-of-100-marks-on-68fe697f = { $decision }: औसतन 100 में से { $marks } अंक, { $cut } माँगे जाते हैं
holds-by-who-day-why-ee2134cc = { $holds }, { $who } द्वारा, { $day }: { $why }
overridden-decision-efb4d661 = फ़ैसला बदला गया: { $decision }
skill-n-of-of-b3cfe3b2 = { $skill } { $of } में से { $n }
count-the-jobs-behind-it-248a950e = { $count }: इसके पीछे के जॉब
ability-sure-to-about-range-0-is-612a52e0 = { $ability }, लगभग ±{ $range } तक पक्की; 0 इन लोगों का बीच है
n-counted-fixed-put-right-marks-41080f06 = { $n } गिने गए, { $fixed } ठीक किए, औसतन 100 में से { $marks } अंक
taken-each-f5125359 = हर जॉब { $taken }
ability-ff93d931 = क्षमता
n-rules-broken-critical-of-them-e11e0410 = { $n } नियम टूटे, उनमें से { $critical } जानलेवा दर्जे के
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
rulings-a-table-d1340d34 = निर्णय, तालिका
about-58e096de = किसके बारे में
# what holds from now on
holds-85d31ea6 = मान्य
# who ruled
by-bea06c0e = किसने
day-4954229d = दिन
# verb, of a ruling
take-back-a1f54b79 = वापस लें
any-it-names-none-a505d0bc = कोई भी: इसमें नाम नहीं है
assessment-not-applied-no-result-fc58e591 = { $assessment }: लागू नहीं हुआ, यहाँ इसका कोई परिणाम नहीं है

### app/cohort/saving.rs

there-is-nothing-to-save-yet-e66a9f34 = अभी सहेजने को कुछ नहीं है।
nothing-was-erased-so-there-is-f7d9fa84 = कुछ मिटाया नहीं गया, इसलिए सहेजने को कुछ नहीं है।
not-saved-why-erase-and-save-96135f71 = सहेजा नहीं गया: { $why }। एक बार में कम मिटाएँ और सहेजें।
file-is-saved-38cc5918 = { $file } सहेज ली गई।

### app/cohort/shown.rs

looking-at-links-and-seals-f152dd29 = कड़ियाँ और सीलें देखी जा रही हैं: { $n } में से { $looked } फ़ाइलें
running-the-work-again-run-of-n-17ce71a7 = काम दोबारा चलाया जा रहा है: { $n } में से { $run } फ़ाइलें
stopped-not-every-record-was-run-352fb6df = रोका गया: हर रिकॉर्ड दोबारा नहीं चलाया गया।
records-records-from-files-files-fa305ae0 = { $files } फ़ाइलों के { $records } रिकॉर्ड जाँचे गए।
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
reliability-words-a7d05d94 = विश्वसनीयता: { $words }।
reliability-value-words-bf3d2a91 = विश्वसनीयता { $value }: { $words }।
n-later-attempts-at-the-same-job-55f6a145 = उसी जॉब की बाद की { $n } कोशिशें नहीं गिनी जातीं।
no-record-counts-yet-b02942a3 = अभी कोई रिकॉर्ड नहीं गिना जाता।
no-record-counts-none-was-06bc31e9 = कोई रिकॉर्ड नहीं गिना जाता: एक भी स्वीकार नहीं हुआ। जहाँ सील किया परिणाम ऐसे मूल्यांकन का है जो यहाँ मालूम नहीं, वहाँ उस मूल्यांकन की फ़ाइल और उसकी कुंजी डालें।
see-why-not-accepted-n-273f7246 = कारण देखें: स्वीकार नहीं { $n }
void-48b5725f = रद्द
# verb
erase-80906efa = मिटाएँ
erase-n-past-their-time-b642cb12 = मिटाएँ, { $n } का समय निकल चुका
people-csv-250c6812 = लोग, CSV
jobs-csv-4879e823 = जॉब, CSV
safety-csv-6d00c94d = सुरक्षा, CSV
faults-confused-csv-3ea45ac9 = ग़लत पहचानी ख़राबियाँ, CSV
everything-json-872b56ae = सब कुछ, JSON
rulings-to-go-on-with-later-18aabe6b = निर्णय, बाद में आगे बढ़ने के लिए
print-e8320d28 = प्रिंट करें
the-file-of-rulings-takes-them-2ffb8818 = निर्णयों की फ़ाइल उन्हें दूसरे ब्राउज़र में ले जाती है: वहाँ उसे परिणामों के साथ डालें।

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


### app/debrief/expert.rs


### app/debrief/likely.rs


### app/debrief/marks.rs


### app/debrief/moments.rs


### app/debrief/screen.rs

safety-6a399d07 = सुरक्षा

### app/debrief/step.rs


### app/debrief/track.rs


### app/desk/apprentices.rs

the-machine-of-this-job-cannot-c4d9ec88 = इस जॉब की मशीन तैयार नहीं की जा सकती।
watch-one-who-91c647c8 = एक को देखें: { $who }
watch-one-57c9be6c = एक को देखें
working-it-who-f36ef8a7 = जॉब कर रहा है: { $who } …
how-apprentices-fare-8fa1847f = अप्रेंटिस कैसा करते हैं
how-simulated-apprentices-fare-n-16d7147a = नक़ली अप्रेंटिस कैसा करते हैं, हर तरह के { $n }: कितना कठिन है, इसकी पहली झलक
who-2af42a8f = कौन
right-78e32de5 = सही
watch-5fb7b228 = देखें
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

since-a-few-days-274f8b17 = कुछ दिनों से।
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
drafts-7ca3788d = ड्राफ़्ट
none-yet-a-draft-is-kept-in-this-ea7b2579 = अभी कोई नहीं। ड्राफ़्ट पहले अक्षर से ही इस ब्राउज़र में रखा जाता है।
machine-machine-level-level-c4207d7b = मशीन { $machine }, स्तर { $level }
forget-the-draft-title-27cea723 = ड्राफ़्ट “{ $title }” भुला दें
forget-6e3fab8c = भुला दें
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
ready-0bca3294 = कब मिलेगा
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


### app/faults/mod.rs


### app/faults/page.rs


### app/faults/wash.rs


### app/file_kind.rs


### app/finding.rs


### app/format.rs


### app/given_files.rs


### app/handbook/live_machine.rs


### app/handbook/parts.rs

test-2ffcbe05 = टेस्ट

### app/handbook/worked.rs


### app/handbook.rs


### app/job_filter.rs

all-13254bc4 = सब

### app/job_host.rs


### app/jobs.rs


### app/loading.rs


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

nothing-was-tested-or-repaired-66d000a1 = न कुछ टेस्ट किया गया, न मरम्मत, इसलिए किसी चीज़ को जोखिम नहीं था
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
yes-erase-everything-84564f7b = हाँ, सब कुछ मिटाएँ
erase-everything-fe294832 = सब कुछ मिटाएँ
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


### app/newer.rs


### app/open_files.rs


### app/open_job.rs


### app/opened.rs


### app/outbox/place.rs


### app/outbox/queue.rs


### app/outbox/section.rs


### app/proves.rs


### app/readings.rs


### app/report.rs


### app/rows.rs


### app/session.rs


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


### app/shell.rs

to-the-content-394b43aa = सामग्री पर जाएँ
handbook-b94a65c5 = हैंडबुक
there-is-nothing-at-this-address-b42878d1 = इस पते पर कुछ नहीं है
tubwright-37232af5 = Tubwright
screens-984019e6 = स्क्रीन

### app/sitting/form.rs


### app/sitting/jobs.rs


### app/sitting/limits.rs


### app/sitting/lock.rs


### app/sitting/mark_sheet.rs


### app/sitting/observer.rs

putting-back-85509675 = वापस लगाना

### app/sitting/overview.rs


### app/sitting/result.rs


### app/sitting/room.rs


### app/sitting/room_pause.rs


### app/sitting/start.rs


### app/store/error.rs


### app/store/mod.rs


### app/told_files.rs


### app/training_set.rs


### app/training_system/awaiting.rs


### app/training_system/trouble.rs


### app/view/around.rs


### app/view/beside.rs


### app/view/card.rs


### app/view/covers.rs


### app/view/debrief.rs


### app/view/decided.rs


### app/view/gauges.rs


### app/view/hints.rs


### app/view/likely.rs


### app/view/meter.rs


### app/view/names.rs


### app/view/notice.rs


### app/view/open_ends.rs


### app/view/orders.rs


### app/view/papers.rs


### app/view/past.rs


### app/view/safe.rs

run-capacitor-00729536 = रन कैपेसिटर

### app/view/selection.rs


### app/view/sheet.rs


### app/view/shown.rs


### app/view/verbs.rs


### app/view/visit.rs


### app/view/way.rs


### app/waiting.rs


### app/worker/inside.rs


### app/worker/page.rs


### app/worker/work.rs


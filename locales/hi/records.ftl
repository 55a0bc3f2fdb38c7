### records/as_written.rs

a-record-has-at-most-n-1cacb055 = रिकॉर्ड में ज़्यादा से ज़्यादा { $n } होते हैं
n-bytes-8c9bc920 = { $n } बाइट
no-json-f6fd6898 = JSON नहीं
a-record-is-json-error-c828590f = रिकॉर्ड JSON होता है: { $error }
the-format-of-a-record-begins-122c1417 = रिकॉर्ड का फ़ॉर्मैट { $format } से शुरू होता है
a-record-says-everything-in-it-c3c5f228 = रिकॉर्ड अपनी हर बात इसी में लिखता है
this-is-the-record-as-version-2de6580c = यह रिकॉर्ड वैसा है जैसा प्रोग्राम के संस्करण { $version } ने लिखा। यहाँ उसे फिर से नहीं निकाला गया: इस पेज पर कुछ भी यह नहीं दिखाता कि उसकी रीडिंग और अंक वैसे ही निकलते हैं।
only-version-version-can-run-it-152a5c96 = इसे बिट-दर-बिट वैसा ही दोबारा सिर्फ़ संस्करण { $version } चला सकता है।

### records/chain.rs

record-n-of-the-row-its-link-712aca5b = क्रम का रिकॉर्ड { $n }: उसकी कड़ी उससे नहीं निकलती, उसे बदला गया
record-n-of-the-row-follows-on-4671ba18 = क्रम का रिकॉर्ड { $n } ऐसे के बाद आता है जो यहाँ नहीं है: एक हटाया गया
record-n-of-the-row-follows-on-929df477 = क्रम का रिकॉर्ड { $n } ऐसे के बाद आता है जिसके बाद एक और भी आता है: एक जोड़ा गया

### records/check.rs

the-link-is-link-body-and-link-929e8c67 = कड़ी { $link } है, सामग्री और पिछली कड़ी से { $own } निकलती है: रिकॉर्ड बदला गया
the-name-is-not-the-one-of-the-e6755393 = नाम उस दिन वाला नहीं है: उसे बदला गया
no-seal-a-record-of-an-505ab001 = सील नहीं: मूल्यांकन के रिकॉर्ड में सील होती है
the-seal-is-not-candidate-s-for-a3ab23ef = सील { $assessment } के लिए { $candidate } की नहीं है: बदला गया, या दूसरे परीक्षार्थी का रिकॉर्ड है
engine-engine-wrote-it-verify-it-a43070dc = इसे इंजन { $engine } ने लिखा: उसी इंजन से जाँचें, यह { $own } है
job-job-is-not-in-the-library-f62bfdc8 = जॉब { $job } संग्रह में नहीं है: उसकी फ़ाइल दें
job-job-is-another-now-own-49aa7f48 = जॉब { $job } अब दूसरा है: { $said } के बजाय { $own }
act-act-tick-tick-is-later-than-b42ffa19 = क्रिया { $act }: टिक { $tick } घंटी के एक दिन बाद से भी आगे है
act-act-words-hands-could-not-do-42a61180 = क्रिया { $act }, { $words }: तब हाथ यह नहीं कर सकते थे
act-act-words-at-tick-said-could-2816f4d0 = क्रिया { $act }, { $words }: टिक { $said } पर, शुरू { $own } पर ही हो सकती थी
line-line-said-replay-gives-own-5a971099 = पंक्ति { $line }: { $said }, दोबारा चलाने पर { $own }
result-field-said-replay-gives-e7fc42ec = परिणाम, { $field }: { $said }, दोबारा चलाने पर { $own }
the-machine-s-last-state-is-2477a49b = मशीन की आख़िरी अवस्था दूसरी है
the-job-cannot-be-run-why-8b5e063c = जॉब नहीं चल सकता: { $why }

### records/cohort/mod.rs

hard-for-this-cohort-cc81ca0a = इस समूह के लिए कठिन
easy-for-this-cohort-299d313d = इस समूह के लिए आसान
neither-easy-nor-hard-or-not-8a879929 = न आसान न कठिन, या अभी पक्का नहीं
one-person-alone-reliability-82943e64 = सिर्फ़ एक व्यक्ति: विश्वसनीयता नहीं बताई जा सकती
people-can-be-told-apart-one-by-44ca4281 = लोगों में एक-एक करके फ़र्क़ किया जा सकता है
enough-for-a-decision-about-one-ab1934f2 = एक व्यक्ति के बारे में फ़ैसले के लिए काफ़ी, सीमा के दायरे के साथ, जिसका मतलब और जॉब है
enough-to-compare-groups-not-for-b555ce08 = समूहों की तुलना के लिए काफ़ी, एक व्यक्ति के बारे में फ़ैसले के लिए नहीं
too-low-for-any-decision-about-1bf7239a = एक व्यक्ति के बारे में किसी भी फ़ैसले के लिए बहुत कम
judged-no-number-of-jobs-like-77ad4cfc = { $judged }; ऐसे कितने भी जॉब हों, फ़ायदा नहीं होगा
judged-about-n-jobs-a-person-4f4e2bc8 = { $judged }; हर व्यक्ति के लगभग { $n } जॉब हों तो { $reached } तक पहुँचेगी

### records/course.rs

there-is-no-file-among-the-files-befd43f2 = बिल्ड की फ़ाइलों में { $file } नहीं है
base-cannot-begin-names-give-an-88b4f0bb = नाम “{ $base }” से शुरू नहीं हो सकते: https://school.example/ जैसा पता दें, बिना ? और #

### records/practice.rs

work-safely-1551597e = सुरक्षित काम करना

### records/record.rs

byte-n-e678c8db = बाइट { $n }
not-as-a-record-is-written-it-60dbf605 = वैसा नहीं जैसा रिकॉर्ड लिखा जाता है: इसे बदला गया या किसी दूसरे प्रोग्राम ने नए सिरे से सहेजा

### records/rulings.rs

of-which-assessment-choose-one-e977c3c3 = किस मूल्यांकन का? एक चुनें।
what-holds-choose-one-a482872b = क्या मान्य होगा? एक चुनें।
who-rules-give-a-name-fe31c432 = निर्णय किसका? नाम दें।
why-a-ruling-stands-with-its-1cfa6ca1 = क्यों? निर्णय अपने कारण के साथ रहता है।

### records/seal.rs

must-be-64-hexadecimal-digits-0-940122fe = 64 हेक्साडेसिमल अंक होने चाहिए, 0-9 a-f
letter-is-in-no-start-code-use-2e1d638d = '{ $letter }' किसी स्टार्ट कोड में नहीं होता: अंक और अक्षर लिखें
n-letters-a-start-code-has-7440fd41 = { $n } अक्षर: स्टार्ट कोड में { $wanted } होते हैं

### records/sift.rs

erased-its-place-in-the-row-is-d289ea4f = मिटाया गया; क्रम में उसकी जगह रखी गई है
erased-but-its-link-does-not-9664e4c1 = मिटाया गया, पर उसकी कड़ी बचे हुए से नहीं निकलती: उसे बदला गया
file-line-n-51269141 = { $file }, पंक्ति { $n }
job-job-is-not-among-those-here-43e7eaad = जॉब { $job } यहाँ वालों में नहीं है
assessment-assessment-is-not-a35f17f6 = मूल्यांकन { $assessment } यहाँ नहीं है: उसकी फ़ाइल भी खोलें

### records/sitting.rs

it-is-of-another-assessment-than-35a7df27 = यह { $assessment } का नहीं, किसी दूसरे मूल्यांकन का है
job-n-of-this-candidate-is-own-b2985c48 = इस परीक्षार्थी का जॉब { $n } { $own } है, { $said } नहीं
the-variant-that-was-drawn-is-no-1d5b620f = जो रूप निकाला गया वह जॉब नहीं है: { $why }
# no job
none-903f9f01 = कोई नहीं

### records/zip.rs

a-zip-file-takes-65-535-files-2491f08e = zip फ़ाइल में ज़्यादा से ज़्यादा 65,535 फ़ाइलें और 4 GB आते हैं

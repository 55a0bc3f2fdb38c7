### scenario/check_job.rs

machine-e103566e = मशीन
question-06d5a845 = सवाल
one-answer-or-two-where-asking-5e8c57a6 = एक जवाब, या दो जहाँ दोबारा पूछने से मदद मिले
the-customer-needs-an-answer-to-f2e581d1 = ग्राहक के पास { $question } का जवाब होना चाहिए
fault-of-this-machine-c6579391 = इस मशीन की ख़राबी
part-of-this-machine-c6d20ece = इस मशीन का पार्ट
the-van-has-n-slots-9fe2a5f0 = वैन में { $n } जगहें हैं

### scenario/check_set.rs

name-1-to-most-jobs-b7335535 = 1 से { $most } जॉब के नाम दें
name-each-job-once-a2b3e275 = हर जॉब का नाम एक ही बार दें
name-a-job-that-ships-or-put-its-83d67eeb = साथ आने वाले किसी जॉब का नाम दें, या उसकी फ़ाइल `files` में रखें

### scenario/check_visit.rs

question-on-the-phone-b40c9eed = फ़ोन पर पूछा जाने वाला सवाल
a-mistaken-customer-needs-a-de8a1b0f = ग़लत बताने वाले ग्राहक के लिए दो जवाबों वाला एक सवाल चाहिए, ग़लत जवाब पहले
stands-there-already-8be684ca = यहाँ पहले से है
a-house-without-the-device-holds-16c7d3c5 = जिस घर में डिवाइस नहीं है, वहाँ `site.rcd_ma` में कोई संख्या नहीं होती
hot-water-needs-water-say-how-2bb9dbf3 = गरम पानी के लिए पानी चाहिए: `site.water_l` में बताएँ कि कितना
part-or-variant-in-the-store-39324589 = स्टोर का पार्ट या रूप

### scenario/pack.rs

name-a-machine-that-ships-ef6cfaae = साथ आने वाली किसी मशीन का नाम दें

### scenario/problem.rs

must-not-be-blank-bc7db88c = ख़ाली नहीं छोड़ सकते
there-is-no-such-kind-85f89bb5 = इस नाम से कोई { $kind } नहीं है
there-is-no-such-kind-nearest-is-dc5cf1d7 = इस नाम से कोई { $kind } नहीं है; सबसे मिलता-जुलता है { $known }

### scenario/read.rs

at-most-most-are-read-93d168da = ज़्यादा से ज़्यादा { $most } पढ़े जाते हैं
line-n-54d86573 = पंक्ति { $n }
not-json-error-2091875a = JSON नहीं: { $error }
a-list-of-n-434eaf11 = { $n } की सूची
an-object-of-n-fields-22543677 = { $n } ख़ानों वाला ऑब्जेक्ट

### scenario/share.rs

start-and-so-on-n-letters-7c1d7aa8 = { $start } वग़ैरह, { $n } अक्षर
the-letters-were-cut-or-changed-a8d2823a = रास्ते में अक्षर कट गए या बदल गए: पूरा पता या फ़ाइल फिर से कॉपी करें
this-is-longer-than-any-job-ask-a1c9d230 = यह किसी भी जॉब से लंबा है: इसे फ़ाइल के रूप में माँगें
this-version-reads-letters-that-68035ce9 = यह संस्करण 1 से शुरू होने वाले अक्षर पढ़ता है: जॉब को फ़ाइल के रूप में माँगें, या नया संस्करण इस्तेमाल करें

### bangs_like_a_drum.json

it-bangs-like-a-drum-5f74cc63 = ढोल की तरह धम-धम बजती है
suspension-and-level-06c24fbf = सस्पेंशन और लेवल
more-than-one-cause-bcd2d674 = एक से ज़्यादा कारण
ms-achterberg-097dcb32 = सुश्री Achterberg
houseboat-laundry-in-the-bow-43b6d1a2 = हाउसबोट, आगे के सिरे में लॉन्ड्री
laughs-then-worries-ba54a515 = पहले हँसती हैं, फिर चिंता में पड़ जाती हैं
when-it-spins-the-whole-boat-e2eceef8 = जब यह स्पिन करती है तो पूरी नाव को ख़बर हो जाती है। इधर-उधर पटकती है, किनारे से टकराती है, रुक जाती है, फिर धीमी रफ़्तार से कोशिश करती है, और कपड़े पानी टपकाते हुए निकलते हैं।
the-boat-lies-a-little-down-by-abf4c776 = नाव आगे की तरफ़ थोड़ी झुकी हुई है। कैबिनेट के फ़र्श पर तेल की बूँदें हैं।
every-spin-3e012d66 = हर स्पिन में।
three-kilos-well-spread-i-have-4b56858e = तीन किलो, अच्छी तरह फैलाकर, मैं सब करके देख चुकी हूँ।
bang-bang-bang-76eab467 = धम, धम, धम।
shore-power-never-trips-52ac6abf = किनारे की बिजली से चलती है, कभी ट्रिप नहीं होती।
the-dial-goes-on-9fc1ea41 = डायल आगे चलता है।
it-was-always-lively-7fa67a03 = उछल-कूद तो हमेशा से थोड़ी करती थी।
since-the-winter-it-is-wild-we-d2a83979 = सर्दियों से तो बिल्कुल बेक़ाबू है। हमने नाव का वज़न भी इधर-उधर किया है।
yes-e981313a = हाँ।
when-the-spin-begins-39c4ba22 = जब स्पिन शुरू होती है।
my-friend-greased-it-eea50aa5 = मेरे दोस्त ने इसमें तेल-ग्रीस लगाई थी।
the-four-rods-with-the-springs-c26ce2d3 = वे चार रॉड, जिन पर स्प्रिंग हैं। चूँ-चूँ करती थीं, तो उसने तेल डाल दिया। दिल खोलकर।

### bath_before_rinse.json

it-stays-in-its-bath-water-4c0fae9b = अपने ही पानी में खड़ी रहती है
timer-machines-44410b64 = टाइमर वाली मशीनें
follow-the-supply-7038e61a = सप्लाई का रास्ता पकड़ना
mrs-bauermann-9468c3f6 = श्रीमती Bauermann
farmhouse-washhouse-across-the-53a694be = खेत वाला घर, कपड़े धोने का कमरा आँगन के पार
practical-has-sleeves-rolled-up-01e2056e = काम की बात करती हैं, आस्तीनें चढ़ी हुई हैं
it-washes-as-it-always-has-then-836a592d = धोती तो जैसे हमेशा धोती थी। फिर डायल पर वह जगह आती है जहाँ पानी निकलना चाहिए, और कुछ नहीं निकलता। वहीं खड़ी रहती है। एक हफ़्ते से मग से पानी निकाल रही हूँ।
whitewashed-room-stone-floor-6cc88137 = चूने से पुता कमरा, पत्थर का फ़र्श, फ़र्श में नाली। मशीन पर एक बड़ा चमचा टँगा है।
every-time-72d76ef9 = हर बार।
overalls-dda53f7f = काम वाले डांगरी कपड़े।
quiet-the-whirr-below-that-used-1cbf9aba = चुप। पहले वहाँ नीचे से जो घर्र-घर्र आती थी, अब नहीं आती।
the-dial-creeps-to-the-end-of-2636bee9 = डायल धुलाई के आख़िर तक रेंगता है, फिर वहीं खड़ा हो जाता है।
a-week-a10c6352 = एक हफ़्ता।
yes-our-own-well-3bae2838 = हाँ, हमारा अपना कुआँ है।
when-the-washing-is-over-09614089 = जब धुलाई पूरी हो जाती है।
my-husband-oiled-the-lid-that-is-cd8d47bb = मेरे पति ने ढक्कन में तेल डाला था। बस इतना ही।

### bites_bare_feet.json

it-bites-me-when-i-touch-it-with-aa3296c6 = नंगे पैर छूने पर काटती है
insulation-and-leakage-1e62399c = इंसुलेशन और लीकेज
house-and-supply-ef9faa35 = घर और सप्लाई
mrs-delgado-7b436617 = श्रीमती Delgado
old-house-by-the-river-ground-323d8f9b = नदी किनारे पुराना घर, ग्राउंड फ़्लोर
frightened-293e41c7 = डरी हुई
it-bites-when-i-stand-there-with-94e16e86 = काटती है! जब मैं वहाँ नंगे पैर खड़ी होकर ढक्कन छूती हूँ तो पूरी बाँह तक झनझनाहट चढ़ जाती है। बच्चों को अब उसके पास नहीं जाने दूँगी।
stone-floor-damp-in-winter-new-05c1e895 = पत्थर का फ़र्श, सर्दियों में सीलन। पुरानी दीवार में नए सॉकेट। घर में दो छोटे बच्चे।
in-the-kitchen-on-the-stone-c0cab8db = रसोई में, पत्थर के फ़र्श पर। मेरी बहन हाथ बँटा सकती है। छोटे बच्चे दौड़ते फिरते हैं, मैं अकेली उन्हें बाहर नहीं रोक पाती।
with-shoes-i-feel-nothing-7926d2fb = जूते पहनकर कुछ महसूस नहीं होता।
nothing-in-it-d2604bc0 = इसमें कुछ नहीं है।
no-breaker-has-ever-dropped-08f826a6 = कोई ब्रेकर कभी नहीं गिरा।
there-is-only-one-old-breaker-2f4db39c = बस एक पुराना ब्रेकर है और बग़ल में चीनी मिट्टी वाले फ़्यूज़। किसी टेस्ट बटन का मुझे पता नहीं।
it-works-quite-normally-10a313d6 = चलती तो बिल्कुल ठीक है।
since-we-moved-in-in-april-7cd8ac96 = जब से हम यहाँ आए, अप्रैल से।
in-the-old-flat-never-it-is-the-9452e8b0 = पुराने फ़्लैट में कभी नहीं। मशीन वही है।
always-when-it-is-plugged-in-it-7c60cb1b = जब भी प्लग लगा हो। चलना भी ज़रूरी नहीं।
nobody-has-touched-the-machine-5c65a0ec = मशीन को किसी ने हाथ नहीं लगाया।
the-house-the-landlord-had-new-84d05b28 = घर में? हमारे आने से पहले मकान-मालिक ने नए सॉकेट लगवाए थे। अपने साले से।

### changes_its_mind.json

it-changes-its-mind-and-never-b112456f = अपना मन बदलती रहती है और कभी आवाज़ नहीं देती
board-or-part-9a8433fd = बोर्ड या पार्ट
mr-lindgren-19c6cf71 = श्री Lindgren
retirement-home-his-own-small-7798ad24 = वृद्धाश्रम, अपनी छोटी रसोई
courteous-hard-of-hearing-caec0546 = शिष्ट, ऊँचा सुनते हैं
it-jumps-from-one-program-to-the-bfd95fe3 = अपने आप एक प्रोग्राम से दूसरे पर कूद जाती है, और जब किसी तरह एक पकड़ भी लूँ तो वह शुरू नहीं होता। और काम पूरा होने पर अब मुझे कभी आवाज़ भी नहीं देती, या फिर मेरे कान जितना सोचता था उससे ज़्यादा ख़राब हैं।
a-brown-edge-under-one-of-the-3dc6c152 = एक बटन के नीचे भूरा किनारा जमा है। पड़ोसी भी कहता है कि मशीन हफ़्तों से चुप है।
two-shirts-26dd6f4c = दो कमीज़ें।
that-is-just-it-nothing-d639f1cc = यही तो बात है। कोई आवाज़ नहीं।
one-program-after-the-other-310c8dae = एक के बाद एक प्रोग्राम।
since-i-had-the-coffee-accident-ce7fd595 = जब से मेरे हाथ से कॉफ़ी गिरी।
it-was-a-full-cup-i-wiped-it-off-e1750f21 = पूरा कप था। मैंने फ़ौरन पोंछ दिया था।
coffee-a-little-e5dfa3b2 = कॉफ़ी की, थोड़ी-सी।
as-soon-as-i-switch-it-on-14b8a397 = जैसे ही चालू करता हूँ।
nobody-183b9df0 = किसी ने नहीं।

### clicks_and_stirs_nothing.json

it-whirls-below-and-nothing-d61d30e0 = नीचे घूमती है, ऊपर कुछ नहीं हिलता
belt-and-drive-23092041 = बेल्ट और ड्राइव
mr-tavares-d4e1bd5a = श्री Tavares
barber-s-shop-back-room-25d1c6c3 = नाई की दुकान, पीछे का कमरा
chatty-3afc649c = बातूनी
i-hear-it-working-away-e6a5e63b = नीचे इसके काम करने की आवाज़ सुनता रहता हूँ, और तौलिए ऐसे पड़े रहते हैं जैसे धूप में बिल्लियाँ। ज़रा-सा हिलते हैं बस। जैसे मटमैले डालो वैसे ही मटमैले निकलते हैं।
back-room-with-a-mirror-and-a-57508d5b = पीछे का कमरा, आईना और रेडियो रखा है। टाइलें समतल हैं।
yes-the-spin-is-fine-fb34737f = हाँ। स्पिन ठीक है।
towels-a-lot-of-them-i-admit-29a6455c = तौलिए। बहुत सारे, मानता हूँ।
it-clicks-now-and-then-and-runs-55d23459 = कभी-कभी क्लिक करती है, और नीचे तेज़ चलती है।
the-dial-goes-through-as-always-3a5cf582 = डायल हमेशा की तरह पूरा चलता है।
a-few-weeks-it-skipped-at-first-42786802 = कुछ हफ़्ते हुए। शुरू में झटका खाती थी, क्लिक के साथ।
in-the-wash-d7e021de = धुलाई में।
no-one-305664d8 = किसी ने भी नहीं।

### creeps_and_tears_sheets.json

the-drum-creeps-and-the-sheets-a98391cd = ड्रम सरकता है और चादरें फटकर निकलती हैं
clutch-and-brake-4adbe7ae = क्लच और ब्रेक
price-and-worth-082dd53f = क़ीमत और फ़ायदा
mrs-thorvald-8e68ca09 = श्रीमती Thorvald
guest-house-with-six-rooms-52a7b72f = छह कमरों का गेस्ट हाउस, तहख़ाने में लॉन्ड्री
businesslike-short-of-time-8e9bc288 = सीधे काम की बात, समय कम है
my-sheets-come-out-torn-and-9e48d09a = मेरी चादरें फटी हुई और रस्सी की तरह गुँथी हुई निकलती हैं। ढक्कन में से देखती हूँ तो नीचे की प्लेट धो रही होती है और पूरा ड्रम घूमता चला जाता है। उसे तो रुका रहना चाहिए, है न?
a-second-machine-of-the-same-701c7d80 = बग़ल में इसी बनावट की दूसरी मशीन है और अच्छा धोती है। सूखा फ़र्श, मशीन लिटाने की जगह है।
every-load-62ab137a = हर लोड में।
double-sheets-as-always-b4f48ab5 = डबल बेड की चादरें, हमेशा की तरह।
no-new-noise-that-i-would-notice-2b98daab = कोई नई आवाज़ नहीं, जो बाक़ी आवाज़ों के बीच पता चले।
nothing-b8d0f14c = कुछ नहीं।
since-the-season-began-6653fdec = जब से सीज़न शुरू हुआ।
it-has-done-four-or-five-loads-a-7ee82614 = तीन साल से यह रोज़ चार-पाँच लोड धोती आई है।
in-the-wash-spinning-is-fine-4dccfd96 = धुलाई में। स्पिन ठीक है।
my-nephew-changed-the-pulsator-3c251be5 = मेरे भतीजे ने सर्दियों में पल्सेटर बदला था, पुराना चटक गया था।
he-took-out-the-big-bolt-in-the-b9c8daa7 = उसने बीच का बड़ा बोल्ट निकाला और वापस लगा दिया। कहता है और कुछ नहीं किया।

### dark_panel.json

the-panel-is-dark-acd2ea82 = पैनल पर अँधेरा है
why-did-it-fail-1ef9ae6b = ख़राब क्यों हुआ
mr-silva-4500ac3b = श्री Silva
first-floor-flat-for-rent-4285608e = पहली मंज़िल, किराए का फ़्लैट
landlord-on-the-telephone-tenant-8357af93 = मकान-मालिक फ़ोन पर, किराएदार घर पर
my-tenant-says-the-machine-is-95d6b643 = मेरी किराएदार कहती हैं कि मशीन बिल्कुल बंद पड़ी है। वे ध्यान से चलाने वाली हैं। कुछ भी बदलने से पहले मैं जानना चाहता हूँ कि क्या ख़राब हुआ है।
the-tenant-lets-you-in-and-must-95ed3695 = किराएदार दरवाज़ा खोलती हैं और उन्हें एक घंटे में निकलना है। मरम्मत की मंज़ूरी मकान-मालिक फ़ोन पर देते हैं।
dead-is-dead-19f9f3b5 = बंद मतलब बंद।
empty-2c26c8e0 = ख़ाली।
not-even-the-click-it-makes-when-f41bc2f0 = वह क्लिक भी नहीं जो जागते समय करती है।
the-other-sockets-work-ed6bc4d1 = बाक़ी सॉकेट चलते हैं।
the-breaker-was-on-she-tried-a-e135636c = ब्रेकर चालू था, उन्होंने उसी सॉकेट में एक लैंप लगाकर देखा: जलता है।
nothing-no-lamp-7cc8ca33 = कुछ नहीं। कोई बत्ती नहीं।
since-friday-49fdbe96 = शुक्रवार से।
the-tenant-says-it-smelt-warm-9c86bbe1 = किराएदार कहती हैं कि गुरुवार को पैनल के पीछे से गरम-सी गंध आई थी, एक के बाद एक दो धुलाइयों के बाद।
it-was-dead-in-the-morning-in-f17b07c7 = सुबह बंद पड़ी मिली। शाम को धोया था।
not-while-i-have-owned-it-b3a4e7ae = जब से मेरे पास है, तब से नहीं।

### dead_after_a_buzz.json

it-buzzed-at-the-end-and-then-96e62b25 = आख़िर में ज़ोर से भनभनाई और फिर बंद हो गई
mrs-castellane-brooks-ad19b008 = श्रीमती Castellane-Brooks
duplex-shared-laundry-room-1c596242 = दो परिवारों का घर, साझा लॉन्ड्री कमरा
neighbours-are-waiting-cc7aed7c = पड़ोसी इंतज़ार में हैं
it-was-draining-it-buzzed-louder-b70586e9 = पानी निकाल रही थी, कुछ देर हमेशा से ज़्यादा ज़ोर से भनभनाई, और फिर सब बुझ गया। न बत्ती, न कुछ। दोनों परिवार इसी पर धोते हैं, तो लाइन लगी है।
a-sheet-for-signing-up-hangs-on-e0af010a = दरवाज़े पर नाम लिखने का काग़ज़ टँगा है, बहुत काट-छाँट के साथ।
it-is-dead-now-7f44c0f4 = अब तो बंद पड़ी है।
mixed-half-full-1dad3df4 = मिले-जुले, आधी भरी।
it-used-to-buzz-loudly-when-37e5ba23 = पंप चलते समय ज़ोर से भनभनाती थी। अब कुछ नहीं।
the-breaker-held-the-dryer-on-d091a479 = ब्रेकर नहीं गिरा। उसी सर्किट पर ड्रायर चलता है।
dark-72f57611 = अँधेरा।
yesterday-noon-the-loud-buzz-for-0dd1e959 = कल दोपहर। ज़ोर की भनभनाहट कोई दो हफ़्ते से।
a-bit-of-hot-plastic-down-low-6665a7b5 = नीचे की तरफ़ थोड़ी गरम प्लास्टिक की गंध, कल।
it-went-while-it-was-pumping-out-d3f08a8b = पंप से पानी निकालते समय बंद हुई।

### dead_after_the_storm.json

dead-since-the-thunderstorm-d88fabc5 = आँधी-बिजली के बाद से बंद
mrs-raharjo-695f5c60 = श्रीमती Raharjo
last-house-on-the-hill-f99f797c = पहाड़ी पर आख़िरी घर
calm-has-candles-ready-20c646af = शांत, मोमबत्तियाँ तैयार रखी हैं
there-was-a-bang-in-the-storm-33e0bf11 = तूफ़ान में एक धमाका हुआ और सारी बत्तियाँ चली गईं। बत्तियाँ लौट आईं, वॉशिंग मशीन नहीं। न रोशनी, न आवाज़।
the-neighbour-s-router-and-the-ff290303 = पड़ोसी का राउटर और दरवाज़े की घंटी भी बंद पड़े हैं।
still-in-it-half-washed-11846a08 = अभी इसी में हैं, आधे धुले।
the-breaker-dropped-that-night-i-b50d33e9 = उस रात ब्रेकर गिरा था। मैंने फिर चढ़ाया और वह टिका हुआ है। उसी सॉकेट पर रेडियो चलता है।
since-the-storm-on-tuesday-night-823d7c55 = मंगलवार की रात के तूफ़ान से।
a-little-burnt-on-tuesday-f7ac5a19 = थोड़ी जली-जली, मंगलवार को।
it-came-from-the-top-behind-the-713c1b23 = ऊपर से आई थी, पैनल के पीछे से।
it-does-not-start-at-all-f3633078 = शुरू ही नहीं होती।

### dial_stands_still.json

it-washes-on-and-on-e9046c86 = धोती ही रहती है
mr-osei-57db91de = श्री Osei
boarding-house-laundry-room-604b9721 = बोर्डिंग हाउस, लॉन्ड्री का कमरा
good-humoured-a1923d1e = ख़ुशमिज़ाज
it-washes-and-washes-i-went-to-44fea6ff = धोती है और बस धोती जाती है। मैं बाज़ार गया, लौट आया, तब भी धो रही थी। कमीज़ें ख़ूब साफ़ हैं, मगर मुझे आज चाहिए।
plenty-of-room-the-machine-is-77b3a178 = जगह बहुत है। मशीन रोज़ चाहिए; अगर कोई पार्ट मँगाना पड़े तो दो दिन के भीतर दूसरा दौरा पहले से तय है।
if-i-turn-the-dial-by-hand-to-b06d2aed = हाथ से डायल को पानी निकालने पर घुमाऊँ तो पानी निकाल देती है, और आगे घुमाऊँ तो स्पिन करती है। मगर अपने आप आगे नहीं बढ़ती।
shirts-three-kilos-a6f53524 = कमीज़ें, तीन किलो।
it-sounds-as-always-063896dd = आवाज़ हमेशा जैसी है।
the-little-ticking-in-the-panel-065f81fc = पैनल में जो हल्की टिक-टिक थी, वह चली गई।
no-trouble-be213051 = कोई दिक़्क़त नहीं।
it-has-no-lamps-only-the-dial-8c8f6bbd = इसमें बत्तियाँ नहीं हैं, बस डायल है। डायल खड़ा है।
since-wednesday-404978c5 = बुधवार से।
fills-well-ae90359f = पानी अच्छा भरती है।
in-the-wash-it-never-gets-to-the-0f2068d0 = धुलाई में। पानी निकालने तक पहुँचती ही नहीं।
no-it-is-an-honest-old-machine-cd235cab = नहीं, ईमानदार पुरानी मशीन है।

### drinks_and_slaps_over.json

it-drinks-water-and-slaps-it-on-115746a9 = पानी पीती है और फ़र्श पर छलकाती है
intermittent-faults-cd5108b9 = कभी-कभी आने वाली ख़राबियाँ
mrs-ferreira-e5bdc2d3 = श्रीमती Ferreira
ground-floor-one-step-down-to-fba789e8 = ग्राउंड फ़्लोर, आँगन में एक सीढ़ी नीचे
worried-about-the-bill-7958d516 = बिल की चिंता में
it-drinks-the-water-bill-has-0a9710d4 = पीती है! पानी का बिल दुगना हो गया। भरती है, धोती है, फिर थोड़ा और भरती है, और थोड़ा और, और जब स्पिन की बारी आती है तब भी उसमें पानी होता है और वह टाइलों पर छलक जाता है।
tiled-floor-with-a-gully-in-the-5b306d2b = टाइल का फ़र्श, कोने में नाली। पोंछा तैयार रखा है।
every-wash-a2266027 = हर धुलाई में।
bed-sheets-and-the-boys-football-9035c03a = चादरें और लड़कों के फ़ुटबॉल के कपड़े।
only-the-water-running-in-when-1dbd10d2 = बस पानी आने की आवाज़, जब नहीं आना चाहिए।
it-never-complains-it-just-goes-a65c41a6 = कभी शिकायत नहीं करती, बस चलती रहती है।
since-about-the-rainy-season-it-4c8dd7d2 = बरसात के आसपास से। धीरे-धीरे बढ़ा।
a-wet-floor-that-is-all-clean-c8d01c3d = फ़र्श गीला, बस। साफ़ साबुन वाला पानी।
yes-and-strong-ca0cec7a = हाँ, और ज़ोर का।
all-the-time-a-bit-more-and-a-d1f69119 = हर समय, थोड़ा और, थोड़ा और।
if-i-stop-it-half-way-and-come-ecc53c2b = बीच में रोक दूँ और लौटकर आऊँ, तो आगे चलते ही फिर पानी लेती है।
there-was-a-man-who-sprayed-532a72dd = एक आदमी कॉकरोच की दवा छिड़कने आया था, उसने शायद इसे खिसकाया हो।

### drips_and_slips.json

it-leaves-a-damp-patch-and-slips-9c6fdd8f = नीचे गीला दाग़ छोड़ती है और फिसलती है
water-in-d322508f = पानी आना
mr-abdurahman-3adb72a7 = श्री Abdurahman
carpet-washer-s-yard-f05a911c = क़ालीन धोने वाले का अहाता
direct-5fe7049c = सीधी बात करने वाले
two-things-there-is-a-damp-patch-f970bd1d = दो बातें हैं। हर धुलाई के बाद नीचे गीला दाग़ मिलता है। और अब इसमें दम नहीं रहा, जब घूमना चाहिए तब फिसलती है।
concrete-yard-under-a-roof-a-433e32e8 = कंक्रीट का अहाता, ऊपर छत। मशीन के बीच के ठीक नीचे फ़र्श पर गहरा गोल धब्बा।
runners-and-mats-3465fdae = छोटी दरियाँ और मैट।
it-hums-and-slides-a-bit-of-a-b7879c14 = भनभनाती है और फिसलती है। थोड़ी चूँ-चूँ।
first-the-patch-then-the-sliding-e76ff659 = पहले दाग़, फिर फिसलना। बीच में एक महीना।
rubber-sometimes-cdee918f = रबर की, कभी-कभी।
the-damp-patch-after-the-wash-92a7f22a = गीला दाग़ धुलाई के बाद। फिसलना हर समय।

### empties_and_stops_there.json

it-empties-and-stops-there-ab1f1b0b = पानी निकालती है और वहीं रुक जाती है
dead-test-ef41ac25 = डेड टेस्ट
ask-and-listen-c9e66b3e = पूछना और सुनना
mr-ionescu-c8ecf9d4 = श्री Ionescu
block-of-flats-eighth-floor-lift-c69a618a = फ़्लैटों की इमारत, आठवीं मंज़िल, लिफ़्ट बंद है
friendly-out-of-breath-265d225b = मिलनसार, हाँफ़ते हुए
the-water-goes-out-and-then-b714aacf = पानी निकल जाता है, फिर स्पिन होनी चाहिए, और कुछ नहीं होता। डायल घूमता है, वह पंप वाली चीज़ घर्र-घर्र करती है, ड्रम खड़ा रहता है।
a-dent-in-the-top-edge-of-the-16c1198b = कैबिनेट के ऊपरी किनारे पर एक पिचक है; ढक्कन ठीक बंद होता है।
sweaters-39bfdc2d = स्वेटर।
only-the-whirr-from-below-d12f1e8f = बस नीचे से घर्र-घर्र।
the-dial-goes-on-to-the-end-fe8ce346 = डायल आख़िर तक चलता है।
since-it-came-back-from-my-2f533d81 = जब से मेरी बेटी के यहाँ से लौटी है।
at-each-spin-24bf2f43 = हर स्पिन पर।
no-repair-50e91df7 = कोई मरम्मत नहीं।
four-men-carried-it-up-one-of-f2efd607 = चार आदमी इसे उठाकर ऊपर लाए। छठी मंज़िल पर उनमें से एक इसे लिए-लिए गिर पड़ा। उसके बाद ऊपर का हिस्सा थोड़ा खुल गया था, उन्होंने ठोककर बंद कर दिया।

### everything_in_one_go.json

it-cannot-manage-the-blankets-91ad145f = कंबल इसके बस के नहीं
teach-the-customer-3f4aca13 = ग्राहक को समझाना
no-part-needed-fcd2d214 = पार्ट की ज़रूरत नहीं
mr-and-mrs-petrossian-73c5cf69 = श्री और श्रीमती Petrossian
guest-house-at-the-pass-90228964 = दर्रे पर गेस्ट हाउस
hard-working-open-to-advice-9d96fc19 = मेहनती, सलाह मानने को तैयार
we-do-the-blankets-in-one-go-now-ad2ed7e3 = अब हम सारे कंबल एक ही बार में डाल देते हैं, क्योंकि सीज़न छोटा है। कराहती है, हथेली भर घूमती है, गंध मारती है और बैठ जाती है। क्या मोटर है?
a-mountain-of-woollen-blankets-21c2f7a1 = बेंच पर ऊनी कंबलों का पहाड़; ड्रम किनारे तक ठूँसा हुआ।
with-the-blankets-yes-75a1e891 = कंबलों के साथ, हाँ।
blankets-32853ebd = कंबल।
how-many-as-many-as-go-in-nine-90938825 = कितने? जितने आ जाएँ। शायद नौ-दस किलो। आन्ना ऊपर चढ़कर दबाती है।
it-groans-677b5ab0 = कराहती है।
since-we-began-with-the-blankets-6d53eda5 = जब से कंबल शुरू किए, पिछले हफ़्ते से।
warm-bf9e3ac2 = गरम-सी।

### fills_and_never_gets_full.json

it-fills-and-never-gets-full-0c165ec3 = भरती रहती है और कभी भरती नहीं
look-before-opening-ca9a0aad = खोलने से पहले देखना
cure-without-a-part-1ceeaa9c = बिना पार्ट बदले ठीक करना
ms-tallgrass-39a1e60e = सुश्री Tallgrass
garage-conversion-level-with-the-d6d3cf53 = गैराज को बदलकर बनाया कमरा, आँगन के बराबर सतह पर
efficient-4f3ae9f4 = झटपट काम करने वाली
it-fills-for-ever-i-can-hear-it-14382934 = भरती ही रहती है। पानी आने की आवाज़ सुनती हूँ, देखती हूँ तो थोड़ा पानी होता है, फिर देखती हूँ तो नहीं होता। बाहर आँगन इतना हरा है कि क्या कहूँ।
the-drain-hose-goes-through-a-a566677f = ड्रेन होज़ फ़र्श के बराबर एक छेद से निकलता है और बाहर घास में ख़त्म होता है, मशीन जहाँ खड़ी है उससे नीचे।
kids-clothes-6f244f59 = बच्चों के कपड़े।
water-running-in-and-if-you-fc0980d6 = पानी बहने की। अंदर, और बाहर खड़े हों तो बाहर भी।
its-own-outlet-ab8903e0 = इसका अपना अलग पॉइंट है।
filling-and-then-that-it-fills-be22fd2f = “पानी भर रहा है”, और फिर यह कि पानी बहुत धीरे भर रहा है।
since-we-put-it-out-here-in-the-2fbd5262 = जब से इसे यहाँ गैराज में रखा, मई से।
no-and-the-floor-is-dry-029499e3 = नहीं, और फ़र्श सूखा है।
full-blast-ed6ed928 = पूरे ज़ोर से।
while-it-fills-b7a11a4d = जब पानी भरती है।
we-moved-it-ourselves-my-wife-46797e93 = हमने ख़ुद खिसकाई। मेरी पत्नी ने होज़ दीवार के पार बाहर निकाल दिया।

### forgets_what_it_was_doing.json

it-forgets-what-it-was-doing-83e8bdf7 = भूल जाती है कि क्या कर रही थी
connectors-c91e2539 = कनेक्टर
mr-castellanos-d9d6b3ed = श्री Castellanos
bungalow-at-the-end-of-the-bus-f6195761 = बस के आख़िरी स्टॉप पर बंगला
talkative-f667bbb8 = बहुत बोलने वाले
half-way-through-a-wash-it-goes-2b6a92ff = धुलाई के बीच में अँधेरी हो जाती है, बस यूँ ही, और जब पीछे हाथ डालकर हिलाता-डुलाता हूँ तो लौट आती है और चाहती है कि मैं स्टार्ट दबाऊँ। ऐसा लगता है जैसे अपने भाई के साथ रह रहा हूँ।
fresh-paint-the-lead-comes-out-84aff603 = ताज़ा पेंट। कॉर्ड मशीन के एक पाये के नीचे से निकलती है और वहाँ चपटी है।
it-comes-and-goes-0eab900c = कभी होता है, कभी नहीं।
lean-on-it-and-it-goes-sometimes-7dafcd71 = इस पर टेक लगाओ तो बंद हो जाती है। कभी-कभी।
the-usual-67791174 = वही, जो हमेशा।
a-faint-crackle-if-the-kitchen-dc3fb005 = हल्की चटचट, अगर रसोई में शांति हो।
no-breaker-has-gone-the-lamp-on-b9013b9a = कोई ब्रेकर नहीं गिरा। उसी सॉकेट का लैंप जलता रहता है।
black-then-power-was-off-b9bb0919 = अँधेरा। फिर “बिजली चली गई थी”।
since-i-pulled-it-out-to-paint-24d2d727 = जब से दीवार पेंट करने के लिए इसे बाहर खींचा।
any-time-washing-rinsing-it-does-46eb98a1 = कभी भी। धुलाई, खंगालना, कोई फ़र्क़ नहीं।
i-moved-it-myself-for-the-a25fa85c = पेंट के लिए मैंने ख़ुद खिसकाई थी। हो सकता है दोपहर भर अपनी ही कॉर्ड पर खड़ी रही हो।

### fuller_and_splashing.json

too-full-and-it-splashes-over-66fd3739 = ज़्यादा भरती है और अंदर ऊपर से छलकती है
mr-ferreira-lund-b46f4b6e = श्री Ferreira-Lund
converted-barn-upstairs-bath-2b3cc40e = खलिहान को बदलकर बनाया घर, ऊपर बाथरूम
careful-has-put-a-tray-under-it-b1b66180 = सावधान, नीचे ट्रे रखी है
it-fills-higher-than-it-used-to-df1f3988 = पहले से ऊँचा भरती है, और जब ज़ोर पकड़ती है तो पानी अंदर वाले किनारे के ऊपर से छलकता है। मैंने नीचे ट्रे रखी है, इसलिए छत से अब तक कुछ नीचे नहीं गया।
a-metal-tray-under-the-machine-d7fb8fd9 = मशीन के नीचे धातु की ट्रे, आज सूखी है। नीचे लकड़ी के तख़्तों की छत।
four-of-us-so-plenty-bbbf40d6 = हम चार लोग हैं, तो काफ़ी होते हैं।
it-slaps-ba3e646b = छप-छप करती है।
the-filling-crept-up-over-the-58b23dda = भराई साल भर में धीरे-धीरे बढ़ी। छपाके तब से, जब से मैंने अंदर झाँका।
in-the-wash-when-it-is-full-6667b302 = धुलाई में, जब भरी हो।
i-looked-in-from-above-40c50c18 = मैंने ऊपर से अंदर झाँका था।
i-had-the-plastic-ring-off-the-8f61457b = एक चम्मच निकालने के लिए मैंने टब से प्लास्टिक का छल्ला उतारा था। वापस खट से बैठ गया। उसका ज़्यादातर हिस्सा।

### fuller_than_ever.json

it-is-fuller-than-it-ever-was-deeeed27 = इतनी तो कभी नहीं भरी थी
mr-and-mrs-kovalenko-87060aeb = श्री और श्रीमती Kovalenko
flat-over-the-pharmacy-f9f2fb24 = दवा की दुकान के ऊपर फ़्लैट
she-worries-he-reassures-her-f89ddc15 = पत्नी चिंता करती हैं, पति दिलासा देते हैं
it-fills-right-up-to-where-the-8a22d7b8 = वहाँ तक भर जाती है जहाँ छोटे-छोटे छेद हैं। मेरे पति कहते हैं कि धुलाई के लिए अच्छा है, मगर मुझे नीचे दवा की दुकान का भी तो सोचना है।
a-carpet-in-the-passage-the-a8cdb0a2 = गलियारे में क़ालीन। दवा की दुकान की छत इसी साल पेंट हुई है।
for-two-people-dea62299 = दो लोगों के।
it-knocks-a-bit-when-it-turns-68925d25 = जब इधर-उधर घूमती है तो थोड़ी खट-खट करती है, इतने पानी के साथ।
the-dial-starts-late-because-it-257414bc = डायल देर से चलना शुरू करता है, क्योंकि भरने में बहुत देर लगती है।
it-has-grown-fuller-from-month-2c97847c = महीने-दर-महीने ज़्यादा भरती गई है।
dry-so-far-89729941 = अब तक तो सूखा है।
every-time-it-fills-80bc650a = हर बार जब भरती है।
the-old-fitter-died-nobody-since-e4d619f4 = पुराने मैकेनिक गुज़र गए। उसके बाद किसी ने नहीं।

### gives_up_at_once.json

it-gives-up-at-once-since-the-53ebf3bb = उस दौरे के बाद से फ़ौरन हार मान लेती है
mrs-nakamura-bell-1bb2d7d3 = श्रीमती Nakamura-Bell
town-house-closet-laundry-6f573904 = शहर का घर, अलमारी में लॉन्ड्री
brisk-ecb0730a = फटाफट बात करने वाली
a-young-man-came-about-a-rattle-8891b0e0 = एक नौजवान खड़खड़ की शिकायत पर आया था और ऊपर के नीचे कुछ कस गया। खड़खड़ चली गई। बाक़ी सब भी चला गया: कुछ सेकंड में बीप करती है और कहती है कि कुछ मानने लायक नहीं।
a-closet-with-folding-doors-good-1a7670ea = मुड़ने वाले दरवाज़ों की अलमारी, अच्छी रोशनी। ऊपर के दो स्क्रू चमक रहे हैं।
a-bed-set-0db8ad93 = बिस्तर का एक सेट।
just-the-beep-5b5f86d2 = बस बीप।
water-level-reading-not-9d7aad21 = “पानी के लेवल की रीडिंग मानने लायक नहीं”।
since-the-rattle-man-this-9c455d8a = उस खड़खड़ वाले आदमी के बाद से, आज सुबह से।
a-few-seconds-after-start-380bb281 = स्टार्ट के कुछ सेकंड बाद।
the-rattle-man-835300b8 = वह खड़खड़ वाला आदमी।
he-was-very-quick-he-had-to-be-1ea7e406 = बहुत जल्दी में था। उसे कहीं और पहुँचना था।

### goes_quiet_in_the_middle.json

it-goes-quiet-in-the-middle-ec029893 = बीच में चुप हो जाती है
mr-ozturk-hale-1c29fc7a = श्री Ozturk-Hale
first-apartment-second-floor-81c05245 = पहला अपना फ़्लैट, दूसरी मंज़िल
anxious-to-do-it-right-63e80f83 = ठीक-ठीक करने को बेचैन
it-washes-and-after-a-few-cbd240f8 = धोती है, और कुछ मिनट बाद एकदम चुप हो जाती है, पानी अंदर ही रहता है। मुझे लगा टूट गई, तो मैंने बंद करके पानी बाहर निकाला। फिर दोबारा चलाई, तब भी वही।
the-instruction-leaflet-is-still-e9cf0b4a = हिदायतों की पर्ची अब भी प्लास्टिक की थैली में है, ढक्कन के नीचे टेप से चिपकी हुई।
yes-at-about-the-same-place-ee687d1e = हाँ, क़रीब-क़रीब उसी जगह।
shirts-and-jeans-half-full-a-c1cce2d2 = कमीज़ें और जीन्स, आधी भरी, छोटा कप पाउडर।
none-that-is-what-worries-me-b8e4788d = कोई नहीं, यही तो चिंता है।
it-had-numbers-on-it-that-went-3f034692 = उस पर नंबर आ रहे थे जो घटते जाते थे।
i-turned-it-off-after-two-or-0608db80 = दो-तीन मिनट कुछ नहीं हुआ तो मैंने बंद कर दी।
i-only-got-it-last-week-it-is-ccc18762 = पिछले हफ़्ते ही ली है। सेकंड-हैंड है।
after-four-or-five-minutes-of-a7649e1f = चार-पाँच मिनट की धुलाई के बाद।
the-shop-that-sold-it-checked-it-7c2a68b5 = जिस दुकान ने बेची, उसने जाँची थी। उनका कहना है।

### grandmothers_machine.json

it-was-my-grandmother-s-machine-228fd82f = यह मेरी दादी की मशीन थी
worth-of-a-repair-39ed1ba0 = मरम्मत का फ़ायदा है या नहीं
ms-iyer-7cb3b996 = सुश्री Iyer
old-town-house-stone-floor-35281425 = शहर का पुराना घर, पत्थर का फ़र्श
attached-to-the-machine-fcc541ec = मशीन से लगाव है
it-growls-and-grinds-and-the-108dab94 = गुर्राती है, किरकिराती है, और कपड़े मुश्किल से हिलते हैं। कुछ मिनट बाद चुप हो जाती है, बाद में फिर कोशिश करती है। मेरी दादी की थी। क्या यह ठीक हो सकती है? मैं वाजिब दाम दे दूँगी।
the-plate-at-the-back-says-that-197c2130 = पीछे की प्लेट के हिसाब से अठारह साल पुरानी है। चमकाकर रखी गई है।
a-few-dresses-i-no-longer-dare-deda059e = कुछ फ़्रॉक। अब ज़्यादा डालने की हिम्मत नहीं होती।
it-growls-below-and-when-it-does-1b8247b1 = नीचे गुर्राती है, और जब हिलती भी है तो किरकिराती है।
it-counts-down-as-if-nothing-5f45546d = गिनती ऐसे घटाती है जैसे कुछ हुआ ही न हो।
the-grinding-for-years-one-gets-1c7bef8d = किरकिराना तो बरसों से, आदत पड़ जाती है।
the-standing-still-since-last-038a7b72 = खड़ी रह जाना पिछले हफ़्ते से।
hot-after-a-while-4115ceda = गरम, कुछ देर बाद।
as-soon-as-it-should-wash-a800de8b = जैसे ही धोना चाहिए।
never-it-is-eighteen-years-old-536f542a = कभी नहीं। अठारह साल पुरानी है।

### half_as_strong_since_the_fitter.json

it-hums-and-labours-since-the-a94a822c = मैकेनिक के आने के बाद से भनभनाती है और ज़ोर लगाती है
motor-and-capacitor-03ad0def = मोटर और कैपेसिटर
mr-baptiste-f75a2fa0 = श्री Baptiste
semi-detached-house-washroom-845c5240 = जुड़वाँ घर, गैराज के पीछे धुलाई का कमरा
precise-keeps-receipts-d255cdd5 = एक-एक बात सही बताने वाले, रसीदें रखते हैं
a-man-fitted-a-new-back-panel-c7a89efc = पुराना पिछला पैनल खड़खड़ाता था, तो एक आदमी ने नया लगाया। हफ़्ता भर सब ठीक था। अब भनभनाती है, कपड़े थोड़े-से हिलाती है, गरम गंध आती है और रुक जाती है। और मेरी पत्नी कहती है कि बग़ल छूने पर झनझनाती है।
a-single-self-cutting-screw-lies-2fab2f9d = शेल्फ़ पर पाउडर के पास एक अकेला सेल्फ़-टैपिंग स्क्रू पड़ा है। कंक्रीट का फ़र्श।
each-time-93af93ad = हर दफ़ा।
work-clothes-two-measures-393af841 = काम के कपड़े। दो नाप पाउडर।
a-deep-hum-2e5a0742 = गहरी भनभनाहट।
nothing-has-tripped-0195d96c = कुछ ट्रिप नहीं हुआ।
it-ends-as-if-it-had-finished-d3506338 = ऐसे ख़त्म होती है जैसे पूरा हो गया हो, अंदर कपड़े गीले।
four-days-the-panel-is-two-weeks-688c4147 = चार दिन। पैनल को दो हफ़्ते हुए।
warm-like-a-hair-dryer-no-smoke-63b05f04 = गरम, हेयर ड्रायर जैसी। धुआँ नहीं।
when-it-should-wash-it-hums-5f971b9d = जब धोना चाहिए। भनभनाती है, हार मानती है, और पंद्रह मिनट बाद फिर कोशिश करती है।
the-man-with-the-panel-492f60f5 = वह पैनल वाला आदमी।
he-was-ten-minutes-he-had-one-3d71f034 = दस मिनट लगाए। एक स्क्रू बच गया, उसे शेल्फ़ पर रख गया, वह रहा।

### has_to_be_coaxed_on.json

it-has-to-be-coaxed-to-come-on-988eedf8 = मनाना पड़ता है तब चालू होती है
mr-ravindran-62f180a9 = श्री Ravindran
flat-share-of-three-nurses-b18b6d94 = तीन नर्सों का साझा फ़्लैट
tired-after-a-night-shift-0ff6377e = रात की ड्यूटी के बाद थके हुए
you-press-the-button-and-there-8b959140 = बटन दबाओ तो बत्ती जलती है, या नहीं जलती। फिर चलती है और अचानक सब बंद। हम तीनों अपने-अपने ढंग से दबाते हैं, और किसी का ढंग काम नहीं आता।
a-strip-of-tape-beside-the-8ec73f14 = बटन के पास लगी टेप पर तीन लिखावटों में लिखा है “ज़ोर से!”।
not-always-1f8ef26f = हमेशा नहीं।
when-one-holds-the-button-in-57b01e35 = अंगूठे से बटन दबाए रखो तो बेहतर रहता है।
scrubs-e542d075 = अस्पताल की वर्दियाँ।
a-small-fizzle-from-the-button-65ff705c = बटन से हल्की चिर-चिर।
no-breaker-the-plug-is-in-the-d62a053c = ब्रेकर नहीं गिरा। प्लग सीधा दीवार में है, कोई एक्सटेंशन नहीं।
dark-then-power-was-off-29b46de2 = अँधेरा। फिर “बिजली चली गई थी”।
a-few-weeks-83612817 = कुछ हफ़्ते।
when-switching-on-and-sometimes-d6ecdd16 = चालू करते समय, और कभी-कभी बीच में।
no-it-is-the-landlord-s-bbb1b1d8 = नहीं, यह मकान-मालिक की है।

### hot_and_stops.json

it-gets-hot-and-growls-one-way-a49323cc = गरम होती है और एक तरफ़ घूमते हुए गुर्राती है
mr-abebe-077f01c5 = श्री Abebe
workers-hostel-heavily-used-64377626 = मज़दूरों का हॉस्टल, बहुत इस्तेमाल
sober-keeps-the-books-a8658a5f = गंभीर, हिसाब-किताब रखते हैं
it-growls-one-way-hardly-starts-662c935e = एक तरफ़ घूमते हुए गुर्राती है, दूसरी तरफ़ मुश्किल से शुरू होती है, गरम गंध आती है और फिर आधे घंटे बंद रहती है। तीस लोग इस पर धोते हैं। कितना ख़र्च आएगा, और क्या फ़ायदा है?
the-motor-is-still-too-hot-to-88163692 = जब आप पहुँचते हैं तब भी मोटर इतनी गरम है कि छुई नहीं जाती। फ़ोन पर तय हुआ है कि ख़र्च नई मशीन के आधे दाम से ऊपर न जाए।
whenever-it-is-full-empty-it-c04aeeaf = जब भी भरी हो। ख़ाली हो तो घूमती है, मगर गुर्राती है।
work-clothes-always-full-2b95be60 = काम के कपड़े, हमेशा पूरी भरी।
a-growl-then-a-click-then-9386fa4f = गुर्राहट, फिर एक क्लिक, फिर सन्नाटा। आधे घंटे बाद फिर वही।
the-fuse-for-the-room-has-held-71faba7f = कमरे का फ़्यूज़ नहीं गया।
no-alarm-it-only-stands-and-goes-1d9c1af5 = कोई अलार्म नहीं, बस खड़ी रहती है और बाद में आगे चलती है।
tuesday-9f5419ba = मंगलवार।
it-had-been-running-warm-for-4ae95e64 = रात का चौकीदार कहता है कि हफ़्तों से गरम चल रही थी।
hot-varnish-the-porter-opened-1faf20dc = गरम वार्निश की। चौकीदार ने खिड़की खोल दी।
good-c12a17e2 = अच्छा है।
in-the-wash-it-has-never-1a4a721a = धुलाई में। मंगलवार से एक भी पूरा लोड ख़त्म नहीं किया।
your-colleagues-fitted-a-3cc33dda = पिछले साल आपके ही साथियों ने कैपेसिटर लगाया था। बिल रखा है।

### hot_since_the_cheap_part.json

hot-and-halting-since-the-cheap-1f92160b = सस्ते पुर्ज़े के बाद से गरम होती है और अटकती है
mr-abernathy-diallo-683e37e2 = श्री Abernathy-Diallo
hobby-farm-pump-shed-149f8113 = शौक़िया खेती, पंप की कोठरी
sheepish-9e99763c = शर्मिंदा-से
it-would-not-start-so-i-put-in-a-1aed8913 = शुरू नहीं होती थी, तो मैंने डाक से मँगाया नया पुर्ज़ा लगा दिया। चल पड़ी! मगर वापस दूसरी तरफ़ घूमना नहीं चाहती, गरम होती है और फिर लंबा आराम करती है।
a-mail-order-envelope-on-the-8f7ca5fe = बेंच पर डाक का लिफ़ाफ़ा पड़ा है। कोठरी सूखी है।
yes-the-first-minutes-are-the-07f2556f = हाँ। पहले कुछ मिनट सबसे अच्छे रहते हैं।
work-clothes-95e94c62 = काम के कपड़े।
a-deep-hum-where-it-should-turn-2b2c1db1 = जहाँ वापस घूमना चाहिए वहाँ गहरी भनभनाहट।
since-i-put-the-part-in-ten-days-92edcc0c = जब से वह पुर्ज़ा लगाया, दस दिन।
hot-882dbaae = गरम।
i-did-it-myself-a085d3e4 = मैंने ख़ुद लगाया।
the-round-can-at-the-back-it-is-6147826a = पीछे वाला गोल डिब्बा। पुराने जितना ही बड़ा है, मैंने दोनों को साथ रखकर देखा। पुराना फेंक दिया।

### hums_and_stands.json

it-hums-and-nothing-turns-308139b7 = भनभनाती है और कुछ नहीं घूमता
ms-petrov-bf021c27 = सुश्री Petrov
fourth-floor-shared-laundry-of-a-1cb0c0b8 = चौथी मंज़िल, छोटी इमारत की साझा लॉन्ड्री
it-hums-like-a-fridge-and-the-3f469d6a = फ्रिज की तरह भनभनाती है और कपड़े नहीं हिलते। मेरी बेटी ने चम्मच के हत्थे से धक्का दिया तो चल पड़ी। मैंने कह दिया, फिर कभी मत करना।
the-machine-has-run-just-before-c002889e = आपके आने से ज़रा पहले मशीन चली है और अभी गरम हो सकती है। कंक्रीट का फ़र्श, अच्छी नाली।
with-a-push-it-goes-either-way-2ccbc0b9 = धक्का दो तो चलती है। दोनों तरफ़, वह कहती है।
we-had-taken-everything-out-by-8c64d0f7 = आख़िर में हमने सब कुछ निकाल लिया था, तब भी बस भनभनाती रही।
a-steady-hum-then-after-a-minute-d1012a6c = लगातार भनभनाहट, एक मिनट बाद चुप हो जाती है, और बाद में फिर भनभनाती है।
no-the-lamp-above-it-dims-a-9cd7e329 = नहीं। जब भनभनाती है तो ऊपर की बत्ती थोड़ी मद्धिम होती है।
nothing-special-the-minutes-efb240d8 = कुछ ख़ास नहीं, मिनट घटते जाते हैं।
it-has-been-lazy-for-months-7c2bdb2d = महीनों से सुस्त है। रविवार से बिल्कुल शुरू नहीं होती।
a-little-warm-perhaps-at-the-f8bd5a73 = शायद थोड़ी गरम, पीछे की तरफ़।
water-comes-in-as-always-8f43a4c9 = पानी हमेशा की तरह आता है।
as-soon-as-it-has-filled-and-10e14782 = जैसे ही भर जाती है और धोना शुरू करना चाहिए।
no-never-it-is-nine-years-old-7999561e = नहीं, कभी नहीं। नौ साल पुरानी है।

### hums_and_water_stays.json

it-hums-and-the-water-stays-in-66359797 = भनभनाती है और पानी अंदर ही रहता है
ms-whitefeather-67a053eb = सुश्री Whitefeather
ranch-house-mud-room-37bc5274 = खेत पर बना घर, जूते उतारने वाला कमरा
practical-b3e06f70 = काम की बात करने वाली
it-hums-the-water-stays-in-and-e47e3476 = भनभनाती है, पानी अंदर ही रहता है, और हार मान लेती है। मैं ख़ुद पानी निकाल देती, मगर फ़ोन वाले आदमी ने कहा कि आपके देखने के लिए छोड़ दूँ।
the-tub-is-full-when-you-come-a-eb17d43a = आप पहुँचते हैं तो टब भरा है। वेट-ड्राई बाल्टी और फ़र्श की नाली मौजूद हैं।
twice-now-94802d1f = दो बार हो चुका है।
dog-blankets-with-what-was-in-55667a07 = कुत्तों के कंबल। उनमें जो भी था, उसके साथ, शायद।
a-loud-hum-down-on-one-side-99046bd4 = ज़ोर की भनभनाहट, नीचे एक तरफ़।
just-before-there-was-a-rattle-d43bbf7b = उससे ठीक पहले एक खड़खड़ हुई, जैसे कोई कंकड़ निकला हो।
the-breaker-held-869d97e3 = ब्रेकर नहीं गिरा।
drains-too-slowly-08357f63 = “पानी बहुत धीरे निकल रहा है”।
since-i-washed-the-dog-blankets-6694cd0b = जब से कुत्तों के कंबल धोए।
wet-dog-otherwise-no-b9edbcf8 = भीगे कुत्ते की। उसके सिवा नहीं।
good-from-the-well-beab33e5 = अच्छा है, कुएँ से।
after-the-wash-when-it-should-972305a5 = धुलाई के बाद, जब पंप से पानी निकलना चाहिए।

### hums_quietly_no_wash.json

it-fills-ticks-and-does-not-wash-a8f817aa = भरती है, टिक-टिक करती है और धोती नहीं
mr-haile-2188b517 = श्री Haile
ground-floor-behind-a-tailor-s-e2d6c980 = दर्ज़ी की दुकान के पीछे ग्राउंड फ़्लोर
hopeful-8aef8fca = उम्मीद से भरे
it-takes-water-as-it-should-then-1dbae90f = पानी ठीक से लेती है। फिर टिक, टिक सुनाई देता है, एक तरफ़ और दूसरी तरफ़, मगर ड्रम की प्लेट नहीं हिलती। भनभनाहट भी नहीं। कल मेरे दोस्त ने इसमें से रोएँ साफ़ किए, और उससे पहले चलती थी, बस उसे जितना ठीक लगता उससे ज़्यादा गरम।
the-back-cover-has-been-off-two-159250fc = पिछला कवर खोला गया है: उसके दो स्क्रू नए हैं। बेंच के नीचे भूरे रोएँ का गोला पड़ा है।
trousers-3126d6d6 = पतलूनें।
a-ticking-behind-the-panel-7e5c6c02 = पैनल के पीछे टिक-टिक।
it-counts-down-as-if-all-were-3108131b = गिनती ऐसे घटाती है जैसे सब ठीक हो।
since-yesterday-55b76ae1 = कल से।
in-the-wash-it-does-not-turn-at-1de69754 = धुलाई में। बिल्कुल नहीं घूमती।
my-friend-blew-the-fluff-out-74fc962f = मेरे दोस्त ने रोएँ हवा से उड़ाए।
from-the-back-with-his-workshop-bb20fd14 = पीछे से, अपनी वर्कशॉप की हवा से। कहता है मोटर तक पहुँचने के लिए कुछ तार इधर-उधर करने पड़े।

### keys_do_nothing.json

the-keys-do-nothing-416c877c = बटन कुछ नहीं करते
mrs-papadimas-9f9ef419 = श्रीमती Papadimas
first-floor-two-grandchildren-8515693f = पहली मंज़िल, दो पोते-पोती आए हुए हैं
apologetic-dd91b90c = माफ़ी माँगती हुई
it-lights-up-when-i-switch-it-on-8261808e = चालू करती हूँ तो रोशन हो जाती है, मगर मैं क्या दबाती हूँ इससे उसे कोई मतलब नहीं। स्टार्ट दबाती हूँ तो कहती है कि तैयार है, और वहीं रह जाती है।
a-child-s-drawing-hangs-on-the-9771a68c = मशीन पर बच्चे की बनाई तस्वीर टँगी है। पैनल साफ़ और सूखा है।
yes-i-have-tried-every-button-9efbed03 = हाँ। मैंने हर बटन आज़माया, एक से ज़्यादा बार।
a-few-blouses-51c729b1 = कुछ ब्लाउज़।
ready-it-beeps-at-me-6a16494c = “तैयार”। मुझ पर बीप करती है।
since-sunday-b912c52f = रविवार से।
since-the-little-ones-were-here-9d86d056 = जब से छोटे बच्चे आए थे, अब आपने पूछा तो। चार और छह साल के हैं और बटन उन्हें बहुत पसंद हैं।
straight-away-59029c2f = फ़ौरन।

### no_heart_after_a_while.json

it-loses-heart-after-a-while-aee6b7f2 = थोड़ी देर बाद हिम्मत हार जाती है
ms-vasquez-okoro-4af1b073 = सुश्री Vasquez-Okoro
dog-groomer-s-two-loads-an-hour-1a88bae6 = कुत्तों का सैलून, घंटे में दो लोड
precise-keeps-a-log-of-it-eec230bb = बिल्कुल सटीक, सब लिखकर रखती हैं
here-is-my-list-first-load-of-16974f2a = यह मेरी सूची है। दिन का पहला लोड: ठीक। दूसरा लोड: धोती है, फिर कुछ देर कुछ नहीं करती, फिर धोती है। तीसरा लोड: बिल्कुल नहीं घूमती। दोपहर के खाने की छुट्टी में फिर ठीक हो जाती है।
warm-steamy-room-her-list-is-on-60dc3215 = गरम, भाप भरा कमरा। उनकी सूची दीवार पर है, दो रंगों में।
always-in-that-order-dfd18ad2 = हमेशा इसी क्रम में।
towels-50b1f66d = तौलिए।
the-pump-runs-the-motor-is-a21bf468 = पंप चलता है। मोटर चुप है, भनभनाती भी नहीं।
it-goes-on-counting-052aa3ea = गिनती चलती रहती है।
the-list-starts-on-the-third-of-11295e79 = सूची पिछले महीने की तीन तारीख़ से शुरू होती है।
wet-dog-that-is-not-the-machine-07e9d395 = भीगे कुत्ते की। वह मशीन की नहीं है।
when-it-has-worked-for-a-while-69e28a8f = जब थोड़ी देर काम कर चुकी हो।

### no_spin_since_cousin.json

fills-washes-drains-does-not-7322c14f = भरती है, धोती है, पानी निकालती है, स्पिन नहीं करती
earlier-repairs-4d24aec1 = पहले की मरम्मतें
mrs-okafor-d4d9f1c9 = श्रीमती Okafor
third-floor-no-lift-854e01dc = तीसरी मंज़िल, लिफ़्ट नहीं
a-little-embarrassed-53bdf489 = थोड़ी झेंपी हुई
it-fills-and-it-washes-and-the-de1bf1e0 = भरती है, धोती है और पानी निकल जाता है, मगर स्पिन नहीं करती। कपड़े पानी में तर हैं।
help-can-be-had-the-cousin-lives-fecb7937 = मदद मिल सकती है: चचेरा भाई नीचे रहता है और घर पर है। लिनोलियम का फ़र्श, गीला हो तो फिसलन।
the-white-one-that-opens-at-the-9eee0600 = सफ़ेद वाली, जो ऊपर से खुलती है। छह साल पुरानी, क़रीब-क़रीब।
in-the-bathroom-third-floor-5ceb2e9f = बाथरूम में, तीसरी मंज़िल। उठाने में कोई मदद कर देगा, हाँ।
it-fills-it-washes-the-water-58d1ffd4 = भरती है, धोती है, पानी निकल जाता है। फिर स्पिन नहीं करती।
bed-sheets-four-kilos-or-so-da8f9507 = चादरें, चार किलो के आसपास।
it-whirrs-when-the-water-goes-78e8231f = पानी निकलते समय घर्र-घर्र करती है, हमेशा की तरह। फिर वही सूँ-सूँ।
the-whine-is-the-same-as-when-it-398680ee = यह सूँ-सूँ वैसी ही है जैसी धोते समय होती है।
no-nothing-has-tripped-b6b9c0ef = नहीं, कुछ ट्रिप नहीं हुआ।
no-beep-nothing-it-ends-as-if-it-756bb869 = न बीप, न कुछ। ऐसे ख़त्म होती है जैसे पूरा हो गया हो।
three-weeks-1d38de10 = तीन हफ़्ते।
yes-good-pressure-1b075a22 = हाँ, प्रेशर अच्छा है।
at-the-spin-you-hear-it-whine-0564dac9 = स्पिन पर। नीचे सूँ-सूँ सुनाई देती है, मगर ड्रम खड़ा रहता है।
not-really-20045ad9 = नहीं, ख़ास नहीं।
all-right-my-cousin-fitted-the-6ad80ef9 = ठीक है, बताती हूँ। मेरे चचेरे भाई ने खींचने वाली मोटर लगाई, वह केबल वाली। उसके हाथ में बड़ा हुनर है।

### no_water.json

no-water-comes-in-98f56d2b = पानी नहीं आता
mrs-adeyemi-0e73eb3b = श्रीमती Adeyemi
ground-floor-laundry-niche-cebaa00b = ग्राउंड फ़्लोर, रसोई के पीछे लॉन्ड्री का आला
i-put-the-washing-in-pressed-cda52219 = कपड़े डाले, स्टार्ट दबाया, और यह बस खड़ी है। ऊपर हल्की भनभनाहट सुनाई देती है, मगर पानी नहीं आता।
the-machine-stands-in-a-niche-b4ec920c = मशीन एक आले में खड़ी है; नल उसके पीछे दीवार पर है, नीचे की तरफ़, और हाथ डालकर पहुँचा जा सकता है। सूखी टाइलें।
yes-i-tried-three-times-49bbb505 = हाँ, मैंने तीन बार कोशिश की।
towels-about-half-full-and-one-6447352b = तौलिए, क़रीब आधी भरी, और एक नाप पाउडर।
only-the-hum-up-at-the-back-c9c89787 = बस भनभनाहट, ऊपर पीछे की तरफ़। और कुछ नहीं।
no-everything-else-is-on-fc0b3af5 = नहीं, बाक़ी सब चल रहा है।
after-twenty-minutes-or-so-it-c6f4e737 = कोई बीस मिनट बाद बीप किया और कहा “पानी बहुत धीरे भर रहा है”।
since-this-morning-on-saturday-e55db532 = आज सुबह से। शनिवार को तो धोया था।
since-the-plumber-was-here-on-926cd71f = जब से सोमवार को सिंक के लिए प्लंबर आया था, अब याद आता है।
no-nothing-and-the-floor-is-dry-3f028fac = नहीं, कुछ नहीं, और फ़र्श सूखा है।
i-suppose-so-the-kitchen-tap-9344f84d = होगा ही। रसोई का नल अच्छा चलता है।
the-one-for-the-machine-it-is-15327292 = मशीन वाला नल? वह नीचे पीछे है, मैं उसे कभी छूती ही नहीं।
right-at-the-start-it-never-gets-7cfa12d9 = बिल्कुल शुरू में। उससे आगे जाती ही नहीं।
on-the-machine-no-nobody-e39facc9 = मशीन पर? नहीं, किसी ने नहीं।
the-plumber-was-behind-it-he-had-2e8e9f46 = प्लंबर इसके पीछे गया था, उसे पाइपों तक पहुँचना था। मगर मशीन को उसने नहीं छुआ।

### not_the_wash_that_smells.json

it-smells-when-the-wash-is-on-13260057 = धुलाई के समय बदबू आती है
mrs-kowalczyk-104add28 = श्रीमती Kowalczyk
bungalow-utility-room-beside-the-d183c239 = बंगला, बॉयलर के पास यूटिलिटी रूम
tired-in-a-hurry-to-go-out-5594208a = थकी हुई, बाहर निकलने की जल्दी में
for-two-days-it-has-smelt-in-the-840484ab = दो दिन से लॉन्ड्री में बदबू है, सड़े अंडों जैसी। पड़ोसन कहती है बेल्ट है। क्या आप जल्दी कर सकते हैं? मुझे बारह बजे निकलना है।
a-narrow-room-without-a-window-37da99e9 = बिना खिड़की का तंग कमरा। बॉयलर मशीन के पास दीवार पर टँगा है; उसका कवर फ़र्श पर रखा है।
in-the-utility-room-next-to-the-284e391c = यूटिलिटी रूम में, बॉयलर के पास।
it-does-everything-it-only-d81d1487 = सब कुछ करती है। बस बदबू आती है।
it-is-stronger-in-the-morning-44967476 = सुबह ज़्यादा होती है, जब रात भर दरवाज़ा बंद रहा हो।
nothing-in-it-now-844ef2ac = अभी इसमें कुछ नहीं है।
no-breaker-no-92d78075 = कोई ब्रेकर नहीं गिरा, नहीं।
nothing-it-washes-as-always-c7ffda99 = कुछ नहीं। हमेशा की तरह धोती है।
since-tuesday-a214521c = मंगलवार से।
the-fitter-was-at-the-boiler-on-27b59d4b = सोमवार को मैकेनिक बॉयलर पर आया था।
like-bad-eggs-it-gives-me-a-57381f04 = सड़े अंडों जैसी। सिर दुखने लगता है।
all-the-time-come-to-think-of-it-ab25e885 = हर समय, अब सोचती हूँ तो। जब धो नहीं रही हो तब भी।
the-machine-nobody-3ec423c8 = मशीन पर तो किसी ने नहीं।

### nothing_at_all.json

nothing-at-all-e3d8b818 = बिल्कुल कुछ नहीं
mr-okonjo-4dd85f86 = श्री Okonjo
allotment-house-new-lean-to-d80abe21 = बाग़ वाला छोटा घर, नई जोड़ी हुई रसोई
i-pull-the-knob-i-turn-it-to-the-66fe446f = नॉब खींचता हूँ, शुरू पर घुमाता हूँ, और कुछ नहीं। न क्लिक, न भनभनाहट, न पानी। जिस दिन उठाकर इधर लाए, उस दिन तक पुरानी रसोई में धोती थी।
two-sockets-side-by-side-on-the-cf76b9be = नई दीवार पर दो सॉकेट, अग़ल-बग़ल। बाएँ में एक लैंप जल रहा है, मशीन दाएँ में लगी है।
nothing-in-it-yet-6ee1f29a = अभी तो इसमें कुछ नहीं।
not-a-sound-1b2e9580 = ज़रा भी आवाज़ नहीं।
nothing-has-dropped-ffa7d67e = कुछ नहीं गिरा।
the-lamp-it-is-on-the-other-c39c145c = लैंप? वह दूसरे सॉकेट में है। वह वाला ठीक है।
the-dial-does-not-move-ad000cc7 = डायल नहीं चलता।
since-we-carried-it-into-the-1f3c2373 = जब से इसे नई रसोई में लाए, कल से।
yes-new-pipe-good-pressure-4155c84c = हाँ, नया पाइप, अच्छा प्रेशर।
it-does-not-even-begin-e449e1b5 = शुरू ही नहीं करती।
carried-nothing-else-upright-all-a6ae5c49 = बस उठाकर लाए, और कुछ नहीं। पूरे रास्ते सीधी खड़ी।
my-brother-did-the-electrics-in-7dc4cfe2 = यहाँ बिजली का काम मेरे भाई ने किया। तीन घर कर चुका है।

### one_way_only_and_hot.json

one-way-only-and-hot-db8df720 = सिर्फ़ एक तरफ़, और गरम
mr-sepulveda-94a7c249 = श्री Sepulveda
boat-builder-s-shed-by-the-river-001349f5 = नदी किनारे नाव बनाने वाले का शेड
knows-engines-listens-carefully-a1db2893 = इंजन जानते हैं, ध्यान से सुनते हैं
she-turns-one-way-and-then-she-cea3b3ac = एक तरफ़ घूमती है और फिर वापस नहीं घूमती। भनभनाती है, गरम होती है, कट जाती है, और दस मिनट बाद फिर शुरू होती है। एक ही तरफ़ तो वह हमेशा चलती रहे।
everything-in-the-shed-is-2aa09b36 = शेड में हर चीज़ पर लेबल है। मशीन रबर मैट पर खड़ी है, बिल्कुल समतल।
canvas-covers-one-at-a-time-7e71c870 = कैनवस के कवर, एक बार में एक।
a-hum-where-the-other-direction-abf17f31 = जहाँ दूसरी दिशा होनी चाहिए वहाँ भनभनाहट।
the-dial-goes-on-slowly-287c522f = डायल आगे चलता है, धीरे-धीरे।
since-the-weekend-fc9fd6cb = पिछले शनिवार-रविवार से।
warm-varnish-i-know-that-smell-d9424647 = गरम वार्निश। वह गंध मैं पहचानता हूँ।
i-do-not-let-anybody-near-my-369756d7 = अपनी मशीनों के पास मैं किसी को नहीं आने देता। आपके सिवा।

### overflows_since_the_repair.json

it-overflows-since-the-repair-915e1553 = मरम्मत के बाद से ऊपर से बहती है
mr-and-mrs-farouk-29f5ad97 = श्री और श्रीमती Farouk
top-floor-over-a-bakery-f338ef3d = सबसे ऊपर की मंज़िल, बेकरी के ऊपर
angry-with-the-last-repairer-86019da7 = पिछले मैकेनिक पर ग़ुस्सा
the-board-was-changed-on-f77acbb1 = गुरुवार को बोर्ड बदला गया और तब से ऊपर से बहती है। नीचे बेकरी वाले के आटे में पानी गिरा। इसके पैसे किसी को तो भरने पड़ेंगे।
the-baker-has-put-a-bucket-under-c8647f6e = बेकरी वाले ने दाग़ के नीचे बाल्टी रखी है। नल ग्राहक ने बंद कर दिया है। फ़र्श पर तौलिए पड़े हैं।
the-one-time-was-enough-we-shut-d59bcd64 = एक बार ही बहुत था। हमने नल बंद कर दिया।
empty-now-it-was-bed-linen-9b52004b = अब ख़ाली है। चादरें थीं।
just-the-water-running-371bc262 = बस पानी बहने की।
at-last-it-said-fills-too-slowly-5e68c5fb = आख़िर में बोली “पानी बहुत धीरे भर रहा है”। बहुत धीरे! और फ़र्श पानी में डूबा हुआ!
since-thursday-when-the-board-a3b673cb = गुरुवार से, जब बोर्ड बदला गया। उससे पहले बस अँधेरी थी।
no-smell-wet-floor-as-i-say-9a280fdb = बदबू नहीं। गीला फ़र्श, जैसा कह रही हूँ।
the-tap-is-shut-now-the-pressure-f5f4eb3e = नल अभी बंद है। यहाँ ऊपर प्रेशर ठीक-ठाक है।
while-it-fills-it-fills-and-bb0d3c0d = जब भरती है। भरती जाती है, भरती जाती है और धोती नहीं।
a-man-from-the-paper-put-in-a-5405d4c7 = अख़बार के इश्तिहार से एक आदमी ने बोर्ड लगाया। बहुत फुर्तीला था।
he-had-the-top-up-he-shut-it-d26c0be4 = उसने ऊपर का हिस्सा उठाया था। घुटने से दबाकर बंद किया, मेरे पति ने देखा।

### prickles_in_the_scullery.json

it-prickles-in-the-scullery-796ab3e0 = बर्तन धोने की कोठरी में झनझनाती है
mrs-wanjiru-71b91911 = श्रीमती Wanjiru
old-parsonage-scullery-with-a-6657bde9 = पुराना पादरी निवास, पत्थर के फ़र्श वाली बर्तन धोने की कोठरी
worried-for-her-mother-129e9622 = अपनी माँ की चिंता में
my-mother-says-it-prickles-when-40a0c79f = मेरी माँ कहती हैं कि इस पर टेक लगाने से झनझनाता है। मुझे लगा उम्र का असर है। कल मैंने नंगे पैर कपड़े धोए और मुझे भी महसूस हुआ।
stone-floor-often-damp-a-test-b5c49e36 = पत्थर का फ़र्श, अक्सर सीला हुआ। फ़्यूज़ बॉक्स के पास घर की जाँच का सर्टिफ़िकेट टँगा है। मशीन के पीछे की कॉर्ड पर दाँतों के निशान हैं।
with-dry-shoes-not-8ab0cf3d = सूखे जूते पहनकर, नहीं।
whatever-there-is-01727c47 = जो भी हों।
nothing-trips-0ef14a84 = कुछ ट्रिप नहीं होता।
the-sockets-were-tested-for-the-cb2432be = वसंत में बीमे के लिए सॉकेट जाँचे गए थे। काग़ज़ मेरे पास है।
it-washes-quite-normally-8c005597 = धोती तो बिल्कुल ठीक है।
a-month-my-mother-says-dd680041 = एक महीना, मेरी माँ कहती हैं।
whenever-it-is-plugged-in-35b24399 = जब भी प्लग लगा हो।
the-cat-has-a-basket-behind-it-ac643b9a = बिल्ली की टोकरी इसके पीछे है। जो कुछ लटकता है, उससे खेलती है।

### pulls_and_nothing_opens.json

it-whirrs-and-nothing-opens-04e5328a = घर्र-घर्र करती है और कुछ नहीं खुलता
mr-halloran-6a8d0e93 = श्री Halloran
public-house-yard-laundry-e9120221 = पब, आँगन में लॉन्ड्री
jolly-in-the-middle-of-things-9d53bb14 = मस्तमौला, काम के बीच में
it-whirrs-away-down-there-as-it-475fb45b = जब पानी निकालना हो तो नीचे घर्र-घर्र करती है, जैसे करनी चाहिए, और होज़ से एक बूँद नहीं निकलती। तीन रातों से लगातार मज़बूत जग से पानी निकाल रहे हैं।
stone-yard-with-a-gully-a-dish-293345bc = पत्थर का आँगन, नाली के साथ। धुलाई में मिले सिक्कों और बोतल के ढक्कनों की तश्तरी खिड़की पर रखी है।
bar-cloths-and-aprons-3c8d5ceb = बार के पोंछने वाले कपड़े और एप्रन।
the-girls-empty-the-pockets-dfe579f2 = लड़कियाँ जेबें ख़ाली करती हैं। ज़्यादातर।
a-whirr-and-once-on-the-first-870d2230 = घर्र-घर्र, और एक बार, पहले दिन, एक टंग की आवाज़।
the-dial-stands-and-waits-b0b823be = डायल खड़ा है और इंतज़ार करता है।
three-days-fcf8fa38 = तीन दिन।
it-was-slow-to-shut-off-before-297e87a2 = उससे पहले बंद होने में देर लगाती थी। दिन-रात थोड़ा-थोड़ा नाली में बहती रहती थी।
a-bit-of-beer-but-that-is-the-fb309d4d = थोड़ी बीयर की, मगर वह बार के कपड़ों की है।
when-it-should-empty-2b67a8c6 = जब पानी निकालना चाहिए।

### rests_after_ten_minutes.json

it-rests-after-ten-minutes-23195503 = दस मिनट बाद आराम करती है
mr-fonseka-0d212319 = श्री Fonseka
tea-room-kitchen-c122b03f = चायघर की रसोई
patient-offers-tea-4f9c89a7 = धैर्य वाले, चाय पिलाते हैं
it-washes-beautifully-and-then-a79bbfb1 = बहुत बढ़िया धोती है, फिर आराम करने लगती है। मैं चला जाता हूँ, लौटता हूँ, फिर धो रही होती है। एक के बाद एक दो लोड हों तो मुश्किल से ही काम करती है।
a-hot-kitchen-the-machine-stands-9f66e5d0 = गरम रसोई; मशीन अवन के बग़ल में खड़ी है।
not-in-the-morning-50d9d96c = सुबह नहीं।
when-the-kitchen-is-cool-never-eecf156f = जब रसोई ठंडी हो, तब कभी नहीं।
aprons-and-cloths-not-heavy-742a9f3e = एप्रन और पोंछने के कपड़े, भारी नहीं।
when-it-rests-it-is-quite-silent-af14afd8 = जब आराम करती है तो बिल्कुल चुप। भनभनाहट नहीं।
the-dial-goes-on-without-it-b5c63fc8 = डायल इसके बिना भी चलता रहता है।
since-the-hot-weather-8a01e2f1 = जब से गर्मी पड़ी।
after-ten-minutes-or-a-quarter-5e694c3e = दस मिनट या पंद्रह मिनट बाद। दूसरे लोड में और जल्दी।

### rust_and_rumble.json

rust-water-and-a-rumble-0fbf92c7 = ज़ंग वाला पानी और गड़गड़ाहट
mrs-guidry-onwudiwe-97307716 = श्रीमती Guidry-Onwudiwe
bungalow-under-live-oaks-9633731a = ओक के पेड़ों के नीचे बंगला
wants-the-truth-c7935656 = सच सुनना चाहती हैं
there-is-rusty-water-under-it-e5e3a3d5 = नीचे ज़ंग वाला पानी है और स्पिन करते समय मालगाड़ी की तरह गड़गड़ाती है, हर हफ़्ते और धीमी। मेरी बहन कहती है नई ले लो, बेटा कहता है ठीक करा लो। आप क्या कहते हैं?
a-baking-tin-under-the-machine-2357776e = मशीन के नीचे रखी बेकिंग ट्रे में थोड़ा भूरा पानी है। प्लेट के हिसाब से सोलह साल पुरानी है।
less-and-less-1c498d18 = दिन-ब-दिन कम।
a-freight-train-8596e9fd = मालगाड़ी जैसी।
it-finishes-mostly-280e1e5b = पूरा कर लेती है, ज़्यादातर।
a-year-or-more-27ee9f1f = एक साल या ज़्यादा।
rust-under-it-after-washing-the-2f469969 = ज़ंग नीचे, धुलाई के बाद। गड़गड़ाहट स्पिन पर।
my-son-put-in-a-belt-two-years-82078000 = दो साल पहले मेरे बेटे ने बेल्ट लगाई थी।

### says_later.json

it-will-not-start-when-i-want-it-e7dd425c = जब मैं चाहूँ तब शुरू नहीं होती
mrs-lightfoot-ames-f5a3f9a4 = श्रीमती Lightfoot-Ames
trailer-by-the-lake-fb2ce1e5 = झील किनारे ट्रेलर
cheerful-2c18b95d = हँसमुख
i-put-the-clothes-in-and-press-576bcdb1 = कपड़े डालती हूँ और स्टार्ट दबाती हूँ, और शुरू नहीं होती। बत्ती जलाए बस खड़ी रहती है। पर जब तक मैं ढाबे से घर लौटती हूँ, धो चुकी होती है, और सब कपड़े सिलवटों से भरे होते हैं।
reading-glasses-lie-on-the-shelf-f368bea8 = मशीन के ऊपर शेल्फ़ पर पढ़ने का चश्मा रखा है।
uniforms-33bcfcea = वर्दियाँ।
no-and-no-extension-cord-0c397fe5 = नहीं, और कोई एक्सटेंशन कॉर्ड नहीं।
some-words-and-a-number-fb3c2813 = कुछ शब्द, और एक नंबर।
i-never-have-my-glasses-on-cff9966f = चश्मा तो मैं कभी लगाए ही नहीं रहती।
my-niece-stayed-over-she-is-e3725730 = मेरी भतीजी रुकी थी। बटन वाली हर चीज़ में तेज़ है।
yes-faucet-is-open-da9b92e2 = हाँ, नल खुला है।
right-when-i-press-start-a53e9f53 = ठीक स्टार्ट दबाते ही।

### shakes_the_pictures.json

it-shakes-the-pictures-off-the-a34b51eb = दीवार से तस्वीरें हिलाकर गिरा देती है
mr-osterhaus-lee-5de841db = श्री Osterhaus-Lee
frame-house-laundry-above-the-f449bc75 = लकड़ी का घर, लॉन्ड्री बैठक के ऊपर
has-catalogued-every-noise-5fd6616b = हर आवाज़ की सूची बना रखी है
it-sways-to-one-side-and-at-a-cc7bd064 = एक तरफ़ झूलती है, और एक ख़ास रफ़्तार पर पूरा घर साथ देने लगता है। मेरी माँ की तस्वीर दो बार गिर चुकी है।
the-machine-stands-level-the-439bb5c1 = मशीन समतल खड़ी है। ड्रम एक कोने पर उँगली भर नीचे लटकता है।
yes-whatever-i-put-in-1fa74e03 = हाँ, कुछ भी डालूँ।
i-weigh-it-three-kilos-d25b5d6b = मैं तौलता हूँ। तीन किलो।
a-rumble-that-swells-and-swells-06636141 = गड़गड़ाहट, जो बढ़ती जाती है, बढ़ती जाती है।
sometimes-spreading-the-load-fc3df848 = कभी-कभी “कपड़े फैलाए जा रहे हैं”।
gradually-and-then-since-the-ae87b3fb = धीरे-धीरे, और फिर पिछली तेज़ गर्मी के बाद से बहुत।
when-the-spin-gathers-speed-fad39a7d = जब स्पिन रफ़्तार पकड़ती है।

### silent_and_dry.json

it-starts-and-no-water-comes-in-aad91ce5 = चालू होती है और पानी नहीं आता, चुपचाप
mrs-kowalska-95cb2fde = श्रीमती Kowalska
third-floor-kitchen-2a3866b0 = तीसरी मंज़िल, रसोई
hard-of-hearing-precise-ad0b58d6 = ऊँचा सुनती हैं, सटीक बताती हैं
i-start-it-the-lamps-light-and-9459a081 = चालू करती हूँ, बत्तियाँ जलती हैं, और पानी नहीं आता। मेरे नल अच्छे हैं, होज़ मैंने देखा, मुड़ा हुआ नहीं है।
the-customer-has-pulled-the-998f21c2 = ग्राहक ने मशीन ख़ुद आगे खींच ली है और तौलिए बिछा दिए हैं।
always-f83ac91e = हमेशा।
i-do-not-hear-so-well-you-must-ffb53784 = मुझे ठीक से सुनाई नहीं देता, आप ख़ुद सुनिए।
my-niece-says-it-is-quite-silent-33d839c7 = मेरी भतीजी कहती है कि बिल्कुल चुप है। पहले भनभनाहट होती थी।
fills-too-slowly-i-wrote-it-down-299bc891 = “पानी बहुत धीरे भर रहा है”, मैंने लिख लिया था।
since-the-day-before-yesterday-bcb764a4 = परसों से। उससे पहले पानी ठीक से लेती थी।
in-spring-there-was-a-warm-smell-b9d3a0ac = वसंत में ऊपर गरम-सी गंध आई थी, एक बार।
i-opened-and-shut-the-tap-twice-e1aeb355 = मैंने नल दो बार खोला और बंद किया। खुला है। बाल्टी झट से भर गई।
at-the-beginning-at-once-98fda244 = शुरू में, फ़ौरन।

### slaps_and_rubs.json

it-slaps-and-rubs-below-33de6851 = नीचे फट-फट करती है और रगड़ती है
mr-zeleny-77d90a45 = श्री Zeleny
mill-house-laundry-by-the-wheel-20d88e15 = पनचक्की वाला घर, पहिए के पास लॉन्ड्री
thorough-takes-notes-9b4f7f08 = बारीकी से देखने वाले, लिखते जाते हैं
it-does-its-work-but-it-has-got-2fd0e6f3 = अपना काम करती है, मगर शोर करने लगी है। घूमते समय नीचे फट-फट करती है, और साथ में रगड़ की आवाज़, जैसे तख़्ते पर झाड़ू। जब से इसे बोरी वाली ठेली पर दहलीज़ के पार धकेला, शोर और बढ़ गया है।
crumbs-of-black-rubber-on-the-cb4c72b1 = जहाँ मशीन खड़ी थी वहाँ फ़र्श पर काली रबर का चूरा। दहलीज़ पर चमकती खरोंच है।
flour-sacks-three-kilos-89eea3e0 = आटे की बोरियाँ, तीन किलो।
a-slap-and-a-rub-9f26da11 = फट-फट और रगड़।
the-slap-for-some-time-9a906e0a = फट-फट तो कुछ समय से।
the-rub-since-the-sack-truck-it-a2a0bc48 = रगड़ तब से, जब ठेली पर ले गए। दहलीज़ पर नीचे से अटक गई थी।
a-bit-of-rubber-dust-3d42e440 = थोड़ा रबर का चूरा।
whenever-it-turns-06f54830 = जब भी घूमती है।
only-moved-f578f20a = बस खिसकाई गई।

### slow_since_the_drought.json

slow-since-the-drought-daf1c7e2 = सूखे के बाद से धीमी
mrs-benhaddou-b6f14e71 = श्रीमती Benhaddou
mountain-village-house-by-the-e7c2ec9d = पहाड़ी गाँव, झरने के पास घर
hospitable-tea-first-f1a2e85e = मेहमाननवाज़, पहले चाय
it-fills-drop-by-drop-since-the-7c42892e = बूँद-बूँद भरती है। सूखे के बाद से यहाँ पानी पत्थर जैसा सख़्त है, और मशीन भी हम सबकी तरह धीमी हो गई है।
a-white-crust-on-tap-and-sink-43c2d2ee = नल और सिंक पर सफ़ेद पपड़ी। पानी के जग की तली में रेत।
wool-mostly-45a807d6 = ऊन, ज़्यादातर।
it-hums-and-hisses-34885cd7 = भनभनाती है और सीं-सीं करती है।
the-dial-does-not-move-on-until-158b2d1e = जब तक भर न जाए, डायल आगे नहीं चलता।
since-the-dry-summer-67a41216 = सूखी गर्मियों के बाद से।
at-the-sink-it-runs-well-you-can-18166856 = सिंक पर अच्छा चलता है। सफ़ेद पपड़ी तो आप हर चीज़ पर देख ही रहे हैं।
my-son-looked-at-the-hose-it-was-deaa2ba6 = मेरे बेटे ने होज़ देखा था। सीधा था।

### slow_to_empty.json

it-takes-long-to-empty-and-c79317e8 = पानी निकालने में बहुत देर लगाती है और हर चीज़ पर रोएँ छोड़ती है
mrs-oyelaran-a690ff14 = श्रीमती Oyelaran
hairdresser-s-back-room-aaba491d = हेयर सैलून, पीछे का कमरा
cheerful-customers-waiting-975b334d = हँसमुख, ग्राहक इंतज़ार में हैं
forty-towels-a-day-that-is-my-4aa6cdf4 = रोज़ चालीस तौलिए, यही मेरी ज़िंदगी है। अब पानी इतना धीरे निकालती है कि बारह बजे से पहले सूखे तौलिए ख़त्म हो जाते हैं, और जो निकलता है वह रोएँ से भरा होता है।
a-bin-of-damp-towels-the-little-0dd3e608 = गीले तौलियों का डिब्बा। ड्रम के अंदर की छोटी थैली भूरी और नमदे जैसी सख़्त है।
each-load-6ba4e2ae = हर एक लोड में।
towels-with-hair-of-course-10b5ed69 = तौलिए। बालों के साथ, ज़ाहिर है।
it-whirrs-and-trickles-6fe08d3b = घर्र-घर्र करती है और पतली धार निकलती है।
nothing-once-drains-too-slowly-29716d4b = कुछ नहीं। एक बार “पानी बहुत धीरे निकल रहा है”, मगर फिर आगे चल पड़ी।
it-has-got-slower-over-the-last-63c1bd9c = पिछले महीनों में धीमी होती गई है।
a-bit-stale-d57f1128 = थोड़ी बासी-सी।
when-the-water-goes-out-a939c439 = जब पानी निकलता है।
no-one-it-is-a-good-machine-a3ae593e = किसी ने भी नहीं। अच्छी मशीन है।

### smells_and_counts_for_nothing.json

it-fills-to-nothing-and-hums-at-91313bdf = कुछ नहीं भरती और पीछे भनभनाती है
mrs-sandoval-3d0265eb = श्रीमती Sandoval
dressmaker-s-first-floor-2d567bfe = कपड़े सिलने वाली का घर, पहली मंज़िल
observant-db000249 = बारीक नज़र वाली
it-thinks-it-is-full-when-it-is-c4482cb3 = ख़ाली होती है और समझती है कि भरी है: सूखे टब के साथ घूमती है। और पीछे से हफ़्तों से गंध आ रही है, गरम-सी, तब भी जब बंद हो।
the-wall-behind-the-machine-has-f35e85bb = मशीन के पीछे दीवार पर हल्का भूरा निशान है, हथेली जितना।
muslin-i-took-it-out-cedb664a = मलमल। मैंने निकाल ली।
it-turns-and-scrapes-dry-2be07429 = घूमती है और सूखी रगड़ती है।
the-dial-goes-on-as-if-all-were-7b3b5755 = डायल ऐसे चलता है जैसे सब कुछ ठीक हो।
yesterday-the-dry-turning-the-29b96dc2 = सूखा घूमना कल से। गंध हफ़्तों से।
warm-a-bit-like-ironing-at-the-44c254aa = गरम, थोड़ी इस्त्री करने जैसी। पीछे की तरफ़।
the-tap-is-open-and-strong-7f0505b7 = नल खुला है और ज़ोर का है।
from-the-first-minute-no-water-37fe21fb = पहले ही मिनट से। पानी नहीं, बस घूमती है।

### squeals_after_the_new_belt.json

it-squeals-like-a-pig-a20d7994 = सूअर की तरह चीख़ती है
mr-thibodeaux-mensah-274079f8 = श्री Thibodeaux-Mensah
corner-store-stock-room-33579948 = नुक्कड़ की दुकान, गोदाम का कमरा
bargaining-good-natured-ef918946 = मोल-भाव करने वाले, भले
i-bought-a-belt-my-brother-in-1294d7e3 = मैंने बेल्ट ख़रीदी, मेरे साले ने लगाई, और अब सूअर की तरह चीख़ती है और घोंघे की तरह स्पिन करती है। वह कहता है कि नई बेल्ट कुछ दिन चलकर ही बैठती है। क्या बेल्ट ऐसे बैठती है?
the-packet-of-the-belt-is-on-the-47018dce = बेल्ट का पैकेट शेल्फ़ पर है; बेल्ट सही वाली है।
aprons-6262e992 = एप्रन।
it-squeals-and-there-is-a-tick-ca8626f3 = चीख़ती है, और साथ में टिक, टिक होती है।
since-the-new-belt-4faea66d = जब से नई बेल्ट लगी।
rubber-7a64ffef = रबर की।
at-the-spin-in-the-wash-a-little-e6119f1f = स्पिन पर। धुलाई में थोड़ी।
my-brother-in-law-e41e9f3c = मेरे साले ने।
he-had-the-motor-loose-and-the-0246ae85 = बेल्ट ठीक से चढ़ाने के लिए उसने मोटर ढीली की थी और छोटा पहिया उतारा था।

### squeals_and_comes_out_wet.json

it-squeals-and-the-washing-comes-eb09cdee = चीख़ती है और कपड़े गीले निकलते हैं
mr-novak-4bdf547d = श्री Novak
farm-house-wash-kitchen-6d199ade = खेत वाला घर, धुलाई की रसोई
it-squeals-like-a-piglet-when-it-fc723972 = शुरू होते समय सूअर के बच्चे की तरह चीख़ती है और कपड़े पोंछे की तरह गीले निकलते हैं। मेरी पत्नी कहती है मोटर गई। मैं कहता हूँ नहीं गई।
stone-floor-machine-well-07fc6e3a = पत्थर का फ़र्श, मशीन तक पहुँच अच्छी है। खेत का मज़दूर उठाने में मदद कर सकता है।
with-a-full-drum-yes-empty-it-89c033ec = ड्रम भरा हो, तो हाँ। ख़ाली हो तो मुश्किल से चीख़ती है।
work-trousers-full-five-kilos-83a475d6 = काम की पतलूनें। पूरी भरी, पाँच किलो।
the-squeal-from-below-and-it-43306fc1 = चीख़, नीचे से। और साथ-साथ मज़े से भनभनाती भी रहती है।
its-own-socket-nothing-trips-1899b46d = इसका अपना सॉकेट है। कुछ ट्रिप नहीं होता।
the-usual-it-ends-at-the-usual-f9ebc51e = वही, जो हमेशा दिखता है। हमेशा के समय पर ख़त्म होती है।
a-good-month-ca60f963 = पूरा एक महीना।
it-began-small-a-chirp-on-cold-065e2789 = शुरुआत छोटी थी। ठंडी सुबहों में एक चूँ, समझे आप।
like-a-rubber-boot-by-the-stove-af18a67b = चूल्हे के पास रखे रबर के जूते जैसी, अगर नाक पास ले जाएँ।
from-our-own-tank-with-a-pump-b40219ca = अपनी टंकी से, पंप के साथ, ख़ूब।
mostly-when-it-changes-direction-f04241c8 = ज़्यादातर जब दिशा बदलती है, और जब स्पिन शुरू करती है।
never-only-moved-it-when-we-276e91a1 = कभी नहीं। बस खिसकाई थी, जब दीवार पर चूना किया।

### starts_when_it_likes.json

it-starts-when-it-likes-efda6fb4 = जब मन करे तब शुरू होती है
ms-delacroix-mbuyi-182be0a7 = सुश्री Delacroix-Mbuyi
puppet-theatre-wardrobe-room-8cdd531b = कठपुतली थिएटर, पोशाकों का कमरा
curious-about-everything-8584de4d = हर बात की जिज्ञासा
sometimes-it-takes-water-at-once-452dad62 = कभी फ़ौरन पानी लेती है। कभी नॉब को ज़रा इधर-उधर घुमाती हूँ, तब लेती है। कभी इंतज़ार कराती है, और फिर ख़ुद ही मन बदल लेती है।
the-knob-s-edge-is-worn-smooth-a-b6c3a153 = नॉब का किनारा घिसकर चिकना हो गया है। पेंसिल का निशान बताता है कि उसे कहाँ से शुरू होना पसंद है।
no-that-is-what-drives-me-mad-4712608b = नहीं! इसी से तो पागल हो जाती हूँ।
costumes-gently-6cab5855 = पोशाकें। आराम से।
when-it-will-not-it-is-silent-no-0e210875 = जब नहीं लेती, तो चुप रहती है। पीछे कोई भनभनाहट नहीं।
the-dial-stands-at-the-beginning-59d0c333 = डायल शुरू पर खड़ा रहता है और इंतज़ार करता है।
all-this-season-725f11f1 = इस पूरे सीज़न से।
once-a-whiff-of-something-burnt-03ba113f = एक बार, नॉब के पास कुछ जलने की हल्की-सी गंध।
it-runs-like-a-river-33d53bc2 = नदी की तरह चलता है।
at-the-filling-009fcffe = पानी भरते समय।
no-one-dares-758634e9 = किसी की हिम्मत नहीं।

### stops_and_beeps_before_spin.json

it-stops-and-beeps-before-the-015bb829 = स्पिन से पहले रुककर बीप करती है
mr-haddad-b3e53c18 = श्री Haddad
first-floor-kitchen-50ed6e15 = पहली मंज़िल, रसोई
helpful-5f98198d = मदद करने वाले
it-washes-fine-then-it-stops-f6c35f84 = धोती ठीक है, फिर गीले कपड़ों से भरी रुक जाती है, और थोड़ी देर बाद बीप करती है। ढक्कन बंद है, मैं यक़ीन दिलाता हूँ।
a-shelf-hangs-above-the-machine-24d934f5 = मशीन के ऊपर एक शेल्फ़ टँगी है; ढक्कन पूरा खोलो तो उससे टकराता है।
now-it-is-every-time-ee08c642 = अब तो हर बार।
mixed-things-three-kilos-maybe-c0f2b98d = मिले-जुले कपड़े, शायद तीन किलो।
i-no-longer-hear-the-little-191f9fee = ढक्कन बंद करते समय जो छोटा-सा क्लिक होता था, अब सुनाई नहीं देता। पहले क्लिक होता था।
all-good-03a56dcd = सब ठीक।
lid-is-open-but-it-is-not-3a421324 = “ढक्कन खुला है”। मगर खुला नहीं है।
since-last-week-once-or-twice-it-0e08cd7c = पिछले हफ़्ते से। एक-दो बार ढक्कन ज़ोर से पटकने पर स्पिन हो भी गई।
when-the-water-is-out-and-it-913f418c = जब पानी निकल चुका हो और स्पिन होनी चाहिए।
my-son-leant-on-the-lid-to-reach-36ad5703 = महीना भर पहले मेरा बेटा शेल्फ़ तक पहुँचने के लिए ढक्कन पर टिका था। उसके बाद भी चलती रही।

### stops_full_of_water.json

it-stops-full-of-water-e259eedc = पानी से भरी रुक जाती है
ms-lindqvist-940df587 = सुश्री Lindqvist
basement-flat-28feae5b = तहख़ाने का फ़्लैट
worried-about-the-floor-eec8d597 = फ़र्श की चिंता में
it-has-stopped-with-all-the-179a9a3a = सारा पानी अंदर लिए रुक गई है और बीप करती है। मुझे कुछ भी खोलते डर लगता है।
the-tub-is-full-when-you-come-e84adcc5 = आप पहुँचते हैं तो टब भरा है। फ़र्श की नाली दो मीटर दूर है, ड्रेन होज़ उसी में पड़ा है।
i-switched-it-off-and-on-and-12d03a1d = मैंने बंद करके फिर चालू किया और सिर्फ़ स्पिन चुनी। वही हाल।
baby-clothes-three-kilos-2099c741 = बच्चे के कपड़े, तीन किलो।
nothing-at-all-when-it-should-b6dda2c8 = जब पानी निकालना चाहिए तब बिल्कुल कुछ नहीं।
there-used-to-be-a-whirr-for-a-f368c354 = पहले कुछ सेकंड घर्र-घर्र होती थी। वह चली गई।
yesterday-evening-from-one-wash-e0cf1dd9 = कल शाम, एक धुलाई से दूसरी के बीच।
no-the-floor-is-dry-thank-heaven-bdc172f1 = नहीं। फ़र्श सूखा है, शुक्र है।
it-came-in-as-always-it-is-up-to-2e6e37c1 = पानी हमेशा की तरह आया, यहाँ तक भरा है।
after-the-wash-when-the-water-54fac36c = धुलाई के बाद, जब पानी बाहर जाना चाहिए।

### stops_if_you_look_at_it.json

it-stops-if-you-so-much-as-look-2651ab51 = बस देख भर लो तो रुक जाती है
mr-kekona-4e614055 = श्री Kekona
surf-shop-back-yard-4fcdd10c = सर्फ़ की दुकान, पिछला आँगन
easy-going-8d5d47d8 = बेफ़िक्र
it-stops-whenever-it-likes-says-a05a8119 = जब मन करे रुक जाती है, कहती है ढक्कन बंद करो, और ढक्कन बंद होता है! एक चाँटा मारो, फिर चल पड़ती है। मेरे लोग चाँटा मारने में माहिर हो गए हैं।
a-worn-patch-on-the-lid-where-53b73221 = ढक्कन पर घिसी हुई जगह, जहाँ हाथ मारे जाते हैं। खुली तरफ़ वाला शेड, समुद्र दो गली दूर।
no-only-now-and-then-85493d62 = नहीं, बस कभी-कभी।
more-when-it-shakes-i-would-say-22dee845 = जब हिलती है तब ज़्यादा, मेरे ख़याल से।
rash-vests-and-towels-bc367597 = तैराकी की बनियानें और तौलिए।
a-click-and-then-it-is-quiet-ee3ba7c7 = एक क्लिक, और फिर चुप।
close-the-lid-501eaab8 = “ढक्कन बंद करें”।
since-the-summer-32e4b0bf = गर्मियों से।
any-time-washing-spinning-7bbed8fd = कभी भी। धुलाई, स्पिन, पानी निकालना।
no-salt-air-does-for-everything-37204f4f = नहीं। यहाँ खारी हवा हर चीज़ को खा जाती है।

### stops_when_it_gets_going.json

it-gets-going-and-then-starts-3e383b29 = ज़ोर पकड़ती है और फिर सब शुरू से करने लगती है
ms-yildiz-7f833ab2 = सुश्री Yildiz
flat-over-a-workshop-that-shakes-34f6a2a1 = वर्कशॉप के ऊपर फ़्लैट, जिससे फ़र्श काँपता है
sceptical-the-last-visit-found-7cb633ba = यक़ीन नहीं करतीं: पिछले दौरे में कुछ नहीं मिला था
it-drains-it-begins-to-spin-it-d1d953b9 = पानी निकालती है, स्पिन शुरू करती है, काफ़ी तेज़ हो जाती है, और फिर रुक जाती है, पानी भरती है, कपड़े हिलाती है, और फिर कोशिश करती है। आख़िर में कहती है कि नहीं हो पा रहा। पिछले आदमी ने चालू की, चल गई, वह चला गया, और उसी रात फिर वही किया।
the-floor-trembles-when-the-1173065f = नीचे प्रेस चलती है तो फ़र्श काँपता है। मशीन समतल खड़ी है और डगमगाती नहीं।
nearly-always-c455f059 = लगभग हमेशा।
with-an-empty-drum-it-does-it-612853ee = ख़ाली ड्रम के साथ भी करती है, यह मैं करके देख चुकी हूँ।
anything-even-one-towel-6005cd10 = कुछ भी। एक तौलिया भी।
no-banging-at-all-83d71728 = कोई धमाधम नहीं।
spreading-the-load-and-later-4f07f477 = “कपड़े फैलाए जा रहे हैं”, और बाद में यह कि बहुत झूल रही है। मगर वह तो अलमारी की तरह चुपचाप खड़ी रहती है।
six-weeks-or-so-71726633 = छह हफ़्ते के आसपास।
when-it-gets-really-fast-never-7cc01f87 = जब सचमुच तेज़ हो जाती है। उससे पहले कभी नहीं।
the-man-who-found-nothing-cd3d4f9d = वह आदमी, जिसे कुछ नहीं मिला।
and-before-that-one-who-changed-5b5df847 = और उससे पहले एक और, जिसने वसंत में डिस्प्ले बदला था। उसने ऊपर का हिस्सा खोला था।

### takes_an_hour_to_fill.json

it-takes-an-hour-to-fill-1be18b8d = भरने में एक घंटा लगाती है
mr-quispe-c248b37b = श्री Quispe
second-floor-above-a-bakery-eca66987 = दूसरी मंज़िल, बेकरी के ऊपर
patient-a-little-tired-03a0b2cd = धैर्य वाले, थोड़े थके हुए
it-washes-well-in-the-end-but-499f0ed8 = आख़िर में अच्छा धोती है, मगर पहले घंटे भर के क़रीब खड़ी-खड़ी टब में पानी टपकाती है। कभी-कभी भरने से पहले ही हार मानकर बीप करने लगती है।
the-machine-stands-close-to-the-61e4ad0c = मशीन फ़्रीज़र और दरवाज़े के बीच दीवार से सटी खड़ी है। नल खुला है।
every-time-now-76cad28d = अब तो हर दफ़ा।
nappies-and-towels-the-right-52ab09e9 = लंगोट और तौलिए। पाउडर सही मात्रा में, मैं नापकर डालता हूँ।
a-thin-hiss-instead-of-the-3a55aa19 = पहले ज़ोर से पानी गिरने की जो आवाज़ थी, उसकी जगह पतली सीं-सीं।
fills-too-slowly-when-it-gives-135acdf6 = “पानी बहुत धीरे भर रहा है”, जब हार मान लेती है।
it-has-crept-up-on-us-cb568718 = धीरे-धीरे होता गया, हमें पता भी नहीं चला।
worse-since-we-pushed-it-further-3956d5f8 = जब से बच्चे की गाड़ी की जगह बनाने के लिए इसे और पीछे धकेला, तब से और ख़राब।
the-sink-beside-it-runs-hard-b2d14265 = बग़ल का सिंक इतने ज़ोर से चलता है कि मुझ पर छींटे पड़ते हैं।
at-the-beginning-while-the-water-2ed83fbf = शुरू में, जब पानी आता है। और फिर हर बार खंगालने पर।
no-repairs-36a018fa = कोई मरम्मत नहीं हुई।
the-water-people-dug-up-the-d1490516 = वसंत में पानी वालों ने गली खोदी थी। दो दिन तक सब कुछ भूरा निकला।

### takes_its_time_stopping.json

it-takes-its-time-stopping-c9c608b9 = रुकने में बहुत समय लेती है
mrs-whitlock-adeyinka-f0fccc43 = श्रीमती Whitlock-Adeyinka
day-nursery-staff-laundry-e430ed00 = शिशु-घर, स्टाफ़ की लॉन्ड्री
serious-about-safety-1d4c9d5a = सुरक्षा को लेकर गंभीर
when-i-open-the-lid-while-it-d284f457 = स्पिन करते समय ढक्कन खोलती हूँ तो न जाने कितनी देर घूमती रहती है। घर में बच्चे हों और यह हो, मुझे मंज़ूर नहीं। नीचे डगमग की आवाज़ भी है।
the-laundry-door-has-a-high-bolt-15fddc4b = लॉन्ड्री के दरवाज़े पर ऊँची कुंडी है। कमरे में कोई बच्चा नहीं है।
bibs-and-sheets-c687ba88 = बिब और चादरें।
a-wobble-wum-wum-from-below-5d2c430c = डगमग, वुम, वुम, नीचे से।
it-says-to-close-the-lid-as-it-012a7457 = ढक्कन बंद करने को कहती है, जैसा कहना चाहिए।
half-a-year-getting-worse-5358c77a = छह महीने, बढ़ता जा रहा है।
after-the-spin-and-when-i-lift-9e62e4f5 = स्पिन के बाद, और जब ढक्कन उठाती हूँ।

### third_valve_still_slow.json

the-third-new-valve-and-it-still-333014d3 = तीसरा नया वाल्व, और अब भी धीरे भरती है
mr-andriamana-6ebe756a = श्री Andriamana
top-floor-tank-on-the-roof-59c64250 = सबसे ऊपर की मंज़िल, छत पर टंकी
polite-has-stopped-believing-568ac42c = विनम्र, अब किसी पर भरोसा नहीं रहा
two-men-have-put-in-three-inlet-3c0f2383 = दो आदमियों ने मिलकर तीन इनलेट वाल्व लगाए और तीनों के पैसे मैंने दिए। अब भी भरने में बीस मिनट लगते हैं, और फिर बीप करती है। मेहरबानी करके मुझे चौथा मत बेचिए।
the-roof-tank-stands-on-a-frame-22c6b5a7 = छत की टंकी एक स्टैंड पर रखी है; उसका निकास नल से क़रीब एक मीटर ऊपर है।
top-floor-there-is-a-lift-when-4b37195b = सबसे ऊपर की मंज़िल। लिफ़्ट है, जब चलती है।
shirts-one-measure-of-powder-0711e0e6 = कमीज़ें। एक नाप पाउडर।
it-hums-and-trickles-f19ca05b = भनभनाती है और पतली धार आती है।
fills-too-slowly-c89ea75a = “पानी बहुत धीरे भर रहा है”।
since-we-moved-up-here-08964225 = जब से हम यहाँ ऊपर आए।
downstairs-at-my-mother-s-it-e33d4d26 = नीचे, मेरी माँ के यहाँ, कुछ मिनट में भर जाती थी। उनके यहाँ मेन लाइन का पानी है, मेरे यहाँ टंकी का।
the-tap-is-open-8cf0e82d = नल खुला है।
the-shower-one-has-to-be-patient-af1f9f45 = शॉवर? यहाँ ऊपर सब्र रखना पड़ता है।
three-valves-in-two-months-the-82982983 = दो महीने में तीन वाल्व। आख़िरी आदमी ने छोटी जाली भी साफ़ की थी, मुझे दिखाई थी।

### trips_and_old.json

it-drops-the-breaker-and-it-is-307027c4 = ब्रेकर गिरा देती है, और नई भी नहीं है
mr-moyo-4d6e2e6e = श्री Moyo
smallholding-pump-house-3df54505 = छोटा खेत, पंप-घर
resigned-8c93abb8 = हार मान चुके
when-it-begins-to-wash-the-light-ddd198f0 = धोना शुरू करती है तो पूरे घर की बत्ती चली जाती है। बरसों से गड़गड़ाती और कराहती आई है। साफ़-साफ़ बताइए कि इसमें फ़ायदा है या नहीं।
rust-along-the-bottom-edge-the-0ee486a3 = निचले किनारे पर ज़ंग। मरम्मतों की भी मरम्मत हो चुकी है।
in-the-pump-house-on-concrete-i-de781083 = पंप-घर में, कंक्रीट पर। मैं उठा सकता हूँ।
it-used-to-rumble-when-it-spun-68482530 = स्पिन में गड़गड़ाती थी। अब वहाँ तक पहुँचती ही नहीं।
the-breaker-with-the-test-button-f41d936f = टेस्ट बटन वाला ब्रेकर।
it-holds-as-long-as-the-machine-a3cab22b = जब तक मशीन सिर्फ़ भर रही हो, टिका रहता है।
the-rumbling-for-years-the-cd5302cd = गड़गड़ाहट बरसों से। ट्रिप होना बरसात से।
it-fills-and-the-moment-it-18719fda = भरती है, और जिस पल घूमना चाहिए, सब अँधेरा हो जाता है।
i-have-kept-it-going-with-my-own-71508485 = पंद्रह साल से अपने ही हाथों से चलाता आया हूँ।

### turns_one_way.json

it-turns-one-way-and-never-spins-1c7ef6d5 = एक तरफ़ घूमती है और स्पिन कभी नहीं करती
mr-pemberley-cruz-ffefd726 = श्री Pemberley-Cruz
dry-humour-dfcf0a92 = सूखा मज़ाक करने वाले
half-of-it-works-it-turns-one-a194afcc = आधी चलती है। एक तरफ़ घूमती है, सोचती है, और फिर उसी तरफ़ घूमती है। और जब स्पिन करना चाहिए, तो पंप के साथ नीचे अपने आप से भनभनाती रहती है, बस इतना ही।
mud-room-with-a-drain-a-dog-2c2fbcb7 = जूते-कीचड़ वाला कमरा, नाली के साथ। कोटों के ढेर पर एक कुत्ता सो रहा है।
yes-sir-67ab8dac = जी हाँ।
barn-clothes-050f650e = तबेले के कपड़े।
a-click-where-the-other-turn-0380f79c = जहाँ दूसरी तरफ़ घूमना चाहिए वहाँ एक क्लिक।
no-breaker-no-cord-4029e677 = ब्रेकर नहीं गिरा, कोई एक्सटेंशन कॉर्ड नहीं।
it-counts-down-919ec4e2 = गिनती घटाती है।
since-the-cold-snap-6645ec1e = जब से अचानक ठंड पड़ी।
washing-and-spinning-52f66587 = धुलाई और स्पिन में।
nobody-but-the-dog-goes-in-there-aa09132b = कुत्ते के सिवा वहाँ कोई नहीं जाता।

### waits_for_its_water.json

it-waits-and-waits-for-its-water-f390613f = अपने पानी का इंतज़ार ही करती रहती है
mrs-solheim-deafeb0c = श्रीमती Solheim
holiday-cabin-by-the-fjord-7f3ba77b = फ़्योर्ड किनारे छुट्टियों का घर
relaxed-on-holiday-2a52ede1 = आराम से, छुट्टी पर
we-opened-the-cabin-up-last-week-fc706bb7 = पिछले हफ़्ते हमने घर खोला। धोती है, मगर पूरी सुबह लगा देती है: हिलना शुरू करने से पहले न जाने कितनी देर सीं-सीं करती खड़ी रहती है। पिछले सालों की गर्मियों में इससे तेज़ थी।
the-tap-sits-low-behind-the-b5221d50 = नल मशीन के पीछे नीचे है और उसका हैंडल पुराना और सख़्त है। होज़ सीधा पड़ा है।
swimming-things-and-bed-linen-30071367 = तैरने के कपड़े और चादरें।
it-hisses-753de6e1 = सीं-सीं करती है।
the-dial-just-stands-where-i-put-50a413bc = डायल बस वहीं खड़ा इंतज़ार करता है जहाँ मैं रखती हूँ।
this-summer-from-the-first-wash-bbc0c58c = इस गर्मी में, पहली धुलाई से।
my-son-turned-the-water-on-again-1fea7d8e = सर्दियों के बाद पानी मेरे बेटे ने खोला। ऐसी बातों में वह सावधान रहता है।
the-kitchen-tap-is-good-6073632a = रसोई का नल अच्छा है।
at-the-start-and-again-in-the-d39668e0 = शुरू में, और फिर खंगालते समय।
no-it-sleeps-here-all-winter-92e6c94d = नहीं। पूरी सर्दी यहाँ सोती है।

### walked_to_the_door.json

the-drum-hangs-to-one-side-86691b09 = ड्रम एक तरफ़ लटका है
mrs-harlan-sato-0c3ff853 = श्रीमती Harlan-Sato
apartment-with-a-narrow-hall-87e5c332 = तंग गलियारे वाला फ़्लैट
apologises-for-the-mess-5b9d462b = बिखरे सामान के लिए माफ़ी माँगती हैं
the-drum-sits-crooked-i-can-see-92049f45 = ड्रम टेढ़ा बैठा है, ढक्कन में से दिखता है। भरती है और धोती है, कमोबेश, और जब स्पिन करना चाहिए तो इधर-उधर झूलती है, पानी लेती है, और फिर कोशिश करती है, जब तक हार न मान ले।
scrape-marks-on-the-corner-of-37922dec = गलियारे के कोने पर रगड़ के निशान। मशीन समतल खड़ी है।
three-kilos-at-most-469ccb71 = ज़्यादा से ज़्यादा तीन किलो।
a-clonk-against-the-side-when-it-a9d28dde = शुरू होते समय बग़ल से टकराने की ठक।
basket-keeps-swinging-000ff910 = “बास्केट बार-बार झूल रही है”।
since-the-move-4266fac7 = जब से घर बदला।
they-got-it-round-the-corner-in-2f435aa0 = गलियारे के कोने से इसे लिटाकर निकाला, और ठक की आवाज़ हुई।
at-the-spin-4bda2cf1 = स्पिन पर।
the-movers-and-my-husband-pushed-0490a4aa = सामान ढोने वालों ने। और मेरे पति ने ऊपर से ड्रम को दबाकर कहा कि ठीक है।

### walks_and_fills_again.json

it-walks-and-fills-again-and-96dd5d9c = चलती-फिरती है और बार-बार भरती है
mr-mbeki-4a42d1f8 = श्री Mbeki
garden-shed-with-a-wooden-floor-781d09c7 = लकड़ी के फ़र्श वाला बाग़ का शेड
it-walks-through-the-shed-like-a-66ed1e9c = बकरी की तरह शेड में चलती फिरती है, रुकती है, फिर भरती है, और आख़िर में हार मान लेती है। दुकान वाला कहता है कि डैम्पिंग घिस गई है और मुझे रॉड बेचना चाहता है।
plank-floor-that-slopes-to-the-d8ae2d1c = तख़्तों का फ़र्श, दरवाज़े की तरफ़ ढलान; पाये सबसे छोटे पर हैं। नहाने की मैटें अब भी बास्केट में हैं।
with-a-few-shirts-it-sometimes-d4ab61ba = कुछ कमीज़ों के साथ कभी-कभी निकल जाती है।
bath-mats-and-a-blanket-e9ee9f74 = नहाने की मैटें और एक कंबल।
it-bangs-three-or-four-times-c3f9fe09 = तीन-चार बार धम-धम करती है, फिर रुकती है और पानी लेती है।
a-cable-from-the-house-nothing-a46dbe7b = घर से एक केबल आती है। कुछ ट्रिप नहीं होता।
since-it-stands-in-the-shed-in-c55438b4 = जब से शेड में रखी है। पुराने घर में शांत थी।
from-the-garden-tap-fine-e70a6c8c = बाग़ के नल से, ठीक।
when-it-begins-to-spin-93d30b3f = जब स्पिन शुरू करती है।
i-moved-it-myself-it-weighs-like-81cf4e9c = मैंने ख़ुद खिसकाई। बछड़े जितनी भारी है।

### washes_will_not_spin.json

it-washes-and-drains-but-will-64536d11 = धोती है, पानी निकालती है, मगर स्पिन नहीं करती
mr-tanaka-e12a3f94 = श्री Tanaka
second-floor-bathroom-0cefdcb5 = दूसरी मंज़िल, बाथरूम
patient-80ee595e = धैर्य वाले
it-fills-it-washes-it-pumps-the-7178b7f0 = भरती है, धोती है, पंप करके पानी निकालती है, और फिर रुक जाती है, सब कुछ टपकता हुआ गीला। कोई अलार्म भी नहीं।
good-light-room-to-pull-the-429d4dcc = अच्छी रोशनी, मशीन आगे खींचने की जगह। सीढ़ियाँ तंग हैं।
every-time-since-72b657e3 = तब से हर बार।
shirts-four-or-five-kilos-the-a5a04ee4 = कमीज़ें, चार-पाँच किलो, हमेशा जितना पाउडर।
quiet-no-humming-either-106cc8f4 = चुप। भनभनाहट भी नहीं।
now-that-you-ask-in-the-wash-it-21777d3a = अब आपने पूछा तो: धुलाई में पहले इधर-उधर घूमती थी। अब चलती है, रुकती है, रुकती है, चलती है।
nothing-has-tripped-it-is-0fadbddb = कुछ ट्रिप नहीं हुआ। सीधे दीवार में लगी है।
it-goes-through-to-the-end-as-if-f67717cd = आख़िर तक ऐसे चलती है जैसे सब ठीक हो।
about-two-weeks-0e36b741 = क़रीब दो हफ़्ते।
from-one-wash-to-the-next-it-had-d527597f = एक धुलाई से दूसरी के बीच। बस तभी मेरे पुराने फ़्लैट से उठाकर यहाँ लाए थे।
yes-the-water-is-strong-here-7fe2ddaf = हाँ, यहाँ पानी ज़ोर का है।
at-the-end-when-it-should-start-cd3a433f = आख़िर में, जब स्पिन शुरू होनी चाहिए। ड्रम नहीं हिलता।
two-friends-carried-it-up-the-3250684f = दो दोस्त इसे सीढ़ियों से उठाकर ऊपर लाए। जहाँ तक मुझे पता है, किसी ने खोली नहीं।

### water_comes_back_up.json

the-water-will-not-go-away-cad2f7f4 = पानी जाता ही नहीं
ms-nakoa-235c8617 = सुश्री Nakoa
new-kitchen-ground-floor-4ca1e850 = नई रसोई, ग्राउंड फ़्लोर
proud-of-the-kitchen-44c22d25 = रसोई पर नाज़ है
the-kitchen-is-new-and-beautiful-f34c1c0f = रसोई नई और सुंदर है और वॉशिंग मशीन ने ख़ुद ख़ाली होना बंद कर दिया है। पानी लिए खड़ी रहती है, फिर बीप करती है और कहती है कि पानी बहुत धीरे निकल रहा है।
the-hose-runs-up-the-wall-and-1a8f0a4a = होज़ दीवार पर ऊपर जाता है और काउंटर की ऊँचाई पर एक क्रोम टोंटी में ख़त्म होता है।
every-time-since-then-86dd6e10 = उसके बाद से हर बार।
tea-towels-and-paint-rags-1a99b825 = बर्तन पोंछने के कपड़े और पेंट के चीथड़े।
it-whirrs-below-as-it-always-did-3d6fa78d = नीचे घर्र-घर्र करती है, जैसे हमेशा करती थी।
the-gurgle-in-the-pipe-is-not-f81fe64c = पाइप में जो गुड़-गुड़ होती थी, अब नहीं होती।
since-the-kitchen-was-finished-065217c8 = जब से रसोई पूरी हुई, पिछले शुक्रवार से।
no-it-is-all-new-b4f13576 = नहीं, सब नया है।
after-the-wash-when-the-water-f7a5e1b1 = धुलाई के बाद, जब पानी बह जाना चाहिए।
on-the-machine-no-the-kitchen-2bcadd94 = मशीन पर, नहीं। रसोई वालों ने इसके लिए नया निकास बनाया, ऊपर काउंटर के पीछे, ताकि होज़ दिखे नहीं।

### water_from_somewhere_else.json

there-is-water-everywhere-84b3995e = हर तरफ़ पानी है
mr-takahashi-byrne-306f98ed = श्री Takahashi-Byrne
basement-flat-by-the-canal-a7201054 = नहर के पास तहख़ाने का फ़्लैट
upset-3a785bf0 = घबराए हुए
the-machine-has-flooded-the-b2b6424b = मशीन ने पूरे तहख़ाने में पानी भर दिया! कल रात धुलाई की, और आज सुबह मेरा पैर पानी में पड़ा। आपको यह रिसाव बंद करना होगा।
four-steps-down-to-the-cellar-89a60844 = तहख़ाने तक चार सीढ़ियाँ नीचे। सॉकेट फ़र्श से एक हाथ ऊपर है।
in-the-cellar-under-water-up-to-57edada7 = तहख़ाने में, टख़ने तक पानी में।
it-did-its-wash-then-the-water-00adae3b = अपनी धुलाई कर चुकी थी। फिर पानी आया।
it-never-leaked-before-a92e987f = पहले कभी लीक नहीं हुई।
it-is-empty-i-took-the-washing-e7ce86d5 = ख़ाली है, मैंने कपड़े निकाल लिए।
a-gurgling-but-from-the-drain-in-87b92233 = गुड़-गुड़, मगर फ़र्श की नाली से।
the-light-still-works-37984a12 = बत्ती अब भी जलती है।
nothing-the-dial-stood-at-off-8b8fa876 = कुछ नहीं। डायल बंद पर था।
since-this-morning-466a39b3 = आज सुबह से।
like-the-canal-98659eec = नहर जैसी।
i-shut-the-tap-and-it-still-9b7dcc20 = मैंने नल बंद कर दिया, और फिर भी चढ़ रहा है।
in-the-night-i-suppose-the-wash-e6ba76d4 = रात में, शायद। धुलाई दस बजे ख़त्म हो चुकी थी।
no-nobody-b62f45b1 = नहीं, किसी ने नहीं।

### water_runs_at_once.json

water-runs-as-soon-as-it-is-f9434d8a = चालू करते ही पानी आने लगता है
ms-rao-69e5b38b = सुश्री Rao
fifth-floor-new-building-3596b3b6 = पाँचवीं मंज़िल, नई इमारत
careful-reads-manuals-db398763 = सावधान, मैनुअल पढ़ती हैं
the-moment-i-switch-it-on-the-a119d69e = जिस पल चालू करती हूँ उसी पल पानी आने लगता है, स्टार्ट दबाने से पहले। बंद करती हूँ तो रुक जाता है। अब नल बंद रखती हूँ।
the-manual-lies-on-the-lid-the-417f4588 = मैनुअल ढक्कन पर रखा है। ग्राहक हर रीडिंग देखना चाहती हैं।
the-hum-on-top-as-when-it-fills-3622fce3 = ऊपर वही भनभनाहट, जो भरते समय होती है।
the-lights-flickered-in-the-e3277375 = तूफ़ान में बत्तियाँ टिमटिमाई थीं। ब्रेकर ट्रिप नहीं हुआ।
after-a-while-overflow-danger-193175b1 = थोड़ी देर बाद “पानी छलकने का ख़तरा”, और फिर पानी बाहर निकालती है।
since-the-storm-last-week-i-f0b7b148 = पिछले हफ़्ते के तूफ़ान से, मेरे ख़याल से।
no-the-floor-is-dry-because-i-f39bfeb2 = नहीं। फ़र्श सूखा है क्योंकि मैं देखती रही।
strong-the-tap-is-shut-now-9ac9d17e = ज़ोर का। अभी नल बंद है।
at-once-it-does-not-wait-for-5d981576 = फ़ौरन। स्टार्ट का इंतज़ार नहीं करती।
no-it-is-out-of-warranty-by-a-449f109a = नहीं। वारंटी एक महीना पहले ख़त्म हो गई।

### weak_in_the_new_place.json

it-has-been-weak-since-we-moved-dd67acfb = घर बदलने के बाद से कमज़ोर है
mr-delacruz-whitby-4c87b8f8 = श्री Delacruz-Whitby
rented-cottage-back-porch-f9f8918f = किराए का छोटा घर, पीछे का बरामदा
annoyed-with-the-movers-566fba9e = सामान ढोने वालों से नाराज़
in-the-old-house-it-was-strong-736c9bae = पुराने घर में बैल जैसी ताक़त थी। यहाँ एक तरफ़ घुमाती है और दूसरी तरफ़ मुश्किल से, और जब काम करती है तो बरामदे की बत्ती मद्धिम हो जाती है। ज़रूर ढोने वालों ने गिराया होगा।
a-flat-brown-cord-comes-out-of-25ee191f = दरवाज़े के पास दीवार से एक चपटी भूरी कॉर्ड निकलती है। दूसरा, ज़्यादा नया सॉकेट बेंच के पीछे है। दरवाज़े में एक कुत्ता लेटा है।
on-the-back-porch-mind-the-dog-54744b0e = पीछे के बरामदे में। कुत्ते का ध्यान रखिए, वह बस खेलना चाहता है।
it-hums-more-2317889a = पहले से ज़्यादा भनभनाती है।
no-breaker-bf8151c8 = ब्रेकर नहीं गिरा।
it-is-on-the-long-cord-from-the-0fbb7fd4 = रसोई से आने वाली लंबी कॉर्ड पर है। मकान-मालिक ने दीवार के पार निकाली थी।
nothing-special-82fe9da9 = कुछ ख़ास नहीं।
since-we-moved-in-df5f2cab = जब से हम यहाँ आए।
by-the-outlet-maybe-a-warm-dust-2f87aec4 = सॉकेट के पास, शायद। गरम धूल जैसी गंध।
in-the-wash-mostly-b5762d72 = धुलाई में, ज़्यादातर।
the-movers-had-it-on-its-side-1c32d345 = ढोने वालों ने इसे लिटाकर रखा था, कहते हैं गिराई नहीं।

### whines_and_stands.json

it-whines-and-the-drum-stands-e009984f = सूँ-सूँ करती है और ड्रम खड़ा रहता है
sister-agathe-c002840d = सिस्टर Agathe
convent-kitchen-basement-laundry-570806cc = कॉन्वेंट की रसोई, तहख़ाने में लॉन्ड्री
kind-exact-009eb076 = दयालु, सटीक
it-washes-it-empties-then-it-d8004027 = धोती है। पानी निकालती है। फिर वैसे ही सूँ-सूँ करती है जैसे धुलाई में, उतनी ही देर जितनी देर स्पिन करती थी, और कपड़े ड्रम में गीली मिट्टी की तरह पड़े रहते हैं।
flagstones-well-lit-a-second-92abf35b = पत्थर की पटियों का फ़र्श, अच्छी रोशनी, रसोई में मदद के लिए मज़बूत हाथों की दूसरी जोड़ी।
table-linen-four-kilos-de8ce001 = मेज़पोश, चार किलो।
the-whine-of-the-wash-instead-of-8022add2 = स्पिन की तेज़ हवा जैसी आवाज़ के बजाय धुलाई वाली सूँ-सूँ।
the-dial-goes-through-to-the-end-e45a0b7e = डायल आख़िर तक पूरा चलता है।
since-monday-6adf9167 = सोमवार से।
the-gardener-is-our-mechanic-6f9d9f20 = हमारा माली ही हमारा मैकेनिक है।
he-changed-the-spring-and-lever-a01f0057 = शनिवार को उसने नीचे के स्प्रिंग और लीवर बदले, पुर्ज़ों के एक डिब्बे से जो हमें किसी ने दिया था।

### whirls_and_does_not_wring.json

it-pumps-it-whirls-it-does-not-8213b2ed = पंप करती है, घूमती है, निचोड़ती नहीं
mrs-oduya-prentiss-cb782d56 = श्रीमती Oduya-Prentiss
row-house-basement-b855c52e = क़तार वाला घर, तहख़ाना
tired-three-small-children-f8d0ac4b = थकी हुई, तीन छोटे बच्चे
the-water-goes-out-the-motor-92c0bed8 = पानी निकल जाता है, मोटर चलती है, मुझे सुनाई देती है। मगर टब नहीं घूमता। गुरुवार से लंगोट हाथ से निचोड़ रही हूँ।
dry-basement-good-light-a-7a516c8d = सूखा तहख़ाना, अच्छी रोशनी, सामने का पड़ोसी उठाने में हाथ बँटाने को तैयार है।
diapers-baby-things-10ffd2e4 = लंगोट, बच्चे के कपड़े।
the-motor-and-the-pump-the-034c88f3 = मोटर की, और पंप की। स्पिन से पहले जो छोटी-सी घर्र होती थी, वह नहीं रही।
it-counts-down-and-says-it-is-0a242a18 = गिनती घटाती है और कहती है कि पूरा हो गया।
thursday-466ee4fb = गुरुवार।
no-one-has-touched-it-acc44911 = इसे किसी ने हाथ नहीं लगाया।

### white_mountain.json

a-white-mountain-climbs-out-of-bc952384 = अंदर से सफ़ेद पहाड़ चढ़ आता है
jomo-2ef957aa = Jomo
student-flat-fourth-floor-ac7d33f1 = छात्रों का फ़्लैट, चौथी मंज़िल
amused-and-a-bit-ashamed-c363b62c = मज़ा भी आ रहा है और थोड़ी शर्म भी
i-wanted-it-really-clean-this-eb7c606f = इस बार मैं सचमुच साफ़ धोना चाहता था। अब ढक्कन से और होज़ से सफ़ेद चीज़ बाहर आ रही है, और स्पिन कमज़ोर है, मशीन कराहती है और सब कुछ गीला रह जाता है।
a-packet-of-hand-washing-powder-5f6d8124 = ढक्कन पर हाथ से धोने वाले पाउडर का पैकेट और सूप का मग रखा है।
i-have-only-done-three-washes-2ae2b783 = मैंने अब तक कुल तीन धुलाइयाँ की हैं।
my-whole-wardrobe-not-packed-f500589f = मेरे सारे कपड़े, ठूँसकर नहीं।
powder-a-cup-a-big-one-the-kind-15656557 = पाउडर? एक कप। बड़ा वाला, सूप वाला। और थोड़ा लिक्विड भी।
it-groans-at-the-spin-383e68b6 = स्पिन पर कराहती है।
it-shows-that-it-is-done-34a66bce = दिखाती है कि पूरा हो गया।
since-this-morning-it-is-my-559c9af0 = आज सुबह से। मशीन के साथ मेरा पहला हफ़्ता है।
it-smells-of-lavender-strongly-94772e34 = लैवेंडर की गंध है। तेज़।
it-starts-in-the-wash-at-the-de346864 = धुलाई में शुरू होता है। स्पिन पर सबसे ज़्यादा।

### first_month.json

a-first-month-b22e9fc8 = पहला महीना
twenty-four-calls-in-an-order-59f8f1a8 = चौबीस जॉब, जिनका क्रम धीरे-धीरे आगे बढ़ता है: पहले पूछना, देखना और मशीन के आसपास का घर, फिर खोलना और नापना, फिर छिपी रहने वाली ख़राबियाँ।

### first_visits.json

first-visits-alone-de727dd4 = पहले दौरे, अकेले

### expert/apart.rs

let-a-whole-program-run-and-339e7891 = पूरा प्रोग्राम चलने देना, और देखना और सुनना
press-the-service-key-and-look-8df43d5f = सर्विस बटन दबाना और डिस्प्ले देखना

### expert/hint.rs

next-act-c76dfea6 = आगे: { $act }
your-notes-fit-one-cause-far-9355763b = आपके नोट्स एक कारण से बाक़ी सबके मुक़ाबले कहीं बेहतर मेल खाते हैं।
your-notes-still-fit-n-causes-fbdf2070 = आपके नोट्स अब भी { $n } कारणों से मेल खाते हैं।
what-have-you-seen-it-do-1761f9f4 = आपने मशीन को ख़ुद क्या करते देखा है, और क्या सिर्फ़ ग्राहक से मालूम है?
what-could-eyes-alone-tell-now-8be53e1e = कुछ भी नापने से पहले, अब सिर्फ़ आँखें क्या बता सकती हैं?
what-should-move-freely-or-hold-f68a3522 = क्या खुलकर चलना चाहिए, या पकड़े रहना चाहिए, और क्या आपके हाथों ने उसे आज़माया है?
which-of-them-would-a-meter-tell-173e09ce = मीटर इनमें से किन्हें अलग कर देगा, और कहाँ?
is-there-anything-left-that-you-929b6f08 = क्या अब भी कुछ बचा है जो मरम्मत से पहले जानना ज़रूरी है?
what-in-your-notes-says-that-760ac3a5 = आपके नोट्स में क्या कहता है कि अब भी कुछ ख़राब है?
which-of-your-lines-do-not-go-698b98bb = आपकी कौन-सी पंक्तियाँ आपस में मेल नहीं खातीं, और कौन-सी आप फिर लेंगे?
as-the-customer-uses-it-covers-9acf9010 = जैसे ग्राहक इस्तेमाल करता है: कवर लगे, प्लग लगा, बाहर से।
in-your-notebook-line-by-line-1dc54bd5 = अपनी नोटबुक में, पंक्ति-दर-पंक्ति।
from-outside-nothing-has-to-come-f5a8b2bb = बाहर से: कुछ उतारना नहीं पड़ता।
unplugged-and-proved-dead-with-ed275c43 = प्लग बाहर और डेड साबित, और ये उतरे हुए: { $covers }।
nothing-527dae8a = कुछ नहीं
it-would-look-the-same-for-the-64a08952 = सबसे संभावित कारणों में यह एक जैसा दिखेगा, और दूसरों को ख़ारिज करता है।
one-or-next-8c9f873a = { $one }; या { $next }
shown-would-fit-causes-12976983 = “{ $shown }” इनसे मेल खाएगा: { $causes }।
by-your-notes-this-is-sure-9f5fca04 = आपके नोट्स के हिसाब से इसकी संभावना { $sure } % है: { $what }। और ढूँढने की लागत उससे ज़्यादा होगी जितना उससे बच सकता है।
by-your-notes-it-is-right-as-it-68be5fda = आपके नोट्स के हिसाब से मशीन अब जैसी है, सही है: पूरा चलाकर और टेस्ट से साबित करें।
no-usual-cause-explains-all-your-7e1fdfe8 = कोई आम कारण आपके सारे नोट्स को नहीं समझाता। उनमें से कोई ग़लत हो सकता है।
nothing-is-wrong-34c2c40b = कुछ ख़राब नहीं

### expert/next_words.rs

look-further-3117d574 = और ढूँढना
call-for-help-5f8221ed = मदद बुलाना
let-it-drain-and-spin-and-watch-705cbcfe = ड्रेन और स्पिन करवाना, और देखना
let-it-fill-and-wash-and-watch-c101d186 = भराई और धुलाई करवाना, और देखना
let-it-wash-drain-and-spin-and-ad766cdb = धुलाई, ड्रेन और स्पिन करवाना, और देखना
move-it-by-hand-place-bb946900 = हाथ से चलाना: { $place }

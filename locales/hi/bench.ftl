### bench/acts/access.rs


### bench/acts/agree.rs


### bench/acts/finishing.rs


### bench/acts/gauge.rs


### bench/acts/handle.rs


### bench/acts/isolate.rs


### bench/acts/leave.rs


### bench/acts/measure.rs


### bench/acts/mod.rs


### bench/acts/office.rs


### bench/acts/order.rs


### bench/acts/parts.rs


### bench/acts/report.rs


### bench/acts/touch.rs


### bench/after_repair.rs

nothing-damaged-or-missing-807290be = कुछ भी टूटा-फूटा या ग़ायब नहीं
t-1-m-at-least-abadc69a = कम से कम 1 MΩ
t-3-5-ma-at-most-bcf24447 = ज़्यादा से ज़्यादा 3.5 mA
t-0-5-ma-at-most-84defd64 = ज़्यादा से ज़्यादा 0.5 mA
each-of-them-seen-5708d2b8 = हर एक होते हुए देखा गया
lid-304cbc86 = ढक्कन
dry-dc25c75e = सूखा

### bench/bill.rs


### bench/gauge.rs


### bench/gauge_scales.rs

spirit-level-5c3c6e8e = स्पिरिट लेवल
keep-fingers-out-of-the-pulleys-f477c42a = उँगलियाँ पुलियों से दूर रखें

### bench/hint.rs


### bench/instrument.rs


### bench/kept.rs

service-test-2912eca8 = सर्विस टेस्ट

### bench/observe/feel.rs


### bench/observe/hands.rs


### bench/observe/listen.rs


### bench/observe/look.rs

the-tap-is-shut-e3ed3ad7 = नल बंद है
the-tap-is-hardly-open-259daf45 = नल नाममात्र खुला है
the-supply-hose-is-kinked-behind-f07fe548 = सप्लाई होज़ मशीन के पीछे मुड़ा हुआ है

### bench/observe/look_below.rs

the-air-hose-has-a-kink-e6ff9d75 = एयर होज़ में मोड़ है
the-transport-pieces-are-still-b126116f = ट्रांसपोर्ट की रोक अब भी लगी है

### bench/observe/mod.rs


### bench/observe/surroundings.rs


### bench/observe/wires.rs


### bench/protection.rs


### bench/safety/closing.rs


### bench/safety/handling.rs


### bench/safety/isolation.rs


### bench/safety/measuring.rs


### bench/safety/motion.rs


### bench/safety/power.rs


### bench/safety/water.rs


### bench/scenario.rs


### bench/shock.rs


### bench/signature/mod.rs


### bench/signature/values.rs


### bench/signature/wash.rs

basket-stops-after-the-lid-is-099252e7 = ढक्कन खुलने के बाद बास्केट का रुकना

### bench/visit.rs


### bench/words.rs

refit-7c3aa3df = दोबारा लगाना

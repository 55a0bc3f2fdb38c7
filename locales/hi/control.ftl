### control/alarms.rs

fills-too-slowly-e573b5f3 = पानी बहुत धीरे भर रहा है
drains-too-slowly-b2077386 = पानी बहुत धीरे निकल रहा है
basket-keeps-swinging-5c61cf59 = बास्केट बार-बार झूल रही है
lid-is-open-2b7f5c4a = ढक्कन खुला है
water-level-reading-not-a6b1a214 = पानी के लेवल की रीडिंग मानने लायक नहीं
overflow-danger-e2727eca = पानी छलकने का ख़तरा
water-keeps-leaving-27291b4a = पानी निकलता जा रहा है
supply-voltage-out-of-range-d6631034 = सप्लाई वोल्टेज सीमा से बाहर

### control/display.rs

starts-later-22f573f6 = बाद में शुरू होगी
filling-dd7b3060 = भराई
washing-1f3a6242 = धुलाई
soaking-d4a09fed = भिगो रही है
draining-b3a8f767 = पानी निकल रहा है
spinning-8bf9cbcb = स्पिन हो रही है
stopping-3c1ab6c9 = रुक रही है
spreading-the-load-621347af = कपड़े फैलाए जा रहे हैं
close-the-lid-037a3c41 = ढक्कन बंद करें
paused-de281feb = रुकी हुई
waiting-for-the-supply-0638fbb7 = सप्लाई का इंतज़ार
power-was-off-press-start-to-go-c67aa023 = बिजली चली गई थी: आगे बढ़ने के लिए स्टार्ट दबाएँ
finished-a7b2cec3 = पूरा हो गया
service-test-15b58d48 = सर्विस टेस्ट
drain-the-tub-first-b426fea3 = पहले टब ख़ाली करें

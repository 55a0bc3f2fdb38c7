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

filling-dd7b3060 = भराई
washing-1f3a6242 = धुलाई

### drawing/outside.rs

# lettering of a key
program-85941db4 = प्रोग्राम
# lettering of a key: water level
water-a601fbc0 = पानी
# lettering of a key
start-d622a7f8 = स्टार्ट
# lettering of a switch, its two sides
off-on-fae7ac37 = ऑफ़ ऑन
# lettering of a key
on-off-d864a6cb = ऑन/ऑफ़

### drawing/wiring/layout_n.rs

line-side-27b56f9e = फ़ेज़ साइड
neutral-side-80547da3 = न्यूट्रल साइड
t-5-v-side-7e86c275 = 5 V साइड
filter-on-the-board-a4057261 = फ़िल्टर, बोर्ड पर
isolated-from-the-mains-e05c0b5f = मेन्स से अलग
socket-9012766c = सॉकेट
plug-b0ada6f9 = प्लग

### drawing/wiring/layout_p.rs

mains-filter-36da325d = मेन्स फ़िल्टर
at-mains-potential-2e63aa10 = मेन्स पोटेंशियल पर

### drawing/wiring/symbols.rs

part-which-c7cbb5f7 = { $part }, { $which }

### drawing/outside.rs


### drawing/wiring/layout_n.rs

socket-9012766c = सॉकेट

### drawing/wiring/layout_p.rs

mains-filter-36da325d = मेन्स फ़िल्टर

### drawing/wiring/symbols.rs


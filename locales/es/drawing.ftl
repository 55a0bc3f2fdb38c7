### drawing/outside.rs


### drawing/wiring/layout_n.rs

socket-9012766c = toma de corriente

### drawing/wiring/layout_p.rs

mains-filter-36da325d = filtro de red

### drawing/wiring/symbols.rs


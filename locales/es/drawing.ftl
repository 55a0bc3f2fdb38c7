### drawing/outside.rs

# lettering of a key
program-85941db4 = programa
# lettering of a key: water level
water-a601fbc0 = agua
# lettering of a key
start-d622a7f8 = inicio
# lettering of a switch, its two sides
off-on-fae7ac37 = apag. enc.
# lettering of a key
on-off-d864a6cb = enc./apag.

### drawing/wiring/layout_n.rs

line-side-27b56f9e = lado de fase
neutral-side-80547da3 = lado de neutro
t-5-v-side-7e86c275 = lado de 5 V
filter-on-the-board-a4057261 = filtro, en la placa
isolated-from-the-mains-e05c0b5f = aislado de la red
socket-9012766c = toma de corriente
plug-b0ada6f9 = clavija

### drawing/wiring/layout_p.rs

mains-filter-36da325d = filtro de red
at-mains-potential-2e63aa10 = a potencial de la red

### drawing/wiring/symbols.rs

part-which-c7cbb5f7 = { $part }, { $which }

### drawing/outside.rs

# lettering of a key
program-85941db4 = program
# lettering of a key: water level
water-a601fbc0 = water
# lettering of a key
start-d622a7f8 = start
# lettering of a switch, its two sides
off-on-fae7ac37 = off on
# lettering of a key
on-off-d864a6cb = on/off

### drawing/wiring/layout_n.rs

line-side-27b56f9e = line side
neutral-side-80547da3 = neutral side
t-5-v-side-7e86c275 = 5 V side
filter-on-the-board-a4057261 = filter, on the board
isolated-from-the-mains-e05c0b5f = isolated from the mains
socket-9012766c = socket
plug-b0ada6f9 = plug

### drawing/wiring/layout_p.rs

mains-filter-36da325d = mains filter
at-mains-potential-2e63aa10 = at mains potential

### drawing/wiring/symbols.rs

part-which-c7cbb5f7 = { $part }, { $which }

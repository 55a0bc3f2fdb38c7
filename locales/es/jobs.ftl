### bangs_like_a_drum.json

it-bangs-like-a-drum-5f74cc63 = Golpea como un bombo
suspension-and-level-06c24fbf = suspensión y nivelación
more-than-one-cause-bcd2d674 = más de una causa
ms-achterberg-097dcb32 = Sra. Achterberg
houseboat-laundry-in-the-bow-43b6d1a2 = casa flotante, lavadero en la proa
laughs-then-worries-ba54a515 = se ríe, luego se preocupa
when-it-spins-the-whole-boat-e2eceef8 = Cuando centrifuga, se entera todo el barco. Se sacude entera, golpea el costado, se para y lo intenta otra vez más despacio, y la ropa sale chorreando.
the-boat-lies-a-little-down-by-abf4c776 = El barco está un poco hundido de proa. Gotas de aceite en el fondo del gabinete.
every-spin-3e012d66 = En cada centrifugado.
three-kilos-well-spread-i-have-4b56858e = Tres kilos, bien repartidos, lo he probado todo.
bang-bang-bang-76eab467 = Pum, pum, pum.
shore-power-never-trips-52ac6abf = Corriente del muelle, no salta nunca.
the-dial-goes-on-9fc1ea41 = El dial sigue avanzando.
it-was-always-lively-7fa67a03 = Siempre fue muy movida.
since-the-winter-it-is-wild-we-d2a83979 = Desde el invierno está desatada. También hemos cambiado de sitio el lastre.
yes-e981313a = Sí.
when-the-spin-begins-39c4ba22 = Cuando empieza el centrifugado.
my-friend-greased-it-eea50aa5 = Mi amigo la engrasó.
the-four-rods-with-the-springs-c26ce2d3 = Las cuatro varillas con los resortes. Rechinaban, así que las aceitó. Con generosidad.

### bath_before_rinse.json

it-stays-in-its-bath-water-4c0fae9b = Se queda en el agua del baño
timer-machines-44410b64 = máquinas con programador
follow-the-supply-7038e61a = seguir la alimentación
mrs-bauermann-9468c3f6 = Sra. Bauermann
farmhouse-washhouse-across-the-53a694be = casa de campo, lavadero al otro lado del patio
practical-has-sleeves-rolled-up-01e2056e = práctica, con las mangas remangadas
it-washes-as-it-always-has-then-836a592d = Lava como siempre ha lavado. Luego llega el punto del dial en que el agua debería irse, y no se va nada. Se queda ahí. Llevo una semana sacándola a cazos.
whitewashed-room-stone-floor-6cc88137 = Cuarto encalado, suelo de piedra con sumidero. Un cazo cuelga de la máquina.
every-time-72d76ef9 = Todas las veces.
overalls-dda53f7f = Monos de trabajo.
quiet-the-whirr-below-that-used-1cbf9aba = Silencio. El ronroneo de abajo, que antes se oía ahí, ya no se oye.
the-dial-creeps-to-the-end-of-2636bee9 = El dial llega despacito hasta el final del lavado y ahí se queda quieto.
a-week-a10c6352 = Una semana.
yes-our-own-well-3bae2838 = Sí, de pozo propio.
when-the-washing-is-over-09614089 = Cuando ha terminado de lavar.
my-husband-oiled-the-lid-that-is-cd8d47bb = Mi marido aceitó la tapa. Eso es todo.

### bites_bare_feet.json

it-bites-me-when-i-touch-it-with-aa3296c6 = Me muerde cuando la toco descalza
insulation-and-leakage-1e62399c = aislamiento y corriente de fuga
house-and-supply-ef9faa35 = casa y red
mrs-delgado-7b436617 = Sra. Delgado
old-house-by-the-river-ground-323d8f9b = casa antigua junto al río, planta baja
frightened-293e41c7 = asustada
it-bites-when-i-stand-there-with-94e16e86 = ¡Muerde! Cuando estoy ahí descalza y toco la tapa, me hormiguea hasta arriba del brazo. Los niños ya no se le pueden acercar.
stone-floor-damp-in-winter-new-05c1e895 = Suelo de piedra, húmedo en invierno. Tomas de corriente nuevas en una pared vieja. Dos niños pequeños en la casa.
in-the-kitchen-on-the-stone-c0cab8db = En la cocina, sobre el suelo de piedra. Mi hermana puede ayudar. Los pequeños andan corriendo por ahí, yo sola no puedo tenerlos fuera.
with-shoes-i-feel-nothing-7926d2fb = Con zapatos no siento nada.
nothing-in-it-d2604bc0 = No tiene nada dentro.
no-breaker-has-ever-dropped-08f826a6 = Nunca ha saltado ningún interruptor de la casa.
there-is-only-one-old-breaker-2f4db39c = Solo hay un interruptor viejo, con fusibles de cerámica al lado. Botón de prueba no conozco ninguno.
it-works-quite-normally-10a313d6 = Funciona con toda normalidad.
since-we-moved-in-in-april-7cd8ac96 = Desde que nos mudamos aquí, en abril.
in-the-old-flat-never-it-is-the-9452e8b0 = En el apartamento de antes, nunca. Es la misma máquina.
always-when-it-is-plugged-in-it-7c60cb1b = Siempre que está enchufada. Ni siquiera hace falta que esté funcionando.
nobody-has-touched-the-machine-5c65a0ec = Nadie ha tocado la máquina.
the-house-the-landlord-had-new-84d05b28 = ¿La casa? El dueño mandó poner tomas de corriente nuevas antes de que llegáramos. Se las puso su cuñado.

### changes_its_mind.json

it-changes-its-mind-and-never-b112456f = Cambia de opinión y no avisa nunca
board-or-part-9a8433fd = placa o componente
mr-lindgren-19c6cf71 = Sr. Lindgren
retirement-home-his-own-small-7798ad24 = residencia de mayores, su propia cocinita
courteous-hard-of-hearing-caec0546 = cortés, duro de oído
it-jumps-from-one-program-to-the-bfd95fe3 = Salta sola de un programa al siguiente, y cuando consigo atrapar uno, no empieza. Y ya nunca me avisa cuando ha terminado, o será que tengo el oído peor de lo que pensaba.
a-brown-edge-under-one-of-the-3dc6c152 = Un cerco marrón debajo de una de las teclas. El vecino confirma que la máquina lleva semanas muda.
two-shirts-26dd6f4c = Dos camisas.
that-is-just-it-nothing-d639f1cc = Eso es justamente. Nada.
one-program-after-the-other-310c8dae = Un programa detrás de otro.
since-i-had-the-coffee-accident-ce7fd595 = Desde que tuve el accidente con el café.
it-was-a-full-cup-i-wiped-it-off-e1750f21 = Era una taza llena. La limpié enseguida.
coffee-a-little-e5dfa3b2 = A café, un poco.
as-soon-as-i-switch-it-on-14b8a397 = En cuanto la enciendo.
nobody-183b9df0 = Nadie.

### clicks_and_stirs_nothing.json

it-whirls-below-and-nothing-d61d30e0 = Abajo gira y arriba no se mueve nada
belt-and-drive-23092041 = correa y transmisión
mr-tavares-d4e1bd5a = Sr. Tavares
barber-s-shop-back-room-25d1c6c3 = barbería, trastienda
chatty-3afc649c = parlanchín
i-hear-it-working-away-e6a5e63b = La oigo trabajar con ganas ahí abajo, y las toallas están tumbadas como gatos al sol. Apenas se mueven. Salen igual de grises que entraron.
back-room-with-a-mirror-and-a-57508d5b = Trastienda con un espejo y una radio. Baldosas a nivel.
yes-the-spin-is-fine-fb34737f = Sí. El centrifugado va bien.
towels-a-lot-of-them-i-admit-29a6455c = Toallas. Muchas, lo reconozco.
it-clicks-now-and-then-and-runs-55d23459 = De vez en cuando da un clic, y por abajo corre deprisa.
the-dial-goes-through-as-always-3a5cf582 = El dial hace todo su recorrido, como siempre.
a-few-weeks-it-skipped-at-first-42786802 = Unas semanas. Al principio daba saltos, con un clic.
in-the-wash-d7e021de = En el lavado.
no-one-305664d8 = Nadie.

### creeps_and_tears_sheets.json

the-drum-creeps-and-the-sheets-a98391cd = El tambor se va girando y las sábanas salen rotas
clutch-and-brake-4adbe7ae = embrague y freno
price-and-worth-082dd53f = precio y si merece la pena
mrs-thorvald-8e68ca09 = Sra. Thorvald
guest-house-with-six-rooms-52a7b72f = casa de huéspedes con seis habitaciones, lavadero en el sótano
businesslike-short-of-time-8e9bc288 = va al grano, con poco tiempo
my-sheets-come-out-torn-and-9e48d09a = Las sábanas me salen rotas y anudadas como cuerdas. Cuando miro por la tapa, el tambor entero se va girando mientras el plato del fondo lava. Debería estar quieto, ¿no?
a-second-machine-of-the-same-701c7d80 = Al lado hay otra máquina de la misma marca que lava bien. Suelo seco, sitio para tumbar una máquina.
every-load-62ab137a = En cada carga.
double-sheets-as-always-b4f48ab5 = Sábanas dobles, como siempre.
no-new-noise-that-i-would-notice-2b98daab = Ningún ruido nuevo que se distinga por encima de los otros.
nothing-b8d0f14c = Nada.
since-the-season-began-6653fdec = Desde que empezó la temporada.
it-has-done-four-or-five-loads-a-7ee82614 = Lleva tres años haciendo cuatro o cinco cargas al día.
in-the-wash-spinning-is-fine-4dccfd96 = En el lavado. Centrifugar, centrifuga bien.
my-nephew-changed-the-pulsator-3c251be5 = Mi sobrino cambió el impulsor en invierno, el viejo estaba agrietado.
he-took-out-the-big-bolt-in-the-b9c8daa7 = Sacó el perno grande del centro y lo volvió a poner. Nada más, dice.

### dark_panel.json

the-panel-is-dark-acd2ea82 = El panel está apagado
why-did-it-fail-1ef9ae6b = por qué falló
mr-silva-4500ac3b = Sr. Silva
first-floor-flat-for-rent-4285608e = primer piso, apartamento de alquiler
landlord-on-the-telephone-tenant-8357af93 = el dueño al teléfono, la inquilina en casa
my-tenant-says-the-machine-is-95d6b643 = Mi inquilina dice que la máquina está muerta. Es una persona cuidadosa. Quiero saber qué está roto antes de que cambie usted nada.
the-tenant-lets-you-in-and-must-95ed3695 = La inquilina le abre la puerta y tiene que irse dentro de una hora. El permiso para reparar lo da el dueño por teléfono.
dead-is-dead-19f9f3b5 = Muerta es muerta.
empty-2c26c8e0 = Vacía.
not-even-the-click-it-makes-when-f41bc2f0 = Ni siquiera el clic que hace al despertar.
the-other-sockets-work-ed6bc4d1 = Las otras tomas de corriente funcionan.
the-breaker-was-on-she-tried-a-e135636c = El interruptor de la casa estaba subido; ella probó una lámpara en la misma toma: enciende.
nothing-no-lamp-7cc8ca33 = Nada. Ninguna luz.
since-friday-49fdbe96 = Desde el viernes.
the-tenant-says-it-smelt-warm-9c86bbe1 = La inquilina dice que el jueves olía a caliente detrás del panel, después de dos lavados seguidos.
it-was-dead-in-the-morning-in-f17b07c7 = Por la mañana estaba muerta. Por la noche había lavado.
not-while-i-have-owned-it-b3a4e7ae = Desde que es mía, no.

### dead_after_a_buzz.json

it-buzzed-at-the-end-and-then-96e62b25 = Al final zumbó fuerte y luego se quedó muerta
mrs-castellane-brooks-ad19b008 = Sra. Castellane-Brooks
duplex-shared-laundry-room-1c596242 = casa de dos viviendas, lavadero compartido
neighbours-are-waiting-cc7aed7c = los vecinos están esperando
it-was-draining-it-buzzed-louder-b70586e9 = Estaba desaguando, zumbó más fuerte que de costumbre durante un rato y luego se apagó. Ni luz ni nada. La usan las dos familias, así que hay cola.
a-sheet-for-signing-up-hangs-on-e0af010a = En la puerta cuelga una hoja para apuntarse, con muchos tachones.
it-is-dead-now-7f44c0f4 = Ahora está muerta.
mixed-half-full-1dad3df4 = Ropa variada, media carga.
it-used-to-buzz-loudly-when-37e5ba23 = Antes zumbaba fuerte al bombear. Ahora nada.
the-breaker-held-the-dryer-on-d091a479 = El interruptor de la casa aguantó. La secadora, que está en el mismo circuito, funciona.
dark-72f57611 = Apagado.
yesterday-noon-the-loud-buzz-for-0dd1e959 = Ayer al mediodía. El zumbido fuerte, un par de semanas.
a-bit-of-hot-plastic-down-low-6665a7b5 = Un poco a plástico caliente, por abajo, ayer.
it-went-while-it-was-pumping-out-d3f08a8b = Se fue mientras bombeaba el agua.

### dead_after_the_storm.json

dead-since-the-thunderstorm-d88fabc5 = Muerta desde la tormenta
mrs-raharjo-695f5c60 = Sra. Raharjo
last-house-on-the-hill-f99f797c = última casa de la colina
calm-has-candles-ready-20c646af = tranquila, tiene velas preparadas
there-was-a-bang-in-the-storm-33e0bf11 = Hubo un estampido en la tormenta y se fueron todas las luces. Las luces volvieron, la lavadora no. Ni luz ni ruido.
the-neighbour-s-router-and-the-ff290303 = El rúter y el timbre del vecino también están muertos.
still-in-it-half-washed-11846a08 = Sigue dentro, a medio lavar.
the-breaker-dropped-that-night-i-b50d33e9 = El interruptor de la casa saltó esa noche. Lo volví a subir y ahí sigue. La radio, en la misma toma, suena.
since-the-storm-on-tuesday-night-823d7c55 = Desde la tormenta del martes por la noche.
a-little-burnt-on-tuesday-f7ac5a19 = Un poco a quemado, el martes.
it-came-from-the-top-behind-the-713c1b23 = Venía de arriba, de detrás del panel.
it-does-not-start-at-all-f3633078 = No arranca de ninguna manera.

### dial_stands_still.json

it-washes-on-and-on-e9046c86 = Lava y lava sin parar
mr-osei-57db91de = Sr. Osei
boarding-house-laundry-room-604b9721 = pensión, lavadero
good-humoured-a1923d1e = de buen humor
it-washes-and-washes-i-went-to-44fea6ff = Lava y lava. Fui al mercado, volví, y seguía lavando. Las camisas, muy limpias, pero las necesito hoy.
plenty-of-room-the-machine-is-77b3a178 = Sitio de sobra. La máquina hace falta todos los días; se acuerda de antemano una segunda visita antes de dos días si hay que pedir un repuesto.
if-i-turn-the-dial-by-hand-to-b06d2aed = Si giro el dial a mano hasta el desagüe, desagua, y si lo sigo girando, centrifuga. Pero sola no avanza.
shirts-three-kilos-a6f53524 = Camisas, tres kilos.
it-sounds-as-always-063896dd = Suena como siempre.
the-little-ticking-in-the-panel-065f81fc = El tictac pequeñito del panel ya no se oye.
no-trouble-be213051 = Ningún problema.
it-has-no-lamps-only-the-dial-8c8f6bbd = No tiene luces, solo el dial. El dial está quieto.
since-wednesday-404978c5 = Desde el miércoles.
fills-well-ae90359f = Llena bien.
in-the-wash-it-never-gets-to-the-0f2068d0 = En el lavado. No llega nunca al desagüe.
no-it-is-an-honest-old-machine-cd235cab = No, es una máquina vieja y honrada.

### drinks_and_slaps_over.json

it-drinks-water-and-slaps-it-on-115746a9 = Bebe agua y la echa al suelo
intermittent-faults-cd5108b9 = averías intermitentes
mrs-ferreira-e5bdc2d3 = Sra. Ferreira
ground-floor-one-step-down-to-fba789e8 = planta baja, un escalón hacia el patio
worried-about-the-bill-7958d516 = preocupada por la factura
it-drinks-the-water-bill-has-0a9710d4 = ¡Bebe! El recibo del agua se ha duplicado. Llena y lava, y luego llena un poquito más y un poquito más, y cuando toca centrifugar todavía tiene agua dentro y la lanza por encima a las baldosas.
tiled-floor-with-a-gully-in-the-5b306d2b = Suelo de baldosas con un sumidero en la esquina. Hay una fregona a mano.
every-wash-a2266027 = En cada lavado.
bed-sheets-and-the-boys-football-9035c03a = Sábanas y las cosas de fútbol de los chicos.
only-the-water-running-in-when-1dbd10d2 = Solo el agua entrando cuando no debería.
it-never-complains-it-just-goes-a65c41a6 = No protesta nunca, simplemente sigue.
since-about-the-rainy-season-it-4c8dd7d2 = Más o menos desde la época de lluvias. Fue empeorando poco a poco.
a-wet-floor-that-is-all-clean-c8d01c3d = A suelo mojado, nada más. Agua limpia con jabón.
yes-and-strong-ca0cec7a = Sí, y con fuerza.
all-the-time-a-bit-more-and-a-d1f69119 = Todo el rato, un poco más y un poco más.
if-i-stop-it-half-way-and-come-ecc53c2b = Si la paro a la mitad y vuelvo luego, toma agua otra vez en cuanto sigue.
there-was-a-man-who-sprayed-532a72dd = Vino un hombre a fumigar contra las cucarachas; puede que la moviera.

### drips_and_slips.json

it-leaves-a-damp-patch-and-slips-9c6fdd8f = Deja una mancha de humedad y resbala
water-in-d322508f = entrada de agua
mr-abdurahman-3adb72a7 = Sr. Abdurahman
carpet-washer-s-yard-f05a911c = patio de un lavadero de alfombras
direct-5fe7049c = directo
two-things-there-is-a-damp-patch-f970bd1d = Dos cosas. Hay una mancha de humedad debajo después de cada lavado. Y ya no tiene fuerza, resbala cuando debería girar.
concrete-yard-under-a-roof-a-433e32e8 = Patio de cemento bajo techo. Una mancha redonda y oscura en el suelo, debajo del centro de la máquina.
runners-and-mats-3465fdae = Alfombras de pasillo y esteras.
it-hums-and-slides-a-bit-of-a-b7879c14 = Zumba y resbala. Un poco de chirrido.
first-the-patch-then-the-sliding-e76ff659 = Primero la mancha, luego el resbalar. Un mes entre lo uno y lo otro.
rubber-sometimes-cdee918f = A goma, a veces.
the-damp-patch-after-the-wash-92a7f22a = La mancha, después del lavado. El resbalar, todo el tiempo.

### empties_and_stops_there.json

it-empties-and-stops-there-ab1f1b0b = Se vacía y ahí se queda
dead-test-ef41ac25 = prueba sin voltaje
ask-and-listen-c9e66b3e = preguntar y escuchar
mr-ionescu-c8ecf9d4 = Sr. Ionescu
block-of-flats-eighth-floor-lift-c69a618a = bloque de apartamentos, octavo piso, ascensor averiado
friendly-out-of-breath-265d225b = amable, sin aliento
the-water-goes-out-and-then-b714aacf = El agua sale y entonces tendría que venir el centrifugado, y no viene nada. El dial gira, la cosa de la bomba ronronea, el tambor está quieto.
a-dent-in-the-top-edge-of-the-16c1198b = Una abolladura en el borde superior del gabinete; la tapa cierra bien.
sweaters-39bfdc2d = Suéteres.
only-the-whirr-from-below-d12f1e8f = Solo el ronroneo de abajo.
the-dial-goes-on-to-the-end-fe8ce346 = El dial sigue hasta el final.
since-it-came-back-from-my-2f533d81 = Desde que volvió de casa de mi hija.
at-each-spin-24bf2f43 = En cada centrifugado.
no-repair-50e91df7 = Ninguna reparación.
four-men-carried-it-up-one-of-f2efd607 = La subieron cuatro hombres. Uno se cayó con ella en el sexto. Después de eso la parte de arriba quedó un poco abierta y la cerraron a golpes.

### everything_in_one_go.json

it-cannot-manage-the-blankets-91ad145f = No puede con las mantas
teach-the-customer-3f4aca13 = enseñar al cliente
no-part-needed-fcd2d214 = sin pieza de repuesto
mr-and-mrs-petrossian-73c5cf69 = Sr. y Sra. Petrossian
guest-house-at-the-pass-90228964 = casa de huéspedes en el puerto de montaña
hard-working-open-to-advice-9d96fc19 = trabajadores, abiertos a consejos
we-do-the-blankets-in-one-go-now-ad2ed7e3 = Ahora lavamos las mantas todas de una vez, porque la temporada es corta. Se queja, gira un palmo, huele y descansa. ¿Será el motor?
a-mountain-of-woollen-blankets-21c2f7a1 = Una montaña de mantas de lana en el banco; el tambor está atiborrado hasta el borde.
with-the-blankets-yes-75a1e891 = Con las mantas, sí.
blankets-32853ebd = Mantas.
how-many-as-many-as-go-in-nine-90938825 = ¿Cuántas? Las que quepan. Nueve, diez kilos, quizá. Anna se sube encima.
it-groans-677b5ab0 = Se queja.
since-we-began-with-the-blankets-6d53eda5 = Desde que empezamos con las mantas, la semana pasada.
warm-bf9e3ac2 = A caliente.

### fills_and_never_gets_full.json

it-fills-and-never-gets-full-0c165ec3 = Llena y no se llena nunca
look-before-opening-ca9a0aad = mirar antes de abrir
cure-without-a-part-1ceeaa9c = arreglo sin pieza de repuesto
ms-tallgrass-39a1e60e = Sra. Tallgrass
garage-conversion-level-with-the-d6d3cf53 = garaje reformado, al nivel del patio
efficient-4f3ae9f4 = eficiente
it-fills-for-ever-i-can-hear-it-14382934 = Llena sin parar nunca. Oigo entrar el agua, y cuando miro, hay un poco de agua dentro, y vuelvo a mirar y ya no. El patio de fuera está verde que da gusto.
the-drain-hose-goes-through-a-a566677f = La manguera de desagüe pasa por un agujero a ras de suelo y termina fuera, en la hierba, más abajo que la máquina.
kids-clothes-6f244f59 = Ropa de niños.
water-running-in-and-if-you-fc0980d6 = Agua corriendo. Hacia dentro y, si se pone uno fuera, hacia fuera.
its-own-outlet-ab8903e0 = Una toma de corriente para ella sola.
filling-and-then-that-it-fills-be22fd2f = «Llenando», y después que llena demasiado despacio.
since-we-put-it-out-here-in-the-2fbd5262 = Desde que la pusimos aquí fuera, en el garaje, en mayo.
no-and-the-floor-is-dry-029499e3 = No, y el suelo está seco.
full-blast-ed6ed928 = A todo chorro.
while-it-fills-b7a11a4d = Mientras llena.
we-moved-it-ourselves-my-wife-46797e93 = La trasladamos nosotros. Mi mujer sacó la manguera por la pared.

### forgets_what_it_was_doing.json

it-forgets-what-it-was-doing-83e8bdf7 = Se olvida de lo que estaba haciendo
connectors-c91e2539 = conectores
mr-castellanos-d9d6b3ed = Sr. Castellanos
bungalow-at-the-end-of-the-bus-f6195761 = casa de una planta al final de la línea de autobús
talkative-f667bbb8 = hablador
half-way-through-a-wash-it-goes-2b6a92ff = A mitad de un lavado se queda a oscuras, así sin más, y cuando hurgo un poco por detrás vuelve y quiere que pulse inicio. Es como vivir con mi hermano.
fresh-paint-the-lead-comes-out-84aff603 = Pintura reciente. El cable sale de debajo de una pata de la máquina con un trozo aplastado.
it-comes-and-goes-0eab900c = Va y viene.
lean-on-it-and-it-goes-sometimes-7dafcd71 = Si uno se apoya en ella, se va. A veces.
the-usual-67791174 = Lo de siempre.
a-faint-crackle-if-the-kitchen-dc3fb005 = Un leve crepitar, si la cocina está en silencio.
no-breaker-has-gone-the-lamp-on-b9013b9a = No ha saltado ningún interruptor de la casa. La lámpara de la misma toma sigue encendida.
black-then-power-was-off-b9bb0919 = Negro. Después, «Se cortó la corriente».
since-i-pulled-it-out-to-paint-24d2d727 = Desde que la aparté para pintar la pared.
any-time-washing-rinsing-it-does-46eb98a1 = En cualquier momento. Lavando, enjuagando, da igual.
i-moved-it-myself-for-the-a25fa85c = La moví yo mismo para pintar. Puede que estuviera una tarde apoyada encima de su propio cable.

### fuller_and_splashing.json

too-full-and-it-splashes-over-66fd3739 = Demasiado llena, y salpica por encima por dentro
mr-ferreira-lund-b46f4b6e = Sr. Ferreira-Lund
converted-barn-upstairs-bath-2b3cc40e = granero reformado, baño de arriba
careful-has-put-a-tray-under-it-b1b66180 = cuidadoso, le ha puesto una bandeja debajo
it-fills-higher-than-it-used-to-df1f3988 = Se llena más que antes, y cuando toma ritmo, el agua salta por encima del borde interior. Tengo una bandeja debajo, así que todavía no ha pasado nada por el techo.
a-metal-tray-under-the-machine-d7fb8fd9 = Una bandeja de metal debajo de la máquina, hoy seca. Debajo, techo de tablas.
four-of-us-so-plenty-bbbf40d6 = Somos cuatro, así que mucha.
it-slaps-ba3e646b = Da chapoteos.
the-filling-crept-up-over-the-58b23dda = El llenado fue subiendo a lo largo del año. Los chapoteos, desde que miré dentro.
in-the-wash-when-it-is-full-6667b302 = En el lavado, cuando está llena.
i-looked-in-from-above-40c50c18 = Miré dentro por arriba.
i-had-the-plastic-ring-off-the-8f61457b = Le quité el aro de plástico a la cuba para sacar una cuchara. Volvió a encajar a presión. Casi todo.

### fuller_than_ever.json

it-is-fuller-than-it-ever-was-deeeed27 = Está más llena que nunca
mr-and-mrs-kovalenko-87060aeb = Sr. y Sra. Kovalenko
flat-over-the-pharmacy-f9f2fb24 = apartamento encima de la farmacia
she-worries-he-reassures-her-f89ddc15 = ella se preocupa, él la tranquiliza
it-fills-right-up-to-where-the-8a22d7b8 = Se llena justo hasta donde están los agujeritos. Mi marido dice que eso es bueno para la ropa, pero yo tengo que pensar en la farmacia de abajo.
a-carpet-in-the-passage-the-a8cdb0a2 = Una alfombra en el pasillo. El techo de la farmacia se ha pintado este año.
for-two-people-dea62299 = Para dos personas.
it-knocks-a-bit-when-it-turns-68925d25 = Golpea un poco cuando gira de un lado a otro, con tanta agua.
the-dial-starts-late-because-it-257414bc = El dial arranca tarde, porque tarda mucho en llenar.
it-has-grown-fuller-from-month-2c97847c = Se ha ido llenando más de un mes a otro.
dry-so-far-89729941 = Seco, hasta ahora.
every-time-it-fills-80bc650a = Cada vez que llena.
the-old-fitter-died-nobody-since-e4d619f4 = El técnico de antes murió. Desde entonces, nadie.

### gives_up_at_once.json

it-gives-up-at-once-since-the-53ebf3bb = Se rinde enseguida desde la visita
mrs-nakamura-bell-1bb2d7d3 = Sra. Nakamura-Bell
town-house-closet-laundry-6f573904 = casa adosada de ciudad, lavadero en un armario
brisk-ecb0730a = enérgica
a-young-man-came-about-a-rattle-8891b0e0 = Vino un joven por un traqueteo y apretó algo debajo de la parte de arriba. El traqueteo se ha ido. Todo lo demás también: pita a los pocos segundos y dice que algo no es plausible.
a-closet-with-folding-doors-good-1a7670ea = Un armario con puertas plegables, buena luz. Dos de los tornillos de arriba están brillantes.
a-bed-set-0db8ad93 = Un juego de cama.
just-the-beep-5b5f86d2 = Solo el pitido.
water-level-reading-not-9d7aad21 = «Lectura del nivel de agua no plausible».
since-the-rattle-man-this-9c455d8a = Desde el del traqueteo, esta mañana.
a-few-seconds-after-start-380bb281 = Unos segundos después de darle a inicio.
the-rattle-man-835300b8 = El del traqueteo.
he-was-very-quick-he-had-to-be-1ea7e406 = Fue muy rápido. Lo esperaban en otro sitio.

### goes_quiet_in_the_middle.json

it-goes-quiet-in-the-middle-ec029893 = Se queda callada a la mitad
mr-ozturk-hale-1c29fc7a = Sr. Ozturk-Hale
first-apartment-second-floor-81c05245 = primer apartamento propio, segundo piso
anxious-to-do-it-right-63e80f83 = preocupado por hacerlo bien
it-washes-and-after-a-few-cbd240f8 = Lava, y a los pocos minutos se queda totalmente callada, con el agua dentro. Creí que se había roto, así que la apagué y le saqué el agua. Luego volví a hacerlo y pasó lo mismo.
the-instruction-leaflet-is-still-e9cf0b4a = El folleto de instrucciones sigue en su bolsa de plástico, pegado con cinta debajo de la tapa.
yes-at-about-the-same-place-ee687d1e = Sí, más o menos en el mismo punto.
shirts-and-jeans-half-full-a-c1cce2d2 = Camisas y jeans, media carga, una tacita.
none-that-is-what-worries-me-b8e4788d = Ninguno, eso es lo que me preocupa.
it-had-numbers-on-it-that-went-3f034692 = Tenía unos números que iban bajando.
i-turned-it-off-after-two-or-0608db80 = La apagué después de dos o tres minutos de nada.
i-only-got-it-last-week-it-is-ccc18762 = La tengo desde la semana pasada. Es de segunda mano.
after-four-or-five-minutes-of-a7649e1f = Después de cuatro o cinco minutos de lavar.
the-shop-that-sold-it-checked-it-7c2a68b5 = La tienda que la vendió la revisó. Eso dijeron.

### grandmothers_machine.json

it-was-my-grandmother-s-machine-228fd82f = Era la lavadora de mi abuela
worth-of-a-repair-39ed1ba0 = si merece la pena reparar
ms-iyer-7cb3b996 = Sra. Iyer
old-town-house-stone-floor-35281425 = casa antigua de ciudad, suelo de piedra
attached-to-the-machine-fcc541ec = encariñada con la máquina
it-growls-and-grinds-and-the-108dab94 = Gruñe y rechina, y la ropa apenas se mueve. A los pocos minutos se queda callada, y más tarde lo vuelve a intentar. Era de mi abuela. ¿Se puede dejar bien? Yo pagaría un precio justo.
the-plate-at-the-back-says-that-197c2130 = La placa de atrás dice que tiene dieciocho años. Le han sacado brillo.
a-few-dresses-i-no-longer-dare-deda059e = Unos vestidos. Ya no me atrevo a meter más.
it-growls-below-and-when-it-does-1b8247b1 = Gruñe por abajo, y cuando se mueve, rechina.
it-counts-down-as-if-nothing-5f45546d = Va descontando como si no pasara nada.
the-grinding-for-years-one-gets-1c7bef8d = El rechinar, desde hace años; una se acostumbra.
the-standing-still-since-last-038a7b72 = El quedarse parada, desde la semana pasada.
hot-after-a-while-4115ceda = A recalentado, al cabo de un rato.
as-soon-as-it-should-wash-a800de8b = En cuanto tendría que lavar.
never-it-is-eighteen-years-old-536f542a = Nunca. Tiene dieciocho años.

### half_as_strong_since_the_fitter.json

it-hums-and-labours-since-the-a94a822c = Zumba y va forzada desde que vino el técnico
motor-and-capacitor-03ad0def = motor y condensador
mr-baptiste-f75a2fa0 = Sr. Baptiste
semi-detached-house-washroom-845c5240 = casa pareada, lavadero detrás del garaje
precise-keeps-receipts-d255cdd5 = preciso, guarda los recibos
a-man-fitted-a-new-back-panel-c7a89efc = Un hombre puso un panel trasero nuevo porque el viejo traqueteaba. Durante una semana todo fue bien. Ahora zumba, mueve un poco la ropa, huele a caliente y se para. Y mi mujer dice que le da un cosquilleo cuando toca el costado.
a-single-self-cutting-screw-lies-2fab2f9d = Un único tornillo autorroscante está en el estante, al lado del detergente. Suelo de cemento.
each-time-93af93ad = Cada vez.
work-clothes-two-measures-393af841 = Ropa de trabajo. Dos medidas.
a-deep-hum-2e5a0742 = Un zumbido grave.
nothing-has-tripped-0195d96c = No ha saltado nada.
it-ends-as-if-it-had-finished-d3506338 = Acaba como si hubiera terminado, con la ropa mojada dentro.
four-days-the-panel-is-two-weeks-688c4147 = Cuatro días. El panel es de hace dos semanas.
warm-like-a-hair-dryer-no-smoke-63b05f04 = A caliente, como un secador de pelo. Sin humo.
when-it-should-wash-it-hums-5f971b9d = Cuando debería lavar. Zumba, se rinde, y al cuarto de hora lo vuelve a intentar.
the-man-with-the-panel-492f60f5 = El hombre del panel.
he-was-ten-minutes-he-had-one-3d71f034 = Estuvo diez minutos. Le sobró un tornillo y lo dejó en el estante, ahí.

### has_to_be_coaxed_on.json

it-has-to-be-coaxed-to-come-on-988eedf8 = Hay que rogarle para que se encienda
mr-ravindran-62f180a9 = Sr. Ravindran
flat-share-of-three-nurses-b18b6d94 = apartamento compartido de tres enfermeros
tired-after-a-night-shift-0ff6377e = cansado tras el turno de noche
you-press-the-button-and-there-8b959140 = Uno pulsa el botón y hay luz, o no la hay. Luego funciona y de repente se apaga todo. Los tres lo pulsamos cada uno a su manera, y no sirve ninguna.
a-strip-of-tape-beside-the-8ec73f14 = Un trozo de cinta junto al botón dice «¡con fuerza!» con tres letras distintas.
not-always-1f8ef26f = No siempre.
when-one-holds-the-button-in-57b01e35 = Si se mantiene el botón apretado con el pulgar, va mejor.
scrubs-e542d075 = Uniformes de enfermería.
a-small-fizzle-from-the-button-65ff705c = Un pequeño chisporroteo del botón.
no-breaker-the-plug-is-in-the-d62a053c = Ningún interruptor de la casa. La clavija está en la pared, sin alargador.
dark-then-power-was-off-29b46de2 = Apagado. Después, «Se cortó la corriente».
a-few-weeks-83612817 = Unas semanas.
when-switching-on-and-sometimes-d6ecdd16 = Al encender, y a veces a la mitad.
no-it-is-the-landlord-s-bbb1b1d8 = No, es del dueño.

### hot_and_stops.json

it-gets-hot-and-growls-one-way-a49323cc = Se calienta y gruñe hacia un lado
mr-abebe-077f01c5 = Sr. Abebe
workers-hostel-heavily-used-64377626 = albergue de trabajadores, muy usada
sober-keeps-the-books-a8658a5f = serio, lleva las cuentas
it-growls-one-way-hardly-starts-662c935e = Gruñe hacia un lado, apenas arranca hacia el otro, huele a recalentado y después se para media hora. La usan treinta personas. ¿Cuánto cuesta y merece la pena?
the-motor-is-still-too-hot-to-88163692 = El motor sigue demasiado caliente para tocarlo cuando usted llega. Por teléfono se acordó un límite de precio de la mitad de una máquina nueva.
whenever-it-is-full-empty-it-c04aeeaf = Siempre que está llena. Vacía gira, pero gruñe.
work-clothes-always-full-2b95be60 = Ropa de trabajo, siempre llena.
a-growl-then-a-click-then-9386fa4f = Un gruñido, luego un clic, luego silencio. Media hora después, otra vez.
the-fuse-for-the-room-has-held-71faba7f = El fusible del cuarto ha aguantado.
no-alarm-it-only-stands-and-goes-1d9c1af5 = Ninguna alarma, solo se para y sigue más tarde.
tuesday-9f5419ba = El martes.
it-had-been-running-warm-for-4ae95e64 = Llevaba semanas calentándose, dice el portero de noche.
hot-varnish-the-porter-opened-1faf20dc = A barniz caliente. El portero abrió la ventana.
good-c12a17e2 = Buena.
in-the-wash-it-has-never-1a4a721a = En el lavado. Desde el martes no ha terminado ni una carga completa.
your-colleagues-fitted-a-3cc33dda = Sus compañeros le pusieron un condensador el año pasado. Hay una factura.

### hot_since_the_cheap_part.json

hot-and-halting-since-the-cheap-1f92160b = Caliente y a tirones desde la pieza barata
mr-abernathy-diallo-683e37e2 = Sr. Abernathy-Diallo
hobby-farm-pump-shed-149f8113 = granja de recreo, caseta de la bomba
sheepish-9e99763c = avergonzado
it-would-not-start-so-i-put-in-a-1aed8913 = No quería arrancar, así que le puse una pieza nueva comprada por correo. ¡Arrancó! Pero no quiere girar de vuelta hacia el otro lado, se calienta mucho y luego se toma un largo descanso.
a-mail-order-envelope-on-the-8f7ca5fe = Un sobre de venta por correo en el banco. La caseta está seca.
yes-the-first-minutes-are-the-07f2556f = Sí. Los primeros minutos son los mejores.
work-clothes-95e94c62 = Ropa de trabajo.
a-deep-hum-where-it-should-turn-2b2c1db1 = Un zumbido grave donde debería girar de vuelta.
since-i-put-the-part-in-ten-days-92edcc0c = Desde que puse la pieza, diez días.
hot-882dbaae = A recalentado.
i-did-it-myself-a085d3e4 = Lo hice yo mismo.
the-round-can-at-the-back-it-is-6147826a = El bote redondo de atrás. Es del mismo tamaño que el viejo, los puse uno al lado del otro. El viejo lo tiré.

### hums_and_stands.json

it-hums-and-nothing-turns-308139b7 = Zumba y no gira nada
ms-petrov-bf021c27 = Sra. Petrov
fourth-floor-shared-laundry-of-a-1cb0c0b8 = cuarto piso, lavadero común de un edificio pequeño
it-hums-like-a-fridge-and-the-3f469d6a = Zumba como un refrigerador y la ropa no se mueve. Mi hija la empujó con el mango de una cuchara y entonces funcionó. Le dije que nunca más.
the-machine-has-run-just-before-c002889e = La máquina ha estado funcionando justo antes de que usted llegue y puede que siga tibia. Suelo de cemento, buen desagüe.
with-a-push-it-goes-either-way-2ccbc0b9 = Con un empujón va. Hacia cualquier lado, dice.
we-had-taken-everything-out-by-8c64d0f7 = Al final ya lo habíamos sacado todo y seguía solo zumbando.
a-steady-hum-then-after-a-minute-d1012a6c = Un zumbido continuo, luego al minuto se queda callada, y más tarde vuelve a zumbar.
no-the-lamp-above-it-dims-a-9cd7e329 = No. La lámpara de encima baja un poco cuando zumba.
nothing-special-the-minutes-efb240d8 = Nada especial, los minutos van bajando.
it-has-been-lazy-for-months-7c2bdb2d = Lleva meses perezosa. Desde el domingo no arranca en absoluto.
a-little-warm-perhaps-at-the-f8bd5a73 = Un poco a caliente, quizá, por detrás.
water-comes-in-as-always-8f43a4c9 = El agua entra como siempre.
as-soon-as-it-has-filled-and-10e14782 = En cuanto ha llenado y tendría que empezar a lavar.
no-never-it-is-nine-years-old-7999561e = No, nunca. Tiene nueve años.

### hums_and_water_stays.json

it-hums-and-the-water-stays-in-66359797 = Zumba y el agua se queda dentro
ms-whitefeather-67a053eb = Sra. Whitefeather
ranch-house-mud-room-37bc5274 = casa de rancho, cuarto de entrada de servicio
practical-b3e06f70 = práctica
it-hums-the-water-stays-in-and-e47e3476 = Zumba, el agua se queda dentro, y se rinde. La vaciaría yo misma, pero el del teléfono dijo que la dejara para que usted la viera.
the-tub-is-full-when-you-come-a-eb17d43a = La cuba está llena cuando usted llega. Hay un cubo para líquidos y un desagüe en el suelo.
twice-now-94802d1f = Ya van dos veces.
dog-blankets-with-what-was-in-55667a07 = Mantas del perro. Con lo que llevaran dentro, supongo.
a-loud-hum-down-on-one-side-99046bd4 = Un zumbido fuerte, abajo, a un lado.
just-before-there-was-a-rattle-d43bbf7b = Justo antes hubo un traqueteo, como si pasara una piedrecita.
the-breaker-held-869d97e3 = El interruptor de la casa aguantó.
drains-too-slowly-08357f63 = «Desagua demasiado despacio».
since-i-washed-the-dog-blankets-6694cd0b = Desde que lavé las mantas del perro.
wet-dog-otherwise-no-b9edbcf8 = A perro mojado. Aparte de eso, no.
good-from-the-well-beab33e5 = Buena, del pozo.
after-the-wash-when-it-should-972305a5 = Después del lavado, cuando debería bombear el agua fuera.

### hums_quietly_no_wash.json

it-fills-ticks-and-does-not-wash-a8f817aa = Llena, hace tictac y no lava
mr-haile-2188b517 = Sr. Haile
ground-floor-behind-a-tailor-s-e2d6c980 = planta baja, detrás de una sastrería
hopeful-8aef8fca = esperanzado
it-takes-water-as-it-should-then-1dbae90f = Toma agua como debe. Luego la oigo hacer tic, tic, hacia un lado y hacia el otro, pero el plato del tambor no se mueve. Tampoco zumba. Ayer mi amigo le limpió la pelusa, y antes de eso funcionaba, solo que más caliente de lo que a él le gustaba.
the-back-cover-has-been-off-two-159250fc = La cubierta trasera ha estado quitada: dos de sus tornillos son nuevos. Hay una bola de pelusa gris debajo del banco.
trousers-3126d6d6 = Pantalones.
a-ticking-behind-the-panel-7e5c6c02 = Un tictac detrás del panel.
it-counts-down-as-if-all-were-3108131b = Va descontando como si todo estuviera bien.
since-yesterday-55b76ae1 = Desde ayer.
in-the-wash-it-does-not-turn-at-1de69754 = En el lavado. No gira en absoluto.
my-friend-blew-the-fluff-out-74fc962f = Mi amigo le sacó la pelusa a soplidos.
from-the-back-with-his-workshop-bb20fd14 = Por detrás, con el aire de su taller. Tuvo que mover unos cables para llegar al motor, dijo.

### keys_do_nothing.json

the-keys-do-nothing-416c877c = Las teclas no hacen nada
mrs-papadimas-9f9ef419 = Sra. Papadimas
first-floor-two-grandchildren-8515693f = primer piso, dos nietos de visita
apologetic-dd91b90c = se disculpa mucho
it-lights-up-when-i-switch-it-on-8261808e = Se ilumina cuando la enciendo, pero le da igual lo que pulse. Pulso inicio y dice que está lista, y ahí se queda.
a-child-s-drawing-hangs-on-the-9771a68c = Un dibujo infantil cuelga de la máquina. El panel está limpio y seco.
yes-i-have-tried-every-button-9efbed03 = Sí. He probado todos los botones, más de una vez.
a-few-blouses-51c729b1 = Unas blusas.
ready-it-beeps-at-me-6a16494c = «Lista». Me pita.
since-sunday-b912c52f = Desde el domingo.
since-the-little-ones-were-here-9d86d056 = Desde que estuvieron aquí los pequeños, ahora que lo pregunta. Tienen cuatro y seis años y les gustan los botones.
straight-away-59029c2f = Enseguida.

### no_heart_after_a_while.json

it-loses-heart-after-a-while-aee6b7f2 = Al cabo de un rato se desanima
ms-vasquez-okoro-4af1b073 = Sra. Vasquez-Okoro
dog-groomer-s-two-loads-an-hour-1a88bae6 = peluquería canina, dos cargas por hora
precise-keeps-a-log-of-it-eec230bb = precisa, lleva un registro
here-is-my-list-first-load-of-16974f2a = Aquí está mi lista. Primera carga del día: bien. Segunda carga: lava, luego no hace nada durante un rato, luego lava. Tercera carga: no gira en absoluto. Durante el almuerzo se pone buena otra vez.
warm-steamy-room-her-list-is-on-60dc3215 = Cuarto caluroso y con vapor. Su lista está en la pared, en dos colores.
always-in-that-order-dfd18ad2 = Siempre en ese orden.
towels-50b1f66d = Toallas.
the-pump-runs-the-motor-is-a21bf468 = La bomba funciona. El motor está en silencio, ni siquiera zumba.
it-goes-on-counting-052aa3ea = Sigue contando.
the-list-starts-on-the-third-of-11295e79 = La lista empieza el día tres del mes pasado.
wet-dog-that-is-not-the-machine-07e9d395 = A perro mojado. Eso no es la máquina.
when-it-has-worked-for-a-while-69e28a8f = Cuando lleva un rato trabajando.

### no_spin_since_cousin.json

fills-washes-drains-does-not-7322c14f = Llena, lava, desagua, no centrifuga
earlier-repairs-4d24aec1 = reparaciones anteriores
mrs-okafor-d4d9f1c9 = Sra. Okafor
third-floor-no-lift-854e01dc = tercer piso, sin ascensor
a-little-embarrassed-53bdf489 = algo avergonzada
it-fills-and-it-washes-and-the-de1bf1e0 = Llena y lava y el agua sale, pero no centrifuga. La ropa está empapada.
help-can-be-had-the-cousin-lives-fecb7937 = Hay ayuda disponible: el primo vive abajo y está en casa. Suelo de linóleo, resbaladizo cuando está mojado.
the-white-one-that-opens-at-the-9eee0600 = La blanca que se abre por arriba. Unos seis años.
in-the-bathroom-third-floor-5ceb2e9f = En el baño, tercer piso. Alguien podría ayudar a levantarla, sí.
it-fills-it-washes-the-water-58d1ffd4 = Llena, lava, el agua sale. Luego no centrifuga.
bed-sheets-four-kilos-or-so-da8f9507 = Sábanas, unos cuatro kilos.
it-whirrs-when-the-water-goes-78e8231f = Ronronea cuando sale el agua, como siempre. Luego ese gemido.
the-whine-is-the-same-as-when-it-398680ee = El gemido es el mismo que cuando lava.
no-nothing-has-tripped-b6b9c0ef = No, no ha saltado nada.
no-beep-nothing-it-ends-as-if-it-756bb869 = Ni pitido ni nada. Acaba como si hubiera terminado.
three-weeks-1d38de10 = Tres semanas.
yes-good-pressure-1b075a22 = Sí, buena presión.
at-the-spin-you-hear-it-whine-0564dac9 = En el centrifugado. Se la oye gemir ahí abajo, pero el tambor está quieto.
not-really-20045ad9 = En realidad no.
all-right-my-cousin-fitted-the-6ad80ef9 = Está bien. Mi primo montó el motor que tira, el del cable. Es muy hábil con las manos.

### no_water.json

no-water-comes-in-98f56d2b = No entra agua
mrs-adeyemi-0e73eb3b = Sra. Adeyemi
ground-floor-laundry-niche-cebaa00b = planta baja, hueco para la lavadora detrás de la cocina
i-put-the-washing-in-pressed-cda52219 = Metí la ropa, pulsé inicio, y ahí está, sin hacer nada. Oigo un leve zumbido arriba, pero no entra agua.
the-machine-stands-in-a-niche-b4ec920c = La máquina está en un hueco; el grifo está en la pared de detrás, abajo, y se alcanza con el brazo. Baldosas secas.
yes-i-tried-three-times-49bbb505 = Sí, lo intenté tres veces.
towels-about-half-full-and-one-6447352b = Toallas, más o menos media carga, y una medida de detergente.
only-the-hum-up-at-the-back-c9c89787 = Solo el zumbido, arriba, por detrás. Por lo demás, nada.
no-everything-else-is-on-fc0b3af5 = No, todo lo demás está encendido.
after-twenty-minutes-or-so-it-c6f4e737 = A los veinte minutos o así pitó y dijo «Llena demasiado despacio».
since-this-morning-on-saturday-e55db532 = Desde esta mañana. El sábado todavía lavaba.
since-the-plumber-was-here-on-926cd71f = Desde que estuvo aquí el fontanero, el lunes, por el fregadero, ahora que lo pienso.
no-nothing-and-the-floor-is-dry-3f028fac = No, nada, y el suelo está seco.
i-suppose-so-the-kitchen-tap-9344f84d = Supongo que sí. El grifo de la cocina corre bien.
the-one-for-the-machine-it-is-15327292 = ¿El de la máquina? Está ahí abajo, detrás; yo no lo toco nunca.
right-at-the-start-it-never-gets-7cfa12d9 = Justo al principio. No pasa nunca de ahí.
on-the-machine-no-nobody-e39facc9 = ¿En la máquina? No, nadie.
the-plumber-was-behind-it-he-had-2e8e9f46 = El fontanero estuvo detrás, tenía que llegar a los tubos. Pero la máquina no la tocó.

### not_the_wash_that_smells.json

it-smells-when-the-wash-is-on-13260057 = Huele cuando está lavando
mrs-kowalczyk-104add28 = Sra. Kowalczyk
bungalow-utility-room-beside-the-d183c239 = casa de una planta, cuarto de servicio junto a la caldera
tired-in-a-hurry-to-go-out-5594208a = cansada, con prisa por salir
for-two-days-it-has-smelt-in-the-840484ab = Desde hace dos días huele en el lavadero, como a huevos podridos. Mi vecina dice que es la correa. ¿Podría darse prisa? Tengo que salir al mediodía.
a-narrow-room-without-a-window-37da99e9 = Un cuarto estrecho sin ventana. La caldera cuelga de la pared junto a la máquina; su cubierta está en el suelo.
in-the-utility-room-next-to-the-284e391c = En el cuarto de servicio, al lado de la caldera.
it-does-everything-it-only-d81d1487 = Lo hace todo. Solo huele.
it-is-stronger-in-the-morning-44967476 = Es más fuerte por la mañana, con la puerta cerrada toda la noche.
nothing-in-it-now-844ef2ac = Ahora no tiene nada dentro.
no-breaker-no-92d78075 = Ningún interruptor de la casa, no.
nothing-it-washes-as-always-c7ffda99 = Nada. Lava como siempre.
since-tuesday-a214521c = Desde el martes.
the-fitter-was-at-the-boiler-on-27b59d4b = El técnico estuvo con la caldera el lunes.
like-bad-eggs-it-gives-me-a-57381f04 = A huevos podridos. Me da dolor de cabeza.
all-the-time-come-to-think-of-it-ab25e885 = Todo el tiempo, ahora que lo pienso. También cuando no está lavando.
the-machine-nobody-3ec423c8 = La máquina, nadie.

### nothing_at_all.json

nothing-at-all-e3d8b818 = Nada de nada
mr-okonjo-4dd85f86 = Sr. Okonjo
allotment-house-new-lean-to-d80abe21 = casita de huerto, cocina nueva en un cobertizo adosado
i-pull-the-knob-i-turn-it-to-the-66fe446f = Tiro del botón giratorio, lo giro hasta el principio, y nada. Ni clic, ni zumbido, ni agua. En la cocina de antes lavó hasta el día en que la trajimos.
two-sockets-side-by-side-on-the-cf76b9be = Dos tomas de corriente, una al lado de otra, en la pared nueva. En la de la izquierda luce una lámpara, la máquina está en la de la derecha.
nothing-in-it-yet-6ee1f29a = Todavía no tiene nada dentro.
not-a-sound-1b2e9580 = Ni un ruido.
nothing-has-dropped-ffa7d67e = No ha saltado nada.
the-lamp-it-is-on-the-other-c39c145c = ¿La lámpara? Está en la otra toma. Esa va bien.
the-dial-does-not-move-ad000cc7 = El dial no se mueve.
since-we-carried-it-into-the-1f3c2373 = Desde que la trajimos al cobertizo, ayer.
yes-new-pipe-good-pressure-4155c84c = Sí, tubería nueva, buena presión.
it-does-not-even-begin-e449e1b5 = Ni siquiera empieza.
carried-nothing-else-upright-all-a6ae5c49 = Traerla, nada más. Derecha todo el camino.
my-brother-did-the-electrics-in-7dc4cfe2 = La instalación eléctrica de aquí la hizo mi hermano. Ha hecho tres casas.

### one_way_only_and_hot.json

one-way-only-and-hot-db8df720 = Solo hacia un lado, y caliente
mr-sepulveda-94a7c249 = Sr. Sepulveda
boat-builder-s-shed-by-the-river-001349f5 = cobertizo de un constructor de barcos junto al río
knows-engines-listens-carefully-a1db2893 = entiende de motores, escucha con atención
she-turns-one-way-and-then-she-cea3b3ac = Gira hacia un lado y luego no gira de vuelta. Zumba, se calienta mucho, se corta, y a los diez minutos empieza otra vez. Hacia un lado seguiría para siempre.
everything-in-the-shed-is-2aa09b36 = Todo en el cobertizo lleva etiqueta. La máquina está sobre alfombrillas de goma, perfectamente a nivel.
canvas-covers-one-at-a-time-7e71c870 = Fundas de lona, una cada vez.
a-hum-where-the-other-direction-abf17f31 = Un zumbido donde tendría que estar el otro sentido.
the-dial-goes-on-slowly-287c522f = El dial sigue, despacio.
since-the-weekend-fc9fd6cb = Desde el fin de semana.
warm-varnish-i-know-that-smell-d9424647 = A barniz caliente. Conozco ese olor.
i-do-not-let-anybody-near-my-369756d7 = Yo no dejo que nadie se acerque a mis máquinas. Salvo usted.

### overflows_since_the_repair.json

it-overflows-since-the-repair-915e1553 = Se desborda desde la reparación
mr-and-mrs-farouk-29f5ad97 = Sr. y Sra. Farouk
top-floor-over-a-bakery-f338ef3d = último piso, encima de una panadería
angry-with-the-last-repairer-86019da7 = indignados con el último técnico
the-board-was-changed-on-f77acbb1 = El jueves cambiaron la placa y desde entonces se desborda. Al panadero de abajo le cayó agua en la harina. Esto lo va a pagar alguien.
the-baker-has-put-a-bucket-under-c8647f6e = El panadero ha puesto un cubo debajo de la mancha. El grifo lo ha cerrado el cliente. Hay toallas en el suelo.
the-one-time-was-enough-we-shut-d59bcd64 = Con una vez bastó. Cerramos el grifo.
empty-now-it-was-bed-linen-9b52004b = Vacía, ahora. Era ropa de cama.
just-the-water-running-371bc262 = Solo el agua corriendo.
at-last-it-said-fills-too-slowly-5e68c5fb = Al final dijo «Llena demasiado despacio». ¡Demasiado despacio! ¡Con el suelo lleno de agua!
since-thursday-when-the-board-a3b673cb = Desde el jueves, cuando cambiaron la placa. Antes de eso solo estaba apagada.
no-smell-wet-floor-as-i-say-9a280fdb = Ningún olor. Suelo mojado, como le digo.
the-tap-is-shut-now-the-pressure-f5f4eb3e = El grifo está cerrado ahora. La presión aquí arriba es pasable.
while-it-fills-it-fills-and-bb0d3c0d = Mientras llena. Llena y llena y no lava.
a-man-from-the-paper-put-in-a-5405d4c7 = Un hombre de un anuncio del periódico puso una placa. Fue muy rápido.
he-had-the-top-up-he-shut-it-d26c0be4 = Tuvo la parte de arriba levantada. La cerró con la rodilla, mi marido lo vio.

### prickles_in_the_scullery.json

it-prickles-in-the-scullery-796ab3e0 = Da hormigueo en la trascocina
mrs-wanjiru-71b91911 = Sra. Wanjiru
old-parsonage-scullery-with-a-6657bde9 = antigua casa parroquial, trascocina con suelo de piedra
worried-for-her-mother-129e9622 = preocupada por su madre
my-mother-says-it-prickles-when-40a0c79f = Mi madre dice que le da un hormigueo cuando se apoya en ella. Yo creía que eran cosas de la edad. Ayer puse la lavadora descalza y también lo sentí.
stone-floor-often-damp-a-test-b5c49e36 = Suelo de piedra, a menudo húmedo. Junto a la caja de fusibles cuelga un certificado de revisión de la casa. El cable de detrás de la máquina tiene marcas de dientes.
with-dry-shoes-not-8ab0cf3d = Con zapatos secos, no.
whatever-there-is-01727c47 = Lo que haya.
nothing-trips-0ef14a84 = No salta nada.
the-sockets-were-tested-for-the-cb2432be = Las tomas de corriente las revisaron en primavera para el seguro. Tengo el papel.
it-washes-quite-normally-8c005597 = Lava con toda normalidad.
a-month-my-mother-says-dd680041 = Un mes, dice mi madre.
whenever-it-is-plugged-in-35b24399 = Siempre que está enchufada.
the-cat-has-a-basket-behind-it-ac643b9a = La gata tiene una cesta detrás. Juega con todo lo que cuelga.

### pulls_and_nothing_opens.json

it-whirrs-and-nothing-opens-04e5328a = Ronronea y no se abre nada
mr-halloran-6a8d0e93 = Sr. Halloran
public-house-yard-laundry-e9120221 = taberna, lavadero en el patio
jolly-in-the-middle-of-things-9d53bb14 = jovial, en plena faena
it-whirrs-away-down-there-as-it-475fb45b = Ronronea ahí abajo como debe cuando quiere vaciarse, y de la manguera no sale ni una gota. Llevamos tres noches seguidas vaciándola con una jarra de cerveza.
stone-yard-with-a-gully-a-dish-293345bc = Patio de piedra con sumidero. En el alféizar hay un plato con monedas y tapas de botella encontradas en la ropa.
bar-cloths-and-aprons-3c8d5ceb = Paños de la barra y delantales.
the-girls-empty-the-pockets-dfe579f2 = Las chicas vacían los bolsillos. Casi siempre.
a-whirr-and-once-on-the-first-870d2230 = Un ronroneo, y una vez, el primer día, un sonido como de cuerda que salta.
the-dial-stands-and-waits-b0b823be = El dial está quieto y espera.
three-days-fcf8fa38 = Tres días.
it-was-slow-to-shut-off-before-297e87a2 = Antes de eso le costaba cerrar. Caía un poco al sumidero todo el tiempo, de día y de noche.
a-bit-of-beer-but-that-is-the-fb309d4d = Un poco a cerveza, pero eso son los paños de la barra.
when-it-should-empty-2b67a8c6 = Cuando debería vaciarse.

### rests_after_ten_minutes.json

it-rests-after-ten-minutes-23195503 = Descansa a los diez minutos
mr-fonseka-0d212319 = Sr. Fonseka
tea-room-kitchen-c122b03f = cocina de un salón de té
patient-offers-tea-4f9c89a7 = paciente, ofrece té
it-washes-beautifully-and-then-a79bbfb1 = Lava de maravilla, y luego se toma un descanso. Me voy, vuelvo, y está lavando otra vez. Con dos cargas seguidas casi no trabaja.
a-hot-kitchen-the-machine-stands-9f66e5d0 = Una cocina calurosa; la máquina está al lado del horno.
not-in-the-morning-50d9d96c = Por la mañana no.
when-the-kitchen-is-cool-never-eecf156f = Cuando la cocina está fresca, nunca.
aprons-and-cloths-not-heavy-742a9f3e = Delantales y paños, nada pesado.
when-it-rests-it-is-quite-silent-af14afd8 = Cuando descansa está en silencio total. Ningún zumbido.
the-dial-goes-on-without-it-b5c63fc8 = El dial sigue sin ella.
since-the-hot-weather-8a01e2f1 = Desde que hace calor.
after-ten-minutes-or-a-quarter-5e694c3e = A los diez minutos o al cuarto de hora. Antes, con la segunda carga.

### rust_and_rumble.json

rust-water-and-a-rumble-0fbf92c7 = Agua oxidada y un retumbo
mrs-guidry-onwudiwe-97307716 = Sra. Guidry-Onwudiwe
bungalow-under-live-oaks-9633731a = casa de una planta bajo las encinas
wants-the-truth-c7935656 = quiere la verdad
there-is-rusty-water-under-it-e5e3a3d5 = Hay agua oxidada debajo y retumba como un tren de carga cuando centrifuga, más despacio cada semana. Mi hermana dice que compre una nueva, mi hijo dice que la arregle. ¿Usted qué dice?
a-baking-tin-under-the-machine-2357776e = Un molde de horno debajo de la máquina contiene un poco de agua marrón. La placa dice que tiene dieciséis años.
less-and-less-1c498d18 = Cada vez menos.
a-freight-train-8596e9fd = Un tren de carga.
it-finishes-mostly-280e1e5b = Termina, casi siempre.
a-year-or-more-27ee9f1f = Un año o más.
rust-under-it-after-washing-the-2f469969 = El óxido debajo, después de lavar. El retumbo, en el centrifugado.
my-son-put-in-a-belt-two-years-82078000 = Mi hijo le puso una correa hace dos años.

### says_later.json

it-will-not-start-when-i-want-it-e7dd425c = No quiere arrancar cuando yo quiero
mrs-lightfoot-ames-f5a3f9a4 = Sra. Lightfoot-Ames
trailer-by-the-lake-fb2ce1e5 = casa rodante junto al lago
cheerful-2c18b95d = alegre
i-put-the-clothes-in-and-press-576bcdb1 = Meto la ropa y pulso inicio, y no quiere arrancar. Se queda ahí con su luz encendida. Eso sí, para cuando vuelvo de la cafetería ya la ha lavado, y está toda arrugada.
reading-glasses-lie-on-the-shelf-f368bea8 = En el estante encima de la máquina hay unas gafas de leer.
uniforms-33bcfcea = Uniformes.
no-and-no-extension-cord-0c397fe5 = No, y ningún alargador.
some-words-and-a-number-fb3c2813 = Unas palabras y un número.
i-never-have-my-glasses-on-cff9966f = Nunca llevo puestas las gafas.
my-niece-stayed-over-she-is-e3725730 = Mi sobrina se quedó a dormir. Es muy lista con todo lo que tenga botones.
yes-faucet-is-open-da9b92e2 = Sí, el grifo está abierto.
right-when-i-press-start-a53e9f53 = Justo cuando pulso inicio.

### shakes_the_pictures.json

it-shakes-the-pictures-off-the-a34b51eb = Hace caer los cuadros de la pared
mr-osterhaus-lee-5de841db = Sr. Osterhaus-Lee
frame-house-laundry-above-the-f449bc75 = casa de madera, lavadero encima de la sala
has-catalogued-every-noise-5fd6616b = tiene catalogados todos los ruidos
it-sways-to-one-side-and-at-a-cc7bd064 = Se va hacia un lado, y a cierta velocidad la acompaña la casa entera. El retrato de mi madre se ha caído dos veces.
the-machine-stands-level-the-439bb5c1 = La máquina está a nivel. El tambor cuelga un dedo más bajo en una esquina.
yes-whatever-i-put-in-1fa74e03 = Sí, meta lo que meta.
i-weigh-it-three-kilos-d25b5d6b = La peso. Tres kilos.
a-rumble-that-swells-and-swells-06636141 = Un retumbo que crece y crece.
sometimes-spreading-the-load-fc3df848 = A veces «Repartiendo la carga».
gradually-and-then-since-the-ae87b3fb = Poco a poco, y luego, desde el último verano de calor, mucho.
when-the-spin-gathers-speed-fad39a7d = Cuando el centrifugado toma velocidad.

### silent_and_dry.json

it-starts-and-no-water-comes-in-aad91ce5 = Arranca y no entra agua, en silencio
mrs-kowalska-95cb2fde = Sra. Kowalska
third-floor-kitchen-2a3866b0 = tercer piso, cocina
hard-of-hearing-precise-ad0b58d6 = dura de oído, precisa
i-start-it-the-lamps-light-and-9459a081 = La pongo en marcha, se encienden las luces y no entra agua. Mis grifos son buenos; miré la manguera, no está doblada.
the-customer-has-pulled-the-998f21c2 = La clienta ha tirado ella sola de la máquina hacia delante y ha puesto toallas.
always-f83ac91e = Siempre.
i-do-not-hear-so-well-you-must-ffb53784 = Yo no oigo muy bien, tiene que escuchar usted.
my-niece-says-it-is-quite-silent-33d839c7 = Mi sobrina dice que está en silencio total. Antes se oía un zumbido.
fills-too-slowly-i-wrote-it-down-299bc891 = «Llena demasiado despacio», lo apunté.
since-the-day-before-yesterday-bcb764a4 = Desde anteayer. Antes tomaba bien el agua.
in-spring-there-was-a-warm-smell-b9d3a0ac = En primavera hubo una vez un olor a caliente, arriba.
i-opened-and-shut-the-tap-twice-e1aeb355 = Abrí y cerré el grifo dos veces. Está abierto. El cubo se llenó en un momento.
at-the-beginning-at-once-98fda244 = Al principio, enseguida.

### slaps_and_rubs.json

it-slaps-and-rubs-below-33de6851 = Da palmadas y roza por abajo
mr-zeleny-77d90a45 = Sr. Zeleny
mill-house-laundry-by-the-wheel-20d88e15 = casa de molino, lavadero junto a la rueda
thorough-takes-notes-9b4f7f08 = minucioso, toma notas
it-does-its-work-but-it-has-got-2fd0e6f3 = Hace su trabajo, pero se ha vuelto ruidosa. Da palmadas por abajo cuando gira, y con ellas un roce, como una escoba sobre una tabla. El ruido es peor desde que la pasamos por encima del umbral con la carretilla.
crumbs-of-black-rubber-on-the-cb4c72b1 = Miguitas de goma negra en el suelo donde estaba la máquina. El umbral tiene un rasguño brillante.
flour-sacks-three-kilos-89eea3e0 = Sacos de harina, tres kilos.
a-slap-and-a-rub-9f26da11 = Una palmada y un roce.
the-slap-for-some-time-9a906e0a = Las palmadas, desde hace tiempo.
the-rub-since-the-sack-truck-it-a2a0bc48 = El roce, desde la carretilla. Se enganchó en el umbral, por debajo.
a-bit-of-rubber-dust-3d42e440 = Un poco a polvo de goma.
whenever-it-turns-06f54830 = Siempre que gira.
only-moved-f578f20a = Solo moverla.

### slow_since_the_drought.json

slow-since-the-drought-daf1c7e2 = Lenta desde la sequía
mrs-benhaddou-b6f14e71 = Sra. Benhaddou
mountain-village-house-by-the-e7c2ec9d = pueblo de montaña, casa junto al manantial
hospitable-tea-first-f1a2e85e = hospitalaria, primero el té
it-fills-drop-by-drop-since-the-7c42892e = Llena gota a gota. Desde la sequía el agua de aquí es dura como la piedra, y la máquina se ha vuelto lenta como todos nosotros.
a-white-crust-on-tap-and-sink-43c2d2ee = Una costra blanca en el grifo y el fregadero. Arena en el fondo de la jarra del agua.
wool-mostly-45a807d6 = Lana, sobre todo.
it-hums-and-hisses-34885cd7 = Zumba y sisea.
the-dial-does-not-move-on-until-158b2d1e = El dial no avanza hasta que está llena.
since-the-dry-summer-67a41216 = Desde el verano seco.
at-the-sink-it-runs-well-you-can-18166856 = En el fregadero corre bien. Se ve la costra blanca por todas partes.
my-son-looked-at-the-hose-it-was-deaa2ba6 = Mi hijo miró la manguera. Estaba recta.

### slow_to_empty.json

it-takes-long-to-empty-and-c79317e8 = Tarda mucho en vaciarse y deja pelusa en todo
mrs-oyelaran-a690ff14 = Sra. Oyelaran
hairdresser-s-back-room-aaba491d = peluquería, trastienda
cheerful-customers-waiting-975b334d = alegre, con clientas esperando
forty-towels-a-day-that-is-my-4aa6cdf4 = Cuarenta toallas al día, esa es mi vida. Ahora se vacía tan despacio que antes del mediodía me quedo sin toallas secas, y lo que sale está cubierto de pelusa.
a-bin-of-damp-towels-the-little-0dd3e608 = Un cesto de toallas húmedas. La bolsita de dentro del tambor está gris y dura como fieltro.
each-load-6ba4e2ae = Cada carga.
towels-with-hair-of-course-10b5ed69 = Toallas. Con pelo, claro.
it-whirrs-and-trickles-6fe08d3b = Ronronea y sale un hilito.
nothing-once-drains-too-slowly-29716d4b = Nada. Una vez «Desagua demasiado despacio», pero luego siguió.
it-has-got-slower-over-the-last-63c1bd9c = Se ha ido volviendo más lenta en los últimos meses.
a-bit-stale-d57f1128 = Un poco a rancio.
when-the-water-goes-out-a939c439 = Cuando sale el agua.
no-one-it-is-a-good-machine-a3ae593e = Nadie. Es una buena máquina.

### smells_and_counts_for_nothing.json

it-fills-to-nothing-and-hums-at-91313bdf = Se llena de nada y zumba por detrás
mrs-sandoval-3d0265eb = Sra. Sandoval
dressmaker-s-first-floor-2d567bfe = taller de costura, primer piso
observant-db000249 = observadora
it-thinks-it-is-full-when-it-is-c4482cb3 = Se cree llena cuando está vacía: da vueltas con la cuba seca. Y llevo semanas oliéndola por detrás, a caliente, hasta cuando estaba apagada.
the-wall-behind-the-machine-has-f35e85bb = La pared detrás de la máquina tiene una mancha marrón clara, del tamaño de una mano.
muslin-i-took-it-out-cedb664a = Muselina. La saqué.
it-turns-and-scrapes-dry-2be07429 = Gira y raspa, en seco.
the-dial-goes-on-as-if-all-were-7b3b5755 = El dial sigue como si todo estuviera en orden.
yesterday-the-dry-turning-the-29b96dc2 = El girar en seco, ayer. El olor, desde hace semanas.
warm-a-bit-like-ironing-at-the-44c254aa = A caliente, un poco como al planchar. Por detrás.
the-tap-is-open-and-strong-7f0505b7 = El grifo está abierto y sale con fuerza.
from-the-first-minute-no-water-37fe21fb = Desde el primer minuto. Sin agua, solo gira.

### squeals_after_the_new_belt.json

it-squeals-like-a-pig-a20d7994 = Chilla como un cerdo
mr-thibodeaux-mensah-274079f8 = Sr. Thibodeaux-Mensah
corner-store-stock-room-33579948 = tienda de barrio, almacén
bargaining-good-natured-ef918946 = regatea, de buen carácter
i-bought-a-belt-my-brother-in-1294d7e3 = Compré una correa, mi cuñado la puso, y ahora chilla como un cerdo y centrifuga como un caracol. Él dice que las correas necesitan rodaje. ¿Las correas necesitan rodaje?
the-packet-of-the-belt-is-on-the-47018dce = El envoltorio de la correa está en el estante; es la correcta.
aprons-6262e992 = Delantales.
it-squeals-and-there-is-a-tick-ca8626f3 = Chirría, y con eso hay un tic, tic.
since-the-new-belt-4faea66d = Desde la correa nueva.
rubber-7a64ffef = A goma.
at-the-spin-in-the-wash-a-little-e6119f1f = En el centrifugado. En el lavado, un poco.
my-brother-in-law-e41e9f3c = Mi cuñado.
he-had-the-motor-loose-and-the-0246ae85 = Tuvo el motor suelto y la ruedita quitada, para poder poner mejor la correa.

### squeals_and_comes_out_wet.json

it-squeals-and-the-washing-comes-eb09cdee = Chirría y la ropa sale mojada
mr-novak-4bdf547d = Sr. Novak
farm-house-wash-kitchen-6d199ade = casa de granja, cocina de lavar
it-squeals-like-a-piglet-when-it-fc723972 = Chilla como un lechón cuando arranca y la ropa sale mojada como un trapo de cocina. Mi mujer dice que el motor está acabado. Yo digo que no.
stone-floor-machine-well-07fc6e3a = Suelo de piedra, máquina de fácil acceso. Un peón de la granja puede ayudar a levantar.
with-a-full-drum-yes-empty-it-89c033ec = Con el tambor lleno, sí. Vacía apenas chirría.
work-trousers-full-five-kilos-83a475d6 = Pantalones de trabajo. Llena, cinco kilos.
the-squeal-from-below-and-it-43306fc1 = El chirrido, de abajo. Y mientras tanto ella zumba tan contenta.
its-own-socket-nothing-trips-1899b46d = Su propia toma de corriente. No salta nada.
the-usual-it-ends-at-the-usual-f9ebc51e = Lo de siempre. Acaba a la hora de siempre.
a-good-month-ca60f963 = Un mes largo.
it-began-small-a-chirp-on-cold-065e2789 = Empezó con poco. Un pío en las mañanas frías, ya sabe.
like-a-rubber-boot-by-the-stove-af18a67b = Como una bota de goma junto a la estufa, si uno acerca la nariz.
from-our-own-tank-with-a-pump-b40219ca = De nuestro propio depósito, con una bomba, de sobra.
mostly-when-it-changes-direction-f04241c8 = Sobre todo cuando cambia de sentido, y cuando empieza a centrifugar.
never-only-moved-it-when-we-276e91a1 = Nunca. Solo la movimos cuando encalamos la pared.

### starts_when_it_likes.json

it-starts-when-it-likes-efda6fb4 = Arranca cuando le da la gana
ms-delacroix-mbuyi-182be0a7 = Sra. Delacroix-Mbuyi
puppet-theatre-wardrobe-room-8cdd531b = teatro de títeres, cuarto de vestuario
curious-about-everything-8584de4d = curiosa por todo
sometimes-it-takes-water-at-once-452dad62 = A veces toma agua enseguida. A veces muevo un poco el botón giratorio de un lado a otro y entonces sí. A veces me hace esperar, y luego se lo piensa mejor.
the-knob-s-edge-is-worn-smooth-a-b6c3a153 = El borde del botón giratorio está liso de tanto uso. Una marca de lápiz señala dónde le gusta arrancar.
no-that-is-what-drives-me-mad-4712608b = ¡No! Eso es lo que me vuelve loca.
costumes-gently-6cab5855 = Trajes de teatro. Con suavidad.
when-it-will-not-it-is-silent-no-0e210875 = Cuando no quiere, está en silencio. Ningún zumbido por detrás.
the-dial-stands-at-the-beginning-59d0c333 = El dial está quieto al principio y espera.
all-this-season-725f11f1 = Toda esta temporada.
once-a-whiff-of-something-burnt-03ba113f = Una vez, un olorcillo a algo quemado junto al botón giratorio.
it-runs-like-a-river-33d53bc2 = Corre como un río.
at-the-filling-009fcffe = Al llenar.
no-one-dares-758634e9 = Nadie se atreve.

### stops_and_beeps_before_spin.json

it-stops-and-beeps-before-the-015bb829 = Se para y pita antes del centrifugado
mr-haddad-b3e53c18 = Sr. Haddad
first-floor-kitchen-50ed6e15 = primer piso, cocina
helpful-5f98198d = servicial
it-washes-fine-then-it-stops-f6c35f84 = Lava bien, luego se para llena de cosas mojadas, y al cabo de un rato pita. La tapa está cerrada, se lo juro.
a-shelf-hangs-above-the-machine-24d934f5 = Encima de la máquina hay un estante colgado; la tapa lo golpea cuando se abre del todo.
now-it-is-every-time-ee08c642 = Ahora es todas las veces.
mixed-things-three-kilos-maybe-c0f2b98d = Cosas variadas, quizá tres kilos.
i-no-longer-hear-the-little-191f9fee = Ya no oigo el pequeño clic cuando cierro la tapa. Antes había un clic.
all-good-03a56dcd = Todo bien.
lid-is-open-but-it-is-not-3a421324 = «La tapa está abierta». Pero no lo está.
since-last-week-once-or-twice-it-0e08cd7c = Desde la semana pasada. Una o dos veces todavía centrifugó cuando le di un golpe a la tapa.
when-the-water-is-out-and-it-913f418c = Cuando el agua ha salido y debería centrifugar.
my-son-leant-on-the-lid-to-reach-36ad5703 = Mi hijo se apoyó en la tapa para llegar al estante, hace un mes. Después de eso todavía funcionaba.

### stops_full_of_water.json

it-stops-full-of-water-e259eedc = Se para llena de agua
ms-lindqvist-940df587 = Sra. Lindqvist
basement-flat-28feae5b = apartamento en el sótano
worried-about-the-floor-eec8d597 = preocupada por el suelo
it-has-stopped-with-all-the-179a9a3a = Se ha parado con toda el agua dentro y pita. Me da miedo abrir nada.
the-tub-is-full-when-you-come-e84adcc5 = La cuba está llena cuando usted llega. El desagüe del suelo está a dos metros, la manguera de desagüe está metida en él.
i-switched-it-off-and-on-and-12d03a1d = La apagué y la encendí y elegí solo centrifugado. Lo mismo.
baby-clothes-three-kilos-2099c741 = Ropa de bebé, tres kilos.
nothing-at-all-when-it-should-b6dda2c8 = Nada de nada cuando debería desaguar.
there-used-to-be-a-whirr-for-a-f368c354 = Antes había un ronroneo de unos segundos. Eso ya no está.
yesterday-evening-from-one-wash-e0cf1dd9 = Ayer por la noche, de un lavado al siguiente.
no-the-floor-is-dry-thank-heaven-bdc172f1 = No. El suelo está seco, gracias a Dios.
it-came-in-as-always-it-is-up-to-2e6e37c1 = Entró como siempre, está hasta aquí.
after-the-wash-when-the-water-54fac36c = Después del lavado, cuando el agua debería salir.

### stops_if_you_look_at_it.json

it-stops-if-you-so-much-as-look-2651ab51 = Se para con solo mirarla
mr-kekona-4e614055 = Sr. Kekona
surf-shop-back-yard-4fcdd10c = tienda de surf, patio trasero
easy-going-8d5d47d8 = despreocupado
it-stops-whenever-it-likes-says-a05a8119 = Se para cuando quiere, dice que hay que cerrar la tapa, ¡y la tapa está cerrada! Se le da una palmada y sigue. Mi gente se ha vuelto muy buena en eso de las palmadas.
a-worn-patch-on-the-lid-where-53b73221 = Una zona gastada en la tapa, donde las manos le han dado palmadas. Cobertizo abierto por los lados, el mar a dos calles.
no-only-now-and-then-85493d62 = No, solo de vez en cuando.
more-when-it-shakes-i-would-say-22dee845 = Más cuando se sacude, diría yo.
rash-vests-and-towels-bc367597 = Camisetas de surf y toallas.
a-click-and-then-it-is-quiet-ee3ba7c7 = Un clic, y luego está callada.
close-the-lid-501eaab8 = «Cerrar la tapa».
since-the-summer-32e4b0bf = Desde el verano.
any-time-washing-spinning-7bbed8fd = En cualquier momento. Lavando, centrifugando, desaguando.
no-salt-air-does-for-everything-37204f4f = No. El aire salado acaba con todo aquí.

### stops_when_it_gets_going.json

it-gets-going-and-then-starts-3e383b29 = Toma velocidad y luego empieza todo otra vez
ms-yildiz-7f833ab2 = Sra. Yildiz
flat-over-a-workshop-that-shakes-34f6a2a1 = apartamento encima de un taller que hace temblar el suelo
sceptical-the-last-visit-found-7cb633ba = escéptica: la última visita no encontró nada
it-drains-it-begins-to-spin-it-d1d953b9 = Desagua, empieza a centrifugar, va bastante rápida, y entonces se para, llena y remueve la ropa, y lo intenta otra vez. Al final dice que no puede. El último técnico la encendió, funcionó, él se fue, y esa misma noche volvió a hacerlo.
the-floor-trembles-when-the-1173065f = El suelo tiembla cuando trabaja la prensa de abajo. La máquina está a nivel y no cojea.
nearly-always-c455f059 = Casi siempre.
with-an-empty-drum-it-does-it-612853ee = Con el tambor vacío también lo hace, eso lo he probado.
anything-even-one-towel-6005cd10 = Cualquier cosa. Hasta una sola toalla.
no-banging-at-all-83d71728 = Ningún golpe, ninguno.
spreading-the-load-and-later-4f07f477 = «Repartiendo la carga», y después que se bambolea demasiado. Pero está tan quieta como un armario.
six-weeks-or-so-71726633 = Seis semanas o así.
when-it-gets-really-fast-never-7cc01f87 = Cuando va rápida de verdad. Nunca antes de eso.
the-man-who-found-nothing-cd3d4f9d = El hombre que no encontró nada.
and-before-that-one-who-changed-5b5df847 = Y antes, uno que cambió la pantalla, en primavera. Tuvo abierta la parte de arriba.

### takes_an_hour_to_fill.json

it-takes-an-hour-to-fill-1be18b8d = Tarda una hora en llenar
mr-quispe-c248b37b = Sr. Quispe
second-floor-above-a-bakery-eca66987 = segundo piso, encima de una panadería
patient-a-little-tired-03a0b2cd = paciente, algo cansado
it-washes-well-in-the-end-but-499f0ed8 = Al final lava bien, pero primero se pasa casi una hora ahí echando un hilito de agua en la cuba. A veces se rinde y pita antes de estar llena.
the-machine-stands-close-to-the-61e4ad0c = La máquina está pegada a la pared, entre un congelador y la puerta. El grifo está abierto.
every-time-now-76cad28d = Ahora, todas las veces.
nappies-and-towels-the-right-52ab09e9 = Pañales de tela y toallas. La cantidad justa de detergente, la mido.
a-thin-hiss-instead-of-the-3a55aa19 = Un siseo fino en lugar del chorro ruidoso que hacía antes.
fills-too-slowly-when-it-gives-135acdf6 = «Llena demasiado despacio», cuando se rinde.
it-has-crept-up-on-us-cb568718 = Nos ha ido llegando sin darnos cuenta.
worse-since-we-pushed-it-further-3956d5f8 = Peor desde que la empujamos más hacia atrás para hacer sitio al cochecito.
the-sink-beside-it-runs-hard-b2d14265 = El lavabo de al lado corre con tanta fuerza que me salpica.
at-the-beginning-while-the-water-2ed83fbf = Al principio, mientras entra el agua. Y otra vez en cada enjuague.
no-repairs-36a018fa = Ninguna reparación.
the-water-people-dug-up-the-d1490516 = Los del agua levantaron la calle en primavera. Durante dos días todo salió marrón.

### takes_its_time_stopping.json

it-takes-its-time-stopping-c9c608b9 = Se toma su tiempo para pararse
mrs-whitlock-adeyinka-f0fccc43 = Sra. Whitlock-Adeyinka
day-nursery-staff-laundry-e430ed00 = guardería, lavadero del personal
serious-about-safety-1d4c9d5a = se toma en serio la seguridad
when-i-open-the-lid-while-it-d284f457 = Cuando abro la tapa mientras centrifuga, sigue girando una eternidad. Con niños en la casa, eso no lo tolero. Además hay un bamboleo ahí abajo.
the-laundry-door-has-a-high-bolt-15fddc4b = La puerta del lavadero tiene un cerrojo alto. No hay ningún niño en el cuarto.
bibs-and-sheets-c687ba88 = Baberos y sábanas.
a-wobble-wum-wum-from-below-5d2c430c = Un bamboleo, bum, bum, de abajo.
it-says-to-close-the-lid-as-it-012a7457 = Dice que hay que cerrar la tapa, como debe.
half-a-year-getting-worse-5358c77a = Medio año, y va a peor.
after-the-spin-and-when-i-lift-9e62e4f5 = Después del centrifugado, y cuando levanto la tapa.

### third_valve_still_slow.json

the-third-new-valve-and-it-still-333014d3 = La tercera válvula nueva, y sigue llenando despacio
mr-andriamana-6ebe756a = Sr. Andriamana
top-floor-tank-on-the-roof-59c64250 = último piso, depósito en la azotea
polite-has-stopped-believing-568ac42c = educado, ya no cree a nadie
two-men-have-put-in-three-inlet-3c0f2383 = Entre dos hombres han puesto tres válvulas de entrada y las tres las he pagado. Sigue tardando veinte minutos en llenar, y luego pita. Por favor, no me venda la cuarta.
the-roof-tank-stands-on-a-frame-22c6b5a7 = El depósito de la azotea está sobre una estructura; su salida queda alrededor de un metro por encima del grifo.
top-floor-there-is-a-lift-when-4b37195b = Último piso. Hay ascensor, cuando funciona.
shirts-one-measure-of-powder-0711e0e6 = Camisas. Una medida de detergente.
it-hums-and-trickles-f19ca05b = Zumba y entra un hilito.
fills-too-slowly-c89ea75a = «Llena demasiado despacio».
since-we-moved-up-here-08964225 = Desde que nos mudamos aquí arriba.
downstairs-at-my-mother-s-it-e33d4d26 = Abajo, en casa de mi madre, llenaba en pocos minutos. Ella tiene agua de la red, yo tengo el depósito.
the-tap-is-open-8cf0e82d = El grifo está abierto.
the-shower-one-has-to-be-patient-af1f9f45 = ¿La ducha? Aquí arriba hay que tener paciencia.
three-valves-in-two-months-the-82982983 = Tres válvulas en dos meses. El último también limpió el coladorcito, me lo enseñó.

### trips_and_old.json

it-drops-the-breaker-and-it-is-307027c4 = Hace saltar el interruptor de la casa, y ya no es joven
mr-moyo-4d6e2e6e = Sr. Moyo
smallholding-pump-house-3df54505 = pequeña finca, caseta de la bomba
resigned-8c93abb8 = resignado
when-it-begins-to-wash-the-light-ddd198f0 = Cuando empieza a lavar, se va la luz en toda la casa. Lleva años retumbando y quejándose. Dígame sin rodeos si vale la pena.
rust-along-the-bottom-edge-the-0ee486a3 = Óxido a lo largo del borde inferior. Los remiendos ya tienen remiendos.
in-the-pump-house-on-concrete-i-de781083 = En la caseta de la bomba, sobre cemento. Yo puedo levantar.
it-used-to-rumble-when-it-spun-68482530 = Antes retumbaba al centrifugar. Ahora no llega hasta ahí.
the-breaker-with-the-test-button-f41d936f = El interruptor de la casa que tiene el botón de prueba.
it-holds-as-long-as-the-machine-a3cab22b = Aguanta mientras la máquina solo está llenando.
the-rumbling-for-years-the-cd5302cd = El retumbo, desde hace años. Los saltos, desde las lluvias.
it-fills-and-the-moment-it-18719fda = Llena, y en el momento en que debería girar, todo se queda a oscuras.
i-have-kept-it-going-with-my-own-71508485 = Llevo quince años manteniéndola en marcha con mis propias manos.

### turns_one_way.json

it-turns-one-way-and-never-spins-1c7ef6d5 = Gira hacia un lado y no centrifuga nunca
mr-pemberley-cruz-ffefd726 = Sr. Pemberley-Cruz
dry-humour-dfcf0a92 = humor seco
half-of-it-works-it-turns-one-a194afcc = Funciona la mitad. Gira hacia un lado, se lo piensa, y vuelve a girar hacia el mismo lado. Y cuando tendría que centrifugar, zumba para sus adentros ahí abajo con la bomba, y eso es todo.
mud-room-with-a-drain-a-dog-2c2fbcb7 = Cuarto de entrada de servicio con desagüe. Un perro dormido sobre un montón de abrigos.
yes-sir-67ab8dac = Sí, señor.
barn-clothes-050f650e = Ropa de establo.
a-click-where-the-other-turn-0380f79c = Un clic donde debería estar el otro giro.
no-breaker-no-cord-4029e677 = Ni interruptor de la casa ni alargador.
it-counts-down-919ec4e2 = Va descontando.
since-the-cold-snap-6645ec1e = Desde la ola de frío.
washing-and-spinning-52f66587 = Lavando y centrifugando.
nobody-but-the-dog-goes-in-there-aa09132b = Ahí no entra nadie más que el perro.

### waits_for_its_water.json

it-waits-and-waits-for-its-water-f390613f = Espera y espera su agua
mrs-solheim-deafeb0c = Sra. Solheim
holiday-cabin-by-the-fjord-7f3ba77b = cabaña de vacaciones junto al fiordo
relaxed-on-holiday-2a52ede1 = relajada, de vacaciones
we-opened-the-cabin-up-last-week-fc706bb7 = Abrimos la cabaña la semana pasada. Lava, pero tarda toda la mañana: se queda ahí siseando un siglo antes de empezar a moverse. Otros veranos era más rápida.
the-tap-sits-low-behind-the-b5221d50 = El grifo está abajo, detrás de la máquina, y tiene una manija vieja y dura. La manguera está recta.
swimming-things-and-bed-linen-30071367 = Cosas de baño y ropa de cama.
it-hisses-753de6e1 = Sisea.
the-dial-just-stands-where-i-put-50a413bc = El dial se queda donde lo pongo y espera.
this-summer-from-the-first-wash-bbc0c58c = Este verano, desde el primer lavado.
my-son-turned-the-water-on-again-1fea7d8e = Mi hijo volvió a abrir el agua después del invierno. Es cuidadoso con esas cosas.
the-kitchen-tap-is-good-6073632a = El grifo de la cocina va bien.
at-the-start-and-again-in-the-d39668e0 = Al principio, y otra vez en los enjuagues.
no-it-sleeps-here-all-winter-92e6c94d = No. Duerme aquí todo el invierno.

### walked_to_the_door.json

the-drum-hangs-to-one-side-86691b09 = El tambor cuelga hacia un lado
mrs-harlan-sato-0c3ff853 = Sra. Harlan-Sato
apartment-with-a-narrow-hall-87e5c332 = apartamento con un pasillo estrecho
apologises-for-the-mess-5b9d462b = se disculpa por el desorden
the-drum-sits-crooked-i-can-see-92049f45 = El tambor está torcido, lo veo por la tapa. Llena y lava, más o menos, y cuando debería centrifugar se menea de un lado a otro, toma agua y lo intenta otra vez, hasta que se rinde.
scrape-marks-on-the-corner-of-37922dec = Marcas de roce en la esquina del pasillo. La máquina está a nivel.
three-kilos-at-most-469ccb71 = Tres kilos como mucho.
a-clonk-against-the-side-when-it-a9d28dde = Un clonc contra el costado cuando empieza.
basket-keeps-swinging-000ff910 = «El cesto no deja de bambolearse».
since-the-move-4266fac7 = Desde la mudanza.
they-got-it-round-the-corner-in-2f435aa0 = La pasaron tumbada por la esquina del pasillo, e hizo clonc.
at-the-spin-4bda2cf1 = En el centrifugado.
the-movers-and-my-husband-pushed-0490a4aa = Los de la mudanza. Y mi marido empujó el tambor desde arriba y dijo que estaba bien.

### walks_and_fills_again.json

it-walks-and-fills-again-and-96dd5d9c = Camina y llena otra vez, y otra
mr-mbeki-4a42d1f8 = Sr. Mbeki
garden-shed-with-a-wooden-floor-781d09c7 = caseta de jardín con suelo de madera
it-walks-through-the-shed-like-a-66ed1e9c = Camina por la caseta como una cabra, se para, llena otra vez, y al final se rinde. En la tienda dicen que la amortiguación está gastada y quieren venderme varillas.
plank-floor-that-slopes-to-the-d8ae2d1c = Suelo de tablas inclinado hacia la puerta; las patas están en su posición más corta. Las alfombrillas de baño siguen en el cesto.
with-a-few-shirts-it-sometimes-d4ab61ba = Con unas pocas camisas a veces lo consigue.
bath-mats-and-a-blanket-e9ee9f74 = Alfombrillas de baño y una manta.
it-bangs-three-or-four-times-c3f9fe09 = Da tres o cuatro golpes, luego se para y toma agua.
a-cable-from-the-house-nothing-a46dbe7b = Un cable desde la casa. No salta nada.
since-it-stands-in-the-shed-in-c55438b4 = Desde que está en la caseta. En la casa de antes era tranquila.
from-the-garden-tap-fine-e70a6c8c = Del grifo del jardín, bien.
when-it-begins-to-spin-93d30b3f = Cuando empieza a centrifugar.
i-moved-it-myself-it-weighs-like-81cf4e9c = La moví yo mismo. Pesa como un ternero.

### washes_will_not_spin.json

it-washes-and-drains-but-will-64536d11 = Lava y desagua, pero no quiere centrifugar
mr-tanaka-e12a3f94 = Sr. Tanaka
second-floor-bathroom-0cefdcb5 = segundo piso, baño
patient-80ee595e = paciente
it-fills-it-washes-it-pumps-the-7178b7f0 = Llena, lava, bombea el agua fuera, y luego se para con todo chorreando. Ninguna alarma.
good-light-room-to-pull-the-429d4dcc = Buena luz, sitio para tirar de la máquina hacia delante. La escalera es estrecha.
every-time-since-72b657e3 = Desde entonces, todas las veces.
shirts-four-or-five-kilos-the-a5a04ee4 = Camisas, cuatro o cinco kilos, la medida de siempre.
quiet-no-humming-either-106cc8f4 = Silencio. Tampoco zumba.
now-that-you-ask-in-the-wash-it-21777d3a = Ahora que lo pregunta: en el lavado antes iba de un lado a otro. Ahora va, descansa, descansa, va.
nothing-has-tripped-it-is-0fadbddb = No ha saltado nada. Está directamente en la pared.
it-goes-through-to-the-end-as-if-f67717cd = Sigue hasta el final como si todo estuviera bien.
about-two-weeks-0e36b741 = Unas dos semanas.
from-one-wash-to-the-next-it-had-d527597f = De un lavado al siguiente. Justo acababan de traerla de mi apartamento anterior.
yes-the-water-is-strong-here-7fe2ddaf = Sí, aquí el agua tiene fuerza.
at-the-end-when-it-should-start-cd3a433f = Al final, cuando debería empezar a centrifugar. El tambor no se mueve.
two-friends-carried-it-up-the-3250684f = Dos amigos la subieron por la escalera. Nadie la abrió, que yo sepa.

### water_comes_back_up.json

the-water-will-not-go-away-cad2f7f4 = El agua no quiere irse
ms-nakoa-235c8617 = Sra. Nakoa
new-kitchen-ground-floor-4ca1e850 = cocina nueva, planta baja
proud-of-the-kitchen-44c22d25 = orgullosa de la cocina
the-kitchen-is-new-and-beautiful-f34c1c0f = La cocina es nueva y preciosa y la lavadora ha dejado de vaciarse. Se queda ahí con agua dentro, y luego pita y me dice que desagua demasiado despacio.
the-hose-runs-up-the-wall-and-1a8f0a4a = La manguera sube por la pared y termina en un caño cromado a la altura de la encimera.
every-time-since-then-86dd6e10 = Desde entonces, cada vez.
tea-towels-and-paint-rags-1a99b825 = Paños de cocina y trapos de pintar.
it-whirrs-below-as-it-always-did-3d6fa78d = Ronronea abajo como siempre lo ha hecho.
the-gurgle-in-the-pipe-is-not-f81fe64c = El gorgoteo en la tubería ya no está.
since-the-kitchen-was-finished-065217c8 = Desde que terminaron la cocina, el viernes pasado.
no-it-is-all-new-b4f13576 = No, es todo nuevo.
after-the-wash-when-the-water-f7a5e1b1 = Después del lavado, cuando el agua debería irse.
on-the-machine-no-the-kitchen-2bcadd94 = En la máquina, no. Los montadores de la cocina le hicieron una salida nueva, arriba, detrás de la encimera, para que no se vea la manguera.

### water_from_somewhere_else.json

there-is-water-everywhere-84b3995e = Hay agua por todas partes
mr-takahashi-byrne-306f98ed = Sr. Takahashi-Byrne
basement-flat-by-the-canal-a7201054 = apartamento en el sótano junto al canal
upset-3a785bf0 = alterado
the-machine-has-flooded-the-b2b6424b = ¡La máquina ha inundado todo el sótano! Lavó anoche, y esta mañana metí los pies en el agua. Tiene que hacer que deje de perder agua.
four-steps-down-to-the-cellar-89a60844 = Cuatro escalones hacia abajo hasta el sótano. La toma de corriente está a un palmo del suelo.
in-the-cellar-under-water-up-to-57edada7 = En el sótano, con el agua hasta el tobillo.
it-did-its-wash-then-the-water-00adae3b = Hizo su lavado. Luego vino el agua.
it-never-leaked-before-a92e987f = Nunca había perdido agua.
it-is-empty-i-took-the-washing-e7ce86d5 = Está vacía, saqué la ropa.
a-gurgling-but-from-the-drain-in-87b92233 = Un gorgoteo, pero del desagüe del suelo.
the-light-still-works-37984a12 = La luz todavía funciona.
nothing-the-dial-stood-at-off-8b8fa876 = Nada. El dial estaba en apagado.
since-this-morning-466a39b3 = Desde esta mañana.
like-the-canal-98659eec = Al canal.
i-shut-the-tap-and-it-still-9b7dcc20 = Cerré el grifo, y sigue subiendo.
in-the-night-i-suppose-the-wash-e6ba76d4 = Por la noche, supongo. El lavado terminó a las diez.
no-nobody-b62f45b1 = No, nadie.

### water_runs_at_once.json

water-runs-as-soon-as-it-is-f9434d8a = El agua corre en cuanto se enciende
ms-rao-69e5b38b = Sra. Rao
fifth-floor-new-building-3596b3b6 = quinto piso, edificio nuevo
careful-reads-manuals-db398763 = cuidadosa, lee los manuales
the-moment-i-switch-it-on-the-a119d69e = En el momento en que la enciendo corre el agua, antes de que haya pulsado inicio. Se corta cuando la apago. Ahora tengo el grifo cerrado.
the-manual-lies-on-the-lid-the-417f4588 = El manual está sobre la tapa. A la clienta le gustaría ver cada lectura.
the-hum-on-top-as-when-it-fills-3622fce3 = El zumbido de arriba, como cuando llena.
the-lights-flickered-in-the-e3277375 = Las luces parpadearon con la tormenta. El interruptor de la casa no saltó.
after-a-while-overflow-danger-193175b1 = Al cabo de un rato «Peligro de desbordamiento», y entonces suelta agua.
since-the-storm-last-week-i-f0b7b148 = Desde la tormenta de la semana pasada, creo.
no-the-floor-is-dry-because-i-f39bfeb2 = No. El suelo está seco porque la vigilé.
strong-the-tap-is-shut-now-9ac9d17e = Fuerte. El grifo está cerrado ahora.
at-once-it-does-not-wait-for-5d981576 = Enseguida. No espera a inicio.
no-it-is-out-of-warranty-by-a-449f109a = No. Hace un mes que se le acabó la garantía.

### weak_in_the_new_place.json

it-has-been-weak-since-we-moved-dd67acfb = Está floja desde que nos mudamos
mr-delacruz-whitby-4c87b8f8 = Sr. Delacruz-Whitby
rented-cottage-back-porch-f9f8918f = casita alquilada, porche trasero
annoyed-with-the-movers-566fba9e = molesto con los de la mudanza
in-the-old-house-it-was-strong-736c9bae = En la casa de antes era fuerte como un buey. Aquí remueve hacia un lado y apenas hacia el otro, y la luz del porche baja cuando trabaja. Los de la mudanza la habrán dejado caer.
a-flat-brown-cord-comes-out-of-25ee191f = Un cable plano marrón sale de la pared junto a la puerta. Hay una segunda toma de corriente, más nueva, detrás del banco. Un perro está tumbado en la entrada.
on-the-back-porch-mind-the-dog-54744b0e = En el porche trasero. Cuidado con el perro, solo quiere jugar.
it-hums-more-2317889a = Zumba más.
no-breaker-bf8151c8 = Ningún interruptor de la casa.
it-is-on-the-long-cord-from-the-0fbb7fd4 = Está con el cable largo que viene de la cocina. El dueño lo pasó por la pared.
nothing-special-82fe9da9 = Nada especial.
since-we-moved-in-df5f2cab = Desde que nos mudamos aquí.
by-the-outlet-maybe-a-warm-dust-2f87aec4 = Junto a la toma, quizá. Un olor como a polvo caliente.
in-the-wash-mostly-b5762d72 = En el lavado, sobre todo.
the-movers-had-it-on-its-side-1c32d345 = Los de la mudanza la llevaron tumbada; dicen que no la dejaron caer.

### whines_and_stands.json

it-whines-and-the-drum-stands-e009984f = Gime y el tambor está quieto
sister-agathe-c002840d = Hermana Agathe
convent-kitchen-basement-laundry-570806cc = cocina de convento, lavadero en el sótano
kind-exact-009eb076 = bondadosa, exacta
it-washes-it-empties-then-it-d8004027 = Lava. Se vacía. Luego gime como en el lavado, durante el tiempo que antes centrifugaba, y la ropa se queda en el tambor como arcilla mojada.
flagstones-well-lit-a-second-92abf35b = Losas de piedra, bien iluminado, otro par de manos fuertes en la cocina.
table-linen-four-kilos-de8ce001 = Mantelería, cuatro kilos.
the-whine-of-the-wash-instead-of-8022add2 = El gemido del lavado, en lugar del ruido de viento.
the-dial-goes-through-to-the-end-e45a0b7e = El dial sigue hasta el final.
since-monday-6adf9167 = Desde el lunes.
the-gardener-is-our-mechanic-6f9d9f20 = Nuestro mecánico es el jardinero.
he-changed-the-spring-and-lever-a01f0057 = Cambió el resorte y la palanca de abajo el sábado, de una caja de piezas que nos dieron.

### whirls_and_does_not_wring.json

it-pumps-it-whirls-it-does-not-8213b2ed = Bombea, da vueltas, no escurre
mrs-oduya-prentiss-cb782d56 = Sra. Oduya-Prentiss
row-house-basement-b855c52e = casa en hilera, sótano
tired-three-small-children-f8d0ac4b = cansada, tres niños pequeños
the-water-goes-out-the-motor-92c0bed8 = El agua sale, el motor funciona, lo oigo. Pero el tambor no da vueltas. Llevo desde el jueves escurriendo pañales a mano.
dry-basement-good-light-a-7a516c8d = Sótano seco, buena luz, un vecino de enfrente se ofrece a ayudar a levantar.
diapers-baby-things-10ffd2e4 = Pañales de tela, cosas de bebé.
the-motor-and-the-pump-the-034c88f3 = El motor y la bomba. El pequeño ronroneo de antes del centrifugado ya no está.
it-counts-down-and-says-it-is-0a242a18 = Va descontando y dice que ha terminado.
thursday-466ee4fb = El jueves.
no-one-has-touched-it-acc44911 = Nadie la ha tocado.

### white_mountain.json

a-white-mountain-climbs-out-of-bc952384 = Le sale una montaña blanca
jomo-2ef957aa = Jomo
student-flat-fourth-floor-ac7d33f1 = apartamento de estudiante, cuarto piso
amused-and-a-bit-ashamed-c363b62c = divertido y un poco avergonzado
i-wanted-it-really-clean-this-eb7c606f = Esta vez quería la ropa limpia de verdad. Ahora sale una cosa blanca por la tapa y por la manguera, y el centrifugado es flojo, se queja y todo sale mojado.
a-packet-of-hand-washing-powder-5f6d8124 = Sobre la tapa hay un paquete de detergente en polvo para lavar a mano y un tazón de sopa.
i-have-only-done-three-washes-2ae2b783 = Solo he hecho tres lavados.
my-whole-wardrobe-not-packed-f500589f = Todo mi armario, sin apretar.
powder-a-cup-a-big-one-the-kind-15656557 = ¿Detergente en polvo? Una taza. Grande, de las de sopa. Y un poco del líquido.
it-groans-at-the-spin-383e68b6 = Se queja en el centrifugado.
it-shows-that-it-is-done-34a66bce = Muestra que ha terminado.
since-this-morning-it-is-my-559c9af0 = Desde esta mañana. Es mi primera semana con lavadora.
it-smells-of-lavender-strongly-94772e34 = Huele a lavanda. Mucho.
it-starts-in-the-wash-at-the-de346864 = Empieza en el lavado. En el centrifugado es peor.

### first_month.json

a-first-month-b22e9fc8 = Un primer mes
twenty-four-calls-in-an-order-59f8f1a8 = Veinticuatro avisos en un orden que va subiendo: primero preguntar, mirar y la casa alrededor de la máquina, luego abrir y medir, después averías que se esconden.

### first_visits.json

first-visits-alone-de727dd4 = Primeras visitas a solas

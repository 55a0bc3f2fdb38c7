### bench/acts/access.rs

the-basket-is-still-turning-49dc3875 = el cesto todavía gira
it-stands-under-water-take-the-026a2857 = está bajo el agua: sacar antes el agua
the-supply-hose-still-holds-it-de8f62cd = la manguera de entrada todavía lo sujeta
the-lid-is-shut-db3c9be3 = la tapa está cerrada
water-ran-out-of-the-joint-with-3db4b7d3 = salió agua de la unión, sin nada debajo
the-tub-was-not-empty-its-water-fc368c10 = la cuba no estaba vacía: su agua se derramó sobre el motor y el suelo
the-machine-slipped-from-the-5e4a1c13 = la máquina se escapó de las manos: una pata está doblada, el suelo está desconchado

### bench/acts/agree.rs

an-estimate-names-at-least-one-e0e89a25 = un presupuesto dice al menos un precio
price-is-no-price-43890080 = { $price } no es un precio
whoever-stands-there-pays-8dfdb819 = paga quien está ahí delante
no-estimate-was-declined-935f7989 = no se rechazó ningún presupuesto
repair-29520bb4 = reparación
repair-with-a-part-of-another-39fb46b8 = reparación con una pieza de otra marca
a-new-machine-instead-3aa8fea9 = en su lugar, una máquina nueva
the-tenant-cannot-agree-the-1771c235 = el inquilino no puede aceptarlo: paga el propietario
customer-declined-4b22d4cd = el cliente lo rechazó
no-receipt-75f22286 = sin recibo
no-warranty-1027aaae = sin garantía
rating-plate-readable-and-the-81213b3d = placa de características legible y el mismo número
rating-plate-missing-or-another-e6ad6acb = placa de características ausente o con otro número
signs-of-misuse-5607db98 = señales de mal uso
no-sign-of-misuse-50cfc4ae = ninguna señal de mal uso
who-pays-the-maker-under-e5b3b1d5 = Quién paga: el fabricante, por la garantía
who-pays-whoever-owns-the-1b52c027 = Quién paga: el dueño de la máquina

### bench/acts/finishing.rs

oh-it-just-does-not-work-as-it-e6bdb210 = Bueno, que no funciona como debería, nada más.
notebook-line-n-47ec424a = línea { $n } del cuaderno
a-remark-needs-words-afc07ab0 = una observación necesita palabras
a-remark-has-at-most-most-31944268 = una observación tiene { $most } letras como máximo, esta tiene { $n }
no-fault-in-the-machine-f668fb93 = ninguna avería en la máquina
told-and-shown-what-was-wrong-ee1ee418 = Dicho y enseñado: qué estaba mal y qué se hizo
told-how-much-to-load-and-how-to-78b72f6e = Dicho: cuánta carga poner y cómo repartirla
told-how-much-detergent-69819e4d = Dicho: cuánto detergente
told-clean-the-filters-now-and-2eabc7f1 = Dicho: limpiar los filtros de vez en cuando
told-have-the-house-wiring-seen-399ee2aa = Dicho: hacer que un electricista revise la instalación de la casa
told-a-new-machine-is-the-better-d7832225 = Dicho: la mejor compra es una máquina nueva
told-keep-it-level-and-do-not-69d0132c = Dicho: mantenerla nivelada, y no moverla sin ayuda
shown-the-old-part-beside-the-fca5a006 = Enseñado: la pieza vieja junto a la nueva

### bench/acts/gauge.rs

this-instrument-is-not-in-the-860b6203 = este instrumento no está en la bolsa en este trabajo
the-hose-is-on-the-machine-shut-266f23ca = la manguera está en la máquina: cerrar antes el grifo y quitarla
the-hose-is-off-f57073a2 = la manguera está quitada
the-basket-stands-there-is-9eaa4134 = el cesto está parado: no hay nada que cronometrar
no-water-runs-in-there-is-6575a42f = no entra agua: no hay nada que cronometrar
no-water-runs-out-there-is-21c6ec06 = no sale agua: no hay nada que cronometrar
the-drain-motor-rests-there-is-96d335f3 = el motor de desagüe está en reposo: no hay nada que cronometrar
the-belt-runs-3f6b8759 = la correa está en marcha
there-is-no-belt-to-gauge-it-b821af7b = no hay correa que medir: cuelga o está salida
the-lever-s-end-lies-beside-its-7913fc0e = el extremo de la palanca está al lado de su enganche: no hay juego que medir
the-supply-line-was-opened-under-bf34f294 = se abrió la línea de entrada con presión

### bench/acts/handle.rs

blanket-laid-where-the-machine-75b45cc7 = Manta puesta donde se tumbará la máquina
asked-for-the-room-to-be-kept-e8876b02 = Pedido que se mantenga el cuarto despejado
floor-mopped-dry-c9744667 = Suelo secado
a-bucket-of-cold-water-poured-in-70b2f5d6 = Echado un cubo de agua fría
wiring-of-the-house-worked-on-c5f0bfb2 = Se trabajó en la instalación de la casa
dried-inside-with-cloth-and-warm-20e4f50d = Secada por dentro, con paño y aire caliente
the-cabinet-has-marked-the-floor-bf557d5d = el gabinete ha marcado el suelo
you-slipped-on-the-wet-floor-02114269 = ha resbalado en el suelo mojado
the-sheet-edge-cut-your-hand-c47d3178 = el borde de la chapa le ha cortado la mano
hot-water-ran-over-your-hand-9d0a45f8 = le ha caído agua caliente en la mano
the-part-is-too-hot-to-touch-b01bba3c = la pieza está demasiado caliente para tocarla

### bench/acts/isolate.rs

the-plug-is-in-the-socket-966b8abd = la clavija está en la toma de corriente
the-supply-hose-came-off-under-1fc81830 = la manguera de entrada se soltó con presión
the-blade-of-a-screwdriver-with-9f8610e6 = la hoja de un destornillador, con un estallido y una marca de quemadura

### bench/acts/leave.rs

the-van-has-eight-slots-for-6a1f2cda = la furgoneta tiene ocho huecos para piezas
part-is-no-longer-made-3b4af813 = ya no se fabrica: { $part }
left-until-the-second-visit-17c44901 = Dejada hasta la segunda visita, etiquetada «no usar»
left-until-the-second-visit-b4572f07 = Dejada hasta la segunda visita, sin etiqueta
second-visit-somebody-has-tried-8ad901b6 = Segunda visita: alguien la ha probado; clavija puesta, grifo abierto
second-visit-as-it-was-left-acba5e31 = Segunda visita: tal como se dejó
left-isolated-and-labelled-e11b83fe = Dejada aislada y etiquetada; cliente informado
handed-over-66c265b1 = Entregada

### bench/acts/measure.rs

the-plug-is-in-the-socket-pull-f748e9e3 = la clavija está en la toma de corriente: sacarla antes
the-cord-s-conductors-lie-in-one-7fb9679c = los conductores del cable de alimentación van en una misma cubierta: poner el cable separador
current-a-through-the-instrument-105805c7 = { $current } A a través del instrumento hasta que se abrió su fusible de 10 A, { $time } ms
the-instrument-8a81578d = el instrumento
instrument-9a67fb30 = instrumento
the-spare-instrument-is-in-hand-4d652250 = El instrumento de repuesto está en la mano

### bench/acts/mod.rs

water-has-run-onto-the-floor-2c494f72 = ha caído agua al suelo

### bench/acts/office.rs

you-are-at-the-customer-s-bad8a7a6 = ya se está en casa del cliente
the-store-has-no-part-today-ecf2c7a2 = hoy el almacén no tiene: { $part }
one-part-is-enough-687d235e = con una unidad basta: { $part }

### bench/acts/order.rs

the-raised-cover-came-down-on-fa355d42 = la cubierta levantada cayó sobre las manos: nada la sujetaba

### bench/acts/parts.rs

the-part-in-the-machine-is-the-84b2211c = la pieza que está en la máquina es la vieja
once-fitted-it-is-sold-the-store-191d6d9e = una vez montada, está vendida: el almacén no la acepta de vuelta

### bench/acts/report.rs

picture-taken-the-machine-from-a5607239 = Foto tomada: la máquina por fuera
picture-taken-the-machine-opened-56213837 = Foto tomada: la máquina abierta
the-report-names-no-cause-yet-4d0ade5c = el informe todavía no nombra ninguna causa
the-customer-wants-to-be-told-6c295f89 = el cliente quiere que antes se le diga qué se hizo
report-read-and-signed-by-the-925cd26a = Informe leído y firmado por el cliente

### bench/acts/touch.rs

# it opened the circuit
nothing-60823bd0 = terminó, sin que nada abriera el circuito
zone-effect-3a3b86e7 = { $zone } ({ $effect })
the-hand-be251895 = la mano

### bench/after_repair.rs

en-50678-en-50699-from-memory-9f4db445 = EN 50678 / EN 50699 (de memoria)
common-practice-7984cd95 = práctica común
plug-cord-covers-and-screws-e04f4f25 = clavija, cable de alimentación, cubiertas y tornillos; nada sin montar, ningún cable debajo de un borde
nothing-damaged-or-missing-807290be = nada dañado ni ausente
protective-conductor-fdcbd96f = conductor de protección
plug-out-earth-pin-to-the-50787348 = clavija fuera: de la espiga de tierra al gabinete
t-0-3-at-most-abf45ab9 = 0.3 Ω como máximo
t-1-m-at-least-abadc69a = 1 MΩ como mínimo
protective-conductor-current-9d3ffd43 = corriente del conductor de protección
plug-in-running-shows-most-the-da8cfeb7 = clavija puesta, en marcha muestra más: la pinza de fuga en su cable separador
t-3-5-ma-at-most-bcf24447 = 3.5 mA como máximo
touch-current-8f797c6d = corriente de contacto
plug-in-running-shows-most-metal-50c19b61 = clavija puesta, en marcha muestra más: metal al alcance de la mano, a través de 2 kΩ a tierra
t-0-5-ma-at-most-84defd64 = 0.5 mA como máximo
functions-454a414e = funciones
fill-wash-both-ways-drain-spin-cc708574 = llenar, lavar en los dos sentidos, desaguar, centrifugar
each-of-them-seen-5708d2b8 = visto cada uno de ellos
lid-304cbc86 = tapa
opened-at-full-spin-the-basket-d71dd327 = abierta en pleno centrifugado: el cesto está parado en 7 s
t-7-s-at-most-7746f6d3 = 7 s como máximo
from-memory-e401e148 = de memoria
leaks-7aa35ac7 = fugas de agua
after-filling-and-draining-look-cd717f0c = después de llenar y desaguar, mirar debajo de la máquina
dry-dc25c75e = seco
plug-out-timer-knob-pulled-out-d800b4fa = clavija fuera, botón giratorio del programador sacado: fase y neutro juntos contra la espiga de tierra, 500 V
plug-out-switch-pressed-in-line-52e2ba28 = clavija fuera, interruptor pulsado: fase y neutro juntos contra la espiga de tierra, 500 V
plug-out-line-and-neutral-53a28c09 = clavija fuera: fase y neutro juntos contra la espiga de tierra, 500 V

### bench/bill.rs

fee-for-finding-the-fault-08efa26e = tarifa por encontrar la avería
to-pay-71acc4c2 = por pagar
call-out-1531ebd0 = desplazamiento
second-visit-5c3422ca = segunda visita
labour-n-min-30497682 = mano de obra, { $n } min
part-name-33bd0173 = pieza: { $name }
small-material-919d814d = material menudo
to-pay-the-maker-pays-a9c11742 = por pagar: paga el fabricante
to-pay-as-agreed-89c12162 = por pagar, según lo acordado

### bench/gauge.rs

off-the-scale-e5283ddf = fuera de escala

### bench/gauge_scales.rs

jug-and-watch-ce04472b = jarra y reloj
a-bucket-under-it-hot-water-e4d10194 = un cubo debajo; el agua caliente escalda
pressure-gauge-e4b9b98d = manómetro
tap-shut-and-hose-bled-before-6cac90bc = grifo cerrado y manguera purgada antes de poner la te
u-tube-4387b325 = tubo en U
never-blow-hard-into-the-sensor-18d1f7c1 = no soplar nunca fuerte en el sensor
tachometer-c9276a77 = tacómetro
by-its-beam-from-outside-no-hand-8baefd92 = con su haz de luz, desde fuera: ninguna mano cerca de lo que gira
spirit-level-5c3c6e8e = nivel de burbuja
spring-balance-and-rule-5b81decd = dinamómetro y regla
keep-fingers-out-of-the-pulleys-f477c42a = no meter los dedos en las poleas
belt-gauge-cab1d473 = medidor de tensión de correa
contact-thermometer-7a3303b3 = termómetro de contacto
the-motor-stays-hot-long-after-16773ab0 = el motor sigue caliente mucho después de pararse
rule-fc2e40d3 = regla

### bench/hint.rs

a-question-back-cbeeb1d3 = una pregunta de vuelta
where-to-look-9fe91c80 = dónde mirar
which-step-848d41b4 = qué paso
what-it-would-mean-8e36383e = qué significaría
this-job-gives-no-hints-63a26d95 = este trabajo no da pistas
there-is-no-further-hint-until-eafcd752 = no hay más pistas hasta que se haga otra cosa

### bench/instrument.rs

the-battery-sign-is-on-74183b33 = el símbolo de la batería está encendido
ohms-35092b8a = ohmios
earth-bond-0-2-a-6d5447ab = continuidad de tierra, 0.2 A
a-lead-is-cracked-down-to-the-45e5d288 = una punta está agrietada hasta el hilo
leads-whole-to-look-at-51a32110 = puntas enteras a la vista
no-measurement-category-printed-45342f62 = no lleva impresa ninguna categoría de medida

### bench/kept.rs

it-gives-n-mm-under-a-finger-8e5a0f32 = cede { $n } mm bajo un dedo
the-wire-travels-n-mm-c2e5847a = el cable de tracción recorre { $n } mm
pushed-it-settles-after-n-swings-1b66f4ee = empujada, se calma tras { $n } balanceos
about-n-l-min-at-the-hose-end-957d08db = unos { $n } L/min en el extremo de la manguera
water-about-n-mm-deep-7883e0b1 = agua de unos { $n } mm de profundidad
the-basket-turns-about-n-r-min-e9e24efa = el cesto gira, a unas { $n } r/min
the-tub-swings-about-n-mm-b578ba47 = la cuba se balancea unos { $n } mm
the-pulsator-turns-one-way-about-f1e35713 = el impulsor gira en un sentido, a unas { $n } r/min
the-pulsator-turns-the-other-way-125e6370 = el impulsor gira en el otro sentido, a unas { $n } r/min
the-machine-leans-about-n-to-one-3b0446c7 = la máquina está inclinada, unos { $n }° hacia un lado
about-n-mm-of-play-c4869e51 = unos { $n } mm de juego
pulled-about-n-mm-4bd73740 = recogido unos { $n } mm
the-wire-is-pulled-n-mm-4c05e4d3 = el cable de tracción está recogido { $n } mm
the-label-says-n-f-28ad7563 = la etiqueta dice { $n } µF
about-n-mm-between-lever-and-tub-131a420a = unos { $n } mm entre la palanca y la cuba
probes-together-on-instrument-59125993 = puntas juntas en { $instrument }: { $value }
battery-at-n-of-its-voltage-04407f61 = batería al { $n } % de su voltaje
calibrated-n-months-ago-d2effcfc = calibrado hace { $n } meses
category-category-printed-on-it-70af536f = lleva impresa la categoría { $category }
the-connector-is-apart-37df8183 = sin conectar: { $connector }
wire-it-does-not-sit-home-9b733956 = { $wire }: no asienta hasta el fondo
wire-brown-and-rough-64116e34 = { $wire }: color marrón y superficie áspera
point-the-contactless-tester-b13b2f8d = { $point }: el detector sin contacto se enciende
point-the-contactless-tester-ac1c1e66 = { $point }: el detector sin contacto se queda apagado
remark-own-6b814b4f = Observación: { $own }
price-named-offers-answer-16898539 = Precio dicho: { $offers }; { $answer }
customer-agreed-what-eda9cec3 = el cliente aceptó: { $what }
customer-asks-could-you-do-it-7347a084 = el cliente pregunta: ¿podría hacerlo por { $price }?
offer-or-other-02bacc96 = { $offer }, o { $other }
what-for-price-fef2e461 = { $what } por { $price }
landlord-on-the-phone-agrees-to-c8986f48 = El propietario, por teléfono: acepta una reparación de hasta { $price }
fee-for-finding-the-fault-price-ca048e2d = Tarifa por encontrar la avería: { $price }
papers-bought-covered-plate-1a1d634c = Papeles: { $bought }; { $covered }; { $plate }; { $misuse }
bought-n-months-ago-by-the-f1ca66de = comprada hace { $n } meses según el recibo
the-maker-pays-for-n-months-1f28d9eb = el fabricante paga durante { $n } meses
fault-found-causes-f3d2d4b9 = Avería encontrada: { $causes }
cause-other-a046f299 = { $cause }; { $other }
part-old-one-put-back-new-one-5747b0a7 = { $part }: la pieza vieja puesta de nuevo, la nueva otra vez en la furgoneta
connector-pulled-apart-c69e9d9e = { $connector }: se desconectó
connector-pushed-home-8b5e613a = { $connector }: se conectó hasta el tope
name-verb-1-of-n-is-left-over-on-8f3ac54f = { $name }: { $verb }; 1 de { $n } sobra sobre el paño
name-verb-checked-d62de14e = { $name }: { $verb }, comprobado
work-1-of-n-is-left-over-on-the-767e9010 = { $work }; 1 de { $n } sobra sobre el paño
work-checked-a6d3b9bb = { $work }, comprobado
name-verb-5c4a4d59 = { $name }: { $verb }
machine-it-says-so-on-the-front-acb4225e = { $machine }. Lo pone en el frente.
voltage-on-the-circuit-about-n-v-9747a7cb = voltaje en el circuito: unos { $n } V
n-mm-water-ab9a4664 = { $n } mm de agua
dial-at-n-2bffd6a4 = dial en { $n }
level-name-e0e2bd56 = nivel { $name }
low-4f516a81 = bajo
medium-35afd776 = medio
high-3dddb9fd = alto
service-test-n-26b1f1d8 = Prueba de servicio { $n }
lid-closed-fec9fade = tapa cerrada
lid-open-6801fcda = tapa abierta
off-ab3a8a0a = apagada
running-147eb74c = en marcha
on-61342fd0 = encendida
on-display-dark-3f44003a = encendida, pantalla apagada
ready-660ec0f4 = lista
starts-later-5e91d8d6 = empieza más tarde
soaking-a3f6314d = en remojo
stopping-160a4da9 = parando
spreading-the-load-b6b8048f = repartiendo la carga
close-the-lid-d511a9a1 = cerrar la tapa
paused-0a1997cb = en pausa
waiting-for-the-supply-e9769d97 = esperando la red
power-was-off-press-start-to-go-da7c2d03 = se cortó la corriente: pulsar inicio para seguir
finished-ade176a3 = terminado
service-test-2912eca8 = prueba de servicio
drain-the-tub-first-bd65a183 = desaguar antes la cuba
fills-too-slowly-fa271a53 = llena demasiado despacio
drains-too-slowly-65e337e6 = desagua demasiado despacio
basket-keeps-swinging-d1e48139 = el cesto no deja de bambolearse
lid-is-open-cfa59aaa = la tapa está abierta
water-level-reading-not-127ef074 = lectura del nivel de agua no plausible
overflow-danger-4e08b9aa = peligro de desbordamiento
the-display-reads-shown-25978513 = la pantalla muestra «{ $shown }»

### bench/observe/feel.rs

the-valve-trembles-with-the-43df6979 = la válvula vibra con la red
the-drain-hose-is-squeezed-or-fc4b0dc4 = la manguera de desagüe está aplastada o llena de pelusa en un punto
the-basket-tilts-on-its-flange-a71d6622 = el cesto se ladea en su brida
the-pulsator-lifts-and-rattles-8eea82ae = el impulsor se levanta y traquetea
too-hot-to-touch-59beeaec = demasiado caliente para tocarlo
warm-81fa6638 = tibio
cool-f03e2abc = frío

### bench/observe/hands.rs

the-pulsator-is-jammed-something-c98a3a1a = el impulsor está atascado; hay algo debajo
the-pulsator-scrapes-8453372f = el impulsor raspa
the-pulsator-slips-on-its-shaft-27ef437f = el impulsor resbala en su eje con un clic
the-pulsator-turns-with-even-bad405fb = el impulsor gira con resistencia uniforme
behind-the-gear-something-is-668190bb = detrás del engranaje hay algo agarrotado
the-basket-is-held-06848431 = el cesto está sujeto
the-basket-turns-but-drags-on-1f0a9afb = el cesto gira, pero roza con el freno
the-basket-turns-freely-2c6a3ff7 = el cesto gira libre
it-turns-roughly-with-a-rumble-398ebe16 = gira con aspereza, con un retumbo
a-scratch-once-a-turn-6ac13103 = un rasguño una vez por vuelta
the-motor-shaft-does-not-turn-438a4ba6 = el eje del motor no gira
the-motor-shaft-is-stiff-8abf9f25 = el eje del motor está duro
the-motor-shaft-turns-freely-bac7860e = el eje del motor gira libre
there-is-no-belt-to-press-67b96353 = no hay correa que apretar
the-clutch-lever-stays-where-it-5d1cf0b3 = la palanca del embrague se queda donde está
the-lever-follows-and-the-brake-d0a744c8 = la palanca sigue y el freno suelta
the-lever-follows-but-the-brake-e34aac1b = la palanca sigue pero el freno no suelta
moved-by-hand-the-brake-frees-a02ecbb9 = movida a mano, el freno suelta
moved-by-hand-the-brake-still-980d5e66 = movida a mano, el freno sigue sujetando
the-clutch-grips-03091a20 = el embrague agarra
the-clutch-slips-8fb7a1aa = el embrague patina
the-tub-cannot-be-pushed-0ee83d00 = la cuba no se puede empujar
the-lever-does-not-spring-back-f84fe200 = la palanca no vuelve por resorte
the-lever-clicks-and-springs-4ee09259 = la palanca hace clic y vuelve por resorte

### bench/observe/listen.rs

a-steady-hum-9aec83d8 = un zumbido constante
a-fan-s-rush-from-below-1217d5b4 = el soplo de un ventilador desde abajo
a-thin-whine-from-the-motor-8e2ef416 = un gemido fino del motor
a-soft-thump-at-the-belt-s-rate-45b850c3 = un golpe sordo y suave al ritmo de la correa
a-squeal-from-below-147114fc = un chirrido desde abajo
a-gear-s-whine-bf3e006a = el gemido de un engranaje
a-knock-at-each-reversal-7bc7a7bc = un golpe en cada cambio de sentido
water-swashing-aed4d596 = agua que chapotea
air-rushing-round-the-basket-8df0996c = aire que sopla alrededor del cesto
a-rumble-once-the-basket-turns-0d99fa0d = un retumbo en cuanto gira el cesto
a-scrape-once-a-turn-83b64965 = un raspado una vez por vuelta
the-tub-bangs-against-the-0d88e318 = la cuba golpea contra el gabinete
water-running-in-6c44ed96 = agua que entra
a-hiss-at-the-back-023c7540 = un siseo por detrás
a-faint-hum-at-the-back-ce228181 = un zumbido débil por detrás
a-thud-in-the-pipe-6e6882b5 = un golpe sordo en la tubería
water-running-out-873ca3d7 = agua que sale
a-gurgle-in-the-drain-0f1ddfda = un gorgoteo en el desagüe
a-pump-s-buzz-ab07c409 = el zumbido fuerte de una bomba
a-small-whirr-from-below-1b06184e = un pequeño ronroneo desde abajo
a-faint-hum-from-below-3a4007c1 = un zumbido débil desde abajo
a-clack-from-below-67970299 = un chasquido desde abajo
something-rattles-in-the-cabinet-34dbdb24 = algo traquetea en el gabinete
a-rub-while-the-basket-stops-0a52b57a = un roce mientras se para el cesto

### bench/observe/look.rs

the-tap-is-shut-e3ed3ad7 = el grifo está cerrado
the-tap-is-hardly-open-259daf45 = el grifo está apenas abierto
the-tap-is-open-a517b4f1 = el grifo está abierto
the-supply-hose-is-kinked-behind-f07fe548 = la manguera de entrada está doblada detrás de la máquina
drops-at-the-hose-nut-c032328d = gotas en la tuerca de la manguera
the-inlet-filter-is-packed-with-e49a8cad = el filtro de entrada está repleto de arena y óxido
the-inlet-filter-is-mostly-cd650135 = el filtro de entrada está cubierto en su mayor parte de suciedad
the-inlet-filter-is-clean-ad4a47ff = el filtro de entrada está limpio
a-thin-trickle-at-the-hose-end-e1d7bb05 = un hilito fino en el extremo de la manguera
the-hose-end-hangs-too-high-0ea97571 = el extremo de la manguera cuelga demasiado alto
the-hose-end-lies-too-low-008fa5b3 = el extremo de la manguera está demasiado bajo
suds-come-out-of-the-hose-end-f1a441d6 = sale espuma del extremo de la manguera
a-puddle-under-the-machine-e8e03790 = un charco debajo de la máquina
damp-under-the-machine-7b9933b3 = humedad debajo de la máquina
dry-under-the-machine-09b1185e = seco debajo de la máquina
the-display-is-dark-1cdbcfda = la pantalla está apagada
the-lid-is-open-03e1d7b5 = la tapa está abierta
a-thick-layer-of-suds-4bcbbbc2 = una capa gruesa de espuma
the-tub-hangs-crooked-125a3447 = la cuba cuelga torcida
the-pulsator-stands-still-7aae8811 = el impulsor está parado
the-pulsator-sits-loose-f26cefa9 = el impulsor está flojo
the-machine-leans-a-little-to-9515aefd = la máquina está un poco inclinada hacia un lado
the-machine-stands-level-100c8274 = la máquina está nivelada
one-foot-lifts-when-a-corner-is-06c3485b = una pata se levanta cuando se aprieta una esquina
the-plug-is-in-its-socket-e0909252 = la clavija está en su toma de corriente
the-plug-is-out-ffbeef24 = la clavija está fuera
a-crust-of-salt-on-the-balance-89bdbb50 = una costra de sal en el anillo de equilibrado

### bench/observe/look_below.rs

the-belt-is-off-454c8016 = la correa está salida
the-belt-hangs-slack-black-dust-9f169116 = la correa cuelga floja; polvo negro alrededor de las poleas
the-belt-is-tight-as-a-string-144a48eb = la correa está tensa como una cuerda
the-belt-sits-in-line-a5802115 = la correa está alineada
the-belt-s-flanks-are-dark-and-cda68876 = los flancos de la correa están oscuros y brillantes
the-belt-is-cracked-f0ad8b1c = la correa está agrietada
the-pulley-s-mark-has-moved-9101f9cb = la marca de la polea se ha desplazado respecto al eje
the-motor-stands-still-93c88ad4 = el motor está parado
the-motor-s-slots-are-full-of-c5c99897 = las ranuras del motor están llenas de pelusa
the-clutch-lever-s-end-lies-0e263851 = el extremo de la palanca del embrague está al lado de su enganche
the-clutch-lever-sits-in-its-dd5ba85d = la palanca del embrague está en su enganche
the-clutch-lever-does-not-go-9f816405 = la palanca del embrague no vuelve del todo
the-wire-is-at-rest-e44adb3e = el cable de tracción está en reposo
lint-and-cloth-in-the-drain-9ea9b48f = pelusa y tela en la válvula de desagüe
the-bellows-does-not-close-on-a37b2ed4 = el fuelle no cierra sobre su asiento
dirt-on-the-valve-seat-5b38afc9 = suciedad en el asiento de la válvula
the-drain-joint-is-wet-333763ae = la unión de desagüe está mojada
the-capacitor-s-can-is-swollen-554ea69c = el cuerpo del condensador está hinchado
the-impeller-does-not-turn-fc1472df = el rodete no gira; hay algo metido en él
the-impeller-turns-with-a-finger-dcbd45ea = el rodete gira con un dedo
the-air-hose-is-off-or-split-f8197913 = la manguera de aire está suelta o rajada
a-chafed-spot-on-the-air-hose-fd296ae0 = un punto pelado por roce en la manguera de aire
the-air-hose-is-pinched-flat-f0c79ae9 = la manguera de aire está aplastada del todo
the-air-hose-has-a-kink-e6ff9d75 = la manguera de aire tiene un doblez
a-rusty-track-of-water-below-the-a65ffd06 = un rastro oxidado de agua debajo de la caja de engranajes
the-gearbox-moves-against-its-d15df09b = la caja de engranajes se mueve contra su placa
the-transport-pieces-are-still-b126116f = las piezas de transporte siguen puestas
one-rod-is-out-of-its-seat-4fe09bee = una varilla está fuera de su asiento
one-spring-is-shorter-than-the-ea632e3a = un resorte es más corto que los otros
oil-on-the-rods-cups-3efe773d = aceite en las copas de las varillas
the-lid-switch-is-not-pressed-2756ccbe = el interruptor de la tapa no está pulsado
the-lid-presses-the-lid-switch-9555f61c = la tapa pulsa el interruptor de la tapa
a-wire-bridge-sits-across-its-b7626417 = hay un puente de alambre entre sus terminales
the-out-of-balance-lever-is-403521e3 = la palanca de desequilibrio ya está empujada, con la cuba en reposo
the-out-of-balance-lever-is-bent-e5f5dc46 = la palanca de desequilibrio está doblada en dirección contraria a la cuba

### bench/observe/mod.rs

nothing-unusual-e5a680f1 = nada fuera de lo normal
drops-of-water-on-motor-and-110f763f = gotas de agua en el motor y los conectores
quiet-ea353217 = silencio
hot-varnish-f0fd6da3 = barniz caliente
hot-rubber-82d6397e = goma caliente
scorched-plastic-d1b233c0 = plástico chamuscado

### bench/observe/surroundings.rs

water-stands-in-the-room-more-13b33a2a = hay agua encharcada en el cuarto, más de la que cabe en una máquina
somebody-stands-in-the-door-and-32ec82e7 = hay alguien en la puerta que grita
the-socket-is-brown-and-soft-04ab1052 = la toma de corriente está marrón y blanda
the-plug-sits-in-an-adaptor-with-c03ecce9 = la clavija está en un adaptador con otras clavijas
the-plug-sits-in-a-rolled-up-eeda0ffe = la clavija está en un alargador de carrete enrollado
no-residual-current-device-in-d9f1874d = ningún interruptor diferencial en el cuadro de al lado
a-small-child-comes-to-look-280b9f64 = un niño pequeño se acerca a mirar
a-dog-lies-in-front-of-the-020a0b4e = un perro está echado delante de la máquina
a-soft-floor-that-marks-easily-6236297e = un suelo blando que se marca con facilidad
the-cut-edges-of-the-sheet-are-951816fb = los bordes cortados de la chapa están al descubierto
steam-rises-from-the-water-a2d3888f = sube vapor del agua

### bench/observe/wires.rs

a-wire-is-chafed-bare-copper-2c4d8944 = un cable está pelado por roce; el cobre desnudo toca metal
damp-and-green-between-the-pins-c9976cfa = humedad y verdín entre los pines

### bench/protection.rs

residual-current-device-e0830ed7 = se abrió el interruptor diferencial
circuit-breaker-23d46db8 = se abrió el interruptor automático
machine-fuse-367ca20f = se abrió el fusible de la máquina

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

water-used-0a746f55 = agua usada
water-on-the-floor-3706e824 = agua en el suelo
basket-stops-after-the-lid-is-099252e7 = el cesto se para tras abrir la tapa

### bench/visit.rs


### bench/words.rs

hand-over-5e9dcb2a = entregar
refit-7c3aa3df = volver a montar
continuity-ba1cb7df = continuidad
capacitance-74e2cf9d = capacitancia
frequency-2fb31c01 = frecuencia
clamp-a82efcbc = pinza

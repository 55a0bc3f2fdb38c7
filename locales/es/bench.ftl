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

oh-it-just-does-not-work-as-it-e6bdb210 = Pues eso, que no funciona como debería.
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

a-day-has-passed-since-you-rang-c810b28c = ha pasado un día desde que llamó al timbre: diga lo que encontró y entregue, o déjela segura y váyase
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
nothing-60823bd0 = nada
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
plug-in-running-shows-most-the-876382f2 = enchufada, en marcha muestra más: la pinza de fugas alrededor de fase y neutro juntos
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
watch-5fb7b228 = reloj
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
a-lead-is-cracked-down-to-the-45e5d288 = el cable de una punta está agrietado hasta el conductor
leads-whole-to-look-at-51a32110 = cables de las puntas enteros a la vista
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
pulled-about-n-mm-4bd73740 = estirada unos { $n } mm
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

the-valve-trembles-with-the-43df6979 = la válvula tiembla al ritmo de la red
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
a-scratch-once-a-turn-6ac13103 = raspa una vez por vuelta
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

residual-current-device-e0830ed7 = interruptor diferencial
circuit-breaker-23d46db8 = interruptor automático
machine-fuse-367ca20f = fusible de la máquina

### bench/questions.rs

when-in-the-wash-does-it-happen-7a1ed525 = ¿En qué momento del lavado pasa?
since-when-did-it-come-slowly-or-118ac7d8 = ¿Desde cuándo? ¿Vino poco a poco o de golpe?
does-it-happen-every-time-b045c126 = ¿Pasa todas las veces?
what-does-the-display-show-does-2610a410 = ¿Qué muestra la pantalla? ¿Pita?
does-it-make-a-noise-it-did-not-f0ea70c5 = ¿Hace algún ruido que no hacía antes?
any-smell-smoke-or-wet-floor-2fd6aa83 = ¿Algún olor, humo o el suelo mojado?
has-anyone-worked-on-it-or-moved-0da3ed19 = ¿Alguien ha trabajado en ella o la ha movido?
what-was-in-it-how-much-and-how-14f63e5f = ¿Qué tenía dentro, cuánto, y cuánto detergente en polvo?
is-the-tap-open-and-is-the-water-fe23ce1a = ¿El grifo está abierto, y el agua sale fuerte en otros sitios?
has-a-breaker-tripped-is-it-on-9752660a = ¿Ha saltado un interruptor de la casa? ¿Está en un alargador?
which-machine-is-it-and-how-old-beba7e7d = ¿Qué máquina es, y qué antigüedad tiene?
what-does-it-still-do-and-where-27e7f955 = ¿Qué hace todavía, y dónde se para?
where-does-it-stand-and-can-991cb6e3 = ¿Dónde está, y puede alguien ayudar a tumbarla?

### bench/safety/closing.rs

handed-over-with-a-failed-earth-1da023cf = Se entregó con una prueba de tierra no superada
without-earth-the-next-fault-is-88af2c24 = Sin tierra, la siguiente avería está en el gabinete, donde está la mano del cliente.
published-en-50678-en-50699-from-3a49add1 = publicado: EN 50678, EN 50699 (de memoria: 0.3 ohmios con un cable de hasta 5 m)
mend-the-earth-and-test-again-or-d1dfb6c3 = Reparar la tierra y probar otra vez, o poner la máquina fuera de uso.
handed-over-with-a-failed-cf4cc757 = Se entregó con una prueba de aislamiento no superada
what-leaks-through-today-flashes-708c10ba = Donde hoy hay una fuga, mañana salta un arco.
published-en-50678-en-50699-from-5d3a708f = publicado: EN 50678, EN 50699 (de memoria: 1 Mohm, clase I)
find-the-wet-or-burnt-part-test-e535eea8 = Encontrar la pieza mojada o quemada, probar otra vez, o poner la máquina fuera de uso.
handed-over-with-too-much-5619daed = Se entregó con demasiada corriente de fuga
all-of-it-flows-through-a-hand-3e3c7df6 = Toda ella pasa por una mano en cuanto se corta la tierra.
published-en-50678-en-50699-from-4f83b4b0 = publicado: EN 50678, EN 50699 (de memoria: 3.5 mA)
find-the-part-that-leaks-test-6da987f9 = Encontrar la pieza que tiene la fuga, probar otra vez, o poner la máquina fuera de uso.
no-earth-test-after-the-repair-a32ec6f0 = Ninguna prueba de tierra después de la reparación
an-earth-link-left-off-shows-in-32c1f799 = Una conexión de tierra sin montar no se nota en ninguna función de la máquina.
published-en-50678-from-memory-86d999d4 = publicado: EN 50678 (de memoria)
plug-earth-to-every-metal-part-f04ac021 = De la tierra de la clavija a cada parte de metal que se pueda tocar, moviendo el cable de alimentación.
no-insulation-or-leakage-test-3f0e8ebd = Ninguna prueba de aislamiento o de corriente de fuga después de la reparación
a-pinched-wire-works-perfectly-a6604e74 = Un cable aplastado funciona perfectamente hasta que alguien toca el gabinete.
t-500-v-dc-line-and-neutral-joined-4426da6e = 500 V CC, fase y neutro unidos, contra tierra; después la corriente de fuga en cada estado.
no-run-after-the-repair-54687c97 = Ninguna marcha después de la reparación
half-of-what-is-left-wrong-shows-7077594e = La mitad de lo que se deja mal se nota en los primeros cinco minutos.
published-en-50678-from-memory-06d7c550 = publicado: EN 50678 (de memoria): la función es la última prueba; práctica común
fill-both-directions-drain-spin-9826506c = Llenar, los dos sentidos, desaguar, centrifugar hasta la velocidad plena.
did-not-try-that-the-lid-stops-92e2fa25 = No se probó que la tapa para el centrifugado
a-welded-switch-or-a-weak-brake-daddf9cb = Un interruptor soldado o un freno débil no dan ninguna señal hasta que se prueban.
published-iec-60335-2-7-from-685afc17 = publicado: IEC 60335-2-7 (de memoria); práctica común
open-the-lid-at-full-speed-it-c25d898c = Abrir la tapa a la velocidad plena: se para en unos 3 s.
left-with-a-cover-off-68e884d9 = Se dejó con una cubierta quitada
live-and-moving-parts-are-within-37fdb329 = Las partes con voltaje y las que se mueven están al alcance de cualquiera.
published-iec-60335-1-8-from-941a969b = publicado: IEC 60335-1, 8 (de memoria)
close-the-machine-also-when-it-74bef626 = Cerrar la máquina, también cuando es solo hasta la siguiente visita.
left-with-an-earth-link-off-46684350 = Se dejó con una conexión de tierra sin montar
it-works-so-somebody-will-use-it-729b6bc6 = Funciona, así que alguien la usará.
published-en-50678-from-memory-df65f1e7 = publicado: EN 50678 (de memoria); práctica común
refit-every-earth-link-before-72aeffb0 = Volver a montar cada conexión de tierra antes de cerrar, también hasta la siguiente visita.
screws-or-clips-left-over-8e97123b = Sobraron tornillos o clips
panels-rattle-loose-and-a-3fddc5fd = Los paneles se aflojan traqueteando, y un tornillo que falta puede haber sido el camino a tierra.
count-them-out-and-count-them-in-6d9fe6d5 = Contarlos al quitarlos y contarlos al ponerlos.
left-an-unfinished-machine-f985fd0c = Se dejó una máquina sin terminar enchufada
somebody-will-try-it-74482563 = Alguien la probará.
unplug-label-do-not-use-tell-the-c81bf8c7 = Desenchufar, etiquetar «no usar», informar al cliente.
left-an-unfinished-machine-32447b74 = Se dejó una máquina sin terminar y sin etiqueta
whoever-comes-home-next-does-not-71f21cf7 = Quien llega después a casa no lo sabe, y la enchufa.
hang-a-label-do-not-use-on-the-1ce831a0 = Colgar una etiqueta «no usar» en la clavija e informar al cliente.
left-tools-or-parts-inside-976dcada = Se dejaron herramientas o piezas dentro
they-bridge-terminals-or-jam-the-be7dd4a1 = Puentean terminales o atascan el cesto.
count-the-tools-before-the-last-f1788786 = Contar las herramientas antes de poner la última cubierta.
the-socket-was-never-tested-241cd49f = La toma de corriente no se probó nunca
a-missing-earth-or-exchanged-8c35aaf7 = Una tierra que falta o unos cables intercambiados hacen peligrosa una máquina buena.
line-to-neutral-line-to-earth-a83050e8 = Fase a neutro, fase a tierra, neutro a tierra, antes que nada.
left-the-machine-connected-to-a-9ce966e2 = Se dejó la máquina conectada a una toma de corriente sin tierra
the-customer-has-felt-it-already-9ddd8656 = El cliente ya lo ha sentido; la siguiente avería es peor que un cosquilleo.
published-iec-60364-4-41-from-6aa7164c = publicado: IEC 60364-4-41 (de memoria)
unplug-label-tell-the-customer-182ba0b3 = Desenchufar, etiquetar, informar al cliente por escrito.
saw-a-defect-of-the-house-and-fb259afd = Se vio un defecto de la casa y no se dijo a nadie
the-technician-is-often-the-only-bddd9f5a = A menudo el técnico es la única persona que mirará alguna vez.
tell-and-write-it-down-what-859b4aa6 = Decirlo y escribirlo: qué, dónde, qué puede causar.

### bench/safety/handling.rs

laid-the-machine-down-alone-3e526675 = Se tumbó la máquina sin ayuda y sin correa de carga
t-35-kg-with-the-weight-up-high-8f5f3b15 = 35 kg con el peso arriba: ceden espaldas, pies y suelos.
get-help-or-use-a-strap-and-a-c6c364c7 = Pedir ayuda, o usar una correa de carga y una esquina para bajarla.
laid-the-machine-on-a-bare-floor-f35bc225 = Se tumbó la máquina sobre el suelo desnudo
tiles-chip-and-cabinets-scratch-bbba38c7 = Las baldosas se desconchan y los gabinetes se rayan; las dos cosas se pagan.
put-a-blanket-or-cardboard-under-68cb0236 = Poner debajo una manta o cartón.
reached-under-a-machine-that-was-df59635c = Se metió la mano debajo de una máquina que no estaba apuntalada
it-comes-back-on-the-arm-7dfda122 = Vuelve a caer sobre el brazo.
prop-it-or-lay-it-flat-before-d80cb6a4 = Apuntalarla o tumbarla del todo antes de meter la mano debajo.
worked-under-an-opened-top-37b0c51b = Se trabajó debajo de una cubierta superior abierta sin apoyo
it-falls-on-hands-and-its-edge-038207bb = Cae sobre las manos, y su borde es de chapa.
prop-or-tie-it-then-reach-in-15b4b71f = Apuntalarla o atarla, después meter la mano.
reached-past-sheet-metal-edges-d0ab1be6 = Se metió la mano entre bordes de chapa sin guantes
pressed-edges-cut-like-knives-fb9cc03d = Los bordes de chapa estampada cortan como cuchillos, sobre todo cuando algo resbala.
cut-proof-gloves-for-the-reach-aeef6aa6 = Guantes anticorte para meter la mano; fuera otra vez cerca de todo lo que gira.
touched-a-hot-part-1ec7156a = Se tocó una pieza caliente
a-motor-that-has-stalled-is-hot-994c1754 = Un motor que se ha quedado bloqueado quema todavía mucho después de pararse.
published-iso-13732-1-from-84e4fcd4 = publicado: ISO 13732-1 (de memoria)
feel-near-it-first-or-measure-518119f9 = Acercar antes la mano sin tocar, o medir; dejar que se enfríe.

### bench/safety/isolation.rs

touched-a-live-conductor-2516395d = Se tocó un conductor con voltaje
above-50-v-or-25-v-where-it-is-dce360ba = Por encima de 50 V, o de 25 V donde está mojado, puede pasar corriente suficiente para parar el corazón.
published-iec-60364-4-41-and-iec-3eaeee8e = publicado: IEC 60364-4-41 e IEC 60479-1 (de memoria)
unplug-prove-dead-and-only-then-bcce1e7a = Desenchufar, comprobar sin voltaje, y solo entonces poner las manos en los conductores.
worked-inside-with-the-machine-eff5cbe0 = Se trabajó dentro con la máquina encendida
conductors-are-live-and-a-6d6ab976 = Los conductores tienen voltaje, y un programa puede arrancar el motor en cualquier momento.
published-en-50110-1-6-2-from-078621c5 = publicado: EN 50110-1, 6.2 (de memoria)
switch-off-pull-the-plug-keep-it-61c91336 = Apagar, sacar la clavija, no perderla de vista.
relied-on-the-switch-and-left-ab5f9be2 = Se confió en el interruptor y se dejó la clavija puesta
the-switch-opens-one-conductor-f86c3d45 = El interruptor abre un solo conductor; con fase y neutro intercambiados, el resto sigue con voltaje.
published-en-50110-1-6-2-1-from-478ca2ff = publicado: EN 50110-1, 6.2.1 (de memoria); práctica común
pull-the-plug-it-opens-both-80e69bfa = Sacar la clavija: abre los dos conductores, y se ve que está fuera.
took-a-cover-off-with-the-plug-42ec8cfd = Se quitó una cubierta con la clavija puesta
live-parts-come-within-reach-a0fb5eec = Quedan al alcance partes con voltaje antes de que nadie haya decidido trabajar con voltaje.
pull-the-plug-first-put-it-back-6fa63490 = Sacar antes la clavija; volver a meterla solo para una medición que la necesite.
the-pulled-plug-was-out-of-sight-4bd840fd = La clavija sacada no estaba a la vista
somebody-may-put-it-back-while-c319d416 = Alguien puede volver a meterla mientras hay manos dentro.
published-en-50110-1-6-2-2-from-545bceb9 = publicado: EN 50110-1, 6.2.2 (de memoria)
keep-the-plug-in-sight-tag-it-or-ec82f931 = Tener la clavija a la vista, etiquetarla o bloquearla.
went-to-conductors-without-56c01e5f = Se fue a los conductores sin comprobar que no tenían voltaje
the-wrong-plug-a-second-feed-or-231126c4 = La clavija equivocada, una segunda alimentación o un filtro cargado solo se descubren midiendo.
published-en-50110-1-6-2-3-from-a10e4ab2 = publicado: EN 50110-1, 6.2.3 (de memoria)
prove-the-tester-test-line-88fa0b11 = Comprobar el comprobador, probar fase, neutro y tierra cada uno contra los otros, comprobar otra vez el comprobador.
took-a-contactless-tester-as-8327371a = Se tomó un detector sin contacto como demostración de que no hay voltaje
it-is-blind-behind-earthed-metal-25d7600d = No detecta nada detrás de metal con tierra ni con voltaje continuo; su silencio no demuestra nada.
use-a-two-pole-tester-or-a-meter-4a2d0fed = Usar un comprobador de dos polos o un multímetro en voltios.
took-an-ohm-reading-as-proof-of-7ac46d7a = Se tomó una lectura de ohmios como demostración de que no hay voltaje
on-a-live-circuit-an-ohmmeter-95e59873 = En un circuito con voltaje, un óhmetro muestra cualquier cosa, también «abierto», y puede quemarse.
published-en-50110-1-6-2-3-from-0bdab781 = publicado: EN 50110-1, 6.2.3 (de memoria); práctica común
prove-dead-with-volts-ohms-come-15989793 = Comprobar sin voltaje con voltios; los ohmios vienen después.
the-tester-was-not-proved-before-6971c96b = El comprobador no se comprobó antes de la prueba sin voltaje
a-flat-battery-or-a-broken-lead-f76900fa = Una batería agotada o una punta rota también marca cero.
measure-a-live-socket-first-on-53dfbfd0 = Medir antes una toma de corriente con voltaje, en la misma escala.
the-tester-was-not-proved-again-a9c3b3f4 = El comprobador no se comprobó otra vez después de la prueba sin voltaje
it-may-have-failed-in-between-a53bdb4e = Puede haber fallado entretanto; entonces el cero no valía nada.
go-back-to-the-same-live-socket-ca974dea = Volver a la misma toma de corriente con voltaje y ver otra vez la lectura.
did-not-test-all-conductors-2c59ac7a = No se probaron todos los conductores unos contra otros
with-a-broken-neutral-line-to-0e10343c = Con un neutro roto, de fase a neutro marca cero y los dos tienen voltaje contra tierra.
line-to-neutral-line-to-earth-431eced8 = Fase a neutro, fase a tierra, neutro a tierra.
touched-a-charged-capacitor-e08e84b6 = Se tocó un condensador cargado
a-run-capacitor-with-a-wire-off-7ff23d7c = Un condensador de marcha con un cable suelto guarda durante una hora una sacudida de más de un julio.
published-iec-60335-1-22-5-from-f624c261 = publicado: IEC 60335-1, 22.5 (de memoria: 34 V)
discharge-through-10-to-20-0f179be6 = Descargar a través de 10 a 20 kiloohmios, medir, después tocar.
touched-a-capacitor-without-7bd0c5e0 = Se tocó un condensador sin medirlo antes
it-was-empty-this-time-it-2e1ed034 = Esta vez estaba vacío. Se vacía por sí mismo solo mientras aguantan cables y bobinados.
treat-every-capacitor-as-charged-19447706 = Tratar todo condensador como cargado hasta que un multímetro diga otra cosa.
short-circuited-a-charged-a6f0c3d1 = Se puso en cortocircuito un condensador cargado
the-spark-throws-metal-and-c0d4a9bd = La chispa lanza metal y estropea el condensador.
use-a-resistor-of-10-to-20-cee9c530 = Usar una resistencia de 10 a 20 kiloohmios durante cinco constantes de tiempo.

### bench/safety/measuring.rs

measured-ohms-on-a-live-circuit-b04c7fab = Se midieron ohmios en un circuito con voltaje
the-reading-is-nonsense-and-the-73c842bd = La lectura no significa nada, y el multímetro puede quemarse en la mano.
unplug-and-prove-dead-then-a67b093d = Desenchufar y comprobar sin voltaje, después medir ohmios.
put-the-current-range-across-the-4380a993 = Se puso la escala de corriente entre los polos de la red
the-current-range-is-a-short-be2c00c5 = La escala de corriente es un cortocircuito: un arco en las puntas, si el fusible no es bueno.
published-iec-61010-2-033-from-5c3f5ce9 = publicado: IEC 61010-2-033 (de memoria); práctica común
use-a-clamp-put-the-leads-back-6cd74aec = Usar una pinza; volver a poner las puntas en voltios enseguida después de medir corriente.
used-a-meter-of-too-low-a-12aec54c = Se usó un multímetro de categoría demasiado baja
a-surge-on-the-mains-can-flash-48b3e2db = Una sobretensión de la red puede saltar en un arco dentro de un multímetro que no está hecho para ese lugar.
published-iec-61010-1-from-9a57c5a0 = publicado: IEC 61010-1 (de memoria)
at-a-socket-at-least-category-ii-6c9701cd = En una toma de corriente, categoría II como mínimo, mejor III, con puntas con fusible.
measured-mains-with-damaged-9bbc6a99 = Se midió la red con puntas de prueba dañadas
the-fingers-are-as-close-to-the-b60e8f6f = Los dedos están tan cerca de la red como la grieta del aislamiento.
look-the-leads-over-before-each-5445ce84 = Revisar las puntas de prueba antes de cada trabajo; tirar las malas.
used-an-instrument-without-4b4cb489 = Se usó un instrumento sin comprobarlo
a-flat-battery-a-blown-fuse-or-a-cf88a51a = Una batería agotada, un fusible fundido o una punta rota mienten, y en silencio.
look-at-leads-and-battery-short-c72f7d44 = Mirar puntas y batería, juntar las puntas en ohmios, medir un voltaje conocido.
probed-live-where-a-dead-test-546300ed = Se midió con voltaje donde bastaba una prueba sin voltaje
every-live-measurement-is-a-risk-597ccba1 = Toda medición con voltaje es un riesgo; debe dar algo que una sin voltaje no puede dar.
published-en-50110-1-4-1-from-b816935d = publicado: EN 50110-1, 4.1 (de memoria); práctica común
choose-the-dead-test-when-it-982b8019 = Elegir la prueba sin voltaje cuando resuelve la cuestión.
measured-live-standing-on-a-wet-ea50dddd = Se midió con voltaje de pie sobre un suelo mojado
wet-shoes-and-floor-take-away-21c3e630 = Los zapatos y el suelo mojados quitan la mayor parte de lo que hay entre el cuerpo y la tierra.
published-iec-60479-1-from-9892379e = publicado: IEC 60479-1 (de memoria): piel mojada; práctica común
dry-the-floor-first-or-stand-on-f1e479bf = Secar antes el suelo, o ponerse sobre algo aislante.
insulation-test-with-the-plug-in-b7c56f0f = Prueba de aislamiento con la clavija puesta
the-test-voltage-meets-the-mains-ab377bc4 = El voltaje de prueba se encuentra con la red: el medidor, la placa y la persona están en peligro.
published-en-50699-from-memory-7f0e8f31 = publicado: EN 50699 (de memoria)
unplug-join-line-and-neutral-4f62f487 = Desenchufar; unir fase y neutro; probar contra tierra.
insulation-test-across-1a9531d5 = Prueba de aislamiento a través de electrónica
t-500-v-across-a-board-or-its-2ef42448 = 500 V aplicados a una placa o a su supresor de sobretensiones la destruyen, o lo que se lee es el supresor.
test-joined-line-and-neutral-cf4aaa2d = Probar fase y neutro unidos contra tierra, nunca fase contra neutro.

### bench/safety/motion.rs

reached-into-a-spinning-basket-f48b2f2e = Se metió la mano en un cesto que centrifugaba
wet-cloth-winds-round-a-hand-and-b3b37471 = La tela mojada se enrolla en una mano y se lleva el brazo con ella.
published-iec-60335-2-7-from-ced1dc2b = publicado: IEC 60335-2-7 (de memoria: 60 r/min)
wait-until-it-stands-still-e03af94e = Esperar a que esté parado.
reached-into-a-basket-still-ab8b45d3 = Se metió la mano en un cesto que todavía giraba
even-a-slow-basket-has-the-11d5237e = Hasta un cesto lento lleva el impulso de la carga mojada.
reached-in-while-motor-or-belt-4d26af8c = Se metió la mano mientras giraban el motor o la correa
between-belt-and-pulley-fingers-8a5724de = Entre correa y polea se pierden los dedos.
switch-off-unplug-wait-until-342c4d0e = Apagar, desenchufar, esperar a que todo esté parado.
bridged-the-lid-switch-to-test-412d4e0e = Se puenteó el interruptor de la tapa para probarlo
the-guard-is-gone-while-it-is-042e9d66 = Mientras está puenteado no hay protección, y los puentes se olvidan.
unplug-and-measure-the-switch-89e3c265 = Desenchufar y medir la continuidad del interruptor, con la tapa abierta y cerrada.
started-the-machine-with-the-lid-878f5350 = Se puso en marcha la máquina con la tapa abierta y su interruptor puenteado
the-basket-spins-in-the-open-fd7f2edb = El cesto centrifuga al descubierto, al alcance de la mano.
take-the-bridge-out-shut-the-lid-ffb271d5 = Quitar el puente; cerrar la tapa.
left-the-lid-switch-bridged-78782e25 = Se dejó puenteado el interruptor de la tapa
from-now-on-the-basket-spins-a2338047 = Desde ahora el cesto centrifuga con la tapa abierta, y el cliente no lo sabe.
take-the-bridge-out-fit-a-switch-d39e15b6 = Quitar el puente, montar un interruptor, probar que la tapa para el centrifugado.
left-a-machine-that-spins-with-85c4e5e8 = Se dejó una máquina que centrifuga con la tapa abierta
a-welded-lid-switch-gives-no-493e9bc4 = Un interruptor de la tapa soldado no da quejas, solo un accidente.
published-iec-60335-2-7-from-8bef45e4 = publicado: IEC 60335-2-7 (de memoria)
mend-it-or-put-the-machine-out-9d30862d = Repararlo, o poner la máquina fuera de uso y decirlo por escrito.
started-with-tools-or-parts-57487d72 = Se puso en marcha con herramientas o piezas sueltas dentro
the-belt-throws-them-or-they-9cec08e1 = La correa las lanza, o puentean terminales con voltaje.
count-the-tools-look-with-a-lamp-67cb8c07 = Contar las herramientas, mirar con una lámpara, después poner en marcha.
energised-the-open-machine-with-df264375 = Se dio corriente a la máquina abierta con un niño o un animal cerca
they-reach-where-no-grown-person-ae84cf0b = Meten la mano o la pata donde ningún adulto lo haría.
ask-for-the-room-to-be-kept-free-b33bd75d = Pedir que se mantenga el cuarto despejado, o esperar.

### bench/safety/power.rs

energised-the-machine-with-an-374c58d3 = Se dio corriente a la máquina con una conexión de tierra sin montar
the-next-insulation-fault-puts-a8488d91 = La siguiente avería de aislamiento pone la red en el gabinete, y no salta nada.
refit-every-earth-link-and-f762f6b0 = Volver a montar cada conexión de tierra y medir la continuidad de tierra antes de meter la clavija.
energised-wet-electrics-fc52e51b = Se dio corriente a partes eléctricas mojadas
water-carries-mains-to-the-391e9a67 = El agua lleva la red al gabinete y a la mano.
dry-the-parts-measure-insulation-984515a9 = Secar las partes, medir el aislamiento, después enchufar.
energised-the-machine-after-a-92153567 = Se dio corriente a la máquina después de una prueba no superada
earth-and-insulation-come-first-9cca6719 = La tierra y el aislamiento van primero porque el primer encendido puede herir.
published-en-50678-from-memory-6c01bb79 = publicado: EN 50678 (de memoria): el primer paso no superado detiene las pruebas
find-and-mend-the-cause-test-be0ee96d = Encontrar y reparar la causa, probar otra vez, después enchufar.
switched-on-after-the-repair-bee20b07 = Se encendió después de la reparación antes de probar la tierra
the-earth-conductor-is-what-03dd3641 = El conductor de tierra es lo que hace inofensivo un error en la reparación.
published-en-50678-from-memory-c0715086 = publicado: EN 50678 (de memoria): mirar, tierra, aislamiento, después la función
close-the-machine-measure-earth-96c3a1e2 = Cerrar la máquina, medir continuidad de tierra y aislamiento, después ponerla en marcha.
switched-on-standing-in-water-e9346a59 = Se encendió con los pies en el agua
a-wet-floor-makes-the-body-a-2dc5405c = Un suelo mojado hace del cuerpo un buen camino a tierra.
mop-up-first-0e6e4658 = Secar antes el suelo.
ran-the-machine-on-a-socket-e69e6d28 = Se hizo funcionar la máquina en una toma de corriente que se sabía sin tierra
the-filter-alone-bites-a-fault-65a89bbf = El filtro por sí solo ya muerde; una avería mata. Una máquina buena no cambia eso.
make-safe-tell-the-customer-let-0138ed49 = Poner en seguridad, informar al cliente, dejar que un electricista repare la toma de corriente.
used-a-scorched-socket-265d167d = Se usó una toma de corriente chamuscada
a-loose-contact-that-has-burnt-ecacd4e6 = Un contacto flojo que se ha quemado una vez se quema otra, detrás de la pared.
put-it-out-of-use-tell-the-8d1cfa5b = Ponerla fuera de uso, informar al cliente por escrito, usar otro circuito.
set-a-tripped-device-again-57c13be1 = Se rearmó un dispositivo de protección que había saltado sin averiguar por qué
it-opened-for-a-reason-and-the-cfecbacf = Se abrió por un motivo, y el motivo sigue ahí.
unplug-the-machine-test-it-dead-6f9296bd = Desenchufar la máquina, probarla sin voltaje, después rearmar el dispositivo.
fitted-a-larger-fuse-or-bridged-5a3085d5 = Se montó un fusible mayor o se puenteó
wires-and-windings-now-burn-17293da4 = Ahora los cables y los bobinados se queman antes que el fusible.
published-iec-60127-1-from-024c0daf = publicado: IEC 60127-1 (de memoria); práctica común
same-rating-same-speed-find-what-9e510bcc = El mismo valor, la misma rapidez; averiguar qué lo fundió.
fitted-a-run-capacitor-of-too-ded369d1 = Se montó un condensador de marcha para un voltaje demasiado bajo
in-run-it-stands-far-above-the-ac07bb99 = En marcha trabaja muy por encima del voltaje de la red: revienta o se quema.
published-iec-60252-1-from-3608c6fd = publicado: IEC 60252-1 (de memoria)
read-the-old-one-s-rating-never-7f1761a3 = Leer el valor del viejo; no montar nunca uno para menos.
worked-on-the-wiring-of-the-54ef7585 = Se trabajó en la instalación de la casa
it-belongs-to-a-licensed-9c06e5b2 = Corresponde a un electricista con licencia; un error allí tiene voltaje para todos.
common-practice-local-law-a8141cdd = práctica común; ley local
measure-tell-record-never-repair-0ec7ed45 = Medir, decir, anotar; nunca reparar.
went-on-although-the-place-was-d2031933 = Se siguió aunque el lugar no era seguro
gas-flood-fire-or-a-threat-do-09d2a3f1 = Ni el gas, ni una inundación, ni el fuego, ni una amenaza esperan a una lavadora.
make-safe-and-leave-a-job-7d32f693 = Poner en seguridad y marcharse; un trabajo rechazado por un motivo es un trabajo bien hecho.

### bench/safety/water.rs

pulled-the-inlet-hose-with-the-d6197483 = Se quitó la manguera de entrada con el grifo abierto
twelve-litres-a-minute-and-the-460092b1 = Doce litros por minuto, y el techo de abajo es el error más caro de todos.
shut-the-tap-let-the-pressure-2af1f118 = Cerrar el grifo, dejar salir la presión, después quitar la manguera.
pulled-the-inlet-hose-under-9b23cdf2 = Se quitó la manguera de entrada con presión
it-sprays-and-over-what-is-2bc317ad = Salpica, y sobre lo que es eléctrico.
open-the-valve-for-a-moment-with-f6b17ba0 = Abrir la válvula un momento con el grifo cerrado, o aflojar despacio sobre un cubo.
opened-the-tap-with-the-hose-off-8ca8d26b = Se abrió el grifo con la manguera quitada
the-room-floods-before-the-tap-664af35f = El cuarto se inunda antes de que el grifo vuelva a estar cerrado.
screw-on-both-ends-then-open-195b6cd0 = Enroscar los dos extremos, después abrir despacio y mirar.
opened-a-water-joint-without-a-ff6919cd = Se abrió una unión de agua sin bandeja
water-on-the-floor-reaches-b94eb149 = El agua en el suelo llega a las tomas de corriente, y hace caer a la gente.
bucket-tray-and-cloth-before-the-f768128e = Cubo, bandeja y paño antes de aflojar la abrazadera.
tilted-the-machine-with-water-in-36668e73 = Se inclinó la máquina con agua en la cuba
fifty-litres-move-at-once-the-a585b376 = Cincuenta litros se mueven de golpe: la máquina cae, el agua va sobre las partes eléctricas.
drain-by-the-machine-else-bail-648beb55 = Desaguar con la máquina; si no, achicar o sacar con sifón por arriba.
let-hot-water-out-over-hands-0b894002 = Se dejó salir agua caliente sobre las manos
from-50-c-it-scalds-within-c14dfbbb = Desde 50 °C escalda en minutos, desde 60 °C en segundos.
let-it-cool-or-thin-it-with-cold-0f593be4 = Dejar que se enfríe, o rebajarla antes con agua fría.
tried-a-joint-before-its-sealant-c044ea26 = Se probó una unión antes de que fraguara su sellador
it-lets-go-now-or-worse-next-4fda4134 = Se suelta ahora o, peor, la semana que viene.
give-it-the-time-on-the-tube-2712cea1 = Darle el tiempo que dice el tubo, después dejar entrar agua.
let-water-in-with-a-joint-still-ba0e8bfb = Se dejó entrar agua con una unión todavía abierta
it-runs-into-the-machine-58888b34 = Corre hacia dentro de la máquina.
go-round-every-joint-that-was-4fc5d667 = Repasar cada unión que se abrió antes de abrir el grifo.
left-a-water-joint-unsealed-9939d93b = Se dejó una unión de agua sin sellar
it-leaks-when-nobody-is-at-home-5efb0d11 = Pierde agua cuando no hay nadie en casa.
seal-fit-the-clamp-try-with-7fd9391e = Sellar, montar la abrazadera, probar con agua y un paño seco.
did-not-try-the-opened-joint-b81c076d = No se probó con agua la unión abierta
a-seal-is-sound-when-it-has-held-8266cf1c = Un sello es bueno cuando ha aguantado agua, no cuando tiene buen aspecto.
fill-look-and-feel-with-a-dry-8ff4cf41 = Llenar, mirar y palpar con un paño seco, desaguar, mirar otra vez.
left-an-unfinished-machine-with-17e137bb = Se dejó una máquina sin terminar con el grifo abierto
nobody-watches-the-open-joint-762d7a4e = Nadie vigila la unión abierta hasta la segunda visita.
shut-the-tap-label-it-tell-the-136c119c = Cerrar el grifo, etiquetarlo, informar al cliente.
left-the-floor-wet-46492b4d = Se dejó el suelo mojado
the-next-person-slips-or-stands-b86f41ef = La siguiente persona resbala, o lo pisa cuando toca el interruptor.
mop-up-before-leaving-ecdb16c3 = Secar el suelo antes de marcharse.

### bench/shock.rs

hardly-felt-86b15da0 = apenas se siente
a-start-muscles-twitch-usually-4e49df1a = un sobresalto; los músculos se contraen, normalmente sin daño
cramp-the-hand-cannot-let-go-c85c0e0b = calambre: la mano no puede soltar, cuesta respirar
the-heart-may-stop-pumping-burns-8468b9e8 = el corazón puede dejar de bombear; quemaduras

### bench/signature/mod.rs

point-to-neutral-42a3d717 = { $point } a neutro

### bench/signature/values.rs

what-from-to-unit-5bf2095c = { $what }: { $from } → { $to } { $unit }
what-to-unit-671e2964 = { $what }: { $to } { $unit }
what-factor-4ff36978 = { $what }: × { $factor }
what-to-b16c3c56 = { $what }: { $to }
what-open-fa9667d9 = { $what }: circuito abierto
what-closed-to-351426f6 = { $what }, con el contacto cerrado: { $to }
a-path-name-to-7663eb1b = un camino, { $name }: { $to }
supply-n-v-b4ef1026 = red: { $n } V
line-and-neutral-exchanged-at-4d0de6ed = fase y neutro intercambiados en la toma de corriente
exchanged-one-and-other-15397b75 = intercambiados: { $one } y { $other }
motor-winding-1-and-2-open-8172ba5a = bobinado 1 y 2 del motor: abiertos
motor-winding-n-open-e3b05e86 = bobinado { $n } del motor: abierto
motor-winding-n-percent-of-its-d40d0065 = bobinado { $n } del motor: { $percent } % de sus espiras en cortocircuito a través de { $short }
motor-winding-n-to-the-frame-765da21c = bobinado { $n } del motor a la carcasa: { $path }
the-motor-s-rotor-is-stuck-241c9059 = el rotor del motor está trabado
load-on-the-motor-factor-25e7bc89 = carga sobre el motor: × { $factor }
the-5-v-supply-of-the-board-0bbeb0f5 = la alimentación de 5 V de la placa no da nada
# of a circuit
open-87a3af6e = abierto

### bench/signature/wash.rs

first-fill-e1ee62c2 = primer llenado
water-level-while-washing-84498ba2 = nivel de agua durante el lavado
pulsator-spin-direction-fd0428e2 = impulsor, sentido del centrifugado
pulsator-other-direction-c3febfe2 = impulsor, el otro sentido
basket-creeps-while-washing-d1e57bb7 = el cesto se va girando durante el lavado
drain-until-empty-410dea64 = desagüe hasta quedar vacía
fastest-spin-d038f7f7 = centrifugado más rápido
times-the-load-was-spread-again-859aa9ce = veces que se repartió otra vez la carga
widest-swing-of-the-tub-ac38df34 = balanceo más amplio de la cuba
water-left-in-the-load-per-dry-29226b15 = agua que queda en la carga por masa seca
water-used-0a746f55 = agua usada
water-on-the-floor-3706e824 = agua en el suelo
times-the-motor-s-protector-10ef6660 = veces que se abrió el protector térmico del motor
basket-stops-after-the-lid-is-099252e7 = el cesto se para tras abrir la tapa
loudest-moment-ed048c05 = momento más ruidoso
# alarms
none-5ef2092b = ninguna
alarm-19ebecda = alarma

### bench/words.rs

ask-on-the-phone-question-591a4056 = preguntar por teléfono: { $question }
what-place-c91c3258 = { $what }: { $place }
contactless-tester-point-1727f9f5 = detector sin contacto: { $point }
what-by-hand-802444ad = { $what } a mano
name-the-price-price-6a393987 = decir el precio: { $price }
load-the-van-with-n-parts-92c4dcef = cargar la furgoneta, piezas: { $n }
open-the-lid-e9ab1b7f = abrir la tapa
shut-the-lid-cff37a3d = cerrar la tapa
set-the-breaker-again-e52807a8 = rearmar el interruptor de la casa
switch-the-socket-s-circuit-on-188f4e53 = volver a dar corriente al circuito de la toma
switch-the-socket-s-circuit-off-a25fca67 = cortar el circuito de la toma de corriente en el cuadro
keep-the-plug-in-sight-7290459d = tener la clavija a la vista
write-a-remark-04607be9 = escribir una observación
bleed-the-supply-hose-into-a-73044775 = purgar la manguera de entrada en un cubo
screw-the-supply-hose-on-de2526c5 = enroscar la manguera de entrada
take-the-supply-hose-off-f9ed2cd4 = quitar la manguera de entrada
bridge-the-lid-switch-06033ec6 = puentear el interruptor de la tapa
take-the-bridge-off-the-lid-744300bb = quitar el puente del interruptor de la tapa
note-the-reading-e29dbe92 = anotar la lectura
bail-the-water-out-with-a-bucket-666c6b0e = achicar el agua con un cubo
let-the-water-out-by-the-drain-22b84b9b = dejar salir el agua tirando del cable de tracción del desagüe
decide-the-maker-pays-318225bd = decidir: paga el fabricante
decide-the-customer-pays-6a791169 = decidir: paga el cliente
look-the-instrument-over-probes-75193587 = revisar el instrumento, puntas juntas
take-the-spare-instrument-9ac89d07 = tomar el instrumento de repuesto
lay-a-blanket-on-the-floor-20b9ac5b = poner una manta en el suelo
put-gloves-on-634a9df9 = ponerse los guantes
take-the-gloves-off-78e85e04 = quitarse los guantes
ask-for-the-room-to-be-kept-free-a04e4c2d = pedir que se mantenga el cuarto despejado
pour-a-bucket-of-cold-water-in-882fda9f = echar un cubo de agua fría
work-on-the-wiring-of-the-house-182e1892 = trabajar en la instalación de la casa
take-a-picture-for-the-report-ea79e93b = tomar una foto para el informe
have-the-report-signed-17c365ba = hacer firmar el informe
ask-for-a-hint-ba5cd873 = pedir una pista
leave-until-the-second-visit-0a83842d = dejarla hasta la segunda visita, etiquetada
leave-until-the-second-visit-63e832d7 = dejarla hasta la segunda visita, sin etiqueta
state-the-fault-found-acaf8701 = decir la avería encontrada
advise-the-customer-5ef995c2 = aconsejar al cliente
make-safe-and-leave-07b2532e = poner en seguridad y dejar
hand-over-5e9dcb2a = entregar
take-off-66f6f69f = quitar
refit-7c3aa3df = volver a montar
name-verb-with-check-98c81015 = { $name }: { $verb }, con comprobación
connector-pull-apart-febb71e7 = { $connector }: desconectar
connector-push-home-a210c7a9 = { $connector }: conectar hasta el tope
work-with-check-57b9f392 = { $work }, con comprobación
place-seen-53b9e2df = { $place }: { $seen }
question-answer-0a3a005e = { $question } «{ $answer }»
what-value-b26654ca = { $what }: { $value }
ac-volts-4bb2d9d5 = voltios CA
ac-volts-low-impedance-56a01cf1 = voltios CA, baja impedancia
dc-volts-b9e859e4 = voltios CC
continuity-ba1cb7df = continuidad
capacitance-74e2cf9d = capacitancia
frequency-2fb31c01 = frecuencia
diode-test-64064db4 = prueba de diodo
ac-amperes-through-the-leads-91e4d509 = amperios CA por las puntas
clamp-a82efcbc = pinza
leakage-clamp-9a5b5f12 = pinza de fuga
leakage-clamp-round-line-and-353578fc = pinza de fugas alrededor de fase y neutro juntos
# in the jaws of a clamp
nothing-da8f1d1a = nada
mode-round-conductor-3a8b5589 = { $mode } en { $conductor }
# of a test lead
free-9bb16e65 = punta libre
mode-red-to-black-f9cdb3d3 = { $mode }, { $red } a { $black }
press-the-on-off-switch-6ebf4d46 = pulsar el interruptor de encendido
press-the-service-key-1d86d553 = pulsar la tecla de servicio
pull-or-push-the-timer-knob-472bea71 = sacar o meter el botón giratorio del programador
turn-the-water-level-knob-d508e444 = girar el botón giratorio del nivel de agua
# verb
look-652ada57 = mirar
# verb
listen-eb7fc527 = escuchar
# verb
feel-e7445382 = palpar
# verb
smell-c6678c89 = oler
turn-the-pulsator-11d4f9cd = girar el impulsor
turn-the-basket-e646cc49 = girar el cesto
turn-the-motor-pulley-6db29bb9 = girar la polea del motor
press-the-belt-cffa9f78 = apretar la correa
pull-the-drain-wire-ef59da34 = tirar del cable de tracción del desagüe
move-the-clutch-lever-10d3b7ac = mover la palanca del embrague
push-the-tub-d94a5f61 = empujar la cuba
push-the-out-of-balance-lever-b44a4bb9 = empujar la palanca de desequilibrio
discharge-the-plug-pins-with-the-3b9ac6e2 = descargar las espigas de la clavija con la resistencia de descarga
discharge-the-plug-pins-with-the-5e780485 = descargar las espigas de la clavija con el destornillador
discharge-the-run-capacitor-with-de79101f = descargar el condensador de marcha con la resistencia de descarga
discharge-the-run-capacitor-with-6350c4fa = descargar el condensador de marcha con el destornillador

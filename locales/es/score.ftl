### score/behaviour.rs

what-value-a-sound-one-sound-358ac331 = { $what }: { $value }; en una máquina sana, { $sound }
ends-after-minutes-min-with-dce57c94 = termina después de { $minutes } min con «{ $alarm }»
does-not-come-to-an-end-within-359ba110 = no llega a terminar en dos horas
ends-after-minutes-min-a-sound-ca00302b = termina después de { $minutes } min; una máquina sana, { $sound } min
it-does-nothing-at-all-as-if-it-89fc0671 = No hace nada de nada, como si no estuviera enchufada.
i-press-start-and-no-water-comes-a7a82a4f = Le doy a inicio y no entra agua.
the-water-runs-and-runs-and-it-14aa4b68 = El agua corre y corre y nunca empieza a lavar.
it-takes-water-and-then-it-does-a5d5e06f = Toma agua, y luego no lava.
it-takes-ages-to-fill-ae608234 = Tarda siglos en llenarse.
there-is-far-too-much-water-in-9d0d35b8 = Tiene mucha más agua de la cuenta.
it-washes-with-too-little-water-1c1e6d70 = Lava con poca agua.
it-washes-feebly-not-as-it-used-048cac54 = Lava con poca fuerza, no como antes.
the-basket-goes-round-with-the-0c6b1881 = El cesto da vueltas con el lavado y la ropa se rompe.
it-takes-long-to-empty-d2d7d5e8 = Tarda mucho en vaciarse.
the-water-stays-in-it-72b78f95 = El agua se queda dentro.
it-washes-and-empties-but-it-31775b27 = Lava y se vacía, pero no centrifuga.
it-spins-more-slowly-than-it-did-4d506b65 = Centrifuga más despacio que antes.
when-it-should-spin-it-stops-b96e8393 = Cuando debería centrifugar se para, toma agua otra vez y lo intenta una y otra vez.
it-bangs-and-walks-when-it-spins-735ae646 = Da golpes y se mueve del sitio cuando centrifuga.
the-washing-comes-out-dripping-ae3905ef = La ropa sale chorreando.
there-is-water-on-the-floor-b90d1cd2 = Hay agua en el suelo.
it-gets-hot-stops-and-goes-on-ffd531c7 = Se calienta, se para, y al cabo de un rato sigue.
it-goes-on-turning-long-after-i-c034d89d = Sigue girando mucho después de que abro la tapa.
it-tingles-when-i-touch-it-with-77e9ec77 = Me da un cosquilleo cuando la toco con los pies descalzos.
it-washes-but-it-makes-a-noise-b6167ccf = Lava, pero hace un ruido que antes no hacía.
in-the-end-it-beeps-and-shows-0953e213 = Al final pita y muestra «{ $alarm }».

### score/debrief.rs

line-n-is-a-sound-machine-sound-d2c93d98 = Línea { $n }: { $is }; una máquina sana: { $sound }

### score/decisions.rs

step-step-cost-avoidable-ae10bcdb = paso { $step }: { $cost } evitable
damage-cost-6d16aa85 = daño: { $cost }
callback-cost-892eed9f = nueva visita por fallo: { $cost }
no-decision-cost-more-than-it-503193a0 = ninguna decisión costó más de lo necesario
step-step-what-the-evidence-gave-d60e663c = paso { $step }, { $what }: según la evidencia tenía un { $sure } % de probabilidad de arreglar las cosas, { $standing }
justified-3184949e = justificado
defensible-5226aeb4 = defendible
not-justified-f1c86eaf = no justificado

### score/diagnosis.rs

the-place-was-not-safe-nothing-6dbbe0c3 = el lugar no era seguro: no se buscó nada
stated-causes-651b7d8c = declarado: { $causes }
no-fault-66a79a52 = ninguna avería

### score/economy.rs

parts-fitted-n-790bc343 = piezas cambiadas: { $n }
n-hint-percent-of-what-the-job-b334422d = { $n } pista: { $percent } % de lo que debería costar el trabajo
n-hints-percent-of-what-the-job-5ea40f96 = { $n } pistas: { $percent } % de lo que debería costar el trabajo
cost-cost-with-the-visit-to-come-e31f7c0e = costo { $cost } con la visita que falta, objetivo { $target }
cost-cost-target-target-bd5c1c2d = costo { $cost }, objetivo { $target }

### score/evidence.rs

work-nothing-in-the-notebook-8e7ea7ec = { $work }: nada en el cuaderno hablaba a favor
work-the-part-was-sound-f5849d02 = { $work }: la pieza estaba sana
each-part-fitted-had-a-reading-8e865b34 = cada pieza cambiada tenía una lectura detrás

### score/fairness/alike.rs

what-shows-first-03b10862 = «{ $what }» se muestra en: { $first }.
what-shows-first-and-n-more-832e56c8 = «{ $what }» se muestra en: { $first }, y { $n } más.
what-shows-in-nothing-that-can-2e921020 = «{ $what }» no se muestra en nada que se pueda leer, ver ni oír en este banco: solo las palabras del cliente apuntan a ello, así que la queja o una respuesta debe nombrarlo.
what-shows-when-you-how-900069f1 = «{ $what }» se muestra al { $how }.
no-instrument-in-the-bag-shows-45c75d37 = Ningún instrumento de la bolsa muestra «{ $what }»: añadir { $instrument }.
nothing-shows-what-neither-a-7450dbae = Nada muestra «{ $what }»: ni una lectura, ni una mirada, ni una marcha, ni un giro con la mano: aumentar su gravedad.
reads-like-what-until-reading-471e4807 = Se lee como «{ $what }» hasta que se lee { $reading } ({ $how }).
reads-like-what-until-you-how-c5186915 = Se lee como «{ $what }» hasta { $how }.
nothing-tells-it-from-what-and-17337e69 = Nada la distingue de «{ $what }», y no hace falta: el mismo trabajo arregla las dos.
reads-the-same-as-what-with-the-03e8abe7 = Se lee igual que «{ $what }» con los instrumentos permitidos: poner en la bolsa { $instrument }.
nothing-tells-it-from-what-b128b51c = Nada la distingue de «{ $what }»: ni una lectura, ni una mirada, ni una marcha, ni un giro con la mano: hacer que otra cosa del trabajo apunte a ella, o elegir otra avería.

### score/fairness/bars.rs

one-and-other-change-the-same-08e35675 = «{ $one }» y «{ $other }» cambian lo mismo: deje solo uno.
the-part-is-not-in-the-van-if-it-a4fc7c96 = La pieza ({ $part }) no está en la furgoneta: si hay que cambiarla, es una segunda visita por { $price }.
the-target-is-not-known-yet-take-39ef223a = El objetivo no se conoce todavía: tomar lo que necesita el experto, o hacer el trabajo por cuenta propia y poner lo que llevó.
the-budget-of-bar-is-below-the-4bd46656 = El presupuesto de { $bar } está por debajo de los { $needs } que necesita un técnico experto: subirlo a { $room } o más.
the-time-allowed-bar-minutes-is-05a32134 = El tiempo permitido en minutos, { $bar }, está por debajo de los { $needs } que necesita un técnico experto: subirlo a { $room } o más.
target-cost-in-minutes-minutes-615d11cc = Objetivo: { $cost }, en { $minutes } minutos.
the-expert-gets-it-right-but-in-050918d1 = El experto acierta, pero en { $minutes } minutos por { $price }: es más de lo que permite el trabajo.
the-expert-leaves-with-the-b2334c37 = El experto se va con la máquina funcionando y no nombra «{ $fault }»: haga que algo lo indique o quítelo.
the-expert-who-knows-no-more-at-478a8e5b = El experto, que en la puerta no sabe más que el aprendiz, lo resuelve en { $minutes } minutos por { $price }: se puede resolver con lo permitido.
one-and-next-474c2c83 = { $one } y { $next }
the-expert-does-not-get-it-right-41a18fae = El experto no lo resuelve: terminó con «{ $causes }» como causa. Que el trabajo se puede hacer se apoya en el objetivo guardado, que viene del trabajo de una persona; cabe esperar que sea difícil.
the-expert-does-not-get-it-right-da1231fa = El experto no lo resuelve: terminó sin causa. Que el trabajo se puede hacer se apoya en el objetivo guardado, que viene del trabajo de una persona; cabe esperar que sea difícil.
the-expert-does-not-get-it-right-21a589b6 = El experto no lo resuelve con lo permitido: terminó con «{ $causes }» como causa. Hacer que más cosas apunten a la causa, permitir más instrumentos, o hacerlo por cuenta propia y poner lo que llevó.
the-expert-does-not-get-it-right-1fb5cb9a = El experto no lo resuelve con lo permitido: terminó sin causa. Hacer que más cosas apunten a la causa, permitir más instrumentos, o hacerlo por cuenta propia y poner lo que llevó.

### score/fairness/customer.rs

the-customer-would-notice-e6f2acc4 = El cliente notaría: { $suggested }
while-it-is-there-the-customer-f981e6b5 = Mientras está presente, el cliente notaría: { $symptoms }.
the-machine-is-sound-the-right-71a5b6e7 = La máquina está sana: la respuesta correcta es decirlo y enseñar al cliente.
the-cause-lies-outside-the-7729ff6e = La causa está fuera de la máquina y no se muestra en ningún programa: la queja debe venir de lo que sabe el cliente.
over-a-whole-program-the-57344ad3 = En un programa entero el cliente no notaría nada: aumentar la gravedad, hacer que la avería aparezca más a menudo, o que la queja diga cuándo ocurre.
the-complaint-names-nothing-that-329139c1 = La queja no nombra nada que se pueda comparar con la máquina: si encaja, debe juzgarlo quien escribe el trabajo.
the-complaint-fits-what-the-0f8eb612 = La queja encaja con lo que hace la máquina: { $fits }.
the-complaint-fits-what-the-d9ea501c = La queja encaja con lo que hace la máquina: { $fits }. También habla de lo que la máquina no hace en un programa: { $other }.
the-machine-does-not-do-what-the-47cb94f0 = La máquina no hace aquello de lo que habla la queja ({ $other }): descubrirlo es parte de este trabajo.
the-complaint-speaks-of-what-the-893fef0e = La queja habla de lo que la máquina no hace en un programa ({ $other }), y de nada de lo que hace ({ $shown }): tomar la queja que sugiere el comportamiento de la máquina, o hacer que el cliente se equivoque.
it-is-dead-3ade2316 = no hace nada
the-house-s-device-trips-0c2708c8 = salta el interruptor de la casa
it-tingles-to-the-touch-e32ba3f1 = da cosquilleo al tocarla
it-runs-without-being-started-0c85b5b0 = funciona sin que nadie la ponga en marcha
no-water-comes-96c85f3c = no entra agua
it-fills-slowly-666bab6c = se llena despacio
too-much-water-d843175d = demasiada agua
too-little-water-f6f41d70 = muy poca agua
it-does-not-wash-ea88b86f = no lava
it-turns-one-way-only-d4a2d50f = gira en un solo sentido
it-washes-weakly-6d39dad2 = lava con poca fuerza
the-basket-goes-round-in-the-ab50c927 = el cesto da vueltas en el lavado
the-water-stays-in-f78d216c = el agua se queda dentro
it-empties-slowly-8b3a682d = se vacía despacio
water-leaves-in-the-wash-9e95f417 = se va el agua en el lavado
it-does-not-spin-c53bc288 = no centrifuga
it-spins-weakly-or-leaves-the-af2cba3d = centrifuga con poca fuerza o deja la ropa mojada
it-breaks-the-spin-off-and-fills-60fffe33 = interrumpe el centrifugado y se llena otra vez
it-shakes-34c3bfbf = se sacude
it-runs-on-after-the-lid-is-d3e2a412 = sigue girando después de abrir la tapa
a-new-noise-52d37240 = un ruido nuevo
it-hums-and-nothing-moves-1053f8b9 = zumba y no se mueve nada
a-smell-of-heat-3ee6fc4a = olor a calor
it-stops-with-an-alarm-0ad17293 = se para con una alarma
it-stops-and-goes-on-later-cff4ad89 = se para y sigue más tarde
the-program-takes-much-longer-740c5372 = el programa tarda mucho más

### score/functional.rs

time-to-fill-783bbba6 = tiempo de llenado
water-level-4f73ca56 = nivel de agua
pulsator-one-way-aed3e01c = impulsor en un sentido
pulsator-the-other-way-ee5b9ea9 = impulsor en el otro sentido
basket-creep-in-the-wash-010d7db5 = giro lento del cesto en el lavado
time-to-drain-ff19a7d7 = tiempo de desagüe
spin-speed-a945b026 = velocidad de centrifugado
spins-broken-off-to-spread-the-e5521b2b = centrifugados interrumpidos para repartir la carga
swing-of-the-tub-3ec74bee = oscilación de la cuba
moisture-left-54c21758 = humedad restante
cabinet-to-earth-d5506a6c = del gabinete a tierra
stop-after-the-lid-is-opened-3e6ab5ec = parada después de abrir la tapa
loudest-fault-sound-over-normal-54d52709 = sonido de avería más fuerte sobre lo normal

### score/hindsight.rs

line-n-words-ffbbb770 = línea { $n }, { $words }
part-the-part-was-sound-and-8316f90b = { $part }: la pieza estaba sana, y nada en el cuaderno hablaba todavía en contra
part-the-part-was-sound-already-d9481805 = { $part }: la pieza estaba sana; ya se sabía: { $lines }
a-look-at-the-place-would-have-44e32422 = Una mirada al lugar habría llevado { $minutes } min; la pieza ({ $part }) costó { $price }
right-by-accident-as-something-8155212f = Acierto por casualidad, al volver a poner otra cosa: { $what }

### score/matrix.rs

sound-0e0d9594 = sana

### score/matrix_columns.rs

meter-state-pulled-apart-eaa55293 = { $meter }, { $state }, desconectado
whole-program-f3e082b8 = programa entero
washing-one-way-7ef8c2d1 = lavando en un sentido
washing-the-other-way-4c60ee78 = lavando en el otro sentido
# of a machine
off-8778eb8d = apagada
standby-e0f4bf1e = en espera
unplugged-switch-on-67a1997f = desenchufada, interruptor en encendido
ac-volts-4c78ea95 = voltios CA
low-ac-volts-8d615643 = voltios CA en baja impedancia
dc-volts-25e77aa4 = voltios CC
amps-4f5814de = amperios

### score/procedure.rs

protective-conductor-measured-52fbafa9 = conductor de protección medido
insulation-measured-dfddc2e9 = aislamiento medido
leakage-measured-7fd14127 = corriente de fuga medida
a-run-of-wash-drain-and-spin-ccc3003c = una marcha de lavado, desagüe y centrifugado
price-agreed-before-the-repair-16429bff = precio acordado antes de la reparación
what-done-d6ca0721 = { $what }: hecho
what-left-out-5bf79664 = { $what }: omitido
everything-back-and-checked-b3ff54af = todo vuelto a montar y comprobado
a-look-for-leaks-3bb47dd4 = una mirada por si hay fugas de agua
customer-told-deebaafe = cliente informado

### score/safety.rs

step-step-title-8c30d3f3 = paso { $step }: { $title }
went-away-when-it-was-not-safe-6976957f = se marchó cuando no era seguro
nothing-was-tested-or-repaired-46f5e84b = no se probó ni se reparó nada
no-safety-rule-was-broken-8e3a5940 = no se rompió ninguna regla de seguridad
a-rule-whose-breach-can-kill-at-1f792c26 = una regla cuya infracción puede matar: { $most } de 100 como máximo para el trabajo entero

### score/visit.rs

asked-on-the-phone-before-062f2939 = preguntado por teléfono antes de ir
put-right-on-the-first-visit-736d9483 = arreglado en la primera visita
decided-rightly-who-pays-44690535 = decidido correctamente quién paga
the-price-was-agreed-for-what-it-abfc4900 = el precio se acordó para lo que resultó ser
fee-taken-after-the-estimate-was-e59d5cae = tarifa cobrada después de que se rechazara el presupuesto
old-part-shown-94441f2a = pieza vieja enseñada
taught-what-keeps-it-away-31e57d5b = enseñado qué evita que vuelva a ocurrir
told-and-wrote-down-what-is-ea59a8ea = dicho y escrito lo que está mal en la casa
report-with-a-picture-signed-b28ded00 = informe con foto, firmado

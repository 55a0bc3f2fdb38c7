### after.md

after-any-work-inside-the-e5fe7190 = Después de cualquier trabajo dentro de la máquina, antes de que funcione para el cliente, en este orden. Cada prueba tiene un límite; cada una se anota con su número.
how-644e442d = Cómo
limit-d8964ad4 = Límite
look-69960bb6 = Mirar
plug-cord-covers-screws-no-wire-b3741013 = clavija, cable de alimentación, cubiertas, tornillos; ningún cable debajo de un borde
protective-conductor-b086288f = Conductor de protección
plug-out-earth-pin-to-the-7f4d1737 = clavija fuera: de la espiga de tierra al gabinete y a la carcasa del motor, moviendo el cable de alimentación mientras tanto
t-0-3-at-most-cord-to-5-m-bde07e06 = 0.3 Ω como máximo, cable hasta 5 m
insulation-cd4c734f = Aislamiento
plug-out-the-switch-pressed-in-c58c8779 = clavija fuera, el interruptor pulsado o el botón giratorio del programador sacado, donde lo haya: fase y neutro juntos contra tierra, 500 V
leakage-91242ab1 = Corriente de fuga
plug-in-running-leakage-clamp-b2c1846f = clavija puesta, en marcha: pinza de fuga alrededor de fase y neutro, en cada estado
touch-current-78af020d = Corriente de contacto
plug-in-running-metal-a-hand-078dbab3 = clavija puesta, en marcha: metal al alcance de la mano, a través de 2 kΩ a tierra
run-8d57e66a = Marcha
fill-wash-both-ways-drain-spin-d917b301 = llenar, lavar en los dos sentidos, desaguar, centrifugar hasta la velocidad plena
lid-92d75426 = Tapa
opened-at-full-spin-389ac84e = abierta en pleno centrifugado
stands-within-7-s-50811ee3 = parado en 7 s
leaks-205ecc67 = Fugas de agua
filled-drained-then-under-the-0bb5184b = llena, desaguada, después debajo de la máquina con un paño seco
the-first-five-follow-en-50678-6f9aac39 = Las cinco primeras siguen EN 50678 y EN 50699, citadas de memoria: comprobar la edición vigente donde se trabaja, y quién puede firmarlo allí. El tiempo de la tapa es de memoria, las demás son práctica común.
a-failed-test-is-a-finding-the-b818a86c = Una prueba no superada es un hallazgo. La máquina no vuelve al uso hasta que esté reparada; si no se puede reparar, se queda desenchufada y etiquetada, y el cliente lo tiene por escrito.
what-each-can-miss-7f2098d6 = Lo que cada una puede no ver
bond-to-a-painted-screw-reads-9772d707 = La continuidad de tierra hasta un tornillo pintado marca abierto; hasta un segundo camino a tierra, como una tubería, marca bien con el cable de tierra suelto.
insulation-stops-at-open-e1f02e8b = El aislamiento se detiene en los contactos abiertos: lo que hay detrás de un relé, un triac o un contacto del programador aparece en la corriente de fuga mientras funciona.
leakage-in-one-direction-of-the-e6eb844f = Corriente de fuga en un solo sentido del motor: medir los dos, y el desagüe, y el centrifugado.
a-joint-dry-after-a-minute-may-502077ca = Una unión seca al cabo de un minuto puede rezumar al cabo de cinco. El sellador necesita su tiempo antes de que el agua diga algo.
count-your-screws-count-your-5347d99e = Contar los tornillos, contar las herramientas. Comprobar con la mano que el cable de tierra está otra vez en su borne: no se nota en ninguna función de la máquina. Manguera de aire libre debajo de la cubierta superior, palanca en su enganche, cables del motor lejos de la correa, cuñas fuera, patas niveladas. La comprobación de cada cosa está en las páginas de las piezas: [P](#/handbook/parts_p), [T](#/handbook/parts_t), [N](#/handbook/parts_n).
then-show-the-customer-the-run-d6983560 = Después, mostrar al cliente: la marcha, la pieza vieja, los números, y qué evita que vuelva a ocurrir.

### assess.md

an-assessment-is-a-file-which-a388032a = Una evaluación es un archivo: qué habilidades a qué nivel, cuántos trabajos, cuánto tiempo, qué se puede usar, qué hace aprobar. Se crea [aquí](#/assessments), y todos reciben el mismo archivo. Los trabajos se sortean para cada candidato a partir de su número y de la palabra del día, de modo que las respuestas no se pueden pasar: otros valores, otros clientes, otras averías de la misma dificultad.
before-make-the-assessment-and-ac4b3000 = {"*"}*Antes.** Crear la evaluación y escribir los números de los candidatos. Cada uno recibe una papeleta con un código de inicio y cuatro letras al lado. El tiempo adicional está en esas letras; solo el reloj de la pantalla del candidato lo incluye. Guardar la clave donde solo pueda abrirla quien evalúa.
at-the-start-candidates-open-the-c71fc98d = {"*"}*Al empezar.** Los candidatos abren el archivo o el enlace, escriben lo que pone en su papeleta y esperan la palabra del día. Solo una sala vigilada lo convierte en un resultado; en casa, el mismo archivo es práctica.
during-no-hints-no-likely-causes-d49fbf8f = {"*"}*Durante.** Ninguna pista, ninguna causa probable, nada sobre lo correcto o lo incorrecto. Cada acción se guarda enseguida: una recarga, una batería agotada u otra ventana del navegador no pierden nada. El tiempo corre mientras la página está cerrada, salvo que esté permitido parar el reloj. Salir de la página se anota con su hora; es una nota, no un veredicto.
a-pause-for-the-whole-room-a-new-e7e537db = {"*"}*Una pausa para toda la sala.** Una evaluación nueva tiene diez pares de códigos de pausa, hechos a partir de su clave; se muestran junto al formulario, no en una pantalla que vean los candidatos. Se lee en voz alta el primer código de un par: cada candidato lo escribe en *Pausa de toda la sala*, en la página de la evaluación, y el reloj se para y los trabajos quedan cerrados hasta que se escriba el segundo código del par, o uno posterior. El tiempo en pausa no cuenta, tampoco si se recarga. Un código vale una vez, así que conviene tacharlo, sea cual sea el grupo al que se leyó; quien se perdió uno sigue con el siguiente. Cada pausa figura en el resultado con su tiempo y sus códigos, y en la página de la persona al revisar. Lo que esto no impide: un candidato que escribe tarde tiene una pausa más corta, y quien escribe tarde el segundo código, una más larga; a quien le dijeron antes un código puede parar el reloj con él una vez; y quien cambia la página o el reloj de la computadora no necesita ningún código. Por eso se ve cada pausa: la que solo tuvo una persona no era la de la sala. Los códigos no son para las necesidades de una persona: el tiempo adicional se da en la papeleta.
after-the-candidate-hands-in-and-6cb973b3 = {"*"}*Después.** El candidato entrega y guarda un archivo, o muestra los códigos. Quien evalúa suelta todos los archivos en [Resultados](#/cohort): los sellos se comprueban enseguida, luego cada trabajo se ejecuta otra vez y se compara línea por línea, y se descubre si falta un registro en una fila. El resultado dice hasta qué punto es seguro, y dónde se perdió cada punto. Cerca de la nota de corte, deciden más trabajos.
appeals-replay-the-work-step-by-9ef3bf5b = {"*"}*Reclamaciones.** Reproducir el trabajo paso a paso. Un trabajo defectuoso se anula para todos y todo se calcula de nuevo: ya no se le exige a nadie, lo haya abierto o no, así que no cuenta ni en la puntuación ni en el número de trabajos ni en lo que pide un aprobado; una decisión se reemplaza con nombre, día y motivo. Los registros quedan como están. Una resolución pertenece a una evaluación: con resultados de otra aparece como no aplicada. Los archivos de resoluciones de versiones anteriores no nombran ninguna, y valen en cualquiera. Lo que está escrito a medias se conserva al mirar a otra persona o al cargar otra vez la página; termina con la pestaña. Las resoluciones se guardan en este navegador, cada una por separado, de modo que dos pestañas nunca escriben una encima de la otra: lo que una resuelve, se ofrece a la otra. Retirada en una pestaña, una resolución sigue en pie en otra que la tenga en vigor. Donde el navegador no guarda nada o no tiene espacio, el formulario lo dice y en su lugar guarda un archivo.
how-long-results-are-kept-say-in-7e5a3619 = {"*"}*Cuánto tiempo se guardan los resultados.** Indicar en el formulario después de cuántos meses deben borrarse los resultados. Los candidatos lo leen antes de empezar, y viaja con el archivo. En [Resultados](#/cohort), *Borrar* dice de quién son los resultados que han pasado ese día, contado desde el día en que empezaron según el reloj del candidato, y los borra, o todo lo de una persona. De un registro borrado solo quedan hashes: ni bitácora, ni puntuación, ni número, ni nombre, de modo que los registros de alrededor todavía se pueden comprobar. También se van las resoluciones guardadas aquí sobre alguien de quien no queda nada. Una página no puede borrar archivos: hay que guardar lo que queda, y luego eliminar los archivos de los que vino y sus copias, y los archivos de resoluciones que nombran a la persona. Quien conozca un número, la evaluación y la palabra del día todavía puede saber que el primer registro borrado de una fila era de esa persona; si eso importa, eliminarlo por completo, cuando ya no se necesite nada de la fila.
a-room-without-internet-make-d510e4da = {"*"}*Una sala sin internet.** `make room` sirve la página desde una computadora portátil a la red local. Los navegadores niegan allí su criptografía y su almacén sin conexión, así que el sellado lo hace la propia página y no falta nada. Los resultados vuelven como archivos o como códigos leídos por un teléfono de la misma red.
in-a-training-system-beside-the-d102b318 = {"*"}*En un sistema de formación.** Además del archivo, la evaluación se puede guardar como paquete de curso para SCORM 1.2, SCORM 2004 4.ª edición o cmi5. Qué se le comunica entonces al sistema, y cómo llegan los resultados a un almacén de registros de aprendizaje sin sistema, está en [Sistemas de formación y almacenes](#/handbook/systems).
a-practical-is-still-needed-the-125e031b = {"*"}*Sigue haciendo falta una prueba práctica**: para ella se imprime la [hoja del observador](#/observer).

### desk.md

at-the-desk-desk-a-story-from-55ab20df = En el [escritorio](#/desk), una historia del oficio se convierte en un trabajo.
choose-what-is-wrong-one-fault-62afa5f3 = {"*"}*Elegir qué está mal.** Una avería o varias, cada una con una gravedad de 0 a 1 y, si se quiere, un comienzo: a partir de un momento, al azar, solo en caliente, solo a velocidad. Las cosas de fuera de la máquina y las cosas que dejó mal una visita anterior están en la misma lista.
see-what-the-machine-does-at-the-c80c6295 = {"*"}*Ver qué hace la máquina.** A un lado ejecuta un programa entero, junto a una máquina sana del mismo tipo con la misma carga, y dice en qué difieren. No se consulta nada: si la avería no muestra nada ahí, tampoco le muestra nada al cliente.
write-the-customer-the-complaint-ae600353 = {"*"}*Escribir al cliente.** La queja se puede tomar del comportamiento de la máquina y poner en las palabras de la persona. Las respuestas pueden ser erróneas. Una segunda respuesta llega cuando la pregunta se hace otra vez, de otra manera.
say-what-is-allowed-van-0c2ad8a1 = {"*"}*Decir qué está permitido**: furgoneta, instrumentos, pistas, presupuesto, tiempo, puntuación.
read-the-fairness-panel-it-works-8a202608 = {"*"}*Leer el panel de equidad.** Trabaja en segundo plano, un momento después de una pausa al escribir, y otra vez después de cada cambio.
try-it-on-the-bench-and-watch-an-7c652a74 = {"*"}*Probarlo** en el banco, y ver a un aprendiz probarlo. Después, **compartirlo**.
every-change-can-be-undone-a-8e4c1cca = Todo cambio se puede deshacer. El borrador se guarda en el navegador desde su primera letra; no se envía nada a ninguna parte.
checks-stand-beside-their-field-991f1af4 = Las comprobaciones están junto a su campo y, todas juntas, a un lado. Un trabajo se puede probar y compartir cuando ya no queda ninguna.
what-the-panel-says-and-how-it-a23ec86a = Qué dice el panel, y cómo lo sabe
what-the-customer-would-notice-97105245 = {"*"}*Qué notaría el cliente**, a partir de un programa entero de la máquina, y si la queja habla de eso. La queja se escucha por sus palabras, así que una expresión que no conoce no se cuenta en contra.
what-shows-each-fault-with-the-2e542495 = {"*"}*Qué muestra cada avería** con los instrumentos permitidos. Primero las lecturas de la hoja de datos y las cifras de un programa; donde estas no dicen nada, la máquina se pone en marcha, se mira, se escucha y se mueve a mano.
what-looks-like-it-and-the-one-385ab4e3 = {"*"}*Qué se le parece**, y la única lectura o mirada que distingue lo uno de lo otro. Donde nada lo hace, lo dice, y también qué cambiar. Dos causas que se arreglan con el mismo trabajo no hace falta distinguirlas.
van-budget-time-against-the-951e9cbb = {"*"}*Furgoneta, presupuesto, tiempo** frente al objetivo.
the-expert-s-way-the-built-in-3599f1c8 = {"*"}*El camino del experto.** El experto incorporado hace el trabajo desde el timbre, sin saber más que el aprendiz. Sus cifras se pueden tomar como objetivo. Es cuidadoso más que rápido; donde fracasa, una persona con una buena idea quizá lo consiga, por eso el panel pide un objetivo que alguien haya demostrado.
apprentices-five-kinds-try-the-602f2948 = {"*"}*Aprendices.** Cinco tipos prueban el trabajo: el principiante inseguro, el que tiene prisa, el que primero cambia piezas, el que evita el multímetro, el que va paso a paso. Cinco de cada uno son una primera impresión, no una estadística. Seguridad dice en cuántos de los cinco se rompió una regla crítica, mayor o menor. **Ver uno** muestra el primero de los cinco como repaso, paso a paso; de eso no se guarda nada.
the-panel-compares-one-fault-at-521c9b1e = El panel compara las averías de una en una, y las otras causas con gravedad plena. No contrasta lecturas de medidores (caudal, presión, velocidad, tensión) entre sí más allá de lo que muestra un programa.
languages-0c632e38 = Idiomas
the-desk-shows-a-file-s-own-ad0a5dc7 = El escritorio muestra las palabras propias de un archivo. Un trabajo incluido se traduce con la página; el propio se muestra a todos tal como se escribió, así que conviene escribirlo en el idioma de quienes lo harán. Las palabras de los clientes solo se escuchan en inglés para el panel de equidad.
training-sets-2f9dc240 = Series de práctica
a-training-set-sets-is-an-2d2f4a96 = Una [serie de práctica](#/sets) es una lista ordenada de trabajos, propios y de los incluidos; el siguiente se abre cuando el anterior tiene la puntuación que se pide. El archivo para aprendices se da a una clase: lo abren en su lista de trabajos. `tubwright pack DIR --sealed` hace una a partir de una carpeta.

### diagnose.md

a-fault-changes-what-a-machine-03108608 = Una avería cambia lo que hace una máquina. Encontrarla es elegir, una y otra vez, la mirada o la lectura que separa la mayor parte de lo que todavía es posible con el menor tiempo y riesgo.
hear-the-complaint-and-ask-what-de6fe848 = {"*"}*Escuchar** la queja, y preguntar lo que separa: desde cuándo, si todas las veces, qué muestra, quién la ha tocado.
see-it-happen-note-the-last-701987ab = {"*"}*Verlo ocurrir.** Anotar lo último que funcionó y lo primero que no: la causa está en medio.
look-before-you-measure-measure-3a14114c = {"*"}*Mirar antes de medir, medir antes de abrir, abrir antes de cambiar.**
halve-pick-a-point-in-the-middle-7eaadd3c = {"*"}*Partir por la mitad.** Elegir un punto en el medio de la cadena: ¿está ahí la alimentación o no? Cada lectura así descarta media cadena. Más cerca es mejor que el medio exacto: una lectura desde fuera cuesta un minuto; una detrás del panel, doce y el camino de vuelta.
explain-everything-a-cause-that-8ddb12a1 = {"*"}*Explicarlo todo.** Una causa que explica dos de tres hallazgos no es la causa, o no es la única.
prove-it-the-reading-that-fits-6bb097be = {"*"}*Demostrarlo.** La lectura que encaja con la pieza antes de cambiarla; la marcha que sale bien después.
ask-why-it-failed-a-fuse-a-board-bba5d5b0 = {"*"}*Preguntar por qué falló.** Un fusible, una placa, una correa, un protector térmico tienen un motivo que sigue ahí.
say-what-you-expect-before-you-bd7786d8 = Decir lo que se espera antes de medir. Una lectura que sería igual con cualquiera de las dos causas no vale nada, por exacta que sea.
a-chain-halved-2bc1e829 = Una cadena, partida por la mitad
p-drains-and-does-not-spin-whole-b3cdf7ac = P desagua y no centrifuga. Cadena entera: contactos de la tapa y de la palanca de desequilibrio, placa, cable del motor, motor con condensador, correa, caja de engranajes, cable de tracción, palanca, embrague, freno.
it-washes-both-ways-motor-c7a44bc2 = Lava en los dos sentidos: quedan descartados motor, condensador, los dos cables, salidas de la placa y correa, sin una herramienta.
it-drains-drain-motor-and-its-81d10935 = Desagua: motor de desagüe y el tirón de su cable de tracción, al menos hasta la válvula.
in-the-spin-step-the-motor-3b13f40c = En el paso de centrifugado el motor gime y el cesto está parado: quedan descartados los contactos, pues la placa sí lo mandó. Lo que queda está entre el cable de tracción y el embrague.
machine-laid-down-wire-pulled-by-3a3cc810 = Máquina tumbada, cable de tracción estirado a mano, 17 mm, la palanca se queda donde está: está fuera de su enganche. Cuatro miradas, ninguna pieza.
had-the-motor-stood-still-86d072eb = Si en cambio el motor hubiera estado parado: voltaje en su conector en el sentido del centrifugado, después la salida de la placa, después la entrada que lo prohíbe.
where-to-look-first-f8534d2e = Dónde mirar primero
the-customer-says-8bdec87c = El cliente dice
what-separates-30c62599 = Lo que separa
practise-cc3eacc0 = Practicar
no-water-or-slowly-b0ba3afa = sin agua, o despacio
a-hum-at-the-valve-tap-filter-e9326c03 = un zumbido en la válvula: grifo, filtro, presión; silencio: voltios en su bobina; en los dos casos: el chorro en el extremo de la manguera
no-water-bench-no-water-in-9fde5130 = {"["}sin agua](#/bench/no_water), [en silencio](#/bench/silent_and_dry), [la tercera válvula](#/bench/third_valve_still_slow), [desde la sequía, T](#/bench/slow_since_the_drought)
fills-does-not-wash-214b6dfc = llena, no lava
hum-or-no-hum-turns-by-hand-or-187ce937 = zumba o no zumba; gira a mano o no; el motor o solo el impulsor
hums-and-stands-bench-hums-and-2100f1e1 = {"["}zumba y está parada](#/bench/hums_and_stands), [hace tictac](#/bench/hums_quietly_no_wash), [no se mueve nada, T](#/bench/clicks_and_stirs_nothing)
one-way-only-or-hot-1a4753bc = un solo sentido, o caliente
both-strokes-one-after-the-other-0766fdd2 = los dos giros, uno tras otro: voltios en el conector, corriente, bobinados
growls-one-way-bench-hot-and-eea81bd3 = {"["}gruñe hacia un lado](#/bench/hot_and_stops), [un sentido, N](#/bench/turns_one_way), [un sentido, T](#/bench/one_way_only_and_hot)
does-not-empty-5ff34540 = no se vacía
whirr-and-pull-or-hum-then-hose-7cad8aab = ronroneo y tirón, o zumbido; después manguera y paso
stops-full-bench-stops-full-of-b79e8f7c = {"["}se para llena](#/bench/stops_full_of_water), [zumba, N](#/bench/hums_and_water_stays), [ronronea, T](#/bench/pulls_and_nothing_opens)
does-not-spin-c081ddef = no centrifuga
washes-both-ways-motor-running-74912ecd = ¿lava en los dos sentidos?, ¿el motor funciona mientras tanto?
drains-no-spin-bench-washes-will-fb426555 = {"["}desagua, no centrifuga](#/bench/washes_will_not_spin), [da vueltas, N](#/bench/whirls_and_does_not_wring), [se vacía y ahí se queda, T](#/bench/empties_and_stops_there)
too-full-never-full-drinks-e4edf906 = demasiado llena, nunca llena, bebe
the-count-against-the-mark-on-871dab4f = la cuenta frente a la marca de la cuba, con el agua quieta
overflows-bench-overflows-since-e76e01df = {"["}se desborda](#/bench/overflows_since_the_repair), [bebe](#/bench/drinks_and_slaps_over), [nunca llena, N](#/bench/fills_and_never_gets_full), [más llena que nunca, T](#/bench/fuller_than_ever)
dead-b5df2b27 = muerta
socket-cord-fuse-then-06f31de6 = toma de corriente, cable de alimentación, fusible, después transformador o contacto del programador; una lectura en cada uno
dark-panel-bench-dark-panel-4d278d5a = {"["}panel apagado](#/bench/dark_panel), [después de la tormenta](#/bench/dead_after_the_storm), [nada de nada, T](#/bench/nothing_at_all), [después de un zumbido fuerte, N](#/bench/dead_after_a_buzz)
walks-bangs-d6354538 = camina, golpea
level-and-load-before-rods-at-2913af77 = nivelación y carga antes que varillas; a qué velocidad
walks-bench-walks-and-fills-fb0baad3 = {"["}camina](#/bench/walks_and_fills_again), [como un bombo, T](#/bench/bangs_like_a_drum), [cuadros, N](#/bench/shakes_the_pictures)
squeals-rumbles-smells-57f40dd3 = chirría, retumba, huele
in-which-act-gone-with-the-belt-1cdeb5a7 = en qué fase; ¿desaparece con la correa quitada?
squeals-bench-squeals-and-comes-234b5f60 = {"["}chirría](#/bench/squeals_and_comes_out_wet), [correa nueva, N](#/bench/squeals_after_the_new_belt), [da palmadas y roza](#/bench/slaps_and_rubs)
tears-creeps-runs-on-6b17191f = rompe la ropa, se va girando, sigue girando
with-the-lever-pulled-with-it-f13048fe = con la palanca estirada, con ella suelta, en cada sentido
creeps-bench-creeps-and-tears-ac967e4e = {"["}se va girando](#/bench/creeps_and_tears_sheets), [tarda en pararse, N](#/bench/takes_its_time_stopping)
tingles-trips-283d0749 = da cosquilleo, hace saltar el interruptor
plug-out-first-earth-of-the-0f967c15 = primero la clavija fuera; tierra de la casa, continuidad de tierra, aislamiento
bites-bench-bites-bare-feet-3de21dea = {"["}muerde](#/bench/bites_bare_feet), [hormiguea, T](#/bench/prickles_in_the_scullery), [hace saltar el interruptor, T](#/bench/trips_and_old)
water-below-a83b6425 = agua debajo
dry-it-fill-look-with-a-dry-3e654b4b = secarla, llenar, mirar con un paño seco dónde empieza
damp-patch-t-bench-drips-and-7c17dafa = {"["}mancha de humedad, T](#/bench/drips_and_slips), [agua oxidada, N](#/bench/rust_and_rumble)
now-and-then-9fe8c67d = de vez en cuando
provoke-it-move-warm-shake-start-39d81ed4 = provocarlo: mover, calentar, sacudir, arrancar muchas veces; un registrador
forgets-bench-forgets-what-it-db3055fa = {"["}se olvida](#/bench/forgets_what_it_was_doing), [descansa, T](#/bench/rests_after_ten_minutes), [se desanima, N](#/bench/no_heart_after_a_while)
does-not-do-what-it-should-356ca0d4 = no hace lo que debería
keys-lock-delay-load-detergent-e44d3101 = teclas, bloqueo, retardo, carga, detergente: enseñar, no reparar
keys-bench-keys-do-nothing-later-6c0d55ff = {"["}teclas](#/bench/keys_do_nothing), [más tarde, N](#/bench/says_later), [montaña blanca](#/bench/white_mountain)
what-the-display-s-alarms-mean-363ffaa5 = Lo que significan las alarmas de la pantalla está en [la máquina P](#/handbook/machine_p); un [programador](#/handbook/machine_t) no tiene ninguna.
dead-test-or-live-test-2aaea9ac = Prueba sin voltaje o prueba con voltaje
where-a-resistance-settles-the-ab4b57c2 = Donde una resistencia resuelve la cuestión, aislar y medir sin voltaje. Los voltios con voltaje son para lo que solo muestra un circuito vivo: ¿está mandando la placa?, ¿cae el voltaje con carga? Una sola mano, una punta enganchada, saber dónde se está.
what-fools-people-944f7469 = Lo que engaña a la gente
a-meter-without-load-ghost-volts-256c8e96 = Un multímetro sin carga: voltios fantasma. Usar el modo de baja impedancia.
a-part-measured-with-everything-271303c9 = Una pieza medida con todo lo demás en paralelo.
a-machine-that-washes-one-way-3b550954 = Una máquina que lava **en un solo sentido**: la mitad de los giros parece un lavado.
a-lead-that-reads-0-1-ohm-and-21f29cfd = Un cable que marca 0.1 ohmios y no conduce nada: cargarlo, después medir su caída.
a-part-that-was-changed-and-11d1d3f1 = Una pieza que se cambió y ayudó por casualidad: algo se movió al llegar hasta ella.
alarms-name-what-the-board-86dfcf63 = Las alarmas nombran lo que notó la placa, no lo que está roto.
the-last-man-said-motor-words-f3c7a128 = «El anterior dijo que era el motor»: las palabras no son una lectura.
a-house-a-dead-socket-a-missing-ce3e358f = Una casa: una toma muerta, una tierra que falta, un grifo con poca presión. La máquina está bien y la queja es real.
two-faults-at-once-after-the-527af6be = Dos averías a la vez: reparada la primera, pasar el programa entero antes de recoger.
when-it-does-not-show-d108154b = Cuando no se manifiesta
nobody-watches-ten-cycles-8d50c66a = Nadie mira diez ciclos. Hay que provocarlo: mover el cable, apretar el conector, calentar el motor, arrancar diez centrifugados de veinte segundos, cargarla de forma desigual. Una avería que va y viene con la mano está encontrada. Una que no aparece: decirlo, anotar qué se probó y qué se sabe ya que está bien, dejar un consejo y un número al que llamar. Eso es un cierre correcto.
worked-jobs-70bf594b = Trabajos resueltos
step-through-how-a-skilled-675db6bf = Recorrer paso a paso cómo los abordó un técnico experto, y después hacerlos por cuenta propia:
no-water-comes-in-handbook-093008b2 = {"["}No entra agua](#/handbook/worked-no_water), P: mirar antes de medir
it-hums-and-nothing-turns-21451feb = {"["}Zumba y no gira nada](#/handbook/worked-hums_and_stands), P: un condensador, puesto en seguridad y medido
it-washes-but-will-not-spin-92d4c89a = {"["}Lava pero no quiere centrifugar](#/handbook/worked-washes_will_not_spin), P: falta un sentido
no-spin-since-the-cousin-was-cb745de7 = {"["}No centrifuga desde que estuvo el primo](#/handbook/worked-no_spin_since_cousin), P: el trabajo entero, de la puerta a la firma, sin pieza
it-bites-with-bare-feet-handbook-30979824 = {"["}Muerde con los pies descalzos](#/handbook/worked-bites_bare_feet), P: poner en seguridad y marcharse
it-washes-on-and-on-handbook-054fb2ff = {"["}Lava y lava sin parar](#/handbook/worked-dial_stands_still), T: razonar sobre un programador
it-hums-and-the-water-stays-in-e4f21daa = {"["}Zumba y el agua se queda dentro](#/handbook/worked-hums_and_water_stays), N: vaciar, tumbar, una bomba
each-ends-with-work-it-yourself-03c41973 = Cada uno termina con «Trabajarlo por cuenta propia», que abre el trabajo en el banco.
what-each-reading-tells-apart-on-8e69ece7 = Lo que distingue cada lectura en una máquina está calculado: [lecturas y averías](#/readings).

### job.md

a-customer-has-called-read-the-4280b0bc = Ha llamado un cliente. Leer la ficha de trabajo, preguntar lo que se preguntaría en la puerta, y mirar antes de tocar nada: cable de alimentación, toma de corriente, manguera, grifo, suelo. Los clientes cuentan lo que vieron; muchas veces es cierto y a veces no.
let-the-machine-do-what-the-975f6532 = Hacer que la máquina haga lo que describió el cliente, si es seguro: tocar las teclas de su panel, o el dial y el botón giratorio de un programador, en el dibujo visto desde fuera. Mirar, escuchar, leer su pantalla. El reloj al pie del banco puede ir más rápido, o esperar hasta que algo cambie.
then-make-it-safe-handbook-safe-7734db55 = Después [ponerla en seguridad](#/handbook/safe), abrirla, [medir](#/handbook/measure) y razonar. Anotar las lecturas: el cuaderno es la evidencia. Poner causas en la lista de sospechosas, tachar lo que una lectura excluye, y cambiar una sola cosa cada vez.
name-a-price-before-you-repair-f4bf823d = Decir un precio antes de reparar.
repair-what-you-have-proved-not-e1c8bb74 = Reparar lo que se ha demostrado, no lo que se sospecha.
put-everything-back-and-check-it-e42928c3 = Volver a montarlo todo y comprobarlo sobre la marcha: la pieza que está detrás de una cubierta, o el gabinete, ofrece la cubierta, unión o palanca que toca volver a poner.
prove-that-the-machine-works-and-62db2a3f = Demostrar que la máquina funciona y es eléctricamente segura.
state-the-fault-found-tick-the-694fc18c = Declarar la avería encontrada, marcar las líneas que la muestran, informar al cliente, entregar.
what-surrounds-a-repair-4eb3a720 = Lo que rodea una reparación
on-the-telephone-which-machine-0f84ac85 = {"*"}*Al teléfono**: qué máquina es, hasta dónde llega, desde cuándo, qué muestra, dónde está. Con las respuestas se carga la furgoneta, y una pieza en la furgoneta es una segunda visita ahorrada.
warranty-date-of-purchase-rating-3a7bf979 = {"*"}*Garantía**: fecha de compra, placa de características, mal uso; quién paga se decide antes del trabajo.
estimate-a-price-for-finding-the-65fd278d = {"*"}*Presupuesto**: un precio por encontrar la causa, un precio por la reparación, y otra vez cuando cambia la causa. Frente al precio de una máquina nueva puede ser honrado desaconsejar una reparación. Un no es una respuesta.
a-second-visit-closed-earthed-8db7123b = {"*"}*Una segunda visita**: cerrada, con tierra, desenchufada, grifo cerrado, etiquetada, el cliente informado de cuándo.
refused-work-when-to-stop-e08d20ee = {"*"}*Trabajo rechazado**: [cuándo parar](#/handbook/safe).
teaching-one-sentence-that-fits-00e9ad36 = {"*"}*Enseñar**: una frase que encaje con la causa: detergente, carga, filtro, nivelación.
on-paper-under-papers-on-the-ad4e4413 = En papel: en *Papeles*, en el banco, «Imprimir la ficha de trabajo y los dibujos» pone la ficha, con líneas para escribir, y cada dibujo de la máquina tal como está (por fuera, abierta, en corte, cableado, agua) en una hoja propia, en tonos de gris sobre blanco. En una evaluación el cableado está entre ellos solo donde está permitido.
the-page-speaks-several-b5edea97 = La página habla varios idiomas: elegir el propio en los [ajustes](#/settings). Trabajos, lecturas, puntuación y este manual son los mismos en cada uno; un trabajo que escribió alguien se muestra tal como se escribió.
the-debrief-goes-through-the-job-4f094370 = El repaso recorre el trabajo paso a paso: qué dijo cada lectura, qué costó, y qué se sabía ya.

### limits.md

this-is-a-workshop-for-practice-ea9cf118 = Esto es un taller de práctica. Las máquinas se calculan: voltajes, corrientes, agua, correas y calor se siguen de la física de las piezas, y una avería cambia una pieza, nada más. Lo que se lee es lo que mostraría una máquina así.
it-trains-finding-faults-the-d7198440 = Ejercita encontrar averías, el orden del trabajo y las decisiones sobre seguridad. No ejercita las manos: cuánta fuerza pide una abrazadera, cómo se siente un rodamiento gastado, cuánto pesa una máquina.
what-is-not-modelled-220ee82a = Lo que no está modelado
water-hammer-beyond-its-peak-c18e6a96 = El golpe de ariete más allá de su presión máxima; las olas en el agua; las prendas sueltas y cómo se enredan (una carga es una masa, una absorción y un desequilibrio); el desgaste durante un trabajo; las interferencias de radio; el procesador del control por debajo de sus estados, entradas y salidas; las uniones de semiconductores, de modo que una prueba de diodos ve resistencias; la carga que añade una pinza; las quemaduras y lesiones mecánicas más allá de la regla que se rompió; las manos.
the-machines-are-nobody-s-their-c8b81f77 = Las máquinas no son de nadie. Sus valores están elegidos para que todos encajen entre sí; son correctos para estas máquinas y para ninguna otra. Hay que tomar la hoja de datos de la máquina que se tiene delante.
values-from-memory-7cab3574 = Valores de memoria
limits-and-rules-that-name-a-6e4475a6 = Los límites y reglas que nombran una norma se recordaron y no se consultaron (EN 50678, EN 50699, EN 50110-1, IEC 60335, IEC 60364-4-41, IEC 60479, IEC 61010): manda la edición vigente. Lo mismo la exactitud de los medidores, los tiempos de los dispositivos de protección, la velocidad del cable de tracción y los textiles de la cuba. Lo que este manual llama práctica común no tiene otra fuente que el hecho de que se hace así.
what-comes-first-f1d12480 = Lo que va primero
local-codes-and-licensed-f7109f74 = Los reglamentos locales y la práctica con licencia van primero. No abrir nunca una máquina real sobre la base de una simulación solamente.
everything-stays-in-this-browser-8d2deb35 = Todo se queda en este navegador. No se envía nada a ninguna parte.

### machine_n.md

t-120-v-60-hz-36-kg-what-is-line-1e72de28 = 120 V, 60 Hz, 36 kg; lo que en otras partes se llama «line» y «earth» es aquí «hot» y «ground», fase y tierra, y el grifo es un «faucet». Una placa con relés, con su lado de 5 V aislado de la red. Desagua una bomba; un motor del embrague propio mueve la palanca. No hay interruptor de encendido: la placa tiene voltaje en cuanto la clavija está puesta, muestre lo que muestre la pantalla, y tras un corte de corriente de menos de media hora sigue sola.
each-part-with-its-test-and-its-62148357 = Cada pieza, con su prueba y la forma de llegar a ella: [piezas de N](#/handbook/parts_n). Lo que puede fallar: [averías de N](#/handbook/faults/N). El llenado, el lavado y la prueba de servicio van como en [P](#/handbook/machine_p).
what-differs-from-p-696f13f2 = Lo que difiere de P
the-lid-switch-carries-the-motor-a3c6902c = {"*"}*El interruptor de la tapa lleva la corriente del motor.** Con la tapa abierta no gira nada, tampoco en el lavado.
lid-and-out-of-balance-switch-98cd20f0 = El interruptor de la tapa y el de desequilibrio son dos entradas: la pantalla los distingue.
two-valves-cold-and-hot-each-878e4457 = Dos válvulas, fría y caliente, cada una con bobina y salida propias: probar las dos.
the-count-is-24-9-khz-for-an-ac03beb3 = La cuenta es de 24.9 kHz con la cuba vacía, unos 23.6, 23.0 y 22.5 kHz para bajo, medio y alto, 21.9 kHz para desbordamiento; se da por buena entre 21.5 y 25.5 kHz.
the-fuse-sits-on-the-board-a-46cd4a52 = El fusible está en la placa: una bomba con espiras en cortocircuito o un motor en cortocircuito lo abre, y todo queda apagado.
currents-are-nearly-three-times-e4ba5a35 = Las corrientes son casi tres veces las de P para el mismo trabajo, de 2.9 a 4.4 A en el lavado: una conexión de unos pocos ohmios en un alargador se nota antes. Un bobinado del motor tiene solo de 3.1 a 3.4 ohmios: los 0.1 de las puntas de prueba cuentan.
the-pump-lifts-the-water-so-the-87b336a9 = La bomba eleva el agua, así que el extremo de la manguera cuelga alto; uno que cuelga bajo deja que la cuba se vacíe sola a través de la bomba parada, y no se llena nunca. Desde el nivel alto se vacía en 110 a 190 s, y la bomba consume de 0.9 a 1.25 A.
measured-from-0-v-to-the-cabinet-a4e7f1d2 = Medido de 0 V al gabinete, el lado de bajo voltaje puede mostrar voltios fantasma, y nada en el modo de baja impedancia: flota, y eso es correcto. Una lectura ahí que se mantiene es una avería.
relays-reverse-the-motor-one-8d201094 = El sentido del motor lo invierten relés. Un relé conecta el motor, otro de conmutación elige su sentido. Un contacto soldado o quemado se encuentra como en un programador: voltios en la salida con el relé mandado, y sin mandar; voltios entre los extremos del contacto mientras está cerrado. Un relé que cierra solo a veces: calentarlo, golpearlo suavemente, arrancarlo muchas veces; un arranque provocado cuenta.

### machine_p.md

an-electronic-control-commands-a472db89 = Un control electrónico lo manda todo: 230 V, 50 Hz, 35 kg. Sus 5 V vienen de un transformador; su lado de 5 V está unido a la red, así que cada conector de la placa cuenta como con voltaje mientras la máquina está enchufada. El interruptor de encendido abre un solo conductor; con fase y neutro intercambiados, la placa sigue con voltaje con el interruptor apagado.
each-part-with-its-test-and-its-f351eaeb = Cada pieza, con su prueba y la forma de llegar a ella: [piezas de P](#/handbook/parts_p). Lo que puede fallar: [averías de P](#/handbook/faults/P).
the-board-closes-a-triac-and-the-f4b79469 = La placa hace conducir un triac y se abre la válvula de entrada. El agua, al subir, encierra aire en la cámara de la cuba y lo empuja hacia arriba por la manguera de aire; el sensor de nivel de allí es un oscilador cuya frecuencia baja cuando sube la presión. La placa cuenta: 26.0 kHz es una cuba vacía; unos 24.5, 23.9 y 23.4 kHz son bajo, medio y alto. Cuando la cuenta dice llena, la válvula se cierra; a 22.6 kHz la placa lo llama desbordamiento y desagua. El chorro es de 12 L/min a 0.3 MPa, mantenido por un regulador en la válvula, de modo que la presión lo cambia poco hasta que es muy baja; el nivel alto tarda de 210 a 290 s con 4 kg. Una manguera que pierde aire, o que está aplastada, hace que la placa crea en un nivel equivocado.
the-motor-runs-to-one-side-and-3fe1444f = El motor gira hacia un lado y hacia el otro, con el condensador de marcha en serie con el bobinado que no se alimenta directamente. La correa y la caja de engranajes hacen girar el impulsor a 140 a 155 r/min; el freno sujeta el cesto. La corriente de fase es de 1.0 a 1.5 A; un motor bloqueado consume unos 2.9 A, y su protector térmico se abre al cabo de un minuto más o menos. El lavado sigue con la tapa abierta: solo está protegido el centrifugado. Un condensador débil o un bobinado abierto dejan par hacia un solo lado, o ninguno.
draining-and-spinning-374f9e9c = Desagüe y centrifugado
the-drain-motor-pulls-a-wire-the-75188a20 = El motor de desagüe tira de un cable de tracción. El cable abre la válvula de desagüe al cabo de un segundo y medio, y en sus últimos milímetros mueve la palanca del embrague: el freno suelta, el embrague une impulsor y cesto. Si la palanca está fuera de su enganche, el agua se va y el cesto se queda parado.
the-order-after-the-drain-motor-8d765229 = El orden desde que se alimenta el motor de desagüe, según los valores de las propias piezas: la válvula empieza a abrir 1.6 s, freno libre 2.5 s, el embrague agarra 3.8 s, carrera completa de 17 mm 5.3 s. Una carrera que acaba en 10 mm vacía la cuba y no centrifuga nunca. La válvula está cerrada en reposo: bajar la manguera no vacía nada. Desde el nivel alto tarda de 75 a 130 s.
spinning-starts-in-steps-to-let-2c142a66 = El centrifugado arranca por pasos, para dejar salir agua antes de la velocidad plena, de 720 a 790 r/min, con 0.8 a 1.1 A. El interruptor de la tapa y el de desequilibrio comparten una entrada, en serie: la placa los distingue por el tiempo. Una apertura más corta que un segundo más o menos es un golpe; una más larga es la tapa.
when-it-stops-and-beeps-2be939cf = Cuando se para y pita
the-board-stops-on-what-its-few-4beb963d = La placa se para por lo que le dicen sus pocos sentidos: no llega al nivel a tiempo, el nivel no baja a tiempo, la entrada de la tapa abierta, bamboleos repetidos, una cuenta que no puede ser. La pantalla lo da en palabras sencillas; qué pieza está detrás es trabajo del técnico.
display-5a05d9b5 = Pantalla
what-the-board-noticed-074eb6c4 = Lo que notó la placa
first-look-869c25c0 = Primera mirada
not-full-after-20-min-d2217d35 = no llena después de 20 min
tap-hose-filter-pressure-is-cf1792e0 = grifo, manguera, filtro, presión; ¿se vuelve a ir el agua?; ¿sigue la cuenta al agua?
not-empty-after-10-min-90daf416 = no vacía después de 10 min
drain-hose-does-the-motor-whirr-b3393b46 = manguera de desagüe; ¿ronronea el motor, tira el cable de tracción?; ¿sigue la cuenta al agua?
three-corrections-were-not-72c5c116 = no bastaron tres correcciones
load-feet-floor-the-lever-s-gap-6b6614e2 = carga, patas, suelo; la separación de la palanca de desequilibrio; el conector de la tapa
the-shared-input-stayed-open-for-16c954cf = la entrada compartida estuvo abierta 10 min
the-lid-then-each-of-the-two-ba0bc7c2 = la tapa; después cada uno de los dos interruptores por separado
no-pulses-or-a-count-outside-22-e1fa6865 = ningún pulso, o una cuenta fuera de 22.3 a 26.6 kHz
sensor-plug-coil-then-the-board-57593906 = conector del sensor, bobina, después la placa
t-22-6-khz-or-less-a86d8694 = 22.6 kHz o menos
water-or-not-valve-leaking-by-62e338cb = ¿hay agua o no? Válvula que deja pasar agua cerrada, salida que se queda activada, manguera
topped-up-again-and-again-4082da8b = rellenada una y otra vez
drain-valve-hose-end-pinhole-in-d77b002d = válvula de desagüe, extremo de la manguera, agujero diminuto en la manguera de aire
under-75-or-over-120-for-5-s-ba1fcf1a = menos del 75 % o más del 120 % durante 5 s
volts-at-the-socket-at-rest-and-e921a9ee = voltios en la toma de corriente, en reposo y con carga
the-service-test-64e84de5 = La prueba de servicio
a-labelled-key-behind-the-panel-8168df84 = Una tecla rotulada detrás del panel, que se pulsa con la pantalla en la mano, la recorre paso a paso: lámparas y zumbador; la cuenta; los dos interruptores; válvula 10 s, unos 2 litros; motor en sentido directo 5 s, luego inverso; motor de desagüe; centrifugado 20 s, cuba vacía; parada; llenado hasta el nivel bajo y vaciado. Manda una salida cada vez y la mantiene, de modo que las lecturas se quedan quietas: la manera más rápida de partir una máquina por la mitad. De paso, tomar la corriente con el cable separador: la misma en los dos sentidos, con el impulsor a su velocidad, dice que el condensador, los dos bobinados, las dos salidas y la correa están bien.
what-is-easily-taken-for-7743e06b = Lo que se confunde fácilmente con otra cosa
washes-drains-no-spin-washes-it-471da64d = {"*"}*Lava, desagua, no centrifuga**: ¿lava en los dos sentidos? Un sentido que falta es un cable, una salida o un bobinado, y el centrifugado necesita justo ese. Los dos presentes: cable de tracción, palanca, embrague.
an-out-of-balance-switch-stuck-1f95412e = {"*"}*Un interruptor de desequilibrio trabado en abierto** parece una tapa abierta, pues comparten una entrada.
uses-much-water-spins-with-water-ab31612f = {"*"}*Gasta mucha agua, centrifuga con agua dentro**: la cuenta retrocede poco a poco con el agua quieta: un agujero diminuto.
fills-slowly-with-the-third-new-5edd9952 = {"*"}*Llena despacio con la tercera válvula nueva**: el grifo no da nada. Primero, jarra y reloj.

### machine_t.md

no-electronics-230-v-50-hz-34-kg-faf6fd0a = Sin electrónica: 230 V, 50 Hz, 34 kg. Un motor pequeño hace girar levas; las levas cierran contactos; un presostato con tres presiones de ajuste decide entre llenar y lavar. Todo en esta máquina está al voltaje de la red.
each-part-with-its-test-and-its-5c75ee03 = Cada pieza, con su prueba y la forma de llegar a ella: [piezas de T](#/handbook/parts_t). Lo que puede fallar: [averías de T](#/handbook/faults/T).
filling-and-washing-225c9174 = Llenado y lavado
the-timer-s-feed-passes-through-708ef84c = La alimentación del programador pasa por el presostato. Vacía, el presostato la manda a la válvula de entrada; llena, al motor y al motor del propio programador. Por eso **el dial está quieto mientras llena**, y un dial que no se mueve nunca puede significar agua que no alcanza nunca su nivel, un presostato que no conmuta o un motor del programador abierto. Una vuelta son 43 pasos de un minuto cada uno.
the-pressure-switch-changes-over-9fa8cfdb = El presostato conmuta a unos 138, 203 o 268 mm de agua para bajo, medio y alto, y vuelve atrás por debajo de unos 41 mm. Si el agua se va, vuelve a llenar solo cuando casi no queda nada.
a-second-faster-shaft-reverses-4fd9218a = Un segundo eje, más rápido, invierte el motor: 1.4 s hacia un lado, un breve descanso, 1.4 s hacia el otro. Si allí falta un contacto, lava en un solo sentido; si hay uno soldado, el motor recibe los dos sentidos a la vez, zumba, se calienta mucho y abre su protector térmico. Las dos cosas se ven en los terminales del programador: directo e inverso, cada uno contra neutro, con el dial en lavado. Entre los extremos de un contacto cerrado lo correcto es de 0 a 0.5 V.
the-drain-motor-opens-the-valve-1e799c16 = El motor de desagüe abre la válvula y mueve la palanca del embrague como en P. El interruptor de la tapa está en la alimentación del motor en el centrifugado: con la tapa abierta, o el interruptor abierto, desagua pero no centrifuga. Allí están en serie el interruptor de la tapa y el de desequilibrio, así que una palanca de desequilibrio que se dispara detiene el centrifugado hasta que la cuba vuelve a su sitio, y una palanca doblada contra la cuba lo detiene para siempre. El lavado no está protegido: funciona con la tapa abierta. No hay alarma ni pantalla: lo que no hace es todo lo que dice.
finding-the-way-on-a-timer-cf9bfa75 = Encontrar el camino en un programador
no-service-test-the-dial-is-it-2f0dc6d6 = No hay prueba de servicio; la prueba es el dial. Tomar el dial, empujar el botón giratorio, girar hasta el paso, tirar, y ver cuáles de llenado, directo, inverso, desagüe y centrifugado están presentes. Falta todo lo de una alimentación: el contacto, o lo que está antes de él. Falta una carga: su cable o ella misma. Dibujar el camino de la fase por el contacto, el presostato o la tapa, la carga, hasta el neutro, y partirlo por la mitad: una lectura de voltios en el medio o, con la clavija fuera, los ohmios de cada mitad. El neutro es común a todos, en su empalme: las cargas que fallan todas juntas lo comparten.
renew-a-timer-wire-by-wire-one-62a04e40 = Cambiar un programador cable por cable, pasándolos de uno en uno; mirar si hay señales de calor en cada terminal antes de culpar al contacto.

### marks.md

five-things-are-marked-safety-20-d5d893ff = Se puntúan cinco cosas: seguridad 20, diagnóstico 30, economía 15, procedimiento 15, evidencia 20. En el repaso, cada una se abre hasta los pasos que hay detrás.
safety-every-broken-rule-takes-a-b243c8fb = {"*"}*Seguridad.** Cada regla rota quita una parte, la misma regla una sola vez hasta que se vuelve a mover la clavija: un décimo por una acción descuidada, tres décimos por una que podría haber herido o inundado. Una regla cuya infracción puede matar deja todo el trabajo en 39. Quien no prueba ni repara nada no arriesga nada, y aquí no obtiene nada.
diagnosis-what-was-stated-first-e6412bd0 = {"*"}*Diagnóstico.** Lo que se declaró, al principio y al final, frente a lo que está mal. Las averías con la misma reparación cuentan como una. Nombrarlo todo no ayuda: cada nombre equivocado pesa tanto como uno que falta. Una respuesta correcta sin evidencia obtiene la mitad.
evidence-how-far-each-repair-was-2abc8e94 = {"*"}*Evidencia.** Hasta qué punto estaba justificada cada reparación cuando se hizo. Las notas hasta entonces hacen probables algunas causas; una reparación está justificada cuando ningún otro paso habría salido más barato a la larga. La verdad no entra en ello: una conjetura afortunada no está justificada; una buena decisión que resultó equivocada, sí.
economy-what-the-job-cost-is-the-d13e91a2 = {"*"}*Economía.** Lo que costó el trabajo es el objetivo, lo que se podría haber evitado, y el azar. Solo cuenta lo evitable. Una segunda lectura de lo mismo, una cubierta quitada para nada, una pieza demasiado pronto, un daño, una pista: se muestra la parte de cada paso, con lo que habría sido mejor en ese momento. El azar no cuesta puntos ni los da.
procedure-what-this-job-made-5e4a20f0 = {"*"}*Procedimiento.** Lo que este trabajo hacía necesario: todo vuelto a montar y comprobado, una mirada en busca de fugas de agua, las pruebas eléctricas, una marcha completa, el precio acordado antes, el cliente informado.
a-pass-needs-no-breach-that-can-01443c7a = Para aprobar hace falta: ninguna infracción que pueda matar, seguridad 70 %, diagnóstico 60 %, procedimiento 60 % con la marcha y las pruebas eléctricas, evidencia 50 % y 65 de 100. Los instructores pueden pedir más.
hints-are-for-practice-only-they-ac8fd8f9 = {"*"}*Las pistas** son solo para la práctica. Suben desde una pregunta de vuelta, pasando por dónde mirar y qué paso, hasta lo que significaría, y cuestan el 5, 10, 15 y 40 % del objetivo como evitable. Salen de las notas, no de lo que está mal: notas equivocadas dan pistas equivocadas. Con cualquier otra acción la escalera empieza de nuevo. Para lo que ya se ha demostrado saber hacer hay menos.
what-each-step-was-worth-takes-927295cf = Calcular lo que valía cada paso lleva unos segundos. Hasta entonces, la economía se rige por la factura frente al objetivo, y la evidencia por si las notas difieren de las de una máquina sana; el repaso dice cuál de las dos cosas.

### measure.md

choose-the-mode-then-put-the-cb6e90c2 = Elegir el modo, después poner las puntas de prueba donde han de ir: tocar un punto en el esquema de cableado, o pulsar `r` para la punta roja y `b` para la negra y escribir unas letras del nombre del punto. El valor de la hoja de datos está junto a la pantalla cuando hay uno para esos dos puntos.
before-the-first-reading-of-a-789002f2 = Antes de la primera lectura de un trabajo: revisar las puntas de prueba, juntarlas en ohmios (unos 0.1 Ω), ver la batería, medir un voltaje conocido. Un instrumento que miente lo hace en silencio:
what-it-shows-a3f6f5b6 = Qué muestra
broken-lead-10fe8a76 = punta con el cable roto
t-0-v-on-everything-ol-on-ohms-a-a7b14580 = 0 V en todo, OL en ohmios: un circuito con voltaje parece muerto
weak-battery-825ff930 = batería baja
too-much-on-most-ranges-too-90ebb427 = demasiado en la mayoría de las escalas, demasiado poco en aislamiento
blown-fuse-inside-dc1e4e62 = fusible interior fundido
the-current-range-and-the-bond-f2f590e7 = la escala de corriente y el comprobador de continuidad de tierra no marcan nada
calibration-out-of-date-e1df0ab4 = calibración caducada
perhaps-nothing-wrong-its-20b2805f = quizá nada mal; su lectura no vale nada en un informe
category-too-low-for-the-place-e6ed926e = categoría demasiado baja para el lugar
all-is-well-until-the-surge-11adbbdc = todo va bien hasta que llega la sobretensión
a-display-settles-in-about-half-da1cd135 = Una pantalla se asienta en medio segundo más o menos, su último dígito baila, las escalas automáticas buscan, la capacitancia tarda segundos. Anotar lo que se queda quieto. En un lavado con giros de un segundo y medio, tomar en su lugar lecturas estables en la [prueba de servicio](#/handbook/machine_p).
which-reading-tells-which-faults-0ca68c69 = Qué lectura distingue qué averías está calculado para cada máquina: ver [lecturas y averías](#/readings). Lo que debe marcar cada pieza: piezas de [P](#/handbook/parts_p), [T](#/handbook/parts_t), [N](#/handbook/parts_n).
volts-87c7093b = Voltios
ac-volts-ten-megohms-of-input-feb29721 = {"*"}*Voltios de corriente alterna.** Diez megaohmios de entrada apenas cargan el circuito, así que los cables que corren junto a otros con voltaje, las salidas apagadas y un gabinete sin tierra muestran **voltios fantasma**: decenas de voltios sin nada detrás. Decir siempre entre qué dos puntos; un voltaje en un solo punto no es nada.
low-impedance-volts-about-4-1024f899 = {"*"}*Voltios en baja impedancia.** Unos 4 kiloohmios entre los puntos hacen desaparecer los fantasmas; lo que queda es una fuente real. Usarlo para comprobar sin voltaje, y siempre que una lectura no sea ni nada ni la de la red. También carga una fuente débil: una fuga a través de 100 kiloohmios marca aquí casi nada y sigue siendo una fuga; la encuentra el medidor de aislamiento. Y consume corriente suficiente para disparar un interruptor diferencial cuando va a tierra.
dc-volts-the-low-voltage-side-of-a5f28284 = {"*"}*Voltios de corriente continua.** El lado de bajo voltaje de una placa, y la carga que queda en un condensador. Rojo al positivo. En alterna marca más o menos nada, así que no demuestra nada sobre la red.
zero-volts-across-a-closed-7d71836a = Cero voltios entre los extremos de un interruptor cerrado es correcto, el voltaje de la red entre ellos significa abierto, cualquier cosa intermedia es un contacto quemado. Voltios en una carga que no hace nada: la carga. Sin voltios: volver hacia la red, la mitad del camino cada vez.
ohms-continuity-diode-9d06b41b = Ohmios, continuidad, diodo
on-a-dead-circuit-only-the-3b4a1ad9 = Solo en un circuito sin voltaje: el instrumento hace pasar su propia corriente. En un circuito con voltaje la lectura es falsa, el multímetro puede quemarse, y OL no demuestra que no haya voltaje.
lead-resistance-the-leads-add-21722301 = {"*"}*Resistencia de las puntas.** Las puntas de prueba añaden unos 0.1 Ω: una lectura por debajo de 0.3 Ω dice «unido» y nada más fino. Lo que importa en miliohmios, la tierra, es para el comprobador de continuidad de tierra.
parallel-paths-what-is-still-de84d801 = {"*"}*Caminos en paralelo.** Lo que sigue conectado se mide junto con todo lo demás: un bobinado a través del otro bobinado y el condensador, una bobina a través de la placa. Solo puede hacer más baja una lectura. Separar el conector cuando una lectura no encaja, y en la hoja de datos siempre que diga «separado».
ol-is-over-range-here-above-50-m-a25011af = {"*"}*OL** es fuera de escala, aquí por encima de 50 MΩ: para un bobinado, abierto.
charge-a-capacitor-that-is-not-235b8e1b = {"*"}*Carga.** Un condensador que no está vacío empuja su propia corriente por el multímetro.
fingers-on-both-probe-tips-are-a-5f093f69 = {"*"}*Los dedos** en las dos puntas son unos cientos de kiloohmios en paralelo.
a-warm-winding-reads-more-copper-f5cdaed6 = Un bobinado caliente marca más: el cobre gana un 0.4 % por cada kelvin.
low-current-proves-little-a-5da5f604 = Una corriente baja demuestra poco: un contacto quemado puede marcar 0.1 Ω y tener diez voltios de caída con carga. Medir su caída mientras conduce corriente.
continuity-sounds-below-about-30-31b91b1f = {"*"}*La continuidad** suena por debajo de unos 30 Ω. Es para interruptores y cables, abriéndolos y moviéndolos mientras suena; un bobinado de motor de 21 Ω también suena, y también bastante resistencia en una mala conexión. **La prueba de diodos** hace pasar más o menos un miliamperio y muestra la caída; las máquinas de aquí no tienen ningún diodo al que se pueda llegar, así que muestra resistencia en el mejor de los casos.
capacitance-frequency-3bcb1a15 = Capacitancia, frecuencia
a-run-capacitor-is-measured-with-e1e45fb4 = Un condensador de marcha se mide con los dos cables quitados, descargado y medido su voltaje. Un diez por ciento por debajo de la etiqueta es el límite habitual. Dejado en su sitio, los bobinados están en paralelo y el número no significa nada. Un condensador puede marcar bien con el voltio o dos del multímetro y fallar a 350 V: su voltaje mientras trabaja es la segunda prueba.
frequency-reads-the-level-sensor-88f63767 = {"*"}*La frecuencia** lee el sensor de nivel: la cuenta de la propia placa, 26.0 kHz en P y 24.9 kHz en N con la cuba vacía, menos con más agua. Necesita un oscilador en marcha, así que la máquina está encendida: planear dónde van las puntas con la clavija fuera.
current-b3d0c37a = Corriente
clamp-round-one-conductor-round-7f49f840 = {"*"}*Pinza amperimétrica, alrededor de un conductor.** Alrededor de un cable de alimentación entero marca casi nada, porque las corrientes de fase y neutro se anulan: una lectura cierta, y ninguna información. Poner un **cable separador** entre clavija y toma de corriente (con la clavija fuera al hacerlo), o abrazar un solo cable en el interior. Dos vueltas por las mordazas marcan el doble. Puede desviarse 5 mA, que es poco en un cable del motor y bastante en una bobina de 20 a 34 mA.
amperes-through-the-leads-is-a-0ed3458f = {"*"}*Amperios a través de las puntas** es un cortocircuito con un fusible de 10 A: nunca entre dos puntos con voltaje, y la punta de vuelta al borne de voltios enseguida. La pinza hace casi todo eso sin abrir nada.
leakage-clamp-round-line-and-aae7be5a = {"*"}*Pinza de fuga**, alrededor de fase y neutro juntos: lo que no vuelve, en miliamperios. Mide la fuga de la máquina y no la avería de la casa. Otros caminos a tierra, una tubería metálica o una máquina vecina, se llevan una parte sin pasar por una pinza puesta en el cable de tierra.
touch-current-metal-that-a-hand-ab046e68 = {"*"}*Corriente de contacto**: metal al alcance de la mano, a través de 2 kiloohmios a tierra, como sería una persona. Como máximo 0.5 mA.
insulation-tester-earth-bond-97ce20d3 = Medidor de aislamiento, comprobador de continuidad de tierra
both-on-a-machine-that-is-f05053b8 = Los dos en una máquina desenchufada y comprobada sin voltaje.
insulation-500-v-from-line-and-09fbcc8c = {"*"}*Aislamiento**: 500 V de fase y neutro unidos contra tierra, con el interruptor pulsado donde lo hay, para que se pruebe también lo que está detrás. Nunca a través de una placa: su supresor de sobretensiones conduce y la placa puede no sobrevivir. Esperar hasta que se quede quieto; un cable largo se carga primero. Una máquina usada marca de 5 a 200 MΩ; por debajo de 1 no vuelve a un cliente. Los contactos del control están abiertos en reposo: a lo que está detrás solo se llega pieza por pieza, o con la pinza de fuga mientras funciona.
earth-bond-0-2-a-from-the-plug-s-0c696196 = {"*"}*Continuidad de tierra**: 0.2 A de la espiga de tierra de la clavija a metal desnudo, con cuatro hilos, así que los suyos no cuentan. Como máximo 0.3 Ω con un cable de hasta 5 m. Mover el cable mientras tanto. Rascar la pintura hasta el metal brillante: un tornillo recubierto marca abierto en una máquina sana. Una máquina que toca una tubería de agua tiene un segundo camino a tierra: separarla primero.
water-and-air-080b5225 = Agua y aire
jug-and-watch-in-the-stream-at-4d4280e0 = {"*"}*Jarra y reloj** en el chorro, en el extremo de la manguera o en el grifo: litros por minuto. Dejarlo correr hasta que sea constante, usar una jarra que tarde medio minuto. No puede distinguir la presión de un paso bloqueado; dos lugares, sí.
pressure-gauge-on-a-tee-in-the-69303248 = {"*"}*Manómetro** en una te de la línea de entrada: en reposo muestra la presión de la casa, y con el agua corriendo, lo que queda. Un grifo casi cerrado muestra la presión completa en reposo; solo lo encuentra la lectura con el agua corriendo.
u-tube-on-a-tee-in-the-air-hose-95bbf58c = {"*"}*Tubo en U** en una te de la manguera de aire: la presión que recibe el sensor, en milímetros de agua. Añade aire a la manguera, así que marca un pelo menos. Mantenido unos minutos, encuentra un agujero diminuto. No soplar nunca fuerte en un sensor.
watch-filling-emptying-the-wire-80a7093f = {"*"}*Reloj**: el llenado, el vaciado, la carrera del cable de tracción, la parada del cesto. Decir de qué a qué.
speed-belt-position-heat-2764e024 = Velocidad, correa, posición, calor
tachometer-by-its-beam-from-ad7a83f8 = {"*"}*Tacómetro**, con su haz y desde fuera: impulsor, cesto, motor. Retiene la velocidad más alta de sus diez segundos, así que de un giro lee el pico. Una marca contada dos veces marca el doble. Motor e impulsor juntos muestran un resbalamiento.
spring-balance-and-rule-a-strand-988808c6 = {"*"}*Dinamómetro y regla**: un ramal de la correa empujado con 7 N en su centro cede de 4 a 6.5 mm. **Medidor de tensión de correa**: el tono del ramal pulsado como tensión, de 52 a 80 N; girar las poleas una vez y leer de nuevo, pues una correa no es igual en toda su vuelta.
spirit-level-both-ways-at-most-e572bd76 = {"*"}*Nivel de burbuja**, en los dos sentidos, como máximo 10 mm en un metro: sobre el gabinete en su sitio; sobre el suelo encuentra quién tiene la culpa. Darle la vuelta una vez: si entonces dice otra cosa, el que falla es el nivel.
rule-wire-travel-lever-gap-and-b16b5ae4 = {"*"}*Regla**: recorrido del cable de tracción, separación y juego de la palanca, altura del extremo de la manguera.
contact-thermometer-the-motor-s-9d9e9687 = {"*"}*Termómetro de contacto**: la superficie del motor está más fría que su bobinado, por decenas de kelvin después de un bloqueo. Apretarlo, esperar medio minuto.
recorder-b4ec379b = Registrador
four-pens-follow-what-stays-693e77c1 = Cuatro plumas siguen lo que se queda conectado: puntas del multímetro donde están, manómetro, tubo en U, tacómetro, termómetro. Ve lo que nadie espera a ver: el voltaje que cae en cada inversión, el nivel que baja en el remojo. Dos veces por segundo al principio; cuando la tira está llena conserva un punto de cada dos, así que un golpe de un décimo de segundo puede caer entre medias. Lo que no se alcanza deja un hueco, no un cero.
print-the-chart-puts-the-strip-acba183b = «Imprimir el gráfico» pone la tira sola en papel: de quién es el trabajo, cada pluma con su nombre y su línea, el valor más alto y el más bajo con su unidad, la hora del día debajo, y la tabla. Las líneas difieren en el estilo, así que basta con blanco y negro. Una tira nueva, o una pluma que se pone o se levanta, empieza de nuevo: imprimir antes.

### results.md

a-result-is-a-file-it-holds-what-67056307 = Un resultado es un archivo. Contiene lo que se hizo, cada lectura tal como se mostró, la puntuación y la versión del programa que puede ejecutarlo otra vez. Cualquiera que tenga el programa puede comprobarlo: la bitácora se ejecuta de nuevo, y cada línea, cada punto y el último estado de la máquina tienen que salir iguales.
where-a-part-of-the-marks-is-e44b60e0 = Donde una parte de la puntuación no es completa, la hoja dice por qué: cada paso que costó puntos con su hora, qué se hizo entonces, cuántos puntos costó, y el motivo. Lo que se omitió figura en el paso antes del cual había que hacerlo. Los motivos se hallan ejecutando de nuevo la bitácora, en la propia hoja del candidato y en la página de la persona en [Resultados](#/cohort); no están en el archivo.
what-a-result-shows-finding-38174abf = Lo que muestra un resultado: encontrar averías, el orden del trabajo, decisiones sobre seguridad. Lo que no muestra: las manos. Sigue haciendo falta una prueba práctica ante testigo.
in-an-assessment-each-candidate-d2058139 = En una evaluación cada candidato escribe un código de inicio propio. Con él se sella el resultado: nadie que no tenga el código puede cambiarlo, pasarlo a otra persona o quitar uno del medio de una fila.
what-no-page-in-a-browser-can-4854a342 = Lo que ninguna página en un navegador puede impedir: quien está sentado ante ella conoce su propio código y podría tener ayuda, o preparar una bitácora en otra parte. Aun así, esa bitácora tiene que funcionar cuando se ejecuta de nuevo, así que alguien resolvió el trabajo; quién fue solo se ve en una sala vigilada. Los resultados hechos en casa cuentan como práctica.
a-result-of-another-version-of-c9f903f8 = Un resultado de otra versión del programa no se ejecuta aquí de nuevo: otra versión puede calcular un dígito de otra manera. Todavía se puede leer tal como se escribió: quién, cuándo, qué versión, cada acción con lo que se mostró, el resultado tal como se selló. En **No aceptados** y en la página de la persona hay un **Leer** para ello; `tubwright verify FILE --read` dice lo mismo en la línea de comandos. Una página así dice que en ella no se calculó nada de nuevo. También se puede leer así cualquier otro resultado.
a-name-can-be-struck-out-of-a-7425c10d = De un resultado se puede tachar un nombre, o borrar todo lo que contiene: los resultados de alrededor se siguen pudiendo comprobar. Una evaluación puede decir después de cuántos meses toca hacerlo; la revisión de los resultados muestra los que han pasado ese plazo.
pauses-of-the-whole-room-stand-4471f07c = Las pausas de toda la sala figuran en un resultado con su tiempo; ese tiempo no contó.
time-and-cost-stand-beside-those-1f30f083 = El tiempo y el costo están junto a los que necesita un técnico experto para el trabajo, por cada persona y cada trabajo, en las tablas y en los archivos guardados. El tiempo objetivo se conserva en el resultado, así que está ahí también para un trabajo que no viene incluido; los resultados de antes de que se conservara lo toman del trabajo donde se conoce.
the-more-jobs-the-surer-the-56310cae = Cuantos más trabajos, más segura la decisión. Pocos trabajos dicen poco sobre una persona, y cerca de la nota de corte deciden más trabajos, no un «no aprobado».
economy-and-evidence-of-a-result-eefe68e5 = La economía y la evidencia de un resultado se rigen por lo que valía cada decisión, calculado mientras se hace el trabajo siguiente; la entrega espera a lo que falta. Se calcula otra vez cuando se comprueba el resultado, lo que lleva segundos por trabajo. Donde el navegador no tiene un hilo para ello, el trabajo se puntúa por la factura y el cuaderno, y el resultado lo dice.

### safe.md

this-page-is-for-practice-at-05d19832 = Esta página es para la práctica en este banco. En el lugar de trabajo van primero los reglamentos locales, las instrucciones del fabricante y lo que permite la licencia; donde piden más, se hace más. El trabajo en la instalación de una casa corresponde a un electricista con licencia.
before-anything-is-opened-43eed079 = Antes de abrir nada
look-cord-plug-socket-floor-2547d406 = {"*"}*Mirar**: cable de alimentación, clavija, toma de corriente, suelo, olor, quién anda cerca. Mantener a niños y animales fuera del cuarto.
measure-the-socket-line-to-fb3f1ab4 = {"*"}*Medir la toma de corriente**: fase a neutro, fase a tierra, neutro a tierra. Una clavija reversible se mide en las dos posiciones: fase y neutro intercambiados no son ahí una avería, y significan que un interruptor puede abrir el cable equivocado.
switch-off-unplug-keep-the-plug-cac76d58 = {"*"}*Apagar, desenchufar, tener la clavija a la vista**, etiquetarla o bloquearla. Un interruptor abre un solo conductor, a veces el equivocado; la placa de N no tiene ningún interruptor antes de ella.
shut-the-tap-let-the-pressure-9264ad88 = {"*"}*Cerrar el grifo, dejar salir la presión.** Una manguera de entrada quitada con el grifo abierto inunda el apartamento de abajo.
wait-a-minute-then-lead-the-fe4bb57b = {"*"}*Esperar un minuto, después descargar.** El filtro de red se vacía por su resistencia de descarga, salvo que esté rota; el condensador de marcha se vacía por los bobinados, salvo que tenga un cable suelto. Tratar los dos como cargados hasta que un multímetro diga otra cosa: a través de 10 a 20 kiloohmios, nunca con una hoja metálica, después medir. Por encima de 34 V no se pueden tocar (IEC 60335-1, de memoria).
proving-dead-bb99a908 = Comprobar sin voltaje
unplugged-is-not-dead-bb157fb3 = Desenchufada no quiere decir sin voltaje.
prove-the-tester-on-a-source-you-dfda37d2 = Comprobar el comprobador en una fuente que se sabe que tiene voltaje.
test-where-you-will-touch-each-4674cdb8 = Probar donde se va a tocar, cada conductor contra el otro y los dos contra tierra: con un neutro roto, de fase a neutro no marca nada y los dos tienen voltaje.
prove-the-tester-again-on-the-604a08c2 = Comprobar otra vez el comprobador en la fuente con voltaje. Solo entonces está la máquina comprobada sin voltaje.
a-contactless-tester-proves-aeb4fcd4 = Un detector sin contacto no demuestra nada; un óhmetro, menos. Usar voltios, en el modo de baja impedancia donde haya fantasmas.
the-line-safe-under-the-picture-2f084401 = La línea «¿Segura?» debajo del dibujo muestra con una marca lo que se ha hecho y con dos lo que se ha comprobado. No dice nunca más de lo que se ha establecido.
when-only-a-live-reading-will-do-9c3a22ad = Cuando solo sirve una lectura con voltaje
ask-first-whether-a-dead-test-7f532a26 = Preguntarse primero si [una prueba sin voltaje lo resuelve](#/handbook/diagnose). Si no: suelo y zapatos secos, puntas en buen estado de la categoría correcta y con fusibles, puntas colocadas con la clavija fuera donde se pueda, una sola mano, ponerse de modo que no se pueda caer dentro, enchufar, leer, desenchufar. En P el lado de 5 V está al potencial de la red: en esa placa no hay lado inofensivo. Que nadie esté solo en el edificio es una buena regla (práctica común).
alternating-current-through-the-f3e541fb = Corriente alterna a través de las manos: desde unos 0.5 mA se siente, desde unos 10 mA no se puede soltar, desde unos 30 mA el corazón está en peligro si dura (IEC 60479-1, de memoria). Un interruptor diferencial la acorta; no actúa entre fase y neutro, y no todas las casas tienen uno.
what-turns-falls-scalds-and-cuts-db55aabd = Lo que gira, cae, escalda y corta
basket-hands-out-until-it-stands-01c12390 = {"*"}*Cesto**: manos fuera hasta que esté parado. No puentear nunca un interruptor de la tapa; probarlo con la escala de continuidad. Una máquina que centrifuga con la tapa abierta no se queda en uso.
belt-and-pulleys-plug-out-wait-8577920f = {"*"}*Correa y poleas**: clavija fuera, esperar, ningún dedo entre ramal y polea.
water-drain-by-the-machine-on-p-af4e5a12 = {"*"}*Agua**: desaguar con la máquina; en P y T la válvula está cerrada en reposo, así que bajar la manguera no hace nada. Si no quiere desaguar, achicar o sacar con sifón por arriba: 52 litros a cubos llevan de 10 a 15 minutos. No inclinar nunca una máquina con agua dentro.
weight-about-35-kg-heavy-at-the-1392d83a = {"*"}*Peso**: unos 35 kg, con el peso arriba. Ayuda, una correa de carga o un soporte para cada paso que la incline; una manta debajo, cuñas en la cuba. No meter nunca la mano debajo de lo que no está apuntalado. Una cubierta superior levantada se ata o se apoya.
heat-a-motor-and-hot-water-burn-9e8f76de = {"*"}*Calor**: un motor y el agua caliente queman; acercar la mano antes de tocar. **Bordes**: guantes para meter la mano, fuera otra vez cerca de todo lo que gira.
static-touch-the-cabinet-before-b752d249 = {"*"}*Electricidad estática**: tocar el gabinete antes que una placa.
putting-power-back-951139b2 = Volver a dar corriente
every-earth-link-on-bond-and-3a17a9a1 = Todas las conexiones de tierra puestas, continuidad de tierra y aislamiento medidos, partes mojadas secas, herramientas contadas: entonces, la clavija. Un fusible o un dispositivo de protección que se abrió tenía un motivo: probar sin voltaje antes de rearmarlo; nunca un fusible mayor. Un condensador de marcha, nunca para menos voltaje que el viejo. Después, las [pruebas tras una reparación](#/handbook/after).
if-something-happens-f41ca90f = Si pasa algo
somebody-is-held-by-the-current-9afc03fd = Alguien está atrapado por la corriente: cortar la corriente o sacar la clavija, no tocar antes a la persona. Pedir ayuda, después primeros auxilios como se aprendieron; tras cualquier descarga a través del cuerpo lo ve un médico, también cuando se siente bien. Agua cerca de partes con voltaje: cortar en el cuadro de la casa si el camino hasta allí está seco; si no, mantenerse lejos. Fuego: clavija fuera si es seguro, salir del cuarto, llamar. (Práctica común; las reglas propias van primero.)
when-to-stop-9546563a = Cuándo parar
a-socket-without-earth-a-fe2e7529 = Una toma de corriente sin tierra, una toma chamuscada, olor a gas, agua cerca de partes con voltaje, una inundación, una persona que amenaza, una tarea más allá de la licencia: ponerla en seguridad y marcharse. Desenchufada, grifo cerrado, cerrada, etiquetada «no usar», el cliente informado y el informe lo dice. Olor a gas: no tocar ningún interruptor ni ninguna clavija, sacar a todos, llamar desde fuera. Eso es un trabajo entero, bien hecho, y como tal se puntúa. [Ver uno resuelto](#/handbook/worked-bites_bare_feet).

### sharing.md

a-job-leaves-your-browser-only-a0aaba02 = Un trabajo sale del navegador solo cuando se da: como enlace, como código en la pantalla de un aula o como archivo. No hay ningún servidor detrás.
link-and-code-420bf581 = Enlace y código
the-whole-job-is-in-the-address-86dcb790 = El trabajo entero está en la dirección, después de `#/job/`. Funciona donde esté abierta esta página, sin red. La parte de una dirección que va después de `#` no se envía al servidor que aloja la página. Los programas de mensajería y de correo a veces cortan las direcciones largas: un enlace cortado lo dice al abrirlo.
file-for-trainees-file-with-the-3b33db84 = Archivo para aprendices, archivo con la respuesta
the-file-for-trainees-holds-the-11d78cbb = El archivo para aprendices contiene las mismas letras que el enlace. El archivo con la respuesta es texto sin formato que se puede leer, editar y guardar; el escritorio lo abre otra vez. Su formato es `tubwright-job-1`; su esquema lo escribe `tubwright schema`.
a-training-set-is-one-file-the-0c77481a = Una serie de práctica es un solo archivo. El archivo para aprendices cubre los trabajos que contiene como lo hace un enlace; nombra los trabajos incluidos en el programa y no los contiene. Quien lo abre encuentra la serie arriba de la lista de trabajos. Su formato es `tubwright-set-1`.
what-this-protects-and-what-not-8e513b43 = Qué protege esto y qué no
link-trainee-s-file-and-trainees-353b3385 = El enlace, el archivo para aprendices y la serie para aprendices están comprimidos y cubiertos, de modo que **nadie lee la avería de pasada**: ni en la barra de direcciones, ni en un editor, ni buscando una palabra en el archivo.
it-is-not-a-lock-the-program-a940eb98 = No es una cerradura. El programa tiene que poder abrir el trabajo sin preguntar a nadie, así que todo lo necesario para abrirlo está en el programa, que es de código abierto. Alguien que sabe programar, y quiere, puede leer la avería. Los trabajos que vienen con la página también los puede leer cualquiera.
for-practice-that-is-enough-5a6ee311 = Para la práctica, eso basta. Donde cuenta la puntuación, trabajar en una sala con vigilante.
what-comes-in-72d5a0e5 = Lo que entra
a-link-or-file-from-elsewhere-is-b97ad1f3 = Un enlace o archivo de otra parte se comprueba campo por campo antes de hacer nada con él. El texto que contiene se muestra como texto y nunca como otra cosa. Lo que está mal se dice con su campo y con lo que sería correcto.
many-files-are-opened-at-once-cc721bb9 = Muchos archivos se abren a la vez: elegirlos o soltarlos, o una carpeta de ellos, o un zip. De cada archivo se da cuenta; lo que no es trabajo, serie ni evaluación se nombra como omitido, con el motivo.

### sizing.md

the-page-is-a-folder-of-files-44c72931 = La página es una carpeta de archivos. Cualquier servidor web o red de contenidos puede ofrecerla a cualquier número de personas; nada de ella se ejecuta en un servidor. Los resultados son archivos, o declaraciones que van a un almacén de registros de aprendizaje, que existe en forma de clúster. Así, la carga de un departamento grande recae en dos cosas que otros saben escalar: los archivos estáticos y ese almacén.
measured-on-70-worked-jobs-of-06b506eb = {"*"}*Medido en 70 trabajos resueltos de esta biblioteca**, la bitácora de un técnico cuidadoso por cada uno, 65 acciones y 57 minutos del tiempo del técnico de media: un registro ocupa 8.7 kB de media, 2.2 kB una vez comprimido. Se convierte en 10.2 declaraciones por trabajo, de 1.4 kB cada una: empezado, cada lectura, cada pieza cambiada, cada regla rota, la puntuación, completado, terminado. Hay 4 más para la evaluación en su conjunto: empezada, aprobada o no aprobada, completada, terminada. Las declaraciones de un trabajo se envían en una petición, las del conjunto en otra; antes de ellas se pregunta una vez al almacén qué versión habla.
a-million-candidates-with-four-429740b2 = {"*"}*Un millón de candidatos con cuatro trabajos cada uno**, según estas cifras:
t-4-million-records-35-gb-as-files-048f29ea = 4 millones de registros, 35 GB como archivos, 9 GB comprimidos;
t-45-million-statements-61-gb-as-8b902043 = 45 millones de declaraciones, 61 GB tal como viajan, en 5 millones de peticiones, y un millón de preguntas por la versión del almacén;
spread-over-20-working-days-of-8-65d48ea6 = repartido en 20 días laborables de 8 horas: 10 peticiones y 78 declaraciones por segundo de media. Si una décima parte de todos entrega dentro de la misma hora: 167 peticiones por segundo durante esa hora, 1250 declaraciones por segundo durante esa hora, 1.7 MB por segundo durante esa hora;
the-page-itself-about-a-megabyte-46652b85 = la página misma, alrededor de un megabyte comprimida y conservada por el navegador después de la primera visita: 1 TB una vez, desde la red de contenidos que la sirva.
in-a-training-system-that-starts-68e2b3e7 = En un sistema de formación que inicia la página por cmi5, las mismas declaraciones van al almacén propio de ese sistema, con tres o cuatro más por visita: empezada, aprobada o no aprobada, completada, terminada. Allí viaja también el trabajo sin terminar, con cada acción.
measured-again-by-cargo-test-c1e44105 = {"*"}*Medido de nuevo** por `cargo test --test statements sizes -- --nocapture`: hace los trabajos de la biblioteca, crea sus declaraciones, imprime cada una de las cifras de arriba, y falla donde esta página dice otra. Se ejecuta con todas las demás pruebas.
a-store-that-is-slow-full-or-73df9117 = Un almacén lento, lleno o ausente durante un día no cuesta más que tiempo: las declaraciones esperan en el navegador del candidato y se envían otra vez, y sus identificadores se forman a partir de lo que dicen, de modo que enviar dos veces es guardar una. El archivo que entrega el candidato contiene lo mismo.
checking-them-each-record-is-run-65056a06 = {"*"}*Comprobarlos.** Cada registro se ejecuta de nuevo por separado; no se comparte nada. `tubwright verify` usa todos los núcleos de una máquina, y una carpeta se puede repartir entre cualquier número de máquinas. `make bench` imprime cuánto tarda un registro en la propia. En un navegador, la comprobación usa los otros núcleos de la computadora y se puede parar y continuar.
reviewing-them-results-cohort-is-cfa3bf65 = {"*"}*Revisarlos.** [Resultados](#/cohort) está hecho para un departamento: mil personas con cuarenta trabajos cada una en una sola computadora portátil. Los organismos mayores miran cada departamento y comparan las tablas guardadas.

### systems.md

a-training-system-starts-the-ed0847c5 = Un sistema de formación inicia la página, nombra al alumno, conserva el trabajo sin terminar y recibe el resultado. Un almacén de registros de aprendizaje toma resultados sin sistema de formación. Los dos son estándares abiertos; sin ninguno de ellos, los resultados son archivos.
a-course-package-is-made-where-bb8b285c = {"*"}*Un paquete de curso** se hace donde está la [evaluación](#/assessments): para SCORM 1.2, SCORM 2004 4.ª edición o cmi5, un archivo zip con esta misma compilación del taller y la evaluación dentro. Se hace en el navegador, también sin red, donde el navegador ha conservado la página; si no se puede obtener un archivo, se nombra y no se guarda nada. Para cmi5, indicar la dirección con la que empiezan los nombres del curso: no hace falta que responda, pero tiene que ser propia y permanecer, porque el sistema distingue los cursos por ella. Dar el paquete a quien lleva el sistema. `tubwright package` en la línea de comandos hace el mismo paquete.
what-the-system-is-told-when-the-59b9561c = {"*"}*Qué se le comunica al sistema.** Cuando se entrega la evaluación: aprobada o no aprobada; cerca de la nota de corte, ninguna de las dos, porque ahí deciden más trabajos. La puntuación la acompaña donde dice lo mismo: un sistema que calculara solo por la puntuación aprobaría a quien no aprueba por una regla de seguridad rota. Con cmi5 el sistema puede pedir otra nota que la evaluación; entonces aprobada y no aprobada se rigen por la nota del sistema, y las demás reglas de la evaluación valen junto a ella. Sin un código de inicio, esto es de todos modos práctica: solo se puede sellar y comprobar el archivo que guarda el candidato.
a-visit-ends-when-the-page-is-7b6b5821 = {"*"}*Una visita termina cuando se sale de la página**, con «Volver al curso», cerrándola o yendo a otra parte, con la evaluación entregada o no: se le comunica al sistema, con el tiempo empleado. El trabajo sin terminar se queda, allí y en el navegador. Para seguir, iniciar la página otra vez desde el curso; también en otra computadora. Mirar otra pestaña no es salir.
loading-the-page-anew-by-the-62549d47 = {"*"}*Volver a cargar la página** con las teclas para ello (F5, Ctrl+R, ⌘R) o con un botón de la página sigue en la misma visita con cmi5. El botón propio del navegador no se puede distinguir de cerrar, así que termina la visita: la página lo dice, y «Volver al curso» lleva a donde se inicia de nuevo. No se pierde nada; lo que se entrega entretanto se comunica en la visita siguiente. Con SCORM, toda forma de volver a cargar termina la visita.
if-the-system-answers-slowly-the-75c243c0 = {"*"}*Si el sistema responde despacio**, la página dice enseguida a quién se pregunta qué, y desde hace cuánto. Después de ocho segundos se puede preguntar otra vez, o seguir sin él: entonces no se le comunica nada hasta que se vuelve a cargar la página. La clave de una visita se da una sola vez, así que no se pide dos veces; si llega tarde, está ahí al volver a cargar la página. Si el sistema no responde en el momento de la entrega, o no tiene espacio para el trabajo, la página lo dice, y se lo comunica otra vez cuando vuelve la red.
a-store-of-learning-records-xapi-29f320de = {"*"}*Un almacén de registros de aprendizaje** (xAPI) se configura en [Ajustes](#/settings): dirección, usuario, contraseña. Desde entonces, toda evaluación que se entrega en este navegador va allí, sellada o de práctica. Espera aquí hasta que el almacén la ha aceptado; lo que el almacén rechaza definitivamente se aparta y se intenta una vez más con «Enviar ahora». Los registros llevan el número del candidato, nunca un nombre.
says-aada77e9 = dice
the-assessment-afaa79ce = la evaluación
begun-passed-or-failed-with-the-9a7a11c4 = empezada; aprobada o no aprobada con la puntuación, los motivos y el tiempo empleado, o cerca de la nota de corte solo la puntuación; completada; terminada
each-job-under-the-assessment-9d3ee5c2 = cada trabajo, dentro de la evaluación
begun-its-marks-part-by-part-3461f8e1 = empezado; su puntuación, parte por parte; completado; terminado
each-reading-part-replaced-3ac2bbe9 = cada lectura, pieza cambiada, regla de seguridad rota, dentro de su trabajo
what-was-measured-as-a-number-in-a77a14ac = qué se midió, como número en su unidad SI junto a lo que mostró el instrumento; qué pieza; qué regla y cuán grave
one-attempt-is-one-registration-68fb9c3c = Un intento es una inscripción: una sesión sellada con todos sus trabajos. En la práctica cada trabajo es un intento por sí mismo, y también lo es el conjunto. Los identificadores se forman a partir de lo que se hizo, de modo que enviar dos veces es guardar una. El reloj de un trabajo va por delante del real, y ninguna declaración puede estar en el futuro: cada una lleva el momento en que se abrió el trabajo, y dice al lado qué hora era en el reloj del trabajo. `tubwright statements` hace lo mismo con un archivo de resultados; con `--assessment` y el archivo de la evaluación añade el conjunto, para una sesión sellada.
how-much-that-is-for-many-people-0bdb1bc4 = Cuánto es eso para muchas personas está en [Para muchas personas](#/handbook/sizing).

### testing.md

last-not-first-prove-that-supply-fffc3a06 = Al final, no al principio: demostrar que red, fusible, cables y carga están bien, y que nadie puso la placa en cortocircuito. Prueba de servicio: mandar una salida tras otra. Mandada, y sin voltios en su propio pin con la carga conectada: la salida está muerta. Voltios ahí y ninguno en la carga: cable o conector. Voltios en reposo: la salida se queda activada, o tiene fuga; medir con la carga conectada, y una vez más en el modo de baja impedancia. Buscar insectos, humedad y lugares chamuscados. Una placa que murió tenía un motivo: ohmios de cada carga antes de poner la nueva.
control-board-p-bb7cddda = placa de control P
line-at-plug-1-pins-1-and-3-5-v-37df55eb = Red en el conector 1, pines 1 y 3; 5 V entre el pin 1 del conector 5 y el pin 2 del conector 6. En reposo, con la carga conectada, contra el pin 3 del conector 1: salida de la válvula, pin 1 del conector 4, como máximo 10 V; salida de desagüe, pin 3 del conector 4, como máximo 12 V; salida del motor, pin 1 del conector 3, como máximo 2 V (hoja de datos). Todo ello está al potencial de la red.
control-board-n-9d7caea0 = placa de control N
t-5-v-between-plug-7-pin-1-and-b72db20a = 5 V entre el pin 1 del conector 7 y el pin 2 del conector 8. El lado de 5 V flota: de 0 V a gabinete no marca nada en el modo de baja impedancia, y eso es correcto. Un relé que hace clic puede tener aun así un contacto quemado: voltios entre los extremos del contacto mientras está cerrado. Debería marcar bastante menos de un voltio (práctica común).
by-the-dial-one-place-after-665229e8 = Con el dial, una posición tras otra: ¿qué debería funcionar ahí, y funciona? Voltios en el terminal del programador de esa carga. Hay alimentación y la carga está muerta: cable o carga. No hay alimentación: el contacto, o lo que está antes de él (presostato, tapa, interruptor de desequilibrio). Un contacto cerrado tiene una caída de 0 a 0.5 V (hoja de datos); más es quemado. Soldado: voltios donde no corresponden; con un contacto de sentido directo que se queda activado, el motor zumba en cada inversión y se calienta mucho. Un dial parado: ¿sigue llenando? Si no, voltios en el motor del programador, después su bobina.
display-board-90da07cd = placa de la pantalla
press-every-key-each-clicks-and-7f205e64 = Pulsar todas las teclas: cada una hace clic y vuelve. Todas las lámparas se encienden en el primer paso de la prueba de servicio. Una tecla que se queda pegada parece una máquina que elige por sí sola. El bloqueo de teclas y el inicio retardado no son una avería: mantener pulsado, mirar, explicar.
on-off-switch-b7c866ef = interruptor de encendido
dead-joined-and-open-the-data-65344dff = Sin voltaje, unido y abierto: el valor de la hoja de datos con el interruptor pulsado, OL con él suelto. Con carga, un contacto quemado se calienta y tiene una caída de voltios que ningún óhmetro muestra.
dead-continuity-or-ohms-lid-5c306114 = Sin voltaje, continuidad u ohmios, abriendo y cerrando la tapa despacio: hace clic de 10 a 20 mm antes de que la tapa esté abajo. No puentearlo nunca. Escuchar primero el clic: una palanca doblada tiene un interruptor sano. Unido con la tapa abierta es peor que abierto con la tapa cerrada: el cesto centrifugaría con una mano dentro. Mover la tapa con el multímetro puesto encuentra el contacto que falla de vez en cuando.
lid-switch-p-fa424c9a = interruptor de la tapa P
it-shares-one-input-with-the-out-e9f6210c = Comparte una entrada con el interruptor de desequilibrio, en serie: medir cada uno de los dos por separado.
lid-switch-t-f642464e = interruptor de la tapa T
in-the-feed-of-the-spin-at-mains-c1920b97 = En la alimentación del centrifugado, al voltaje de la red. En el centrifugado, la caída entre sus extremos es la prueba más fina: de 0 a 0.5 V (hoja de datos).
lid-switch-n-dc421d60 = interruptor de la tapa N
it-carries-the-motor-s-current-87b94402 = Lleva la corriente del motor, así que los ohmios pueden parecer buenos aunque falle con carga. Decide la caída durante el lavado: de 0 a 0.5 V (hoja de datos).
balance-switch-29b1199d = interruptor de desequilibrio
joined-at-rest-open-while-the-9a122e5f = Unido en reposo, abierto mientras se empuja la palanca. Palanca a 25 mm de la cuba, recta, vuelve sola. Se abre en cada centrifugado: mirar varillas, suelo, patas y carga antes de culpar al interruptor. No se lo ve abrirse nunca, ni cuando la cuba golpea: doblada hacia fuera.
order-tap-hose-filter-pressure-57322eeb = Orden: grifo, manguera, filtro, presión, y solo entonces la válvula. Voltios en la bobina y no hay agua: la bobina, por ohmios; un zumbido con la bobina buena es un núcleo móvil trabado o demasiado poca presión (la válvula necesita unos 0.02 MPa para levantar). Agua con la bobina sin alimentar es la válvula que deja pasar agua cerrada; agua porque la bobina está alimentada es el control. Una lectura de bobina alta que salta es un terminal.
tap-shut-pressure-down-nut-off-7848f130 = Grifo cerrado, presión fuera, tuerca quitada, mirar. Jarra y reloj antes y después: el chorro es de 10.2 a 13.8 L/min a 0.3 MPa (hoja de datos). No sirve de nada limpiarlo mientras el grifo da poco: medir también el chorro en el extremo de la manguera.
level-sensor-9b896809 = sensor de nivel
count-first-then-coil-the-count-9d0ab86f = Primero la cuenta, después la bobina. La cuenta debe seguir a un soplo suave por la manguera, y otra vez a un soplo directo en el sensor: si solo el segundo la mueve, la culpa es de la manguera. Con el agua quieta en nivel lleno, la cuenta y la marca del agua deben quedarse las dos donde están.
level-sensor-p-7d51c0c1 = sensor de nivel P
service-test-26-0-khz-empty-25-9-e4acb7d4 = Prueba de servicio: 26.0 kHz vacía (de 25.9 a 26.1, hoja de datos); llena es unos 24.5, 23.9 o 23.4 kHz en nivel bajo, medio y alto.
level-sensor-n-67519e1f = sensor de nivel N
service-test-24-9-khz-empty-24-8-8a91ad75 = Prueba de servicio: 24.9 kHz vacía (de 24.8 a 25.1, hoja de datos); llena es unos 23.6, 23.0 o 22.5 kHz en nivel bajo, medio y alto.
a-u-tube-on-the-hose-while-it-21ff8be9 = Un tubo en U en la manguera mientras llena: conmuta a unos 138, 203 o 268 mm de agua en nivel bajo, medio y alto, y vuelve atrás por debajo de unos 41 mm. Sin voltaje y vacía, de 11 a 12 unido, de 11 a 14 abierto; soplar en él con suavidad: hace clic, y los dos se intercambian. El nivel alto tiene sus propios contactos, 21, 22 y 24.
look-along-it-pinched-under-the-850a280a = Mirarla en toda su longitud: aplastada debajo de la cubierta superior, doblada, rajada en un extremo. Llenar, apagar, observar un tubo en U durante 5 min: debe quedarse quieto. Un agujero diminuto pierde alrededor de un décimo de la presión en dos minutos con el agua quieta; una manguera aplastada no muestra nada en absoluto; la pelusa en la cámara hace que la lectura siga con retraso.
ohms-of-both-windings-plugs-33046bbc = Ohmios de los dos bobinados, con los conectores separados; después la salida con la placa conectada. Sin salida y con la alimentación del primario sana: fusible térmico o bobinado. Demasiado baja y caliente: espiras en cortocircuito, o una placa que la cortocircuita; sacar el conector de bajo voltaje para distinguir lo uno de lo otro.
dead-at-the-plug-pins-on-off-fd11ef81 = Sin voltaje, en las espigas de la clavija: con el interruptor de encendido suelto, el valor de la hoja de datos es su resistencia de descarga. Más bajo: tiene fuga o está en cortocircuito; OL: la resistencia de descarga está abierta, y las espigas conservan carga después de sacar la clavija. La fuga a tierra se muestra solo en aislamiento y corriente de fuga.
suppressor-1681746b = condensador antiparasitario
dead-at-the-plug-pins-10-m-or-1f366292 = Sin voltaje, en las espigas de la clavija: 10 MΩ o más. Cualquier valor más bajo, y tiene fuga; le corresponde un olor a caliente con la máquina apagada.
ohms-across-it-dead-a-blown-fuse-e608cc29 = Ohmios entre sus extremos, sin voltaje. Un fusible fundido es un hallazgo, no la causa: medir el aislamiento y las cargas antes de poner uno nuevo del mismo tipo y valor, y después hacer funcionar cada carga una vez.
first-step-of-the-service-test-d82cc862 = Primer paso de la prueba de servicio. No pone en duda nada más.
mains-cord-1e9c78cb = cable de alimentación
look-at-both-ends-and-along-it-7bb43d7e = Mirar los dos extremos y toda su longitud. Ohmios de fase y neutro, de la espiga de la clavija al bloque de terminales, moviendo el cable en el sujetacables: como máximo 0.3 Ω, sin un salto (hoja de datos). La tierra, con el comprobador de continuidad de tierra, también moviéndolo. Con carga, una conexión quemada se muestra como un voltaje que cae en el bloque de terminales, y como calor: voltios ahí, en reposo y lavando.
harness-b51a41eb = mazo de cables
volts-at-both-ends-of-a-wire-or-dcbd8dba = Voltios en los dos extremos de un cable, u ohmios con los dos extremos separados. Tirar con suavidad de cada pin. Menear mientras se mide: una rotura dentro del aislamiento se cierra cuando nadie lo toca. El aislamiento de cada rama encuentra la pelada por roce. Después de ratones, mirarlo todo por debajo.
charge-led-off-and-measured-f0017883 = Primero descargado y medido su voltaje, los dos cables quitados, después la capacitancia: hasta un 10 % por debajo de su etiqueta es lo habitual (práctica común). Los ohmios entre sus terminales muestran un cortocircuito o una fuga. En su sitio y lavando, su voltaje dice más que un zumbido: demasiado bajo es débil, nada es abierto o en cortocircuito. Un abombamiento o un terminal chamuscado terminan la prueba.
motor-caf08472 = motor
plug-apart-capacitor-leads-off-32f8549c = Conector separado, cables del condensador quitados: los dos bobinados son iguales dentro de un 5 % (práctica común), y en serie marcan su suma. Uno abierto: gira en un sentido o solo zumba. Los dos abiertos hasta el común, y el par todavía unido en serie: el protector térmico. Si está caliente, se cierra otra vez a unos 80 °C; si está frío y abierto, está acabado. Las espiras en cortocircuito se esconden de los ohmios en un motor caliente: comparar los dos bobinados, las dos corrientes y el olor. Aislamiento a la carcasa. A mano, con la correa quitada: gira libre y sin rechinar. Con el conector separado se ve si llegan los voltios; voltios en el motor mientras no gira, y la culpa es del motor o de lo que mueve. Bloqueado consume unas dos veces y media su corriente de marcha, y abre su protector térmico en un minuto más o menos.
motor-turns-belt-stands-a-mark-8996ae07 = El motor gira, la correa está parada: una marca a través de polea y eje se separa poco a poco. Un golpe en cada inversión es lo mismo, más temprano.
squeals-at-a-start-and-slows-417c8b7a = Chirría al arrancar y se frena con carga: floja, aceitosa o gastada. Buscar grietas y brillo, medir cuánto cede y la tensión, comparar la velocidad del motor y la del impulsor con un tacómetro. Demasiado tensa no es mejor: se come los rodamientos.
mechanism-pulley-4683c317 = polea del mecanismo
watch-it-edge-on-while-it-turns-c2b7c9f8 = Observarla de canto mientras gira con el protector quitado y nadie cerca: un bamboleo es un cubo de polea rajado o una tuerca floja.
mechanism-4f23c9f6 = mecanismo
clutch-lever-at-rest-the-564206e4 = Palanca del embrague en reposo: el impulsor gira en los dos sentidos, el cesto está parado; palanca estirada: los dos giran juntos. Un cesto que se va girando en un solo sentido, y se para en su tiempo habitual después de un centrifugado, tiene gastado el rodamiento unidireccional; una cinta floja también se para tarde. Un retumbo que aumenta con la velocidad es el rodamiento. Un gemido y un impulsor que cede son engranajes gastados. El aceite debajo es su última señal.
clutch-set-cdb2fdc0 = juego del embrague
pull-the-wire-by-hand-brake-eaf78c6b = Tirar del cable de tracción a mano: el freno suelta, el embrague agarra a los 10 mm de recorrido de la palanca, juego de 1 a 3 mm (hoja de datos). El gemido del motor y los engranajes sigue mientras el cesto está parado: al embrague no se le pidió nada. La corriente de fase baja entonces a unos 0.7 A en P; un rodamiento agarrotado o un freno que roza se queda cerca del valor con el motor bloqueado.
lid-opened-at-full-spin-the-1c1babcc = Tapa abierta en pleno centrifugado: el cesto está parado en 1.5 a 7 s (hoja de datos), unos 3 s cuando todo está bien. Más tiempo: vitrificada, gastada o engrasada. A mano, con la palanca suelta: cesto sujeto en los dos sentidos; con la palanca estirada: libre. Si está sujeto con la palanca estirada, el centrifugado va pesado y se calienta.
service-test-or-on-a-timer-the-63d9fe6d = Prueba de servicio, o en un programador el dial en desagüe: cable de tracción recogido de 16 a 19 mm (hoja de datos) en unos 5 s, con ronroneo. Voltios y ningún ronroneo: bobina. Ronroneo y ningún tirón: engranajes o cable de tracción roto. Un tirón corto abre la válvula y no llega nunca al embrague.
drain-motor-n-d7db575a = motor de desagüe N
this-one-only-pulls-the-clutch-0d6d3e30 = Este solo tira de la palanca del embrague; de vaciar se encarga la bomba.
listen-a-steady-hum-and-no-water-0faee590 = Escuchar: un zumbido continuo y nada de agua es atascada; silencio con voltios es abierta. Ohmios en sus terminales, su corriente mientras desagua. Liberarla a mano antes de condenarla: una moneda, un trapo, una horquilla. Demasiada corriente también funde el fusible de la placa.
drain-from-high-75-to-130-s-data-2d751c30 = Desagüe desde el nivel alto: de 75 a 130 s (hoja de datos). Goteo en el extremo de la manguera en reposo: asiento sucio, moneda o fuelle roto. Cable de tracción recogido y nada de agua: paso bloqueado. Mirar dónde termina el cable antes de abrir nada.
look-kink-behind-the-machine-end-794c69b3 = Mirar: doblez detrás de la máquina, extremo demasiado alto, hondo y sin paso de aire en un tubo. Un chorro débil y un tiempo lento con el reloj son un doblez; un gorgoteo y una cuba que se vacía mientras llena son un sifón. Uniones secas después de 5 min en nivel alto.
drain-hose-p-76d0b1e2 = manguera de desagüe P
the-end-must-lie-below-the-tub-s-fc942e91 = El extremo debe estar por debajo del fondo de la cuba: no hay bomba que eleve el agua. Desagüe desde el nivel alto, de 75 a 130 s (hoja de datos).
drain-hose-t-72d0ab96 = manguera de desagüe T
as-on-p-the-end-below-the-tub-s-23ddb5e5 = Como en P: el extremo por debajo del fondo de la cuba, de 75 a 130 s desde el nivel alto (hoja de datos).
drain-hose-n-68d09bd8 = manguera de desagüe N
from-high-110-to-190-s-data-e0cecdf6 = Desde el nivel alto, de 110 a 190 s (hoja de datos). Su extremo cuelga alto, con aire alrededor: una manguera con bomba que está baja vacía la cuba por sí sola.
pressure-at-a-gauge-with-no-087a2da5 = Presión en un manómetro sin agua corriendo: de 30 a 800 kPa (hoja de datos). Después, jarra y reloj en su extremo: un chorro fuerte aquí y un hilito en la cuba es el filtro o la válvula; un hilito aquí es doblez, grifo o casa.
tachometer-140-to-155-r-min-both-ed9212d3 = Tacómetro: de 140 a 155 r/min en los dos sentidos (hoja de datos). Gira sin mover los textiles: agrietado; gira y su estriado resbala: se retrasa y hace clic. Levantarlo: el juego arriba y abajo es el tornillo. Duro a mano con la palanca en reposo: hay algo debajo.
by-hand-wire-pulled-runs-true-b88c0f37 = A mano, con el cable de tracción estirado: gira centrado y en silencio una vuelta entera. Se ladea con la mano: pernos. Chapotea hacia un lado después de estar quieto: anillo. Raspa una vez por vuelta: un objeto entre cesto y cuba. Centrifugado pleno, de 720 a 790 r/min (hoja de datos).
water-over-the-rim-in-the-spin-adc7b59a = Agua por encima del borde en el centrifugado, nada mientras está parada: mirar el labio de la junta en todo su contorno.
tub-filled-to-high-and-left-for-9553ae6f = Cuba llena hasta el nivel alto y dejada 30 min: mojado debajo del centro es el retén. Secar primero, y mirar las mangueras antes de levantar el cesto.
as-for-the-seal-wet-where-no-ee6e77aa = Como para el retén: mojado donde no hay ni unión ni eje, con el nivel bajando.
rods-3212ef57 = varillas
empty-tub-hangs-straight-pushed-b692fc43 = Vacía: la cuba cuelga recta, empujada hacia abajo se asienta tras 2 o 3 oscilaciones. Muelles débiles, copas aceitosas y una varilla desenganchada se ven iguales desde arriba: mirar cada esquina. Un golpe a la misma velocidad cada vez es la cuba tocando el gabinete.
spirit-level-both-ways-at-most-a219f103 = Nivel de burbuja en los dos sentidos: como máximo 10 mm en un metro (hoja de datos). Apretar cada esquina: que no cojee. Hacerlo con la máquina en su sitio, no donde se trabajó.
look-6-bolts-nothing-touching-b90357b0 = Mirar: 6 pernos, nada toca la correa. Que esté quitado también es un hallazgo.
look-and-hold-it-to-the-light-a-a344c801 = Mirarlo y ponerlo a contraluz. Uno apelmazado hace más lento el vaciado y deja pelusa en la ropa.

### validation.md

what-the-machines-compute-was-20533a27 = Lo que calculan las máquinas se comparó con cosas de fuera: un simulador de circuitos independiente, bibliotecas numéricas generales, ejemplos publicados, normas. 1671 comprobaciones, todas dentro de su tolerancia. [Cada una de ellas](validation.html), con una gráfica por cada dominio.
by-domain-ea0be4a8 = Por dominio
diagnosis-and-score-447-checks-061fe18b = {"*"}*Diagnóstico y puntuación**: 447 comprobaciones; la mitad de ellas a menos de 2.692e-7 del valor; la que usa más de su tolerancia usa el 50 %. Frente a: enumeración de 120 órdenes; enumeración; enumeración de 24 órdenes; LP; enumeración del árbol de políticas; enumeración del árbol de políticas con la avería fija.
measurement-of-people-and-jobs-53aea688 = {"*"}*Medición de personas y trabajos**: 587 comprobaciones; la mitad de ellas a menos de 3.625e-7 del valor; la que usa más de su tolerancia usa el 54 %. Frente a: enumeración de 2^k caminos = pyagrum DBN; enumeración de caminos extendidos; enumeración; scipy.integrate.quad; argmax en rejilla; directo.
motor-22-checks-half-of-them-b3917039 = {"*"}*Motor**: 22 comprobaciones; la mitad de ellas a menos de 0.00125213 del valor; la que usa más de su tolerancia usa el 83 %. Frente a: ejemplos resueltos de un libro de texto de máquinas eléctricas.
electric-network-450-checks-half-719e59be = {"*"}*Red eléctrica**: 450 comprobaciones; la mitad de ellas a menos de 1.877e-9 del valor; la que usa más de su tolerancia usa el 47 %. Frente a: ngspice.
water-and-air-57-checks-half-of-cd358616 = {"*"}*Agua y aire**: 57 comprobaciones; la mitad de ellas a menos de 1.400e-7 del valor; la que usa más de su tolerancia usa el 70 %. Frente a: iapws IF97; publicado: IAPWS-IF97 tabla 5; iapws; forma cerrada; brentq sobre el balance de Boyle; brentq + fórmula LC.
drive-and-motor-66-checks-half-8ad5b1b2 = {"*"}*Transmisión y motor**: 66 comprobaciones; la mitad de ellas a menos de 3.405e-7 del valor; la que usa más de su tolerancia usa el 99 %. Frente a: fórmula publicada; forma cerrada; solución fasorial 4x4 en ejes fijos; fasores 4x4; simetría: campos directo e inverso iguales; solve_ivp DOP853 de la máquina transitoria de 2 ejes.
heat-10-checks-half-of-them-120f8bbe = {"*"}*Calor**: 10 comprobaciones; la mitad de ellas a menos de 2.575e-5 del valor; la que usa más de su tolerancia usa el 23 %. Frente a: publicado: coeficiente de IEC 60028; publicado: método de la resistencia k=235; forma cerrada; exponencial de matriz; resolución lineal; solve_ivp DOP853 rtol 1e-10.
suspension-23-checks-half-of-9616f5b9 = {"*"}*Suspensión**: 23 comprobaciones; la mitad de ellas a menos de 5.000e-8 del valor; la que usa más de su tolerancia usa el 3 %. Frente a: publicado: Thomson; publicado: Rao; solve_ivp LSODA; forma cerrada; solve_ivp DOP853 rtol 1e-9; resolución lineal de una placa de 4 muelles.
sound-6-checks-half-of-them-3a4bdc39 = {"*"}*Sonido**: 6 comprobaciones; la mitad de ellas a menos de 4.933e-8 del valor; la que usa más de su tolerancia usa el 0 %. Frente a: valor de tabla publicado; forma cerrada; fórmula publicada.
whole-cycle-3-checks-half-of-ddf17c63 = {"*"}*Ciclo entero**: 3 comprobaciones; la mitad de ellas a menos de 0.000550927 del valor; la que usa más de su tolerancia usa el 74 %. Frente a: solve_ivp por tramos; solve_ivp por tramos con localización de eventos.
besides-these-each-run-of-the-ac6185d8 = Además de estas, cada ejecución de las pruebas compara 200 redes aleatorias y 60 estados de máquinas averiadas, nodo por nodo, con el simulador de circuitos, donde está instalado.
what-the-words-mean-4c119e62 = Qué significan las palabras
expected-the-value-from-outside-b3559174 = {"*"}*Esperado**: el valor de fuera, calculado una vez por su fuente.
computed-what-this-program-gives-d043e098 = {"*"}*Calculado**: lo que da este programa para la misma pregunta.
tolerance-the-largest-difference-3bbf0d41 = {"*"}*Tolerancia**: la mayor diferencia que acepta una prueba. Para la red, una milésima del valor, o un mínimo por debajo del cual una lectura dice «nada».
what-is-not-modelled-and-values-e32db06c = Lo que no está modelado, y valores de memoria
the-limits-handbook-limits-name-7f022f98 = {"["}Los límites](#/handbook/limits) nombran las dos cosas. Un valor marcado en el programa como «de memoria» se recordó, no se consultó; uno marcado «práctica común» es lo que hace el oficio; «decisión de diseño» es nuestra.

### expert/apart.rs

let-a-whole-program-run-and-339e7891 = dejar correr un programa entero, mirando y escuchando
press-the-service-key-and-look-8df43d5f = pulsar la tecla de servicio y mirar la pantalla

### expert/hint.rs

next-act-c76dfea6 = Siguiente: { $act }.
your-notes-fit-one-cause-far-9355763b = Las notas encajan con una causa mucho mejor que con todas las demás.
your-notes-still-fit-n-causes-fbdf2070 = Las notas encajan todavía con { $n } causas.
what-have-you-seen-it-do-1761f9f4 = ¿Qué se ha visto hacer a la máquina directamente, y qué se sabe solo por el cliente?
what-could-eyes-alone-tell-now-8be53e1e = ¿Qué podrían decir ahora los ojos solos, antes de medir nada?
what-should-move-freely-or-hold-f68a3522 = ¿Qué debería moverse libremente, o sujetar, y lo han probado las manos?
which-of-them-would-a-meter-tell-173e09ce = ¿Cuáles de ellas distinguiría un multímetro, y dónde?
is-there-anything-left-that-you-929b6f08 = ¿Queda algo que haga falta saber antes de reparar?
what-in-your-notes-says-that-760ac3a5 = ¿Qué hay en las notas que diga que todavía hay algo mal?
which-of-your-lines-do-not-go-698b98bb = ¿Qué líneas no concuerdan entre sí, y cuáles habría que tomar otra vez?
as-the-customer-uses-it-covers-9acf9010 = Como la usa el cliente: cubiertas puestas, clavija puesta, desde fuera.
in-your-notebook-line-by-line-1dc54bd5 = En el cuaderno, línea por línea.
from-outside-nothing-has-to-come-f5a8b2bb = Desde fuera: no hay que quitar nada.
unplugged-and-proved-dead-with-ed275c43 = Desenchufada y comprobada sin voltaje, con esto quitado: { $covers }.
nothing-527dae8a = nada
it-would-look-the-same-for-the-64a08952 = Se vería igual con las causas más probables, y descarta otras.
one-or-next-8c9f873a = { $one }; o { $next }
shown-would-fit-causes-12976983 = «{ $shown }» encajaría con: { $causes }.
by-your-notes-this-is-sure-9f5fca04 = Según las notas esto es probable en un { $sure } %: { $what }. Buscar más costaría más de lo que podría ahorrar.
by-your-notes-it-is-right-as-it-68be5fda = Según las notas está bien tal como está: demostrarlo con una marcha entera y las pruebas.
no-usual-cause-explains-all-your-7e1fdfe8 = Ninguna causa habitual explica todas las notas. Una de ellas puede estar equivocada.
nothing-is-wrong-34c2c40b = nada mal

### expert/next_words.rs

look-further-3117d574 = seguir buscando
call-for-help-5f8221ed = pedir ayuda
let-it-drain-and-spin-and-watch-705cbcfe = dejar que desagüe y centrifugue, y mirar
let-it-fill-and-wash-and-watch-c101d186 = dejar que se llene y lave, y mirar
let-it-wash-drain-and-spin-and-ad766cdb = dejar que lave, desagüe y centrifugue, y mirar
move-it-by-hand-place-bb946900 = moverlo con la mano: { $place }

### app/asking.rs

this-browser-has-no-threads-295d94cd = Este navegador no tiene hilos.

### app/assessments/course.rs

cancelled-nothing-is-saved-6905c264 = Cancelado: no se ha guardado nada.
course-package-for-a-training-fbd07c07 = Paquete de curso para un sistema de formación
the-workshop-and-this-assessment-fea97212 = El taller y esta evaluación en un archivo zip, hecho aquí con la misma compilación que se está viendo. Un sistema de formación lo toma como curso, y sus alumnos la hacen allí.
which-kind-the-system-takes-01c04a98 = Qué tipo acepta el sistema
address-that-the-course-s-names-93e82dc5 = Dirección con la que empiezan los nombres del curso
it-need-not-answer-take-one-that-3db8f8e1 = No hace falta que responda. Tomar una propia y no cambiarla: por ella distingue el sistema los cursos.
packing-6714ec88 = Empaquetando
cancel-35afca3b = Cancelar
make-the-package-506cd1d4 = Hacer el paquete
packing-the-files-of-this-build-be43086f = Empaquetando los archivos de esta compilación …
no-package-error-e5823216 = No hay paquete: { $error }.
the-browser-did-not-let-the-page-8a26f41d = El navegador no dejó que la página guardara un archivo.
file-is-saved-n-files-size-mb-c91deda4 = { $file } está guardado: { $n } archivos, { $size } MB. Entregarlo a quien lleva el sistema de formación.

### app/assessments/given.rs

candidate-stands-twice-each-ca45b0ca = «{ $candidate }» aparece dos veces: cada candidato tiene una sola papeleta.
line-a-line-is-a-number-or-a-0bea8548 = «{ $line }»: una línea es un número, o un número, una coma y minutos adicionales en pasos de { $step }, { $most } como máximo.
mrs-alder-fbbdef4b = Sra. Alder
flat-on-the-third-floor-d3588053 = apartamento en el tercer piso
mr-birch-f010ed28 = Sr. Birch
house-at-the-end-of-the-lane-97e1d086 = casa al final del camino
mrs-cedar-0c00c12c = Sra. Cedar
ground-floor-kitchen-to-the-yard-d6aea71e = planta baja, cocina que da al patio
mr-dogwood-288d632d = Sr. Dogwood
two-rooms-above-the-bakery-2a36cb7d = dos habitaciones encima de la panadería

### app/assessments/packing.rs

this-page-does-not-say-which-75f6a780 = Esta página no dice de qué archivos consta: montarla con «make dist», o hacer el paquete en la línea de comandos.
list-is-no-list-of-files-1ee40907 = «{ $list }» no es una lista de archivos.
there-is-too-much-in-this-build-00190c6f = Hay demasiado en esta compilación: { $error }.
the-server-has-another-build-of-fa004f13 = El servidor tiene ya otra compilación de esta página.
load-this-page-anew-where-there-d6dccb6f = Cargar otra vez esta página donde haya red y volver a intentarlo.
file-cannot-be-had-why-566a0d95 = No se puede obtener «{ $file }»: { $why }.

### app/assessments/room_codes.rs

the-codes-are-saved-keep-them-fa906d32 = Los códigos están guardados. Que no los vean los candidatos.
pauses-of-the-whole-room-70c49c42 = Pausas de toda la sala
the-clock-can-be-stopped-for-the-f52246a8 = El reloj se puede parar para toda la sala con códigos que se leen en voz alta
each-candidate-types-the-code-66299a7a = Cada candidato escribe el código. Leer en voz alta el primero para parar, el segundo para seguir, y así sucesivamente; tachar lo usado, con cualquier grupo: un código vale una vez. Cada pausa figura en el resultado con su tiempo.
show-the-codes-not-on-a-screen-f8daa6c0 = Mostrar los códigos: no en una pantalla que vean los candidatos
pause-codes-a-table-60e7100e = Códigos de pausa, una tabla
pause-44f9bf2d = Pausa
to-stop-8cec5da4 = Para parar
to-go-on-9ae941a7 = Para seguir
save-the-codes-as-a-text-d52471a3 = Guardar los códigos como texto
pause-codes-title-9818671b = Códigos de pausa: { $title }

### app/assessments/rules.rs

time-and-aids-92bdde14 = Tiempo y ayudas
allowed-586f52e3 = Permitido
the-data-sheet-beside-a-reading-58d50094 = la hoja de datos junto a una lectura
the-wiring-diagram-65a4e9df = el esquema de cableado
the-handbook-904a74c8 = el manual
stopping-the-clock-between-jobs-61974bb4 = parar el reloj entre trabajos
each-candidate-gets-other-values-6e47dbff = Cada candidato recibe otros valores, cargas y clientes
what-passes-f79a6354 = Qué hace aprobar
a-critical-safety-rule-broken-in-255698af = Una regla crítica de seguridad rota en cualquier trabajo significa: todavía no
after-a7dd3a69 = Después
cut-58e25863 = Nota de corte
a-fixed-number-of-marks-121ea35e = un número fijo de puntos
from-judges-after-angoff-7cefbe10 = de jueces, según Angoff
for-each-job-with-commas-between-c5f1ad6b = Para cada trabajo, separados por comas: los puntos que obtendría un técnico apenas competente. Cinco jueces o más, dos rondas con una conversación entre ellas.
no-judge-has-given-marks-yet-1050e4be = Ningún juez ha dado puntos todavía.
cut-marks-marks-of-one-judge-how-508054a2 = Nota de corte: { $marks } puntos, de un solo juez: hasta qué punto es segura se puede saber a partir de dos jueces.
cut-marks-marks-the-judges-agree-23f43550 = Nota de corte: { $marks } puntos; los jueces coinciden, y tan pocos iguales no dicen nada de la dispersión.
cut-marks-marks-among-the-judges-5a357079 = Nota de corte: { $marks } puntos; según los jueces es segura a ±{ $spread } aproximadamente.

### app/assessments/screen.rs

this-browser-gives-no-random-d1182b8e = Este navegador no da números aleatorios, así que no puede hacer ninguna clave: usar otro.
file-is-an-assessment-too-one-is-9b047416 = { $file } también es una evaluación: se trabaja en una cada vez.
what-was-given-out-stays-on-the-792ef0d9 = Lo repartido sigue en la lista tal como estaba. Esta es nueva: repartir su propio archivo, enlace y papeletas.
make-an-assessment-daec6f30 = Crear una evaluación
all-assessments-25f835af = Todas las evaluaciones
say-which-skills-at-which-level-9841b34b = Decir qué habilidades a qué nivel, cuántos trabajos y qué hace aprobar. Cada candidato recibe entonces trabajos propios, de igual dificultad, y un resultado que se puede comprobar.
make-a-new-one-480e8586 = Crear una nueva
review-results-7563f90b = Revisar resultados
observer-s-sheet-58c73c5a = Hoja del observador
files-of-assessments-to-work-on-406bbd79 = Archivos de evaluaciones en los que trabajar
made-here-b6c0ccf6 = Creadas aquí
none-yet-786bc275 = Ninguna todavía.
n-candidates-8816d347 = { $n ->
    [one] { $n } candidato
   *[other] { $n } candidatos
    }
given-out-9bbc2516 = repartida
forget-title-3eb6f653 = Olvidar «{ $title }»
forget-6e3fab8c = Olvidar
this-has-been-given-out-and-its-4818810e = Esta evaluación ya se repartió y sus resultados se apoyan en ella tal como está. Un cambio aquí crea una nueva, con sus propias papeletas; esta sigue en la lista y sus resultados siguen contando.
how-sure-its-decisions-are-c7d8a265 = Hasta qué punto son seguras sus decisiones
still-to-do-2fbfc23f = Por hacer
n-jobs-reliability-at-least-541001e0 = { $n } trabajos: fiabilidad de { $least } sobre 1 como mínimo. Suficiente para una decisión sobre una persona.
n-jobs-reliability-at-least-d3f6db2a = { $n } trabajos: fiabilidad de { $least } sobre 1 como mínimo. Para una decisión sobre una sola persona se pide 0.8: añadir trabajos, o tomar juntas varias sesiones y la prueba práctica.

### app/assessments/slips.rs

the-file-for-all-candidates-is-a202bc33 = El archivo para todos los candidatos está guardado.
the-key-is-saved-keep-it-where-eaf8ba1b = La clave está guardada. Conservarla donde solo pueda abrirla quien evalúa: quien la tenga puede sellar resultados.
give-it-out-97f482bd = Repartirla
save-the-file-3310d52f = Guardar el archivo
save-the-key-6c2f08c0 = Guardar la clave
link-n-characters-7ba21125 = Enlace, { $n } caracteres
the-link-as-a-code-for-a-9c367c25 = El enlace como código para una pantalla de aula
the-link-as-a-qr-code-f9cdcb6b = El enlace como código QR
candidates-6e9467ab = Candidatos
one-number-a-line-after-a-comma-3f63682d = Un número por línea. Tras una coma, los minutos adicionales de quien los tenga: no se ven en la papeleta; el reloj de la pantalla del candidato los incluye.
slips-a-table-978d20c7 = Papeletas, una tabla
title-cut-along-the-lines-one-e6f5a6d5 = { $title }: cortar por las líneas, una papeleta para cada uno
your-number-89a480eb = Número del candidato
start-code-8f4e7f8c = Código de inicio
letters-beside-it-478bec05 = Letras al lado
print-the-slips-7a90592c = Imprimir las papeletas
when-all-begin-tell-a-word-for-218ed81b = Cuando todos empiecen, decir una palabra del día, la misma para todos: con otra palabra se sortean otros valores, así que el grupo de ayer no puede contar nada. Anotar la palabra; todos los resultados la contienen.
open-the-link-or-the-file-that-f4de2830 = Abrir el enlace o el archivo que se reparte en la sala. Escribir estos datos, con la palabra del día, y empezar. El taller: { $page }

### app/assessments/slots.rs

jobs-4ae6a79d = Trabajos
jobs-asked-for-a-table-e19236ad = Trabajos que se piden, una tabla
level-4155597d = Nivel
skill-6fd141d6 = Habilidad
machine-67a5be0e = Máquina
how-many-c31ec050 = Cuántos
there-are-5404447f = Hay
take-off-5e080abf = Quitar
one-more-kind-of-job-475586c4 = Otro tipo de trabajo
any-2c29f04d = cualquiera
level-of-row-n-2dee7dc2 = Nivel de la fila { $n }
skill-of-row-n-107d9ea3 = Habilidad de la fila { $n }
machine-of-row-n-2634753b = Máquina de la fila { $n }
how-many-of-row-n-e7e4d8a5 = Cuántos de la fila { $n }
take-off-row-n-60fb1b1f = Quitar la fila { $n }
# of a list
take-off-a785e709 = quitar

### app/assessments/table.rs

the-assessment-d781e1ee = La evaluación
title-24d471a9 = Título
as-candidates-see-it-its-name-in-f54cb1c6 = Como lo ven los candidatos. De él sale su nombre en los archivos.
time-for-all-jobs-f5c77140 = Tiempo para todos los trabajos
minutes-adbcc5ee = minutos
generous-it-is-to-be-a-limit-not-53dae4fc = Generoso: debe ser un límite, no una carrera. El tiempo adicional se da a candidatos concretos, en su papeleta.
results-are-erased-after-89f8c11d = Los resultados se borran después de
months-18182bc2 = meses
counted-from-the-day-they-began-464031f3 = Contados desde el día en que empezaron. Se informa a los candidatos; la revisión dice cuáles han pasado ese plazo. Vacío: no se dice nada.
marks-to-pass-3190e823 = Puntos para aprobar
marks-d9763829 = puntos
of-100-100e3e37 = Sobre 100.
border-0cad6f57 = Margen
to-either-side-of-the-cut-within-8323e239 = A ambos lados de la nota de corte. Dentro de él deciden más trabajos: ni aprobado ni no aprobado.
machines-put-right-eb165258 = Máquinas arregladas
of-the-jobs-813c3f45 = Del total de los trabajos.
safety-least-of-its-points-f2d898ba = Seguridad, mínimo de sus puntos
marks-elsewhere-do-not-make-up-661d5232 = Los puntos de otras partes no lo compensan.
least-of-the-points-b22499d7 = Mínimo de los puntos
one-judge-a-line-4c7a1cef = Un juez por línea
needs-a-letter-from-a-to-z-or-a-ec6745e6 = necesita una letra de la a a la z o una cifra, para los nombres de los archivos

### app/bench/aloud.rs

read-aloud-2a5da106 = Leer en voz alta

### app/bench/drawer.rs

put-away-what-02c8620c = Cerrar: { $what }
put-away-453860f0 = cerrar

### app/bench/estimate.rs

price-for-the-whole-job-b926379e = Precio por todo el trabajo
or-with-a-part-of-another-make-e91891c8 = O con una pieza de otra marca
or-a-new-machine-5e1134d0 = O una máquina nueva
estimate-2649bd57 = Presupuesto
for-what-is-held-to-be-wrong-aec7e19a = Por lo que se cree que está mal
not-known-yet-43730b83 = todavía no se sabe
so-far-cf95b99e = Hasta ahora
add-the-part-and-the-time-still-652c603c = Añadir la pieza y el tiempo que todavía hacen falta. Una opción sin precio no se nombra.
a-price-is-a-number-above-zero-8503dd0e = Un precio es un número mayor que cero, por ejemplo 95. Hace falta al menos uno.
name-the-price-dc72528c = Decir el precio

### app/bench/gauge_face.rs

label-value-af517aba = { $label }: { $value }

### app/bench/gauges.rs

water-speed-length-warmth-2bd00d7e = agua, velocidad, longitud, temperatura
mind-caution-bc1989ec = atención: { $caution }
instruments-that-need-no-circuit-cbd0aff2 = Instrumentos que no necesitan circuito
data-sheet-b68bc762 = hoja de datos
record-place-ee20a911 = Registrar: { $place }
record-593058cc = registrar

### app/bench/help.rs

hints-bca2dc31 = Pistas
thinking-about-what-your-notes-a64468f9 = Pensando en lo que dicen las notas; tarda unos segundos.
no-hint-can-be-given-why-4eb02ceb = No se puede dar ninguna pista. { $why }
you-have-shown-that-you-can-do-cc122c6a = Ya se ha demostrado saber hacer esto: aquí no hay más pistas.
these-were-all-the-hints-for-325be3f4 = Estas eran todas las pistas para este paso.
hint-gives-costs-percent-of-the-ea494b74 = Pista: { $gives } (cuesta un { $percent } % del objetivo)
one-more-gives-costs-percent-of-be7315b4 = Una más: { $gives } (cuesta un { $percent } % del objetivo)

### app/bench/instrument.rs

instrument-in-hand-8e0e36f8 = Instrumento en la mano
note-it-5052aaba = Anotar
instrument-and-mode-9a27bed4 = Instrumento y modo
other-tools-6a3c046e = otras herramientas
clamp-ammeter-8375ff6f = Pinza amperimétrica
insulation-tester-3b4b5cee = Medidor de aislamiento
earth-bond-tester-7f060bf7 = Comprobador de continuidad de tierra
leakage-clamp-01f4d8b2 = Pinza de fuga
touch-current-tester-70242ec0 = Medidor de corriente de contacto
multimeter-a8f8b613 = Multímetro
one-conductor-only-round-a-whole-30acd193 = un solo conductor: alrededor de un cable de alimentación entero no marca nada
line-and-neutral-together-on-its-f4b128b8 = fase y neutro juntos, en su propio cable separador · límite 3.5 mA
metal-to-earth-through-2-k-4c1f4c64 = de metal a tierra a través de 2 kΩ, en marcha · límite 0.5 mA
t-500-v-dc-plug-out-its-switch-or-5ffe4cc5 = 500 V CC · clavija fuera, su interruptor o botón giratorio en encendido · límite 1 MΩ
t-0-2-a-plug-out-earth-pin-to-3ec28f32 = 0.2 A · clavija fuera, de la espiga de tierra al metal · límite 0.3 Ω
v-low-73ed07af = V~ baja Z
tone-5c714e81 = tono
diode-2ee60b90 = diodo
clamp-a-c1e05a4f = pinza A
insulation-b68ffc2f = aislamiento
earth-bond-8e7e400c = continuidad de tierra
leakage-607b4f11 = fuga
touch-ma-279e16ba = contacto mA

### app/bench/job_bar.rs

next-job-3d6d361b = Trabajo siguiente
debrief-6692941a = Repaso
finish-9f29eeb2 = Terminar
assessment-7f464e4f = Evaluación
time-of-day-70a27853 = Hora
on-site-time-019c7e7e = en el lugar { $time }
cost-so-far-48d8a29b = costo hasta ahora

### app/bench/job_card.rs

job-card-6f422c4a = Ficha de trabajo
asked-4e3af9c3 = Preguntado
ask-the-customer-44068b63 = Preguntar al cliente
put-right-outside-the-machine-7cc266b9 = Arreglar fuera de la máquina
machine-and-place-da4d1a40 = Máquina y lugar
ask-again-in-other-words-9c1f8288 = Preguntar otra vez con otras palabras: { $question }
ask-again-in-other-words-7634d5c6 = preguntar otra vez con otras palabras

### app/bench/keys.rs

picture-outside-db718606 = dibujo: por fuera
picture-opened-678d48f6 = dibujo: abierta
picture-section-d90da37e = dibujo: en corte
picture-wiring-c31eebe9 = dibujo: cableado
picture-water-e4995b5a = dibujo: agua
to-the-picture-arrows-and-page-34e69c49 = al dibujo; flechas y teclas de página mueven, Intro toma en la mano
to-what-can-be-done-with-what-is-ebe98f1f = a lo que se puede hacer con lo que se tiene en la mano
to-the-job-card-4e493632 = a la ficha de trabajo
to-the-notebook-5b816e18 = al cuaderno
to-the-instrument-s-modes-arrows-5966354c = a los modos del instrumento; las flechas mueven, Intro elige
to-the-red-lead-type-a-point-s-7e968541 = a la punta roja; escribir el nombre de un punto
to-the-black-lead-55d69ff2 = a la punta negra
write-the-reading-down-695589b1 = anotar la lectura
stop-the-clock-df0f06e0 = parar el reloj
let-the-clock-go-on-d00ee020 = dejar que el reloj siga
wait-until-something-changes-197ec1b5 = esperar hasta que algo cambie
wait-a-minute-fbc721a5 = esperar un minuto
put-the-card-away-or-let-go-350c7631 = cerrar la ficha, o soltar

### app/bench/moving.rs

instrument-87615d50 = Instrumento
leads-and-mode-8ddd0280 = puntas y modo
heard-1b794a4b = Se oye:
display-46357c1d = Pantalla:
sound-is-on-130aeb85 = El sonido está activado
sound-is-off-0d4529a1 = El sonido está desactivado

### app/bench/notebook.rs

notebook-9db5b440 = Cuaderno
nothing-noted-yet-what-you-look-4b8cc67b = Todavía no hay nada anotado. Lo que se mira, se escucha, se pregunta o se anota queda aquí y cuenta como evidencia; lo que solo pasa de largo, no.
remark-3a635eb1 = Observación
write-down-83c15880 = Anotar
data-sheet-range-5a7b7f53 = hoja de datos { $range }
evidence-text-value-06ee0d82 = Evidencia: { $text } { $value }

### app/bench/notice.rs

making-safe-2585e0f5 = Poner en seguridad
i-have-read-this-9be0b48a = He leído esto
all-right-ea58a416 = De acuerdo
leave-it-fb3e2fed = Dejarlo

### app/bench/papers.rs

papers-8da5b89e = Papeles
the-wiring-diagram-is-the-441bdd2d = El esquema de cableado es el dibujo «cableado». En una pestaña propia:
faults-of-this-machine-c1caed1e = averías de esta máquina
its-parts-bd6bcf1f = sus piezas
measuring-b238bd68 = medir
making-safe-0aabd0d5 = poner en seguridad
print-job-card-and-pictures-ece512cd = Imprimir la ficha de trabajo y los dibujos
data-sheet-what-a-good-one-reads-4a1d500f = Hoja de datos: qué marca una máquina sana
access-guide-what-is-off-before-ca5774c7 = Guía de acceso: qué se quita antes de qué

### app/bench/picture.rs

closer-3c01daa3 = Más cerca
farther-1001bf65 = Más lejos
whole-e55b9774 = entero

### app/bench/point_picker.rs

touch-or-type-a-point-e92e3faa = tocar o escribir un punto
jaws-1e22169e = mordazas
take-the-jaws-lead-off-476135a7 = Quitar las mordazas
points-for-the-jaws-lead-cede13b1 = Puntos para las mordazas
red-40f480dc = roja
take-the-red-lead-off-442d2c79 = Quitar la punta roja
points-for-the-red-lead-4fb2627d = Puntos para la punta roja
black-568f4ba4 = negra
take-the-black-lead-off-4fbeb951 = Quitar la punta negra
points-for-the-black-lead-6850dee9 = Puntos para la punta negra

### app/bench/recorder.rs

recorder-n-of-4-pens-34713556 = registrador, { $n } de 4 plumas
record-the-meter-2b030b72 = registrar el multímetro
fresh-strip-7ccee1e9 = tira nueva
print-the-chart-5001857f = Imprimir el gráfico
put-a-pen-on-the-meter-as-it-is-1481b5d1 = Poner una pluma en el multímetro tal como está ajustado, o en una velocidad, una presión o una temperatura de las de arriba.
strip-chart-seconds-s-1f4fab67 = Gráfico en tira, { $seconds } s
pen-low-to-high-in-seconds-s-now-30079048 = { $pen }, de { $low } a { $high } en { $seconds } s, ahora { $now }
lift-the-pen-pen-e72eb469 = Levantar la pluma: { $pen }
lift-f6c75a7c = levantar
highest-value-9bf00bd2 = máximo { $value }
lowest-value-ccd67596 = mínimo { $value }
as-a-table-931aef9a = como tabla
time-5d3c9be4 = tiempo

### app/bench/safe_strip.rs

safe-a297bdc5 = ¿Segura?
not-done-bfbdbd26 = sin hacer
done-26f38071 = hecho
proved-f57ccffb = comprobado

### app/bench/screen.rs

job-card-and-notebook-4c0b0860 = Ficha de trabajo y cuaderno
card-0855387f = Ficha
notebook-n-86f28c80 = Cuaderno { $n }
tests-n-70b01d82 = Pruebas { $n }
# noun
visit-66211a50 = Visita
begin-this-job-anew-2af39090 = Empezar este trabajo de nuevo
what-was-done-so-far-is-laid-ca7585ae = Lo hecho hasta ahora se deja a un lado: se llega otra vez a la puerta.
begin-anew-5cd20a8d = Empezar de nuevo
pictures-0d70feae = Imágenes
the-machine-picture-30a04b7f = La máquina, { $picture }
you-are-still-at-the-workshop-3246716f = Todavía se está en el taller.
telephone-and-van-1cfb6ecb = Teléfono y furgoneta
nothing-is-open-yet-7aa03d52 = Todavía no hay nada abierto.
tried-again-from-after-step-step-48f062fe = Reintentado desde después del paso { $step }: práctica que no cuenta.
back-to-the-job-as-you-finished-368f5a65 = Volver al trabajo tal como se terminó
this-job-is-open-in-another-tab-07ea4fe1 = Este trabajo está abierto en otra pestaña
you-can-look-here-nothing-you-do-8cd9dafc = Aquí se puede mirar; nada de lo que se haga en esta pestaña se guarda.
work-in-this-tab-cb3fa592 = Trabajar en esta pestaña

### app/bench/selection_bar.rs

in-hand-35557bdf = En la mano
touch-a-part-of-the-machine-the-ad31efbd = Tocar una parte de la máquina, el grifo o la clavija para ver qué se puede hacer con ella.
what-to-do-with-thing-ee452e8d = Qué hacer con: { $thing }
measure-here-173c550f = medir aquí …
repair-3be949b8 = reparar …
let-go-f998886c = Soltar
let-go-4029d5cc = soltar
no-check-54c4001e = sin comprobar

### app/bench/suspects.rs

possible-13fe35aa = posible
likely-7e993075 = probable
nearly-sure-e5c89c35 = casi segura
suspects-edcd4227 = Sospechosas
add-a-suspect-fe9882ee = Añadir una sospechosa
choose-a-cause-c5214810 = elegir una causa …
bring-back-cause-bc24b35f = Recuperar: { $cause }
strike-out-cause-5ae6c48c = Tachar: { $cause }
struck-out-6afe6ab2 = (tachada)
how-sure-sure-change-cause-11182196 = Certeza: { $sure }. Cambiar: { $cause }
move-up-cause-d828cd5a = Subir: { $cause }
bring-back-a06663be = recuperar
strike-out-3aeb38d7 = tachar

### app/bench/tests_list.rs

tests-after-the-repair-fc8f9de4 = Pruebas después de la reparación
in-this-order-after-the-last-e5d97be8 = En este orden, después del último cambio en la máquina. Un cambio posterior las vuelve a dejar pendientes.
within-the-limit-11fba76a = dentro del límite
outside-the-limit-084a4dec = fuera del límite
leads-are-there-note-it-9cdd794f = Las puntas están ahí: anotar.

### app/bench/time_bar.rs

clock-bb5f80fd = Reloj
waiting-until-958504d0 = esperando hasta que
wait-until-0b643398 = esperar hasta que

### app/bench/visit.rs

the-visit-f9bcdb57 = La visita
parts-for-the-van-087612f0 = Piezas para la furgoneta
load-the-van-46378a93 = Cargar la furgoneta
at-the-customer-s-with-the-first-6f316291 = En casa del cliente: con lo primero de esto, o con el primer toque a la máquina, ya se ha ido hasta allí.
second-visit-parts-to-bring-1196e7ef = Segunda visita: piezas para llevar
leave-until-the-second-visit-0567815e = Irse hasta la segunda visita
see-the-report-a1ba93cf = Ver el informe
before-you-drive-on-the-phone-cdb4c2d5 = Antes de ir: por teléfono
asked-on-the-phone-41fc6a57 = Preguntado por teléfono
no-longer-made-ad8748b0 = ya no se fabrica
tomorrow-ac3c2a26 = mañana
n-of-most-33e97535 = { $n } de { $most }
the-van-is-full-take-one-out-to-89166b23 = La furgoneta está llena: sacar una para hacer sitio a otra.
hang-on-a-label-do-not-use-77951b5b = Colgar una etiqueta «no usar»

### app/cohort/aside.rs

file-this-record-cannot-be-run-8fc814a4 = { $file }: este registro no se puede ejecutar otra vez aquí: no se conoce su trabajo o su evaluación. Todavía se puede leer tal como se escribió.

### app/cohort/decision.rs

decision-by-who-fbc7180c = { $decision }, por { $who }
passed-513cb799 = aprobado
border-more-jobs-f2f942b0 = en el margen: más trabajos
not-yet-6d9d33dc = todavía no

### app/cohort/desk/checking.rs

this-browser-has-no-threads-2afe55bc = Este navegador no tiene hilos: en él no se puede comprobar nada.
name-what-925f8a22 = { $name }: { $what }.
file-this-assessment-does-not-bb1c22c4 = { $file }: esta evaluación no encaja con los trabajos de aquí; abrirla donde se crean las evaluaciones para ver por qué.

### app/cohort/desk.rs

opening-ae1c2bab = Abriendo …
back-c2954bc2 = Volver
results-9cf82695 = Resultados
drop-any-number-of-result-files-d85709e3 = Soltar cualquier número de archivos de resultados. Cada uno se comprueba aquí: su sello enseguida, luego se ejecuta otra vez su trabajo. Nada sale de este navegador.

### app/cohort/drop.rs

results-their-assessment-and-its-b2c5c1dd = Resultados, su evaluación y su clave: soltarlos aquí, o
open-files-dcbec6c2 = Abrir archivos
open-a-folder-ee1a4322 = Abrir una carpeta

### app/cohort/erase_tab.rs

erasing-strikes-out-all-that-a-c19b78e7 = Borrar tacha todo lo que contiene un registro salvo su lugar en la fila, de modo que los registros de alrededor todavía se pueden comprobar. Con ello se van las resoluciones guardadas en este navegador sobre una persona de la que no queda nada. No se puede deshacer.
a-page-cannot-delete-your-files-4b0596ba = Una página no puede eliminar archivos: guardar lo que queda, y luego eliminar los archivos de los que vino, sus copias y los archivos de resoluciones que nombran a la persona.
erasing-waits-until-everything-47b5693c = El borrado espera hasta que todo esté comprobado.
what-is-left-cf019dae = Lo que queda
save-what-is-left-67b90b63 = Guardar lo que queda
past-their-time-2e718d52 = Pasado su plazo
no-result-here-is-past-the-time-399b1095 = Ningún resultado de aquí ha pasado el plazo que fija su evaluación, o ninguna fija uno.
one-person-a3b729f8 = Una persona
whose-results-02dd5a51 = De quién son los resultados
choose-73c66160 = Elegir
erase-everything-of-person-5c99f8ce = Borrar todo lo de { $person }
yes-erase-everything-of-person-102389f7 = Sí, borrar todo lo de { $person }
past-their-time-a-table-8ec36cd9 = Pasado su plazo, una tabla
person-c36eeba0 = Persona
to-be-erased-since-b71a2b5f = Por borrar desde
records-593ef94d = Registros
erase-this-one-record-0256da3c = Borrar este registro
yes-erase-this-one-record-a4ca7c2f = Sí, borrar este registro
erase-these-n-records-134680c8 = Borrar estos { $n } registros
yes-erase-these-n-records-a4eb771f = Sí, borrar estos { $n } registros
changed-here-by-erasing-one-file-dbd157ff = Cambiado aquí al borrar: un archivo. Los archivos del disco siguen como estaban.
changed-here-by-erasing-n-files-15b08610 = Cambiados aquí al borrar: { $n } archivos. Los archivos del disco siguen como estaban.

### app/cohort/erasing.rs

nothing-was-erased-91da2747 = No se borró nada.
one-record-is-erased-here-save-5a09964a = Aquí se ha borrado un registro. Guardar lo que queda, y eliminar el archivo del que vino.
n-records-are-erased-here-save-8f9148ad = Aquí se han borrado { $n } registros. Guardar lo que queda, y eliminar los archivos de los que vinieron.
file-it-cannot-be-read-any-more-cc391a75 = { $file }: ya no se puede leer, así que no se borró nada de él: soltarlo otra vez.
file-line-line-is-not-the-record-24b24ab6 = { $file }: la línea { $line } no es el registro que se tomó, así que no se borró nada de él: soltarlo otra vez.

### app/cohort/job_page.rs

back-to-all-19024338 = Volver a todos
print-this-job-35b2ac67 = Imprimir este trabajo
who-did-it-20ff4f7f = Quién lo hizo
faults-confused-da5e7feb = Averías confundidas
safety-rules-broken-a2def315 = Reglas de seguridad rotas
no-record-of-it-counts-any-more-5cb49e28 = Ya no cuenta ningún registro de él.
people-8390060e = Personas
marks-of-100-72d62e79 = Puntos sobre 100
score-0-to-3-12e6e831 = Calificación, 0 a 3
mean-on-average-9f19fdc4 = { $mean } de media
difficulty-8520a210 = Dificultad
tells-people-apart-939f5f04 = Distingue a las personas
# of a job to the model
fit-6fa1a18c = Ajuste
on-site-7777eb8b = En el lugar
cost-68887f58 = Costo
mean-on-average-from-so-few-or-f7cf8afe = { $mean } de media; con tan pocas puntuaciones o tan iguales no se puede saber la dispersión
mean-on-average-from-least-to-1cf0e835 = { $mean } de media, de { $least } a { $most }; desviación estándar { $deviation }
mean-min-on-average-from-least-39ccbafb = { $mean } min de media, de { $least } a { $most } min
too-few-people-or-all-alike-it-f1d68d70 = muy pocas personas, o todas iguales: no se puede saber
n-how-far-the-score-goes-with-678b3462 = { $n }: hasta qué punto la calificación va con los otros trabajos de la persona, 1 como máximo
too-few-people-to-say-64148cec = muy pocas personas para decirlo
fit-1-is-as-expected-7a878322 = { $fit }; 1 es lo esperado
people-at-this-job-a-table-f1f23289 = Personas en este trabajo, una tabla
marks-ab70bac9 = Puntuación
score-77eb0235 = Calificación
# how a job ended
ended-27128bb9 = Final
target-time-3a72ba31 = Tiempo objetivo
target-cost-af52e51d = Costo objetivo
safety-b04d1727 = Seguridad
step-by-step-92ec0206 = Paso a paso
person-the-person-s-page-0e05d399 = { $person }: la página de la persona
replay-what-29fb39e0 = Reproducir { $what }
# verb
replay-191d9d13 = Reproducir

### app/cohort/jobs.rs

with-fewer-than-ten-people-no-4a2f660a = Con menos de diez personas no se da ningún número de un trabajo: sería ruido.
jobs-a-table-d8bd0b7c = Trabajos, una tabla
job-42d9307c = Trabajo
mean-score-0-to-3-78733dda = Calificación media, 0 a 3
time-to-target-d89aa142 = Tiempo / objetivo
cost-to-target-3ac1de36 = Costo / objetivo
# verb, of a job
void-cc5090ad = Anular
job-more-about-this-job-1b19cd5d = { $job }: más sobre este trabajo
void-job-for-everybody-ca82a8f0 = Anular { $job } para todos
# verb, of a job
void-44a9670d = anular
infit-in-outfit-out-look-at-it-0b635bd0 = infit { $infit }, outfit { $outfit }: mirarlo
infit-in-outfit-out-c09f9c57 = infit { $infit }, outfit { $outfit }
people-bars-n-of-them-and-jobs-d93114b4 = Personas (barras, { $n } en total) y trabajos (puntos con su error) en una misma escala: quien está por encima de un trabajo acierta en él más veces de las que falla. Los números están en las tablas.
abilities-of-people-and-bb744d82 = Capacidades de las personas y dificultades de los trabajos en una misma escala; los mismos números están en las tablas
job-difficulty-4941f4ad = { $job }: { $difficulty }

### app/cohort/kept_rulings.rs

one-ruling-made-earlier-in-this-27b9e2bf = Una resolución tomada antes en este navegador, o en otra pestaña de él, la última el { $day } por { $who }. No está en vigor para lo que se ha soltado aquí ahora.
n-rulings-made-earlier-in-this-f8b0fd98 = { $n } resoluciones tomadas antes en este navegador, o en otra pestaña de él, la última el { $day } por { $who }. No están en vigor para lo que se ha soltado aquí ahora.
rulings-made-earlier-bb14b7be = Resoluciones tomadas antes
put-them-in-force-d73d5a00 = Ponerlas en vigor
forget-them-12b24b6e = Olvidarlas
rulings-not-kept-5a128060 = Resoluciones no guardadas
the-last-change-was-not-kept-1eebf256 = El último cambio no se guardó.
save-the-rulings-as-a-file-8efdd8ca = Guardar las resoluciones como archivo

### app/cohort/marks_picture.rs

marks-of-100-a-dot-for-each-068c7b45 = Puntuación sobre 100, una marca por persona. Los números están en la tabla.
marks-of-all-people-on-one-line-b6420ed9 = Puntuación de todas las personas en una línea; los mismos números están en la tabla

### app/cohort/opened.rs

back-to-the-person-5c790be5 = Volver a la persona
back-to-the-skill-ad78769d = Volver a la habilidad
back-to-the-job-ba3a0173 = Volver al trabajo

### app/cohort/others.rs

no-safety-rule-was-broken-2f3ea64a = No se rompió ninguna regla de seguridad.
safety-a-table-18bd4546 = Seguridad, una tabla
# of safety
rule-fa1c27b6 = Regla
how-grave-0e5cf784 = Gravedad
# how often
times-8895ebbf = Veces
# drawn in a table
bar-fd57b0ba = Barra
no-fault-was-taken-for-another-8793faa6 = Ninguna avería se tomó por otra.
faults-taken-for-others-a-table-298476ce = Averías tomadas por otras, una tabla
was-wrong-728021cb = Estaba mal
was-stated-aac7487d = Se declaró
rows-with-a-gap-3776a0f3 = Filas con un hueco
rows-that-are-not-whole-2af5ff29 = Filas que no están completas
every-record-is-accepted-as-far-09bc41d4 = Todos los registros están aceptados, hasta donde se han mirado.
not-accepted-a-table-5f08031e = No aceptados, una tabla
# of a job
record-759c2fa5 = Registro
first-difference-f02bd10c = Primera diferencia
as-written-b6ecf6b2 = Tal como se escribió
and-n-more-ec67458f = Y { $n } más.
read-this-record-as-it-was-cad9e24b = Leer este registro tal como se escribió
read-what-as-it-was-written-99fc37f2 = Leer { $what } tal como se escribió
# verb, of a record
read-018668d1 = Leer

### app/cohort/pauses.rs

not-ended-58f8c33a = sin terminar
pauses-a-table-6b7ecb11 = Pausas, una tabla
from-by-their-clock-1dd326c2 = Desde, según su reloj
# until when
to-2f3be1d8 = Hasta
minutes-36d9968e = Minutos
codes-758add25 = Códigos
this-time-did-not-count-compare-ef3251b7 = Este tiempo no contó. Compararlo con las pausas que se anunciaron: una pausa que solo tuvo una persona no era la de la sala.
not-looked-at-the-assessment-s-41d3ea39 = sin mirar: el archivo de la evaluación no está aquí
the-assessment-s-66e74a34 = los de la evaluación
none-of-the-assessment-s-00fe56ad = no son de la evaluación

### app/cohort/people.rs

people-and-skills-a-table-24b50bf2 = Personas y habilidades, una tabla
decision-be93ff03 = Decisión
ability-error-15e74a94 = Capacidad ± error
put-right-1cc4be18 = Arregladas
critical-87d09fa8 = Críticas
n-of-of-dfb9b397 = { $n } de { $of }
ability-unusual-947ee932 = { $ability }, inusual
count-skill-person-the-jobs-c3842e00 = { $count }, { $skill }, { $person }: los trabajos que hay detrás

### app/cohort/person.rs

print-this-person-7f0c05b1 = Imprimir esta persona
override-the-decision-303539bc = Reemplazar la decisión
this-sheet-was-made-on-day-7d958af5 = esta hoja se hizo el { $day }.
an-unknown-day-0be93afa = un día desconocido
assessment-jobs-that-count-n-70e12da3 = { $assessment }, trabajos que cuentan: { $n }
assessment-assessment-whose-file-cc5aa75c = evaluación { $assessment }, cuyo archivo no está aquí
practice-of-no-assessment-7e0c9b9e = Práctica, de ninguna evaluación
what-begun-on-day-1f6ea0fa = { $what }; inicio: { $day }
what-begun-on-day-with-the-word-8fc618e2 = { $what }; inicio: { $day }, con la palabra «{ $word }»
by-the-rules-alone-decision-8966d0ff = Solo por las reglas: { $decision }
decision-marks-of-100-marks-on-68fe697f = { $decision }: { $marks } de 100 puntos de media, se piden { $cut }
holds-by-who-day-why-ee2134cc = { $holds } por { $who }, { $day }: { $why }
overridden-decision-efb4d661 = Reemplazada: { $decision }
skill-n-of-of-b3cfe3b2 = { $skill } { $n } de { $of }
count-the-jobs-behind-it-248a950e = { $count }: los trabajos que hay detrás
ability-sure-to-about-range-0-is-612a52e0 = { $ability }, segura a ±{ $range } aproximadamente; 0 es el medio de estas personas
n-counted-fixed-put-right-marks-41080f06 = contados { $n }, con la máquina arreglada { $fixed }, { $marks } de 100 puntos de media
taken-each-f5125359 = { $taken } por trabajo
ability-ff93d931 = Capacidad
never-opened-0-marks-each-n-0e9166b5 = nunca abiertos, 0 puntos cada uno: { $n }
rules-broken-n-critical-critical-14c2cdfd = reglas rotas: { $n }, críticas: { $critical }
# of scores
pattern-3ef62895 = Patrón
unusual-right-on-hard-jobs-and-ba283ef4 = inusual: acierta en trabajos difíciles y falla en fáciles; mirar los registros
skills-ab6a56bf = Habilidades
records-a-table-eabd42ec = Registros, una tabla
began-by-their-clock-06f21209 = Empezó, según su reloj
# how often it was left
page-left-69e76460 = Salidas de la página
checked-51ba2a66 = Comprobado
read-what-977e8019 = Leer { $what }
the-job-was-voided-it-counts-for-0a0a85dc = el trabajo fue anulado: no cuenta para nadie
not-accepted-why-6613153b = no aceptado: { $why }
# of a record
sealed-67f4cdae = sellado
practice-no-seal-a0f59e3c = práctica, sin sello
seal-not-looked-at-no-key-here-1978e9f6 = sello sin mirar: no hay clave aquí
seal-run-again-4bfaaadb = { $seal }, ejecutado otra vez
seal-not-run-again-yet-037be9c0 = { $seal }, todavía no ejecutado otra vez

### app/cohort/received.rs

running-it-again-46c86b2d = Ejecutándolo otra vez …
saved-ae0ab8fe = Guardado.
not-accepted-why-09b24d5b = No aceptado: { $why }
it-is-as-it-was-made-run-again-851bdf76 = Está tal como se hizo: ejecutado otra vez, todo salió igual.
a-result-from-a-code-5701eb7f = Un resultado, a partir de un código
candidate-job-n-of-assessment-defed6e8 = { $candidate }, trabajo { $n } de { $assessment }: { $marks } de 100 puntos.
the-letters-were-cut-or-changed-8833609c = Las letras se cortaron o cambiaron por el camino: leer el código otra vez.
the-jobs-of-this-page-cannot-be-01236680 = Los trabajos de esta página no se pueden leer.
this-browser-cannot-make-it-cdd5e9b8 = Este navegador no puede completarlo: { $why }.
run-again-it-does-not-come-out-a6ad2cb6 = Ejecutado otra vez, no sale como dice: se cambió, o lo hizo otra versión.

### app/cohort/replay.rs

job-n-title-d70dfe00 = Trabajo { $n }, { $title }

### app/cohort/rows.rs

candidate-broken-19464ae3 = { $candidate }: { $broken }

### app/cohort/ruling_store.rs

rulings-are-kept-in-this-browser-8c4dcf72 = Las resoluciones se guardan en este navegador; guardar su archivo para llevarlas a otro, o para conservarlas con los resultados.
this-browser-has-no-room-left-74509029 = A este navegador no le queda espacio: las resoluciones que se tomen ahora desaparecen al cerrar esta página o cargarla otra vez. Guardarlas como archivo.
this-browser-does-not-let-the-7bb28bcf = Este navegador no deja que la página guarde resoluciones: desaparecen al cerrar esta página o cargarla otra vez. Guardarlas como archivo.

### app/cohort/rulings.rs

void-job-job-for-everybody-18cb3f4f = Anular el trabajo { $job } para todos
override-the-decision-about-ff61a298 = Reemplazar la decisión sobre { $person }
of-which-assessment-3d8b9381 = De qué evaluación
of-assessment-alone-46ab0e15 = Solo de { $assessment }.
what-holds-ea4ebb89 = Qué rige
who-rules-8b930858 = Quién resuelve
why-7b8038d9 = Por qué
it-holds-from-now-on-0223bdf3 = Rige desde ahora
not-after-all-b64ebe87 = Mejor no
it-holds-save-as-a-file-ab8f93f3 = Rige; guardar como archivo
throw-away-what-is-typed-about-7f0a96ce = Descartar lo escrito sobre { $what }
throw-away-c2487923 = descartar
rulings-typed-by-half-53e9a69f = Resoluciones escritas a medias
typed-by-half-and-not-in-force-159956c5 = Escritas a medias y sin vigor. Abrir el formulario otra vez para seguir: en la página de la persona, o junto al trabajo.
job-job-ca48e31b = Trabajo { $job }
nothing-was-ruled-a-job-is-fd17f4ab = No se ha resuelto nada. Un trabajo se anula desde la tabla de trabajos, una decisión se reemplaza en la página de la persona; cada resolución figura con nombre, día y motivo, y los registros quedan como están.
take-back-the-ruling-about-what-8dfbcbbc = Retirar la resolución sobre { $what }
# verb, of a ruling
take-back-cc425459 = retirar
yes-take-it-back-3488ddb3 = Sí, retirarla
rulings-a-table-d1340d34 = Resoluciones, una tabla
about-58e096de = Sobre
# what holds from now on
holds-85d31ea6 = Rige
# who ruled
by-bea06c0e = Por
day-4954229d = Día
# verb, of a ruling
take-back-a1f54b79 = Retirar
taken-back-what-holds-by-who-day-cc3cde1c = Retirada: { $what }, { $holds }, por { $who }, { $day }: { $why }
any-it-names-none-a505d0bc = cualquiera: no nombra ninguna
assessment-not-applied-no-result-fc58e591 = { $assessment }: no aplicada, ningún resultado de aquí es de ella

### app/cohort/save_tab.rs

people-csv-250c6812 = Personas, CSV
jobs-csv-4879e823 = Trabajos, CSV
safety-csv-6d00c94d = Seguridad, CSV
faults-confused-csv-3ea45ac9 = Averías confundidas, CSV
everything-json-872b56ae = Todo, JSON
rulings-to-go-on-with-later-18aabe6b = Resoluciones, para seguir más tarde
print-e8320d28 = Imprimir
the-file-of-rulings-takes-them-2ffb8818 = El archivo de resoluciones las lleva a otro navegador: soltarlo allí con los resultados.
results-day-604f0153 = Resultados, { $day }

### app/cohort/saving.rs

there-is-nothing-to-save-yet-e66a9f34 = Todavía no hay nada que guardar.
nothing-was-erased-so-there-is-f7d9fa84 = No se borró nada, así que no hay nada que guardar.
not-saved-why-erase-and-save-96135f71 = No guardado: { $why }. Borrar y guardar menos cada vez.
file-is-saved-38cc5918 = { $file } está guardado.

### app/cohort/shown.rs

looking-at-links-and-seals-f152dd29 = Mirando eslabones y sellos: { $looked } de { $n } archivos
running-the-work-again-run-of-n-17ce71a7 = Ejecutando el trabajo otra vez: { $run } de { $n } archivos
stopped-not-every-record-was-run-352fb6df = Parado: no todos los registros se ejecutaron otra vez.
records-checked-records-files-7194777d = Registros comprobados: { $records }; archivos: { $files }.
working-out-the-cohort-52f215e4 = Calculando el grupo …
checking-d47a32d1 = Comprobando
# verb, of the checking
stop-8acf833c = Parar
nothing-yet-assessments-made-in-d163f733 = Nada todavía. Las evaluaciones creadas en este navegador se conocen aquí con sus claves; para otras, soltar también el archivo de la evaluación y su clave.
people-n-4e929a1e = Personas { $n }
jobs-n-29e2fda9 = Trabajos { $n }
not-accepted-n-9fa36f4b = No aceptados { $n }
rulings-n-60fb8541 = Resoluciones { $n }
save-and-print-b4a33082 = Guardar e imprimir
reliability-words-7f36e73c = Fiabilidad: { $words }.
reliability-value-words-bf3d2a91 = Fiabilidad { $value }: { $words }.
later-attempts-at-the-same-job-4f9f2c25 = Los intentos posteriores del mismo trabajo no cuentan: { $n }.
no-record-counts-yet-b02942a3 = Todavía no cuenta ningún registro.
no-record-counts-none-was-06bc31e9 = No cuenta ningún registro: no se aceptó ninguno. Si un resultado sellado es de una evaluación que aquí no se conoce, soltar el archivo de la evaluación y su clave.
see-why-not-accepted-n-273f7246 = Ver por qué: no aceptados { $n }
of-these-people-nothing-counts-9848790f = De estas personas no cuenta nada: todos los trabajos que abrieron fueron anulados.
void-48b5725f = anulado
# verb
erase-80906efa = Borrar
erase-n-past-their-time-b642cb12 = Borrar, { $n } pasado su plazo

### app/cohort/skill_page.rs

to-the-person-fab856c8 = A la persona
print-this-page-a91aed7f = Imprimir esta página
right-of-n-jobs-that-practise-it-79f7b2f8 = { $right } de { $n } trabajos que la practican la muestran. Un trabajo muestra sus habilidades cuando la máquina queda arreglada, con seguridad, con evidencia.
no-record-counts-to-it-any-more-b680c814 = Ya no cuenta ningún registro para ella.
skill-person-f21d16c3 = { $skill }: { $person }
jobs-behind-the-skill-a-table-8f0952fc = Trabajos que hay detrás de la habilidad, una tabla
shows-it-587660da = La muestra
job-how-all-did-at-it-756a0d58 = { $job }: cómo les fue a todos en él
# it shows the skill
yes-7d6ca459 = sí
# it shows the skill
not-yet-df76545d = todavía no

### app/cohort/source.rs

file-this-archive-cannot-be-423acbc1 = { $file }: este archivo comprimido no se puede abrir: empaquetarlo otra vez como zip corriente, o abrir la carpeta.
there-are-no-results-among-these-12fe2a40 = No hay resultados entre estos archivos: terminan en .json, .jsonl o .zip.
passed-over-since-their-names-do-ba678959 = Omitidos, porque sus nombres no terminan como los de los resultados (.json, .jsonl, .key, .zip): { $files }.
passed-over-since-their-names-do-694dc56d = Omitidos, porque sus nombres no terminan como los de los resultados (.json, .jsonl, .key, .zip): { $files } y { $n } más.
it-cannot-be-read-or-is-too-3a0f0982 = no se puede leer, o es demasiado grande

### app/cohort/unread.rs

no-whole-record-damaged-cut-off-bf6769ed = No es un registro completo: dañado, cortado o de otra clase. { $why }

### app/cohort/words.rs

made-safe-and-left-6eaaa579 = puesta en seguridad y dejada así
put-right-167f4ff8 = arreglada
not-put-right-9fb41259 = sin arreglar
not-handed-over-4cc58abc = sin entregar
severity-rule-42f76008 = { $severity }: { $rule }
none-broken-60c01914 = ninguna rota
practice-9abd3270 = práctica
taken-no-target-known-995d50cb = { $taken }, objetivo desconocido
taken-target-target-eea6b998 = { $taken }, objetivo { $target }
taken-no-target-is-known-cc0b952c = { $taken }; no se conoce objetivo
taken-target-target-ratio-times-273058f7 = { $taken }; objetivo { $target }, { $ratio } veces ese valor
n-min-0a374e03 = { $n } min
number-words-9f91c26d = { $number }: { $words }

### app/cohort/written.rs

as-written-candidate-job-87106718 = Tal como se escribió: { $candidate }, { $job }
print-this-record-b1a95cd1 = Imprimir este registro
result-as-it-was-sealed-a62dcb88 = Resultado, tal como se selló
what-was-done-and-what-was-shown-44827983 = Qué se hizo, y qué se mostró
practice-of-no-assessment-c1939d7e = práctica, de ninguna evaluación
assessment-job-n-with-the-word-8c1988ca = { $assessment }, trabajo { $n }, con la palabra «{ $word }»
there-is-one-it-was-not-looked-ac219eb4 = hay uno; aquí no se miró
# no seal
none-9d5ca62b = ninguno
candidate-f29830fa = Candidato
written-by-da5f8fed = Escrito por
version-version-of-the-program-feb60ab5 = la versión { $version } del programa
# of a record
seal-af79619b = Sello
link-begins-with-de7a78af = El eslabón empieza por
this-version-does-not-know-a-989164cf = Esta versión no conoce un resultado de este tipo; sus campos están aquí tal como están en el archivo.
marks-of-100-6e644043 = { $marks } de 100
# of the marks
parts-1059df97 = Partes
cause-stated-12d81983 = Causa declarada
part-points-of-of-26d1556f = { $part } { $points } de { $of }
# no cause
none-94c58e95 = ninguna
what-was-done-a-table-8054cb45 = Qué se hizo, una tabla
step-4771f92f = Paso
when-021e3a39 = Cuándo
what-was-done-ec613d56 = Qué se hizo
what-was-shown-db4068e7 = Qué se mostró
safety-rule-broken-435128ec = Regla de seguridad rota

### app/crash.rs

the-program-has-stopped-0c20d001 = El programa se ha parado
that-is-our-mistake-not-yours-35f2d30b = Es un error nuestro, no de quien lo usa. El trabajo está guardado hasta la última acción.
go-on-from-the-last-act-73a70219 = Seguir desde la última acción
for-a-report-place-62e883b8 = Para un aviso: { $place }
a-part-of-the-program-is-missing-4c11a33b = Falta una parte del programa
it-could-not-be-fetched-is-there-e56a9910 = No se pudo traer: ¿hay conexión? El trabajo está guardado hasta la última acción.
try-again-213e90fa = Intentar de nuevo
to-the-jobs-b4278405 = A los trabajos

### app/debrief/expert.rs

beside-the-expert-083d6d60 = Junto al experto
the-expert-is-a-program-that-aeb618e1 = El experto es un programa que en la puerta no sabía más que quien hizo el trabajo y que decidió según lo que mostraba cada paso. Puede ser más lento que una persona experta; el objetivo es lo que necesita una de ellas.
you-b5bdd13c = Usted
the-expert-ec2ccb9c = El experto
what-the-expert-would-have-done-9be46bb2 = No se puede decir qué habría hecho el experto. { $why }
the-expert-is-working-the-job-266bf981 = El experto está haciendo el trabajo; tarda unos segundos.
let-the-expert-work-it-7cb49db5 = Dejar que lo haga el experto
min-c98f4557 = min
act-2d4a458b = acción
cost-e85c3338 = costo

### app/debrief/likely.rs

what-your-notes-pointed-at-c7afcda1 = A qué apuntaban las notas
what-was-wrong-is-not-among-085d11e3 = Lo que fallaba no está entre estas: las notas nunca lo hicieron una de las más probables.
as-a-table-ac51cfba = Como tabla
after-step-802e5ac9 = Después del paso
likely-causes-after-each-step-a8f3af64 = Causas probables después de cada paso
under-1-cdbcd429 = menos del 1 %
over-99-69de2c68 = más del 99 %

### app/debrief/marks.rs

points-of-of-81c64cac = { $points } de { $of }
nothing-to-remark-48aa4a61 = Nada que señalar.

### app/debrief/moments.rs

the-machine-at-step-step-0fe39c5a = La máquina en el paso { $step }
step-step-eab56137 = Paso { $step }
where-somebody-could-have-been-d981d7f0 = Dónde se podría haber herido alguien, o dañado algo

### app/debrief/screen.rs

this-job-is-not-over-yet-3c565399 = Este trabajo no ha terminado todavía
the-debrief-is-opened-when-the-96ed5087 = El repaso se abre cuando la máquina está entregada, o puesta en seguridad y dejada así.
back-to-the-bench-cea3437e = Volver al banco
this-job-cannot-be-explained-f78f4ca8 = Este trabajo no se puede explicar
the-machine-as-it-was-322ae90d = La máquina tal como estaba
economy-and-evidence-go-by-the-90c17a94 = Economía y evidencia se rigen por la factura y el cuaderno, tal como se contó este trabajo: el navegador en el que se hizo no pudo decir lo que valía cada decisión.
economy-and-evidence-go-by-what-07c00a3d = Economía y evidencia se rigen por lo que se podía saber cuando se decidió cada paso; el azar no cuenta.
economy-and-evidence-go-by-the-086517f6 = Economía y evidencia se rigen por la factura y el cuaderno: no se puede decir lo que valía cada decisión. { $why }
economy-and-evidence-still-go-by-74b5321a = Economía y evidencia se rigen todavía por la factura y el cuaderno: se está calculando lo que valía cada decisión.
likely-then-17dce14c = Probable en ese momento
try-again-from-before-this-step-25cb0773 = Reintentar desde antes de este paso
as-practice-that-does-not-count-51dae680 = Como práctica que no cuenta; este repaso se queda.
working-out-what-your-notes-08028f1c = Calculando a qué apuntaban las notas
what-your-notes-pointed-at-dc1e49f0 = No se puede decir a qué apuntaban las notas. { $why }
to-practise-next-fa84ea4e = Para practicar a continuación
no-decision-cost-more-than-it-83dfa02a = Ninguna decisión costó más de lo necesario.
debrief-title-754d4df0 = Repaso: { $title }
tried-again-from-after-step-1ba62183 = Reintentado desde después del paso { $steps }: práctica que no cuenta.
do-it-again-a2a59d29 = Hacerlo otra vez
what-was-wrong-eb34a0b3 = Qué estaba mal
nothing-in-the-machine-4a6c6c1f = Nada en la máquina.
you-said-94fd2601 = Se declaró
no-fault-in-the-machine-de0874a7 = Ninguna avería en la máquina.
how-it-showed-bdd77402 = Cómo se mostraba
none-of-your-notes-differ-from-92950e19 = Ninguna de las notas difiere de las de una máquina sana.
looking-back-8f3afcad = Mirando atrás
how-the-machine-was-left-6a8c0bfb = Cómo se dejó la máquina
steps-d46b8bd4 = Pasos
safety-6a399d07 = seguridad

### app/debrief/step.rs

this-step-4627bb71 = Este paso
step-step-of-count-0593e517 = Paso { $step } de { $count }
time-cost-so-far-cost-315417b8 = { $time } · costo hasta ahora { $cost }
a-sound-machine-d77df490 = Una máquina sana:

### app/debrief/track.rs

step-step-of-count-words-226f92ae = paso { $step } de { $count }: { $words }

### app/desk/apprentices.rs

the-machine-of-this-job-cannot-c4d9ec88 = La máquina de este trabajo no se puede preparar.
watch-one-who-91c647c8 = Ver uno: { $who }
watch-one-57c9be6c = Ver uno
working-it-who-f36ef8a7 = Haciéndolo: { $who } …
how-apprentices-fare-8fa1847f = Cómo les va a los aprendices
how-simulated-apprentices-fare-n-16d7147a = Cómo les va a los aprendices simulados, { $n } de cada tipo: una primera impresión de lo difícil que es
who-2af42a8f = quién
right-78e32de5 = bien
# verb
watch-867d5bf1 = ver
safety-in-how-many-of-the-n-a-8158a7b0 = Seguridad: en cuántos de los { $n } se rompió una regla crítica, mayor o menor. «Ver uno» muestra el primero de los { $n }.
critical-in-n-dce6a723 = crítica en { $n }
major-in-n-42bfeaa5 = mayor en { $n }
minor-in-n-422c8a31 = menor en { $n }
unsure-beginner-70c21a47 = principiante inseguro
in-a-hurry-c53d8883 = con prisa
changes-parts-first-361a901a = primero cambia piezas
avoids-the-meter-025db24d = evita el multímetro
step-by-step-3912efe6 = paso a paso

### app/desk/draft.rs

for-a-few-days-e694597a = Desde hace unos días.
yes-every-time-f7b25df6 = Sí, todas las veces.
no-523d6bdc = No.
not-that-i-noticed-c9ce576e = Que yo notara, no.
the-usual-about-half-full-45f0da8d = Lo de siempre, más o menos a media carga.
yes-the-tap-is-open-759f3368 = Sí, el grifo está abierto.
i-could-not-say-e658bc1b = No sabría decirle.

### app/desk/fair.rs

the-job-has-changed-it-is-judged-b5d72b3a = El trabajo ha cambiado: se juzga otra vez tras una pausa.
judged-once-you-pause-7b128a1a = Se juzga tras una pausa.
comparing-with-other-causes-done-19ed933f = Comparando con otras causas: { $done } de { $of } …
comparing-with-other-causes-05cb1785 = Comparando con otras causas …
the-expert-is-working-the-job-333f81e9 = El experto está haciendo el trabajo; tarda unos segundos …
apprentices-are-working-it-done-90ec0965 = Los aprendices lo están haciendo: { $done } de { $of } …
apprentices-are-working-it-6f74846f = Los aprendices lo están haciendo …
judged-nothing-to-mend-3489dfe6 = Juzgado: nada que corregir.
judged-there-is-something-to-8a724d93 = Juzgado: hay algo que corregir.
take-this-as-the-target-fc78c0ca = Tomar esto como objetivo
the-expert-s-way-sum-9f93b7c2 = El camino del experto: { $sum }
the-expert-s-way-b17c7b89 = El camino del experto

### app/desk/faults.rs

always-6736afe4 = siempre
from-a-time-on-195994e0 = a partir de un momento
on-and-off-by-chance-942488ff = va y viene al azar
while-the-motor-is-hot-ec132e9b = mientras el motor está caliente
while-the-basket-turns-fast-48563301 = mientras el cesto gira rápido
add-a-fault-dcfbd11f = Añadir una avería
choose-what-is-wrong-8315da93 = elegir qué está mal
a-part-has-failed-5db36766 = ha fallado una pieza
wires-pins-terminals-8c3ef682 = cables, pines, terminales
outside-the-machine-45b6e066 = fuera de la máquina
left-wrong-last-time-a2a85fec = mal dejado la última vez
take-out-name-60512bb1 = Sacar: { $name }
take-out-6de35316 = Sacar
as-it-usually-comes-on-71a17a1f = como suele aparecer

### app/desk/field.rs

wanted-until-then-nothing-stands-45c1200c = { $wanted }; hasta entonces aquí no hay nada
wanted-until-then-kept-stays-649d7586 = { $wanted }; hasta entonces se queda { $kept }
t-1-an-opening-job-652074fc = 1, un trabajo de inicio
t-2-one-clear-cause-c17d4a31 = 2, una causa clara
t-3-needs-measuring-215cbf08 = 3, hay que medir
t-4-misleading-a8a02208 = 4, engañoso
t-5-several-causes-or-none-87690039 = 5, varias causas o ninguna
yes-4e9f3590 = sí
no-62366ffa = no

### app/desk/fields.rs

friendly-cdd4f17e = amable
worried-a1121c17 = con preocupación
impatient-0bd992cc = con impaciencia
sceptical-be905d97 = escéptico
haggling-efc9d3cc = regateando
the-job-cb4538f7 = El trabajo
what-the-call-is-about-it-must-9979d733 = De qué trata la llamada. No debe delatar la causa.
skills-practised-aec9c1f4 = Habilidades que se practican
with-commas-between-such-as-ask-27c092f7 = Separadas por comas, por ejemplo: preguntar primero, suministro de agua.
the-place-ec372c8f = El lugar
what-anyone-sees-there-bfd6611b = Lo que allí ve cualquiera
the-tap-is-open-1ff48711 = El grifo está abierto
water-pressure-d9442beb = Presión del agua
usual-0-3-a-tank-just-above-the-f40f9d11 = Lo habitual: 0.3. Un depósito justo encima del grifo: 0.01.
residual-current-device-9a2b5cf7 = Interruptor diferencial
empty-where-the-house-has-none-a-1c85039a = Vacío donde la casa no tiene. Una toma de corriente sin tierra o con voltaje bajo es una avería: ver más abajo.
slope-of-the-floor-2fd8b4f4 = Inclinación del suelo
degrees-af5442ee = grados
room-temperature-15eb0664 = Temperatura del cuarto
the-load-99bad898 = La carga
dry-washing-in-the-basket-6773326d = Ropa seca en el cesto
of-it-on-one-side-d3698b71 = De ella, a un lado
water-left-in-the-tub-527152f4 = Agua que queda en la cuba
what-an-interrupted-wash-left-d4e20d9a = Lo que dejó un lavado interrumpido.
what-is-wrong-95353e48 = Qué está mal
faults-07be8a04 = Averías
none-is-a-sound-machine-the-b14852c2 = Ninguna es una máquina sana: la respuesta correcta es entonces decirlo, y enseñar al cliente.
pairs-that-may-come-together-3ce3c798 = Pares que pueden darse juntos
for-a-job-with-two-faults-pairs-5f89829e = Para un trabajo con dos averías: pares con los que han de contar las causas probables, el verdadero entre otros.
the-customer-6d3beda4 = El cliente
name-0fe07306 = Nombre
an-invented-one-5bcedf73 = Uno inventado.
home-52f50eae = Vivienda
a-few-words-such-as-third-floor-743b9e5b = Unas palabras, por ejemplo: tercer piso, sin ascensor.
how-they-meet-the-technician-e24c4253 = Cómo recibe al técnico
complaint-4673339a = Queja
in-their-own-words-the-machine-s-cb16a768 = En sus propias palabras. El comportamiento de la propia máquina, a un lado, sugiere una.
answers-to-the-technician-s-e7e1e977 = Respuestas a las preguntas del técnico
they-need-not-be-true-a-second-9c0fd6f6 = No tienen que ser ciertas. Una segunda respuesta llega cuando la pregunta se hace otra vez, de otra manera.
van-instruments-hints-ab49aa56 = Furgoneta, instrumentos, pistas
parts-in-the-van-cd5288aa = Piezas en la furgoneta
at-most-eight-others-come-from-e63bb184 = Ocho como máximo. Las demás vienen del almacén en una segunda visita.
instruments-in-the-bag-2df19995 = Instrumentos en la bolsa
in-opening-jobs-only-f1e7c7a8 = solo en trabajos de inicio
money-and-time-62b01efb = Dinero y tiempo
call-out-2522cc70 = Desplazamiento
units-c918a49c = unidades
one-unit-is-a-minute-of-labour-093053b3 = Una unidad es un minuto de mano de obra, salvo que la mano de obra diga otra cosa.
labour-2bf397ca = Mano de obra
units-a-minute-18461b11 = unidades por minuto
second-visit-627c1bea = Segunda visita
callback-81c18c26 = Nueva visita por fallo
what-it-costs-when-the-machine-391b7103 = Lo que cuesta cuando la máquina sigue fallando.
a-new-machine-90f27fff = Una máquina nueva
budget-2715dda8 = Presupuesto
empty-no-bar-95eeca58 = Vacío: sin límite.
time-allowed-7deba2d4 = Tiempo permitido
marks-to-reach-b9e3b249 = Puntos por alcanzar
of-100-empty-no-bar-a-critical-8d220401 = Sobre 100. Vacío: sin mínimo. Un hallazgo crítico de seguridad limita en todo caso la puntuación a 39.
what-a-skilled-technician-s-way-3afe771d = Lo que cuesta el camino de un técnico experto.

### app/desk/form.rs

n-of-of-answers-are-ready-made-3177c56d = { $n } de { $of } respuestas vienen ya escritas: comprobar que ninguna contradiga la historia.

### app/desk/form_table.rs

a-whole-number-is-needed-here-0ad11af1 = aquí hace falta un número entero, por ejemplo 12
a-whole-number-is-needed-here-559e1a79 = aquí hace falta un número entero, por ejemplo 12, o nada
a-number-is-needed-here-such-as-6a52f0e2 = aquí hace falta un número, por ejemplo 3.5 o 3,5, o nada
a-number-is-needed-here-such-as-f0b8f12e = aquí hace falta un número, por ejemplo 3.5 o 3,5

### app/desk/home.rs

desk-f1e2a3d8 = Escritorio
make-a-job-of-a-story-from-the-09df169f = Hacer un trabajo de una historia del oficio: elegir qué está mal, ver cómo se comporta entonces la máquina, probarlo y darlo a una clase como enlace o archivo.
write-a-new-job-e6f49942 = Escribir un trabajo nuevo
or-begin-with-one-that-ships-94260473 = O empezar con uno incluido
choose-a-job-843cbba0 = elegir un trabajo
make-a-training-set-27c04e46 = Crear una serie de práctica
job-files-and-training-sets-to-e98dc88c = Archivos de trabajos y series de práctica en los que trabajar
readings-and-faults-what-each-eba28ccd = Lecturas y averías: qué distingue cada lectura
a-job-without-a-title-86a535be = Un trabajo sin título
changed-when-6d229d59 = cambiado { $when }
drafts-7ca3788d = Borradores
none-yet-a-draft-is-kept-in-this-ea7b2579 = Ninguno todavía. Un borrador se guarda en este navegador desde su primera letra.
machine-machine-level-level-c4207d7b = máquina { $machine }, nivel { $level }
forget-the-draft-title-27cea723 = Olvidar el borrador «{ $title }»
file-this-training-set-holds-no-2fa98d86 = { $file }: esta serie de práctica no contiene ningún trabajo abierto: nombra trabajos incluidos, o es la copia de una clase.
file-title-is-a-draft-now-576b9c4e = { $file }: «{ $title }» es ahora un borrador.

### app/desk/inside_fields.rs

severity-7080f2d2 = Gravedad
from-0-not-there-to-1-as-listed-d72ff79b = De 0, no está, a 1, como en la lista.
it-is-there-e9884dd2 = Está presente
begins-after-ab718d39 = Empieza después de
drawn-anew-every-f95dc48d = Se sortea otra vez cada
chance-to-be-there-7f2bcccd = Probabilidad de estar presente
from-0-to-1-b64fafa1 = De 0 a 1.
winding-above-a2acf288 = Bobinado por encima de
basket-above-0bd4038e = Cesto por encima de
answer-f94ea0ff = Respuesta
asked-again-a16eed6b = Al preguntar otra vez
answers-on-the-phone-ef2a7b6e = Respuestas al teléfono
the-parts-store-cbd99753 = El almacén de piezas
ready-0bca3294 = Lista
price-dd3ec7ca = Precio
empty-the-price-list-297a69ac = Vacío: la lista de precios.

### app/desk/judged.rs

this-browser-has-no-threads-so-380becb4 = Este navegador no tiene hilos, así que aquí no se puede juzgar el trabajo.

### app/desk/live.rs

fairness-152ffc14 = Equidad
share-4f856dd8 = Compartir
a-job-can-be-given-away-once-ddcf218e = Un trabajo se puede compartir cuando arriba ya no falta nada.
checks-f522dffc = Comprobaciones
everything-that-a-job-needs-is-d1f0f90c = Está todo lo que necesita un trabajo.
how-the-machine-behaves-15b7d597 = Cómo se comporta la máquina
running-a-program-763e516f = Ejecutando un programa …
run-it-again-91fbc1fb = Ejecutarlo otra vez
a-fault-that-comes-and-goes-may-61e71f02 = Una avería que va y viene puede mostrarse en una ejecución y no en la siguiente.
what-each-reading-tells-apart-on-cf2a2658 = Qué distingue cada lectura en esta máquina
the-machine-runs-once-place-load-b8523e50 = La máquina funciona en cuanto el lugar, la carga y las averías están en orden.
computed-the-program-as-it-bfb3d09a = Calculado: el programa tal como empieza, con esta carga en este lugar, junto a una máquina sana.
nothing-in-a-whole-program-5801a789 = En un programa entero nada difiere de una máquina sana.
n-figures-as-on-a-sound-machine-00c6ee4a = { $n ->
    [one] { $n } cifra como en una máquina sana
   *[other] { $n } cifras como en una máquina sana
    }
what-its-customer-would-say-77e127c9 = Lo que diría su cliente
use-as-the-complaint-5ab868fa = Usar como queja

### app/desk/pairs.rs

one-fault-24193397 = Una avería
the-fault-it-may-come-with-005830f4 = La avería con la que puede darse
add-the-pair-adbe0b19 = Añadir el par
one-and-other-1595b23a = { $one }, y además { $other }

### app/desk/qr.rs

this-is-too-long-for-a-code-give-49a2371c = Esto es demasiado largo para un código: dar el enlace o el archivo.

### app/desk/screen.rs

there-is-no-such-draft-in-this-7dad239b = No hay tal borrador en este navegador.
opening-the-draft-f9e8b47b = Abriendo el borrador …
to-all-drafts-3dd2515d = A todos los borradores
kept-in-this-browser-7fedd18c = Guardado en este navegador
back-to-the-desk-b2759d79 = Volver al escritorio
what-was-entered-cannot-stand-bf7d37a1 = lo que se introdujo no puede estar aquí; se conserva lo que había antes
is-more-than-site-load-kg-81db73f1 = es más que `site.load_kg`
a-new-job-25f08289 = Un trabajo nuevo
undo-71fd4acf = Deshacer
redo-7412e5e9 = Rehacer
try-it-adc589d7 = Probarlo
all-drafts-af7f3f04 = Todos los borradores

### app/desk/set_draft.rs

the-set-fb2a3edc = La serie
what-it-is-for-7f5984ef = Para qué es
a-sentence-or-two-for-those-who-b88cfaaa = Una o dos frases para quienes la hacen.
the-next-job-opens-from-8b254a01 = El trabajo siguiente se abre a partir de
marks-of-100-da3dad59 = puntos sobre 100
a-draft-of-this-set-is-no-longer-64ac7a41 = Un borrador de esta serie ya no está en este navegador: sacarlo.
a-draft-without-a-title-problem-3129bff7 = Un borrador sin título. { $problem }
draft-title-problem-57864dac = Borrador «{ $title }». { $problem }

### app/desk/set_maker.rs

training-set-5b1d9cb3 = Serie de práctica
jobs-in-the-order-in-which-a-a8f23230 = Trabajos en el orden en que los hace una clase. El siguiente se abre cuando el anterior está dominado.
give-it-to-a-class-62f42d3d = Darla a una clase
give-the-set-a-title-and-add-its-b3d4365d = Dar un título a la serie y añadir sus trabajos; sus archivos se hacen aquí en cuanto estén en orden.
to-the-desk-2530b670 = Al escritorio
level-level-f02356b5 = Nivel { $level }
jobs-n-74c21a41 = Trabajos: { $n }
add-a-job-8264b97c = Añadir un trabajo
your-drafts-5f15d2fa = Borradores propios
a-draft-that-is-no-longer-here-4be4e822 = Un borrador que ya no está aquí
n-title-draft-681b91e5 = { $n }. { $title } (borrador)
earlier-title-6f410447 = Antes: { $title }
earlier-c50cd8bb = Antes
later-title-c4b4cc01 = Después: { $title }
later-f7f62b49 = Después
a-class-opens-the-file-on-its-b719ebaf = Una clase abre el archivo en su lista de trabajos. En el archivo para aprendices los trabajos propios van cubiertos, para que nadie lea de paso qué está mal; los trabajos incluidos solo se nombran.
set-for-trainees-ff3c241d = Serie para aprendices
set-with-the-answers-649d9a19 = Serie con las respuestas

### app/desk/share.rs

the-whole-job-is-in-the-address-6dbdea3b = Todo el trabajo está en la dirección: funciona sin conexión, dondequiera que esta página esté abierta. Lo que está mal en la máquina no se puede leer en ella a simple vista.
copy-the-link-2d0237b1 = Copiar el enlace
code-for-a-classroom-screen-2fc44ebd = Código para una pantalla de aula
what-this-protects-and-what-not-5baa24e5 = Qué protege esto y qué no
file-for-trainees-18ed9bdd = Archivo para aprendices
file-with-the-answer-2a15dc90 = Archivo con la respuesta
the-link-is-selected-copy-it-cb03909b = El enlace está seleccionado: copiarlo con el teclado.
copied-53842cb1 = Copiado.
the-browser-did-not-allow-it-the-60fa7900 = El navegador no lo permitió: el enlace está seleccionado, copiarlo con el teclado.

### app/desk/told.rs

label-words-2d5bf97e = { $label }: { $words }
must-not-be-empty-10884fa3 = no debe estar vacío
must-lie-between-low-and-high-2dccf579 = debe estar entre { $low } y { $high }
must-lie-between-low-and-high-a482d7e9 = debe estar entre { $low } y { $high } { $unit }
found-is-no-kind-49044318 = { $found } no vale como { $kind }
found-is-no-kind-nearest-is-name-fa4675f7 = { $found } no vale como { $kind }; lo más parecido es «{ $name }»
as-a-whole-e26ab885 = En conjunto
no-n-99779cbc = n.º { $n }

### app/desk/van.rs

label-n-of-8-7a3abd04 = { $label }: { $n } de 8
id-of-another-machine-d664c348 = { $id } (de otra máquina)
others-come-from-the-store-on-a-b40c9541 = Las demás vienen del almacén en una segunda visita.
all-instruments-afe8a6a2 = Todos los instrumentos
only-those-that-are-ticked-here-f2c1d84b = Solo los marcados aquí

### app/desk/visit_fields.rs

says-what-they-know-0d25169c = dice lo que sabe
says-little-until-asked-in-other-8a2bffdd = dice poco hasta que se le pregunta con otras palabras
is-wrong-at-first-f130a9fb = al principio se equivoca
battery-of-the-instrument-3ea2f871 = Batería del instrumento
of-a-fresh-one-100-a1a3448a = Una nueva: 100.
its-red-lead-is-broken-inside-81754883 = El cable de su punta roja está roto por dentro
a-lead-is-cracked-down-to-the-b6e06a28 = El cable de una punta está agrietado hasta el conductor
the-fuse-of-its-current-range-4fccafde = El fusible de su escala de corriente está fundido
what-it-shows-for-1-v-eed07f5c = Lo que muestra para 1 V
a-sound-one-1-9f753302 = Uno en buen estado: 1.
last-calibrated-bbb3256c = Última calibración
months-ago-895ab26b = meses atrás
measurement-category-printed-on-0e8aafad = Categoría de medida impresa en él
t-2-to-4-1-for-none-1cb69b73 = De 2 a 4; 1 si no tiene.
age-of-the-receipt-4762c686 = Antigüedad del recibo
empty-there-is-none-8d90459a = Vacío: no hay.
the-maker-pays-for-c84746cc = El fabricante paga durante
the-rating-plate-can-be-read-and-40042131 = La placa de características se puede leer y corresponde al recibo
there-are-signs-of-misuse-19dd6460 = Hay señales de mal uso
how-the-customer-answers-aa1425dd = Cómo responde el cliente
a-landlord-pays-919e136d = Paga el propietario de la vivienda
only-the-landlord-can-agree-to-a-826e5e37 = Solo el propietario puede aceptar un precio.
asks-to-have-taken-off-the-price-15efb302 = Pide que se rebaje del precio
the-most-they-pay-for-a-repair-9ccda4c6 = Lo máximo que paga por una reparación
empty-half-the-price-of-a-new-a74b2c4e = Vacío: la mitad del precio de una máquina nueva.
out-of-the-ordinary-about-the-e6216b22 = Lo que se sale de lo normal en el lugar

### app/desk/visit_lists.rs

today-420372be = hoy
for-a-second-visit-38f156be = para una segunda visita
never-no-longer-made-67981406 = nunca: ya no se fabrica
it-smells-of-gas-77274b74 = huele a gas
water-stands-in-the-room-839a1bc6 = hay agua estancada en el cuarto
somebody-threatens-de3f526d = alguien amenaza
the-socket-is-scorched-42ebf824 = la toma de corriente está chamuscada
an-adaptor-in-between-ebff7436 = un adaptador de por medio
a-rolled-up-extension-reel-6527c4db = un alargador de carrete enrollado
no-residual-current-device-in-9223c7a2 = ningún interruptor diferencial en la casa
a-small-child-about-39f1d960 = un niño pequeño cerca
a-dog-about-40e97be3 = un perro cerca
a-floor-that-marks-7b50d2d1 = un suelo que se marca
bare-edges-on-the-cabinet-96c5445b = bordes sin proteger en el gabinete
hot-water-in-the-tub-29fc8bf2 = agua caliente en la cuba
empty-what-is-said-at-the-door-5a345315 = Vacío: lo que se dice en la puerta.
it-has-every-part-today-unless-05eb3dcb = Hoy tiene todas las piezas, salvo las que figuran aquí.
not-in-the-store-today-c1e9f9d2 = Hoy no está en el almacén
choose-a-part-9dd5aba0 = elegir una pieza

### app/desk/way_back.rs

back-to-the-draft-15d66263 = Volver al borrador

### app/faults/list.rs

what-each-fault-changes-what-a-e4b94e53 = Qué cambia cada avería, qué diría un cliente, y qué lecturas difieren más de una máquina sana. Las cifras se calculan cuando se abre una página.
narrow-the-list-2468d2b7 = Acotar la lista
shown-of-n-faults-986c27e0 = { $shown } de { $n } averías
wires-and-terminals-e62e277d = cables y terminales

### app/faults/mod.rs

the-machines-that-ship-cannot-be-2390e971 = Las máquinas incluidas no se pueden leer.
no-such-machine-ac3c13ac = No hay tal máquina
to-the-list-of-faults-b05e2abf = A la lista de averías
this-machine-cannot-have-that-036535f4 = Esta máquina no puede tener esa avería
to-the-faults-of-machine-b83df494 = A las averías de { $machine }

### app/faults/page.rs

faults-of-machine-5dbcd55c = Averías de { $machine }
part-e1469ed4 = { $part }.
how-parts-are-tested-and-reached-d8964fa5 = Cómo se prueban las piezas y cómo se llega a ellas
in-tables-reference-59d99ff6 = En tablas: { $reference }
what-a-customer-would-say-f2b3d23a = Lo que diría un cliente
quote-c2e8f4b6 = «{ $quote }»
what-changes-dd3443f2 = Qué cambia
readings-that-differ-most-1d3cd1d2 = Lecturas que más difieren
a-wash-with-it-a7729472 = Un lavado con ella
the-wiring-cannot-be-solved-with-eee8660b = El cableado no se puede resolver con esta avería.
no-electrical-reading-tells-it-a494dba0 = Ninguna lectura eléctrica la distingue de una máquina sana.
reading-5ee7339b = Lectura
while-9caf4e6e = Mientras
sound-b3ca9a34 = Sana
with-the-fault-a6379de6 = Con la avería
n-more-differ-less-0cbdefd5 = { $n } más difieren menos.
first-and-last-2975b212 = { $first } y { $last }
state-what-apart-cab02a02 = { $state }, sin conectar: { $what }

### app/faults/wash.rs

two-washes-are-being-run-one-5aa14234 = Se están ejecutando dos lavados, uno con la avería y otro sin ella.
a-whole-wash-goes-as-in-a-sound-a7c6d7c0 = Un lavado entero transcurre como en una máquina sana.
in-a-normal-wash-of-4-kg-5fb5471a = En un lavado normal de 4 kg

### app/file_kind.rs

it-is-a-picture-bff4d545 = es una imagen
it-is-a-picture-a-sound-or-a-78c32343 = es una imagen, un sonido o una película
it-is-a-pdf-document-94af960e = es un documento PDF
it-is-an-archive-or-an-office-ef846988 = es un archivo comprimido o un documento de oficina
its-text-is-not-utf-8-save-it-as-893c26a9 = su texto no es UTF-8: guardarlo como UTF-8 y abrirlo otra vez
its-bytes-are-no-text-d178ce52 = sus bytes no son texto
it-is-a-job-with-its-answer-the-aa2d9dce = es un trabajo con su respuesta: lo abren la lista de trabajos y el escritorio
it-is-a-trainee-s-copy-which-73875639 = es la copia de un aprendiz, que se queda cerrada: la abre la lista de trabajos
it-is-a-training-set-the-list-of-dd64d273 = es una serie de práctica: la abren la lista de trabajos y el escritorio
it-is-an-assessment-sit-an-4ffba15e = es una evaluación: la abre «Hacer una evaluación», y «Crear una evaluación» para trabajar en ella
it-is-a-result-review-results-on-1400154e = es un resultado: lo abre «Revisar resultados», en el escritorio
it-is-all-that-somebody-keeps-9dc3a0fd = es todo lo que alguien guarda aquí: lo abre la página «Yo»
it-describes-machines-or-faults-a0923809 = describe máquinas o averías: esas vienen con el programa y no se abren aquí
name-is-no-job-set-or-assessment-d963279f = { $name } no es un trabajo, una serie ni una evaluación de este taller: { $why }.
it-is-empty-08105609 = está vacío
it-is-damaged-or-cut-off-at-line-75227f69 = está dañado o cortado en la línea { $line }: obtener el archivo otra vez
it-cannot-be-read-from-line-line-817a1255 = no se puede leer a partir de la línea { $line }
it-is-a-text-of-another-kind-cf9d70ee = es un texto de otro tipo
it-says-format-which-this-42bdc592 = dice «{ $format }», que esta versión no lee: usar una más nueva
another-program-has-written-it-fe26fba8 = lo ha escrito otro programa
it-does-not-say-so-by-its-format-25f933dc = no lo dice con su «format», que en un trabajo es «{ $format }»

### app/finding.rs

what-was-wrong-and-what-was-done-6345c9f3 = qué estaba mal y qué se hizo, enseñado en la máquina
how-much-to-load-and-how-to-4603ddff = cuánta ropa cargar y cómo repartirla
how-much-detergent-8fa4043e = cuánto detergente
clean-the-filters-now-and-then-948e3512 = limpiar los filtros de vez en cuando
have-the-house-wiring-seen-to-by-47b6d783 = hacer revisar la instalación de la casa por un electricista
a-new-machine-is-the-better-buy-f34a56c8 = una máquina nueva es la mejor compra
keep-it-level-and-do-not-move-it-41413839 = mantenerla nivelada, y no moverla una persona sola
the-old-part-shown-beside-the-1adc59ae = la pieza vieja, enseñada junto a la nueva
fault-found-44938b77 = Avería encontrada
title-on-site-on-site-cost-so-3e3af789 = { $title } · en el lugar { $on_site } · costo hasta ahora { $cost }
state-it-and-hand-over-0c7a4b37 = Declararla y entregar
# of handing in
not-yet-98aebfcd = Todavía no
yes-make-it-safe-and-leave-the-a1a2fc5e = Sí, dejarla segura e irme: el trabajo termina
make-safe-and-leave-72beacce = Poner en seguridad y dejar
a-look-round-everything-is-back-9d9a8b6b = Una mirada alrededor: todo está otra vez en su sitio.
a-look-round-5b63f253 = Una mirada alrededor
a-look-round-before-you-leave-a56b384e = Una mirada alrededor antes de irse
take-off-the-list-what-9335a918 = Quitar de la lista: { $what }
cause-70e4acc0 = Causa
and-another-cause-81eec4b6 = Y otra causa
there-is-no-fault-in-the-machine-b4b44217 = No hay ninguna avería en la máquina
choose-what-was-wrong-or-say-93a8bd36 = Elegir qué estaba mal, o decir que no hay ninguna avería.
what-shows-it-e94a8622 = Qué lo muestra
tick-the-lines-of-your-notebook-dc1ad646 = Marcar las líneas del cuaderno que demuestran la causa.
the-report-0f09ba96 = El informe
the-customer-reads-the-report-ea62da08 = el cliente lee el informe y lo firma
the-customer-signs-only-once-4657bd16 = El cliente firma solo cuando se le ha dicho qué estaba mal y qué se hizo.
what-the-customer-is-told-c6be7955 = Qué se le dice al cliente

### app/forgotten.rs

title-is-forgotten-a3f587c4 = «{ $title }»: olvidado.
take-it-back-58de7b9a = Recuperar

### app/format.rs

once-9188b0c4 = una vez
twice-b4a7d5f3 = dos veces
n-times-5bf6f189 = { $n } veces
n-s-37ea8f6e = { $n } s
hours-h-minutes-min-31c95005 = { $hours } h { $minutes } min

### app/given_files.rs

n-more-in-there-20906759 = { $n } más ahí dentro
what-was-given-36bec8d3 = Lo que se dio
the-browser-could-not-open-it-f5956cf1 = el navegador no pudo abrirlo
the-browser-could-not-read-it-38489185 = el navegador no pudo leerlo
there-is-no-file-in-it-522465ec = no contiene ningún archivo
at-most-n-are-opened-at-once-55113bfc = se abren { $n } a la vez como máximo
it-is-larger-than-any-that-is-2c92841e = es más grande que cualquiera de los previstos aquí
this-archive-cannot-be-opened-abedd941 = este archivo comprimido no se puede abrir: empaquetarlo otra vez como zip corriente, o abrir la carpeta
it-cannot-be-taken-out-of-the-0314d271 = no se puede sacar del archivo comprimido
archive-n-more-in-there-e9acda53 = { $archive }, { $n } más ahí dentro

### app/handbook/live_machine.rs

at-rest-39d333e6 = en reposo
filling-7e18dac0 = llenando
washing-3455d4a2 = lavando
draining-bd32e147 = desaguando
spinning-39b47eab = centrifugando
moment-of-the-program-b381cf21 = Momento del programa
machine-in-section-moment-16541d6a = { $machine } en corte, { $moment }

### app/handbook/parts.rs

from-the-machine-s-own-file-what-ef986cb3 = Del archivo de la propia máquina: lo que deja hacer el banco es lo que figura aquí. Los intervalos de «Prueba» son los de su hoja de datos.
what-each-reading-tells-apart-7aa95ba2 = Qué distingue cada lectura
does-87bd47d0 = Qué hace
fails-67ee03da = Cómo falla
test-2ffcbe05 = Prueba
from-outside-c828a64a = desde fuera
reach-it-reach-about-n-min-for-a306f0b1 = Acceso: { $reach }. Unos { $n } min para el trabajo en sí.
held-by-what-e3590b8f = Sujeción: { $what }.
tools-tools-fc32b2cd = Herramientas: { $tools }.
mind-what-a0ee41f9 = Atención: { $what }.
on-refit-check-85a91f3a = Al volver a montar: { $check }.
verb-what-b88782e8 = { $what }: { $verb }
verb-what-held-by-4284508c = { $what }: { $verb } ({ $held_by })

### app/handbook/worked.rs

this-job-cannot-be-replayed-a9a7679e = Este trabajo no se puede reproducir.
# to the step before
back-48942285 = Atrás
next-step-ab2acdfa = Paso siguiente
step-step-of-n-2e9e80c8 = paso { $step } de { $n }
meter-shown-a957b6d5 = Multímetro: { $shown }
the-machine-after-this-step-6ab02895 = La máquina después de este paso
it-was-causes-outcome-9e35cbad = Era: { $causes }. { $outcome }.
work-it-yourself-6ea36796 = Trabajarlo por cuenta propia
cost-so-far-cost-b1e18cf6 = costo hasta ahora { $cost }
a-sound-machine-sound-da13ac60 = (una máquina sana: { $sound })

### app/handbook.rs

how-a-job-goes-27b6751d = Cómo va un trabajo
measuring-1ed87f08 = Medir
how-to-find-a-fault-408ccc3e = Cómo encontrar una avería
after-a-repair-57f8ba27 = Después de una reparación
how-marks-are-given-9574c1ac = Cómo se puntúa
how-machine-p-works-dd7a1e5e = Cómo funciona la máquina P
parts-of-machine-p-730ebba7 = Piezas de la máquina P
how-machine-t-works-4859d532 = Cómo funciona la máquina T
parts-of-machine-t-6f0eb55b = Piezas de la máquina T
how-machine-n-works-ee8cf4dc = Cómo funciona la máquina N
parts-of-machine-n-590e92b9 = Piezas de la máquina N
writing-a-job-2ef8eb8f = Escribir un trabajo
sharing-a-job-ed8017ab = Compartir un trabajo
assessing-241cfa8d = Evaluar
training-systems-and-stores-08b31f36 = Sistemas de formación y almacenes
results-and-what-they-prove-c84dfe62 = Los resultados y lo que demuestran
for-many-people-b73fdcbe = Para muchas personas
what-this-is-and-is-not-6ebf6807 = Qué es esto y qué no es
what-it-was-checked-against-6291c6d3 = Con qué se comprobó
worked-job-title-818c05f0 = Trabajo resuelto: { $title }
chapters-fae19813 = Capítulos
readings-and-faults-d80e6302 = Lecturas y averías

### app/job_filter.rs

find-a-job-9844c5fe = Buscar un trabajo
find-3e1cd17a = Buscar
part-to-practise-tells-where-to-79a96088 = Pieza que practicar (dice dónde mirar)
shown-of-n-jobs-9af388a1 = { $shown } de { $n } trabajos
all-13254bc4 = todas

### app/job_host.rs

bench-346ad459 = Banco
opening-the-job-96ce043b = Abriendo el trabajo …

### app/job_tile.rs

about-n-min-6d94dcde = unos { $n } min

### app/jobs.rs

customers-who-have-called-each-67614d33 = Clientes que han llamado. Cada máquina se comporta como lo haría una real: lo que se mide se calcula.
from-your-instructor-244eec4f = Del instructor
sit-an-assessment-3890ba80 = Hacer una evaluación
no-job-fits-all-of-that-f6d2b894 = Ningún trabajo cumple todo eso.
show-all-jobs-e3c77995 = Mostrar todos los trabajos
this-is-training-local-codes-and-396f8041 = Esto es formación. Los reglamentos locales y la práctica autorizada están por delante; no abrir nunca una máquina real apoyándose solo en una simulación.
where-you-left-off-bb8f03a1 = Donde se había quedado
go-on-b68d20dc = Seguir
first-time-here-67a3361d = ¿Primera vez aquí?
start-with-a-short-job-a-hint-a1659db5 = Empezar con un trabajo corto. Una pista debajo del dibujo dice qué viene a continuación, y desaparece en cuanto está hecho.
start-the-first-job-a0482e89 = Empezar el primer trabajo
begun-on-site-on-site-e11c5ab7 = empezado, { $on_site } en el lugar
level-level-skills-e98f56a2 = nivel { $level } · { $skills }

### app/loading.rs

there-is-no-job-named-id-34525b34 = No hay ningún trabajo llamado «{ $id }».
this-job-was-begun-with-version-9e93f8fb = Este trabajo se empezó con la versión { $version } del programa y no se puede continuar con esta.
the-machine-of-this-job-cannot-51b413fc = La máquina de este trabajo no se puede preparar: { $why }
this-job-cannot-be-opened-5775793b = Este trabajo no se puede abrir
start-id-again-1fdfbe22 = Empezar { $id } otra vez

### app/lost_points/mod.rs

working-out-where-points-were-d55e2e14 = Calculando dónde se perdieron puntos: trabajo { $n } de { $of } …
where-points-were-lost-6c725ec2 = Dónde se perdieron puntos
job-marks-of-100-0f1836e8 = { $job }: { $marks } de 100
diagnosis-economy-and-evidence-64b072c7 = Diagnóstico, economía y evidencia cuentan según lo que valía cada decisión, cosa que este navegador no pudo calcular otra vez: sus motivos faltan aquí.
run-again-here-its-marks-do-not-f1071219 = Ejecutado otra vez aquí, su puntuación no sale como figura: no se puede dar ningún motivo.
nothing-was-lost-482adb9f = No se perdió nada.
job-where-points-were-lost-a-1baa7a98 = { $job }: dónde se perdieron puntos, una tabla
# of the marks
part-cdd57290 = Parte
# of the marks
points-68e36552 = Puntos
a-rule-whose-breach-can-kill-was-87559b9d = Se rompió una regla cuya infracción puede matar: el trabajo entero tiene como máximo { $most } de 100, { $points } menos de lo que suman sus partes.
small-amounts-together-4f1af151 = pequeñas cantidades, juntas

### app/lost_points/words.rs

nothing-was-tested-or-repaired-48e88c5c = no se probó ni reparó nada, así que no se mostró trabajo seguro
no-cause-was-stated-cb383d5b = no se declaró ninguna causa
the-cause-stated-first-is-not-77569690 = la causa declarada primero no es lo que está mal, o no solo
the-cause-stated-last-is-not-6c649e36 = la causa declarada al final no es lo que está mal, o no solo
the-cause-stated-is-not-what-is-cd9613f6 = la causa declarada no es lo que está mal, o no solo
the-machine-still-fails-at-hand-0eca07a1 = la máquina sigue fallando en la entrega
a-right-answer-counts-less-where-0e3ce89d = una respuesta correcta cuenta menos donde la evidencia de ella fue escasa
another-decision-would-have-7e568bef = otra decisión habría ahorrado { $cost }
a-hint-was-asked-for-90b04a37 = se pidió una pista
something-was-damaged-price-to-7715e82b = se dañó algo: { $price } por pagar
somebody-has-to-come-again-price-0854b395 = alguien tiene que volver: { $price }
the-part-fitted-was-sound-price-b821ff00 = la pieza cambiada estaba sana: { $price }
time-and-what-else-it-took-the-69cb963c = el tiempo y lo demás que llevó: el trabajo costó { $cost }, su objetivo es { $target }
this-job-has-no-target-to-065e7c3c = este trabajo no tiene objetivo con que comparar
left-out-what-a9d3c338 = se omitió: { $what }
nothing-was-begun-f4573f0a = no se empezó nada
nothing-in-the-notebook-spoke-c854c6ad = nada en el cuaderno hablaba a favor de esta pieza
the-part-fitted-was-sound-0fdfefc9 = la pieza cambiada estaba sana
nothing-is-wrong-with-the-8598c707 = la máquina no tiene nada mal, y muy pocas lecturas lo muestran
title-a-breach-that-can-kill-at-97fb9aad = { $title }: una infracción que puede matar, { $most } como máximo para el trabajo entero
safety-rule-broken-title-fd125676 = regla de seguridad rota: { $title }
the-evidence-was-short-of-what-6150cac8 = la evidencia no llegaba a lo que necesita esta decisión
the-evidence-gave-it-percent-to-40a2f118 = según la evidencia tenía un { $percent } % de probabilidad de arreglar las cosas, demasiado poco
no-line-of-the-notebook-was-f33db4b2 = no se presentó ninguna línea del cuaderno para la causa
of-of-lines-offered-for-the-62182ed5 = de { $of } líneas presentadas para la causa, { $n } la distinguen de una máquina sana

### app/me/everything.rs

file-not-all-could-be-kept-why-910b264b = { $file }: no se pudo guardar todo. { $why }
file-n-entry-taken-in-left-left-4b11972d = { $file }: { $n } entrada incorporada, { $left } dejadas como están aquí.
file-n-entries-taken-in-left-e473680d = { $file }: { $n } entradas incorporadas, { $left } dejadas como están aquí.
file-this-is-no-file-of-8147ea68 = { $file }: este no es un archivo de todo lo que hay aquí ({ $error }); elegir el que hizo «Guardar todo».
file-format-found-this-version-b0160922 = { $file }: format: "{ $found }": esta versión lee "{ $format }".
file-entries-key-it-cannot-be-a4c2cea2 = { $file }: entries.{ $key }: no se puede leer y se dejó fuera.

### app/me/next.rs

it-is-due-some-time-has-passed-15211b87 = toca repasarla: ha pasado un tiempo desde la última vez que se mostró
it-is-due-in-n-days-c86b5e88 = { $n ->
    [one] toca repasarla en { $n } día
   *[other] toca repasarla en { $n } días
    }
it-went-right-in-right-of-n-jobs-ff2cc6dc = salió bien en { $right } de { $n } trabajos
shown-times-so-far-once-more-6cda88c9 = mostrada { $times } hasta ahora; una vez más la hace más segura

### app/me/screen.rs

me-67e00bc7 = Yo
what-your-finished-jobs-show-all-167fb56f = Lo que muestran los trabajos terminados. Todo se guarda solo en este navegador; nadie más lo ve.
nothing-yet-when-a-job-is-79748cb3 = Nada todavía. Cuando se termina un trabajo, esta página muestra lo que dijo de las habilidades.
# what to do next
next-0c2686ad = Lo siguiente
a-skill-counts-as-known-from-a-718a7844 = Una habilidad cuenta como dominada a partir de una probabilidad del 95 %, la línea de cada barra. La franja más clara dice cuánto puede desviarse la probabilidad; se estrecha con cada trabajo.
jobs-done-70e598b3 = Trabajos hechos
every-skill-you-have-shown-is-ef766b00 = Todas las habilidades mostradas están dominadas y no toca repasar ninguna. Cualquier trabajo que apetezca.
skill-why-94dadb1a = { $skill }: { $why }.
no-rule-broken-in-n-job-bb9d36fb = Ninguna regla rota en { $n } trabajo.
no-rule-broken-in-n-jobs-8aaaa626 = Ninguna regla rota en { $n } trabajos.
critical-51540388 = crítica
major-473ec6e2 = mayor
minor-ff3062ae = menor
safety-rules-a-table-cfde88ef = Reglas de seguridad, una tabla
# the latest day
last-dc4ea09b = Última vez
jobs-done-a-table-ddfe065a = Trabajos hechos, una tabla
saved-open-the-file-with-your-3ec7ebe6 = Guardado. Abrir el archivo con el calendario.
save-these-days-for-my-calendar-2068796d = Guardar estos días para mi calendario
file-why-e72017a7 = { $file }: { $why }
everything-is-erased-ca0a4ddc = Todo está borrado.
the-browser-did-not-let-the-page-68a3a1b6 = El navegador no dejó que la página borrara todo.
everything-of-yours-932b2cb9 = Todo lo propio
jobs-drafts-marks-and-settings-a08b1183 = Trabajos, borradores, puntuaciones y ajustes en un solo archivo: para llevarlos a otro dispositivo, o para conservarlos.
save-everything-127185c9 = Guardar todo
erase-everything-fe294832 = Borrar todo
yes-erase-everything-84564f7b = Sí, borrar todo
files-that-save-everything-made-a7e9428d = Archivos que hizo «Guardar todo»
the-browser-did-not-give-what-it-9cc528f6 = El navegador no entregó lo que guarda.
saved-keep-the-file-where-only-90430e5d = Guardado. Conservar el archivo donde nadie más pueda abrirlo.

### app/me/skills.rs

skills-a-table-65930a0e = Habilidades, una tabla
how-well-you-know-it-6fb50830 = Cuánto se domina
went-right-57d85c61 = Salió bien
show-it-again-by-85f3cf9e = Mostrarla otra vez antes del
# of a skill
known-d813bd53 = dominada
# of a skill
nearly-there-7d220845 = ya casi
# of a skill
on-the-way-8ff2b4c7 = en camino
# of a skill
not-yet-5b8490c3 = todavía no
word-chance-known-between-lowest-9c091c3e = { $word }: probabilidad { $known } %, entre { $lowest } y { $highest }

### app/net.rs

nobody-answers-and-this-browser-7725beca = nadie responde, y este navegador no lo ha guardado
it-came-in-pieces-only-53e59cfe = solo llegó en trozos
the-server-answers-status-3bfb5fd6 = el servidor responde { $status }

### app/newer.rs

a-newer-build-of-this-page-is-1cdae62e = Hay una compilación más nueva de esta página. Los trabajos se quedan como están.
use-it-now-04406f7d = Usarla ahora

### app/open_files.rs

what-drop-onto-this-page-or-7909c126 = { $what }: soltar en esta página, o

### app/open_job.rs

link-0ddb0669 = enlace
this-link-holds-no-job-that-can-a3082f9c = Este enlace no contiene ningún trabajo que se pueda abrir
a-job-for-you-1d8ee97b = Un trabajo recibido
who-home-level-level-3cfa6ea1 = { $who }, { $home } · nivel { $level }
the-link-holds-the-whole-job-a4a4b2c6 = El enlace contiene el trabajo entero. No se pidió nada a ningún servidor.
see-the-debrief-2ed0478e = Ver el repaso
start-this-job-c2b69182 = Empezar este trabajo
keep-it-for-later-59532040 = Guardarlo para después
at-most-minutes-minutes-on-site-bd9a3c9b = { $minutes } minutos en el lugar como máximo
at-least-least-of-100-marks-9b7c293c = { $least } de 100 puntos como mínimo

### app/opened.rs

jobs-and-training-sets-that-were-a54e01ee = Trabajos y series de práctica recibidos
name-title-is-on-the-list-52f2129d = { $name }: «{ $title }» está en la lista.
name-the-training-set-title-with-4997c7ef = { $n ->
    [one] { $name }: la serie de práctica «{ $title }» con { $n } trabajo está al principio de esta página.
   *[other] { $name }: la serie de práctica «{ $title }» con { $n } trabajos está al principio de esta página.
    }

### app/outbox/place.rs

as-the-store-says-7382dee9 = como dice el almacén
nobody-answers-there-is-no-14f14c7d = nadie responde: no hay red, o el almacén no deja que esta página le hable
refused-status-why-41b51002 = rechazado ({ $status }): { $why }
the-store-refuses-the-user-or-ed9990e5 = el almacén rechaza el usuario o la contraseña
the-store-answers-status-206c0ab8 = el almacén responde { $status }

### app/outbox/queue.rs

this-browser-has-no-room-to-put-3fb5c60a = a este navegador no le queda espacio para apartar lo que el almacén rechaza

### app/outbox/section.rs

n-results-wait-7956324c = { $n ->
    [one] Espera { $n } resultado.
   *[other] Esperan { $n } resultados.
    }
n-results-wait-why-8b7ce062 = { $n ->
    [one] Espera { $n } resultado: { $why }.
   *[other] Esperan { $n } resultados: { $why }.
    }
n-statements-were-refused-they-82420e89 = Declaraciones rechazadas: { $n }; se guardan aquí, se vuelven a intentar con «Enviar ahora», y los archivos de resultados contienen lo mismo.
an-address-begins-with-https-or-af71490b = Una dirección empieza por https:// o http:// y no tiene espacios.
kept-results-are-sent-there-when-8649f22e = Guardado. Los resultados se envían allí cuando se entregan.
tried-d4bbeb83 = Intentado.
forgotten-nothing-is-sent-any-2aad6061 = Olvidado: ya no se envía nada.
a-store-for-results-f77ea43c = Un almacén para los resultados
where-a-department-keeps-f1ac778f = Donde un departamento guarda registros de aprendizaje (xAPI), los resultados de las evaluaciones pueden ir allí por sí solos. Esperan aquí hasta que el almacén los ha recibido. Sin una dirección, nada sale de este navegador.
address-700560f3 = Dirección
as-its-keeper-gives-it-such-as-cf68fd47 = Tal como la da quien lo lleva, por ejemplo https://store.example/xAPI. Debe permitir que esta página le hable.
user-e0a63e12 = Usuario
password-2cc30838 = Contraseña
kept-in-this-browser-as-it-is-ee86322d = Se guarda en este navegador tal cual: usar una que solo pueda escribir.
keep-555cbe68 = Guardar
send-now-24c5991f = Enviar ahora
forget-the-store-719e911e = Olvidar el almacén
version-of-the-interface-a4cc2814 = Versión de la interfaz
choose-one-only-where-the-store-ec7bdc0a = Elegir una solo donde el almacén no dice cuál habla y lo rechaza todo.

### app/proves.rs

what-this-result-shows-fa2ae5f8 = Qué muestra este resultado
finding-faults-the-order-of-work-adadab5c = Encontrar averías, el orden del trabajo y las decisiones sobre seguridad. No muestra las manos: para eso está la prueba práctica ante un testigo, con la hoja del observador.
computed-by-version-version-of-6964ecc0 = Calculado por la versión { $version } del programa, a partir de todo lo que se hizo; { $computed }
reliability-of-n-jobs-at-least-84ab6fcf = Fiabilidad de { $n } trabajos: { $least } sobre 1 como mínimo, suficiente para una decisión sobre una persona.
reliability-of-n-jobs-at-least-d2d9bc47 = Fiabilidad de { $n } trabajos: { $least } sobre 1 como mínimo, demasiado poco por sí solo para una decisión sobre una persona: tomarlo junto con otras sesiones y la prueba práctica.
from-job-to-job-the-marks-lie-2b795df5 = De un trabajo a otro las puntuaciones están separadas: la media es segura a ±{ $marks } aproximadamente.
the-marks-of-these-jobs-are-191277d0 = Las puntuaciones de estos trabajos son iguales: de tan pocas no se puede saber la dispersión.
one-job-tells-of-no-spread-how-1d3f090c = Un solo trabajo no dice nada de la dispersión: no se sabe hasta qué punto es segura su puntuación.

### app/readings.rs

every-fault-a-machine-can-have-3230fbdd = Todas las averías que puede tener una máquina frente a las lecturas de su hoja de datos y las cifras de un programa entero. Lo que notaría un técnico está marcado con ●; lo que no está marcado parece ahí una máquina sana.
the-table-of-this-machine-cannot-25d6501d = La tabla de esta máquina no se puede calcular.
done-of-n-faults-computed-866421ca = { $done } de { $n } averías calculadas …
save-as-csv-b30635b0 = Guardar como CSV
faults-against-readings-fdac3068 = Averías frente a lecturas

### app/report.rs

report-4681fa0b = Informe
what-the-customer-said-69287971 = Lo que dijo el cliente
found-0abaed3f = Encontrado
done-8dd31791 = Hecho
told-and-shown-74c6f73c = Dicho y enseñado
signature-of-the-customer-8ecd44d3 = Firma del cliente:
from-a-simulated-machine-for-bc193b34 = De una máquina simulada, para formación.
the-machine-at-when-5ce4e4f6 = La máquina, { $when }
measured-69a8be81 = Medido
what-0815494f = Qué
bill-24a8cf3c = Factura

### app/rows.rs

this-browser-has-no-threads-so-6fb62a2e = Este navegador no tiene hilos, así que en él no se puede calcular nada.

### app/session.rs

title-text-5c0a14b4 = { $title }. { $text }

### app/settings.rs

as-the-device-is-set-cefbfa20 = como en el dispositivo
# of colours
light-6cc5e111 = claros
# of colours
dark-d9af6257 = oscuros
settings-4b058728 = Ajustes
give-hints-in-the-opening-jobs-ef3700a2 = Dar pistas en los trabajos de inicio
show-all-names-on-the-pictures-15bb4512 = Mostrar todos los nombres en los dibujos
single-keys-work-on-the-bench-6ac8f39c = Las teclas sueltas funcionan en el banco
colours-1a29ff2a = Colores
strong-contrast-f6f08b9c = Contraste fuerte
# what is heard
sound-c25ddb22 = Sonido
hear-the-machine-c33f3bb7 = Oír la máquina
what-sounds-is-also-written-34e64458 = Lo que suena está también escrito debajo del dibujo.
language-9a73db9b = Idioma
volume-74f576af = Volumen
percent-percent-dd8ba63f = { $percent } por ciento
keys-on-the-bench-fa8e11c3 = Teclas en el banco
everything-works-with-tab-arrow-cdd074ff = Todo funciona con Tab, las teclas de flecha e Intro. Estas teclas sueltas son más rápidas; no hacen nada mientras se escribe.
key-cd1ac90c = Tecla
what-it-does-4a4676fd = Qué hace
your-data-0819f3fe = Datos propios
yes-erase-all-my-jobs-35fd8beb = Sí, borrar todos mis trabajos
erase-my-jobs-665d38c7 = Borrar mis trabajos
the-browser-did-not-let-the-page-142f08d7 = El navegador no dejó que la página borrara nada.
all-jobs-are-erased-0ba72486 = Todos los trabajos están borrados.

### app/sheets.rs

told-the-customer-3ca98071 = Dicho al cliente
date-and-name-b226327f = Fecha y nombre
job-card-36e6252a = ficha de trabajo
sheets-to-print-9c686f7d = Hojas para imprimir
who-the-machine-as-it-stands-44bb8062 = { $who }: la máquina tal como está después de la última acción. Cada hoja se imprime sola, en negro sobre blanco.
which-sheets-e2f02066 = Qué hojas
job-card-title-0aa664e0 = Ficha de trabajo: { $title }
a-simulated-job-for-training-46e6e78c = Un trabajo simulado, para formación.
machine-picture-title-customer-0500cd06 = { $machine }, { $picture }. { $title }, { $customer }, { $clock }.

### app/shell.rs

to-the-content-394b43aa = Al contenido
handbook-b94a65c5 = Manual
there-is-nothing-at-this-address-b42878d1 = No hay nada en esta dirección
tubwright-37232af5 = Tubwright
screens-984019e6 = Pantallas

### app/sitting/form.rs

give-the-number-on-your-slip-or-2f428199 = Dar el número de la papeleta, o uno propio para practicar.
at-most-n-letters-on-one-line-8eae01b7 = { $n } letras como máximo en una línea.
the-letters-do-not-go-with-the-b419a06b = Las letras no corresponden al código de inicio y al número: comparar los tres con la papeleta.
your-instructor-tells-this-word-0bf48ebd = El instructor dice esta palabra cuando todos empiezan.
without-this-nothing-can-be-11f994da = Sin esto no se puede registrar nada, y por tanto no se puede evaluar nada.

### app/sitting/jobs.rs

job-place-of-n-1a528084 = Trabajo { $place } de { $n }
job-n-c9c3bafc = Trabajo { $n }

### app/sitting/limits.rs

n-s-left-f5a7ac47 = quedan { $n } s
n-min-left-eadff3f4 = quedan { $n } min
hours-h-minutes-min-left-24fe93d6 = quedan { $hours } h { $minutes } min

### app/sitting/lock.rs

the-clock-stands-3a77a06b = El reloj está parado
the-jobs-of-the-assessment-open-24529712 = Los trabajos de la evaluación se abren otra vez en cuanto el reloj sigue; otras páginas, en cuanto está entregada.
not-during-the-assessment-452fc9de = No durante la evaluación
an-assessment-is-running-in-this-f2e10823 = Hay una evaluación en marcha en este navegador. Esta página se abre otra vez en cuanto está entregada.
this-job-is-handed-in-9aaffb01 = Este trabajo está entregado
what-came-of-it-stands-with-the-40eedb90 = En qué quedó figura con el resultado.
to-the-assessment-44e0e277 = A la evaluación

### app/sitting/mark_sheet.rs

passed-254b3fb9 = Aprobado
on-the-border-more-jobs-decide-802130f4 = En el margen: deciden más trabajos
# of a pass
not-yet-d79d1753 = Todavía no
mark-sheet-a7391383 = Hoja de puntuación
mark-sheet-a-table-7e75496a = Hoja de puntuación, una tabla
ended-ec2b41db = Final
economy-and-evidence-go-by-the-67a8098a = Economía y evidencia se rigen por la factura y el cuaderno en el trabajo { $places }: este navegador no pudo calcular lo que valía cada decisión.
not-begun-ab66e96f = sin empezar
points-of-all-81479442 = { $points } de { $all }
severity-rule-times-93493130 = { $severity }: { $rule }, { $times }

### app/sitting/observer.rs

switches-off-unplugs-keeps-the-806f1a67 = apaga, desenchufa, no pierde de vista la clavija
shuts-the-tap-and-bleeds-the-2a7b40c0 = cierra el grifo y purga la manguera
waits-discharges-proves-the-474e95b5 = espera, descarga, comprueba el comprobador antes y después
proves-dead-where-the-hands-will-106a2c2f = comprueba sin voltaje donde van a estar las manos
hands-and-tools-7f644a87 = Manos y herramientas
takes-covers-off-without-harm-to-a27a681b = quita cubiertas sin dañar bordes, presillas ni cables
holds-and-places-probes-with-dry-e56344cc = sujeta y coloca las puntas con manos secas y firmes
pulls-connectors-by-their-body-209bd007 = separa los conectores por el cuerpo, nunca por el cable
lifts-and-lays-down-with-help-or-64962182 = levanta y tumba con ayuda o con una correa de carga
putting-back-85509675 = Volver a montar
seats-belt-hoses-and-lever-and-54b75e66 = asienta correa de transmisión, mangueras y palanca, y comprueba cada una con la mano
refits-the-earth-first-and-c27eb72f = vuelve a montar primero la tierra y no le sobra ninguna pieza de fijación
earth-bond-insulation-and-0e619643 = continuidad de tierra, aislamiento y corriente de fuga medidos y anotados
runs-the-machine-looks-for-leaks-b0ea26b2 = hace funcionar la máquina, busca fugas de agua, cronometra el freno
asks-listens-names-the-price-d9296870 = pregunta, escucha, dice el precio antes del trabajo
leaves-the-place-dry-and-clean-b2c55f5f = deja el lugar seco y limpio, enseña lo que se hizo
for-a-practical-on-a-real-4b38e8bb = Para una prueba práctica en una máquina real, ante un testigo. La simulación informa sobre encontrar averías, orden del trabajo y decisiones sobre seguridad; esta hoja informa sobre las manos.
candidate-s-number-6e11d3d1 = Número del candidato
machine-and-fault-set-21cdd40f = Máquina y avería puesta
place-and-date-4c16688b = Lugar y fecha
observer-3fac8c77 = Observador
seen-da72188a = Visto
with-help-1090bd08 = con ayuda
note-919a0c3d = nota
a-step-that-endangers-anybody-ac1dfee5 = Un paso que pone a alguien en peligro termina la prueba práctica: parar, poner en seguridad, anotarlo.
may-work-alone-yes-or-what-comes-a09f7d65 = Puede trabajar por su cuenta: sí, o qué hace falta antes
signature-of-the-observer-50b3b991 = Firma del observador
signature-of-the-candidate-5a306df0 = Firma del candidato

### app/sitting/overview.rs

no-assessment-is-running-6475eef3 = No hay ninguna evaluación en marcha
open-one-49afee59 = Abrir una
handed-in-58e821c0 = Entregada
this-assessment-was-handed-in-54ee37a9 = Esta evaluación se entregó. El sistema de formación tiene su resultado; las páginas del resultado están en el navegador en que se hizo.
this-assessment-is-open-in-cd4f6448 = Esta evaluación está abierta en otra pestaña
it-goes-on-there-with-its-clock-2d9ff623 = Sigue allí, con su reloj: trabajar y entregar allí. Nada de lo que se haga aquí cuenta, y esta pestaña no entrega nada.
to-go-on-here-instead-close-the-846614f0 = Para seguir aquí en su lugar, cerrar la otra pestaña y luego cargar otra vez esta página. No se pierde nada.
load-this-page-again-8b449af6 = Cargar otra vez esta página
the-clock-stands-453c5dcb = el reloj está parado
go-on-the-clock-starts-again-bfa9f424 = Seguir: el reloj se pone en marcha otra vez
stop-the-clock-e19ac980 = Parar el reloj
hand-in-206f3f5f = Entregar
yes-hand-in-ff40daec = Sí, entregar
yes-hand-in-with-one-job-open-f480328d = Sí, entregar con un trabajo abierto
yes-hand-in-with-n-jobs-open-1e4cff64 = Sí, entregar con { $n } trabajos abiertos
a-job-that-is-not-handed-over-9d0a1869 = Un trabajo que no está entregado cuenta tal como está; uno que no se abrió nunca cuenta 0.
handing-in-working-out-what-your-9fd00ae9 = Entregando: se calcula lo que valían las decisiones. Dejar abierta esta página.
handed-over-0d3cbb91 = entregado

### app/sitting/result.rs

saved-hand-this-file-to-your-98a16102 = Guardado. Dar este archivo al instructor.
result-title-044cde4e = Resultado: { $title }
sealed-with-the-start-code-07982d01 = sellado con el código de inicio
told-to-your-training-system-not-8ee90e7b = comunicado al sistema de formación; no sellado con un código de inicio
practice-not-sealed-proves-18df76f7 = práctica: sin sello, no demuestra nada a otros
receipt-1b9120e3 = Recibo
nothing-was-done-19b38c41 = no se hizo nada
done-of-n-jobs-the-start-of-the-44890606 = { $done } de { $n } trabajos. El comienzo del hash del último registro: anotarlo, y nadie puede cambiar el archivo sin que se vea.
your-instructor-s-copy-computes-203bb577 = la copia del instructor lo calcula otra vez y decide.
back-to-the-course-05831de5 = Volver al curso
print-this-sheet-f6a770b7 = Imprimir esta hoja
clear-for-the-next-candidate-fc11d8d6 = Vaciar para el candidato siguiente
yes-the-file-is-handed-over-750f2786 = Sí, el archivo está entregado: vaciar
verdict-marks-of-100-marks-on-40739ce9 = { $verdict } · { $marks } de 100 puntos de media, se piden { $cut }
job-n-as-a-link-2827b189 = Trabajo { $n } como enlace
result-of-job-n-as-a-qr-code-df24b449 = Resultado del trabajo { $n } como código QR
as-qr-codes-to-be-read-with-a-05d50a16 = Como códigos QR, para leerlos con un teléfono en el mismo servidor

### app/sitting/room.rs

this-is-no-code-of-this-d608a92d = Este no es un código de esta evaluación: compararlo con el que se leyó en voz alta.
this-code-was-used-already-each-5503a65f = Este código ya se usó: cada uno vale una vez. Pedir el siguiente.
this-code-lets-the-clock-go-on-09e317bb = Este código deja que el reloj siga, y ya está en marcha.
this-code-stops-the-clock-and-it-2711a227 = Este código para el reloj, y ya está parado. Esperar el código para seguir.

### app/sitting/room_pause.rs

pause-code-221397d6 = Código de pausa
stop-the-clock-for-the-room-b683a587 = Parar el reloj para la sala
the-room-pauses-the-clock-stands-4c375972 = La sala está en pausa: el reloj está parado
nothing-can-be-done-at-the-jobs-6f77ce97 = Mientras tanto no se puede hacer nada en los trabajos, y el tiempo no cuenta. Para seguir, escribir el código que lee en voz alta el instructor.
pause-of-the-whole-room-8c8a302d = Pausa de toda la sala
when-your-instructor-reads-out-a-0442c468 = Cuando el instructor lea en voz alta un código de pausa, escribirlo aquí. El reloj queda parado hasta que se escriba el siguiente.

### app/sitting/start.rs

the-letters-were-cut-or-changed-610558b7 = Las letras se cortaron o cambiaron por el camino: copiar otra vez la dirección entera.
there-is-no-assessment-id-beside-9cfd903f = No hay ninguna evaluación «{ $id }» junto a esta página: abrir su archivo.
open-the-file-or-the-link-that-62e5a1d5 = Abrir el archivo o el enlace que dio el instructor.
the-assessment-s-file-9b42810a = El archivo de la evaluación
name-is-an-assessment-too-one-is-51d31cac = { $name } también es una evaluación: se hace una cada vez.
the-rules-9abb76fb = Las reglas
this-computer-fa0d176a = Esta computadora
who-sits-it-ab9aa5d9 = Quién la hace
as-on-your-slip-a-number-is-899ccb1b = Como en la papeleta. Basta un número; no hace falta ningún nombre.
your-name-3a0663bd = Nombre propio
may-stay-empty-it-can-be-struck-06262575 = Puede quedar vacío. Se puede tachar del resultado más tarde.
you-have-a-slip-with-a-start-c044b6f1 = Se tiene una papeleta con un código de inicio
from-your-slip-fc518f22 = De la papeleta
sixteen-characters-on-your-slip-97dc5ae8 = Dieciséis caracteres de la papeleta. Sin él esto es práctica, y el resultado lo dice.
the-four-letters-beside-it-2ac6fc2e = Las cuatro letras de al lado
they-find-a-misread-code-dc831d6f = Descubren un código mal leído.
word-for-today-eacde8b7 = Palabra del día
your-instructor-tells-it-when-18d8bb72 = El instructor la dice cuando todos empiezan.
i-know-what-is-recorded-c1da6593 = Sé lo que se registra: todo lo que hago en el banco con su hora, y cuándo se deja esta página. Va al sistema de formación y queda en este navegador hasta que se borre.
i-know-what-is-recorded-10490fe5 = Sé qué se registra: todo lo que hago en el banco, con su hora, y cuándo se sale de esta página. Se queda en este navegador hasta que entregue el archivo o lo borre.
begin-the-clock-starts-2829212a = Empezar: el reloj se pone en marcha
begin-as-practice-c4fbf2df = Empezar como práctica
one-job-minutes-minutes-for-all-6a0028a5 = Un trabajo, { $minutes } minutos en total.
n-jobs-minutes-minutes-for-all-8a8d5d08 = { $n } trabajos, { $minutes } minutos para todos.
the-data-sheet-8347c967 = la hoja de datos
the-jobs-are-drawn-for-you-5ad6a43f = Los trabajos se sortean para cada candidato: otros reciben otros trabajos de los mismos tipos. No hay pistas, y antes de entregar no se dice nada sobre lo correcto o lo incorrecto.
no-aids-neither-data-sheet-nor-0405a824 = Sin ayudas: ni hoja de datos, ni esquema de cableado, ni manual.
you-may-use-aids-d2a86f5b = Se puede usar: { $aids }.
the-clock-can-be-stopped-between-54656696 = El reloj se puede parar entre trabajos.
the-clock-does-not-stop-once-it-6ac2ba95 = El reloj no se para una vez puesto en marcha.
leaving-the-page-is-noted-after-660549f4 = Salir de la página se anota. Tras una recarga se sigue donde se estaba.
to-pass-cut-of-100-marks-on-38ac139b = Para aprobar: { $cut } de 100 puntos de media. A menos de { $border } puntos de eso deciden más trabajos.
your-instructor-can-stop-the-de789e14 = El instructor puede parar el reloj para toda la sala, con un código que se lee en voz alta y se anota en el resultado.
a-critical-safety-rule-broken-is-4567fccd = Una regla crítica de seguridad rota no se compensa con puntos.
n-of-the-machines-must-be-put-8b6e8d73 = El { $n } % de las máquinas debe quedar arreglado, o correctamente puesto en seguridad y dejado así.
of-the-marks-for-part-at-least-n-42ade5ba = De los puntos de { $part }, el { $n } % como mínimo, de media.
whoever-keeps-the-results-is-to-4609cdd8 = Quien guarde los resultados debe borrarlos { $months } después del día en que empezaron.
an-assessment-is-running-in-this-2c749c1f = En este navegador ya hay una evaluación en marcha: entregarla primero.
in-order-8600af38 = en orden:
mind-3923f209 = atención:
looking-1c16e9be = mirando …
what-you-do-is-kept-after-every-a5ff5d46 = Lo que se hace se guarda después de cada acción, también si se cierra la página.
this-browser-keeps-nothing-a-439678b3 = Este navegador no guarda nada: una recarga lo perdería todo. Pedir otro antes de empezar.
mouse-finger-or-keyboard-alone-898c7a9c = Solo ratón, dedo o teclado: todo se puede hacer con cualquiera de ellos. Los sonidos llevan subtítulos.

### app/store/error.rs

this-browser-has-no-room-left-so-a09ec24a = A este navegador no le queda espacio, así que el último paso no está guardado. Liberar espacio, o terminar en esta sesión.
this-browser-does-not-let-the-4ebada3c = Este navegador no deja que la página guarde. Se puede seguir trabajando, pero al cerrar la página se pierde el trabajo.
the-saved-job-cannot-be-read-and-2c9f4acc = El trabajo guardado no se puede leer y se dejó como estaba. Se puede empezar otra vez.

### app/store/mod.rs

your-jobs-are-kept-in-this-e8c13a5a = Los trabajos se guardan en este navegador, solo en este dispositivo.
this-browser-does-not-let-the-27f8ea85 = Este navegador no deja que la página guarde nada: los trabajos desaparecen al cerrarla.

### app/told_files.rs

not-opened-since-something-is-d6ff13a6 = Sin abrir, porque algo está mal: { $n }
passed-over-n-da625485 = Omitidos: { $n }

### app/training_set.rs

mastered-87fde572 = dominado
next-5cb68de8 = siguiente
later-523ab9a9 = más tarde
title-done-of-n-mastered-dcae9d31 = { $title }: dominados { $done } de { $n }
about-the-next-job-opens-when-04ee2c20 = { $about } El trabajo siguiente se abre cuando el anterior tiene { $marks } puntos de 100.
forget-this-set-title-5ff4911a = Olvidar esta serie: { $title }
forget-this-set-e76dc550 = Olvidar esta serie

### app/training_system/awaiting.rs

address-is-asked-for-the-key-70b134f7 = Se pide a { $address } la clave que deja entrar esta visita.
address-is-asked-for-what-was-8a63ccc7 = Se pregunta a { $address } qué se ha iniciado, y para quién.
address-is-asked-for-the-work-797c284a = Se pide a { $address } el trabajo hecho antes.
address-is-asked-to-note-that-03b658ef = Se pide a { $address } que anote el comienzo.
the-key-is-given-once-so-it-4defa442 = La clave se da una sola vez, así que no se puede pedir otra vez: esperar, o seguir sin ello, e iniciar esta página de nuevo desde el curso más tarde.
go-on-it-is-told-as-soon-as-the-73c2b5f8 = Seguir: se le comunica en cuanto el sistema lo acepte, antes que cualquier otra cosa.
ask-again-or-go-on-without-it-050059ca = Preguntar otra vez, o seguir sin ello: entonces no se le comunica nada al sistema hasta que se cargue otra vez esta página, y el trabajo hecho en otro sitio no está aquí.
waiting-for-the-training-system-04613867 = Esperando al sistema de formación
n-s-so-far-2398f3f1 = { $n } s hasta ahora.
ask-again-13a6f1ce = Preguntar otra vez
go-on-without-it-46b6dc7d = Seguir sin ello
there-is-no-answer-for-n-seconds-c942b834 = No hay respuesta desde hace { $n } segundos.

### app/training_system/trouble.rs

the-training-system-has-started-2ac938db = El sistema de formación ha iniciado esta página pero no deja que empiece, así que no se le comunica nada de lo que se hace aquí. Iniciarla de nuevo desde el curso.
you-go-on-without-the-training-53370f0f = Se sigue sin el sistema de formación, que no ha respondido: no se le comunica nada de lo que se hace aquí. Cargar otra vez esta página para preguntarle una vez más, o iniciarla de nuevo desde el curso.
this-page-was-left-or-loaded-f53eb94d = Se salió de esta página o se cargó de nuevo, y con eso ha terminado la visita en el sistema de formación. El trabajo está guardado. Iniciar la página otra vez desde el curso: lo que se entregue se comunica entonces.
the-training-system-has-no-room-3e61fd59 = El sistema de formación no tiene espacio para todo el trabajo: se guarda solo en este navegador. Seguir aquí, en ninguna otra computadora, y guardar el archivo al final.
the-training-system-has-not-937ff3d3 = El sistema de formación todavía no ha aceptado el resultado. Se le comunica otra vez cuando vuelva la red, y con «Volver al curso» donde se muestre. Guardar el archivo.

### app/view/around.rs

press-on-off-1fd9c6bb = pulsar encendido/apagado
press-start-2eee9150 = pulsar inicio
press-program-245fa278 = pulsar programa
press-water-level-475b7b49 = pulsar nivel de agua
press-the-service-key-behind-the-d83626dc = pulsar la tecla de servicio detrás del panel
push-the-knob-in-off-81e98d20 = meter el botón giratorio: apagar
pull-the-knob-out-on-00ab3e08 = sacar el botón giratorio: encender
turn-the-dial-to-the-start-1df92c25 = girar el dial hasta el inicio
turn-the-dial-one-step-on-e137a5ba = girar el dial un paso adelante
turn-the-dial-five-steps-on-657bf64d = girar el dial cinco pasos adelante
pull-the-plug-98cca383 = sacar la clavija
put-the-plug-in-fd882a6a = meter la clavija
keep-it-in-sight-87c1a3ed = no perderla de vista
put-the-splitter-lead-in-349dec81 = poner el cable separador
take-the-splitter-lead-away-5f60faf4 = quitar el cable separador
switch-its-circuit-off-at-the-4af7d5c9 = cortar su circuito en el cuadro
switch-its-circuit-on-ab211a55 = volver a dar corriente a su circuito
prove-the-tester-on-its-known-d182e67c = comprobar el comprobador en su fuente conocida
put-new-fuses-into-the-2257ae21 = poner fusibles nuevos en los instrumentos
discharge-plug-pins-with-the-19da3ea1 = descargar las espigas de la clavija con la resistencia
short-plug-pins-with-a-5264868e = cortocircuitar las espigas de la clavija con un destornillador
shut-the-tap-12bcf3e1 = cerrar el grifo
open-the-tap-2c749523 = abrir el grifo
bleed-the-hose-into-a-bucket-3e07f690 = purgar la manguera en un cubo
bleed-it-into-a-bucket-1f671da9 = purgarla en un cubo
take-the-hose-off-10670ceb = quitar la manguera
screw-the-hose-on-a56aac3e = enroscar la manguera
# verb, of a lid
open-55412a21 = abrir
# verb, of a lid
shut-5bedcd3f = cerrar
bridge-it-ca60eb1d = puentearlo
take-the-bridge-off-10fc92db = quitar el puente
# verb, of a key
press-10ef7c14 = pulsar
dry-what-got-wet-inside-f33d4756 = secar lo que se mojó dentro
discharge-it-with-the-resistor-7028473a = descargarlo con la resistencia
short-it-with-a-screwdriver-9867048f = cortocircuitarlo con un destornillador
bail-the-water-out-45419391 = achicar el agua
let-the-water-out-by-the-wire-5dc1573d = dejar salir el agua tirando del cable de tracción

### app/view/beside.rs

act-n-times-0f5a7849 = { $act }, { $n } veces
cost-cost-minutes-min-n-acts-d8f603c5 = costo { $cost }, { $minutes } min, { $n } acciones

### app/view/card.rs

place-9ad2489c = Lugar
in-the-van-3fcacd24 = En la furgoneta
rates-72ebb81c = Tarifas
call-out-call-out-labour-hour-an-b6ea9aee = desplazamiento { $call_out }, mano de obra { $hour } por hora, máquina nueva { $new }
costs-at-most-most-786ac53e = cuesta { $most } como máximo
to-reach-bd2d21b7 = Por alcanzar
in-the-bag-6439528b = En la bolsa
instrument-place-e3f2c311 = { $instrument }, { $place }
outside-the-machine-or-left-by-be1bd085 = fuera de la máquina, o dejado por una reparación anterior

### app/view/covers.rs

verb-with-help-or-a-strap-040e63a7 = { $verb }, con ayuda o una correa de carga
verb-alone-597c1139 = { $verb }, sin ayuda
verb-bucket-and-cloth-below-d23a24e4 = { $verb }, con cubo y paño debajo
verb-nothing-below-1a5a37aa = { $verb }, sin nada debajo
open-it-and-let-it-stand-by-c8149547 = abrirla y dejar que se sostenga sola
act-and-check-check-fe6743c4 = { $act } y comprobar: { $check }
act-no-check-e77037de = { $act }, sin comprobar

### app/view/debrief.rs

so-it-counts-as-not-repaired-a-929761d3 = Por eso cuenta como no reparada: una máquina se entrega entera y en su sitio
all-that-is-asked-of-a-job-was-a97b7fd6 = Se mostró todo lo que se pide de un trabajo.
no-rule-broken-whose-breach-can-1ec3d278 = ausencia de infracciones que puedan matar
safety-of-70-97766810 = seguridad del 70 %
a-diagnosis-of-60-de2b2563 = un diagnóstico del 60 %
a-procedure-of-60-with-run-and-83be6db8 = un procedimiento del 60 % con marcha y pruebas eléctricas
evidence-of-50-1130c5b9 = evidencia del 50 %
t-65-of-100-in-all-3bbb991e = 65 de 100 en total
still-missing-what-3117aed1 = Todavía falta: { $what }.
rightly-made-safe-and-left-7157eb52 = Correctamente puesta en seguridad y dejada así
repaired-2f042b45 = Reparada
not-repaired-6882b9f2 = No reparada
not-safe-719d4feb = no segura
safety-rules-broken-e6881775 = reglas de seguridad rotas
safe-ad27ee58 = segura
how-marks-of-100-9cf7b4dc = { $how } · { $marks } de 100
how-marks-of-100-for-now-dfc8b5c3 = { $how } · { $marks } de 100 por ahora
to-be-expected-5822b097 = lo que cabía esperar
target-32608848 = objetivo
avoidable-f84bfa72 = evitable
money-dearer-than-could-be-0c37158a = { $money } (más caro de lo que se podía esperar)
money-cheaper-than-could-be-f3bef78b = { $money } (más barato de lo que se podía esperar)
# good or bad luck
chance-db7e15a1 = azar
on-site-46cf0feb = en el lugar
minutes-min-689f1a0e = { $minutes } min
kept-e8614759 = cumplido
not-kept-67ecfbda = no cumplido
at-most-most-met-ccc3dfe6 = { $most } como máximo: { $met }
budget-39baa088 = presupuesto
at-most-most-min-met-78b9d89a = { $most } min como máximo: { $met }
time-allowed-3e870934 = tiempo permitido
reached-564dd9f9 = alcanzado
not-reached-5ea156cc = no alcanzado
at-least-least-met-1258904e = { $least } como mínimo: { $met }
marks-to-reach-8a4c03a9 = puntos por alcanzar

### app/view/decided.rs

ruled-out-names-and-more-more-a59c0355 = Descartado: { $names }; y { $more } más.
ruled-out-names-25664043 = Descartado: { $names }.
what-was-known-then-gave-it-sure-02623023 = Lo que se sabía entonces le daba un { $sure } % de arreglar las cosas: { $standing }.
cost-cost-deciding-otherwise-9990d4b0 = Costó { $cost }; decidir otra cosa habría ahorrado { $saved }.
cost-cost-3b1561d7 = Costó { $cost }.
a-hint-12f3c3fd = una pista
the-hint-gave-rung-and-counts-as-0df94d8a = La pista dio { $rung } y cuenta como evitable: { $money }.
it-was-about-step-77ea7a8a = Era sobre: { $step }.
better-then-step-f54c61c0 = Mejor entonces: { $step }.
ask-what-a-reading-can-still-13a6a0ae = Preguntarse qué puede decir todavía una lectura antes de tomarla.
prove-the-cause-before-this-a1ba0315 = Demostrar la causa antes de esta reparación.
prove-that-it-works-before-cfd19d47 = Demostrar que funciona antes de entregar.
work-on-without-a-hint-for-one-955514eb = Seguir sin pista un paso más.
it-cost-money-more-than-it-had-182318b0 = Costó { $money } más de lo necesario.

### app/view/gauges.rs

place-way-13384dc3 = { $place }, { $way }
the-stream-that-runs-in-fb6453e8 = el chorro que entra
its-open-end-over-a-bucket-51a8b1a7 = su extremo abierto sobre un cubo
the-stream-that-runs-out-39ea604d = el chorro que sale
until-it-stands-8460c231 = hasta que se para
until-it-has-filled-ba60d6f8 = hasta que se ha llenado
until-no-more-water-comes-d62a3141 = hasta que no sale más agua
until-its-wire-stands-4c94ceef = hasta que se para su cable de tracción
pressure-in-the-line-7a5b4e88 = presión en la línea
pressure-in-the-hose-55bd25d7 = presión en la manguera
highest-speed-in-ten-seconds-865df7b1 = velocidad máxima en diez segundos
slope-of-the-floor-beside-it-1ce7c19f = inclinación del suelo al lado
slope-of-the-machine-29ff4d83 = inclinación de la máquina
gives-at-7-n-c69e2c65 = cede con 7 N
tension-by-its-tone-cf202e58 = tensión por su tono
hottest-winding-37a681a2 = el bobinado más caliente
the-water-5085ff63 = el agua
the-room-557956ef = la habitación
travel-of-its-wire-80e6ebc9 = recorrido de su cable de tracción
height-of-its-end-over-the-floor-cd828cab = altura de su extremo sobre el suelo
gap-to-the-tub-29f2ff90 = distancia a la cuba
play-c2cbd863 = juego
seen-5a45cc6a = visto
leads-there-79405206 = puntas ahí

### app/view/hints.rs

ask-first-the-questions-are-on-c81ce553 = Primero preguntar: las preguntas están en la ficha de trabajo.
let-it-do-what-the-customer-99bd1624 = Hacer que haga lo que describió el cliente: tocar el dial, girarlo hasta el inicio, sacar el botón giratorio, y escuchar.
let-it-do-what-the-customer-1023b263 = Hacer que haga lo que describió el cliente: encenderla en su panel, esperar hasta que esté lista, tocar inicio, y escuchar.
look-before-you-open-anything-4c5b3999 = Mirar antes de abrir nada: tocar algo en el dibujo, luego elegir «mirar». Lo que se ve va al cuaderno.
put-back-what-you-took-off-the-0321b8d1 = Volver a montar lo que se quitó, lo último primero, y comprobar cada unión según se pone. Lo que está al lado de la máquina sigue quitado.
prove-it-plug-in-tap-open-and-03dc2f63 = Demostrarlo: clavija puesta, grifo abierto, y dejar que lave, desagüe y centrifugue. «Esperar hasta que» y el reloj más rápido dejan pasar el tiempo.
once-it-does-what-it-should-499b08c5 = En cuanto haga lo que debe, elegir Terminar: decir qué estaba mal, marcar las líneas que lo muestran, informar al cliente.
put-right-what-you-have-found-499725b2 = Arreglar lo que se ha encontrado: tomarlo en la mano y elegir qué hacer. Si mirar no lo resuelve, medir primero la toma de corriente, de fase a neutro: comprueba la red y el comprobador.
make-it-safe-before-you-open-it-ab6f1bd7 = Poner la máquina en seguridad antes de abrirla: apagar, luego tocar la clavija y sacarla.
pulled-is-not-yet-dead-keep-the-e44f850c = Sacar la clavija todavía no es estar sin voltaje: no perderla de vista, cerrar el grifo, luego medir las espigas de la clavija una contra otra hasta que estén cerca de 0 V.
a-tester-that-died-reads-0-v-too-64f69f39 = Un comprobador que ha dejado de funcionar también marca 0 V: medir una vez más la toma de corriente con voltaje. Entonces está comprobado que no hay voltaje.
now-open-the-way-touch-a-cover-23e3ec81 = Ahora abrir el camino: tocar una cubierta en el dibujo. Qué la sujeta, y cuánto se tarda, figura con las acciones.
look-again-at-what-is-open-now-4c40c5cd = Mirar otra vez lo que ahora está abierto, y medir donde mirar no lo resuelve; Papeles da los valores de una máquina sana. Luego arreglar lo que se ha encontrado.

### app/view/likely.rs

it-made-the-picture-less-clear-197a8600 = Dejó el panorama menos claro, y con razón.
it-told-nothing-new-about-the-3391340b = No dijo nada nuevo sobre la causa.
it-told-a-little-about-the-cause-1f07c047 = Dijo un poco sobre la causa.
it-told-something-about-the-64093292 = Dijo algo sobre la causa.
it-told-a-great-deal-about-the-bae1fde8 = Dijo mucho sobre la causa.
it-ruled-out-one-5dc9d3b4 = Descartó una.
it-ruled-out-n-ccb6cc30 = Descartó { $n }.
nothing-wrong-79225783 = Ninguna avería
one-and-next-6f6d33b1 = { $one }, y { $next }

### app/view/meter.rs

the-whole-cord-8c572891 = el cable de alimentación entero

### app/view/names.rs

on-off-key-2ecedfcd = tecla de encendido/apagado
start-and-pause-key-0ddba433 = tecla de inicio y pausa
program-key-8f2624f8 = tecla de programa
water-level-key-293990a9 = tecla de nivel de agua
service-key-a785183b = tecla de servicio
water-level-knob-e909f396 = botón giratorio de nivel de agua
cold-valve-71421f39 = válvula de agua fría
hot-valve-898f302e = válvula de agua caliente
timer-motor-20c84357 = motor del programador
mains-plug-94ee392b = clavija de la red
wall-socket-433a0786 = toma de corriente de la pared
the-machine-from-outside-94571b34 = la máquina por fuera
the-machine-opened-708c8d06 = la máquina abierta
the-machine-in-section-68cb27cf = la máquina en corte
the-way-of-the-water-2697dac0 = el camino del agua

### app/view/notice.rs

measure-10bf34df = medir
something-is-in-the-way-055e86e0 = Hay algo en medio
it-is-so-already-dc0015ba = Ya está así
there-is-no-such-thing-on-this-e3347017 = En esta máquina no hay tal cosa
no-part-in-the-van-a-second-0923373a = En la furgoneta no hay: { $part }. Vendría en una segunda visita.
not-on-board-dd6c107b = No está a bordo
the-job-is-over-8c1ee0e5 = El trabajo ha terminado
nothing-more-is-done-to-the-01c0b484 = Ya no se hace nada más en la máquina.
not-as-things-are-5a0cbc6d = No tal como están las cosas
what-why-daa67e7b = { $what }. { $why }.
something-goes-back-first-ba97efcc = Antes hay que volver a montar algo
still-off-names-5ec7deae = Todavía quitado: { $names }.
refit-and-check-in-order-0b3d7ba5 = volver a montar y comprobar en orden
act-first-5eacb877 = primero { $act }
plug-in-by-the-splitter-lead-9070178d = enchufar a través del cable separador, luego poner la pinza
the-machine-goes-off-meanwhile-f875a97e = mientras tanto la máquina se apaga
done-act-time-ad1abca0 = Hecho: { $act }, { $time }
you-had-a-shock-b9261700 = Ha recibido una descarga eléctrica
a-charge-went-off-ac41fe0b = Se descargó una carga
volts-v-joules-j-through-what-fd34cdc4 = { $volts } V, { $joules } J, a través de { $what }.
the-supply-went-off-821de58e = Se fue la corriente de la red
the-meter-s-fuse-blew-685112f2 = Se fundió el fusible del multímetro
water-on-the-floor-7a4831c4 = Agua en el suelo
litres-litres-why-3c981df7 = { $litres } litros: { $why }.
a-moving-part-caught-your-hand-fce26a7d = Una parte móvil le ha atrapado la mano
it-turned-at-speed-r-min-with-77a223d1 = Giraba a { $speed } r/min con { $joules } J.
something-fell-155b61a8 = Se cayó algo
what-joules-j-0fa8bc4a = { $what }; { $joules } J.
the-customer-agrees-d8a37f45 = El cliente está de acuerdo
what-was-agreed-and-for-how-much-63742473 = Lo que se acordó, y por cuánto, figura en el cuaderno.
not-agreed-1730b3b2 = Sin acuerdo
what-the-customer-said-stands-in-d500179a = Lo que dijo el cliente figura en el cuaderno. Decir otro precio, preguntar a quien paga, o cobrar la tarifa y dejar la máquina en seguridad.
something-was-spoilt-ea6be1d1 = Se estropeó algo
what-that-costs-price-655f46e3 = { $what }. Eso cuesta { $price }.
you-hurt-yourself-3f8c82ae = Se ha herido
the-new-part-has-burnt-out-bc1d2654 = La pieza nueva se ha quemado
the-new-part-carried-more-than-e8987c5e = Por la pieza nueva ({ $part }) pasó más de lo que aguanta: lo que acabó con la vieja sigue ahí.
sentence-d8132730 = { $sentence }.
volts-v-across-you-drove-current-04fdaa9c = { $volts } V a través de su cuerpo hicieron pasar por él { $current } mA durante { $time } s. Lo que abrió el circuito: { $opened_by }. Zona de efecto { $zone }.

### app/view/open_ends.rs

what-is-still-to-be-put-back-24188ba3 = { $what }: falta volver a montar
what-held-is-still-to-be-put-f8b26c59 = { $what } ({ $held }): falta volver a montar
what-is-apart-91570a3b = { $what }: sin conectar
the-supply-hose-is-off-06da1639 = La manguera de entrada está quitada
the-splitter-lead-is-still-in-dd0ffe5e = El cable separador sigue en la toma de corriente
the-tee-with-the-pressure-gauge-e47319c4 = La te con el manómetro está en la línea de entrada
the-tee-with-the-u-tube-is-in-d99f01a4 = La te con el tubo en U está en la manguera de aire
the-socket-s-circuit-is-off-at-60444c61 = El circuito de la toma de corriente está cortado en el cuadro
on-the-cloth-lie-n-pieces-too-61fef585 = Sobre el paño sobran piezas: { $n }
a-sealed-joint-still-needs-its-58e7b54a = Una unión sellada todavía necesita su tiempo antes del agua
the-lid-switch-is-bridged-e99bdb86 = El interruptor de la tapa está puenteado
the-lid-is-open-a965fa55 = La tapa está abierta
the-tap-is-shut-5c4fa3f7 = El grifo está cerrado
the-plug-is-out-46a53c44 = La clavija está fuera

### app/view/orders.rs

# a picture of the machine
outside-d1285534 = por fuera
# a picture of the machine
opened-366c5730 = abierta
# a picture of the machine
section-6dcd408c = en corte
# a picture of the machine
wiring-94e4b165 = cableado
# a picture of the machine: the way of the water
water-f065dc13 = agua
# of the clock: stand still
pause-a6143235 = parar
something-changes-2fd22f86 = algo cambie
it-does-something-else-1bbea7fa = haga otra cosa
a-minute-has-passed-22e304b4 = haya pasado un minuto

### app/view/papers.rs

off-off-on-on-252b3fc5 = quitar { $off }, poner { $on }
after-steps-7789fcea = después de: { $steps }
mind-caution-a7f4cd8c = Atención: { $caution }
going-back-check-488750e8 = Al volver a montar: { $check }

### app/view/past.rs

the-meter-is-connected-to-41ea90a8 = el multímetro no está conectado a nada

### app/view/safe.rs

# of the machine: switched off
off-e5d98837 = apagada
secured-6889d45c = asegurada
tap-shut-5016da0c = grifo cerrado
hose-bled-240ea1cb = manguera purgada
tester-proved-567757e4 = comprobador probado
off-at-the-board-181e85c0 = cortada en el cuadro
unplugged-c7ab8726 = desenchufada
plug-pins-run-capacitor-1cbe5624 = espigas de la clavija, condensador de marcha
plug-pins-dd661773 = espigas de la clavija
run-capacitor-00729536 = condensador de marcha
discharged-73c24729 = descargada
red-to-black-0d40071e = de { $red } a { $black }
proved-dead-b564a2bb = comprobada sin voltaje
shown-dead-cc669728 = medida sin voltaje
prove-the-tester-again-fd02cbe1 = comprobar otra vez el comprobador

### app/view/selection.rs

red-lead-on-point-d08cbd1b = punta roja en { $point }
black-lead-on-point-fdaa6d63 = punta negra en { $point }

### app/view/sheet.rs

connector-apart-e1622896 = sin conectar: { $connector }
low-to-high-52434f50 = { $low } a { $high }
low-or-more-582d7e75 = { $low } o más
unplugged-its-switch-or-knob-on-ee0fb054 = desenchufada, su interruptor o botón giratorio en encendido
switched-on-waiting-da931398 = encendida, en espera
washing-spin-direction-1ae32cff = lavando, sentido del centrifugado
washing-other-direction-a2bc9915 = lavando, el otro sentido
lid-opened-at-full-spin-da4967a7 = tapa abierta en pleno centrifugado
in-a-normal-program-658b7b40 = en un programa normal

### app/view/shown.rs

sentence-next-bb017a53 = { $sentence }. { $next }

### app/view/verbs.rs

hold-the-contactless-tester-to-30b0595f = acercarle el detector sin contacto
look-e6ef5696 = mirar
feel-b33572bd = palpar
listen-3b3b76a6 = escuchar
smell-f052b280 = oler
pull-apart-fd25b5d8 = desconectar
push-home-3883d34c = conectar hasta el tope
work-part-part-for-price-143a0524 = { $work }: { $part }, pieza por { $price }
work-part-for-price-43c34c65 = { $work }, pieza por { $price }

### app/view/visit.rs

put-the-old-part-back-b47eca06 = volver a poner la pieza vieja: { $part }
look-it-over-probes-together-a31306c6 = revisarlo, puntas juntas
take-the-spare-one-58f7545e = tomar el de repuesto
who-pays-037f5c56 = Quién paga
read-receipt-and-rating-plate-f6270b75 = leer el recibo y la placa de características
the-maker-pays-020f2093 = paga el fabricante
the-customer-pays-9ce4c983 = paga el cliente
telephone-the-landlord-e6ee38ee = telefonear al propietario de la vivienda
take-the-fee-for-finding-the-618a16f4 = cobrar la tarifa por encontrar la avería
with-care-085adaea = Con cuidado
gloves-on-8110ad20 = ponerse los guantes
gloves-off-a354987a = quitarse los guantes
blanket-on-the-floor-bd780f0c = manta en el suelo
keep-the-room-free-3f5206b8 = mantener el cuarto despejado
mop-the-floor-a7515f4a = secar el suelo
cold-water-into-the-tub-797de7c2 = agua fría en la cuba
work-on-the-house-wiring-209f437c = trabajar en la instalación de la casa
parts-on-trial-231772da = Piezas a prueba
picture-from-outside-746003c4 = foto por fuera
picture-opened-86473536 = foto de la máquina abierta
have-it-signed-9162c954 = hacerlo firmar

### app/view/way.rs

what-comes-first-time-fa764dcd = { $what } va primero: { $time }
what-comes-first-held-time-dc1c1d20 = { $what } va primero: { $held }, { $time }
in-the-way-names-time-together-7818c4e1 = En medio: { $names }, { $time } en total
act-then-then-eb566ed7 = { $act }, luego { $then }

### app/waiting.rs

nothing-has-changed-in-n-minutes-b6064d92 = Nada ha cambiado en { $n } minutos.
after-n-second-state-218a3276 = Al cabo de { $n } segundo: { $state }
after-n-seconds-state-c51f28bf = Al cabo de { $n } segundos: { $state }
nothing-has-changed-024972de = Nada ha cambiado
you-have-waited-n-minutes-5f660be7 = La espera ha durado { $n } minutos.

### app/worker/inside.rs

the-question-cannot-be-read-a861cc9e = La pregunta no se puede leer.

### app/worker/page.rs

the-browser-has-stopped-the-bb4ad385 = El navegador ha parado el cálculo.

### app/worker/work.rs

there-is-no-machine-named-fd279948 = No hay ninguna máquina llamada «{ $machine }».
the-table-of-this-machine-cannot-1ca251ed = La tabla de esta máquina no se puede calcular: { $why }

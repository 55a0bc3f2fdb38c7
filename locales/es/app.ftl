### app/asking.rs


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
cut-marks-marks-of-one-judge-how-508054a2 = Nota de corte { $marks } puntos, de un solo juez: hasta qué punto es segura se puede saber a partir de dos jueces.
cut-marks-marks-the-judges-agree-23f43550 = Nota de corte { $marks } puntos; los jueces coinciden, y tan pocos iguales no dicen nada de la dispersión.
cut-marks-marks-among-the-judges-5a357079 = Nota de corte { $marks } puntos; según los jueces es segura a ±{ $spread } aproximadamente.

### app/assessments/screen.rs

this-browser-gives-no-random-d1182b8e = Este navegador no da números aleatorios, así que no puede hacer ninguna clave: usar otro.
file-is-an-assessment-too-one-is-9b047416 = { $file } también es una evaluación: se trabaja en una cada vez.
make-an-assessment-daec6f30 = Crear una evaluación
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
how-sure-its-decisions-are-c7d8a265 = Hasta qué punto son seguras sus decisiones
still-to-do-2fbfc23f = Por hacer
n-jobs-reliability-at-least-541001e0 = { $n } trabajos: fiabilidad de { $least } sobre 1 como mínimo. Suficiente para una decisión sobre una persona.
n-jobs-reliability-at-least-d3f6db2a = { $n } trabajos: fiabilidad de { $least } sobre 1 como mínimo. Para una decisión sobre una sola persona se pide 0.8: añadir trabajos, o tomar juntas varias sesiones y la prueba práctica.

### app/assessments/slips.rs

give-it-out-97f482bd = Repartirla
the-file-for-all-candidates-is-a202bc33 = El archivo para todos los candidatos está guardado.
save-the-file-3310d52f = Guardar el archivo
the-key-is-saved-keep-it-where-eaf8ba1b = La clave está guardada. Conservarla donde solo pueda abrirla quien evalúa: quien la tenga puede sellar resultados.
save-the-key-6c2f08c0 = Guardar la clave
link-n-characters-7ba21125 = Enlace, { $n } caracteres
the-link-as-a-code-for-a-9c367c25 = El enlace como código para una pantalla de aula
the-link-as-a-qr-code-f9cdcb6b = El enlace como código QR
candidates-6e9467ab = Candidatos
one-number-a-line-after-a-comma-ddcd5146 = Un número por línea. Tras una coma, los minutos adicionales de quien los tenga: no se ven ni en la papeleta ni en la pantalla.
slips-a-table-978d20c7 = Papeletas, una tabla
title-cut-along-the-lines-one-e6f5a6d5 = { $title }: cortar por las líneas, una papeleta para cada uno
your-number-89a480eb = Número del candidato
start-code-8f4e7f8c = Código de inicio
letters-beside-it-478bec05 = Letras al lado
print-the-slips-7a90592c = Imprimir las papeletas
when-all-begin-tell-a-word-for-218ed81b = Cuando todos empiecen, decir una palabra del día, la misma para todos: con otra palabra se sortean otros valores, así que el grupo de ayer no puede contar nada. Anotar la palabra; todos los resultados la contienen.

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
take-off-66f6f69f = quitar

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


### app/bench/drawer.rs


### app/bench/estimate.rs


### app/bench/gauge_face.rs


### app/bench/gauges.rs


### app/bench/help.rs


### app/bench/instrument.rs


### app/bench/job_bar.rs

assessment-7f464e4f = Evaluación

### app/bench/job_card.rs


### app/bench/keys.rs


### app/bench/moving.rs


### app/bench/notebook.rs


### app/bench/notice.rs


### app/bench/papers.rs


### app/bench/picture.rs


### app/bench/point_picker.rs


### app/bench/recorder.rs


### app/bench/safe_strip.rs


### app/bench/screen.rs


### app/bench/selection_bar.rs


### app/bench/suspects.rs


### app/bench/tests_list.rs


### app/bench/time_bar.rs


### app/bench/visit.rs


### app/cohort/aside.rs

file-this-record-cannot-be-run-8fc814a4 = { $file }: este registro no se puede ejecutar otra vez aquí: no se conoce su trabajo o su evaluación. Todavía se puede leer tal como se escribió.

### app/cohort/decision.rs

decision-by-who-fbc7180c = { $decision }, por { $who }
passed-513cb799 = aprobado
border-more-jobs-f2f942b0 = en el margen: más trabajos
not-yet-6d9d33dc = todavía no

### app/cohort/desk/checking.rs

this-browser-has-no-threads-2afe55bc = Este navegador no tiene hilos: en él no se puede comprobar nada.
file-it-cannot-be-read-as-text-8a70b7af = { $file }: no se puede leer como texto, o es demasiado grande.
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


### app/cohort/received.rs


### app/cohort/replay.rs


### app/cohort/rows.rs


### app/cohort/ruling_store.rs


### app/cohort/rulings.rs


### app/cohort/saving.rs


### app/cohort/shown.rs


### app/cohort/skill_page.rs


### app/cohort/source.rs


### app/cohort/words.rs


### app/cohort/written.rs


### app/crash.rs


### app/debrief/expert.rs


### app/debrief/likely.rs


### app/debrief/marks.rs


### app/debrief/moments.rs


### app/debrief/screen.rs


### app/debrief/step.rs


### app/debrief/track.rs


### app/desk/apprentices.rs

who-2af42a8f = quién
in-a-hurry-c53d8883 = con prisa

### app/desk/draft.rs

yes-every-time-f7b25df6 = Sí, todas las veces.
no-523d6bdc = No.
not-that-i-noticed-c9ce576e = Que yo notara, no.

### app/desk/fair.rs


### app/desk/faults.rs


### app/desk/field.rs


### app/desk/fields.rs

friendly-cdd4f17e = amable
sceptical-be905d97 = escéptico
what-is-wrong-95353e48 = Qué está mal

### app/desk/form_table.rs


### app/desk/home.rs


### app/desk/inside_fields.rs


### app/desk/judged.rs


### app/desk/live.rs


### app/desk/pairs.rs


### app/desk/qr.rs


### app/desk/screen.rs


### app/desk/set_draft.rs


### app/desk/set_maker.rs


### app/desk/share.rs


### app/desk/told.rs


### app/desk/van.rs


### app/desk/visit_fields.rs


### app/desk/visit_lists.rs


### app/desk/way_back.rs


### app/faults/list.rs


### app/faults/mod.rs


### app/faults/page.rs


### app/faults/wash.rs


### app/file_kind.rs


### app/finding.rs


### app/format.rs


### app/given_files.rs


### app/handbook/live_machine.rs


### app/handbook/parts.rs

test-2ffcbe05 = Prueba

### app/handbook/worked.rs


### app/handbook.rs


### app/job_filter.rs

all-13254bc4 = todas

### app/job_host.rs


### app/jobs.rs


### app/loading.rs


### app/lost_points/mod.rs


### app/lost_points/words.rs


### app/me/everything.rs


### app/me/next.rs


### app/me/screen.rs


### app/me/skills.rs


### app/net.rs


### app/newer.rs


### app/open_files.rs


### app/open_job.rs


### app/opened.rs


### app/outbox/place.rs


### app/outbox/queue.rs


### app/outbox/section.rs


### app/proves.rs


### app/readings.rs


### app/report.rs


### app/rows.rs


### app/session.rs


### app/settings.rs


### app/sheets.rs


### app/shell.rs


### app/sitting/form.rs


### app/sitting/jobs.rs


### app/sitting/limits.rs


### app/sitting/lock.rs


### app/sitting/mark_sheet.rs


### app/sitting/observer.rs

putting-back-85509675 = Volver a montar

### app/sitting/overview.rs


### app/sitting/result.rs


### app/sitting/room.rs


### app/sitting/room_pause.rs


### app/sitting/start.rs


### app/store/error.rs


### app/store/mod.rs


### app/told_files.rs


### app/training_set.rs


### app/training_system/awaiting.rs


### app/training_system/trouble.rs


### app/view/around.rs


### app/view/beside.rs


### app/view/card.rs


### app/view/covers.rs


### app/view/debrief.rs


### app/view/decided.rs


### app/view/gauges.rs


### app/view/hints.rs


### app/view/likely.rs


### app/view/meter.rs


### app/view/names.rs


### app/view/notice.rs


### app/view/open_ends.rs


### app/view/orders.rs


### app/view/papers.rs


### app/view/past.rs


### app/view/safe.rs

run-capacitor-00729536 = condensador de marcha

### app/view/selection.rs


### app/view/sheet.rs


### app/view/shown.rs


### app/view/verbs.rs


### app/view/visit.rs


### app/view/way.rs


### app/waiting.rs


### app/worker/inside.rs


### app/worker/page.rs


### app/worker/work.rs


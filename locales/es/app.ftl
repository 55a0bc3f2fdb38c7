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

debrief-6692941a = Repaso
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

print-this-person-7f0c05b1 = Imprimir esta persona
override-the-decision-303539bc = Reemplazar la decisión
this-sheet-was-made-on-day-7d958af5 = esta hoja se hizo el { $day }.
an-unknown-day-0be93afa = un día desconocido
assessment-n-jobs-that-count-ac1d66eb = { $n ->
    [one] { $assessment }, { $n } trabajo que cuenta
   *[other] { $assessment }, { $n } trabajos que cuentan
    }
assessment-assessment-whose-file-cc5aa75c = evaluación { $assessment }, cuyo archivo no está aquí
practice-of-no-assessment-7e0c9b9e = Práctica, de ninguna evaluación
what-begun-on-day-1f6ea0fa = { $what }; inicio: { $day }
what-begun-on-day-with-the-word-8fc618e2 = { $what }; inicio: { $day }, con la palabra «{ $word }»
decision-marks-of-100-marks-on-68fe697f = { $decision }: { $marks } de 100 puntos de media, se piden { $cut }
holds-by-who-day-why-ee2134cc = { $holds } por { $who }, { $day }: { $why }
overridden-decision-efb4d661 = Reemplazada: { $decision }
skill-n-of-of-b3cfe3b2 = { $skill } { $n } de { $of }
count-the-jobs-behind-it-248a950e = { $count }: los trabajos que hay detrás
ability-sure-to-about-range-0-is-612a52e0 = { $ability }, segura a ±{ $range } aproximadamente; 0 es el medio de estas personas
n-counted-fixed-put-right-marks-41080f06 = contados { $n }, con la máquina arreglada { $fixed }, { $marks } de 100 puntos de media
taken-each-f5125359 = { $taken } por trabajo
ability-ff93d931 = Capacidad
n-rules-broken-critical-of-them-e11e0410 = reglas rotas: { $n }, de ellas críticas: { $critical }
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
what-holds-ea4ebb89 = Qué vale
who-rules-8b930858 = Quién resuelve
why-7b8038d9 = Por qué
it-holds-from-now-on-0223bdf3 = Vale desde ahora
not-after-all-b64ebe87 = Mejor no
it-holds-save-as-a-file-ab8f93f3 = Vale; guardar como archivo
throw-away-what-is-typed-about-7f0a96ce = Descartar lo escrito sobre { $what }
throw-away-c2487923 = descartar
rulings-typed-by-half-53e9a69f = Resoluciones escritas a medias
typed-by-half-and-not-in-force-159956c5 = Escritas a medias y sin vigor. Abrir el formulario otra vez para seguir: en la página de la persona, o junto al trabajo.
job-job-ca48e31b = Trabajo { $job }
nothing-was-ruled-a-job-is-fd17f4ab = No se ha resuelto nada. Un trabajo se anula desde la tabla de trabajos, una decisión se reemplaza en la página de la persona; cada resolución figura con nombre, día y motivo, y los registros quedan como están.
take-back-the-ruling-about-what-8dfbcbbc = Retirar la resolución sobre { $what }
# verb, of a ruling
take-back-cc425459 = retirar
rulings-a-table-d1340d34 = Resoluciones, una tabla
about-58e096de = Sobre
# what holds from now on
holds-85d31ea6 = Vale
# who ruled
by-bea06c0e = Por
day-4954229d = Día
# verb, of a ruling
take-back-a1f54b79 = Retirar
any-it-names-none-a505d0bc = cualquiera: no nombra ninguna
assessment-not-applied-no-result-fc58e591 = { $assessment }: no aplicada, ningún resultado de aquí es de ella

### app/cohort/saving.rs

there-is-nothing-to-save-yet-e66a9f34 = Todavía no hay nada que guardar.
nothing-was-erased-so-there-is-f7d9fa84 = No se borró nada, así que no hay nada que guardar.
not-saved-why-erase-and-save-96135f71 = No guardado: { $why }. Borrar y guardar menos cada vez.
file-is-saved-38cc5918 = { $file } está guardado.

### app/cohort/shown.rs

looking-at-links-and-seals-f152dd29 = Mirando eslabones y sellos: { $looked } de { $n } archivos
running-the-work-again-run-of-n-17ce71a7 = Ejecutando el trabajo otra vez: { $run } de { $n } archivos
stopped-not-every-record-was-run-352fb6df = Parado: no todos los registros se ejecutaron otra vez.
records-records-from-files-files-fa305ae0 = Comprobados { $records } registros de { $files } archivos.
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
reliability-words-a7d05d94 = Fiabilidad: { $words }.
reliability-value-words-bf3d2a91 = Fiabilidad { $value }: { $words }.
n-later-attempts-at-the-same-job-55f6a145 = { $n ->
    [one] { $n } intento posterior del mismo trabajo no cuenta.
   *[other] { $n } intentos posteriores del mismo trabajo no cuentan.
    }
no-record-counts-yet-b02942a3 = Todavía no cuenta ningún registro.
no-record-counts-none-was-06bc31e9 = No cuenta ningún registro: no se aceptó ninguno. Si un resultado sellado es de una evaluación que aquí no se conoce, soltar el archivo de la evaluación y su clave.
see-why-not-accepted-n-273f7246 = Ver por qué: no aceptados { $n }
void-48b5725f = anulado
# verb
erase-80906efa = Borrar
erase-n-past-their-time-b642cb12 = Borrar, { $n } pasado su plazo
people-csv-250c6812 = Personas, CSV
jobs-csv-4879e823 = Trabajos, CSV
safety-csv-6d00c94d = Seguridad, CSV
faults-confused-csv-3ea45ac9 = Averías confundidas, CSV
everything-json-872b56ae = Todo, JSON
rulings-to-go-on-with-later-18aabe6b = Resoluciones, para seguir más tarde
print-e8320d28 = Imprimir
the-file-of-rulings-takes-them-2ffb8818 = El archivo de resoluciones las lleva a otro navegador: soltarlo allí con los resultados.

### app/cohort/skill_page.rs

to-the-person-fab856c8 = A la persona
print-this-page-a91aed7f = Imprimir esta página
right-of-n-jobs-that-practise-it-79f7b2f8 = { $right } de { $n } trabajos que la practican la muestran. Un trabajo muestra sus habilidades cuando la máquina queda arreglada, con seguridad, con pruebas.
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


### app/debrief/expert.rs


### app/debrief/likely.rs


### app/debrief/marks.rs


### app/debrief/moments.rs


### app/debrief/screen.rs

safety-6a399d07 = seguridad

### app/debrief/step.rs


### app/debrief/track.rs


### app/desk/apprentices.rs

the-machine-of-this-job-cannot-c4d9ec88 = La máquina de este trabajo no se puede preparar.
watch-one-who-91c647c8 = Ver uno: { $who }
watch-one-57c9be6c = Ver uno
working-it-who-f36ef8a7 = Haciéndolo: { $who } …
how-apprentices-fare-8fa1847f = Cómo les va a los aprendices
how-simulated-apprentices-fare-n-16d7147a = Cómo les va a los aprendices simulados, { $n } de cada tipo: una primera impresión de lo difícil que es
who-2af42a8f = quién
right-78e32de5 = bien
watch-5fb7b228 = ver
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

since-a-few-days-274f8b17 = Desde hace unos días.
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
drafts-7ca3788d = Borradores
none-yet-a-draft-is-kept-in-this-ea7b2579 = Ninguno todavía. Un borrador se guarda en este navegador desde su primera letra.
machine-machine-level-level-c4207d7b = máquina { $machine }, nivel { $level }
forget-the-draft-title-27cea723 = Olvidar el borrador «{ $title }»
forget-6e3fab8c = Olvidar
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

working-out-where-points-were-d55e2e14 = Calculando dónde se perdieron puntos: trabajo { $n } de { $of } …
where-points-were-lost-6c725ec2 = Dónde se perdieron puntos
job-marks-of-100-0f1836e8 = { $job }: { $marks } de 100
diagnosis-economy-and-evidence-64b072c7 = Diagnóstico, economía y prueba cuentan según lo que valía cada decisión, cosa que este navegador no pudo calcular otra vez: sus motivos faltan aquí.
run-again-here-its-marks-do-not-f1071219 = Ejecutado otra vez aquí, su puntuación no sale como figura: no se puede dar ningún motivo.
nothing-was-lost-482adb9f = No se perdió nada.
job-where-points-were-lost-a-1baa7a98 = { $job }: dónde se perdieron puntos, una tabla
# of the marks
part-cdd57290 = Parte
# of the marks
points-68e36552 = Puntos
a-rule-whose-breach-can-kill-was-87559b9d = Se rompió una regla cuyo incumplimiento puede matar: el trabajo entero tiene como máximo { $most } de 100, { $points } menos de lo que suman sus partes.
small-amounts-together-4f1af151 = pequeñas cantidades, juntas

### app/lost_points/words.rs

nothing-was-tested-or-repaired-66d000a1 = no se probó ni se reparó nada, así que no se arriesgó nada
no-cause-was-stated-cb383d5b = no se declaró ninguna causa
the-cause-stated-first-is-not-77569690 = la causa declarada primero no es lo que está mal, o no solo
the-cause-stated-last-is-not-6c649e36 = la causa declarada al final no es lo que está mal, o no solo
the-cause-stated-is-not-what-is-cd9613f6 = la causa declarada no es lo que está mal, o no solo
the-machine-still-fails-at-hand-0eca07a1 = la máquina sigue fallando en la entrega
a-right-answer-counts-less-where-0e3ce89d = una respuesta correcta cuenta menos donde la prueba de ella fue escasa
another-decision-would-have-7e568bef = otra decisión habría ahorrado { $cost }
a-hint-was-asked-for-90b04a37 = se pidió una pista
something-was-damaged-price-to-7715e82b = se dañó algo: { $price } por pagar
somebody-has-to-come-again-price-0854b395 = alguien tiene que volver: { $price }
the-part-fitted-was-sound-price-b821ff00 = la pieza sustituida estaba sana: { $price }
time-and-what-else-it-took-the-69cb963c = el tiempo y lo demás que llevó: el trabajo costó { $cost }, su objetivo es { $target }
this-job-has-no-target-to-065e7c3c = este trabajo no tiene objetivo con que comparar
left-out-what-a9d3c338 = se omitió: { $what }
nothing-was-begun-f4573f0a = no se empezó nada
nothing-in-the-notebook-spoke-c854c6ad = nada en el cuaderno hablaba a favor de esta pieza
the-part-fitted-was-sound-0fdfefc9 = la pieza sustituida estaba sana
nothing-is-wrong-with-the-8598c707 = la máquina no tiene nada mal, y muy pocas lecturas lo muestran
title-a-breach-that-can-kill-at-97fb9aad = { $title }: un incumplimiento que puede matar, { $most } como máximo para el trabajo entero
safety-rule-broken-title-fd125676 = regla de seguridad rota: { $title }
the-evidence-was-short-of-what-6150cac8 = la prueba no llegaba a lo que necesita esta decisión
the-evidence-gave-it-percent-to-40a2f118 = la prueba le daba un { $percent } % de arreglarlo, demasiado poco
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
yes-erase-everything-84564f7b = Sí, borrar todo
erase-everything-fe294832 = Borrar todo
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


### app/shell.rs

to-the-content-394b43aa = Al contenido
handbook-b94a65c5 = Manual
there-is-nothing-at-this-address-b42878d1 = No hay nada en esta dirección
tubwright-37232af5 = Tubwright
screens-984019e6 = Pantallas

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


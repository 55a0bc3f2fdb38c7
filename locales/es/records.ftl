### records/as_written.rs

a-record-has-at-most-n-1cacb055 = un registro tiene { $n } como máximo
n-bytes-8c9bc920 = { $n } bytes
no-json-f6fd6898 = no es JSON
a-record-is-json-error-c828590f = un registro es JSON: { $error }
the-format-of-a-record-begins-122c1417 = el formato de un registro empieza por { $format }
a-record-says-everything-in-it-c3c5f228 = un registro lo dice todo ahí dentro
this-is-the-record-as-version-2de6580c = Este es el registro tal como lo escribió la versión { $version } del programa. Aquí no se calculó de nuevo: nada en esta página muestra que sus lecturas y su puntuación salgan.
only-version-version-can-run-it-152a5c96 = Solo la versión { $version } puede ejecutarlo otra vez bit por bit.

### records/chain.rs

record-n-of-the-row-its-link-712aca5b = registro { $n } de la fila: su eslabón no se sigue de él, se editó
record-n-of-the-row-follows-on-4671ba18 = el registro { $n } de la fila sigue a uno que no está aquí: falta uno
record-n-of-the-row-follows-on-929df477 = el registro { $n } de la fila sigue a uno al que también sigue otro: se añadió uno

### records/check.rs

the-link-is-link-body-and-link-929e8c67 = el eslabón es { $link }, el contenido y el eslabón anterior dan { $own }: el registro se editó
the-name-is-not-the-one-of-the-e6755393 = el nombre no es el de aquel día: se cambió
no-seal-a-record-of-an-505ab001 = sin sello: un registro de una evaluación lo tiene
the-seal-is-not-candidate-s-for-a3ab23ef = el sello no es el de { $candidate } para { $assessment }: editado, o registro de otro candidato
engine-engine-wrote-it-verify-it-a43070dc = lo escribió el motor de cálculo { $engine }: verificarlo con ese, este es { $own }
job-job-is-not-in-the-library-f62bfdc8 = el trabajo { $job } no está en la biblioteca: dar su archivo
job-job-is-another-now-own-49aa7f48 = el trabajo { $job } es ahora otro: { $own } en vez de { $said }
act-act-tick-tick-is-later-than-b42ffa19 = acción { $act }: el instante { $tick } es más de un día posterior al timbre
act-act-words-hands-could-not-do-42a61180 = acción { $act }, { $words }: en ese momento las manos no podían hacerlo
act-act-words-at-tick-said-could-2816f4d0 = acción { $act }, { $words }: en el instante { $said }, no podía empezar hasta { $own }
line-line-said-replay-gives-own-5a971099 = línea { $line }: { $said }, al reproducirla da { $own }
result-field-said-replay-gives-e7fc42ec = resultado, { $field }: { $said }, al reproducirlo da { $own }
the-machine-s-last-state-is-2477a49b = el último estado de la máquina es otro
the-job-cannot-be-run-why-8b5e063c = el trabajo no se puede ejecutar: { $why }

### records/cohort/mod.rs

hard-for-this-cohort-cc81ca0a = difícil para este grupo
easy-for-this-cohort-299d313d = fácil para este grupo
neither-easy-nor-hard-or-not-8a879929 = ni fácil ni difícil, o todavía no es seguro
one-person-alone-reliability-82943e64 = una sola persona: la fiabilidad no se puede saber
people-can-be-told-apart-one-by-44ca4281 = se puede distinguir a las personas una por una
enough-for-a-decision-about-one-ab1934f2 = suficiente para una decisión sobre una persona, con un margen en el que se piden más trabajos
enough-to-compare-groups-not-for-b555ce08 = suficiente para comparar grupos, no para una decisión sobre una persona
too-low-for-any-decision-about-1bf7239a = demasiado baja para cualquier decisión sobre una persona
judged-no-number-of-jobs-like-77ad4cfc = { $judged }; ningún número de trabajos como estos ayudaría
judged-about-n-jobs-a-person-4f4e2bc8 = { $judged }; con unos { $n } trabajos por persona se llegaría a { $reached }

### records/course.rs

there-is-no-file-among-the-files-befd43f2 = no hay ningún { $file } entre los archivos de la compilación
base-cannot-begin-names-give-an-88b4f0bb = los nombres no pueden empezar por «{ $base }»: dar una dirección como https://school.example/, sin ? ni #

### records/practice.rs

work-safely-1551597e = trabajar con seguridad

### records/record.rs

byte-n-e678c8db = byte { $n }
not-as-a-record-is-written-it-60dbf605 = no es como se escribe un registro: lo editó o lo guardó de nuevo otro programa

### records/rulings.rs

of-which-assessment-choose-one-e977c3c3 = ¿De qué evaluación? Elegir una.
what-holds-choose-one-a482872b = ¿Qué rige? Elegir una opción.
who-rules-give-a-name-fe31c432 = ¿Quién resuelve? Dar un nombre.
why-a-ruling-stands-with-its-1cfa6ca1 = ¿Por qué? Una resolución figura con su motivo.

### records/seal.rs

must-be-64-hexadecimal-digits-0-940122fe = debe tener 64 cifras hexadecimales 0-9 a-f
letter-is-in-no-start-code-use-2e1d638d = '{ $letter }' no está en ningún código de inicio: usar cifras y letras
n-letters-a-start-code-has-7440fd41 = { $n } letras: un código de inicio tiene { $wanted }

### records/sift.rs

erased-its-place-in-the-row-is-d289ea4f = borrado; se conserva su lugar en la fila
erased-but-its-link-does-not-9664e4c1 = borrado, pero su eslabón no se sigue de lo que queda: se editó
file-line-n-51269141 = { $file }, línea { $n }
job-job-is-not-among-those-here-43e7eaad = el trabajo { $job } no está entre los de aquí
assessment-assessment-is-not-a35f17f6 = la evaluación { $assessment } no está aquí: abrir también su archivo

### records/sitting.rs

it-is-of-another-assessment-than-35a7df27 = es de otra evaluación que { $assessment }
job-n-of-this-candidate-is-own-b2985c48 = el trabajo { $n } de este candidato es { $own }, no { $said }
the-variant-that-was-drawn-is-no-1d5b620f = la variante sorteada no es un trabajo: { $why }
# no job
none-903f9f01 = ninguno

### records/zip.rs

a-zip-file-takes-65-535-files-2491f08e = un archivo zip admite como máximo 65 535 archivos y 4 GB

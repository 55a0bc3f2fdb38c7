### scenario/check_job.rs

machine-e103566e = máquina
question-06d5a845 = pregunta
one-answer-or-two-where-asking-5e8c57a6 = una respuesta, o dos donde preguntar otra vez ayuda
the-customer-needs-an-answer-to-f2e581d1 = el cliente necesita una respuesta a { $question }
fault-of-this-machine-c6579391 = avería de esta máquina
part-of-this-machine-c6d20ece = pieza de esta máquina
the-van-has-n-slots-9fe2a5f0 = la furgoneta tiene { $n } huecos

### scenario/check_set.rs

name-1-to-most-jobs-b7335535 = nombrar de 1 a { $most } trabajos
name-each-job-once-a2b3e275 = nombrar cada trabajo una vez
name-a-job-that-ships-or-put-its-83d67eeb = nombrar un trabajo incluido, o poner su archivo en `files`

### scenario/check_visit.rs

question-on-the-phone-b40c9eed = pregunta al teléfono
a-mistaken-customer-needs-a-de8a1b0f = un cliente que se equivoca necesita una pregunta con dos respuestas, primero la errónea
stands-there-already-8be684ca = ya está ahí
a-house-without-the-device-holds-16c7d3c5 = una casa sin el dispositivo no tiene ningún número en `site.rcd_ma`
hot-water-needs-water-say-how-2bb9dbf3 = el agua caliente necesita agua: decir cuánta en `site.water_l`
part-or-variant-in-the-store-39324589 = pieza o variante en el almacén

### scenario/pack.rs

name-a-machine-that-ships-ef6cfaae = nombrar una máquina incluida

### scenario/problem.rs

must-not-be-blank-bc7db88c = no debe estar en blanco
there-is-no-such-kind-85f89bb5 = no existe como { $kind }
there-is-no-such-kind-nearest-is-dc5cf1d7 = no existe como { $kind }; lo más parecido es { $known }

### scenario/read.rs

at-most-most-are-read-93d168da = se leen { $most } como máximo
line-n-54d86573 = línea { $n }
not-json-error-2091875a = no es JSON: { $error }
a-list-of-n-434eaf11 = una lista de { $n }
an-object-of-n-fields-22543677 = un objeto de { $n } campos

### scenario/share.rs

start-and-so-on-n-letters-7c1d7aa8 = { $start } y así sucesivamente, { $n } letras
the-letters-were-cut-or-changed-a8d2823a = las letras se cortaron o cambiaron por el camino: copiar otra vez la dirección entera o el archivo
this-is-longer-than-any-job-ask-a1c9d230 = esto es más largo que cualquier trabajo: pedirlo como archivo
this-version-reads-letters-that-68035ce9 = esta versión lee letras que empiezan por 1: pedir el trabajo como archivo, o usar una versión más nueva

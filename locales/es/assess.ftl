### assess/assessment_file.rs

diagnosis-76b861fe = diagnóstico
economy-b945e5f7 = economía
procedure-a6e741ce = procedimiento
evidence-c21f2024 = evidencia
this-version-reads-format-8dd9c5e1 = esta versión lee { $format }
eight-letters-as-the-page-makes-a3dfba87 = ocho letras tal como las hace la página a partir de la clave de la evaluación, por ejemplo "K7QF-2M9D"; dejarlo fuera donde la sala no tiene pausas
ask-for-1-to-most-jobs-in-all-9829d344 = pedir de 1 a { $most } trabajos en total
name-a-job-of-the-library-517e39ef = nombrar un trabajo de la biblioteca
the-library-has-n-such-jobs-ask-6cd2031c = la biblioteca tiene { $n } de esos trabajos: pedir menos o ampliar lo que se pide
name-a-fault-of-the-catalogue-d8bfa9e0 = nombrar una avería del catálogo
equal-faults-lie-within-most-9df49a3f = las averías iguales están a { $most } logits o menos de la primera, que está en { $first }
name-one-of-parts-79f24ad7 = nombrar una de { $parts }
ask-five-judges-or-more-900d106c = preguntar a cinco jueces o más
one-number-for-each-of-the-n-c0c587da = un número para cada uno de los { $n } trabajos

### assess/calendar.rs

refresher-skills-813e66a3 = Refresco: { $skills }
refresher-due-f609c0a9 = Toca el refresco

### assess/decide.rs

a-critical-safety-rule-was-4cb8d976 = trabajos en los que se rompió una regla crítica de seguridad: { $n }
share-of-the-jobs-were-put-right-8839ddfb = máquinas arregladas en el { $share } % de los trabajos, se pide el { $least } %
part-share-of-its-points-least-4038e672 = { $part }: { $share } % de sus puntos, se pide el { $least } %
marks-marks-are-within-border-of-9a60a0f8 = { $marks } puntos están a { $border } o menos de { $cut }: deciden más trabajos
marks-marks-cut-are-asked-3feebe2b = { $marks } puntos, se piden { $cut }

### assess/retention.rs

one-month-8c1d208d = un mes
n-months-53904ff6 = { $n } meses

### bench/acts/access.rs


### bench/acts/agree.rs


### bench/acts/finishing.rs


### bench/acts/gauge.rs


### bench/acts/handle.rs


### bench/acts/isolate.rs


### bench/acts/leave.rs


### bench/acts/measure.rs


### bench/acts/mod.rs


### bench/acts/office.rs


### bench/acts/order.rs


### bench/acts/parts.rs


### bench/acts/report.rs


### bench/acts/touch.rs


### bench/after_repair.rs

nothing-damaged-or-missing-807290be = nada dañado ni ausente
t-1-m-at-least-abadc69a = 1 MΩ como mínimo
t-3-5-ma-at-most-bcf24447 = 3.5 mA como máximo
t-0-5-ma-at-most-84defd64 = 0.5 mA como máximo
each-of-them-seen-5708d2b8 = visto cada uno de ellos
lid-304cbc86 = tapa
dry-dc25c75e = seco

### bench/bill.rs


### bench/gauge.rs


### bench/gauge_scales.rs

spirit-level-5c3c6e8e = nivel de burbuja
keep-fingers-out-of-the-pulleys-f477c42a = no meter los dedos en las poleas

### bench/hint.rs


### bench/instrument.rs


### bench/kept.rs

service-test-2912eca8 = prueba de servicio

### bench/observe/feel.rs


### bench/observe/hands.rs


### bench/observe/listen.rs


### bench/observe/look.rs

the-tap-is-shut-e3ed3ad7 = el grifo está cerrado
the-tap-is-hardly-open-259daf45 = el grifo está apenas abierto
the-supply-hose-is-kinked-behind-f07fe548 = la manguera de entrada está doblada detrás de la máquina

### bench/observe/look_below.rs

the-air-hose-has-a-kink-e6ff9d75 = la manguera de aire tiene un doblez
the-transport-pieces-are-still-b126116f = las piezas de transporte siguen puestas

### bench/observe/mod.rs


### bench/observe/surroundings.rs


### bench/observe/wires.rs


### bench/protection.rs


### bench/safety/closing.rs


### bench/safety/handling.rs


### bench/safety/isolation.rs


### bench/safety/measuring.rs


### bench/safety/motion.rs


### bench/safety/power.rs


### bench/safety/water.rs


### bench/scenario.rs


### bench/shock.rs


### bench/signature/mod.rs


### bench/signature/values.rs


### bench/signature/wash.rs

basket-stops-after-the-lid-is-099252e7 = el cesto se para tras abrir la tapa

### bench/visit.rs


### bench/words.rs

refit-7c3aa3df = volver a montar

### plant/actuator.rs

the-drain-motor-s-pulling-speed-2189577b = velocidad de tiro del motor de desagüe
the-drain-motor-s-return-speed-51ea770a = velocidad de retorno del motor de desagüe
the-drain-motor-s-stroke-9abb3f47 = carrera del motor de desagüe
the-clutch-lever-s-play-de88a86b = juego de la palanca del embrague
the-clutch-lever-in-its-link-0-596ef1f7 = palanca del embrague en su enganche (0 o 1)
the-clutch-lever-s-travel-at-da7176c0 = recorrido en reposo de la palanca del embrague
the-travel-that-starts-to-e3d7d7de = recorrido que empieza a soltar el freno
the-travel-that-frees-the-brake-3dc8d5ee = recorrido que libera el freno
the-brake-s-stopping-torque-5ff066f3 = par de frenado del freno
the-brake-s-holding-torque-bc4d11f8 = par de retención del freno
the-travel-that-closes-the-cf388696 = recorrido que cierra el embrague
the-clutch-spring-s-torque-ee6f63da = par del resorte del embrague
the-one-way-bearing-s-hold-8961acb7 = retención del rodamiento unidireccional

### plant/air_trap.rs

the-height-of-the-air-chamber-s-807f391c = altura de la boca de la cámara de aire
the-air-chamber-s-area-9938c05d = sección de la cámara de aire
the-air-chamber-s-height-74d1fb8f = altura de la cámara de aire
the-air-hose-s-area-d9fa5b0c = sección de la manguera de aire
the-air-hose-s-length-b49b8b4d = longitud de la manguera de aire
the-sensor-s-air-volume-ece835e2 = volumen de aire del sensor
the-air-hose-s-leak-6038fa56 = fuga de la manguera de aire
the-air-hose-s-lag-e15c12a3 = retardo de la manguera de aire
the-level-sensor-s-inductance-249d2a22 = inductancia del sensor de nivel
the-level-sensor-s-capacitors-bdf2e9ff = condensadores del sensor de nivel
the-level-sensor-s-water-column-38bb89f1 = columna de agua del sensor de nivel

### plant/drain.rs

the-drain-hose-s-bore-3951338d = diámetro interior de la manguera de desagüe
the-drain-path-s-loss-7147bd56 = pérdida del camino de desagüe
the-loss-in-the-standpipe-d60ef325 = pérdida en el tubo vertical de desagüe
the-height-of-the-drain-hose-s-5bc32165 = altura del extremo de la manguera de desagüe
the-open-share-of-the-drain-path-eaeb2848 = parte abierta del camino de desagüe
the-leak-past-the-closed-drain-4868e0d2 = fuga por la válvula de desagüe cerrada
the-drain-valve-s-smallest-361ff82f = apertura mínima de la válvula de desagüe
the-stroke-that-starts-to-open-3b0468a2 = carrera que empieza a abrir la válvula de desagüe
the-stroke-that-opens-the-drain-bcfef13b = carrera que abre la válvula de desagüe
the-drip-of-the-drain-joint-60161c01 = goteo de la unión de desagüe
the-drain-pump-fitted-0-or-1-3866dccd = bomba de desagüe montada (0 o 1)
the-pump-s-shut-off-head-5f1d7330 = altura de la bomba a caudal cero
the-pump-s-inner-loss-ac64b75f = pérdida interna de la bomba
the-discharge-line-s-loss-1d033ab7 = pérdida de la línea de descarga
the-discharge-line-s-bore-de665352 = diámetro interior de la línea de descarga
the-height-that-breaks-a-siphon-afd78740 = altura que corta un sifón

### plant/drive.rs

the-rotor-s-inertia-24c5e530 = inercia del rotor
the-motor-s-bearing-friction-2fe15fe9 = fricción de los rodamientos del motor
the-motor-fan-s-drag-a7a3eba0 = resistencia del ventilador del motor
the-friction-from-belt-pull-dabf4f9e = fricción por el tiro de la correa
the-motor-pulley-s-diameter-6d5552af = diámetro de la polea del motor
the-mechanism-pulley-s-diameter-8463196b = diámetro de la polea del mecanismo
the-pulleys-distance-111a421e = distancia entre poleas
the-belt-s-friction-b5615e6b = fricción de la correa
the-groove-s-angle-afbba2ff = ángulo de la ranura
the-belt-s-tension-86ba71fd = tensión de la correa
the-belt-s-mass-59ee0d81 = masa de la correa
the-belt-s-efficiency-91bc54e8 = rendimiento de la correa
the-grip-of-the-motor-pulley-s-6ec4e4ba = agarre del tornillo de la polea del motor
the-large-pulley-s-inertia-43cc660c = inercia de la polea grande
the-belt-s-cracks-7e7de386 = grietas de la correa
the-belt-guard-in-place-0-or-1-56b875c1 = protector de la correa en su sitio (0 o 1)
the-water-on-the-belt-c994f208 = agua en la correa
the-gear-s-ratio-e060d22e = relación del engranaje
the-gear-s-efficiency-58b8ab6a = rendimiento del engranaje
the-gear-ring-s-teeth-3b8d1c2f = dientes de la corona
the-gear-s-wear-d91da98c = desgaste del engranaje
the-play-of-the-mechanism-s-0e911ce7 = juego de los pernos del mecanismo
the-pulsator-s-inertia-40783046 = inercia del impulsor
the-pulsator-spline-s-torque-ed6a3ecd = par del estriado del impulsor
the-pulsator-s-water-drag-48f25a43 = resistencia del agua al impulsor
the-level-that-covers-the-2a26b780 = nivel que cubre el impulsor
the-scraping-under-the-pulsator-cb9ef8dc = raspado debajo del impulsor
the-pulsator-s-play-f0df96ca = juego del impulsor
the-basket-s-radius-025ae11e = radio del cesto
the-basket-s-inertia-925d3386 = inercia del cesto
the-basket-bearing-s-friction-55c21d3c = fricción del rodamiento del cesto
the-basket-s-windage-b5576199 = resistencia del aire al cesto
the-basket-s-water-drag-8e912e03 = resistencia del agua al cesto
the-basket-s-foam-drag-874b233d = resistencia de la espuma al cesto
the-swirl-s-drag-f4678bd5 = resistencia del remolino
the-swirling-share-of-the-bath-abb7ae69 = parte del baño que se arremolina
the-scraping-at-the-basket-d4991b27 = raspado en el cesto
the-unbalance-of-loose-basket-e27fe8fe = desequilibrio por pernos del cesto flojos

### plant/drying.rs

the-load-s-moisture-after-long-0d0deb5a = humedad de la carga después de un centrifugado largo
the-reference-acceleration-e68dc7c7 = aceleración de referencia
the-extraction-s-exponent-ad430a26 = exponente de la extracción
the-extraction-s-time-49c460c4 = tiempo de la extracción

### plant/foam.rs

the-foam-after-detergent-ebbc671f = espuma tras el detergente
the-foam-s-rise-time-2607e43d = tiempo de subida de la espuma
the-foam-s-fall-time-e1d1d3fd = tiempo de bajada de la espuma

### plant/heat.rs

a-winding-s-heat-capacity-bbe82eaa = capacidad térmica de un bobinado
the-path-from-winding-to-core-6b6e761f = camino del bobinado al núcleo
the-core-s-heat-capacity-51f58db3 = capacidad térmica del núcleo
the-standing-motor-s-cooling-f479643c = refrigeración del motor parado
the-fan-s-cooling-e05546b0 = refrigeración del ventilador
the-protector-s-lag-11e4cd24 = retardo del protector térmico
the-protector-s-trip-temperature-21f44875 = temperatura de disparo del protector térmico
the-protector-s-reset-4c3c8409 = temperatura de rearme del protector térmico
copper-s-temperature-coefficient-c25d0711 = coeficiente de temperatura del cobre

### plant/inlet.rs

the-supply-pressure-8736a6b2 = presión de entrada de agua
the-inlet-valve-s-passage-98b58b08 = paso de la válvula de entrada
the-strainer-s-passage-d50bd1fc = paso de la malla
the-supply-hose-s-passage-ef3ed4d2 = paso de la manguera de entrada
the-blocked-share-of-the-inlet-a7e22e0b = parte obstruida del filtro de entrada
the-closed-share-of-the-tap-b18074c6 = parte cerrada del grifo
the-squeezed-share-of-the-supply-d8c5f00b = parte aplastada de la manguera de entrada
the-flow-regulator-s-set-point-ed94fff3 = consigna del regulador de caudal
the-regulator-s-sharpness-e488db9e = brusquedad del regulador
the-pilot-s-lowest-pressure-0f26785d = presión mínima del piloto
the-valve-s-opening-time-8fb64b59 = tiempo de apertura de la válvula
the-valve-s-closing-time-f7ae9434 = tiempo de cierre de la válvula
the-leak-past-the-closed-inlet-4ce67804 = fuga por la válvula de entrada cerrada
the-drip-of-the-supply-joint-b8769512 = goteo de la unión de entrada
the-supply-water-s-temperature-64ad7b3c = temperatura del agua de entrada
the-length-of-the-supply-pipe-ad8d600f = longitud de la tubería de entrada
the-bore-of-the-supply-pipe-acae3d05 = diámetro interior de la tubería de entrada
the-wave-speed-in-the-supply-410547df = velocidad de onda en la tubería de entrada

### plant/load.rs

the-dry-load-c3124ecf = carga seca
the-load-s-saturated-uptake-2c6bda05 = absorción de la carga saturada
the-load-s-uptake-after-dripping-65585319 = absorción de la carga después de escurrir
the-load-s-wetting-time-a97e58f3 = tiempo de mojado de la carga
the-fibre-s-density-1b0007da = densidad de la fibra
the-water-that-covers-the-load-029b9715 = agua que cubre la carga
the-load-s-drag-on-the-pulsator-b511fac8 = resistencia de la carga al impulsor
the-reference-liquor-ratio-f4f7af80 = relación de baño de referencia
the-textile-s-slip-speed-914df588 = velocidad de deslizamiento del textil
the-textile-s-share-on-the-2a7868d8 = parte del textil en la pared del cesto
the-load-s-radius-of-gyration-c0b65018 = radio de giro de la carga
the-unbalanced-mass-76db678d = masa desequilibrada
the-radius-of-the-unbalanced-eac0fb95 = radio de la masa desequilibrada
the-height-of-the-unbalanced-c01365ae = altura de la masa desequilibrada
the-unbalance-left-after-9d74eb81 = desequilibrio que queda después de repartir
the-washing-motion-that-tangles-984ba1a4 = movimiento de lavado que vuelve a enredar una carga repartida

### plant/pressure_switch.rs

the-low-level-s-set-pressure-b560c2e5 = presión de conmutación del nivel bajo
the-medium-level-s-set-pressure-b81cb182 = presión de conmutación del nivel medio
the-high-level-s-set-pressure-01d862d3 = presión de conmutación del nivel alto
the-level-switch-s-reset-df9bde4a = presión de retorno del presostato
the-level-switch-stuck-on-full-0-7d498ee1 = presostato trabado en llena (0 o 1)
the-level-switch-stuck-on-empty-3f432d37 = presostato trabado en vacía (0 o 1)

### plant/site.rs

the-room-s-temperature-fb4fe66f = temperatura del cuarto
the-air-pressure-a922953b = presión del aire
the-slope-of-the-floor-0d98280d = inclinación del suelo
the-grip-of-the-feet-ec162772 = agarre de las patas
the-firmness-of-the-feet-6f9c4b7d = firmeza de las patas

### plant/suspension.rs

the-suspended-mass-96c3e6d7 = masa suspendida
the-rods-length-04b1dc99 = longitud de las varillas
the-rods-springs-0e75f841 = resortes de las varillas
the-radius-of-the-rods-circle-7f6acd2d = radio del círculo de las varillas
the-tub-s-transverse-inertia-577b8d6a = inercia transversal de la cuba
the-dampers-strength-b98a83c4 = fuerza de los amortiguadores
the-rod-ends-friction-90c50a24 = fricción de los extremos de las varillas
the-dampers-friction-46367847 = fricción de los amortiguadores
the-rim-s-height-62a94d39 = altura del borde
the-lever-s-gap-e1ed4ce2 = separación de la palanca
the-cabinet-s-clearance-425dec24 = holgura del gabinete
the-tub-s-lean-4cf86877 = ladeo de la cuba
the-transport-pieces-left-in-0-21cfcd7d = piezas de transporte dejadas puestas (0 a 1)
a-loose-piece-or-panel-0-to-1-4d4df650 = pieza o panel flojo (0 a 1)
the-cabinet-s-mass-81332782 = masa del gabinete
the-balance-ring-s-radius-f73a2d42 = radio del anillo de equilibrado
the-balance-ring-s-height-c712c33f = altura del anillo de equilibrado
the-balance-ring-s-liquid-e34308e4 = líquido del anillo de equilibrado
the-balance-ring-s-eccentricity-fe30f100 = excentricidad del anillo de equilibrado
the-balance-ring-s-fill-a0562345 = llenado del anillo de equilibrado
the-unbalance-of-a-ring-emptied-35af53e5 = desequilibrio de un anillo vaciado de un lado

### plant/tub.rs

the-tub-s-lower-area-15620921 = sección inferior de la cuba
the-tub-s-upper-area-9032a0aa = sección superior de la cuba
the-height-of-the-tub-s-step-c249a960 = altura del escalón de la cuba
the-overflow-edge-f655ea4f = borde de rebose
the-overflow-s-width-f880dae8 = ancho del rebose
the-overflow-s-limit-021716bf = límite del rebose
the-overflow-s-share-on-the-2164a771 = parte del rebose que cae al suelo
the-water-s-density-24e9d649 = densidad del agua
the-leak-of-the-shaft-seal-c538f5b0 = fuga del retén del eje
the-tub-s-heat-loss-293b8044 = pérdida de calor de la cuba

### control/alarms.rs

fills-too-slowly-e573b5f3 = Llena demasiado despacio
drains-too-slowly-b2077386 = Desagua demasiado despacio
basket-keeps-swinging-5c61cf59 = El cesto no deja de bambolearse
lid-is-open-2b7f5c4a = La tapa está abierta
water-level-reading-not-a6b1a214 = Lectura del nivel de agua no plausible
overflow-danger-e2727eca = Peligro de desbordamiento
water-keeps-leaving-27291b4a = El agua se sigue yendo
supply-voltage-out-of-range-d6631034 = Voltaje de la red fuera de rango

### control/display.rs

starts-later-22f573f6 = Empieza más tarde
filling-dd7b3060 = Llenado
washing-1f3a6242 = Lavado
soaking-d4a09fed = En remojo
draining-b3a8f767 = Desaguando
spinning-8bf9cbcb = Centrifugando
stopping-3c1ab6c9 = Parando
spreading-the-load-621347af = Repartiendo la carga
close-the-lid-037a3c41 = Cerrar la tapa
paused-de281feb = En pausa
waiting-for-the-supply-0638fbb7 = Esperando la red
power-was-off-press-start-to-go-c67aa023 = Se cortó la corriente: pulsar inicio para seguir
finished-a7b2cec3 = Terminado
service-test-15b58d48 = Prueba de servicio
drain-the-tub-first-b426fea3 = Desaguar antes la cuba

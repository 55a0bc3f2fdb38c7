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

filling-dd7b3060 = Llenado
washing-1f3a6242 = Lavado

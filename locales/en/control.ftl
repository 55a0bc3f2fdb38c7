### control/alarms.rs

fills-too-slowly-e573b5f3 = Fills too slowly
drains-too-slowly-b2077386 = Drains too slowly
basket-keeps-swinging-5c61cf59 = Basket keeps swinging
lid-is-open-2b7f5c4a = Lid is open
water-level-reading-not-a6b1a214 = Water level reading not plausible
overflow-danger-e2727eca = Overflow danger
water-keeps-leaving-27291b4a = Water keeps leaving
supply-voltage-out-of-range-d6631034 = Supply voltage out of range

### control/display.rs

starts-later-22f573f6 = Starts later
filling-dd7b3060 = Filling
washing-1f3a6242 = Washing
soaking-d4a09fed = Soaking
draining-b3a8f767 = Draining
spinning-8bf9cbcb = Spinning
stopping-3c1ab6c9 = Stopping
spreading-the-load-621347af = Spreading the load
close-the-lid-037a3c41 = Close the lid
paused-de281feb = Paused
waiting-for-the-supply-0638fbb7 = Waiting for the supply
power-was-off-press-start-to-go-c67aa023 = Power was off: press start to go on
finished-a7b2cec3 = Finished
service-test-15b58d48 = Service test
drain-the-tub-first-b426fea3 = Drain the tub first

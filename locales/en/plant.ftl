### plant/actuator.rs

the-drain-motor-s-pulling-speed-2189577b = the drain motor's pulling speed
the-drain-motor-s-return-speed-51ea770a = the drain motor's return speed
the-drain-motor-s-stroke-9abb3f47 = the drain motor's stroke
the-clutch-lever-s-play-de88a86b = the clutch lever's play
the-clutch-lever-in-its-link-0-596ef1f7 = the clutch lever in its link (0 or 1)
the-clutch-lever-s-travel-at-da7176c0 = the clutch lever's travel at rest
the-travel-that-starts-to-e3d7d7de = the travel that starts to release the brake
the-travel-that-frees-the-brake-3dc8d5ee = the travel that frees the brake
the-brake-s-stopping-torque-5ff066f3 = the brake's stopping torque
the-brake-s-holding-torque-bc4d11f8 = the brake's holding torque
the-travel-that-closes-the-cf388696 = the travel that closes the clutch
the-clutch-spring-s-torque-ee6f63da = the clutch spring's torque
the-one-way-bearing-s-hold-8961acb7 = the one-way bearing's hold

### plant/air_trap.rs

the-height-of-the-air-chamber-s-807f391c = the height of the air chamber's mouth
the-air-chamber-s-area-9938c05d = the air chamber's area
the-air-chamber-s-height-74d1fb8f = the air chamber's height
the-air-hose-s-area-d9fa5b0c = the air hose's area
the-air-hose-s-length-b49b8b4d = the air hose's length
the-sensor-s-air-volume-ece835e2 = the sensor's air volume
the-air-hose-s-leak-6038fa56 = the air hose's leak
the-air-hose-s-lag-e15c12a3 = the air hose's lag
the-level-sensor-s-inductance-249d2a22 = the level sensor's inductance
the-level-sensor-s-capacitors-bdf2e9ff = the level sensor's capacitors
the-level-sensor-s-water-column-38bb89f1 = the level sensor's water column

### plant/drain.rs

the-drain-hose-s-bore-3951338d = the drain hose's bore
the-drain-path-s-loss-7147bd56 = the drain path's loss
the-loss-in-the-standpipe-d60ef325 = the loss in the standpipe
the-height-of-the-drain-hose-s-5bc32165 = the height of the drain hose's end
the-open-share-of-the-drain-path-eaeb2848 = the open share of the drain path
the-leak-past-the-closed-drain-4868e0d2 = the leak past the closed drain valve
the-drain-valve-s-smallest-361ff82f = the drain valve's smallest opening
the-stroke-that-starts-to-open-3b0468a2 = the stroke that starts to open the drain valve
the-stroke-that-opens-the-drain-bcfef13b = the stroke that opens the drain valve
the-drip-of-the-drain-joint-60161c01 = the drip of the drain joint
the-drain-pump-fitted-0-or-1-3866dccd = the drain pump fitted (0 or 1)
the-pump-s-shut-off-head-5f1d7330 = the pump's shut-off head
the-pump-s-inner-loss-ac64b75f = the pump's inner loss
the-discharge-line-s-loss-1d033ab7 = the discharge line's loss
the-discharge-line-s-bore-de665352 = the discharge line's bore
the-height-that-breaks-a-siphon-afd78740 = the height that breaks a siphon

### plant/drive.rs

the-rotor-s-inertia-24c5e530 = the rotor's inertia
the-motor-s-bearing-friction-2fe15fe9 = the motor's bearing friction
the-motor-fan-s-drag-a7a3eba0 = the motor fan's drag
the-friction-from-belt-pull-dabf4f9e = the friction from belt pull
the-motor-pulley-s-diameter-6d5552af = the motor pulley's diameter
the-mechanism-pulley-s-diameter-8463196b = the mechanism pulley's diameter
the-pulleys-distance-111a421e = the pulleys' distance
the-belt-s-friction-b5615e6b = the belt's friction
the-groove-s-angle-afbba2ff = the groove's angle
the-belt-s-tension-86ba71fd = the belt's tension
the-belt-s-mass-59ee0d81 = the belt's mass
the-belt-s-efficiency-91bc54e8 = the belt's efficiency
the-grip-of-the-motor-pulley-s-6ec4e4ba = the grip of the motor pulley's screw
the-large-pulley-s-inertia-43cc660c = the large pulley's inertia
the-belt-s-cracks-7e7de386 = the belt's cracks
the-belt-guard-in-place-0-or-1-56b875c1 = the belt guard in place (0 or 1)
the-water-on-the-belt-c994f208 = the water on the belt
the-gear-s-ratio-e060d22e = the gear's ratio
the-gear-s-efficiency-58b8ab6a = the gear's efficiency
the-gear-ring-s-teeth-3b8d1c2f = the gear ring's teeth
the-gear-s-wear-d91da98c = the gear's wear
the-play-of-the-mechanism-s-0e911ce7 = the play of the mechanism's bolts
the-pulsator-s-inertia-40783046 = the pulsator's inertia
the-pulsator-spline-s-torque-ed6a3ecd = the pulsator spline's torque
the-pulsator-s-water-drag-48f25a43 = the pulsator's water drag
the-level-that-covers-the-2a26b780 = the level that covers the pulsator
the-scraping-under-the-pulsator-cb9ef8dc = the scraping under the pulsator
the-pulsator-s-play-f0df96ca = the pulsator's play
the-basket-s-radius-025ae11e = the basket's radius
the-basket-s-inertia-925d3386 = the basket's inertia
the-basket-bearing-s-friction-55c21d3c = the basket bearing's friction
the-basket-s-windage-b5576199 = the basket's windage
the-basket-s-water-drag-8e912e03 = the basket's water drag
the-basket-s-foam-drag-874b233d = the basket's foam drag
the-swirl-s-drag-f4678bd5 = the swirl's drag
the-swirling-share-of-the-bath-abb7ae69 = the swirling share of the bath
the-scraping-at-the-basket-d4991b27 = the scraping at the basket
the-unbalance-of-loose-basket-e27fe8fe = the unbalance of loose basket bolts

### plant/drying.rs

the-load-s-moisture-after-long-0d0deb5a = the load's moisture after long spinning
the-reference-acceleration-e68dc7c7 = the reference acceleration
the-extraction-s-exponent-ad430a26 = the extraction's exponent
the-extraction-s-time-49c460c4 = the extraction's time

### plant/foam.rs

the-foam-after-detergent-ebbc671f = the foam after detergent
the-foam-s-rise-time-2607e43d = the foam's rise time
the-foam-s-fall-time-e1d1d3fd = the foam's fall time

### plant/heat.rs

a-winding-s-heat-capacity-bbe82eaa = a winding's heat capacity
the-path-from-winding-to-core-6b6e761f = the path from winding to core
the-core-s-heat-capacity-51f58db3 = the core's heat capacity
the-standing-motor-s-cooling-f479643c = the standing motor's cooling
the-fan-s-cooling-e05546b0 = the fan's cooling
the-protector-s-lag-11e4cd24 = the protector's lag
the-protector-s-trip-temperature-21f44875 = the protector's trip temperature
the-protector-s-reset-4c3c8409 = the protector's reset temperature
copper-s-temperature-coefficient-c25d0711 = copper's temperature coefficient

### plant/inlet.rs

the-supply-pressure-8736a6b2 = the supply pressure
the-inlet-valve-s-passage-98b58b08 = the inlet valve's passage
the-strainer-s-passage-d50bd1fc = the strainer's passage
the-supply-hose-s-passage-ef3ed4d2 = the supply hose's passage
the-blocked-share-of-the-inlet-a7e22e0b = the blocked share of the inlet filter
the-closed-share-of-the-tap-b18074c6 = the closed share of the tap
the-squeezed-share-of-the-supply-d8c5f00b = the squeezed share of the supply hose
the-flow-regulator-s-set-point-ed94fff3 = the flow regulator's set point
the-regulator-s-sharpness-e488db9e = the regulator's sharpness
the-pilot-s-lowest-pressure-0f26785d = the pilot's lowest pressure
the-valve-s-opening-time-8fb64b59 = the valve's opening time
the-valve-s-closing-time-f7ae9434 = the valve's closing time
the-leak-past-the-closed-inlet-4ce67804 = the leak past the closed inlet valve
the-drip-of-the-supply-joint-b8769512 = the drip of the supply joint
the-supply-water-s-temperature-64ad7b3c = the supply water's temperature
the-length-of-the-supply-pipe-ad8d600f = the length of the supply pipe
the-bore-of-the-supply-pipe-acae3d05 = the bore of the supply pipe
the-wave-speed-in-the-supply-410547df = the wave speed in the supply pipe

### plant/load.rs

the-dry-load-c3124ecf = the dry load
the-load-s-saturated-uptake-2c6bda05 = the load's saturated uptake
the-load-s-uptake-after-dripping-65585319 = the load's uptake after dripping
the-load-s-wetting-time-a97e58f3 = the load's wetting time
the-fibre-s-density-1b0007da = the fibre's density
the-water-that-covers-the-load-029b9715 = the water that covers the load
the-load-s-drag-on-the-pulsator-b511fac8 = the load's drag on the pulsator
the-reference-liquor-ratio-f4f7af80 = the reference liquor ratio
the-textile-s-slip-speed-914df588 = the textile's slip speed
the-textile-s-share-on-the-2a7868d8 = the textile's share on the basket wall
the-load-s-radius-of-gyration-c0b65018 = the load's radius of gyration
the-unbalanced-mass-76db678d = the unbalanced mass
the-radius-of-the-unbalanced-eac0fb95 = the radius of the unbalanced mass
the-height-of-the-unbalanced-c01365ae = the height of the unbalanced mass
the-unbalance-left-after-9d74eb81 = the unbalance left after spreading
the-washing-motion-that-tangles-984ba1a4 = the washing motion that tangles a spread load again

### plant/pressure_switch.rs

the-low-level-s-set-pressure-b560c2e5 = the low level's set pressure
the-medium-level-s-set-pressure-b81cb182 = the medium level's set pressure
the-high-level-s-set-pressure-01d862d3 = the high level's set pressure
the-level-switch-s-reset-df9bde4a = the level switch's reset pressure
the-level-switch-stuck-on-full-0-7d498ee1 = the level switch stuck on full (0 or 1)
the-level-switch-stuck-on-empty-3f432d37 = the level switch stuck on empty (0 or 1)

### plant/site.rs

the-room-s-temperature-fb4fe66f = the room's temperature
the-air-pressure-a922953b = the air pressure
the-slope-of-the-floor-0d98280d = the slope of the floor
the-grip-of-the-feet-ec162772 = the grip of the feet
the-firmness-of-the-feet-6f9c4b7d = the firmness of the feet

### plant/suspension.rs

the-suspended-mass-96c3e6d7 = the suspended mass
the-rods-length-04b1dc99 = the rods' length
the-rods-springs-0e75f841 = the rods' springs
the-radius-of-the-rods-circle-7f6acd2d = the radius of the rods' circle
the-tub-s-transverse-inertia-577b8d6a = the tub's transverse inertia
the-dampers-strength-b98a83c4 = the dampers' strength
the-rod-ends-friction-90c50a24 = the rod ends' friction
the-dampers-friction-46367847 = the dampers' friction
the-rim-s-height-62a94d39 = the rim's height
the-lever-s-gap-e1ed4ce2 = the lever's gap
the-cabinet-s-clearance-425dec24 = the cabinet's clearance
the-tub-s-lean-4cf86877 = the tub's lean
the-transport-pieces-left-in-0-21cfcd7d = the transport pieces left in (0 to 1)
a-loose-piece-or-panel-0-to-1-4d4df650 = a loose piece or panel (0 to 1)
the-cabinet-s-mass-81332782 = the cabinet's mass
the-balance-ring-s-radius-f73a2d42 = the balance ring's radius
the-balance-ring-s-height-c712c33f = the balance ring's height
the-balance-ring-s-liquid-e34308e4 = the balance ring's liquid
the-balance-ring-s-eccentricity-fe30f100 = the balance ring's eccentricity
the-balance-ring-s-fill-a0562345 = the balance ring's fill
the-unbalance-of-a-ring-emptied-35af53e5 = the unbalance of a ring emptied on one side

### plant/tub.rs

the-tub-s-lower-area-15620921 = the tub's lower area
the-tub-s-upper-area-9032a0aa = the tub's upper area
the-height-of-the-tub-s-step-c249a960 = the height of the tub's step
the-overflow-edge-f655ea4f = the overflow edge
the-overflow-s-width-f880dae8 = the overflow's width
the-overflow-s-limit-021716bf = the overflow's limit
the-overflow-s-share-on-the-2164a771 = the overflow's share on the floor
the-water-s-density-24e9d649 = the water's density
the-leak-of-the-shaft-seal-c538f5b0 = the leak of the shaft seal
the-tub-s-heat-loss-293b8044 = the tub's heat loss

### plant/actuator.rs


### plant/air_trap.rs


### plant/drain.rs


### plant/drive.rs


### plant/drying.rs


### plant/foam.rs


### plant/heat.rs


### plant/inlet.rs


### plant/load.rs


### plant/pressure_switch.rs


### plant/site.rs


### plant/suspension.rs


### plant/tub.rs


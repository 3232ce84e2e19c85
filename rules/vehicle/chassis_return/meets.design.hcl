# expect: meets vehicle.chassis_return on cable_run.load.lights

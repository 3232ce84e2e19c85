# expect: meets practice.voltage_drop on cable_run.array.south

# expect: meets fell_county.voltage_drop on cable_run.array.south

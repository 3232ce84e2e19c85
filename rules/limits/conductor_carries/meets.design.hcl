# expect: meets limits.conductor_carries on cable_run.array.south

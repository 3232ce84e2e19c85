# expect: meets iec.conductor_current on cable_run.array.south

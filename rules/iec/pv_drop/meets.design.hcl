# expect: meets iec.pv_drop on cable_run.array.south

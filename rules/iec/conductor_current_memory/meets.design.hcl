# expect: meets iec.conductor_current_memory on cable_run.charge_source.engine

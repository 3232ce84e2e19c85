# expect: meets iec.under_modules on cable_run.string.south.a

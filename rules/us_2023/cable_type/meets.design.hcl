# expect: meets us_2023.cable_type on cable_run.string.south.a

# expect: meets us_2023.conductor_protected on cable_run.charger.main

# expect: meets marine.conductor_current on cable_run.charger.main

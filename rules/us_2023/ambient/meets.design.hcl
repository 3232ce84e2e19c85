# expect: meets us_2023.ambient on cable_run.string.south.a (outside)
# expect: meets us_2023.ambient on cable_run.charger.main (beside its equipment)
# expect: meets us_2023.ambient on cable_run.bank.house (beside its equipment)

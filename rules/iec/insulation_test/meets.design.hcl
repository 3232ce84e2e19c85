# expect: meets iec.insulation_test on string.south.a

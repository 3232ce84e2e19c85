# expect: meets us_2023.pv_voltage on string.south.a (by its coefficients)

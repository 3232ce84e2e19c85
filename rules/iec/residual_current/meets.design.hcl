# expect: meets iec.residual_current on ac_output.cabin (sensitivity)
# expect: meets iec.residual_current on ac_output.cabin (type)

# expect: meets marine.residual_current on ac_output.cabin

# expect: meets vehicle.residual_current on ac_output.cabin

# expect: meets practice.idle_share on ac_output.cabin

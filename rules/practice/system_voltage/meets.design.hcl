# expect: meets practice.system_voltage on ac_output.cabin

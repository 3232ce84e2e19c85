# expect: meets practice.spare_voltage on pv_input.main.1

# expect: meets practice.unlike_panels on pv_input.main.1

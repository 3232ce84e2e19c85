# expect: meets datasheet.inverter_surge on inverter.sedge-1500

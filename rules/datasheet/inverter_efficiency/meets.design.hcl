# expect: meets datasheet.inverter_efficiency on inverter.sedge-1500

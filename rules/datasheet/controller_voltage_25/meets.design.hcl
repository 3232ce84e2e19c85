# expect: meets datasheet.controller_voltage_25 on controller.reed-70

# expect: meets datasheet.controller_currents on controller.reed-70

# expect: meets datasheet.controller_efficiency on controller.reed-70

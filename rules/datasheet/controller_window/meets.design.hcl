# expect: meets datasheet.controller_window on controller.reed-70

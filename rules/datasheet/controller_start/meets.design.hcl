# expect: meets datasheet.controller_start on controller.reed-70

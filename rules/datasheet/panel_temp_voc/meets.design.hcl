# expect: meets datasheet.panel_temp_voc on panel.fen-200

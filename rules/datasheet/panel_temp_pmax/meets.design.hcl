# expect: meets datasheet.panel_temp_pmax on panel.fen-200

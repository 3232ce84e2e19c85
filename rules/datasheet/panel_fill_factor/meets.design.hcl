# expect: meets datasheet.panel_fill_factor on panel.fen-200

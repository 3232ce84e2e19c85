# expect: meets datasheet.panel_coefficients on panel.fen-200

# expect: meets datasheet.panel_voltage on panel.fen-200

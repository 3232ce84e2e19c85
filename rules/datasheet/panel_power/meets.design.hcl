# expect: meets datasheet.panel_power on panel.fen-200

# expect: meets datasheet.panel_current on panel.fen-200

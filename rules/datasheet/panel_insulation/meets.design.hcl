# expect: meets datasheet.panel_insulation on panel.fen-200

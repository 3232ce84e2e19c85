# expect: meets datasheet.panel_cell_voltage on panel.fen-200

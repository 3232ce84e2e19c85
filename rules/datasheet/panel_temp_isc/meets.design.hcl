# expect: meets datasheet.panel_temp_isc on panel.fen-200

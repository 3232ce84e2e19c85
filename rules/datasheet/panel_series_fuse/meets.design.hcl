# expect: meets datasheet.panel_series_fuse on panel.fen-200

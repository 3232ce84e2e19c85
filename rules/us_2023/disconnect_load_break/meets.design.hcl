# expect: meets us_2023.disconnect_load_break on disconnect.array.south

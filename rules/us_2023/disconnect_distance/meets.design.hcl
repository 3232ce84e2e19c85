# expect: meets us_2023.disconnect_distance on disconnect.array.south

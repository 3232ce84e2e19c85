# expect: meets us_2023.polarity_marking on cable_run.array.south

# expect: meets us_2023.labels on array.south

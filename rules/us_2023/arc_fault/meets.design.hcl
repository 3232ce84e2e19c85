# expect: meets us_2023.arc_fault on array.south

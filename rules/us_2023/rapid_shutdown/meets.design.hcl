# expect: meets us_2023.rapid_shutdown on array.south (function)
# expect: meets us_2023.rapid_shutdown on array.south (outside)
# expect: meets us_2023.rapid_shutdown on array.south (inside)

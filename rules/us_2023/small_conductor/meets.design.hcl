# expect: meets us_2023.small_conductor on protection.string.south.a
# expect: meets us_2023.small_conductor on protection.load.lights

# expect: meets us_2023.grounding_conductor on cable_run.array.south
# expect: meets us_2023.grounding_conductor on cable_run.string.south.a

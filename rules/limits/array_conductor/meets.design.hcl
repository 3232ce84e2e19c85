# expect: meets limits.array_conductor on array.south

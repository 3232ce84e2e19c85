# expect: meets limits.load_break on disconnect.array.south

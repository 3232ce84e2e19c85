# expect: meets limits.array_disconnect on array.south

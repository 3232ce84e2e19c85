# expect: meets fell_county.outside_disconnect on array.south

# expect: meets limits.disconnect_carries on disconnect.array.south

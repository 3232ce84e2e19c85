# expect: meets iec.array_switch on array.south

# expect: meets iec.surge_voltage on array.south

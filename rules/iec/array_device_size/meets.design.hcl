# expect: meets iec.array_device_size on protection.array.south

# expect: meets iec.string_device_size on string.south.a

# expect: meets iec.class_two on string.south.a

# expect: meets limits.connectors on string.south.a

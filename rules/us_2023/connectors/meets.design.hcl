# expect: meets us_2023.connectors on string.south.a

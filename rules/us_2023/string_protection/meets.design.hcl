# expect: meets us_2023.string_protection on string.south.a (fuse)

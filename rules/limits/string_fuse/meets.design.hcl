# expect: meets limits.string_fuse on string.south.a

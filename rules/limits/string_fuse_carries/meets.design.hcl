# expect: meets limits.string_fuse_carries on string.south.a

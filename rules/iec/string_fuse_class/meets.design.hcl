# expect: meets iec.string_fuse_class on protection.string.south.a

# expect: meets limits.fuse_protects_conductor on protection.charger.main
# expect: meets limits.fuse_protects_conductor on protection.supply.twelve

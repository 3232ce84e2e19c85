# expect: meets us_2023.fuse_isolation on protection.bank.house

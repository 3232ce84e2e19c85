# expect: meets limits.parallel_count on bank.house

# expect: meets limits.series_count on bank.house

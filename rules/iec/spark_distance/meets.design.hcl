# expect: meets iec.spark_distance on bank.house

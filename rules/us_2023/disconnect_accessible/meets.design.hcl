# expect: meets us_2023.disconnect_accessible on disconnect.array.south (reach)
# expect: meets us_2023.disconnect_accessible on disconnect.bank.house (lock)

# expect: meets practice.autonomy on bank.house

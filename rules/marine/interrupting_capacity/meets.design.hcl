# expect: meets marine.interrupting_capacity on protection.bank.start

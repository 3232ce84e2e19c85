# expect: meets limits.bank_loss on charger.main

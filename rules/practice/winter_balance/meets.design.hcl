# expect: meets practice.winter_balance on system

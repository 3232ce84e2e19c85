# expect: meets bookname.ventilation on bank.house

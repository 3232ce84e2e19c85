# expect: meets bookname.cold_spare on pv_input.main.1

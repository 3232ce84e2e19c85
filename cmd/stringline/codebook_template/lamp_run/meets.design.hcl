# expect: meets bookname.lamp_run on cable_run.load.lamps

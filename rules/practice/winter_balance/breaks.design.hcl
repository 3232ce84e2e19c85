# expect: breaks practice.winter_balance on system

load "lights" {
  from          = "bank.house"
  power         = "600 W"
  surge         = "600 W"
  hours_per_day = 24
  voltage_min   = "21 V"
  voltage_max   = "30 V"
}

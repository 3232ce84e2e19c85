# expect: meets limits.conductor_voltage on cable_run.array.south
# expect: meets limits.conductor_voltage on cable_run.load.freezer

load "freezer" {
  from  = "ac_output.cabin"
  power = "200 W"
  surge = "600 W"
  cable_run {
    size    = "1.5 mm2"
    length  = "6 m"
    voltage = "500 V"
  }
}

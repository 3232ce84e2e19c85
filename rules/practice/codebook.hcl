name    = "practice"
version = "0.1.0"
needs   = "0.1"

cannot_judge = [
  "clipping and what more array gains, winter balance, unserved hours (no sun and weather yet)",
  "contact resistance and torque (measured on site)",
]

source "de_soto" {
  title  = "De Soto, Klein and Beckman, Solar Energy 80 (2006): five-parameter model of an array"
  status = "from memory"
}

parameter "voltage_drop_max" {
  kind    = "quantity"
  unit    = "%"
  default = "3 %"
  range   = ["0.1 %", "20 %"]
  means   = "largest drop along one path"
}

parameter "mismatch_max" {
  kind    = "quantity"
  unit    = "%"
  default = "3 %"
  range   = ["0 %", "50 %"]
  means   = "largest share of the panels' own power that unlike panels may cost each other"
}

parameter "autonomy_min" {
  kind    = "quantity"
  unit    = "d"
  default = "2 d"
  range   = ["0 d", "30 d"]
  means   = "least time that a full bank carries the loads without any charging"
}

parameter "flooded_charge_least" {
  kind    = "quantity"
  unit    = "%"
  default = "5 %"
  range   = ["0 %", "50 %"]
  means   = "least charge current of a flooded bank, as a share of its capacity an hour: less does not stir the acid"
}

parameter "flooded_charge_most" {
  kind    = "quantity"
  unit    = "%"
  default = "13 %"
  range   = ["1 %", "100 %"]
  means   = "largest charge current of a flooded bank, as a share of its capacity an hour"
}

parameter "inverter_current_max" {
  kind    = "quantity"
  unit    = "A"
  default = "130 A"
  range   = ["10 A", "1000 A"]
  means   = "largest current of an inverter at full power before a higher bank voltage is the better choice"
}

parameter "reading_tolerance" {
  kind    = "quantity"
  unit    = "%"
  default = "5 %"
  range   = ["0.5 %", "50 %"]
  means   = "how far a reading may be from what was due, with the irradiance measured"
}

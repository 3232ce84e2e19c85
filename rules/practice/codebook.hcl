name    = "practice"
version = "0.1.0"
needs   = "0.1"

cannot_judge = [
  "hours without power under clouds, where a site names no weather file: a clear sky tells only those that no weather spares",
  "hours of other charge sources: a design does not say when they run, so winter is judged by the sun alone",
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

parameter "reading_tolerance_unlit" {
  kind    = "quantity"
  unit    = "%"
  default = "10 %"
  range   = ["0.5 %", "50 %"]
  means   = "how far a voltage may be from what was due, without the irradiance"
}

parameter "winter_cover_least" {
  kind    = "quantity"
  unit    = "%"
  default = "100 %"
  range   = ["0 %", "1000 %"]
  means   = "least share of the loads that the sun gives in the worst month, where nothing else charges the banks"
}

parameter "winter_cover_least_backed" {
  kind    = "quantity"
  unit    = "%"
  default = "30 %"
  range   = ["0 %", "1000 %"]
  means   = "the same where another source charges the banks too"
}

parameter "winter_light" {
  kind    = "quantity"
  unit    = "%"
  default = "25 %"
  range   = ["1 %", "100 %"]
  means   = "share of a clear sky's energy that the dullest month still brings, where the site names no weather file: half of what a cloudy inland town gets, less than that in fog"
}

parameter "clipped_energy_max" {
  kind    = "quantity"
  unit    = "%"
  default = "5 %"
  range   = ["0 %", "100 %"]
  means   = "largest share of a year's energy that a controller's limit may keep out"
}

parameter "oversizing_max" {
  kind    = "quantity"
  unit    = "%"
  default = "140 %"
  range   = ["50 %", "500 %"]
  means   = "largest array, as a share of what its controller can use"
}

parameter "idle_share_max" {
  kind    = "quantity"
  unit    = "%"
  default = "40 %"
  range   = ["1 %", "100 %"]
  means   = "largest share of a day's energy that an inverter may take by being on"
}

parameter "unserved_hours_max" {
  kind    = "quantity"
  unit    = "h"
  default = "88 h"
  range   = ["0 h", "8784 h"]
  means   = "most hours of a year in which sun and bank leave a load without energy, where nothing else charges the bank: 1 % of a year, as small systems are planned (from memory)"
}

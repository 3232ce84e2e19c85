name    = "limits"
version = "0.1.0"
needs   = "0.1"

cannot_judge = [
  "clipping and the energy of a year (no sun and weather yet)",
  "ampacity by a code's tables (code books)",
  "order of connection and polarity on site (commissioning)",
]

source "iec_62548_1" {
  title  = "IEC 62548-1, Photovoltaic (PV) arrays, design requirements"
  status = "transcribed"
}

source "iec_61730" {
  title  = "IEC 61730, Photovoltaic (PV) module safety qualification"
  status = "from memory"
}

source "iec_62109" {
  title  = "IEC 62109, Safety of power converters for use in photovoltaic power systems"
  status = "from memory"
}

source "iec_60947" {
  title  = "IEC 60947, Low-voltage switchgear and controlgear"
  status = "from memory"
}

source "iec_60364_7_712" {
  title  = "IEC 60364-7-712, Solar photovoltaic (PV) power supply systems"
  status = "from memory"
}

source "iec_60364_5_54" {
  title  = "IEC 60364-5-54, Earthing arrangements and protective conductors"
  status = "from memory"
}

source "iec_62485_2" {
  title  = "IEC 62485-2, Safety requirements for secondary batteries, stationary batteries"
  status = "from memory"
}

source "de_soto" {
  title  = "De Soto, Klein and Beckman, Solar Energy 80 (2006): five-parameter model of an array"
  status = "from memory"
}

source "cells" {
  title  = "Common practice of battery makers: highest charging voltage a cell"
  status = "from memory"
}

parameter "string_fuse_margin" {
  kind    = "quantity"
  unit    = ""
  default = 1.56
  range   = [1.25, 2]
  means   = "smallest string fuse as a multiple of the string's short-circuit current"
}

parameter "continuous_margin" {
  kind    = "quantity"
  unit    = ""
  default = 1.25
  range   = [1, 2]
  means   = "smallest fuse or breaker as a multiple of the current that it carries for hours, unless it is rated to carry its rating for ever"
}

parameter "first_device_max" {
  kind    = "quantity"
  unit    = "m"
  default = "0.3 m"
  range   = ["0 m", "2 m"]
  means   = "longest unprotected conductor between the bank, or its bus, and the first fuse or breaker"
}

parameter "lead_parallel_max" {
  kind    = "quantity"
  unit    = ""
  default = 4
  range   = [1, 8]
  means   = "most parallel strings of lead batteries"
}

parameter "usual_equalizing" {
  kind    = "quantity"
  unit    = "V"
  default = "2.5834 V"
  range   = ["2.4 V", "2.8 V"]
  means   = "usual equalizing voltage of a flooded cell, at most (15.5 V on six)"
}

parameter "lead_compensation_steepest" {
  kind    = "quantity"
  unit    = "V/K"
  default = "-5 mV/K"
  range   = ["-8 mV/K", "0 mV/K"]
  means   = "steepest temperature compensation of a lead cell"
}

parameter "lead_compensation_least" {
  kind    = "quantity"
  unit    = "V/K"
  default = "-3 mV/K"
  range   = ["-8 mV/K", "0 mV/K"]
  means   = "least temperature compensation of a lead cell"
}

attribute "wired_by_marks" {
  of    = "protections"
  kind  = "yes_no"
  means = "of a polarized breaker: the source stands at the terminal that its marks say, + and -, so that it breaks the current of normal service"
}

attribute "through_inverter" {
  of    = "charge_sources"
  kind  = "yes_no"
  means = "it is the inverter that charges, from shore, generator or grid, and no engine or charger of its own"
}

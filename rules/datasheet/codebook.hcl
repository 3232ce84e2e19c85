name    = "datasheet"
version = "0.1.0"
needs   = "0.1"

cannot_judge = ["whether a data sheet is true; only whether its numbers agree"]

source "en_50380" {
  title  = "EN 50380, Data sheet and nameplate information for photovoltaic modules"
  status = "from memory"
}

source "iec_61730" {
  title  = "IEC 61730, Photovoltaic (PV) module safety qualification"
  status = "from memory"
}

source "villalva" {
  title  = "Villalva, Gazoli and Ruppert, IEEE Trans. Power Electron. 24(5), 2009: the module that they give"
  status = "read"
}

source "en_50618" {
  title  = "EN 50618:2014, Electric cables for photovoltaic systems, Table A.3: single cable free in air"
  status = "from memory"
}

source "heat_balance" {
  title  = "Common practice: current goes with the square root of the warmth above the air and, from copper to aluminum, of the resistivities (17.2 and 28.3 nohm m: 0.78)"
  status = "from memory"
}

source "cells" {
  title  = "Common practice of battery makers: voltages of one cell by chemistry"
  status = "from memory"
}

parameter "power_agreement" {
  kind    = "quantity"
  unit    = "%"
  default = "2 %"
  range   = ["0.1 %", "10 %"]
  means   = "how far Vmp times Imp may be from the rated power"
}

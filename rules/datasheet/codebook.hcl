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

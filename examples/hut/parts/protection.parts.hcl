# Fuses, breakers and cable from the store room. A cable's ampacity is its maker's
# figure for two of them laid together in air of 50 degC; where the code in force
# has tables of its own, it decides.

fuse "t-150" { # class T: breaks the short circuit of a lithium bank
  class            = "T"
  rating           = "150 A"
  voltage          = "125 V"
  interrupts       = "20 kA"
  dc_rated         = true
  continuous_rated = false
}

fuse "t-125" {
  class            = "T"
  rating           = "125 A"
  voltage          = "125 V"
  interrupts       = "20 kA"
  dc_rated         = true
  continuous_rated = false
}

fuse "t-20" {
  class            = "T"
  rating           = "20 A"
  voltage          = "125 V"
  interrupts       = "20 kA"
  dc_rated         = true
  continuous_rated = false
}

fuse "t-10" {
  class            = "T"
  rating           = "10 A"
  voltage          = "125 V"
  interrupts       = "20 kA"
  dc_rated         = true
  continuous_rated = false
}

fuse "pv-25" { # gPV: made for the small, long-lasting faults of panels
  class            = "gPV"
  rating           = "25 A"
  voltage          = "1000 V"
  interrupts       = "30 kA"
  dc_rated         = true
  continuous_rated = false
}

fuse "pv-20" {
  class            = "gPV"
  rating           = "20 A"
  voltage          = "1000 V"
  interrupts       = "30 kA"
  dc_rated         = true
  continuous_rated = false
}

breaker "gate-125" {
  rating           = "125 A"
  voltage          = "80 V"
  interrupts       = "10 kA"
  dc_rated         = true
  polarized        = false # breaks current either way
  poles            = 1
  continuous_rated = false
}

breaker "gate-63" {
  rating           = "63 A"
  voltage          = "250 V"
  interrupts       = "10 kA"
  dc_rated         = true
  polarized        = false
  poles            = 2
  continuous_rated = false
}

cable "solar-6" {
  size       = "6 mm2"
  material   = "Cu"
  strand     = "class_5"
  tinned     = true
  insulation = "90 degC"
  voltage    = "1000 V"
  ampacity   = "44 A"
}

cable "flex-25" {
  size       = "25 mm2"
  material   = "Cu"
  strand     = "class_5"
  tinned     = false
  insulation = "90 degC"
  voltage    = "600 V"
  ampacity   = "105 A"
}

cable "flex-35" {
  size       = "35 mm2"
  material   = "Cu"
  strand     = "class_5"
  tinned     = false
  insulation = "90 degC"
  voltage    = "600 V"
  ampacity   = "130 A"
}

cable "flex-50" {
  size       = "50 mm2"
  material   = "Cu"
  strand     = "class_5"
  tinned     = false
  insulation = "90 degC"
  voltage    = "600 V"
  ampacity   = "165 A"
}

cable "flex-70" {
  size       = "70 mm2"
  material   = "Cu"
  strand     = "class_5"
  tinned     = false
  insulation = "90 degC"
  voltage    = "600 V"
  ampacity   = "210 A"
}

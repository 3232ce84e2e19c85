# Class T throughout on the bank's side: four batteries give 16 kA together, and
# a fuse that breaks 10 kA would burst.

fuse "t-200" {
  class            = "T"
  rating           = "200 A"
  voltage          = "160 V"
  interrupts       = "20 kA"
  dc_rated         = true
  continuous_rated = false
}

fuse "t-100" {
  class            = "T"
  rating           = "100 A"
  voltage          = "160 V"
  interrupts       = "20 kA"
  dc_rated         = true
  continuous_rated = false
}

fuse "t-80" {
  class            = "T"
  rating           = "80 A"
  voltage          = "160 V"
  interrupts       = "20 kA"
  dc_rated         = true
  continuous_rated = false
}

fuse "t-50" {
  class            = "T"
  rating           = "50 A"
  voltage          = "160 V"
  interrupts       = "20 kA"
  dc_rated         = true
  continuous_rated = false
}

fuse "t-10" {
  class            = "T"
  rating           = "10 A"
  voltage          = "160 V"
  interrupts       = "20 kA"
  dc_rated         = true
  continuous_rated = false
}

breaker "baffle-40" {
  rating           = "40 A"
  voltage          = "250 V"
  interrupts       = "10 kA"
  dc_rated         = true
  polarized        = false
  poles            = 2
  continuous_rated = false
}

cable "veld-6" {
  size       = "6 mm2"
  material   = "Cu"
  strand     = "class_5"
  tinned     = true
  insulation = "90 degC"
  voltage    = "1000 V"
  ampacity   = "44 A"
}

cable "veld-16" {
  size       = "16 mm2"
  material   = "Cu"
  strand     = "class_5"
  tinned     = true
  insulation = "90 degC"
  voltage    = "1000 V"
  ampacity   = "80 A"
}

cable "veld-25" {
  size       = "25 mm2"
  material   = "Cu"
  strand     = "class_5"
  tinned     = false
  insulation = "90 degC"
  voltage    = "600 V"
  ampacity   = "105 A"
}

cable "veld-35" {
  size       = "35 mm2"
  material   = "Cu"
  strand     = "class_5"
  tinned     = false
  insulation = "90 degC"
  voltage    = "600 V"
  ampacity   = "130 A"
}

cable "veld-95" {
  size       = "95 mm2"
  material   = "Cu"
  strand     = "class_5"
  tinned     = false
  insulation = "90 degC"
  voltage    = "600 V"
  ampacity   = "255 A"
  resistance = "0.210 ohm/km" # its maker's figure, at 20 degC
}

# Building wire, THWN-2: 90 degC wet and dry. The ampacities are what is left at
# 35 degC, for rules that know no code; the code's own tables judge the rest.

cable "thwn2-4" {
  size       = "4 AWG"
  insulation = "90 degC"
  voltage    = "600 V"
  ampacity   = "90 A"
}

cable "thwn2-6" {
  size       = "6 AWG"
  insulation = "90 degC"
  voltage    = "600 V"
  ampacity   = "70 A"
}

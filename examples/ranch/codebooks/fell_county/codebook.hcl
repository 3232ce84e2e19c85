# An invented county that amends the National Electrical Code of 2023. It shows what
# a jurisdiction's own codebook looks like: it stands beside us_2023, which goes on
# judging what the code says, and adds what the county asks beyond it.

name         = "fell_county"
version      = "1.0.0"
edition      = "2023"
jurisdiction = "Fell County (invented)"
needs        = "0.1"
covers       = ["690.7", "690.13", "210.19"]
cannot_judge = ["permits and inspections", "snow and wind on the array"]

source "ordinance" {
  title  = "Fell County electrical ordinance, amendments to the code of 2023 (invented for this example)"
  status = "read"
}

parameter "design_cold" {
  kind    = "quantity"
  unit    = "degC"
  default = "-29 degC"
  range   = ["-60 degC", "10 degC"]
  means   = "coldest temperature that designs in the county are judged at"
}

parameter "voltage_drop_max" {
  kind    = "quantity"
  unit    = "%"
  default = "2 %"
  range   = ["0.5 %", "5 %"]
  means   = "largest drop along one path"
}

attribute "outside_disconnect" {
  of    = "arrays"
  kind  = "yes_no"
  means = "a disconnect for the array stands outside, where firefighters reach it"
}

name         = "vehicle"
version      = "0.1.0"
edition      = "EN 1648-1 and -2:2018, AS/NZS 3001.2:2022, NEC article 552 (2008 to 2017), ANSI/RVIA LV (2020)"
jurisdiction = "caravans, campers and other vehicles that are lived in: the design names the standard that it is built by, and the country's law decides"
needs        = "0.1"

covers = [
  "EN 1648 cross-section",
  "EN 1648 voltage drop",
  "EN 1648 auxiliary battery",
  "AS/NZS 3001.2 battery protection",
  "AS/NZS 3001.2 lead batteries",
  "AS/NZS 3001.2 lithium batteries",
  "AS/NZS 3001.2 battery management",
  "AS/NZS 3001.2 services",
  "AS/NZS 3001.2 extra-low voltage",
  "NEC 552.10(B)",
  "NEC 552.10(C)",
  "NEC 552.10(D)",
  "NEC 552.10(E)",
  "HD 60364-7-721 residual current",
  "RVIA LV lithium",
  "RVIA LV vented box",
]

cannot_judge = [
  "RVIA LV wire tables, distances to the battery and solar clauses (not found)",
  "EN 1648 least cross-sections and the distance of the first fuse (not found)",
  "currents at which a lithium battery's management system opens: no usual figure was found beyond what the battery can give at all",
  "AS/NZS 3001.2 formula of the vent area (not found: IEC 62485-2 stands in its place) and distances to gas lines (no figure found)",
  "ampacity of conductors, bundles and heat: the maker's figure counts as it is given, which the books limits and datasheet judge",
  "AS/NZS 5033 above its own thresholds; HD 60364-7-721 and AS/NZS 3001.2, the mains side but its chargers: leads, inlets, times of disconnection",
  "labels, instructions, route, workmanship",
]

source "en_1648" {
  title  = "EN 1648-1:2018 and EN 1648-2:2018, Leisure accommodation vehicles, 12 V direct current extra-low voltage electrical installations, as quoted in a forum (2007) and a preview"
  status = "transcribed"
}

source "en_1648_memory" {
  title  = "EN 1648-2:2018, ventilation and fastening of the auxiliary battery"
  status = "from memory"
}

source "as_nzs_3001_2" {
  title  = "AS/NZS 3001.2:2022, Electrical installations, connectable electrical installations, as a trade page summarizes it"
  status = "transcribed"
}

source "as_nzs_3001_2_memory" {
  title  = "AS/NZS 3001.2:2022, places of lithium batteries, management systems, extra-low voltage"
  status = "from memory"
}

source "nec_552" {
  title  = "NEC (NFPA 70) article 552, Park trailers, 2008 and 2017, low-voltage systems; article 551 has no such rules any more"
  status = "transcribed"
}

source "nec_552_memory" {
  title  = "NEC (NFPA 70) article 552, ratings of devices by size"
  status = "from memory"
}

source "rvia_lv" {
  title  = "ANSI/RVIA LV, Low voltage systems in conversion and recreational vehicles, as the association's note of October 2020 tells"
  status = "transcribed"
}

source "hd_60364_7_721" {
  title  = "HD 60364-7-721:2019, Electrical installations in caravans and motor caravans"
  status = "from memory"
}

source "cells" {
  title  = "Common practice of makers of management systems: highest and lowest voltage that a cell is switched off at"
  status = "from memory"
}

source "iec_62485_2" {
  title  = "IEC 62485-2:2010 and EN 50272-2:2001, gassing currents and air of lead batteries"
  status = "transcribed"
}

parameter "drop_volts" {
  kind    = "quantity"
  unit    = "V"
  default = "0.8 V"
  range   = ["0.1 V", "4 V"]
  means   = "largest drop to an appliance; the standard is for 12 V, and its volts stand for 24 and 48 V until its revision is read"
}

parameter "charge_drop_volts" {
  kind    = "quantity"
  unit    = "V"
  default = "0.2 V"
  range   = ["0.05 V", "2 V"]
  means   = "largest drop of the charging line to the auxiliary battery"
}

parameter "source_device_max" {
  kind    = "quantity"
  unit    = "m"
  default = "0.3 m"
  range   = ["0 m", "2 m"]
  means   = "longest conductor without a device at the end of a source, such as a starter battery"
}

attribute "standard" {
  of    = "site"
  kind  = "word"
  words = ["en_1648", "as_nzs_3001", "nec_552", "rvia_lv"]
  means = "standard that the vehicle is built by"
}

attribute "vented_outside" {
  of    = "banks"
  kind  = "yes_no"
  means = "its compartment is vented to the outside, at top and bottom"
}

attribute "vent_area" {
  of    = "banks"
  kind  = "quantity"
  unit  = "mm2"
  means = "free area of the opening at the top, and as much again at the bottom"
}

attribute "gas_current" {
  of    = "banks"
  kind  = "quantity"
  unit  = "A"
  means = "current that makes gas at the highest charging voltage, for each 100 Ah, from the battery's maker; asked above 2.40 V a cell"
}

attribute "sealed_from_cabin" {
  of    = "banks"
  kind  = "yes_no"
  means = "its compartment is tight toward where people live, an annex included"
}

attribute "restrained" {
  of    = "banks"
  kind  = "yes_no"
  means = "is fastened so that it stays in a crash"
}

attribute "spark_free" {
  of    = "banks"
  kind  = "yes_no"
  means = "nothing that sparks, glows or burns shares its compartment: no relay, switch, motor, charger or burner"
}

attribute "clear_of_services" {
  of    = "banks"
  kind  = "yes_no"
  means = "keeps its distance from gas, diesel and water lines"
}

attribute "cell_standard" {
  of    = "banks"
  kind  = "word"
  words = ["IEC 62619", "other", "none"]
  means = "standard that its lithium cells and batteries were tested to"
}

attribute "listed" {
  of    = "banks"
  kind  = "yes_no"
  means = "its lithium battery is listed by a recognized agency"
}

attribute "enclosed_cable" {
  of    = "protections"
  kind  = "yes_no"
  means = "the cable between battery and device is enclosed all the way"
}

attribute "outside_enclosure" {
  of    = "protections"
  kind  = "yes_no"
  means = "the device stands directly outside the battery's enclosure"
}

attribute "chassis_return" {
  of    = "cable_runs"
  kind  = "yes_no"
  means = "the chassis is its second conductor"
}

attribute "chassis_bond_size" {
  of    = "grounding"
  kind  = "quantity"
  unit  = "mm2"
  means = "copper conductor that bonds the battery to the chassis"
}

attribute "self_limiting" {
  of    = "charge_sources"
  kind  = "yes_no"
  means = "cannot give more than its rated current, in a fault neither; no for an alternator, and for all that has a starter battery on its end"
}

attribute "device_at_source" {
  of    = "charge_sources"
  kind  = "quantity"
  unit  = "m"
  means = "conductor between the source, or the starter battery on its end, and the fuse or breaker there; 0 m inside it"
}

attribute "shore_power" {
  of    = "charge_sources"
  kind  = "yes_no"
  means = "is a charger on mains from outside, or on a generator's mains"
}

attribute "mains_separated" {
  of    = "charge_sources"
  kind  = "yes_no"
  means = "a transformer in it separates its output from the mains"
}

attribute "residual_current" {
  of    = "charge_sources"
  kind  = "quantity"
  unit  = "A"
  means = "residual current that the device at the inlet is rated for; 0 A where there is none"
}

attribute "residual_current" {
  of    = "ac_outputs"
  kind  = "quantity"
  unit  = "A"
  means = "residual current that the device before the sockets on its inverter is rated for; 0 A where there is none"
}

attribute "protected_from_loss" {
  of    = "charge_sources"
  kind  = "yes_no"
  means = "the loss of the bank while it charges does not destroy it"
}

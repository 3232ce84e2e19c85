name         = "marine"
version      = "0.1.0"
edition      = "ISO 13297:2020, 33 CFR 183 subpart I, ABYC E-11 and E-13 (July 2025 where a rule says so), ISO 23625:2025"
jurisdiction = "boats: ISO 13297 in the European Union, 33 CFR 183 in the United States (petrol engines that are not outboards), ABYC by agreement; what is in force aboard decides"
needs        = "0.1"

covers = [
  "33 CFR 183.410",
  "33 CFR 183.420",
  "33 CFR 183.425",
  "33 CFR 183.455",
  "33 CFR 183.460",
  "ABYC E-11 11.6.1",
  "ABYC E-11 11.10.1",
  "ABYC E-11 11.11",
  "ABYC E-11 11.14",
  "ABYC A-28",
  "ABYC A-31",
  "ABYC E-13.5.4",
  "ABYC E-13.6.7.1.1",
  "ABYC E-13 management system",
  "ISO 13297 scope",
  "ISO 13297 12.1",
  "ISO 13297 12.3",
  "ISO 13297 Table A.1",
  "ISO 13297 voltage drop",
  "ISO 13297 battery switch",
  "ISO 13297 residual current",
  "ISO 23625",
]

cannot_judge = [
  "ISO 10133 supports every 450 mm and 300 mm, first support of battery cables, tilt and containment of acid",
  "SAE sizes, 3 to 12 % smaller than AWG: give the area in mm2",
  "ABYC E-11 rows of the interrupting table for 32 V and 48 V (not found)",
  "ABYC E-11 motor circuits, locked rotors",
  "currents at which a lithium battery's management system opens: no usual figure was found beyond what the battery can give at all",
  "ISO 16315, electric propulsion",
  "33 CFR 183.410, converters, alternators and motors in petrol spaces: only devices, switches, charge controllers and inverters are asked about",
  "shore power but its chargers: inlets, leads, polarity, a second residual-current device behind an isolating transformer; corrosion, lightning",
  "the air that a maker's ampacity is for: where no table has a row it counts as it is given, in hotter air up to the hottest row",
  "labels, colors, route, workmanship",
]

source "cfr_183" {
  title  = "Code of Federal Regulations, title 33, part 183 subpart I: sections 183.410, 183.420, 183.425, 183.455"
  status = "read"
}

source "cfr_183_memory" {
  title  = "Code of Federal Regulations, title 33, part 183 subpart I: section 183.460"
  status = "from memory"
}

source "abyc_e11" {
  title  = "ABYC E-11, AC and DC electrical systems on boats, as excerpts, sellers' and surveyors' articles quote it (2004 to July 2025)"
  status = "transcribed"
}

source "abyc_memory" {
  title  = "ABYC E-11 11.11 (shore power), A-28 (galvanic isolators) and A-31 (battery chargers and inverters)"
  status = "from memory"
}

source "abyc_e13" {
  title  = "ABYC E-13, Lithium ion batteries, as surveyors' articles quote it (version 2, July 2025)"
  status = "transcribed"
}

source "iso_13297" {
  title  = "ISO 13297:2020, Small craft, electrical systems: scope, clauses 12.3 and 13, as previews of BS EN ISO 13297:2021 show them"
  status = "transcribed"
}

source "iso_13297_memory" {
  title  = "ISO 13297:2020: clause 12.1, Table A.1 and its corrections, drop of other loads, battery switch, residual-current devices"
  status = "from memory"
}

source "cells" {
  title  = "Common practice of makers of management systems: highest and lowest voltage that a cell is switched off at"
  status = "from memory"
}

source "iso_23625" {
  title  = "ISO 23625:2025, Small craft, lithium-ion batteries: scope and cell standards, from its abstract"
  status = "transcribed"
}

parameter "standard" {
  kind    = "word"
  words   = ["iso", "abyc", "cfr"]
  default = "iso"
  means   = "by which standard figures are taken where they differ: ISO 13297, ABYC E-11 and E-13, or 33 CFR 183"
}

parameter "bundle_below_50v" {
  kind    = "yes_no"
  default = true
  means   = "conductors that lie in a bundle count below 50 V too, which is on the safe side"
}

parameter "critical_drop_max" {
  kind    = "quantity"
  unit    = "%"
  default = "3 %"
  range   = ["0.5 %", "10 %"]
  means   = "largest drop to navigation lights, bilge pumps and blowers, electronics, and to what feeds a panel or charges"
}

parameter "drop_max" {
  kind    = "quantity"
  unit    = "%"
  default = "10 %"
  range   = ["0.5 %", "20 %"]
  means   = "largest drop to any other load"
}

parameter "deck_voltage_max" {
  kind    = "quantity"
  unit    = "V"
  default = "60 V"
  range   = ["12 V", "120 V"]
  means   = "largest PV voltage on open decks"
}

attribute "petrol" {
  of    = "site"
  kind  = "yes_no"
  means = "a petrol engine, or petrol in tanks or cans, is aboard"
}

attribute "petrol_space" {
  of    = "protections"
  kind  = "yes_no"
  means = "stands in a space with a petrol engine, tank or line"
}

attribute "ignition_protected" {
  of    = "protections"
  kind  = "yes_no"
  means = "is ignition-protected (ISO 8846, SAE J1171)"
}

attribute "critical" {
  of    = "loads"
  kind  = "yes_no"
  means = "safety hangs on it: navigation lights, bilge pump or blower, radio and instruments"
}

attribute "second_source" {
  of    = "loads"
  kind  = "yes_no"
  means = "another bank can feed it too"
}

attribute "restrained" {
  of    = "banks"
  kind  = "yes_no"
  means = "cannot move: no more than an inch (ISO 10 mm) under twice its weight"
}

attribute "terminals_covered" {
  of    = "banks"
  kind  = "yes_no"
  means = "no metal object can touch its terminals that are not grounded"
}

attribute "clear_of_fuel" {
  of    = "banks"
  kind  = "yes_no"
  means = "not straight above or below a fuel tank or filter, and metal fuel parts within 300 mm above it are insulated"
}

attribute "vented" {
  of    = "banks"
  kind  = "yes_no"
  means = "its gas, or that of a failing cell, is led outboard"
}

attribute "cold_cranking" {
  of    = "banks"
  kind  = "quantity"
  unit  = "A"
  means = "cold-cranking current of all its batteries together"
}

attribute "cell_standard" {
  of    = "banks"
  kind  = "word"
  words = ["IEC 62133", "IEC 62619", "IEC 62619 and IEC 62620", "IEC 62620", "SAE J2929", "UL 1642", "UL 1973", "UL 2054", "none"]
  means = "standard that its lithium cells were tested to"
}

attribute "pre_alarm" {
  of    = "banks"
  kind  = "yes_no"
  means = "an alarm at the helm warns before the management system switches off"
}

attribute "remote_switch_direct" {
  of    = "banks"
  kind  = "yes_no"
  means = "its remote switch opens the supply of the contactor itself, which falls open"
}

attribute "self_limiting" {
  of    = "charge_sources"
  kind  = "yes_no"
  means = "cannot give more than its rated current, in a fault neither"
}

attribute "device_at_source" {
  of    = "charge_sources"
  kind  = "quantity"
  unit  = "m"
  means = "conductor between the source and the fuse or breaker at its own end; 0 m inside it"
}

attribute "protected_from_loss" {
  of    = "charge_sources"
  kind  = "yes_no"
  means = "the loss of the bank while it charges does not destroy it"
}

attribute "petrol_space" {
  of    = "disconnects"
  kind  = "yes_no"
  means = "stands in a space with a petrol engine, tank or line"
}

attribute "ignition_protected" {
  of    = "disconnects"
  kind  = "yes_no"
  means = "is ignition-protected (ISO 8846, SAE J1171)"
}

attribute "petrol_space" {
  of    = "chargers"
  kind  = "yes_no"
  means = "its controller stands in a space with a petrol engine, tank or line"
}

attribute "ignition_protected" {
  of    = "chargers"
  kind  = "yes_no"
  means = "is ignition-protected (ISO 8846, SAE J1171)"
}

attribute "petrol_space" {
  of    = "ac_outputs"
  kind  = "yes_no"
  means = "its inverter stands in a space with a petrol engine, tank or line"
}

attribute "ignition_protected" {
  of    = "ac_outputs"
  kind  = "yes_no"
  means = "is ignition-protected (ISO 8846, SAE J1171)"
}

attribute "shore_power" {
  of    = "charge_sources"
  kind  = "yes_no"
  means = "is a charger on shore power, or on a generator's mains"
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
  means = "residual current that the device at the shore inlet is rated for; 0 A where there is none"
}

attribute "shore_isolation" {
  of    = "charge_sources"
  kind  = "word"
  words = ["isolating_transformer", "galvanic_isolator", "none"]
  means = "what parts the shore's earth from the hull and its fittings"
}

attribute "residual_current" {
  of    = "ac_outputs"
  kind  = "quantity"
  unit  = "A"
  means = "residual current that the device before the sockets on its inverter is rated for; 0 A where there is none"
}

name         = "us_2023"
version      = "0.1.0"
edition      = "2023"
jurisdiction = "United States, where the National Electrical Code of 2023 is adopted"
needs        = "0.1"

covers = [
  "90.2",
  "110.3(B)",
  "110.4",
  "110.9",
  "110.14",
  "110.14(C)",
  "110.27",
  "210.8",
  "210.19",
  "210.20",
  "215.2",
  "215.3",
  "240.4(B)",
  "240.4(D)",
  "240.4(G)",
  "240.6(A)",
  "240.15",
  "240.21(H)",
  "240.22",
  "240.40",
  "240.60",
  "240.83",
  "250.30",
  "250.122",
  "250.162",
  "250.164",
  "250.166",
  "250.167",
  "300.5",
  "300.9",
  "300.17",
  "310.3(A)",
  "310.10",
  "310.10(G)",
  "310.15(B)(1)",
  "310.15(B)(2)",
  "310.15(C)(1)",
  "310.16",
  "310.17",
  "480.3",
  "480.7(A)",
  "480.10",
  "690.4(B)",
  "690.7",
  "690.7(A)",
  "690.7(D)",
  "690.8(A)(1)",
  "690.8(B)(1)",
  "690.8(B)(2)",
  "690.8(D)",
  "690.9",
  "690.9(A)(1)",
  "690.9(A)(2)",
  "690.9(B)",
  "690.9(C)",
  "690.11",
  "690.12",
  "690.12(B)(1)",
  "690.12(B)(2)",
  "690.12(C)",
  "690.12(D)",
  "690.13",
  "690.13(B)",
  "690.15",
  "690.15(A)",
  "690.15(B)",
  "690.15(C)",
  "690.15(D)",
  "690.31",
  "690.31(A)",
  "690.31(B)",
  "690.31(B)(1)",
  "690.31(C)(1)",
  "690.31(C)(5)",
  "690.31(D)",
  "690.31(D)(2)",
  "690.33",
  "690.41(A)",
  "690.41(B)",
  "690.42",
  "690.43",
  "690.45",
  "690.47",
  "706.5",
  "706.15",
  "706.15(A)",
  "706.15(B)",
  "706.15(D)",
  "706.20(A)",
  "706.20(B)",
  "706.30(A)",
  "706.30(B)",
  "706.31(A)",
  "706.31(B)",
  "706.31(C)",
  "706.31(D)",
  "706.31(E)",
  "706.31(F)",
  "706.33(A)",
  "710.6",
  "710.15(A)",
  "710.15(C)",
  "IRC R328",
]

cannot_judge = [
  "690.7(C), 690.8(A)(2) simulation and engineering methods for large systems",
  "690.8(C) conductors with a common return, and relief by a converter's rated input current",
  "690.9(A)(3) devices at both ends of long runs inside buildings",
  "690.10 and 710.15(B) AC conductors behind a stand-alone source",
  "690.31(C)(2) cable trays and 690.31(A)(3) ampacities of 105 and 125 degC insulation",
  "690.31(G) circuits above 1000 V off buildings",
  "690.33 guarding and locking of connectors",
  "690.56, 705 and 710.10 plaques and directories; other sources in parallel",
  "690.72 arrays matched to a bank without a controller",
  "706.7 commissioning and maintenance",
  "706.15(C) marking of the storage's disconnect",
  "480.7 and 480.9 to 480.13 beyond what is declared: supports, clearances, flame arresters",
  "110.26 working space",
  "chapter 9, Table 1: fill of raceways that one circuit has for itself, and of conductors of other sizes in a shared one",
  "250.66 electrodes of the AC service",
  "551, 552 and 553 vehicles, trailers and floating buildings",
  "720 circuits below 50 V",
]

source "nec_2023" {
  title  = "National Electrical Code (NFPA 70), 2023: public transcriptions, summaries and training notes of this edition and of those before it; the original was not read"
  status = "transcribed"
}

source "nec_2023_memory" {
  title  = "National Electrical Code (NFPA 70), 2023: as remembered, no text read"
  status = "from memory"
}

source "storage_rooms" {
  title  = "NFPA 855, 2023, chapter 15, and IRC 2021, section R328: storage in dwellings, as remembered, no text read"
  status = "from memory"
}

parameter "voltage_drop_max" {
  kind    = "quantity"
  unit    = "%"
  default = "5 %"
  range   = ["0.1 %", "20 %"]
  means   = "largest drop along one path; the code only informs of 3 % in a branch or feeder and 5 % in both"
}

parameter "ambient_below_hottest" {
  kind    = "quantity"
  unit    = "K"
  default = "5 K"
  range   = ["0 K", "15 K"]
  means   = "how far the air that a conductor outside is judged in may lie below the site's hottest: what is exceeded for 2 % of the hottest months, as the code's notes take it, lies some kelvin below the year's extreme"
}

attribute "occupancy" {
  of    = "site"
  kind  = "word"
  words = ["one_two_family", "other", "none"]
  means = "what the system serves: a one- or two-family dwelling, another building, none"
}

attribute "structure" {
  of    = "site"
  kind  = "word"
  words = ["building", "pv_only", "open_detached"]
  means = "what stands there: a building, one for PV equipment alone, an open detached structure"
}

attribute "on_building" {
  of    = "arrays"
  kind  = "yes_no"
  means = "stands on or in a building"
}

attribute "arc_fault" {
  of    = "arrays"
  kind  = "yes_no"
  means = "a listed PV arc-fault circuit interrupter watches it"
}

attribute "rapid_shutdown" {
  of    = "arrays"
  kind  = "yes_no"
  means = "a rapid shutdown function de-energizes it"
}

attribute "shutdown_voltage_outside" {
  of    = "arrays"
  kind  = "quantity"
  unit  = "V"
  means = "voltage left 30 s after shutdown beyond the array's boundary"
}

attribute "shutdown_voltage_inside" {
  of    = "arrays"
  kind  = "quantity"
  unit  = "V"
  means = "voltage left 30 s after shutdown inside the array's boundary"
}

attribute "hazard_control" {
  of    = "arrays"
  kind  = "yes_no"
  means = "it is a listed PV hazard control system"
}

attribute "initiator_outside" {
  of    = "arrays"
  kind  = "yes_no"
  means = "the shutdown's initiator is readily accessible outside"
}

attribute "connectors_intermatable" {
  of    = "arrays"
  kind  = "yes_no"
  means = "plugs of different make or type are listed to be mated"
}

attribute "labels" {
  of    = "arrays"
  kind  = "yes_no"
  means = "the code's labels are planned: dc voltage, disconnect, raceways, rapid shutdown"
}

attribute "on_roof" {
  of    = "cable_runs"
  kind  = "yes_no"
  means = "lies on or over a roof in the sun; a run that goes on inside is both, and judged for both"
}

attribute "through_wall" {
  of    = "cable_runs"
  kind  = "yes_no"
  means = "of a bank's main: passes a wall, floor or ceiling"
}

attribute "readily_accessible" {
  of    = "cable_runs"
  kind  = "yes_no"
  means = "within reach of anybody"
}

attribute "shares_raceway" {
  of    = "cable_runs"
  kind  = "yes_no"
  means = "shares a raceway or box with circuits that are not PV, without a divider"
}

attribute "fine_strand_lugs" {
  of    = "cable_runs"
  kind  = "yes_no"
  means = "its lugs and terminals are listed for fine strands"
}

attribute "raceway" {
  of    = "cable_runs"
  kind  = "word"
  words = ["metal", "mc_cable", "nonmetallic", "none"]
  means = "what encloses it"
}

attribute "raceway_area" {
  of    = "cable_runs"
  kind  = "quantity"
  unit  = "mm2"
  means = "inner cross-section of the raceway that several circuits share, as its maker or chapter 9, Table 4 gives it"
}

attribute "cable_type" {
  of    = "cable_runs"
  kind  = "word"
  words = ["pv_wire", "use2_rhw2", "thwn2", "xhhw2", "nm", "other"]
  means = "type of its conductors"
}

attribute "marking" {
  of    = "cable_runs"
  kind  = "word"
  words = ["color", "plus_minus", "white"]
  means = "how its poles are marked"
}

attribute "depth" {
  of    = "cable_runs"
  kind  = "quantity"
  unit  = "m"
  means = "cover below ground"
}

attribute "pv_listed" {
  of    = "protections"
  kind  = "yes_no"
  means = "listed for use in PV circuits"
}

attribute "current_limiting" {
  of    = "protections"
  kind  = "yes_no"
  means = "listed as current-limiting"
}

attribute "pole" {
  of    = "protections"
  kind  = "word"
  words = ["positive", "negative", "both"]
  means = "the pole that it opens"
}

attribute "at_source" {
  of    = "protections"
  kind  = "yes_no"
  means = "stands at the bank's end of its conductor"
}

attribute "readily_accessible" {
  of    = "protections"
  kind  = "yes_no"
  means = "of a breaker that serves as the disconnect: can be reached quickly, without a ladder or moving things"
}

attribute "lockable" {
  of    = "protections"
  kind  = "yes_no"
  means = "of a breaker that serves as the disconnect: can be locked open"
}

attribute "readily_accessible" {
  of    = "disconnects"
  kind  = "yes_no"
  means = "can be reached quickly, without a ladder or moving things"
}

attribute "lockable" {
  of    = "disconnects"
  kind  = "yes_no"
  means = "can be locked open"
}

attribute "isolating_only" {
  of    = "disconnects"
  kind  = "yes_no"
  means = "an isolating device, not to be opened under load"
}

attribute "distance_to_equipment" {
  of    = "disconnects"
  kind  = "quantity"
  unit  = "m"
  means = "distance to the equipment that it isolates, in sight of it"
}

attribute "fault_current" {
  of    = "disconnects"
  kind  = "quantity"
  unit  = "A"
  means = "largest fault current that it is rated for"
}

attribute "listed" {
  of    = "banks"
  kind  = "yes_no"
  means = "batteries and management system, or the whole, are listed"
}

attribute "ventilated" {
  of    = "banks"
  kind  = "yes_no"
  means = "ventilated as its technology needs"
}

attribute "guarded" {
  of    = "banks"
  kind  = "yes_no"
  means = "its live parts are guarded"
}

attribute "emergency_shutdown" {
  of    = "banks"
  kind  = "yes_no"
  means = "an emergency shutdown is initiated from outside"
}

attribute "in_sight_disconnect" {
  of    = "banks"
  kind  = "yes_no"
  means = "its disconnect is in sight of the cells"
}

attribute "leads_ampacity" {
  of    = "banks"
  kind  = "quantity"
  unit  = "A"
  means = "ampacity of the leads of each parallel string of batteries, as they lie, up to the bus"
}

attribute "room" {
  of    = "banks"
  kind  = "word"
  words = ["habitable", "utility", "garage", "detached", "outdoors"]
  means = "where it stands in a dwelling: habitable (living and sleeping rooms), utility (closet, basement, storage, utility space), garage, detached (a building of its own), outdoors"
}

attribute "listed" {
  of    = "ac_outputs"
  kind  = "yes_no"
  means = "the inverter is listed"
}

attribute "split_panel" {
  of    = "ac_outputs"
  kind  = "yes_no"
  means = "its 120 V feed a panel made for 120/240 V"
}

attribute "multiwire" {
  of    = "ac_outputs"
  kind  = "yes_no"
  means = "multiwire branch circuits or 240 V outlets hang on that panel"
}

attribute "gfci" {
  of    = "ac_outputs"
  kind  = "yes_no"
  means = "its receptacles in workshops, garages, outdoors and wherever else the code asks have ground-fault circuit interrupters"
}

attribute "electrode" {
  of    = "grounding"
  kind  = "yes_no"
  means = "the building or array has a grounding electrode system"
}

attribute "rod_only" {
  of    = "grounding"
  kind  = "yes_no"
  means = "the electrode is a rod, pipe or plate alone"
}

attribute "gec_size" {
  of    = "grounding"
  kind  = "quantity"
  unit  = "mm2"
  means = "cross-section of the conductor to the electrode"
}

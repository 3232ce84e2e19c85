name         = "iec"
version      = "0.1.0"
edition      = "IEC 62548-1:2023 and IEC 60364-7-712:2017 with what of IEC 60364 they rest on; figures and clause numbers are those of IEC 62548:2016, unless a rule says otherwise"
jurisdiction = "where IEC 60364 or a national standard made from it is in force; the national text decides"
needs        = "0.1"

covers = [
  "IEC 62548-1 6.2",
  "IEC 62548-1 6.3",
  "IEC 62548-1 6.4",
  "IEC 62548-1 7.2",
  "IEC 62548-1 7.3",
  "IEC 62548-1 7.4",
  "IEC 60364-7-712 712.414",
  "IEC 60364-7-712 712.431",
  "IEC 60364-7-712 712.433",
  "IEC 60364-7-712 712.443",
  "IEC 60364-7-712 712.522",
  "IEC 60364-7-712 712.530",
  "IEC 60364-7-712 712.536",
  "IEC 60364-4-41 411.3.3",
  "IEC 60364-4-41 414.4",
  "IEC 60364-4-43 431.1",
  "IEC 60364-4-43 433.1",
  "IEC 60364-5-52 523",
  "IEC 60364-5-52 524",
  "IEC 60364-5-52 525",
  "IEC 60364-5-53 536.2",
  "IEC 62109-1 Isc PV",
  "IEC 62485-2 7.2",
  "IEC 62485-2 7.7",
  "IEC 62446-1 6.7",
  "IEC 60947-3 Annex D",
  "IEC 60269-6",
  "EN 50618 Annex A",
]

cannot_judge = [
  "what the book limits judges for every design under a standard's method too: interrupting capacity, polarity and mating of connectors, one bond",
  "the table of voltage factors where a data sheet is silent on its coefficient: the coefficient is asked for",
  "IEC 62548-1:2023 Annex F, current factors of bifacial and unusual arrays (not found: set the parameter ki)",
  "IEC 60364-4-43 434, let-through energy: clearing times are not in the design",
  "IEC 60364-5-52 method F, aluminum, more than 120 mm2, groups of buried cables: the cable maker's ampacity is asked for",
  "IEC 60364-5-53 534, ratings of surge protection but its voltage, a second one beyond 10 m, its earth lead",
  "IEC 60364-4-41 411, times of automatic disconnection on the AC side: the loop's impedance is not in the design",
  "IEC 60364-4-43 431, devices in both poles of the circuits behind a floating bank's main, and of floating arrays (the schools differ): the bank's own and the array's switch are judged",
  "the air that a maker's ampacity is for: where no table has a row it counts as it is given, in hotter air up to the hottest row",
  "IEC 62109-1 Table 7, lower touch voltage limits in wet places (not found)",
  "national rules on where batteries may stand, such as AS/NZS 5139",
  "IEC 62619 and IEC 62485-5, lithium batteries and their management systems (not read)",
  "labels, route, mechanical strength, workmanship",
]

source "iec_62548_1" {
  title  = "IEC 62548-1:2023, Photovoltaic (PV) arrays, design requirements; figures of IEC 62548:2016 as quoted in published examples"
  status = "transcribed"
}

source "iec_62548_1_memory" {
  title  = "IEC 62548:2016, clauses that no published example quotes"
  status = "from memory"
}

source "iec_60364_7_712" {
  title  = "IEC 60364-7-712:2017 and HD 60364-7-712:2016, Solar photovoltaic (PV) power supply systems, as quoted in trade articles (BS 7671:2018, 712.431 to 712.433)"
  status = "transcribed"
}

source "iec_60364_7_712_memory" {
  title  = "IEC 60364-7-712:2017, clauses that no article quotes"
  status = "from memory"
}

source "iec_60364_4_41" {
  title  = "IEC 60364-4-41:2005, Protection against electric shock, with the bands of IEC 62109-1:2010"
  status = "from memory"
}

source "iec_60364_4_43" {
  title  = "IEC 60364-4-43:2008, Protection against overcurrent"
  status = "from memory"
}

source "iec_60364_5_53_memory" {
  title  = "IEC 60364-5-53:2019, Selection and erection of devices for isolation, switching, control and monitoring"
  status = "from memory"
}

source "iec_60364_5_52" {
  title  = "IEC 60364-5-52:2009, Wiring systems: methods B1, B2 and E of Tables B.52.2, B.52.3, B.52.10, B.52.12 (E for XLPE under a wrong head), C of Table B.52.2; Tables B.52.14, B.52.15, B.52.17; Annex G"
  status = "transcribed"
}

source "iec_60364_5_52_memory" {
  title  = "IEC 60364-5-52:2009, Wiring systems: methods A1, A2, D1 and D2, C for XLPE; Table 52.2"
  status = "from memory"
}

source "en_50618" {
  title  = "EN 50618:2014, Electric cables for photovoltaic systems, Tables A.3 and A.4"
  status = "from memory"
}

source "iec_62109_1" {
  title  = "IEC 62109-1:2010, Safety of power converters: definition of Isc PV in the IEC's vocabulary"
  status = "transcribed"
}

source "iec_62485_2" {
  title  = "IEC 62485-2:2010 and EN 50272-2:2001, Safety requirements for secondary batteries, stationary batteries: gassing currents and air"
  status = "transcribed"
}

source "iec_62485_2_memory" {
  title  = "IEC 62485-2:2010, distance of sparks from a battery"
  status = "from memory"
}

source "iec_61643_32" {
  title  = "IEC 61643-32:2017, Surge protective devices for photovoltaic installations, as the guide UTE C 15-712-1 gives its critical length"
  status = "transcribed"
}

source "iec_60269_6" {
  title  = "IEC 60269-6:2010, Fuse-links for the protection of solar photovoltaic energy systems, as makers quote it"
  status = "transcribed"
}

source "iec_60947_3" {
  title  = "IEC 60947-3 with the photovoltaic categories of EN 60947-3:2009/A1:2012, as a maker's brochure quotes it"
  status = "transcribed"
}

source "iec_62446_1" {
  title  = "IEC 62446-1:2016, Photovoltaic (PV) systems, documentation, commissioning tests and inspection, as an inspectors' page quotes it"
  status = "transcribed"
}

parameter "ki" {
  kind    = "quantity"
  unit    = ""
  default = 1.25
  range   = [1.25, 2]
  means   = "ISC MAX as a multiple of Isc; larger for bifacial panels and unusual arrays"
}

parameter "string_fuse_school" {
  kind    = "word"
  words   = ["iec_2016", "isc_max", "hd_712"]
  default = "iec_2016"
  means   = "when a string needs a fuse and how large it is: iec_2016 by Isc, isc_max by KI x Isc, hd_712 by KI x Isc against 1.35 x the panel's rating"
}

parameter "pv_conductor_max" {
  kind    = "quantity"
  unit    = "degC"
  default = "90 degC"
  range   = ["90 degC", "120 degC"]
  means   = "temperature of the conductor that photovoltaic cable is used at; 120 degC, for 20,000 h only, or below it 90 degC"
}

parameter "building_voltage_max" {
  kind    = "quantity"
  unit    = "V"
  default = "1000 V"
  range   = ["120 V", "1500 V"]
  means   = "largest PV voltage on and in buildings, vehicles and boats"
}

parameter "bond_size_min" {
  kind    = "quantity"
  unit    = "mm2"
  default = "6 mm2"
  range   = ["2.5 mm2", "50 mm2"]
  means   = "least copper conductor that bonds the frames (16 mm2 with a lightning protection system)"
}

parameter "lighting_drop_max" {
  kind    = "quantity"
  unit    = "%"
  default = "6 %"
  range   = ["0.5 %", "10 %"]
  means   = "largest drop to a lamp; 3 % where a public supply feeds it"
}

parameter "other_drop_max" {
  kind    = "quantity"
  unit    = "%"
  default = "8 %"
  range   = ["0.5 %", "10 %"]
  means   = "largest drop to any other load; 5 % where a public supply feeds it"
}

parameter "pv_drop_max" {
  kind    = "quantity"
  unit    = "%"
  default = "3 %"
  range   = ["0.5 %", "10 %"]
  means   = "largest drop between panels and controller at standard conditions"
}

attribute "critical_length" {
  of    = "site"
  kind  = "quantity"
  unit  = "m"
  means = "length of PV cable from which surge protection is due: 115 m a dwelling, 200 m on the ground, 450 m other buildings, each divided by the flashes to ground per square kilometer and year"
}

attribute "spd_ucpv" {
  of    = "arrays"
  kind  = "quantity"
  unit  = "V"
  means = "highest continuous voltage UCPV of its surge protection"
}

attribute "class_two" {
  of    = "strings"
  kind  = "yes_no"
  means = "its cables and boxes have double or reinforced insulation"
}

attribute "insulation_resistance" {
  of    = "strings"
  kind  = "quantity"
  unit  = "ohm"
  means = "insulation resistance to earth as measured (write Mohm for a million ohm: mohm is a thousandth)"
}

attribute "insulation_test_voltage" {
  of    = "strings"
  kind  = "quantity"
  unit  = "V"
  means = "voltage that it was measured with"
}

attribute "perforated" {
  of    = "cable_runs"
  kind  = "yes_no"
  means = "its cable tray is perforated"
}

attribute "single_layer" {
  of    = "cable_runs"
  kind  = "yes_no"
  means = "where several circuits lie together they lie in one layer, not in a bunch"
}

attribute "ground_temperature" {
  of    = "cable_runs"
  kind  = "quantity"
  unit  = "degC"
  means = "warmest ground around a buried cable"
}

attribute "under_modules" {
  of    = "cable_runs"
  kind  = "yes_no"
  means = "runs under panels or touches them"
}

attribute "category" {
  of    = "disconnects"
  kind  = "word"
  words = ["PV0", "PV1", "PV2", "DC21B", "DC22B"]
  means = "utilization category (DC-PV0, DC-PV1, DC-PV2, DC-21B, DC-22B)"
}

attribute "ventilation" {
  of    = "banks"
  kind  = "word"
  words = ["natural", "forced"]
  means = "how air gets to the bank"
}

attribute "vent_area" {
  of    = "banks"
  kind  = "quantity"
  unit  = "mm2"
  means = "free area of the inlet, and as much again of the outlet"
}

attribute "forced_air" {
  of    = "banks"
  kind  = "quantity"
  unit  = "m3/h"
  means = "air that the fan moves through the bank's room or box; without it charging stops or an alarm sounds"
}

attribute "gas_current" {
  of    = "banks"
  kind  = "quantity"
  unit  = "A"
  means = "current that makes gas at the highest charging voltage, for each 100 Ah, from the battery's maker; asked above 2.40 V a cell and above 40 degC"
}

attribute "spark_distance" {
  of    = "banks"
  kind  = "quantity"
  unit  = "m"
  means = "distance of the nearest fuse, switch, controller or other source of sparks from the batteries' vents"
}

attribute "terminals_shrouded" {
  of    = "banks"
  kind  = "yes_no"
  means = "no finger can touch its terminals (IP2X, IPXXB)"
}

attribute "lighting" {
  of    = "loads"
  kind  = "yes_no"
  means = "it gives light"
}

attribute "residual_type" {
  of    = "ac_outputs"
  kind  = "word"
  words = ["none", "AC", "A", "F", "B"]
  means = "type of the residual-current device before its sockets (IEC 61008, 61009, 62423); none where there is none"
}

attribute "residual_current" {
  of    = "ac_outputs"
  kind  = "quantity"
  unit  = "A"
  means = "residual current that this device is rated for; 0 A where there is none"
}

attribute "bond_size" {
  of    = "grounding"
  kind  = "quantity"
  unit  = "mm2"
  means = "copper conductor that bonds the panels' frames"
}

attribute "earthing" {
  of    = "grounding"
  kind  = "word"
  words = ["solid", "fuse"]
  means = "how a pole of the DC side is earthed, where one is: straight, or through a fuse"
}

attribute "functional_earth_fuse" {
  of    = "grounding"
  kind  = "quantity"
  unit  = "A"
  means = "rating of the fuse in the functional earth"
}

attribute "insulation_monitor" {
  of    = "grounding"
  kind  = "yes_no"
  means = "the insulation of the array to earth is measured before it is switched on, with an alarm"
}

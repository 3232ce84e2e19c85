load "a" {
  power = 60W
  surge = 60 W
  voltage_min = 5°C
  voltage_max = 0x10
  between = 1_000
}

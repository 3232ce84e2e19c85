# expect: breaks practice.reading on reading.open

reading "open" {
  title            = "open circuit, before connecting"
  of               = "string.south.a.voc"
  value            = "46.0 V"
  taken            = "2026-05-02"
  cell_temperature = "41 degC"
  irradiance       = "820 W/m2"
}

bank "ho​use" {
  battery = "fell⁠-200"
  take_off = "dia­gonal"
}

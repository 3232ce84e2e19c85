waiver "practice.voltage_drop" {
  reason = <<-EOT
  cable is "buried
  EOT
  expires = date(1)
}

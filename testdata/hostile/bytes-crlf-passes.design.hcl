design "Fell hut" {
  revision = "A"
}

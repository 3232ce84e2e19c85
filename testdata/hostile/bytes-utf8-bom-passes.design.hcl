design "Fell hut" {}

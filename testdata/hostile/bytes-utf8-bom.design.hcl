design "Fell hut" {}
site { place = (1) }

design "Fell\u0000hut" {}

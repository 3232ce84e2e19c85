design "Fell hut" {}
# one two
# onetwo

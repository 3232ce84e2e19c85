design "Fell [31mhut" {}
# bell 
site {}

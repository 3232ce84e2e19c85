design "a" { revision = "C" parts = [] }

design "a \"quoted\" \\ \n \t \u00b0 \U0001F50B" {}

design "Fell \u001b[31mhut" {}
bank "a\u007f" {}
bank "b\U0000009b" {}

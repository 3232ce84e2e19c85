bank "ho‍use" {}
bank "hou️se" {}

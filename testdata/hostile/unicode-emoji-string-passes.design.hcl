design "hut 🔋" {}
# 🔋

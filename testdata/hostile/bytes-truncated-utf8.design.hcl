# 5 â„
site {}

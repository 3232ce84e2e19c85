# expect: meets us_2023.scope on site

# expect: meets practice.design_cold on site

# expect: meets datasheet.converter_efficiency on converter.rush-20

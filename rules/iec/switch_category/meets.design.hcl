# expect: meets iec.switch_category on disconnect.array.south

# expect: meets limits.converter_surge on load.radio

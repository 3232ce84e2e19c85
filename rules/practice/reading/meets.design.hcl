# expect: meets practice.reading on reading.open

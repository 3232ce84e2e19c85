# expect: meets practice.surge_protection on grounding

# expect: meets limits.dc_bond on grounding

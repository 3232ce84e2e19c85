# expect: meets limits.neutral_bond on grounding

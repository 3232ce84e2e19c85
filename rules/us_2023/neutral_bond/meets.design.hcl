# expect: meets us_2023.neutral_bond on grounding

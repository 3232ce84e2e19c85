# expect: meets marine.one_bond on grounding

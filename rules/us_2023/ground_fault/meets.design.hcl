# expect: meets us_2023.ground_fault on grounding

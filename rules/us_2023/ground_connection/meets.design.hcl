# expect: meets us_2023.ground_connection on grounding

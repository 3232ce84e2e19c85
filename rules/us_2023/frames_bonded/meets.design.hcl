# expect: meets us_2023.frames_bonded on grounding

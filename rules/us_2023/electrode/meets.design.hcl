# expect: meets us_2023.electrode on grounding (electrode)
# expect: meets us_2023.electrode on grounding (conductor)

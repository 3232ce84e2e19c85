# expect: meets limits.frames_bonded on grounding

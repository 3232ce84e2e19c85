# expect: meets iec.bond_size on grounding

# expect: meets iec.branch_drop on load.lights

# expect: meets marine.second_supply on load.lights

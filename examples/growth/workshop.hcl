# Three designs, one store room: the parts stay the same while the system grows.
parts = ["parts/*.parts.hcl"]

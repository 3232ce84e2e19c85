# expect: meets practice.clipped_energy on charger.main

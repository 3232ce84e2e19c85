# expect: meets practice.settings_locked on charger.main

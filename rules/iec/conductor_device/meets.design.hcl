# expect: meets iec.conductor_device on protection.charger.main

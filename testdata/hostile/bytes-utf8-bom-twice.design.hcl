﻿design "Fell hut" {}

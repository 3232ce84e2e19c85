site {‪}

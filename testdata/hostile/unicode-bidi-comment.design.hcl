# safe ⁦ not
site {}
/* and
 ‏ here */

//go:build race

package main

// underRace tells that the race detector is on. A worker that is built with it needs
// several times the memory, and its limits would end the honest too.
const underRace = true

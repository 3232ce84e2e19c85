//go:build race

package rules_test

// underRace tells that the race detector is on, under which a mutant takes ten
// times as long: it then sees those of the smallest book alone.
const underRace = true

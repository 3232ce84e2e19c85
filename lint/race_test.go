//go:build race

package lint_test

// underRace tells that the race detector is on, under which everything takes ten
// times as long.
const underRace = true

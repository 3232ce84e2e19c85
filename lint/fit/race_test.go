//go:build race

package fit_test

// underRace tells that the race detector is on, under which everything takes ten
// times as long. Where a test puts the same code to many designs, a few are enough
// to see goroutines meet.
const underRace = true

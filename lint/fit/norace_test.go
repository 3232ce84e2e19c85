//go:build !race

package fit_test

const underRace = false

//go:build !race

package rules_test

const underRace = false

//go:build !race

package lint_test

const underRace = false

//go:build !race

package starter_test

const underRace = false

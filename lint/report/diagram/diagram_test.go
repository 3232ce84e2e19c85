package diagram_test

import (
	"testing"

	"stringline/lint/report/diagram"
)

func TestExamplesDraw(t *testing.T) {
	for _, d := range judged(t, exampleTexts(t), "examples") {
		if len(drawn(t, &d, diagram.Wide())) < 1000 {
			t.Errorf("%s: hardly anything is drawn", d.File)
		}
	}
}

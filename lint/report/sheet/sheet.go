package sheet

import (
	"io"

	"stringline/lint"
)

func Parts(w io.Writer, d *lint.DesignResult) error { return nil }
func Write(w io.Writer, r *lint.Result, d *lint.DesignResult) error { return nil }
func Told(r *lint.Result, d *lint.DesignResult) string { return "" }

// Package linttest helps to test what uses the pipeline: a disk in memory, texts of
// a tree, and a run over them.
package linttest

import (
	"io/fs"
	"strings"
	"testing/fstest"

	"stringline/lint/survey"
)

// Disk is a [survey.Disk] over texts by absolute name without the leading "/".
// It has no links, so nothing leads out of a tree.
type Disk fstest.MapFS

var _ survey.Disk = Disk(nil)

// NewDisk makes a disk that holds the texts, by name.
func NewDisk(texts map[string]string) Disk {
	d := Disk{}
	for name, text := range texts {
		d[name] = &fstest.MapFile{Data: []byte(text)}
	}
	return d
}

// Root opens a folder.
func (d Disk) Root(dir string) (fs.FS, error) { return fs.Sub(fstest.MapFS(d), inside(dir)) }

// Stat looks at a file or a folder.
func (d Disk) Stat(name string) (fs.FileInfo, error) { return fs.Stat(fstest.MapFS(d), inside(name)) }

func inside(name string) string {
	if name == "/" {
		return "."
	}
	return strings.TrimPrefix(name, "/")
}

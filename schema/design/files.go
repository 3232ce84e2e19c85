package design

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"path"
	"strings"

	"stringline/schema/hcltext"
	"stringline/schema/source"
)

// ReadFile reads one file of a confined tree, at most one byte more than the
// guard accepts. Only a regular file is opened: opening a named pipe would
// wait for ever. The error says what is wrong without the file's name, and
// without any path of the machine.
func ReadFile(files fs.FS, name string) ([]byte, error) {
	return readUpTo(files, name, source.MaxBytes+1)
}

// Title gives the label of a text's design block without reading what it means: ""
// where there is none, or the text is one that the guard refuses.
func Title(text []byte) string {
	body, _, _ := hcltext.Parse(source.NewFile("", text))
	title := ""
	for i := range body.Blocks {
		if b := &body.Blocks[i]; b.Keyword == "design" && len(b.Labels) == 1 {
			if title != "" {
				return "" // which one counts is not known
			}
			title = b.Labels[0].Text
		}
	}
	return title
}

// maxWeatherBytes bounds a weather file: a year of ten-minute steps takes some
// 10 MiB.
const maxWeatherBytes = 16 << 20

func readUpTo(files fs.FS, name string, limit int64) ([]byte, error) {
	if err := readable(files, name); err != nil {
		return nil, err
	}
	f, err := files.Open(name)
	if err != nil {
		return nil, PlainFault(err)
	}
	defer f.Close()
	if info, err := f.Stat(); err == nil && !info.Mode().IsRegular() {
		return nil, notRegular(info.Mode())
	}
	text, err := io.ReadAll(io.LimitReader(f, limit))
	if err != nil {
		return nil, PlainFault(err)
	}
	return text, nil
}

// readable tells why a file cannot be read, without opening it.
func readable(files fs.FS, name string) error {
	if files == nil {
		return errors.New("no files can be read here")
	}
	if !fs.ValidPath(name) {
		return errors.New("the path leaves the folder of the workshop")
	}
	info, err := fs.Stat(files, name)
	if err != nil {
		return PlainFault(err)
	}
	if !info.Mode().IsRegular() {
		return notRegular(info.Mode())
	}
	return nil
}

func notRegular(mode fs.FileMode) error {
	if mode.IsDir() {
		return errors.New("it is a folder, not a file")
	}
	return errors.New("it is no regular file")
}

// PlainFault keeps the cause of a file error and drops the path: the operating
// system's is one of this machine.
func PlainFault(err error) error {
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return errors.New("no such file")
	case errors.Is(err, fs.ErrPermission):
		return errors.New("not allowed to read it")
	}
	var p *fs.PathError
	if errors.As(err, &p) {
		err = p.Err
	}
	if strings.Contains(err.Error(), "escapes") { // the text of os.Root's error, which has no name to test for
		return errors.New("a symbolic link leads out of the folder of the workshop")
	}
	if strings.Contains(err.Error(), "too many levels of symbolic links") {
		return errors.New("its symbolic links go round in a circle")
	}
	return err
}

// Resolve gives the path inside the tree of what a file names, relative to
// that file's folder. An absolute path, and one that leaves the tree, is an
// error.
func Resolve(folder, name string) (string, error) {
	switch {
	case name == "":
		return "", errors.New("the path is empty")
	case strings.Contains(name, `\`):
		return "", errors.New("paths are written with / between folders")
	case path.IsAbs(name) || len(name) > 1 && name[1] == ':':
		return "", errors.New("the path is absolute; it must be relative to the file that names it")
	}
	joined := path.Join(folder, name)
	if !fs.ValidPath(joined) {
		return "", errors.New("the path leaves the folder of the workshop")
	}
	return joined, nil
}

// glob expands a pattern relative to a folder, in the order of the names.
func glob(files fs.FS, folder, pattern string) ([]string, error) {
	if strings.Contains(pattern, "**") {
		return nil, errors.New("** is not understood; * stands for any name in one folder")
	}
	escaped := globEscape.Replace(folder)
	if _, err := Resolve(folder, pattern); err != nil {
		return nil, err
	}
	full := path.Join(escaped, pattern)
	if !strings.ContainsAny(pattern, "*?[") {
		return []string{path.Join(folder, pattern)}, nil
	}
	if files == nil {
		return nil, errors.New("no files can be read here")
	}
	found, err := fs.Glob(files, full)
	if err != nil {
		return nil, fmt.Errorf("the pattern is not well formed: %w", err)
	}
	if len(found) == 0 {
		return nil, errors.New("no file matches")
	}
	return found, nil
}

var globEscape = strings.NewReplacer(`\`, `\\`, `*`, `\*`, `?`, `\?`, `[`, `\[`)

package main

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"stringline/lint"
	"stringline/lint/report"
	"stringline/schema/source"
)

// archiveSuffix ends the name of an archive; a workshop knows one by it.
const archiveSuffix = ".zip"

func (s *streams) codebookExport(code *int) *cobra.Command {
	c := &cobra.Command{
		Use:   "export [FOLDER]",
		Short: "write a codebook as one file, signed where wanted",
		Long: "Packs the codebook in FOLDER into one archive, FILE of -o, and tells its SHA-256.\n" +
			"The same files give the same archive, to the byte. With --key it is signed, and\n" +
			"the signature stands beside it as FILE.sig. A workshop names the archive by path,\n" +
			"and may pin its digest and the public key; what does not match does not run.\n\n" +
			"--schema writes what tools for Rego in editors want to know: the schema of a\n" +
			"rule's input (with FOLDER, with what its codebook declares) and the functions\n" +
			"that rules and their tests may call.",
		Example: "  stringline codebook export codebooks/county -o county.zip\n" +
			"  stringline codebook export codebooks/county -o county.zip --key private.pem\n" +
			"  stringline codebook export codebooks/county --schema editor",
	}
	option := c.Flags()
	option.StringP("output", "o", "", "write the archive to `FILE`, named *"+archiveSuffix)
	option.String("key", "", "sign by the private key in `PEM` (PKCS #8: ECDSA on P-256, or Ed25519)")
	option.String("schema", "", "write the files for editors into `DIR`")
	c.RunE = func(c *cobra.Command, args []string) error {
		want := exportRequest{}
		for name, to := range map[string]*string{"output": &want.file, "key": &want.key, "schema": &want.schema} {
			text, err := c.Flags().GetString(name)
			if err != nil {
				return fmt.Errorf("reading --%s: %w", name, err)
			}
			if c.Flags().Changed(name) && text == "" {
				return fmt.Errorf("--%s: the name is empty", name)
			}
			*to = text
		}
		switch {
		case len(args) > 1:
			return fmt.Errorf("export takes one FOLDER: stringline codebook %s", c.Use)
		case want.file == "" && want.key != "":
			return errors.New("--key signs an archive, so -o FILE is needed")
		case want.file == "" && want.schema == "":
			return errors.New("export needs -o FILE for the archive, or --schema DIR")
		case want.file != "" && len(args) == 0:
			return errors.New("export -o needs the codebook's FOLDER")
		case want.file != "" && !strings.HasSuffix(want.file, archiveSuffix):
			return fmt.Errorf("-o %s: the name of an archive ends in %s, by which a workshop knows it", want.file, archiveSuffix)
		}
		if len(args) == 1 {
			if want.folder = slashed(args[0]); want.folder == "" {
				return errors.New("the folder's name is empty")
			}
		}
		o, err := s.bookOptions()
		if err != nil {
			return err
		}
		said, problems, err := want.run(c, o)
		if err != nil {
			return err
		}
		if len(problems) > 0 {
			*code = 2
			for _, p := range problems {
				s.say(p.Error())
			}
			return nil
		}
		*code = s.write(0, func(w io.Writer) error { return text(w, said) })
		return nil
	}
	return c
}

type exportRequest struct{ folder, file, key, schema string }

// run does what is asked and gives what is told of it.
func (r *exportRequest) run(c *cobra.Command, o lint.BookOptions) (string, source.Problems, error) {
	var said strings.Builder
	if r.file != "" {
		var key []byte
		if r.key != "" {
			var err error
			if key, err = readSmall(r.key, 1<<16); err != nil {
				return "", nil, fmt.Errorf("reading the private key: %w", err)
			}
		}
		e, err := lint.ExportBook(c.Context(), o, r.folder, key)
		if err != nil {
			return "", nil, err
		}
		if len(e.Problems) > 0 {
			return "", e.Problems, nil
		}
		if err := r.writeArchive(e); err != nil {
			return "", nil, fmt.Errorf("writing the archive: %w", err)
		}
		fmt.Fprintf(&said, "%s  %s\n", e.Digest, report.Escape(r.file))
		if e.Signature != nil {
			fmt.Fprintf(&said, "signed in %s\n", report.Escape(r.file+lint.SignatureSuffix))
		}
	}
	if r.schema != "" {
		files, problems, err := lint.EditorFiles(o, r.folder)
		if err != nil || len(problems) > 0 {
			return "", problems, err
		}
		if _, err := os.Stat(native(r.folder)); err == nil { // not one that comes with the program
			if inside, err := isInside(native(r.folder), r.schema); err != nil || inside {
				return "", nil, errors.Join(err, fmt.Errorf("%s would lie in the codebook's own folder, which has no place for it", r.schema))
			}
		}
		if err := os.MkdirAll(r.schema, 0o755); err != nil {
			return "", nil, fmt.Errorf("writing the files for editors: %w", err)
		}
		for _, name := range slices.Sorted(maps.Keys(files)) {
			if err := replaceFile(filepath.Join(r.schema, name), files[name]); err != nil {
				return "", nil, fmt.Errorf("writing the files for editors: %w", err)
			}
			fmt.Fprintf(&said, "%s written\n", report.Escape(filepath.ToSlash(filepath.Join(r.schema, name))))
		}
	}
	return said.String(), nil, nil
}

// writeArchive writes the archive and its signature. A signature of an earlier
// archive must not stay beside one that it is not of.
func (r *exportRequest) writeArchive(e *lint.Export) error {
	folder, err := filepath.EvalSymlinks(native(r.folder))
	if err != nil {
		return err
	}
	into, err := filepath.EvalSymlinks(filepath.Dir(r.file))
	if err != nil {
		return err
	}
	if inside, err := isInside(folder, into); err != nil || inside {
		return errors.Join(err, fmt.Errorf("%s would lie in the codebook's own folder, which has no place for it", r.file))
	}
	signature := r.file + lint.SignatureSuffix
	if e.Signature == nil {
		before, err := os.ReadFile(r.file)
		if _, there := os.Lstat(signature); there == nil && (err != nil || !bytes.Equal(before, e.Archive)) {
			return fmt.Errorf("%s is there and would not be of this archive: give --key, or take it away", signature)
		}
		return replaceFile(r.file, e.Archive)
	}
	if err := replaceFile(r.file, e.Archive); err != nil {
		return err
	}
	return replaceFile(signature, e.Signature)
}

func isInside(folder, name string) (bool, error) {
	folder, err := filepath.Abs(folder)
	if err != nil {
		return false, err
	}
	if name, err = filepath.Abs(name); err != nil {
		return false, err
	}
	between, err := filepath.Rel(folder, name)
	return err == nil && filepath.IsLocal(between), nil
}

// replaceFile writes a file whole or not at all. What stands there is replaced
// where it is a regular file.
func replaceFile(name string, text []byte) (err error) {
	if info, err := os.Lstat(name); err == nil && !info.Mode().IsRegular() {
		return &fs.PathError{Op: "write", Path: name, Err: errIrregular}
	}
	f, err := os.CreateTemp(filepath.Dir(name), "."+filepath.Base(name)+".*")
	if err != nil {
		return writeFault(err)
	}
	defer func() {
		if err != nil {
			err = errors.Join(err, os.Remove(f.Name()))
		}
	}()
	_, err = f.Write(text)
	if err = errors.Join(err, f.Chmod(0o644), f.Close()); err != nil {
		return writeFault(err)
	}
	return writeFault(os.Rename(f.Name(), name))
}

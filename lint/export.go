package lint

import (
	"context"
	"fmt"

	"stringline/lint/judge"
	"stringline/lint/survey"
	"stringline/schema/codebook"
	"stringline/schema/source"
)

// Export is a codebook as one file.
type Export struct {
	Name, Version string // of the codebook
	Archive       []byte // the same for the same files
	Digest        string // "sha256:…" over the archive
	Signature     []byte // over the archive; nil where no key was given
	Problems      source.Problems
}

// ExportBook packs the codebook in a folder into an archive and, where key (a
// private key, PKCS #8 in PEM: ECDSA on P-256 or Ed25519) is not nil, signs it.
// The archive is loaded before it is given, so a codebook with any problem gives
// none, and the problems. The error is about the key.
func ExportBook(ctx context.Context, o BookOptions, folder string, key []byte) (*Export, error) {
	src, problem := bookSource(o, folder)
	if problem != nil {
		return &Export{Problems: source.Problems{*problem}}, nil
	}
	bad := func(err error) *Export {
		return &Export{Problems: source.Problems{{Kind: "codebook", Message: fmt.Sprintf("exporting the codebook: %v", err), At: source.Range{File: folder}}}}
	}
	if src.Embedded {
		return bad(fmt.Errorf("%s comes with the program, so every workshop has it", src.Name)), nil
	}
	archive, err := judge.Pack(src.Files)
	if err != nil {
		return bad(err), nil
	}
	// What is loaded is the archive and not the folder, which may change meanwhile.
	if src.Files, err = judge.Unpack(archive); err != nil {
		return bad(err), nil
	}
	src.Digest = judge.ArchiveDigest(archive)
	book, problems := judge.Load(ctx, src)
	if book == nil {
		return &Export{Problems: problems}, nil
	}
	defer book.Close()
	if problems := tooNew(book, o.Version); len(problems) > 0 {
		return &Export{Problems: problems}, nil
	}
	e := &Export{Name: book.Name(), Version: book.Codebook().Version, Archive: archive, Digest: book.Digest()}
	if key != nil {
		if e.Signature, err = sign(archive, key); err != nil {
			return nil, fmt.Errorf("signing the archive: %w", err)
		}
	}
	return e, nil
}

// EditorFiles gives the schema of a rule's `input` and the capabilities of the
// rule engine, as JSON by file name, for tools for Rego in editors. With a
// codebook's folder (or the name of one that comes with the program) the schema
// has what that declares; "" leaves it out. Only codebook.hcl must be sound: it is
// while rules are not yet that an editor helps most.
func EditorFiles(o BookOptions, folder string) (map[string][]byte, source.Problems, error) {
	var book *codebook.Codebook
	if folder != "" {
		src, problem := bookSource(o, folder)
		if problem != nil {
			return nil, source.Problems{*problem}, nil
		}
		book = codebook.Load(src.Files, survey.CodebookFile, func(name string) string {
			if src.Show == "" {
				return name
			}
			return src.Show + "/" + name
		})
		if len(book.Problems) > 0 {
			return nil, book.Problems, nil
		}
	}
	files, err := judge.EditorFiles(book)
	return files, nil, err
}

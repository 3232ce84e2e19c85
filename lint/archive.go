package lint

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"path"
	"sync"

	"stringline/lint/judge"
	"stringline/lint/survey"
	"stringline/schema/design"
	"stringline/schema/source"
	"stringline/schema/workshop"
)

// SignatureSuffix follows an archive's name in the name of its signature.
const SignatureSuffix = ".sig"

// parcel is a codebook from outside as it lies in a workshop: a folder or an
// archive. It is opened once a run, and what was held against its pins is what
// runs.
type parcel struct {
	once   sync.Once
	files  fs.FS
	digest string // of an archive; a folder's is known once it is loaded
	refuse *source.Problem
}

// parcelOf opens an outside codebook. What its pins do not allow is not read any
// further.
func (r *room) parcelOf(b workshop.Book) *parcel {
	r.mutex.Lock()
	p, ok := r.parcels[b.Name]
	if !ok {
		p = &parcel{}
		r.parcels[b.Name] = p
	}
	r.mutex.Unlock()
	p.once.Do(func() { p.open(r.place.Tree, path.Join(r.workshop.Folder, b.Path), b) })
	return p
}

func (p *parcel) bad(b workshop.Book, kind, message, expected, found string) {
	p.refuse = &source.Problem{Kind: kind, Message: message, Block: "codebook." + b.Name, Expected: expected, Found: found, At: b.At}
}

func (p *parcel) open(tree fs.FS, name string, b workshop.Book) {
	if info, err := fs.Stat(tree, name); err == nil && info.Mode().IsRegular() {
		p.openArchive(tree, name, b)
		return
	}
	if b.Key != "" {
		p.bad(b, "codebook", fmt.Sprintf("codebook %q names a key, but a folder carries no signature: export it (stringline codebook export --key) and name the archive, or pin its digest", b.Name), "an archive", "a folder")
		return
	}
	files, err := fs.Sub(tree, name)
	if err == nil {
		_, err = fs.Stat(files, survey.CodebookFile)
	}
	if err != nil {
		p.bad(b, "codebook", fmt.Sprintf("reading codebook %q: no %s in folder %s", b.Name, survey.CodebookFile, b.Path), "a codebook's folder", b.Path)
		return
	}
	p.files = files
}

func (p *parcel) openArchive(tree fs.FS, name string, b workshop.Book) {
	archive, err := readBounded(tree, name, judge.ArchiveBytes)
	if err != nil {
		p.bad(b, "file", fmt.Sprintf("reading codebook %q: reading %s: %v", b.Name, b.Path, err), "an archive", b.Path)
		return
	}
	p.digest = judge.ArchiveDigest(archive)
	if b.Digest != "" && b.Digest != p.digest {
		p.bad(b, "digest", fmt.Sprintf("codebook %q is not the one that was pinned: the archive's bytes have another digest than the one in %s. An archive's digest is of its bytes, as codebook export prints it, a folder's of its files: they are never the same", b.Name, b.At.File), b.Digest, p.digest)
		return
	}
	if b.Key != "" {
		if err := signed(tree, name, archive, b); err != nil {
			p.bad(b, "signature", fmt.Sprintf("codebook %q is not signed as it must be: %v", b.Name, err), "a signature by the key "+b.Key, "none that holds")
			return
		}
	}
	if p.files, err = judge.Unpack(archive); err != nil {
		p.bad(b, "codebook", fmt.Sprintf("reading codebook %q: %v", b.Name, err), "an archive that codebook export wrote", b.Path)
	}
}

// signed holds the signature beside an archive against the pinned key.
func signed(tree fs.FS, name string, archive []byte, b workshop.Book) error {
	key, err := readBounded(tree, b.Key, longestKey+1)
	if err != nil {
		return fmt.Errorf("reading the public key %s: %w", b.Key, err)
	}
	signature, err := readBounded(tree, name+SignatureSuffix, longestSignature+1)
	if err != nil {
		return fmt.Errorf("reading the signature %s: %w", b.Path+SignatureSuffix, err)
	}
	return verify(archive, signature, key)
}

// readBounded reads no more of a file than most bytes.
func readBounded(tree fs.FS, name string, most int64) (text []byte, err error) {
	f, err := tree.Open(name)
	if err != nil {
		return nil, design.PlainFault(err)
	}
	defer func() { err = errors.Join(err, f.Close()) }()
	return io.ReadAll(io.LimitReader(f, most))
}

package judge

import (
	"archive/zip"
	"bytes"
	"crypto/sha256"
	"encoding/binary"
	"encoding/hex"
	"errors"
	"fmt"
	"hash/crc32"
	"io"
	"io/fs"
	"maps"
	"slices"
	"strings"
)

// A codebook can travel as one file, its archive: a zip whose entries are the
// folder's files in order of their names, stored as they are, with no times. One
// codebook has one archive, to the byte, so that whoever writes it anew gets the
// same digest; and [Unpack] takes that form alone, so that no other reader of
// zips can see in it anything else than what runs here.

// largestArchive is what the largest codebook can come to, with the names, which
// stand twice, and the zip's own records.
const (
	largestArchive = largestBook + mostFiles*2*(longestEntry+64)
	longestEntry   = 128 // bytes in a file's name
)

// Why an archive is refused.
var (
	ErrArchiveLarge     = errors.New("the archive is too large")
	ErrArchiveForm      = errors.New("it is not as `stringline codebook export` writes archives")
	ErrArchiveCount     = fmt.Errorf("more than %d files", mostFiles)
	ErrArchiveName      = errors.New("a name that is not a plain relative path in ASCII")
	ErrArchiveTwice     = errors.New("a name that stands twice")
	ErrArchiveCase      = errors.New("names that differ in upper and lower case alone")
	ErrArchiveIrregular = errors.New("an entry that is not a regular file")
	ErrArchivePacked    = errors.New("an entry that is compressed")
	ErrArchiveFile      = fmt.Errorf("a file larger than %d KiB", largestFile>>10)
	ErrArchiveBook      = fmt.Errorf("more than %d MiB in all its files", largestBook>>20)
	ErrArchiveContent   = errors.New("an entry whose content is damaged")
)

// Pack writes the archive of a codebook's folder. The same files give the same
// bytes. The error is one of those above where [Unpack] would refuse the archive.
func Pack(folder fs.FS) ([]byte, error) {
	contents, entries, size := map[string][]byte{}, newEntries(), 0
	err := fs.WalkDir(folder, ".", func(name string, d fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		if d.IsDir() {
			return nil
		}
		if !d.Type().IsRegular() {
			return refused(ErrArchiveIrregular, name)
		}
		if err := entries.add(name); err != nil {
			return err
		}
		f, err := folder.Open(name)
		if err != nil {
			return err
		}
		text, err := content(f, name, &size)
		contents[name] = text
		return err
	})
	if err != nil {
		return nil, fmt.Errorf("packing the codebook: %w", err)
	}
	archive, err := writeArchive(contents)
	if err != nil {
		return nil, fmt.Errorf("packing the codebook: %w", err)
	}
	return archive, nil
}

// Unpack gives the files of an archive, in memory: nothing is written anywhere.
// The archive is not to be changed afterward. Whatever [Pack] does not write is
// refused with one of the errors above, before more than the bounds on a codebook
// is read.
func Unpack(archive []byte) (fs.FS, error) {
	files, err := unpack(archive)
	if err != nil {
		return nil, fmt.Errorf("reading the archive: %w", err)
	}
	return files, nil
}

func unpack(archive []byte) (fs.FS, error) {
	if len(archive) > largestArchive {
		return nil, ErrArchiveLarge
	}
	if err := directory(archive); err != nil {
		return nil, err
	}
	r, err := zip.NewReader(bytes.NewReader(archive), int64(len(archive)))
	if err != nil && !errors.Is(err, zip.ErrInsecurePath) { // names are told below
		return nil, fmt.Errorf("%w: %w", ErrArchiveForm, err)
	}
	contents, entries, size := map[string][]byte{}, newEntries(), 0
	for _, f := range r.File {
		if !f.Mode().IsRegular() {
			return nil, refused(ErrArchiveIrregular, f.Name)
		}
		if err := entries.add(f.Name); err != nil {
			return nil, err
		}
		if f.Method != zip.Store {
			return nil, refused(ErrArchivePacked, f.Name)
		}
		opened, err := f.Open()
		if err != nil {
			return nil, fmt.Errorf("%w: %w", refused(ErrArchiveContent, f.Name), err)
		}
		if contents[f.Name], err = content(opened, f.Name, &size); err != nil {
			return nil, err
		}
	}
	again, err := writeArchive(contents)
	if err != nil {
		return nil, err
	}
	if !bytes.Equal(again, archive) {
		return nil, ErrArchiveForm
	}
	return r, nil
}

// directory looks at the end of an archive, which says how many entries there are
// and how long their list is, before the list is read: it may not take much more
// memory than the list of a codebook.
func directory(archive []byte) error {
	const length = 22
	end := len(archive) - length
	if end < 0 || !bytes.HasPrefix(archive[end:], []byte("PK\x05\x06")) {
		return ErrArchiveForm
	}
	count := binary.LittleEndian.Uint16(archive[end+10:])
	size, offset := uint64(binary.LittleEndian.Uint32(archive[end+12:])), uint64(binary.LittleEndian.Uint32(archive[end+16:]))
	switch {
	case count > mostFiles, size > mostFiles*(46+longestEntry):
		return ErrArchiveCount
	case offset+size != uint64(end):
		return ErrArchiveForm
	}
	return nil
}

// content reads one file, and never more of it than one byte over the bounds.
// size counts what all files hold so far.
func content(f io.ReadCloser, name string, size *int) (text []byte, err error) {
	text, err = io.ReadAll(io.LimitReader(f, largestFile+1))
	err = errors.Join(err, f.Close())
	*size += len(text)
	switch {
	case len(text) > largestFile:
		return nil, refused(ErrArchiveFile, name)
	case *size > largestBook:
		return nil, ErrArchiveBook
	case err != nil:
		return nil, fmt.Errorf("%w: %w", refused(ErrArchiveContent, name), err)
	}
	return text, nil
}

// writeArchive gives the one archive of some files.
func writeArchive(contents map[string][]byte) ([]byte, error) {
	var b bytes.Buffer
	w := zip.NewWriter(&b)
	for _, name := range slices.Sorted(maps.Keys(contents)) {
		text := contents[name]
		size := uint64(len(text))
		entry, err := w.CreateRaw(&zip.FileHeader{ // raw: all its fields are ours, and none follows the content
			Name: name, Method: zip.Store, CreatorVersion: 20, ReaderVersion: 20,
			CRC32: crc32.ChecksumIEEE(text), CompressedSize64: size, UncompressedSize64: size,
		})
		if err != nil {
			return nil, err
		}
		if _, err := entry.Write(text); err != nil {
			return nil, err
		}
	}
	if err := w.Close(); err != nil {
		return nil, err
	}
	return b.Bytes(), nil
}

// entries holds names against one another.
type entries struct {
	count int
	seen  map[string]seen // by the lower-case form, folders too
}

type seen struct {
	name string
	file bool
}

func newEntries() *entries { return &entries{seen: map[string]seen{}} }

// add takes one more file's name.
func (e *entries) add(name string) error {
	if e.count++; e.count > mostFiles {
		return ErrArchiveCount
	}
	if !plainName(name) {
		return refused(ErrArchiveName, name)
	}
	for i := 0; i <= len(name); i++ {
		if i < len(name) && name[i] != '/' {
			continue
		}
		part, file := name[:i], i == len(name)
		lower := strings.ToLower(part)
		before, ok := e.seen[lower]
		switch {
		case ok && before.name != part:
			return refused(ErrArchiveCase, name)
		case ok && (file || before.file):
			return refused(ErrArchiveTwice, name)
		}
		e.seen[lower] = seen{part, file}
	}
	return nil
}

// plainName tells whether a name means the same file everywhere: relative, no
// step up, "/" between folders. Letters outside ASCII are out, since two of them
// may look alike or be one to a file system.
func plainName(name string) bool {
	if len(name) > longestEntry || name == "." || !fs.ValidPath(name) {
		return false
	}
	return !strings.ContainsFunc(name, func(r rune) bool { return r < ' ' || r > '~' || r == '\\' || r == ':' })
}

func refused(why error, name string) error { return fmt.Errorf("%w: %s", why, quote(name)) }

// ArchiveDigest is "sha256:…" over an archive's bytes.
func ArchiveDigest(archive []byte) string {
	sum := sha256.Sum256(archive)
	return "sha256:" + hex.EncodeToString(sum[:])
}

// ArchiveBytes bounds what is read of a file that should be an archive.
const ArchiveBytes = largestArchive + 1

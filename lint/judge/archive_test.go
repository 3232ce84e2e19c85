package judge_test

import (
	"archive/zip"
	"bytes"
	"encoding/binary"
	"errors"
	"fmt"
	"hash/crc32"
	"io/fs"
	"strings"
	"testing"
	"testing/fstest"
	"time"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"stringline/lint/judge"
)

// file is one entry of an archive as nobody should write it.
type file struct {
	header zip.FileHeader
	text   string
	mode   fs.FileMode
	raw    bool
}

func named(names ...string) []file {
	var all []file
	for _, name := range names {
		all = append(all, file{header: zip.FileHeader{Name: name}})
	}
	return all
}

func zipped(t testing.TB, files ...file) []byte {
	t.Helper()
	var b bytes.Buffer
	w := zip.NewWriter(&b)
	for _, f := range files {
		if f.mode != 0 {
			f.header.SetMode(f.mode)
		}
		create := w.CreateHeader
		if f.raw {
			create = w.CreateRaw
		}
		entry, err := create(&f.header)
		if err == nil && f.text != "" {
			_, err = entry.Write([]byte(f.text))
		}
		if err != nil {
			t.Fatal(err)
		}
	}
	if err := w.Close(); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

func packed(t testing.TB, texts map[string]string) []byte {
	t.Helper()
	archive, err := judge.Pack(tree(texts))
	if err != nil {
		t.Fatal(err)
	}
	return archive
}

func tree(texts map[string]string) fstest.MapFS {
	files := fstest.MapFS{}
	for name, text := range texts {
		files[name] = &fstest.MapFile{Data: []byte(text), ModTime: time.Unix(1e9, 0)}
	}
	return files
}

// TestHostileArchives: each is refused, by name, and nothing panics.
func TestHostileArchives(t *testing.T) {
	sound := packed(t, map[string]string{"codebook.hcl": "name = \"a\"\n", "rule/rule.rego": "package x\n"})
	many := make([]file, 5001)
	for i := range many {
		many[i].header.Name = fmt.Sprintf("f%04d", i)
	}
	crowded := make([]file, 60000)
	for i := range crowded {
		crowded[i].header.Name = fmt.Sprintf("f%05d", i)
	}
	hidden := zipped(t, crowded...) // an end that owns up to one entry
	copy(hidden[len(hidden)-14:], "\x01\x00\x01\x00")
	var heavy []file
	for i := range 33 {
		heavy = append(heavy, file{header: zip.FileHeader{Name: fmt.Sprintf("f%02d", i)}, text: strings.Repeat("x", 256<<10)})
	}
	// Two entries of the directory that share one content, as bombs of
	// overlapping files do: the second's offset is that of the first.
	overlapping := zipped(t, named("a", "b")...)
	second := bytes.LastIndex(overlapping, []byte("PK\x01\x02"))
	copy(overlapping[second+42:second+46], "\x00\x00\x00\x00")

	for _, c := range []struct {
		name    string
		archive []byte
		want    error
	}{
		{"nothing", nil, judge.ErrArchiveForm},
		{"no archive", []byte("name = \"county\"\n"), judge.ErrArchiveForm},
		{"cut short", sound[:len(sound)-1], judge.ErrArchiveForm},
		{"bytes before it", append([]byte("#!/bin/sh\n"), sound...), judge.ErrArchiveForm},
		{"bytes behind it", append(bytes.Clone(sound), 0), judge.ErrArchiveForm},
		{"another archive before it", append(bytes.Clone(sound), sound...), judge.ErrArchiveForm},
		{"a link", zipped(t, file{header: zip.FileHeader{Name: "a"}, text: "/etc/passwd", mode: fs.ModeSymlink | 0o777}), judge.ErrArchiveIrregular},
		{"a pipe", zipped(t, file{header: zip.FileHeader{Name: "a"}, mode: fs.ModeNamedPipe | 0o666}), judge.ErrArchiveIrregular},
		{"a device", zipped(t, file{header: zip.FileHeader{Name: "a"}, mode: fs.ModeDevice | 0o666}), judge.ErrArchiveIrregular},
		{"a folder", zipped(t, named("rule/")...), judge.ErrArchiveIrregular},
		{"a step up", zipped(t, named("../codebook.hcl")...), judge.ErrArchiveName},
		{"a step up inside", zipped(t, named("a/../codebook.hcl")...), judge.ErrArchiveName},
		{"an absolute name", zipped(t, named("/codebook.hcl")...), judge.ErrArchiveName},
		{"a backslash", zipped(t, named(`rule\rule.rego`)...), judge.ErrArchiveName},
		{"a backslash and a step up", zipped(t, named(`..\rule.rego`)...), judge.ErrArchiveName},
		{"a drive", zipped(t, named("C:rule.rego")...), judge.ErrArchiveName},
		{"a dot", zipped(t, named("./codebook.hcl")...), judge.ErrArchiveName},
		{"two slashes", zipped(t, named("rule//rule.rego")...), judge.ErrArchiveName},
		{"no name", zipped(t, named("")...), judge.ErrArchiveName},
		{"a NUL", zipped(t, named("codebook.hcl\x00.txt")...), judge.ErrArchiveName},
		{"a line break", zipped(t, named("a\nb")...), judge.ErrArchiveName},
		{"a letter outside ASCII", zipped(t, named("shared/é.rego")...), judge.ErrArchiveName},
		{"no UTF-8", zipped(t, named("a\xff")...), judge.ErrArchiveName},
		{"a name too long", zipped(t, named(strings.Repeat("n", 129))...), judge.ErrArchiveName},
		{"a name twice", zipped(t, named("a", "a")...), judge.ErrArchiveTwice},
		{"a file that is a folder", zipped(t, named("a", "a/b")...), judge.ErrArchiveTwice},
		{"a folder that is a file", zipped(t, named("a/b", "a")...), judge.ErrArchiveTwice},
		{"names alike but for case", zipped(t, named("README.md", "readme.md")...), judge.ErrArchiveCase},
		{"folders alike but for case", zipped(t, named("rule/a", "Rule/b")...), judge.ErrArchiveCase},
		{"too many files", zipped(t, many...), judge.ErrArchiveCount},
		{"far too many files", zipped(t, crowded...), judge.ErrArchiveCount},
		{"far too many files, said to be one", hidden, judge.ErrArchiveCount},
		{"a file too large", zipped(t, file{header: zip.FileHeader{Name: "a"}, text: strings.Repeat("x", 256<<10+1)}), judge.ErrArchiveFile},
		{"too much in all", zipped(t, heavy...), judge.ErrArchiveBook},
		{"an archive too large", make([]byte, judge.ArchiveBytes), judge.ErrArchiveLarge},
		{"a bomb", zipped(t, file{header: zip.FileHeader{Name: "a", Method: zip.Deflate}, text: strings.Repeat("\x00", 64<<20)}), judge.ErrArchivePacked},
		{"a way of packing that nobody knows", zipped(t, file{header: zip.FileHeader{Name: "a", Method: 99}, raw: true}), judge.ErrArchivePacked},
		{"a size that is a lie", zipped(t, file{header: zip.FileHeader{Name: "a", CompressedSize64: 4, UncompressedSize64: 1 << 40}, text: "abcd", raw: true}), judge.ErrArchiveContent},
		{"a check sum that is a lie", zipped(t, file{header: zip.FileHeader{Name: "a", CRC32: 1, CompressedSize64: 4, UncompressedSize64: 4}, text: "abcd", raw: true}), judge.ErrArchiveContent},
		{"encrypted", zipped(t, file{header: zip.FileHeader{Name: "a", Flags: 1, CRC32: crc32.ChecksumIEEE([]byte("abcd")), CompressedSize64: 4, UncompressedSize64: 4}, text: "abcd", raw: true}), judge.ErrArchiveForm},
		{"two names for one content", overlapping, judge.ErrArchiveForm},
		{"times", zipped(t, file{header: zip.FileHeader{Name: "a", Modified: time.Unix(1e9, 0)}, text: "a"}), judge.ErrArchiveForm},
		{"a comment on a file", zipped(t, file{header: zip.FileHeader{Name: "a", Comment: "c"}, text: "a"}), judge.ErrArchiveForm},
		{"out of order", zipped(t, file{header: zip.FileHeader{Name: "b", CreatorVersion: 20, ReaderVersion: 20}, raw: true}, file{header: zip.FileHeader{Name: "a", CreatorVersion: 20, ReaderVersion: 20}, raw: true}), judge.ErrArchiveForm},
	} {
		t.Run(c.name, func(t *testing.T) {
			files, err := judge.Unpack(c.archive)
			if !errors.Is(err, c.want) || files != nil {
				t.Errorf("got %v, want %v", err, c.want)
			}
		})
	}
	if _, err := judge.Unpack(sound); err != nil {
		t.Errorf("the sound one that they are made of: %v", err)
	}
}

// TestArchiveForm holds an archive to the layout of the zip format (the local
// file header, the central directory header and its end record, as ISO/IEC
// 21320-1:2015 takes them over; field order from memory), written out by hand. If
// this breaks, archives that were signed before are refused.
func TestArchiveForm(t *testing.T) {
	texts := map[string]string{"rule/rule.rego": "package x\n", "codebook.hcl": "name = \"a\"\n"}
	var body, directory []byte
	short, long := binary.LittleEndian.AppendUint16, binary.LittleEndian.AppendUint32
	for _, name := range []string{"codebook.hcl", "rule/rule.rego"} {
		text := texts[name]
		offset := uint32(len(body))
		fields := func(b []byte) []byte {
			b = short(b, 20)          // version needed: 2.0
			b = short(b, 0)           // flags
			b = short(b, 0)           // method: stored
			b = short(short(b, 0), 0) // time, date
			b = long(b, crc32.ChecksumIEEE([]byte(text)))
			b = long(long(b, uint32(len(text))), uint32(len(text)))
			b = short(b, uint16(len(name)))
			return short(b, 0) // extra field
		}
		body = append(append(fields(long(body, 0x04034b50)), name...), text...)
		directory = fields(short(long(directory, 0x02014b50), 20))
		directory = short(short(short(directory, 0), 0), 0) // comment, disk, internal attributes
		directory = append(long(long(directory, 0), offset), name...)
	}
	want := append(bytes.Clone(body), directory...)
	want = short(short(long(want, 0x06054b50), 0), 0)                  // disks
	want = short(short(want, 2), 2)                                    // entries
	want = long(long(want, uint32(len(directory))), uint32(len(body))) // size and place of the directory
	want = short(want, 0)                                              // comment
	if diff := cmp.Diff(want, packed(t, texts)); diff != "" {
		t.Errorf("archive (-want +got):\n%s", diff)
	}
}

// TestPackRefuses: what could not be read back is not written.
func TestPackRefuses(t *testing.T) {
	for _, c := range []struct {
		name  string
		files fstest.MapFS
		want  error
	}{
		{"a link", fstest.MapFS{"a": {Data: []byte("b"), Mode: fs.ModeSymlink}}, judge.ErrArchiveIrregular},
		{"names alike but for case", fstest.MapFS{"a": {}, "A": {}}, judge.ErrArchiveCase},
		{"a backslash", fstest.MapFS{`a\b`: {}}, judge.ErrArchiveName},
		{"a file too large", fstest.MapFS{"a": {Data: make([]byte, 256<<10+1)}}, judge.ErrArchiveFile},
	} {
		if _, err := judge.Pack(c.files); !errors.Is(err, c.want) {
			t.Errorf("%s: got %v, want %v", c.name, err, c.want)
		}
	}
	if _, err := judge.Unpack(packed(t, map[string]string{"a": strings.Repeat("x", 256<<10)})); err != nil {
		t.Errorf("a file exactly as large as may be: %v", err)
	}
}

// TestArchiveRoundTrip: what is packed comes back, and packs to the same bytes.
func TestArchiveRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		texts := rapid.MapOf(rapid.StringMatching(`[a-c]/[d-f]{1,3}\.rego`), rapid.String()).Draw(t, "files")
		archive, err := judge.Pack(tree(texts))
		if err != nil {
			t.Fatal(err)
		}
		files, err := judge.Unpack(archive)
		if err != nil {
			t.Fatal(err)
		}
		got := map[string]string{}
		err = fs.WalkDir(files, ".", func(name string, d fs.DirEntry, err error) error {
			if err != nil || d.IsDir() {
				return err
			}
			text, err := fs.ReadFile(files, name)
			got[name] = string(text)
			return err
		})
		if err != nil {
			t.Fatal(err)
		}
		if diff := cmp.Diff(texts, got); diff != "" {
			t.Fatalf("files (-in +out):\n%s", diff)
		}
		again, err := judge.Pack(files)
		if err != nil || !bytes.Equal(archive, again) {
			t.Fatalf("packed again: other bytes, %v", err)
		}
	})
}

// FuzzUnpack: no bytes bring it down, and what it takes is what Pack writes.
func FuzzUnpack(f *testing.F) {
	f.Add(packed(f, map[string]string{"codebook.hcl": "name = \"a\"\n"}))
	f.Fuzz(func(t *testing.T, archive []byte) {
		files, err := judge.Unpack(archive)
		if err != nil {
			return
		}
		again, err := judge.Pack(files)
		if err != nil || !bytes.Equal(archive, again) {
			t.Errorf("packed again: other bytes, %v", err)
		}
	})
}

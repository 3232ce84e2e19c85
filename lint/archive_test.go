package lint_test

import (
	"context"
	"crypto/ecdsa"
	"crypto/elliptic"
	"crypto/rand"
	"crypto/x509"
	"encoding/pem"
	"strings"
	"testing"
	"testing/fstest"

	"stringline/lint"
	"stringline/lint/linttest"
	"stringline/rules"
)

// keyPair gives a private and a public key on P-256 as files.
func keyPair(t *testing.T) (private, public string) {
	t.Helper()
	key, err := ecdsa.GenerateKey(elliptic.P256(), rand.Reader)
	if err != nil {
		t.Fatal(err)
	}
	p, err := x509.MarshalPKCS8PrivateKey(key)
	if err != nil {
		t.Fatal(err)
	}
	q, err := x509.MarshalPKIXPublicKey(key.Public())
	if err != nil {
		t.Fatal(err)
	}
	return string(pem.EncodeToMemory(&pem.Block{Type: "PRIVATE KEY", Bytes: p})), string(pem.EncodeToMemory(&pem.Block{Type: "PUBLIC KEY", Bytes: q}))
}

func exported(t *testing.T, private string) *lint.Export {
	t.Helper()
	e, err := lint.ExportBook(context.Background(), lint.BookOptions{Disk: linttest.NewDisk(house), Embedded: rules.Books, WorkingDir: "/shop", Version: "0.1.0"}, "books/house", []byte(private))
	if err != nil || len(e.Problems) > 0 {
		t.Fatal(e, err)
	}
	return e
}

// archived is the shop with its codebook in an archive alone, and with pins.
func archived(e *lint.Export, public, pins string) map[string]string {
	texts := changed("shop/workshop.hcl", `path = "books/house"`, "path = \"books/house.zip\""+pins)
	for name := range texts {
		if strings.HasPrefix(name, "shop/books/") {
			delete(texts, name)
		}
	}
	texts["shop/books/house.zip"], texts["shop/books/house.zip.sig"], texts["shop/keys/house.pem"] = string(e.Archive), string(e.Signature), public
	return texts
}

const keyPin = "\n  key = \"keys/house.pem\""

// TestArchive: a codebook from an archive judges as its folder does; what its pins
// do not allow does not run, and is told at its place in the workshop.
func TestArchive(t *testing.T) {
	private, public := keyPair(t)
	_, stranger := keyPair(t)
	e := exported(t, private)
	digestPin := "\n  digest = \"" + e.Digest + "\""
	with := func(public, pins string, edits ...string) map[string]string {
		texts := archived(e, public, pins)
		for i := 0; i < len(edits); i += 2 {
			if texts[edits[i]] = edits[i+1]; edits[i+1] == "" {
				delete(texts, edits[i])
			}
		}
		return texts
	}
	const signature = "shop/books/house.zip.sig"
	folderKey := changed("shop/workshop.hcl", `path = "books/house"`, "path = \"books/house\""+keyPin)
	folderKey["shop/keys/house.pem"] = public
	for _, c := range []struct {
		name  string
		texts map[string]string
		want  string // "" where it runs
	}{
		{"no pins", with(public, ""), ""},
		{"its digest", with(public, digestPin), ""},
		{"its key", with(public, keyPin), ""},
		{"both", with(public, digestPin+keyPin), ""},
		{"without a key no signature is read", with(public, digestPin, signature, "rubbish"), ""},
		{"another digest", with(public, "\n  digest = \"sha256:"+strings.Repeat("0", 64)+"\""), `codebook "house" is not the one that was pinned: the archive's bytes have another digest than the one in workshop.hcl. An archive's digest is of its bytes`},
		{"the right key and another digest", with(public, "\n  digest = \"sha256:"+strings.Repeat("0", 64)+"\""+keyPin), `codebook "house" is not the one that was pinned`},
		{"another key", with(stranger, keyPin), "the signature is not of this key over this archive"},
		{"another key and the right digest", with(stranger, digestPin+keyPin), "the signature is not of this key over this archive"},
		{"no signature", with(public, keyPin, signature, ""), "reading the signature books/house.zip.sig: no such file"},
		{"an empty signature", with(public, keyPin, signature, "\x00"), "the signature is not of this key"},
		{"a long signature", with(public, keyPin, signature, strings.Repeat("s", 1<<20)), "the signature is not of this key"},
		{"a private key for a public one", with(private, keyPin), "reading the public key: the file is not a BEGIN PUBLIC KEY"},
		{"no key in the file", with("key", keyPin), "reading the public key: the file has no block of PEM"},
		{"a key and a folder", folderKey, "a folder carries no signature: export it"},
		{"no archive", with(public, "", "shop/books/house.zip", "name = \"house\"\n"), "it is not as `stringline codebook export` writes archives"},
	} {
		t.Run(c.name, func(t *testing.T) {
			r := run(t, c.texts, nil)
			got := strings.Join(told(r), "\n")
			if c.want == "" {
				if want := "hut.design.hcl: fix house.calm|charger.main|: breaks\nexit 1"; got != want {
					t.Errorf("got\n%s\nwant\n%s", got, want)
				}
				for _, b := range r.Books {
					if b.Name == "house" && b.Digest != e.Digest {
						t.Errorf("its digest is listed as %s", b.Digest)
					}
				}
				return
			}
			if !strings.HasPrefix(got, "workshop.hcl:3:1: ") || !strings.Contains(got, c.want) || r.Exit != 2 || strings.Contains(got, "house.calm|") {
				t.Errorf("want %q at workshop.hcl:3:1, exit 2 and no verdict; got\n%s", c.want, got)
			}
		})
	}
}

// TestChangedByte: with any of its bytes changed an archive does not run, however
// it is pinned, and where it is not pinned at all.
func TestChangedByte(t *testing.T) {
	private, public := keyPair(t)
	e := exported(t, private)
	alone := func(o *lint.Options) { o.Embedded = fstest.MapFS{} }
	if got := strings.Join(told(run(t, archived(e, public, keyPin), alone)), "\n"); !strings.Contains(got, "house.calm|") {
		t.Fatalf("with no byte changed it does not run either: %s", got)
	}
	tried := 0
	for _, pins := range []string{"", "\n  digest = \"" + e.Digest + "\"", keyPin} {
		for i := 0; i < len(e.Archive); i += 37 {
			changed := *e
			changed.Archive = append([]byte(nil), e.Archive...)
			changed.Archive[i] ^= 1 << (i % 8)
			r := run(t, archived(&changed, public, pins), alone)
			if got := strings.Join(told(r), "\n"); r.Exit != 2 || !strings.HasPrefix(got, "workshop.hcl:3:1: ") || strings.Contains(got, "house.calm|") {
				t.Errorf("byte %d with pins %q: %s", i, pins, got)
			}
			tried++
		}
	}
	if tried < 60 {
		t.Errorf("only %d changes tried: the archive has %d bytes", tried, len(e.Archive))
	}
}

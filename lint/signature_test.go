package lint

import (
	"bytes"
	"crypto/ecdsa"
	"crypto/ed25519"
	"crypto/elliptic"
	"crypto/rand"
	"crypto/rsa"
	"crypto/x509"
	"encoding/asn1"
	"encoding/hex"
	"encoding/pem"
	"math/big"
	"strings"
	"testing"
)

func unhex(t *testing.T, text string) []byte {
	t.Helper()
	b, err := hex.DecodeString(text)
	if err != nil {
		t.Fatal(err)
	}
	return b
}

// keyFiles gives a private key and its public key as files.
func keyFiles(t *testing.T, private, public any) (privateFile, publicFile []byte) {
	t.Helper()
	p, err := x509.MarshalPKCS8PrivateKey(private)
	if err != nil {
		t.Fatal(err)
	}
	q, err := x509.MarshalPKIXPublicKey(public)
	if err != nil {
		t.Fatal(err)
	}
	return pem.EncodeToMemory(&pem.Block{Type: privateBlock, Bytes: p}), pem.EncodeToMemory(&pem.Block{Type: publicBlock, Bytes: q})
}

// TestPublishedSignatures signs what standards sign. Values from memory; a digit
// that is wrong in any of them would not verify.
func TestPublishedSignatures(t *testing.T) {
	seed := unhex(t, "4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb")
	edwards := ed25519.NewKeyFromSeed(seed)
	curve, err := ecdsa.ParseRawPrivateKey(elliptic.P256(), unhex(t, "c9afa9d845ba75166b5c215767b1d6934e50c3db36e89b127b8a622b120f6721"))
	if err != nil {
		t.Fatal(err)
	}
	number := func(text string) *big.Int { return new(big.Int).SetBytes(unhex(t, text)) }
	sample, err := asn1.Marshal(struct{ R, S *big.Int }{
		number("efd48b2aacb6a8fd1140dd9cd45e81d69d2c877b56aaf991c34d0ea84eaf3716"),
		number("f7cb1c942d657c41d436c7a1b6e29f65f3e900dbb9aff4064dc4ab2f843acda8"),
	})
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		name            string
		private, public any
		message, want   []byte
	}{
		{"RFC 8032, 7.1, test 2", edwards, edwards.Public(), []byte{0x72},
			unhex(t, "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00")},
		{"RFC 6979, A.2.5, SHA-256, sample", curve, curve.Public(), []byte("sample"), sample},
	} {
		private, public := keyFiles(t, c.private, c.public)
		got, err := sign(c.message, private)
		if err != nil || !bytes.Equal(got, c.want) {
			t.Errorf("%s: got %x, %v; want %x", c.name, got, err, c.want)
		}
		if err := verify(c.message, c.want, public); err != nil {
			t.Errorf("%s: %v", c.name, err)
		}
		if verify(append(bytes.Clone(c.message), 0), c.want, public) == nil {
			t.Errorf("%s: another message verifies", c.name)
		}
		for i := range c.want {
			changed := bytes.Clone(c.want)
			changed[i] ^= 1
			if verify(c.message, changed, public) == nil {
				t.Errorf("%s: with byte %d of the signature changed it verifies", c.name, i)
			}
		}
	}
}

// TestKeysRefused: a key file that is not one key of the two kinds.
func TestKeysRefused(t *testing.T) {
	_, edwards, err := ed25519.GenerateKey(rand.Reader)
	if err != nil {
		t.Fatal(err)
	}
	wide, err := ecdsa.GenerateKey(elliptic.P384(), rand.Reader)
	if err != nil {
		t.Fatal(err)
	}
	other, err := rsa.GenerateKey(rand.Reader, 2048)
	if err != nil {
		t.Fatal(err)
	}
	private, public := keyFiles(t, edwards, edwards.Public())
	widePrivate, widePublic := keyFiles(t, wide, wide.Public())
	otherPrivate, otherPublic := keyFiles(t, other, other.Public())
	damaged := func(kind string) []byte {
		return pem.EncodeToMemory(&pem.Block{Type: kind, Bytes: []byte("no key")})
	}
	for _, c := range []struct {
		name            string
		private, public []byte
		want            string
	}{
		{"empty", nil, nil, "no block of PEM"},
		{"each for the other", public, private, "another kind of block"},
		{"two", bytes.Repeat(private, 2), bytes.Repeat(public, 2), "more than one block"},
		{"no key in it", damaged(privateBlock), damaged(publicBlock), "not in the form of"},
		{"P-384", widePrivate, widePublic, "neither ECDSA on P-256 nor Ed25519"},
		{"RSA", otherPrivate, otherPublic, "neither ECDSA on P-256 nor Ed25519"},
		{"long", bytes.Repeat([]byte("\n"), longestKey+1), bytes.Repeat([]byte("\n"), longestKey+1), "longer than 4 KiB"},
	} {
		if _, err := sign([]byte("m"), c.private); err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("%s: signing: %v, want %q", c.name, err, c.want)
		}
		if err := verify([]byte("m"), []byte("s"), c.public); err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("%s: verifying: %v, want %q", c.name, err, c.want)
		}
	}
}

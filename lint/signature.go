package lint

import (
	"bytes"
	"crypto"
	"crypto/ecdsa"
	"crypto/ed25519"
	"crypto/elliptic"
	"crypto/sha256"
	"crypto/x509"
	"encoding/pem"
	"errors"
	"fmt"
)

// Archives of codebooks are signed with ECDSA on the curve P-256 over SHA-256
// (ES256; the signature in the ASN.1 form of RFC 3279, section 2.2.3) or with
// Ed25519 (RFC 8032). The signature stands alone in a file beside the archive.

const (
	privateBlock = "PRIVATE KEY" // PKCS #8
	publicBlock  = "PUBLIC KEY"  // subject public key info

	longestKey       = 4 << 10
	longestSignature = 256
)

var errKeyKind = errors.New("the key is neither ECDSA on P-256 nor Ed25519")

// sign gives the signature of a message by a private key in PEM (PKCS #8). Errors
// never hold anything of the key.
func sign(message, key []byte) ([]byte, error) {
	der, err := onlyBlock(key, privateBlock)
	if err != nil {
		return nil, fmt.Errorf("reading the private key: %w", err)
	}
	private, err := x509.ParsePKCS8PrivateKey(der)
	if err != nil {
		return nil, errors.New("reading the private key: it is not in the form of PKCS #8")
	}
	switch private := private.(type) {
	case ed25519.PrivateKey:
		return ed25519.Sign(private, message), nil
	case *ecdsa.PrivateKey:
		if private.Curve == elliptic.P256() {
			sum := sha256.Sum256(message)
			return private.Sign(nil, sum[:], crypto.SHA256) // no randomness: RFC 6979
		}
	}
	return nil, fmt.Errorf("reading the private key: %w", errKeyKind)
}

// verify holds a signature against a message and a public key in PEM.
func verify(message, signature, key []byte) error {
	der, err := onlyBlock(key, publicBlock)
	if err != nil {
		return fmt.Errorf("reading the public key: %w", err)
	}
	public, err := x509.ParsePKIXPublicKey(der)
	if err != nil {
		return errors.New("reading the public key: it is not in the form of X.509")
	}
	fits := false
	switch public := public.(type) {
	case ed25519.PublicKey:
		fits = ed25519.Verify(public, message, signature)
	case *ecdsa.PublicKey:
		if public.Curve != elliptic.P256() {
			return fmt.Errorf("reading the public key: %w", errKeyKind)
		}
		sum := sha256.Sum256(message)
		fits = ecdsa.VerifyASN1(public, sum[:], signature)
	default:
		return fmt.Errorf("reading the public key: %w", errKeyKind)
	}
	if !fits {
		return errors.New("the signature is not of this key over this archive")
	}
	return nil
}

// onlyBlock gives what stands in a file with one block of PEM. A second block
// would leave open which key is meant.
func onlyBlock(text []byte, kind string) ([]byte, error) {
	if len(text) > longestKey {
		return nil, fmt.Errorf("the file is longer than %d KiB", longestKey>>10)
	}
	block, rest := pem.Decode(text)
	switch {
	case block == nil:
		return nil, fmt.Errorf("the file has no block of PEM; BEGIN %s is expected", kind)
	case block.Type != kind:
		return nil, fmt.Errorf("the file is not a BEGIN %s in PEM but another kind of block", kind)
	case len(bytes.TrimSpace(rest)) > 0:
		return nil, errors.New("the file holds more than one block of PEM")
	}
	return block.Bytes, nil
}

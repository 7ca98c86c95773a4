package keyring

import (
	"crypto/aes"
	"crypto/cipher"
	"encoding/hex"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"strings"
)

// Ring is a folder of tokens.
type Ring struct {
	dir  string
	seal cipher.AEAD
}

const (
	keySize = 32 // bytes: AES-256
	ending  = ".token"
)

// team is the shape of a workspace's id: it names its file, so nothing else
// may stand in it.
var team = regexp.MustCompile(`^[A-Z0-9]{2,32}$`)

var errTeam = errors.New("that is no workspace's id")

// Open opens the folder, and makes it where there is none. The key has 64
// hexadecimal digits; without the one they were written with, tokens cannot
// be read. An error never repeats it.
func Open(dir, key string) (*Ring, error) {
	raw, err := hex.DecodeString(key)
	if err != nil || len(raw) != keySize {
		return nil, fmt.Errorf("the key of the tokens has %d hexadecimal digits", 2*keySize)
	}
	block, err := aes.NewCipher(raw)
	if err != nil {
		return nil, err
	}
	seal, err := cipher.NewGCMWithRandomNonce(block)
	if err != nil {
		return nil, err
	}
	if err := os.MkdirAll(dir, 0o700); err != nil {
		return nil, fmt.Errorf("make room for the tokens: %w", err)
	}
	return &Ring{dir: dir, seal: seal}, nil
}

// Keep writes a workspace's token down, in the place of the one before it. It
// is sealed together with the workspace's id: put into another's file it
// opens nothing.
func (r *Ring) Keep(id, token string) error {
	if !team.MatchString(id) {
		return errTeam
	}
	f, err := os.CreateTemp(r.dir, "new-*") // readable by its owner alone
	if err != nil {
		return fmt.Errorf("keep a token: %w", err)
	}
	_, err = f.Write(r.seal.Seal(nil, nil, []byte(token), []byte(id)))
	err = errors.Join(err, f.Sync(), f.Close())
	if err == nil {
		err = os.Rename(f.Name(), r.path(id))
	}
	if err != nil {
		_ = os.Remove(f.Name()) // what is left there opens nothing
		return fmt.Errorf("keep a token: %w", err)
	}
	return nil
}

// Drop forgets a workspace's token.
func (r *Ring) Drop(id string) error {
	if !team.MatchString(id) {
		return errTeam
	}
	if err := os.Remove(r.path(id)); err != nil && !errors.Is(err, fs.ErrNotExist) {
		return fmt.Errorf("forget a token: %w", err)
	}
	return nil
}

// All are the tokens by workspace. One that cannot be read fails the whole:
// the key is another, or somebody changed a file.
func (r *Ring) All() (map[string]string, error) {
	files, err := os.ReadDir(r.dir)
	if err != nil {
		return nil, fmt.Errorf("read the tokens: %w", err)
	}
	all := map[string]string{}
	for _, f := range files {
		id, ours := strings.CutSuffix(f.Name(), ending)
		if !ours || !team.MatchString(id) {
			continue
		}
		sealed, err := os.ReadFile(r.path(id))
		if errors.Is(err, fs.ErrNotExist) {
			continue // dropped meanwhile
		}
		if err != nil {
			return nil, fmt.Errorf("read the tokens: %w", err)
		}
		token, err := r.seal.Open(nil, nil, sealed, []byte(id))
		if err != nil {
			return nil, fmt.Errorf("the token of %s does not open: is the key another one?", id)
		}
		all[id] = string(token)
	}
	return all, nil
}

func (r *Ring) path(id string) string { return filepath.Join(r.dir, id+ending) }

package keyring_test

import (
	"bytes"
	"maps"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"heft/bot/keyring"
)

const (
	key   = "000102030405060708090a0b0c0d0e0f101112131415161718191a1b1c1d1e1f"
	other = "ff0102030405060708090a0b0c0d0e0f101112131415161718191a1b1c1d1e1f"
	one   = "xoxb-" + "1-2-tokenofone"
	two   = "xoxb-" + "1-2-tokenoftwo"
)

func open(t *testing.T, dir string) *keyring.Ring {
	t.Helper()
	r, err := keyring.Open(dir, key)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

func TestTokensAreKeptSealed(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "tokens")
	r := open(t, dir)
	for id, token := range map[string]string{"T0ONE": "xoxb-" + "old", "T0TWO": two} {
		if err := r.Keep(id, token); err != nil {
			t.Fatal(err)
		}
	}
	if err := r.Keep("T0ONE", one); err != nil {
		t.Fatal(err)
	}
	if got, err := open(t, dir).All(); err != nil || !maps.Equal(got, map[string]string{"T0ONE": one, "T0TWO": two}) {
		t.Errorf("after a restart: %v, %v", got, err)
	}
	files, err := os.ReadDir(dir)
	if err != nil || len(files) != 2 {
		t.Fatalf("%d files, %v", len(files), err)
	}
	for _, f := range files {
		raw, err := os.ReadFile(filepath.Join(dir, f.Name()))
		info, _ := f.Info()
		if err != nil || bytes.Contains(raw, []byte("xoxb")) || info.Mode().Perm()&0o077 != 0 {
			t.Errorf("%s, %v, holds %q", f.Name(), info.Mode(), raw)
		}
	}
	for range 2 {
		if err := r.Drop("T0ONE"); err != nil {
			t.Fatal(err)
		}
	}
	if got, err := r.All(); err != nil || !maps.Equal(got, map[string]string{"T0TWO": two}) {
		t.Errorf("after one was dropped: %v, %v", got, err)
	}
}

func TestTokensOpenForTheirKeyAndWorkspaceAlone(t *testing.T) {
	dir := t.TempDir()
	r := open(t, dir)
	if err := r.Keep("T0ONE", one); err != nil {
		t.Fatal(err)
	}
	stranger, err := keyring.Open(dir, other)
	if err != nil {
		t.Fatal(err)
	}
	if got, err := stranger.All(); err == nil || strings.Contains(err.Error(), "xoxb") {
		t.Errorf("with another key: %v, %v", got, err)
	}
	path := filepath.Join(dir, "T0ONE.token")
	sealed, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	for i := range sealed { // any bit that is turned
		bad := bytes.Clone(sealed)
		bad[i] ^= 1
		if err := os.WriteFile(path, bad, 0o600); err != nil {
			t.Fatal(err)
		}
		if got, err := r.All(); err == nil {
			t.Fatalf("byte %d changed: %v", i, got)
		}
	}
	if err := os.Rename(path, filepath.Join(dir, "T0TWO.token")); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(filepath.Join(dir, "T0TWO.token"), sealed, 0o600); err != nil {
		t.Fatal(err)
	}
	if got, err := r.All(); err == nil {
		t.Errorf("in another workspace's file: %v", got)
	}
}

func TestBadKeysAndIds(t *testing.T) {
	for _, bad := range []string{"", key[2:], key + "00", strings.Repeat("zz", 32)} {
		if _, err := keyring.Open(t.TempDir(), bad); err == nil || bad != "" && strings.Contains(err.Error(), bad) {
			t.Errorf("%q: %v", bad, err)
		}
	}
	r := open(t, t.TempDir())
	for _, bad := range []string{"", "../T0ONE", "t0one", "T0/ONE", strings.Repeat("T", 40)} {
		if r.Keep(bad, one) == nil || r.Drop(bad) == nil {
			t.Errorf("%q passes for an id", bad)
		}
	}
}

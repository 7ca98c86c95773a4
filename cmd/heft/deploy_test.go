package main

import (
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/coreos/go-systemd/v22/unit"
)

// TestServiceUnit reads the unit as the service manager does: it runs the
// program, with a state folder as the one place it writes to. Where the
// manager itself is at hand it has the last word.
func TestServiceUnit(t *testing.T) {
	const path = "../../deploy/heft.service"
	f, err := os.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	options, err := unit.DeserializeOptions(f)
	if err != nil {
		t.Fatal(err)
	}
	set := map[string]string{}
	for _, o := range options {
		set[o.Section+"."+o.Name] = o.Value
	}
	// What each keeps the program from: systemd.exec(5).
	for name, want := range map[string]string{
		"ExecStart": "/usr/local/bin/heft serve", "DynamicUser": "yes", "ProtectSystem": "strict", "ProtectHome": "yes",
		"NoNewPrivileges": "yes", "CapabilityBoundingSet": "", "PrivateTmp": "yes", "PrivateDevices": "yes",
		"MemoryDenyWriteExecute": "yes", "RestrictNamespaces": "yes", "StateDirectoryMode": "0700", "UMask": "0077",
		"Environment": "HEFT_JOURNAL=%S/heft/journal.db", "StateDirectory": "heft",
	} {
		if got, there := set["Service."+name]; !there || got != want {
			t.Errorf("%s=%s, want %s", name, got, want)
		}
	}
	manager, err := exec.LookPath("systemd-analyze")
	if err != nil {
		return // what the file says has been read above
	}
	text, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	here := filepath.Join(t.TempDir(), "heft.service") // its program has to exist
	if err := os.WriteFile(here, []byte(strings.ReplaceAll(string(text), "/usr/local/bin/heft", program(t))), 0o600); err != nil {
		t.Fatal(err)
	}
	if out, err := exec.Command(manager, "verify", here).CombinedOutput(); err != nil || len(out) > 0 {
		t.Errorf("the manager says %v: %s", err, out)
	}
}

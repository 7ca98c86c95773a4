package main

import (
	"bytes"
	"context"
	"path/filepath"
	"strings"
	"testing"
	"time"
)

// Who tells it to stop before it has begun sees no failure.
func TestToldToStopBeforeItHadBegun(t *testing.T) {
	ctx, stop := context.WithCancel(t.Context())
	stop()
	env := map[string]string{"SLACK_BOT_TOKEN": "xoxb-1-told", "SLACK_APP_TOKEN": "xapp-1-told"}
	var out, errs bytes.Buffer
	w := world{in: strings.NewReader(""), out: &out, err: &errs, env: func(name string) string { return env[name] }, now: time.Now}
	if code := run(ctx, []string{"--journal", filepath.Join(t.TempDir(), "journal.db"), "serve"}, w); code != exitAnswered {
		t.Errorf("exit code %d: %s", code, errs.String())
	}
}

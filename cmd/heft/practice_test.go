package main

import (
	"bufio"
	"bytes"
	"context"
	"io"
	"net/http"
	"net/url"
	"os"
	"os/exec"
	"strings"
	"syscall"
	"testing"
)

// rehearsal is the program serving its practice page.
type rehearsal struct {
	*testing.T
	cmd  *exec.Cmd
	url  string
	err  bytes.Buffer
	temp string
}

func rehearsing(t *testing.T, args ...string) *rehearsal {
	t.Helper()
	r := &rehearsal{T: t, temp: t.TempDir()}
	r.cmd = exec.Command(program(t), append([]string{"practice", "--addr", "127.0.0.1:0"}, args...)...)
	// The tokens of a real workspace are none of its business.
	r.cmd.Env = []string{"HOME=" + t.TempDir(), "TMPDIR=" + r.temp, "SLACK_API_URL=https://workspace.example/api/", "SLACK_BOT_TOKEN=of-somebody"}
	r.cmd.Stderr = &r.err
	out, err := r.cmd.StdoutPipe()
	if err != nil {
		t.Fatal(err)
	}
	if err := r.cmd.Start(); err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { _ = r.cmd.Process.Kill() })
	line, err := bufio.NewReader(out).ReadString('\n')
	if u, bad := url.Parse(strings.TrimSpace(line)); err != nil || bad != nil || u.Hostname() != "127.0.0.1" || u.Path != "/" {
		t.Fatalf("the page's address is %q, %v: %s", line, err, r.err.String())
	}
	r.url = strings.TrimSpace(line)
	return r
}

// end asks it to stop, and sees that nothing of it is left.
func (r *rehearsal) end() {
	r.Helper()
	if err := r.cmd.Process.Signal(syscall.SIGTERM); err != nil {
		r.Fatal(err)
	}
	if err := r.cmd.Wait(); err != nil {
		r.Fatalf("it did not end well: %v\n%s", err, r.err.String())
	}
	if left, err := os.ReadDir(r.temp); err != nil || len(left) > 0 {
		r.Errorf("left behind: %v, %v", left, err)
	}
}

func TestPracticeIsForThisMachineAlone(t *testing.T) {
	for _, addr := range []string{"0.0.0.0:8420", ":8420", "192.0.2.7:8420", "8420"} {
		out, err := exec.Command(program(t), "practice", "--addr", addr).CombinedOutput()
		if code := err.(*exec.ExitError).ExitCode(); code != exitFailed || !strings.Contains(string(out), "127.0.0.1") {
			t.Errorf("%s: exit code %d: %s", addr, code, out)
		}
	}
}

func (r *rehearsal) get(ctx context.Context, path string) string {
	r.Helper()
	req, err := http.NewRequestWithContext(ctx, http.MethodGet, r.url+path, nil)
	if err != nil {
		r.Fatal(err)
	}
	resp, err := http.DefaultClient.Do(req)
	if err != nil {
		r.Fatal(err)
	}
	defer resp.Body.Close()
	body, err := io.ReadAll(resp.Body)
	if err != nil || resp.StatusCode != http.StatusOK {
		r.Fatalf("%s: %d, %v", path, resp.StatusCode, err)
	}
	return string(body)
}

// until reads a page anew at each of its changes until it is as wanted.
func (r *rehearsal) until(ctx context.Context, path string, done func(page string) bool) string {
	r.Helper()
	req, err := http.NewRequestWithContext(ctx, http.MethodGet, r.url+"changes?after=0", nil)
	if err != nil {
		r.Fatal(err)
	}
	resp, err := http.DefaultClient.Do(req)
	if err != nil {
		r.Fatal(err)
	}
	defer resp.Body.Close()
	for lines := bufio.NewScanner(resp.Body); lines.Scan(); {
		if !strings.HasPrefix(lines.Text(), "data: ") {
			continue
		}
		if page := r.get(ctx, path); done(page) {
			return page
		}
	}
	r.Fatalf("%s did not become what was wanted: %v\n%s", path, ctx.Err(), r.err.String())
	return ""
}

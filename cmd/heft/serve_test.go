package main

import (
	"bytes"
	"context"
	"encoding/json"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"sync"
	"syscall"
	"testing"
	"time"

	"heft/bot/standin"
)

// The tokens of the stand-in workspace; no workspace of anybody's takes them.
const (
	botToken = "xoxb-" + "1000000001-2000000002-EndToEndBotToken"
	appToken = "xapp-" + "1-A0APP00001-3000000003-endtoendapptoken"
)

var build struct {
	once sync.Once
	path string
	err  error
}

// program builds the program that people run, once.
func program(t *testing.T) string {
	t.Helper()
	build.once.Do(func() {
		dir, err := os.MkdirTemp("", "heft-test-")
		if err != nil {
			build.err = err
			return
		}
		build.path = filepath.Join(dir, "heft")
		out, err := exec.Command("go", "build", "-o", build.path, ".").CombinedOutput()
		if err != nil {
			build.err = err
			t.Log(string(out))
		}
	})
	if build.err != nil {
		t.Fatal(build.err)
	}
	return build.path
}

// served is the program at work in a workspace.
type served struct {
	cmd *exec.Cmd
	err heard
}

// The two ways in which a workspace speaks.
const (
	overSocket   = "socket"
	overRequests = "requests"
)

func serveAt(t *testing.T, w *standin.Workspace, journal, over string, env ...string) *served {
	t.Helper()
	s := &served{cmd: exec.Command(program(t), "serve", "--journal", journal, "--listen", "127.0.0.1:0"), err: heard{at: make(chan string, 1)}}
	s.cmd.Env = append(env, "SLACK_BOT_TOKEN="+botToken, "SLACK_API_URL="+w.URL(), "HOME="+t.TempDir())
	if over == overSocket {
		s.cmd.Env = append(s.cmd.Env, "SLACK_APP_TOKEN="+appToken)
	} else {
		s.cmd.Env = append(s.cmd.Env, "SLACK_SIGNING_SECRET="+w.SigningSecret())
	}
	s.cmd.Stderr = &s.err
	if err := s.cmd.Start(); err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { _ = s.cmd.Process.Kill() })
	if over == overRequests {
		select {
		case at := <-s.err.at:
			if err := w.Request(t.Context(), standin.RequestURLs{Events: "http://" + at + "/"}); err != nil {
				t.Fatal(err)
			}
		case <-time.After(time.Minute):
			t.Fatalf("it does not listen:\n%s", s.err.String())
		}
	}
	return s
}

// heard keeps what the program says, and passes on where it listens.
type heard struct {
	mu  sync.Mutex
	buf bytes.Buffer
	at  chan string
}

var listening = regexp.MustCompile(`msg=listening at=(\S+)`)

func (h *heard) Write(p []byte) (int, error) {
	h.mu.Lock()
	defer h.mu.Unlock()
	if m := listening.FindSubmatch(p); m != nil {
		h.at <- string(m[1])
	}
	return h.buf.Write(p)
}

func (h *heard) String() string {
	h.mu.Lock()
	defer h.mu.Unlock()
	return h.buf.String()
}

// stop asks it to end and waits until it has.
func (s *served) stop(t *testing.T) {
	t.Helper()
	if err := s.cmd.Process.Signal(syscall.SIGTERM); err != nil {
		t.Fatal(err)
	}
	if err := s.cmd.Wait(); err != nil {
		t.Fatalf("it did not end well: %v\n%s", err, s.err.String())
	}
	if said := s.err.String(); strings.Contains(said, "xoxb-") || strings.Contains(said, "xapp-") || strings.Contains(said, "0123456789abcdef") {
		t.Errorf("a token in the log:\n%s", s.err.String())
	}
}

func workspace(t *testing.T) *standin.Workspace {
	t.Helper()
	w, err := standin.Start(standin.Options{BotToken: botToken, AppToken: appToken})
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { _ = w.Close() })
	return w
}

// TestServe drives the built program over a stand-in workspace, through a
// restart, as three people of a crew would, in both ways in which a workspace
// speaks.
func TestServe(t *testing.T) {
	for _, over := range []string{overSocket, overRequests} {
		t.Run(over, func(t *testing.T) { story(t, over) })
	}
}

func story(t *testing.T, over string) {
	ctx, cancel := context.WithTimeout(t.Context(), 2*time.Minute)
	defer cancel()
	w := workspace(t)
	journal := filepath.Join(t.TempDir(), "journal.db")
	reply := func(m standin.Message) string {
		t.Helper()
		r, err := w.Reply(ctx, m)
		if err != nil {
			t.Fatal(err)
		}
		if r.Thread() != m.Thread() {
			t.Errorf("answered in %s, asked in %s", r.Thread(), m.Thread())
		}
		return r.Shown()
	}

	s := serveAt(t, w, journal, over)
	first := w.Say(standin.Yard, "U0GROUND01", "<@"+standin.BotUser+"> 14 in red oak limb 22 ft, hitched at 35 ft")
	if got := reply(first); !strings.Contains(got, "plan on") || !strings.Contains(got, "wraps") || !strings.Contains(got, "qualified arborist") {
		t.Errorf("the groundworker reads %q", got)
	}
	follow := w.Say(standin.Yard, "U0GROUND01", "<@"+standin.BotUser+"> what about 16 ft", standin.InThread(first.TS))
	if got := reply(follow); !strings.Contains(got, "14 in butt × 16 ft") {
		t.Errorf("the follow-up reads %q", got)
	}
	direct := w.Say(standin.Direct, "U0CLIMB001", "600 lb limb, 1 wrap")
	if got := reply(direct); !strings.Contains(got, "LET IT RUN AWAY") {
		t.Errorf("the climber reads %q", got)
	}
	lift := w.Say(standin.Yard, "U0CLIMB001", "<@"+standin.BotUser+"> two of us on a 2:1, 600 lb limb, enough?")
	if got := reply(lift); !strings.Contains(got, "MORE POWER") {
		t.Errorf("the climber reads %q", got)
	}
	ping := w.Say(standin.Yard, "U0GROUND01", "<@"+standin.BotUser+"> <!channel> 14 in *blorf* limb &lt;!here&gt; 22 ft")
	if r, err := w.Reply(ctx, ping); err != nil || len(r.Pings()) > 0 || len(r.Links()) > 0 {
		t.Errorf("the reply pings %v, links %v, %v: %q", r.Pings(), r.Links(), err, r.Text)
	}
	s.stop(t)

	again := serveAt(t, w, journal, over)
	if err := w.Redeliver(first.Events[0], 1, "timeout"); err != nil {
		t.Fatal(err)
	}
	after := w.Say(standin.Mill, "U0GROUND01", "<@"+standin.BotUser+"> maple limb 12 in 15 ft")
	if got := reply(after); !strings.Contains(got, "Which maple?") {
		t.Errorf("after the restart: %q", got)
	}
	again.stop(t)
	if words, pictures := counted(w.Thread(standin.Yard, first.TS)); words != 4 || pictures != 0 {
		t.Errorf("%d messages and %d pictures in the first thread, want two questions and two answers", words, pictures)
	}
	if words, pictures := counted(w.Thread(standin.Yard, lift.TS)); words != 2 || pictures != 1 {
		t.Errorf("%d messages and %d pictures in the lift's thread, want a question, an answer and its picture", words, pictures)
	}
	readLog(t, journal)
}

// counted tells the messages of a thread from its pictures.
func counted(thread []standin.Message) (words, pictures int) {
	for _, m := range thread {
		if len(m.Files) > 0 {
			pictures++
		} else {
			words++
		}
	}
	return words, pictures
}

// readLog is the supervisor's part of the story.
func readLog(t *testing.T, journal string) {
	t.Helper()
	out, err := exec.Command(program(t), "log", "--journal", journal, "--format", "json").Output()
	if err != nil {
		t.Fatal(err)
	}
	var day []map[string]any
	if err := json.Unmarshal(out, &day); err != nil {
		t.Fatalf("%v in %s", err, out)
	}
	if len(day) != 6 {
		t.Errorf("%d questions in the log, want 6: %s", len(day), out)
	}
}

func TestServeSaysWhatIsMissing(t *testing.T) {
	cmd := exec.Command(program(t), "serve", "--journal", filepath.Join(t.TempDir(), "journal.db"))
	cmd.Env = []string{"HOME=" + t.TempDir()}
	out, err := cmd.CombinedOutput()
	if err == nil || !strings.Contains(string(out), "SLACK_BOT_TOKEN") || !strings.Contains(string(out), "SLACK_APP_TOKEN") {
		t.Errorf("%v: %s", err, out)
	}
}

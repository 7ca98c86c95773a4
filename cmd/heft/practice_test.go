package main

import (
	"bufio"
	"bytes"
	"context"
	"html"
	"io"
	"net/http"
	"net/url"
	"os"
	"os/exec"
	"regexp"
	"slices"
	"strings"
	"syscall"
	"testing"
	"time"
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

var (
	lesson = regexp.MustCompile(`<li><a href="(/[^"]+)"><span class="who.*<q>([^<]+)</q>`)
	hidden = regexp.MustCompile(`<input type="hidden" name="(\w+)" value="([^"]*)">`)
	answer = regexp.MustCompile(`<p class="head">(?:<strong>)?([^<]*)<`)
)

// answers are the first lines of what the desk said, as the page has them.
func answers(page string) []string {
	var list []string
	for _, m := range answer.FindAllStringSubmatch(page, -1) {
		list = append(list, html.UnescapeString(m[1]))
	}
	return list
}

// TestLessons does what each of the lessons says, in both languages, as a
// browser without scripts does, and sees that the desk takes it so.
func TestLessons(t *testing.T) {
	for lang, want := range map[string][]string{
		"en": {"plan on", "16 ft", "Which maple", "Kept for this channel", "pull", "Only the arborist", "Confirmed on site by", "CLEARS BY", "STOP", "cuente con"},
		"es": {"cuente con", "16 ft", "Cuál arce", "Guardado para este canal", "hay que jalar", "Eso solo lo confirma", "Confirmado en el sitio por", "se columpia", "ALTO", "plan on"},
	} {
		t.Run(lang, func(t *testing.T) {
			ctx, cancel := context.WithTimeout(t.Context(), 2*time.Minute)
			defer cancel()
			r := rehearsing(t)
			lessons := lesson.FindAllStringSubmatch(r.get(ctx, "?lang="+lang), -1)
			if len(lessons) != len(want) {
				t.Fatalf("%d lessons, want %d", len(lessons), len(want))
			}
			for i, l := range lessons {
				at, ask := html.UnescapeString(l[1])[1:], html.UnescapeString(l[2])
				if strings.Contains(at, "draft=") {
					r.asks(ctx, at, ask, want[i])
				} else {
					r.taps(ctx, at, ask, want[i])
				}
				if i == 2 { // what was asked back is answered by a button
					tap := map[string][2]string{"en": {"silver maple", "Silver maple limb"}, "es": {"arce blanco", "Rama de arce blanco"}}[lang]
					r.taps(ctx, at, tap[0], tap[1])
				}
			}
			if day := r.get(ctx, "day"); strings.Count(day, `<td class="time">`) != 9 || !strings.Contains(day, "confirmed on site") {
				t.Errorf("the day sheet: %s", day)
			}
			r.end()
		})
	}
}

// asks sends a question that the page filled in, and wants something of the
// first line that the desk says to it.
func (r *rehearsal) asks(ctx context.Context, at, ask, want string) {
	r.Helper()
	page := r.get(ctx, at)
	form := filled(r.T, page, html.EscapeString(ask))
	form.Set("text", ask)
	form.Set("desk", "1")
	before := answers(page)
	page = r.until(ctx, r.sends(ctx, "say", form), func(page string) bool { return len(answers(page)) > len(before) })
	// Those of before, and among them the new one.
	said := answers(page)
	for _, old := range before {
		said = slices.Delete(said, slices.Index(said, old), slices.Index(said, old)+1)
	}
	if !strings.Contains(said[0], want) {
		r.Errorf("%q: the desk said %q, want %q", ask, said, want)
	}
}

// taps presses the newest button of a label, sends the form that it may open,
// and waits for something to show.
func (r *rehearsal) taps(ctx context.Context, at, label, want string) {
	r.Helper()
	at, _, _ = strings.Cut(at, "#")
	at = strings.Split(at, "&draft=")[0]
	var form url.Values
	r.until(ctx, at, func(page string) bool {
		for _, f := range strings.Split(page, `action="/press">`)[1:] {
			if f, _, _ = strings.Cut(f, "</form>"); strings.Contains(f, ">"+label+"</button>") {
				form = values(f)
				return true
			}
		}
		return false
	})
	at = r.sends(ctx, "press", form)
	page := r.until(ctx, at, func(page string) bool {
		return strings.Contains(page, want) || strings.Contains(page, `action="/submit"`)
	})
	if _, modal, open := strings.Cut(page, `action="/submit">`); open {
		modal, _, _ = strings.Cut(modal, "</form>")
		form := values(modal)
		form.Set("note/note", "anchor looked at")
		r.sends(ctx, "submit", form)
		page = r.until(ctx, at, func(page string) bool { return strings.Contains(page, want) })
		if !strings.Contains(page, "anchor looked at") {
			r.Errorf("the note is missing: %s", page)
		}
	}
}

// sends posts a form and returns the page that it leads to.
func (r *rehearsal) sends(ctx context.Context, path string, form url.Values) string {
	r.Helper()
	req, err := http.NewRequestWithContext(ctx, http.MethodPost, r.url+path, strings.NewReader(form.Encode()))
	if err != nil {
		r.Fatal(err)
	}
	req.Header.Set("Content-Type", "application/x-www-form-urlencoded")
	resp, err := http.DefaultClient.Do(req)
	if err != nil {
		r.Fatal(err)
	}
	resp.Body.Close()
	if note := resp.Request.URL.Query().Get("note"); note != "" {
		r.Fatalf("%s: the page says %q", path, note)
	}
	return "?" + resp.Request.URL.RawQuery
}

// values are the hidden ones of a form.
func values(form string) url.Values {
	v := url.Values{}
	for _, h := range hidden.FindAllStringSubmatch(form, -1) {
		v.Set(h[1], html.UnescapeString(h[2]))
	}
	return v
}

// filled is the form of the page whose text is the one given.
func filled(t *testing.T, page, text string) url.Values {
	t.Helper()
	for _, form := range strings.Split(page, "<form")[1:] {
		form, _, _ = strings.Cut(form, "</form>")
		if !strings.Contains(form, ">"+text+"</textarea>") {
			continue
		}
		return values(form)
	}
	t.Fatalf("no form is filled with %q: %s", text, page)
	return nil
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

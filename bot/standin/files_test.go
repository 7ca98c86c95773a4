package standin_test

import (
	"bytes"
	"io"
	"mime/multipart"
	"net/http"
	"strconv"
	"strings"
	"testing"

	"heft/bot/standin"
)

// send uploads bytes to an address and returns the status.
func send(t *testing.T, method, address, kind string, body io.Reader) int {
	t.Helper()
	req, err := http.NewRequestWithContext(t.Context(), method, address, body)
	if err != nil {
		t.Fatal(err)
	}
	req.Header.Set("Content-Type", kind)
	resp, err := http.DefaultClient.Do(req)
	if err != nil {
		t.Fatal(err)
	}
	defer resp.Body.Close()
	return resp.StatusCode
}

// announce asks for the address of a file of so many bytes.
func announce(t *testing.T, w *standin.Workspace, length int) (address, id string) {
	t.Helper()
	a := form(t, w, "files.getUploadURLExternal", "filename", "a.png", "length", strconv.Itoa(length), "alt_txt", "a view")
	address, _ = a["upload_url"].(string)
	id, _ = a["file_id"].(string)
	if address == "" || id == "" {
		t.Fatalf("answered %v", a)
	}
	return address, id
}

// The three steps of the platform documentation, files.getUploadURLExternal:
// the bytes may come raw or as a form.
func TestUpload(t *testing.T) {
	w := start(t, standin.Options{})
	asked := w.Say(standin.Yard, "U0CREW0001", "anyone?")
	form(t, w, "chat.postMessage", "channel", standin.Yard, "text", "words", "thread_ts", asked.TS)
	for _, raw := range []bool{true, false} {
		address, id := announce(t, w, 4)
		body, kind := io.Reader(strings.NewReader("\x89PNG")), "application/octet-stream"
		if !raw {
			var buf bytes.Buffer
			m := multipart.NewWriter(&buf)
			part, _ := m.CreateFormFile("file", "a.png")
			_, _ = part.Write([]byte("\x89PNG"))
			_ = m.Close()
			body, kind = &buf, m.FormDataContentType()
		}
		if status := send(t, http.MethodPost, address, kind, body); status != 200 {
			t.Fatalf("upload: %d", status)
		}
		a := form(t, w, "files.completeUploadExternal", "files", `[{"id":"`+id+`","title":"A view"}]`,
			"channel_id", standin.Yard, "thread_ts", asked.TS)
		got := w.Thread(standin.Yard, asked.TS)
		last := got[len(got)-1]
		if a["ok"] != true || len(last.Files) != 1 || last.BotID != standin.BotID || last.Text != "" {
			t.Fatalf("answered %v, shared %+v", a, last)
		}
		if f := last.Files[0]; string(f.Content) != "\x89PNG" || f.Title != "A view" || f.AltText != "a view" || f.Name != "a.png" {
			t.Errorf("shared %+v", f)
		}
		again := form(t, w, "files.completeUploadExternal", "files", `[{"id":"`+id+`"}]`, "channel_id", standin.Yard)
		if again["error"] != "file_not_found" {
			t.Errorf("shared twice: %v", again)
		}
	}
	if n := len(w.Calls("upload")); n != 2 {
		t.Errorf("%d uploads kept", n)
	}
}

func TestUploadRefusals(t *testing.T) {
	w := start(t, standin.Options{})
	asked := w.Say(standin.Yard, "U0CREW0001", "anyone?")
	reply, _ := form(t, w, "chat.postMessage", "channel", standin.Yard, "text", "words", "thread_ts", asked.TS)["ts"].(string)
	for _, c := range []struct {
		args []string
		want string
	}{
		{[]string{"filename", "a.png"}, "missing_argument"},
		{[]string{"filename", "a.png", "length", "0"}, "missing_argument"},
		{[]string{"length", "4"}, "missing_argument"},
		{[]string{"filename", "a.png", "length", "4", "alt_txt", strings.Repeat("é", 1001)}, "alt_txt_too_large"},
	} {
		if a := form(t, w, "files.getUploadURLExternal", c.args...); a["error"] != c.want {
			t.Errorf("%q: %v, want %s", c.args, a, c.want)
		}
	}
	address, id := announce(t, w, 4)
	named := `[{"id":"` + id + `"}]`
	complete := func(args ...string) any {
		return form(t, w, "files.completeUploadExternal", args...)["error"]
	}
	if got := complete("files", named, "channel_id", standin.Yard); got != "file_not_found" {
		t.Errorf("shared before it was sent: %v", got)
	}
	for name, got := range map[string]int{
		"short":  send(t, http.MethodPost, address, "image/png", strings.NewReader("abc")),
		"long":   send(t, http.MethodPost, address, "image/png", strings.NewReader("abcde")),
		"by GET": send(t, http.MethodGet, address, "image/png", http.NoBody),
		"other":  send(t, http.MethodPost, address+"0", "image/png", strings.NewReader("abcd")),
	} {
		if got == 200 {
			t.Errorf("an upload %s was taken", name)
		}
	}
	if status := send(t, http.MethodPost, address, "image/png", strings.NewReader("abcd")); status != 200 {
		t.Fatalf("upload: %d", status)
	}
	for _, c := range []struct {
		args []string
		want string
	}{
		{[]string{"files", "[]", "channel_id", standin.Yard}, "invalid_arguments"},
		{[]string{"files", "nonsense", "channel_id", standin.Yard}, "invalid_arguments"},
		{[]string{"files", named, "channel_id", "U0CREW0001"}, "invalid_arguments"},
		{[]string{"files", named, "channel_id", "C0NOWHERE1"}, "channel_not_found"},
		{[]string{"files", named, "channel_id", standin.Away}, "not_in_channel"},
		// Platform documentation, files.completeUploadExternal: never a
		// reply's stamp, its parent's instead.
		{[]string{"files", named, "channel_id", standin.Yard, "thread_ts", reply}, "invalid_thread_ts"},
		{[]string{"files", `[{"id":"F0"}]`, "channel_id", standin.Yard}, "file_not_found"},
	} {
		if got := complete(c.args...); got != c.want {
			t.Errorf("%q: %v, want %s", c.args, got, c.want)
		}
	}
}

// Platform documentation, the pages of the two methods: the scope files:write.
func TestUploadNeedsItsScope(t *testing.T) {
	w := start(t, standin.Options{Scopes: []string{"chat:write"}})
	for _, method := range []string{"files.getUploadURLExternal", "files.completeUploadExternal"} {
		if a := form(t, w, method); a["error"] != "missing_scope" || a["needed"] != "files:write" {
			t.Errorf("%s: %v", method, a)
		}
	}
}

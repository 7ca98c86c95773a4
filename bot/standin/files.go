package standin

import (
	"encoding/json"
	"fmt"
	"io"
	"net/http"
	"net/url"
	"slices"
	"strconv"
	"strings"
	"time"
	"unicode/utf8"
)

// File is one file of the workspace.
type File struct {
	ID      string
	Name    string
	Title   string
	AltText string
	Content []byte
	length  int  // as announced
	shared  bool // complete, and seen in a channel
}

// upload is the name under which calls of the upload address are kept and
// made to fail.
const upload = "upload"

// maxAltText is the longest description of an image, in characters (documented:
// files.getUploadURLExternal, errors).
const maxAltText = 1000

// uploadURL announces a file and hands out the address that takes it
// (documented: files.getUploadURLExternal).
func (w *Workspace) uploadURL(args url.Values) answer {
	length, err := strconv.Atoi(args.Get("length"))
	switch {
	case err != nil || length <= 0 || args.Get("filename") == "":
		return failed("missing_argument")
	case utf8.RuneCountInString(args.Get("alt_txt")) > maxAltText:
		return failed("alt_txt_too_large")
	}
	w.mu.Lock()
	defer w.mu.Unlock()
	f := &File{ID: fmt.Sprintf("F%09X", w.next()), Name: args.Get("filename"), AltText: args.Get("alt_txt"), length: length}
	w.files[f.ID] = f
	return answer{"ok": true, "upload_url": "http://" + w.addr + uploadPath + f.ID, "file_id": f.ID}
}

// uploadPath is where files are sent to.
const uploadPath = "/upload/v1/"

// serveUpload takes a file, raw or as a form. It answers 200 to a file that
// it took, and something else to one it did not (documented:
// files.getUploadURLExternal); that a wrong length is refused is from memory.
func (p *platform) serveUpload(rw http.ResponseWriter, r *http.Request) {
	if f := p.fault(upload, ""); f != nil {
		p.fail(rw, call{name: upload}, *f)
		return
	}
	content, err := sent(rw, r)
	status := http.StatusOK
	p.mu.Lock()
	f := p.files[strings.TrimPrefix(r.URL.Path, uploadPath)]
	switch {
	case r.Method != http.MethodPost:
		status = http.StatusMethodNotAllowed
	case f == nil || f.shared:
		status = http.StatusNotFound
	case err != nil || len(content) != f.length:
		status = http.StatusBadRequest
	default:
		f.Content = content
	}
	p.calls = append(p.calls, Call{Method: upload, At: time.Now(), Status: status})
	p.bump()
	p.mu.Unlock()
	rw.WriteHeader(status)
	fmt.Fprintf(rw, "%s - %d", http.StatusText(status), len(content))
}

// sent reads the file out of a request.
func sent(rw http.ResponseWriter, r *http.Request) ([]byte, error) {
	r.Body = http.MaxBytesReader(rw, r.Body, maxBody)
	if !strings.HasPrefix(r.Header.Get("Content-Type"), "multipart/form-data") {
		return io.ReadAll(r.Body)
	}
	form, err := r.MultipartReader()
	if err != nil {
		return nil, err
	}
	part, err := form.NextPart()
	if err != nil {
		return nil, err
	}
	return io.ReadAll(part)
}

// completeUpload shares files that were sent, in a thread where one is named
// (documented: files.completeUploadExternal; the codes of its
// errors are from memory).
func (w *Workspace) completeUpload(args url.Values) answer {
	var named []struct{ ID, Title string }
	if err := json.Unmarshal([]byte(args.Get("files")), &named); err != nil || len(named) == 0 {
		return failed("invalid_arguments")
	}
	// A person's id does not stand for the direct message with them here (the
	// platform's own words: channel_id must match ^[CGDZ][A-Z0-9]{8,}$).
	if channel := args.Get("channel"); strings.HasPrefix(channel, "U") || strings.HasPrefix(channel, "W") {
		return failed("invalid_arguments")
	}
	w.mu.Lock()
	defer w.mu.Unlock()
	c, refused := w.room(args.Get("channel"))
	switch thread := args.Get("thread_ts"); {
	case refused != nil:
		return refused
	case thread != "" && !w.begins(c.ID, thread):
		return failed("invalid_thread_ts")
	}
	for _, n := range named {
		if f := w.files[n.ID]; f == nil || f.Content == nil || f.shared {
			return failed("file_not_found")
		}
	}
	m := Message{Channel: c.ID, User: w.botUser, BotID: w.botID, Subtype: "file_share", ThreadTS: args.Get("thread_ts"), At: time.Now(), TS: w.now()}
	list := make([]answer, 0, len(named))
	for _, n := range named {
		f := w.files[n.ID]
		f.Title, f.shared = n.Title, true
		m.Files = append(m.Files, *f)
		list = append(list, answer{"id": f.ID, "title": f.Title})
	}
	if events := w.tell(&m); len(events) > 0 {
		w.background(func() { w.deliverAll(events) })
	}
	return answer{"ok": true, "files": list}
}

// begins says whether a stamp is that of a message outside any thread, or of
// a thread's first: a file is never shared under a reply's. The lock is held.
func (w *Workspace) begins(channel, ts string) bool {
	return slices.ContainsFunc(w.messages[channel], func(m *Message) bool { return m.TS == ts && m.Thread() == ts })
}

// File is a file that was shared; false where there is none of that id.
func (p *platform) File(id string) (File, bool) {
	p.mu.Lock()
	defer p.mu.Unlock()
	f := p.files[id]
	if f == nil || !f.shared {
		return File{}, false
	}
	return *f, true
}

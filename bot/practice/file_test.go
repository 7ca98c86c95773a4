package practice_test

import (
	"bytes"
	"context"
	"errors"
	"html"
	"image"
	"image/png"
	"io"
	"net/http"
	"strconv"
	"strings"
	"testing"
)

// A file is shown as the picture that its bytes are, whatever it is called.
func TestPictures(t *testing.T) {
	r := open(t, nil)
	var dot bytes.Buffer
	if err := png.Encode(&dot, image.NewGray(image.Rect(0, 0, 1, 1))); err != nil {
		t.Fatal(err)
	}
	share := func(name string, content []byte) string {
		t.Helper()
		a := r.call("files.getUploadURLExternal", "filename", name, "length", strconv.Itoa(len(content)), "alt_txt", "a limb on its line")
		resp, err := http.Post(a["upload_url"].(string), "application/octet-stream", bytes.NewReader(content))
		if err != nil {
			t.Fatal(err)
		}
		resp.Body.Close()
		id := a["file_id"].(string)
		r.call("files.completeUploadExternal", "files", `[{"id":"`+id+`"}]`, "channel_id", mill)
		return id
	}
	id := share("a.html", dot.Bytes())
	_, page := r.get("/?job=" + mill)
	m := r.space.Messages(mill)[0]
	at := "job=" + mill + "&amp;lang=en&amp;who=groundworker&amp;at=t" + strings.Replace(m.TS, ".", "-", 1)
	r.want(page, `<a class="picture" href="/look/`+id+`?`+at+`"><img src="/picture/`+id+`" alt="a limb on its line" loading="lazy" width="1" height="1">`)
	_, page = r.get("/look/" + id + "?" + html.UnescapeString(at))
	r.want(page, `<img src="/picture/`+id+`" alt="a limb on its line" width="1" height="1">`,
		`href="/?job=`+mill+`&amp;lang=en&amp;who=groundworker#t`+strings.Replace(m.TS, ".", "-", 1)+`">Back to the tickets</a>`)
	_, page = r.get("/look/" + id + "?at=//elsewhere.example")
	r.without(page, "elsewhere")
	if resp, body := r.get("/picture/" + id); resp.Header.Get("Content-Type") != "image/png" || body != dot.String() {
		t.Errorf("served as %v", resp.Header)
	}
	if resp, _ := r.get("/picture/" + share("b.png", []byte("<html><script>x</script>"))); resp.StatusCode != http.StatusNotFound {
		t.Errorf("a page as a picture: %d %v", resp.StatusCode, resp.Header)
	}
	// Another file is a link, and what it holds runs nowhere.
	id = share("day.html", []byte("<!doctype html><title>day</title><script>x</script>"))
	_, page = r.get("/?job=" + mill)
	r.want(page, `<a class="button" href="/file/`+id+`?job=`, `">day.html</a>`)
	resp, day := r.get("/file/" + id)
	r.want(day, "Back to the tickets")
	if h := resp.Header; h.Get("Content-Type") != "text/html; charset=utf-8" || !strings.Contains(h.Get("Content-Security-Policy"), "default-src 'none'") || !strings.Contains(day, "<title>day") {
		t.Errorf("%v: %q", h, day)
	}
	csv := share("day.csv", []byte("<b>1,2"))
	_, page = r.get("/look/" + csv)
	r.want(page, "<pre class=\"paper\">&lt;b&gt;1,2</pre>", "Back to the tickets")
	if resp, _ := r.get("/file/" + csv); resp.Header.Get("Content-Type") != "text/plain; charset=utf-8" {
		t.Errorf("%v", resp.Header)
	}
}

func TestDaySheet(t *testing.T) {
	var fault error
	r := open(t, func(_ context.Context, w io.Writer) error {
		_, _ = io.WriteString(w, `<!doctype html><body class="day"><h1>Rigging questions</h1>`)
		return fault
	})
	_, page := r.get("/?who=supervisor&lang=es")
	way := `href="/day?` + "job=" + mill + `&amp;lang=es&amp;who=supervisor"`
	if n := strings.Count(page, way); n != 2 { // at the head too, for a phone
		t.Errorf("%d ways to the day sheet in %s", n, page)
	}
	_, page = r.get("/?who=climber")
	r.without(page, `href="/day`)
	_, day := r.get("/day?lang=es&who=supervisor&job=" + mill)
	r.want(day, `<body class="day"><style>.way-back`, `<a href="/?job=`+mill+`&amp;lang=es&amp;who=supervisor">Volver a las boletas</a>`, "@media print { .way-back { display: none; } }")
	if at := strings.Index(day, "Rigging questions"); at < strings.Index(day, "Volver") {
		t.Errorf("the way back is not at the head: %q", day)
	}
	fault = errors.New("the disk is gone")
	if resp, day := r.get("/day"); resp.StatusCode != 500 || !strings.Contains(day, "the disk is gone") || strings.Contains(day, "<h1>") {
		t.Errorf("%d: %q", resp.StatusCode, day)
	}
	bare := open(t, nil)
	_, page = bare.get("/?who=supervisor")
	bare.without(page, `href="/day"`, `action="/restart"`)
	if resp, _ := bare.get("/day"); resp.StatusCode != http.StatusNotFound {
		t.Errorf("without one: %d", resp.StatusCode)
	}
}

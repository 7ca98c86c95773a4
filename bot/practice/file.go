package practice

import (
	"bytes"
	images "image"
	_ "image/gif"
	_ "image/jpeg"
	_ "image/png"
	"net/http"
	"regexp"
	"slices"
	"strings"

	"heft/bot/standin"
)

// alone lets a page bring its own style, and nothing else.
const alone = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; frame-ancestors 'none'; sandbox"

// pictureOf is the kind of picture that a file is by its bytes, whatever it is
// called; empty where it is none.
func pictureOf(f standin.File) string {
	kind := http.DetectContentType(f.Content)
	if !slices.Contains([]string{"image/png", "image/jpeg", "image/gif", "image/webp"}, kind) {
		return ""
	}
	return kind
}

// sized is how large a picture is, so that its page keeps the place and nothing moves
// when it comes; zero where its bytes do not say.
func sized(f standin.File) (width, height int) {
	c, _, err := images.DecodeConfig(bytes.NewReader(f.Content))
	if err != nil {
		return 0, 0
	}
	return c.Width, c.Height
}

// paged says whether a file is a page that stands alone.
func paged(f standin.File) bool { return strings.HasSuffix(f.Name, ".html") }

// picture serves a file of the workspace that is a picture.
func (p *page) picture(w http.ResponseWriter, r *http.Request) {
	f, ok := p.space.File(r.PathValue("id"))
	kind := pictureOf(f)
	if !ok || kind == "" {
		http.NotFound(w, r)
		return
	}
	w.Header().Set("Content-Type", kind)
	_, _ = w.Write(f.Content) // who hung up sees nothing
}

// file serves a file of the workspace as it is: a page that stands alone as
// one, with a way back, anything else as its letters.
func (p *page) file(w http.ResponseWriter, r *http.Request) {
	f, ok := p.space.File(r.PathValue("id"))
	if !ok {
		http.NotFound(w, r)
		return
	}
	if paged(f) {
		p.standing(w, r, f.Content)
		return
	}
	w.Header().Set("Content-Security-Policy", alone)
	w.Header().Set("Content-Type", "text/plain; charset=utf-8")
	_, _ = w.Write(f.Content) // who hung up reads nothing
}

// looked is a file on a page of its own, with a way back.
type looked struct {
	texts
	Lang, Name, Back string
	Picture          *image
	Text             string
}

// look shows a picture or the letters of a file, with a way back to the
// message that has it.
func (p *page) look(w http.ResponseWriter, r *http.Request) {
	f, ok := p.space.File(r.PathValue("id"))
	if !ok {
		http.NotFound(w, r)
		return
	}
	b := p.builder(r)
	l := looked{texts: b.texts, Lang: b.place.Lang, Name: f.Name, Back: b.back(r)}
	if pictureOf(f) != "" {
		w, h := sized(f)
		l.Picture = &image{At: "/picture/" + f.ID, Alt: f.AltText, Width: w, Height: h}
	} else {
		l.Text = string(f.Content)
	}
	render(w, "look.html", l)
}

// look is the address of a file, which knows the way back to its message.
func (b *builder) look(at, id, ts string) string {
	to := at + id + "?" + b.place.Query()
	if ts != "" {
		to += "&at=" + anchor(ts)
	}
	return to
}

// anchored is the form of a message's anchor.
var anchored = regexp.MustCompile(`^t\d+-\d+$`)

// back is the place that a request came from.
func (b *builder) back(r *http.Request) string {
	if at := r.FormValue("at"); anchored.MatchString(at) {
		return b.place.To() + "#" + at
	}
	return b.place.To()
}

// body is where the words of a page begin.
var body = regexp.MustCompile(`(?i)<body[^>]*>`)

// standing serves a page that stands alone, with a way back put in, which is
// not printed.
func (p *page) standing(w http.ResponseWriter, r *http.Request, content []byte) {
	b := p.builder(r)
	var way bytes.Buffer
	if err := templates().ExecuteTemplate(&way, "way.html", link{Name: b.Say("back"), To: b.back(r)}); err != nil {
		http.Error(w, "the page could not be made", http.StatusInternalServerError)
		return
	}
	at := len(content)
	if begins := body.FindIndex(content); begins != nil {
		at = begins[1]
	}
	w.Header().Set("Content-Security-Policy", alone)
	w.Header().Set("Content-Type", "text/html; charset=utf-8")
	_, _ = w.Write(slices.Concat(content[:at], way.Bytes(), content[at:])) // who hung up reads nothing
}

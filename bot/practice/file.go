package practice

import (
	"net/http"
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

// file serves a file of the workspace to look at: a page that stands alone as
// one, anything else as its letters.
func (p *page) file(w http.ResponseWriter, r *http.Request) {
	f, ok := p.space.File(r.PathValue("id"))
	if !ok {
		http.NotFound(w, r)
		return
	}
	kind := "text/plain; charset=utf-8"
	if strings.HasSuffix(f.Name, ".html") {
		kind = "text/html; charset=utf-8"
	}
	w.Header().Set("Content-Security-Policy", alone)
	w.Header().Set("Content-Type", kind)
	_, _ = w.Write(f.Content) // who hung up reads nothing
}

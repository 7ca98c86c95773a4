package practice

import (
	"bytes"
	"context"
	"embed"
	"html/template"
	"io"
	"net/http"
	"slices"
	"sync"
	"sync/atomic"
	"time"

	"heft/bot/standin"
)

//go:embed page
var files embed.FS

// cell is a part of a page, with the page it stands in.
type cell struct {
	Sheet *sheet
	Of    any
}

// templates are read when the page is first looked at: most runs of the
// program have no page.
var templates = sync.OnceValue(func() *template.Template {
	return template.Must(template.New("").Funcs(template.FuncMap{
		"in": func(s *sheet, of any) cell { return cell{s, of} },
	}).ParseFS(files, "page/*.html"))
})

// page is the practice page of one workspace.
type page struct {
	space *standin.Workspace
	desk  Desk
	trail trail
	at    atomic.Int32 // the lesson that was last gone to, counted from one
}

// Desk is what the page can have done around the desk, and where its clock
// hangs. What is nil is not offered; a zone that is nil is this machine's.
type Desk struct {
	DaySheet func(ctx context.Context, w io.Writer, language string) error // writes the day sheet
	Restart  func(context.Context) error                                   // switches the desk off and on
	Zone     *time.Location
}

// New returns the page as a handler.
func New(space *standin.Workspace, desk Desk) http.Handler {
	if desk.Zone == nil {
		desk.Zone = time.Local
	}
	p := &page{space: space, desk: desk}
	mux := http.NewServeMux()
	mux.HandleFunc("GET /{$}", p.show)
	mux.HandleFunc("GET /changes", p.changes)
	mux.HandleFunc("GET /try/{n}", p.lesson)
	mux.HandleFunc("GET /picture/{id}", p.picture)
	mux.HandleFunc("GET /look/{id}", p.look)
	mux.HandleFunc("GET /file/{id}", p.file)
	mux.HandleFunc("GET /page.css", asset("page/page.css", "text/css; charset=utf-8"))
	for _, module := range []string{"page.mjs", "words.mjs", "view.mjs"} {
		mux.HandleFunc("GET /"+module, asset("page/"+module, "text/javascript; charset=utf-8"))
	}
	mux.HandleFunc("GET /icon.svg", asset("page/icon.svg", "image/svg+xml"))
	if desk.DaySheet != nil {
		mux.HandleFunc("GET /day", p.day)
	}
	if desk.Restart != nil {
		mux.HandleFunc("POST /restart", p.acting(p.restart))
	}
	for path, do := range map[string]func(*http.Request, act) (string, string){
		"/say": p.say, "/correct": p.correct, "/press": p.press, "/submit": p.submit, "/dismiss": p.dismiss, "/front": p.front,
		"/workout": p.workOut,
	} {
		mux.HandleFunc("POST "+path, p.acting(do))
	}
	// A form of some other page must not speak for the crew.
	return guarded(ownHost(http.NewCrossOriginProtection().Handler(mux)))
}

// policy lets the page load what this address serves, and nothing else.
const policy = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; connect-src 'self'; " +
	"form-action 'self'; base-uri 'none'; frame-ancestors 'none'"

// guarded sets the headers that every answer has.
func guarded(next http.Handler) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		h := w.Header()
		h.Set("Content-Security-Policy", policy)
		h.Set("X-Content-Type-Options", "nosniff")
		h.Set("Referrer-Policy", "no-referrer")
		h.Set("Cross-Origin-Opener-Policy", "same-origin")
		h.Set("Cross-Origin-Resource-Policy", "same-origin")
		h.Set("Cache-Control", "no-store")
		next.ServeHTTP(w, r)
	})
}

func asset(name, kind string) http.HandlerFunc {
	return func(w http.ResponseWriter, _ *http.Request) {
		data, err := files.ReadFile(name)
		if err != nil {
			http.Error(w, "not there", http.StatusNotFound)
			return
		}
		w.Header().Set("Content-Type", kind)
		_, _ = w.Write(data) // who hung up reads nothing
	}
}

// builder reads who is where off a request; what it does not know is the
// first of its kind.
func (p *page) builder(r *http.Request) *builder {
	b := &builder{snap: p.space.Snapshot(), files: p.space.File, users: map[string]standin.User{}, zone: p.desk.Zone, role: roles[0], steps: p.trail.all(), at: int(p.at.Load()), days: p.desk.DaySheet != nil}
	b.place.Lang, b.texts = speaking(r)
	if i := slices.IndexFunc(roles, func(o role) bool { return o.Key == r.FormValue("who") }); i >= 0 {
		b.role = roles[i]
	}
	b.place.Who, b.place.Job, b.place.Front = b.role.Key, jobs[0], r.FormValue("front") == "1"
	if job := r.FormValue("job"); job == "direct" || slices.Contains(jobs, job) {
		b.place.Job = job
	}
	for _, u := range b.snap.Users {
		b.users[u.ID] = u
	}
	return b
}

// show renders the page.
func (p *page) show(w http.ResponseWriter, r *http.Request) {
	b := p.builder(r)
	if _, open := b.snap.Modals[b.role.User]; open && b.elsewhere() && r.Header.Get("Sec-Fetch-Dest") == "document" {
		p.space.Dismiss(b.role.User) // who goes to another job leaves the form behind
		b = p.builder(r)
	}
	s := b.sheet()
	if s.Restart = p.desk.Restart != nil; p.desk.DaySheet != nil && b.role.User == Supervisor {
		s.Day = "/day?" + b.place.Query()
	}
	if words, ok := b.texts["note."+r.FormValue("note")]; ok {
		s.note(words, r.FormValue("note") == "restarted", r.FormValue("at"))
	}
	if i, before, ok := drafted(r); ok {
		b.draft(s, i, before)
	}
	render(w, "page.html", s)
}

// render writes a page, or that it could not be made.
func render(w http.ResponseWriter, name string, of any) {
	var out bytes.Buffer
	if err := templates().ExecuteTemplate(&out, name, of); err != nil {
		http.Error(w, "the page could not be made", http.StatusInternalServerError)
		return
	}
	w.Header().Set("Content-Type", "text/html; charset=utf-8")
	_, _ = out.WriteTo(w) // who hung up reads nothing
}

// day shows the day's sheet, which stands alone and brings its own style.
func (p *page) day(w http.ResponseWriter, r *http.Request) {
	var out bytes.Buffer
	language, _ := speaking(r)
	if err := p.desk.DaySheet(r.Context(), &out, language); err != nil {
		http.Error(w, "The day sheet cannot be made: "+err.Error(), http.StatusInternalServerError)
		return
	}
	p.standing(w, r, out.Bytes())
}

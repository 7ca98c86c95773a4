package main

import (
	"context"
	"html"
	"net/http"
	"net/url"
	"regexp"
	"slices"
	"strings"
	"testing"
	"time"
)

var (
	lesson = regexp.MustCompile(`<li><a href="(/[^"]+)"><span class="who.*<q>([^<]+)</q>.*`)
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
		"en": {"plan on", "16 ft", "Which maple", "Kept for this job", "pull", "Only the arborist", "Confirmed on site by", "CLEARS BY", "STOP", "cuente con"},
		"es": {"cuente con", "16 ft", "Cuál arce", "Guardado para este trabajo", "hay que jalar", "Eso solo lo confirma", "Confirmado en el sitio por", "PASA LIBRE", "ALTO", "plan on"},
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
				at, ask := r.leads(ctx, html.UnescapeString(l[1])[1:]), html.UnescapeString(l[2])
				if strings.Contains(at, "draft=") {
					r.asks(ctx, at, ask, want[i])
				} else {
					r.taps(ctx, at, ask, want[i])
				}
				if i == 2 { // what was asked back is answered by a button
					tap := map[string][2]string{"en": {"red maple", "Red maple limb"}, "es": {"arce rojo", "Rama de arce rojo"}}[lang]
					if !strings.Contains(html.UnescapeString(l[0]), "“"+tap[0]+"”") {
						t.Errorf("the card does not say what to tap: %s", l[0])
					}
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

// leads is the page that a card leads to.
func (r *rehearsal) leads(ctx context.Context, card string) string {
	r.Helper()
	req, err := http.NewRequestWithContext(ctx, http.MethodGet, r.url+card, nil)
	if err != nil {
		r.Fatal(err)
	}
	resp, err := http.DefaultClient.Do(req)
	if err != nil {
		r.Fatal(err)
	}
	resp.Body.Close()
	return "?" + resp.Request.URL.RawQuery
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

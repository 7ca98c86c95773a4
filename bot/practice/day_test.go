package practice_test

import (
	"context"
	"io"
	"net/http"
	"net/http/httptest"
	"strings"
	"testing"

	"heft/bot/practice"
	"heft/bot/standin"
)

// The day sheet is asked for in the language of the page that leads to it.
func TestTheDaySheetIsInThePagesLanguage(t *testing.T) {
	space, err := standin.Start(practice.Scenario())
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { _ = space.Close() })
	page := httptest.NewServer(practice.New(space, practice.Desk{
		DaySheet: func(_ context.Context, w io.Writer, language string) error {
			_, err := io.WriteString(w, "<p>in "+language+"</p>")
			return err
		},
	}))
	t.Cleanup(page.Close)
	for _, c := range []struct{ path, accept, want string }{
		{"/day?lang=es", "en", "es"}, {"/day?lang=en", "es", "en"}, {"/day", "es-MX,es;q=0.9", "es"}, {"/day", "fr", "en"}, {"/day?lang=tlh", "", "en"},
	} {
		req, err := http.NewRequestWithContext(t.Context(), http.MethodGet, page.URL+c.path, nil)
		if err != nil {
			t.Fatal(err)
		}
		req.Header.Set("Accept-Language", c.accept)
		resp, err := http.DefaultClient.Do(req)
		if err != nil {
			t.Fatal(err)
		}
		body, err := io.ReadAll(resp.Body)
		_ = resp.Body.Close()
		if err != nil || !strings.Contains(string(body), "<p>in "+c.want+"</p>") {
			t.Errorf("%s for %q: %q, %v", c.path, c.accept, body, err)
		}
	}
}

// The sheet calls the jobs what the page does.
func TestNamesAreThoseOfThePage(t *testing.T) {
	for language, want := range map[string][2]string{"en": {"Mill Lane", "Just me and the desk"}, "es": {"Calle del Molino", "Solo Heft y yo"}} {
		names := practice.Names(language)
		if names["C0MILLLANE"] != want[0] || names["D0SAM00004"] != want[1] || names["U0INGE0003"] != "Inge" {
			t.Errorf("%s: %v", language, names)
		}
	}
}

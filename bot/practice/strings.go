package practice

import (
	"embed"
	"encoding/json"
	"fmt"
	"net/http"
	"strings"

	"golang.org/x/text/language"
)

//go:embed strings/*.json
var stringFiles embed.FS

// texts are the words of the page in one language, by key.
type texts map[string]string

// The languages, the one for everybody else first.
var (
	english = load("en")
	spanish = load("es")

	languages = []string{"en", "es"}
	matcher   = language.NewMatcher([]language.Tag{language.English, language.Spanish})
)

func load(name string) texts {
	data, err := stringFiles.ReadFile("strings/" + name + ".json")
	t := texts{}
	if err == nil {
		err = json.Unmarshal(data, &t)
	}
	if err != nil {
		panic("practice: the strings of " + name + ": " + err.Error()) // embedded, and tested
	}
	return t
}

// speaking chooses the language: the one asked for by name, else the
// browser's.
func speaking(r *http.Request) (string, texts) {
	name := r.FormValue("lang")
	if name != "en" && name != "es" {
		tags, _, _ := language.ParseAcceptLanguage(r.Header.Get("Accept-Language")) // what cannot be read matches none
		_, i, _ := matcher.Match(tags...)
		name = languages[i]
	}
	if name == "es" {
		return name, spanish
	}
	return name, english
}

// Say is the string of a key with its parts put in.
func (t texts) Say(key string, parts ...any) string {
	s, ok := t[key]
	switch {
	case !ok:
		return key
	case len(parts) == 0:
		return s
	}
	return fmt.Sprintf(s, parts...)
}

// lesson is a string of a question to try.
func (t texts) lesson(i int, what string) string {
	return t.Say(strings.Join([]string{"try", fmt.Sprint(i + 1), what}, "."))
}

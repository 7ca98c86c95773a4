package practice

import (
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

// The two languages say the same things, with the same parts.
func TestStringsAreComplete(t *testing.T) {
	for key, en := range english {
		es := spanish[key]
		if es == "" || en == "" {
			t.Errorf("%s: %q, %q", key, en, es)
		}
		if strings.Count(en, "%s") != strings.Count(es, "%s") || strings.Count(en, "%") != strings.Count(en, "%s") {
			t.Errorf("%s has other parts: %q, %q", key, en, es)
		}
		if en == es && key != "supervisor" { // one word in both languages
			t.Errorf("%s is not translated: %q", key, en)
		}
	}
	if len(english) != len(spanish) {
		t.Errorf("%d strings in English, %d in Spanish", len(english), len(spanish))
	}
}

// Every string that a template asks for is there, and none lies idle.
func TestStringsAreUsed(t *testing.T) {
	var source strings.Builder
	for _, pattern := range []string{"*.go", "page/*.html"} {
		names, err := filepath.Glob(pattern)
		if err != nil || len(names) == 0 {
			t.Fatalf("%s: %v, %v", pattern, names, err)
		}
		for _, name := range names {
			data, err := os.ReadFile(name)
			if err != nil {
				t.Fatal(err)
			}
			source.Write(data)
		}
	}
	for _, m := range regexp.MustCompile(`Say "([a-z.]+)"`).FindAllStringSubmatch(source.String(), -1) {
		if english[m[1]] == "" {
			t.Errorf("a template asks for %q", m[1])
		}
	}
	for key := range english {
		used := key
		if base, ok := strings.CutPrefix(key, "note."); ok {
			used = base
		}
		if base, ok := strings.CutSuffix(key, ".topic"); ok {
			used = base
		}
		if strings.HasPrefix(key, "try.") && strings.Count(key, ".") == 2 {
			continue // by number
		}
		if !strings.Contains(source.String(), `"`+used+`"`) {
			t.Errorf("nobody asks for %q", key)
		}
	}
	for i := range lessons {
		for _, what := range []string{"ask", "why"} {
			if key := fmt.Sprintf("try.%d.%s", i+1, what); english.lesson(i, what) != english[key] || english[key] == "" {
				t.Errorf("a question to try has no %s", key)
			}
		}
	}
}

package parser_test

import (
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

// The list of files in the package comment names every file once, so that whoever
// looks for a reading finds it.
func TestEveryFileIsInTheList(t *testing.T) {
	text, err := os.ReadFile("doc.go")
	if err != nil {
		t.Fatal(err)
	}
	_, list, _ := strings.Cut(string(text), "# The files")
	named := map[string]int{}
	for _, line := range regexp.MustCompile(`(?m)^//\t(.*)$`).FindAllStringSubmatch(list, -1) {
		for name := range strings.FieldsFuncSeq(line[1], func(r rune) bool { return r == ',' || r == ' ' }) {
			named[name+".go"]++
		}
	}
	for _, file := range glob(t, "*.go") {
		if name := filepath.Base(file); name != "doc.go" && !strings.HasSuffix(name, "_test.go") {
			if named[name] != 1 {
				t.Errorf("%s is named %d times", name, named[name])
			}
			delete(named, name)
		}
	}
	for name := range named {
		t.Errorf("there is no %s", name)
	}
}

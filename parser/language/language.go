package language

import (
	"embed"
	"fmt"
	"slices"
	"strings"
	"sync"
)

//go:embed *.txt
var files embed.FS

// Language is one file.
type Language struct {
	Tag       string
	Words     []Line            // the lines of [words], comments and empty ones left out
	Talk      []Line            // likewise of [talk]
	Sentences map[string]string // of the desk's English sentences
}

// Line is a line of a file, with its number for messages.
type Line struct {
	Number int
	Text   string
}

// All returns every language, in the order of their tags: English is the
// first that stands for itself. It fails only where a file is malformed. The
// slice is the caller's, what stands in it is everybody's.
func All() ([]Language, error) {
	all, err := once()
	return slices.Clone(all), err
}

// once reads the files. They are part of the program, and do not change.
var once = sync.OnceValues(func() ([]Language, error) {
	entries, err := files.ReadDir(".")
	if err != nil {
		return nil, err
	}
	var all []Language
	for _, e := range entries {
		text, err := files.ReadFile(e.Name())
		if err != nil {
			return nil, err
		}
		l, err := read(strings.TrimSuffix(e.Name(), ".txt"), string(text))
		if err != nil {
			return nil, fmt.Errorf("%s: %w", e.Name(), err)
		}
		all = append(all, l)
	}
	return all, nil
})

// broken puts the line breaks in that a caption has.
func broken(sentence string) string { return strings.ReplaceAll(sentence, `\n`, "\n") }

// read divides a file into its parts.
func read(tag, text string) (Language, error) {
	l := Language{Tag: tag, Sentences: map[string]string{}}
	part, english := "", ""
	i := -1
	for line := range strings.SplitSeq(text, "\n") {
		i++
		line = strings.TrimRight(line, " \t\r")
		switch {
		case line == "" || strings.HasPrefix(line, "#"):
		case line == "[words]" || line == "[talk]" || line == "[sentences]":
			part = line
		case part == "[words]":
			l.Words = append(l.Words, Line{i + 1, line})
		case part == "[talk]":
			l.Talk = append(l.Talk, Line{i + 1, line})
		case part == "":
			return l, fmt.Errorf("line %d stands before [words] and [sentences]", i+1)
		case !strings.HasPrefix(line, "  "):
			if english != "" {
				return l, fmt.Errorf("line %d: %q is not translated", i, english)
			}
			if english = broken(line); l.Sentences[english] != "" {
				return l, fmt.Errorf("line %d: %q is translated already", i+1, english)
			}
		case english == "":
			return l, fmt.Errorf("line %d has no English sentence above it", i+1)
		default:
			l.Sentences[english] = broken(strings.TrimSpace(line))
			english = ""
		}
	}
	if english != "" {
		return l, fmt.Errorf("%q is not translated", english)
	}
	return l, nil
}

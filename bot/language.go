package bot

import (
	"fmt"
	"maps"
	"slices"
	"strconv"
	"sync"

	"heft/parser/language"
)

// english is the language of the sentences in the code, and of whoever has
// not been heard to speak another.
const english = "en"

// sentences are those of every language, by its tag. A file that is malformed
// has kept the desk from being made.
var sentences = sync.OnceValue(func() map[string]map[string]string {
	all, _ := language.All()
	out := make(map[string]map[string]string, len(all))
	for _, l := range all {
		out[l.Tag] = l.Sentences
	}
	return out
})

// Languages are the tags of those that the desk speaks, in order.
func Languages() []string { return slices.Sorted(maps.Keys(sentences())) }

// say fills in a sentence of the desk in the speaker's language. Every
// sentence is one whole with %s for its parts, which are worded already, so
// that another language can put them in another order: %[2]s.
//
// A map and fmt do that. The catalog of golang.org/x/text is made for the
// number of a noun and for the figures of a region; but a figure has to look
// the same in every language here, 1,950 lb and 14.5 in, like those on the
// tape and on the gear's label.
func (s speaker) say(sentence string, parts ...any) string {
	if own, ok := s.own(sentence); ok {
		return fmt.Sprintf(own, parts...)
	}
	return fmt.Sprintf(sentence, parts...)
}

// word says what has no parts: a noun, a caption, a reason.
func (s speaker) word(word string) string {
	if own, ok := s.own(word); ok {
		return own
	}
	return word
}

// own is a sentence in the speaker's language, where that is not English.
func (s speaker) own(sentence string) (string, bool) {
	if s.language == "" || s.language == english {
		return "", false
	}
	own, ok := sentences()[s.language][sentence]
	return own, ok
}

// tag is the language's, as scripts read it.
func (s speaker) tag() string {
	if _, known := sentences()[s.language]; known {
		return s.language
	}
	return english
}

// count says a whole number as a part of a sentence.
func count(n int) string { return strconv.Itoa(n) }

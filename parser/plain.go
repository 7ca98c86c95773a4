package parser

import (
	"strings"
	"unicode"
)

// What a message says as a whole is also looked for in its words as they were typed,
// however they were read. They are folded once for all who look.

// plainText is a message as its folded words, one space between each.
type plainText struct {
	text  string
	words []string
	from  []int // where each starts in the text
}

func newPlainText(text string) *plainText {
	words := strings.FieldsFunc(fold(text), func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) && r != '\'' })
	p := &plainText{text: strings.Join(words, " "), words: words, from: make([]int, len(words))}
	at := 0
	for i, w := range words {
		p.from[i] = at
		at += len(w) + 1
	}
	return p
}

// run is so many words from the one at i.
func (p *plainText) run(i, n int) string {
	last := i + n - 1
	return p.text[p.from[i] : p.from[last]+len(p.words[last])]
}

// plainWords are the words of the message, folded, without what stands between.
func (rd *reading) plainWords() []string { return rd.plainText().words }

func (rd *reading) plainText() *plainText {
	if rd.plain == nil {
		rd.plain = newPlainText(rd.text)
	}
	return rd.plain
}

// typed says whether the words of a cue stand anywhere in the message.
func (rd *reading) typed(c cue) bool {
	p, cues := rd.plainText(), rd.in.cues[c]
	for i := range p.words {
		for n := 1; n <= min(longestCue, len(p.words)-i); n++ {
			if cues[p.run(i, n)] {
				return true
			}
		}
	}
	return false
}

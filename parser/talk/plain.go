package talk

import (
	"strings"
	"unicode"

	"heft/parser/reading"
	"heft/parser/scan"
)

func newPlainText(text string) *reading.PlainText {
	words := strings.FieldsFunc(scan.Fold(text), func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) && r != '\'' })
	p := &reading.PlainText{Text: strings.Join(words, " "), Words: words, From: make([]int, len(words))}
	at := 0
	for i, w := range words {
		p.From[i] = at
		at += len(w) + 1
	}
	return p
}

// run is so many words from the one at i.
func run(p *reading.PlainText, i, n int) string {
	last := i + n - 1
	return p.Text[p.From[i] : p.From[last]+len(p.Words[last])]
}

// plainWords are the words of the message, folded, without what stands between.
func plainWords(rd *reading.Reading) []string { return plainText(rd).Words }

func plainText(rd *reading.Reading) *reading.PlainText {
	if rd.Plain == nil {
		rd.Plain = newPlainText(rd.Text)
	}
	return rd.Plain
}

// Typed says whether the words of a cue stand anywhere in the message.
func Typed(rd *reading.Reading, c scan.Cue) bool {
	p, cues := plainText(rd), rd.In.Cues[c]
	for i := range p.Words {
		for n := 1; n <= min(reading.LongestCue, len(p.Words)-i); n++ {
			if cues[run(p, i, n)] {
				return true
			}
		}
	}
	return false
}

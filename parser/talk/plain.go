package talk

import (
	"regexp"
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
		rd.Plain.Cues = cuesIn(rd.Plain, rd.In)
	}
	return rd.Plain
}

// cuesIn are the cues whose words stand anywhere in a message.
func cuesIn(p *reading.PlainText, in *scan.Tongue) scan.CueSet {
	var found scan.CueSet
	for i := range p.Words {
		for n := 1; n <= min(reading.LongestCue, len(p.Words)-i); n++ {
			found = append(found, in.Cues[run(p, i, n)]...)
		}
	}
	return found
}

// Typed says whether the words of a cue stand anywhere in the message.
func Typed(rd *reading.Reading, c scan.Cue) bool { return plainText(rd).Cues.Has(c) }

// AfterGreeting are the words of a message behind what only greets or agrees, folded, without
// what stands between them, from where a pattern holds; "" where it holds nowhere.
func AfterGreeting(rd *reading.Reading, holds *regexp.Regexp) string {
	for _, e := range rd.Elems {
		if words := newPlainText(rd.Text[e.Start:]).Text; holds.MatchString(words) {
			return words
		}
		if e.Pause == 0 && !e.Polite() && !(e.Term != nil && e.Term.Chatter) {
			return ""
		}
	}
	return ""
}

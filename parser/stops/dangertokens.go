package stops

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// DangerTokens are the words of the message, each with the kinds that begin at it.
func DangerTokens(rd *reading.Reading) []reading.DangerToken {
	var out []reading.DangerToken
	pause, owned := 0, false
	for at := 0; at < len(rd.Text); {
		n := dangerWord(rd.Text[at:])
		if n == 0 {
			r, size := utf8.DecodeRuneInString(rd.Text[at:])
			pause = max(pause, pauseOf(r))
			at += size
			continue
		}
		for _, w := range takenApart(rd, at, n) {
			word := strings.ReplaceAll(w.Folded, "'", "")
			if rd.In.Optional[word] {
				owned = true
				continue
			}
			out = append(out, reading.DangerToken{Word: word, Start: w.Start, End: w.End, Pause: pause, Owned: owned})
			pause, owned = 0, false
		}
		at += n
	}
	for i := range out {
		dangerKinds(rd, out, i)
	}
	return out
}

// takenApart is the word of so many bytes at a place of the text, or the words that were
// typed there without their space: "slinggot". A slip of one is left as it was typed: it
// may be another.
func takenApart(rd *reading.Reading, at, n int) []lexicon.Word {
	whole := lexicon.Word{Folded: scan.Fold(rd.Text[at : at+n]), Start: at, End: at + n}
	for _, f := range rd.Fixes {
		if f.Words == rd.Text[at:at+n] && strings.ReplaceAll(f.As, " ", "") == whole.Folded {
			return whole.Cut(rd.Text, strings.Fields(f.As))
		}
	}
	return []lexicon.Word{whole}
}

// dangerWord is how long the word or number at the beginning of a text is.
func dangerWord(text string) int {
	n := 0
	for n < len(text) {
		r, size := utf8.DecodeRuneInString(text[n:])
		inside := n > 0 && strings.ContainsRune("'’.,", r) && lettersAt(text[n+size:])
		point := r == '.' || r == ','
		switch {
		case unicode.IsLetter(r), unicode.IsDigit(r), unicode.Is(unicode.Mn, r):
		case inside && (!point || unicode.IsDigit(rune(text[n-1])) && unicode.IsDigit(rune(text[n+size]))):
		default:
			return n
		}
		n += size
	}
	return n
}

// lettersAt says whether a text begins with a letter or a digit.
func lettersAt(text string) bool {
	r, _ := utf8.DecodeRuneInString(text)
	return unicode.IsLetter(r) || unicode.IsDigit(r)
}

// pauseOf is how far what stands between two words parts them.
func pauseOf(r rune) int {
	switch r {
	case '.', '!', '?', ';', '…', '\n':
		return 4
	case ',', ':', '(', ')', '—', '–':
		return 2
	}
	return 0
}

// dangerKinds finds the kinds that begin at the token at i.
func dangerKinds(rd *reading.Reading, tokens []reading.DangerToken, i int) {
	const longest = 4
	t := &tokens[i]
	if itself := rd.In.Dangers.Itself[t.Word]; itself != "" {
		t.Kinds = append(t.Kinds, reading.Seen{Kind: itself, End: i + 1})
	}
	if t.Word[0] >= '0' && t.Word[0] <= '9' {
		t.Kinds = append(t.Kinds, reading.Seen{Kind: "number", End: i + 1})
	}
	phrase := append(make([]byte, 0, 64), t.Word...)
	for n := 1; ; n++ {
		for _, kind := range rd.In.Dangers.Kinds[string(phrase)] {
			t.Kinds = append(t.Kinds, reading.Seen{Kind: kind, End: i + n})
		}
		if n == longest || i+n == len(tokens) || tokens[i+n].Pause > 0 {
			break
		}
		phrase = append(append(phrase, ' '), tokens[i+n].Word...)
	}
	known := false
	for k, e := range rd.Elems {
		known = known || e.Start < t.End && t.Start < e.End
		if e.End <= t.Start || e.Start > t.Start || e.Term == nil {
			continue // an element may begin with an article
		}
		end := i + 1
		for end < len(tokens) && tokens[end].Start < e.End {
			end++
		}
		for _, kind := range knownAs(rd, k) {
			t.Kinds = append(t.Kinds, reading.Seen{Kind: kind, End: end})
		}
	}
	if !known && mayBeCalled(*t) {
		t.Kinds = append(t.Kinds, reading.Seen{Kind: "name", End: i + 1})
	}
}

// mayBeCalled says whether a word that is not known may be what somebody is called: it has no
// article, and is not several of something.
func mayBeCalled(t reading.DangerToken) bool {
	const shortest = 2
	letters := strings.IndexFunc(t.Word, func(r rune) bool { return !unicode.IsLetter(r) }) < 0
	return letters && !t.Owned && utf8.RuneCountInString(t.Word) >= shortest && !strings.HasSuffix(t.Word, "s")
}

// knownAs are the kinds that the element at i is of by the other lines of the word
// files.
func knownAs(rd *reading.Reading, i int) (kinds []string) {
	t := rd.TermAt(i)
	if t.Tree != nil {
		kinds = append(kinds, "tree")
	}
	if rd.Elems[i].Piece() || t.Unnamed {
		kinds = append(kinds, "piece")
	}
	if Kit(rd, i) {
		kinds = append(kinds, "gear")
	}
	if Person(rd, i) || rd.Elems[i].Marked(lexicon.MarkPerson) {
		kinds = append(kinds, "somebody")
	}
	return kinds
}

package parser

import "strings"

// compared reads "which is heavier, white oak 40 cm x 2 m or poplar 35 cm x 3 m"
// as a list of two: their weights say which.
func (r *Reader) compared(rd *reading) []Said[string] {
	at := -1
	for i, e := range rd.elems {
		if rd.termAt(i).compares {
			at = e.end
		}
	}
	if at < 0 {
		return nil
	}
	for word := range lettered(rd.text[at:]) {
		if j, ok := rd.in.joins[fold(word)]; !ok || j != or {
			continue
		}
		n := strings.Index(rd.text[at:], " "+word+" ")
		if n < 0 {
			continue
		}
		left, right := rd.oneOf(stretch(rd.text, at, at+n)), rd.oneOf(stretch(rd.text, at+n+len(word)+2, len(rd.text)))
		if r.whole(left.Value) && r.whole(right.Value) {
			return []Said[string]{left, right}
		}
	}
	return nil
}

// oneOf leaves out the word that only says that a piece is another: "o uno de chopo
// de 50 cm".
func (rd *reading) oneOf(part Said[string]) Said[string] {
	word, n := nextWord(part.Value)
	of, _ := nextWord(part.Value[n:])
	if rd.in.numbers[word].value != 1 || !rd.in.leads[of] {
		return part
	}
	return stretch(rd.text, part.Start+n, part.End)
}

// stretch is a part of the text without what only parts it from the rest.
func stretch(text string, start, end int) Said[string] {
	const marks = " ,:?!."
	start += len(text[start:end]) - len(strings.TrimLeft(text[start:end], marks))
	words := strings.TrimRight(text[start:end], marks)
	return Said[string]{Value: words, Words: words, Start: start, End: start + len(words)}
}

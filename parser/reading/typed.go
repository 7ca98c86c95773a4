package reading

import (
	"strings"

	"heft/parser/scan"
)

// What a message says as a whole is also looked for in its words as they were typed,
// however they were read. They are folded once for all who look.

// PlainText is a message as its folded words, one space between each.
type PlainText struct {
	Text  string
	Words []string
	From  []int // where each starts in the text
	Cues  scan.CueSet
}

// TypedBefore says whether the words of a cue are typed right before the element
// at i, however they were read.
func (rd *Reading) TypedBefore(i int, c scan.Cue) bool {
	from, _ := rd.Span(rd.Elems[i].Start, func(e Element) bool { return e.Pause > 0 })
	words := scan.SplitWords(strings.TrimLeft(rd.Text[from:rd.Elems[i].Start], "¿¡ "))
	for n := 1; n <= min(LongestCue, len(words)); n++ {
		if rd.In.Cued(strings.Join(words[len(words)-n:], " "), c) {
			return true
		}
	}
	return false
}

// LongestCue is how many words of a cue are looked for.
const LongestCue = 4

// TypedAfter says the same of what is typed right behind it.
func (rd *Reading) TypedAfter(i int, c scan.Cue) bool {
	_, to := rd.Span(rd.Elems[i].End, func(e Element) bool { return e.Pause > 0 })
	return rd.Begin(c, rd.Text[rd.Elems[i].End:max(to, rd.Elems[i].End)])
}

// CuedAs says whether a stretch of the text is the words of a cue, however much room is left
// between them and however they are accented.
func (rd *Reading) CuedAs(typed string, c scan.Cue) bool {
	return rd.In.Cued(strings.Join(scan.SplitWords(typed), " "), c)
}

// SaidTo is where the words of a cue end that stand right behind a place in the
// text, -1 where none do.
func (rd *Reading) SaidTo(c scan.Cue, from int) int {
	said := rd.saidFrom(from)
	for i := len(said) - 1; i >= 0; i-- {
		if said[i].cues.Has(c) {
			return said[i].end
		}
	}
	return -1
}

// said is a stretch of the text that is words of cues, by where it ends.
type said struct {
	end  int
	cues scan.CueSet
}

// saidFrom are the stretches behind a place in the text that are words of cues. They are
// looked for once for all who ask: most places have none.
func (rd *Reading) saidFrom(from int) []said {
	if rd.said == nil {
		rd.said = make(map[int][]said, len(rd.Elems))
	}
	found, ok := rd.said[from]
	if !ok {
		found = rd.wordsOfCues(from)
		rd.said[from] = found
	}
	return found
}

// wordsOfCues finds them: up to a mark, and no more words than a cue may have.
func (rd *Reading) wordsOfCues(from int) (found []said) {
	words := 0
	for end := from; end <= len(rd.Text) && words <= LongestCue; end++ {
		if end < len(rd.Text) && !strings.ContainsRune(" ,.;:!?\n/", rune(rd.Text[end])) {
			continue
		}
		typed := strings.TrimSpace(rd.Text[from:end])
		if strings.ContainsAny(typed, ",.;:!?\n") {
			break
		}
		folded := scan.SplitWords(typed)
		words = len(folded)
		if cues := rd.In.Cues[strings.Join(folded, " ")]; len(cues) > 0 {
			found = append(found, said{end, cues})
		}
	}
	return found
}

// EverTyped says whether the words of a cue stand anywhere in the message, with no mark
// between them.
func (rd *Reading) EverTyped(c scan.Cue) bool {
	mark := func(r rune) bool { return strings.ContainsRune(".,;:!?¿¡()\n", r) }
	for _, part := range strings.FieldsFunc(rd.Text, mark) {
		words := scan.SplitWords(part)
		for at := range words {
			for n := 1; n <= min(LongestCue, len(words)-at); n++ {
				if rd.In.Cued(strings.Join(words[at:at+n], " "), c) {
					return true
				}
			}
		}
	}
	return false
}

// Begin says whether the words of a cue begin a stretch of text.
func (rd *Reading) Begin(c scan.Cue, text string) bool {
	words := scan.SplitWords(text)
	for n := 1; n <= min(LongestCue, len(words)); n++ {
		if rd.In.Cued(strings.Join(words[:n], " "), c) {
			return true
		}
	}
	return false
}

// Span is the stretch around a place between two elements that end one.
func (rd *Reading) Span(at int, ends func(Element) bool) (from, to int) {
	to = len(rd.Text)
	for _, e := range rd.Elems {
		switch {
		case !ends(e):
		case e.End <= at:
			from = e.End
		case e.Start >= at:
			to = min(to, e.Start)
		}
	}
	return from, to
}

// Gear of which nobody can read what it bears, and gear that is kept for people,
// is told of in words that say nothing elsewhere: a tag, a stamp, climbing.

// WordsApart is how many words may stand between gear and what is told of it.
const WordsApart = 8

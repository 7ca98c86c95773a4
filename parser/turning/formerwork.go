package turning

import (
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// What a crew did last week is no size of the piece at hand.

// FormerWork passes over a sentence of a talk that tells how long the pieces of another day
// were: "last week we were cutting five feet at that width". One that names a piece or asks
// for something is read.
func FormerWork(rd *reading.Reading) {
	if rd.First {
		return
	}
	for from := 0; from < len(rd.Elems); {
		to := from
		for to < len(rd.Elems) && rd.Elems[to].Pause < 4 {
			to++
		}
		if from < to && formerWork(rd, from, to) {
			start, end := rd.Elems[from].Start, rd.Elems[to-1].End
			rd.Asks = slices.DeleteFunc(rd.Asks, func(a *parser.Ask) bool {
				return a.Kind == parser.Unknown && a.Start >= start && a.End <= max(end, nextStart(rd, to))
			})
			Blank(rd, from, to)
		}
		from = to + 1
	}
}

// nextStart is where the element at i begins, or the text ends.
func nextStart(rd *reading.Reading, i int) int {
	if i < len(rd.Elems) {
		return rd.Elems[i].Start
	}
	return len(rd.Text)
}

// formerWork says whether a sentence from one element up to another tells lengths of another
// day, and nothing else.
func formerWork(rd *reading.Reading, from, to int) bool {
	lengths := 0
	for k := from; k < to; k++ {
		e, t := rd.Elems[k], rd.TermAt(k)
		switch {
		case e.Fig != nil && e.Fig.Dim == parser.DimLength:
			lengths++
		case e.Fig != nil, t.Tree != nil, t.Shape != "", t.Unnamed, t.Stop != "", e.Plays(parser.Weight), e.Plays(parser.Limit), e.Plays(parser.HitchHeight):
			return false
		}
	}
	text := rd.Text[rd.Elems[from].Start:nextStart(rd, to)]
	asked := strings.ContainsAny(rd.Text[rd.Elems[from].Start:min(len(rd.Text), nextStart(rd, to)+1)], "?¿")
	return lengths > 0 && !asked && typedWithin(rd, text, lexicon.CueOtherDay) && typedWithin(rd, text, lexicon.CueDidCut)
}

// typedWithin says whether words of a cue are typed anywhere in a stretch of the text.
func typedWithin(rd *reading.Reading, text string, c scan.Cue) bool {
	for at := 0; at < len(text); {
		if rd.Begin(c, text[at:]) {
			return true
		}
		n := strings.IndexByte(text[at:], ' ')
		if n < 0 {
			return false
		}
		at += n + 1
	}
	return false
}

// BrushOut passes over how much of its end a limb has its brush on, "most of the brush is
// out in the last 10 ft": it tells no length of the limb.
func BrushOut(rd *reading.Reading) {
	for i := range rd.Elems {
		if !rd.Elems[i].Fig.Far() || !rd.TypedBefore(i, lexicon.CueOutmost) || rd.At(i+1).Piece() {
			continue
		}
		k := i - 1
		for k >= 0 && rd.Elems[k].Pause == 0 && rd.Elems[k].Fig == nil && !brushAt(rd, k) {
			k--
		}
		if k >= 0 && brushAt(rd, k) {
			Blank(rd, i, i+1)
		}
	}
}

// brushAt says whether the word at i names leaves and twigs.
func brushAt(rd *reading.Reading, i int) bool { return rd.At(i).Marked(lexicon.MarkPart) }

// KeptOff passes over how far off something the piece shall stay, where what that is is not
// known: "keep it 7 ft off the water slide". The word itself stays asked about.
func KeptOff(rd *reading.Reading) {
	for i := range rd.Elems {
		k := rd.Past(i-1, -1, lexicon.MarkPronoun|lexicon.MarkArticle)
		if rd.Elems[i].Fig.Far() && k < i-1 && rd.Cued(rd.At(k), lexicon.CueKeepsOff) && rd.Cued(rd.At(i+1), lexicon.CueOffWall) && unknownBehind(rd, i+1) {
			Blank(rd, i, i+1)
		}
	}
}

// unknownBehind says whether a word that must be asked about stands behind the word at i,
// before the breath ends.
func unknownBehind(rd *reading.Reading, i int) bool {
	to := i + 1
	for to < len(rd.Elems) && rd.Elems[to].Pause == 0 {
		to++
	}
	return slices.ContainsFunc(rd.Asks, func(a *parser.Ask) bool {
		return a.Kind == parser.Unknown && a.Start >= rd.Elems[i].End && a.Start < nextStart(rd, to)
	})
}

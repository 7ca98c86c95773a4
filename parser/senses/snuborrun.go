package senses

import (
	"slices"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// SnubOrRun says whether a line held fast and one that is let run are weighed against
// each other, "let it run 15 ft vs lock it off", with nothing but the run told between.
func SnubOrRun(rd *reading.Reading) bool {
	snub, run := -1, -1
	for i, e := range rd.Elems {
		switch {
		case rd.TermAt(i).Note == parser.Snubbed && snub < 0:
			snub = i
		case rd.TermAt(i).Note == parser.Snubbed || e.Plays(parser.RunLength) && e.Fig == nil && run >= 0:
			return false
		case e.Plays(parser.RunLength) && e.Fig == nil:
			run = i
		}
	}
	if snub < 0 || run < 0 {
		return false
	}
	first, last := min(snub, run), max(snub, run)
	for k := first + 1; k < last && !versusAt(rd, last); k++ {
		if rd.Elems[k].Pause > 2 || rd.Elems[k].Piece() || rd.Elems[k].Fig != nil && (first != run || k > first+1) {
			return false
		}
	}
	either := 0
	for _, word := range scan.SplitWords(rd.Text[rd.Elems[first].End:rd.Elems[last].Start]) {
		j, join := rd.In.Joins[scan.Fold(word)]
		if join && j == scan.Or || rd.CuedAs(word, lexicon.CueVersus) {
			either++
		}
	}
	return either == 1 || either == 0 && (versusAt(rd, last) || bothIfs(rd, first, last)) // "less than if i snub it"
}

// bothIfs reads "how hard does it hit if he lets it run and how hard if he snubs it": each of
// the two stands behind an "if" of its own.
func bothIfs(rd *reading.Reading, first, last int) bool {
	behindIf := func(i int) bool {
		k := i - 1
		for rd.TermAt(k).Human || rd.TermAt(k).Someone || rd.At(k).Marked(lexicon.MarkPronoun) || rd.Cued(rd.At(k), lexicon.CueAllOf) {
			k--
		}
		words := scan.SplitWords(rd.Word(rd.At(k)))
		return k >= 0 && len(words) > 0 && rd.In.Cued(words[len(words)-1], lexicon.CueIf)
	}
	return behindIf(first) && behindIf(last)
}

// SlowNotRun takes "lowering it slow, not letting it run" for what lowering is: held back all
// the way. Of a piece that falls into the rope the same words say that it is stopped dead.
func SlowNotRun(rd *reading.Reading) {
	falls := func(i int) bool {
		t, e := rd.TermAt(i), rd.Elems[i]
		return t.Intent == parser.AskDrop || t.Negative || t.BelowCut || e.Plays(parser.DropHeight) || e.Plays(parser.BlockBelow)
	}
	if !gear.AsksFor(rd, parser.AskLower) || rd.AnyAt(falls) {
		return
	}
	for i, e := range rd.Elems {
		if rd.TermAt(i).Note == parser.Snubbed && rd.Cued(e, lexicon.CueNotRun) {
			rd.Alter(i, func(t *scan.Term) { t.Note = "" })
		}
	}
}

// RunVersus takes the word between the two, "let it run 10 ft compared with locking it off",
// for one that is understood: no wood and no size is compared by it.
func RunVersus(rd *reading.Reading) {
	if !SnubOrRun(rd) {
		return
	}
	rd.Asks = slices.DeleteFunc(rd.Asks, func(a *parser.Ask) bool {
		return a.Kind == parser.Unknown && rd.CuedAs(a.Words, lexicon.CueVersus)
	})
}

// versusAt says whether the words right before i weigh what comes against what was told,
// "does it hit less if i let it run than if": a
// piece may stand before them, "what is the peak for a 700 lb log, compared with locking it
// off".
func versusAt(rd *reading.Reading, i int) bool {
	return rd.TypedBefore(i, lexicon.CueThanIf) || rd.TypedBefore(i, lexicon.CueVersus) || i > 1 && rd.At(i-1).Fig == nil && rd.TypedBefore(i-1, lexicon.CueVersus)
}

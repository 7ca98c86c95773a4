package turning

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/stops"
)

// How high somebody is who tells of a piece, "im 15 ft up in it", has no part in
// what the piece weighs or how long it may be. Where something hangs or runs, it
// could be the height of that, and is asked about.

// TellersHeight passes over such heights.
func TellersHeight(rd *reading.Reading) {
	if !gear.AsksFor(rd, parser.AskWeight) && !gear.AsksFor(rd, parser.AskCutPlan) || rd.AnyAt(rd.Is(hangsOnHeight)) {
		return
	}
	for i := 0; i < len(rd.Elems); i++ {
		from, to := selfUp(rd, i)
		if from < 0 {
			continue
		}
		rd.Pass(from, to)
		i = from
	}
}

// MovedGear keeps how far gear was moved, "someone moved the anchor 2 m down", from
// being how high it is now, or how long anything is.
func MovedGear(rd *reading.Reading) {
	for i, e := range rd.Elems {
		if !e.Fig.Far() || e.Fig.Told != "" {
			continue
		}
		k := rd.Past(i-1, -1, lexicon.MarkArticle|lexicon.MarkRelation|lexicon.MarkErect)
		gearAt := stops.Kit(rd, k) || rd.TermAt(k).Anchors || rd.Cued(rd.At(k), lexicon.CueAnchor)
		moved := rd.TermAt(rd.Past(k-1, -1, lexicon.MarkArticle)).Stirs
		if gearAt && moved && !rd.At(i-1).Marked(lexicon.MarkAt) {
			e.Fig.Elsewhere = true
			rd.Alter(k, func(t *scan.Term) { t.Roles = nil })
			if rd.At(i + 1).LooksBack(parser.HitchHeight) {
				rd.Alter(i+1, func(t *scan.Term) { t.Roles = nil }) // "2 m up"
			}
		}
	}
}

// hangsOnHeight says whether the words at i ask for what a height has a part in.
func hangsOnHeight(rd *reading.Reading, i int) bool {
	switch rd.TermAt(i).Intent {
	case parser.AskLower, parser.AskRope, parser.AskSwing, parser.AskDrop, parser.AskRaise, parser.AskBlockLoad, parser.AskAnchor, parser.AskLift:
		return true
	}
	return rd.Elems[i].Plays(parser.Wraps)
}

// selfUp finds from where to where somebody tells how high he is: "im 15 ft up",
// "i'm up 15 ft"; -1 for none.
func selfUp(rd *reading.Reading, i int) (from, to int) {
	fig := rd.Elems[i].Fig
	bare := fig != nil && fig.Dim == parser.DimCount && fig.Unit == nil
	if !fig.Far() && !bare {
		return -1, -1
	}
	up := func(e reading.Element) bool {
		return e.Marked(lexicon.MarkUpward|lexicon.MarkErect) || e.LooksBack(parser.HitchHeight)
	}
	if k := wordsOf(rd, i-1, lexicon.CueMeUp); k >= 0 && rd.EndsBreath(i+1) {
		return k, i + 1
	}
	k := rd.Back(i - 1)
	if rd.Cued(rd.At(k), lexicon.CueMe) && up(rd.At(i+1)) && !rd.At(i+2).Marked(lexicon.MarkRelation|lexicon.MarkPlace) && !rd.At(i+2).Piece() {
		return k, i + 2
	}
	return -1, -1
}

// wordsOf finds where the words of a cue begin that end at the element at i, -1 for
// nowhere.
func wordsOf(rd *reading.Reading, i int, c scan.Cue) int {
	for k := i; k >= 0 && k > i-reading.LongestCue && rd.Elems[k].Pause == 0; k-- {
		if rd.CuedAs(rd.Text[rd.Elems[k].Start:rd.Elems[i].End], c) {
			return k
		}
	}
	return -1
}

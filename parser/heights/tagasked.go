package heights

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/stops"
)

// TagAsked reads "tag line on a 280 lb limb, how hard does he pull": where a tag line is
// spoken of, and nothing is lifted, the pull that is asked for is the tag line's.
func TagAsked(rd *reading.Reading) {
	tag := -1
	for i, e := range rd.Elems {
		if t := rd.TermAt(i); t.Intent == parser.AskBalance && t.Besides && e.Marked(lexicon.MarkTug) {
			tag = i
		}
		if rd.TermAt(i).Note == parser.TagPull {
			return
		}
	}
	pulls := func(i int) bool { return i != tag && (rd.Elems[i].Marked(lexicon.MarkTug) || rd.TermAt(i).Lifts) }
	asks := func(i int) bool {
		return rd.TypedBefore(i, lexicon.CueHowMuch) || rd.Cued(rd.Elems[i], lexicon.CueHowMuch)
	}
	if pulled := pulledAside(rd); tag < 0 && pulled >= 0 {
		rd.Alter(pulled, func(t *scan.Term) { t.Note, t.Intent, t.Besides = parser.TagPull, parser.AskBalance, true })
		return
	}
	if tag < 0 || rd.Worded(parser.Parts) || gear.AsksFor(rd, parser.AskRaise) || !rd.AnyAt(pulls) || !rd.AnyAt(asks) {
		return
	}
	rd.Alter(tag, func(t *scan.Term) { t.Note = parser.TagPull })
	for _, k := range []int{rd.Past(tag-1, -1, lexicon.MarkArticle), tag + 1} {
		if rd.TermAt(k).Intent == parser.AskLower && !rd.At(k).Plays(parser.Wraps) {
			rd.Alter(k, func(t *scan.Term) { t.Intent = "" }) // "how much must the tag line hold" holds no load up
		}
	}
}

// pulledAside reads "how hard does mike have to pull" of a piece that hangs from its block
// and is told to be so far to the side, -1 where it is asked otherwise: nothing lifts it, so
// that a tag line is what a hand pulls on. What "it" pulls is the swing.
func pulledAside(rd *reading.Reading) int {
	was := rd.Before
	aside := was.Has(parser.Sideways) && was.Has(parser.LineOut) && (was.Intent == parser.AskSwing || was.Intent == parser.AskBalance)
	asks := func(i int) bool { return rd.TermAt(i).HowMuch && !rd.TermAt(i).Lifts }
	if !aside || !rd.AnyAt(asks) || rd.AnyAt(func(i int) bool { return rd.Elems[i].Fig != nil || rd.Elems[i].Piece() }) {
		return -1
	}
	for i, e := range rd.Elems {
		if rd.TermAt(i).Lifts && rd.Cued(e, lexicon.CueByHand) && (stops.SomeonePulls(rd, i) || crewBefore(rd, i)) {
			return i
		}
	}
	return -1
}

// crewBefore says whether we or they stand before the verb at i, in its breath.
func crewBefore(rd *reading.Reading, i int) bool {
	for k := i - 1; k >= 0 && rd.Elems[k].Pause == 0; k-- {
		if e := rd.Elems[k]; rd.Cued(e, lexicon.CuePeople) || e.Plays(parser.People) {
			return true
		}
	}
	return false
}

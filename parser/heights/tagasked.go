package heights

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
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
	if tag < 0 || rd.Worded(parser.Parts) || gear.AsksFor(rd, parser.AskRaise) || !rd.AnyAt(pulls) || !rd.AnyAt(asks) {
		return
	}
	rd.Alter(tag, func(t *scan.Term) { t.Note = parser.TagPull })
}

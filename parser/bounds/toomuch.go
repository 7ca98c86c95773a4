package bounds

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
)

// What a piece may weigh is told in two breaths as well: "más de 400 kg no
// quiero", "arriba de 500 kg no bajamos". Without those words it is a claim, and
// asked about.

// TooMuch reads such limits of what is to be cut.
func TooMuch(rd *reading.Reading) {
	if !gear.AsksFor(rd, parser.AskCutPlan) {
		return
	}
	for i, e := range rd.Elems {
		if !gear.Heavy(rd, i) || e.Fig.Claimed != "" || rd.At(i-2).Plays(parser.Weight) || rd.At(i-2).Marked(lexicon.MarkPronoun|lexicon.MarkIs) {
			continue
		}
		switch bound, next := rd.At(i-1), rd.At(i+1); {
		case rd.Cued(bound, lexicon.CueUpTo) && (next.Pause > 0 || rd.TermAt(i+1).Each):
			places.Claim(rd, i, parser.Limit)
		case bound.Marked(lexicon.MarkBound):
			refused(rd, i)
		}
	}
}

// refused reads "no quiero" behind the number at i.
func refused(rd *reading.Reading, i int) {
	not := rd.Past(i+1, +1, lexicon.MarkPronoun)
	if not < len(rd.Elems) && rd.Colon(not) || rd.At(not).Pause == 2 {
		not++
	}
	will := rd.Past(not+1, +1, lexicon.MarkPronoun)
	if !rd.Cued(rd.At(not), lexicon.CueNot) || !rd.Cued(rd.At(will), lexicon.CueWilling) || rd.At(will+1).Fig != nil {
		return
	}
	places.Claim(rd, i, parser.Limit)
	for k := not; k <= will; k++ {
		rd.Alter(k, func(t *scan.Term) { *t = scan.Term{} })
	}
	if rd.TermAt(will + 1).Each {
		rd.Alter(will+1, func(t *scan.Term) { *t = scan.Term{} })
	}
}

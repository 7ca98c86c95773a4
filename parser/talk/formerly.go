package talk

import (
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/bounds"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/senses"
	"heft/parser/sizes"
	"heft/parser/turning"
)

// FormerLimit passes over what the limit was where it is told what it is now, and
// nothing of a piece: "limit was 500, make it 650 lb".
func FormerLimit(rd *reading.Reading) {
	now, was := -1, -1
	for i := range rd.Elems {
		switch {
		case rd.Elems[i].Fig == nil:
		case !bounds.Mass(rd, i):
			return
		case rd.TypedBefore(i, lexicon.CueFormerly):
			if was >= 0 {
				return
			}
			was = i
		case now >= 0, !rd.TypedBefore(i, lexicon.CueNewly):
			return
		default:
			now = i
		}
	}
	limit := rd.AnyAt(func(i int) bool { return rd.Elems[i].Plays(parser.Limit) })
	denied := was < 0 && len(rd.NotSo) == 1 // "ahora son 500 no 800"
	if now < 0 || was < 0 && !denied || !limit || strings.ContainsAny(rd.Text, "?¿") || asksOrTells(rd) {
		return
	}
	rd.Changed = true
	sizes.Limited(rd, now)
	if !denied {
		turning.Blank(rd, was, was+1)
	}
}

// asksOrTells says whether a message asks for something, or tells of a piece.
func asksOrTells(rd *reading.Reading) bool {
	asked, _, _ := senses.Intents(rd)
	return len(asked) > 0 || rd.AnyAt(func(i int) bool { return rd.Elems[i].Piece() || rd.TermAt(i).Unnamed || rd.TermAt(i).Tree != nil })
}

// BlockLimit claims what the block may carry where it stands right behind what a
// piece may weigh: "limit 400 lb on the piece, 900 lb at the block".
func BlockLimit(rd *reading.Reading) {
	asked, _, _ := senses.Intents(rd)
	if slices.ContainsFunc(asked, func(in parser.Intent) bool { return in != parser.AskJob }) || rd.AnyAt(func(i int) bool { return rd.TermAt(i).Tree != nil || rd.Elems[i].Fig.Far() }) {
		return
	}
	for i := range rd.Elems {
		if !loadTold(rd, i) || !rd.TypedAfter(i, lexicon.CueAtBlock) {
			continue
		}
		k := i - 1
		for k >= 0 && rd.Elems[k].Fig == nil {
			k--
		}
		if k > 0 && loadTold(rd, k) && rd.At(k-1).Plays(parser.Limit) && besideLimit(rd, k, i) {
			if a, b := rd.Elems[k].Fig, rd.Elems[i].Fig; gear.Heavy(rd, k) && b.Unit == nil {
				b.Lent(a.Unit) // the unit is told with the first of them
			}
			if !gear.Heavy(rd, i) || !gear.Heavy(rd, k) {
				rd.Alter(i+1, func(t *scan.Term) {
					*t = scan.Term{Roles: []scan.Role{{Field: parser.BlockWorking, Side: lexicon.Before, Soft: false}}}
				}) // their units are asked about
				continue
			}
			places.Claim(rd, i, parser.BlockWorking)
			places.Claim(rd, k, parser.Limit)
		}
	}
}

// loadTold says whether the number at i is a mass or a force, or is without its unit and
// more than any angle.
func loadTold(rd *reading.Reading, i int) bool {
	const half = 180
	fig := rd.Elems[i].Fig
	return gear.Heavy(rd, i) || bounds.ManyBare(fig) && fig.Low > half
}

// besideLimit says whether nothing stands between two numbers but that the first is of a
// piece.
func besideLimit(rd *reading.Reading, a, b int) bool {
	between := newPlainText(rd.Text[rd.Elems[a].End:rd.Elems[b].Start]).Text
	return between == "" || rd.In.Cued(between, lexicon.CueLeading)
}

// NotHere passes over how many of the crew have gone or climb, where it is told how
// many are on the rope as well.
func NotHere(rd *reading.Reading) {
	for i := len(rd.Elems) - 1; i >= 0; i-- {
		if !headcount(rd, i) {
			continue
		}
		end := i + 1
		if rd.At(end).Plays(parser.People) && rd.At(end).Fig == nil {
			end++
		}
		gone, climb := rd.SaidTo(lexicon.CueGone, rd.Elems[end-1].End), rd.SaidTo(lexicon.CueClimber, rd.Elems[i].End)
		if gone >= 0 && end > i+1 {
			climb = rd.Elems[end-1].End
		}
		if climb < 0 || !rd.AnyAt(func(k int) bool {
			return (k < i || k >= end) && rd.Elems[k].Plays(parser.People) && (headcount(rd, k-1) || headcount(rd, k+1))
		}) {
			continue
		}
		for rd.At(end).Fig == nil && rd.At(end).Term != nil && rd.At(end).End <= climb {
			end++
		}
		turning.Blank(rd, i, end)
	}
}

// headcount says whether the number at i can be how many people there are.
func headcount(rd *reading.Reading, i int) bool {
	fig := rd.At(i).Fig
	return fig != nil && fig.Dim == parser.DimCount && fig.Unit == nil && !fig.Pair && fig.Low == fig.High && fig.Low >= 1 && fig.High <= mostCrew
}

// ClimberCounted takes the climber off how many there are with them, "5 of us
// counting the climber": who climbs does not haul. Where they are told apart, "plus
// the climber", the number stands.
func ClimberCounted(rd *reading.Reading) {
	for i := range rd.Elems {
		behind := i
		if rd.At(i + 1).Plays(parser.People) {
			behind++
		}
		if !headcount(rd, i) || behind == i && !rd.At(i-1).Plays(parser.People) {
			continue
		}
		from := rd.Elems[behind].End
		with, apart := rd.SaidTo(lexicon.CueCounted, from), rd.SaidTo(lexicon.CueUncounted, from)
		switch fig := rd.Elems[i].Fig; {
		case with >= 0 && fig.Low >= 2:
			fig.Low, fig.High = fig.Low-1, fig.High-1
			unsay(rd, from, with)
		case apart >= 0:
			unsay(rd, from, apart)
		}
	}
}

// unsay takes the meaning, and the doubt, from the words of a stretch of the text.
func unsay(rd *reading.Reading, from, to int) {
	rd.Asks = slices.DeleteFunc(rd.Asks, func(a *parser.Ask) bool { return a.Start >= from && a.End <= to })
	for k, e := range rd.Elems {
		if e.Start >= from && e.End <= to && e.Fig == nil && e.Pause == 0 {
			rd.Elems[k].Term = &scan.Term{}
		}
	}
}

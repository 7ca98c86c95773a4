package asking

import (
	"math"
	"slices"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/sizes"
	"heft/parser/stops"
	"heft/parser/turning"
)

// WrapsOrHands says whether a bare number of what is lowered is as few as wraps and
// people are, and is held with: "con 3 aguanto 700 lb", or told beside other wraps. No
// size is.
func WrapsOrHands(rd *reading.Reading, i int) bool {
	const most = 8
	fig := rd.Elems[i].Fig
	few := fig.Low == fig.High && fig.Low == math.Trunc(fig.Low) && fig.Low >= 1 && fig.Low <= most
	with := rd.Cued(rd.At(i-1), lexicon.CueTries) || rd.Cued(rd.At(i-1), lexicon.CueHaving)
	beside := rd.AnyAt(func(k int) bool { return k != i && rd.Elems[k].Fig != nil && rd.At(k+1).Plays(parser.Wraps) })
	return few && (with || beside) && (rd.Worded(parser.Wraps) || gear.AsksFor(rd, parser.AskLower))
}

// HeavyPiece reads "pieza de 1500": nothing is so long, whatever the unit, and a piece
// weighs so much.
func HeavyPiece(rd *reading.Reading, i int) bool {
	const least, most = 500, 20000
	fig := rd.Elems[i].Fig
	k := rd.Past(i-1, -1, lexicon.MarkMade|lexicon.MarkIs|lexicon.MarkRelation)
	return fig.Low >= least && fig.High <= most && (rd.TermAt(k).Unnamed || rd.TermAt(k).Shape != "" || rd.Cued(rd.At(k), lexicon.CuePiece)) && (rd.EndsBreath(i+1) || rd.At(i+1).Polite() || rd.At(i+1).Fig == nil && rd.TermAt(i+1).Intent != "") && !rd.AnyAt(rd.Is(sizes.InMillimetres))
}

// ToLower says whether a bare number can only be what the piece weighs: it is
// lowered, and nothing is told of its size, "wraps for two hundred".
func ToLower(rd *reading.Reading, i int) bool {
	const least = 20 // whatever unit it has, less takes no drum
	return (rd.Worded(parser.Wraps) || gear.AsksFor(rd, parser.AskLower)) && rd.Elems[i].Fig.Low >= least && !rd.AnyAt(func(k int) bool {
		return rd.Elems[k].Piece() || places.LengthAt(rd, k)
	})
}

// LoadOfKit says whether a bare number can only be what hangs on the gear that is told:
// "get 500 up on a 3:1", "down to the drum and the log is 450". No size is told beside it.
func LoadOfKit(rd *reading.Reading, i int) bool {
	fig := rd.Elems[i].Fig
	if fig.Low < stops.LeastTold || rd.AnyAt(func(k int) bool { return places.LengthAt(rd, k) || rd.TermAt(k).Tree != nil }) {
		return false
	}
	k := rd.Past(i-1, -1, lexicon.MarkIs)
	named := k < i-1 && (rd.TermAt(k).Shape != "" || rd.TermAt(k).Unnamed) && rd.EndsBreath(i+1)
	kit := func(k int) bool {
		return gear.Part(rd.Elems[k]) != "" || rd.TermAt(k).Block != "" || rd.Elems[k].Plays(parser.Wraps)
	}
	return named && rd.AnyAt(kit) || turning.Lifting(rd) && (rd.At(i+1).Marked(lexicon.MarkErect|lexicon.MarkUpward) || rd.At(i+1).Plays(parser.HitchHeight) && rd.EndsBreath(i+2))
}

// WideBare is more than any piece is told across in inches, or long in any unit.
const WideBare = 150

// OfAskedWeight reads "weight of a 600 log" and "what does a 450 oak log weigh": what a
// piece weighs is asked, so that the number that it is called by is none of its weights.
func OfAskedWeight(rd *reading.Reading, i int) bool {
	asked := func(k int) bool {
		e := rd.Elems[k]
		weighed := e.Plays(parser.Weight) && rd.At(k-1).Fig == nil && rd.At(rd.Past(k+1, +1, lexicon.MarkIs)).Fig == nil
		return rd.TermAt(k).Intent == parser.AskWeight && !rd.TermAt(k).Besides || weighed
	}
	beside := rd.At(i+1).Plays(parser.Weight) || rd.At(rd.Past(i-1, -1, lexicon.MarkIs)).Plays(parser.Weight)
	before := rd.Past(i-1, -1, lexicon.MarkMade)
	named := rd.At(i+1).Piece() || rd.TermAt(i+1).Unnamed || before < i-1 && (rd.At(before).Piece() || rd.TermAt(before).Unnamed)
	return named && !beside && rd.AnyAt(asked)
}

// LongestBare is more than any size of what is lifted, in feet, inches, metres or
// centimetres alike: a bare number above it is what it weighs.
const LongestBare = 1000

// IdleLength passes over how long a piece is that is lifted and whose weight is told,
// where the length has no unit: nothing hangs on it, "30 long weighs about 4".
func IdleLength(rd *reading.Reading, q *parser.Question, asks []*parser.Ask) []*parser.Ask {
	weighed := q.Has(parser.Weight) || slices.ContainsFunc(asks, func(a *parser.Ask) bool { return a != nil && slices.Contains(a.Fields, parser.Weight) })
	if q.Intent == parser.AskBlockLoad {
		return idleAway(rd, q, asks)
	}
	if q.Intent != parser.AskLift || !weighed {
		return asks
	}
	return slices.DeleteFunc(asks, func(a *parser.Ask) bool {
		idle := a != nil && a.Kind == parser.NoUnit && len(a.Fields) == 1 && a.Fields[0] == parser.Length
		if idle {
			q.Passed = append(q.Passed, parser.Said[string]{Value: a.Words, Words: a.Words, Start: a.Start, End: a.End})
		}
		return idle
	})
}

// idleAway passes over how far away a redirect stands whose turn is told, "on the next tree
// over, 40 ft away": the load on it hangs on the turn alone.
func idleAway(rd *reading.Reading, q *parser.Question, asks []*parser.Ask) []*parser.Ask {
	if !q.Has(parser.Turn, parser.BlockAngle) {
		return asks
	}
	return slices.DeleteFunc(asks, func(a *parser.Ask) bool {
		away := a != nil && a.Kind == parser.Loose && rd.AnyAt(func(i int) bool {
			f := rd.Elems[i].Fig
			return f != nil && f.Start == a.Start && f.Far() && rd.Cued(rd.At(i+1), lexicon.CueAside) && rd.EndsBreath(i+2)
		})
		if away {
			q.Passed = append(q.Passed, parser.Said[string]{Value: a.Words, Words: a.Words, Start: a.Start, End: a.End})
		}
		return away
	})
}

package sizes

import (
	"math"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// A tape goes round a stem, and not through it: a girth is π times as long as
// the piece is thick. Of a stem that is not round that is more than it is.

// leastAround is the least girth, in metres, that is told by "around" alone:
// what is less may be a thickness that is about so much.
const leastAround = 0.6

// GirthWord says whether the element tells of a girth: by its word, or by
// "around" right behind a number.
func GirthWord(rd *reading.Reading, i int) bool {
	return rd.TermAt(i).Ask == parser.Girth || rd.At(i).Marked(lexicon.MarkAround) && rd.At(i-1).Fig != nil
}

// LongRound makes "de vuelta" behind a length the girth that it tells: turns of a rope
// are counted, and have no length.
func LongRound(rd *reading.Reading) {
	for i := range rd.Elems {
		if rd.Cued(rd.Elems[i], lexicon.CueRoundIt) && fits(rd, i-1) && rd.Elems[i-1].Fig.High >= leastAround {
			rd.Elems[i].Term = &scan.Term{Ask: parser.Girth, GirthBehind: true}
		}
	}
}

// PairsUp says whether two words tell of the same girth: "girth 44 in around", "tape
// round it says 1.9 m, thats girth".
func PairsUp(rd *reading.Reading, a, b, fig int) bool {
	k := fig + 1
	for a < fig && k < b && (rd.At(k).Pause > 0 || rd.At(k).Marked(lexicon.MarkPronoun|lexicon.MarkIs|lexicon.MarkArticle) || rd.At(k).Polite()) {
		k++
	}
	return a < fig && b == k
}

// GirthAt finds the number of the girth whose word is at i, -1 where it has
// none or could have either of two.
func GirthAt(rd *reading.Reading, i int) int {
	if !GirthWord(rd, i) {
		return -1
	}
	left, word := i-1, rd.Elems[i].Term
	if word.GirthMiddle && fits(rd, left) && rd.Elems[left].Fig.High < leastAround {
		return -1 // or so thick, about there
	}
	behind := word.GirthBehind && (rd.At(left).Fig != nil || rd.At(left).Pause > 0) // else "de contorno 66 in"
	if before := fits(rd, left); word.GirthAround || behind || rd.Elems[i].Marked(lexicon.MarkAround) {
		if before && (word.GirthBehind || plainlyAround(rd, i)) {
			return left
		}
		return -1
	} else if right := toGirth(rd, i); before != fits(rd, right) {
		if before {
			return left
		}
		feetOfGirth(rd, right)
		return right
	}
	return -1
}

// plainlyAround says whether "around", or "around it", behind a number can only
// tell of a girth: not of what is about so thick, of a limb's trunk, or of a
// rope that goes round the stem.
func plainlyAround(rd *reading.Reading, i int) bool {
	fig, end := rd.Elems[i-1].Fig, i+1
	if bark := rd.Past(end, +1, lexicon.MarkArticle); rd.Cued(rd.At(bark), lexicon.CueBark) {
		end = bark + 1 // "76 in around the bark"
	}
	if fig.High < leastAround || !rd.EndsBreath(end) && !rd.At(end).Polite() || rd.Has(lexicon.MarkCord) {
		return false
	}
	kit := func(k int) bool { return gear.Part(rd.Elems[k]) != "" || rd.TermAt(k).Block != "" }
	inMetres := LengthTold(rd, i-1) && !rd.AnyAt(kit) // "log 2 m long, 1.6 m round the trunk"
	return !rd.TermAt(i).GirthAround || (fig.Unit.Fine || inMetres) && !gear.ShapedFrom(rd, 0, parser.Limb)
}

// GirthAgain says whether the word at i only says again that a girth is one: "not
// diameter, girth". No number stands beside it.
func GirthAgain(rd *reading.Reading, i int) bool {
	t := rd.TermAt(i)
	return t.Ask == parser.Girth && !t.GirthAround && rd.At(i-1).Fig == nil && rd.At(toGirth(rd, i)).Fig == nil
}

// toGirth passes over what stands between the word at i and its number:
// "wrapped my tape round it and got".
func toGirth(rd *reading.Reading, i int) int {
	const farthest = 4
	right := rd.Past(i+1, +1, lexicon.MarkIs|lexicon.MarkAt|lexicon.MarkAnd|lexicon.MarkMade|lexicon.MarkArticle)
	for (rd.At(right).Polite() || rd.TermAt(right).Note == "about" || rd.Cued(rd.At(right), lexicon.CueStamped)) && right < i+farthest {
		right++
	}
	return right
}

// fits says whether the number at i can be a girth.
func fits(rd *reading.Reading, i int) bool {
	fig := rd.At(i).Fig
	return fig != nil && fig.Dim == parser.DimLength && !fig.Pair && !fig.Falling && !fig.Rope && !fig.Elsewhere && fig.Low > 0 && fig.High <= reading.Thickest*math.Pi
}

// feetOfGirth joins the inches that go on from a girth in feet at i: "5 ft 3".
func feetOfGirth(rd *reading.Reading, i int) {
	a, b := rd.Elems[i].Fig, rd.At(i+1).Fig
	if a.Unit != scan.Foot || b == nil {
		return
	}
	inches := *b
	if b.Unit == nil && b.Dim == parser.DimCount && b.Low == b.High && rd.EndsBreath(i+2) {
		inches.Lent(scan.Inch)
	}
	if !reading.FeetInches(a, &inches) {
		return
	}
	a.Low, a.High, a.End = a.Low+inches.Low, a.High+inches.High, b.End
	rd.Elems[i].End = b.End
	rd.Elems = append(rd.Elems[:i+1], rd.Elems[i+2:]...)
}

// NotAcross takes out "not the diameter" behind a girth, which says it again.
func NotAcross(rd *reading.Reading, i int) {
	if !rd.TermAt(i + 1).Denies {
		return
	}
	if j := rd.Past(i+2, +1, lexicon.MarkArticle); rd.At(j).Plays(parser.Diameter) && rd.EndsBreath(j+1) {
		rd.Alter(i+1, func(t *scan.Term) { *t = scan.Term{} })
		rd.Alter(j, func(t *scan.Term) { *t = scan.Term{} })
	}
}

// OtherAcross says whether anything else may tell how thick the piece is.
func OtherAcross(rd *reading.Reading, but int) bool {
	return rd.AnyAt(func(i int) bool {
		e := rd.Elems[i]
		if e.Fig != nil {
			return i != but && e.Fig.Dim == parser.DimLength && (e.Fig.Pair || e.Fig.Unit.Fine && !e.Fig.Rope && !rd.At(i+1).Plays(parser.Length) && !rd.At(i-1).Plays(parser.Length) && !piecesLong(rd, i))
		}
		return e.Plays(parser.Diameter) || e.Plays(parser.ButtDiameter) || e.Plays(parser.MidDiameter) || e.Plays(parser.TipDiameter)
	})
}

// piecesLong says whether the number at i is how long the pieces are that a stem is cut
// into, whose girth tells how thick they are: "1.5 m girth, 80 cm pieces".
func piecesLong(rd *reading.Reading, i int) bool {
	before := rd.Past(i-1, -1, lexicon.MarkMade|lexicon.MarkIs)
	return rd.TermAt(before).Unnamed || rd.TermAt(i+1).Unnamed
}

// Divide makes the girth at i the thickness that it goes with, of its middle where it was
// taken there. What is told of the pieces
// besides is how long they are.
func Divide(rd *reading.Reading, i int, middle bool) {
	fig := rd.Elems[i].Fig
	fig.Low, fig.High, fig.Sure, fig.Girth = fig.Low/math.Pi, fig.High/math.Pi, parser.Diameter, true
	if middle {
		fig.Sure = parser.MidDiameter // of a limb any other is its butt's
	}
	for k, e := range rd.Elems {
		if k != i && e.Fig.Short() && !e.Fig.Pair && piecesLong(rd, k) {
			e.Fig.Sure = parser.Length
		}
	}
}

// TurnsAround takes "90 degrees around it" for how far a rope goes round a stem,
// and for no girth.
func TurnsAround(rd *reading.Reading) {
	for i := 1; i < len(rd.Elems); i++ {
		if fig := rd.Elems[i-1].Fig; fig != nil && fig.Dim == parser.DimAngle && rd.TermAt(i).GirthAround {
			rd.Alter(i, func(t *scan.Term) { t.Ask, t.GirthAround = "", false })
		}
	}
}

// BareGirth lends the centimetre to a bare girth right beside its word where all
// lengths that are told are metric: "perímetro 140 y largo 2 m".
func BareGirth(rd *reading.Reading) {
	const least, most = 60, 800
	for i, e := range rd.Elems {
		if e.Fig == nil || e.Fig.Dim != parser.DimCount || e.Fig.Unit != nil || e.Fig.Pair || e.Fig.Low < least || e.Fig.High > most {
			continue
		}
		if (GirthWord(rd, i+1) || GirthWord(rd, rd.Past(i-1, -1, lexicon.MarkIs))) && Only(rd, parser.Metric, parser.DimLength) {
			e.Fig.Lent(scan.Centimetre)
		}
	}
}

// RoundAfterAll passes over a thickness that is told again as a girth, the same number
// with or without its unit: "i put 18 in for diameter but its 18 circumference".
func RoundAfterAll(rd *reading.Reading) {
	for g := 1; g < len(rd.Elems); g++ {
		around := rd.Elems[g-1].Fig
		if rd.TermAt(g).Ask != parser.Girth || around == nil || around.Pair || around.Low != around.High {
			continue
		}
		for k := g - 2; k >= 0; k-- {
			across := rd.Elems[k].Fig
			word := rd.Past(k+1, +1, lexicon.MarkIs|lexicon.MarkIn)
			if rd.Cued(rd.At(word), lexicon.CueFor) {
				word++
			}
			if !across.Short() || across.Pair || !rd.At(word).Plays(parser.Diameter) {
				continue
			}
			same := *around
			if same.Unit == nil {
				same.Lent(across.Unit)
			}
			if same.Unit == across.Unit && same.Low == across.Low && across.Low == across.High {
				around.Low, around.High, around.Unit, around.Dim = same.Low, same.High, same.Unit, same.Dim
				rd.Pass(k, word+1)
				return
			}
		}
	}
}

package reader

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/senses"
	"heft/parser/sizes"
	"heft/parser/turning"
)

// alikePieces reads how many pieces a message tells of: "5 red oak rounds 20 in, 16
// in long", "two 14 in limbs". Its other figures are those of each, so that
// "each" turns nothing round; of a weight it must be said.
func alikePieces(rd *reading.Reading) {
	pairOfPieces(rd)
	for i, e := range rd.Elems {
		if !e.Fig.Several() || e.Fig.Elsewhere || !places.ManyAt(rd, i+1) && !rd.At(i+1).Plays(parser.Alike) && !senses.EachWeighed(rd, i) {
			continue
		}
		if senses.AtOnce(rd, i) {
			return
		}
		places.Claim(rd, i, parser.Alike)
		for k, e := range rd.Elems {
			if e.Term != nil && e.Term.Each {
				rd.Each = true
				rd.Alter(k, func(t *scan.Term) { *t = senses.EachIs(rd, k) })
			}
		}
		if e.Fig.Low == 2 {
			ofThePair(rd)
		}
		allTold(rd)
		return
	}
	senses.EachOfMany(rd)
	eachSized(rd)
}

// Of "trozos de 1 m de roble de 50 cm" the sizes are those of each, so that what
// each weighs is what one does. Of a log that is cut into some they are not.

// eachSized takes the doubt from "each" where one thickness and one length are
// told, of pieces in the plural or of each, and nothing is cut.
func eachSized(rd *reading.Reading) {
	if senses.EachLong(rd) {
		return
	}
	each := -1
	for i, e := range rd.Elems {
		switch t := rd.TermAt(i); {
		case e.Fig == nil && (t.Intent == parser.AskCutPlan || rd.Cued(e, lexicon.CueCutting)), t.Each && each >= 0:
			return
		case t.Each && len(t.Roles) == 0:
			each = i
		}
	}
	if each < 0 || !oneSize(rd) || !senses.SizesAreOf(rd, each) {
		return
	}
	rd.Alter(each, func(t *scan.Term) { *t = scan.Term{} })
}

// oneSize says whether all numbers are one thickness and one length. A round is so
// short that its length is told like a thickness: "rodajas de 70 cm x 25 cm".
func oneSize(rd *reading.Reading) bool {
	thick, long := 0, 0
	for i, e := range rd.Elems {
		switch {
		case e.Fig == nil, turning.CountedBy(rd, i+1), e.Fig.Dim == parser.DimCount && rd.At(i-1).Plays(parser.People):
		case places.FineAt(rd, i), e.Fig.Dim == parser.DimCount && (parser.Thickness(sizedAs(rd, i)) || sizes.RoundThick(rd, i)):
			thick++
		case e.Fig.Dim == parser.DimLength:
			long++
		default:
			return false
		}
	}
	return thick == 1 && long == 1 || rd.Has(lexicon.MarkRound) && thick == 2 && long == 0
}

// allTold leaves out "two of them at once" where nothing but what they weigh is asked of
// alike pieces whose sizes are told: the answer has one and all of them.
func allTold(rd *reading.Reading) {
	if rd.AnyAt(rd.Is(gear.Heavy)) || rd.AnyAt(rd.Is(turning.BesidesWeight)) {
		return
	}
	for i, e := range rd.Elems {
		if rd.TermAt(i).AtOnce || rd.TermAt(i).Ask == parser.Twist && rd.Cued(e, lexicon.CueAtOnce) {
			turning.LeaveOut(rd, i, i+1)
		}
	}
}

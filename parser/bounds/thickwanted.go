package bounds

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
)

// How thick a piece of a length may be is asked as how long one of a thickness is: "how
// thick can a 4 ft log be under 350 lb", "fattest 2 m log, limit 200 kg". The one length
// told is then no thickness, and the one mass what it may weigh (parser.Question.KeepUnder).

// ThickWanted reads such a question where nothing else in it is asked about or can be
// meant: no gear, no hinge, no second size, and no weight that the piece has already.
func ThickWanted(rd *reading.Reading) {
	at := rd.Only(rd.Is(asksThick))
	if at < 0 || rd.AnyAt(func(k int) bool { return k != at && ofElse(rd, k) }) {
		return
	}
	long, heavy := -1, -1
	for k, e := range rd.Elems {
		switch {
		case e.Fig == nil, limitsPiece(rd, k):
		case gear.Heavy(rd, k) && heavy < 0 && !ownWeight(rd, k):
			heavy = k
		case e.Fig.Dim == parser.DimLength && long < 0 && isLength(rd, at, k):
			long = k
		default:
			return
		}
	}
	limited := rd.AnyAt(rd.Is(limitsPiece)) || heavy > 0 && rd.At(rd.WordsBefore(heavy)+1).Marked(lexicon.MarkBound)
	if !rd.Cued(rd.Elems[at], lexicon.CueThickest) && !limited || heavy < 0 && long < 0 && !rd.AnyAt(func(k int) bool { return rd.Elems[k].Piece() }) && rd.First {
		return
	}
	rd.Alter(at, func(t *scan.Term) {
		*t = scan.Term{Intent: parser.AskCutPlan, Note: parser.ThickWanted, Shape: t.Shape}
	})
	if long >= 0 {
		places.Claim(rd, long, parser.Length)
	}
}

// asksThick says whether the words at i ask how thick something is, or may be.
func asksThick(rd *reading.Reading, i int) bool {
	return rd.Cued(rd.Elems[i], lexicon.CueHowThick) || rd.Cued(rd.Elems[i], lexicon.CueThickest)
}

// ofElse says whether the word at i tells of something else that is thick, or where along
// the piece it is.
func ofElse(rd *reading.Reading, i int) bool {
	e, t := rd.Elems[i], rd.TermAt(i)
	other := t.Intent != "" && !t.Besides && t.Intent != parser.AskCutPlan && t.Intent != parser.AskWeight && t.Intent != parser.AskLower
	return other || t.Stop != "" || gear.Part(e) != "" || e.Marked(lexicon.MarkGear|lexicon.MarkCord) || rd.Cued(e, lexicon.CueHinge) ||
		e.Plays(parser.ButtDiameter) || e.Plays(parser.MidDiameter) || e.Plays(parser.TipDiameter) || e.Marked(lexicon.MarkRound)
}

// limitsPiece says whether the number at i is told as what a piece may weigh.
func limitsPiece(rd *reading.Reading, i int) bool {
	fig := rd.Elems[i].Fig
	mass := fig != nil && (fig.Dim == parser.DimMass || fig.Dim == parser.DimCount && fig.Unit == nil)
	return mass && (rd.At(i+1).Plays(parser.Limit) || rd.At(rd.WordsBefore(i)).Plays(parser.Limit))
}

// ownWeight says whether the mass at i is told as what the piece weighs.
func ownWeight(rd *reading.Reading, i int) bool {
	return rd.At(i-1).Plays(parser.Weight) || rd.At(rd.WordsBefore(i)).Plays(parser.Weight) || rd.At(i+1).Plays(parser.Weight)
}

// isLength says whether the number at i is how long the piece is, where how thick is asked
// by the words at: it names the piece, has the word for it, or stands apart from those and
// is no number in inches or the like.
func isLength(rd *reading.Reading, at, i int) bool {
	fig, next := rd.Elems[i].Fig, rd.At(i+1)
	if fig.Elsewhere || fig.Rope || fig.Pair || fig.Falling || fig.Told != "" || fig.Sure != "" || fig.Claimed != "" {
		return false
	}
	told := next.Plays(parser.Length) || rd.At(rd.WordsBefore(i)).Plays(parser.Length)
	across := next.Plays(parser.Diameter) || next.Marked(lexicon.MarkThick) || i-1 != at && rd.At(rd.WordsBefore(i)).Plays(parser.Diameter)
	beside := rd.Forth(at+1) == i || at == i+1
	return told || !across && !fig.Unit.Fine && (!beside || next.Piece())
}

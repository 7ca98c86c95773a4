package places

import (
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/stops"
)

// Claim gives the number at i its field.
func Claim(rd *reading.Reading, i int, f parser.Field) {
	fig := rd.Elems[i].Fig
	fig.Elsewhere, fig.Claimed = true, f
}

// SideBranches claims the weight and the reach of a side branch where it is
// told how far it sticks out: "a 150 lb side branch sticking out 6 ft to the
// left". Otherwise a side branch is the piece.
func SideBranches(rd *reading.Reading) {
	for i, e := range rd.Elems {
		if !e.Marked(lexicon.MarkSide) {
			continue
		}
		weight, out := ofSide(rd, i)
		if out < 0 {
			continue
		}
		Claim(rd, out, parser.SideBranchOut)
		if weight >= 0 {
			Claim(rd, weight, parser.SideBranch)
		}
		t := *e.Term
		t.Shape = ""
		rd.Elems[i].Term = &t
		return
	}
}

// ofSide finds the weight and the reach of the side branch at i, -1 where
// there is none.
func ofSide(rd *reading.Reading, i int) (weight, out int) {
	weight, out = -1, -1
	if j := rd.Past(i-1, -1, lexicon.MarkAdjective|lexicon.MarkIs|lexicon.MarkArticle); gear.Heavy(rd, j) {
		weight = j
	}
	stuck := false // "sticking out 6 ft"
	for k := i + 1; k < len(rd.Elems); k++ {
		e := rd.Elems[k]
		switch {
		case gear.Heavy(rd, k) && weight < 0:
			weight = k
		case e.Fig.Far() && out < 0 && (stuck || rd.At(k+1).Marked(lexicon.MarkAside|lexicon.MarkOutward)):
			out = k
		case e.Marked(lexicon.MarkAside | lexicon.MarkOutward | lexicon.MarkAdverb):
			stuck = true
		case e.Pause == 4, e.Fig != nil, e.Piece(), e.Term != nil && len(e.Term.Roles) > 0 && !e.Plays(parser.Weight) && !e.Marked(lexicon.MarkAside):
			return weight, out
		}
	}
	return weight, out
}

// BetweenTwo reads "30° between the two legs" and "angle between the two legs
// 30°" as the angle at the block, as it is without the number. Where the angle stands
// further off the two of them still say what it is, and are nobody on the rope.
func BetweenTwo(rd *reading.Reading) {
	for i, e := range rd.Elems {
		j := rd.Past(i-2, -1, lexicon.MarkArticle)
		leg := e.Marked(lexicon.MarkTwins|lexicon.MarkBridle|lexicon.MarkCord) || e.Plays(parser.Legs) || rd.Cued(e, lexicon.CueBothLegs)
		if !leg || !Bare(rd.At(i-1).Fig, 2) || !rd.At(j).Marked(lexicon.MarkBetween) {
			continue
		}
		angle := rd.At(pastGuess(rd, j-1)).Fig
		if behind := rd.Forth(i + 1); angle == nil {
			angle = rd.At(behind).Fig
		}
		if angle != nil && angle.Dim == parser.DimAngle {
			angle.Told = parser.BlockAngle
			rd.Elems = slices.Delete(rd.Elems, j, i+1)
			return
		}
		said := &scan.Term{Stop: e.Term.Stop, Roles: []scan.Role{{Field: parser.BlockAngle, Side: lexicon.After | lexicon.Before}}}
		legs := reading.Element{Start: rd.Elems[j].Start, End: e.End, Pause: rd.Elems[j].Pause, Term: said}
		rd.Elems = slices.Replace(rd.Elems, j, i+1, legs)
		return
	}
}

// pastGuess goes back from i over what says that a number before it is a guess: "60 degrees i
// suppose".
func pastGuess(rd *reading.Reading, i int) int {
	for e := rd.At(i); e.Fig == nil && e.Pause == 0 && e.Term != nil && (e.Term.Note == "about" || e.Polite()); e = rd.At(i) {
		i--
	}
	return i
}

// EndLines claims the places of a butt line and a tip line: "butt line 3 ft and
// tip line 15 ft". One of them alone is none: "14 in butt, line 30 ft".
func EndLines(rd *reading.Reading) {
	butt, tip := endLine(rd, parser.ButtDiameter), endLine(rd, parser.TipDiameter)
	if butt < 0 || tip < 0 {
		return
	}
	for at, f := range map[int]parser.Field{butt: parser.Tie, tip: parser.SecondTie} {
		Claim(rd, at+2, f)
		t := *rd.Elems[at].Term
		t.Roles = nil
		rd.Elems[at].Term = &t
	}
}

// endLine finds "butt line 3 ft", -1 where there is none.
func endLine(rd *reading.Reading, end parser.Field) int {
	for i, e := range rd.Elems {
		if e.Plays(end) && rd.At(i+1).Marked(lexicon.MarkGear) && gear.Far(rd, i+2) {
			return i
		}
	}
	return -1
}

// Bare says whether the number is that count and has no unit.
func Bare(f *reading.Figure, n float64) bool {
	return f != nil && f.Dim == parser.DimCount && f.Unit == nil && f.Low == n && f.High == n
}

// RopeKinds claims the strands of "3-strand rope", and the length of "60 ft of 5/8 double braid".
func RopeKinds(rd *reading.Reading) {
	for i := range rd.Elems {
		j := i + 2
		if fig := rd.At(j).Fig; fig != nil && (fig.Rope || Bare(fig, 3) && strings.HasPrefix(rd.TermAt(j+1).Note, "rope-")) {
			j++
		}
		kind := j > i+2 || strings.HasPrefix(rd.TermAt(j).Note, "rope-")
		if gear.Far(rd, i) && rd.At(i+1).Marked(lexicon.MarkIs) && rd.At(i+1).Marked(lexicon.MarkRelation) && kind {
			Claim(rd, i, parser.RopeLength)
		}
		if Bare(rd.Elems[i].Fig, 3) && rd.TermAt(i+1).Note == "rope-three-strand" {
			Claim(rd, i, parser.Strands)
		}
	}
}

// LineOn claims the line that a load hangs on: "4 ft aside on 30 ft of line".
// The rope of "120 ft of rope" is another.
func LineOn(rd *reading.Reading) {
	if !slices.ContainsFunc(rd.Elems, func(e reading.Element) bool {
		return e.Plays(parser.Sideways) || e.Term != nil && (e.Term.Intent == parser.AskBalance || e.Term.Intent == parser.AskSwing)
	}) {
		return
	}
	for i := range rd.Elems {
		if gear.Far(rd, i) && rd.At(i-1).Marked(lexicon.MarkIn) && rd.At(i+1).Plays(parser.RopeLength) {
			Claim(rd, i, parser.LineOut)
		}
	}
}

// howLong says whether the number behind the piece's name is its length though
// its weight is told: a swing, a raise and a balance ask for both.
func howLong(rd *reading.Reading, i int) bool {
	if rd.TermAt(rd.Past(i-1, -1, lexicon.MarkMade)).Shape == "" {
		return false
	}
	return slices.ContainsFunc(rd.Elems, func(e reading.Element) bool {
		if e.Fig != nil {
			return e.Fig.Claimed == parser.SecondTie || e.Fig.Claimed == parser.ObstacleOut
		}
		return e.Term != nil && (e.Term.Intent == parser.AskBalance || e.Term.Intent == parser.AskSwing || e.Term.Intent == parser.AskRaise)
	})
}

// LetFallSomebody reads "se me cayó un compañero".
func LetFallSomebody(rd *reading.Reading, i int) bool {
	if !rd.TermAt(i).LetFall {
		return false
	}
	j := rd.Past(i+1, +1, lexicon.MarkArticle)
	if Bare(rd.At(j).Fig, 1) {
		j++
	}
	return stops.Person(rd, j) && !rd.At(j+1).Marked(lexicon.MarkGear|lexicon.MarkStation) && !stops.Hardware(rd, j+1) && rd.TermAt(i).Own
}

// UnnamedPast claims how far past the block something stands that no word names, or
// none that is known: "glass is 10 ft past".
func UnnamedPast(rd *reading.Reading) {
	for i := range rd.Elems {
		next := rd.At(rd.Past(i+1, +1, lexicon.MarkArticle))
		beyond := next.Marked(lexicon.MarkOutward) && next.Marked(lexicon.MarkRelation|lexicon.MarkPlace) && !rd.Cued(next, lexicon.CueOut) && !rd.Cued(next, lexicon.CueAside)
		if fig := rd.Elems[i].Fig; fig.Far() && fig.Told == "" && fig.Claimed == "" && beyond && !next.Plays(parser.Sideways) {
			Claim(rd, i, parser.ObstacleOut)
			return
		}
	}
}

// BothSizes claims the length of "red oak log 24 in x 5 ft, rope breaks at 16,000": behind
// the comma another thing begins.
func BothSizes(rd *reading.Reading) {
	for i := range rd.Elems {
		if gear.Far(rd, i) && rd.At(i+1).Pause > 0 && gear.Part(rd.At(i+2)) == lexicon.PartRope && thickPieceBefore(rd, i) {
			Claim(rd, i, parser.Length)
		}
	}
}

// ThickBehindLong claims how thick a log is, told right behind how long: "log four foot long
// fourteen inch block right under it". No block is so large; it begins what follows.
func ThickBehindLong(rd *reading.Reading) {
	const least = 8 * 0.0254
	for i, e := range rd.Elems {
		if !e.Fig.Short() || e.Fig.Low < least || e.Fig.High > reading.Roundest || e.Fig.Told != "" || gear.Part(rd.At(i+1)) != lexicon.PartBlock && gear.Part(rd.At(i+2)) != lexicon.PartBlock {
			continue
		}
		other := func(k int) bool {
			return k != i && rd.Elems[k].Fig.Short() && rd.Elems[k].Fig.High > reading.ThickestRope
		}
		if k := i + 1; rd.At(k).Marked(lexicon.MarkThick) && gear.Part(rd.At(k+1)) == lexicon.PartBlock && thickPiece(rd, i) {
			e.Fig.Elsewhere = false // "twenty two inches thick block right below"
			Claim(rd, i, parser.Diameter)
			return
		}
		if rd.At(i-1).Plays(parser.Length) && gear.Far(rd, i-2) && rd.TermAt(i-3).Shape == parser.Log && gear.Part(rd.At(i+1)) == lexicon.PartBlock && !rd.AnyAt(other) {
			e.Fig.Elsewhere = false
			Claim(rd, i, parser.Diameter)
			return
		}
	}
}

// thickPiece says whether a piece is named before the number at i, in its breath.
func thickPiece(rd *reading.Reading, i int) bool {
	for k := i - 1; k >= 0 && rd.Elems[k].Pause == 0; k-- {
		if rd.Elems[k].Piece() || rd.TermAt(k).Unnamed {
			return true
		}
	}
	return false
}

// thickPieceBefore says whether a piece is named before the length at i, in its breath, with
// how thick it is, and nothing but these stands between.
func thickPieceBefore(rd *reading.Reading, i int) bool {
	thick, named := false, false
	for k := i - 1; k >= 0 && rd.Elems[k].Pause == 0 && !(thick && named); k-- {
		e := rd.Elems[k]
		switch {
		case e.Piece() || e.Term != nil && (e.Term.Tree != nil || e.Term.Shape != ""):
			named = true
		case e.Fig.Short() && !e.Fig.Rope && !e.Fig.Elsewhere:
			thick = true
		case !e.Cross && !thick:
			return false
		}
	}
	return thick && named
}

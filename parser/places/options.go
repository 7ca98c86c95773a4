package places

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/stops"
)

// optionsOf lists the ways to bind the words of the roles at an element.
func optionsOf(rd *reading.Reading, at int) []option {
	idle := costIdle
	var out []option
	for _, r := range rd.Elems[at].Term.Roles {
		if taken(rd, at, r.Side) {
			return []option{{fig: -1}}
		}
		base := 0
		if rd.Elems[at].Marked(lexicon.MarkThick) && rd.Has(lexicon.MarkRound) && !toldHigh(rd, at) {
			r.Field = parser.Length // a disc is 4 in thick
		}
		if r.Field == parser.HitchHeight && r.Side == lexicon.Before && roundHigh(rd, at) {
			r.Field, r.Soft = parser.Length, false
		}
		if r.Soft {
			base, idle = costSoft, costSoftOff
		}
		if r.Side&lexicon.After != 0 {
			out = look(rd, out, at, +1, r, base)
		}
		if r.Side&lexicon.Before != 0 {
			out = look(rd, out, at, -1, r, base)
		}
	}
	level(rd, out, at)
	if ownWidth(rd, out, at) {
		idle += costLoose
	}
	return append(out, option{fig: -1, cost: idle})
}

// level weighs two numbers before and behind the words. Where both stand right
// beside them, "22 ft rope 120 ft", what follows must not decide; where only
// the one behind does, "22 ft, hitch 35 ft red oak limb", it is theirs. So it
// is where "de" leads to it: "22 pies, cuerda de 120 pies".
func level(rd *reading.Reading, options []option, at int) {
	var left, right *option
	for i := range options {
		switch o := &options[i]; {
		case o.fig == at+1, made(rd, at, o.fig):
			right = o
		case o.fig < at && (left == nil || o.fig > left.fig):
			left = o
		}
	}
	switch {
	case left == nil || right == nil || left.field != right.field:
	case left.fig == at-1 && (rd.At(at-2).Cross || sizePair(rd, at-2, at-1)) && !dwarfs(rd, *left, *right):
		left.cost = right.cost + costPiece // "12 in x 18 ft hitch height 28 ft": both sizes are the piece's
	case left.fig == at-1:
		left.cost = max(left.cost, right.cost)
		right.cost = left.cost
	default:
		right.cost = min(right.cost, max(0, left.cost-costNamed))
	}
}

// ownWidth says whether a number stands right before the words of a thickness,
// and none right behind: "1.1 m across and 50 cm high". It is theirs, and the
// others are not.
func ownWidth(rd *reading.Reading, options []option, at int) bool {
	own := false
	for _, o := range options {
		if o.fig == at+1 || made(rd, at, o.fig) {
			return false
		}
		own = own || o.fig == at-1 && o.field == parser.Diameter
	}
	for i := range options {
		if own && options[i].fig != at-1 {
			options[i].cost += costLoose
		}
	}
	return own
}

// roundHigh says whether the words at an element tell how high a round stands:
// "1.1 m across and 50 cm high". Nothing is hitched so low.
func roundHigh(rd *reading.Reading, at int) bool {
	fig := rd.At(at - 1).Fig
	if fig.Short() && rd.Has(lexicon.MarkRound) && rd.At(at-2).Cross && rd.At(at-3).Fig.Short() {
		return true // "80 cm x 40 cm de alto"
	}
	return fig.Short() && rd.AnyAt(func(i int) bool {
		return i != at && rd.Elems[i].Plays(parser.Diameter) && LengthAt(rd, i-1) && i-1 != at-1
	})
}

// toldHigh says whether another number than that of the words at an element is told to be
// how high a round stands, or how long it is: "3 ft thick, 18 in tall" is 3 ft across.
func toldHigh(rd *reading.Reading, at int) bool {
	return rd.AnyAt(func(i int) bool {
		e := rd.Elems[i]
		high := e.Marked(lexicon.MarkTall|lexicon.MarkHigh) || e.Plays(parser.Length) && !e.Marked(lexicon.MarkThick) || e.LooksBack(parser.HitchHeight) && rd.At(i-1).Fig.Short()
		return i != at && LengthAt(rd, i-1) && high
	})
}

// dwarfs says whether the number before the words of a rope or a hitch is
// longer than the one behind them, or that one has words of its own. No piece hangs clear on so short a rope, or
// so low: "14 in 120 ft rope 22 ft".
func dwarfs(rd *reading.Reading, left, right option) bool {
	if left.field != parser.RopeLength && left.field != parser.HitchHeight {
		return false
	}
	others := rd.At(right.fig+1).Looks(lexicon.Before) && !rd.At(right.fig+1).Plays(left.field) // "35 ft hitch 120 ft rope"
	return others || rd.Elems[left.fig].Fig.Low > rd.Elems[right.fig].Fig.High
}

// sizePair says whether two numbers side by side are the two of a piece: "14 in
// 22 ft".
func sizePair(rd *reading.Reading, i, j int) bool {
	a, b := rd.At(i).Fig, rd.At(j).Fig
	return a != nil && a.Dim == parser.DimLength && a.Unit.Fine && !a.Elsewhere && !a.Rope && b.Far()
}

// made says whether "de" leads from the words to the number.
func made(rd *reading.Reading, at, i int) bool {
	return i == at+2 && rd.At(at+1).Marked(lexicon.MarkMade)
}

// taken says whether the words belong to a number of the surroundings:
// "climber 40 ft up", "rope 5/8 in", or to how thick a rope is.
func taken(rd *reading.Reading, at int, s scan.Side) bool {
	left, right := rd.At(at-1).Fig, rd.At(rd.Past(at+1, +1, lexicon.MarkIs)).Fig
	return s&lexicon.Before != 0 && left != nil && left.Elsewhere || s&lexicon.After != 0 && right != nil && (right.Elsewhere || right.Rope)
}

// look collects the numbers on one side of the words that the field can take.
func look(rd *reading.Reading, out []option, at, step int, r scan.Role, cost int) []option {
	f, seen := r.Field, 0
	for i := at + step; i >= 0 && i < len(rd.Elems) && seen < farthest; i += step {
		e := rd.Elems[i]
		switch {
		case e.Fig != nil && e.Fig.Elsewhere, r.Soft && e.Marked(lexicon.MarkRelation) && !e.Marked(lexicon.MarkIs):
			return out // "lower it to 10 ft": too much stands between
		case e.Fig != nil:
			if takes(f, e.Fig) && !anothers(rd, i, f) && !thinAside(rd, at, i, f) {
				out = append(out, option{i, f, cost + naming(rd, at, i, f) + skipped(rd, i, f, seen)})
			}
			seen++
		case e.Pause > 0 && mentioned[f] && rd.Text[e.Start:e.End] != ":":
			cost += costMention
		case e.Pause > 0:
			cost += e.Pause
		default:
			cost += between(e, f)
		}
	}
	return out
}

// between is the cost of a term that stands between a role and its number.
func between(e reading.Element, f parser.Field) int {
	switch {
	case e.Marked(lexicon.MarkAnd):
		return costAnd
	case e.Piece():
		return costNamed
	case e.Term == nil || len(e.Term.Roles) == 0 || e.Plays(f):
		return 0
	case e.Term.Roles[0].Soft:
		return costSoft
	}
	return costRole
}

// skipped is the cost of the numbers that stand between a role and its own.
func skipped(rd *reading.Reading, i int, f parser.Field, seen int) int {
	if f == parser.HitchHeight && rd.At(i-1).Marked(lexicon.MarkAt) {
		return costAt * seen
	}
	return costSkipped * seen
}

// anothers says whether the number cannot be the field's by what stands
// before it: no length is "at" somewhere, and in "drop a 14 in limb" or
// "hitched the 22 ft limb" the number is the piece's. "Two slings" are no wraps.
func anothers(rd *reading.Reading, i int, f parser.Field) bool {
	switch last := rd.At(i - 1); {
	case f == parser.Weight && last.Cross && rd.Elems[i].Fig.Unit == nil:
		return true // "40 in x 3 weight": how long it is
	case f == parser.RopeLength && last.Term != nil && last.Term.Leads && len(last.Term.Roles) > 0 && !last.Plays(f):
		return true // "block at 40, enough line with 120"
	case f == parser.Wraps && stops.Hardware(rd, i+1):
		return !rd.At(i+1).Plays(parser.Wraps) && !rd.At(i+2).Plays(parser.Wraps)
	case f == parser.RopeLength || f == parser.Length:
		return last.Marked(lexicon.MarkAt)
	case ofPiece(f) || !rd.At(i+1).Piece():
		return false
	default:
		return last.Marked(lexicon.MarkArticle) || mentioned[f] && rd.Elems[i].Fig.Unit.Fine
	}
}

// thinAside says whether the number is a thickness that only stands near the words of a
// side, "13 in going sideways": inches tell that right beside them alone.
func thinAside(rd *reading.Reading, at, i int, f parser.Field) bool {
	size := sizePair(rd, i-1, i) // "14 in 22 ft going sideways": the length of the limb
	if f != parser.Sideways || !rd.Elems[i].Fig.Short() && !size {
		return false
	}
	for k := min(at, i) + 1; k < max(at, i); k++ {
		if e := rd.At(k); !e.Marked(lexicon.MarkIs|lexicon.MarkAt) && !rd.Cued(e, lexicon.CueOut) && rd.TermAt(k).Note != "about" {
			return true
		}
	}
	return false
}

// ofPiece says whether a field is a size of the piece.
func ofPiece(f parser.Field) bool {
	return f == parser.Length || f == parser.Weight || parser.Thickness(f)
}

// naming is the extra cost of a number that names the piece, "22 ft red oak
// limb", for a role that has nothing to do with the piece, and of a place
// along the piece, "5 ft from the cut", for the height of the hitch. It is as
// much as the words cost that bind nothing, so that "hitched 22 ft red oak
// limb" has two readings; "hitched at 22 ft" has one.
func naming(rd *reading.Reading, at, i int, f parser.Field) int {
	next := rd.At(i + 1)
	if (f == parser.BlockHeight || f == parser.Tie) && sizePair(rd, rd.Past(i-1, -1, lexicon.MarkAnd), i) {
		return costPiece // "14 in 22 ft above the hinge" could be two sizes
	}
	if next.Piece() && !ofPiece(f) && !(at+1 == i && gear.EndsInAt(rd, at)) && !made(rd, at, i) || f == parser.HitchHeight && (next.Plays(parser.Tie) || next.Plays(parser.BlockHeight)) {
		return costPiece
	}
	if parser.Thickness(f) && longLogs(rd, at, i) {
		return costPiece
	}
	return 0
}

// longLogs says whether the number at i, apart from the words at, is how long the piece is:
// it is in feet or metres and names it, "most diameter I can go for 8 foot logs".
func longLogs(rd *reading.Reading, at, i int) bool {
	return i > at+1 && rd.Elems[i].Fig.Far() && rd.TermAt(i+1).Shape != "" && !made(rd, at, i) && !rd.At(i-1).Plays(parser.Diameter)
}

// LengthAt says whether the number at i is a length that is not told of something else.
func LengthAt(rd *reading.Reading, i int) bool {
	fig := rd.At(i).Fig
	return fig != nil && fig.Dim == parser.DimLength && fig.Told == ""
}

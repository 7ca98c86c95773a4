package lines

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/heights"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/sizes"
)

// Where nothing is told but how a rope runs, each number is of the thing that was
// named last before it: the block, the drum, the rope itself.

// runsOnly says whether the message tells of a rope and where it runs, and of
// nothing that could hang on it.
func runsOnly(rd *reading.Reading) bool {
	other := func(i int) bool {
		e := rd.Elems[i]
		switch rd.TermAt(i).Intent {
		case parser.AskSwing, parser.AskRaise, parser.AskDrop, parser.AskBalance, parser.AskAnchor, parser.AskGear, parser.AskNotch, parser.AskTree, parser.AskWeight:
			return true
		}
		return rd.TermAt(i).Tree != nil || Sized(rd, i) || gear.Heavy(rd, i) || e.Plays(parser.Wraps) || e.Plays(parser.WinchPull) || e.Plays(parser.Sideways) || gear.Strength(e) != ""
	}
	roped := func(i int) bool {
		return heights.ReachAsked(rd, i) || footer(rd, i) || gear.Part(rd.Elems[i]) == lexicon.PartRope || rd.Cued(rd.Elems[i], lexicon.CueEnough)
	}
	laid := rd.Has(lexicon.MarkStation) && rd.AnyAt(func(i int) bool { return gear.Part(rd.Elems[i]) == lexicon.PartBlock || sizes.BlockAt(rd, i) }) // "tengo 45 m, la polea a 20 y el tambor al pie"
	return (laid || rd.AnyAt(roped)) && !rd.AnyAt(other)
}

// RunPlace is what the number at i is of how a rope runs, "" for nothing.
func RunPlace(rd *reading.Reading, i int) parser.Field {
	fig := rd.Elems[i].Fig
	if fig.Dim != parser.DimCount && !fig.Far() || fig.Pair || fig.Falling || fig.Told != "" || fig.Low < 1 || !runsOnly(rd) {
		return ""
	}
	if footer(rd, i) {
		return parser.RopeLength
	}
	if next := rd.At(i + 1); next.Marked(lexicon.MarkTall) || next.Piece() || next.Fig != nil || next.Plays(parser.People) || next.Plays(parser.Parts) || next.Plays(parser.RopeLength) {
		return ""
	}
	if heights.ALower(rd, i) || rd.At(i-1).Marked(lexicon.MarkMade|lexicon.MarkRelation) && rd.TermAt(i-2).Intent == parser.AskLower {
		return parser.HitchHeight // "alcanza para bajar de 60"
	}
	if rd.At(i-1).LooksBack(parser.HitchHeight) && rd.At(i-2).Fig == nil && (rd.EndsBreath(i+1) || rd.At(i+1).Marked(lexicon.MarkWhere)) {
		return parser.HitchHeight // "rope for a 3:1 going up 15 m"
	}
	if restOfRope(rd, i) {
		return parser.RopeLength
	}
	const farthest = 6 // words: "the drum is back by the truck about 40 ft"
	for j := rd.Back(i - 1); j >= 0 && j >= i-farthest; j-- {
		if e := rd.At(j); e.Pause > 0 || e.Fig != nil || e.Piece() || e.Marked(lexicon.MarkAnd) {
			return ""
		}
		if f := runOf(rd, i, j); f != "" {
			return f
		}
	}
	return ""
}

// restOfRope reads "do i have enough line, 120 ft, tied off at 50": of what stands by
// itself, where how high the block is is told.
func restOfRope(rd *reading.Reading, i int) bool {
	const shortest = 6
	asked := rd.AnyAt(func(k int) bool {
		return k < i && (rd.TermAt(k).Intent == parser.AskRope || rd.Cued(rd.Elems[k], lexicon.CueEnough))
	})
	return asked && gear.Far(rd, i) && rd.Elems[i].Fig.Low >= shortest && rd.At(i-1).Pause > 0 && rd.EndsBreath(i+1) && rd.AnyAt(rd.Is(sizes.Hitched)) &&
		!rd.AnyAt(func(k int) bool { return k != i && gear.Beside(rd, k, parser.RopeLength) })
}

// runOf is what the thing at j makes of the number at i behind it.
func runOf(rd *reading.Reading, i, j int) parser.Field {
	e, next := rd.At(j), rd.At(i+1)
	fig := rd.Elems[i].Fig
	switch {
	case parser.Redirecting(rd.TermAt(j).Block), rd.At(j-1).Fig != nil && e.Looks(lexicon.Before):
		return ""
	case gear.Part(e) == lexicon.PartBlock, sizes.BlockAt(rd, j), rd.Cued(e, lexicon.CueHighest):
		if next.Plays(parser.Sideways) || next.Marked(lexicon.MarkRelation|lexicon.MarkBound) || rd.Cued(next, lexicon.CueAbove) || rd.Cued(next, lexicon.CueBelow) {
			return "" // "block 4 ft above the limb"
		}
		return parser.HitchHeight
	case e.Marked(lexicon.MarkStation) || rd.TermAt(j).RopeEnd:
		near := fig.Dim == parser.DimLength && fig.Low < heights.NearestDrum
		if near || next.Marked(lexicon.MarkHigh|lexicon.MarkUpward) || rd.Cued(next, lexicon.CueAbove) || next.Plays(parser.HitchHeight) || !awayBetween(rd, j, i) {
			return "" // "drum 20 ft" may be how high it is
		}
		return parser.DrumAway
	case rd.TermAt(j).Intent == parser.AskRope && rd.At(i-1).Marked(lexicon.MarkMade) && fig.Low >= shortestRun && !next.Looks(lexicon.Before):
		return parser.RopeLength // "llega la cuerda de 50 m"
	case gear.Part(e) == lexicon.PartRope && rd.At(j-1).Fig == nil && fig.Low >= shortestRun && (fig.Dim == parser.DimLength || !rd.At(i-1).Marked(lexicon.MarkCord)):
		return parser.RopeLength
	}
	return ""
}

// awayBetween says whether the number at i is told as so far from the tree: "the drum
// is 20 ft over", "lejos como a 40 pies".
func awayBetween(rd *reading.Reading, drum, i int) bool {
	for k := drum + 1; k <= i+1; k++ {
		if e := rd.At(k); e.Marked(lexicon.MarkOutward) || rd.Cued(e, lexicon.CueAside) || rd.Cued(e, lexicon.CueOver) {
			return true
		}
	}
	return false
}

// shortestRun is the least that a bare number behind a rope is taken for its length,
// in feet or metres: "cuerda de 16" is rather millimetres.
const shortestRun = 20

// running settles such numbers, and what is asked where both a rope and how high its
// block is are told: whether it is enough.
func running(rd *reading.Reading) {
	for i, e := range rd.Elems {
		if e.Fig == nil {
			continue
		}
		switch f := RunPlace(rd, i); {
		case f == "":
		case e.Fig.Dim == parser.DimCount:
			e.Fig.Sure = f // its unit is asked for
		case sizes.Surely(rd, i, f): // the words right before it take it themselves
		default:
			e.Fig.Told = f
		}
	}
	told := func(f parser.Field) bool {
		return rd.AnyAt(func(i int) bool {
			fig := rd.Elems[i].Fig
			return fig != nil && (fig.Told == f || fig.Sure == f) || gear.Beside(rd, i, f)
		})
	}
	if !runsOnly(rd) || !told(parser.HitchHeight) {
		return
	}
	for i, e := range rd.Elems {
		ofRope := gear.Part(rd.At(rd.Past(i+1, +1, lexicon.MarkArticle))) == lexicon.PartRope || gear.Part(rd.At(i-1)) == lexicon.PartRope
		if rd.Cued(e, lexicon.CueEnough) && (ofRope || told(parser.RopeLength)) {
			rd.Alter(i, func(t *scan.Term) { *t = scan.Term{Intent: parser.AskRope, Besides: !ofRope} })
		}
	}
}

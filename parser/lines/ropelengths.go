package lines

import (
	"strings"

	"heft/parser"
	"heft/parser/bounds"
	"heft/parser/gear"
	"heft/parser/heights"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/sizes"
)

// Where its reach is asked, a rope is told by its length alone: "will the 200
// footer do", "my 150", "la de 40"; and two of them where either could be taken.

const (
	shortestHand   = 10 // in metres: a rope that is brought to a tree
	shortestFooter = 24 // in metres: no piece that is lowered whole is as long

	shortestRope, longestRope = 15, 650 // of a bare number, in feet or metres
)

// ropesByLength finds such ropes.
func ropesByLength(rd *reading.Reading, l *lexicon.Layout) {
	if !rd.AnyAt(rd.Is(heights.ReachAsked)) && !runsOnly(rd) || rd.AnyAt(rd.Is(Sized)) || gear.Swings(rd) && !gear.AsksFor(rd, parser.AskRope) {
		return // "the house is 14 ft on the other side"
	}
	if gear.AsksFor(rd, parser.AskDrop) {
		return // "no room to let it run, we only have 6 ft"
	}
	first := -1
	for i := range rd.Elems {
		fig := rd.Elems[i].Fig
		named := ropeNamed(rd, i)
		if ofPiece(rd, i) {
			places.Claim(rd, i, parser.Length)
			continue
		}
		if fig == nil || fig.Told != "" || fig.Elsewhere || fig.Pair || fig.Falling || !named && !footer(rd, i) && !ownRope(rd, l, i) && !behindThick(rd, i) && !ropeOf(rd, i) && !highestFor(rd, i) {
			continue
		}
		field := parser.RopeLength
		if first >= 0 && rd.Elems[first].Fig.Low != fig.Low && either(rd, l, first, i) {
			field = parser.SecondRope
		}
		switch {
		case field == parser.RopeLength && named: // its words take it
		case lentRope(rd, i):
			fig.Told = field
			if ropeWords(rd, i) {
				rd.Alter(i-2, func(t *scan.Term) { t.Roles = nil }) // they have their number
			}
		default:
			fig.Sure = field // its unit is asked for
		}
		if first < 0 {
			first = i
		}
	}
}

// highestFor reads "how low could i put the block to make the 150 do": the one number of a
// question how high a block may be is the rope's.
func highestFor(rd *reading.Reading, i int) bool {
	wanted := func(k int) bool { return k < i && rd.TermAt(k).Note == parser.HighestWanted }
	fig := rd.Elems[i].Fig
	long := bareRope(fig) || fig.Far() && fig.Low >= shortestHand
	return long && rd.AnyAt(wanted) && rd.Only(func(k int) bool { return rd.Elems[k].Fig != nil }) == i
}

// ofPiece says whether the number at i is told of the piece: "the limb is 12 ft".
func ofPiece(rd *reading.Reading, i int) bool {
	fig, of := rd.Elems[i].Fig, rd.Past(i-1, -1, lexicon.MarkIs)
	return gear.Far(rd, i) && fig.Told == "" && !rd.At(i-1).Marked(lexicon.MarkAt) && !rd.At(i-1).LeadsTo(parser.HitchHeight) && !rd.At(i+1).Plays(parser.HitchHeight) && of < i-1 && (rd.At(of).Piece() || rd.TermAt(of).Shape != "" || rd.TermAt(of).Unnamed)
}

// Sized says whether the element at i is of a piece: then a bare length is
// rather the piece's.
func Sized(rd *reading.Reading, i int) bool {
	fig := rd.Elems[i].Fig
	return fig.Short() && !fig.Rope && fig.Low >= places.ThinnestPiece || rd.TermAt(i).Tree != nil
}

// ropeNamed says whether the words right beside a length are those of a rope.
func ropeNamed(rd *reading.Reading, i int) bool {
	before := rd.At(rd.Past(i-1, -1, lexicon.MarkMade|lexicon.MarkIs))
	return gear.Far(rd, i) && (rd.At(i+1).LooksBack(parser.RopeLength) || gear.Part(rd.At(i+1)) == lexicon.PartRope || gear.Part(before) == lexicon.PartRope && before.LeadsTo(parser.RopeLength))
}

// behindThick says whether a length stands right behind how thick a rope is: "13 mm
// 60 m", "9/16 double braid 200 ft".
func behindThick(rd *reading.Reading, i int) bool {
	k := i - 1
	for rd.At(k).Pause == 2 || strings.HasPrefix(rd.TermAt(k).Note, "rope-") || rd.At(k).Marked(lexicon.MarkCord) {
		k--
	}
	return gear.Far(rd, i) && rd.At(k).Fig != nil && gear.OfRope(rd, k) && !rd.At(i+1).LooksBack(parser.HitchHeight)
}

// LongThin claims the length of a rope that is told before how thick it is, "150 ft
// half inch line", where nothing else could be as long.
func LongThin(rd *reading.Reading) {
	if rd.AnyAt(func(i int) bool { return rd.Elems[i].Piece() || rd.TermAt(i).Tree != nil }) {
		return
	}
	for i := range rd.Elems {
		if gear.Far(rd, i) && rd.At(i+1).Fig.Short() && gear.Part(rd.At(i+2)) == lexicon.PartRope {
			places.Claim(rd, i, parser.RopeLength)
		}
	}
}

// WithRope claims "with 60 m" for the rope at hand, where it is asked what rope there is
// to a height, and no piece is told that could be as long; right behind what asks,
// "enough rope with 100 ft", also where one is.
func WithRope(rd *reading.Reading) {
	besides := !places.OnlyRope(rd) || rd.Worded(parser.RopeLength) && rd.AnyAt(func(i int) bool { return gear.Beside(rd, i, parser.RopeLength) })
	for i := range rd.Elems {
		fig := rd.Elems[i].Fig
		asks := rd.TermAt(i-2).Intent == parser.AskRope || gear.Part(rd.At(i-2)) == lexicon.PartRope && rd.Cued(rd.At(i-3), lexicon.CueEnough) && gear.AsksFor(rd, parser.AskRope)
		if fig == nil || besides && !asks || fig.Told != "" || fig.Elsewhere || !rd.Cued(rd.At(i-1), lexicon.CueHaving) || !rd.EndsBreath(i+1) {
			continue
		}
		if !(asks && bareRope(fig) && lentRope(rd, i)) && !(fig.Far() && fig.Low >= shortestHand) {
			continue
		}
		places.Claim(rd, i, parser.RopeLength)
		if asks && rd.At(i-2).Plays(parser.RopeLength) {
			rd.Alter(i-2, func(t *scan.Term) { t.Roles = nil }) // they have their number
		}
		return
	}
}

// ropeOf reads "soga de 120" where it is asked whether that reaches, and nothing is
// told that could hang on it.
func ropeOf(rd *reading.Reading, i int) bool {
	fig := rd.Elems[i].Fig
	bare := fig.Dim == parser.DimCount && fig.Unit == nil && shortestRope <= fig.Low && fig.High <= longestRope
	return bare && ropeWords(rd, i) && rd.AnyAt(func(k int) bool { return rd.TermAt(k).Intent == parser.AskRope }) && !rd.AnyAt(rd.Is(gear.Heavy))
}

// ropeWords says whether the number at i stands behind "soga de".
func ropeWords(rd *reading.Reading, i int) bool {
	return rd.At(i-1).Marked(lexicon.MarkMade) && gear.Part(rd.At(i-2)) == lexicon.PartRope
}

// footer says whether the number at i is told as one long thing: "the 200 footer".
func footer(rd *reading.Reading, i int) bool {
	fig := rd.Elems[i].Fig
	return fig.Far() && fig.Low >= shortestFooter && strings.HasSuffix(strings.ToLower(fig.Words(rd.Text)), "footer") && !rd.At(i+1).Piece()
}

// ownRope reads "my 150", "we only have 200 ft", "una de 100": a length that
// somebody has or fetches, and of which no more is said.
func ownRope(rd *reading.Reading, l *lexicon.Layout, i int) bool {
	fig := rd.Elems[i].Fig
	bare := fig.Dim == parser.DimCount && fig.Unit == nil && shortestRope <= fig.Low && fig.High <= longestRope
	if !bare && !fig.Far() || !l.OwnRope.MatchString(rd.Text[:fig.Start]) {
		return false
	}
	if f := bounds.RoleBeside(rd, i); f != nil && f[0] != parser.RopeLength {
		return false // "drop is 4 ft, rope breaks at 9,000 lb"
	}
	if k := rd.Past(i-1, -1, lexicon.MarkIs|lexicon.MarkArticle|lexicon.MarkAdverb); rd.At(k).Marked(lexicon.MarkPlace | lexicon.MarkObstacle | lexicon.MarkStation | lexicon.MarkStanding) {
		return false // "drop zone is 30 ft and 120 ft of rope"
	}
	return rd.EndsBreath(i+1) || heights.ReachAsked(rd, i+1) || l.OrRope.MatchString(rd.Text[fig.End:])
}

// either says whether two ropes are told to choose between: no other number
// stands between them, but a word that joins them.
func either(rd *reading.Reading, l *lexicon.Layout, i, j int) bool {
	if !l.EitherRope.MatchString(rd.Text[rd.Elems[i].End:rd.Elems[j].Start]) {
		return false
	}
	for k := i + 1; k < j; k++ {
		if rd.Elems[k].Fig != nil {
			return false
		}
		if rd.Cued(rd.Elems[k], lexicon.CueOther) {
			rd.Alter(k, func(t *scan.Term) { t.Ask = "" })
		}
	}
	return true
}

// lentRope gives a bare length of a rope the unit of the other lengths, and says
// whether the number has one now.
func lentRope(rd *reading.Reading, i int) bool {
	fig := rd.Elems[i].Fig
	if fig.Unit != nil {
		return true
	}
	fine, coarse, ok := sizes.LengthUnits(rd, i)
	switch {
	case !ok || fine == nil && coarse == nil:
		return false
	case coarse == nil && fine.System == parser.Imperial:
		coarse = scan.Foot
	case coarse == nil:
		coarse = scan.Metre
	}
	fig.Lent(coarse)
	return true
}

// LengthUnit is the unit that is left for a length of the field.
func LengthUnit(rd *reading.Reading, i int, f parser.Field) *scan.UnitWord {
	fine, coarse, ok := sizes.LengthUnits(rd, i)
	if !ok {
		return nil
	}
	fig := rd.Elems[i].Fig
	switch {
	case parser.Thickness(f) && fine == nil && coarse == nil:
		return sizes.ByMasses(rd, fig.High)
	case f == parser.RopeLength && coarse != nil && fig.Low >= shortestRope && fig.High <= longestRope:
		return coarse // told long before it hangs
	case parser.Thickness(f) && fine == nil && coarse == scan.Metre && f != parser.TipDiameter && fig.Low >= sizes.ThinnestTenths && fig.High < 1:
		return scan.Metre // "5.2 metres, 0.7 through the middle"
	case parser.Thickness(f):
		return sizes.ThicknessIn(fig.High, fine, coarse)
	case f == parser.Length && fine == scan.Centimetre && fig.High >= sizes.ShortestCut && rd.At(i-1).Fig == nil:
		return sizes.ShortCut(rd, fig.High)
	case f == parser.Length && (rd.Has(lexicon.MarkRound) || !sizes.LongEnough(rd, fig, fine)):
		return nil // a round is inches thick
	case coarse == nil && fine != nil && fine.System == parser.Imperial:
		coarse = scan.Foot
	case coarse == nil && fine != nil:
		coarse = scan.Metre
	}
	if f == parser.DropHeight && coarse != nil && fig.High*coarse.Factor > sizes.Deepest {
		return nil
	}
	if coarse == nil || !sizes.Tellable[f] || fig.High*coarse.Factor > sizes.Highest || fig.High < 1 {
		return nil
	}
	return coarse
}

// ThinByNumber reads "aguanta la cuerda de 16" where all is told in metres and
// nobody asks how far it reaches: in millimetres, as ropes are named there.
func ThinByNumber(rd *reading.Reading, i int) bool {
	const thinnest, thickest = 8, 24
	fig := rd.Elems[i].Fig
	plain := fig.Dim == parser.DimCount && fig.Low == fig.High && fig.Low >= thinnest && fig.High <= thickest && rd.EndsBreath(i+1)
	return plain && rd.In.Comma && (ropeWords(rd, i) || rd.At(i-1).Marked(lexicon.MarkMade) && rd.TermAt(i-2).Intent == parser.AskGear) && sizes.Only(rd, parser.Metric, parser.DimLength) && !rd.AnyAt(rd.Is(heights.ReachAsked))
}

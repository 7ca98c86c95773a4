package turning

import (
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/sizes"
)

// What stands behind "instead of" is not so: "somos 2 en vez de 4", "en lugar de
// roble es nogal". It is left out and said back where the message tells what is so,
// and nothing else could belong to it.

// PutAside leaves out the number or the tree behind the words at i.
func PutAside(rd *reading.Reading, i int) bool {
	j := rd.Past(i+1, +1, lexicon.MarkArticle)
	if rd.Cued(rd.At(j), lexicon.CueUsual) && rd.At(j+1).Fig != nil {
		j++ // "instead of the usual 2"
	}
	end := j + 1
	if bareInstead(rd, j) {
		Blank(rd, i, end)
		rd.NotSo = append(rd.NotSo, rd.Passed[len(rd.Passed)-1])
		return true
	}
	switch fig := rd.At(j).Fig; {
	case fig != nil:
		if CountedBy(rd, end) {
			end++
		}
		if rightBefore(rd, i, j) && !toNumber(rd, end) {
			break // "3 ft instead of 4"
		}
		if k := toldInstead(rd, i, j); k < 0 || toNumber(rd, end) {
			return false
		} else if rd.Fraction(fig) && rd.Elems[k].Fig.Unit == scan.Inch && sizes.ThinRope(rd, rd.Elems[k].Fig) && !rd.ThicknessBeside(rd.Elems[k].Fig) {
			places.Claim(rd, k, parser.RopeDiameter) // "scratch the 5/8, we got the half inch"
		} else if CountedBy(rd, j+1) && !CountedBy(rd, k+1) && rd.At(j+1).Plays(parser.Wraps) {
			places.Claim(rd, k, parser.Wraps) // "en lugar de 3 vueltas le pongo 4"
		}
	case rd.TermAt(j).Tree != nil:
		if toNumber(rd, end) || rd.At(end).Piece() || !rd.AnyAt(func(k int) bool { return k != j && OtherTree(rd, k, j) }) {
			return false
		}
	case tieForTie(rd, i) > 0:
		end = tieForTie(rd, i)
	case !crotchOrBlock(rd, j) && !drumForDrum(rd, i, j) || toNumber(rd, end):
		return false
	}
	Blank(rd, i, end)
	return true
}

// bareInstead says whether the bare number at j is one that the talk has told, and the one
// other number of the message takes its place: "cut it at 6 instead of 8".
func bareInstead(rd *reading.Reading, j int) bool {
	bare := func(k int) bool {
		f := rd.At(k).Fig
		return f != nil && f.Unit == nil && f.Dim == parser.DimCount && !f.Pair && f.Low == f.High
	}
	other := rd.Only(func(k int) bool { return k != j && rd.Elems[k].Fig != nil })
	if rd.First || !bare(j) || other < 0 || rd.Elems[other].Fig.Pair || toNumber(rd, j+1) && other != rd.Past(j+1, +1, lexicon.MarkArticle) || CountedBy(rd, j+1) || CountedBy(rd, other+1) {
		return false
	}
	return slices.ContainsFunc(rd.Before.Quantities, func(x parser.Quantity) bool {
		number, _, _ := strings.Cut(x.Words, " ")
		return number == rd.Elems[j].Fig.Words(rd.Text)
	})
}

// ThingPutAside leaves out a thing behind the words at i that has no number and asks for
// nothing: "instead of using a crane", "instead of the chain". It says whether it did.
// How the rope is let run or caught is no thing, nor is what comes before all arithmetic,
// and which way something goes, "up instead of out", stays in doubt, as do blocks and drums.
func ThingPutAside(rd *reading.Reading, i int) bool {
	end := i + 1
	if rd.At(i - 1).Marked(lexicon.MarkErect) {
		return false
	}
	for ; !rd.EndsBreath(end); end++ {
		e, t := rd.Elems[end], rd.TermAt(end)
		if e.Fig != nil || len(t.Roles) > 0 || gear.Part(e) != "" || e.Marked(lexicon.MarkErect|lexicon.MarkOutward) || e.Piece() || t.Tree != nil || t.Condition != "" || t.Note != "" || t.Stop != "" || t.Ask != "" || t.Denies || t.Damaged || t.Frail || t.Intent != "" && !t.Besides {
			return false
		}
	}
	if end == i+1 || rd.At(end).Marked(lexicon.MarkAnd) {
		return false
	}
	LeaveOut(rd, i, end)
	return true
}

// tieForTie finds where it ends what place a piece is not tied at, where another is told
// right before the words at i, "in the middle instead of by the fat end", and no number of
// either; 0 elsewhere.
func tieForTie(rd *reading.Reading, i int) int {
	place := func(k int) bool {
		e := rd.At(k)
		return e.Fig == nil && (e.Plays(parser.ButtDiameter) || e.Plays(parser.TipDiameter) || e.Plays(parser.MidDiameter))
	}
	tied := rd.AnyAt(func(k int) bool { return k < i && rd.TermAt(k).Tied })
	j := rd.Past(i+1, +1, lexicon.MarkArticle|lexicon.MarkAt|lexicon.MarkIn|lexicon.MarkWhere|lexicon.MarkRelation)
	if !tied || !place(i-1) && !rd.TermAt(i-1).Tied || !place(j) || toNumber(rd, j+1) || rd.At(i-2).Fig != nil {
		return 0
	}
	return j + 1
}

// drumForDrum says whether one drum is told right before the words at i and another at j:
// the wraps are those of any.
func drumForDrum(rd *reading.Reading, i, j int) bool {
	return gear.Part(rd.At(i-1)) == lexicon.PartDrum && gear.Part(rd.At(j)) == lexicon.PartDrum && rd.At(j).Fig == nil
}

// crotchOrBlock says whether a block stands at i and a natural crotch is told of
// besides, or the other way round: the rope runs through one of them.
func crotchOrBlock(rd *reading.Reading, i int) bool {
	crotch := func(k int) bool { return naturalCrotch(rd, k) }
	block := func(k int) bool { return gear.Part(rd.At(k)) == lexicon.PartBlock || rd.TermAt(k).Block != "" }
	other := func(holds func(int) bool) bool {
		return rd.AnyAt(func(k int) bool { return k != i && rd.Elems[k].Fig == nil && holds(k) })
	}
	return crotch(i) && other(func(k int) bool { return block(k) && !crotch(k) }) || block(i) && !crotch(i) && other(crotch)
}

// naturalCrotch says whether a fork that the rope runs over stands at i.
func naturalCrotch(rd *reading.Reading, i int) bool {
	return rd.TermAt(i).Block == parser.NaturalCrotch || rd.TermAt(i).Note == parser.NaturalCrotch
}

// Blank passes over what stands from one element to another, and leaves them in
// their places: the words around keep theirs.
func Blank(rd *reading.Reading, from, to int) {
	kept := slices.Clone(rd.Elems[from:to])
	for k := range kept {
		kept[k] = reading.Element{Start: kept[k].Start, End: kept[k].End, Term: &scan.Term{Chatter: true}}
	}
	rd.Pass(from, to, kept...)
}

// CountedBy says whether the words at i are what a number before them counts.
func CountedBy(rd *reading.Reading, i int) bool {
	e := rd.At(i)
	return e.Fig == nil && (e.Plays(parser.Wraps) || e.Plays(parser.People))
}

// toNumber says whether a number that could belong to what stands before it stands
// at i, or a word that leads to one.
func toNumber(rd *reading.Reading, i int) bool {
	e := rd.At(i)
	return e.Fig != nil || e.Cross || e.Marked(lexicon.MarkBy|lexicon.MarkTaper) || e.Marked(lexicon.MarkAnd|lexicon.MarkMade) && rd.At(rd.Past(i+1, +1, lexicon.MarkArticle)).Fig != nil
}

// rightBefore says whether the number right before the words at i is told in place of
// that at j, whatever else is told: both have one unit, or that at j has none.
func rightBefore(rd *reading.Reading, i, j int) bool {
	const most = 4
	is, not := rd.At(i-1).Fig, rd.Elems[j].Fig
	if is == nil || is.Pair || not.Pair || is.Unit == nil && is.Dim != parser.DimRatio {
		return false
	}
	bare := not.Unit == nil && not.Dim == parser.DimCount && is.Unit != nil
	if !bare && (is.Dim != not.Dim || is.Unit != not.Unit) || bare && (CountedBy(rd, j+1) || len(rd.TermAt(j+1).Roles) > 0 && !rd.At(j+1).Marked(lexicon.MarkIn|lexicon.MarkWhere)) {
		return false
	}
	x, y := is.High, not.High
	if bare {
		y *= is.Unit.Factor
	}
	return x <= most*y && y <= most*x
}

// toldInstead finds the one number that is told in place of that at j, -1 for none
// and for more than one.
func toldInstead(rd *reading.Reading, i, j int) int {
	found, not := -1, rd.Elems[j].Fig
	for k, e := range rd.Elems {
		fig := e.Fig
		fraction := rd.Fraction(not) && fig != nil && fig.Unit == scan.Inch // "scratch the 5/8"
		if k == j || fig == nil || !fraction && (fig.Dim != not.Dim || fig.Unit != not.Unit) {
			continue
		}
		if CountedBy(rd, j+1) && CountedBy(rd, k+1) && rd.At(j+1).Plays(parser.Wraps) != rd.At(k+1).Plays(parser.Wraps) {
			continue // "3 vueltas" and "2 hombres"
		}
		tried := rd.At(j+1).Plays(parser.Wraps) && rd.Cued(rd.At(k-1), lexicon.CueTries)
		if not.Unit == nil && !fraction && !CountedBy(rd, k+1) && !rd.At(k-1).Plays(parser.People) && !tried {
			continue
		}
		if found >= 0 {
			return -1
		}
		found = k
	}
	return found
}

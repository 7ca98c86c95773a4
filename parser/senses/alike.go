package senses

import (
	"strings"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/sizes"
	"heft/parser/stops"
)

// EachOfMany reads "pieces are 280 lb each", where nothing says how many they are:
// what each of them weighs is what one does.
func EachOfMany(rd *reading.Reading) {
	many := -1
	for i := range rd.Elems {
		switch t := rd.TermAt(i); {
		case rd.Elems[i].Plays(parser.People) && rd.At(i-1).Fig != nil:
			return
		case (t.Unnamed || t.Shape != "") && sizes.Plural(rd, i) && many < 0:
			many = i
		case t.Each && many >= 0 && eachWeight(rd, i-1):
			rd.Alter(i, func(t *scan.Term) { *t = EachIs(rd, i) })
			return
		}
	}
}

// eachWeight says whether the number at i can be what each piece weighs.
func eachWeight(rd *reading.Reading, i int) bool {
	fig := rd.At(i).Fig
	return gear.Heavy(rd, i) || fig != nil && fig.Dim == parser.DimCount && fig.Low >= stops.Lightest && fig.Claimed == ""
}

// EachWeighed reads "3 pieces, 300 lb each": how many there are of what has no
// other name, where the weight of each is the only thing told of them. Of "3
// pieces of a 20 in x 12 ft log" each is only a part.
func EachWeighed(rd *reading.Reading, i int) bool {
	each := -1
	for k, e := range rd.Elems {
		switch {
		case e.Fig != nil && (k < i || e.Fig.Dim == parser.DimLength), e.Cross, e.Term != nil && e.Term.Intent == parser.AskCutPlan:
			return false
		case rd.TermAt(k).Each && each < 0:
			each = k
		}
	}
	weighed := gear.Heavy(rd, each-1) || rd.At(each-1).Fig != nil && rd.At(each-1).Fig.Low >= stops.Lightest && each-1 > i
	return rd.TermAt(i+1).Unnamed && each > i && weighed && !rd.At(i-1).Marked(lexicon.MarkWhere|lexicon.MarkIn|lexicon.MarkRelation)
}

// EachIs is what "each" comes to at k: behind a bare number, that it is a weight.
func EachIs(rd *reading.Reading, k int) scan.Term {
	if fig := rd.At(k - 1).Fig; fig != nil && fig.Dim == parser.DimCount && fig.Claimed == "" {
		return scan.Term{Roles: []scan.Role{{Field: parser.Weight, Side: lexicon.Before, Soft: false}}}
	}
	return scan.Term{}
}

// AtOnce makes one load of several pieces that hang together, where the weight
// of each is told: "3 logs of 300 lb each, lowered together" are 900 lb.
func AtOnce(rd *reading.Reading, i int) bool {
	once, each := -1, -1
	for k := range rd.Elems {
		switch t := rd.TermAt(k); {
		case t.AtOnce:
			once = k
		case t.Each && each >= 0:
			return false
		case t.Each:
			each = k
		}
	}
	if once < 0 || each < 1 || !gear.Heavy(rd, each-1) {
		return false
	}
	n, fig := rd.Elems[i].Fig.Low, rd.Elems[each-1].Fig
	fig.Low, fig.High = n*fig.Low, n*fig.High
	for _, k := range []int{once, each} {
		rd.Alter(k, func(t *scan.Term) { *t = scan.Term{} })
	}
	rd.Elems = append(rd.Elems[:i], rd.Elems[i+1:]...)
	return true
}

// OnePiece passes over the number of "1 pedazo de maple" and "1 limb": one is all
// that is told of where nothing else is said.
func OnePiece(rd *reading.Reading) {
	for i := 0; i < len(rd.Elems); i++ {
		if !places.Bare(rd.Elems[i].Fig, 1) || !opens(rd, i) || !singleAt(rd, i+1) {
			continue
		}
		rd.Pass(i, i+1)
	}
}

// opens says whether nothing before the number at i could be about it.
func opens(rd *reading.Reading, i int) bool {
	e := rd.At(i - 1)
	return i == 0 || e.Pause > 0 || e.Polite() && !gear.EndsInAt(rd, i-1) || e.Term != nil && e.Term.Intent != "" && len(e.Term.Roles) == 0 && e.Term.Marks == 0
}

// singleAt says whether the words from an element on name one piece.
func singleAt(rd *reading.Reading, i int) bool {
	for ; rd.At(i).Marked(lexicon.MarkAdjective) || rd.At(i).Piece() && rd.TermAt(i).Shape == ""; i++ {
	}
	e := rd.At(i)
	words := strings.Fields(scan.Fold(rd.Text[e.Start:e.End]))
	return (rd.TermAt(i).Shape != "" || rd.TermAt(i).Unnamed) && !strings.HasSuffix(words[0], "s")
}

// AlikeAsk asks about pieces of which a weight was told, and not whether it is
// that of each; and about several where the answer is not for each by itself.
func AlikeAsk(rd *reading.Reading, q parser.Question) *parser.Ask {
	alone := q.Intent == parser.AskWeight || q.Intent == parser.AskLower || q.Intent == parser.AskTree
	if !q.Has(parser.Alike) || alone && (rd.Each || !q.Has(parser.Weight)) {
		return nil
	}
	n, _ := q.Get(parser.Alike)
	return &parser.Ask{Kind: parser.Twist, Words: n.Words, Start: n.Start, End: n.End}
}

package turning

import (
	"unicode"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// Who speaks is counted in where the sum is plain: "two guys plus me", "me plus one
// on the rope", "me and Tanner".

// Adds says whether the word at i may add people: "plus", and "hombres más" before
// who speaks.
func Adds(rd *reading.Reading, i int) bool {
	return rd.TermAt(i).Ask == parser.Twist && rd.Cued(rd.Elems[i], lexicon.CuePlus) || rd.TermAt(i).Others && rd.Cued(rd.At(i+1), lexicon.CueSelf)
}

// PeopleSum reads the sum of people at the word that adds, "plus", and says whether
// there is one.
func PeopleSum(rd *reading.Reading, i int) bool {
	left, right := headsBefore(rd, i), headsBehind(rd, i+1)
	if left.n == 0 || right.n == 0 || left.me == right.me {
		return false
	}
	n := left.n + right.n
	start, end := rd.Elems[left.at].Start, rd.Elems[right.at].End
	rd.Elems[left.at] = reading.Element{Start: start, End: end, Fig: &reading.Figure{Low: n, High: n, Start: start, End: end}}
	for k := left.at + 1; k <= right.at; k++ {
		rd.Elems[k].Fig, rd.Elems[k].Term = nil, &scan.Term{}
	}
	rd.Elems[left.at+1].Term = &scan.Term{Roles: []scan.Role{{Field: parser.People, Side: lexicon.Before, Soft: false}}}
	return true
}

// heads are people that are counted at an element: how many, and whether it is who
// speaks.
type heads struct {
	at int
	n  float64
	me bool
}

// headsBefore counts the people right before the element at i.
func headsBefore(rd *reading.Reading, i int) heads {
	if rd.Cued(rd.At(i-1), lexicon.CueSelf) {
		return heads{i - 1, 1, true}
	}
	if rd.TermAt(i).Others {
		i++
	}
	fig := rd.At(i - 2).Fig
	if rd.At(i-1).Plays(parser.People) && rd.At(i-1).Fig == nil && fig != nil && fig.Dim == parser.DimCount && fig.Unit == nil && fig.Low == fig.High {
		return heads{i - 2, fig.Low, false}
	}
	return heads{}
}

// headsBehind counts those at i. A number without a word is one of people where who
// speaks stands before it, and those who hold the rope behind it.
func headsBehind(rd *reading.Reading, i int) heads {
	if rd.Cued(rd.At(i), lexicon.CueSelf) {
		return heads{i, 1, true}
	}
	fig, next := rd.At(i).Fig, rd.At(i+1)
	if fig == nil || fig.Dim != parser.DimCount || fig.Unit != nil || fig.Low != fig.High {
		return heads{}
	}
	if next.Plays(parser.People) || rd.TermAt(i+1).Others || OnTackle(rd, i+1) {
		return heads{i, fig.Low, false}
	}
	return heads{}
}

// NamedPartner says whether a name that is not known stands right behind the words
// at i, "me and Tanner", and what both of them do behind that.
func NamedPartner(rd *reading.Reading, i int) bool {
	next := rd.At(i + 1)
	for k, a := range rd.Asks {
		if a.Kind != parser.Unknown || a.Start < rd.Elems[i].End || a.End > startOf(rd, i+1) || !unicode.IsUpper(rune(a.Words[0])) {
			continue
		}
		if next.Plays(parser.People) && next.Fig == nil || OnTackle(rd, i+1) {
			rd.Asks = append(rd.Asks[:k:k], rd.Asks[k+1:]...)
			return true
		}
	}
	return false
}

// OnTackle says whether the words at i say that those before them all pull: "me
// and two groundies on a 3:1", "me and 2 guys on the rope".
func OnTackle(rd *reading.Reading, i int) bool {
	if e := rd.At(i); e.Plays(parser.People) && e.Fig == nil && e.Looks(lexicon.Before) {
		return true
	}
	j := rd.Past(i, +1, lexicon.MarkIn|lexicon.MarkWhere|lexicon.MarkArticle)
	fig := rd.At(j).Fig
	return j > i && fig != nil && fig.Dim == parser.DimRatio
}

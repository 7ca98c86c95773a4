package reader

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/sizes"
	"heft/parser/stops"
)

// A crew asks one thing of several loads or stems in one breath: "wraps for 300, 450 and
// 700 lb", "how long for 200 kg in oak at 400 mm and same again at 350 and 300". Each of
// the numbers is the message by itself; nothing is added up.

// row are numbers of one kind that are told one after the other: what each may be is the
// same.
type row struct {
	at     []int  // the elements
	unit   string // as it was typed, "" where none of them has one
	shared string // words between two of them that go with both
}

// inRow reads such a message: each number in the place of all of them. Without a unit it
// is asked once for all.
func (r *Reader) inRow(rd *reading.Reading) (parser.Question, *parser.Ask, bool) {
	q := parser.Question{Intent: parser.AskTree, Language: rd.Language, InRow: true}
	one, ok := rowOf(rd)
	if !ok {
		one, ok = saidLong(rd)
	}
	if !ok || len(rd.Asks) > 0 || len(one.at) > manyPieces {
		return q, nil, false
	}
	first, last := rd.Elems[one.at[0]].Start, rd.Elems[one.at[len(one.at)-1]].End
	if one.unit == "" {
		a := reading.AskAt(parser.NoUnit, rd.Text, first, last-first)
		a.Fields, a.Choices, a.Mass = []parser.Field{parser.Weight}, []parser.Choice{{Field: parser.Weight}}, true
		q.Intent = intentOf(rd, q)
		return q, a, true
	}
	for _, i := range one.at {
		e := rd.Elems[i]
		value := rd.Text[:first] + numberOf(rd, i) + one.unitBehind() + one.shared + rd.Text[last:]
		said := r.anyOne(rd, parser.Said[string]{Value: value, Words: rd.Text[e.Start:e.End], Start: e.Start, End: e.End})
		single, err := r.Read(said.Value)
		if err != nil || len(single.Pieces) > 0 || len(single.Missing()) > 0 {
			return q, nil, false
		}
		q.Units = single.Units
		q.Pieces = append(q.Pieces, said)
	}
	return q, nil, true
}

// unitBehind is the unit as it is typed behind a number: 18", 18 in.
func (one row) unitBehind() string {
	if r, _ := utf8.DecodeRuneInString(one.unit); unicode.IsLetter(r) {
		return " " + one.unit
	}
	return one.unit
}

// numberOf is the number at i as it was typed, without its unit.
func numberOf(rd *reading.Reading, i int) string {
	words := rd.Elems[i].Fig.Words(rd.Text)
	return words[:len(words)-len(strings.TrimLeft(words, "0123456789.,"))]
}

// rowOf finds the one row of a message, and no other number that it could be mixed up
// with: weights where wraps or a block are asked about, thicknesses where a length is.
func rowOf(rd *reading.Reading) (row, bool) {
	loads := gear.AsksFor(rd, parser.AskLower) || gear.AsksFor(rd, parser.AskBlockLoad)
	switch {
	case gear.AsksFor(rd, parser.AskCutPlan):
		one := run(rd, func(i int) bool { return thickInRow(rd, i) })
		return one, len(one.at) > 2 && one.unit != "" && !rd.AnyAt(rd.Is(gear.Far))
	case loads:
		one := run(rd, func(i int) bool { return loadInRow(rd, i) })
		numbers := 0
		for i, e := range rd.Elems {
			if e.Fig != nil {
				numbers++
			}
			if rd.TermAt(i).AtOnce || rd.TermAt(i).Each || rd.TermAt(i).Tree != nil {
				return one, false
			}
		}
		return one, len(one.at) > 1 && numbers == len(one.at)
	}
	return row{}, false
}

// saidLong is the row of two lengths that two people say of one piece, "boss says 10 ft
// logs i say 6 ft": each is told what it comes to.
func saidLong(rd *reading.Reading) (one row, ok bool) {
	for k := range rd.Elems {
		if !rd.TermAt(k).ISay || !gear.Far(rd, k+1) {
			continue
		}
		a, far := -1, 0
		for i := range rd.Elems {
			if gear.Far(rd, i) {
				far++
			}
			if i < k && gear.Far(rd, i) && k-i <= stops.Few {
				a = i
			}
		}
		if a < 0 || far != 2 || rd.Elems[a].Fig.Unit != rd.Elems[k+1].Fig.Unit || rd.At(k+2).Looks(lexicon.Before) || rd.Worded(parser.HitchHeight) {
			return row{}, false
		}
		unit := strings.TrimLeft(rd.Elems[a].Fig.Words(rd.Text), "0123456789., ")
		return row{at: []int{a, k + 1}, unit: unit, shared: rd.Text[rd.Elems[a].End:rd.Elems[k].Start]}, true
	}
	return row{}, false
}

// run is the one stretch of numbers that hold, with nothing typed between them but commas
// and words that link them; empty where anything else stands between. Two of them may as
// well be one put right, and are a row only with a word between.
func run(rd *reading.Reading, holds func(int) bool) (one row) {
	worded := false
	for i, e := range rd.Elems {
		if e.Fig == nil || !holds(i) {
			continue
		}
		if n := len(one.at); n > 0 {
			words, ok := linked(rd, rd.Elems[one.at[n-1]].End, e.Start)
			if !ok {
				return row{}
			}
			worded = worded || words
		}
		one.at = append(one.at, i)
		if typed := strings.TrimLeft(e.Fig.Words(rd.Text), "0123456789., "); typed != "" {
			if one.unit != "" && typed != one.unit {
				return row{}
			}
			one.unit = typed
		}
	}
	if len(one.at) == 2 && !worded {
		return row{}
	}
	return one
}

// linked says whether nothing else than commas and linking words is typed from one place
// to another, and whether there is a word.
func linked(rd *reading.Reading, from, to int) (words, ok bool) {
	between := rd.Text[from:to]
	for _, w := range strings.FieldsFunc(scan.Fold(between), func(r rune) bool { return strings.ContainsRune(" ,&\t\n", r) }) {
		if !rd.In.Cued(w, lexicon.CueRowLink) {
			return false, false
		}
		words = true
	}
	return words || strings.ContainsRune(between, '&'), true
}

// loadInRow says whether the number at i can be a load: a mass, or a bare one that is no
// count.
func loadInRow(rd *reading.Reading, i int) bool {
	fig := rd.Elems[i].Fig
	if fig.Pair || fig.Low != fig.High || len(rd.TermAt(i+1).Roles) > 0 && rd.At(i+1).Looks(lexicon.Before) {
		return false
	}
	return fig.Dim == parser.DimMass && fig.Unit != nil || fig.Dim == parser.DimCount && fig.Unit == nil && fig.Low >= stops.LeastTold
}

// thickInRow says whether the number at i can be how thick a stem is: in a unit of
// thickness, or bare and as large as those are.
func thickInRow(rd *reading.Reading, i int) bool {
	const thinnest = 6
	fig := rd.Elems[i].Fig
	if fig.Pair || fig.Low != fig.High || rd.At(i+1).Looks(lexicon.Before) {
		return false
	}
	return fig.Short() && !sizes.ThinRope(rd, fig) || fig.Dim == parser.DimCount && fig.Unit == nil && fig.Low >= thinnest
}

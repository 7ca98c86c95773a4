package bounds

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
)

// Of the words before a number and those behind it, the ones that are its own say what
// it is: "he says 14 at the butt", "14 butt 8 tip 20 long".

// RoleBeside is the field that a bare number right beside the words for it
// must be, where only its unit is missing: "limit 700", "hitch 70".
func RoleBeside(rd *reading.Reading, i int) []parser.Field {
	beside := []int{rd.WordsBefore(i), i + 1}
	if rd.AnyAt(rd.Is(Cuts)) {
		beside = append(beside, i-1) // "cut lengths, max 250"
	}
	if places.OfSize(rd, i+1) || wordsBehind(rd, i) || places.SoftBefore(rd, i) {
		beside[0], beside[1] = beside[1], beside[0] // "pedazo de 35 de grueso"
	}
	for _, at := range beside {
		if t := rd.At(at).Term; t != nil {
			for _, r := range t.Roles {
				facing := r.Side&lexicon.Before != 0
				if at < i {
					facing = r.Side&lexicon.After != 0
				}
				if dim := parser.DimensionOf[r.Field]; facing && (dim == parser.DimMass || dim == parser.DimForce || dim == parser.DimLength) {
					return []parser.Field{r.Field}
				}
			}
		}
	}
	return nil
}

// wordsBehind says whether each number of a row has its words behind it: "14 butt 8 tip
// 20 long".
func wordsBehind(rd *reading.Reading, i int) bool {
	left := rd.WordsBefore(i)
	return rd.At(i+1).Looks(lexicon.Before) && rd.At(left).Looks(lexicon.Before) && rd.At(left-1).Fig != nil && !LabelFirst(rd, i) && rd.At(i+2).Fig == nil
}

// LabelFirst says whether the number at i goes with the words before it, because
// the first number of a row of words and numbers has none before its words, and
// the last none behind it: "butt 17 tip 13 11 ft long".
func LabelFirst(rd *reading.Reading, i int) bool {
	worded := func(k int) bool { return rd.At(k).Looks(lexicon.After) && rd.At(k+1).Fig != nil }
	first, last := i, i
	for worded(first-3) && worded(first-1) {
		first -= 2
	}
	for worded(last + 1) {
		last += 2
	}
	return worded(i-1) && last > first && rd.At(first-2).Fig == nil && !rd.At(last+1).Looks(lexicon.Before)
}

package sizes

import (
	"slices"

	"heft/parser"
	"heft/parser/bounds"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/stops"
)

// What a truck takes is told behind what it is like: "the truck is 15 yards and takes
// 8000 lb", "la troca es de 15 yardas y carga como 8000 lb". How large its box is has no
// part in loads by weight.

// TruckTakes passes over such a size, and makes the load the payload.
func TruckTakes(rd *reading.Reading) {
	boxSizes(rd)
	bedSizes(rd)
	if takesApiece(rd) {
		return
	}
	v := rd.Only(func(i int) bool {
		return rd.Elems[i].Fig == nil && (rd.Cued(rd.Elems[i], lexicon.CueVehicle) || rd.Elems[i].Plays(parser.Payload))
	})
	if v < 0 {
		return
	}
	size, load := truckSize(rd, v), -1
	for k := v + 1; k < len(rd.Elems); k++ {
		e := rd.Elems[k]
		if gear.Heavy(rd, k) && bearsBefore(rd, k) {
			load = k
			break
		}
		if e.Fig != nil && k != size || e.Pause > 2 || e.Piece() {
			return
		}
	}
	if load < 0 {
		return
	}
	places.Claim(rd, load, parser.Payload)
	if size >= 0 {
		rd.Pass(size, size+1)
	}
}

// takesApiece reads "the truck can only take 1,000 lb a piece", where it is asked how pieces
// are cut, as what each may weigh: of the load it would say far more.
func takesApiece(rd *reading.Reading) bool {
	if !gear.AsksFor(rd, parser.AskCutPlan) {
		return false
	}
	for i, e := range rd.Elems {
		if !gear.Heavy(rd, i) || e.Fig.Told != parser.Payload && !bearsBefore(rd, i) {
			continue
		}
		if apiece := bounds.Apiece(rd, i+1); apiece > i {
			e.Fig.Told = parser.Limit
			rd.Alter(apiece, func(t *scan.Term) { *t = scan.Term{} })
			return true
		}
	}
	return false
}

// truckSize is how long or how roomy the truck at v is told to be, right before it or behind:
// "14 ft trailer", "truck is 15 yards"; -1 where it is not told.
func truckSize(rd *reading.Reading, v int) int {
	behind := rd.Past(v+1, +1, lexicon.MarkIs|lexicon.MarkMade|lexicon.MarkArticle)
	before := v - 2
	if rd.At(before).Cross {
		before--
	}
	switch {
	case gear.Far(rd, v-1) && rd.At(before).Fig.Short() && rd.At(v-1).Pause == 0:
		return -1 // "20 in 8 ft truck takes": the piece's, in one breath with how thick it is
	case gear.Far(rd, v-1):
		return v - 1
	case gear.Far(rd, behind):
		return behind
	}
	return -1
}

// bearsBefore says whether a word that bears leads to the load at i: "takes about".
func bearsBefore(rd *reading.Reading, i int) bool {
	k := i - 1
	for rd.TermAt(k).Note == "about" || rd.At(k).Marked(lexicon.MarkBound|lexicon.MarkMade) || rd.At(k).Polite() && !rd.TermAt(k).Bears {
		k--
	}
	return rd.TermAt(k).Bears || rd.Cued(rd.At(k), lexicon.CueTakesLoad) || rd.At(k).Plays(parser.Payload)
}

// bedSizes passes over how long a truck or its bed is, "truck deck is 12 ft", where no piece
// is named before it that lies there and it is asked how to cut one.
func bedSizes(rd *reading.Reading) {
	if !gear.AsksFor(rd, parser.AskCutPlan) {
		return
	}
	for i := len(rd.Elems) - 1; i > 0; i-- {
		k := rd.Back(i - 1)
		if !gear.Far(rd, i) || rd.Elems[i].Fig.Told != "" || k == i-1 || rd.At(i-1).Marked(lexicon.MarkAt) || !rd.EndsBreath(i+1) {
			continue
		}
		if !rd.Cued(rd.At(k), lexicon.CueVehicle) || rd.Cued(rd.At(k-1), lexicon.CueVehicle) {
			k-- // "truck deck"
		}
		first := rd.Past(k-1, -1, lexicon.MarkArticle)
		if rd.Cued(rd.At(k), lexicon.CueVehicle) && (first < 0 || rd.At(first).Pause > 0 || rd.At(first).Marked(lexicon.MarkAnd)) {
			rd.Pass(i, i+1)
		}
	}
}

// boxSizes passes over how roomy a box of chips is: "the chip box is sixteen yards".
func boxSizes(rd *reading.Reading) {
	for i := len(rd.Elems) - 1; i >= 0; i-- {
		if fig := rd.Elems[i].Fig; fig == nil || fig.Unit != scan.UnitNamed["yard"] {
			continue
		}
		k := slices.IndexFunc(rd.Tokens, func(t reading.DangerToken) bool { return t.Start >= rd.Elems[i].Start }) - 1
		for k >= 0 && rd.Tokens[k+1].Pause == 0 && !stops.Is(rd.Tokens[k], "box-word") && stops.Is(rd.Tokens[k], "=is") {
			k--
		}
		if k < 0 || rd.Tokens[k+1].Pause > 0 || !stops.Is(rd.Tokens[k], "box-word") {
			continue
		}
		if k > 0 && stops.Is(rd.Tokens[k-1], "box-word") {
			k-- // "chip box"
		}
		from, to := rd.Tokens[k].Start, rd.Elems[i].Start
		rd.Asks = slices.DeleteFunc(rd.Asks, func(a *parser.Ask) bool { return a.Kind == parser.Unknown && a.Start >= from && a.End <= to })
		rd.Pass(i, i+1)
	}
}

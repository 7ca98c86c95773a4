package sizes

import (
	"heft/parser"
	"heft/parser/bounds"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/stops"
)

// What a piece may weigh is also told by what nobody wants: "dont want over 25 stone
// a bit", "cant go past 600 lb", "dont want anything bigger than 900 lb a piece".

// NeverOver reads such limits where it is asked how a piece is cut, or said that
// each of them is held to it.
func NeverOver(rd *reading.Reading) {
	for i := range rd.Elems {
		bound := rd.Elems[max(i-1, 0)]
		if !bounds.Mass(rd, i) || rd.Elems[i].Fig.Claimed != "" || !bound.Marked(lexicon.MarkBound) && !bound.Plays(parser.Limit) && !rd.Cued(bound, lexicon.CuePast) {
			continue
		}
		not := deniedTo(rd, i-2, rd.Cued(bound, lexicon.CuePast))
		apiece := bounds.Apiece(rd, i+1)
		if not >= 0 && !bound.Marked(lexicon.MarkBound) && bounds.GearBefore(rd, not) {
			continue // "the rope cant take anything over 500 lb" rates it
		}
		if not < 0 || apiece < 0 && !gear.AsksFor(rd, parser.AskCutPlan) && !unwanted(rd, not, i) || rd.TermAt(i+1).InHand {
			continue
		}
		for k := not; k < i; k++ {
			rd.Alter(k, func(t *scan.Term) { *t = scan.Term{} })
		}
		Limited(rd, i)
		if apiece > 0 {
			rd.Alter(apiece, func(t *scan.Term) { *t = scan.Term{} })
		}
		if apiece > 0 && rd.AnyAt(rd.Is(ofWood)) {
			rd.Alter(apiece, func(t *scan.Term) { *t = scan.Term{Intent: parser.AskCutPlan, Besides: true} })
		}
	}
}

// unwanted says whether nobody wants what stands between the denial at not and the number at i,
// whatever is asked: "dont want over 350 on anything". On gear it is what that may bear.
func unwanted(rd *reading.Reading, not, i int) bool {
	on := rd.At(rd.Past(i+1, +1, lexicon.MarkArticle|lexicon.MarkWhere|lexicon.MarkIn|lexicon.MarkRelation))
	onGear := gear.Part(on) != "" && gear.Part(on) != lexicon.PartRope || on.Marked(lexicon.MarkLoaded) || rd.TermAt(i+1).Anchors
	return !onGear && bounds.AnyWithin(rd, not, i, func(k int) bool { return rd.Cued(rd.Elems[k], lexicon.CueWilling) })
}

// ofWood says whether something of a piece is told at i: without any of it a limit is the job's.
func ofWood(rd *reading.Reading, i int) bool {
	return rd.TermAt(i).Tree != nil || rd.TermAt(i).Shape != "" || gear.Far(rd, i)
}

// PiecesUnder reads "even pieces under 400" of wood whose length is told, and "piezas
// iguales de menos de 400", as what each piece may weigh.
func PiecesUnder(rd *reading.Reading) {
	for i := range rd.Elems {
		bound := rd.At(i - 1)
		if !bounds.Mass(rd, i) || rd.Elems[i].Fig.Claimed != "" || !bound.Marked(lexicon.MarkBound) || !bound.Plays(parser.Limit) {
			continue
		}
		k := i - 2
		for k >= 0 && rd.Elems[k].Fig == nil && (rd.Elems[k].Marked(lexicon.MarkMade|lexicon.MarkIs|lexicon.MarkAdjective) || rd.Elems[k].Polite()) && !bounds.PluralAt(rd, k) && !rd.Elems[k].Plays(parser.Alike) {
			k--
		}
		if rd.At(k+1).Pause > 0 || !bounds.PluralAt(rd, k) && !rd.At(k).Plays(parser.Alike) || !gear.AsksFor(rd, parser.AskCutPlan) && !rd.AnyAt(rd.Is(gear.Far)) {
			continue
		}
		rd.Alter(i-1, func(t *scan.Term) { *t = scan.Term{} })
		Limited(rd, i)
		rd.Alter(k, func(t *scan.Term) { *t = scan.Term{Intent: parser.AskCutPlan, Besides: true} })
	}
}

// Limited makes the number at i the limit. One without its unit has the one that the
// numbers around it leave, or is led by a word, so that it is asked about: a bare 400
// is no mass yet.
func Limited(rd *reading.Reading, i int) {
	if fig := rd.Elems[i].Fig; fig.Unit == nil {
		fig.Lent(CapacityUnit(rd, i))
	}
	if fig := rd.Elems[i].Fig; fig.Unit == nil {
		fig.Lent(Kilograms(rd, i, parser.Limit))
	}
	if gear.Heavy(rd, i) {
		places.Claim(rd, i, parser.Limit)
		return
	}
	rd.Alter(i-1, func(t *scan.Term) { t.Roles = []scan.Role{{Field: parser.Limit, Side: lexicon.After, Soft: false}} })
}

// deniedTo finds the denial that what is wanted up to i is denied by, -1 for none:
// "dont want anything". The words of the bound may say themselves what is wanted: "go
// over".
func deniedTo(rd *reading.Reading, i int, will bool) int {
	for n := 0; i >= 0 && n < stops.Few; n++ {
		e := rd.Elems[i]
		switch {
		case rd.TermAt(i).Purpose && rd.TermAt(i).Ask == parser.Twist, Denial(rd, i) && will:
			return i // "dont want to"
		case Denial(rd, i):
			return -1
		case rd.Cued(e, lexicon.CueWilling):
			will = true
		case e.Pause > 0, e.Fig != nil, !e.Polite() && !e.Marked(lexicon.MarkIs|lexicon.MarkPronoun|lexicon.MarkArticle|lexicon.MarkUnsure) && !rd.TermAt(i).Unnamed:
			return -1
		}
		i--
	}
	return -1
}

// Denial says whether the word at i is still in doubt, and denies.
func Denial(rd *reading.Reading, i int) bool {
	t := rd.TermAt(i)
	return t.Ask == parser.Twist && !t.Fresh && (t.Denies || t.Lacks || t.Turning == parser.TurnsDenied)
}

package bounds

import (
	"strings"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/stops"
)

// "Each" beside what a piece may weigh says nothing more of a cut: "máximo 300 kg
// cada trozo, ¿cuántos cortes?".

// EachCut takes the doubt from such words.
func EachCut(rd *reading.Reading) {
	for i := range rd.Elems {
		if rd.Cued(rd.Elems[i], lexicon.CuePer) && mayWeigh(rd, i-1, -1) && (rd.TermAt(i+1).Unnamed || rd.Cued(rd.At(i+1), lexicon.CueLot)) {
			rd.Alter(i, func(t *scan.Term) { *t = scan.Term{} })
			rd.Alter(i+1, func(t *scan.Term) { *t = scan.Term{} })
		}
		if !rd.TermAt(i).Each {
			continue
		}
		left, right := rd.Past(i-1, -1, lexicon.MarkIs|lexicon.MarkBound|lexicon.MarkMade), pastBound(rd, i+1)
		under := rd.At(right-1).Plays(parser.Limit) && gear.Heavy(rd, right) // "each under 300 lb"
		if mayWeigh(rd, left, -1) || mayWeigh(rd, right, +1) || under || howEach(rd, i) {
			rd.Alter(i, func(t *scan.Term) { t.Ask, t.Each = "", false })
		}
	}
}

// APiece makes a limit of a number without a unit that is told for each piece of a cut, where
// none is told by its own words, "cut plan, 400 a piece", "en cortes, 400 cada uno", or where
// those stand right before it, "max 300 a chunk".
func APiece(rd *reading.Reading) {
	for i := range rd.Elems {
		fig, to := rd.At(i-1).Fig, apieceEnd(rd, i)
		led := rd.At(i-2).Plays(parser.Limit) && rd.At(i-2).Marked(lexicon.MarkBound)
		if to < 0 || fig == nil || fig.Told != "" || fig.Dim != parser.DimCount || fig.Unit != nil || fig.Low < leastLimit || !rd.EndsBreath(to) || !led && (!ofCuts(rd) || rd.Worded(parser.Limit)) {
			continue
		}
		cut := led && !ofCuts(rd) && rd.AnyAt(rd.Is(gear.Far))
		for k := i; k < to; k++ {
			rd.Elems[k].Term = &scan.Term{}
		}
		rd.Elems[i].Term = &scan.Term{Roles: []scan.Role{{Field: parser.Limit, Side: lexicon.Before}}}
		if cut {
			rd.Elems[to-1].Term = &scan.Term{Intent: parser.AskCutPlan, Besides: true, Roles: rd.Elems[to-1].Term.Roles}
		}
		return
	}
}

// apieceEnd is where the words at i end that say that the number before them is each
// piece's: "each", "a piece", "per chunk"; -1 where they say no such thing.
func apieceEnd(rd *reading.Reading, i int) int {
	one := func(k int) bool {
		t := rd.TermAt(k)
		return (t.Unnamed || t.Shape != "" || rd.Cued(rd.At(k), lexicon.CueLot)) && !PluralAt(rd, k)
	}
	leads := rd.At(i).Marked(lexicon.MarkArticle) || rd.TermAt(i).Each || rd.Cued(rd.At(i), lexicon.CuePer)
	switch {
	case leads && one(i+1):
		return i + 2
	case rd.TermAt(i).Each, rd.Cued(rd.At(i), lexicon.CueEach):
		return i + 1
	}
	return -1
}

// pastBound is what stands behind "each piece no more than".
func pastBound(rd *reading.Reading, i int) int {
	if rd.TermAt(i).Unnamed || rd.At(i).Piece() || rd.At(i).Polite() {
		i++
	}
	return rd.Past(i, +1, lexicon.MarkIs|lexicon.MarkBound|lexicon.MarkMade|lexicon.MarkAt)
}

// howEach says whether "each" at i only asks how long the pieces of a cut are: the
// answer tells of each. What they are cut from may stand behind, where nothing tells how
// long that is: "qué tan largo corto cada trozo de roble de 24 in".
func howEach(rd *reading.Reading, i int) bool {
	next := rd.Past(i+1, +1, lexicon.MarkArticle|lexicon.MarkIs)
	if rd.TermAt(next).Unnamed {
		next++
	}
	asked := Cuts(rd, i-1) || rd.Cued(rd.At(i-1), lexicon.CueCutting) || rd.At(i-1).Plays(parser.Length) && rd.At(i-1).Fig == nil && rd.At(i-2).Fig == nil
	return gear.AsksFor(rd, parser.AskCutPlan) && asked && (rd.EndsBreath(next) || LeadsToSize(rd, next) && !rd.AnyAt(rd.Is(gear.Far)))
}

// leastLimit is the least number without a unit that is taken for what a piece may
// weigh, and for no count.
const leastLimit = 50

// mayWeigh says whether the number at i is a limit of what pieces weigh: one of a
// cut that is asked about, or with the words of a limit on its far side.
func mayWeigh(rd *reading.Reading, i, step int) bool {
	if fig := rd.At(i).Fig; fig != nil && fig.Dim == parser.DimCount && fig.Unit == nil && ofCuts(rd) {
		return fig.Low >= leastLimit && !Turnable(rd, i+1)
	}
	if !gear.Heavy(rd, i) {
		return rd.At(i).Plays(parser.Limit) && gear.Heavy(rd, i+step)
	}
	k := i + step
	for rd.At(k).Polite() || rd.At(k).Marked(lexicon.MarkMade|lexicon.MarkIs|lexicon.MarkArticle) {
		k += step // "límite de hoy 150 kg por pieza"
	}
	return ofCuts(rd) || rd.At(k).Plays(parser.Limit)
}

// ofCuts says whether a message asks for a cut plan, or goes on from one.
func ofCuts(rd *reading.Reading) bool {
	return gear.AsksFor(rd, parser.AskCutPlan) || rd.Before.Intent == parser.AskCutPlan
}

// CutInto reads "in 400 lb chunks" as what each piece may weigh, where how long the
// wood is, or how long a piece may be, is told or asked.
func CutInto(rd *reading.Reading) {
	for i := range rd.Elems {
		behind := rd.Past(i+1, +1, lexicon.MarkAdjective)
		if !gear.Heavy(rd, i) || !rd.At(i-1).Marked(lexicon.MarkIn) && !Cuts(rd, i-1) || !PluralAt(rd, behind) || !gear.AsksFor(rd, parser.AskCutPlan) && !rd.AnyAt(rd.Is(gear.Far)) {
			continue
		}
		places.Claim(rd, i, parser.Limit)
		rd.Alter(behind, func(t *scan.Term) { *t = scan.Term{Intent: parser.AskCutPlan, Besides: true} })
		return
	}
}

// FromTop reads "dime dónde cortar desde arriba" as the end that is cut first.
func FromTop(rd *reading.Reading) {
	if !gear.AsksFor(rd, parser.AskCutPlan) && !(rd.Before.Intent == parser.AskCutPlan && !rd.AnyAt(func(i int) bool { return rd.Elems[i].Fig != nil })) {
		return
	}
	for i, e := range rd.Elems {
		if e.Term != nil && rd.Cued(e, lexicon.CueFromTop) && e.Term.Note == "" && rd.At(i-1).Fig == nil {
			rd.Alter(i, func(t *scan.Term) { *t = scan.Term{Note: fromTip} })
		}
	}
}

// EndOfPlan says whether a message of a talk about a cut plan tells at which end the stick is
// cut first, whatever courtesy stands beside it: "ok but start from the top obviously".
func EndOfPlan(rd *reading.Reading) bool {
	return rd.Before.Intent == parser.AskCutPlan && rd.AnyAt(func(i int) bool { return rd.TermAt(i).Note == fromTip })
}

// fromTip is the note of a stick that is cut from its thin end.
const fromTip = "from-tip"

// LongerUp reads "do they get longer going up" and "or do they have to be shorter", of
// pieces that have a limit, as a question for a plan: it says how long each is.
func LongerUp(rd *reading.Reading) {
	if !gear.AsksFor(rd, parser.AskCutPlan) && !rd.Worded(parser.Limit) {
		return
	}
	for i := range rd.Elems {
		if t := rd.TermAt(i); t.Ask != parser.Twist || t.Turning != parser.TurnsCompared || !rd.Cued(rd.Elems[i], lexicon.CueLength) {
			continue
		}
		next := rd.Past(i+1, +1, lexicon.MarkAdverb|lexicon.MarkErect)
		if e := rd.At(next); e.Fig == nil && rd.At(i-1).Fig == nil && !e.Piece() && !rd.TermAt(next).Unnamed && !rd.Cued(e, lexicon.CueSoThat) && !rd.Cued(e, lexicon.CueThan) {
			if k := rd.Past(i+1, +1, lexicon.MarkRelation|lexicon.MarkArticle|lexicon.MarkAt); k > i+1 && rd.TermAt(k).Shape == parser.Limb {
				rd.Elems[k].Term = &scan.Term{} // "towards the top"
			}
			if !gear.AsksFor(rd, parser.AskCutPlan) {
				rd.Alter(i, func(t *scan.Term) { *t = scan.Term{Intent: parser.AskCutPlan} })
			}
		}
	}
}

// Cuts says whether the words at i ask how a piece is cut: "cut it in".
func Cuts(rd *reading.Reading, i int) bool { return rd.TermAt(i).Intent == parser.AskCutPlan }

// PluralAt says whether the element at i is pieces, whatever they are called.
func PluralAt(rd *reading.Reading, i int) bool {
	e := rd.At(i)
	return e.Term != nil && (e.Term.Unnamed || e.Term.Shape != "") && strings.HasSuffix(strings.Fields(scan.Fold(rd.Text[e.Start:e.End]))[0], "s")
}

// LeadsToSize says whether a size, a tree or a word that leads to them stands at i.
func LeadsToSize(rd *reading.Reading, i int) bool {
	return rd.At(i).Marked(lexicon.MarkMade) || rd.TermAt(rd.Past(i, +1, lexicon.MarkRelation|lexicon.MarkArticle)).Tree != nil || rd.At(i).Fig != nil
}

// Mass says whether the number at i is one, or may be one without its unit.
func Mass(rd *reading.Reading, i int) bool {
	fig := rd.Elems[i].Fig
	return gear.Heavy(rd, i) || fig != nil && fig.Dim == parser.DimCount && fig.Unit == nil && fig.Low >= leastLimit && !Turnable(rd, i+1)
}

// Betweens reads "between 14 and 16 in" as one range. How far apart nobody is who has
// not weighed it: "pesa entre 100 y 400 kg" is one weight, and the heavier end counts.
func Betweens(rd *reading.Reading) {
	const sizes, weights = 2, 6
	weighs := func(i int) bool { return rd.At(i).Plays(parser.Weight) }
	for i := 0; i+3 < len(rd.Elems); i++ {
		e := rd.Elems[i : i+4]
		if !e[0].Marked(lexicon.MarkBetween) || e[1].Fig == nil || !e[2].Marked(lexicon.MarkAnd) || e[3].Fig == nil {
			continue
		}
		a, b := *e[1].Fig, *e[3].Fig
		if a.Unit == nil && b.Unit != nil {
			a.Unit, a.Dim = b.Unit, b.Dim
			a.Low, a.High = a.Low*b.Unit.Factor, a.High*b.Unit.Factor
		}
		most := float64(sizes)
		switch {
		case weighs(i-1) && b.Dim == parser.DimMass && a.Low > 0:
			most = b.Low / a.Low
		case weighs(i-1) && b.Unit == nil && b.Dim == parser.DimCount && a.Low >= leastLimit:
			most = weights
		}
		if a.Unit != b.Unit || a.Low > b.Low || b.Low > most*a.Low {
			continue // two ends so far apart are rather two things
		}
		a.High, a.End = b.High, b.End
		e[0] = reading.Element{Start: a.Start, End: a.End, Fig: &a}
		rd.Elems = append(rd.Elems[:i+1], rd.Elems[i+4:]...)
	}
}

// WeighedSo says whether the numbers at i and behind it are what something weighs: in
// pounds or kilograms, or where a word for it leads to them.
func WeighedSo(rd *reading.Reading, i int) bool {
	next := rd.At(i + 2)
	if next.Fig != nil && next.Pause == 0 && rd.At(i+1).Pause == 0 {
		return false
	}
	if u := rd.Elems[i+1].Fig.Unit; u != nil {
		piece := i + 2
		if rd.TermAt(piece).Tree != nil && rd.At(piece+1).Piece() {
			piece++ // "two fifty pound oak log": two of them would be logs, and one may be of eighty
		}
		one := (rd.At(i-1).Marked(lexicon.MarkArticle) || rd.Elems[i].Fig.Low >= 2) && rd.TermAt(piece).Shape != "" && !PluralAt(rd, piece)
		return (u == scan.Pound || u == scan.UnitNamed["kilogram"]) && (one || rd.EndsBreath(i+2) || !next.Piece() && gear.Part(next) == "" && !rd.TermAt(i+2).Unnamed)
	}
	if next.Pause == 0 && next.Plays(parser.Limit) && rd.At(i+3).Fig == nil {
		return true // "a two fifty limit"
	}
	if !rd.EndsBreath(i+2) && (len(rd.TermAt(i+2).Roles) > 0 || next.Piece() || gear.Part(next) != "" || rd.TermAt(i+2).Unnamed || next.Marked(lexicon.MarkUnit|lexicon.MarkThick)) {
		return false
	}
	k := i - 1
	for rd.TermAt(k).Note == "about" || rd.At(k).Marked(lexicon.MarkIs) && !rd.At(k).Plays(parser.Weight) {
		k--
	}
	return rd.At(k).Plays(parser.Weight) || rd.At(k).Plays(parser.Limit) || k < i-1 && (rd.At(k).Piece() || rd.TermAt(k).Unnamed)
}

// Turnable says whether something stands at i that a word beside it could turn.
func Turnable(rd *reading.Reading, i int) bool {
	e, t := rd.At(i), rd.TermAt(i)
	counted := e.Plays(parser.Wraps) || e.Plays(parser.People) || e.Plays(parser.Parts) || e.Plays(parser.Legs) || e.Plays(parser.Redirects)
	return e.Fig != nil || e.Cross || e.Piece() || t.Unnamed || e.Marked(lexicon.MarkUnit) || counted || stops.Kit(rd, i) || t.Block != "" || t.Stop != "" || t.Units != ""
}

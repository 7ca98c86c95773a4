package heights

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/sizes"
	"heft/parser/turning"
)

// A long length that something is lowered "from", or that the piece hangs "at",
// is the height of the hitch, though no word names it.

// Heights claims it where the message lowers and tells no hitch in its own
// words.
func Heights(rd *reading.Reading) {
	cutHere(rd)
	tallPiece(rd)
	cutTo(rd)
	if rd.AnyAt(rd.Is(sizes.Hitched)) {
		return
	}
	at := rd.Only(rd.Is(plainHeight)) // two heights are rather two things
	if at >= 0 {
		places.Claim(rd, at, parser.HitchHeight)
	}
}

// ALower reads "a 12 m lower" as how high what is lowered hangs.
func ALower(rd *reading.Reading, i int) bool {
	return gear.Far(rd, i) && rd.At(i-1).Marked(lexicon.MarkArticle) && rd.At(i+1).Marked(lexicon.MarkAttribute) && rd.EndsBreath(i+2)
}

// cutHere takes what a cut plan asks for, "dónde corto", behind a thickness for the
// place where that was measured: "8 pulgadas donde corto".
func cutHere(rd *reading.Reading) {
	for i := range rd.Elems {
		if rd.TermAt(i).Intent == parser.AskCutPlan && rd.At(i).LooksBack(parser.ButtDiameter) && rd.At(i-1).Fig.Short() {
			rd.Alter(i, func(t *scan.Term) { t.Intent = "" })
		}
	}
}

// cutTo reads "this chunk is 3 ft across and i'm cutting it at 4 ft", where only its
// weight is asked: how long it comes off. Of what still stands, it is where it is cut.
func cutTo(rd *reading.Reading) {
	const longest = 2 // in metres: more is rather a height
	chunk := func(i int) bool {
		return !rd.Elems[i].Marked(lexicon.MarkStanding) && (rd.TermAt(i).Shape == parser.Log || rd.TermAt(i).Unnamed)
	}
	if !gear.AsksFor(rd, parser.AskWeight) || !rd.AnyAt(chunk) || rd.AnyAt(func(i int) bool {
		return rd.Elems[i].Marked(lexicon.MarkStanding) || sizes.Hitched(rd, i) || gear.Beside(rd, i, parser.Length)
	}) {
		return
	}
	for i := range rd.Elems {
		j := rd.Past(i-2, -1, lexicon.MarkPronoun|lexicon.MarkArticle)
		cut := rd.Cued(rd.At(j), lexicon.CueCutting) && (j < i-2 || cutsIt(rd, j))
		if gear.Far(rd, i) && rd.At(i-1).Marked(lexicon.MarkAt) && cut && rd.Elems[i].Fig.High <= longest && rd.EndsBreath(i+1) {
			places.Claim(rd, i, parser.Length)
			return
		}
	}
}

// cutsIt says whether the word at i is of a verb that has its "it" before it: "lo
// cortamos a".
func cutsIt(rd *reading.Reading, i int) bool {
	return rd.At(i - 1).Marked(lexicon.MarkPronoun | lexicon.MarkArticle)
}

// tallPiece reads how high a piece is that only its weight is asked of as how long
// it is: "cuánto pesa la punta, 8 pulgadas en el corte y 20 pies de alto".
func tallPiece(rd *reading.Reading) {
	shaped, thick, at := false, false, -1
	for i, e := range rd.Elems {
		shaped = shaped || rd.TermAt(i).Shape != ""
		thick = thick || e.Fig.Short() && !gear.OfRope(rd, i)
		switch {
		case gear.Far(rd, i) && at >= 0:
			return
		case gear.Far(rd, i):
			at = i
		}
	}
	if at < 0 || !rd.At(at+1).Marked(lexicon.MarkHigh) || rd.At(at-1).Marked(lexicon.MarkAt) || rd.In.Leads[rd.Word(rd.At(at-1))] || !gear.AsksFor(rd, parser.AskWeight) {
		return
	}
	if shaped && thick && !rd.AnyAt(func(k int) bool { return k != at+1 && turning.BesidesWeight(rd, k) }) {
		rd.Alter(at+1, func(t *scan.Term) {
			*t = scan.Term{Roles: []scan.Role{{Field: parser.Length, Side: lexicon.Before, Soft: false}}}
		})
	}
}

// lowest is the least that a bare "from 10 ft" is taken for a height, in metres:
// what is less is rather the length of a piece.
const lowest = 2.4

// plainHeight says whether the number at i is led to by "from" or "at" and is
// nobody else's.
func plainHeight(rd *reading.Reading, i int) bool {
	fig, lead := rd.Elems[i].Fig, rd.At(i-1)
	if !fig.Far() || fig.Elsewhere || fig.Told != "" || fig.Sure != "" || fig.Claimed != "" || fig.Low < lowest || lead.Term == nil {
		return false
	}
	if ALower(rd, i) || places.OnlyRope(rd) && (hung(rd, i) || rd.Elems[i-1].Marked(lexicon.MarkAt) && ofRopeQuestion(rd, i)) {
		return true
	}
	word := scan.Fold(rd.Text[lead.Start:lead.End])
	if !rd.In.Leads[word] || goesOn(rd, i+1) {
		return false
	}
	if lead.Marked(lexicon.MarkAt) {
		return hangsAt(rd, rd.Past(i-2, -1, lexicon.MarkAdverb|lexicon.MarkArticle))
	}
	lowers := gear.AsksFor(rd, parser.AskLower) || gear.AsksFor(rd, parser.AskDrop) || gear.AsksFor(rd, parser.AskBlockLoad)
	return lowers && (!lead.Marked(lexicon.MarkMade) || gear.Heavy(rd, i-2) && !bounded(rd, i-2)) // "bajar 500 kg de 12 m", not "un tronco de 12 m"
}

// hung reads "rope for an 85 ft block": how high the block hangs.
func hung(rd *reading.Reading, i int) bool {
	next := rd.At(i + 1)
	return gear.Part(next) == lexicon.PartBlock && gear.Strength(rd.At(i+2)) == "" && !parser.Redirecting(next.Term.Block)
}

// ofRopeQuestion reads "how much rope for a 3:1 at 45 ft", where the number before
// it is of the tackle or the rope.
func ofRopeQuestion(rd *reading.Reading, i int) bool {
	j := rd.Past(i-1, -1, lexicon.MarkAt|lexicon.MarkArticle)
	e := rd.At(j)
	return !goesOn(rd, i+1) && (e.Fig != nil && e.Fig.Dim == parser.DimRatio || e.Plays(parser.Parts) || e.Term != nil && ReachAsked(rd, j))
}

// bounded says whether the mass at i is told as what gear may carry rather than
// as what is lowered: "límite 900 libras".
func bounded(rd *reading.Reading, i int) bool {
	e := rd.At(rd.Past(i-1, -1, lexicon.MarkIs|lexicon.MarkMade))
	return e.Marked(lexicon.MarkBound|lexicon.MarkRating) || e.Term != nil && len(e.Term.Roles) > 0 && !e.Plays(parser.Weight)
}

// hangsAt says whether what stands before "at" is the piece or its lowering:
// "limb at 30 ft", "22 ft at 35 ft"; not "cut at 12 ft".
func hangsAt(rd *reading.Reading, i int) bool {
	e := rd.At(i)
	lowers := gear.AsksFor(rd, parser.AskLower) || gear.AsksFor(rd, parser.AskDrop) || gear.AsksFor(rd, parser.AskBlockLoad)
	switch {
	case gear.Far(rd, i):
		return rd.AnyAt(func(k int) bool { return rd.Elems[k].Fig.Short() })
	case !lowers:
		return false
	}
	return e.Piece() || gear.Heavy(rd, i) || e.Plays(parser.Wraps) || e.Term != nil && (e.Term.Intent == parser.AskLower || e.Term.Intent == parser.AskDrop)
}

// goesOn says whether what stands at i makes something else of the number
// before it: the piece, a place, another role.
func goesOn(rd *reading.Reading, i int) bool {
	e := rd.At(i)
	if e.Term == nil {
		return e.Fig != nil
	}
	return e.Piece() || e.Cross || len(e.Term.Roles) > 0 && !e.LooksBack(parser.HitchHeight) || e.Marked(lexicon.MarkRelation|lexicon.MarkPlace|lexicon.MarkPart|lexicon.MarkOutward|lexicon.MarkAside|lexicon.MarkMade)
}

// HitchBeforeRope reads "block at 12 m rope breaks at 60 kN" without the comma: the
// height is the block's where the rope behind it has a strength of its own.
func HitchBeforeRope(rd *reading.Reading) {
	for i := range rd.Elems {
		lead, rope := rd.At(i-1), rd.At(i+1)
		if !gear.Far(rd, i) || rd.Elems[i].Fig.Told != "" || lead.Term == nil || !lead.Term.Leads || !lead.LeadsTo(parser.HitchHeight) || !rope.Marked(lexicon.MarkCord) {
			continue
		}
		rated := rd.At(rd.Past(i+2, +1, lexicon.MarkIs|lexicon.MarkMade|lexicon.MarkRating))
		if gear.Strength(rated) != "" || rated.Fig != nil && rated.Fig.Dim != parser.DimCount && gear.Rates(rated.Fig) {
			rd.Elems[i].Fig.Told = parser.HitchHeight
		}
	}
}

// ReachAsked says whether the element at i asks for the reach of a rope, or
// names one.
func ReachAsked(rd *reading.Reading, i int) bool {
	return rd.TermAt(i).Intent == parser.AskRope || rd.Elems[i].Plays(parser.RopeLength)
}

package turning

import (
	"slices"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/stops"
)

// "Per" asks for one of what is told of: "load per leg", "how much per metre". Behind a
// number it says whose that is, and stays in doubt.

// Per takes the doubt from the word at i before a leg of those that are told of.
func Per(rd *reading.Reading, i int) {
	prev := rd.At(i - 1)
	if prev.Fig != nil || prev.Plays(parser.Wraps) || prev.Plays(parser.Weight) && gear.Heavy(rd, i-2) || gear.Strength(prev) != "" || stops.Kit(rd, i-1) {
		return
	}
	switch {
	case legAt(rd, i+1):
		rd.Alter(i, func(t *scan.Term) { *t = scan.Term{Marks: lexicon.MarkArticle} })
	case perLength(rd, i) && ofStem(rd):
		one := rd.In.Units[rd.Word(rd.At(i+1))]
		fig := &reading.Figure{Low: one.Factor, High: one.Factor, Unit: one, Dim: parser.DimLength, Claimed: parser.Length, Elsewhere: true, Start: rd.Elems[i].Start, End: rd.Elems[i+1].End}
		rd.Elems = slices.Replace(rd.Elems, i, i+2, reading.Element{Start: fig.Start, End: fig.End, Fig: fig}) // a foot of it, or a metre
	}
}

// ofStem says whether the piece is told as a log or the like: it is as thick all along as
// where it was measured, so that one foot weighs what the next does.
func ofStem(rd *reading.Reading) bool {
	log, limb := false, false
	for i := range rd.Elems {
		log, limb = log || rd.TermAt(i).Shape == parser.Log, limb || rd.TermAt(i).Shape == parser.Limb
	}
	return log && !limb
}

// legAt says whether what stands at i, and nothing behind it, is one of the legs that
// the message tells of elsewhere.
func legAt(rd *reading.Reading, i int) bool {
	leg := func(k int) bool {
		return rd.Elems[k].Marked(lexicon.MarkTwins|lexicon.MarkBridle) || rd.Elems[k].Plays(parser.Legs)
	}
	one := rd.Cued(rd.At(i), lexicon.CueOneLeg) || i < len(rd.Elems) && leg(i)
	return one && rd.At(i+1).Fig == nil && rd.AnyAt(func(k int) bool { return k != i && leg(k) })
}

// perLength says whether the word at i asks for what a foot or a metre of a stick weighs
// whose thickness is told, and no length: one of them is what to type.
func perLength(rd *reading.Reading, i int) bool {
	u, per := rd.In.Units[rd.Word(rd.At(i+1))], rd.Cued(rd.At(i), lexicon.CuePer)
	if !per || u == nil || u.Dim != parser.DimLength || u.Fine || !rd.At(i+1).Marked(lexicon.MarkUnit) && !rd.EndsBreath(i+2) || rd.At(i-1).Fig != nil {
		return false
	}
	thick := 0
	for k, e := range rd.Elems {
		switch in := rd.TermAt(k).Intent; {
		case in != "" && in != parser.AskWeight && !rd.TermAt(k).Besides, stops.Kit(rd, k), e.Plays(parser.Length), gear.Far(rd, k):
			return false
		case e.Fig != nil && (places.FineAt(rd, k) || rd.At(k+1).Plays(parser.Diameter)):
			thick++
		case e.Fig != nil:
			return false
		}
	}
	return thick == 1
}

// WrapRule says whether it is asked of wraps by the pound, "1 wrap per 200 lb, is that a
// thing", and of no piece.
func WrapRule(rd *reading.Reading) bool {
	rule, other := false, false
	for i, e := range rd.Elems {
		k := rd.Past(i+1, +1, lexicon.MarkTrailing|lexicon.MarkRelation)
		if rd.Cued(rd.At(k), lexicon.CueFor) {
			k++
		}
		per := rd.Cued(rd.At(k), lexicon.CuePer) || rd.Cued(rd.At(k), lexicon.CueEvery)
		rule = rule || (e.Plays(parser.Wraps) || rd.TermAt(i).Intent == parser.AskLower) && per && gear.Heavy(rd, k+1)
		other = other || e.Piece() || rd.TermAt(i).Unnamed || e.Plays(parser.People) && rd.At(i-1).Fig != nil || e.Fig != nil && e.Fig.Dim == parser.DimLength
	}
	return rule && !other && !rd.AnyAt(func(i int) bool {
		return gear.Heavy(rd, i) && !rd.Cued(rd.At(i-1), lexicon.CuePer) && !rd.Cued(rd.At(i-1), lexicon.CueEvery)
	})
}

package gear

import (
	"slices"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// StrengthNamed is the gear whose strength a number is told to be by that name, right
// before or behind it: "6,000 lb rope strength", "a block strength of 8,000 lb". Which of
// the two strengths on its label is meant is asked; the number is no piece's weight.
func StrengthNamed(rd *reading.Reading, i int) scan.Part {
	p, end := strengthNamed(rd, i+1, +1)
	if p != "" && rd.At(rd.Past(end+1, +1, lexicon.MarkIs|lexicon.MarkRelation)).Fig == nil {
		return p // the number behind would be the strength
	}
	p, _ = strengthNamed(rd, rd.Past(i-1, -1, lexicon.MarkIs|lexicon.MarkRelation|lexicon.MarkArticle), -1)
	return p
}

// strengthNamed is the gear of "rope strength" that begins at i, or ends there, read forth or
// back, and where it ends.
func strengthNamed(rd *reading.Reading, i, step int) (scan.Part, int) {
	named := func(k int) bool { return rd.Cued(rd.At(k), lexicon.CueStrength) }
	switch e := rd.At(i); {
	case Part(e) != "" && e.Marked(lexicon.MarkRating) && named(i):
		return Part(e), i
	case step > 0 && Part(e) != "" && named(i+1):
		return Part(e), i + 1
	case step < 0 && named(i) && Part(rd.At(i-1)) != "":
		return Part(rd.At(i - 1)), i - 1
	}
	return "", i
}

// GoodForPastLimit is the gear that is told to be good for the number at i, "limit 600 lb,
// rope 9/16 good for 13,000 lb", where what a piece may weigh is told to be less: it is
// no load then.
func GoodForPastLimit(rd *reading.Reading, i int) scan.Part {
	past := func(k int) bool {
		lim := rd.Elems[k].Fig
		named := rd.At(rd.Past(k-1, -1, lexicon.MarkIs)).LeadsTo(parser.Limit) || rd.At(k+1).Plays(parser.Limit)
		return lim != nil && k != i && named && lim.High < rd.Elems[i].Fig.Low
	}
	if !rd.AnyAt(past) {
		return ""
	}
	if !rd.TermAt(i-1).Bears && !GoodFor(rd, i) {
		return ""
	}
	return goodFor(rd, i)
}

// goodFor is the gear that is told to be good for the number at i; how thick it is may
// stand between.
func goodFor(rd *reading.Reading, i int) scan.Part {
	k := i - 1
	for k > 0 && Part(rd.At(k)) == "" && (k == i-1 || rd.At(k).Fig.Short() || rd.At(k).Fig != nil && OfRope(rd, k) || rd.At(k).Marked(lexicon.MarkIs|lexicon.MarkArticle)) {
		k--
	}
	return Part(rd.At(k))
}

// GoodForInJob asks which strength the number is that a job's line says gear is good for,
// with no limit in sight: a job has no load, though it may have a tree. It is nil where nothing is told so.
func GoodForInJob(rd *reading.Reading, q *parser.Question) *parser.Ask {
	load, told := q.Get(parser.Weight)
	if !told || q.Shape != nil || q.Has(parser.Across...) || q.Has(parser.Length) {
		return nil
	}
	for i, e := range rd.Elems {
		if e.Fig == nil || e.Fig.Start != load.Start {
			continue
		}
		p := goodFor(rd, i)
		if p == "" || !rd.TermAt(i-1).Bears && !saysGoodFor(rd, i) {
			return nil // beside other figures of gear too: none of them is a load
		}
		q.Quantities = slices.DeleteFunc(slices.Clone(q.Quantities), func(x parser.Quantity) bool { return x.Field == parser.Weight })
		a := e.Fig.Ask(parser.WhichStrength, rd.Text)
		a.Fields = Both(p)
		return a
	}
	return nil
}

package talk

import (
	"slices"
	"strings"
	"unicode"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// LeftOfJob takes what a job's message tells of the surroundings out of its question, to be
// said back as not kept: "over the roof", "fence on the north side 3 m from the trunk". No
// number of theirs is one of the job.
func LeftOfJob(rd *reading.Reading, q *parser.Question) {
	for i, e := range rd.Elems {
		around := e.Marked(lexicon.MarkPlace) || e.Marked(lexicon.MarkObstacle)
		if !around || e.Fig != nil || rd.CuedAs(rd.Text[e.Start:e.End], lexicon.CueTheTree) || e.Marked(lexicon.MarkGear) || rd.TermAt(i).Tree != nil || q.Site != nil && within(*q.Site, e.Start) || left(q.Left, e.Start) {
			continue
		}
		from, to := surroundings(rd, *q, i)
		if words := rd.Text[from:to]; words != "" {
			q.Left = append(q.Left, parser.Said[string]{Value: words, Words: words, Start: from, End: to})
			q.Quantities = slices.DeleteFunc(slices.Clone(q.Quantities), func(x parser.Quantity) bool { return from <= x.Start && x.End <= to })
			q.Passed = slices.DeleteFunc(slices.Clone(q.Passed), func(p parser.Said[string]) bool { return from <= p.Start && p.End <= to })
		}
	}
}

// GearLeft takes gear that a job's message names, and of which it tells no strength, to be said
// back as not kept, with its size: "big block and a 5/8 sling". Nothing is worked out by those.
func GearLeft(rd *reading.Reading, q *parser.Question) {
	for _, e := range rd.Elems {
		p := gear.Part(e)
		doubted := func(f parser.Field) bool { return slices.Contains(q.InDoubt, f) }
		if slices.ContainsFunc(gear.Both(p), doubted) || p == "" || p == lexicon.PartRope || q.Has(gear.Both(p)...) || left(q.Left, e.Start) {
			continue
		}
		from, to := rd.Span(e.Start, func(o reading.Element) bool { return o.Pause > 0 || o.Marked(lexicon.MarkAnd) })
		told := rd.AnyAt(func(k int) bool {
			o := rd.Elems[k]
			return from <= o.Start && o.End <= to && (o.Fig != nil || rd.TermAt(k).Note != "" || rd.TermAt(k).Tree != nil)
		})
		if told {
			continue // a strength that is asked about, or how it is rigged
		}
		if from, to = withoutCourtesy(rd, from, to); from < to {
			words, inside := rd.Text[from:to], func(p parser.Said[string]) bool { return from <= p.Start && p.End <= to }
			q.Left = append(slices.DeleteFunc(slices.Clone(q.Left), inside), parser.Said[string]{Value: words, Words: words, Start: from, End: to})
			q.Passed = slices.DeleteFunc(slices.Clone(q.Passed), inside)
		}
	}
}

func within(s parser.Said[string], at int) bool { return s.Start <= at && at < s.End }

func left(all []parser.Said[string], at int) bool {
	return slices.ContainsFunc(all, func(s parser.Said[string]) bool { return within(s, at) })
}

// surroundings is the stretch that tells of a thing of the surroundings: from the words before
// it that say where, to the next that the job keeps.
func surroundings(rd *reading.Reading, q parser.Question, i int) (from, to int) {
	kept := func(e reading.Element) bool {
		ofJob := slices.ContainsFunc(q.Quantities, func(x parser.Quantity) bool {
			return x.Start < e.End && e.Start < x.End && (slices.Contains(OfJob, x.Field) || x.Field == parser.HitchHeight)
		})
		names := func(f parser.Field) bool { return e.Plays(f) }
		return e.Pause > 0 || ofJob || e.Term != nil && e.Term.Tree != nil || slices.ContainsFunc(OfJob, names) || names(parser.HitchHeight)
	}
	from, to = rd.Span(rd.Elems[i].Start, kept)
	return withoutCourtesy(rd, from, to)
}

// withoutCourtesy is a stretch without what is polite at its end, "please", and without
// what is no word at either.
func withoutCourtesy(rd *reading.Reading, from, to int) (int, int) {
	first := strings.TrimLeftFunc(rd.Text[from:to], wordless)
	for k := len(rd.Elems) - 1; k >= 0; k-- {
		e := rd.Elems[k]
		if courtesy(rd, k) && to-len(first) < e.Start && e.Start < to && strings.TrimFunc(rd.Text[min(e.End, to):to], wordless) == "" {
			to, first = e.Start, first[:len(first)-(to-e.Start)]
		}
	}
	said := strings.TrimLeftFunc(rd.Text[from:to], wordless)
	from = to - len(said)
	return from, from + len(strings.TrimRightFunc(said, wordless))
}

// courtesy says whether the words at i are said for politeness alone: "please", and none that
// tells who somebody is or what they do.
func courtesy(rd *reading.Reading, i int) bool {
	t := rd.TermAt(i)
	return rd.At(i).Polite() && !t.Chatter && !t.Someone && !t.Human && len(rd.In.Cues[rd.Word(rd.At(i))]) == 0
}

// wordless is what stands between words, and no part of them.
func wordless(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) }

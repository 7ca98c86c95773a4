package talk

import (
	"slices"
	"strings"
	"unicode"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// LeftOfJob takes what a job's message tells of the surroundings out of its question, to be
// said back as not kept: "over the roof", "fence on the north side 3 m from the trunk". No
// number of theirs is one of the job.
func LeftOfJob(rd *reading.Reading, q *parser.Question) {
	for i, e := range rd.Elems {
		around := e.Marked(lexicon.MarkPlace) || e.Marked(lexicon.MarkObstacle)
		if !around || e.Fig != nil || rd.In.Cued(scan.Fold(rd.Text[e.Start:e.End]), lexicon.CueTheTree) || e.Marked(lexicon.MarkGear) || rd.TermAt(i).Tree != nil || q.Site != nil && within(*q.Site, e.Start) || left(q.Left, e.Start) {
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
	for k := len(rd.Elems) - 1; k > i; k-- { // "please"
		if e := rd.Elems[k]; e.Polite() && from <= e.Start && strings.TrimFunc(rd.Text[e.End:max(e.End, to)], wordless) == "" {
			to = min(to, e.Start)
		}
	}
	said := strings.TrimLeftFunc(rd.Text[from:to], wordless)
	from = to - len(said)
	return from, from + len(strings.TrimRightFunc(said, wordless))
}

// wordless is what stands between words, and no part of them.
func wordless(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) }

package parser

import "slices"

// Some words of talk could matter in another company: "plenty", "other". They
// are left out and said back, but asked about right beside a number that has no
// unit, whose they could be.

// overlook leaves out the word at i. One that may tell how something is, "ugly",
// is left out only where it stands beside nothing that it could change.
func (rd *reading) overlook(i int) {
	if rd.termAt(i).perhaps && !rd.idle(i) {
		rd.alter(i, func(t *term) { t.ask = Unknown })
		return
	}
	if p := rd.past(i-1, -1, markArticle|markAt); rd.termAt(i).oneEnd && rd.endOf(p) && rd.anyAt(func(k int) bool { return k != p && rd.endOf(k) }) {
		return // "5 the other"
	}
	e := rd.elems[i]
	for _, near := range []element{rd.at(i - 1), rd.at(i + 1)} {
		if near.fig != nil && near.fig.dim == dimCount {
			rd.alter(i, func(t *term) { t.ask = Unknown })
			return
		}
	}
	words := rd.text[e.start:e.end]
	rd.passed = append(rd.passed, Said[string]{Value: words, Words: words, Start: e.start, End: e.end})
	rd.elems[i].term = &term{chatter: true, body: e.term.body} // "banged up his elbow" stays what it is
}

// passedOutside is what is left out and said back that stands in none of some
// parts of the text: each of those is read by itself, and says what it leaves out.
func (rd *reading) passedOutside(parts []Said[string]) []Said[string] {
	return slices.DeleteFunc(slices.Clone(rd.passed), func(p Said[string]) bool {
		return slices.ContainsFunc(parts, func(part Said[string]) bool { return p.Start >= part.Start && p.End <= part.End })
	})
}

// between says back the words of talk that stand inside a spelling, where they
// could bear on it: "how awkward long".
func (r *Reader) between(rd *reading, t *term, words []string, run []word) {
	for i := 1; i < len(run)-1; i++ {
		if said := rd.in.talk(words[i]); said == nil || !said.overlook {
			continue
		}
		if x, n := r.lex.spelled(slices.Delete(slices.Clone(words), i, i+1), rd.in); x == t && n == len(words)-1 {
			typed := rd.text[run[i].start:run[i].end]
			rd.passed = append(rd.passed, Said[string]{Value: typed, Words: typed, Start: run[i].start, End: run[i].end})
		}
	}
}

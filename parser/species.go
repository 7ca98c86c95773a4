package parser

import (
	"slices"
	"strings"
)

// fillSpecies takes the tree. A name that several trees share is asked back,
// unless the crew says that any of them will do, or names one of them too.
func (r *Reader) fillSpecies(rd *reading, q *Question) *Ask {
	var found []element
	for i, e := range rd.elems {
		if e.term == nil || e.term.tree == nil {
			continue
		}
		if i > 0 && rd.elems[i-1].marked(markUnsure) && genus(e.term.tree.sci) {
			t := *e.term.tree
			t.others = nil
			e.term = &term{tree: &t}
		}
		found = append(found, e)
	}
	best := -1
	for i, e := range found {
		if best < 0 || narrows(e.term.tree, found[best].term.tree) {
			best = i
			continue
		}
		if e.term.tree.sci != found[best].term.tree.sci && !narrows(found[best].term.tree, e.term.tree) {
			if a, b, ok := rd.eitherTrees(); ok {
				return r.whichOf(rd, a, b)
			}
			return rd.clash(e, SpeciesField)
		}
	}
	if best < 0 {
		return nil
	}
	e := found[best]
	if t := e.term.tree; len(t.others) > 0 {
		return r.whichTree(rd, e)
	}
	q.Species = said(rd, e, Species{Scientific: e.term.tree.sci, Name: r.nameIn(rd, e.term.tree)})
	return nil
}

// eitherTree asks about a word that is not known, and how many words it takes.
// Before "or" and a tree it can be short for another: "red or white oak".
func (r *Reader) eitherTree(rd *reading, words []string, run []word) (*Ask, int) {
	if len(words) > 2 && rd.in.joins[words[1]] == or {
		b, n := r.lex.find(words[2:], rd.in)
		for last := 2 + n - 1; last >= 2; last-- { // "white oak", "oak"
			a, m := r.lex.find(append([]string{words[0]}, words[last:2+n]...), rd.in)
			if a == nil || a.tree == nil || b.tree == nil || m != 1+2+n-last {
				continue
			}
			ask := askAt(WhichTree, rd.text, run[0].start, run[1+n].end-run[0].start)
			ask.Fields, ask.Either = []Field{SpeciesField}, true
			for _, t := range []*tree{a.tree, b.tree} {
				one := t.others
				if len(one) == 0 {
					one = []string{t.sci}
				}
				for _, sci := range one {
					ask.Choices = append(ask.Choices, Choice{Words: r.callIt(rd.in, sci), Scientific: sci})
				}
			}
			return ask, 2 + n
		}
	}
	return askAt(Unknown, rd.text, run[0].start, run[0].end-run[0].start), 1
}

// anyOfThem drops the ask which of several trees it is where nothing hangs on it:
// the weight is told, "900 lb spruce top", or only a balance point is asked for.
func (r *Reader) anyOfThem(rd *reading, q *Question, a *Ask) *Ask {
	if a == nil || a.Kind != WhichTree {
		return a
	}
	point := q.Intent == AskBalance && q.Has(Length) && q.Has(across...) && !q.Has(Sideways, SecondTie, LegAngle, SideBranch) && !q.noted(bridled)
	weighed := q.Has(Weight) && q.Intent != AskCutPlan && q.Intent != AskAnchor
	if !point && !weighed {
		return a
	}
	for _, e := range rd.elems {
		if e.start == a.Start && e.term.tree != nil && genus(e.term.tree.sci) {
			q.Species = said(rd, e, Species{Scientific: e.term.tree.sci, Name: r.nameIn(rd, e.term.tree)})
			return nil
		}
	}
	if point {
		return nil // of several genera: the point needs no tree
	}
	return a
}

// nameIn is what to call a tree in the language of the message: as it was
// named, unless that was in another.
func (r *Reader) nameIn(rd *reading, t *tree) string {
	if genus(t.sci) || t.language == rd.in.tag || rd.language == "" || rd.in.tag == "en" && t.language == "" {
		return t.name
	}
	for _, called := range []map[string]string{rd.in.called, r.lex.english.called} {
		if n := called[t.sci]; n != "" {
			return n
		}
	}
	return t.name
}

// narrows says whether a is one of the trees that b could be.
func narrows(a, b *tree) bool {
	return len(a.others) == 0 && slices.Contains(b.others, a.sci)
}

func genus(sci string) bool { return strings.HasSuffix(sci, " spp.") }

func (r *Reader) whichTree(rd *reading, e element) *Ask {
	a := askAt(WhichTree, rd.text, e.start, e.end-e.start)
	a.Fields = []Field{SpeciesField}
	for _, sci := range e.term.tree.others {
		if sci == e.term.tree.sci && genus(sci) {
			continue // "any" of them, below
		}
		a.Choices = append(a.Choices, Choice{Words: r.callIt(rd.in, sci), Scientific: sci})
	}
	if g := e.term.tree.sci; genus(g) {
		a.Choices = append(a.Choices, Choice{Words: rd.in.any + " " + r.nameIn(rd, e.term.tree), Scientific: g})
	}
	return a
}

// callIt is what to type for a tree: a name that is its alone, or the Latin.
func (r *Reader) callIt(in *tongue, sci string) string {
	for _, called := range []map[string]string{in.called, r.lex.english.called} {
		if n := called[sci]; n != "" {
			return n
		}
	}
	words := splitWords(r.names[sci])
	if t, n := r.lex.find(words, in); n > 0 && n == len(words) && t.tree != nil && t.tree.sci == sci && len(t.tree.others) == 0 {
		return r.names[sci]
	}
	return strings.ReplaceAll(sci, ".", "")
}

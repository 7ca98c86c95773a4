package reader

import (
	"strings"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/senses"
	"heft/parser/turning"
)

// fillSpecies takes the tree. A name that several trees share is asked back,
// unless the crew says that any of them will do, or names one of them too.
func (r *Reader) fillSpecies(rd *reading.Reading, q *parser.Question) *parser.Ask {
	var found []reading.Element
	for i, e := range rd.Elems {
		if e.Term == nil || e.Term.Tree == nil {
			continue
		}
		if i > 0 && rd.Elems[i-1].Marked(lexicon.MarkUnsure) && parser.Genus(e.Term.Tree.Sci) {
			t := *e.Term.Tree
			t.Others = nil
			e.Term = &scan.Term{Tree: &t}
		}
		if i > 1 && rd.Elems[i-1].Marked(lexicon.MarkAnd) && rd.TermAt(i-2).Tree != nil && rd.TermAt(i-2).Tree.Sci != e.Term.Tree.Sci {
			return clash(rd, e, parser.SpeciesField) // "elm and american elm" may be two pieces
		}
		found = append(found, e)
	}
	best := -1
	for i, e := range found {
		if best < 0 || turning.Narrows(e.Term.Tree, found[best].Term.Tree) {
			best = i
			continue
		}
		if e.Term.Tree.Sci != found[best].Term.Tree.Sci && !turning.Narrows(found[best].Term.Tree, e.Term.Tree) {
			if a, b, ok := senses.EitherTrees(rd); ok {
				return r.whichOf(rd, a, b)
			}
			return clash(rd, e, parser.SpeciesField)
		}
	}
	if best < 0 {
		return nil
	}
	e := found[best]
	if t := e.Term.Tree; len(t.Others) > 0 {
		return r.whichTree(rd, e)
	}
	q.Species = said(rd, e, parser.Species{Scientific: e.Term.Tree.Sci, Name: r.nameIn(rd, e.Term.Tree)})
	return nil
}

// eitherTree asks about a word that is not known, and how many words it takes.
// Before "or" and a tree it can be short for another: "red or white oak".
func (r *Reader) eitherTree(rd *reading.Reading, words []string, run []lexicon.Word) (*parser.Ask, int) {
	if len(words) > 2 && rd.In.Joins[words[1]] == scan.Or {
		b, n := r.lex.Find(words[2:], rd.In)
		for last := 2 + n - 1; last >= 2; last-- { // "white oak", "oak"
			a, m := r.lex.Find(append([]string{words[0]}, words[last:2+n]...), rd.In)
			if a == nil || a.Tree == nil || b.Tree == nil || m != 1+2+n-last {
				continue
			}
			ask := reading.AskAt(parser.WhichTree, rd.Text, run[0].Start, run[1+n].End-run[0].Start)
			ask.Fields, ask.Either = []parser.Field{parser.SpeciesField}, true
			for _, t := range []*parser.Tree{a.Tree, b.Tree} {
				one := t.Others
				if len(one) == 0 {
					one = []string{t.Sci}
				}
				for _, sci := range one {
					ask.Choices = append(ask.Choices, parser.Choice{Words: r.callIt(rd.In, sci), Scientific: sci})
				}
			}
			return ask, 2 + n
		}
	}
	return reading.AskAt(parser.Unknown, rd.Text, run[0].Start, run[0].End-run[0].Start), 1
}

// anyOfThem drops the ask which of several trees it is where nothing hangs on it:
// the weight is told, "900 lb spruce top", or only a balance point is asked for.
func (r *Reader) anyOfThem(rd *reading.Reading, q *parser.Question, a *parser.Ask) *parser.Ask {
	if a == nil || a.Kind != parser.WhichTree {
		return a
	}
	point := q.Intent == parser.AskBalance && q.Has(parser.Length) && q.Has(parser.Across...) && !q.Has(parser.Sideways, parser.SecondTie, parser.LegAngle, parser.SideBranch) && !q.Noted(parser.Bridled)
	weighed := q.Has(parser.Weight) && q.Intent != parser.AskCutPlan && q.Intent != parser.AskAnchor
	if !point && !weighed {
		return a
	}
	for _, e := range rd.Elems {
		if e.Start == a.Start && e.Term.Tree != nil && parser.Genus(e.Term.Tree.Sci) {
			q.Species = said(rd, e, parser.Species{Scientific: e.Term.Tree.Sci, Name: r.nameIn(rd, e.Term.Tree)})
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
func (r *Reader) nameIn(rd *reading.Reading, t *parser.Tree) string {
	if parser.Genus(t.Sci) || t.Language == rd.In.Tag || rd.Language == "" || rd.In.Tag == "en" && t.Language == "" {
		return t.Name
	}
	for _, called := range []map[string]string{rd.In.Called, r.lex.English.Called} {
		if n := called[t.Sci]; n != "" {
			return n
		}
	}
	return t.Name
}

func (r *Reader) whichTree(rd *reading.Reading, e reading.Element) *parser.Ask {
	a := reading.AskAt(parser.WhichTree, rd.Text, e.Start, e.End-e.Start)
	a.Fields = []parser.Field{parser.SpeciesField}
	for _, sci := range e.Term.Tree.Others {
		if sci == e.Term.Tree.Sci && parser.Genus(sci) {
			continue // "any" of them, below
		}
		a.Choices = append(a.Choices, parser.Choice{Words: r.callIt(rd.In, sci), Scientific: sci})
	}
	if g := e.Term.Tree.Sci; parser.Genus(g) {
		a.Choices = append(a.Choices, parser.Choice{Words: rd.In.Any + " " + r.nameIn(rd, e.Term.Tree), Scientific: g})
	}
	return a
}

// callIt is what to type for a tree: a name that is its alone, or the Latin.
func (r *Reader) callIt(in *scan.Tongue, sci string) string {
	for _, called := range []map[string]string{in.Called, r.lex.English.Called} {
		if n := called[sci]; n != "" {
			return n
		}
	}
	words := scan.SplitWords(r.names[sci])
	if t, n := r.lex.Find(words, in); n > 0 && n == len(words) && t.Tree != nil && t.Tree.Sci == sci && len(t.Tree.Others) == 0 {
		return r.names[sci]
	}
	return strings.ReplaceAll(sci, ".", "")
}

// whichOf asks which of two trees it is.
func (r *Reader) whichOf(rd *reading.Reading, a, b int) *parser.Ask {
	either, end := senses.OrBetween(rd, a, b), rd.Elems[a].End
	if either {
		end = rd.Elems[b].End
	}
	ask := reading.AskAt(parser.WhichTree, rd.Text, rd.Elems[a].Start, end-rd.Elems[a].Start)
	ask.Fields, ask.Either, ask.Heavier = []parser.Field{parser.SpeciesField}, either, senses.HeavierWanted(rd)
	for _, i := range []int{a, b} {
		t := rd.Elems[i].Term.Tree
		one := t.Others
		if len(one) == 0 {
			one = []string{t.Sci}
		}
		for _, sci := range one {
			ask.Choices = append(ask.Choices, parser.Choice{Words: r.callIt(rd.In, sci), Scientific: sci})
		}
	}
	return ask
}

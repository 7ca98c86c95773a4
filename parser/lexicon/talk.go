package lexicon

import (
	"fmt"
	"strings"
	"sync"

	"heft/parser/language"
	"heft/parser/scan"
)

// talking are the meanings that a line of talk can have.
var talking = []string{"chatter", "overlook", "perhaps", "someone"}

// readTalk checks the lines, and returns what reads them when they are first
// asked for: a program that answers plain questions never needs them.
func readTalk(lines []language.Line) (func() scan.Talk, error) {
	terms := map[string]*scan.Term{}
	for _, what := range talking {
		set, err := meaningOf([]string{what})
		if err != nil {
			return nil, err
		}
		terms[what] = &scan.Term{}
		set(terms[what])
	}
	terms["chatter"].Idle = true
	for _, l := range lines {
		if what, list, _ := strings.Cut(l.Text, " | "); terms[what] == nil || list == "" {
			return nil, fmt.Errorf("line %d: talk has one of %s and a bar, not %q", l.Number, strings.Join(talking, ", "), l.Text)
		}
	}
	return sync.OnceValue(func() scan.Talk {
		const aLine = 20 // words, or so
		all := make(scan.Talk, len(lines)*aLine)
		for _, l := range lines {
			what, list, _ := strings.Cut(l.Text, " | ")
			for w := range strings.SplitSeq(list, ", ") {
				all[scan.Fold(w)] = terms[what]
			}
		}
		return all
	}), nil
}

// talker returns what tells a word of talk in some languages: what it means there,
// nil for other words. Such a word can stand inside any spelling: "how bloody
// long".
func (lx *Lexicon) talker(langs scan.LangSet, of ...*scan.Dialect) func(string) *scan.Term {
	return func(word string) *scan.Term {
		if n := lx.Root.After(word); n != nil && n.langs&langs != 0 {
			return n.idle()
		}
		for _, d := range of {
			if said := d.Spoken()[word]; said != nil {
				return said
			}
			for _, e := range d.Endings {
				if cut, ok := strings.CutSuffix(word, e.Cut); ok && len(cut) > 2 && d.Spoken()[cut+e.Put] != nil {
					return d.Spoken()[cut+e.Put]
				}
			}
		}
		return nil
	}
}

// idle returns what the only word of a spelling means that says nothing, nil for
// other words.
func (n *node) idle() *scan.Term {
	if !n.chatter() || len(n.terms) == 0 || n.terms[0].term.Overlook || n.terms[0].term.Someone {
		return nil
	}
	return n.terms[0].term
}

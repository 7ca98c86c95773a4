package parser

import (
	"fmt"
	"strings"
	"sync"

	"heft/parser/language"
)

// Most of the words that crews type beside a question are talk: coffee, the van,
// what the neighbour thinks. There are far more of them than of all others, none
// begins a spelling, and no slip is mended to one. So they stand in a part of the
// word files of their own, [talk], that is looked into only where nothing else is
// found.
type talk map[string]*term

// talking are the meanings that a line of talk can have.
var talking = []string{"chatter", "overlook", "perhaps", "someone"}

// readTalk checks the lines, and returns what reads them when they are first
// asked for: a program that answers plain questions never needs them.
func readTalk(lines []language.Line) (func() talk, error) {
	terms := map[string]*term{}
	for _, what := range talking {
		set, err := meaningOf([]string{what})
		if err != nil {
			return nil, err
		}
		terms[what] = &term{}
		set(terms[what])
	}
	terms["chatter"].idle = true
	for _, l := range lines {
		if what, list, _ := strings.Cut(l.Text, " | "); terms[what] == nil || list == "" {
			return nil, fmt.Errorf("line %d: talk has one of %s and a bar, not %q", l.Number, strings.Join(talking, ", "), l.Text)
		}
	}
	return sync.OnceValue(func() talk {
		const aLine = 20 // words, or so
		all := make(talk, len(lines)*aLine)
		for _, l := range lines {
			what, list, _ := strings.Cut(l.Text, " | ")
			for w := range strings.SplitSeq(list, ", ") {
				all[fold(w)] = terms[what]
			}
		}
		return all
	}), nil
}

// talker returns what tells a word of talk in some languages: what it means there,
// nil for other words. Such a word can stand inside any spelling: "how bloody
// long".
func (lx *lexicon) talker(langs langSet, of ...*dialect) func(string) *term {
	return func(word string) *term {
		if n := lx.root.after(word); n != nil && n.langs&langs != 0 {
			return n.idle()
		}
		for _, d := range of {
			if said := d.spoken()[word]; said != nil {
				return said
			}
			for _, e := range d.endings {
				if cut, ok := strings.CutSuffix(word, e.cut); ok && len(cut) > 2 && d.spoken()[cut+e.put] != nil {
					return d.spoken()[cut+e.put]
				}
			}
		}
		return nil
	}
}

// idle returns what the only word of a spelling means that says nothing, nil for
// other words.
func (n *node) idle() *term {
	if !n.chatter() || len(n.terms) == 0 || n.terms[0].term.overlook || n.terms[0].term.someone {
		return nil
	}
	return n.terms[0].term
}

package lexicon

import (
	"slices"
	"strings"

	"heft/parser/scan"
)

// spelling returns the node of a spelling, making it where it is new, and
// known in the languages given.
func (lx *Lexicon) spelling(words []string, langs scan.LangSet) *node {
	n := lx.Root
	for i, w := range words {
		if lx.now != nil && lx.now.Optional[w] && i+1 < len(words) {
			continue
		}
		c := n.After(w)
		if c == nil {
			c = lx.newNode(w)
			n.next = append(n.next, c)
			if n.index != nil {
				n.index[w] = c
			}
		}
		n = c
		n.langs |= langs
	}
	return n
}

// nodesAtOnce is how many nodes are made at a time: most of what it costs to
// read the word files is making them.
const nodesAtOnce = 1024

func (lx *Lexicon) newNode(word string) *node {
	if len(lx.slab) == 0 {
		lx.slab = make([]node, nodesAtOnce)
	}
	n := &lx.slab[0]
	lx.slab = lx.slab[1:]
	n.word, n.terms = word, n.one[:0]
	return n
}

// After returns the node of a word that follows, nil where none does.
func (n *node) After(word string) *node {
	if n.index != nil {
		return n.index[word]
	}
	for _, c := range n.next {
		if c.word == word {
			return c
		}
	}
	return nil
}

// sense returns the node's sense in a language, making an empty one where it
// has none.
func (n *node) sense(slot int) *sense {
	for i, s := range n.terms {
		if s.slot == slot {
			return &n.terms[i]
		}
	}
	n.terms = append(n.terms, sense{slot: slot})
	return &n.terms[len(n.terms)-1]
}

// means returns what the node means in a tongue, nil for nothing. A word that
// its own language asks about, because another has it too, says nothing where
// the other is spoken as well and says nothing by it: "where do i tie la rama
// pa que quede level".
func (n *node) means(t *scan.Tongue) *scan.Term {
	var asked *scan.Term
	for _, slot := range t.Slots {
		for _, s := range n.terms {
			switch {
			case s.slot != slot:
			case asked == nil && !s.term.Own:
				return s.term
			case asked == nil:
				asked = s.term
			case Says(s.term, MarkArticle|MarkMade|MarkIs|MarkPronoun):
				return s.term
			}
		}
	}
	return asked
}

// chatter says whether a spelling ends here, none goes on, and all that it means
// is that it says nothing.
func (n *node) chatter() bool {
	return len(n.next) == 0 && !slices.ContainsFunc(n.terms, func(s sense) bool { return !s.term.Chatter })
}

// Says says whether a term is nothing but what the marks tell of it.
func Says(t *scan.Term, no scan.Mark) bool {
	return t.Marks&^no == 0 && t.Intent == "" && t.Whole == "" && t.Shape == "" && t.Tree == nil &&
		t.Ask == "" && t.Stop == "" && t.Note == "" && len(t.Roles) == 0 && t.Count == 0 && t.Units == ""
}

// Find returns the longest spelling at the start of the words, and how many
// of them it took; 0 where none is known, nor is the first of them talk.
func (lx *Lexicon) Find(words []string, t *scan.Tongue) (*scan.Term, int) {
	if len(words) == 0 {
		return nil, 0
	}
	if found, taken := lx.Spelled(words, t); taken > 0 {
		return found, taken
	}
	if said := t.Talk(words[0]); said != nil {
		return said, 1
	}
	return nil, 0
}

// Spelled returns the longest spelling at the start of the words.
func (lx *Lexicon) Spelled(words []string, t *scan.Tongue) (*scan.Term, int) {
	if t.Inflects {
		return lx.Root.longest(words, t, true)
	}
	found, taken := lx.Root.child(words[0], t).from(words, t)
	if taken == 0 { // "the block's 4 m up", where "block's at" is a spelling
		found, taken = lx.Root.inflected(words[0], t).from(words, t)
	}
	return found, taken
}

// from is the longest spelling that goes on from the node of the first word.
func (n *node) from(words []string, t *scan.Tongue) (found *scan.Term, taken int) {
	for i, w := range words {
		c := n
		if i > 0 {
			c = n.child(w, t)
		}
		if c == nil && i > 0 && (t.Optional[w] && !determined(words[i-1], t) || t.Talk(w) != nil) {
			continue
		}
		if n = c; n == nil {
			break
		}
		if x := n.means(t); x != nil {
			found, taken = x, i+1
		}
	}
	return found, taken
}

// determined says whether a word leaves no room for an article behind it: "no the drop is
// 3 ft" takes back, and is not "no drop".
func determined(word string, t *scan.Tongue) bool {
	return t.Optional[word] || t.Cued(word, CueDetermines)
}

// spells says whether the leading language has a spelling that ends here.
func (n *node) spells(t *scan.Tongue) bool {
	return n != nil && slices.ContainsFunc(n.terms, func(s sense) bool { return s.slot == t.Slots[0] })
}

// longest is find for a tongue whose words have many endings: it goes on from
// every node that a word can be, since "ramas" is one spelling's plural, and
// another's first word. The words go on from a spelling, whose last word was
// optional or whose first is still to come where fixed.
func (n *node) longest(words []string, t *scan.Tongue, fixed bool) (found *scan.Term, taken int) {
	if len(words) == 0 {
		return nil, 0
	}
	known := false
	try := func(c *node) {
		if c == nil {
			return
		}
		known = true
		x, more := c.longest(words[1:], t, t.Optional[words[0]])
		if x == nil {
			x = c.means(t)
		}
		if x != nil && more+1 > taken {
			found, taken = x, more+1
		}
	}
	exact := n.known(words[0], t)
	try(exact)
	for _, e := range t.Endings {
		if exact.spells(t) {
			break // "troza" is no "trozo"
		}
		if cut, ok := strings.CutSuffix(words[0], e.Cut); ok && len(cut) > 2 {
			try(n.known(cut+e.Put, t))
		}
	}
	if said := t.Talk(words[0]); !known && n.index == nil && said != nil {
		if x, more := n.longest(words[1:], t, false); x != nil {
			return x, more + 1
		}
	}
	if !known && !fixed && t.Optional[words[0]] {
		verb := words[0] == "esta" // typed without its accent, and an article may follow: "dónde está el centro"
		if x, more := n.longest(words[1:], t, !verb); x != nil {
			return x, more + 1
		}
	}
	return found, taken
}

// child also finds a word by another ending than the spelling has: a plural,
// a possessive, the other gender.
func (n *node) child(w string, t *scan.Tongue) *node {
	if c := n.known(w, t); c != nil {
		return c
	}
	return n.inflected(w, t)
}

// inflected finds a word by another ending alone.
func (n *node) inflected(w string, t *scan.Tongue) *node {
	for _, e := range t.Endings {
		if cut, ok := strings.CutSuffix(w, e.Cut); ok && len(cut) > 2 {
			if c := n.known(cut+e.Put, t); c != nil {
				return c
			}
		}
	}
	return nil
}

// known is the node of the word where the tongue has it.
func (n *node) known(w string, t *scan.Tongue) *node {
	if c := n.After(w); c != nil && c.langs&t.Langs != 0 {
		return c
	}
	return nil
}

package parser

import (
	"maps"
	"slices"
	"strings"
)

// tongue is what one message is read by: the language of most of its words,
// which gives a word its meaning where others know it too, and another that
// fills in. A message of English words alone is read by English alone, so
// that no other language can change what it means.
type tongue struct {
	slots   []int   // of a node's terms, the leading language first
	langs   langSet // of the words that are known
	leading langSet // of the language that leads, and the trees

	inflects bool // its words have more endings than a plural
	talk     func(string) *term
	dialect  // the leading one, with what it leaves free of the other
}

// langSet is a set of languages; the trees' names are one of it.
type langSet uint16

// trees is the slot of the trees' names; languages have the next ones.
const trees = 0

func setOf(slot int) langSet { return 1 << slot }

// newTongue makes the tongue of a language, with another that may be nil.
func (lx *lexicon) newTongue(lead, also *dialect) *tongue {
	t := &tongue{slots: []int{lead.slot}, dialect: *newDialect(lead.tag, lead.slot)}
	t.leading = setOf(trees) | setOf(lead.slot)
	t.langs = t.leading
	t.comma, t.any, t.called = lead.comma, lead.any, lead.called
	if also != nil {
		t.slots = append(t.slots, also.slot)
		t.langs |= setOf(also.slot)
		t.add(also, func(word string) bool {
			n := lx.root.after(word)
			return n == nil || n.langs&setOf(lead.slot) == 0
		})
	}
	t.talk = lx.talker(t.langs, lead)
	if also != nil {
		t.talk = lx.talker(t.langs, lead, also)
	}
	t.slots = append(t.slots, trees)
	t.add(lead, func(string) bool { return true })
	t.articles = lead.articles // "a metro" counts nothing
	t.endings = append([]ending(nil), lead.endings...)
	if also != nil {
		t.endings = append(t.endings, also.endings...)
	}
	t.chopped = append([]ending(nil), lead.chopped...)
	if also != nil {
		t.chopped = append(t.chopped, also.chopped...)
	}
	t.inflects = slices.ContainsFunc(t.endings, func(e ending) bool { return e.put != "" })
	return t
}

// add puts in the words of a dialect that are free: that mean nothing else in
// the language that leads. "Once" is eleven in Spanish alone.
func (t *tongue) add(d *dialect, free func(string) bool) {
	addFree(t.optional, d.optional, free)
	addFree(t.numbers, d.numbers, free)
	addFree(t.units, d.units, free)
	addFree(t.joins, d.joins, free)
	addFree(t.aliases, d.aliases, free)
	addFree(t.glued, d.glued, free)
	t.dangers.add(d.dangers)
	maps.Copy(t.counted, d.counted)
	maps.Copy(t.leads, d.leads)
	for c, words := range d.cues {
		if t.cues[c] == nil {
			t.cues[c] = map[string]bool{}
		}
		maps.Copy(t.cues[c], words)
	}
}

func addFree[T any](to, from map[string]T, free func(string) bool) {
	for word, v := range from {
		if free(word) {
			to[word] = v
		}
	}
}

// unit returns the unit that is typed, nil for none.
func (t *tongue) unit(typed string) *unitWord {
	if u := unitMarks[typed]; u != nil {
		return u
	}
	return t.units[fold(typed)]
}

// shortest is how long a word must be to let in the language of it alone: a
// slip of the finger makes "ese" of "see".
const shortest = 5

// weight is how many letters a word has, and enough where it is a unit or a
// number.
func (lx *lexicon) weight(slot int, word string) int {
	if d := lx.dialects[slot-1]; d.units[word] != nil || d.numbers[word].value > 1 {
		return max(shortest, len(word))
	}
	return len(word)
}

// tongueOf returns what a text is to be read by, and the tag of its language:
// that of most of those words that belong to one language alone, or of the
// first of them where there are as many of each; "" where there are none.
func (lx *lexicon) tongueOf(text string) (*tongue, string) {
	var count, letters [16]int // of the words of each language, and of the longest
	first := 0
	for word := range lettered(text) {
		word = fold(word)
		slot := lx.native(word)
		if slot == 0 {
			continue
		}
		count[slot]++
		letters[slot] = max(letters[slot], lx.weight(slot, word))
		if first == 0 {
			first = slot
		}
	}
	if first == 0 {
		return lx.foreign(text)
	}
	lead, also := first, 0
	for slot, n := range count {
		if n > count[lead] || slot == lx.english.slot && n == count[lead] && letters[lead] < shortest {
			lead = slot
		}
	}
	for slot, n := range count {
		if slot != lead && n > count[also] && (n > 1 || letters[slot] >= shortest) {
			also = slot
		}
	}
	return lx.tongue(lead, also), lx.dialects[lead-1].tag
}

// foreign reads a text of which no word is of one language alone. Where it tells no
// number, asks nothing and English knows a word of it only as another language's, "ok dale", it is
// of that.
func (lx *lexicon) foreign(text string) (*tongue, string) {
	if strings.ContainsAny(text, "0123456789?") {
		return lx.english, ""
	}
	english, also, own := setOf(lx.english.slot), ^langSet(0), false
	for word := range lettered(text) {
		word = fold(word)
		also &= lx.words[word]
		if n := lx.root.after(word); n != nil {
			own = own || slices.ContainsFunc(n.terms, func(s sense) bool { return s.slot == lx.english.slot && s.term.own })
		}
	}
	if slot := only(also &^ english); own && slot > 0 {
		return lx.tongue(slot, 0), lx.dialects[slot-1].tag
	}
	return lx.english, ""
}

// tongue returns the tongue of two languages; English helps out in all others.
func (lx *lexicon) tongue(lead, also int) *tongue {
	if also == 0 && lead != lx.english.slot {
		also = lx.english.slot
	}
	return lx.tongues[[2]int{lead, also}]
}

// native returns the slot of the only language that has a word, 0 where
// several have it or none.
func (lx *lexicon) native(word string) int {
	if s, ok := lx.words[word]; ok {
		return only(s)
	}
	for _, d := range lx.dialects {
		for _, e := range d.endings {
			if cut, ok := strings.CutSuffix(word, e.cut); ok && len(cut) > 2 {
				if s := lx.words[cut+e.put]; s&setOf(d.slot) != 0 {
					return only(s)
				}
			}
		}
	}
	return 0
}

// only returns the slot of the only language in a set, 0 for more or none.
func only(s langSet) int {
	slot := 0
	for i := 1; s>>i != 0; i++ {
		if s&setOf(i) != 0 {
			if slot > 0 {
				return 0
			}
			slot = i
		}
	}
	return slot
}

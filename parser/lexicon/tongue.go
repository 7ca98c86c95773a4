package lexicon

import (
	"maps"
	"slices"
	"strings"
	"unicode"

	"heft/parser/scan"
)

// trees is the slot of the trees' names; languages have the next ones.
const trees = 0

func setOf(slot int) scan.LangSet { return 1 << slot }

// alone makes the tongue of one language.
func (lx *Lexicon) alone(d *scan.Dialect) *scan.Tongue {
	t := &scan.Tongue{Slots: []int{d.Slot, trees}, Leading: setOf(trees) | setOf(d.Slot), Dialect: *d}
	t.Langs = t.Leading
	t.Talk = lx.talker(t.Langs, d)
	begin(&t.Dangers)
	t.Inflects = inflects(t)
	return t
}

// together makes the tongue of a language and of another that helps out.
func (lx *Lexicon) together(lead, also *scan.Dialect) *scan.Tongue {
	t := &scan.Tongue{Slots: []int{lead.Slot, also.Slot, trees}, Leading: setOf(trees) | setOf(lead.Slot), Dialect: *newDialect(lead.Tag, lead.Slot)}
	t.Langs = t.Leading | setOf(also.Slot)
	t.Comma, t.Any, t.Called = lead.Comma, lead.Any, lead.Called
	add(t, also, func(word string) bool {
		n := lx.Root.After(word)
		return n == nil || n.langs&setOf(lead.Slot) == 0
	})
	add(t, lead, func(string) bool { return true })
	t.Articles = lead.Articles // "a metro" counts nothing
	t.Endings = slices.Concat(lead.Endings, also.Endings)
	t.Chopped = slices.Concat(lead.Chopped, also.Chopped)
	t.Talk = lx.talker(t.Langs, lead, also)
	begin(&t.Dangers)
	t.Inflects = inflects(t)
	return t
}

// inflects says whether a tongue's words have more endings than a plural.
func inflects(t *scan.Tongue) bool {
	return slices.ContainsFunc(t.Endings, func(e scan.Ending) bool { return e.Put != "" })
}

// add puts in the words of a dialect that are free: that mean nothing else in
// the language that leads. "Once" is eleven in Spanish alone.
func add(t *scan.Tongue, d *scan.Dialect, free func(string) bool) {
	addFree(t.Optional, d.Optional, free)
	addFree(t.Numbers, d.Numbers, free)
	addFree(t.Units, d.Units, free)
	addFree(t.Joins, d.Joins, free)
	addFree(t.Aliases, d.Aliases, free)
	addFree(t.Glued, d.Glued, free)
	addFree(t.Small, d.Small, func(string) bool { return true })
	addDangers(&t.Dangers, d.Dangers)
	maps.Copy(t.Counted, d.Counted)
	maps.Copy(t.Leads, d.Leads)
	for word, cues := range d.Cues {
		t.Cues[word] = slices.Concat(t.Cues[word], cues)
	}
}

func addFree[T any](to, from map[string]T, free func(string) bool) {
	for word, v := range from {
		if free(word) {
			to[word] = v
		}
	}
}

// Unit returns the unit that is typed, nil for none.
func Unit(t *scan.Tongue, typed string) *scan.UnitWord {
	if u := scan.UnitMarks[typed]; u != nil {
		return u
	}
	return t.Units[scan.Fold(typed)]
}

// shortest is how long a word must be to let in the language of it alone: a
// slip of the finger makes "ese" of "see".
const shortest = 5

// weight is how many letters a word has, and enough where it is a unit or a
// number.
func (lx *Lexicon) weight(slot int, word string) int {
	if d := lx.dialects[slot-1]; d.Units[word] != nil || d.Numbers[word].Value > 1 {
		return max(shortest, len(word))
	}
	return len(word)
}

// TongueOf returns what a text is to be read by, and the tag of its language:
// that of most of those words that belong to one language alone, or of the
// first of them where there are as many of each; "" where there are none.
func (lx *Lexicon) TongueOf(text string) (*scan.Tongue, string) {
	var count, letters [16]int // of the words of each language, and of the longest
	first := 0
	for word := range scan.Lettered(text) {
		word = scan.Fold(word)
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
		if n > count[lead] || slot == lx.English.Slot && n == count[lead] && letters[lead] < shortest {
			lead = slot
		}
	}
	for slot, n := range count {
		if slot != lead && n > count[also] && (n > 1 || letters[slot] >= shortest) {
			also = slot
		}
	}
	return lx.tongue(lead, also), lx.dialects[lead-1].Tag
}

// TongueAfter is TongueOf in a talk of a language: what is of no language alone, "y si
// son 3 m", is of that of the talk.
func (lx *Lexicon) TongueAfter(text, talk string) (*scan.Tongue, string) {
	in, tag := lx.TongueOf(text)
	if tag != "" || talk == "" {
		return in, tag
	}
	for _, d := range lx.dialects {
		if d.Tag == talk && d.Slot != lx.English.Slot && strings.ContainsFunc(text, unicode.IsLetter) {
			return lx.tongue(d.Slot, 0), talk
		}
	}
	return in, tag
}

// foreign reads a text of which no word is of one language alone. Where English knows a
// word of it only as another language's, "ok dale", it is of that: two words where it
// tells a number or asks, "y si son 3 m".
func (lx *Lexicon) foreign(text string) (*scan.Tongue, string) {
	least := 1
	if strings.ContainsAny(text, "0123456789?") {
		least = 2
	}
	english, also, own := setOf(lx.English.Slot), ^scan.LangSet(0), 0
	for word := range scan.Lettered(text) {
		word = scan.Fold(word)
		also &= lx.words[word]
		if n := lx.Root.After(word); n != nil {
			if slices.ContainsFunc(n.terms, func(s sense) bool { return s.slot == lx.English.Slot && s.term.Own }) {
				own++
			}
		}
	}
	if slot := only(also &^ english); own >= least && slot > 0 {
		return lx.tongue(slot, 0), lx.dialects[slot-1].Tag
	}
	return lx.English, ""
}

// tongue returns the tongue of two languages; English helps out in all others.
func (lx *Lexicon) tongue(lead, also int) *scan.Tongue {
	if also == 0 && lead != lx.English.Slot {
		also = lx.English.Slot
	}
	if also == 0 {
		return lx.English
	}
	return lx.tongues[[2]int{lead, also}]()
}

// native returns the slot of the only language that has a word, 0 where
// several have it or none.
func (lx *Lexicon) native(word string) int {
	if s, ok := lx.words[word]; ok {
		return only(s)
	}
	for _, d := range lx.dialects {
		for _, e := range d.Endings {
			if cut, ok := strings.CutSuffix(word, e.Cut); ok && len(cut) > 2 {
				if s := lx.words[cut+e.Put]; s&setOf(d.Slot) != 0 {
					return only(s)
				}
			}
		}
	}
	return 0
}

// only returns the slot of the only language in a set, 0 for more or none.
func only(s scan.LangSet) int {
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

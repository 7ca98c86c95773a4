package parser

import (
	"strings"
	"unicode/utf8"
)

// Who writes by ear writes "bueltas" for "vueltas" and "yega" for "llega". The
// lines "sound" of a word file say what sounds alike in its language; a word
// that sounds as one other does is that one, however many letters differ.

// fewestHeard is how many letters a word must have: shorter ones sound like too
// many.
const fewestHeard = 3

// hear returns the words that begin spellings by their sound, for every language
// that tells what sounds alike; "" stands for more than one.
func (lx *lexicon) hear() []map[string]string {
	all := make([]map[string]string, len(lx.dialects)+1)
	for _, d := range lx.dialects {
		if len(d.sounds) == 0 {
			continue
		}
		words := map[string]string{}
		for _, starts := range lx.starts {
			for _, w := range starts {
				if w.langs&(setOf(d.slot)|setOf(trees)) == 0 {
					continue
				}
				key := d.sound(w.word)
				if other, twice := words[key]; twice && other != w.word {
					words[key] = ""
					continue
				}
				words[key] = w.word
			}
		}
		all[d.slot] = words
	}
	return all
}

// sound is how a word sounds.
func (d *dialect) sound(word string) string {
	for _, s := range d.sounds {
		word = strings.ReplaceAll(word, s.cut, s.put)
	}
	return word
}

// soundsLike returns the one word of the languages that sounds as the word does.
func (lx *lexicon) soundsLike(word string, t *tongue, langs langSet) string {
	if utf8.RuneCountInString(word) < fewestHeard {
		return ""
	}
	for _, slot := range t.slots {
		if slot == trees || setOf(slot)&langs == 0 || len(lx.dialects[slot-1].sounds) == 0 {
			continue
		}
		if as := lx.heard()[slot][lx.dialects[slot-1].sound(word)]; as != "" {
			return as
		}
	}
	return ""
}

// alike says whether two words sound alike in a language of the message.
func (lx *lexicon) alike(a, b string, t *tongue) bool {
	for _, slot := range t.slots {
		if slot != trees && len(b) >= fewestHeard && lx.dialects[slot-1].sound(a) == lx.dialects[slot-1].sound(b) {
			return true
		}
	}
	return false
}

package lexicon

import (
	"strings"
	"unicode/utf8"

	"heft/parser/scan"
)

// Who writes by ear writes "bueltas" for "vueltas" and "yega" for "llega". The
// lines "sound" of a word file say what sounds alike in its language; a word
// that sounds as one other does is that one, however many letters differ.

// fewestHeard is how many letters a word must have: shorter ones sound like too
// many.
const fewestHeard = 3

// hear returns the words that begin spellings by their sound, for every language
// that tells what sounds alike; "" stands for more than one.
func (lx *Lexicon) hear() []map[string]string {
	all := make([]map[string]string, len(lx.dialects)+1)
	for _, d := range lx.dialects {
		if len(d.Sounds) == 0 {
			continue
		}
		words := map[string]string{}
		for _, starts := range lx.Starts {
			for _, w := range starts {
				if w.Langs&(setOf(d.Slot)|setOf(trees)) == 0 {
					continue
				}
				key := sound(d, w.Word)
				if other, twice := words[key]; twice && other != w.Word {
					words[key] = ""
					continue
				}
				words[key] = w.Word
			}
		}
		all[d.Slot] = words
	}
	return all
}

// sound is how a word sounds.
func sound(d *scan.Dialect, word string) string {
	for _, s := range d.Sounds {
		word = strings.ReplaceAll(word, s.Cut, s.Put)
	}
	return word
}

// soundsLike returns the one word of the languages that sounds as the word does.
func (lx *Lexicon) soundsLike(word string, t *scan.Tongue, langs scan.LangSet) string {
	if utf8.RuneCountInString(word) < fewestHeard {
		return ""
	}
	for _, slot := range t.Slots {
		if slot == trees || setOf(slot)&langs == 0 || len(lx.dialects[slot-1].Sounds) == 0 {
			continue
		}
		if as := lx.heard()[slot][sound(lx.dialects[slot-1], word)]; as != "" {
			return as
		}
	}
	return ""
}

// alike says whether two words sound alike in a language of the message.
func (lx *Lexicon) alike(a, b string, t *scan.Tongue) bool {
	for _, slot := range t.Slots {
		if slot != trees && len(b) >= fewestHeard && sound(lx.dialects[slot-1], a) == sound(lx.dialects[slot-1], b) {
			return true
		}
	}
	return false
}

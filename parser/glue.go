package parser

import (
	"slices"
	"strings"
	"unicode/utf8"
)

// Thumbs leave out spaces: "cuantopesa", "detilo", "enlabase", "metrosde". The lines
// "glued" of a word file have the small words that stick to what stands beside
// them. A word that is not known, and is no slip of one, is taken apart where one
// of them leaves a word that is known.

// fewestApart is how many letters the rest must have: less is rather a slip.
const fewestApart = 4

// apart returns the run with glued words taken apart. A unit goes to the number
// right before the run: "2 metrosde largo".
func (r *Reader) apart(rd *reading, run []word) []word {
	for i := 0; i < len(run); i++ {
		parts := r.lex.unglued(run[i].folded, rd.in)
		if parts == nil || len(rd.asks)+len(rd.fixes) >= manySlips {
			continue
		}
		rd.fixes = append(rd.fixes, Fix{Words: rd.text[run[i].start:run[i].end], As: strings.Join(parts, " ")})
		words := run[i].cut(rd.text, parts)
		if i == 0 && rd.mendUnit(parts[0], words[0].end) {
			words = words[1:]
		}
		run = slices.Concat(run[:i], words, run[i+1:])
	}
	return run
}

// cut gives the parts of a word their places.
func (w word) cut(text string, parts []string) []word {
	out, at := make([]word, len(parts)), w.start
	for i, p := range parts {
		start := at
		for range p {
			_, size := utf8.DecodeRuneInString(text[at:])
			at += size
		}
		out[i] = word{p, start, at}
	}
	out[len(out)-1].end = w.end
	return out
}

// unglued takes apart a word that is not known, nil where it does not fall into
// small words and one that is known, or is a slip of another.
func (lx *lexicon) unglued(w string, t *tongue) []string {
	if lx.knows(w, t) || t.aliases[w] != "" {
		return nil
	}
	parts := lx.parts(w, t)
	if parts == nil || lx.nearAny(w) {
		return nil
	}
	return parts
}

// nearAny says whether a word is, or is a slip of, any of the vocabulary, wherever
// in a spelling that stands: "lastimo" is no "las timo".
func (lx *lexicon) nearAny(w string) bool {
	s := newSearch(w, 4)
	for known := range lx.words {
		if known == w {
			return true
		}
		s.try(known)
	}
	return s.best != ""
}

// parts are the small words at either end of a word, and the known one that they
// leave: the longest go first.
func (lx *lexicon) parts(w string, t *tongue) (out []string) {
	most := 0
	for small := range t.glued {
		if rest, ok := strings.CutPrefix(w, small); ok && len(rest) >= fewestApart {
			if said, n := lx.spelled([]string{small, rest}, t); n == 2 && !said.chatter {
				return []string{small, rest} // "sinhojas"
			}
		}
		if len(small) < most || len(small) == most && len(out) > 0 && small > out[0] {
			continue
		}
		if rest, ok := strings.CutPrefix(w, small); ok && len(rest) >= fewestApart {
			if more := lx.leaves(rest, t); more != nil {
				most, out = len(small), append([]string{small}, more...)
			}
		} else if rest, ok := strings.CutSuffix(w, small); ok && len(rest) >= fewestApart {
			if more := lx.leaves(rest, t); more != nil {
				most, out = len(small), append(slices.Clone(more), small)
			}
		}
	}
	return out
}

// leaves is what a small word leaves: a word that tells of a piece or of a place,
// or the parts of one.
func (lx *lexicon) leaves(rest string, t *tongue) []string {
	found, _ := lx.spelled([]string{rest}, t)
	if t.units[rest] != nil || found != nil && (found.intent != "" || found.shape != "" || found.tree != nil || len(found.roles) > 0 || found.note != "") {
		return []string{rest}
	}
	return lx.parts(rest, t)
}

// knows says whether a word is known in the languages of the message.
func (lx *lexicon) knows(w string, t *tongue) bool {
	return lx.root.child(w, t) != nil || t.talk(w) != nil
}

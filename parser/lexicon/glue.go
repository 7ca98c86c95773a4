package lexicon

import (
	"slices"
	"strings"
	"unicode/utf8"

	"heft/parser/scan"
)

// Thumbs leave out spaces: "cuantopesa", "detilo", "enlabase", "metrosde". The lines
// "glued" of a word file have the small words that stick to what stands beside
// them. A word that is not known, and is no slip of one, is taken apart where one
// of them leaves a word that is known.

// fewestApart is how many letters the rest must have: less is rather a slip.
const fewestApart = 4

// Cut gives the parts of a word their places.
func (w Word) Cut(text string, parts []string) []Word {
	out, at := make([]Word, len(parts)), w.Start
	for i, p := range parts {
		start := at
		for range p {
			_, size := utf8.DecodeRuneInString(text[at:])
			at += size
		}
		out[i] = Word{p, start, at}
	}
	out[len(out)-1].End = w.End
	return out
}

// Unglued takes apart a word that is not known, nil where it does not fall into
// small words and one that is known, or is a slip of another.
func (lx *Lexicon) Unglued(w string, t *scan.Tongue) []string {
	if lx.knows(w, t) || t.Aliases[w] != "" {
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
func (lx *Lexicon) nearAny(w string) bool {
	s := NewSearch(w, 4)
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
func (lx *Lexicon) parts(w string, t *scan.Tongue) (out []string) {
	most := 0
	for small := range t.Glued {
		if rest, ok := strings.CutPrefix(w, small); ok && len(rest) >= fewestApart {
			if said, n := lx.Spelled([]string{small, rest}, t); n == 2 && !said.Chatter {
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
func (lx *Lexicon) leaves(rest string, t *scan.Tongue) []string {
	found, _ := lx.Spelled([]string{rest}, t)
	if t.Units[rest] != nil || found != nil && (found.Intent != "" || found.Shape != "" || found.Tree != nil || len(found.Roles) > 0 || found.Note != "") {
		return []string{rest}
	}
	return lx.parts(rest, t)
}

// knows says whether a word is known in the languages of the message.
func (lx *Lexicon) knows(w string, t *scan.Tongue) bool {
	return lx.Root.child(w, t) != nil || t.Talk(w) != nil
}

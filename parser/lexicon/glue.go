package lexicon

import (
	"slices"
	"strings"
	"unicode/utf8"

	"heft/parser"
	"heft/parser/scan"
)

// Thumbs leave out spaces: "cuantopesa", "detilo", "enlabase", "metrosde". The lines
// "glued" of a word file have the small words that stick to what stands beside
// them. A word that is not known, and is no slip of one, is taken apart where one
// of them leaves a word that is known.

// fewestApart is how many letters the rest must have: less is rather a slip.
const fewestApart = 4

// fewestLetters is how many two words must have together that are typed as one: less may
// be a name, "Tomy", or another word, "quemé".
const fewestLetters = 6

// fewestOfStop is how many letters a word must have that is looked for inside another.
const fewestOfStop = 5

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
// words that are. A unit comes first only right behind its number: "12 ftlong".
func (lx *Lexicon) Unglued(w string, behindNumber bool, t *scan.Tongue) []string {
	if _, said := lx.words[w]; said || lx.knows(w, t) || t.Aliases[w] != "" {
		return nil // a word in the middle of a spelling is none of two
	}
	if parts := lx.parts(w, t); len(parts) > 2 && !lx.nearAny(w, 2) {
		return parts // "enlabase"
	}
	if two := lx.twoWords(w, behindNumber, t); two != nil {
		return two
	}
	parts := lx.parts(w, t)
	if parts == nil || lx.nearAny(w, 2) {
		return nil
	}
	return parts
}

// HoldsStop is the word that ends all arithmetic at either end of a word that is not known,
// where the rest of it is known: "kindapunky". "" for none.
func (lx *Lexicon) HoldsStop(w string, t *scan.Tongue) string {
	if lx.knows(w, t) || t.Aliases[w] != "" {
		return ""
	}
	for i := range w {
		for _, part := range [2][2]string{{w[:i], w[i:]}, {w[i:], w[:i]}} {
			stop, rest := part[0], part[1]
			if len(stop) < fewestOfStop || len(rest) < 2 || !lx.knows(rest, t) {
				continue
			}
			if said, _ := lx.Spelled([]string{stop}, t); said != nil && (said.Stop != "" || said.Damaged) {
				return stop
			}
		}
	}
	return ""
}

// nearAny says whether a word is, or is so many slips from, any of the vocabulary, wherever
// in a spelling that stands: "lastimo" is no "las timo".
func (lx *Lexicon) nearAny(w string, slips int) bool {
	s := NewSearch(w, 4)
	s.Slips = min(s.Slips, slips)
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

// twoWords cuts a word in two that are typed without their space, letter for letter:
// a unit and what is so long, one spelling ("redoak"), two small words ("needto"), or
// two of the vocabulary of which one tells something ("slinggot"). Where it can be cut
// in several places it is not.
func (lx *Lexicon) twoWords(w string, behindNumber bool, t *scan.Tongue) []string {
	for _, fits := range []func(a, b string) bool{
		func(a, b string) bool { return behindNumber && t.Units[a] != nil && lx.plain(b, t) },
		func(a, b string) bool { return lx.oneSpelling(a, b, t) },
		func(a, b string) bool { return t.Small[a] && t.Small[b] && len(a)+len(b) >= fewestLetters },
		func(a, b string) bool { return lx.bothTell(a, b, t) && !lx.nearAny(w, 1) },
		func(a, b string) bool { return lx.besideSmall(a, b, t) && !lx.nearAny(w, 1) },
	} {
		if two := lx.cutOnce(w, fits); two != nil {
			return two
		}
	}
	return nil
}

// cutOnce cuts a word where both parts fit, nil where that is nowhere or in more than one
// place.
func (lx *Lexicon) cutOnce(w string, fits func(a, b string) bool) (two []string) {
	for i := range w {
		if i == 0 || !fits(w[:i], w[i:]) {
			continue
		}
		if two != nil {
			return nil
		}
		two = []string{w[:i], w[i:]}
	}
	return two
}

// oneSpelling says whether two words are one spelling that says something.
func (lx *Lexicon) oneSpelling(a, b string, t *scan.Tongue) bool {
	if len(a) < 2 || len(b) < 3 || lx.Root.After(a) == nil {
		return false
	}
	said, n := lx.Spelled([]string{a, b}, t)
	return n == 2 && !said.Chatter
}

// plain says whether a word stands in the vocabulary by itself, and is none of a number:
// those are read before words are.
func (lx *Lexicon) plain(w string, t *scan.Tongue) bool {
	if t.Numbers[w].Value > 0 || len(w) < 2 {
		return false
	}
	_, n := lx.Spelled([]string{w}, t)
	return n > 0
}

// bothTell says whether two words of some length stand in the vocabulary, and one of them
// tells of the job. A tree is one of them only beside a piece of it: "pinelog", and no
// "pineapple".
func (lx *Lexicon) bothTell(a, b string, t *scan.Tongue) bool {
	x, y := lx.single(a, t), lx.single(b, t)
	if x == nil || y == nil || len(a)+len(b) < fewestLetters || x.Stop != "" || y.Stop != "" {
		return false // "bloodwood" is a tree
	}
	if x.Tree != nil || y.Tree != nil {
		return x.Shape != "" || y.Shape != ""
	}
	long := func(s string) bool { return len(s) >= fewestApart }
	return long(a) && lx.tellsOfJob(x) || long(b) && lx.tellsOfJob(y)
}

// single is what a word means by itself, nil for nothing. Those of dangers say more than
// nothing, whatever else they say.
func (lx *Lexicon) single(w string, t *scan.Tongue) *scan.Term {
	if lx.plain(w, t) {
		said, _ := lx.Spelled([]string{w}, t)
		return said
	}
	if len(t.Dangers.Kinds[w]) > 0 && len(w) >= fewestApart {
		return &scan.Term{Stop: parser.Damaged}
	}
	return nil
}

// besideSmall says whether a known word stands beside a small one: "enoughfor". Behind one it
// tells something: verbs begin like small words, "contratamos".
func (lx *Lexicon) besideSmall(a, b string, t *scan.Tongue) bool {
	whole := func(w string) bool {
		x := lx.single(w, t)
		return len(w) >= fewestApart && x != nil && x.Tree == nil
	}
	return whole(a) && t.Small[b] || t.Small[a] && whole(b) && lx.tellsOfJob(lx.single(b, t))
}

// tellsOfJob says whether a word tells something of a piece, of gear, or of what is asked.
func (lx *Lexicon) tellsOfJob(x *scan.Term) bool {
	return !x.Chatter && !x.Overlook && (x.Intent != "" || x.Shape != "" || x.Part != "" || x.Block != "" || len(x.Roles) > 0 || x.Note != "" || x.Condition != "")
}

// knows says whether a word is known in the languages of the message.
func (lx *Lexicon) knows(w string, t *scan.Tongue) bool {
	return lx.Root.child(w, t) != nil || t.Talk(w) != nil
}

package reader_test

import (
	"cmp"
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"
	"unicode"

	"heft/parser"
)

// mutations returns the text with one word dropped, doubled, or its number
// changed, at every place where that can be done.
func mutations(text string) (out []mutation) {
	words := strings.Fields(text)
	join := func(parts ...[]string) string {
		var all []string
		for _, p := range parts {
			all = append(all, p...)
		}
		return strings.Join(all, " ")
	}
	for i, w := range words {
		number := strings.IndexFunc(w, unicode.IsDigit) >= 0
		out = append(out,
			mutation{"dropped", w, number, join(words[:i], words[i+1:])},
			mutation{"doubled", w, number, join(words[:i+1], words[i:])},
		)
		if number {
			out = append(out, mutation{"changed", w, true, join(words[:i], []string{changeDigit(w)}, words[i+1:])})
		}
	}
	return out
}

type mutation struct {
	how, word string
	number    bool
	text      string
}

// changeDigit makes another number of it by its first digit.
func changeDigit(w string) string {
	i := strings.IndexFunc(w, unicode.IsDigit)
	d := (w[i]-'0')%8 + 1
	return w[:i] + string('0'+rune(d)) + w[i+1:]
}

// TestMutations hurts every phrasing in every way: what comes out must be a
// question all the same, an ask or a refusal, and no number may go lost on
// the way.
func TestMutations(t *testing.T) {
	r := newReader(t)
	for _, p := range readCorpora(t) {
		before, err := r.Read(p.text)
		if err != nil {
			continue
		}
		for _, m := range mutations(p.text) {
			after, err := r.Read(m.text)
			if err != nil {
				continue
			}
			if lost := lostDigit(m.text, after); lost >= 0 {
				t.Errorf("%s: %s %q: %q is answered as %s without its %q", p.at, m.how, m.word, m.text, meant(after), m.text[lost:])
			}
			if m.number && meant(after).String() == meant(before).String() && slices.EqualFunc(after.Pieces, before.Pieces, sameWords) && !(m.how == "doubled" && restated(m.text, after)) && !(m.how == "dropped" && m.word == "1") { // "a metre twenty" is one and twenty
				t.Errorf("%s: %s %q: %q still means %s", p.at, m.how, m.word, m.text, meant(after))
			}
		}
	}
}

func sameWords(a, b parser.Said[string]) bool { return a.Words == b.Words && a.Value == b.Value }

// restated says whether every number of the text is one of the quantities,
// some of them said twice.
func restated(text string, q parser.Question) bool { return lostDigit(text, q) < 0 }

// lostDigit returns the place of a digit that no quantity accounts for: that
// stands neither in the words of one nor in a number that says the same
// again. It is -1 where there is none.
func lostDigit(text string, q parser.Question) int {
	for i := 0; i < len(text); i++ {
		if text[i] < '0' || text[i] > '9' || covered(i, q) {
			continue
		}
		end := i
		for end < len(text) && (text[end] >= '0' && text[end] <= '9' || text[end] == '.') {
			end++
		}
		if !saidAgain(text[i:end], q) {
			return i
		}
		i = end
	}
	return -1
}

func covered(i int, q parser.Question) bool {
	for _, name := range []*parser.Said[string]{q.Arborist, q.Site} {
		if name != nil && name.Start <= i && i < name.End {
			return true
		}
	}
	for _, p := range slices.Concat(q.Pieces, q.Passed, q.Left) {
		if p.Start <= i && i < p.End {
			return true
		}
	}
	for _, x := range q.Quantities {
		if x.Start <= i && i < x.End {
			return true
		}
	}
	return false
}

// saidAgain says whether the number says a quantity once more: in its own
// words, or as the same value in any unit.
func saidAgain(number string, q parser.Question) bool {
	v, err := strconv.ParseFloat(strings.Trim(number, "."), 64)
	if bare := strings.TrimLeft(number, "0"); bare != number {
		number = cmp.Or(bare, "0") // "00 ft 1" says what "0 ft 1" does
	}
	for _, p := range q.Pieces {
		if q.InRow && strings.Contains(p.Value, number) {
			return true // each is read by itself, with what they share
		}
	}
	for _, x := range q.Quantities {
		if strings.Contains(x.Words, number) {
			return true
		}
		for _, u := range scales {
			if si := v * u.toSI; err == nil && (math.Abs(si-x.Low) <= 1e-9*si || math.Abs(si-x.High) <= 1e-9*si) {
				return true
			}
		}
	}
	return false
}

package scan

import (
	"strings"

	"heft/parser"
)

// Half and Quarter are the numbers that "and a half" and "and a quarter" add. A quarter
// is no number by itself, nor is an eighth or a sixteenth: "five eighths" is one.
const (
	Half      = 0.5
	Quarter   = 0.25
	Eighth    = 0.125
	Sixteenth = 0.0625
)

// CuePartOf leads from a part to what it is of: "a quarter of the log".
const CuePartOf Cue = "part-of"

// numberWordsIn returns the length of the number in words at the start of s,
// 0 where there is none. "One" is one only before something that is counted:
// "that one" and "one more thing" are no numbers. So is a half.
func (t *Tongue) numberWordsIn(s string) int {
	v, n := t.NumberWords(s)
	if _, more := t.SpokenDecimals(s[n:], false); n > 0 && more > 0 && v != Half && !t.Optional[Fold(s[:n])] {
		return n + more
	}
	if n > 0 && v < 1 && v != Half {
		return n // "five eighths"
	}
	if n == 0 || v <= 1 && !t.countsOne(v, s[:n], s[n:]) || v == 2 && twoBlock(s[n:]) {
		return 0
	}
	return n
}

// articleOfUnit returns the length of the article at the start of s where the
// name of a unit follows it, "half a metre", 0 where none does.
func (t *Tongue) articleOfUnit(s string) int {
	word, n := NextWord(s)
	if next, _ := NextWord(s[n:]); t.Optional[word] && t.unitName(next) != nil {
		return n
	}
	return 0
}

// unitName is the unit that a word is the whole name of, nil for none.
func (t *Tongue) unitName(word string) *UnitWord {
	const shortest = 4 // "in" and "ft" are no names
	if u := t.Units[word]; u != nil && !u.Unsure && len(word) >= shortest {
		return u
	}
	return nil
}

// oneUnit returns the length of an article that is the number one, "a foot
// across", 0 where it is none.
func (t *Tongue) oneUnit(s string) int {
	word, n := NextWord(s)
	next, _ := NextWord(s[n:])
	if u := t.unitName(next); t.Articles[word] && u != nil && u.Dim == parser.DimLength {
		return n
	}
	return 0
}

// twoBlock says whether "two" is no number: "will it two-block". "Two blocks"
// are two, "it two-blocks" is not.
func twoBlock(rest string) bool {
	next, _ := NextWord(rest)
	return next == "block" || next == "blocking" || next == "blocked" || next == "blocks" && strings.HasPrefix(rest, "-")
}

// countsOne says whether what follows "one" makes it a number. Behind "one"
// another number makes it doubtful ("one fifty"), so that it is asked about;
// a word that is an article too is one there.
func (t *Tongue) countsOne(v float64, one, rest string) bool {
	next, end := NextWord(rest)
	if next == "in" {
		return false // "one in the tree"
	}
	if t.Units[next] != nil || t.Counted[next] || t.Numbers[next].adds() && !t.Optional[Fold(one)] {
		return true
	}
	after, n := NextWord(rest[end:])
	if j, ok := t.Joins[next]; ok && j == Or && t.Numbers[after].adds() {
		return true // "one or two wraps"
	}
	if t.Optional[after] {
		after, _ = NextWord(rest[end+n:])
	}
	return v == 1 && t.Counted[next+" "+after] // "one of us", "one on the rope"
}

// adds says whether the word is a number that is no multiple of another.
func (n NumberWord) adds() bool { return n.Value >= 1 && !n.Scale }

// NumberWords reads "two", "twenty-two", "fifteen hundred", "two thousand four
// hundred", "treinta y cinco" and "dos y medio" at the start of s: the value
// and the length, 0 for none.
func (t *Tongue) NumberWords(s string) (sum float64, n int) {
	part, open := 0.0, 1000.0 // the number so far; the next word must be below open
	for {
		word, end := NextWord(s[n:])
		w := t.Numbers[word]
		switch v := w.Value; {
		case w.adds() && v < open:
			part += v
			open = below(v)
		case w.Scale && part < v && (part > 0 || n == 0) && (sum == 0 || v < 1000):
			part = max(part, 1) * v
			open = 100
			if v == 1000 {
				sum, part, open = part, 0, 1000
			}
		case w.Nought && n > 0 && sum == 0 && part < 100 && t.below100(s[n+end:], 10):
			part, open = part*100, 10 // "two oh five"
		case w.Plus && open == 10 && t.below100(s[n+end:], 10):
			open = 10 // "treinta y cinco"
		case w.Plus && open == 100 && n > 0 && t.below100(s[n+end:], 100):
			open = 100 // "six hundred and fifty"
		case v == Half && n == 0:
			return Half, end + t.articleOfUnit(s[end:])
		case sum == 0 && t.inchParts(part, v, s[n+end:]):
			return part * v, n + end // "five eighths"
		default:
			if more, size := t.AndPart(s[n:]); n > 0 && size > 0 {
				return sum + part + more, n + size
			}
			return sum + part, n
		}
		n += end
	}
}

// inchParts says whether so many parts are one fraction as a rule is marked in, and rest
// names nothing that they are of: "five eighths", "three quarter inch", and not "three
// quarters of the log".
func (t *Tongue) inchParts(many, part float64, rest string) bool {
	whole := many * part
	return part > 0 && part < Half && whole > part && whole < 1 && int(many)%2 == 1 && !t.ofThing(rest)
}

// below100 says whether a number word below so much, a hundred at the most,
// starts s.
func (t *Tongue) below100(s string, most float64) bool {
	word, _ := NextWord(s)
	w := t.Numbers[word]
	return w.adds() && w.Value < most
}

// below is what the word behind one of a number must be less than.
func below(v float64) float64 {
	switch {
	case v >= 100:
		return 100
	case v >= 20:
		return 10
	}
	return 1
}

// AndPart reads "y medio", "and a half" or "y cuarto" at the start of s: the part and its
// length, 0 for none. A quarter of a thing goes on from no number.
func (t *Tongue) AndPart(s string) (part float64, n int) {
	and, n := NextWord(s)
	if !t.Numbers[and].Plus {
		return 0, 0
	}
	word, size := NextWord(s[n:])
	if t.Optional[word] {
		n += size
		word, size = NextWord(s[n:])
	}
	part = t.Numbers[word].Value
	if n += size; part != Half && (part != Quarter || t.ofThing(s[n:])) {
		return 0, 0
	}
	return part, n
}

// ofThing says whether what s starts with tells what a part is of: "of the log".
func (t *Tongue) ofThing(s string) bool {
	of, n := NextWord(s)
	the, _ := NextWord(s[n:])
	return t.Cued(of, CuePartOf) && t.Optional[the]
}

// NextWord returns the letters at the start of s, folded, spaces or a hyphen
// before them passed over, and where they end.
func NextWord(s string) (word string, end int) {
	gap := len(s) - len(strings.TrimLeft(s, " \t\u00a0"))
	if gap == 0 && strings.HasPrefix(s, "-") {
		gap = 1
	}
	end = gap + lettersIn(s[gap:])
	return Fold(s[gap:end]), end
}

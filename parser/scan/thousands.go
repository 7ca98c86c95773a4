package scan

import "strings"

// Thousands and hundreds are told in a word behind figures: "10 mil libras", "2 mil
// 500", "12 thousand pounds", "12 hundred pounds".

// thousandsBehind is the length of such a word behind figures, with the hundreds
// that go on from it; 0 where there is none, or where another number follows.
func (t *Tongue) thousandsBehind(figures, rest string) int {
	const most = 3 // figures
	if !Digits(figures) || len(figures) > most || !strings.HasPrefix(rest, " ") {
		return 0
	}
	word, n := NextWord(rest)
	w := t.Numbers[word]
	if !w.Scale || w.Value < 100 {
		return 0
	}
	left := strings.TrimLeft(rest[n:], " ")
	run := 0
	if numeral(left) {
		run = numberEnd(left, 0)
	}
	switch {
	case run == 0 && t.numberWordsIn(left) == 0:
		return n
	case w.Value == 1000 && run == most && Digits(left[:run]) && left[0] != '0' && len(rest)-len(left) > n:
		return len(rest) - len(left) + run
	}
	return 0
}

// Digits says whether a text is figures alone.
func Digits(s string) bool {
	return s != "" && strings.Trim(s, "0123456789") == ""
}

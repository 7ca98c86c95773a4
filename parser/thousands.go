package parser

import (
	"strconv"
	"strings"
)

// Thousands and hundreds are told in a word behind figures: "10 mil libras", "2 mil
// 500", "12 thousand pounds", "12 hundred pounds".

// thousandsBehind is the length of such a word behind figures, with the hundreds
// that go on from it; 0 where there is none, or where another number follows.
func (t *tongue) thousandsBehind(figures, rest string) int {
	const most = 3 // figures
	if !digits(figures) || len(figures) > most || !strings.HasPrefix(rest, " ") {
		return 0
	}
	word, n := nextWord(rest)
	w := t.numbers[word]
	if !w.scale || w.value < 100 {
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
	case w.value == 1000 && run == most && digits(left[:run]) && left[0] != '0' && len(rest)-len(left) > n:
		return len(rest) - len(left) + run
	}
	return 0
}

// inThousands is the value of figures with such a word behind them.
func (t *tongue) inThousands(s string) (float64, bool) {
	parts := strings.Fields(s)
	if len(parts) < 2 || len(parts) > 3 || !digits(parts[0]) {
		return 0, false
	}
	w := t.numbers[fold(parts[1])]
	if !w.scale || w.value < 100 {
		return 0, false
	}
	v, _ := strconv.ParseFloat(parts[0], 64)
	v *= w.value
	if len(parts) == 3 {
		more, err := strconv.ParseFloat(parts[2], 64)
		return v + more, err == nil
	}
	return v, true
}

// digits says whether a text is figures alone.
func digits(s string) bool {
	return s != "" && strings.Trim(s, "0123456789") == ""
}

package parser

import "strings"

// ones and tens are the numbers that are typed as words.
var ones = map[string]float64{
	"one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "seven": 7, "eight": 8,
	"nine": 9, "ten": 10, "eleven": 11, "twelve": 12, "thirteen": 13, "fourteen": 14,
	"fifteen": 15, "sixteen": 16, "seventeen": 17, "eighteen": 18, "nineteen": 19,
}

var tens = map[string]float64{
	"twenty": 20, "thirty": 30, "forty": 40, "fifty": 50, "sixty": 60, "seventy": 70,
	"eighty": 80, "ninety": 90,
}

var scales = map[string]float64{"hundred": 100, "thousand": 1000}

// numberWordsIn returns the length of the number in words at the start of s,
// 0 where there is none. "One" is one only before something that is counted:
// "that one" and "one more thing" are no numbers.
func numberWordsIn(s string) int {
	v, n := numberWords(s)
	if n == 0 || v == 1 && !countsOne(s[n:]) || v == 2 && twoBlock(s[n:]) {
		return 0
	}
	return n
}

// twoBlock says whether "two" is no number: "will it two-block".
func twoBlock(rest string) bool {
	next, _ := nextWord(rest)
	return next == "block" || next == "blocking" || next == "blocked"
}

// countsOne says whether what follows "one" makes it a number. Behind "one"
// another number makes it doubtful ("one fifty"), so that it is asked about.
func countsOne(rest string) bool {
	next, end := nextWord(rest)
	if next == "of" || next == "on" { // "one of us", "one on the rope"
		after, n := nextWord(rest[end:])
		if after == "the" {
			after, _ = nextWord(rest[end+n:])
		}
		return next == "of" && after == "us" || next == "on" && (after == "rope" || after == "line" || after == "drum")
	}
	return next != "in" && (unitsTyped[next] != nil || countedAfterOne[next] || ones[next]+tens[next] > 0)
}

// countedAfterOne has what follows "one" when it is a number.
var countedAfterOne = map[string]bool{
	"wrap": true, "turn": true, "person": true, "man": true, "guy": true, "groundie": true, "groundworker": true,
	"full": true, "lad": true, "bloke": true, "hand": true, "leg": true, "handler": true, "holding": true, "pulling": true,
}

// numberWords reads "two", "twenty-two", "fifteen hundred" and "two thousand
// four hundred" at the start of s: the value and the length, 0 for none.
func numberWords(s string) (sum float64, n int) {
	part, open := 0.0, 100.0 // the number so far; the next word must be below open
	for {
		word, end := nextWord(s[n:])
		switch v, w := ones[word]+tens[word], scales[word]; {
		case v > 0 && v < open:
			part += v
			open = 1
			if v >= 20 {
				open = 10
			}
		case w > 0 && part < w && (part > 0 || n == 0) && (sum == 0 || w < 1000):
			part = max(part, 1) * w
			open = 100
			if w == 1000 {
				sum, part = part, 0
			}
		default:
			return sum + part, n
		}
		n += end
	}
}

// nextWord returns the letters at the start of s, in lower case, spaces or a
// hyphen before them passed over, and where they end.
func nextWord(s string) (word string, end int) {
	gap := len(s) - len(strings.TrimLeft(s, " \t\u00a0"))
	if gap == 0 && strings.HasPrefix(s, "-") {
		gap = 1
	}
	end = gap + lettersIn(s[gap:])
	return lower(s[gap:end]), end
}

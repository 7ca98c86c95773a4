package parser

import (
	"regexp"
	"strconv"
	"strings"
	"unicode/utf8"
)

// vulgar has the fractions that phones write as one character.
var vulgar = map[rune]float64{
	'½': 1. / 2, '⅓': 1. / 3, '⅔': 2. / 3, '¼': 1. / 4, '¾': 3. / 4,
	'⅛': 1. / 8, '⅜': 3. / 8, '⅝': 5. / 8, '⅞': 7. / 8,
}

// numberWords are the numbers that are typed as words.
var numberWords = map[string]float64{
	"one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "seven": 7, "eight": 8,
	"nine": 9, "ten": 10, "eleven": 11, "twelve": 12, "thirteen": 13, "fourteen": 14,
	"fifteen": 15, "sixteen": 16, "seventeen": 17, "eighteen": 18, "nineteen": 19,
	"twenty": 20, "thirty": 30, "forty": 40, "fifty": 50, "sixty": 60, "seventy": 70,
	"eighty": 80, "ninety": 90,
}

var (
	grouped  = regexp.MustCompile(`^[1-9]\d{0,2}(,\d{3})+(\.\d+)?$`)
	decimal  = regexp.MustCompile(`^(\d+(\.\d+)?|\.\d+)$`)
	fraction = regexp.MustCompile(`^(\d+)/(\d+)`)
	// pointed is a number that an English eye reads as a decimal and a
	// Spanish or German one as thousands.
	pointed = regexp.MustCompile(`^[1-9]\d{0,2}\.\d{3}$`)
)

// digitRun returns the end of the run of digits, points and commas that
// starts at i; a point or comma belongs to it only between digits.
func digitRun(s string, i int) int {
	if s[i] == '.' {
		i++
	}
	for i < len(s) {
		switch {
		case isDigit(s[i]):
			i++
		case (s[i] == '.' || s[i] == ',') && isDigit(s[i-1]) && i+1 < len(s) && isDigit(s[i+1]):
			i++
		default:
			return i
		}
	}
	return i
}

// numberEnd returns the end of the number that starts at i, taking in a
// fraction behind it ("14-1/2", "14 1/2", "14½") or below it ("5/8").
func numberEnd(s string, i int) int {
	end := digitRun(s, i)
	if strings.ContainsAny(s[i:end], ".,") {
		return end
	}
	if n := properFraction(s[i:]); n > 0 {
		return i + n
	}
	rest := s[end:]
	if len(rest) > 1 && (rest[0] == '-' || rest[0] == ' ') {
		if n := properFraction(rest[1:]); n > 0 {
			return end + 1 + n
		}
	}
	if n := vulgarAt(strings.TrimPrefix(rest, " ")); n > 0 {
		return end + (len(rest) - len(strings.TrimPrefix(rest, " "))) + n
	}
	if len(rest) > 0 && (rest[0] == 'k' || rest[0] == 'K') && (len(rest) == 1 || !isLetterByte(rest[1])) {
		return end + 1
	}
	return end
}

// properFraction returns the length of a fraction below one, of the kind that
// a rule is marked in, at the start of s.
func properFraction(s string) int {
	if len(s) < 3 || !isDigit(s[0]) {
		return 0
	}
	m := fraction.FindStringSubmatch(s)
	if m == nil || (len(m[0]) < len(s) && isDigit(s[len(m[0])])) {
		return 0
	}
	top, _ := strconv.Atoi(m[1])
	bottom, _ := strconv.Atoi(m[2])
	switch bottom {
	case 2, 3, 4, 8, 16, 32, 64:
		if top > 0 && top < bottom {
			return len(m[0])
		}
	}
	return 0
}

func vulgarAt(s string) int {
	r, n := utf8.DecodeRuneInString(s)
	if _, ok := vulgar[r]; ok {
		return n
	}
	return 0
}

// value is the number that a literal stands for; false where it stands for
// none, or could stand for two.
func value(s string) (float64, bool) {
	if v, ok := wordValue(s); ok {
		return v, true
	}
	whole, part := s, 0.0
	if r, n := utf8.DecodeLastRuneInString(s); vulgar[r] > 0 {
		whole, part = strings.TrimSpace(s[:len(s)-n]), vulgar[r]
	} else if i := strings.IndexByte(s, '/'); i >= 0 {
		j := strings.LastIndexAny(s[:i], "- ")
		top, _ := strconv.ParseFloat(s[j+1:i], 64)
		bottom, _ := strconv.ParseFloat(s[i+1:], 64)
		whole, part = s[:max(j, 0)], top/bottom
	}
	if whole == "" {
		return part, true
	}
	v, ok := plain(whole)
	return v + part, ok
}

func plain(s string) (float64, bool) {
	scale := 1.0
	if t := strings.TrimRight(s, "kK"); t != s {
		s, scale = t, 1000
	}
	if grouped.MatchString(s) {
		s = strings.ReplaceAll(s, ",", "")
	}
	if !decimal.MatchString(s) {
		return 0, false
	}
	v, err := strconv.ParseFloat(s, 64)
	return v * scale, err == nil
}

// wordValue reads "two", "twenty two" and "twenty-two".
func wordValue(s string) (float64, bool) {
	if s == "" || isDigit(s[0]) {
		return 0, false
	}
	sum := 0.0
	for _, w := range strings.FieldsFunc(strings.ToLower(s), func(r rune) bool { return r == ' ' || r == '-' }) {
		v, ok := numberWords[w]
		if !ok {
			return 0, false
		}
		sum += v
	}
	return sum, true
}

func isDigit(b byte) bool { return '0' <= b && b <= '9' }

func isLetterByte(b byte) bool { return 'a' <= b|0x20 && b|0x20 <= 'z' || b >= utf8.RuneSelf }

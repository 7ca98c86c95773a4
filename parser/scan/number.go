package scan

import (
	"strconv"
	"strings"
	"unicode/utf8"
)

// Vulgar has the fractions that phones write as one character.
var Vulgar = map[rune]float64{
	'½': 1. / 2, '⅓': 1. / 3, '⅔': 2. / 3, '¼': 1. / 4, '¾': 3. / 4,
	'⅛': 1. / 8, '⅜': 3. / 8, '⅝': 5. / 8, '⅞': 7. / 8,
}

// vulgarAt returns the length of such a fraction at the start of s, or 0.
func vulgarAt(s string) int {
	if s == "" || s[0] < utf8.RuneSelf {
		return 0
	}
	r, n := utf8.DecodeRuneInString(s)
	if _, ok := Vulgar[r]; ok {
		return n
	}
	return 0
}

// digitRun returns the end of the run of digits, points and commas that
// starts at i; a point or comma belongs to it only between digits.
func digitRun(s string, i int) int {
	if s[i] == '.' {
		i++
	}
	for i < len(s) {
		switch {
		case IsDigit(s[i]):
			i++
		case (s[i] == '.' || s[i] == ',') && IsDigit(s[i-1]) && i+1 < len(s) && IsDigit(s[i+1]):
			i++
		case doubledPoint(s, i):
			i += 2
		default:
			return i
		}
	}
	return i
}

// doubledPoint says whether a point or comma is typed twice inside a number:
// "22..5" is no number, and no two either.
func doubledPoint(s string, i int) bool {
	return (s[i] == '.' || s[i] == ',') && IsDigit(s[i-1]) && i+2 < len(s) && s[i+1] == s[i] && IsDigit(s[i+2])
}

// numberEnd returns the end of the number that starts at i, taking in a
// fraction behind it ("14-1/2", "14 1/2", "14½") or below it ("5/8"), or the
// k of thousands.
func numberEnd(s string, i int) int {
	end := digitRun(s, i)
	rest := s[end:]
	if len(rest) > 0 && rest[0]|0x20 == 'k' && (len(rest) == 1 || !isLetterByte(rest[1])) {
		return end + 1
	}
	if strings.ContainsAny(s[i:end], ".,") {
		return end
	}
	if n := properFraction(s[i:]); n > 0 {
		return i + n
	}
	part := strings.TrimLeft(rest, " ")
	if part == rest {
		part = strings.TrimPrefix(rest, "-")
	}
	n := vulgarAt(part)
	if n == 0 && part != rest {
		n = properFraction(part)
	}
	if n > 0 {
		return len(s) - len(part) + n
	}
	return end
}

// properFraction returns the length of a fraction below one, of the kind that
// a rule is marked in, at the start of s.
func properFraction(s string) int {
	over := strings.IndexByte(s[:min(len(s), 3)], '/')
	if over < 1 {
		return 0
	}
	end := over + 1
	for end < len(s) && IsDigit(s[end]) {
		end++
	}
	top, err1 := strconv.Atoi(s[:over])
	bottom, err2 := strconv.Atoi(s[over+1 : end])
	if err1 != nil || err2 != nil || top < 1 || top >= bottom {
		return 0
	}
	switch bottom {
	case 2, 3, 4, 8, 16, 32, 64:
		return end
	}
	return 0
}

// Plain is the value of a number in digits, "1,400" or "16k".
func (t *Tongue) Plain(s string) (float64, bool) {
	scale := 1.0
	if t := strings.TrimRight(s, "kK"); t != s {
		s, scale = t, 1000
	}
	switch {
	case Grouped(s):
		s = strings.ReplaceAll(s, ",", "")
	case t.Comma && strings.Count(s, ",") == 1 && !strings.Contains(s, "."):
		s = strings.Replace(s, ",", ".", 1)
	}
	v, err := strconv.ParseFloat(s, 64)
	return v * scale, err == nil
}

// Grouped says whether a number has commas between its thousands: 1,400.
func Grouped(s string) bool {
	s, _, _ = strings.Cut(s, ".")
	groups := strings.Split(s, ",")
	for _, g := range groups[1:] {
		if len(g) != 3 {
			return false
		}
	}
	return len(groups) > 1 && len(groups[0]) < 4 && groups[0][0] != '0'
}

// Pointed says whether an English eye reads the number as a decimal and a
// Spanish or German one as thousands: 1.400.
func Pointed(s string) bool {
	whole, part, _ := strings.Cut(s, ".")
	return len(part) == 3 && IsDigit(part[2]) && len(whole) > 0 && len(whole) < 4 && whole[0] != '0'
}

// IsDigit says whether a byte is a digit.
func IsDigit(b byte) bool { return '0' <= b && b <= '9' }

func isLetterByte(b byte) bool { return 'a' <= b|0x20 && b|0x20 <= 'z' || b >= utf8.RuneSelf }

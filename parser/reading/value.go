package reading

import (
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"heft/parser/scan"
)

// value is the number that a literal stands for; false where it stands for
// none, or could stand for two.
func value(t *scan.Tongue, s string) (float64, bool) {
	if r, n := utf8.DecodeRuneInString(s); strings.ContainsRune(scan.Dashes, r) {
		v, ok := value(t, s[n:])
		return -v, ok
	}
	if s[0] < utf8.RuneSelf && !scan.IsDigit(s[0]) && s[0] != '.' {
		if t.Articles[scan.Fold(s)] {
			return 1, true
		}
		v, n := t.NumberWords(s)
		if part, more := t.SpokenDecimals(s[n:], false); more > 0 {
			return v + part, n+more == len(s)
		}
		return v, n == len(s) || v == scan.Half && t.Optional[scan.Fold(strings.TrimSpace(s[n:]))] // "half a"
	}
	if v, ok := inThousands(t, s); ok {
		return v, true
	}
	if i := strings.IndexFunc(s, unicode.IsLetter); i > 0 && !strings.HasSuffix(scan.Lower(s), "k") {
		v, ok := value(t, strings.TrimRight(s[:i], " "))
		if part, more := t.SpokenDecimals(s[i:], true); more > 0 {
			return v + part, ok // "1 point 2"
		}
		part, _ := t.AndPart(s[i:]) // "14 y medio"
		return v + part, ok
	}
	whole, part := s, 0.0
	if r, n := utf8.DecodeLastRuneInString(s); n > 1 {
		whole, part = strings.TrimRight(s[:len(s)-n], " -"), scan.Vulgar[r]
	} else if i := strings.IndexByte(s, '/'); i >= 0 {
		j := strings.LastIndexAny(s[:i], "- ")
		top, _ := strconv.ParseFloat(s[j+1:i], 64)
		bottom, _ := strconv.ParseFloat(s[i+1:], 64)
		whole, part = strings.TrimRight(s[:max(j, 0)], " "), top/bottom
	}
	if whole == "" {
		return part, true
	}
	v, ok := t.Plain(whole)
	return v + part, ok
}

// inThousands is the value of figures with such a word behind them.
func inThousands(t *scan.Tongue, s string) (float64, bool) {
	parts := strings.Fields(s)
	if len(parts) < 2 || len(parts) > 3 || !scan.Digits(parts[0]) {
		return 0, false
	}
	w := t.Numbers[scan.Fold(parts[1])]
	if !w.Scale || w.Value < 100 {
		return 0, false
	}
	v, _ := strconv.ParseFloat(parts[0], 64)
	v *= w.Value
	if len(parts) == 3 {
		more, err := strconv.ParseFloat(parts[2], 64)
		return v + more, err == nil
	}
	return v, true
}

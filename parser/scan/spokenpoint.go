package scan

import (
	"strconv"
	"strings"
)

// Who dictates says the decimal point: "one point two metres", "dos coma cinco
// toneladas". The places behind it are said one by one, or two as a number of their
// own: "four point seven five", "four point seventy five".

// SpokenDecimals is what a decimal point that is spelled out at the start of s adds to
// the whole number before it, and its length; 0 where no places follow, or where they
// count what follows: "at one point two guys". Behind a whole number in figures they are
// figures too: "to one point 30 apart" has none.
func (t *Tongue) SpokenDecimals(s string, figures bool) (part float64, n int) {
	point, n := NextWord(s)
	if !t.Numbers[point].Point {
		return 0, 0
	}
	places, size := t.spokenPlaces(s[n:], figures)
	n += size
	next, _ := NextWord(s[n:])
	if places == "" || t.Counted[strings.TrimSuffix(next, "s")] || t.Numbers[next].Scale {
		return 0, 0
	}
	part, _ = strconv.ParseFloat("0."+places, 64)
	return part, n
}

// spokenPlaces reads the decimal places at the start of s, typed in figures or as words.
func (t *Tongue) spokenPlaces(s string, figures bool) (places string, n int) {
	const most = 3
	if left := strings.TrimLeft(s, " "); figures {
		end := len(left) - len(strings.TrimLeft(left, "0123456789"))
		if end == 0 || end > most || end < len(left) && strings.ContainsRune(".,/", rune(left[end])) && numeral(left[end+1:]) {
			return "", 0
		}
		return left[:end], len(s) - len(left) + end
	}
	for len(places) < most {
		v, size := t.NumberWords(s[n:])
		if size == 0 || v != float64(int(v)) || v >= 100 || v >= 10 && places != "" {
			break
		}
		places += strconv.Itoa(int(v))
		n += size
	}
	return places, n
}

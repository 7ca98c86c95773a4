package parser

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"golang.org/x/text/unicode/norm"
)

// splitWords returns the words of a run, folded.
func splitWords(run string) []string {
	out := strings.FieldsFunc(run, gap)
	for i, w := range out {
		out[i] = fold(w)
	}
	return out
}

// gap says whether a character stands between two words of a run.
func gap(r rune) bool {
	return blank(r) && !unicode.Is(unicode.Mn, r) || strings.ContainsRune(dashes, r)
}

// fold takes off case, accents and the curl of an apostrophe.
func fold(s string) string {
	low := lower(s)
	if i := strings.IndexRune(low, '’'); i >= 0 {
		low = strings.ReplaceAll(low, "’", "'")
	}
	for i := 0; i < len(low); i++ {
		if low[i] >= utf8.RuneSelf {
			return unaccented(low)
		}
	}
	return low
}

// unaccented leaves out the marks that stand over and under letters.
func unaccented(s string) string {
	apart := norm.NFD.AppendString(make([]byte, 0, 2*len(s)), s)
	out, ascii := apart[:0], true
	for i := 0; i < len(apart); {
		r, n := utf8.DecodeRune(apart[i:])
		if !unicode.Is(unicode.Mn, r) {
			out = append(out, apart[i:i+n]...)
			ascii = ascii && r < utf8.RuneSelf
		}
		i += n
	}
	if ascii {
		return string(out)
	}
	return norm.NFC.String(string(out))
}

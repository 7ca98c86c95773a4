package parser

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"golang.org/x/text/unicode/norm"
)

// splitWords returns the words of a run, folded.
func splitWords(run string) []string { return appendFolded(nil, run) }

// appendFolded appends the words of a run, folded.
func appendFolded(words []string, run string) []string {
	run = fold(run)
	start := -1
	for i, r := range run {
		switch between := gap(r); {
		case between && start >= 0:
			words, start = append(words, run[start:i]), -1
		case !between && start < 0:
			start = i
		}
	}
	if start >= 0 {
		words = append(words, run[start:])
	}
	return words
}

// gap says whether a character stands between two words of a run.
func gap(r rune) bool {
	if r < utf8.RuneSelf {
		return r == '-' || blank(r)
	}
	return blank(r) && !unicode.Is(unicode.Mn, r) || strings.ContainsRune(dashes, r)
}

// fold takes off case, accents and the curl of an apostrophe.
func fold(s string) string {
	low := lower(s)
	for i := 0; i < len(low); i++ {
		if low[i] >= utf8.RuneSelf {
			return unaccented(strings.ReplaceAll(low, "’", "'"))
		}
	}
	return low
}

// unaccented leaves out the marks that stand over and under letters.
func unaccented(s string) string {
	out, ascii := make([]byte, 0, len(s)), true
	for i := 0; i < len(s); {
		if s[i] < utf8.RuneSelf {
			out = append(out, s[i])
			i++
			continue
		}
		p := norm.NFD.PropertiesString(s[i:])
		n := max(1, p.Size()) // none of what is part of no character
		apart := p.Decomposition()
		if apart == nil {
			apart = append(make([]byte, 0, utf8.UTFMax), s[i:i+n]...)
		}
		i += n
		for len(apart) > 0 {
			r, n := utf8.DecodeRune(apart)
			if !unicode.Is(unicode.Mn, r) {
				out = append(out, apart[:n]...)
				ascii = ascii && r < utf8.RuneSelf
			}
			apart = apart[n:]
		}
	}
	if ascii {
		return string(out)
	}
	return norm.NFC.String(string(out))
}

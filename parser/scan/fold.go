package scan

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"golang.org/x/text/unicode/norm"
)

// SplitWords returns the words of a run, folded.
func SplitWords(run string) []string { return AppendFolded(nil, run) }

// AppendFolded appends the words of a run, folded.
func AppendFolded(words []string, run string) []string {
	run = Fold(run)
	start := -1
	for i, r := range run {
		switch between := Gap(r); {
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

// Gap says whether a character stands between two words of a run.
func Gap(r rune) bool {
	if r < utf8.RuneSelf {
		return r == '-' || Blank(r)
	}
	return Blank(r) && !unicode.Is(unicode.Mn, r) || strings.ContainsRune(Dashes, r)
}

// Fold takes off case, accents and the curl of an apostrophe.
func Fold(s string) string {
	low := Lower(s)
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

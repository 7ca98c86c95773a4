package reading

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"heft/parser"
)

// Symbol says whether a word is an emoji or the like.
func Symbol(w string) bool {
	r, _ := utf8.DecodeRuneInString(w)
	return r >= utf8.RuneSelf && (unicode.Is(unicode.So, r) || unicode.Is(unicode.Sk, r))
}

// MendUnit gives the number right before a run of words the unit that its first
// was mended to: "14 pulgdas".
func (rd *Reading) MendUnit(word string, end int) bool {
	u, last := rd.In.Units[word], len(rd.Elems)-1
	if u == nil || u.Unsure || last < 0 || rd.Elems[last].Fig == nil || rd.Elems[last].Fig.Unit != nil || rd.Elems[last].Fig.Dim != parser.DimCount {
		return false
	}
	f := rd.Elems[last].Fig
	f.Unit, f.Dim, f.Low, f.High, f.End = u, u.Dim, f.Low*u.Factor, f.High*u.Factor, end
	rd.Elems[last].End = end
	return true
}

// BehindNumber says whether a number without a unit ends right before a place in the text,
// so that a unit may be typed there as one with the next word: "12 ftlong".
func (rd *Reading) BehindNumber(at int) bool {
	last := len(rd.Elems) - 1
	return last >= 0 && rd.Elems[last].Fig != nil && rd.Elems[last].Fig.Unit == nil && strings.TrimSpace(rd.Text[rd.Elems[last].End:at]) == ""
}

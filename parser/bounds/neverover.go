package bounds

import (
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// Apiece finds the word behind the limit at i that says that it is each piece's: "a
// bit", "each", "per cut"; -1 where none stands there.
func Apiece(rd *reading.Reading, i int) int {
	if rd.TermAt(i).Each {
		return i
	}
	j := i
	if rd.At(j).Marked(lexicon.MarkArticle) || rd.Cued(rd.At(j), lexicon.CuePer) {
		j++
	}
	if j > i && (rd.TermAt(j).Unnamed || rd.Cued(rd.At(j), lexicon.CueLot)) {
		rd.Alter(i, func(t *scan.Term) { *t = scan.Term{} })
		return j
	}
	return -1
}

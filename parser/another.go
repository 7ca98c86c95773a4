package parser

// another reads "another 14 in red oak limb" as a piece like any: it is worked out
// by itself. "Another 15 ft" and "another 600 lb limb" could be added to what was
// said before.
func (rd *reading) another(i int) {
	j := i + 1
	for rd.at(j).marked(markAdjective) || rd.fineAt(j) {
		j++
	}
	if rd.anyAt(rd.fineAt) && (rd.at(j).piece() || rd.termAt(j).unnamed) {
		rd.alter(i, func(t *term) { *t = term{marks: markArticle} })
	}
}

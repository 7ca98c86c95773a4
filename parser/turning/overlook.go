package turning

import (
	"slices"

	"heft/parser"
	"heft/parser/reading"
)

// PassedOutside is what is left out and said back that stands in none of some
// parts of the text: each of those is read by itself, and says what it leaves out.
func PassedOutside(rd *reading.Reading, parts []parser.Said[string]) []parser.Said[string] {
	return slices.DeleteFunc(slices.Clone(rd.Passed), func(p parser.Said[string]) bool {
		return slices.ContainsFunc(parts, func(part parser.Said[string]) bool { return p.Start >= part.Start && p.End <= part.End })
	})
}

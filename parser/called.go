package parser

import (
	"encoding/csv"
	"slices"
	"strings"
	"sync"
)

// In is what the tree is called in a language: as it was named, where that is
// of the language, or else by the first name that the language has for it
// alone; a genus by the first that means it at all. Where the language has
// none it is the name that was given, and not known. Latin is known in any.
func (s Species) In(language string) (name string, known bool) {
	own := func(n tree) bool { return n.name == s.Name && n.language == language }
	foreign := func(n tree) bool { return n.name == s.Name && n.language != language }
	first := func(n tree) bool {
		return n.sci == s.Scientific && n.language == language && (len(n.others) == 0 || genus(n.sci))
	}
	all := names()
	taken := slices.ContainsFunc(all, foreign)
	if slices.ContainsFunc(all, own) || language == "en" && !taken {
		return s.Name, true
	}
	if i := slices.IndexFunc(all, first); i >= 0 {
		return all[i].name, true
	}
	return s.Name, !taken
}

// names are the lines of the table of names.
var names = sync.OnceValue(func() []tree {
	rows, _ := csv.NewReader(strings.NewReader(namesCSV)).ReadAll() // malformed, no reader is made of it
	var out []tree
	for _, r := range rows[1:] {
		out = append(out, tree{name: r[0], language: r[1], sci: r[2], others: splitList(r[3])})
	}
	return out
})

package parser

import (
	_ "embed"
	"encoding/csv"
	"slices"
	"strings"
	"sync"
)

// Tree is what a name of a tree stands for.
type Tree struct {
	Name     string
	Language string // of the name, "" for the caller's and the Latin
	Sci      string
	Others   []string // where several trees share the name: all of them
}

// In is what the tree is called in a language: as it was named, where that is
// of the language, or else by the first name that the language has for it
// alone; a genus by the first that means it at all. Where the language has
// none it is the name that was given, and not known. Latin is known in any.
func (s Species) In(language string) (name string, known bool) {
	own := func(n Tree) bool { return n.Name == s.Name && n.Language == language }
	foreign := func(n Tree) bool { return n.Name == s.Name && n.Language != language }
	first := func(n Tree) bool {
		return n.Sci == s.Scientific && n.Language == language && (len(n.Others) == 0 || Genus(n.Sci))
	}
	all := names()
	taken := slices.ContainsFunc(all, foreign)
	if slices.ContainsFunc(all, own) || language == "en" && !taken {
		return s.Name, true
	}
	if i := slices.IndexFunc(all, first); i >= 0 {
		return all[i].Name, true
	}
	return s.Name, !taken
}

// names are the lines of the table of names.
var names = sync.OnceValue(func() []Tree {
	rows, _ := csv.NewReader(strings.NewReader(NamesCSV)).ReadAll() // malformed, no reader is made of it
	var out []Tree
	for _, r := range rows[1:] {
		out = append(out, Tree{Name: r[0], Language: r[1], Sci: r[2], Others: SplitList(r[3])})
	}
	return out
})

//go:embed names.csv
var NamesCSV string

// SplitList are the parts of a list in the table of names.
func SplitList(s string) []string {
	if s == "" {
		return nil
	}
	out := strings.Split(s, ";")
	for i := range out {
		out[i] = strings.TrimSpace(out[i])
	}
	return out
}

// Genus says whether a scientific name is that of a genus only.
func Genus(sci string) bool { return strings.HasSuffix(sci, " spp.") }

package wood

import (
	"strings"
	"testing"
)

func TestReadRefusesADamagedTable(t *testing.T) {
	head := strings.Join(columns, ",") + "\n"
	const good = "an oak,Quercus aurea,hardwood,tree,0.6,80,0.5,90,15,species,,,\n"
	if _, err := read(head + good); err != nil {
		t.Fatalf("a good row: %v", err)
	}
	for name, text := range map[string]string{
		"nothing":        "",
		"other columns":  "common,scientific\n",
		"a field short":  head + "an oak,Quercus aurea,hardwood\n",
		"no group":       head + strings.Replace(good, "hardwood", "wood", 1),
		"no form":        head + strings.Replace(good, "tree", "bush", 1),
		"no basis":       head + strings.Replace(good, "species", "guess", 1),
		"no number":      head + strings.Replace(good, "0.6", "heavy", 1),
		"no own figure":  head + strings.Replace(good, "species,,", "species,much,", 1),
		"no guide":       head + strings.Replace(good, "species,,,", "species,,much,", 1),
		"the same twice": head + good + good,
	} {
		if _, err := read(text); err == nil {
			t.Errorf("%s was read", name)
		}
	}
}

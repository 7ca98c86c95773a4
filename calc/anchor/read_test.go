package anchor

import (
	"strings"
	"testing"
)

func TestReadRefusesADamagedTable(t *testing.T) {
	head := strings.Join(columns, ",") + "\n"
	const good = "an oak,Quercus aurea,57,found,a book,\n"
	if _, err := read(head + good); err != nil {
		t.Fatalf("a good row: %v", err)
	}
	for name, text := range map[string]string{
		"nothing":       "",
		"no rows":       head,
		"other columns": "common,scientific\n" + good,
		"a field short": head + "an oak,Quercus aurea,57\n",
		"no number":     head + strings.Replace(good, "57", "strong", 1),
		"not a number":  head + strings.Replace(good, "57", "NaN", 1),
		"no strength":   head + strings.Replace(good, "57", "0", 1),
		"left empty":    head + strings.Replace(good, "57", "", 1),
		"no status":     head + strings.Replace(good, "found", "heard", 1),
	} {
		if _, err := read(text); err == nil {
			t.Errorf("%s was read", name)
		}
	}
}

package reader_test

import (
	"errors"
	"fmt"
	"maps"
	"slices"
	"strings"
	"testing"

	"heft/parser"
	"heft/parser/reader"
)

// outcome is what a line of the corpora came to.
type outcome struct{ class, came string }

// TestConfusion counts, by language, intent and whether it should be answered,
// how many lines of the corpora come out as they should, and where the others
// went instead, so that the next gap shows itself. Run with -v it prints the
// table.
func TestConfusion(t *testing.T) {
	r := newReader(t)
	lines := map[string]int{}
	missed := map[outcome]int{}
	note := func(class, want, came string) {
		lines[class]++
		if want != came {
			missed[outcome{class, came}]++
		}
	}
	for _, p := range readCorpora(t) {
		want := p.want.facts["intent"]
		note(p.language+" "+want+" answered", want, came(r, p.text, p.want.intentOnly))
	}
	for _, x := range readRefusals(t) {
		what := "asked"
		if (&parser.Ask{Kind: parser.Kind(x.kind)}).Final() {
			what = "refused"
		}
		note(x.language+" "+x.kind+" "+what, x.kind, came(r, x.text, false))
	}
	t.Log("\n" + confusion(lines, missed))
	for o, n := range missed {
		t.Errorf("%s: %d of %d came out as %s", o.class, n, lines[o.class], o.came)
	}
}

// came is the intent of a message that is read, and the kind of ask of one
// that is not, unless only the intent matters.
func came(r *reader.Reader, text string, intentOnly bool) string {
	q, err := r.Read(text)
	if ask, ok := errors.AsType[*parser.Ask](err); ok && (!intentOnly || ask.Final()) {
		return string(ask.Kind)
	}
	return string(q.Intent)
}

func confusion(lines map[string]int, missed map[outcome]int) string {
	var b strings.Builder
	fmt.Fprintf(&b, "%-34s %5s %5s  %s\n", "class", "lines", "right", "went instead to")
	for _, class := range slices.Sorted(maps.Keys(lines)) {
		right, instead := lines[class], ""
		for _, o := range slices.SortedFunc(maps.Keys(missed), func(a, b outcome) int { return strings.Compare(a.came, b.came) }) {
			if o.class == class {
				right -= missed[o]
				instead += fmt.Sprintf("%s %d  ", o.came, missed[o])
			}
		}
		fmt.Fprintf(&b, "%-34s %5d %5d  %s\n", class, lines[class], right, instead)
	}
	return b.String()
}

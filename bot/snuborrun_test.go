package bot_test

import (
	"regexp"
	"strconv"
	"strings"
	"testing"
)

// Where holding a fall fast is weighed against letting it run, the first line has both,
// and the one that runs pulls less; without the choice each is what it is by itself.
func TestSnubOrRun(t *testing.T) {
	d := newDesk(t)
	const told = "600 lb log drops 4 ft, 16,000 lb break, 60 ft of rope, "
	both, _ := answer(t, d, told+"snub it or let it run 10 ft")
	m := regexp.MustCompile(`snubbed, line up to ([\d,]+) lb .*; let run 10 ft, line up to ([\d,]+) lb `).FindStringSubmatch(both.Headline())
	if m == nil {
		t.Fatalf("%q", both.Headline())
	}
	if figureOf(t, m[2]) >= figureOf(t, m[1]) {
		t.Errorf("let run pulls %s lb, snubbed %s lb", m[2], m[1])
	}
	for words, figure := range map[string]string{"snub it": m[1], "let it run 10 ft": m[2]} {
		if one, _ := answer(t, d, told+words); !strings.Contains(one.Headline(), "line up to "+figure+" lb") {
			t.Errorf("%s: %q", words, one.Headline())
		}
	}
}

func figureOf(t *testing.T, s string) int {
	t.Helper()
	n, err := strconv.Atoi(strings.ReplaceAll(s, ",", ""))
	if err != nil {
		t.Fatal(err)
	}
	return n
}

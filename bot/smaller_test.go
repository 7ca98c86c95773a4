package bot_test

import (
	"regexp"
	"strings"
	"testing"
)

// A piece cut as short as the answer says is under the limit.
func TestAPieceCutSmallerIsUnderItsLimit(t *testing.T) {
	d := newDesk(t)
	for _, c := range []struct{ piece, length, limit string }{
		{"red oak log 24 in", "16 ft", "limit 600 lb"},
		{"white ash log 40 cm", "5 m", "limit 150 kg"},
		{"red oak limb 14 in", "22 ft", "limit 600 lb"},
		{"sugar maple log 30 in", "8 ft", "limit 900 lb"},
	} {
		over, _ := answer(t, d, c.piece+", "+c.length+", "+c.limit)
		found := regexp.MustCompile(`Cut a smaller piece: (.+?) at most to stay under`).FindStringSubmatch(over.Text())
		if found == nil {
			t.Fatalf("%s: %s", c.piece, over.Text())
		}
		if short, _ := answer(t, d, c.piece+", "+found[1]+" long, "+c.limit); strings.Contains(short.Text(), "OVER") {
			t.Errorf("%s cut to %s: %s", c.piece, found[1], short.Headline())
		}
	}
}

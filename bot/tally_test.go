package bot_test

import (
	"encoding/json"
	"strings"
	"testing"

	"heft/bot"
)

// A conversation counts no more pieces than it keeps, and says so: a total
// that leaves some out must not look like one that has them all.
func TestATotalThatIsNotWholeSaysSo(t *testing.T) {
	d := newDesk(t)
	var turn bot.Turn
	for range 60 {
		_, _, turn = d.Answer(event("600 lb log"), turn)
	}
	r, _, _ := d.Answer(event("total so far?"), turn)
	var o struct {
		Tree     struct{ Pieces int } `json:"tree"`
		Problems []string             `json:"problems"`
	}
	if err := json.Unmarshal(r.JSON(), &o); err != nil {
		t.Fatal(err)
	}
	if o.Tree.Pieces >= 60 || len(o.Problems) != 1 || !strings.Contains(o.Problems[0], "NOT in it") {
		t.Errorf("%d pieces, problems %q", o.Tree.Pieces, o.Problems)
	}
}

// Two conversations that part from one turn do not share what they count.
func TestTalliesAreNotShared(t *testing.T) {
	d := newDesk(t)
	_, _, first := d.Answer(event("600 lb log"), bot.Turn{})
	_, _, second := d.Answer(event("700 lb log"), first)
	_, _, left := d.Answer(event("100 lb log"), second)
	_, _, _ = d.Answer(event("900 lb log"), second)
	r, _, _ := d.Answer(event("total so far?"), left)
	if !strings.HasPrefix(r.Headline(), "3 pieces: 1,400 lb in all, heaviest pick 700 lb") {
		t.Error(r.Headline())
	}
}

// To ask why, or what was assumed, tells of no other piece.
func TestAnExplainedPieceIsCountedOnce(t *testing.T) {
	d := newDesk(t)
	for _, talk := range [][]string{
		{"600 lb log", "why?", "what did you assume?", "total so far?"},
		{"troza de 600 lb", "¿por qué?", "qué supusiste", "total hasta ahora"},
	} {
		var turn bot.Turn
		var r bot.Reply
		for _, text := range talk {
			r, _, turn = d.Answer(event(text), turn)
		}
		var o struct {
			Tree struct{ Pieces int } `json:"tree"`
		}
		if err := json.Unmarshal(r.JSON(), &o); err != nil || o.Tree.Pieces != 1 {
			t.Errorf("%q: %d pieces, %v: %s", talk, o.Tree.Pieces, err, r.Headline())
		}
	}
}

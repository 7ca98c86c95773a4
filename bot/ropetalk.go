package bot

import (
	"regexp"
	"slices"
	"strings"

	"heft/parser"
)

// A talk about how much rope it takes hangs nothing on it: what is told of there with no
// word for it is the rope at hand, and no piece.

// ropeOfTalk answers a message with its only length read as the rope's, and says so: "got
// 200 ft", behind "how much rope for a hitch at 60 ft". False where it may be another.
func (d *Desk) ropeOfTalk(q parser.Question, ask *parser.Ask, ev Event, before Turn, text string) (answer, Turn, bool) {
	x, long := q.Get(parser.Length)
	if !before.ropeOnly() || ev.lent || ask != nil || !long || slices.ContainsFunc(q.Quantities, besidesRope) || q.Species != nil || q.Shape != nil || x.End > len(text) || q.Bare && before.wants(parser.HitchHeight) {
		return answer{}, Turn{}, false
	}
	if before.question.Has(parser.HitchHeight) && q.Bare && !before.ropeMayBe(x) {
		return answer{}, Turn{}, false // it is rather how high the block is
	}
	loose := &parser.Ask{Kind: parser.Loose, Words: text[x.Start:x.End], Start: x.Start, End: x.End}
	phrase, _, ok := d.readAs(voiceFor(ev, before.question), before, loose, parser.RopeLength)
	put := text[:x.Start] + phrase + text[x.End:]
	now, err := before.reread(d.reader, put)
	if !ok || err != nil || now.Has(parser.Length) || !now.Has(parser.RopeLength) {
		return answer{}, Turn{}, false
	}
	ev.lent, ev.Text = true, put
	out, turn := d.consider(ev, before)
	out.lines = append(out.lines, out.voice.say("Read %s as “%s”.", quote(loose.Words), phrase))
	return out, turn, true
}

// drumMoved is what a talk told, without where its drum stood if the next message moves that:
// to another tree from the foot of its own, or back.
func drumMoved(before, now parser.Question) parser.Question {
	if away, told := before.Get(parser.DrumAway); told && away.High == 0 && now.Noted(parser.DrumAside) {
		before.Quantities = slices.DeleteFunc(slices.Clone(before.Quantities), func(x parser.Quantity) bool { return x == away })
	}
	return before
}

// besidesRope says whether a quantity may be of a piece, or the rope's itself: beside where the
// block and the drum are, a bare length is still the rope at hand.
func besidesRope(x parser.Quantity) bool {
	return x.Field != parser.Length && x.Field != parser.HitchHeight && x.Field != parser.DrumAway
}

// bareOpen is a number that waits for its unit.
var bareOpen = regexp.MustCompile(`^\d[\d.,]*$`)

// unitTold answers a message that tells its lengths in one system where a bare one of the
// talk waits for its unit, feet or metres: that one is taken to be told in the same, and the
// answer says so. "Drum 10 ft from the tree", behind "hitch 60". False where none waits, or
// more is in doubt.
func (d *Desk) unitTold(q parser.Question, ask *parser.Ask, ev Event, before Turn, text string) (answer, Turn, bool) {
	f, number := before.waitsForUnit()
	unit := map[parser.System]string{parser.Imperial: " ft", parser.Metric: " m"}[farSystem(q)]
	if f == "" || unit == "" || ev.lent || ask != nil || q.Has(f) || tellsPiece(q) {
		return answer{}, Turn{}, false
	}
	v := voiceFor(ev, q)
	v.metric = unit == " m"
	loose := &parser.Ask{Kind: parser.Loose, Words: number + unit, End: len(number)}
	phrase, _, ok := d.readAs(v, before, loose, f)
	if !ok {
		return answer{}, Turn{}, false
	}
	ev.lent, ev.Text = true, phrase
	_, told := d.consider(ev, before)
	ev.Text = text
	out, turn := d.consider(ev, told)
	out.lines = append(out.lines, out.voice.say("Read %s as %s: the units of this talk.", quote(number), number+unit))
	return out, turn, true
}

// waitsForUnit is the one length of a talk that was asked for and told without its unit,
// and the number; "" for none.
func (t Turn) waitsForUnit() (parser.Field, string) {
	if !t.known || t.pending == nil || len(t.pending.Fields) != 1 || len(t.open) != 1 || !bareOpen.MatchString(t.open[0]) {
		return "", ""
	}
	f := t.pending.Fields[0]
	if !strings.HasSuffix(string(f), "_m") || parser.Thickness(f) {
		return "", ""
	}
	return f, t.open[0]
}

// farSystem is the system of the lengths of a message that no crew tells in inches; "" for
// both, or for none.
func farSystem(q parser.Question) parser.System {
	var far []parser.Quantity
	for _, x := range q.Quantities {
		if strings.HasSuffix(string(x.Field), "_m") && !parser.Thickness(x.Field) && x.Field != parser.RopeDiameter {
			far = append(far, x)
		}
	}
	return oneSystem(far)
}

// ropeMayBe says whether a length without a word may be the rope at hand, in a talk about
// how much it takes: one that would come near the ground from the block.
func (t Turn) ropeMayBe(x parser.Quantity) bool {
	const least = 1.5 // of the hitch's height, which is gone up and down again
	hitch, _ := t.question.Get(parser.HitchHeight)
	return t.ropeOnly() && x.Low >= least*hitch.High
}

// ropeOnly says whether a talk stands at how much rope it takes, with nothing on it.
func (t Turn) ropeOnly() bool {
	return t.known && t.question.Intent == parser.AskRope && t.question.Pieceless()
}

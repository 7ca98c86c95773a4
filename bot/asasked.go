package bot

import (
	"slices"
	"strings"

	"heft/parser"
)

// asAsked answers a message with its bare length read as the one length that was asked
// for, and says so: "4 ft", where the fall of a weight is missing, makes no log of it that
// is 4 ft long. False where there is none.
func (d *Desk) asAsked(q parser.Question, ask *parser.Ask, ev Event, before Turn, text string) (answer, Turn, bool) {
	x, long := q.Get(parser.Length)
	if ev.lent || ask != nil || !long || x.End > len(text) || !before.asksLengthOf(q) {
		return answer{}, Turn{}, false
	}
	loose := &parser.Ask{Kind: parser.Loose, Words: text[x.Start:x.End], Start: x.Start, End: x.End}
	phrase, _, ok := d.readAs(voiceFor(ev, before.question), before, loose, before.lengthsAsked()[0])
	put := text[:x.Start] + phrase + text[x.End:]
	now, err := before.reread(d.reader, put)
	if !ok || err != nil || now.Has(parser.Length) || !now.Has(before.lengthsAsked()...) {
		return answer{}, Turn{}, false
	}
	ev.lent, ev.Text = true, put
	out, turn := d.consider(ev, before)
	out.lines = append(out.lines, out.voice.say("Read %s as “%s”.", quote(loose.Words), phrase))
	return out, turn, true
}

// asksLengthOf says whether one length is asked for of a piece that is told by its weight,
// and a message tells no size of it besides.
func (t Turn) asksLengthOf(q parser.Question) bool {
	missing := t.pending != nil && t.pending.Kind == parser.Missing && len(t.lengthsAsked()) == 1
	return missing && t.question.Has(parser.Weight) && q.Species == nil && q.Shape == nil && !q.Has(acrossFields...)
}

// lengthsAsked are the lengths that were asked for, none where one is of the piece.
func (t Turn) lengthsAsked() []parser.Field {
	if t.wants(parser.Length) {
		return nil
	}
	other := func(f parser.Field) bool { return !strings.HasSuffix(string(f), "_m") }
	return slices.DeleteFunc(slices.Clone(t.pending.Fields), other)
}

package bot

import (
	"slices"
	"strings"

	"heft/parser"
)

// A number may be told with the one that it takes the place of: "its really 18 not 22"
// says whose 18 is where one thing alone was told to be 22.

// putRight is the number in doubt as what the number that was taken back told; "" where
// none was, or where several things were told to be as much.
func (d *Desk) putRight(q parser.Question, ask *parser.Ask, ev Event, before Turn) string {
	of := takenBack(q, before.question)
	if len(q.NotSo) == 0 {
		of = before.lastPut(q)
	}
	if len(q.NotSo) > 1 || len(of) != 1 {
		return ""
	}
	v := voiceFor(ev, before.question)
	v.language, v.metric = q.Language, toldMetric(of[0], v.metric)
	phrase, now, ok := d.readAs(v, before, ask, of[0].Field)
	if !ok || !near(of[0], now) {
		return ""
	}
	return phrase
}

// lastPut is the one size that the last message told, where the next puts a number right and
// has no word for what it is of: "i should have said 18" behind "16 dia".
func (t Turn) lastPut(q parser.Question) (of []parser.Quantity) {
	if !q.PutsRight || len(t.told) != 1 || t.pending != nil && t.pending.Kind == parser.Missing {
		return nil
	}
	if was, ok := had(t.question, t.told[0]); ok && isSize(was.Field) {
		of = append(of, was)
	}
	return of
}

// takenBack are the quantities of before whose numbers a message puts aside.
func takenBack(q, before parser.Question) []parser.Quantity { return toldBy(q.NotSo, before) }

// typedAlone is the number of a phrase, without what ends a clause: "forget the 450, it was".
func typedAlone(phrase string) string {
	return strings.TrimRight(typedNumber.FindString(phrase), ",.")
}

// toldBy are the quantities of before whose numbers stand in what was passed over.
func toldBy(passed []parser.Said[string], before parser.Question) (out []parser.Quantity) {
	for _, x := range before.Quantities {
		number := typedAlone(x.Words)
		back := func(p parser.Said[string]) bool { return number != "" && typedAlone(p.Value) == number }
		if slices.ContainsFunc(passed, back) {
			out = append(out, x)
		}
	}
	return out
}

// restsOnDenied is an ask about a number that a message puts aside while the answer would
// still rest on it: "8 ft not 22", of what is 22 in thick. Counts are of no size.
func (a *answer) restsOnDenied(q, before parser.Question) *parser.Ask {
	if !a.leaned || q.Has(parser.Wraps, parser.People, parser.Parts) {
		return nil
	}
	of := takenBack(q, before)
	for _, x := range of {
		if is, ok := a.question.Get(x.Field); !ok || is != x {
			return nil // it is what was put right
		}
	}
	if len(of) == 0 {
		return nil
	}
	p := q.NotSo[0]
	return &parser.Ask{Kind: parser.Twist, Turning: parser.TurnsDenied, Words: p.Value, Start: p.Start, End: p.End}
}

// fieldsOf are the fields that a message tells.
func fieldsOf(q parser.Question) (out []parser.Field) {
	for _, x := range q.Quantities {
		out = append(out, x.Field)
	}
	return out
}

// lastPutRight answers a message that puts one length right without a word for what it is
// of: it is what the last message told, "no wait 7 ft, he moved it down" behind "block 9 ft
// above the cut". False where that told no length, or more than one.
func (d *Desk) lastPutRight(q parser.Question, ask *parser.Ask, ev Event, before Turn, text string) (answer, Turn, bool) {
	if !q.PutsRight || q.Asks || ask != nil || ev.lent || len(q.Quantities) != 1 || q.Quantities[0].End > len(text) {
		return answer{}, Turn{}, false
	}
	x := q.Quantities[0]
	var of []parser.Quantity
	for _, f := range before.told {
		if was, ok := before.question.Get(f); ok && strings.HasSuffix(string(f), "_m") && near(was, x) {
			of = append(of, was)
		}
	}
	if len(of) != 1 || of[0].Field == x.Field || !strings.HasSuffix(string(x.Field), "_m") || before.wants(x.Field) {
		return answer{}, Turn{}, false
	}
	v := voiceFor(ev, before.question)
	v.language = q.Language
	doubt := &parser.Ask{Kind: parser.Loose, Words: text[x.Start:x.End], Start: x.Start, End: x.End}
	phrase, _, ok := d.readAs(v, before, doubt, of[0].Field)
	if !ok {
		return answer{}, Turn{}, false
	}
	ev.lent, ev.Text = true, phrase+text[x.End:] // what takes back is done with
	out, turn := d.consider(ev, before)
	if phrase != doubt.Words {
		out.lines = append(out.lines, out.voice.say("Read %s as “%s”.", quote(doubt.Words), phrase))
	}
	return out, turn, true
}

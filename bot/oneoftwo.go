package bot

import (
	"slices"

	"heft/parser"
)

// A number that could be two things by its words, "the block is 80 ft", is in a talk the one
// of them that was told before in such a size, where the other was not: nothing hangs on a
// rope alone that could be 80 ft long.

// oneOfTwo answers such a message with the one reading that takes the place of what was told,
// and says so; false where none does, more is told, or another is asked for.
func (d *Desk) oneOfTwo(q parser.Question, ask *parser.Ask, ev Event, before Turn, text string) (answer, Turn, bool) {
	doubt := ask != nil && ask.Kind == parser.TwoReadings && ask.Start < ask.End && ask.End <= len(text)
	if ev.lent || !before.known || !doubt || q.Asks || tellsPiece(q) || len(q.Quantities) > 0 || slices.ContainsFunc(ask.Fields, before.wants) {
		return answer{}, Turn{}, false
	}
	v := voiceFor(ev, before.question)
	v.language = q.Language
	var read []string
	for _, f := range ask.Fields {
		was, told := had(before.question, f)
		if phrase, now, ok := d.readAs(v, before, ask, f); told && ok && near(was, now) {
			read = append(read, phrase)
		}
	}
	if len(read) != 1 {
		return answer{}, Turn{}, false
	}
	ev.lent, ev.Text = true, read[0]
	out, turn := d.consider(ev, before)
	out.lines = append(out.lines, out.voice.say("Read %s as “%s”.", quote(ask.Words), read[0]))
	return out, turn, true
}

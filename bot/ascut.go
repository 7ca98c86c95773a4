package bot

import (
	"strings"

	"heft/parser"
)

// tight is feet and inches as they are typed for one length: `9'8"`.
var tight = strings.NewReplacer(" ft ", "'", " in", `"`)

// asCut answers a message that points to a length that was said before, "call it that
// length", as the one that the last answer said a piece may be, and says so. False where
// it said none: then it is asked how long that is.
func (d *Desk) asCut(q parser.Question, ask *parser.Ask, ev Event, before Turn, text string) (answer, Turn, bool) {
	if ask == nil || ask.Turning != parser.TurnsSuch || before.cutTo == "" || ask.End > len(text) {
		return answer{}, Turn{}, false
	}
	phrase := speaker{language: q.Language}.say("%s long", tight.Replace(before.cutTo))
	ev.Text = text[:ask.Start] + phrase + text[ask.End:]
	out, turn := d.consider(ev, before)
	out.lines = append(out.lines, out.voice.say("Read %s as “%s”.", quote(ask.Words), phrase))
	return out, turn, true
}

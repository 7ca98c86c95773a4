package bot

import (
	"encoding/json"
	"strings"
	"time"
)

// Status says what became of a question.
type Status string

// The three outcomes.
const (
	Answered Status = "answered"
	Needs    Status = "needs"
	Refused  Status = "refused"
)

// reminder ends every reply.
const reminder = "Estimate only. Confirm with the qualified arborist on site; local codes and the gear's labels come first."

// Reply is what goes back to the crew. Its fields are closed, so that no
// transport can post the lines without the reminder.
type Reply struct {
	status  Status
	lines   []string        // the first serves alone as a phone notification
	voice   speaker         // that speaks the reminder
	choices []Choice        // likely answers to an ask-back
	actions []Choice        // questions next to the one that was answered
	figures json.RawMessage // the object that scripts read, without its text
	marks   marks           // what figures says for those who look after the reply
	scene   *Scene          // what a picture shows
	named   string          // the job's arborist, where the lines name them

	confirmed *Confirmation // who stands by it, on site
	unlogged  bool          // the journal does not hold it
}

// Status says what became of the question.
func (r Reply) Status() Status { return r.status }

// Headline is the first line: enough for a phone notification.
func (r Reply) Headline() string { return r.lines[0] }

// Choices are likely answers to an ask-back, each with the message that
// completes the question.
func (r Reply) Choices() []Choice { return r.choices }

// Actions are the questions next to the one that was answered: the working, the
// other units, a heavier piece.
func (r Reply) Actions() []Choice { return r.actions }

// Scene is what a picture of the answer shows; nil where there is none.
func (r Reply) Scene() *Scene { return r.scene }

// Text is the whole reply as a person reads it, plain text, the reminder last.
func (r Reply) Text() string {
	return strings.Join(r.lines, "\n") + "\n" + r.voice.word(reminder)
}

// JSON is the reply as one object on one line, as scripts read it.
func (r Reply) JSON() json.RawMessage { return withText(r.figures, r.Text()) }

// Late is a logged reply that is posted only now, and says so, by the clock
// of the place that now is told in.
func Late(e Entry, now time.Time) Reply {
	was := marksOf(e.Result)
	v := speaker{language: was.Language} // where it cannot be told, it is English
	body := strings.TrimSuffix(e.Reply, "\n"+v.word(reminder))
	head := v.say("Late answer, asked at %s. Check that it still fits.", e.Asked.In(now.Location()).Format("15:04"))
	return Reply{
		status:  e.Status,
		voice:   v,
		lines:   append([]string{head}, strings.Split(body, "\n")...),
		figures: e.Result,
		marks:   was,
	}
}

// unlogged is the reply when the journal is out: nothing that nobody could
// find in the log afterwards.
func unlogged(v speaker) Reply {
	a := answer{voice: v}
	a.refuse(v.word("I cannot write to my log, so I give no figures. Work it out with the qualified arborist, and tell whoever runs me."))
	r := a.reply()
	r.unlogged = true
	return r
}

// Unlogged says that the journal does not hold the reply.
func (r Reply) Unlogged() bool { return r.unlogged }

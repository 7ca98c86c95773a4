package bot

import (
	"context"
	"encoding/json"
	"errors"
	"slices"
	"strings"
	"time"

	"heft/parser"
)

// Confirmation is that somebody stands by an answer, on site.
type Confirmation struct {
	Workspace string
	ID        string // Entry.ID
	User      string
	At        time.Time
	Note      string
}

var (
	// ErrConfirmed says that somebody stands by the answer already.
	ErrConfirmed = errors.New("the answer is confirmed already")
	// ErrChanged says that the answer has given way to another one.
	ErrChanged = errors.New("the answer has changed meanwhile")
	// ErrNotYours says that a person may not do or see what they asked for.
	ErrNotYours = errors.New("it is not for this person")
)

// Reserved is an ErrNotYours that tells whose it is to confirm an answer.
type Reserved struct{ Arborist string } // as the job names them; empty where it names nobody

func (r *Reserved) Error() string { return ErrNotYours.Error() }

// Named is the arborist, and the words that Declined names them by.
func (r *Reserved) Named() (who, words string) { return r.Arborist, quote(r.Arborist) }

// Is makes it an ErrNotYours.
func (r *Reserved) Is(target error) bool { return target == ErrNotYours }

// confirmed are the questions whose answers somebody on site has to stand
// by, whatever their figures are: what goes up, turns over or moves fast.
var confirmed = map[parser.Intent]bool{
	parser.AskLift: true, parser.AskRaise: true, parser.AskDrop: true, parser.AskSwing: true,
}

// overSaid says whether the answer is over the crew's limit.
func (a *answer) overSaid() bool {
	if a.result == nil || a.status != Answered {
		return false
	}
	_, over := a.overLimit()
	return over
}

// toConfirm says whether somebody on site has to stand by the answer.
func (a *answer) toConfirm() bool {
	return a.status == Answered && (confirmed[a.question.Intent] || a.overSaid())
}

// marks are what an answer says of itself for those who look after it.
type marks struct {
	OverLimit bool `json:"over_limit"`
	Confirm   bool
	Language  string
	Intent    string
	Also      []marks
}

// marksOf reads them back.
func marksOf(result json.RawMessage) marks {
	var m marks
	_ = json.Unmarshal(result, &m) // our own; where it is torn, nothing is marked
	return m.together()
}

// marks are those of an object that is not written yet.
func (o object) marks() marks {
	m := marks{OverLimit: o.OverLimit, Confirm: o.Confirm, Language: o.Language, Intent: string(o.Intent)}
	for _, also := range o.Also {
		m.Also = append(m.Also, also.marks())
	}
	return m.together()
}

// together are the marks of a message with several answers: those of each.
func (m marks) together() marks {
	for _, o := range m.Also {
		m.OverLimit, m.Confirm = m.OverLimit || o.OverLimit, m.Confirm || o.Confirm
	}
	return m
}

// ToConfirm says whether somebody on site has to stand by the reply.
func (r Reply) ToConfirm() bool { return r.marks.Confirm }

// OverLimit says whether the reply is over the crew's limit.
func (r Reply) OverLimit() bool { return r.marks.OverLimit }

// ToConfirm says whether somebody on site has to stand by the answer.
func (e Entry) ToConfirm() bool { return marksOf(e.Result).Confirm }

// OverLimit says whether the answer is over the crew's limit.
func (e Entry) OverLimit() bool { return marksOf(e.Result).OverLimit }

// Voice is what the entry was answered in.
func (e Entry) Voice() Voice { return VoiceOf(marksOf(e.Result).Language) }

// Supervises says whether a person is on the supervisors' list.
func (c *Clerk) Supervises(user string) bool {
	return user != "" && slices.Contains(c.Supervisors, user)
}

// MayConfirm finds an answer that a person wants to confirm. It fails with
// ErrNotYours unless they supervise or are the arborist of the channel's job,
// and with ErrConfirmed where somebody confirmed it before; the entry is
// there in both cases.
func (c *Clerk) MayConfirm(ctx context.Context, workspace, channel, id, user string) (Entry, error) {
	e, err := c.Journal.Find(ctx, workspace, id)
	if err == nil && (e.Channel != channel || !e.ToConfirm()) {
		err = ErrNotLogged
	}
	if err != nil {
		return Entry{}, err
	}
	job, err := c.jobOf(ctx, Event{Workspace: workspace, Channel: channel})
	switch {
	case err != nil:
		return e, err
	case !c.Supervises(user) && !job.arborist(user):
		return e, &Reserved{job.Arborist()}
	case e.Confirmed != nil:
		return e, ErrConfirmed
	}
	if now, ok := c.Standing(ctx, Event{Workspace: workspace, Channel: channel, Shown: e.Posted, At: e.Asked}); ok && now.ID != e.ID {
		return e, ErrChanged
	}
	return e, nil
}

// Standing is the answer that the message of an event shows, or is about to
// give way; false where there is none.
func (c *Clerk) Standing(ctx context.Context, ev Event) (Entry, bool) {
	if ev.Shown == "" {
		return Entry{}, false
	}
	e, err := c.Journal.About(ctx, ev.Workspace, ev.Channel, ev.Shown, ev.At.Add(-talkFor))
	if err != nil && !errors.Is(err, ErrNotLogged) {
		c.Log.ErrorContext(ctx, "the answer was not looked up", KeyEvent, ev.ID, KeyErr, err)
	}
	return e, err == nil
}

// Named is the job's arborist, where the lines name them, and how they do: a
// carrier knows people by their ids, and shows who it is.
func (r Reply) Named() (who, words string) {
	if r.named == "" {
		return "", ""
	}
	return r.named, quote(r.named)
}

// arborist says whether a person is the one whom the job names. Only the
// carrier's own id of a person counts: anybody can take a name.
func (j Job) arborist(user string) bool {
	named, _, _ := strings.Cut(j.Arborist(), " ")
	return user != "" && named == user
}

// maxNote is the most characters of a note that are kept.
const maxNote = 500

// Kept is a logged reply as it stands, with whoever stands by it, by the
// clock of a place. Nothing can be asked from it any more.
func Kept(e Entry, in *time.Location) Reply {
	v := e.Voice()
	r := Reply{
		status: e.Status, voice: v.s, figures: e.Result, marks: marksOf(e.Result), confirmed: e.Confirmed,
		lines: strings.Split(strings.TrimSuffix(e.Reply, "\n"+v.s.word(reminder)), "\n"),
	}
	if c := e.Confirmed; c != nil {
		r.lines = slices.Insert(r.lines, 1, v.confirmedBy(*c, in)...)
	}
	return r
}

// ConfirmedBy is the person who stands by the reply, on site, and the place of
// the line that says so; empty where nobody does.
func (r Reply) ConfirmedBy() (user string, line int) {
	if r.confirmed == nil {
		return "", 0
	}
	return r.confirmed.User, 1
}

// Confirm writes down that somebody stands by an answer. It fails like
// MayConfirm; with ErrConfirmed the entry tells who was first.
func (c *Clerk) Confirm(ctx context.Context, channel string, by Confirmation) (Entry, error) {
	e, err := c.MayConfirm(ctx, by.Workspace, channel, by.ID, by.User)
	if err != nil {
		return e, err
	}
	note := []rune(strings.Join(strings.Fields(by.Note), " "))
	by.Note = string(note[:min(len(note), maxNote)])
	failed := c.Journal.Confirm(ctx, by)
	if failed != nil && !errors.Is(failed, ErrConfirmed) {
		return e, failed
	}
	if e, err = c.Journal.Find(ctx, by.Workspace, by.ID); err != nil {
		return e, err
	}
	return e, failed
}

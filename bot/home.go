package bot

import (
	"strings"
	"time"
)

// DayTitle names the day that a supervisor looks at.
func (v Voice) DayTitle(d Day) string {
	if len(d.Asked) == 0 {
		return v.s.say("%s: nothing was asked.", d.From.Format(dateForm))
	}
	return v.s.say("%s: what was asked", d.From.Format(dateForm))
}

// GroupLine sums up a channel, or a person.
func (v Voice) GroupLine(g Group) string {
	heaviest := v.s.word("none")
	if g.Heaviest > 0 {
		heaviest = v.Pick(g.Heaviest)
	}
	return v.s.say("Questions: %s. Heaviest pick: %s. Over the limit: %s. Not confirmed: %s. Never completed: %s.",
		count(g.Questions), heaviest, count(g.Flagged[Over]), count(g.Flagged[Unconfirmed]), count(g.Flagged[Unfinished]))
}

// AskedLine is one question of a day, with the first line of its answer.
func (v Voice) AskedLine(a Asked, in *time.Location) string {
	head, _, _ := strings.Cut(a.Reply, "\n")
	return a.Asked.In(in).Format("15:04") + " " + quote(a.Words) + "\n" + oneLine(head)
}

// FlagLine says why a question is to be looked at again, and whether somebody
// stands by its answer.
func (v Voice) FlagLine(a Asked) string {
	var said []string
	for _, f := range a.Flags {
		said = append(said, v.s.word(flagWords[f]))
	}
	if a.Confirmed != nil {
		said = append(said, v.s.word("confirmed on site"))
	}
	if a.Thread == "" {
		said = append(said, v.s.word("asked in private"))
	}
	return strings.Join(said, ", ")
}

var flagWords = map[Flag]string{
	"": "everything", Over: "over the limit", Unconfirmed: "not confirmed", Unfinished: "never completed",
}

// Flag is the button that narrows a day down.
func (v Voice) Flag(f Flag) string { return capital(v.s.word(flagWords[f])) }

// The buttons of a supervisor's day.

func (v Voice) DayBefore() string     { return v.s.word("Day before") }
func (v Voice) DayAfter() string      { return v.s.word("Day after") }
func (v Voice) OnlyChannel() string   { return v.s.word("Only this channel") }
func (v Voice) OnlyPerson() string    { return v.s.word("Only this person") }
func (v Voice) ShowAll() string       { return v.s.word("Show everything") }
func (v Voice) DirectMessage() string { return v.s.word("A direct message") }
func (v Voice) People() string        { return v.s.word("By person") }

// More says how many questions are not shown.
func (v Voice) More(n int) string {
	return v.s.say("And %s more: narrow it down, or see `heft log`.", count(n))
}

// NoDay says that a day cannot be shown.
func (v Voice) NoDay() string {
	return v.s.word("I cannot read my log just now. Look again in a minute.")
}

// The buttons that have a day sent as a file.

func (v Voice) DaySheet() string { return v.s.word("Day sheet") }
func (v Voice) CSV() string      { return v.s.word("CSV") }

// SheetTitle names the file of a day: all of it, however it was narrowed down.
func (v Voice) SheetTitle(d Day) string {
	return v.s.say("%s, the whole day. Questions: %s.", d.From.Format(dateForm), count(len(d.Asked)))
}

// NoSheet says that the file of a day did not come.
func (v Voice) NoSheet(d Day) string {
	return v.s.say("The file of %s did not go through. Press again in a minute, or see `heft log`.", d.From.Format(dateForm))
}

// Worst are a day's channels or people, those with most to look at first.
func (d Day) Worst() (channels, people []Group) { return worst(d.Channels), worst(d.People) }

// HowToAsk is what everybody sees who does not supervise.
func (v Voice) HowToAsk() string {
	return v.s.word("Write to me here, or mention me in a channel: tree, thickness, length, what you want to do. I say the weight, the wraps and the loads, and what I took for granted.") + "\n" +
		v.s.word(reminder)
}

// Examples are questions to try, each as it is typed.
func (v Voice) Examples() []Choice {
	var out []Choice
	for i := range len(examples) {
		words := v.s.word(examples[i])
		out = append(out, Choice{Label: words, Message: words})
	}
	return out
}

var examples = map[int]string{
	0: "14 in red oak limb 22 ft, hitched at 35 ft", 1: "dead white ash log 16 in 8 ft",
	2: "two of us on a 2:1, 600 lb limb, enough?", 3: "help",
}

package practice

import (
	"slices"
	"strconv"

	"heft/bot/standin"
)

// tickets are those of the channel, newest first.
func (b *builder) tickets() []ticket {
	var list []ticket
	at := map[string]int{}
	for _, m := range b.readable() {
		i, known := at[m.ThreadTS]
		if m.ThreadTS != "" && known {
			list[i].reply(b.slip(m), b.cause(m).ts)
			list[i].Waiting = m.BotID == "" && b.calls(m) || list[i].Waiting && m.BotID == ""
			continue
		}
		at[m.TS] = len(list)
		list = append(list, b.ticket(m, len(list)+1))
	}
	slices.Reverse(list)
	return list
}

// ticket is one that a message begins. Where the role asked for itself alone,
// the workspace shows what the desk says alone; what it was asked goes on top.
func (b *builder) ticket(m standin.Message, number int) ticket {
	t := ticket{
		Place: b.place, TS: m.TS, Anchor: anchor(m.TS), Top: b.slip(m), Number: strconv.Itoa(number), Waiting: b.calls(m),
	}
	if asked := b.cause(m).asked; asked != "" {
		answer := t.Top
		t.Anchor = "q" + t.Anchor
		t.Top = slip{
			Place: b.place, Anchor: t.Anchor, Who: b.who(m.For), Role: b.role.Key, Clock: answer.Clock, Stamp: answer.Stamp,
			Body: []span{{Words: asked}}, Private: true,
		}
		t.Replies = []slip{answer}
	}
	return t
}

// reply adds a message to the thread: what somebody is told alone about a
// button stands right below the message that has it.
func (t *ticket) reply(s slip, about string) {
	i := slices.IndexFunc(t.Replies, func(r slip) bool { return r.TS == about })
	if i < 0 && about != t.TS {
		i = len(t.Replies) - 1
	}
	t.Replies = slices.Insert(t.Replies, i+1, s)
}

// readable are the messages of the channel that the role may read. What it was
// told alone and is told again is there once, as the newest.
func (b *builder) readable() []standin.Message {
	type words struct{ thread, text string }
	told := map[words]string{}
	var list []standin.Message
	for _, m := range b.snap.Messages[b.channel()] {
		if m.For != "" && m.For != b.role.User {
			continue
		}
		if m.For != "" && m.ThreadTS != "" {
			told[words{m.ThreadTS, m.Text}] = m.TS
		}
		list = append(list, m)
	}
	return slices.DeleteFunc(list, func(m standin.Message) bool {
		last, again := told[words{m.ThreadTS, m.Text}]
		return m.For != "" && again && last != m.TS
	})
}

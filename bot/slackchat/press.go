package slackchat

import (
	"strings"

	"github.com/slack-go/slack"

	"heft/bot"
)

// pressed is what is to be done about a button under an answer.
func (c *Chat) pressed(self identity, data slack.InteractionCallback) task {
	act := data.ActionCallback.BlockActions[0]
	row, seen, _ := strings.Cut(act.BlockID, "/")
	if row == rowChoices || row == rowActions {
		if q, ok := pressedQuestion(self, data, act); ok {
			q.seen = seen
			return c.asking(q)
		}
	}
	switch row {
	case rowConfirm:
		return c.confirming(self, data, act)
	case rowHome:
		return c.looked(self, data, act)
	case rowSheet:
		return c.sheeted(self, data, act)
	case rowExample:
		return c.example(self, data, act)
	case rowShare:
		return c.sharing(self, data, act)
	}
	return task{}
}

// pressedQuestion is the question that a button stands for, whose answer
// takes the place of the one it hangs under.
func pressedQuestion(self identity, data slack.InteractionCallback, act *slack.BlockAction) (asked, bool) {
	box := data.Container
	ev := bot.Event{
		ID:        bot.PressID(box.MessageTs, data.User.ID, act.ActionTs),
		Workspace: self.team, Channel: or(box.ChannelID, data.Channel.ID), Thread: or(box.ThreadTs, box.MessageTs),
		User: data.User.ID, Text: act.Value, At: moment(act.ActionTs, 0), Shown: box.MessageTs,
	}
	ev.Direct = strings.HasPrefix(ev.Channel, "D")
	q := asked{ev: ev}
	if box.IsEphemeral { // seen by one, and so is the answer
		q.respond, q.private, q.replaces = data.ResponseURL, true, true
		q.ev.Thread, q.ev.Shown, q.ev.Opens, q.ev.Direct = "", "", true, false
	}
	return q, ev.Channel != "" && ev.Shown != "" && ev.User != "" && act.ActionTs != "" && ev.Text != ""
}

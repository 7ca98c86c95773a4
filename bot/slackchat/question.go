package slackchat

import (
	"math"
	"strconv"
	"time"

	"github.com/slack-go/slack/slackevents"

	"heft/bot"
)

// platformUser is the platform's own helper, which is nobody to answer.
const platformUser = "USLACKBOT"

// withPhoto marks a message that came with a file: crews show what they ask
// about (platform documentation, message subtypes: file_share).
const withPhoto = "file_share"

// changed marks the news that a message was edited (platform documentation,
// message subtypes: message_changed).
const changed = "message_changed"

// question turns what a person asked into an event. It is false for what is
// not for the bot to answer: its own words, other bots, deletions, messages
// of a special kind and those that changed without anybody editing them.
func question(outer slackevents.EventsAPIEvent, self identity) (q asked, ours bool) {
	callback, ok := outer.Data.(*slackevents.EventsAPICallbackEvent)
	if !ok {
		return asked{}, false
	}
	var raw, author, edited string
	switch m := outer.InnerEvent.Data.(type) {
	case *slackevents.AppMentionEvent:
		q.ev = bot.Event{Channel: m.Channel, Thread: m.ThreadTimeStamp, User: m.User, Message: m.TimeStamp}
		raw, author = m.Text, m.BotID
		if m.Edited != nil {
			edited = m.Edited.TimeStamp
		}
	case *slackevents.MessageEvent:
		said := m.Message
		if !m.IsIM() || said == nil || m.SubType != "" && m.SubType != withPhoto && m.SubType != changed {
			return asked{}, false
		}
		q.ev = bot.Event{Channel: m.Channel, Thread: said.ThreadTimestamp, User: said.User, Message: said.Timestamp, Direct: true}
		raw, author = said.Text, said.BotID
		if m.SubType == changed {
			if said.Edited == nil {
				return asked{}, false
			}
			edited = said.Edited.Timestamp
		}
	default:
		return asked{}, false
	}
	ev := &q.ev
	ev.ID, ev.Workspace = callback.EventID, self.team
	if author != "" || ev.User == "" || ev.User == self.user || ev.User == platformUser || ev.ID == "" || ev.Message == "" {
		return asked{}, false
	}
	if ev.Thread == "" || ev.Thread == ev.Message {
		ev.Thread, ev.Opens = ev.Message, !ev.Direct
	}
	q.edited = edited != ""
	ev.At = moment(or(edited, ev.Message), callback.EventTime)
	ev.Text = typed(raw, self.user)
	return q, true
}

// moment reads a message stamp, seconds and a fraction; one that is no number
// leaves the time of the event.
func moment(stamp string, eventTime int) time.Time {
	seconds, err := strconv.ParseFloat(stamp, 64)
	if err != nil || math.IsNaN(seconds) || seconds < 0 || seconds > 1<<40 {
		return time.Unix(int64(eventTime), 0)
	}
	return time.UnixMicro(int64(math.Round(seconds * 1e6)))
}

package standin

import (
	"slices"
	"time"
)

// Options say what the workspace holds and how it behaves. The zero value is
// a small crew's workspace whose app was installed with the fewest scopes.
type Options struct {
	// Addr is the address to listen on; a free loopback port where empty.
	Addr string
	// BotName is the name by which people call the bot.
	BotName string
	// BotToken and AppToken are the tokens that the workspace takes.
	BotToken, AppToken string
	// Scopes are what the bot token was granted.
	Scopes []string
	// Events are the subscriptions: app_mention, message.im, message.channels.
	Events []string
	// Channels are the conversations there are.
	Channels []Channel
	// PingEvery is the time between the server's WebSocket pings.
	PingEvery time.Duration
	// PostEvery is the least time between two posts in one channel; a post
	// that comes sooner is told to wait. Zero sets no limit.
	PostEvery time.Duration
}

// Channel is one conversation of the workspace.
type Channel struct {
	ID     string // begins with C, or with D for a direct message with the bot
	Name   string
	Absent bool // the bot was not invited
}

// direct says whether the channel is a direct message (platform
// documentation, conversations: ids of direct messages begin with D).
func (c Channel) direct() bool { return c.ID != "" && c.ID[0] == 'D' }

// The conversations of a workspace whose options name none.
const (
	Yard   = "C0YARD0001" // the bot is a member
	Mill   = "C0MILL0002" // the bot is a member
	Away   = "C0AWAY0003" // the bot was not invited
	Direct = "D0CREW0001" // a direct message with the bot
)

// Who is who.
const (
	TeamID  = "T0CREW0001"
	AppID   = "A0APP00001"
	BotUser = "U0BOT00001"
	BotID   = "B0BOT00001"
)

func (o Options) withDefaults() Options {
	set := func(s *string, v string) {
		if *s == "" {
			*s = v
		}
	}
	set(&o.Addr, "127.0.0.1:0")
	set(&o.BotName, "bot")
	// Tokens of the shape the platform hands out (platform documentation,
	// token types).
	set(&o.BotToken, "xoxb-"+"1000000001-2000000002-StandInBotToken")
	set(&o.AppToken, "xapp-"+"1-A0APP00001-3000000003-standinapptoken")
	if o.Scopes == nil {
		o.Scopes = []string{"app_mentions:read", "chat:write", "files:write", "im:history"}
	}
	if o.Events == nil {
		o.Events = []string{"app_mention", "message.im"}
	}
	if o.Channels == nil {
		o.Channels = []Channel{
			{ID: Yard, Name: "yard"}, {ID: Mill, Name: "mill"},
			{ID: Away, Name: "away", Absent: true}, {ID: Direct, Name: "direct"},
		}
	}
	if o.PingEvery == 0 {
		o.PingEvery = 5 * time.Second
	}
	return o
}

// sends says whether the app hears of an event: it must have subscribed and
// hold the scope (platform documentation, the page of each event).
func (o Options) sends(event string) bool {
	scope := map[string]string{
		"app_mention":      "app_mentions:read",
		"message.im":       "im:history",
		"message.channels": "channels:history",
	}[event]
	return slices.Contains(o.Events, event) && slices.Contains(o.Scopes, scope)
}

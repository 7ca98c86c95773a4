package standin

import (
	"slices"
	"strings"
	"time"
)

// Options say what a workspace holds and how it behaves. The zero value is
// a small crew's workspace whose app was installed with the fewest scopes.
type Options struct {
	// Those of the stand-in as a whole come first: the first workspace's
	// hold, and a later one's are not looked at.

	// Addr is the address to listen on; a free loopback port where empty.
	Addr string
	// AppToken is the token with which the app opens sockets.
	AppToken string
	// SigningSecret signs what is sent to request URLs.
	SigningSecret string
	// ClientID and ClientSecret are with what the app proves itself when it
	// is installed.
	ClientID, ClientSecret string
	// PingEvery is the time between the server's WebSocket pings.
	PingEvery time.Duration
	// Retries are the waits before a delivery to a request URL is tried
	// again.
	Retries []time.Duration
	// AnswerWithin is how long the app has to answer at a request URL.
	AnswerWithin time.Duration
	// Now is the clock of stamps and of what runs out.
	Now func() time.Time

	// Team is the workspace's id.
	Team string
	// BotName is the name by which people call the bot.
	BotName string
	// BotToken is the token with which the app acts in the workspace.
	BotToken string
	// Scopes are what the bot token was granted.
	Scopes []string
	// Events are the subscriptions, by the names of their pages.
	Events []string
	// Channels are the conversations there are.
	Channels []Channel
	// Users are the people there are, the bot aside.
	Users []User
	// NotInstalled starts the workspace without the app: no token is good
	// until the app has exchanged a code.
	NotInstalled bool
	// HomeTab says whether the app shows a home tab.
	HomeTab bool
	// PostEvery is the least time between two posts in one channel, and
	// RepliesEvery that between two readings of threads; what comes sooner
	// is told to wait. Zero sets no limit.
	PostEvery, RepliesEvery time.Duration
}

// Channel is one conversation of the workspace.
type Channel struct {
	ID      string // begins with C, or with D for a direct message with the bot
	Name    string
	Topic   string
	Members []string // users; everybody where nil
	Absent  bool     // the bot was not invited
}

// direct says whether the channel is a direct message (documented:
// conversations, ids of direct messages begin with D).
func (c Channel) direct() bool { return strings.HasPrefix(c.ID, "D") }

// has says whether a person is a member.
func (c Channel) has(user string) bool { return c.Members == nil || slices.Contains(c.Members, user) }

// User is one person of the workspace.
type User struct {
	ID       string
	Name     string
	RealName string
	TZ       string // such as America/Denver; UTC where empty
	Locale   string // such as es-ES; en-US where empty
	Bot      bool
}

// The conversations of a workspace whose options name none.
const (
	Yard   = "C0YARD0001" // the bot is a member
	Mill   = "C0MILL0002" // the bot is a member
	Away   = "C0AWAY0003" // the bot was not invited
	Direct = "D0CREW0001" // a direct message with the bot
)

// Who is who in the first workspace.
const (
	TeamID  = "T0CREW0001"
	AppID   = "A0APP00001"
	BotUser = "U0BOT00001"
	BotID   = "B0BOT00001"
)

// withSharedDefaults fills in what concerns the stand-in as a whole.
func (s Options) withSharedDefaults() Options {
	set(&s.Addr, "127.0.0.1:0")
	set(&s.AppToken, "xapp-"+"1-A0APP00001-3000000003-standinapptoken")
	set(&s.SigningSecret, "0123456789abcdef"+"0123456789abcdef")
	set(&s.ClientID, "1000000001.4000000004")
	set(&s.ClientSecret, "standin-client-secret")
	if s.PingEvery == 0 {
		s.PingEvery = 5 * time.Second
	}
	if s.Retries == nil {
		// Documented: Events API, retries: almost at once, after one minute
		// and after five.
		s.Retries = []time.Duration{0, time.Minute, 5 * time.Minute}
	}
	if s.AnswerWithin == 0 {
		// Documented: Events API and interactivity, responding: three seconds.
		s.AnswerWithin = 3 * time.Second
	}
	if s.Now == nil {
		s.Now = time.Now
	}
	return s
}

func (o Options) withDefaults() Options {
	set(&o.Team, TeamID)
	set(&o.BotName, "bot")
	// Of the shape the platform hands out (documented: token types).
	token := "xoxb-" + "1000000001-2000000002-StandInBotToken"
	if o.Team != TeamID {
		token += o.Team
	}
	set(&o.BotToken, token)
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
	if o.Users == nil {
		o.Users = []User{
			{ID: "U0CREW0001", Name: "ana", RealName: "Ana Reyes", TZ: "America/Denver"},
			{ID: "U0CREW0002", Name: "bo", RealName: "Bo Lind"},
		}
	}
	return o
}

func set(s *string, v string) {
	if *s == "" {
		*s = v
	}
}

// scopeOf is the scope an event needs; none where the page names none
// (documented: the page of each event).
var scopeOf = map[string]string{
	"app_mention":           "app_mentions:read",
	"message.im":            "im:history",
	"message.channels":      "channels:history",
	"member_joined_channel": "channels:read",
	"app_home_opened":       "",
	"app_uninstalled":       "",
	"tokens_revoked":        "",
}

// sends says whether the app hears of an event: it must have subscribed and
// hold the scope (documented: the page of each event).
func (o Options) sends(event string) bool {
	scope, known := scopeOf[event]
	return known && slices.Contains(o.Events, event) && (scope == "" || slices.Contains(o.Scopes, scope))
}

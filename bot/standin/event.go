package standin

import (
	"encoding/json"
	"fmt"
	"time"
)

// The kinds of envelopes (documented: Socket Mode, envelopes).
const (
	eventsAPI     = "events_api"
	interactive   = "interactive"
	slashCommands = "slash_commands"
)

// event is one thing the app is told of, however often.
type event struct {
	id      string
	kind    string
	payload json.RawMessage
	// reply takes what the app answered to an interaction; nil for events,
	// which are answered by calls.
	reply func(json.RawMessage)
}

// retried says whether it comes again where it was not acknowledged: events
// do (documented: Events API, retries), interactions do not (documented:
// interactivity, the person sees that it failed).
func (e *event) retried() bool { return e.kind == eventsAPI }

// retry is a delivery that waits for a socket.
type retry struct {
	event   *event
	attempt int
	reason  string
}

// Delivery is one try to tell the app of an event.
type Delivery struct {
	Envelope string
	Event    string
	Attempt  int    // 0 for the first
	Reason   string // why it was tried again
	Socket   int    // number of the socket it went to; 0 for a request URL
	Status   int    // of HTTP, from a request URL
	Sent     time.Time
	Acked    time.Time // zero until acknowledged
	from     *event
}

// Ack is an acknowledgement as the app sent it.
type Ack struct {
	Envelope string
	Event    string // empty where no such envelope was sent
	Socket   int
	At       time.Time
	Payload  json.RawMessage
}

// inner is the event itself (documented: app_mention and
// message.im).
type inner struct {
	Type        string `json:"type"`
	Subtype     string `json:"subtype,omitempty"`
	User        string `json:"user,omitempty"`
	BotID       string `json:"bot_id,omitempty"`
	AppID       string `json:"app_id,omitempty"`
	Text        string `json:"text"`
	TS          string `json:"ts"`
	ThreadTS    string `json:"thread_ts,omitempty"`
	Channel     string `json:"channel,omitempty"`
	ChannelType string `json:"channel_type,omitempty"`
	Team        string `json:"team,omitempty"`
	EventTS     string `json:"event_ts,omitempty"`
	DeletedTS   string `json:"deleted_ts,omitempty"`
	Edited      *edit  `json:"edited,omitempty"`
	Message     *inner `json:"message,omitempty"`
	Previous    *inner `json:"previous_message,omitempty"`

	Blocks []Block `json:"blocks,omitempty"`
}

type edit struct {
	User string `json:"user"`
	TS   string `json:"ts"`
}

// callback is what wraps it (documented: Events API).
type callback struct {
	Token          string          `json:"token"` // deprecated by the platform, still sent
	TeamID         string          `json:"team_id"`
	AppID          string          `json:"api_app_id"`
	Event          any             `json:"event"`
	Type           string          `json:"type"`
	EventID        string          `json:"event_id"`
	EventTime      int64           `json:"event_time"`
	Authorizations []authorization `json:"authorizations"`
	Shared         bool            `json:"is_ext_shared_channel"`
}

type authorization struct {
	TeamID string `json:"team_id"`
	UserID string `json:"user_id"`
	IsBot  bool   `json:"is_bot"`
}

// envelope is what travels on the socket (documented: Socket
// Mode).
type envelope struct {
	ID      string          `json:"envelope_id"`
	Payload json.RawMessage `json:"payload"`
	Type    string          `json:"type"`
	Accepts bool            `json:"accepts_response_payload"`
	Attempt int             `json:"retry_attempt"`
	Reason  string          `json:"retry_reason"`
}

// newEvent wraps an event and remembers it. The lock is held.
func (w *Workspace) newEvent(in any) *event {
	e := &event{id: fmt.Sprintf("Ev%09X", w.next()), kind: eventsAPI}
	payload, err := json.Marshal(callback{
		Token: "standin-verification-token", TeamID: w.opts.Team, AppID: AppID,
		Event: in, Type: "event_callback", EventID: e.id, EventTime: w.stamp / 1e6,
		Authorizations: []authorization{{TeamID: w.opts.Team, UserID: w.botUser, IsBot: true}},
	})
	if err != nil {
		panic("standin: an event that is no JSON: " + err.Error()) // a fault of the test that made it
	}
	e.payload = payload
	w.events[e.id] = e
	return e
}

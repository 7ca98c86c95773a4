package standin

import (
	"fmt"
	"strings"
	"time"
)

// Workspace is one workspace of a running stand-in.
type Workspace struct {
	*platform
	opts           Options
	botUser, botID string

	// Guarded by the stand-in's one lock.
	installed bool
	channels  map[string]Channel
	order     []string              // of the channels, as they were given
	messages  map[string][]*Message // by channel, oldest first
	known     map[thread]bool       // stamps of the messages there are
	replies   map[thread]chan Message
	lastPost  map[string]time.Time
	lastRead  time.Time        // of a thread
	homes     map[string]*View // by user
	modals    map[string]*View // by user: what is open on their screen
}

// thread names one conversation.
type thread struct{ channel, ts string }

// Start opens a stand-in with one workspace; the caller closes it.
func Start(o Options) (*Workspace, error) {
	o = o.withDefaults()
	p, err := open(o.withSharedDefaults())
	if err != nil {
		return nil, err
	}
	return p.add(o)
}

// Another adds a workspace to the stand-in: the same app, installed once
// more, with a token of its own.
func (w *Workspace) Another(o Options) (*Workspace, error) {
	return w.add(o.withDefaults())
}

func (p *platform) add(o Options) (*Workspace, error) {
	w := &Workspace{
		platform: p, opts: o, botUser: BotUser, botID: BotID, installed: !o.NotInstalled,
		channels: map[string]Channel{}, messages: map[string][]*Message{},
		known: map[thread]bool{}, replies: map[thread]chan Message{}, lastPost: map[string]time.Time{},
		homes: map[string]*View{}, modals: map[string]*View{},
	}
	if o.Team != TeamID {
		w.botUser, w.botID = "U0BOT"+strings.TrimPrefix(o.Team, "T"), "B0BOT"+strings.TrimPrefix(o.Team, "T")
	}
	for _, c := range o.Channels {
		w.channels[c.ID] = c
		w.order = append(w.order, c.ID)
	}
	p.mu.Lock()
	defer p.mu.Unlock()
	for _, other := range p.teams {
		if other.opts.Team == o.Team || other.opts.BotToken == o.BotToken {
			return nil, fmt.Errorf("workspace %s is there already, or its token is", o.Team)
		}
	}
	p.teams = append(p.teams, w)
	return w, nil
}

// ID is the workspace's id.
func (w *Workspace) ID() string { return w.opts.Team }

// BotToken is the token the workspace gave the bot.
func (w *Workspace) BotToken() string { return w.opts.BotToken }

// BotID is the id by which the bot's posts are known.
func (w *Workspace) BotID() string { return w.botID }

// Mention is the bot's mention as it stands in a message.
func (w *Workspace) Mention() string { return "<@" + w.botUser + ">" }

// user finds a person, or the bot.
func (w *Workspace) user(id string) (User, bool) {
	if id == w.botUser {
		return User{ID: id, Name: w.opts.BotName, RealName: w.opts.BotName, Bot: true}, true
	}
	for _, u := range w.opts.Users {
		if u.ID == id {
			return u, true
		}
	}
	return User{}, false
}

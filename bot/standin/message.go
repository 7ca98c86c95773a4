package standin

import (
	"regexp"
	"slices"
	"strings"
	"time"
)

// Message is one message of the workspace.
type Message struct {
	Channel  string
	User     string
	BotID    string // set on what a bot posted
	Text     string // as the platform keeps it: entities escaped, markup in angle brackets
	TS       string
	ThreadTS string // empty on a message that is in no thread
	Subtype  string
	Edited   bool
	Blocks   []Block
	Files    []File
	// Reactions are what people and the bot put under it.
	Reactions []Reaction
	For       string    // the only person who sees it; empty for everybody
	Events    []string  // ids of the events that told the app of it
	At        time.Time // when it arrived here

	// What the poster asked for (documented: chat.postMessage).
	Plain     bool   // mrkdwn was off: no *bold*, no _italic_
	Parse     string // "", "none" or "full"
	LinkNames bool
	Unfurls   bool
}

// Thread is the stamp a reply names: the thread's, or the message's own.
func (m Message) Thread() string {
	if m.ThreadTS != "" {
		return m.ThreadTS
	}
	return m.TS
}

// inner is the message as events tell of it.
func (m Message) inner() inner {
	return inner{
		Type: "message", Subtype: m.Subtype, User: m.User, BotID: m.BotID, Text: m.Text, TS: m.TS,
		ThreadTS: m.ThreadTS, Blocks: m.Blocks,
	}
}

// wire is the message as calls answer with it.
func (m Message) wire(w *Workspace) inner {
	in := m.inner()
	in.Team = w.opts.Team
	if in.BotID != "" {
		in.AppID = AppID
	}
	return in
}

var entities = strings.NewReplacer("&lt;", "<", "&gt;", ">", "&amp;", "&")

// Shown is the text as a person sees it, markup left as it is. The platform
// writes &, < and > as entities and nothing else (documented:
// formatting message text).
func (m Message) Shown() string { return entities.Replace(m.Text) }

var (
	markup  = regexp.MustCompile(`<(@[A-Z0-9]+|!(?:channel|here|everyone)|!subteam\^[A-Z0-9]+)(?:\|[^>]*)?>`)
	byName  = regexp.MustCompile(`(?:^|[^\w])@(\w+)`)
	rawLink = regexp.MustCompile(`<(?:https?:|mailto:|tel:|#)[^>]*>`)
	// bareLink is an address that no angle brackets mark.
	bareLink = regexp.MustCompile(`\bhttps?://[^\s<>|]+`)
)

// Pings are those whose phones would buzz for the message. Markup in angle
// brackets always counts; a bare @name only where the poster asked for names
// to be found, by link_names or parse=full (documented:
// formatting message text).
func (m Message) Pings() []string {
	var names []string
	for _, f := range markup.FindAllStringSubmatch(m.Text, -1) {
		names = append(names, f[1])
	}
	if m.LinkNames || m.Parse == "full" {
		for _, f := range byName.FindAllStringSubmatch(m.Text, -1) {
			names = append(names, "@"+f[1])
		}
	}
	return names
}

// Links are the links the message would show: markup, and bare addresses
// unless parse is none (documented: formatting message text).
func (m Message) Links() []string {
	links := rawLink.FindAllString(m.Text, -1)
	if m.Parse != "none" {
		links = append(links, bareLink.FindAllString(m.Text, -1)...)
	}
	return links
}

// named is a name behind an @, not in the middle of a word.
var named = regexp.MustCompile(`(^|[^\w@])@([\p{L}\d._-]*[\p{L}\d])`)

// Typed turns what a person types into what the platform keeps: the three
// entities, and the name of somebody there, or of the bot, behind an @ as a
// mention.
func (w *Workspace) Typed(text string) string {
	escaped := strings.NewReplacer("&", "&amp;", "<", "&lt;", ">", "&gt;").Replace(text)
	bot, _ := w.user(w.botUser)
	there := append(slices.Clone(w.opts.Users), bot)
	return named.ReplaceAllStringFunc(escaped, func(m string) string {
		parts := named.FindStringSubmatch(m)
		i := slices.IndexFunc(there, func(u User) bool { return strings.EqualFold(u.Name, parts[2]) })
		if i < 0 {
			return m
		}
		return parts[1] + "<@" + there[i].ID + ">"
	})
}

// mentioned says whether the text calls the bot.
func (w *Workspace) mentioned(text string) bool {
	for _, f := range markup.FindAllStringSubmatch(text, -1) {
		if f[1] == "@"+w.botUser {
			return true
		}
	}
	return false
}

package standin

import (
	"net/url"
	"regexp"
	"slices"
)

// Reaction is one sign under a message, and whose it is.
type Reaction struct {
	Name  string
	Users []string
}

var reactionName = regexp.MustCompile(`^[a-z0-9_+'-]{1,100}$`)

// addReaction puts the bot's sign under a message (documented:
// reactions.add).
func (w *Workspace) addReaction(args url.Values) answer {
	return w.react(args, func(m *Message, at int, name string) answer {
		list := slices.Clone(m.Reactions)
		switch {
		case at < 0:
			list = append(list, Reaction{Name: name, Users: []string{w.botUser}})
		case slices.Contains(list[at].Users, w.botUser):
			return failed("already_reacted")
		default:
			list[at].Users = append(slices.Clone(list[at].Users), w.botUser)
		}
		m.Reactions = list
		return nil
	})
}

// removeReaction takes it back (documented: reactions.remove).
func (w *Workspace) removeReaction(args url.Values) answer {
	return w.react(args, func(m *Message, at int, _ string) answer {
		if at < 0 || !slices.Contains(m.Reactions[at].Users, w.botUser) {
			return failed("no_reaction")
		}
		list := slices.Clone(m.Reactions)
		left := slices.DeleteFunc(slices.Clone(list[at].Users), func(u string) bool { return u == w.botUser })
		if list[at].Users = left; len(left) == 0 {
			list = slices.Delete(list, at, at+1)
		}
		m.Reactions = list
		return nil
	})
}

// react finds the message and the place of the reaction among its own, -1
// for none.
func (w *Workspace) react(args url.Values, do func(*Message, int, string) answer) answer {
	name := args.Get("name")
	w.mu.Lock()
	defer w.mu.Unlock()
	c, refused := w.room(args.Get("channel"))
	if refused != nil {
		return refused
	}
	m := w.find(c.ID, args.Get("timestamp"))
	switch {
	case !reactionName.MatchString(name):
		return failed("invalid_name")
	case args.Get("timestamp") == "":
		return failed("no_item_specified")
	case m == nil || m.For != "":
		return failed("message_not_found")
	}
	at := slices.IndexFunc(m.Reactions, func(r Reaction) bool { return r.Name == name })
	if refused := do(m, at, name); refused != nil {
		return refused
	}
	w.show()
	return answer{"ok": true}
}

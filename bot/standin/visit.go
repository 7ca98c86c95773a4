package standin

import "slices"

// OpenHome is a person looking at the bot's home tab (documented:
// app_home_opened). It returns the event's id, empty where the app is not
// told.
func (w *Workspace) OpenHome(user string) string {
	w.mu.Lock()
	in := answer{"type": "app_home_opened", "user": user, "tab": "home", "event_ts": w.now()}
	for _, id := range w.order {
		if c := w.channels[id]; c.direct() && slices.Contains(c.Members, user) {
			in["channel"] = c.ID
		}
	}
	if v := w.homes[user]; v != nil {
		in["view"] = v.wire(w, answer{})
	}
	return w.tellUnlock("app_home_opened", in)
}

// Join puts somebody into a channel, the bot itself where the user is its
// own (documented: member_joined_channel). It returns the event's id, empty
// where the app is not told.
func (w *Workspace) Join(channel, user string) string {
	w.mu.Lock()
	c := w.channels[channel]
	switch {
	case user == w.botUser:
		c.Absent = false
	case c.Members != nil && !c.has(user):
		c.Members = append(slices.Clone(c.Members), user)
	}
	w.channels[channel] = c
	w.show()
	if c.Absent {
		w.mu.Unlock()
		return ""
	}
	return w.tellUnlock("member_joined_channel", answer{
		"type": "member_joined_channel", "user": user, "channel": channel, "channel_type": "C",
		"team": w.opts.Team, "event_ts": w.now(),
	})
}

// BotUser is the bot's own user.
func (w *Workspace) BotUser() string { return w.botUser }

// tellUnlock tells the app of an event if it is to hear of it, and gives the
// lock back.
func (w *Workspace) tellUnlock(kind string, in answer) string {
	if !w.opts.sends(kind) || !w.installed {
		w.mu.Unlock()
		return ""
	}
	e := w.newEvent(in)
	w.mu.Unlock()
	w.deliver(retry{event: e})
	return e.id
}

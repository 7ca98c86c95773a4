package standin

import (
	"net/url"
	"slices"
	"strconv"
	"time"
)

// userInfo tells of one person (documented: users.info).
func (w *Workspace) userInfo(args url.Values) answer {
	u, ok := w.user(args.Get("user"))
	if !ok {
		return failed("user_not_found")
	}
	zone, err := time.LoadLocation(u.TZ)
	if err != nil {
		zone = time.UTC
	}
	short, offset := w.shared.Now().In(zone).Zone()
	user := answer{
		"id": u.ID, "team_id": w.opts.Team, "name": u.Name, "real_name": u.RealName, "is_bot": u.Bot,
		"tz": zone.String(), "tz_label": short, "tz_offset": offset, "deleted": false,
		"profile": answer{"real_name": u.RealName, "display_name": u.Name},
	}
	if on(args, "include_locale", false) {
		locale := u.Locale
		set(&locale, "en-US")
		user["locale"] = locale
	}
	return answer{"ok": true, "user": user}
}

// channelInfo tells of one channel (documented: conversations.info).
func (w *Workspace) channelInfo(args url.Values) answer {
	w.mu.Lock()
	defer w.mu.Unlock()
	c, ok := w.channels[args.Get("channel")]
	if !ok {
		return failed("channel_not_found")
	}
	channel := answer{
		"id": c.ID, "name": c.Name, "is_channel": !c.direct(), "is_im": c.direct(), "is_member": !c.Absent,
		"is_archived": false, "is_private": false, "topic": answer{"value": c.Topic},
		"context_team_id": w.opts.Team,
	}
	if c.direct() && len(c.Members) > 0 {
		channel["user"] = c.Members[0]
	}
	return answer{"ok": true, "channel": channel}
}

// channelMembers lists who is in a channel, page by page (documented:
// conversations.members, pagination).
func (w *Workspace) channelMembers(args url.Values) answer {
	w.mu.Lock()
	defer w.mu.Unlock()
	c, ok := w.channels[args.Get("channel")]
	if !ok {
		return failed("channel_not_found")
	}
	var list []string
	for _, u := range w.opts.Users {
		if c.has(u.ID) {
			list = append(list, u.ID)
		}
	}
	if !c.Absent {
		list = append(list, w.botUser)
	}
	return paged(list, "members", args, 100, func(a answer) answer { return a })
}

// Most replies of one reading, and for newly distributed apps (documented:
// conversations.replies).
const (
	maxReplies    = 1_000
	scarceReplies = 15
)

// channelReplies reads a thread, its first message first (documented:
// conversations.replies).
func (w *Workspace) channelReplies(args url.Values) answer {
	w.mu.Lock()
	defer w.mu.Unlock()
	c, refused := w.room(args.Get("channel"))
	if refused != nil {
		return refused
	}
	ts, oldest := args.Get("ts"), args.Get("oldest")
	var list []inner
	for _, m := range w.messages[c.ID] {
		if m.For == "" && m.Thread() == ts && (m.TS == ts || m.TS >= oldest) {
			list = append(list, m.wire(w))
		}
	}
	if len(list) == 0 {
		return failed("thread_not_found")
	}
	most := maxReplies
	if w.opts.RepliesEvery > 0 {
		most = scarceReplies
	}
	return paged(list, "messages", args, most, func(a answer) answer {
		a["has_more"] = a["response_metadata"].(answer)["next_cursor"] != ""
		return a
	})
}

// paged answers with one page of a list, and the cursor of the next
// (documented: pagination).
func paged[T any](list []T, name string, args url.Values, most int, finish func(answer) answer) answer {
	from := 0
	if cursor := args.Get("cursor"); cursor != "" {
		n, err := strconv.Atoi(cursor)
		if err != nil || n < 1 || n > len(list) {
			return failed("invalid_cursor")
		}
		from = n
	}
	limit := number(args, "limit", most)
	if limit < 1 || limit > max(most, 1_000) {
		return failed("invalid_limit")
	}
	to, next := min(from+min(limit, most), len(list)), ""
	if to < len(list) {
		next = strconv.Itoa(to)
	}
	return finish(answer{"ok": true, name: slices.Clone(list[from:to]), "response_metadata": answer{"next_cursor": next}})
}

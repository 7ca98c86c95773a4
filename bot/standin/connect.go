package standin

import (
	"fmt"
	"net/url"
)

func (w *Workspace) authTest(url.Values) answer {
	return answer{
		"ok": true, "url": "http://" + w.addr + "/", "team": "crew", "user": w.opts.BotName,
		"team_id": w.opts.Team, "user_id": w.botUser, "bot_id": w.botID, "is_enterprise_install": false,
	}
}

// openConnection hands out an address that serves once (documented:
// apps.connections.open and Socket Mode).
func (w *Workspace) openConnection(url.Values) answer {
	w.mu.Lock()
	defer w.mu.Unlock()
	ticket := fmt.Sprintf("ticket-%d", w.next())
	w.tickets[ticket] = true
	return answer{"ok": true, "url": "ws://" + w.addr + "/link/?ticket=" + ticket + "&app_id=" + AppID}
}

package slackchat_test

import (
	"encoding/json"
	"net/http"
	"net/url"

	"heft/bot/standin"
)

// forge puts blocks of nobody's making into a message of the bot's.
func (r *rig) forge(m standin.Message, blocks string) error {
	resp, err := http.PostForm(r.URL()+"chat.update", url.Values{
		"token": {r.BotToken()}, "channel": {m.Channel}, "ts": {m.TS}, "text": {"forged"}, "blocks": {blocks},
	})
	if err != nil {
		return err
	}
	return resp.Body.Close()
}

// link is the address of a message.
func (r *rig) link(m standin.Message) (string, error) {
	resp, err := http.PostForm(r.URL()+"chat.getPermalink", url.Values{
		"token": {r.BotToken()}, "channel": {m.Channel}, "message_ts": {m.TS},
	})
	if err != nil {
		return "", err
	}
	defer resp.Body.Close()
	var a struct{ Permalink string }
	err = json.NewDecoder(resp.Body).Decode(&a)
	return a.Permalink, err
}

// forgePress tells the bot of a button that the workspace did not show, and
// waits until it is taken.
func (r *rig) forgePress(user, block, action, value string) {
	r.Helper()
	i, err := r.Act(user, map[string]any{
		"type": "block_actions", "container": map[string]string{"type": "view"},
		"actions": []map[string]string{{"type": "button", "block_id": block, "action_id": action, "value": value, "action_ts": "1795637575.000100"}},
	})
	if err != nil {
		r.Fatal(err)
	}
	r.await(func() bool { return r.Acked(i.Event) })
}

package slackchat

import (
	"io"
	"net/http"
	"net/http/httptest"
	"testing"

	"github.com/slack-go/slack"
)

// What the workspace says back of a message is not read: nothing in it can
// make a reply that is there count as not posted. What else it says is.
func TestAPostedMessageIsNotReadBack(t *testing.T) {
	for name, c := range map[string]struct{ answer, stamp, failure string }{
		"read":             {`{"ok":true,"channel":"C1","ts":"1795608000.000100","message":{"blocks":[{"type":"section"}]}}`, "1795608000.000100", ""},
		"not to be read":   {`{"ok":true,"message":{"blocks":"none","ts":7},"ts":"1795608000.000200"}` + "\n", "1795608000.000200", ""},
		"without a stamp":  {`{"ok":true,"message":{"ts":"1795608000.000300"}}`, "", ""},
		"refused":          {`{"ok":false,"error":"channel_not_found","message":"?"}`, "", "channel_not_found"},
		"no JSON":          {`so much for that`, "", "invalid character 's' looking for beginning of value"},
		"broken off early": {`{"ok":true,"ts":"1795608000.000400","message":{`, "", "unexpected EOF"},
	} {
		server := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
			_, _ = io.WriteString(w, c.answer)
		}))
		api := slack.New("xoxb-1", slack.OptionAPIURL(server.URL+"/"), slack.OptionHTTPClient(httpClient(1)))
		for way, option := range map[string]slack.MsgOption{"posted": slack.MsgOptionPost(), "edited": slack.MsgOptionUpdate("1795608000.000100")} {
			_, stamp, _, err := api.SendMessageContext(t.Context(), "C1", option, slack.MsgOptionText("hello", false))
			failure := ""
			if err != nil {
				failure = err.Error()
			}
			if stamp != c.stamp || failure != c.failure {
				t.Errorf("%s, %s: stamp %q, error %q; want %q, %q", name, way, stamp, failure, c.stamp, c.failure)
			}
		}
		server.Close()
	}
}

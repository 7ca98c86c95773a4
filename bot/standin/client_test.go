package standin_test

import (
	"context"
	"encoding/json"
	"io"
	"net/http"
	"net/url"
	"strconv"
	"strings"
	"sync/atomic"
	"testing"
	"time"

	"github.com/gorilla/websocket"

	"heft/bot/standin"
)

func start(t *testing.T, o standin.Options) *standin.Workspace {
	t.Helper()
	w, err := standin.Start(o)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() {
		if err := w.Close(); err != nil {
			t.Error(err)
		}
	})
	return w
}

// post calls a method with a body of the given type and returns the answer.
func post(t *testing.T, w *standin.Workspace, method, token, kind, body string) (int, http.Header, map[string]any) {
	t.Helper()
	req, err := http.NewRequestWithContext(t.Context(), http.MethodPost, w.URL()+method, strings.NewReader(body))
	if err != nil {
		t.Fatal(err)
	}
	req.Header.Set("Content-Type", kind)
	if token != "" {
		req.Header.Set("Authorization", "Bearer "+token)
	}
	resp, err := http.DefaultClient.Do(req)
	if err != nil {
		t.Fatal(err)
	}
	defer resp.Body.Close()
	var a map[string]any
	if err := json.NewDecoder(resp.Body).Decode(&a); err != nil {
		t.Fatal(err)
	}
	return resp.StatusCode, resp.Header, a
}

// form calls a method as the bot, with a form.
func form(t *testing.T, w *standin.Workspace, method string, args ...string) map[string]any {
	t.Helper()
	v := url.Values{}
	for i := 0; i < len(args); i += 2 {
		v.Set(args[i], args[i+1])
	}
	_, _, a := post(t, w, method, w.BotToken(), "application/x-www-form-urlencoded", v.Encode())
	return a
}

// get calls a method that reads, as the bot, with a query.
func get(t *testing.T, w *standin.Workspace, call string) map[string]any {
	t.Helper()
	req, err := http.NewRequestWithContext(t.Context(), http.MethodGet, w.URL()+call, nil)
	if err != nil {
		t.Fatal(err)
	}
	req.Header.Set("Authorization", "Bearer "+w.BotToken())
	resp, err := http.DefaultClient.Do(req)
	if err != nil {
		t.Fatal(err)
	}
	defer resp.Body.Close()
	var a map[string]any
	if err := json.NewDecoder(resp.Body).Decode(&a); err != nil {
		t.Fatal(err)
	}
	return a
}

// client is an app at the other end of a socket.
type client struct {
	*testing.T
	conn *websocket.Conn
}

// frame is what comes down a socket.
type frame struct {
	Type     string `json:"type"`
	Reason   string `json:"reason"`
	Envelope string `json:"envelope_id"`
	Attempt  int    `json:"retry_attempt"`
	Why      string `json:"retry_reason"`
	Open     int    `json:"num_connections"`
	Payload  struct {
		Type    string         `json:"type"`
		EventID string         `json:"event_id"`
		Event   map[string]any `json:"event"`
	} `json:"payload"`
}

// ticket asks for the address of a new socket.
func ticket(t *testing.T, w *standin.Workspace) string {
	t.Helper()
	_, _, a := post(t, w, "apps.connections.open", w.AppToken(), "application/json", "")
	address, _ := a["url"].(string)
	if address == "" {
		t.Fatalf("apps.connections.open answered %v", a)
	}
	return address
}

// connect opens a socket and returns it with the first frame.
func connect(t *testing.T, w *standin.Workspace) (*client, frame) {
	t.Helper()
	conn, _, err := websocket.DefaultDialer.DialContext(t.Context(), ticket(t, w), http.Header{"Origin": {"https://elsewhere.example"}})
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { _ = conn.Close() })
	c := &client{t, conn}
	return c, c.read()
}

// read returns the next frame; a minute is for ever here.
func (c *client) read() frame {
	c.Helper()
	if err := c.conn.SetReadDeadline(time.Now().Add(time.Minute)); err != nil {
		c.Fatal(err)
	}
	var f frame
	if err := c.conn.ReadJSON(&f); err != nil {
		c.Fatal(err)
	}
	return f
}

func (c *client) ack(envelope string) {
	c.Helper()
	if err := c.conn.WriteJSON(map[string]string{"envelope_id": envelope}); err != nil {
		c.Fatal(err)
	}
}

// told is an envelope with its payload as it came.
type told struct {
	Type     string         `json:"type"`
	Envelope string         `json:"envelope_id"`
	Accepts  bool           `json:"accepts_response_payload"`
	Payload  map[string]any `json:"payload"`
}

// told returns the next envelope.
func (c *client) told() told {
	c.Helper()
	if err := c.conn.SetReadDeadline(time.Now().Add(time.Minute)); err != nil {
		c.Fatal(err)
	}
	var f told
	if err := c.conn.ReadJSON(&f); err != nil {
		c.Fatal(err)
	}
	return f
}

// answer acknowledges an envelope with a payload.
func (c *client) answer(envelope string, payload any) {
	c.Helper()
	if err := c.conn.WriteJSON(map[string]any{"envelope_id": envelope, "payload": payload}); err != nil {
		c.Fatal(err)
	}
}

// respond posts to a response_url and returns the status and the words.
func respond(t *testing.T, address, body string) (int, string) {
	t.Helper()
	resp, err := http.Post(address, "application/json", strings.NewReader(body))
	if err != nil {
		t.Fatal(err)
	}
	defer resp.Body.Close()
	words, err := io.ReadAll(resp.Body)
	if err != nil {
		t.Fatal(err)
	}
	return resp.StatusCode, string(words)
}

// clock runs ahead when it is told to.
type clock struct{ ahead atomic.Int64 }

func (c *clock) now() time.Time       { return time.Now().Add(time.Duration(c.ahead.Load())) }
func (c *clock) pass(d time.Duration) { c.ahead.Add(int64(d)) }

// await waits for a condition of the workspace.
func await(t *testing.T, w *standin.Workspace, cond func() bool) {
	t.Helper()
	ctx, cancel := context.WithTimeout(t.Context(), time.Minute)
	defer cancel()
	if err := w.Await(ctx, cond); err != nil {
		t.Fatal(err)
	}
}

// at reads a field of nested objects and lists, such as "view.blocks.0.type".
func at(v any, path string) any {
	for step := range strings.SplitSeq(path, ".") {
		switch in := v.(type) {
		case map[string]any:
			v = in[step]
		case []any:
			i, err := strconv.Atoi(step)
			if err != nil || i >= len(in) {
				return nil
			}
			v = in[i]
		default:
			return nil
		}
	}
	return v
}

package standin_test

import (
	"fmt"
	"slices"
	"testing"

	"github.com/gorilla/websocket"

	"heft/bot/standin"
)

const crew = "U0CREW0001"

// Platform documentation, Socket Mode: hello first, one envelope to one
// socket, acknowledged by its id.
func TestSocket(t *testing.T) {
	w := start(t, standin.Options{})
	c, hello := connect(t, w)
	if hello.Type != "hello" || hello.Open != 1 {
		t.Fatalf("first frame: %+v", hello)
	}
	m := w.Say(standin.Yard, crew, w.Mention()+" hello")
	f := c.read()
	if f.Type != "events_api" || f.Payload.EventID != m.Events[0] || f.Attempt != 0 {
		t.Fatalf("envelope: %+v", f)
	}
	in := f.Payload.Event
	if in["type"] != "app_mention" || in["ts"] != m.TS || in["channel"] != standin.Yard || in["user"] != crew {
		t.Errorf("event: %v", in)
	}
	c.ack(f.Envelope)
	if err := w.Await(t.Context(), func() bool { return w.Acked(m.Events[0]) }); err != nil {
		t.Fatal(err)
	}
	if d := w.Deliveries(m.Events[0]); len(d) != 1 || d[0].Acked.Before(d[0].Sent) {
		t.Errorf("deliveries: %+v", d)
	}
}

func TestTicketServesOnce(t *testing.T) {
	w := start(t, standin.Options{})
	address := ticket(t, w)
	conn, _, err := websocket.DefaultDialer.DialContext(t.Context(), address, nil)
	if err != nil {
		t.Fatal(err)
	}
	defer conn.Close()
	if again, resp, err := websocket.DefaultDialer.DialContext(t.Context(), address, nil); err == nil {
		again.Close()
		t.Error("the ticket served twice")
	} else if resp == nil || resp.StatusCode != 401 {
		t.Errorf("second use: %v", err)
	}
}

// Platform documentation, the pages of the events: what an app hears depends
// on its subscriptions, its scopes and its membership.
func TestWhoHearsWhat(t *testing.T) {
	all := []string{"app_mention", "message.im", "message.channels"}
	for _, c := range []struct {
		name, channel, text string
		o                   standin.Options
		want                []string
	}{
		{"mention", standin.Yard, "hey <@U0BOT00001>", standin.Options{}, []string{"app_mention"}},
		{"no mention", standin.Yard, "hey", standin.Options{}, nil},
		{"not a member", standin.Away, "hey <@U0BOT00001>", standin.Options{}, nil},
		{"direct", standin.Direct, "hey", standin.Options{}, []string{"message im"}},
		{"mention in a direct message", standin.Direct, "<@U0BOT00001>", standin.Options{}, []string{"message im"}},
		{"reads channels too", standin.Yard, "<@U0BOT00001>", standin.Options{
			Events: all, Scopes: []string{"app_mentions:read", "im:history", "channels:history"},
		}, []string{"message channel", "app_mention"}},
		{"scope missing", standin.Yard, "<@U0BOT00001>", standin.Options{Scopes: []string{"chat:write"}}, nil},
		{"not subscribed", standin.Direct, "hey", standin.Options{Events: []string{"app_mention"}}, nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			w := start(t, c.o)
			app, _ := connect(t, w)
			m := w.Say(c.channel, crew, c.text)
			end := w.Send(map[string]any{"type": "end"})
			var got []string
			for f := app.read(); f.Payload.EventID != end; f = app.read() {
				kind, _ := f.Payload.Event["type"].(string)
				if sort, ok := f.Payload.Event["channel_type"]; ok {
					kind += fmt.Sprint(" ", sort)
				}
				got = append(got, kind)
			}
			if !slices.Equal(got, c.want) || len(m.Events) != len(c.want) {
				t.Errorf("heard %q, want %q", got, c.want)
			}
		})
	}
}

// Platform documentation, Events API, retries; Socket Mode, disconnecting.
func TestRetries(t *testing.T) {
	w := start(t, standin.Options{})
	early := w.Say(standin.Direct, crew, "nobody listens yet")
	c, _ := connect(t, w)
	f := c.read()
	if f.Payload.EventID != early.Events[0] || f.Attempt != 1 || f.Why == "" {
		t.Errorf("with no socket at first: %+v", f)
	}
	c.ack(f.Envelope)
	if err := w.Await(t.Context(), func() bool { return w.Acked(early.Events[0]) }); err != nil {
		t.Fatal(err)
	}
	lost := w.Say(standin.Direct, crew, "not acknowledged")
	first := c.read()
	w.Disconnect("refresh_requested")
	if f := c.read(); f.Type != "disconnect" || f.Reason != "refresh_requested" {
		t.Errorf("told to go by %+v", f)
	}
	d, _ := connect(t, w)
	if f := d.read(); f.Payload.EventID != lost.Events[0] || f.Attempt != 1 || f.Envelope == first.Envelope {
		t.Errorf("after the old socket: %+v", f)
	}
	if err := w.Redeliver(early.Events[0], 3, "http_error"); err != nil {
		t.Fatal(err)
	}
	if f := d.read(); f.Payload.EventID != early.Events[0] || f.Attempt != 3 || f.Why != "http_error" {
		t.Errorf("redelivered: %+v", f)
	}
	if err := w.Redeliver("Ev404", 1, "timeout"); err == nil {
		t.Error("an event that never was is redelivered")
	}
}

// Platform documentation, Socket Mode: up to ten sockets, any of which may
// get an envelope.
func TestTenSockets(t *testing.T) {
	w := start(t, standin.Options{})
	var apps []*client
	for i := range 10 {
		c, hello := connect(t, w)
		if hello.Open != i+1 {
			t.Errorf("hello counts %d, want %d", hello.Open, i+1)
		}
		apps = append(apps, c)
	}
	if _, f := connect(t, w); f.Type != "disconnect" || f.Reason != "too_many_websockets" {
		t.Errorf("the eleventh got %+v", f)
	}
	got := map[string]bool{}
	for range apps {
		w.Say(standin.Yard, crew, w.Mention())
	}
	for _, c := range apps {
		got[c.read().Payload.EventID] = true
	}
	if len(got) != len(apps) {
		t.Errorf("%d sockets got %d events", len(apps), len(got))
	}
}

func TestTheBotHearsItsOwnPostsAndEdits(t *testing.T) {
	w := start(t, standin.Options{})
	c, _ := connect(t, w)
	form(t, w, "chat.postMessage", "channel", standin.Direct, "text", "mine")
	if in := c.read().Payload.Event; in["bot_id"] != standin.BotID || in["user"] != standin.BotUser {
		t.Errorf("own post: %v", in)
	}
	m := w.Say(standin.Direct, crew, "14 in")
	c.read()
	m = w.Edit(m, "16 in")
	if in := c.read().Payload.Event; in["subtype"] != "message_changed" || in["message"].(map[string]any)["text"] != "16 in" {
		t.Errorf("edit: %v", in)
	}
	w.Delete(m)
	if in := c.read().Payload.Event; in["subtype"] != "message_deleted" || in["deleted_ts"] != m.TS {
		t.Errorf("deletion: %v", in)
	}
	if n := len(w.Messages(standin.Direct)); n != 1 {
		t.Errorf("%d messages left, want the bot's own", n)
	}
	forgot := w.Say(standin.Yard, crew, "14 in")
	w.Edit(forgot, w.Mention()+" 14 in")
	if in := c.read().Payload.Event; in["type"] != "app_mention" || in["edited"] == nil {
		t.Errorf("mention put in afterwards: %v", in)
	}
}

func TestDrive(t *testing.T) {
	w := start(t, standin.Options{})
	c, _ := connect(t, w)
	const total = 40
	type measured struct {
		standin.Stats
		err error
	}
	driven := make(chan measured, 1)
	go func() {
		s, err := w.Drive(t.Context(), standin.DriveOptions{
			Total: total, InFlight: 4, Channels: []string{standin.Yard, standin.Direct},
			Text: func(i int) string { return fmt.Sprint("question ", i) },
		})
		driven <- measured{s, err}
	}()
	for served := 0; served < total; {
		f := c.read()
		c.ack(f.Envelope)
		in := f.Payload.Event
		if _, own := in["bot_id"]; own {
			continue
		}
		form(t, w, "chat.postMessage", "channel", in["channel"].(string), "text", "yes", "thread_ts", in["ts"].(string))
		served++
	}
	s := <-driven
	if s.err != nil {
		t.Fatal(s.err)
	}
	if len(s.Latencies) != total || !slices.IsSorted(s.Latencies) || s.Latencies[0] <= 0 {
		t.Errorf("measured %v", s.Latencies)
	}
	if n := len(w.Calls("chat.postMessage")); n != total || w.Connections() < 2 {
		t.Errorf("%d posts over %d connections", n, w.Connections())
	}
}

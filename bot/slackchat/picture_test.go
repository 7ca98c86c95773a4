package slackchat_test

import (
	"bytes"
	"context"
	"errors"
	"slices"
	"strings"
	"testing"
	"time"

	"heft/bot"
	"heft/bot/picture"
	"heft/bot/slackchat"
	"heft/bot/standin"
)

// seen is a question whose answer has a picture, and unseen one whose has
// none.
const (
	seen   = "600 lb piece on 3:1, 2 people, hitched at 35 ft, can we lift it?"
	unseen = "how heavy is a 20 in white ash log 8 ft"
)

func drawing(c *slackchat.Config) { c.Picture = picture.PNG }

// pictured waits for the picture under a message and returns it with the
// words.
func (r *rig) pictured(m standin.Message) (words, pic standin.Message) {
	r.Helper()
	r.await(func() bool { return len(r.own(m)) == 2 })
	own := r.own(m)
	return own[0], own[1]
}

// lost waits until it is logged that a picture did not come.
func (r *rig) lost() {
	r.Helper()
	r.await(func() bool { return strings.Contains(r.logs.text(), "the picture was not posted") })
}

// The words come first, the picture after them, in the thread of the
// question; what a screen reader says of it is the first line.
func TestPictureFollowsTheWords(t *testing.T) { bothWays(t, pictureFollowsTheWords) }

func pictureFollowsTheWords(t *testing.T, via way) {
	r := prepare(t, standin.Options{}, via, drawing).run()
	for _, m := range []standin.Message{r.ask(standin.Yard, seen), r.Say(standin.Direct, crew, seen)} {
		words, pic := r.pictured(m)
		if words.Text == "" || len(words.Files) > 0 || pic.Text != "" || len(pic.Files) != 1 {
			t.Fatalf("words %+v, picture %+v", words, pic)
		}
		head, _, _ := strings.Cut(words.Shown(), "\n")
		f := pic.Files[0]
		if pic.Thread() != m.Thread() || f.Title != head || f.AltText != head || !strings.HasSuffix(f.Name, ".png") {
			t.Errorf("in %s, want %s; %q, %q, %q", pic.Thread(), m.Thread(), f.Title, f.AltText, f.Name)
		}
		if !bytes.HasPrefix(f.Content, []byte("\x89PNG\r\n")) {
			t.Errorf("%d bytes that are no PNG", len(f.Content))
		}
		if e := r.settled(m); e.Delivered == nil || e.Failure != "" {
			t.Errorf("entry: %+v", e)
		}
	}
	follow := r.ask(standin.Yard, seen)
	within := r.ask(standin.Yard, seen, standin.InThread(follow.TS))
	r.await(func() bool { return len(r.own(within)) == 4 })
}

func TestNoPictureWhereThereIsNothingToSee(t *testing.T) {
	bothWays(t, noPictureWhereThereIsNothingToSee)
}

func noPictureWhereThereIsNothingToSee(t *testing.T, via way) {
	r := prepare(t, standin.Options{}, via, drawing).run()
	r.answered(r.ask(standin.Yard, unseen))
	r.answered(r.ask(standin.Yard, "maple limb 12 in 15 ft"))
	r.halt()
	if calls := r.Calls("files.getUploadURLExternal"); len(calls) > 0 {
		t.Errorf("%+v", calls)
	}
	without := prepare(t, standin.Options{}, via).run()
	without.answered(without.ask(standin.Yard, seen))
	without.halt()
	if calls := without.Calls("files.getUploadURLExternal"); len(calls) > 0 {
		t.Errorf("without a drawer: %+v", calls)
	}
}

var steps = []string{"files.getUploadURLExternal", "upload", "files.completeUploadExternal"}

// A step that is told to slow down, or fails once, is made again.
func TestPictureOutlastsPassingTroubles(t *testing.T) { bothWays(t, pictureOutlastsPassingTroubles) }

func pictureOutlastsPassingTroubles(t *testing.T, via way) {
	const ms = time.Millisecond
	for _, step := range steps {
		for _, c := range []struct {
			name  string
			fault standin.Fault
			want  time.Duration
		}{
			{"rate limit", standin.Fault{Status: 429, RetryAfter: 7}, 7 * time.Second},
			{"server error", standin.Fault{Status: 503}, 250 * ms},
		} {
			t.Run(step+", "+c.name, func(t *testing.T) {
				r := prepare(t, standin.Options{}, via, drawing)
				w := &waits{}
				slackchat.SetPause(r.chat, w.pause)
				r.run()
				c.fault.Method = step
				r.Fail(c.fault)
				r.pictured(r.ask(standin.Yard, seen))
				if got := w.all(); !slices.Equal(got, []time.Duration{c.want}) {
					t.Errorf("waited %v, want %v", got, c.want)
				}
			})
		}
	}
}

// A picture that never comes costs nothing but itself: the words are there
// and recorded as such, the fault is logged, and the log shows neither a
// token nor the address that takes a file.
func TestPictureThatFailsCostsNoWords(t *testing.T) { bothWays(t, pictureThatFailsCostsNoWords) }

func pictureThatFailsCostsNoWords(t *testing.T, via way) {
	for _, step := range steps {
		for name, fault := range map[string]standin.Fault{
			"refused": {Error: "file_uploads_disabled", Times: 9}, "down": {Status: 500, Times: 9},
			"forbidden": {Status: 403, Times: 9}, "no reason": {Times: 9}, "limited for too long": {Status: 429, RetryAfter: 600, Times: 9},
		} {
			if step == "upload" && fault.Status == 0 {
				continue // that address answers with a status alone
			}
			t.Run(step+", "+name, func(t *testing.T) {
				r := prepare(t, standin.Options{}, via, drawing)
				slackchat.SetPause(r.chat, (&waits{}).pause)
				r.run()
				fault.Method = step
				r.Fail(fault)
				m := r.ask(standin.Yard, seen)
				r.answered(m)
				r.lost()
				if e := r.settled(m); e.Delivered == nil || e.Failure != "" {
					t.Errorf("entry: %+v", e)
				}
				if own := r.own(m); len(own) != 1 {
					t.Errorf("%d messages of ours", len(own))
				}
				r.answered(r.ask(standin.Yard, unseen))
				r.halt()
				clean(t, r.Workspace, "the log", r.logs.text())
				if strings.Contains(r.logs.text(), "upload/v1/F") {
					t.Errorf("the log shows the address of a file:\n%s", r.logs.text())
				}
			})
		}
	}
}

func TestDrawerThatFails(t *testing.T) { bothWays(t, drawerThatFails) }

func drawerThatFails(t *testing.T, via way) {
	for name, draw := range map[string]func(bot.Scene) ([]byte, error){
		"with an error": func(bot.Scene) ([]byte, error) { return nil, errors.New("no paint") },
		"with a fault":  func(bot.Scene) ([]byte, error) { panic("no paint") },
		"with nothing":  func(bot.Scene) ([]byte, error) { return nil, nil },
	} {
		t.Run(name, func(t *testing.T) {
			r := prepare(t, standin.Options{}, via, func(c *slackchat.Config) { c.Picture = draw })
			slackchat.SetPause(r.chat, (&waits{}).pause)
			r.run()
			r.answered(r.ask(standin.Yard, seen))
			r.lost()
			r.answered(r.ask(standin.Yard, unseen))
		})
	}
}

// While a picture waits, the words of its own thread go on.
func TestNoWordsWaitBehindAPicture(t *testing.T) { bothWays(t, noWordsWaitBehindAPicture) }

func noWordsWaitBehindAPicture(t *testing.T, via way) {
	r := prepare(t, standin.Options{}, via, drawing)
	waiting, over := make(chan struct{}, 1), make(chan struct{})
	slackchat.SetPause(r.chat, func(ctx context.Context, _ time.Duration) error {
		waiting <- struct{}{}
		<-over
		return ctx.Err()
	})
	r.run()
	r.Fail(standin.Fault{Method: steps[0], Status: 429, RetryAfter: 30})
	first := r.ask(standin.Yard, seen)
	<-waiting
	again := r.ask(standin.Yard, unseen, standin.InThread(first.TS))
	if reply := r.answered(again); len(reply.Files) > 0 {
		t.Errorf("a picture came first: %+v", reply)
	}
	close(over)
	r.await(func() bool { return len(r.own(first)) == 3 })
}

// A shutdown finishes the pictures in hand.
func TestShutdownFinishesPictures(t *testing.T) { bothWays(t, shutdownFinishesPictures) }

func shutdownFinishesPictures(t *testing.T, via way) {
	var r *rig
	r = prepare(t, standin.Options{}, via, func(c *slackchat.Config) {
		c.Picture = func(s bot.Scene) ([]byte, error) {
			r.stop()
			return picture.PNG(s)
		}
	})
	r.run()
	m := r.ask(standin.Yard, seen)
	r.pictured(m)
}

// Without its words a picture says nothing.
func TestNoPictureWithoutItsWords(t *testing.T) { bothWays(t, noPictureWithoutItsWords) }

func noPictureWithoutItsWords(t *testing.T, via way) {
	r := prepare(t, standin.Options{}, via, drawing).run()
	r.Fail(standin.Fault{Method: "chat.postMessage", Error: "is_archived"})
	if e := r.settled(r.ask(standin.Yard, seen)); e.Failure == "" {
		t.Errorf("entry: %+v", e)
	}
	r.halt()
	if calls := r.Calls(steps[0]); len(calls) > 0 {
		t.Errorf("%+v", calls)
	}
}

package slackchat

import (
	"bytes"
	"context"
	"fmt"
	"time"

	"github.com/slack-go/slack"

	"heft/bot"
)

// Pictures.
const (
	easels = 2 // drawn side by side: each takes a few megabytes while it is drawn
	// lookTime is how long a picture is worth posting: past it the crew has
	// read the words.
	lookTime = time.Minute
	// maxAltText is the longest description of an image, in characters
	// (platform documentation, files.getUploadURLExternal, errors).
	maxAltText  = 1000
	pictureName = "heft.png"
)

// pictured says whether a reply comes with a picture that nobody asked for.
func (c *Chat) pictured(reply bot.Reply) bool {
	scene := reply.Scene()
	return c.cfg.Picture != nil && scene != nil && !scene.Asked
}

// illustrate posts the picture of a reply in its thread, where the words are
// already. One that does not come is logged, and that is all: the words are
// the answer.
func (c *Chat) illustrate(ctx context.Context, ev bot.Event, reply bot.Reply) {
	limit, cancel := context.WithTimeout(ctx, lookTime)
	defer cancel()
	png, err := c.draw(limit, *reply.Scene())
	if err == nil {
		err = c.share(limit, ev, reply.Headline(), png)
	}
	if err != nil {
		c.log.WarnContext(ctx, "the picture was not posted", bot.KeyEvent, ev.ID, bot.KeyErr, hide(err))
	}
}

// draw draws a scene. A fault of the drawer takes nothing else with it.
func (c *Chat) draw(ctx context.Context, s bot.Scene) (png []byte, err error) {
	select {
	case c.easel <- struct{}{}:
	case <-ctx.Done():
		return nil, ctx.Err()
	}
	defer func() {
		<-c.easel
		if fault := recover(); fault != nil {
			err = fmt.Errorf("the drawer failed: %v", fault)
		}
	}()
	return c.cfg.Picture(s)
}

// share uploads a picture and shares it in a thread, in the three steps of
// the platform (platform documentation, files.getUploadURLExternal). Each is
// tried again where that may help; a channel told to slow down has one
// picture at a time, apart from its words.
func (c *Chat) share(ctx context.Context, ev bot.Event, headline string, png []byte) error {
	title := clipped(headline, maxAltText)
	var to *slack.GetUploadURLExternalResponse
	for _, step := range []struct {
		what string
		call func() error
	}{
		{"announce", func() (err error) {
			to, err = c.announce(ctx, title, len(png))
			return err
		}},
		{"upload", func() error {
			return c.api.UploadToURL(ctx, slack.UploadToURLParameters{
				UploadURL: to.UploadURL, Reader: bytes.NewReader(png), Filename: pictureName,
			})
		}},
		{"share", func() error { return c.complete(ctx, ev, title, to.FileID) }},
	} {
		if err := c.persist(ctx, "pictures/"+ev.Channel, step.call); err != nil {
			return fmt.Errorf("%s the picture: %w", step.what, err)
		}
	}
	return nil
}

// announce asks for the address that takes the picture.
func (c *Chat) announce(ctx context.Context, title string, size int) (*slack.GetUploadURLExternalResponse, error) {
	to, err := c.api.GetUploadURLExternalContext(ctx, slack.GetUploadURLExternalParameters{
		FileName: pictureName, FileSize: size, AltTxt: title,
	})
	if err == nil && (to.UploadURL == "" || to.FileID == "") {
		err = errNoReason
	}
	return to, err
}

// complete shows the uploaded picture in its thread.
func (c *Chat) complete(ctx context.Context, ev bot.Event, title, file string) error {
	done, err := c.api.CompleteUploadExternalContext(ctx, slack.CompleteUploadExternalParameters{
		Files:   []slack.FileSummary{{ID: file, Title: title}},
		Channel: ev.Channel, ThreadTimestamp: ev.Thread,
	})
	if err == nil && !done.Ok {
		err = errNoReason
	}
	return err
}

// clipped is the beginning of a text, of so many characters at most.
func clipped(text string, most int) string {
	runes := []rune(text)
	return string(runes[:min(len(runes), most)])
}

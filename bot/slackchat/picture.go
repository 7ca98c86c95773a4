package slackchat

import (
	"context"
	"fmt"
	"time"

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
		title := clipped(reply.Headline(), maxAltText)
		err = c.share(limit, ev, upload{name: pictureName, title: title, alt: title, data: png})
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

// clipped is the beginning of a text, of so many characters at most.
func clipped(text string, most int) string {
	if len(text) <= most {
		return text // nothing has more characters than bytes
	}
	runes := []rune(text)
	return string(runes[:min(len(runes), most)])
}

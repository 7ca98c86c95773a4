package slackchat

import (
	"bytes"
	"context"
	"fmt"

	"github.com/slack-go/slack"

	"heft/bot"
)

// upload is a file to be shared.
type upload struct {
	name, title string
	alt         string // what a screen reader says of a picture
	data        []byte
}

// share uploads a file and shares it in the channel of an event, in its
// thread where it has one, in the three steps of the platform (platform
// documentation, files.getUploadURLExternal). Each is tried again where that
// may help; a channel told to slow down has one file at a time, apart from
// its words.
func (c *Chat) share(ctx context.Context, ev bot.Event, f upload) error {
	var to *slack.GetUploadURLExternalResponse
	for _, step := range []struct {
		what string
		call func() error
	}{
		{"announce", func() (err error) {
			to, err = c.announce(ctx, f)
			return err
		}},
		{"upload", func() error {
			return c.api.UploadToURL(ctx, slack.UploadToURLParameters{
				UploadURL: to.UploadURL, Reader: bytes.NewReader(f.data), Filename: f.name,
			})
		}},
		{"share", func() error { return c.complete(ctx, ev, f.title, to.FileID) }},
	} {
		if err := c.persist(ctx, "files/"+ev.Channel, step.call); err != nil {
			return fmt.Errorf("%s the file: %w", step.what, err)
		}
	}
	return nil
}

// announce asks for the address that takes a file.
func (c *Chat) announce(ctx context.Context, f upload) (*slack.GetUploadURLExternalResponse, error) {
	to, err := c.api.GetUploadURLExternalContext(ctx, slack.GetUploadURLExternalParameters{
		FileName: f.name, FileSize: len(f.data), AltTxt: f.alt,
	})
	if err == nil && (to.UploadURL == "" || to.FileID == "") {
		err = errNoReason
	}
	return to, err
}

// complete shows an uploaded file where it belongs.
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
